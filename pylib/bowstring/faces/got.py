"""What was got at a stake instead of what its card says: the readings to type over, and what comes of them."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from html import escape

from bowstring.report.forms.got import GotRow, LaterNumber
from bowstring.report.got import first_capital
from bowstring.report.places import place_name
from bowstring.sheet.markup import marked
from bowstring.words import say
from bowstring.words.isolated import isolated

_BACK = '<svg width="14" height="20" viewBox="0 0 14 20" aria-hidden="true"><path d="M12 2 3 10l9 8"/></svg>'

MOST_ROWS = 4
"""Numbers of later stakes that the table has room for."""

STOP, SLIP, MOVE, STAY = "stop", "slip", "move", "stay"
"""What comes of it: no way on from there, a reading that looks like a slip, a bump, or nothing to do."""


SURE = "got-sure"
"""The button by which what looks like a slip is told to be where the stake stands."""


@dataclass(frozen=True)
class Reading:
    """One reading of the step.

    Attributes:
        name: of its field; label: what it is; asked: what the card says, empty where it asks for none.
        typed: what stands in the field; note: how that differs, or why it can't be read (``wrong``).
    """

    name: str
    label: str
    asked: str
    typed: str
    note: str = ""
    wrong: bool = False


@dataclass(frozen=True)
class Choice:
    """A button that takes something up at once: what it says, the fields that it puts into the job, and more of it."""

    text: str
    fields: Mapping[str, str]
    more: str = ""


@dataclass(frozen=True)
class Way:
    """A button that leads elsewhere: what it says, and what else its tag has."""

    text: str
    to: Mapping[str, str]


@dataclass(frozen=True)
class Panel:
    """All that the panel shows.

    Attributes:
        head: its question; readings: what may be typed over.
        row: what the answer makes of it, ``None`` where nothing differs; tolerance: as a text, empty without one.
        stops: sentences for which nobody goes on from there; told: what else is to be said.
        choices: what can be taken up at once; forget: the fields that take back what was got before.
        over: what to type, where that isn't said by what differs; want: the field that is still to be typed in.
        level: the tape lies on a slope, and lengths here are level.
        taped: the readings that may be taped twice, as one text; sure: they were.
        slip: what readings that can't stand together look like each by itself.
        ways: where else that is mended of which nothing can be typed here, the likeliest first.
        again: what leads back to the card where nothing can be typed.
        undone: cards that don't stand any more once what was got is forgotten.
    """

    head: str
    readings: Sequence[Reading]
    row: GotRow | None = None
    tolerance: str = ""
    stops: Sequence[str] = ()
    told: str = ""
    choices: Sequence[Choice] = ()
    forget: Mapping[str, str] = field(default_factory=dict)
    level: bool = False
    over: str = ""
    want: str = ""
    taped: str = ""
    sure: bool = False
    slip: str = ""
    ways: Sequence[Way] = ()
    again: str = ""
    undone: Sequence[int] | None = None

    @property
    def named(self) -> str:
        """What the readings look like, where nobody goes on from them: of a slip no place is told, and no move."""
        row = self.row
        if row is None:
            return self.slip
        stops = self.stops or row["within"] is False
        return row["slip"]["text"] if row["slip"] and stops and not row["doubt"] else ""

    @property
    def verdict(self) -> str:
        """What comes of it, empty where nothing was typed over."""
        row = self.row
        if self.stops or (row and (row["doubt"] or row["within"] is False)):
            return STOP
        if row is None:
            return ""
        return SLIP if row["slip"] else MOVE if row["move"] and False in (row["fair"], row["usual"]) else STAY


def got_html(panel: Panel) -> str:
    """Return the panel as HTML, every text in it escaped; what is typed goes by the names of its fields."""
    rows = "".join(_reading(one) for one in panel.readings)
    over = panel.over or say("face_got.over_level" if panel.level else "face_got.over")
    typing = f'<p class="typing">{escape(over)}</p>' if panel.readings else ""
    after = f"{_result(panel)}{_choices(panel)}{_ways(panel)}{_forget(panel)}"
    return (
        '<section class="got" aria-labelledby="got-head"><div class="panelhead">'
        f'<button type="button" class="back" data-do="keep" aria-label="{escape(say("card.do.back"))}">{_BACK}</button>'
        f'<h2 id="got-head" tabindex="-1">{escape(panel.head)}</h2></div>{typing}'
        f'<div class="measures">{rows}</div>{after}</section>{_thumb(panel)}'
    )


def _reading(one: Reading) -> str:
    old = one.asked and (one.note or not one.typed.strip())
    was = f"<small>{marked(say('face_got.was', asked=one.asked))}</small>" if old else ""
    kind = "m tall wrong" if one.wrong else "m tall given" if one.note else "m tall"
    invalid = ' aria-invalid="true"' if one.wrong else ""
    return (
        f'<div class="{kind}"><label for="got-{one.name}"><span>{marked(one.label)}{was}</span></label>'
        f'<div class="box"><input id="got-{one.name}" name="{one.name}" value="{escape(one.typed)}" autocomplete="off" '
        f'data-keys="length" inputmode="text" aria-describedby="got-{one.name}-note"{invalid}></div>'
        f'<small class="note" id="got-{one.name}-note">{marked(one.note)}</small></div>'
    )


def _result(panel: Panel) -> str:
    verdict = panel.verdict
    if not verdict and not panel.told:
        return ""
    row, lines = panel.row, [*_lines(panel), *([panel.told] if panel.told else [])]
    sign = f'<span class="sign" aria-hidden="true">{"✓" if verdict == STAY else "!"}</span>'
    role = "alert" if verdict == STOP else "status"
    said = "".join(f"<p>{marked(line)}</p>" for line in lines)
    table = _table(row["later"]) if row and verdict in (MOVE, STAY) else ""
    return (
        f'<section class="then {verdict or "told"}" role="{role}"><h3>{sign}{marked(_headline(panel))}</h3>'
        f"{said}{table}</section>"
    )


def _lines(panel: Panel) -> list[str]:
    """What is told under the headline, the slip first."""
    if panel.named:
        return [panel.named]
    row = panel.row
    if row is None:
        return list(panel.stops)
    slip, rest = row["slip"], list(panel.stops or _told(row))
    named = slip and not any(slip["text"] in line for line in rest)  # a stop for a slip says it by itself
    return [slip["text"], *rest] if slip and named else rest


def _told(row: GotRow) -> list[str]:
    """What is told under the headline, which says the rest: of readings that disagree nothing holds, what looks like a
    slip has no next numbers yet, and a reading that is still to be taken comes before them."""
    if row["doubt"]:
        return []
    if row["within"] is False:
        return [row["text"]]
    stands = say("face_got.stands", shown=row["shown"])
    return [stands] if row["slip"] else [f"{stands} {(*row['must'], row['onward'])[0]}"]


def _headline(panel: Panel) -> str:
    row, verdict = panel.row, panel.verdict
    if not verdict:
        return say("face_got.chord")
    if panel.named:
        return say("face_got.slip")
    if row is None or verdict == STOP:
        over = row is not None and row["within"] is False and not row["doubt"] and panel.tolerance and row["at"]
        key = "move_or_ask" if over else "again"
        return say(f"face_got.{key}", stake="" if row is None else _name(row))
    stake = _name(row)
    if verdict == STAY:
        return say(
            "face_got.stays_within" if row["within"] else "face_got.stays", stake=stake, tolerance=panel.tolerance
        )
    return say(f"face_got.{verdict if verdict == SLIP or row['fair'] is False else 'off'}", stake=stake)


def _name(row: GotRow) -> str:
    return row["at"] or first_capital(place_name(row["stake"]))


def _table(later: Sequence[LaterNumber]) -> str:
    if not later:
        return ""
    heads = "".join(
        f'<th scope="col">{escape(say(f"face_got.{key}"))}</th>' for key in ("next", "was_head", "now_head")
    )
    body = "".join(
        f'<tr><th scope="row">{escape(place_name(row["stake"]))} {marked(row["label"])}</th>'
        f"<td>{_number(row['was'])}</td><td><b>{_number(row['now'])}</b></td></tr>"
        for row in later[:MOST_ROWS]
    )
    return f"<table><thead><tr>{heads}</tr></thead><tbody>{body}</tbody></table>"


def _number(text: str) -> str:
    return escape(isolated(text)) if text else "–"


def _choices(panel: Panel) -> str:
    chosen = panel.verdict != STOP  # of what looks like a slip nothing is chosen first
    kinds = ["btn first" if chosen and not number else "btn" for number in range(len(panel.choices))]
    buttons = "".join(
        _fill(one.text, one.fields, kind, one.more) for one, kind in zip(panel.choices, kinds, strict=True)
    )
    return f'<div class="choices">{buttons}</div>' if buttons else ""


def _ways(panel: Panel) -> str:
    """Buttons to where it is mended; the first of them is the first thing to do."""
    buttons = "".join(
        f'<button type="button" class="btn{"" if number else " first"}"{_tag(one.to)}>{escape(one.text)}</button>'
        for number, one in enumerate(panel.ways)
    )
    return f'<div class="choices">{buttons}</div>' if buttons else ""


def _tag(values: Mapping[str, str]) -> str:
    return "".join(f' data-{name}="{escape(value)}"' for name, value in values.items())


def _forget(panel: Panel) -> str:
    return _forgetting(panel, say("face_got.forget"), "btn plain forget") if panel.forget else ""


def _forgetting(panel: Panel, text: str, kind: str) -> str:
    """A button with which what was got here goes: the cards that hang on it don't stand any more."""
    undone = None if panel.undone is None else " ".join(str(card) for card in panel.undone)
    return _fill(text, panel.forget, kind, undone=undone)


def _fill(text: str, fields: Mapping[str, str], kind: str, more: str = "", undone: str | None = None) -> str:
    small = f" <small>{escape(more)}</small>" if more else ""
    cards = "" if undone is None else f' data-undone="{undone}"'
    return (
        f'<button type="button" class="{kind}" data-do="fill" data-fill="{escape(json.dumps(dict(fields)))}"{cards} '
        f'data-then="stakes">{escape(text)}{small}</button>'
    )


def _thumb(panel: Panel) -> str:
    """The buttons at the thumb, the first thing to do last, where the thumb is."""
    unread = next((one.name for one in panel.readings if one.wrong), "")
    if unread or panel.want:
        first = say("face_got.type_again" if unread else "face_got.type_other")
        return (
            '<div class="thumb two"><button type="button" class="btn plain" data-do="keep">'
            f'{escape(say("face_got.keep"))}</button><button type="button" class="btn first" data-do="focus" '
            f'data-for="got-{unread or panel.want}">{escape(first)}</button></div>'
        )
    buttons = _ways_on(panel)
    sure = f' data-sure="{escape(panel.taped)}"'
    over = panel.ways or (panel.choices and panel.verdict != STOP)  # the first of those is, over them
    filled = 0 if over else len(buttons)
    made = []
    for number, (do, text) in enumerate(buttons, 1):
        kind = f"btn {'first' if number == filled else 'plain'}"
        if do == "move" and panel.forget:  # what is moved stands no more where it was got
            made.append(_forgetting(panel, text, kind))
            continue
        made.append(
            f'<button type="button" class="{kind}" data-do="{do}"{sure if do == SURE else ""}>{escape(text)}</button>'
        )
    return f'<div class="thumb {"one" if len(made) == 1 else "two"}">{"".join(made)}</div>'


def _ways_on(panel: Panel) -> list[tuple[str, str]]:
    """What may be done with the readings: what a button does and says, the first thing to do last."""
    verdict, row = panel.verdict, panel.row
    keep, use = ("keep", say("face_got.keep")), ("use-got", say("face_got.use"))
    again = ("keep", say("face_got.tape_again"))
    move = ("move", row["move"]["text"]) if row and row["move"] else None
    if verdict == STAY:
        return [keep, use]
    if verdict == MOVE and move:
        return [use, move]
    if verdict == SLIP:
        return [use, again]
    if panel.again:
        return [("keep", panel.again)]
    if verdict != STOP:
        return [keep]
    if row is None or row["doubt"]:
        return [again]
    if move and row["within"] is False and not panel.named:
        return [again, move]
    if panel.sure:
        return [("keep", say("face_got.set_stake_again", stake=_name(row)))]
    return [(SURE, say("face_got.taped_twice")), again] if panel.taped else [again]
