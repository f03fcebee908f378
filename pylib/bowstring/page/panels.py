"""The panels of the form: one for each question beside the measures, with the fields that answer it."""

from __future__ import annotations

from html import escape

from bowstring.faces.hand_pictures import hand_picture
from bowstring.job.terms import OTHER
from bowstring.page.entries import Entries, said
from bowstring.page.fields import Field
from bowstring.page.piece_panels import pieces_html
from bowstring.page.rows import ERROR_FIELDS
from bowstring.page.slab_panels import slab_html, slope_html
from bowstring.words import say

_METHOD = (
    *("stations", "halve_first", "tangent_from", "tapes_from[0]", "tapes_from[1]"),
    *("parallel", "first_gap"),
)
_ROOM = tuple(f"room.{name}" for name in ("behind", "inside", "outside"))
_FOUND = tuple(f"found.{name}" for name in ("chord[0]", "chord[1]", "tape", "fall", "hold", "sure"))
_BACK = '<svg width="14" height="20" viewBox="0 0 14 20" aria-hidden="true"><path d="M12 2 3 10l9 8"/></svg>'


def panels_html(page: Entries, plan: str) -> str:
    """Return every panel, shut; ``plan`` is the plan of the site, as HTML."""
    ends = page.plain(["ends.A", "ends.B", "start"]) + page.fold("found", page.plain(_FOUND))
    fine = page.plain(["unit", "mark", "tolerance", "fair", "spacing", "levels"])
    way = _desk_of_plan(plan) + page.rows("ground") + page.fold("room", page.plain(_ROOM))
    method = page.plain(["method"]) + page.fold("options", page.plain(_METHOD))
    return "\n".join(
        [
            _panel("hand", _hands(page), _open_foot()),
            _panel("line", page.plain(["drawn_to", "driven", "diameter", "offset", "toward"])),
            _panel("slab", slab_html(page)),
            _panel("slope", slope_html(page)),
            _panel("pieces", pieces_html(page)),
            _panel("ends", ends),
            _panel("way", page.plain(["centre"]) + way),
            _panel("fine", fine + page.fold("tape", page.plain(["tape.length", "tape.class", "hands"]))),
            _panel("method", f'<p id="method-advice" class="told"></p>{method}'),
            _panel("rest", _rest(page)),
        ]
    )


def _rest(page: Entries) -> str:
    return "\n".join(
        [
            page.fold("job", page.plain(["title", "note"])),
            page.fold("ties", page.ties()),
            page.fold("known", page.rows("known")),
            page.fold("fall", page.plain(["fall.along", "fall.across"])),
            page.fold("degree", page.plain(["arc.degree", "arc.degree_by", "arc.diameter", "greater"])),
            page.fold("points", page.points()),
            page.fold("sides", page.plain([f"arc.three_sides[{row}]" for row in range(3)])),
            page.fold("errors", page.plain([row[0] for row in ERROR_FIELDS])),
            page.fold("control", page.control()),
            page.fold("got", page.rows("got")),
        ]
    )


def _panel(key: str, inside: str, foot: str = "") -> str:
    close = 'data-do="panel-close"'
    done = f'<button type="button" class="btn first" {close}>{said("numbers.done")}</button>'
    return (
        f'<section class="panel" id="panel-{key}" aria-labelledby="panel-{key}-title" hidden>'
        f'<div class="panelhead"><button type="button" class="back" {close} aria-label="{said("numbers.back")}">'
        f'{_BACK}</button><h2 id="panel-{key}-title" tabindex="-1">{said(f"numbers.panel_{key}")}</h2></div>'
        f'<div class="scroll">{inside}</div><div class="thumb">{foot or done}</div></section>'
    )


def _hands(page: Entries) -> str:
    """Return the two pictures, each a button of its own, in the words of who stands at A or walks toward the arc."""
    # A blank goes with each name: an empty one leaves none before the period.
    typed = {end: page.typed.get(f"ends-{end}", "") for end in "AB"}
    names = {end: f'<b data-of="ends-{end}">{escape(name and f" {name}")}</b>' for end, name in typed.items()}
    stands = (
        escape(say("numbers.stand", a="\1", b="\2")).replace("\1", f"A{names['A']}").replace("\2", f"B{names['B']}")
    )
    told = {"side": stands, "turn": said("numbers.walk")}
    return "".join(_hand(page, page.fields[name], told[name]) for name in ("side", "turn"))


def _hand(page: Entries, field: Field, told: str) -> str:
    chosen = page.typed.get(field.id, "")
    choices = ""
    for value in field.choices:
        checked, blank = " checked" if value == chosen else "", "" if value else " data-blank"
        walking = field.id == "turn"
        picture = hand_picture(value, walking=walking) if value else ""
        words = _facts(value, walking=walking) if value else f"<span>{said(f'form.{field.word}.none')}</span>"
        choices += (
            f'<label class="{"hand" if value else "option"}"><input type="radio" name="{field.id}" value="{value}"'
            f"{checked}{blank}>{picture}{words}</label>"
        )
    return (
        f'<fieldset class="choice hands" id="{field.id}" data-field="{field.id}" tabindex="-1" '
        f'aria-describedby="{field.id}-wrong"><legend>{told} {said("numbers.touch")}</legend>'
        f'<div class="options">{choices}</div><p class="wrong" id="{field.id}-wrong"></p></fieldset>'
    )


def _facts(value: str, *, walking: bool) -> str:
    """What an answer says, both as large: an arc that lies left of A-B turns right. A drawing's word may be either, and
    whoever walks in along the straight sees the turn alone."""
    turn = _fact("numbers.turns", value if walking else OTHER[value])
    return turn if walking else _fact("numbers.lies", value) + turn


def _fact(key: str, hand: str) -> str:
    before, _, after = say(key, hand="|").partition("|")
    rest = f' <span class="n">{escape(after.strip())}</span>' if after else ""  # A-B stays on one line
    return f"<span>{escape(before)}<b>{said(f'numbers.hand.{hand}')}</b>{rest}</span>"


def _open_foot() -> str:
    """What stands under the pictures: why it can't be guessed, and the way back without an answer."""
    return (
        f"<p><b>{said('numbers.not_sure')}</b> {said('numbers.no_check')}</p>"
        f'<button type="button" class="btn plain" data-do="panel-close">{said("numbers.done")}</button>'
    )


def _desk_of_plan(plan: str) -> str:
    """Return the site's plan with what it is drawn on with; the script lets it be used once Python is up."""

    def button(name: str, key: str) -> str:
        return f'<button type="button" class="btn plain" id="draw-{name}" disabled>{said(key)}</button>'

    adding = "".join(button(name, f"form.draw_{name}") for name in ("tape", "feet", "round"))
    going = button("undo", "form.draw_undo") + button("done", "form.draw_done") + button("cancel", "form.draw_cancel")
    return (
        f'<div class="drawing-on"><p id="draw-wrong" class="alarm" role="alert" hidden></p>'
        f'<p id="draw-said" role="status"></p><div class="actions" id="draw-adding">{adding}</div>'
        f'<div class="actions" id="draw-going" hidden>{going}</div>'
        f'<div id="site-plan">{plan}</div><p id="site-none" class="help" hidden>{said("form.no_plan")}</p></div>'
    )
