"""What an answer tells of the edges."""

from typing import TypedDict, final

from bowstring.report.forms.build_boards import BoardsPart


@final
class EdgeLength(TypedDict):
    """How long an edge is from A to B along itself, metres."""

    length: float
    length_shown: str


@final
class LineRow(TypedDict):
    """A line that is set, along the curve; metres.

    Attributes:
        key: ``dig_outside``, ``outer_form``, ``outside``, ``centre``, ``inside``, ``inner_form``, ``dig_inside``;
            of a wall on a footing that one's ``footing_outside`` and ``footing_inside``, the dig past those;
            ``stakes``, the job's own stakes' line where it is none of those; ``string``, ``string_form`` and
            ``dig_string``, the straight ones of a slab that fills its curve, whose ``arc_length`` is the chord;
            ``sides``, ``back`` and ``other_curve`` of one with straight sides.
        name, note: what it is called, and what of it stands there, empty where that needs no word.
        yours: whether the job's stakes stand on it; set: whether it is an edge that is still to be set from them.
        radius, sagitta: ``None`` of an edge that tapers, or is straight, which is no arc.
        off: from the line of the stakes, outward; ``None`` of such an edge; off_shown: a size and its direction.
    """

    key: str
    name: str
    note: str
    yours: bool
    set: bool
    radius: float | None
    chord: float
    sagitta: float | None
    arc_length: float
    off: float | None
    radius_shown: str
    chord_shown: str
    sagitta_shown: str
    arc_length_shown: str
    off_shown: str


@final
class EdgeEndRow(TypedDict):
    """An end of an edge, without the center: ``width`` from its ``near`` end of the line, ``diagonal`` from the ``far``
    one."""

    name: str
    near: str
    width: float
    width_shown: str
    far: str
    diagonal: float
    diagonal_shown: str


@final
class PartnerRow(TypedDict):
    """The mark of an edge that is square across from a stake of the line; metres.

    Attributes:
        name: like ``R1 in``; stake: the job's own; width: from that one to this mark.
        slab: how wide the slab is there, face to face.
        along, off: from the edge's first end along its own string, and square off that, positive on the curve's side;
            the texts have a direction where a number is below 0.
    """

    name: str
    stake: str
    width: float
    width_shown: str
    slab: float
    slab_shown: str
    along: float
    along_shown: str
    off: float
    off_shown: str


@final
class SecondEdge(TypedDict):
    """An edge that is set from the line.

    Attributes:
        edge: ``outside`` or ``inside``; name: as it is called; tapers: whether it is no arc.
        chord: between its ends, which must read so once they stand; rows: from A to B.
        blocked: what is in the way of its string, as a sentence; empty where nothing is.
        text: how its ends are set, as a sentence; own: over the rows of its own string.
    """

    edge: str
    name: str
    tapers: bool
    chord: float
    chord_shown: str
    ends: list[EdgeEndRow]
    rows: list[PartnerRow]
    blocked: str
    text: str
    own: str


@final
class WidthStick(TypedDict):
    """The stick that gauges the second edge: ``length`` in metres, the longest mark of it where it has several.

    Attributes:
        marks: from the face at the line: a name and how far; every stake's own where the width tapers.
        how: sentences, how it is held and what proves it square; slip: how far off square its tip may be taken to be;
            narrow: what that makes the slab too narrow by; slip_text: the sentence of it, empty where the slab is too
            narrow for one.
    """

    length: float
    length_shown: str
    title: str
    marks: list[list[str]]
    how: list[str]
    slip: float | None
    narrow: float | None
    slip_text: str


@final
class BayRow(TypedDict):
    """The two diagonals of a bay between neighboring stakes, metres; ``first`` and ``last`` name the stakes, ``ends``
    the marks of each diagonal."""

    first: str
    last: str
    ends: list[list[str]]
    forth: float
    back: float
    forth_shown: str
    back_shown: str


@final
class StandingRow(TypedDict):
    """Something that stands in the concrete, or in the dig.

    Attributes:
        where: ``concrete`` or ``dig``; stops: ``tape`` or ``feet``; text: the sentence of it.
        places: its corners, each as a share of the line's angle, -1 at A and 1 at B, and metres outward off the line.
    """

    name: str
    where: str
    stops: str
    text: str
    places: list[list[float]]


@final
class EndsPart(TypedDict):
    """Where a slab ends along its line.

    Attributes:
        against: the ends, ``A`` and ``B``, at which it meets concrete which stands there; told: what that means, as
            sentences, none where both are formed; dug: how far a wall is dug past its ends.
    """

    against: list[str]
    told: list[str]
    dug: str


@final
class EdgesPart(TypedDict):
    """Both edges of the slab; metres, square metres.

    Attributes:
        state: ``usual`` or ``near``; short, more: the row's two lines; conclusion: the page's first sentence.
        edge: where the line runs in the slab: ``outside``, ``inside`` or ``centre``; ``fills`` where the slab is all
            that lies between the curve and its string. Then ``width`` is how deep that is, ``inside`` the string, and
            there is no ``stick`` and no bay. With straight ``sides`` it is what is across from the curve: the back, or
            the curve of the other end where ``both_ends`` are round.
        yours: the ``key`` of the line on which the job's stakes stand.
        width: at A; far_width: at B, where it isn't the same.
        left, right: for somebody who walks from A to B, ``None`` where no hand is known; outside, inside: of the curve.
        area: between the edges; taper: what a width that changes means, as sentences.
        alike: whether all diagonals are equal; diagonal_shown: that one, empty where they aren't; bays: each bay's;
            diagonal: from A to the far end of B's straight side, ``None`` without such sides.
        sides_how: how those are set, and what closes them, as sentences; strip_shown: how thick and how deep the
            isolation strip is where that is a building, or at an end below, empty where it isn't.
        ends: of a slab that has a width.
        curve_gap, straight_gap: of a slab that fills its curve, how far off its edges their form stakes stand: the
            thickness of the board between, ``None`` of any other slab, and of a curve to which no board bends.
        check: the sentence of the diagonals; form: how form stakes stand to the line; passes: hubs, dig, line again;
            off_line: what is set otherwise from stakes that were got off the arc, as sentences; dug_out: whether the
            job's stakes stand within the dig.
        faces: a wall's, with the plywood for them, and its footing's forms, as sentences; empty of a slab;
            faces_sheet: what of that stands on the sheet of paper beside the lines.
        footing: the boards of its footing's forms, ``None`` without any; footing_shown: how wide and how thick it is.
        overdig: past each edge; standing: what stands in the concrete or in the dig.
        notes: what else holds here.
    """

    state: str
    short: str
    more: str
    conclusion: str
    edge: str
    yours: str
    width: float
    width_shown: str
    far_width: float | None
    far_width_shown: str
    left: EdgeLength | None
    right: EdgeLength | None
    outside: EdgeLength
    inside: EdgeLength
    area: float
    overdig: float
    overdig_shown: str
    lines: list[LineRow]
    seconds: list[SecondEdge]
    stick: WidthStick | None
    alike: bool
    diagonal_shown: str
    diagonal: float | None
    sides: float | None
    sides_shown: str
    sides_how: list[str]
    both_ends: bool
    strip_shown: str
    ends: EndsPart
    curve_gap: float | None
    straight_gap: float | None
    bays: list[BayRow]
    check: str
    form: list[str]
    faces: list[str]
    footing: BoardsPart | None
    faces_sheet: list[str]
    footing_shown: list[str]
    passes: list[str]
    dug_out: bool
    off_line: list[str]
    taper: list[str]
    standing: list[StandingRow]
    notes: list[str]
