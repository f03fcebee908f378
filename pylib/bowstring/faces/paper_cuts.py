"""The form sheet's cut list: which boards an edge takes, and what else is cut."""

from __future__ import annotations

from bowstring.report.forms.build_boards import BoardsPart, CutRow
from bowstring.words import say


def cut_rows(boards: BoardsPart) -> list[str]:
    """Return what is cut, a line each; a board's name where it isn't the one that bends."""
    edges, bent = ({edge[key] for edge in boards["edges"]} for key in ("name", "board"))
    return [
        _cut(row, boards["unit_shown"], whole=row["name"] in edges, bent=row["board"] in bent) for row in boards["cut"]
    ]


def _cut(row: CutRow, unit: str, *, whole: bool, bent: bool) -> str:
    """What is cut: along an edge the boards one after the other, else how many pieces from boards of which lengths;
    of another board than the ``bent`` one, which the line above tells, of which."""
    name = row["name"] if bent else f"{row['name']} {row['board']}"
    boards = f"{row['boards']} {unit}".strip()
    if whole:
        return say("forms.cut", name=name, boards=boards)
    return say("forms.cut_from", name=name, pieces=row["needs"], boards=boards)
