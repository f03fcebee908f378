"""Where the concrete along a line has to be while it comes, and where a short load may end."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from bowstring.forming.line.panels import LinePanels
from bowstring.forming.line.pieces import Hand
from bowstring.forming.line.sweep import Front, Sweep
from bowstring.forming.partly import share_of
from bowstring.forming.pour import reached
from bowstring.report.forming.pour_reach import AT_JOINT, HALF_OUT, moments_of
from bowstring.report.forming.pouring import BAGS, LOW, Pouring
from bowstring.report.forming.quantities import down_to, fine_tape, form_step, up_to, volume_text
from bowstring.report.forms.build_lined import LinedTable
from bowstring.report.lined.line import name_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


@dataclass(frozen=True)
class Course:
    """A pour along a line from its start to its end; ``chosen``: its panels, ``None`` where they are too many."""

    plan: LinePlan
    pouring: Pouring
    sweep: Sweep
    chosen: LinePanels | None

    @property
    def hand(self) -> Hand:
        """On which form it is read how far the concrete is: the longer one."""
        slab = self.sweep.slab
        return "left" if slab.left_edge.length >= slab.right_edge.length else "right"

    def read(self, front: Front) -> float:
        """Return how far along that form a front is, metres."""
        return front.left if self.hand == "left" else front.right

    def front(self, part: float) -> Front:
        """Return where a part of the concrete ends."""
        return self.sweep.front(share_of(part, self.pouring.volume_to))


def reach_table(course: Course) -> LinedTable:
    """Return the moments at which somebody looks, and where the concrete has to be then; in bags there are none."""
    rows = [_moment(course, share, text) for share, text in moments_of(course.pouring)]
    heads = [say("pour.out"), say("pour.on_plan"), say("pour.call_at"), say("lined.there")]
    title = say("lined.call_left" if course.hand == "left" else "lined.call_right")
    return {"key": "reach", "title": title, "heads": heads, "rows": rows}


def _moment(course: Course, share: float, out: str) -> list[str]:
    made, tape = course.pouring.order, course.plan.tape
    parts = reached(share, made.ordered, made.needed, 1.0)
    front = course.front(parts[1])
    call, step = course.read(front), form_step(tape)
    call_up = up_to(call, step)
    plan_down = max(call_up, down_to(course.read(course.front(parts[0])), step))  # nothing spare: the two are one
    on_plan = say("lined.the_end") if parts[0] >= 1 - 1e-9 else tape.show_running(plan_down)
    marks = course.chosen.marks[:-1] if course.chosen else ()
    joint = next((at for at, one in enumerate(marks, 1) if abs(course.read(one.front) - call) <= AT_JOINT), 0)
    there = say("pour.at_joint", joint=joint) if joint else name_of(course.plan, _piece(course, call) + 1)
    return [out, on_plan, tape.show_running(call_up), there]


def _piece(course: Course, along: float) -> int:
    """The number, from 0, of the piece along which a place on the form lies."""
    sides = course.sweep.sides[course.hand]
    return next((number for number, side in enumerate(sides) if along <= side.ends), len(sides) - 1)


def half_out(course: Course) -> tuple[str, float] | None:
    """Return what is out with half of the last truck, and where the concrete has to be then, metres along the form;
    ``None`` where it comes in bags."""
    moments = moments_of(course.pouring)
    if not moments:
        return None
    share, out = moments[HALF_OUT]
    made = course.pouring.order
    return out, course.read(course.front(reached(share, made.ordered, made.needed, 1.0)[1]))


def reach_told(course: Course) -> str:
    """Return what the table means."""
    return say("lined.reach_left" if course.hand == "left" else "lined.reach_right")


def panels_told(course: Course) -> str:
    """Return what the panels take: the least and the most of them."""
    chosen, pouring = course.chosen, course.pouring
    if chosen is None or chosen.count == 1:
        return ""
    filled = [0.0, *(pouring.volume_to(chosen.share(number)) for number in range(1, chosen.count + 1))]
    takes = [after - before for before, after in pairwise(filled)]
    if pouring.small:
        each = [one * (1 + pouring.waste) / BAGS[pouring.yards][1] for one in (min(takes), max(takes))]
        return say("lined.panels_bags", least=f"{each[0]:.1f}", most=f"{each[1]:.1f}")
    feet = course.plan.tape.feet
    return say("lined.panels_take", least=volume_text(min(takes), feet), most=volume_text(max(takes), feet))


def bulkhead_told(course: Course, *, short: bool = False) -> str:
    """Return the last joint that the order reaches though the whole base is a little low, empty without a joint, and
    in bags, where one more is fetched. ``short``: for paper, whose table has the places of each joint."""
    chosen, pouring, tape = course.chosen, course.pouring, course.plan.tape
    if chosen is None or chosen.count == 1 or pouring.small:
        return ""
    made, low = pouring.order, LOW[pouring.yards]
    part = min(1.0, made.ordered / (made.needed + pouring.low_extra))
    share = share_of(part, pouring.volume_to)
    joint = sum(1 for number in range(1, chosen.count) if chosen.share(number) <= share * (1 + 1e-9))
    if joint == 0:
        return ""
    if short:
        return say("lined.bulkhead_short", joint=joint)
    left, right = (tape.show_running(along) for along in chosen.marks[joint - 1].front)
    if part >= 1:
        return say("lined.bulkhead_last", joint=joint, left=left, right=right)
    ends = tape.show_running(down_to(course.read(course.sweep.front(share)), form_step(tape)))
    key = "lined.bulkhead_left" if course.hand == "left" else "lined.bulkhead_right"
    return say(key, joint=joint, left=left, right=right, low=fine_tape(tape).show(low), ends=ends)
