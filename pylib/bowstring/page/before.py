"""What was worked by a job as it was: the numbers of a forms' card that is done, the edge that the stakes were."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator, Mapping

from bowstring.errors import BadJob
from bowstring.page.beside import MOST_SIGNS, done_of
from bowstring.page.shown import shown_here
from bowstring.page.stood import answer_to
from bowstring.page.unit import tape_of
from bowstring.report.alone import edges_of
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_edges import LineRow
from bowstring.report.forms.cards import CardRow
from bowstring.words import say

Typed = Mapping[str, str]

OUTSIDE, INSIDE, CENTER, LEFT, RIGHT = "outside", "inside", "centre", "left", "right"
NEAR = 0.0005
"""Metres: no tape shows less."""


def built_by(fields: Typed, link: str) -> str:
    """Return the links of the jobs by which forms' cards were done, apart by blanks, the last one last: as many as are
    kept; ``link``: the one by which a card is done now."""
    links = [one for one in fields.get("built", "").split() if one != link] + [link] * bool(link)
    while len(" ".join(links)) > MOST_SIGNS:
        links = links[1:]
    return " ".join(links)


def card_before(card: CardRow, fields: Typed, done_marks: Collection[str]) -> CardRow | None:
    """Return a forms' card as it was done, in today's words and unit; ``None`` where the job that it was done by isn't
    kept, or can't be read."""
    for link in reversed(fields.get("built", "").split()):
        try:
            cards = answer_to(link, shown_here())["form_cards"]
        except BadJob:
            continue
        found = [one for one in cards if one["kind"] == card["kind"] and one["mark"] in done_marks]
        if found:
            return found[0]
    return None


def edged_by(fields: Typed, link: str, *, stands: bool) -> dict[str, str]:
    """Return the field that keeps the job by which the stakes are an edge: from the first on that says its edges, whose
    part isn't worked out for it."""
    kept, width, edge, drawn = (fields.get(name, "").strip() for name in ("edged", "width", "edge", "drawn_to"))
    said = width and (edge or drawn == CENTER)
    return {} if (stands and kept) or not said or not link else {"edged": link}


def edge_was(answered: Answer, fields: Typed, link: Callable[[], str]) -> str:
    """Return the line that says that the stakes, which stand where they stood, aren't the edge any more that they were
    set as; empty where they are, where none stands, and where that can't be told.

    Told by geometry alone: ``edged``, the link of the job that they were an edge by, against the job of now.
    """
    kept = fields.get("edged", "").strip()
    if not kept or answered["stops"] or not done_of(fields) or kept == link():
        return ""
    try:
        old = answer_to(kept, shown_here())
    except BadJob:
        return ""
    if old["stops"] or old["side"] != answered["side"] or (old["lined"] is None) != (answered["lined"] is None):
        return ""
    return _of_line(old, answered, fields) if answered["lined"] is not None else _of_arc(old, answered)


def _of_arc(old: Answer, now: Answer) -> str:
    """Which of an arc's edges the stakes were, and where that edge is from them now."""
    rows = _edges(old)
    was, today = next((key for key in (OUTSIDE, INSIDE) if (row := rows.get(key)) and _on(row)), None), _edges(now)
    if was is None:
        return _none_before(rows, today)
    row, across = today.get(was), INSIDE if was == OUTSIDE else OUTSIDE
    if row is None or row["off"] is None:
        return ""
    other = today.get(across)
    if _on(row):
        return say("stood.other_edge") if _moved(rows.get(across), other) else ""
    if other is not None and _on(other):
        return say(f"stood.edge_{was}_other")
    return say(f"stood.edge_{was}", off=row["off_shown"])


def _none_before(then: Mapping[str, LineRow], today: Mapping[str, LineRow]) -> str:
    """Where they were no edge, but the middle, or a line off an edge, and aren't any more."""
    both = [(then[key], today[key]) for key in (CENTER, OUTSIDE, INSIDE) if key in then and key in today]
    known = [(one, other) for one, other in both if one["off"] is not None and other["off"] is not None]
    if not known:
        return ""
    one, other = min(known, key=lambda pair: abs(pair[0]["off"] or 0.0))
    if abs((one["off"] or 0.0) - (other["off"] or 0.0)) <= NEAR:
        return ""
    if _on(other):
        return say("stood.edge_now", name=other["name"], before=one["off_shown"])
    if _on(one):
        return say("stood.edge_centre", off=other["off_shown"])
    return say("stood.edge_off", name=other["name"], before=one["off_shown"], now=other["off_shown"])


def _edges(answer: Answer) -> dict[str, LineRow]:
    edges = edges_of(answer)
    return {row["key"]: row for row in edges["lines"] if row["key"] in (OUTSIDE, INSIDE, CENTER)} if edges else {}


def _moved(one: LineRow | None, other: LineRow | None) -> bool:
    """Whether an edge is elsewhere now: where the width changes on the way, that is told with its own numbers."""
    if one is None or other is None or one["off"] is None or other["off"] is None:
        return False
    return abs(one["off"] - other["off"]) > NEAR


def _on(row: LineRow) -> bool:
    return row["off"] is not None and abs(row["off"]) <= NEAR


def _of_line(old: Answer, now: Answer, fields: Typed) -> str:
    """The same of a line: how far its left and its right edge are from it; stakes off the line are told nothing of."""
    if old["offset"] or now["offset"]:
        return ""
    then, today = dict(_aside(old)), dict(_aside(now))
    if not then or not today:
        return ""
    was = next((side for side in (LEFT, RIGHT) if then[side] <= NEAR), None)
    if was is None:
        return say("stood.edge_line_centre") if min(today.values()) <= NEAR else ""
    if today[was] <= NEAR:
        return ""
    return say(f"stood.edge_{was}", off=tape_of(fields).show(today[was]))


def _aside(answer: Answer) -> Iterator[tuple[str, float]]:
    """How far each edge of a line's slab is from the line, at its start."""
    lined = answer["lined"]
    if lined is None or answer["edges"] is None:
        return
    shape = lined["shape"]
    for side, runs in ((LEFT, shape["left"]), (RIGHT, shape["right"])):
        if runs and shape["line"]:
            start, edge = shape["line"][0]["start"], runs[0]["start"]
            yield side, ((start["x"] - edge["x"]) ** 2 + (start["y"] - edge["y"]) ** 2) ** 0.5
