"""A construction: what a crew does, in order, as data.

Each step is made of a few moves (take a mark that exists, bisect, tape along a line, square off a line, cross two
tapes), names the marks that it uses and sets, and lists what is measured. Everything else walks over the steps: the
sheets, the drawings, the replay with rounded numbers, the checks. What a move is to them it says itself (``Move``).
"""

from bowstring.construction.lines import Along, Bisect, Take
from bowstring.construction.marks import HELPERS, Marks, Number, exact
from bowstring.construction.move import GAP, PULL, RADIUS, SIGHT, STRING, Line, Move, SquareOff
from bowstring.construction.recipe import NoWayBack, Recipe
from bowstring.construction.scatter import SCALE, Errors, Scatter, Shifts, Source
from bowstring.construction.sights import Sight, TurnOff
from bowstring.construction.standing import BadReading, DontMeet, NoSuchReading, NotFixed, Standing, Told
from bowstring.construction.steps import Measure, Stake, Step, Turned, play
from bowstring.construction.stood import Stood
from bowstring.construction.tapes import CrossTapes

__all__ = [
    "GAP",
    "HELPERS",
    "PULL",
    "RADIUS",
    "SCALE",
    "SIGHT",
    "STRING",
    "Along",
    "BadReading",
    "Bisect",
    "CrossTapes",
    "DontMeet",
    "Errors",
    "Line",
    "Marks",
    "Measure",
    "Move",
    "NoSuchReading",
    "NoWayBack",
    "NotFixed",
    "Number",
    "Recipe",
    "Scatter",
    "Shifts",
    "Sight",
    "Source",
    "SquareOff",
    "Stake",
    "Standing",
    "Step",
    "Stood",
    "Take",
    "Told",
    "TurnOff",
    "Turned",
    "exact",
    "play",
]
