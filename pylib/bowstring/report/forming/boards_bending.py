"""What bends, told: the list's rows, how a board is sprung, and where it breaks."""

from __future__ import annotations

from dataclasses import dataclass
from math import floor

from bowstring.forming.boards import LEVELS, POUND_FORCE, Board, least_edge, push, sprung
from bowstring.forming.loose_end import LooseEnd
from bowstring.forming.stock import FOOT, INCH
from bowstring.report.forming.boards_list import CLEAR, JOB, RANKS, SELECTED, Choice, FormedEdge, Looked
from bowstring.report.forms.build_boards import BoardRow, LevelChoice
from bowstring.units.tape import Tape
from bowstring.words import say

KILOGRAM_FORCE = 9.80665
COMMON = 14 * FOOT
"""The length of a board for which it is told how it springs: the nearest that is bought."""

_WHOLE = 0.01
_WORD = {JOB: "job", CLEAR: "clear", SELECTED: "selected"}


def radius_up(tape: Tape, metres: float) -> str:
    """Return a least radius, rounded up: to the inch, a tenth of a foot, or 10 mm."""
    step = INCH if tape.unit == "ft-in" else FOOT / 10 if tape.unit == "ft" else _WHOLE
    return tape.show(-floor(-metres / step + 1e-9) * step)


@dataclass(frozen=True)
class Sprung:
    """A bought board sprung to the edges: ``length`` metres, 0 where all bend too far for that to be told.

    ``shown``: its length; ``bow``: how far it stands off straight at the tighter edge; ``lines``: sentences. Each empty
    where the length is 0.
    """

    length: float
    shown: str
    bow: str
    lines: list[str]

    @property
    def head(self) -> str:
        """What stands over a column of pushes."""
        return say("boards.push_on", length=self.shown) if self.length else say("boards.push_none")


def sprung_board(choice: Choice, edges: tuple[FormedEdge, ...], tape: Tape) -> Sprung:
    """Return the bought board, near to the common length, that is no longer than the tighter radius, sprung."""
    tightest = tightest_of(edges)
    small = [length for length in choice.lengths if length <= tightest.radius]
    if not small:
        return Sprung(0.0, "", "", [])
    length = min(small, key=lambda length: (abs(length - COMMON), length))
    bows = {edge.key: tape.show(sprung(edge.radius, length)) for edge in edges}
    shown = tape.show_whole(length)
    bow = say("boards.bows", length=shown, **bows) if "inside" in bows else say(
        "fill.bows", length=shown, bow=bows[tightest.key])  # fmt: skip
    lines = [bow, say("boards.push_note")]
    return Sprung(length, shown, bows[tightest.key], lines)


def tightest_of(edges: tuple[FormedEdge, ...]) -> FormedEdge:
    """Return the edge that decides: the inner one but where a taper turns tighter on the outside."""
    return min(edges, key=lambda edge: (edge.radius, not edge.inner))


def tighter_told(choice: Choice, edges: tuple[FormedEdge, ...], tape: Tape) -> str:
    """Return which edge decides, and which board is figured with."""
    tightest = tightest_of(edges)
    alone = "pad.two_curves" if len(edges) > 1 else "fill.one_curve"
    key = alone if choice.alone else f"boards.tighter_{tightest.key}"
    said = say(key, radius=tape.show(tightest.radius))
    return said if choice.used is None else f"{said} {say('boards.use', board=name_of(choice.used.board))}"


def board_rows(choice: Choice, edges: tuple[FormedEdge, ...], tape: Tape, length: float) -> list[BoardRow]:
    """Return the list's boards; ``length``: of the one that is sprung, 0 where none can be told."""
    rows: list[BoardRow] = []
    for looked in choice.looked:
        board = looked.board
        least = least_edge(board, LEVELS[choice.level], inner=not choice.alone)
        force = push(board, tightest_of(edges).radius, length) if length and looked.rank <= RANKS[SELECTED] else None
        rows.append(
            {
                "name": name_of(board),
                "thickness": board.thickness,
                "height": board.height,
                "least": least,
                "least_shown": radius_up(tape, least),
                "outside": looked.at["outside"],
                "inside": looked.at.get("inside"),
                "verdict": verdict(looked, choice.level),
                "takes": looked.rank <= RANKS[choice.level],
                "push": force,
                "push_shown": say("boards.none") if force is None else pushed(tape, force),
                "used": looked is choice.used,
            }
        )
    return rows


def name_of(board: Board) -> str:
    """Return what a board is called: the crew's own has no name where none is said."""
    return board.name or say("boards.own")


def pushed(tape: Tape, newtons: float) -> str:
    """Return a force in whole pounds or kilograms, at least one."""
    unit = POUND_FORCE if tape.feet else KILOGRAM_FORCE
    count = max(1, round(newtons / unit))
    return say("boards.pounds" if tape.feet else "boards.kilograms", count=count)


def verdict(looked: Looked, level: str) -> str:
    """Return in a few words what a board does at both edges."""
    if looked.rank <= RANKS[level]:
        return say("boards.bends_just" if looked.is_close(level) else "boards.bends")
    if looked.rank == RANKS[CLEAR]:
        return say("boards.clear_only")
    if looked.rank == RANKS[SELECTED]:
        return say("boards.selected_only")
    outside = looked.at.get("outside")  # of a line's edges none is called so
    if outside is not None and RANKS[outside] <= RANKS[level]:
        return say("boards.outside_only")
    return say("boards.does_not")


def level_choices(choice: Choice) -> list[LevelChoice]:
    """Return how good the lumber may be."""
    return [
        {
            "key": level,
            "name": say(f"boards.level_{_WORD[level]}"),
            "more": say("boards.ratio", ratio=round(ratio)),
            "taken": level == choice.level,
        }
        for level, ratio in LEVELS.items()
    ]


def where_it_fails(choice: Choice, loose: LooseEnd | None, tape: Tape) -> list[str]:
    """Return where a board breaks, and the least radii at the lumber's level; ``loose``: the tighter edge's end."""
    ratio, level = LEVELS[choice.level], say(f"boards.level_{_WORD[choice.level]}")
    boards = [one.board for one in (choice.own, choice.thin, choice.thick) if one]
    radii = {name_of(board): radius_up(tape, least_edge(board, ratio, inner=not choice.alone)) for board in boards}
    least = [say("boards.stops_at", board=name, radius=radius) for name, radius in radii.items()]
    tighter = [say("boards.tighter", percent=round(100 * (loose.tightest - 1)))] if loose else []
    stops = say("boards.stops", level=level, boards="; ".join(least))
    return [say("boards.breaks"), *tighter, stops, say("boards.no_table")]
