"""The build: a row for each part with its conclusion, and a page behind each."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from html import escape

from bowstring.drawings.lined import lined_svg
from bowstring.drawings.slab import BOTH, slab_svg
from bowstring.faces import build_boards, build_edges, build_grades, build_joints, build_lined, build_pour
from bowstring.faces.build_icons import BACK, ICONS
from bowstring.faces.build_parts import bold, note, paragraph
from bowstring.faces.passes import forms_button
from bowstring.faces.stopcard import stop_html
from bowstring.report.alone import called, is_wall, standing_in
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build import BuildRow
from bowstring.words import say

FIELD_OF = {
    "width": "width",
    "edge": "edge",
    "thickness": "slab-thickness",
    "poured": "slab-poured",
    "slope": "grade-slope",
    "high": "grade-high",
    "low": "grade-low",
}
"""The field that answers each question of the build, by its id: its panel is opened there."""

OPEN, NEAR, STOP = "open", "near", "stop"

PAGES: dict[str, Callable[[Answer], str]] = {
    "edges": build_edges.page_html,
    "boards": build_boards.page_html,
    "joints": build_joints.page_html,
    "grades": build_grades.page_html,
    "pour": build_pour.page_html,
}
"""The pages of an arc alone; those of a line of several pieces are all made by ``build_lined``."""


def build_html(answer: Answer, page: str = "", question: str = "more", sides: Sequence[str] = BOTH) -> str:
    """Return the face as HTML, every text in it escaped: its rows, or with a ``page`` that of the row.

    ``question``: which one is open, where one is; ``sides``: where the slab may lie as long as it isn't known. A phone
    shows the rows or a page, a desk both. Raises ``ValueError`` when the drawing can't be drawn.
    """
    if answer["stops"]:
        return stop_html(answer)
    rows = answer["build"]
    at = next((row for row in rows if row["key"] == page), None)
    listed = "".join(_row(row, called(answer, row["key"]), row is at) for row in rows)
    nav = f'<ul class="build-rows" aria-label="{escape(say("build.rows"))}">{listed}</ul>'
    bar = _bar(answer, question)
    if at is None:
        drawn = _drawing(answer, "", sides)
        onward = "" if bar else forms_button(answer)
        return f'<div class="face-build">{drawn}{nav}{onward}{note(say("build.foot"))}</div>{bar}'
    named = escape(called(answer, at["key"]))
    return (
        f'<section class="face-build paged" data-card="{at["key"]}" aria-label="{named}">'
        f'{nav}<div class="page">{_head(called(answer, at["key"]))}{_inside(answer, at, sides)}</div></section>{bar}'
    )


def state_of(answer: Answer) -> dict[str, str] | None:
    """Return what the bar at the top says of the build, ``None`` where it has nothing of its own to say."""
    if answer["stops"]:
        return None
    stopped = [row["key"] for row in answer["build"] if row["state"] == STOP]
    if len(stopped) == 1:
        return {"sign": "stop", "text": say("build.state_stop", part=called(answer, stopped[0]))}
    if stopped:
        return {"sign": "stop", "text": say("build.state_stops", count=len(stopped))}
    count = len({row["panel"] for row in answer["build"] if row["state"] == OPEN})
    return {"sign": "ask", "text": say("build.state_open", count=count)} if count else standing_state(answer)


def standing_state(answer: Answer) -> dict[str, str] | None:
    """Return the same of what stands in the concrete or in the dig: nobody has settled what becomes of it."""
    names = standing_in(answer)
    return {"sign": "ask", "text": say("build.state_standing", count=len(names))} if names else None


def panel_asked(answer: Answer) -> str:
    """Return the panel of the first question that is open, the slab's before its slope's; empty where none is."""
    panels = [row["panel"] for row in answer["build"] if row["state"] == OPEN and row["panel"]]
    return "slab" if "slab" in panels else panels[0] if panels else ""


def _row(row: BuildRow, name: str, here: bool) -> str:
    """A row. What is open leads to where it is answered, any other to its page."""
    key, is_open = row["key"], row["state"] == OPEN and row["panel"]
    face, panel = ("numbers", row["panel"]) if is_open else ("build", key)
    current = ' aria-current="true"' if here else ""
    sign = '<span class="sign stop" aria-hidden="true">!</span>' if row["state"] == STOP else ""
    more = f"<i>{bold(row['more'])}</i>" if row["more"] else ""
    return (
        f'<li><button type="button" class="{row["state"]}" data-do="face" data-face="{face}" data-open="{panel}" '
        f'id="build-{key}"{current}>{ICONS[key]}<span>{escape(name)} <b>{sign}{bold(row["text"])}</b> '
        f"{more}</span></button></li>"
    )


def _head(name: str) -> str:
    named = escape(name)
    return (
        '<div class="panelhead"><button type="button" class="back" data-do="panel-close">'
        f"{BACK}<span>{escape(say('build.title'))}</span></button><p>{named}</p></div>"
    )


def _inside(answer: Answer, row: BuildRow, sides: Sequence[str]) -> str:
    """What stands on a page; of what isn't answered yet only that."""
    drawn = _drawing(answer, row["key"], sides)
    lined = build_lined.page_of(answer, row["key"])
    waits = row["state"] == OPEN
    made = build_lined.page_html(lined) if lined else "" if waits else PAGES[row["key"]](answer)
    if made:
        return f"{drawn}{made}"
    return f'{drawn}<h2 class="concl" tabindex="-1">{bold(row["text"])}</h2>{paragraph(row["more"], quiet=True)}'


def _drawing(answer: Answer, page: str, sides: Sequence[str]) -> str:
    one = "build-drawing"
    svg = lined_svg(answer, page, id=one) if answer["lined"] else slab_svg(answer, page, sides, id=one)
    return f'<figure class="draw">{svg}</figure>' if svg else ""


def _bar(answer: Answer, question: str) -> str:
    """The one question that is asked, at the thumb, where something is open."""
    panel = panel_asked(answer)
    if not panel:
        return ""
    asked = say("walled.ask_level") if question == "slope" and is_wall(answer) else say(f"build.ask_{question}")
    return (
        f'<button type="button" class="ask open" data-do="face" data-face="numbers" data-open="{panel}" '
        f'data-field="{FIELD_OF.get(question, "")}">'
        f'<span class="sign stop" aria-hidden="true">!</span><b>{escape(asked)}</b>'
        f"<i>{escape(say('numbers.answer'))}</i></button>"
    )
