"""Checks: what to tape, what it must read, what was read, and what that says."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping, Sequence
from html import escape

from bowstring.drawings.checked import checked_svg
from bowstring.faces.checks_line import verdict_line
from bowstring.faces.passes import forms_button, layout_cards
from bowstring.faces.stopped import stopped_html
from bowstring.report.forming.pass_card import CORNERS
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.checks import CheckRow
from bowstring.report.forms.got import GotRow
from bowstring.report.forms.read import FarChecks, ReadPart, ReadRow, SuspectRow
from bowstring.report.read import NO_VERDICT, OUT
from bowstring.sheet.brief import off_arc, off_names
from bowstring.sheet.markup import marked
from bowstring.sheet.of_line import of_line
from bowstring.words import say

FEW = 8
"""Checks up to which all are to be taped before anybody builds; of more the recommended ones."""

FAR_FIRST = 1000
"""The number of the first input of a pad's far corners: no check of the stakes has so many rows before it."""

OPEN, MOST = 12, 60
"""Rows that stand open, and rows in all: nobody tapes hundreds."""

MOST_OFF = 3
"""Stakes off the arc that have a button of their own."""

AGAIN_NAMED = 6
"""Stakes that are told by name where they are to be set again."""


def checks_html(answer: Answer, anew: str = "") -> str:
    """Return the face of the checks as HTML, every text in it escaped.

    ``anew``: the stake that was set again, empty for all of them, and the keys of the checks that are taped anew then,
    apart by ``|``.
    Each row's input has an id ``read-N``, its check's key in ``data-check`` and in ``data-nth`` which reading of that
    check it is, from 0. Raises ``ValueError`` when the drawing can't be drawn.
    """
    if answer["stops"]:
        return stopped_html(answer, "face_checks.stopped")
    rows = ordered(answer)
    if not rows:
        words = say("face_checks.none" if answer["checks"] else "face_checks.none_left")
        return f'<div class="face-checks"><p class="checks-none">{escape(words)}</p></div>'
    read = answer["read"]
    by_key = {row["check"]: row for row in read["rows"]}
    listed = [_row(row, number, by_key.get(row["key"]), len(rows)) for number, row in enumerate(rows[:MOST])]
    heads = f"<span>{escape(say('face_checks.must'))}</span><span>{escape(say('face_checks.you'))}</span>"
    told, kind = _verdict_of_all(read, rows, off_arc(answer))
    line = verdict_line(read, told if read["count"] == len(rows) else "", _out_first(read, rows))
    beside = _waits(read) if read["waits"] else _anew(anew, by_key)
    return _led_to(
        f'<div class="face-checks{" lined" if line else ""}">{_of_line(answer)}{_drawing(answer, rows, by_key)}'
        f"{_head(told, kind)}{beside}{_to_off(answer, len(rows))}{_to_forms(answer, rows)}{_found(answer, rows)}"
        f'<div class="heads">{line}<p aria-hidden="true">{heads}</p></div>'
        f'<ul class="checks">{"".join(listed[:OPEN])}</ul>{_more(listed[OPEN:], len(rows) - MOST)}'
        f"{_far(answer)}{_signed(read)}{_lost(read)}</div>"
    )


def _led_to(html: str) -> str:
    """The face with a name for what the bar leads to: the first check that is out, else one that waits, or what is said
    of a pad's diagonals."""
    for first in ('<li class="out"', '<li class="waits"', '<div class="found"'):
        if first in html:
            return html.replace(first, f'{first} id="check-out" tabindex="-1"', 1)
    return html


def _of_line(answer: Answer) -> str:
    """Which arc of a line the checks are of."""
    told = of_line(answer)
    return f'<p class="of-line">{marked(told)}</p>' if told else ""


def ordered(answer: Answer) -> list[CheckRow]:
    """Return the checks that can be read, the recommended ones first; a row keeps its place whatever is read."""
    rows = [row for row in answer["checks"] if not row["blind"] or row["kind"] == "closing"]
    return sorted(rows, key=lambda row: (not row["recommended"], not row["judges"]))


def name_of(row: CheckRow) -> tuple[str, str]:
    """Return what to tape, and the rest of it in small."""
    start, end, kind = row["from"], row["to"], row["kind"]
    side = "_inside" if row["inside"] else ""
    if kind == "alternate":
        pair = start.removeprefix("mid ").replace("-", say("check.to"))
        return say("face_checks.string", pair=pair), say(f"face_checks.string_middle{side}", stake=end)
    if kind == "ordinate":
        along = say(f"face_checks.square_at{side}", along=row["along_shown"] or "")
        return say("face_checks.square", stake=end), along
    small = {"closing": say("face_checks.closing"), "external": say("face_checks.corner")}.get(kind, "")
    return say("face_checks.straight", start=start, end=end), small


def _drawing(answer: Answer, rows: Sequence[CheckRow], by_key: dict[str, ReadRow]) -> str:
    outs = [row for row in rows if row["key"] in by_key and by_key[row["key"]]["verdict"] in OUT]
    ins = [row for row in rows if row["key"] in by_key and by_key[row["key"]]["verdict"] == "in"]
    suspects = [one["mark"] for one in answer["read"]["suspects"] if one["mark"]]
    told = [say("face_checks.draw_out", what=" ".join(name_of(row)).strip()) for row in outs]
    told += [say("face_checks.draw_suspect", stake=stake) for stake in suspects]
    svg = checked_svg(answer, outs, ins, suspects, " ".join(told) or say("face_checks.draw_none"), id="draw-checked")
    return f'<figure class="draw">{svg}</figure>'


def _all_but(off: Sequence[GotRow]) -> str:
    """The verdict where all that was read is in, and stakes stand off the arc: the checks follow them as they stand."""
    if len(off) == 1:
        return say("face_checks.head_stands", stake=off[0]["at"], shown=off[0]["shown"])
    return say("face_checks.head_stand", stakes=off_names(off))


def _verdict_of_all(read: ReadPart, rows: Sequence[CheckRow], off: Sequence[GotRow]) -> tuple[str, str]:
    """What stands over the checks, and whether it is ``out`` or ``in``."""
    wanted, count = len(rows), read["count"]
    if read["waits"] and not count:
        return read["waits"], ""
    if read["outs"]:
        return say("face_checks.head_out", count=count, wanted=wanted, outs=read["outs"]), " out"
    if count == wanted:
        return (_all_but(off), " out") if off else (say("face_checks.head_done", wanted=wanted), " in")
    first = sum(row["recommended"] for row in rows)
    if count and _first_are_in(read, rows):
        return say("face_checks.head_first", first=first, left=wanted - count), ""
    if wanted <= FEW:
        return say("face_checks.head_all", count=count, wanted=wanted), ""
    return say("face_checks.head_some", count=count, wanted=wanted, first=first), ""


def _head(told: str, kind: str) -> str:
    first_sentence, point, rest = told.partition(". ")
    bold = f"<b>{escape(first_sentence + point.strip())}</b> {escape(rest)}" if rest else f"<b>{escape(told)}</b>"
    return f'<p class="checks-head{kind}" role="status" tabindex="-1">{bold}</p>'


def _waits(read: ReadPart) -> str:
    """Which marks readings wait for, and why, where that isn't over the checks already: while others count."""
    told = read["waits"] if read["count"] else ""
    return f'<p class="anew" role="status">{escape(told)}</p>' if told else ""


def _to_off(answer: Answer, wanted: int) -> str:
    """The way to the card of each stake that stands off the arc, once nothing else is left to do."""
    if answer["read"]["outs"] or answer["read"]["count"] < wanted:
        return ""
    buttons = []
    for row in off_arc(answer)[:MOST_OFF]:
        card = next((card["number"] for card in answer["cards"] if card["stake"] == row["at"]), None)
        if card is not None:
            words = escape(say("face_checks.to_card", stake=row["at"], step=card))
            buttons.append(f'<button type="button" class="btn" data-do="go" data-step="{card}">{words}</button>')
    return f'<div class="to-off">{"".join(buttons)}</div>' if buttons else ""


def _to_forms(answer: Answer, rows: Sequence[CheckRow]) -> str:
    """The way on to the forms, once the checks that come first are in."""
    read = answer["read"]
    return forms_button(answer) if not read["outs"] and _first_are_in(read, rows) else ""


def _first_are_in(read: ReadPart, rows: Sequence[CheckRow]) -> bool:
    """Whether the checks that are to be made first were read, and are in."""
    inside = {row["check"] for row in read["rows"] if row["verdict"] == "in"}
    first = {row["key"] for row in rows if row["recommended"]}
    return bool(first) and first <= inside


def _anew(anew: str, read: Mapping[str, ReadRow]) -> str:
    """That a stake was set again, as long as any check that touches it isn't taped anew."""
    stake, *keys = anew.split("|")
    if all(key in read for key in keys):
        return ""
    # A check that isn't its own is of what was set from it: that comes again, too.
    hanging = any(stake not in key.split("-") for key in keys)
    kind = "anew_all" if not stake else "anew_hanging" if hanging else "anew"
    told = say(f"face_checks.{kind}", stake=stake)
    return f'<p class="anew" role="status">{escape(told)}</p>'


def _found(answer: Answer, rows: Sequence[CheckRow]) -> str:
    """What to do about what is out: tape it again; then what is wrong by all readings, with the way to set it right."""
    read = answer["read"]
    if not read["text"]:
        return ""
    said = f'<p class="said">{marked(read["text"])}</p>'
    if read["judged"]:
        inside = said + "".join(_suspect(answer, one) for one in read["suspects"])
    else:
        number, row, out = _asked_again(read, rows)
        who = say("face_checks.is_out", what=" ".join(name_of(row)).strip(), told=out["text"])
        inside = f'<p class="who">{marked(who)}</p>{said}{_button(number, out, len(rows), "btn first")}'
    return f'<section class="found" role="status">{inside}</section>'


def _asked_again(read: ReadPart, rows: Sequence[CheckRow]) -> tuple[int, CheckRow, ReadRow]:
    """The check that is to be taped again first, with its place among the rows."""
    found = [
        (number, row, one) for number, row in enumerate(rows) for one in read["rows"]
        if one["check"] == row["key"] and one["verdict"] in OUT
    ]  # fmt: skip
    return min(found, key=lambda one: one[2]["verdict"] != "differ")  # those are asked for first


def _out_first(read: ReadPart, rows: Sequence[CheckRow]) -> str:
    """What is to be taped again first, by the name in its row."""
    return name_of(_asked_again(read, rows)[1])[0] if read["outs"] else ""


def _button(number: int, read: ReadRow, count: int, classes: str) -> str:
    """The button that goes to the input for the next reading of a check."""
    place, words = _input_id(number, len(read["typed"]), count), escape(say("face_checks.tape_again"))
    return f'<button type="button" class="{classes}" data-do="focus" data-for="{place}">{words}</button>'


def _card_of(answer: Answer, one: SuspectRow) -> int | None:
    """The card on which a suspect's step is worked, as the face of the stakes counts them."""
    cards = (card["number"] for card in answer["cards"] if one["step"] in card["steps"])
    return None if one["step"] is None else next(cards, None)


def hanging_cards(answer: Answer, one: SuspectRow) -> list[int]:
    """Return the cards that come again after a suspect's own: what was set from it stands wrong, too."""
    first = _card_of(answer, one) or 0
    again = set(one["again"])
    return [
        card["number"]
        for card in answer["cards"]
        if card["number"] > first and (card["stake"] in again or one["step"] in card["steps"])
    ]


def _suspect(answer: Answer, one: SuspectRow) -> str:
    card = _card_of(answer, one)
    lines = [f'<p class="who">{marked(one["text"])}</p>']
    if one["prove"]:
        lines.append(f"<p>{marked(one['prove'])}</p>")
    if card is not None:
        key = "go_ends" if one["kind"] == "end" else "set_again" if one["mark"] else "set_all"
        words = escape(say(f"face_checks.{key}", stake=one["mark"], step=card))
        where = (
            f'data-do="go" data-step="{card}" data-stake="{escape(one["mark"])}" '
            f'data-checks="{escape(json.dumps(one["checks"]))}" data-then="{json.dumps(hanging_cards(answer, one))}"'
        )
        lines.append(f'<button type="button" class="btn" {where}>{words}</button>')
    if one["again"]:
        many = len(one["again"]) > AGAIN_NAMED
        told = say("face_checks.then_many" if many else "face_checks.then", count=len(one["again"]),
                   stakes=", ".join(one["again"]))  # fmt: skip
        lines.append(f"<p>{escape(told)}</p>")
    return f'<div class="suspect">{"".join(lines)}</div>'


def _row(row: CheckRow, number: int, read: ReadRow | None, count: int, sees: str = "") -> str:
    what, small = name_of(row)
    small = sees or small
    verdict = read["verdict"] if read else ""
    kind = "out" if verdict in OUT else verdict
    limit = say("face_checks.plus_minus", limit=row["limit_shown"])
    if not row["judges"]:
        limit = f"{limit} {say('face_checks.little')}"
    inputs = list(_inputs(row, number, read, count, what))
    if read and verdict == "in" and read["counts"]:
        inputs.insert(0, inputs.pop(read["counts"]))  # what is in stands beside its verdict
    named = f"<b>{escape(what)}</b>" + (f" <span>{marked(small)}</span>" if small else "")
    return (
        f'<li class="{kind}" data-check="{escape(row["key"])}"><div class="ck"><p class="w">{named}</p>'
        f'<p class="must"><span class="unseen">{escape(say("face_checks.must"))}</span> <b>{escape(row["shown"])}</b> '
        f"<small>{escape(limit)}</small></p>{inputs[0]}</div>{_verdict(read, number, inputs[1:])}</li>"
    )


def _inputs(row: CheckRow, number: int, read: ReadRow | None, count: int, what: str) -> Iterator[str]:
    """An input for each reading, and one more where the check is to be taped again."""
    typed = list(read["typed"]) if read else []
    wanted = max(len(typed), 1) + (read is not None and read["verdict"] in ("again", "differ"))
    for nth in range(wanted):
        name = _input_id(number, nth, count)
        label = say("face_checks.again_of" if nth else "face_checks.you_of", what=what)
        value = escape(typed[nth]) if nth < len(typed) else ""
        said = f' aria-describedby="said-{number}"' if read else ""
        if read and read["wrong"] and nth == len(typed) - 1:
            said += ' aria-invalid="true"'
        before = f'<span class="unseen">{escape(label)}</span>'
        if nth:
            before += f'<span aria-hidden="true">{escape(say("face_checks.again"))}</span>'
        yield (
            f'<label class="yr">{before}<input id="{name}" name="{name}" '
            f'data-check="{escape(row["key"])}" data-nth="{nth}" value="{value}" autocomplete="off" '
            f'data-keys="length" autocapitalize="off" spellcheck="false" maxlength="40"{said}></label>'
        )


def _far(answer: Answer) -> str:
    """What proves a pad's far corners, in a list of its own: its stakes are others, set on a card of the forms. So does
    what proves a line of several pieces as a whole, folded until something of it was read."""
    far: FarChecks = answer["far_checks"]
    if not far["rows"]:
        return ""
    read = {row["check"]: row for row in far["read"]}
    count = len(far["rows"])
    listed = [_row(row, FAR_FIRST + number, read.get(row["key"]), count, told) for number, (row, told) in
              enumerate(zip(far["rows"], far["sees"], strict=True))]  # fmt: skip
    if far["apart"] is None:
        rows = "".join(listed)
        named = say("face_checks.line_one") if count == 1 else say("face_checks.line", count=count)
        opened, told = (
            " open" if far["read"] else "",
            "face_checks.line_told_on" if far["off"] else "face_checks.line_told",
        )
        return (
            f'<details class="more far" id="checks-line"{opened}><summary>{escape(named)}</summary>'
            f'<p>{escape(say(told))}</p><ul class="checks">{rows}</ul></details>'
        )
    told = say("face_checks.far_off") if far["off"] else say("face_checks.far_told")
    most = say("face_checks.far_most", limit=far["apart"]["limit_shown"])
    return (
        f'<section class="far"><h2>{escape(say("face_checks.far"))}</h2><p>{escape(told)}</p>'
        f'<ul class="checks">{"".join(listed)}</ul><p>{escape(most)}</p>{_far_found(answer, far["told"])}</section>'
    )


def _far_found(answer: Answer, told: Sequence[str]) -> str:
    """What the far corners' readings mean, and the way to their card."""
    if not told:
        return ""
    lines = "".join(f'<p class="who">{marked(text)}</p>' for text in told)
    button = ""
    if CORNERS in answer["second_pass"]:
        forms = answer["second_pass"]
        step = len(layout_cards(answer)) + forms.index(CORNERS) + 1
        words = escape(say("face_checks.far_again", step=forms.index(CORNERS) + 1, count=len(forms)))
        button = f'<button type="button" class="btn" data-do="go" data-step="{step}">{words}</button>'
    return f'<div class="found" role="status">{lines}{button}</div>'


def _input_id(number: int, nth: int, count: int) -> str:
    return f"read-{number + nth * count}"


def _verdict(read: ReadRow | None, number: int, again: Sequence[str]) -> str:
    if read is None:
        return ""
    verdict = read["verdict"]
    if verdict in NO_VERDICT:
        wrong = ' class="wrong"' if verdict == "unread" else ""
        words = f'<p{wrong} id="said-{number}">{escape(read["text"])} {escape(read["wrong"] or "")}</p>'
        return f'<div class="verdict">{words}{"".join(again)}</div>'
    sign, word = ("✓", say("face_checks.in")) if verdict == "in" else ("✕", say("face_checks.out"))
    shape = "sign" if verdict == "in" else "sign stop"
    seal = f'<span class="{shape}" aria-hidden="true">{sign}</span>'
    wrong = f' <span class="wrong">{escape(read["wrong"])}</span>' if read["wrong"] else ""
    told = f'<p id="said-{number}"><b>{seal}{escape(word)}</b> {marked(read["text"])}{wrong}</p>'
    return f'<div class="verdict">{told}<div class="agains">{"".join(again)}</div></div>'


def _more(rows: Sequence[str], beyond: int) -> str:
    if not rows:
        return ""
    title = escape(say("face_checks.more", count=len(rows)))
    rest = f"<p>{escape(say('face_checks.beyond', count=beyond))}</p>" if beyond > 0 else ""
    listed = f'<summary>{title}</summary><ul class="checks">{"".join(rows)}</ul>{rest}'
    return f'<details class="more" id="checks-more">{listed}</details>'


def _signed(read: ReadPart) -> str:
    fields = (("by", read["by"], "text"), ("date", read["date"], "date"))
    made = "".join(
        f'<label for="{name}">{escape(say(f"face_checks.{name}"))}<input id="{name}" name="{name}" '
        f'type="{kind}" value="{escape(value)}" maxlength="40" autocomplete="off"></label>'
        for name, value, kind in fields
    )
    return f'<div class="signed">{made}</div>'


def _lost(read: ReadPart) -> str:
    if not read["lost"]:
        return ""
    return f'<p class="lost">{escape(say("face_checks.lost", count=len(read["lost"])))}</p>'
