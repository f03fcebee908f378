"""What stands at the top and at the foot of a side of paper."""

from __future__ import annotations

from html import escape

from bowstring.drawings.signs import hand_sign
from bowstring.faces.located import BOX
from bowstring.faces.paper_sizes import tall
from bowstring.report.forms.answer import Answer
from bowstring.sheet import brief
from bowstring.sheet.facing import curve_hand
from bowstring.sheet.markup import marked
from bowstring.sheet.of_line import arc_title, with_others
from bowstring.words import say

_LONG_HAND = 6
"""Letters of a hand's name that stand in the largest type on one line: ``RIGHT``."""

OLD_LINE = 19.0
"""How high the line stands of stakes that stand by old numbers, pixels."""


def head_html(
    answer: Answer,
    side: str,
    date: str,
    *,
    title: str = "",
    numbers: bool = True,
    stakes: bool = True,
    old: str = "",
) -> str:
    """Return a side's head: the title (the job's own without one) in as large a type as it has room for, the arc's
    measures, which arc of a line it is, the side and the day. ``stakes``: whether all measures of the stakes' own
    line stand under the drawing's radius, or their radius alone beside it; ``old``: see ``old_html``."""
    arc = "" if title else of_line_html(answer)
    title = title or arc_title(answer)
    long = next((name for most, name in ((34, "short"), (52, "long")) if len(title) <= most), "longest")
    drawing = brief.drawing(answer) if numbers else ""
    told_of = (brief.measures(answer) if stakes else [brief.stakes_radius(answer)]) if numbers else []
    measures = "".join(f"<span>{marked(text)}</span>" for text in told_of if text)
    if drawing:
        measures = f'<span class="{"drawing" if stakes else ""}">{marked(drawing)}</span>{measures}'
    told = f'<p class="measures">{measures}</p>' if measures else ""
    day = f"<span>{escape(date)}</span>" if date else ""
    return (
        f'<div class="head"><h2 class="{long}">{marked(title)}</h2>{told}'
        f'<p class="which">{day}<b>{escape(side)}</b></p>{arc}{old_html(old)}</div>'
    )


def of_line_html(answer: Answer) -> str:
    """Return which arc of a line a side is of, and which have sheets of their own: empty for an arc alone."""
    told = with_others(answer)
    return f'<p class="of-line">{marked(told)}</p>' if told else ""


def old_html(old: str) -> str:
    """Return the line of a side's head that says what stands by old numbers: a side may go out by itself. Empty without
    any; ``OLD_LINE`` is how high it stands."""
    return f'<p class="old">{marked(old)}</p>' if old else ""


def old_tall(old: str) -> float:
    """Return how high that line stands, 0 without one."""
    return OLD_LINE if old else 0.0


def foot_html(left: str, right: str) -> str:
    """Return a side's last line."""
    return f'<p class="foot"><span>{marked(left)}</span><span>{marked(right)}</span></p>'


def turns_tall(answer: Answer, room: float) -> float:
    """Return how high it stands beside the hand to which hand the curve turns, 0 where the hand is open."""
    return tall([brief.turns(answer)], 18.0, 19.8, room) if answer["side"] else 0.0


def duo_html(answer: Answer, line: str, id: str, *, turning: bool = False) -> str:
    """Return the two boxes under the head: ``line``, as HTML, and on which hand the curve is; ``id``: the drawing's;
    ``turning``: with the hand to which it turns."""
    word = curve_hand(answer)
    size = "hand long" if len(word) > _LONG_HAND else "hand"
    turns = f" <b>{escape(brief.turns(answer))}</b>" if turning and answer["side"] else ""
    hand = f'<p>{marked(brief.stand(answer))} <strong class="{size}">{escape(word)}</strong>{turns}</p>'
    seen = f'<p class="seen">{BOX}{escape(say("paper.seen"))}</p>'
    return (
        f'<div class="duo"><div class="line">{line}</div>'
        f'<div class="side-of">{hand_sign(answer, id=id)}{hand}{seen}</div></div>'
    )
