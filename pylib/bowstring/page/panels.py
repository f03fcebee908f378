"""The panels of the form: one for each question beside the measures, with the fields that answer it."""

from __future__ import annotations

from bowstring.page.entries import Entries, said
from bowstring.page.rows import ERROR_FIELDS

_METHOD = (
    "method",
    "stations",
    "halve_first",
    "tangent_from",
    "tapes_from[0]",
    "tapes_from[1]",
    "parallel",
    "first_gap",
)
_ROOM = tuple(f"room.{name}" for name in ("behind", "inside", "outside"))
_FOUND = tuple(f"found.{name}" for name in ("chord[0]", "chord[1]", "tape", "fall", "hold", "sure"))


def panels_html(page: Entries, plan: str) -> str:
    """Return every panel, shut; ``plan`` is the plan of the site, as HTML."""
    return "\n".join(
        [
            _panel("hand", page.plain(["side", "turn"])),
            _panel("line", page.plain(["drawn_to", "driven", "diameter", "width", "offset", "toward"])),
            _panel("ends", page.plain(["ends.A", "ends.B", "start"]) + page.fold("found", page.plain(_FOUND))),
            _panel("way", page.plain(["centre"]) + _desk_of_plan(plan) + page.rows("ground") + page.plain(_ROOM)),
            _panel(
                "fine",
                page.plain(
                    ["unit", "mark", "tolerance", "fair", "spacing", "levels", "tape.length", "tape.class", "hands"]
                ),
            ),
            _panel("method", page.plain(_METHOD[:1]) + page.fold("options", page.plain(_METHOD[1:]))),
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


def _panel(key: str, inside: str) -> str:
    close = 'data-do="panel-close"'
    return (
        f'<section class="panel" id="panel-{key}" aria-labelledby="panel-{key}-title" hidden>'
        f'<div class="panel-head"><button type="button" class="back" {close}>{said("numbers.back")}</button>'
        f'<h2 id="panel-{key}-title" tabindex="-1">{said(f"numbers.panel_{key}")}</h2></div>'
        f'<div class="panel-body">{inside}</div>'
        f'<div class="panel-foot"><button type="button" class="btn first" {close}>{said("numbers.done")}</button></div>'
        "</section>"
    )


def _desk_of_plan(plan: str) -> str:
    """Return the site's plan with what it is drawn on with; the script lets it be used once Python is up."""

    def button(name: str, key: str) -> str:
        return f'<button type="button" id="draw-{name}" disabled>{said(key)}</button>'

    adding = "".join(button(name, f"form.draw_{name}") for name in ("tape", "feet", "round"))
    going = button("undo", "form.draw_undo") + button("done", "form.draw_done") + button("cancel", "form.draw_cancel")
    return (
        f'<div id="site-plan">{plan}</div><p id="site-none" class="help" hidden>{said("form.no_plan")}</p>'
        f'<p id="draw-wrong" class="alarm" role="alert" hidden></p><p id="draw-said" role="status"></p>'
        f'<div class="actions" id="draw-adding">{adding}</div>'
        f'<div class="actions" id="draw-going" hidden>{going}</div>'
    )
