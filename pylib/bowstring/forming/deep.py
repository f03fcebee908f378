"""How deep a slab is from end to end: as drawn, with thick edges and a thicker stretch, or as its base was measured."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Protocol

from bowstring.forming.pour import filled_to, mean_depth

Depths = tuple[tuple[float, float], ...]
"""Pairs of where, as a share of the slab or in square metres up to there, and how deep, metres."""


class Areas(Protocol):
    """A slab, as far as its volume asks; ``share``: 0 at its start, 1 at its end."""

    def area_to(self, share: float) -> float:
        """Return the area up to a share, square metres."""

    def bands_to(self, wide: float, share: float) -> float:
        """Return the area up to a share that lies within ``wide`` metres of a form, square metres."""


@dataclass(frozen=True)
class Apron:
    """A stretch of a slab, across its whole width, from a share to a share; ``depth``: metres, over that of the rest.
    Its ends are square: the base steps down there."""

    first: float
    last: float
    depth: float


@dataclass(frozen=True)
class Stretch:
    """A part of a slab that is drawn with one depth, metres, and what was measured in it."""

    first: float
    last: float
    depth: float
    reads: Depths

    def depths(self, body: Areas) -> Depths:
        """Return what was measured by the square metres from its start, the first depth taken to its start and the last
        to its end; empty where nothing was."""
        start, whole = body.area_to(self.first), body.area_to(self.last) - body.area_to(self.first)
        inside = [(body.area_to(at) - start, depth) for at, depth in self.reads]
        if not inside:
            return ()
        before = [(0.0, inside[0][1])] if inside[0][0] > 0 else []
        after = [(whole, inside[-1][1])] if inside[-1][0] < whole else []
        return (*before, *inside, *after)

    def mean(self, body: Areas) -> float:
        """Return how deep it is on average, metres: as measured, or as drawn."""
        depths = self.depths(body)
        return mean_depth(depths) if depths else self.depth

    def volume(self, body: Areas, share: float) -> float:
        """Return what its part up to a share takes, cubic metres, thick edges aside."""
        start = body.area_to(self.first)
        gone = max(body.area_to(min(share, self.last)) - start, 0.0)
        depths = self.depths(body)
        return filled_to(depths, gone) if depths else self.depth * gone

    def is_in(self, share: float) -> bool:
        """Tell whether a share lies on it."""
        return self.first <= share <= self.last


@dataclass(frozen=True)
class Deep:
    """The depths of a slab.

    Attributes:
        depth: as drawn, metres; edge, edge_depth: how wide along both forms it is thicker, and how thick there (0 and
            the depth where it isn't).
        apron: a stretch that is thicker, ``None`` where there is none.
        reads: depths that were measured, by shares that rise: two or more, or none.
    """

    depth: float
    edge: float = 0.0
    edge_depth: float = 0.0
    apron: Apron | None = None
    reads: Depths = ()

    def again(self, depth: float) -> Deep:
        """Return the same drawn with another depth, metres."""
        return Deep(depth, self.edge, self.edge_depth, self.apron, self.reads)

    def as_drawn(self) -> Deep:
        """Return the same as if nothing were measured."""
        return Deep(self.depth, self.edge, self.edge_depth, self.apron)

    @property
    def stretches(self) -> tuple[Stretch, ...]:
        """The slab in parts of one drawn depth each, in order."""
        apron = self.apron
        if apron is None:
            return (Stretch(0.0, 1.0, self.depth, self.reads),)
        parts = ((0.0, apron.first, self.depth), (apron.first, apron.last, max(self.depth, apron.depth)),
                 (apron.last, 1.0, self.depth))  # fmt: skip
        return tuple(
            Stretch(first, last, depth, tuple(read for read in self.reads if first <= read[0] <= last))
            for first, last, depth in parts
            if first < last
        )

    def drawn(self, share: float) -> float:
        """Return how deep it is drawn at a share, metres: on the apron's ends as deep as the apron."""
        return max(one.depth for one in self.stretches if one.is_in(share))

    def edges(self, body: Areas, share: float) -> float:
        """Return what thick edges add up to a share, cubic metres: only what is deeper than the slab beside them."""
        total = 0.0
        for one in self.stretches:
            thicker = max(0.0, self.edge_depth - one.depth)
            if thicker and self.edge and share > one.first:
                to = min(share, one.last)
                total += thicker * (body.bands_to(self.edge, to) - body.bands_to(self.edge, one.first))
        return total

    def volume(self, body: Areas, share: float) -> float:
        """Return what the part of a slab up to a share takes, cubic metres."""
        return sum(one.volume(body, share) for one in self.stretches) + self.edges(body, share)
