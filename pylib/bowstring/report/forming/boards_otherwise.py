"""What to do where no board bends: plywood strips, layers, kerfs, or the maker's figure."""

from __future__ import annotations

from math import floor

from bowstring.forming.boards import LEVELS, kerfed_bends, kerfs, layers
from bowstring.forming.stock import Practice, Sheet
from bowstring.report.forming.boards_bending import radius_up, tightest_of
from bowstring.report.forming.boards_list import JOB, OTHER_CURVE, RANKS, SELECTED, Choice, FormedEdge
from bowstring.report.forms.build_boards import StripRow
from bowstring.units.tape import Tape
from bowstring.words import say

CLOSEST = 12
"""Kerfs to the foot: a board that is cut more often breaks in the hand (common practice, no source)."""


def strip_rows(choice: Choice, edges: tuple[FormedEdge, ...], tape: Tape) -> list[StripRow]:
    """Return plywood strips, with the face grain square to the bend and along it."""
    return [
        _strip(choice.practice, sheet, along, edges, tape)
        for along in (False, True)
        for sheet in choice.practice.sheets
    ]


def _strip(practice: Practice, sheet: Sheet, along: bool, edges: tuple[FormedEdge, ...], tape: Tape) -> StripRow:
    radius = sheet.along if along else sheet.across
    takes = all(edge.radius >= radius for edge in edges)
    return {
        "name": say(
            "boards.strip_along" if along else "boards.strip_across", thickness=tape.show_limit(sheet.thickness)
        ),
        "radius": radius,
        "radius_shown": radius_up(tape, radius),
        "longest_shown": tape.show_whole(practice.strip_lengths[along]),
        "takes": takes,
        "verdict": say("boards.bends" if takes else "boards.does_not"),
    }


def otherwise(choice: Choice, edges: tuple[FormedEdge, ...], tape: Tape) -> list[str]:
    """Return what to do where the board of the row doesn't bend in job lumber."""
    if choice.told.rank == 0:
        return []
    found = [say("boards.try_selected")] if choice.told.rank == RANKS[SELECTED] and choice.level != SELECTED else []
    found.append(plywood(choice.practice, tightest_of(edges).radius, tape))
    return [*found, *layered(choice, edges, tape), *_kerfed(choice, edges, tape), say("boards.maker")]


def remedy(choice: Choice, edges: tuple[FormedEdge, ...], tape: Tape) -> str:
    """Return what bends where no board of the list does, in one line; empty where one does."""
    if choice.used is not None:
        return ""
    practice, tightest = choice.practice, tightest_of(edges)
    found = [say("boards.or_picked")] if choice.told.rank == RANKS[SELECTED] and choice.level != SELECTED else []
    found += [say("boards.or_plywood", thickness=tape.show_limit(sheet.thickness))
              for sheet in [one for one in practice.sheets if one.across <= tightest.radius][-1:]]  # fmt: skip
    made = layers(tightest.radius, LEVELS[choice.level], practice.thicknesses[0], practice.step)
    found += (
        [say("boards.or_layers", count=made[0], thickness=tape.show_limit(made[1]))] if made and made[0] > 1 else []
    )
    cuts = kerf_words(choice, tightest, tape)
    found += [say("boards.or_kerfs", board=cuts[1]["board"])] if cuts else []
    return say("boards.instead", list="; ".join(found or [say("boards.or_maker")]))


def plywood(practice: Practice, tightest: float, tape: Tape) -> str:
    """Return which plywood takes a radius, in metres."""
    across = [sheet for sheet in practice.sheets if sheet.across <= tightest]
    if not across:
        return say("boards.no_plywood", radius=radius_up(tape, practice.sheets[0].across))
    thickest, longest = across[-1], tape.show_whole(practice.strip_lengths[0])
    told = say("boards.plywood", thickness=tape.show_limit(thickest.thickness), longest=longest)
    return f"{told} {_off(thickest.thickness, tape)}"


def _off(thickness: float, tape: Tape) -> str:
    """Return how far off the edge form stakes stand for something so thick, metres."""
    return say("boards.then_off", size=tape.show_limit(thickness))


def layered(choice: Choice, edges: tuple[FormedEdge, ...], tape: Tape) -> list[str]:
    """Return of how many thin layers a board is built up."""
    practice = choice.practice
    whole = practice.thicknesses[0]
    made = layers(tightest_of(edges).radius, LEVELS[choice.level], whole, practice.step)
    if made is None:
        return []
    count, thick = made
    if count == 1:
        return []
    longer = max(edge.angle for edge in edges) * thick
    layers_told = say("boards.layers", count=count, thickness=tape.show_limit(thick))
    return [f"{layers_told} {_off(count * thick, tape)}", say("boards.layer_longer", longer=tape.show_up(longer))]


def _kerfed(choice: Choice, edges: tuple[FormedEdge, ...], tape: Tape) -> list[str]:
    """Return the kerfs that let the thick board follow the edges that it doesn't take."""
    found = []
    for edge in edges:
        if edge.key == OTHER_CURVE:
            continue  # as the first
        cuts = kerf_words(choice, edge, tape)
        if cuts:
            count, words = cuts
            told = say(f"boards.kerfs_{edge.key}", count=count, **words)
            found.append(f"{told} {_off(choice.thick.board.thickness, tape)}")
            found += [] if edge.inner else [say("boards.kerfs_cover")]
    return [*found, say("boards.kerfs_how")] if found else []


def kerf_words(choice: Choice, edge: FormedEdge, tape: Tape) -> tuple[int, dict[str, str]] | None:
    """Return how many cuts let the thick board follow an edge, and what is told of them; ``None`` where it bends as it
    is, or would break between or at them."""
    practice, board = choice.practice, choice.thick.board
    count, apart = kerfs(edge.length, edge.angle, edge.radius, board.thickness, practice.saw, practice.kerf_miss)
    if choice.thick.at[edge.key] == JOB or apart < practice.clear / CLOSEST:
        return None
    depth = floor(board.thickness * 2 / 3 / practice.bow + 1e-9) * practice.bow
    if not kerfed_bends(edge.radius, board, depth, LEVELS[choice.level], edge.inner):
        return None
    told = {"board": board.name, "apart": tape.show(tape.down(apart)), "depth": tape.show_limit(depth)}
    return count, told
