"""The cards of work on the ground: the locate ticket, each step, the checks, the board."""

from __future__ import annotations

from collections.abc import Sequence

from bowstring.construction import Step
from bowstring.layout.layout import Layout
from bowstring.report.card_of_step import Told, squares_for, taped_otherwise
from bowstring.report.forms.cards import CardNumber, CardRow
from bowstring.report.forms.steps import StepRow
from bowstring.report.kinked import b_from_line
from bowstring.report.passing import Passing
from bowstring.report.stakeline import overrun_part
from bowstring.report.stations import stations_of
from bowstring.report.steps import LONG_STRING
from bowstring.words import say

TAKEN = ("have_ends_untaped", "string_none", "no_string")
"""Kinds of steps in which nothing is done on the ground: they belong to the card after them."""


def report_cards(layout: Layout, rows: Sequence[StepRow]) -> list[CardRow]:
    """Return the answer's ``cards``; ``rows``: its steps."""
    squares = squares_for(layout)
    cards = [_plain("locate")]
    cards[0]["notes"] = [say("card.note.days")]
    waiting: list[int] = []
    passing = Passing(layout)
    steps = layout.recipe.steps
    for place, (step, row) in enumerate(zip(steps, rows, strict=True)):
        told = Told(layout, step, row, squares)
        if told.kind in TAKEN or _goes_with(step, steps[place + 1 : place + 2]):
            waiting.append(row["number"])
            continue
        made = told.cards()
        if place and _goes_with(steps[place - 1], [step]):
            made[0]["text"] = say("card.string_and_middle", **told.values)
        made[0]["steps"] = [*waiting, *made[0]["steps"]]
        made[0]["notes"] += passing.notes([steps[number - 1] for number in made[0]["steps"]])
        waiting = []
        cards += made
    _note(layout, cards)
    cards.append(_plain("checks"))
    if layout.job.driven == "board":
        cards.append(_board(layout))
    cards[-1]["steps"] += waiting
    for number, card in enumerate(cards, 1):
        card["number"] = number
    return cards


def _goes_with(step: Step, following: Sequence[Step]) -> bool:
    """Whether a string is stretched and its midpoint marked in one go."""
    return step.kind == "string" and any(one.kind == "string_middle" for one in following)


def _note(layout: Layout, cards: Sequence[CardRow]) -> None:
    """What has to be known at one card: what stands at the ends, the cap of the first stake, the wind on a string."""
    ends = next((card for card in cards if card["kind"] != "locate"), None)
    otherwise = taped_otherwise(layout)
    if ends and otherwise:
        ends["notes"].append(say("card.note.taped", drawn=otherwise[0], found=otherwise[1]))
    if ends:
        told = ((end, layout.job.ends[end]) for end in ("A", "B"))
        b = b_from_line(layout, short=True)
        if b:
            ends["notes"].append(b)
        ends["notes"] += [say("card.note.landmark", end=end, landmark=mark) for end, mark in told if mark]
    first = next((card for card in cards if card["stake"]), None)
    if first:
        first["notes"].append(say("card.note.cap"))
    stations = stations_of(layout)
    for card in cards:
        at = {name: stations[name] for name in card["sets"] if name in stations}
        card["notes"] += [say("station.card", name=name, station=station) for name, station in at.items()]
        if card["kind"] == "stake_back":
            card["notes"].append(say("card.note.careful"))
        elif card["kind"] in ("string", "string_middle") and layout.staked.chord > LONG_STRING:
            card["notes"].append(say("card.note.wind"))


def _plain(kind: str) -> CardRow:
    return {
        "number": 0, "kind": kind, "mark": "", "steps": [], "stake": None, "sets": [],
        "title": say(f"card.title.{kind}"), "main": "", "where": say(f"card.where.{kind}"), "text": say(f"card.{kind}"),
        "numbers": [], "right": None, "notes": [], "lines": [],
    }  # fmt: skip


def _board(layout: Layout) -> CardRow:
    """The board, sprung along the stakes and carried on straight past the ends."""
    card, run = _plain("board"), overrun_part(layout)
    if run:
        past: CardNumber = {
            "disc": 1, "label": say("card.label.overrun"), "shown": run["length_shown"], "slope": None,
        }  # fmt: skip
        card["numbers"], card["main"] = [past], past["shown"]
    return card
