"""Try it with string and chalk: an arc for a floor ten feet across, step by step, and a second one to work out."""

from __future__ import annotations

from html import escape
from math import hypot

from bowstring.sheet.markup import marked
from bowstring.units.sizes import FOOT
from bowstring.units.tape import make_tape
from bowstring.wall.job_stakes import stakes_sheet
from bowstring.wall.shape import Given
from bowstring.words import say

_FLOOR = {True: (9 * FOOT, 1.5 * FOOT), False: (2.7, 0.45)}
"""A string and its mid-ordinate, metres, for a floor ten feet or three metres across."""


def chalk_given(feet: bool) -> Given:
    """Return the arc for the floor."""
    chord, out = _FLOOR[feet]
    return Given(chord, out, make_tape("ft-in" if feet else "m", "1/16 in" if feet else "1 mm"), say("chalk.title"))


def chalk_html(numbers: Given) -> str:
    """Return the page as HTML, every text escaped."""
    given = chalk_given(numbers.tape.feet)
    rounds = given.rounds
    room = say("chalk.room_feet" if numbers.tape.feet else "chalk.room_metres")
    long = hypot(given.half, given.sagitta)
    steps = [
        say("chalk.ends", chord=given.show(given.chord)),
        say("chalk.middle", half=given.show(given.half), out=given.show(given.sagitta), long=given.show(long)),
        say("chalk.second", half=given.show(rounds[1].half), out=given.show(rounds[1].sagitta)),
        say("chalk.third", half=given.show(rounds[2].half), out=given.show(rounds[2].sagitta)),
        say("chalk.join"),
        say("chalk.prove", radius=given.show(given.arc.radius), center=given.show(given.arc.radius - given.sagitta)),
        say(
            "chalk.quarter",
            quarter=given.show(given.sagitta / 4),
            miss=given.fine(rounds[1].sagitta - given.sagitta / 4),
        ),
    ]
    svg = stakes_sheet(given, "chalk").svg.replace('viewBox="0 0 1280 720"', 'viewBox="0 126 1280 586"')
    needs = "".join(f"<li>{escape(say(f'chalk.need_{number}'))}</li>" for number in range(1, 5))
    return (
        f'<section class="leaf answers"><header><h1>{escape(say("chalk.title"))}</h1><p>{escape(room)}</p></header>'
        f"{svg}<h2>{escape(say('chalk.needs'))}</h2><ol>{needs}</ol><h2>{escape(say('chalk.do'))}</h2>"
        f"<ol>{''.join(f'<li>{marked(step)}</li>' for step in steps)}</ol></section>"
    )
