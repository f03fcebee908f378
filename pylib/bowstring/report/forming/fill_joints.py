"""The joints of a slab that fills its curve, told: squarish panels, square to its string and along it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import degrees, floor

from bowstring.forming.grid import Grid, GridJoint, grid, longest_curved, rows_of, squarish
from bowstring.forming.joints import DEPTH, LEAST_CORNER, is_past
from bowstring.forming.pad import Filled, Pad
from bowstring.job.forming import MOST_PANELS
from bowstring.report.forming.building_strip import strip_told
from bowstring.report.forming.formboard import form_of
from bowstring.report.forming.panels import THIN, isolation_shown, limit_of
from bowstring.report.forming.plan import Plan, is_designed, line_ends
from bowstring.report.forming.quantities import fine_tape, inch_tape, mark_up, most_of, thick
from bowstring.report.forms.build import BuildRow
from bowstring.report.forms.build_joints import GridRow, JointsPart, PanelsRow
from bowstring.words import say

LEG = {True: 2 * 0.3048, False: 0.6}
"""Metres: so much of a joint's end is turned square to the curve, where it would meet it sharply (common practice, no
source)."""

SQUARE, ALONG = "square", "along"


@dataclass(frozen=True)
class FillJointing:
    """Panels of a slab that fills its curve.

    Attributes:
        grid: those that are built; other: some to choose instead.
        most: the longest that a side may be, metres; limit: the usual most of this thickness.
    """

    grid: Grid
    other: Grid
    most: float
    limit: float

    @property
    def too_many(self) -> bool:
        """Whether there are more joints than are marked from one end."""
        return max(self.grid.columns, self.grid.rows) > MOST_PANELS

    @property
    def too_long(self) -> bool:
        """Whether the panels that were chosen are longer than is usual."""
        return self.grid.longest > self.limit * (1 + 1e-9)

    @property
    def stopped(self) -> bool:
        """Whether nobody should make these joints yet."""
        return self.too_long or self.too_many


def fill_jointing(plan: Plan, filled: Filled) -> FillJointing:
    """Return the panels of a plan: as many along the string as the job says, or as few as are short enough."""
    said, limit = plan.said.joints, limit_of(plan)
    most = said.every or limit
    columns, rows = squarish(filled, most)
    usual = grid(filled, columns, rows)
    if said.count is not None and said.count != columns:
        return FillJointing(grid(filled, said.count, rows_of(filled, said.count, most)), usual, most, limit)
    more = columns + 1
    rows = rows_of(filled, more, most) if isinstance(filled, Pad) else rows
    return FillJointing(usual, grid(filled, more, rows), most, limit)


def report_fill_joints(plan: Plan, filled: Filled) -> JointsPart:
    """Return the answer's ``joints``."""
    jointing, tape = fill_jointing(plan, filled), plan.tape
    made, thickness = jointing.grid, plan.said.slab.thickness
    depth = thickness * DEPTH if thickness and not is_designed(plan) else None
    stopped = jointing.stopped
    longer = filled.angle * form_of(plan).thickness
    return {
        "state": "stop" if stopped else "near" if is_past(made.ratio) or _is_sharp(made) else "usual",
        "asked": plan.said.joints.said,
        "count": made.columns * made.rows,
        "outside": made.wide,
        "inside": made.deep,
        "outside_shown": tape.show_running(made.wide),
        "inside_shown": tape.show_running(made.deep),
        "ratio": made.ratio,
        "most": jointing.most,
        "most_shown": most_of(tape, jointing.most),
        "why_most": _why_most(plan, jointing),
        "depth": depth,
        "depth_shown": mark_up(inch_tape(tape), depth) if depth else "",
        "longer": longer,
        "longer_shown": _longer(plan, longer),
        "corner": degrees(made.corner),
        "rows": [],
        "grid": [] if stopped else list(_rows(plan, filled, made)),
        "offers": [_offer(plan, one, one == made) for one in (made, jointing.other)],
        "text": _text(plan, jointing),
        "conclusion": "" if stopped else _conclusion(plan, filled, made),
        "stop": _stop(plan, jointing) if stopped else "",
        "taped": _taped(plan, filled, _longer(plan, longer)),
        "lines": _lines(plan, jointing, depth),
        "warned": "",
        "cautions": [say("joints.silica")],
    }


def row_of_fill_joints(plan: Plan, part: JointsPart | None) -> BuildRow:
    """Return the row of the first screen."""
    if part is None:
        return {"key": "joints", "state": "open", "text": say("fill.centre_row"), "more": "", "panel": "slab"}
    stopped = part["state"] == "stop"
    more = say("fill.joints_more", wide=part["outside_shown"], deep=part["inside_shown"])
    return {"key": "joints", "state": part["state"], "text": part["text"], "more": more,
            "panel": "slab" if stopped else ""}  # fmt: skip


def _is_sharp(made: Grid) -> bool:
    return degrees(made.corner) < LEAST_CORNER - 1e-9


def _taped(plan: Plan, filled: Filled, longer: str) -> str:
    """Along what joints are taped."""
    if not isinstance(filled, Pad):
        return say("fill.taped", longer=longer, **line_ends(plan))
    return say("pad.taped_both" if filled.both else "pad.taped", longer=longer)


def _longer(plan: Plan, longer: float) -> str:
    return plan.tape.show(longer) if plan.tape.round(longer) else plan.tape.show_near(longer)


def _text(plan: Plan, jointing: FillJointing) -> str:
    made = jointing.grid
    if jointing.too_many:
        return say("joints.too_many", most=MOST_PANELS)
    if jointing.too_long:
        return say("fill.too_long", most=most_of(plan.tape, jointing.limit))
    if made.columns == made.rows == 1:
        return say("fill.one_panel")
    return say("fill.panels", columns=made.columns, rows=made.rows)


def _conclusion(plan: Plan, filled: Filled, made: Grid) -> str:
    tape = plan.tape
    told = {"wide": tape.show(filled.wide), "deep": tape.show(filled.deep)}
    pad = isinstance(filled, Pad)
    if made.columns == made.rows == 1:
        return say("pad.joints_none" if pad else "fill.joints_none", **told)
    sides = {"panel": tape.show_running(made.wide), "across": tape.show_running(made.deep)}
    if pad and made.columns == 1:
        return say("pad.joints_one_column", rows=made.rows, **sides)
    if made.rows == 1:
        return say("pad.joints_one_row" if pad else "fill.joints_one_row", columns=made.columns, **sides)
    return say("pad.joints" if pad else "fill.joints", columns=made.columns, rows=made.rows, **sides)


def _stop(plan: Plan, jointing: FillJointing) -> str:
    if jointing.too_many:
        return say("joints.stop_many", most=MOST_PANELS)
    shown = {"longest": plan.tape.show_running(jointing.grid.longest), "most": most_of(plan.tape, jointing.limit)}
    return say("fill.stop_long", **shown)


def _why_most(plan: Plan, jointing: FillJointing) -> str:
    tape, most = plan.tape, most_of(plan.tape, jointing.most)
    curved = longest_curved(plan.filled, jointing.grid) if plan.filled is not None else 0.0
    over = say("fill.curved_side", curved=tape.show_running(curved)) if curved > jointing.most * (1 + 1e-9) else ""
    return " ".join(text for text in (_most_told(plan, most, straight=bool(over)), over) if text)


def _most_told(plan: Plan, most: str, *, straight: bool) -> str:
    """Why no side of a panel is longer; ``straight``: of which that is true alone."""
    tape, said = plan.tape, plan.said
    if said.joints.every is not None:
        return say("fill.most_every_straight" if straight else "fill.most_every", most=most)
    if said.slab.thickness:
        return say("joints.most_thickness", most=most, thickness=thick(tape, said.slab.thickness))
    return say("joints.most_thickness_thin", most=most, thickness=fine_tape(tape).show(THIN if tape.feet else 0.1))


def _rows(plan: Plan, filled: Filled, made: Grid) -> Iterator[GridRow]:
    number = 0
    for kind, joints in ((SQUARE, made.square), (ALONG, made.along)):
        for joint in joints:
            number += 1
            yield _row(plan, filled, number, kind, joint)


def _row(plan: Plan, filled: Filled, number: int, kind: str, joint: GridJoint) -> GridRow:
    tape, corner = plan.tape, degrees(joint.corner)
    at = joint.at - filled.before if kind == SQUARE else joint.at
    # One along the string is as far from B, along the curve, as it is from A: the nearer place tells both.
    told = joint.arc[:1] if kind == ALONG else joint.arc
    places = [tape.show_running(place) for place in told] or [say("pad.on_sides")]
    return {
        "number": number,
        "kind": kind,
        "at": at,
        "at_shown": _at_shown(plan, filled, at) if kind == SQUARE else _off_shown(plan, filled, at),
        "arc": list(joint.arc),
        "arc_shown": places[0] if len(places) == 1 else say("fill.two_places", first=places[0], last=places[1]),
        "corner": corner,
        "corner_shown": f"{floor(corner + (1e-9 if corner < LEAST_CORNER - 1e-9 else 0.5))}°",  # one under it shows so
        "sharp": corner < LEAST_CORNER - 1e-9,
    }


def _off_shown(plan: Plan, filled: Filled, at: float) -> str:
    """How far off the string, and of a pad on which side of it."""
    if isinstance(filled, Pad) and at in (0.0, -filled.sides):
        return say("pad.at_string", **line_ends(plan)) if at == 0.0 else say("pad.at_other")
    shown = plan.tape.show_running(abs(at))
    if not isinstance(filled, Pad) or not plan.tape.round(abs(at)):
        return shown
    return say("pad.behind" if at < 0 else "pad.ahead", size=shown)


def _at_shown(plan: Plan, filled: Filled, at: float) -> str:
    tape, chord = plan.tape, filled.arc.chord
    if at < 0 and tape.round(-at):
        return say("edges.before", size=tape.show_running(-at), mark="A")
    if at > chord and tape.round(at - chord):
        return say("edges.past", size=tape.show_running(at - chord), mark="B")
    return tape.show_running(abs(at))


def _offer(plan: Plan, one: Grid, chosen: bool) -> PanelsRow:
    tape = plan.tape
    return {
        "count": one.columns,
        "outside": one.wide,
        "inside": one.deep,
        "outside_shown": tape.show_running(one.wide),
        "inside_shown": tape.show_running(one.deep),
        "ratio": one.ratio,
        "chosen": chosen,
        "text": say("fill.offer", columns=one.columns, rows=one.rows),
        "more": say("fill.offer_more", wide=tape.show_running(one.wide)),
        "over": False,
    }


def _end_row(plan: Plan, made: Grid) -> list[str]:
    """Why the row of a rounded end is as deep as it is, where the others aren't."""
    if made.end is None:
        return []
    shown = plan.tape.show_running
    if made.on_string:
        return [say("pad.on_string", behind=shown(made.deep), beyond=shown(made.inner or made.end))]
    return [say("pad.end_row", deep=shown(made.end))]


def _shape(plan: Plan, made: Grid) -> str:
    """The sentence that says how far panels are from square."""
    if not is_past(made.ratio):
        return "joints.shape"
    return "pad.shape" if isinstance(plan.filled, Pad) else "fill.shape"


def _lines(plan: Plan, jointing: FillJointing, depth: float | None) -> list[str]:
    """How they are cut, and why so."""
    tape, thickness, made = plan.tape, plan.said.slab.thickness, jointing.grid
    if depth and thickness:
        deep = say("joints.deep", depth=mark_up(inch_tape(tape), depth), thickness=thick(tape, thickness))
    else:
        deep = say("joints.deep_wall" if thickness else "joints.deep_open")
    gap = isolation_shown(plan)
    ratio, cut = f"{made.ratio:.2f}", [say("fill.shape_cut")] if made.square or made.along else []
    return [
        say("fill.square"),
        *([say("fill.leg", leg=tape.show_whole(LEG[plan.layout.job.tape.feet]))] if _is_sharp(made) else []),
        *_end_row(plan, made),
        deep,
        " ".join([say(_shape(plan, made), ratio=ratio), *cut]),
        _why_most(plan, jointing),
        say("pad.joint_building" if strip_told(plan) else "joints.isolation", gap=gap),
    ]
