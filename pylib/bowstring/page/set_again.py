"""Panels of steps at which nothing is typed: what is set again there, and the cards where that is done."""

from __future__ import annotations

from collections.abc import Sequence

from bowstring.faces.got import Panel, Way
from bowstring.page.found import Proved, proved_by
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.steps import StepRow
from bowstring.words import say


def end_panel(step: StepRow, sets: Sequence[str]) -> Panel:
    """Return the panel of a step that sets an end, or proves one that the crew set. ``sets``: the marks of its card."""
    names = step["names"]
    at_corner = step["kind"].startswith(("from_corner", "prove_corner"))
    driven = [mark for mark in sets if " " not in mark and mark != "F"]
    proves = step["kind"].startswith("prove_") and "D" not in sets
    if at_corner or not driven:
        driven = [names[part] for part in ("start", "end") if part in names]
    elif proves:
        driven = [names["end"]]
    told = say("face_got.corner" if at_corner else "face_got.set_again")
    return Panel(_again(driven), [], told=told, again=say("face_got.to_card"))


def string_panel(answered: Answer, step: StepRow) -> Panel:
    """Return the panel of a string that is taped between two marks which other steps set: one of those is off."""
    first, last = step["names"]["start"], step["names"]["end"]
    read = next(one for one in step["measures"] if "distance" in one)
    ways = [Way(_again([mark]), _to_card(answered, mark)) for mark in (first, last)]
    ends = _proving(answered)
    if ends:
        card, proved = ends
        text = say("face_got.tape_between", start=proved.start, end=proved.end)
        ways.append(Way(text, {"do": "go", "step": str(card)}))
    told = say("face_got.string_off", start=first, end=last, shown=read["shown"])
    head = say("face_got.head_string", start=first, end=last)
    return Panel(head, [], told=told, ways=ways, again=say("face_got.to_card"))


def _again(marks: Sequence[str]) -> str:
    named = marks[0] if len(marks) == 1 else say("face_got.two", first=marks[0], last=marks[-1])
    return say("face_got.set_stake_again", stake=named)


def _to_card(answered: Answer, mark: str) -> dict[str, str]:
    card = next(one["number"] for one in answered["cards"] if mark in one["sets"])
    return {"do": "go", "step": str(card)}


def _proving(answered: Answer) -> tuple[int, Proved] | None:
    """The card that reads the chord between the ends, and what it reads."""
    for card in answered["cards"]:
        for number in card["steps"]:
            proved = proved_by(answered["steps"], answered["steps"][number - 1], card["sets"])
            if proved:
                return card["number"], proved
    return None
