"""What a method is: its recipe, where its stakes stand, where it doesn't exist, and all that others ask of it."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from bowstring.construction import Recipe, Stake, Told
from bowstring.geometry.plane import Point
from bowstring.methods.setting import Setting
from bowstring.methods.stands import Stand, Wanted

Write = Callable[[Recipe, Setting, Sequence[Stake]], None]
WhyNone = Callable[[Setting, Sequence[Stake]], str | None]

MOST_CHAINED = 513
"""Where each stake is set from the one before it, it takes over what all before were off; past so many nobody would."""


TAPED, HALF_CHORD, DEFLECTION, OFF_CHORD = "taped", "half_chord", "deflection", "off_chord"
"""What a column may show that is no measure of its step: the sagitta with its hand, the half chords, the angles from
the tangent and from the long chord."""


@dataclass(frozen=True)
class Column:
    """One column.

    Attributes:
        head: names its head in the catalogue (``table.`` + head).
        shows: which of the step's measures, counted from 0, or one of the four words above; ``None`` for marks alone.
        cell: the sentence of its cells, with what it ``shows`` as ``shown``, and the step's names; without one that
            alone stands there.
        running: its numbers are places along one line, all read from its end: they keep one unit.
    """

    head: str
    shows: int | str | None
    cell: str = ""
    running: bool = False


@dataclass(frozen=True)
class Table:
    """A table's kind, under which the answer has it, and its columns after the stake's own."""

    kind: str
    columns: tuple[Column, ...]


@dataclass(frozen=True)
class Method:
    """One way to set an arc out.

    Attributes:
        name: as a job says it; names its sentences in the catalogue (``method.name.`` + name).
        stand: where its stakes stand.
        hands: how many people it takes, where a nail can hold a tape's end (common practice, no source).
        write: its recipe: writes its steps down.
        tables: the table in whose row a stake stands, by the kind of the step that sets it.
        why_none: the key of the sentence that says why an arc can't be set out this way at all, or ``None``.
        everyday: needs no instrument and no reckoning on the ground.
        chained: each stake is taped from the one before: a shorter gap is a shorter pull, and one nearer to the arc.
            What all others measure, a finer layout measures too.
        exact: its stakes belong on the arc. One that is known to miss is never advised.
        stick: its last reading at a stake is short enough for a story stick.
    """

    name: str
    stand: Stand
    hands: int
    write: Write
    tables: Mapping[str, Table]
    why_none: WhyNone | None = None
    everyday: bool = True
    chained: bool = False
    exact: bool = True
    stick: bool = False

    @property
    def halves(self) -> bool:
        """Whether the stakes are set by halving, exact or not, level by level: so the sheets tell them."""
        return self.stand.halves

    def running(self, kind: str) -> frozenset[int]:
        """Return which measures of a kind of step stand in a column of places along one line."""
        columns = self.tables[kind].columns if kind in self.tables else ()
        return frozenset(column.shows for column in columns if column.running and isinstance(column.shows, int))

    @property
    def levels_alike(self) -> bool:
        """Whether, from exact ends, all strings of a level are one another's images."""
        return self.halves and self.exact


def why_none(method: Method, setting: Setting, stakes: Sequence[Stake] = ()) -> str | None:
    """Return the key of the sentence that says why this arc can't be set out this way at all, or ``None``.

    Without ``stakes``: what holds whatever they are.
    """
    none = method.why_none(setting, stakes) if method.why_none else None
    if none is None and method.chained and len(stakes) > MOST_CHAINED:
        return "chain_long"
    return none


def stakes_for(
    method: Method,
    setting: Setting,
    *,
    levels: int,
    spacing: float | None,
    stations: Sequence[float] = (),
    first_gap: float | None = None,
) -> tuple[Stake, ...]:
    """Return the stakes from A to B, both included, that a method drives, see ``Wanted``; raises ``NoSuchStakes``."""
    return method.stand.stakes(setting, Wanted(levels, spacing, stations, first_gap))


def recipe_of(
    method: Method,
    setting: Setting,
    stakes: Sequence[Stake],
    recipe: Recipe | None = None,
    got: Mapping[str, Told] | None = None,
) -> Recipe:
    """Return the recipe of a method on an arc whose ends stand (or go on with ``recipe``, which found them).

    ``got``: what was really measured at marks: they stand there, and what comes after starts from there. Raises
    ``OffTheArc`` and ``NoWayBack`` where it can't, and what ``construction.standing.stand`` raises.

    >>> from bowstring.geometry.arc import Arc
    >>> from bowstring.methods.catalogue import BY_NAME
    >>> setting, method = Setting(Arc.of_angle(10.0, 0.5)), BY_NAME["ordinates"]
    >>> stakes = stakes_for(method, setting, levels=1, spacing=None)
    >>> [step.kind for step in recipe_of(method, setting, stakes).steps]
    ['ordinate']
    """
    arc = setting.arc
    recipe = recipe or Recipe({"A": Point(0.0, 0.0), "B": Point(arc.chord, 0.0), **setting.known})
    if not method.halves:
        recipe.truth.update({stake.name: arc.point_at(stake.fraction) for stake in stakes[1:-1]})
    recipe.got = got or {}
    method.write(recipe, setting, stakes)
    return recipe
