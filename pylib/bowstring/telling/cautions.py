"""Cautions: everything about a job that somebody should know before a stake is driven."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.angles import both_angles
from bowstring.arc import HALF_TURN_COSINE, Arc
from bowstring.givens import ANGLES, Given, better_measurement, nudged, odd_one_out, points_change
from bowstring.layout import FEW_MARKS, Layout
from bowstring.telling.numbers import percent
from bowstring.words import say

SENSITIVE = 0.01
"""Part of the radius: a tape mark that moves it by more is told."""

LIKELY = {"board": (0.003, 0.1), "hub": (0.15, 30.0)}
"""Metres between which a form board's thickness and a hub line's distance lie (common practice, no source)."""

LIKELY_TOLERANCE = 0.05
"""Metres: nobody sets forms to a coarser tolerance (common practice, no source)."""

OUT_OF_HAND = 1.05
"""A got sagitta this far from the wanted one, as a ratio, is told as a likely slip."""


def told_given(layout: Layout) -> list[dict[str, object]]:
    """Return the answer's ``given``: every given beside what the arc has, when there were more than two."""
    givens = layout.job.givens
    if len(givens) <= 2:
        return []
    rows = []
    for given in givens:
        computed = given.computed(layout.settled.arc)
        rows.append(
            {
                "field": given.field,
                "value": given.value,
                "computed": computed,
                "difference": None if computed is None else given.value - computed,
                "agrees": _agrees(given, layout),
                "value_shown": _show(given.field, given.value, layout),
                "computed_shown": None if computed is None else _show(given.field, computed, layout),
                "used": given in layout.settled.pair,
            }
        )
    return rows


def _agrees(given: Given, layout: Layout, arc: Arc | None = None) -> bool:
    computed = given.computed(arc or layout.settled.arc)
    if computed is None:
        return False
    close = given.last_digit if given.field in ANGLES else max(given.last_digit, layout.job.tape.mark)
    return abs(given.value - computed) <= close * (1 + 1e-9)


def _show(field: str, value: float, layout: Layout) -> str:
    return both_angles(value) if field in ANGLES else layout.job.tape.both(value)


def told_cautions(layout: Layout) -> list[str]:
    """Return the cautions of a layout, gravest first."""
    return [
        *_hand(layout),
        *_ground(layout),
        *_givens(layout),
        *_line(layout),
        *_ends(layout),
        *_sizes(layout),
        *_got(layout),
        *_sharpness(layout),
        *_marks(layout),
        *_site(layout),
    ]


def _ground(layout: Layout) -> Iterator[str]:
    ground, tape = layout.ground, layout.job.tape
    if ground is None:
        return
    values = {
        "found": tape.show(ground.found),
        "drawn": tape.show(layout.settled.arc.chord),
        "apart": tape.show_small(ground.apart),
        "difference": tape.show_small(ground.found - layout.settled.arc.chord),
    }
    if ground.agrees:
        yield say("fit.agrees", **values)
    if ground.reason:
        yield say(f"fit.{ground.reason}", **values)
    if ground.taken and not ground.taken.buildable:
        kink = say("fit.kink", degrees=f"{ground.taken.kink:+.2f}", off=tape.show_small(ground.taken.kink_in_ten))
        yield say("fit.do_not_build", kink=kink, **values)
    elif ground.taken:
        yield say("fit.taken", hold=say(f"fit.hold_{ground.taken.hold}"), **values)
    for slip in ground.slips:
        yield say("fit.looks_like", slip=say(f"slip.{slip.kind}", would_be=tape.show(slip.would_be)))


def _hand(layout: Layout) -> Iterator[str]:
    if layout.hand_from_points:
        key = "caution.points_hand"
        if layout.job.side and layout.job.side != layout.hand_from_points:
            key = "caution.points_other_hand"
        yield say(key, points=say(f"hand.{layout.hand_from_points}"), side=say(f"hand.{layout.side}"))


def _givens(layout: Layout) -> Iterator[str]:
    tape, settled = layout.job.tape, layout.settled
    off = [given for given in layout.job.givens if len(layout.job.givens) > 2 and not _agrees(given, layout)]
    odd = odd_one_out(list(layout.job.givens), lambda given, arc: _agrees(given, layout, arc)) if off else None
    if odd:
        others = odd.given.computed(odd.arc)
        yield say(
            "caution.odd_one",
            field=say(f"measure.{odd.given.field}"),
            value=_show(odd.given.field, odd.given.value, layout),
            others=say("sheet.none") if others is None else _show(odd.given.field, others, layout),
        )
    for given in off:
        computed = given.computed(settled.arc)
        yield say(
            "caution.disagrees" if computed is not None else "caution.disagrees_none",
            field=say(f"measure.{given.field}"),
            value=_show(given.field, given.value, layout),
            computed="" if computed is None else _show(given.field, computed, layout),
            pair=say(
                "and",
                first=say(f"measure.{settled.pair[0].field}"),
                second=say(f"measure.{settled.pair[1].field}"),
            ),
        )
    if settled.other:
        yield say(
            "caution.two_arcs",
            angle=f"{settled.arc.central_angle:.2f}",
            radius=tape.both(settled.arc.radius),
            other_angle=f"{settled.other.central_angle:.2f}",
            other_radius=tape.both(settled.other.radius),
            sagitta=tape.show(settled.arc.sagitta),
            other_sagitta=tape.show(settled.other.sagitta),
        )
    if any(given.field == "degree" for given in layout.job.givens):
        yield say("caution.degree", radius=tape.both(settled.arc.radius))


def _line(layout: Layout) -> Iterator[str]:
    if not layout.job.side and not layout.hand_from_points:
        yield say("caution.hand_unsaid", side=say(f"hand.{layout.side}"))
    if layout.job.drawn_to in (None, "unsure"):
        yield say("caution.line_unsure" if layout.job.drawn_to else "caution.line_unsaid")
    elif layout.job.driven == "board" and layout.job.drawn_to != "face":
        yield say("caution.board_off_face")


def _got(layout: Layout) -> Iterator[str]:
    tape = layout.job.tape
    for stake in layout.job.got:
        step = next(step for step in layout.recipe.steps if step.stake == stake)
        wanted, stands = step.sagitta or 0.0, step.measures[1].length
        values = {
            "stake": stake,
            "miss": tape.show_small(layout.misses.by_stake[stake]),
            "wanted": tape.show(wanted),
            "stands": tape.show(stands),
        }
        far = max(wanted, stands) > OUT_OF_HAND * min(wanted, stands) and abs(wanted - stands) > FEW_MARKS * tape.mark
        yield say("caution.got_far" if far else "caution.got", **values)
        tolerance = layout.job.tolerance
        if tolerance is not None and abs(layout.misses.by_stake[stake]) > tolerance:
            yield say("caution.got_over", stake=stake, tolerance=tape.show_small(tolerance), miss=values["miss"])


def _sharpness(layout: Layout) -> Iterator[str]:
    tape = layout.job.tape
    for given, change in nudged(layout.settled, tape.mark):
        if change <= SENSITIVE:
            continue
        better = better_measurement(layout.settled, given, tape.mark)
        advice = say("caution.no_better")
        if better:
            value = layout.settled.arc.measures()[better[0]]
            assert value is not None
            advice = say(
                "caution.better",
                field=say(f"measure.{better[0]}"),
                value=tape.show(value),
                change=percent(better[1]),
            )
        yield say(
            "caution.sensitive" if change < 1 else "caution.sensitive_all",
            field=say(f"measure.{given.field}"),
            mark=tape.show_mark(),
            change=percent(change),
            better=advice,
        )

    if layout.job.points:
        change = points_change(layout.job.points, tape.mark)
        if change > SENSITIVE:
            key = "caution.sensitive" if change < 1 else "caution.sensitive_all"
            yield say(
                key,
                field=say("measure.points"),
                mark=tape.show_mark(),
                change=percent(change),
                better=say("caution.better_points"),
            )


def _ends(layout: Layout) -> Iterator[str]:
    """Ends that could be taken for one another: swapped, they put the curve on the other hand."""
    landmarks = [landmark.casefold() for landmark in layout.job.ends.values() if landmark]
    if len(landmarks) == 2 and landmarks[0] == landmarks[1]:
        yield say("caution.same_landmark")
    for end, ties in layout.job.ties.items():
        if len({tie.to.casefold() for tie in ties}) < len(ties):
            yield say("caution.same_tie", end=end)


def _sizes(layout: Layout) -> Iterator[str]:
    """Sizes that no board, hub or tolerance has: most likely a number in another unit than was meant."""
    job = layout.job
    low, high = LIKELY.get(job.driven or "", (0.0, float("inf")))
    if job.outward and not low <= abs(job.outward) <= high:
        yield say(f"caution.unlikely_{job.driven}", shown=job.tape.both(abs(job.outward)))
    if job.tolerance is not None and job.tolerance > LIKELY_TOLERANCE:
        yield say("caution.unlikely_tolerance", shown=job.tape.both(job.tolerance))


def _marks(layout: Layout) -> Iterator[str]:
    tape, staked = layout.job.tape, layout.staked
    if staked.sagitta < tape.mark:
        yield say("caution.straight", sagitta=tape.show_small(staked.sagitta), mark=tape.show_mark())
    small = next(
        (
            level
            for level in range(2, layout.levels + 1)
            if staked.part(2 ** (level - 1)).sagitta < FEW_MARKS * tape.mark
        ),
        None,
    )
    if small:
        yield say(
            "caution.small_sagitta",
            level=small,
            sagitta=tape.show_small(staked.part(2 ** (small - 1)).sagitta),
            few=FEW_MARKS,
            mark=tape.show_mark(),
        )
    tolerance = layout.job.tolerance
    if tolerance is not None and tolerance < tape.mark:
        yield say("caution.tolerance_under_mark", tolerance=tape.show_small(tolerance), mark=tape.show_mark())
    if layout.levels == 1 and "P" not in layout.marks:
        yield say("caution.one_level")


def _site(layout: Layout) -> Iterator[str]:
    if layout.drawn.cosine < -HALF_TURN_COSINE:
        yield say("caution.over_half", angle=f"{layout.drawn.central_angle:.1f}")
