"""Which arc of a line of several pieces a sheet is for: said wherever its stakes are, as each arc has an A and a B."""

from __future__ import annotations

from bowstring.report.alone import untitled
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_lined import LinedPiece
from bowstring.sheet.facing import away_hand
from bowstring.words import say


def title_of(answer: Answer) -> str:
    """Return a job's title; of one without, what an arc is called, or a line, whichever of its arcs is staked."""
    part = answer["lined"]
    if part is None or len(part["pieces"]) < 2:
        return answer["title"] or untitled(answer)
    return answer["title"] or say("sheet.untitled_line", count=len(part["pieces"]))


def arc_of(answer: Answer) -> str:
    """Return what the staked arc of a line is called, empty for an arc alone."""
    part = answer["lined"]
    if part is None or len(part["pieces"]) < 2:
        return ""
    return next((piece["name"] for piece in part["pieces"] if piece["staked"]), "")


def arc_title(answer: Answer) -> str:
    """Return the title of an arc's own sheet: the job's, and which arc of its line it is; all have that title else."""
    arc = arc_of(answer)
    return say("paper.title_of_arc", title=title_of(answer), arc=arc) if arc else title_of(answer)


def of_line(answer: Answer) -> str:
    """Return which piece is staked, where its A is and its stations, empty for an arc alone."""
    part = answer["lined"]
    if part is None or len(part["pieces"]) < 2:
        return ""
    at, count = part["at"], len(part["pieces"])
    told = say("lined.staked_first" if at == 1 else "lined.staked", at=at, count=count, before=at - 1)
    return " ".join(one for one in (told, part["stations_shown"]) if one)


def other_arcs(answer: Answer) -> list[LinedPiece]:
    """Return the arcs that are staked by themselves, in the line's order."""
    part = answer["lined"]
    return [piece for piece in part["pieces"] if piece["kind"] == "arc" and not piece["staked"]] if part else []


def others_told(answer: Answer) -> str:
    """Return which other arcs of the line have sheets of their own, empty where there are none."""
    others = other_arcs(answer)
    return say("lined.own_sheets", arcs=", ".join(piece["name"] for piece in others)) if others else ""


def concrete_told(answer: Answer) -> list[str]:
    """Return on which hand of a line's staked arc the concrete is, nothing of an arc alone."""
    part = answer["lined"]
    return [part["concrete_at_arc"]] if part and part["concrete_at_arc"] else []


def with_others(answer: Answer) -> str:
    """Return the same with the hand to which the arc turns, the one that the concrete is on, and the arcs that have
    sheets of their own, for paper; empty for an arc alone."""
    told, own = of_line(answer), others_told(answer)
    turns = say("lined.it_turns", turn=away_hand(answer)) if answer["side"] else ""
    return " ".join(one for one in (told, turns, *concrete_told(answer), own) if one) if told else ""
