"""The long sheet's part on the form boards."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.report.alone import boards_of, edges_of
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_boards import BoardsPart
from bowstring.sheet.blocks import Block, Heading, Items, Paragraph, Table
from bowstring.words import say


def boards(answer: Answer) -> Iterator[Block]:
    """Yield what stands under Boards; nothing as long as the slab isn't said."""
    part = boards_of(answer)
    if part is None:
        edges = edges_of(answer)
        if edges is not None and edges["faces"]:
            yield Items(edges["faces"])
            yield from _footing(edges["footing"])
        return
    yield Paragraph(" ".join([*part["conclusion"], part["tighter_told"]]), "key")
    yield Items(part["cautions"], "caution")
    yield _bends(part)
    yield Paragraph(" ".join([*part["fails"], *part["bow"]]))
    if part["otherwise"]:
        yield Heading(say("boards.otherwise_head"))
        yield Items(part["otherwise"])
        yield _strips(part)
    yield Heading(say("boards.bending_head"))
    yield Items(part["bending"], first=1)
    yield Heading(say("boards.ends_head"))
    yield Items(part["ends"])
    if part["cut"]:
        yield from _cut(part)
    yield Heading(say("boards.stakes_head"))
    yield Items(part["stakes_how"])
    yield Heading(say("boards.taken_head"))
    yield Items(part["notes"])


def _footing(part: BoardsPart | None) -> Iterator[Block]:
    """How a wall's footing is formed, as a slab is."""
    if part is None:
        return
    yield Heading(say("walled.footing_title"))
    if part["cut"]:
        yield from _cut(part)
    yield Items([*part["stakes_how"], *part["notes"]])


def _bends(part: BoardsPart) -> Table:
    head = [say("boards.board"), say("boards.bends_to"), say("boards.here"), part["push_head"]]
    rows = [[row["name"], f"R {row['least_shown']}", row["verdict"], row["push_shown"]] for row in part["rows"]]
    return Table(head, rows)


def _strips(part: BoardsPart) -> Table:
    head = [say("boards.strips_head"), say("boards.bends_to"), say("boards.here"), say("boards.strip_longest")]
    rows = [[row["name"], f"R {row['radius_shown']}", row["verdict"], row["longest_shown"]] for row in part["strips"]]
    return Table(head, rows, say("boards.strips_note"))


def _cut(part: BoardsPart) -> Iterator[Block]:
    unit = part["unit_shown"]
    yield Heading(say("boards.cut_head"))
    boards_head = say("boards.boards_in", unit=unit) if unit else say("boards.boards")
    rows = [[row["name"], row["board"], row["needs"], row["boards"]] for row in part["cut"]]
    yield Table([say("boards.piece"), say("boards.board"), say("boards.needs"), boards_head], rows, part["cut_note"])
    if part["gave_way"]:
        yield Items(part["gave_way"], "caution")
    splices = [
        [edge["name"], splice["along_shown"], splice["text"]] for edge in part["edges"] for splice in edge["splices"]
    ]
    if splices:
        yield Table([say("boards.edge"), say("boards.at"), say("boards.where")], splices, say("boards.splices_head"))
    if part["buy"]:
        rows = [[f"{row['count']}", row["length_shown"], row["board"]] for row in part["buy"]]
        yield Table([say("boards.count"), say("boards.length"), say("boards.board")], rows, say("boards.buy_head"))
