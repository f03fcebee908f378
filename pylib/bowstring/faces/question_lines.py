"""The lines of the numbers face: each other question with its answer, or its usual one, in words."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from itertools import groupby

from bowstring.faces.one_line import OPEN, SAID, USUAL, WRONG, QuestionLine, capital, length_of, line_of, metres_of
from bowstring.faces.questions import ASKS, panel_of
from bowstring.faces.settling import Arcs, Typed
from bowstring.faces.slab_lines import is_wall, slab_line, slope_line
from bowstring.faces.typed_dig import clear_of_dig
from bowstring.job.terms import OTHER, PIECES, SIDES
from bowstring.units.sizes import FOUR_FEET
from bowstring.words import say

USUAL_GAP = 1.2
"""Metres: the usual widest gap on a tape in metres; on one in feet it is four feet."""
_TOLD = 2
_PIECE = re.compile(rf"({'|'.join(PIECES)})-([0-9]+)-")
_REST = ("title", "note", "ties", "known", "fall", "errors", "control", "got")


def question_lines(arcs: Arcs, typed: Typed, wrong: dict[str, str]) -> dict[str, QuestionLine]:
    """Return the lines by their keys; ``wrong`` is what is wrong with a field of a panel, by the field's id."""
    lines = {
        "pieces": _pieces(typed),
        "hand": _hand(arcs, typed),
        "line": _line(arcs, typed),
        "slab": _slab(arcs, typed),
        "slope": slope_line(arcs, typed),
        "ends": _ends(arcs, typed),
        "way": _way(typed),
        "fine": _fine(arcs, typed),
        "method": _method(arcs, typed),
        "rest": _rest(typed),
    }
    for name, text in wrong.items():
        panel = panel_of(name)
        if panel and not is_asked(name, arcs, typed):
            lines[panel] = line_of(text, WRONG)
    for key in ASKS:
        if lines[key]["state"] == OPEN and not lines[key]["asked"]:
            lines[key]["asked"] = say(f"numbers.panel_{key}")
    return lines


def _slab(arcs: Arcs, typed: Typed) -> QuestionLine:
    """The slab's line; of a wall, too, that its stakes would be dug out."""
    line = slab_line(arcs, typed, side_of(arcs, typed))
    if is_wall(typed) and clear_of_dig(arcs, typed, side_of(arcs, typed)):
        return line_of(say("numbers.joint").join([line["text"], say("walled.in_dig_row")]), line["state"])
    return line


def side_of(arcs: Arcs, typed: Typed) -> str | None:
    """Return the hand on which the curve is for somebody at A who faces B, ``None`` where nothing says it."""
    walking = typed.get("start") == "one-end"
    said = typed.get("turn" if walking else "side", "")
    if said in SIDES:
        return OTHER[said] if walking else said
    return arcs.hand


def turn_of(typed: Typed) -> str | None:
    """Return to which hand the arc is said to turn for who walks from A to B, ``None`` where it isn't."""
    walking = typed.get("start") == "one-end"
    said = typed.get("turn" if walking else "side", "")
    return (said if walking else OTHER[said]) if said in SIDES else None


def _hand(arcs: Arcs, typed: Typed) -> QuestionLine:
    walking = typed.get("start") == "one-end"
    side, said = side_of(arcs, typed), typed.get("turn" if walking else "side", "") in SIDES
    if side is None:
        return line_of(say("numbers.open"), OPEN)
    both = {"hand": say(f"numbers.hand.{side}"), "turn": say(f"numbers.hand.{OTHER[side]}")}
    if arcs.hand and side != arcs.hand:
        points, yours = (say(f"numbers.hand.{hand}") for hand in (arcs.hand, side))
        return line_of(say("numbers.hand_points_other", points=points, said=yours), WRONG)
    if not said:
        return line_of(say("numbers.hand_points", **both), SAID)
    return line_of(say("numbers.hand_walking" if walking else "numbers.hand_standing", **both), SAID)


def _line(arcs: Arcs, typed: Typed) -> QuestionLine:
    drawn_to, driven = typed.get("drawn_to", ""), typed.get("driven", "taken")
    if not drawn_to:
        return line_of(say("numbers.open"), OPEN)
    if drawn_to == "unsure":
        return line_of(say("numbers.line_unsure"), WRONG)
    values = {"line": capital(say(f"form.drawn_to.{drawn_to}")), "driven": say(f"numbers.driven.{driven}")}
    offset, toward = length_of(arcs, typed, "offset"), typed.get("toward", "")
    if is_edge_open(typed) and length_of(arcs, typed, "width"):
        return {**line_of(say("numbers.line_edge", width=length_of(arcs, typed, "width")), OPEN),
                "asked": say("numbers.edge_asked")}  # fmt: skip
    if is_offset_open(arcs, typed):
        return {**line_of(say("numbers.line_side", offset=offset), OPEN), "asked": say("numbers.side_asked")}
    if not offset or not toward:
        return line_of(say("numbers.line_on", **values), SAID)
    return line_of(say(f"numbers.line_{toward}", offset=offset, **values), SAID)


def is_edge_open(typed: Typed) -> bool:
    """Tell whether nobody has said where across the work the stakes stand: it has a width, the line is its middle."""
    drawn_to = typed.get("drawn_to")
    return drawn_to == "centre" and "width" in typed and "offset" not in typed


def is_offset_open(arcs: Arcs, typed: Typed) -> bool:
    """Tell whether an offset is typed, and nobody has said to which side of the line."""
    return not typed.get("toward") and bool(metres_of(arcs, typed, "offset"))


def is_asked(name: str, arcs: Arcs, typed: Typed) -> bool:
    """Tell whether what a field lacks is a question that its line asks already: to which side of the line the stakes
    stand, and on which hand the curve is (of a line's arc, to which it turns)."""
    if name == "toward":
        return is_offset_open(arcs, typed)
    return panel_of(name) == "hand" and side_of(arcs, typed) is None


def _ends(arcs: Arcs, typed: Typed) -> QuestionLine:
    ends = {end: typed.get(f"ends-{end}", "") for end in "AB"}
    if any(ends.values()):
        from bowstring.job.landmarks import doubts_of_landmarks  # with all that a construction is

        for kind, end, _landmark in doubts_of_landmarks(ends, {}):
            return line_of(say(f"numbers.ends_{kind}", end=end), WRONG)
    found = [length_of(arcs, typed, f"found-chord-{row}") for row in range(2)]
    if any(found) and arcs.settled:
        chord = arcs.shown.show(arcs.settled.arc.chord)
        return line_of(say("numbers.ends_found", found=found[0] or found[1], drawn=chord), SAID)
    start = typed.get("start", "ends")
    said = SAID if any(ends.values()) or start != "ends" else USUAL
    if start != "ends":
        return line_of(say(f"numbers.ends_{start.replace('-', '_')}"), said)
    if not any(ends.values()):
        return line_of(say("numbers.ends_usual"), said)
    first, second = (capital(ends["A"]) or "A", ends["B"] or "B")
    return line_of(say("numbers.ends_named", first=first, second=second), said)


_RUNS = 3
"""Of so many stretches of one kind each is told."""


def _pieces(typed: Typed) -> QuestionLine:
    """The line of the other pieces: how many stand before the arc and after it, in the order as
    they are laid; of many pieces in turn, each kind's count."""
    told = []
    for group in ("before", "after"):
        rows = {int(name.split("-")[1]): "arc" for name in typed if name.startswith(f"{group}-")}
        rows |= {row: "straight" for row in rows if f"{group}-{row}-straight" in typed}
        laid = [rows[row] for row in sorted(rows)]
        runs = [(kind, len([*run])) for kind, run in groupby(laid)]
        if len(runs) > _RUNS:
            runs = [(kind, laid.count(kind)) for kind in dict.fromkeys(laid)]
        counted = [say(f"numbers.pieces_{kind}{'' if count == 1 else 's'}", count=count) for kind, count in runs]
        if counted:
            told.append(say(f"numbers.pieces_{group}", pieces=say("numbers.joint").join(counted)))
    if "station" in typed:
        told.append(say("numbers.pieces_from", station=typed["station"]))
    return _list(told, say("numbers.pieces_usual"))


def _way(typed: Typed) -> QuestionLine:
    pieces = [say("numbers.way_centre")] if typed.get("centre") == "reachable" else []
    names = [text for name, text in typed.items() if name.startswith("ground-") and name.endswith("-name")]
    pieces += names[:_TOLD]
    if len(names) > _TOLD:
        pieces.append(say("numbers.way_more", count=len(names) - _TOLD))
    if any(name.startswith("room-") for name in typed):
        pieces.append(say("numbers.way_room"))
    pieces += [say("numbers.way_kept", number=number, names=", ".join(told)) for number, told in _kept_ways(typed)]
    return _list(pieces, say("numbers.way_usual"))


def _kept_ways(typed: Typed) -> Iterator[tuple[int, list[str]]]:
    """What was entered for the other arcs of a line while they were staked, each with the number of its piece."""
    found = {(one[1], int(one[2])) for name in typed if (one := _PIECE.match(name))}
    before, after = (sorted(row for group, row in found if group == name) for name in PIECES)
    numbered = [(number, PIECES[0], row) for number, row in enumerate(before, 1)]
    numbered += [(number, PIECES[1], row) for number, row in enumerate(after, len(before) + 2)]  # past the staked arc
    for number, group, row in numbered:
        try:
            kept = json.loads(typed.get(f"{group}-{row}-more", "{}"))
        except ValueError:
            continue  # another page's: nothing is told of what can't be read
        if names := [str(kept[name]) for name in kept if name.startswith("ground-") and name.endswith("-name")]:
            yield number, names


def _fine(arcs: Arcs, typed: Typed) -> QuestionLine:
    pieces = [say("numbers.fine_marks", mark=arcs.tape.show_mark())]
    tolerance = length_of(arcs, typed, "tolerance", small=True)
    if tolerance:
        pieces.append(say("numbers.fine_within", tolerance=tolerance))
    usual = arcs.shown.show(FOUR_FEET if arcs.tape.feet else USUAL_GAP)
    if "levels" in typed:
        pieces.append(say("numbers.fine_rounds", count=typed["levels"]))
    else:
        pieces.append(say("numbers.fine_gaps", gap=length_of(arcs, typed, "spacing") or usual))
    said = any(name != "unit" and panel_of(name) == "fine" for name in typed)
    return line_of(say("numbers.joint").join(pieces), SAID if said else USUAL)


def _method(arcs: Arcs, typed: Typed) -> QuestionLine:
    method = typed.get("method", "")
    if method:
        return line_of(say("numbers.method_said", method=capital(say(f"form.method.{method}"))), SAID)
    return line_of(say("numbers.method_advised" if arcs.settled else "numbers.method_waits"), USUAL)


def _rest(typed: Typed) -> QuestionLine:
    heads = [head for head in _REST if any(name == head or name.startswith(f"{head}-") for name in typed)]
    return _list([say(f"numbers.rest_{head}") for head in (*_of_the_arc(typed), *heads)], say("numbers.rest_usual"))


def _of_the_arc(typed: Typed) -> Iterator[str]:
    for name in ("diameter", "degree", "points", "three_sides"):
        if any(field.startswith(f"arc-{name}") and not field.endswith("_by") for field in typed):
            yield name


def _list(pieces: list[str], usual: str) -> QuestionLine:
    return line_of(capital(say("numbers.joint").join(pieces)), SAID) if pieces else line_of(usual, USUAL)
