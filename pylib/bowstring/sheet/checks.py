"""The sheet's checks: those to make first, and all that can see something, one line for all that read the same."""

from __future__ import annotations

from collections.abc import Container, Iterator, Sequence
from math import hypot

from bowstring.report.forms.answer import Answer
from bowstring.report.forms.checks import CheckRow
from bowstring.sheet.blocks import MANY, Block, Items, Paragraph, Table
from bowstring.words import say

UNEVEN = 0.002
"""Metres: over two gaps so uneven, the midpoint's distance isn't what is squared off there (about half a mark)."""


def checks(answer: Answer) -> Iterator[Block]:
    """The checks of an answer but for those that can't judge or are blind, and for the closing gap, which is taped
    where the last stake is set. Where none judges those that can't are there, with a word."""
    rows = [check for check in answer["checks"] if not check["blind"] and check["kind"] != "closing"]
    if any(check["judges"] for check in answer["checks"] if check in rows or check["kind"] == "closing"):
        rows = [check for check in rows if check["judges"]]
    if not rows:
        yield Paragraph(say(_why_none(answer)), "caution")
        return
    toleranced = answer["tolerance"] is not None
    yield Paragraph(" ".join([say("sheet.checks_intro"), *([say("sheet.checks_worst")] if toleranced else [])]))
    uneven = _uneven(answer)
    first = [_first(check, uneven) for check in rows if check["recommended"]]
    if first:
        yield Paragraph(say("sheet.checks_first", checks="; ".join(first)), "key")
    else:
        yield Paragraph(say("sheet.checks_none_judge"), "caution")
    columns = ("check", "where", "must_read", "limit", *(["worst_case"] if toleranced else []))
    head = [say(f"sheet.{name}") for name in columns]
    yield Table(head, [_line(alike, toleranced, uneven) for alike in _alike(rows, uneven)])
    if not all(check["judges"] for check in rows):
        yield Items([say("sheet.cant_judge_why")])


def _why_none(answer: Answer) -> str:
    """The key of the sentence that says why no check stands here."""
    if not answer["checks"]:
        return "sheet.no_checks_left"
    closes = any(check["kind"] == "closing" and check["judges"] for check in answer["checks"])
    return "sheet.checks_closing_alone" if closes else "sheet.no_checks"


def _alike(rows: Sequence[CheckRow], uneven: Container[str]) -> list[list[CheckRow]]:
    """The checks that stand in one line."""
    seen: dict[tuple[object, ...], list[CheckRow]] = {}
    for check in rows:
        each = check["to"] if check["kind"] == "ordinate" else ""
        key: tuple[object, ...] = (
            _kind(check, uneven),
            check["shown"],
            check["judges"],
            check["limit_shown"],
            check["allowed_shown"],
            each,
        )
        if check["kind"] == "gap":  # all in one line, the odd ones with what they read
            key = (check["kind"],)
        seen.setdefault(key, []).append(check)
    return list(seen.values())


def _line(alike: Sequence[CheckRow], toleranced: bool, uneven: Container[str]) -> list[str]:
    check = alike[0]
    where = _where(check["kind"], alike)
    if check["kind"] == "gap":
        common, *odd = _gaps(alike)
        where = "; ".join([_where("gap", common), *(_odd_gap(gaps) for gaps in odd)])
        check = max(alike, key=lambda gap: gap["expected"]) | {"shown": common[0]["shown"]}
    limit = check["limit_shown"] if check["judges"] else say("sheet.cant_judge")
    worst = [check["allowed_shown"] or ""] if toleranced else []
    return [say(f"sheet.check_{_kind(check, uneven)}"), where, check["shown"], limit, *worst]


def _gaps(gaps: Sequence[CheckRow]) -> list[list[CheckRow]]:
    """The gaps that read the same, the common ones first; of lengths that are as common, the one between."""
    lengths = sorted(gap["distance"] for gap in gaps)
    middle = lengths[len(lengths) // 2]
    alike: dict[str, list[CheckRow]] = {}
    for gap in gaps:
        alike.setdefault(gap["shown"], []).append(gap)
    return sorted(alike.values(), key=lambda same: (-len(same), abs(same[0]["distance"] - middle)))


def _odd_gap(gaps: Sequence[CheckRow]) -> str:
    return say("sheet.gap_odd", names=_where("gap", gaps), shown=gaps[0]["shown"])


def _first(check: CheckRow, uneven: Container[str]) -> str:
    where = _where(check["kind"], [check])
    return say("sheet.check_first", kind=say(f"sheet.check_{_kind(check, uneven)}"), where=where, shown=check["shown"])


def _kind(check: CheckRow, uneven: Container[str]) -> str:
    """A check's kind; over uneven gaps a midpoint reads straight to the stake, not square off the string."""
    return "alternate_uneven" if check["kind"] == "alternate" and check["to"] in uneven else check["kind"]


def _uneven(answer: Answer) -> set[str]:
    """The stakes off whose neighbors' string the midpoint's distance isn't square."""
    found, stakes = set(), answer["stakes"]
    for before, here, after in zip(stakes, stakes[1:], stakes[2:], strict=False):
        along, up = after["x"] - before["x"], after["y"] - before["y"]
        string = hypot(along, up)
        square = abs(along * (here["y"] - before["y"]) - up * (here["x"] - before["x"])) / string
        straight = hypot(here["x"] - (before["x"] + after["x"]) / 2, here["y"] - (before["y"] + after["y"]) / 2)
        if straight - square > UNEVEN:
            found.add(here["name"])
    return found


def closing(answer: Answer) -> Iterator[Block]:
    """The gap that closes the work, asked for where the last stake was set."""
    for check in answer["checks"]:
        if check["kind"] == "closing":
            key = "sheet.closing" if check["judges"] else "sheet.closing_only"
            values = {"start": check["from"], "end": check["to"], "shown": check["shown"]}
            yield Paragraph(say(key, limit=check["limit_shown"], **values), "key")


def _where(kind: str, alike: Sequence[CheckRow]) -> str:
    if kind == "alternate":
        names = [say("sheet.over_string", stake=check["to"], string=_string_of(check)) for check in alike]
    elif kind == "ordinate":
        return say("sheet.at_along", along=alike[0]["along_shown"], stake=alike[0]["to"])
    else:
        names = [say("sheet.from_to", start=check["from"], end=check["to"]) for check in alike]
    if len(names) <= MANY // 2:
        return ", ".join(names)
    return say("sheet.and_more", names=", ".join(names[: MANY // 4]), count=len(names) - MANY // 4, last=names[-1])


def _string_of(check: CheckRow) -> str:
    """The two stakes that hold the string over whose middle a check is made."""
    start, end = check["from"].removeprefix("mid ").split("-")
    return say("sheet.from_to", start=start, end=end)
