"""The job's form, as JSON holds it: what may be said of each thing, and under which key.

Everything but ``arc`` (or ``line``) may be left out. A length is a text with its unit, or a number (or a text without
one) in the job's own ``unit``. What a job really holds is checked, value by value, where it is read: see
``job.read_job``.

Without ``from __future__ import annotations``, as the answer's forms are.
"""

from collections.abc import Mapping, Sequence
from typing import NotRequired, TypedDict, final

Size = float | str
"""A length, an angle or a number, as it is typed."""


@final
class ArcForm(TypedDict, total=False):
    """The arc: two of its measures (lengths, and angles in degrees), more to be compared, three points, or three sides.

    ``diameter`` and ``degree`` (``degree_by``: ``arc`` or ``chord``) stand in the radius' place; ``delta`` is the
    central angle; ``rise``, ``mid_ordinate``, ``middle_ordinate`` and ``bow`` are the sagitta.
    """

    radius: Size
    diameter: Size
    chord: Size
    sagitta: Size
    arc_length: Size
    central_angle: Size
    degree: Size
    degree_by: str
    tangent_length: Size
    external: Size
    delta: Size
    rise: Size
    mid_ordinate: Size
    middle_ordinate: Size
    bow: Size
    points: Sequence[Sequence[Size]]
    three_sides: Sequence[Size]
    greater: bool


@final
class EndsForm(TypedDict, total=False):
    """What stands at each end."""

    A: str
    B: str


@final
class TieForm(TypedDict):
    """A distance from an end to something that stays."""

    to: str
    distance: Size


@final
class TiesForm(TypedDict, total=False):
    """Two ties for an end."""

    A: Sequence[TieForm]
    B: Sequence[TieForm]


@final
class FoundForm(TypedDict, total=False):
    """The chord found on the ground, measured twice; ``tape``: ``level`` or on the ``ground``, which falls ``fall``."""

    chord: Sequence[Size]
    tape: str
    fall: Size
    hold: str
    sure: bool


# What was read from one mark to another.
GotMeasureForm = TypedDict("GotMeasureForm", {"from": str, "to": str, "distance": Size}, total=False)


@final
class GotForm(TypedDict, total=False):
    """What was really got at a stake: what was read there; or, in the older form, its sagitta, or both half chords.

    ``sure``: it was taped twice and reads the same.
    """

    stake: str
    measures: Sequence[GotMeasureForm]
    sagitta: Size
    half_chords: Sequence[Size]
    sure: bool


# The longest tape, and its accuracy class: I, II or III.
TapeForm = TypedDict("TapeForm", {"length": Size, "class": str}, total=False)


@final
class ObstacleForm(TypedDict, total=False):
    """Something in the way: it stops a ``tape`` or ``feet`` alone; its corners in the frame of the chord, or its middle
    and diameter."""

    name: str
    stops: str
    outline: Sequence[Sequence[Size]]
    at: Sequence[Size]
    diameter: Size


@final
class RoomForm(TypedDict, total=False):
    """How far there is room behind the chord, inside the curve and outside it."""

    behind: Size
    inside: Size
    outside: Size


@final
class KnownForm(TypedDict, total=False):
    """A mark that exists, in the frame of the chord; ``sigma``: one standard deviation of its place."""

    name: str
    x: Size
    y: Size
    sigma: Size


@final
class FallForm(TypedDict, total=False):
    """The ground's fall in percent, from A to B and away from the chord toward the curve's side."""

    along: Size
    across: Size


@final
class ErrorsForm(TypedDict, total=False):
    """The crew's own standard deviations: lengths; ``scale`` a part of one, ``angle`` an angle."""

    read: Size
    scale: Size
    stake: Size
    line: Size
    angle: Size


@final
class ControlMarkForm(TypedDict, total=False):
    """A mark with the drawing's coordinates: x and y, or northing and easting."""

    mark: str
    x: Size
    y: Size
    n: Size
    e: Size


@final
class ControlForm(TypedDict, total=False):
    """Two marks whose coordinates the drawing gives; ``axes``: ``x-y`` or ``n-e``."""

    marks: Sequence[ControlMarkForm]
    axes: str


# Where a slab is thicker across its whole width, from A along the outer form (``along`` "outer", or not said) or, with
# "line", along the drawing's line, as it always is along a line of several pieces; how thick it is there.
ApronForm = TypedDict("ApronForm", {"from": Size, "to": Size, "thickness": Size, "along": NotRequired[str]})


@final
class DepthForm(TypedDict):
    """A depth measured from a string across the forms down to the base: how far along the outer form from A, or along
    the line."""

    at: Size
    depth: Size


@final
class SlabForm(TypedDict, total=False):
    """The slab: its thickness, its width at B where it tapers, the bed under it, how far past its edges it is dug;
    waste in percent; ``step`` and ``truck``: what the plant sells and brings, cubic yards or cubic metres by the job's
    unit. ``edge_width`` and ``edge_depth``: how wide along both forms it is thicker, and how thick there;
    ``edge_along``, with straight sides: along the ``curve``, the ``sides``, too, or ``all`` round;
    ``footing_width`` and ``footing_depth``: of the footing under its middle; ``fills``: it has no width, it is
    everything between the curve and the string from A to B, and ``sides``: with straight sides so long, square back
    from A and B; ``both_ends``: the same curve stands at the other end of them, too; ``back``: what closes
    them there, ``formed`` or ``against`` a building; ``at_A``, ``at_B``: what closes any other slab at its line's
    start and end, ``formed`` or ``against`` concrete that stands there; ``apron``: a stretch where it is thicker;
    ``depths``: as measured down to the base. ``poured``: ``slab`` or ``wall``. Of a wall ``thickness`` is its
    height, and the job's ``width`` how thick it is; over 0.4 m thick and unsaid it is asked."""

    end_width: Size
    thickness: Size
    base: Size
    overdig: Size
    waste: Size
    step: Size
    truck: Size
    edge_width: Size
    edge_depth: Size
    edge_along: str
    footing_width: Size
    footing_depth: Size
    fills: bool
    sides: Size
    both_ends: bool
    back: str
    at_A: str
    at_B: str
    apron: ApronForm
    depths: Sequence[DepthForm]
    poured: str


@final
class BoardForm(TypedDict, total=False):
    """The form boards: one of the list (``kind``) or the crew's own; ``level``: ``job lumber``, ``clear``,
    ``selected``; in which lengths they come, how far past the ends they run, the most between form stakes."""

    kind: str
    thickness: Size
    height: Size
    level: str
    lengths: Sequence[Size]
    overrun: Size
    gap: Size


@final
class JointsForm(TypedDict, total=False):
    """The longest panel along the outer edge, or so many panels."""

    every: Size
    panels: Size


@final
class GroundReadForm(TypedDict):
    """A height measured of the ground at a stake's ``inside`` or ``outside`` edge, or the ``left`` or ``right`` one; a
    slab that fills its curve has one edge, and none has to be said. Where ``ground_by`` says ``rod``, ``level`` is what
    a rod read there."""

    stake: str
    edge: NotRequired[str]
    level: Size


# The tops: at A and at B, or a slope in percent, along the slab's middle or the drawn `line`, and the end that is high;
# the cross slope and the edge that is low, or a crown; the limits, and whether the sheet stops past them; the height of
# the instrument, and the ground as measured: heights, or by `rod` what a rod read on it.
GradeForm = TypedDict(
    "GradeForm",
    {
        "from": Size,
        "to": Size,
        "slope": Size,
        "high": str,
        "along": str,
        "cross": Size,
        "low": str,
        "crown": Size,
        "limit": Size,
        "cross_limit": Size,
        "stops": bool,
        "instrument": Size,
        "ground": Sequence[GroundReadForm],
        "ground_by": str,
    },
    total=False,
)


@final
class ReadForm(TypedDict, total=False):
    """What a check read."""

    check: str
    value: Size


@final
class PieceForm(TypedDict, total=False):
    """A piece of the line: a straight's length, or an arc and to which hand it turns for who walks along; ``kink``: by
    how much it turns off from the piece before it, ``2 left``. ``work``: what was said and done of an arc while it was
    the one that is staked."""

    straight: Size
    arc: ArcForm
    turn: str
    kink: Size
    work: Mapping[str, object]


@final
class JobForm(TypedDict, total=False):
    """A job. ``bowstring`` is the version of this form, 1."""

    bowstring: int
    title: str
    note: str
    unit: str
    mark: Size
    arc: ArcForm
    line: Sequence[PieceForm]
    at: int
    station: str
    ends: EndsForm
    side: str
    turn: str
    offset: Size
    toward: str
    tolerance: Size
    fair: Size
    spacing: Size
    levels: int | str
    drawn_to: str
    driven: str
    diameter: Size
    width: Size
    start: str
    ties: TiesForm
    found: FoundForm
    got: Sequence[GotForm]
    greater: bool
    method: str
    centre: str
    tape: TapeForm
    hands: Size
    ground: Sequence[ObstacleForm]
    room: RoomForm
    known: Sequence[KnownForm]
    fall: FallForm
    errors: ErrorsForm
    tangent_from: str
    tapes_from: Sequence[str]
    control: ControlForm
    stations: Sequence[Size]
    first_gap: Size
    halve_first: Size
    parallel: Size
    edge: str
    slab: SlabForm
    board: BoardForm
    joints: JointsForm
    grade: GradeForm
    done: Sequence[int | str]
    read: Sequence[ReadForm]
    by: str
    date: str
    parent: str
    ticket: str
    called: str
