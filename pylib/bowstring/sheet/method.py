"""The sheet's parts that belong to the method, the accuracy and the choice of a way, as blocks of the outline."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.methods.catalogue import BY_NAME
from bowstring.report.forms.advice import MethodRow
from bowstring.report.forms.answer import Answer
from bowstring.report.own import is_advised, is_own, own_row
from bowstring.sheet.blocks import MANY, Block, Drawing, Heading, Items, Paragraph, Section, Table
from bowstring.sheet.checks import closing
from bowstring.words import say


def halves(answer: Answer) -> bool:
    """Whether the stakes are set by halving, exact or by the rule, level by level."""
    return BY_NAME[answer["method"]].halves


def exact(answer: Answer) -> bool:
    """Whether the method is meant to bring every stake onto the arc."""
    return BY_NAME[answer["method"]].exact


def short_tables(answer: Answer) -> Iterator[Block]:
    """Every number that is taped or turned, a row a stake; the first rows where there are hundreds."""
    for table in answer["tables"]:
        rows = table["rows"]
        caption = "" if len(rows) <= MANY * 4 else say("sheet.rows_some", count=len(rows), shown=MANY * 4)
        yield Table(table["head"], rows[: MANY * 4], caption)


def set_out(answer: Answer) -> Section:
    """The steps of a method that goes round once, with its drawing."""
    steps = [step for step in answer["steps"] if step["level"]]
    blocks: list[Block] = [Drawing("way")]
    cautions = [text for step in steps for text in step["cautions"]]
    if cautions:
        blocks.append(Items(cautions, "caution"))
    blocks.append(Items([step["text"] for step in steps[: MANY * 2]], first=steps[0]["number"]))
    if len(steps) > MANY * 2:
        blocks.append(Paragraph(say("sheet.steps_some", count=len(steps), shown=MANY * 2)))
    blocks += closing(answer)
    return Section("way", say("sheet.way", method=_name(answer)), blocks)


def _name(answer: Answer) -> str:
    return own_row(answer)["name"]


def triangle(answer: Answer) -> Iterator[Block]:
    """How the offsets of a method that goes round once are kept square."""
    if answer["square"]:
        yield Items(answer["square"])


def advice(answer: Answer) -> Iterator[Block]:
    """Which way to take here, and all ways side by side."""
    yield Paragraph(answer["advice"]["text"], "key")
    if not answer["method_said"]:
        yield Paragraph(say("sheet.method_taken", method=_name(answer)))
    if answer["site"]["obstacles"] or answer["site"]["known"]:
        yield Drawing("site")
    rows = []
    for everyday in (True, False):
        rows += [_method_row(row, answer) for row in answer["methods"] if row["everyday"] is everyday]
    head = ("way", "possible", "worst_stake", "readings", "longest", "people")
    yield Table([say(f"sheet.way_{name}") for name in head], rows, say("sheet.ways_caption"))


def _method_row(row: MethodRow, answer: Answer) -> list[str]:
    none = say("sheet.none")
    name = row["name"]
    if is_own(answer, row):
        name = say("sheet.way_this", name=name)
    elif is_advised(answer, row):
        name = say("sheet.way_advised", name=name)
    sound = row["reliable"] is not False
    possible = say("sheet.way_yes") if row["possible"] and sound else row["why_not"] or say("sheet.way_unsound")
    miss = row["expected_shown"] if sound and row["expected_shown"] else none
    if miss != none and row["fair_95_shown"]:
        miss = say("sheet.way_fair", miss=miss, fair=row["fair_95_shown"])
    numbers = (row["measurements"], row["longest_pull_shown"], row["hands"])
    return [name, possible, miss, *(none if number is None else str(number) for number in numbers)]


def mistakes(answer: Answer) -> Iterator[Block]:
    """The common blunders, one at a time: what each would do, and what sees it."""
    if not answer["mistakes"]:
        return
    # Those that nothing sees: the answer's worst may be one that a check does see.
    unseen = not all(row["caught_by"] for row in answer["mistakes"])
    yield Paragraph(" ".join([say("sheet.mistakes_intro"), *([say("sheet.mistakes_worst")] if unseen else [])]))
    for number, row in enumerate(answer["mistakes"]):
        text = say("sheet.mistake", text=row["text"], at=row["moved_at"], moved=row["moved_shown"], told=row["told"])
        yield Items([text])
        yield Drawing("mistake", number)


def accuracy(answer: Answer) -> Iterator[Block]:
    """How true the stakes will be: the worst, all at once, each, and what can be taken out."""
    accuracy = answer["accuracy"]
    yield Items(accuracy["lines"])
    yield Drawing("scatter")
    rows = [
        [row["name"], row["sigma_across_shown"], row["sigma_along_shown"], row["sigma_fair_shown"] or say("sheet.none")]
        for row in answer["stakes"] if row["level"]
    ]  # fmt: skip
    if len(rows) <= MANY * 2:
        head = [say("sheet.stake"), say("sheet.across"), say("sheet.along"), say("sheet.off_fair")]
        yield Table(head, rows, say("sheet.scatter_caption"))
    yield Heading(say("sheet.shifts"))
    yield Items([bias["text"] for bias in accuracy["biases"]])
    yield Heading(say("sheet.model"))
    yield Table(
        [say("sheet.model_what"), say("sheet.model_size"), say("sheet.model_from")],
        [[row["label"], row["shown"], row["from"]] for row in accuracy["model"]],
        say("sheet.model_caption"),
    )


def drawing_columns(answer: Answer) -> tuple[list[str], list[list[str]]]:
    """Return the heads and, stake by stake, the cells of the drawing's own coordinates; empty without control."""
    axes = answer["site"]["axes"]
    if axes is None:
        return [], [[] for _ in answer["stakes"]]
    head = [say(f"table.drawing_{place}_{axes}") for place in ("first", "second")]
    return head, [list(stake["drawing_shown"]) for stake in answer["stakes"]]
