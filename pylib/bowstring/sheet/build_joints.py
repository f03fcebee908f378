"""The joints on the long sheet."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.report.alone import joints_of, line_ends_of
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_joints import JointsPart
from bowstring.sheet.blocks import Block, Items, Paragraph, Table
from bowstring.words import say
from bowstring.words.stars import unstarred


def joints(answer: Answer) -> Iterator[Block]:
    """Where each joint stands along both forms, how it is cut and why there."""
    part = joints_of(answer)
    if part is None:
        return
    if part["stop"]:
        yield Items([" ".join([f"{part['text']}.", part["stop"]])], "stop")
        return
    yield Paragraph(" ".join(part["conclusion"].split("\n")), "key")
    if part["count"] > 1:
        yield Paragraph(unstarred(part["taped"]))
    yield from _grid(part, line_ends_of(answer))
    if part["rows"] and part["count"] > 1:
        head = [say("joints.joint"), say("joints.outer_form"), say("joints.inner_form")]
        yield Table(head, [[_name(row["name"], row["stake"]), row["outside_shown"], row["inside_shown"]]
                           for row in part["rows"]])  # fmt: skip
    yield Items([unstarred(line) for line in part["lines"]])
    yield Items([unstarred(line) for line in part["cautions"]], "caution")


def _grid(part: JointsPart, ends: dict[str, str]) -> Iterator[Block]:
    """The joints of a slab that fills its curve."""
    for kind in ("square", "along"):
        rows = [
            [str(row["number"]), row["at_shown"], row["arc_shown"], row["corner_shown"]]
            for row in part["grid"]
            if row["kind"] == kind
        ]
        if rows:
            places = say(f"fill.at_{kind}", **ends), say(f"fill.curve_{kind}", **ends)
            head = [say("joints.joint"), *places, say("fill.corner")]
            yield Table(head, rows, say(f"fill.head_{kind}", **ends))


def _name(name: str, stake: str) -> str:
    return f"{name} {say('joints.at', stake=stake)}" if stake else name
