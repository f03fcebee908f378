"""Stakes, and what they were set from, that stand on other numbers than those in the fields."""

from __future__ import annotations

import json
from collections.abc import Callable, Collection, Mapping
from typing import NamedTuple

from bowstring import BadJob, JobForm, answering
from bowstring.construction import HELPERS
from bowstring.faces.passes import changed
from bowstring.geometry.plane import Point
from bowstring.job.link import read_link
from bowstring.job.terms import RECORD_KEYS, SLAB_KEYS
from bowstring.methods.ends import ARC_START
from bowstring.page.shown import shown_here
from bowstring.report.forming.pass_card import CORNERS
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.cards import CardRow
from bowstring.words import remembered

FAR = ("A-2", "B-2")
LEAST_MOVED = 0.0005
"""Metres: no tape shows less."""


class Lying(NamedTuple):
    """Where the marks of two answers lie on one ground: that of the whole line where there is one (``along``), else of
    the chord."""

    then: Mapping[str, Point]
    now: Mapping[str, Point]
    along: bool

    @classmethod
    def of(cls, old: tuple[Answer, JobForm], new: tuple[Answer, JobForm]) -> Lying:
        """Return where they lie, of two answers with their jobs; raises ``BadJob`` for a line that can't be."""
        from bowstring.page.on_ground import grounds

        found = grounds(old[1], new[1])
        one, other = found or (_as_it_is, _as_it_is)
        return cls(_places(old[0], one), _places(new[0], other), found is not None)

    def moved(self, mark: str) -> bool:
        """Whether a mark has another place now, or is there in one of the two alone."""
        one, other = self.then.get(mark), self.now.get(mark)
        if one is None or other is None:
            return one is not other
        return max(abs(one.x - other.x), abs(one.y - other.y)) > LEAST_MOVED


def _as_it_is(point: Point) -> Point:
    return point


def _places(answered: Answer, placed: Callable[[Point], Point]) -> dict[str, Point]:
    return {one["name"]: placed(Point(one["x"], one["y"])) for one in answered["marks"]}


_NO_STAKE_HANGS_ON = (
    "title", "note", "station", "ends", "ties", "tolerance", "fair", "width", *SLAB_KEYS, *RECORD_KEYS,
)  # fmt: skip


PULLED = ("prove_two", "prove_parts")
NOT_SET = ("have_", *PULLED)
"""How the kinds of steps begin of which no mark is set by a number that could be another one: what exists already,
which along a line the pieces before it carry, and whole pulls along a string."""

OTHERS = (*HELPERS, ARC_START)
"""Marks that are none of the arc's own: feet that nobody drives, and a stake of the arc before it."""


def moved_marks(answered: Answer, fields: Mapping[str, str], done: Collection[int], link: str) -> list[str]:
    """Return those of the stakes that stand which have another place now, or another hand, method or number than they
    were set by, and before them the pins that stand for them by other numbers.

    ``fields`` hold ``stood``, the link of the job that they were set by, as it was when a card was done last; one that
    can't be read says nothing. ``link``: that of the job in the fields. A stake that something else was got at stands
    where it stands: it's those after it that hang on what was got.
    """
    old = answer_before(fields, link)
    if old is None:
        return []
    before, now = read_link(fields["stood"]), read_link(link)
    cards = [card for card in old["cards"] if card["number"] in done]
    got = _got_elsewhere(before, now)
    lying = Lying.of((old, before), (answered, now))
    pins = [pin for pin in _pins_moved(cards, answered["cards"], lying) if pin.upper() not in got]
    names = list(dict.fromkeys(card["stake"] for card in cards if card["stake"]))  # told as they were set
    if old["side"] != answered["side"] or old["method"] != answered["method"]:
        return [*pins, *names]
    stood, today = _numbers(old), _numbers(answered)
    other = {name for name in names if got and stood.get(name) != today.get(name)}  # what was got at one is in others'
    return [*pins, *(name for name in names if name not in got and (name in other or lying.moved(name)))]


def marks_done(answered: Answer, done: Collection[int]) -> list[str]:
    """Return every mark of the arc that the cards which are done have set."""
    marks = [mark for card in answered["cards"] if card["number"] in done for mark in card["sets"]]
    return [mark for mark in marks if mark.split()[0] not in OTHERS]


def moved_corners(cards: Collection[CardRow], done_marks: Collection[str]) -> list[str]:
    """Return the far corners of a pad that were set by other numbers than their card has now; ``cards``: the forms'."""
    return [stake for card in cards if changed(card, done_marks) for stake in FAR if card["kind"] == f"form_{CORNERS}"]


def answer_before(fields: Mapping[str, str], link: str) -> Answer | None:
    """Return the answer to the job that the stakes were set by, the link ``stood`` of the fields, where it says
    something else of them than ``link``, the job's own by now; ``None`` where it doesn't, or can't be read."""
    stood = fields.get("stood", "").strip()
    if not stood or not link or stood == link:
        return None
    try:
        # Both as a link has them: every card that is turned comes by here, and an equal job needn't be laid out.
        if _said(read_link(stood)) == _said(read_link(link)):
            return None
        return answer_to(stood, shown_here())
    except BadJob:
        return None


@remembered(4)  # one job, and other arcs of its line: every face asks as long as nobody has settled it
def answer_to(link: str, shown: str | None) -> Answer:
    """Return the answer to the job of a link, shown in a device's unit; raises ``BadJob``."""
    answer = answering(read_link(link), shown=shown)
    _numbers(answer)  # refused here, or nowhere
    return answer


def _pins_moved(done: Collection[CardRow], now: Collection[CardRow], lying: Lying) -> list[str]:
    """The marks that are no stakes and were set by other numbers than their cards have now, or lie elsewhere on the
    ground of a line."""
    new = {mark: card for card in now for mark in card["sets"]}

    def is_moved(mark: str, card: CardRow) -> bool:
        if lying.along and mark in lying.now and lying.moved(mark) and not card["kind"].startswith(PULLED):
            return True
        return not card["kind"].startswith(NOT_SET) and (mark not in new or _set_by(card) != _set_by(new[mark]))

    marks = [(mark, card) for card in done for mark in card["sets"] if mark != card["stake"]]
    return [mark for mark, card in marks if mark.split()[0] not in OTHERS and is_moved(mark, card)]


def _set_by(card: CardRow) -> tuple[str, list[str]]:
    return card["text"], [one["shown"] for one in card["numbers"]]


def _numbers(answered: Answer) -> dict[str, tuple[str, ...]]:
    """The numbers of the step that sets each stake."""
    return {step["stake"]: tuple(one["shown"] for one in step["measures"]) for step in answered["steps"]
            if step["stake"]}  # fmt: skip


def _got_elsewhere(one: JobForm, other: JobForm) -> set[str]:
    """The stakes at which one job has other readings than the other."""
    first, second = ({str(row.get("stake", "")).upper(): row for row in job.get("got", ())} for job in (one, other))
    return {name for name in first.keys() | second.keys() if first.get(name) != second.get(name)}


def got_since(stood: str, link: str) -> set[str]:
    """Return the stakes at which the job of the second link has readings that the first hasn't: they stand where those
    say. One whose readings were taken back is none of them; it stands where nobody tells."""
    before, now = read_link(stood), read_link(link)
    there = {str(row.get("stake", "")).upper() for row in now.get("got", ())}
    return {name for name in _got_elsewhere(before, now) if name in there}


def _said(job: JobForm) -> str:
    said: dict[str, object] = {key: value for key, value in job.items() if key not in _NO_STAKE_HANGS_ON}
    if "line" in job:  # what is said of another arc's stakes is theirs
        said["line"] = [{key: value for key, value in piece.items() if key != "work"} for piece in job["line"]]
    return json.dumps(said, sort_keys=True)
