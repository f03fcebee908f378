"""What bends, told: the list's rows, how a board is sprung, where it breaks, and what to do where none bends."""

from __future__ import annotations

from math import floor

from bowstring.forming.boards import LEVELS, POUND_FORCE, Board, kerfs, layers, least_edge, push, sprung
from bowstring.forming.stock import FOOT, INCH, Practice, Sheet
from bowstring.report.forming.boards_list import CLEAR, JOB, RANKS, SELECTED, Choice, Edge, Looked
from bowstring.report.forms.build_boards import BoardRow, LevelChoice, StripRow
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


def sprung_length(choice: Choice, tightest: float) -> float | None:
    """Return the bought length, near to the common one, whose spring can be told; ``None`` where all bend too far."""
    small = [length for length in choice.lengths if length <= tightest]
    return min(small, key=lambda length: (abs(length - COMMON), length), default=None)


def board_rows(choice: Choice, edges: tuple[Edge, ...], tape: Tape, length: float | None) -> list[BoardRow]:
    """Return the list's boards; ``length``: of the one that is sprung."""
    tightest = min(edge.radius for edge in edges)
    rows = []
    for looked in choice.looked:
        board = looked.board
        least = least_edge(board, LEVELS[choice.level], inner=True)
        force = None if length is None else push(board, tightest, length)
        rows.append(
            BoardRow(
                name=name_of(board),
                thickness=board.thickness,
                height=board.height,
                least=least,
                least_shown=radius_up(tape, least),
                outside=looked.at["outside"],
                inside=looked.at["inside"],
                verdict=verdict(looked, choice.level),
                takes=looked.rank <= RANKS[choice.level],
                push=force,
                push_shown=say("boards.none") if force is None else pushed(tape, force),
                used=choice.used is not None and looked is choice.used,
            )
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
        return say("boards.bends")
    if looked.rank == RANKS[CLEAR]:
        return say("boards.clear_only")
    if looked.rank == RANKS[SELECTED]:
        return say("boards.selected_only")
    outside = looked.at["outside"]
    if outside is not None and RANKS[outside] <= RANKS[level]:
        return say("boards.outside_only")
    return say("boards.does_not")


def strip_rows(choice: Choice, edges: tuple[Edge, ...], tape: Tape) -> list[StripRow]:
    """Return plywood strips, with the face grain square to the bend and along it."""
    return [
        _strip(choice.practice, sheet, along, edges, tape)
        for along in (False, True)
        for sheet in choice.practice.sheets
    ]


def _strip(practice: Practice, sheet: Sheet, along: bool, edges: tuple[Edge, ...], tape: Tape) -> StripRow:
    radius = sheet.along if along else sheet.across
    takes = all(edge.radius >= radius for edge in edges)
    return StripRow(
        name=say("boards.strip_along" if along else "boards.strip_across", thickness=tape.show_limit(sheet.thickness)),
        radius=radius,
        radius_shown=radius_up(tape, radius),
        longest_shown=tape.show_whole(practice.strip_lengths[along]),
        takes=takes,
        verdict=say("boards.bends" if takes else "boards.does_not"),
    )


def level_choices(choice: Choice) -> list[LevelChoice]:
    """Return how good the lumber may be."""
    return [
        LevelChoice(
            key=level,
            name=say(f"boards.level_{_WORD[level]}"),
            more=say("boards.ratio", ratio=round(ratio)),
            taken=level == choice.level,
        )
        for level, ratio in LEVELS.items()
    ]


def how_it_bows(choice: Choice, edges: tuple[Edge, ...], tape: Tape, length: float | None) -> list[str]:
    """Return how far a board is sprung at each edge."""
    if length is None:
        return []
    bows = {edge.key: tape.show(sprung(edge.radius, length)) for edge in edges}
    shown = tape.show_whole(length)
    return [say("boards.bows", length=shown, **bows), say("boards.push_note")]


def where_it_fails(choice: Choice, edges: tuple[Edge, ...], tape: Tape, tighter: float | None) -> list[str]:
    """Return where a board breaks, and the least radii at the level of the lumber."""
    ratio = LEVELS[choice.level]
    least = [
        say(
            "boards.stops_at",
            board=name_of(one.board),
            radius=radius_up(tape, least_edge(one.board, ratio, inner=True)),
        )
        for one in (*((choice.own,) if choice.own else ()), choice.thin, choice.thick)
    ]
    found = [say("boards.breaks")]
    if tighter is not None:
        found.append(say("boards.tighter", percent=round(100 * (tighter - 1))))
    found += [
        say("boards.stops", level=say(f"boards.level_{_WORD[choice.level]}"), boards="; ".join(dict.fromkeys(least)))
    ]
    return [*found, say("boards.no_table")]


def otherwise(choice: Choice, edges: tuple[Edge, ...], tape: Tape) -> list[str]:
    """Return what to do where the board of the row doesn't bend in job lumber."""
    if choice.told.rank == 0:
        return []
    practice, tightest = choice.practice, min(edge.radius for edge in edges)
    found = [_plywood(practice, tightest, tape), *_layered(choice, edges, tape)]
    found += [line for edge in edges for line in _kerfed(choice, edge, tape)]
    return [*found, say("boards.maker")]


def _plywood(practice: Practice, tightest: float, tape: Tape) -> str:
    across = [sheet for sheet in practice.sheets if sheet.across <= tightest]
    if not across:
        return say("boards.no_plywood", radius=radius_up(tape, practice.sheets[0].across))
    thickest, longest = across[-1], tape.show_whole(practice.strip_lengths[0])
    return say("boards.plywood", thickness=tape.show_limit(thickest.thickness), longest=longest)


def _layered(choice: Choice, edges: tuple[Edge, ...], tape: Tape) -> list[str]:
    practice = choice.practice
    whole = practice.thicknesses[0]
    made = layers(min(edge.radius for edge in edges), LEVELS[choice.level], whole, practice.step)
    if made is None:
        return []
    count, thick = made
    if count == 1:
        return []
    longer = max(edge.angle for edge in edges) * thick
    return [say("boards.layers", count=count, thickness=tape.show_limit(thick)), say("boards.layer_longer",
            longer=tape.show_up(longer))]  # fmt: skip


def _kerfed(choice: Choice, edge: Edge, tape: Tape) -> list[str]:
    """Return the kerfs that let the thick board follow an edge that it doesn't take."""
    practice, thick = choice.practice, choice.thick
    if thick.at[edge.key] == JOB:
        return []
    depth = floor(thick.board.thickness * 2 / 3 / practice.bow + 1e-9) * practice.bow
    count, apart = kerfs(edge.length, edge.angle, edge.radius, thick.board.thickness, practice.saw, practice.kerf_miss)
    if apart < practice.clear / 12:
        return []
    sentences = [say(f"boards.kerfs_{edge.key}", board=thick.board.name, count=count, apart=tape.show(tape.down(apart)),
                     depth=tape.show_limit(depth)), say("boards.kerfs_how")]  # fmt: skip
    return [*sentences, say("boards.kerfs_cover")] if not edge.inner else sentences
