"""The faces of the page: each is made when it is looked at, from the answer to what stands in the fields."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from html import escape

from bowstring.errors import BadJob
from bowstring.faces.help_line import fill_button
from bowstring.faces.question_lines import is_edge_open
from bowstring.faces.questions import panel_of
from bowstring.faces.slab_lines import is_side_open, side_asked
from bowstring.page.answering import LastAnswer, label_at
from bowstring.page.beside import is_read, marks_of
from bowstring.page.called import called
from bowstring.page.fields import field_of
from bowstring.page.labels import label_of
from bowstring.page.shown import note_of, shown_here
from bowstring.page.slab_fields import is_of_slab_alone, without_slab
from bowstring.page.talk import Asked, refused
from bowstring.page.unit import is_unit_open
from bowstring.report.forms.answer import Answer
from bowstring.words import say

Made = dict[str, object]

ON_TOP = ("checks", "build")
"""Faces that say at their top what stands by old numbers, with newer ones under it; the paper says it on every
side."""

CHECKS = "checks"
"""Where what the bar says of readings leads to, which is no panel of the numbers."""

LOCATED = 1
"""The card of the locate ticket."""


def shown_face(asked: Asked, last: LastAnswer) -> Made:
    """Return what a face shows for ``{"fields": {id: text}, "face": name, "card": number or null, "panel": name,
    "got": {field: text}, "address": text}``.

    ``{"sign": "open" | "computed" | "refused", "html": text, "state": {"sign", "text"}, "badges": {face: text}, ...}``,
    what the bar says and what stands on the tabs; the face of the stakes
    tells ``card``, ``count``, ``list`` (HTML of all steps), ``say`` (the step as it is spoken), ``fixed`` (fields that
    are settled before a stake stands), ``fill`` (fields that hold what was got) and ``touched``, see ``_touched``. All
    text in the HTML is escaped.

    Raises ``ValueError`` for a face that the page hasn't got.
    """
    face = asked["face"]
    if face not in FACES:
        raise ValueError(f"no such face: {face!r}")
    if is_unit_open(asked["fields"]):
        return _unit_first()
    try:
        answered, asked = _answered(asked, last)
        made = FACES[face](answered, asked, last)
    except BadJob as refusal:
        return _not_yet(asked["fields"], refusal)
    old = old_of(answered, asked["fields"], last)
    if old and face in ON_TOP and made.get("html"):
        from bowstring.page.old_numbers import on_top

        made["html"] = on_top(str(made["html"]), old)
    elif face == "build" and (edge := _edge_was(answered, asked["fields"], last)):
        from bowstring.page.old_numbers import line_on_top

        made["html"] = line_on_top(str(made["html"]), edge)
    badges = {"checks": str(_outs(answered, asked["fields"]) or "")}
    state = _state(answered, asked["fields"], old)
    told = {"sign": "computed", "html": "", "state": state, "badges": badges}
    if not answered["stops"] and (old or forms_of(answered, asked["fields"])):
        made.pop("state", None)  # what is still asked of the slab comes after it
    return {**told, **_of_job(asked["fields"]), **made}


def shown_fold(asked: Asked, last: LastAnswer) -> Mapping[str, object]:
    """Return one fold of the face that tells why: ``{"fields", "key", "head": flag}`` gives ``{"html"}``, what stands
    in it or with ``head`` on it (and ``warns``), or ``{"error"}``."""
    from bowstring.faces.why import fold_head_html, fold_html, keys_of

    key = str(asked["key"])
    try:
        answered = last.for_fields(asked["fields"])
        if key not in keys_of(answered):  # the job was stopped since that fold was made
            return {"html": "", "warns": False}
        if not asked.get("head"):
            return {"html": fold_html(answered, key, label_at)}
        html, warns = fold_head_html(answered, key)
    except BadJob as refusal:
        return refused(refusal)
    return {"html": html, "warns": warns}


OF_THE_STAKES = ("stakes", "checks", "why")
"""Faces that a field of the slab, half typed, takes nothing from: none of their stakes hangs on it."""


def _answered(asked: Asked, last: LastAnswer) -> tuple[Answer, Asked]:
    """Return the answer to what stands in the fields, and what was asked; raises ``BadJob``. What can't be read of the
    slab refuses the faces that build and print it, and no other: those are told the job without its slab."""
    try:
        return last.for_fields(asked["fields"]), asked
    except BadJob as refusal:
        if asked["face"] not in OF_THE_STAKES or not is_of_slab_alone(refusal):
            raise
    fields = without_slab(asked["fields"])
    return last.for_fields(fields), {**asked, "fields": fields}


def _unit_first() -> Made:
    """Return a face without a number: nobody has said yet which unit they are in."""
    html = (
        '<div class="scroll"><section class="stopbox" role="alert"><h2 tabindex="-1"><span class="sign stop" '
        f'aria-hidden="true">!</span>{escape(say("page.stop"))}</h2><p>{escape(say("page.unit_first"))}</p>'
        "</section></div>"
    )
    return {"sign": "computed", "html": html, "state": {"sign": "stop", "text": say("page.state_stop")}}


def _outs(answered: Answer, fields: Mapping[str, str]) -> int:
    """How many checks were read out; where nothing was read nothing is worked out for it."""
    if answered["stops"] or not is_read(fields):
        return 0
    return answered["read"]["outs"] + answered["far_checks"]["outs"]


def _waiting(answered: Answer, fields: Mapping[str, str]) -> int:
    """How many checks were read that wait."""
    if answered["stops"] or not is_read(fields):
        return 0
    rows = (*answered["read"]["rows"], *answered["far_checks"]["read"])
    return sum(row["verdict"] == "waits" for row in rows)


def old_of(answered: Answer, fields: Mapping[str, str], last: LastAnswer) -> dict[int, list[str]]:
    """Return what stands by other numbers than those in the fields, see ``old_numbers``: none where nothing
    was driven."""
    if not any("stood" in text or name == "stood" for name, text in fields.items()):
        return {}
    from bowstring.page.old_numbers import old_numbers

    return old_numbers(answered, fields, lambda: last.link(fields)[0])


def _state(answered: Answer, fields: Mapping[str, str], old: dict[int, list[str]]) -> dict[str, str]:
    """What the bar says; ``old``: what stands by old numbers. What the numbers still ask it says on every face."""
    if answered["stops"]:
        return {"sign": "stop", "text": say("page.state_stop")}
    if old:
        from bowstring.page.old_numbers import bar_text

        return {"sign": "stop", "text": bar_text(old)}
    if read := read_state(answered, fields):
        return read
    typed = {name: text for name, text in fields.items() if text.strip()}
    if is_edge_open(typed):
        return {"sign": "ask", "text": say("numbers.state_open", count=1)}
    if is_side_open(typed):
        return {"sign": "ask", "text": side_asked(typed), "panel": "slab"}
    ready = {"sign": "computed", "text": say("page.state_ready")}
    standing = standing_of(answered, fields)
    if standing is None and _takes_stakes(answered, fields):
        from bowstring.faces.numbers import SETS_CLEAR

        return {"sign": "ask", "text": say("numbers.state_in_dig"), "panel": SETS_CLEAR}
    return standing or forms_of(answered, fields) or ready


def _takes_stakes(answered: Answer, fields: Mapping[str, str]) -> bool:
    """Tell whether the dig takes the stakes, none of which is driven, and no card of hubs tells of it: a wall's."""
    if fields.get("stood", "").strip() or fields.get("slab-poured") != "wall":
        return False
    return answered["in_dig"] is not None


def forms_of(answered: Answer, fields: Mapping[str, str]) -> dict[str, str] | None:
    """Return what the bar says where forms' cards are done by other numbers than they have now."""
    done = marks_of(fields)
    if answered["stops"] or not done:
        return None
    from bowstring.faces.passes import changed

    return {"sign": "ask", "text": say("stood.state_forms")} if any(
        changed(card, done) for card in answered["form_cards"]) else None  # fmt: skip


def read_state(answered: Answer, fields: Mapping[str, str]) -> dict[str, str] | None:
    """Return what the bar says of checks that were read and are out, or wait, with the face that it leads to;
    ``None`` where none is."""
    if outs := _outs(answered, fields):
        text = say("page.state_out_one" if outs == 1 else "page.state_out", count=outs)
        return {"sign": "stop", "text": text, "panel": CHECKS}
    if count := _waiting(answered, fields):
        text = say("page.state_wait_one" if count == 1 else "page.state_wait", count=count)
        return {"sign": "ask", "text": text, "panel": CHECKS}
    return None


def standing_of(answered: Answer, fields: Mapping[str, str]) -> dict[str, str] | None:
    """Return what the bar says of heights of the ground that can't be, and of what stands in the dig; where nothing was
    measured and nothing is in the way no top and no edge is made for it."""
    if not answered["stops"] and fields.get("grade-ground", "").strip():
        from bowstring.report.alone import grades_of

        grades = grades_of(answered)
        if grades and grades["stop"]:
            return {"sign": "ask", "text": grades["short"], "panel": "slope"}
    if answered["stops"] or not any(_tells_ground(name, text) for name, text in fields.items()):
        return None
    from bowstring.faces.build import standing_state

    return standing_state(answered)


def _tells_ground(name: str, text: str) -> bool:
    """Tell whether a field says something that is in the way: of the staked arc, or kept of another arc of its line."""
    return bool(text.strip()) and (name.startswith("ground-") or (name.endswith("-more") and '"ground-' in text))


def _not_yet(fields: Mapping[str, str], refusal: BadJob) -> Made:
    """Return a face that has nothing to show yet, with the way to where that can be mended: ``open`` while there are
    too few numbers, which is nobody's mistake, otherwise ``refused``."""
    from bowstring.faces.numbers import numbers

    face = numbers(fields, shown=shown_here())
    is_open = face["sign"] == "open"
    text = say("page.two_first") if is_open else say("page.error_text", wrong=refusal.wrong, remedy=refusal.remedy)
    name = "" if is_open else field_of(refusal.field, fields) or ""
    label = label_of(name, fields) if name else ""
    if label:
        text = say("page.error", label=label, text=text)
    html = (
        f'<div class="scroll"><section class="stopbox plain"><h2 tabindex="-1">{escape(say("page.not_yet"))}</h2>'
        f"<p>{escape(text)}</p>{_forget(fields, refusal)}</section></div>"
        f'<div class="thumb one"><button type="button" class="btn first" data-do="face" data-face="numbers"{_at(name)}>'
        f"{escape(say('page.to_numbers'))}</button></div>"
    )
    state = face["state"] if face["sign"] != "computed" else {"sign": "refused", "text": say("page.state_refused")}
    return {
        "sign": "open" if is_open else "refused",
        "html": html,
        "state": state,
        "badges": {"checks": ""},
        **_of_job(fields),
    }


def _at(name: str) -> str:
    """Where a field stands that is wrong: its panel, and itself."""
    panel = panel_of(name) if name else ""
    return f' data-open="{panel}" data-field="{name}"' if panel else ""


def _forget(fields: Mapping[str, str], refusal: BadJob) -> str:
    """A button that forgets what was got at stakes that this layout can't take up; empty where something else is
    wrong."""
    if not refusal.field.startswith("got["):
        return ""
    from bowstring.page.forgetting import forgets

    stakes, blanks = forgets(fields, refusal)
    return f"<p>{fill_button(blanks, say('page.forget', stakes=stakes))}</p>" if blanks else ""


def _of_job(fields: Mapping[str, str]) -> Made:
    """What stands over every face of a job: in which unit it is shown, and its name where it has no title."""
    return {"shown_in": note_of(fields), "called": called(fields, shown_here())}


def _stakes(answered: Answer, asked: Asked, last: LastAnswer) -> Made:
    from bowstring.page.staking import staking

    made = staking(answered, asked, lambda: last.link(asked["fields"])[0])
    return made | _touched(answered, asked["fields"], int(str(made["card"])))


def _touched(answered: Answer, fields: Mapping[str, str], card: int) -> Made:
    """The checks that were read and touch what a card sets: once it is done, and wasn't, what was read there is old."""
    if answered["stops"] or not is_read(fields):
        return {}
    from bowstring.faces.passes import card_at
    from bowstring.page.waiting import read_at

    stake, checks = read_at(answered, card_at(answered, card))
    return {"touched": {"stake": stake, "checks": checks}} if checks else {}


def _checks(answered: Answer, asked: Asked, last: LastAnswer) -> Made:
    from bowstring.faces.checks import checks_html

    return {"html": checks_html(answered, str(asked["fields"].get("anew", "")))}


def _build(answered: Answer, asked: Asked, last: LastAnswer) -> Made:
    from bowstring.faces.build import build_html, state_of
    from bowstring.page.slab_asked import open_question, sides_of

    fields, page = asked["fields"], str(asked.get("panel") or "")
    if answered["stops"]:
        return {"html": build_html(answered)}
    made: Made = {"html": build_html(answered, page, open_question(answered, fields), sides_of(answered, fields))}
    state = None if read_state(answered, fields) else state_of(answered)
    return {**made, "state": state} if state else made


def _paper(answered: Answer, asked: Asked, last: LastAnswer) -> Made:
    from bowstring.faces.paper import paper_html
    from bowstring.page.staking import unread_of
    from bowstring.page.ticks import ticked

    link, fields = last.whole_link(asked), asked["fields"]
    done = ticked(answered, fields, lambda: last.link(fields)[0])
    stand = {card["number"] for card in answered["cards"] if card["stake"]} <= set(done)
    day = str(fields.get("date", ""))
    old, edge = old_of(answered, fields, last), _edge_was(answered, fields, last)
    told, unread = _told(answered, fields, old, edge), unread_of(answered, fields) if stand else ""
    made = paper_html(answered, link, day, marks_in=LOCATED in done, all_stand=stand, old=told, unread=unread)
    return {"html": made}


def _edge_was(answered: Answer, fields: Mapping[str, str], last: LastAnswer) -> str:
    """The line that says that the stakes are an edge no more: empty where they are."""
    if not fields.get("edged"):
        return ""
    from bowstring.page.before import edge_was

    return edge_was(answered, fields, lambda: last.link(fields)[0])


def _told(answered: Answer, fields: Mapping[str, str], old: dict[int, list[str]], edge: str) -> tuple[str, str]:
    """What the paper says of what stands by old numbers: its front, and every other side. Where all stakes stand by the
    numbers of now, that they are an edge no more, or else that forms' cards are done by other numbers."""
    from bowstring.page.old_numbers import corners_text, forms_text, side_text, told

    if old:
        return told(old), side_text(old)
    corners = corners_text(answered, fields) or edge
    return (corners, corners) if corners else ("", forms_text() if forms_of(answered, fields) else "")


def _why(answered: Answer, asked: Asked, last: LastAnswer) -> Made:
    from bowstring.faces.why import why_html

    return {"html": why_html(answered)}


FACES: dict[str, Callable[[Answer, Asked, LastAnswer], Made]] = {
    "stakes": _stakes,
    "checks": _checks,
    "build": _build,
    "paper": _paper,
    "why": _why,
}
