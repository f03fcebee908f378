"""The class's own numbers on the wall: a string and its mid-ordinate as they were typed there, read like a job's."""

from __future__ import annotations

from collections.abc import Mapping

from bowstring import answering
from bowstring.errors import BadJob, bad
from bowstring.page.fields import is_other_mark, job_of_fields
from bowstring.page.talk import Asked
from bowstring.wall.shape import Given
from bowstring.wall.suits import is_drawn
from bowstring.words import say

_LEAST_ROUNDS = 2  # a class sees what a second round is, too


def class_fields(asked: Asked) -> dict[str, str]:
    """Return the fields of a job of these numbers alone; the tape is the one of the job that is open."""
    fields, own = asked["fields"], asked["own"]
    kept = {name: fields[name] for name in ("unit", "mark") if fields.get(name)}
    if is_other_mark(kept):
        del kept["mark"]
    typed = {"arc-chord": str(own["chord"]).strip(), "arc-sagitta": str(own["out"]).strip()}
    return {**kept, **typed, "title": say("wall.own_job")}


def class_given(asked: Asked) -> Given:
    """Return the numbers as a wall shows them. Raises ``BadJob`` where they are none, or can't be drawn."""
    fields = class_fields(asked)
    for name, key in (("arc-chord", "chord"), ("arc-sagitta", "mid_ordinate")):
        if not fields[name]:
            raise bad(name, "wall.own_missing", name=say(f"wall.{key}"))
    given = Given.of_answer(answering(job_of_fields(fields)))
    if not is_drawn(given):
        raise bad("arc.sagitta", "wall.own_round", most=given.show(2 * given.chord))
    rounds = max(given.levels, _LEAST_ROUNDS)
    return Given(given.chord, given.sagitta, given.tape, say("wall.own_job"), levels=rounds)


def numbers_on_the_wall(asked: Asked, job: Given | None) -> Mapping[str, object]:
    """Return ``{"chord", "out"}`` as they are shown, with the ``fields`` of a job of them, or ``{"error"}``; where none
    were typed those of the job, or a lesson's."""
    if asked.get("own") is None:
        given = job or Given.own()
        return {"chord": given.show(given.chord), "out": given.show(given.sagitta)}
    try:
        given = class_given(asked)
    except BadJob as refusal:
        return {"error": say("page.error_text", wrong=refusal.wrong, remedy=refusal.remedy)}
    return {"chord": given.show(given.chord), "out": given.show(given.sagitta), "fields": class_fields(asked)}
