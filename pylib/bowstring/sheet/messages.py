"""The sheet as plain text for messages: each at most 160 signs, whole by itself, and no other job's.

Every number that a crew needs stands in them, so that somebody without the page can set the stakes. A message can come
late, alone or out of order: each has its number, the job's name and a code that changes with any number of the sheet.
"""

from __future__ import annotations

import re
import zlib
from collections.abc import Iterator, Sequence
from itertools import groupby

from bowstring.job.linkfinder import base36
from bowstring.report.forms.answer import Answer
from bowstring.sheet import brief
from bowstring.sheet.facing import away_hand, curve_hand, hand_in, places
from bowstring.sheet.firsts import firsts
from bowstring.sheet.markup import NUMBER
from bowstring.sheet.of_line import concrete_told, of_line, others_told
from bowstring.sheet.setting import Row, Setting, settings
from bowstring.units.angles import show_dms
from bowstring.units.plain_signs import in_plain_signs
from bowstring.words import say

MOST = 160
"""Signs of one message in the basic coding."""

NAME = 10
"""Most signs of a title that each message repeats."""

CODE_DIGITS = 4
_HELD = "\0"
"""Stands for a blank that no message may end at: within a length, or an angle."""

_CUT = "..."


def messages(answer: Answer) -> list[str]:
    """Return the sheet as messages in the order in which they are read.

    >>> from bowstring import answer
    >>> job = {"bowstring": 1, "arc": {"chord": "38 ft", "sagitta": "5 ft 3 in"}, "side": "left", "drawn_to": "face"}
    >>> told = messages(answer({**job, "method": "halving", "levels": 1}))
    >>> all(len(one) <= 160 and 'An arc' in one for one in told)
    True
    """
    stopped = bool(answer["stops"])
    code = _code(answer)
    digits = 1
    while True:
        room = MOST - len(_head(answer, "9" * digits, "9" * digits, code))
        bodies = _packed(_items(answer, room, stopped=stopped), room)
        if len(str(len(bodies))) <= digits:
            break
        digits += 1
    count = str(len(bodies))
    return [_head(answer, str(number), count, code) + body for number, body in enumerate(bodies, 1)]


def _head(answer: Answer, number: str, count: str, code: str) -> str:
    key = "messages.head_stop" if answer["stops"] else "messages.head"
    return in_plain_signs(say(key, number=number, count=count, title=_name(answer), code=code))


def _name(answer: Answer) -> str:
    """The title's first words, as far as there is room."""
    title = " ".join(in_plain_signs(brief.title(answer)).split())
    if len(title) > NAME:
        cut = title[: NAME + 1]
        title = cut[: cut.rindex(" ")] if " " in cut else cut[:NAME]
    return title.rstrip(" ,;:.-(")


def _code(answer: Answer) -> str:
    """A few signs that differ wherever anything on the sheet does."""
    whole = "\n".join([brief.title(answer), *_items(answer, MOST, stopped=bool(answer["stops"]))])
    return base36(zlib.crc32(whole.encode()) % 36**CODE_DIGITS, CODE_DIGITS).upper()


def _packed(items: Sequence[str], room: int) -> list[str]:
    """Put items together in their order, none of them across two messages."""
    bodies: list[str] = []
    for piece in (piece for item in items for piece in _pieces(item, room)):
        if bodies and len(bodies[-1]) + 1 + len(piece) <= room:
            bodies[-1] += f" {piece}"
        else:
            bodies.append(piece)
    return [body.replace(_HELD, " ") for body in bodies]


def _pieces(item: str, room: int) -> Iterator[str]:
    """An item in as many pieces as it needs: at the ends of sentences, else between words, and said so."""
    while len(item) > room:
        most = item[: room + 1]
        at = max((found.end() for found in re.finditer(r"[.!?](?= )", most)), default=0)
        if at:
            yield item[:at]
            item = item[at:].lstrip()
            continue
        at = item[: room - len(_CUT) + 1].rfind(" ")
        at = at if at > 0 else room - len(_CUT)
        yield item[:at] + _CUT
        item = _CUT + item[at:].lstrip()
    yield item


def _items(answer: Answer, room: int, *, stopped: bool) -> list[str]:
    """What has to be told, each a text that stands in one message wherever it fits."""
    told = [*_where(answer)]
    if stopped:
        told = [say("messages.stop"), *answer["stops"], *brief.way_out(answer), *told]
        return [_held(text) for text in told]
    told += brief.ties(answer)
    told.append(say("messages.services"))
    told += [one.text for one in firsts(answer)]
    held = [_held(text) for text in told]
    for table in settings(answer):
        held += [_held(_how(text)) for text in table.how]
        held += _stakes(answer, table, room)
    held += [_held(text) for text in _checks(answer)]
    return held + [_held(text) for text in _cautions(answer)]


def _cautions(answer: Answer) -> list[str]:
    """The job's own cautions; without that of the arc over a half circle that has the same radius and chord: who has
    the stakes alone can't ask the drawing, and the mid-ordinate that they are set by is that of one arc."""
    own, angle = brief.own_cautions(answer), answer["arc"]["central_angle"]
    greater = show_dms(360.0 - angle)
    return own if angle > 180 else [text for text in own if greater not in text]


def _held(text: str) -> str:
    """A text in the signs of messages, its lengths and angles held together."""
    held = NUMBER.sub(lambda found: found[0].replace(" ", _HELD), text)
    held = re.sub("° ?(?=[0-9])", f"{_HELD}deg{_HELD}", held).replace("°", f"{_HELD}deg")
    return _HELD.join(" ".join(in_plain_signs(part).split(" ")) for part in held.split(_HELD))


def _where(answer: Answer) -> Iterator[str]:
    """Which arc of a line it is, the ends, the hand, the line."""
    if of_line(answer):
        yield " ".join(one for one in (of_line(answer), others_told(answer)) if one)
    ends = answer["ends"]
    if ends["A"] or ends["B"]:
        key = "messages.ends_off" if answer["offset"] else "messages.ends"
        first, second = (ends[end] or say("messages.no_landmark") for end in ("A", "B"))
        yield say(key, first=first, second=second)
    yield from _hands(answer)
    drawing, wall = brief.drawing(answer, on_it=bool(brief.wall(answer))), brief.wall(answer)
    if drawing and not answer["stops"]:
        yield say("messages.sentence", told=drawing)
    yield from brief.line(answer)[1 if drawing and not (answer["offset"] or answer["stops"]) else 0 :]
    if not answer["stops"]:
        yield from wall


def _hands(answer: Answer) -> Iterator[str]:
    """On which hand the curve is, and a line's concrete."""
    hands = {"hand": curve_hand(answer), "turn": away_hand(answer)} if answer["side"] else {}
    yield say("messages.hand", **hands) if hands else say("messages.hand_open")
    yield from concrete_told(answer)


def _how(text: str) -> str:
    return say("messages.square") if text == say("paper.how.stake") else text


def _stakes(answer: Answer, table: Setting, room: int) -> Iterator[str]:
    """The rows of a table; those that are set by the same numbers together, as many as one message holds."""
    at = places(answer)
    steps = {step["number"]: step for step in answer["steps"]}
    short = {say("table.half"): say("messages.half"), say("table.half_chord"): say("messages.half_chord")}
    head = [short.get(text, text) for text in table.head]

    def numbers(row: Row) -> tuple[str, ...]:
        """What a row is set by, a cell each; the last is the hand, empty where it needs none or a cell says it."""
        cells = [
            say("messages.cell", head=head[column], cell=cell)
            for column, cell in enumerate(row.cells)
            if column and column not in table.words and cell
        ]
        hand = hand_in(answer, at, steps[row.number]) or ""
        return (*cells, "" if any(hand in cell for cell in cells) else hand)

    for same, rows in groupby(table.rows, numbers):
        together: list[str] = []
        for row in rows:
            one = _stake(row, table, head, first=not together)
            if together and len(_group([*together, one], same)) > room:
                yield from _whole(together, same, room)
                together, one = [], _stake(row, table, head, first=True)
            together.append(one)
        yield from _whole(together, same, room)


def _whole(stakes: Sequence[str], numbers: Sequence[str], room: int) -> Iterator[str]:
    """Stakes with their numbers; where one message can't hold them, several that each name the stakes and the hand."""
    *cells, hand = numbers
    part: list[str] = []
    for cell in cells:
        if part and len(_group(stakes, [*part, cell, hand])) > room:
            yield _group(stakes, [*part, hand])
            part = []
        part.append(cell)
    yield _group(stakes, [*part, hand])


def _group(stakes: Sequence[str], numbers: Sequence[str]) -> str:
    return _held(say("messages.stakes", stakes=", ".join(stakes), cells="; ".join(filter(None, numbers))))


def _stake(row: Row, table: Setting, head: Sequence[str], *, first: bool) -> str:
    """A stake with the string or line that it is set from."""
    for column in table.words:
        key = "messages.first_string" if first else "messages.string"
        return say(key, stake=row.cells[0], head=head[column], cell=row.cells[column])
    return row.cells[0]


def _checks(answer: Answer) -> Iterator[str]:
    found = brief.checks(answer)
    if not found:
        yield brief.no_check(answer)
    for one in found:
        blunt = one.limit == say("sheet.cant_judge")
        key = "messages.check_blunt" if blunt else "messages.check"
        yield say(key, what=one.what, reads=one.reads, limit=one.limit)
