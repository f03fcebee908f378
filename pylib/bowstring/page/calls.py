"""What the page's script asks of the browser's Python: JSON text in, JSON text out.

What only some questions need is imported when they are asked: the first one is asked while somebody waits.
"""

from __future__ import annotations

import json
import re
import zlib
from collections.abc import Callable, Mapping
from functools import cached_property
from typing import TYPE_CHECKING

from bowstring.errors import BadJob
from bowstring.page.beside import done_of, is_plain
from bowstring.page.fields import fields_of_job, job_of_fields, unit_of
from bowstring.page.talk import Asked, refused

if TYPE_CHECKING:
    from bowstring.job.form import JobForm
    from bowstring.page.answering import LastAnswer


class Calls:
    """One open page's questions, with the answer to what stands in its fields."""

    @cached_property
    def last(self) -> LastAnswer:
        """The answer that was asked for last: what lays out a job is imported with it."""
        from bowstring.page.answering import LastAnswer

        return LastAnswer()

    def handle(self, call: str, payload: str) -> str:
        """Answer one question of the page's script, by name:

        ``numbers``    ``{"fields": {id: text}}``: the face of the numbers, what is needed at once, see
                       ``measuring.shown_numbers``;
        ``numbers_later``  the same: what of that face takes longer;
        ``face``       ``{"fields", "face": name, "card", "panel", "got", "address"}``, see ``facing.shown_face``;
        ``fold``       ``{"fields", "key"}``: what stands in a fold of the face that tells why;
        ``link``       ``{"fields"}`` gives ``{"link", "link_note"}``;
        ``warm``       ``{"part": number}`` gives ``{"more": flag}``: imports a part of what other faces need, while
                       nobody waits;
        ``example``    ``{}`` gives ``{"fields"}`` of the example;
        ``sheet``      ``{"fields": {id: text}, "address": text}``: the long sheet, see ``shown_sheet``;
        ``open_link``  ``{"text": a link or a message with one}`` gives ``{"fields", "title", "link", "id",
                       "parent"}`` (what a copy names it by) or ``{"error": text}``;
        ``open_file``  ``{"text": a job file's text}`` gives the same;
        ``job_file``   ``{"fields"}`` gives ``{"name", "text"}`` of a job file or ``{"error"}``;
        ``hand_over``  ``{"fields", "address", "what"}``: a code, texts or a list of files, see ``handing.handed``;
        ``hand_file``  ``{"fields", "kind"}``: one of those files, see ``handing.handed_file``;
        ``mistake``    ``{"fields", "kind"}`` gives ``{"svg": text}`` or ``{"error"}``: what a blunder would look like;
        ``spelled``    ``{"fields", "text", "must"}`` gives ``{"text"}``: a reading as it is kept, with its unit where
                       the device shows another one than the job's; ``must``: what stands beside it;
        ``line_at``    ``{"fields", "at": number}`` gives ``{"fields"}`` with another arc of the line staked;
        ``set_back``   ``{"fields"}`` gives ``{"fields", "said"}``: as little taken back as makes the stakes that are
                       driven stand where they stand, and what that is, or ``{"error"}``;
        ``called``     ``{"jobs": [fields, ...]}`` gives ``{"names"}``: what each is called where it has no title;
        ``wall``       ``{"fields", "figure" or "slider" or "list" or "handout": number}``: see ``walling.shown_wall``;
        ``outline``    what was tapped on the site's plan gives the fields of an obstacle, see ``drawn_obstacle``.

        Raises ``ValueError`` for a question that the page's own script never asks.
        """
        if call not in CALLS:
            raise ValueError(f"no such call: {call!r}")
        return json.dumps(CALLS[call](json.loads(payload), self))


def handle(call: str, payload: str) -> str:
    """Answer one question by itself, as ``Calls`` does for a page that asks several about one job."""
    return Calls().handle(call, payload)


def _open_link(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.job.link import read_link

    return _opened(lambda: read_link(asked["text"]))


def _open_file(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.job.jobfile import job_of_text

    return _opened(lambda: job_of_text(asked["text"]))


def _opened(read: Callable[[], JobForm]) -> Mapping[str, object]:
    """Return what stands in the form for a job from elsewhere: every value was read before any of it is shown."""
    from bowstring.job.job import read_job
    from bowstring.job.kept import part_kept
    from bowstring.page.linking import link_of, parent_of

    try:
        job = read()
        checked = read_job(part_kept(job)[0])
        fields = fields_of_job(job)
        if not all(map(is_plain, fields.items())):
            read_job(job)  # refuses it
        if "done" in fields:
            fields["done"] = _done_cards(fields)
        link, _why_none = link_of(job_of_fields(fields))  # as the form would write it
        if link and done_of(fields):
            fields["stood"] = link  # a job that says what is done names its method, too
    except BadJob as refusal:
        return refused(refusal)
    # The same job opened twice is one job: its id comes from its link, or where it's too large for one from its text.
    one = re.sub("[^a-z0-9]", "", link.lower())[-14:] or f"{zlib.crc32(json.dumps(fields).encode()):010x}"
    parent = parent_of(checked.title, one)
    return {"fields": fields, "title": checked.title, "link": link, "id": one, "parent": parent}


def _done_cards(fields: Mapping[str, str]) -> str:
    """Return the cards that are done, from the steps that a job says are."""
    from bowstring import answering
    from bowstring.page.beside import for_layout, marks_of
    from bowstring.page.done import cards_of

    cards = cards_of(answering(job_of_fields(for_layout(fields))), done_of(fields))
    return " ".join([*map(str, cards), *marks_of(fields)])


def _job_file(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.job.job import read_job
    from bowstring.job.kept import part_kept
    from bowstring.page.beside import marks_of
    from bowstring.page.done import steps_of
    from bowstring.page.filing import file_name
    from bowstring.page.ticks import ticked
    from bowstring.page.unit import settled_job

    try:
        job = settled_job(asked["fields"])
        title = read_job(part_kept(job)[0]).title  # a reading that is no length is told at its check
        job = _with_its_method(job, asked, calls)
        marks = marks_of(asked["fields"])
        if (done_of(asked["fields"]) or marks) and "method" in job:
            answered = calls.last.for_fields(asked["fields"])
            done = ticked(answered, asked["fields"], lambda: calls.last.link(asked["fields"])[0])
            job = {**job, "done": [*steps_of(answered, done), *marks]}
    except BadJob as refusal:
        return refused(refusal)
    return {"name": file_name(title, "json"), "text": json.dumps(job, ensure_ascii=False, indent=1) + "\n"}


def _with_its_method(job: JobForm, asked: Asked, calls: Calls) -> JobForm:
    """Return a job that says which method its sheet uses, as its link does; as it stands where it has no sheet."""
    from bowstring.report.linked import with_method

    try:
        return with_method(job, calls.last.for_fields(asked["fields"]))
    except BadJob:
        return job


def _mistake(asked: Asked, calls: Calls) -> Mapping[str, object]:
    try:
        answered = calls.last.for_fields(asked["fields"])
    except BadJob as refusal:
        return refused(refusal)
    from bowstring.drawings.mistakes import mistakes_svg

    kind = asked["kind"]
    if not any(row["kind"] == kind for row in answered["mistakes"]):
        return {"svg": ""}  # the job has changed since
    return {"svg": mistakes_svg(answered, kind, id=f"mistake-{str(kind).replace('_', '-')}")}


def _hand_over(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.page.handing import handed

    return handed(asked, calls.last)


def _hand_file(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.page.handing import handed_file

    return handed_file(asked, calls.last)


def _outline(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.page.tapped import drawn_obstacle

    return drawn_obstacle(asked)


def _spelled(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.page.shown import shown_here, unit_here
    from bowstring.units.spelled import spelled

    fields, text = asked["fields"], str(asked["text"]).strip()
    other = shown_here() is not None and unit_here(fields) != unit_of(fields)
    return {"text": spelled(text, str(asked["must"]), unit_here(fields)) if other else text}


def _called(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.page.called import called
    from bowstring.page.shown import shown_here

    return {"names": [called(fields, shown_here()) for fields in asked["jobs"]]}


def _line_at(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.page.pieces import staked_at

    return {"fields": staked_at(asked["fields"], int(asked["at"]))}


def _set_back(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.page.set_back import set_back

    try:
        return {**set_back(asked["fields"])}
    except BadJob as refusal:
        return refused(refusal)


def _numbers(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.page.measuring import shown_numbers

    return shown_numbers(asked)


def _numbers_later(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.page.measuring import shown_later

    return shown_later(asked, calls.last)


def _face(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.page.facing import shown_face

    return shown_face(asked, calls.last)


def _sheet(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.page.answering import shown_sheet

    return shown_sheet(asked, calls.last)


def _fold(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.page.facing import shown_fold

    return shown_fold(asked, calls.last)


def _link(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.page.answering import shown_link

    return shown_link(asked, calls.last)


def _warm(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.page.warming import warm

    return {"more": warm(int(asked["part"]))}


def _wall(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.page.walling import shown_wall

    return shown_wall(asked, calls.last)


def _example(asked: Asked, calls: Calls) -> Mapping[str, object]:
    from bowstring.demo import DEMO

    return {"fields": fields_of_job(DEMO)}


CALLS: dict[str, Callable[[Asked, Calls], Mapping[str, object]]] = {
    "numbers": _numbers,
    "numbers_later": _numbers_later,
    "face": _face,
    "fold": _fold,
    "link": _link,
    "warm": _warm,
    "example": _example,
    "wall": _wall,
    "sheet": _sheet,
    "open_link": _open_link,
    "open_file": _open_file,
    "job_file": _job_file,
    "hand_over": _hand_over,
    "hand_file": _hand_file,
    "mistake": _mistake,
    "spelled": _spelled,
    "outline": _outline,
    "called": _called,
    "line_at": _line_at,
    "set_back": _set_back,
}
