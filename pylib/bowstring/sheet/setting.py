"""The table that stakes are set by: a row a stake, in the order of setting, for every method."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby

from bowstring.methods.catalogue import BY_NAME
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.steps import StepRow
from bowstring.sheet.facing import Places, curve_hand, hand_in, off_tangent, places
from bowstring.words import is_said, say

CROSSED = ("stake", "crossed")
"""Tables of halving: a stake that two tapes cross stands among the others, in its place."""


@dataclass(frozen=True)
class Row:
    """A stake's row: its step's number, its cells (the stake first), and whether a round of halving begins with it."""

    number: int
    cells: tuple[str, ...]
    begins: bool = False


@dataclass(frozen=True)
class Setting:
    """Rows that are set alike: how, the heads, the rows; ``words``: the columns that name marks and have no number."""

    how: tuple[str, ...]
    head: tuple[str, ...]
    rows: tuple[Row, ...]
    words: tuple[int, ...] = ()


def settings(answer: Answer) -> list[Setting]:
    """Return the tables of an answer's stakes; one for all of halving, others in the order in which they are set."""
    at, method = places(answer), BY_NAME[answer["method"]]
    steps = [step for step in answer["steps"] if step["stake"] is not None]
    of_step = {step["number"]: method.tables[step["kind"]] for step in steps}
    heads = {table["kind"]: table["head"] for table in answer["tables"]}
    cells = {table["kind"]: iter(table["rows"]) for table in answer["tables"]}
    rows = {number: next(cells[table.kind]) for number, table in of_step.items()}

    def together(step: StepRow) -> str:
        kind = of_step[step["number"]].kind
        return "stake" if kind in CROSSED and "stake" in heads else kind

    found = []
    for kind, alike in groupby(steps, together):
        group = list(alike)
        body = [_sloping(step, rows[step["number"]]) for step in group]
        if kind == "stake":
            body = [_halved(row, of_step[step["number"]].kind) for row, step in zip(body, group, strict=True)]
        table = next(table for table in of_step.values() if table.kind == kind)
        words = tuple(number for number, column in enumerate(table.columns, 1) if column.shows is None)
        found.append(_setting(answer, at, group, heads[kind], body, words))
    return found


def _sloping(step: StepRow, row: list[str]) -> list[str]:
    """A row with what the tape reads along the slope told in a word: there is no room for more."""
    for measure in step["measures"]:
        if "slope_shown" in measure and measure["text"] != measure["shown"]:
            short = say("paper.slope", level=measure["shown"], slope=measure["slope_shown"])
            row = [cell.replace(measure["text"], short) for cell in row]
    return row


def _halved(row: list[str], kind: str) -> list[str]:
    """A row of halving's one table; of a crossed stake: its two tapes stand where the short chords do."""
    if kind == "stake":
        return row
    stake, string, first, second = row
    crossed = (
        say("paper.cross_both", shown=first) if first == second else say("paper.cross_two", first=first, second=second)
    )
    return [stake, string, say("paper.none"), say("paper.none"), crossed]


def _setting(
    answer: Answer, at: Places, steps: list[StepRow], head: list[str], body: list[list[str]], words: tuple[int, ...]
) -> Setting:
    hands = {step["number"]: hand_in(answer, at, step) for step in steps}
    same = len({hand for hand in hands.values() if hand}) < 2
    rows, level = [], 0
    for step, cells in zip(steps, body, strict=True):
        hand = hands[step["number"]]
        told = cells if same or not hand else [*cells[:-1], say("paper.head_hand", head=cells[-1], hand=hand)]
        rows.append(Row(step["number"], tuple(told), begins=bool(level) and step["level"] != level))
        level = step["level"]
    return Setting(tuple(_how(answer, steps, hands, same)), tuple(_head(answer, steps, head)), tuple(rows), words)


def _head(answer: Answer, steps: list[StepRow], head: list[str]) -> list[str]:
    """The heads; over halving's mid-ordinates with the hand that all of them go to."""
    square = say("table.square_off")
    if answer["side"] is None or not any(step["kind"] == "stake" for step in steps):
        return head
    return [say("paper.head_hand", head=text, hand=curve_hand(answer)) if text == square else text for text in head]


def _how(answer: Answer, steps: list[StepRow], hands: dict[int, str | None], same: bool) -> Iterator[str]:
    """How the rows go, once for each way among them; of a way without a short sentence, its first step's own."""
    seen = set()
    for step in steps:
        kind = _way(step["kind"])
        if kind in seen:
            continue
        seen.add(kind)
        key, hand = f"paper.how.{kind}", hands[step["number"]]
        values = {**step["names"], "hand": hand if same and hand else say("paper.each_hand")}
        alike = [one for one in steps if _way(one["kind"]) == kind]
        values["strings"] = _off_tangents(answer, alike) if kind == "tangent_offset" else strings_of(answer, alike)
        yield say(key, **values) if is_said(key) else step["text"]


def _off_tangents(answer: Answer, steps: Sequence[StepRow]) -> str:
    """The tangents by which steps set their stakes, each with the hand to which they are squared off it."""
    at, found = places(answer), dict[tuple[str, str], None]()
    for step in steps:
        found[strings_of(answer, [step]), off_tangent(answer, at, step)] = None
    return say("paper.and").join(say("paper.off_string", string=string, hand=hand) for string, hand in found)


def strings_of(answer: Answer, steps: Sequence[StepRow]) -> str:
    """Return the strings by which steps set their stakes, as their cards have them, each from the mark that is taped
    from."""
    numbers = {step["number"] for step in steps}
    cards = [card for card in answer["cards"] if numbers & set(card["steps"])]
    found: dict[frozenset[str], str] = {}
    for card in cards:
        tapes = {line["from"] for line in card["lines"] if line["kind"] == "on"}
        for line in card["lines"]:
            if line["kind"] == "string":
                start, end = sorted((line["from"], line["to"]), key=lambda mark: mark not in tapes)
                found.setdefault(frozenset((start, end)), say("sheet.from_to", start=start, end=end))
    return say("paper.and").join(found.values())


def _way(kind: str) -> str:
    """The name of a way of setting that kinds of steps share."""
    if kind in ("stake_back", "stake_got"):
        return "stake"
    for family, first in (("parallel_", "parallel"), ("produce", "produce"), ("tangent_offset", "tangent_offset")):
        if kind.startswith(family):
            return first
    return "ordinate_mid" if kind.startswith("ordinate_") else kind


def split(tables: list[Setting], most: int) -> tuple[list[Setting], list[Setting]]:
    """Return the tables' first ``most`` rows and those after them, each as tables."""
    before: list[Setting] = []
    after: list[Setting] = []
    left = most
    for table in tables:
        if left > 0:
            before.append(_with_rows(table, table.rows[:left]))
        if len(table.rows) > left:
            after.append(_with_rows(table, table.rows[max(left, 0) :]))
        left -= len(table.rows)
    return before, after


def _with_rows(table: Setting, rows: tuple[Row, ...]) -> Setting:
    return Setting(table.how, table.head, rows, table.words)
