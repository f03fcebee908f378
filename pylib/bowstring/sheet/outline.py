"""What stands on a sheet, in order: sections of paragraphs, lists, tables and drawings, made from an answer alone.

The text sheet and the HTML sheet render the same outline, so neither can leave out what the other says.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from typing import TypeVar

from bowstring.geometry.arc import MEASURES
from bowstring.report.alone import drawn_line
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.arc import ArcTexts, FitPart
from bowstring.report.forms.halving import LevelRow
from bowstring.report.forms.results import RuleMiss
from bowstring.report.forms.stakes import StakeRow
from bowstring.report.forms.steps import StepRow
from bowstring.sheet import checks as check_parts
from bowstring.sheet import method as method_parts
from bowstring.sheet.blocks import MANY, Block, Drawing, Heading, Items, Paragraph, Section, Table
from bowstring.sheet.build_sections import SECTIONS as BUILD
from bowstring.sheet.entries import entries
from bowstring.sheet.of_line import of_line, with_others
from bowstring.words import say


def outline(answer: Answer) -> list[Section]:
    """Return the sections of an answer's sheet, in the order in which a crew needs them.

    A sheet that nobody may build from has no step and no number of one: only what helps to settle why.
    """
    keys = _UNSETTLED if answer["stops"] else _SECTIONS
    sections = (section for key in keys for section in _sections(answer, key))
    return [section for section in sections if section.blocks]


def part(answer: Answer, key: str) -> Section | None:
    """Return one section of an answer's sheet by its key, or ``None`` where it has none; the others aren't made."""
    section = _SECTIONS[key](answer)
    return section if section.blocks else None


def _sections(answer: Answer, key: str) -> list[Section]:
    if key != _SET_OUT:
        return [_SECTIONS[key](answer)]
    return (
        [_level(answer, row) for row in answer["halving"]]
        if method_parts.halves(answer)
        else [method_parts.set_out(answer)]
    )


def _stops(answer: Answer) -> Iterator[Block]:
    """What has to be settled before anybody builds: it stands above everything."""
    if answer["stops"]:
        yield Items(answer["stops"], "stop")
        yield Paragraph(say("sheet.steps_later"), "stop")


def _short(answer: Answer) -> Iterator[Block]:
    """The plan and every number that is taped, on one page for somebody who knows the steps."""
    yield Paragraph(answer["hand"], "key")
    yield Drawing("plan")
    if not method_parts.halves(answer):
        yield from method_parts.short_tables(answer)
        yield Paragraph(say("sheet.nearest", mark=answer["mark"]))
        return
    rows = [row for level in answer["halving"] for row in _short_rows(answer, level)]
    head = [say(f"sheet.{name}") for name in ("drive", "string", "middle_at", "square_off", "halves_read")]
    yield Table(head, rows, say("sheet.short_caption"))
    yield Paragraph(" ".join([say("sheet.nearest", mark=answer["mark"]), say("sheet.split")]))


def _short_rows(answer: Answer, row: LevelRow) -> Iterator[list[str]]:
    """One row for a level whose strings all read the same; otherwise for those that do, or none for hundreds."""
    stakes = row["stakes"]
    if row["how"]:
        names = stakes[0] if len(stakes) == 1 else say("stick.to", first=stakes[0], last=stakes[-1])
        string = say("sheet.from_to", start="A", end="B") if len(stakes) == 1 else say("sheet.neighbours")
        yield [names, string, row["half_shown"], row["sagitta_shown"], row["half_chord_shown"]]
        return
    steps = [step for step in answer["steps"] if step["level"] == row["level"]]
    if len(steps) > MANY:
        names = say("stick.to", first=stakes[0], last=stakes[-1])
        yield [names, say("sheet.neighbours"), *[say("sheet.each_own")] * 3]
        return
    alike: dict[tuple[str, str, str], list[list[str]]] = {}
    for step in steps:
        first = step["measures"][0]["shown"]
        numbers = (first, step["taped"] or "", step["half_chord"] or "")
        if step["kind"] == "stake_crossed":
            numbers = (say("sheet.none"), say("sheet.none"), first)
        alike.setdefault(numbers, []).append(_string(step))
    for numbers, strings in alike.items():
        set_alike, pairs = zip(*strings, strict=True)
        yield [", ".join(set_alike), ", ".join(pairs), *numbers]


def _before(answer: Answer) -> Iterator[Block]:
    yield Items(answer["warnings_top"], "caution")
    cautions = [text for text in answer["cautions"] if text not in answer["stops"]]
    if cautions:
        yield Items(cautions, "caution")
    if answer["note"]:
        yield Paragraph(say("sheet.note", note=answer["note"]), "note")


def _arc(answer: Answer) -> Iterator[Block]:
    offset = answer["offset"]
    if of_line(answer):
        yield Paragraph(with_others(answer), "key")
    if answer["drawn_to"]:
        yield Paragraph(say(f"sheet.drawn_to_{drawn_line(answer)}"))
    if offset:
        yield Paragraph(offset["text"], "key")
    columns: list[ArcTexts] = [answer["arc_shown"]] + ([answer["staked_shown"]] if offset else [])
    head = [
        say("sheet.measure"),
        say("sheet.held" if answer["held"] else "sheet.drawn") if offset else say("sheet.value"),
        *([say("sheet.staked")] if offset else []),
    ]
    rows = [[say(f"measure.{name}"), *(column[name] or say("sheet.none") for column in columns)] for name in MEASURES]
    yield Table(head, rows)
    if answer["given"]:
        yield Table(
            [say("sheet.given"), say("sheet.typed"), say("sheet.computed"), say("sheet.agrees")],
            [
                [
                    say(f"measure.{row['field']}"),
                    row["value_shown"],
                    row["computed_shown"] or say("sheet.none"),
                    say("sheet.yes") if row["agrees"] else say("sheet.no"),
                ]
                for row in answer["given"]
            ],
            say("sheet.given_caption"),
        )
    if answer["fit"]:
        yield from fit_blocks(answer["fit"])


def fit_blocks(fit: FitPart) -> Iterator[Block]:
    head = [
        say("sheet.hold"),
        *(say(f"sheet.{name}") for name in ("radius", "rise", "arc_length", "kink", "build")),
    ]
    rows = []
    for option in fit["options"]:
        verdict = say("sheet.may_build") if option["buildable"] else say("sheet.ask")
        taken = say("sheet.taken") if option["taken"] else ""
        texts = (option["radius_shown"], option["sagitta_shown"], option["arc_length_shown"])
        shown = [text or say("sheet.none") for text in texts]
        rows.append([option["label"], *shown, option["kink_shown"], verdict + taken])
    caption = say(
        "sheet.fit_caption",
        found=fit["found_shown"],
        drawn=fit["drawn_shown"],
        difference=fit["difference_shown"],
    )
    yield Table(head, rows, caption)


def _landmarks(answer: Answer) -> Iterator[Block]:
    landmarks = answer["ends"]
    if any(landmarks.values()):
        yield Paragraph(
            say(
                # Landmarks are where the drawn line ends; off it the stakes have ends of their own.
                "sheet.landmarks_drawn" if answer["offset"] else "sheet.landmarks",
                first=landmarks["A"] or say("sheet.no_landmark"),
                second=landmarks["B"] or say("sheet.no_landmark"),
            ),
            "key",
        )


def _ends(answer: Answer) -> Iterator[Block]:
    if answer["stops"]:  # a landmark or the hand may be what is to be settled
        yield Paragraph(answer["hand"], "key")
    yield from _landmarks(answer)
    if answer["stops"]:
        return
    steps = [step for step in answer["steps"] if step["level"] == 0]
    for step in steps:
        yield Items([step["text"]], first=step["number"])
        if step["cautions"]:
            yield Items(step["cautions"], "caution")
    drawn = "0" if answer["offset"] else ""  # ties hold the drawn line's ends, as landmarks do
    ties = [[end + drawn, tie["to"], tie["shown"]] for end in ("A", "B") for tie in answer["ties"].get(end, ())]
    if ties:
        yield Table([say("sheet.end"), say("sheet.tied_to"), say("sheet.distance")], ties, say("sheet.ties_caption"))


def _on_line(answer: Answer) -> Iterator[Block]:
    """Which point of what is driven is on the line, and how it is worked with."""
    part = answer["on_line"]
    yield Paragraph(part["point"], "key")
    yield Drawing("on-line")
    overrun = [part["overrun"]["text"]] if part["overrun"] else []
    yield Items([text for text in (part["drawn_to"], *part["lines"], part["come_back"], *overrun) if text])


def _level(answer: Answer, row: LevelRow) -> Section:
    level = row["level"]
    steps = [step for step in answer["steps"] if step["level"] == level]
    blocks = _level_drawings(answer, row, steps)
    cautions = [text for step in steps for text in step["cautions"]]
    if cautions:
        blocks.append(Items(cautions, "caution"))
    blocks += _level_steps(row, steps)
    return Section(f"level-{level}", _level_title(row), [*blocks, *_square_here(row, steps)])


def _level_title(row: LevelRow) -> str:
    stakes = row["stakes"]
    names = stakes[0] if len(stakes) == 1 else say("stick.to", first=stakes[0], last=stakes[-1])
    key = "sheet.level_each" if not row["how"] else "sheet.level" if len(stakes) > 1 else "sheet.level_one"
    return say(key, level=row["level"], stakes=names, sagitta=row["sagitta_shown"])


def _level_drawings(answer: Answer, row: LevelRow, steps: Sequence[StepRow]) -> list[Block]:
    if not method_parts.exact(answer):  # a level's drawing shows exact sagittae
        return [Drawing("way")] if row["level"] == 1 else []
    # Hundreds of strings that all differ are a list, not a drawing; one that goes the other way would be drawn wrong.
    plain = len(steps) <= MANY and all(step["kind"] != "stake_back" for step in steps)
    return [Drawing("level", row["level"])] if row["how"] or plain else []


def _level_steps(row: LevelRow, steps: Sequence[StepRow]) -> list[Block]:
    """A level's steps, or the one way in which all of them go with the strings that it goes for."""
    if not row["how"]:
        return [Items([step["text"] for step in steps], first=steps[0]["number"])]
    if len(steps) <= MANY:
        strings: Block = Table([say("sheet.stake"), say("sheet.string")], [_string(step) for step in steps])
    else:
        first, last = row["stakes"][0], row["stakes"][-1]
        strings = Paragraph(say("sheet.every_string", first=first, last=last, count=len(steps)))
    return [Paragraph(row["how"], "key"), strings]


def _square_here(row: LevelRow, steps: Sequence[StepRow]) -> list[Block]:
    """How to keep a level's sagittae square, the one way that serves best here, and the level worked by hand.

    The numbers are those of equal strings: where what was got makes them differ, each step has its own instead.
    """
    if not row["how"]:
        slid = any(step["kind"] != "stake_crossed" for step in steps)
        return [Paragraph(say("sheet.square_each"))] if slid else []
    squaring = row["squaring"]
    best = next(way["text"] for way in squaring["ways"] if way["way"] == squaring["way"])
    blocks: list[Block] = [Paragraph(say("sheet.square", text=squaring["text"], best=best))]
    if row["half_shown"] == row["half_chord_shown"]:
        blocks.append(Paragraph(say("sheet.halves_alike", shown=row["half_shown"])))
    return [*blocks, *(Paragraph(line, "worked") for line in row["by_hand"])]


def _square(answer: Answer) -> Iterator[Block]:
    """Every way to keep every level square, with what a small mistake does."""
    if not method_parts.halves(answer):
        yield from method_parts.triangle(answer)
        return
    rows = [row for row in answer["halving"] if row["how"]]
    if not rows:
        return
    yield Paragraph(say("sheet.squaring_how"))
    for row in rows:
        yield Heading(say("sheet.squaring_level", level=row["level"], sagitta=row["sagitta_shown"]))
        if row["squaring"]["along"] is not None:
            yield Drawing("triangle", row["level"])
        yield Items([way["text"] for way in row["squaring"]["ways"]])


def _string(step: StepRow) -> list[str]:
    start, middle = step["measures"][0]["from"], step["measures"][1]
    return [middle["to"], say("sheet.from_to", start=start, end=step["to"])]


def _rule(answer: Answer) -> Iterator[Block]:
    rule = answer["rule"]
    yield Paragraph(rule["text"], "key")
    yield Table(
        [say("sheet.level_word"), say("sheet.exact"), say("sheet.quartered")],
        [[str(row["level"]), row["sagitta_shown"], row["rule_shown"]] for row in answer["halving"]],
    )
    if rule["lines"]:
        yield Items(rule["lines"])
    if rule["worst_miss"]:
        yield Table(
            [say("sheet.stake"), say("sheet.rule_miss")],
            [[row["name"], row["shown"]] for row in _telling(rule["stakes"], answer)],
            say("sheet.rule_caption"),
        )


_OfStake = TypeVar("_OfStake", "RuleMiss", "StakeRow")


def _telling(rows: Sequence[_OfStake], answer: Answer) -> Sequence[_OfStake]:
    """Every row, or those of the first four levels where there are many."""
    if len(rows) <= MANY:
        return rows
    if not method_parts.halves(answer):
        return rows[: MANY * 8]
    levels = {stake["name"]: stake["level"] for stake in answer["stakes"]}
    return [row for row in rows if levels[row["name"]] <= 4]


def _station(row: StakeRow) -> list[str]:
    return [row["station_shown"]] if "station_shown" in row else []


def _stakes(answer: Answer) -> Iterator[Block]:
    rows = _telling(answer["stakes"], answer)
    head, pairs = method_parts.drawing_columns(answer)
    cells = dict(zip((stake["name"] for stake in answer["stakes"]), pairs, strict=True))
    station = [say("station.head")] if any(_station(row) for row in rows) else []
    yield Table(
        [say("sheet.stake"), say("sheet.along_arc"), say("sheet.along_chord"), say("sheet.off_chord"), *head, *station],
        [
            [row["name"], row["along_shown"], row["x_shown"], row["y_shown"], *cells[row["name"]], *_station(row)]
            for row in rows
        ],
        say("sheet.stakes_caption")
        if len(rows) == len(answer["stakes"])
        else say("sheet.stakes_some", count=len(answer["stakes"])),
    )


def _stick(answer: Answer) -> Iterator[Block]:
    if not answer["stick"]["marks"]:
        return
    yield Paragraph(say("sheet.stick_how" if method_parts.halves(answer) else "sheet.stick_offsets"))
    yield Drawing("stick")
    yield Table(
        [say("sheet.level_word" if method_parts.halves(answer) else "sheet.stake"), say("sheet.from_end")],
        [[mark["label"], mark["shown"]] for mark in answer["stick"]["marks"]],
    )


def _made(key: str, title: str, blocks: Callable[[Answer], Iterable[Block]]) -> Callable[[Answer], Section]:
    return lambda answer: Section(key, say(title), list(blocks(answer)))


_SET_OUT = "set-out"
_SECTIONS: dict[str, Callable[[Answer], Section]] = {
    "stops": _made("stops", "sheet.stops", _stops),
    "short": _made("short", "sheet.short", _short),
    "before": _made("before", "sheet.before", _before),
    "arc": _made("arc", "sheet.arc", _arc),
    "ends": _made("ends", "sheet.ends", _ends),
    "on-line": _made("on-line", "sheet.on_line", _on_line),
    _SET_OUT: method_parts.set_out,
    "between": _made("between", "sheet.between", lambda answer: [Paragraph(answer["gap"]["text"])]),
    "checks": _made("checks", "sheet.checks", check_parts.checks),
    "mistakes": _made("mistakes", "sheet.mistakes", method_parts.mistakes),
    "accuracy": _made("accuracy", "sheet.accuracy", method_parts.accuracy),
    "rounding": _made("rounding", "sheet.rounding", lambda answer: [Paragraph(answer["rounding"]["text"])]),
    "advice": _made("advice", "sheet.advice", method_parts.advice),
    "rule": _made("rule", "sheet.rule", lambda answer: _rule(answer) if method_parts.halves(answer) else ()),
    "square": _made("square", "sheet.squaring", _square),
    "stakes": _made("stakes", "sheet.stakes", _stakes),
    "stick": _made("stick", "sheet.stick", _stick),
    **{key: _made(key, *made) for key, made in BUILD.items()},
    "readings": _made("readings", "sheet.readings", lambda answer: [entries(answer)]),
    "notes": _made("notes", "sheet.notes", lambda answer: [Items(answer["notes"])]),
}
"""What makes each section, in the order in which a crew needs them."""

_UNSETTLED = ("stops", "before", "arc", "ends", "advice", "readings", "notes")
"""The sections of a sheet that nobody may build from yet."""
