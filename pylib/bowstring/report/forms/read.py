"""What was read at the checks, and what that says. Lengths in metres."""

from typing import TypedDict, final

from bowstring.report.forms.checks import CheckRow


@final
class ReadRow(TypedDict):
    """A check that was read.

    Attributes:
        check: its key; marks: those that it touches; typed: every reading of it as it was typed, in order.
        value, over: the reading that counts, and how far that is over what must be read as it is printed, negative
            under it; ``None`` while none counts. over_shown: without its sign.
        counts: the number of that reading in ``typed``.
        limit: metres within which it is in: the printed limit.
        verdict: ``in``; ``again``: out once, to be taped again; ``out``: and out again; ``differ``: as often in as
            out; ``unread``: none is a length; ``waits``: one of its marks isn't set, or stands by old numbers.
        text: the verdict in words; wrong: what is wrong with the last text where that is no length, and what would do:
            those that can be read are judged without it.
    """

    check: str
    marks: list[str]
    typed: list[str]
    value: float | None
    value_shown: str | None
    over: float | None
    over_shown: str | None
    counts: int | None
    limit: float
    limit_shown: str
    verdict: str
    text: str
    wrong: str | None


@final
class SuspectRow(TypedDict):
    """What may be wrong: a ``stake``, an ``end``, or a known ``slip`` of the crew.

    Attributes:
        mark: the stake or end; of a slip the stake that it began at, empty where it is all of them.
        step: the number of the step to do again; again: stakes that hang on it and are set again after it.
        far: metres that it stands off, about; ``None`` of a slip.
        checks: the keys of the checks that touch what is set again: what was read there says nothing of it then.
        prove: what to tape before it is pulled, in a sentence; empty for none.
    """

    kind: str
    mark: str
    step: int | None
    far: float | None
    far_shown: str | None
    again: list[str]
    checks: list[str]
    text: str
    prove: str


@final
class ReadPart(TypedDict):
    """Everything that was read at the checks.

    Attributes:
        wanted: how many checks there are to read; count: how many were, those left out that wait; outs: how many of
            them are out, once or again.
        judged: whether enough was read to name what is wrong: a check out twice, or two checks.
        suspects: what explains the readings, the likeliest first; text: what to make of it, empty where all is in.
        lost: readings of checks that this layout doesn't have.
        waits: at which marks readings wait, and why, in one line; empty where none does.
    """

    by: str
    date: str
    wanted: int
    count: int
    outs: int
    judged: bool
    rows: list[ReadRow]
    suspects: list[SuspectRow]
    text: str
    lost: list[str]
    waits: str


@final
class FarApart(TypedDict):
    """Both diagonals of a pad held against each other: by how much they may differ, metres, and by how much they do,
    the one from A less the one from B; ``None`` until both were read. ``out``: each of them is in, and yet they differ
    by more."""

    limit: float
    limit_shown: str
    over: float | None
    over_shown: str
    out: bool


@final
class FarChecks(TypedDict):
    """What proves a pad's far corners, or a line of several pieces as a whole: its checks, those of them that were
    read, and what those mean that are out, of a line nothing.

    ``off``: A and B are then the concrete's corners, and the stakes stand off them; of a line that they stand off it.
    ``sees``: what each of the checks sees. ``apart``: ``None`` but of a pad. ``outs``: how many are out, the two
    diagonals that differ by too much counted as one. ``waits``: as of the stakes' own.
    """

    rows: list[CheckRow]
    read: list[ReadRow]
    told: list[str]
    off: bool
    sees: list[str]
    apart: FarApart | None
    outs: int
    waits: str
