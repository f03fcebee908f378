"""Stakes that stand by old numbers are kept: of what was changed since, no more is taken back than moves them."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping, Sequence
from typing import TypedDict, final

from bowstring.errors import BadJob
from bowstring.job.link import read_link
from bowstring.page.beside import done_of, is_beside
from bowstring.page.fields import fields_of_job
from bowstring.page.labels import label_of
from bowstring.page.linking import link_of
from bowstring.page.pieces import AFTER, BEFORE, GROUPS, MORE, rows_in
from bowstring.page.rows import ROW_NAMES
from bowstring.page.shown import answering_here
from bowstring.page.slab_fields import is_of_slab
from bowstring.page.stood import moved_marks
from bowstring.page.unit import settled_job
from bowstring.report.linked import with_method
from bowstring.words import say

Fields = dict[str, str]
Typed = Mapping[str, str]

NAMED = 3
"""Numbers that are told by name where more are set back."""

PARTS: tuple[tuple[str, ...], ...] = (
    ("arc", "greater"),
    (BEFORE, "kink"),
    (AFTER,),
    ("side", "turn", "start"),
    ("offset", "toward", "drawn_to", "driven", "diameter"),
    ("found",),
    ("got",),
    ("method", "centre", "tangent_from", "tapes_from", "halve_first", "stations", "first_gap", "parallel"),
    ("spacing", "levels"),
    ("ground", "room", "known", "fall", "control"),
    ("mark", "tape", "hands", "errors"),
    ("unit",),
    ("ends", "ties", "tolerance", "fair"),
)
"""What may be taken back, part by part, by the first words of the fields' ids: the first is the likeliest to move a
stake, and the last is left as it is now before any other. What is in none of them moves no stake."""


@final
class SetBack(TypedDict):
    """The fields as they are from now on, and one line that says what of them was set back."""

    fields: Fields
    said: str


def set_back(typed: Typed) -> SetBack:
    """Return the fields with as little taken back as makes the stakes that are driven come out where they stand.

    ``typed``: the fields, with ``done`` and ``stood``, the link of the job that those stakes were set by. Parts that
    were changed since are put back all together, and then, the last of ``PARTS`` first, each is left as it is now where
    the stakes, laid out anew, still come out. What can't be read by parts is put back whole. What was done and read
    stays, and so does whatever no stake hangs on. Raises ``BadJob`` where ``stood`` is no link, and where nobody has
    said which unit bare numbers are in.
    """
    fields = {name: text.strip() for name, text in typed.items() if text.strip()}
    settled_job(_layout(fields) | {name: text for name, text in fields.items() if name == "unit_before"})
    if "stood" not in fields:
        return {"fields": fields, "said": say("stood.set_back_none")}
    old = fields_of_job(read_link(fields["stood"]))
    now = _as_linked(fields)
    taken = [part for part in PARTS if _of(part, old) != _of(part, now)]
    if not _come_out(_with(fields, old, now, taken)):
        return _whole(fields, old, now)
    for part in reversed(taken):
        fewer = [one for one in taken if one is not part]
        if _come_out(_with(fields, old, now, fewer)):
            taken = fewer
    if ("unit",) in taken:
        return _whole(fields, old, now)  # bare numbers that were typed in the newer one would be others
    made = _with(fields, old, now, taken)
    return {"fields": made, "said": _told([name for part in taken for name in _changed(part, old, now)], old, now)}


def _whole(fields: Typed, old: Typed, now: Typed) -> SetBack:
    """All that a job has but for what was done and read."""
    kept = {name: text for name, text in fields.items() if is_beside(name)}
    names = sorted(name for name in old.keys() | now.keys() if old.get(name) != now.get(name) and not is_beside(name))
    return {"fields": {**old, **kept}, "said": _told(names, old, now)}


def _as_linked(fields: Typed) -> Fields:
    """The fields as they come back from their own link, so that they can be held against those of an older one."""
    try:
        answered = answering_here(_layout(fields))
        return fields_of_job(read_link(link_of(with_method(settled_job(_layout(fields)), answered))[0]))
    except BadJob:
        return _layout(fields)


def _layout(fields: Typed) -> Fields:
    return {name: text for name, text in fields.items() if not is_beside(name) and not is_of_slab(name)}


def _come_out(fields: Typed) -> bool:
    """Whether the stakes that stand are where these fields put them, by the numbers that they were set by."""
    try:
        answered = answering_here(_layout(fields))
        link = link_of(with_method(settled_job(_layout(fields)), answered))[0]
    except BadJob:
        return False
    return bool(link) and not moved_marks(answered, fields, done_of(fields), link)


def _of(part: Sequence[str], fields: Typed) -> Fields:
    """The fields of one part; of another piece of a line no more than where it lies: its own stakes are its own."""
    own = {name: text for name, text in fields.items() if name.partition("-")[0] in part}
    lying = {name: _lying(text) for name, text in own.items() if name.endswith(f"-{MORE}")}
    return {name: text for name, text in (own | lying).items() if text}


def _lying(more: str) -> str:
    """Of what is kept unseen of a piece, what says where it lies."""
    kept = {name: text for name, text in _kept({MORE: more}).items() if _is_lying(name)}
    return json.dumps(kept, sort_keys=True) if kept else ""


def _is_lying(name: str) -> bool:
    return name.startswith("arc-") or name == "greater"


def _kept(row: Typed) -> Fields:
    found: Fields = json.loads(row.get(MORE) or "{}")
    return found


def _with(fields: Typed, old: Typed, now: Typed, parts: Sequence[Sequence[str]]) -> Fields:
    """The fields with some parts as they were; of rows, which nobody can tell apart, the whole group."""
    made, rows = dict(fields), set(ROW_NAMES)
    for name in (name for part in parts for name in _changed(part, old, now)):
        head = name.partition("-")[0]
        if head not in rows:
            made[name] = old.get(name, "")
            continue
        own = {one: old.get(one, "") for one in fields.keys() | old.keys() if one.partition("-")[0] == head}
        made |= own | (dict(_works(fields, old, head)) if head in GROUPS else {})
    return {name: text for name, text in made.items() if text}


def _works(fields: Typed, old: Typed, group: str) -> Iterator[tuple[str, str]]:
    """What is kept of the other arcs of a line, each as it lay, with its own work as it is now: that of the piece that
    lies so still, else of the one in its place; where neither is there nothing of it is told."""
    then, now = rows_in(old, group), [row for _number, row in rows_in(fields, group)]
    for place, (number, row) in enumerate(then):
        same = [one for one in now[place : place + 1] + now if _lies(one) == _lies(row)]
        own = same[0] if same else now[place] if len(now) == len(then) else {}
        work = {name: text for name, text in _kept(own).items() if not _is_lying(name)}
        both = {name: text for name, text in _kept(row).items() if _is_lying(name)} | work
        yield f"{group}-{number}-{MORE}", json.dumps(both, ensure_ascii=False, sort_keys=True) if both else ""


def _lies(row: Typed) -> Fields:
    """A piece without its own work."""
    return {name: text for name, text in {**row, MORE: _lying(row.get(MORE, ""))}.items() if text}


def _changed(part: Sequence[str], old: Typed, now: Typed) -> list[str]:
    then, today = _of(part, old), _of(part, now)
    return [name for name in dict.fromkeys([*then, *today]) if then.get(name) != today.get(name)]


def _told(names: Sequence[str], old: Typed, now: Typed) -> str:
    """One line: what was set back, a number from which to which."""
    told = list(dict.fromkeys(text for name in names if (text := _one(name, old, now))))
    what = ", ".join(told[:NAMED])
    if len(told) > NAMED:
        what = say("stood.more", names=what, count=len(told) - NAMED)
    return say("stood.set_back", what=what) if told else say("stood.set_back_none")


def _one(name: str, old: Typed, now: Typed) -> str:
    label = label_of(name, {**now, **old})
    head, row = (*name.split("-"), "")[:2]
    if head == "got":
        place = f"got-{row}-stake"
        return say("stood.got", stake=old.get(place) or now.get(place, ""))
    if head in ROW_NAMES and head not in GROUPS:
        return label.partition(":")[0]  # a row: its corners and readings are no line's text
    before, after = now.get(name, ""), old.get(name, "")
    if not label or not before or not after or not any(sign.isdecimal() for sign in before + after):
        return label
    return say("stood.from_to", label=label, before=before, after=after)
