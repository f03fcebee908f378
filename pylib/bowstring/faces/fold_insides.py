"""What stands inside a fold of Why: parts of the long sheet, and what has no part of its own there."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from bowstring.report.forms.answer import Answer
from bowstring.sheet import outline
from bowstring.sheet.blocks import Block, Drawing, Heading, Items, Paragraph, Section, Table
from bowstring.sheet.method import halves
from bowstring.words import say


def section_of(answer: Answer, key: str) -> Section | None:
    """Return what stands inside a fold, or ``None`` where this answer has nothing for it."""
    if key in _OWN:
        blocks = list(_OWN[key](answer))
    else:
        blocks = [block for part in _PARTS.get(key, (key,)) for block in _of_sheet(answer, part)]
    return Section(key, say(f"why.{key}"), blocks) if blocks else None


def _of_sheet(answer: Answer, part: str) -> Iterator[Block]:
    section = outline.part(answer, part)
    if section:
        yield from section.blocks


def _by_hand(answer: Answer) -> Iterator[Block]:
    """Each round of halving worked with a pencil."""
    if not halves(answer):
        return
    for row in answer["halving"]:
        if not row["by_hand"]:
            continue
        yield Heading(say("sheet.squaring_level", level=row["level"], sagitta=row["sagitta_shown"]))
        yield Paragraph(" ".join([row["how"] or "", row["squaring"]["text"]]).strip())
        yield from (Paragraph(line, "worked") for line in row["by_hand"])


def _ends(answer: Answer) -> Iterator[Block]:
    """Where A and B are, and what finds them again; the steps that set them are the stakes' face's."""
    yield Paragraph(answer["hand"], "key")
    if any(answer["ends"].values()):
        names = {end: answer["ends"][end] or say("sheet.no_landmark") for end in ("A", "B")}
        key = "sheet.landmarks_drawn" if answer["offset"] else "sheet.landmarks"
        yield Paragraph(say(key, first=names["A"], second=names["B"]), "key")
    ties = [
        [end, tie["to"], tie["shown"]] for end in ("A", "B") for tie in answer["ties"].get(end, ())
    ]  # fmt: skip
    if ties:
        yield Table([say("sheet.end"), say("sheet.tied_to"), say("sheet.distance")], ties, say("sheet.ties_caption"))


def _found(answer: Answer) -> Iterator[Block]:
    """The chord as it was measured, and what that makes of the arc."""
    fit = answer["fit"]
    if fit:
        yield from outline.fit_blocks(fit)
        yield Items(fit["slips"])


def _arc(answer: Answer) -> Iterator[Block]:
    tables = list(_of_sheet(answer, "arc"))
    yield from tables[:-1] if answer["fit"] else tables  # the chord found has a fold of its own


def _site(answer: Answer) -> Iterator[Block]:
    """The plan of what is there, and which line of each method it stops."""
    site = answer["site"]
    if not site["obstacles"] and not site["known"]:
        return
    yield Drawing("site")
    blocks = [(row["name"], block["text"]) for row in answer["methods"] for block in row["blocks"]]
    yield Items([say("why.blocks", method=name, text=text) for name, text in dict.fromkeys(blocks)])


def _methods(answer: Answer) -> Iterator[Block]:
    """The advice and all methods, without the plan of the site: that has a fold of its own."""
    yield from (block for block in _of_sheet(answer, "advice") if not isinstance(block, Drawing))


def _before(answer: Answer) -> Iterator[Block]:
    yield from _of_sheet(answer, "stops")
    yield from _of_sheet(answer, "before")


_OWN: dict[str, Callable[[Answer], Iterator[Block]]] = {
    "methods": _methods,
    "by-hand": _by_hand,
    "ends": _ends,
    "found": _found,
    "arc": _arc,
    "site": _site,
    "before": _before,
}
_PARTS: dict[str, tuple[str, ...]] = {"stakes": ("between", "stakes")}
"""The parts of the sheet that a fold has, where it isn't the one of its own name."""
