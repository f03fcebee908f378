"""The page of the build's boards."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.faces.build_parts import Cell, Choice, Row, choices, conclusion, folded, heading, note, paragraph, table
from bowstring.report.alone import boards_of, edges_of
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_boards import BoardsPart
from bowstring.words import say


def page_html(answer: Answer) -> str:
    """Return the inside of the page, under its drawing."""
    part = boards_of(answer)
    if part is None:
        return _of_wall(answer)
    return "".join(_page(part))


def _of_wall(answer: Answer) -> str:
    """The page of a wall: its faces and its footing's forms."""
    edges = edges_of(answer)
    if edges is None or not edges["faces"]:
        return ""
    row = next(row for row in answer["build"] if row["key"] == "boards")
    footing, told = edges["footing"], edges["faces"]
    low = footing["notes"] if footing else []  # of a board that is too low for it: with its sign
    lines = "".join(note(text) if text in low else paragraph(text) for text in told[1:])
    return conclusion(told[0], row["more"]) + lines + _footing(footing)


def _footing(part: BoardsPart | None) -> str:
    """How a wall's footing is formed, as a slab is: the cut list, what is bought, the stakes."""
    if part is None:
        return ""
    count = sum(row["count"] for row in part["buy"])
    told = say("walled.footing_list", boards=count, stakes=part["with_spare"])
    inside = "".join(_cut(part)) if part["cut"] else ""
    inside += heading(say("boards.stakes_head")) + each(part["stakes_how"])
    inside += heading(say("boards.taken_head")) + each(part["notes"])
    return folded(say("walled.footing_title"), told, inside)


def _page(part: BoardsPart) -> Iterator[str]:
    yield conclusion("\n".join(part["conclusion"]), part["tighter_told"])
    yield _boards(part)
    yield paragraph(say("boards.how_good"))
    yield _levels(part)
    if part["otherwise"]:
        yield heading(say("boards.otherwise_head"))
        yield each(part["otherwise"])
        yield _strips(part)
    yield heading(say("boards.fails_head"))
    yield paragraphs(part["fails"])
    yield paragraphs(part["bow"])
    yield heading(say("boards.bending_head"))
    yield "".join(note(text) for text in part["cautions"])
    yield _ordered(part["bending"])
    yield heading(say("boards.ends_head"))
    yield each(part["ends"])
    if part["cut"]:
        yield from _cut(part)
    yield heading(say("boards.stakes_head"))
    yield each(part["stakes_how"])
    first, *rest = part["notes"]
    yield folded(say("boards.taken_head"), first, "".join(paragraph(text, quiet=True) for text in rest))


def paragraphs(texts: list[str]) -> str:
    """Return sentences as one paragraph, nothing where there is none."""
    return paragraph(" ".join(texts)) if texts else ""


def each(texts: list[str]) -> str:
    """Return sentences, each a paragraph: what is looked up while a hand is at work."""
    return "".join(map(paragraph, texts))


def _radius(shown: str) -> str:
    return f"R\N{NO-BREAK SPACE}{shown}"


def _ordered(texts: list[str]) -> str:
    return "".join(paragraph(f"{number}. {text}") for number, text in enumerate(texts, 1))


def _boards(part: BoardsPart) -> str:
    heads = [say("boards.board"), say("boards.bends_to"), say("boards.here"), part["push_head"]]
    rows = [
        Row(row["name"], [_radius(row["least_shown"]), Cell(row["verdict"], fits=row["takes"]), row["push_shown"]],
            key=row["used"], over=True)
        for row in part["rows"]
    ]  # fmt: skip
    return table(heads[1:], rows, say("boards.title"))


def _levels(part: BoardsPart) -> str:
    buttons = [Choice(one["name"], {"board-level": one["key"]}, one["more"], one["taken"]) for one in part["levels"]]
    return choices(say("boards.how_good"), buttons)


def _strips(part: BoardsPart) -> str:
    heads = [say("boards.strips_head"), say("boards.bends_to"), say("boards.strip_longest")]
    rows = [
        Row(row["name"], [Cell(_radius(row["radius_shown"]), fits=row["takes"]), row["longest_shown"]])
        for row in part["strips"]
    ]
    return table(heads, rows, say("boards.strips_head")) + paragraph(say("boards.strips_note"), quiet=True)


def _cut(part: BoardsPart) -> Iterator[str]:
    unit = part["unit_shown"]
    boards = say("boards.boards_in", unit=unit) if unit else say("boards.boards")
    yield heading(say("boards.cut_head"), say("boards.cut_from", lengths=part["stock_shown"], unit=unit).strip())
    rows = [Row(row["name"], [row["needs"], row["boards"]], small=row["board"], over=True) for row in part["cut"]]
    yield table([say("boards.needs"), boards], rows, say("boards.cut_head"))
    yield paragraph(part["cut_note"]) if part["cut_note"] else ""  # none for straight forms alone
    yield paragraphs(part["gave_way"])
    splices = [(edge["name"], splice) for edge in part["edges"] for splice in edge["splices"]]
    if splices:
        rows = [
            Row(splice["along_shown"], [Cell(splice["text"], quiet=True), Cell(name, quiet=True)])
            for name, splice in splices
        ]
        yield heading(say("boards.splices_head"))
        yield table([say("boards.at"), say("boards.where"), say("boards.edge")], rows, say("boards.splices_head"))
    buy = [Row(f"{row['count']}", [row["length_shown"], row["board"]]) for row in part["buy"]]
    if buy:
        yield heading(say("boards.buy_head"))
        yield table([say("boards.count"), say("boards.length"), say("boards.board")], buy, say("boards.buy_head"))
