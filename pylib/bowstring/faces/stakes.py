"""The stakes face: one step a card, its numbers as large as the screen takes, and the list of all steps."""

from __future__ import annotations

import json
import re
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from html import escape

from bowstring.drawings.boxes import text_width
from bowstring.drawings.pass_section import pass_svg
from bowstring.drawings.step import step_svg
from bowstring.drawings.svg import SIZES
from bowstring.faces.in_dig import in_dig_html
from bowstring.faces.located import ticket_fields_html
from bowstring.faces.other_arcs import other_arcs_html
from bowstring.faces.passes import card_at, changed, count, first_open, running
from bowstring.faces.steplist import progress_html, steps_list_html
from bowstring.faces.stopcard import stop_html
from bowstring.faces.unread import card_text, nothing_read
from bowstring.report.forming.pass_card import CORNERS
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.cards import CardNumber, CardRow
from bowstring.sheet.markup import marked
from bowstring.sheet.of_line import of_line
from bowstring.words import say
from bowstring.words.isolated import isolated

__all__ = ["count", "first_open", "size_of", "stakes_html", "steps_list_html"]

WIDTHS = ((5.4, "n17"), (6.2, "n15"), (7.1, "n13"), (7.8, "n12"), (9.3, "n10"))
"""How wide a number may be, in its own height, to stand in each class of size."""

SIZES_DOWN = (*(name for _most, name in WIDTHS), "n8")
"""The classes of size, large to small."""

HUBS_CARD = "form_hubs"
"""The one of the forms' cards that is of the staked arc alone."""

DIG_CARD = "form_dig"
"""The one before which every arc of a line has its hubs."""

_NUMBERS = re.compile(r"[0-9][0-9 '\"/.,-]*")
"""The numbers of a note: two notes that differ in nothing else tell of one thing."""

BESIDE = ("locate", "checks", "board")
"""Cards that are no step of the answer: there is nothing to have got else."""


def stakes_html(
    answer: Answer,
    card: int,
    done: Collection[int] = (),
    anew: Mapping[str, str] | None = None,
    done_marks: Collection[str] = (),
    was: Before | None = None,
    bare: Sequence[int] = (),
    unread: str = "",
) -> str:
    """Return one card, whole, with its buttons; the nearest there is where there is none of that number.

    ``done``: running numbers; ``done_marks``: the marks of forms' cards that are done, by old numbers, too; ``was``:
    what is told of those; ``bare``: the line's arcs, from 1, whose hubs must be set first, the staked one last;
    ``unread``: what the last card says of a line's checks that nobody read. Where something stops the answer: that,
    and its way out.
    """
    if answer["stops"]:
        return stop_html(answer)
    one = card_at(answer, card)
    one, was = {**one, "text": card_text(answer, one)}, was or Before()
    steps = " ".join(str(step) for step in one["steps"])
    drawn = pass_svg if one["mark"] else step_svg
    whole = "" if one["lines"] and not one["mark"] else " whole"
    parts = [
        f'<section class="card" data-card="{running(answer, one)}" data-kind="{one["kind"]}" data-steps="{steps}"'
        f' data-stake="{escape(one["stake"] or "")}" aria-labelledby="card-head">',
        progress_html(answer, one, done, changed=changed(one, done_marks)),
        _of_line(answer, one),
        f'<figure class="draw{whole}">{drawn(answer, one, id="step")}</figure>',
        f'<p class="say">{marked(one["text"])}</p>',
        in_dig_html(answer, one, done),
        _bare(answer, bare),
        f'<aside class="in-dig" role="note"><b>{marked(unread)}</b></aside>' if unread else "",
        _numbers(one, was.card),
        _right(one, was.card),
        _notes(
            [
                *([was.edge] if was.edge else []),
                *_was_said(one, was.card),
                *_on_line(answer, one),
                *_notes_were(one, was.card),
                *_unread(answer, one),
            ]
        ),
        _received(one, anew or {}),
        ticket_fields_html(answer) if one["kind"] == "locate" else "",
        "</section>",
        _first_arc(answer, one, bare[0]) if _other(answer, bare) else _thumb(answer, one),
    ]
    return "".join(parts)


def _of_line(answer: Answer, card: CardRow) -> str:
    """Which arc of a line this is; where one begins and where it is done with the buttons for the others. On the card
    of its hubs those alone; nothing on the forms' cards after that: they are of the whole line."""
    if card["mark"]:
        return other_arcs_html(answer) if card["kind"] == HUBS_CARD else ""
    told = of_line(answer)
    arcs = other_arcs_html(answer) if running(answer, card) in (1, len(answer["cards"])) else ""
    return f'<p class="of-line">{marked(told)}</p>{arcs}' if told else ""


def _bare(answer: Answer, bare: Sequence[int]) -> str:
    """What the card of the dig asks for while arcs have no hubs."""
    part = answer["lined"]
    if not bare or part is None:
        return ""
    arcs = ", ".join(part["pieces"][number - 1]["name"] for number in bare)
    return f'<aside class="in-dig" role="note"><b>{marked(say("forming.hubs_bare", arcs=arcs))}</b></aside>'


def _other(answer: Answer, bare: Sequence[int]) -> bool:
    """Whether another arc than the staked one has to have its hubs first."""
    return bool(bare) and answer["lined"] is not None and bare[0] != answer["lined"]["at"]


@dataclass(frozen=True)
class Before:
    """What was worked by other numbers than those of now: the card as it was done, where that is known; the line that
    says that the stakes are an edge no more, empty where they are."""

    card: CardRow | None = None
    edge: str = ""


def _was_said(card: CardRow, old: CardRow | None) -> list[str]:
    """Of a card done by other numbers, what was another one and doesn't stand beside one that stands large now: numbers
    that were something else, or else what had to be read, or what the card said."""
    if old is None:
        return []
    labels = {one["label"] for one in card["numbers"]}
    gone = [one for one in old["numbers"] if one["label"] not in labels]
    if gone:
        return [say("stood.was_number", label=one["label"], shown=one["shown"]) for one in gone]
    if any(_old_number(one, old) for one in card["numbers"]) or _old_right(card, old):
        return []
    return [say("stood.was_text", text=old["text"])] if old["text"] != card["text"] else []


def _old_number(number: CardNumber, old: CardRow | None) -> str:
    """A number as it was, empty where it wasn't another one."""
    before = next((one["shown"] for one in old["numbers"] if one["label"] == number["label"]), "") if old else ""
    return before if before != number["shown"] else ""


def _old_right(card: CardRow, old: CardRow | None) -> str:
    """What had to be read, empty where it wasn't another number."""
    now, before = (one["right"]["shown"] if one and one["right"] else None for one in (card, old))
    return before if before and before != now else ""


def _notes_were(card: CardRow, old: CardRow | None) -> list[str]:
    """A card's notes; with each that has other numbers than it had what it was."""
    before = old["notes"] if old else []
    if len(before) != len(card["notes"]):
        return card["notes"]
    return [_note_was(now, was) for now, was in zip(card["notes"], before, strict=True)]


def _note_was(now: str, was: str) -> str:
    """A note, with what its numbers were from the first on that was another one."""
    if now == was or _NUMBERS.sub("", now) != _NUMBERS.sub("", was):
        return now
    words, before = now.split(" "), was.split(" ")
    first = next((at for at, pair in enumerate(zip(words, before, strict=False)) if pair[0] != pair[1]), 0)
    while first and before[first - 1].endswith("'"):  # feet, whose inches are others
        first -= 1
    return f"{now} ({say('stood.was', shown=' '.join(before[first:]).rstrip('.'))})"


def _numbers(card: CardRow, old: CardRow | None) -> str:
    if not card["numbers"]:
        return '<div class="nums"></div>'
    size = max((size_of(one["shown"]) for one in card["numbers"]), key=SIZES_DOWN.index)
    return f'<dl class="nums">{"".join(_number(one, size, _old_number(one, old)) for one in card["numbers"])}</dl>'


def _number(one: CardNumber, size: str, before: str) -> str:
    label = marked(one["label"]) + (f" ({marked(one['slope'])})" if one["slope"] else "")
    was = f'<b class="was">{marked(say("stood.was", shown=before))}</b>' if before else ""
    return (
        f"<div><dt><i>{one['disc']}</i><span>{label}</span>{was}</dt>"
        f'<dd class="{size}">{escape(isolated(one["shown"]))}</dd></div>'
    )


def size_of(text: str) -> str:
    """Return the class of size in which a number fits on one line, whatever font a phone has."""
    wide = text_width(text, "number") / SIZES["number"]
    return next((name for most, name in WIDTHS if wide <= most), SIZES_DOWN[-1])


def _right(card: CardRow, old: CardRow | None) -> str:
    right, before = card["right"], _old_right(card, old)
    if right is None:
        return ""
    was = f'<em class="was">{marked(say("stood.was", shown=before))}</em>' if before else ""
    shown = f"<b>{escape(right['shown'])}</b>" if right["shown"] else ""
    more = f"<em>{marked(right['more'])}</em>" if right["more"] else ""
    wide = " wide" if right["shown"] and "," in right["shown"] else ""
    text = f'<span><i class="sign" aria-hidden="true">✓</i> {marked(right["text"])}</span>'
    return f'<p class="right{wide}">{text}{shown}{was}{more}</p>'


def _unread(answer: Answer, card: CardRow) -> list[str]:
    """What the first card that builds on the stakes says while no check was read, where there is any; that of a pad's
    far corners what was read of them means."""
    far = answer["far_checks"]
    if card["kind"] == f"form_{CORNERS}" and far["read"]:
        return list(far["told"])
    builds = card["kind"] == "board" or (card["mark"] and card["number"] == 1)
    return [say("card.note.no_check")] if builds and nothing_read(answer) else []


def _on_line(answer: Answer, card: CardRow) -> list[str]:
    """Of a card that drives pins, which point of theirs is on the line, where that isn't their center. It's told with
    the card and isn't part of it: it changes with the slab, and no stake's number does."""
    told = answer["on_line"]["card"]
    stakes = {stake["name"] for stake in answer["stakes"]}
    return [told] if told and (card["stake"] or not stakes.isdisjoint(card["sets"])) else []


def _notes(notes: Sequence[str]) -> str:
    rows = "".join(f"<li>{marked(note)}</li>" for note in notes)
    return f'<ul class="notes">{rows}</ul>' if rows else ""


def _received(card: CardRow, anew: Mapping[str, str]) -> str:
    """On the card of a stake that stood when the job was sent: leave it (Done), or set it anew."""
    if not anew:
        return ""
    told, words = (say(key, stake=card["stake"] or card["sets"][-1]) for key in ("card.note.received", "card.do.anew"))
    fields = escape(json.dumps(dict(anew)))
    return (
        f'<div class="received"><p>{escape(told)}</p><button type="button" class="btn plain" data-do="fill" '
        f'data-fill="{fields}">{escape(words)}</button></div>'
    )


def _first_arc(answer: Answer, card: CardRow, other: int) -> str:
    """The buttons of a card that another arc comes before: that one is the first."""
    number = running(answer, card)
    back, done, arc = (
        escape(text) for text in (say("card.do.back"), say("card.do.done"), say("lined.stake_other", number=other))
    )
    return (
        f'<div class="thumb b3 main-last"><button type="button" class="btn plain tight" data-do="back">{back}</button>'
        f'<button type="button" class="btn plain tight" data-do="done" data-step="{number}">{done}</button>'
        f'<button type="button" class="btn first" data-do="line-at" data-at="{other}">{arc}</button></div>'
    )


def _thumb(answer: Answer, card: CardRow) -> str:
    """The buttons at the thumb: back, what was got instead, done."""
    number, kind = running(answer, card), card["kind"]
    back = "" if number > 1 else " disabled"
    buttons = [
        f'<button type="button" class="btn plain tight" data-do="back"{back}>{escape(say("card.do.back"))}</button>'
    ]
    last = ' data-face="paper"' if number == count(answer) else ""  # nothing comes after it but the paper
    if kind == "checks":
        # Who goes on with no check read is told so until one is, and the checks don't count as done.
        do = "done" if answer["read"]["count"] else "skip"
        on, go = escape(say(f"card.do.{do}")), escape(say("card.do.checks"))
        buttons.append(f'<button type="button" class="btn plain tight" data-do="{do}"{last}>{on}</button>')
        buttons.append(f'<button type="button" class="btn first" data-do="face" data-face="checks">{go}</button>')
        return f'<div class="thumb b3 main-last">{"".join(buttons)}</div>'
    if kind not in BESIDE and not card["mark"] and card["numbers"]:
        got = escape(say("card.do.got"))
        buttons.append(f'<button type="button" class="btn tight" data-do="got" data-step="{number}">{got}</button>')
    if kind == f"form_{CORNERS}":  # what was read there is typed and told with the checks
        got, place = escape(say("card.do.got")), 'data-do="face" data-face="checks"'
        buttons.append(f'<button type="button" class="btn tight" {place}>{got}</button>')
    words = "located" if kind == "locate" else "to_paper" if last else "done"
    done = escape(say(f"card.do.{words}"))
    buttons.append(f'<button type="button" class="btn first" data-do="done" data-step="{number}"{last}>{done}</button>')
    return f'<div class="thumb b{len(buttons)}">{"".join(buttons)}</div>'
