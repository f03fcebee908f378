"""The concrete on the long sheet."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.report.alone import pour_of
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_pour import PourPart, ReachRow
from bowstring.sheet.blocks import Block, Heading, Items, Paragraph, Table
from bowstring.words import say
from bowstring.words.stars import unstarred


def pour(answer: Answer) -> Iterator[Block]:
    """What to order, when to call the plant, and what changes the order."""
    part = pour_of(answer)
    if part is None:
        yield from _stopped(answer)
        return
    told = (
        f"{part['text']}: {part['deep']['measured_shown']}." if part["deep"]["measured_shown"] else f"{part['text']}."
    )
    yield Paragraph(" ".join([told, unstarred(part["why"])]), "key")
    if part["deep"]["thin"]:
        yield Items([unstarred(text) for text in [*part["deep"]["thin"], part["deep"]["limit"]]], "caution")
    if part["deep"]["apron"]:
        yield Paragraph(part["deep"]["apron_paper"])
    more = [*part["deep"]["apron"], *part["deep"]["joints"], *part["deep"]["measured"]]
    if more:
        yield Items([unstarred(text) for text in more])
    yield Items([unstarred(line) for line in [*part["lines"], part["low_text"], part["measure"]] if line])
    if part["reach"]:
        yield Heading(say("pour.call"))
        head = [say("pour.out"), say("pour.on_plan"), say("pour.call_at")]
        yield Table(
            head,
            [[row["out"], row["plan_shown"], _call(row)] for row in part["reach"]],
            say("pour.call_table", where=part["reach_where"]),
        )
        yield Paragraph(part["reach_note"])
    if part["bulkhead"] is not None:
        yield Paragraph(unstarred(part["bulkhead"]["text"]))
    yield Heading(say("pour.changes"))
    rows = [[f"{row['what']} ({row['more']})" if row["more"] else row["what"], row["order_shown"]]
            for row in part["changes"]]  # fmt: skip
    yield Table([say("pour.if"), _bought(part)], rows)
    yield Items([unstarred(line) for line in part["cautions"]], "caution")
    yield Items(part["notes"])


def _stopped(answer: Answer) -> Iterator[Block]:
    """Why there is no order, where what is said of the slab's depth can't be."""
    row = next(row for row in answer["build"] if row["key"] == "pour")
    if row["state"] == "stop" and not answer["lined"]:
        yield Items([f"{row['text']}. {row['more']}"], "stop")


def _call(row: ReachRow) -> str:
    return f"{row['call_shown']} ({say('pour.at_joint', joint=row['joint'])})" if row["joint"] else row["call_shown"]


def _bought(part: PourPart) -> str:
    if part["by_bags"]:
        return say("pour.then_bags")
    return say("pour.then_yards" if part["yards"] else "pour.then_metres")
