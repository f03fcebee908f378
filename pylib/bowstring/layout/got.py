"""What was got at stakes taken into a layout: they stand where their readings say, and the steps after them start from
there. What can't be taken up is refused at its own field."""

from __future__ import annotations

from collections.abc import Sequence

from bowstring.construction import BadReading, DontMeet, NoSuchReading, NotFixed, NoWayBack, Recipe, Stake, Step
from bowstring.errors import BadJob, bad
from bowstring.job.job import Job
from bowstring.layout.crossing import past_what_blocks
from bowstring.methods.halving import OffTheArc
from bowstring.methods.method import Method
from bowstring.methods.setting import Setting

EITHER_SIDE = 4
"""Tape marks: a mark that is told to be less than that from another, and was read at more than twice as much, may stand
on either side of it."""


def take_up(
    job: Job, ends: Recipe, method: Method, setting: Setting, stakes: Sequence[Stake]
) -> tuple[Setting, Recipe]:
    """Return the setting and the recipe of a job of which some stakes stand already; raises ``BadJob``."""
    for name, row in job.got.items():
        if row.as_before and not (method.halves or setting.halve_first):
            raise bad(f"{_place(job, name)}.stake", "site.got_method")
        if name in ("A", "B") or any(name in step.sets for step in ends.steps):
            raise bad(f"{_place(job, name)}.stake", "got.an_end", mark=name)
    try:
        setting, recipe = past_what_blocks(job, method, setting, stakes, ends, job.got)
    except BadReading as reason:
        raise _refused(job, reason) from None
    except OffTheArc as stake:
        # Which one of several is far off can't be told; a single one is named.
        raise bad(_only(job), "got.off_the_arc", stake=stake) from None
    except NoWayBack as mark:
        raise bad(_only(job), "got.no_way_back", mark=mark) from None
    except ZeroDivisionError:
        raise bad(_only(job), "got.one_place") from None
    for name in job.got:
        _meet_row(job, recipe, name)
    return setting, recipe


def step_of(recipe: Recipe, name: str) -> Step:
    """Return the step that sets a mark."""
    return next(step for step in recipe.steps if name in step.sets)


def _meet_row(job: Job, recipe: Recipe, name: str) -> None:
    """A row names a mark of a step that no other row tells of, and its reading leaves no doubt of the side."""
    place, row = _place(job, name), job.got[name]
    if name not in recipe.standing:
        again = any(name in step.sets for step in recipe.steps)
        raise bad(f"{place}.stake", "got.same_step" if again else "got.unknown_stake", stake=name)
    step = step_of(recipe, name)
    if row.as_before and step.sagitta is None and step.kind != "stake_crossed":
        raise bad(f"{place}.stake", "site.got_method")
    if row.as_before:
        return
    standing = recipe.standing[name]
    for number, (read, want) in enumerate(zip(standing.told, standing.asked, strict=True)):
        if want.length < EITHER_SIDE * job.tape.mark and read.length > 2 * want.length:
            mark = read.end if read.end in step.sets else read.start
            raise bad(f"{place}.measures[{number}].distance", "got.either_side", mark=mark)


def _refused(job: Job, reason: BadReading) -> BadJob:
    """What is wrong with a row's readings, at its field."""
    row = job.got[reason.row]
    place = _place(job, reason.row)
    if isinstance(reason, NoSuchReading):
        if row.as_before:
            return bad(f"{place}.stake", "site.got_method")
        one = row.measures[reason.number]
        return bad(f"{place}.measures[{reason.number}].to", "got.no_reading", stake=row.stake, start=one.start,
                   end=one.end)  # fmt: skip
    if isinstance(reason, NotFixed):
        if reason.needs:
            start, end = reason.needs
            return bad(f"{place}.measures", "got.not_fixed_tape", mark=reason, start=start, end=end)
        return bad(f"{place}.measures", "got.not_fixed", mark=reason)
    assert isinstance(reason, DontMeet)
    if row.half_chords:
        return bad(f"{place}.half_chords", "got.tapes_dont_meet", stake=reason)
    return bad(f"{place}.measures", "got.dont_cross" if reason.crossing else "got.dont_meet", mark=reason)


def _place(job: Job, name: str) -> str:
    return f"got[{list(job.got).index(name)}]"


def _only(job: Job) -> str:
    """The field of the one row, or of all of them."""
    if len(job.got) != 1:
        return "got"
    (row,) = job.got.values()
    return (
        "got[0].sagitta" if row.sagitta is not None else "got[0].half_chords" if row.half_chords else "got[0].measures"
    )
