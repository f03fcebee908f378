"""What the form sheet's front says in sentences: the second edge proved, the dig and its hubs, stakes and splices."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_boards import BoardsPart
from bowstring.report.forms.build_edges import EdgesPart, LineRow
from bowstring.report.forms.build_pour import DeepPart
from bowstring.words import say

_MOST_DIAGONALS = 5
"""Lengths of diagonals that differ and have room here: of more the long sheet has each bay's."""

_HUBS = "form_hubs"
"""The card of the hubs, which only a job has whose stakes are dug out."""

_FORM_OF = {"outside": "outer_form", "inside": "inner_form"}
"""The line of an edge's form stakes."""


def told_of(answer: Answer, edges: EdgesPart, boards: BoardsPart | None, deep: DeepPart | None) -> list[str]:
    """Return what proves the second edge, how it is dug, and how the boards are held."""
    check = _check(edges)
    told = [*(text for one in edges["seconds"] for text in (one["text"], one["blocked"]) if text)]
    told += [*_in_threes([*edges["form"], *edges["sides_how"]]), check] if edges["stick"] is None else [check]
    if edges["stick"] is not None:
        told += edges["form"][1:]  # how far off its stakes stand is told with each edge's
    told += edges["ends"]["told"]
    bank = " ".join(boards["bank"]) if boards else ""
    told.append(" ".join([_dig(answer, edges, deep), *edges["off_line"]]))
    if deep and deep["edge_dug"]:  # what holds it below the boards stands with its trench
        told.append(" ".join(text for text in (deep["edge_dug"], bank, deep["edge_past"]) if text))
        bank = ""
    banked = [bank] if bank else []
    if boards is None:
        return told
    if boards["remedy"]:  # no board to screw yet
        return [*told, *banked, boards["remedy"]]
    held = " ".join(_held(edges, boards))
    return [*told, held, say("forms.screws" if edges["stick"] is not None else "fill.screws"), *banked]


def _in_threes(texts: list[str]) -> list[str]:
    """Three sentences to a paragraph: what a pad's forms want fills half of its lines otherwise, and its plan has no
    room."""
    return [" ".join(texts[start : start + 3]) for start in range(0, len(texts), 3)]


def _check(edges: EdgesPart) -> str:
    """What proves the second edge: the diagonals, or how they are taped where there are too many to tell."""
    if edges["alike"]:
        return say("forms.diagonals", shown=edges["diagonal_shown"])
    if not edges["bays"] or edges["far_width"] is None:
        return _diagonals(edges) or (say("edges.check_each") if edges["bays"] else edges["check"])
    return _diagonals(edges) or f"{edges['check']} {say('edges.check_where')}"


def _held(edges: EdgesPart, boards: BoardsPart) -> Iterator[str]:
    """Yield of each edge how far off the layout's stakes its form stakes stand, how far apart, and where its boards
    meet."""
    lines = {one["key"]: one for one in edges["lines"]}
    for edge in boards["edges"]:
        told = [_stand(lines.get(_FORM_OF.get(edge["edge"], "")), edge["gap_shown"])]
        if edge["splices"]:
            told.append(say("forms.splices", places=", ".join(one["along_shown"] for one in edge["splices"])))
        yield say("forms.edge_held", name=edge["name"], told="; ".join(told))


def _stand(line: LineRow | None, gap: str) -> str:
    """How far off the layout's stakes an edge's form stakes stand, and how far apart."""
    if line is None or not line["off_shown"]:
        return say("forms.stakes_every", gap=gap)
    if line["yours"]:
        return say("forms.stakes_along", gap=gap)
    return say("forms.stakes_off", off=line["off_shown"], gap=gap)


def _diagonals(edges: EdgesPart) -> str:
    """Each bay's diagonals where they differ: the most frequent once, the bays of the others by name."""
    bays: dict[str, list[str]] = {}
    for bay in edges["bays"]:
        both = dict.fromkeys((bay["forth_shown"], bay["back_shown"]))
        bays.setdefault(" / ".join(both), []).append(f"{bay['first']}-{bay['last']}")
    if not bays or len(bays) > _MOST_DIAGONALS:
        return ""
    most = max(bays, key=lambda shown: len(bays[shown]))
    told = [f"{shown} {', '.join(names)}" for shown, names in bays.items() if shown != most]
    return say("forms.diagonals_each", told="; ".join([*told, say("forms.diagonals_rest", shown=most)]))


def _dig(answer: Answer, edges: EdgesPart, deep: DeepPart | None) -> str:
    """How far past each edge and how deep it is dug, where that is off the stakes, and how far off the hubs stand."""
    off = {one["key"]: one["off_shown"] for one in edges["lines"]}
    lines = [off[key] for key in ("dig_outside", "dig_inside") if off.get(key)]
    past = say("forms.past_edges", past=edges["overdig_shown"])
    if len(lines) > 1:
        past = say("forms.dig_lines", past=edges["overdig_shown"], outer=lines[0], inner=lines[1])
    if deep is None or not deep["dig_shown"]:
        told = say("forms.dig", past=past)
    else:
        key = "forms.dig_apron" if deep["dig_apron"] else "forms.dig_deep"
        told = say(key, past=past, deep=deep["dig_shown"], apron=deep["dig_apron"])
    hubs = next(
        (card["numbers"][0] for card in answer["form_cards"] if card["kind"] == _HUBS and card["numbers"]), None
    )
    if hubs is not None:
        return f"{told} {say('forms.hubs', shown=hubs['shown'], label=hubs['label'])}"
    return f"{told} {say('forms.hubs_first')}" if edges["dug_out"] else told
