"""The cards of work on the ground: one step each, with its sentence, its numbers and what its drawing shows."""

from typing import TypedDict, final

_Between = TypedDict("_Between", {"from": str, "to": str})


@final
class CardNumber(TypedDict):
    """A number to hold on the tape or to turn: ``disc`` counts from 1 and stands in the drawing too.

    ``slope``: what the tape reads along sloping ground, where that is something else.
    """

    disc: int
    label: str
    shown: str
    slope: str | None


@final
class CardLine(_Between):
    """A line of a card's drawing from one mark to another.

    Attributes:
        kind: ``straight`` (on the ground already), ``string``, ``on`` (taped along a string), ``past`` (taped along a
            line carried on), ``off`` (squared off it), ``tape``, ``match`` (must read what the card says last),
            ``sight``, ``turn`` (the angle at the mark ``at``).
        disc: the number that belongs to it.
    """

    kind: str
    at: str | None
    disc: int | None


@final
class CardRight(TypedDict):
    """How to know that a card's work is right, with what must be read where that is one number or one triangle;
    ``more``: what else, empty where there is nothing."""

    text: str
    shown: str | None
    more: str


@final
class CardRow(TypedDict):
    """One card.

    Attributes:
        number: its running number, from 1; steps: the numbers of the answer's steps that it stands for.
        kind: the kind of its step, or ``locate``, ``checks``, ``board``, or of the second pass ``form_`` and what.
        mark: what stands among the job's ``done`` for a card of the second pass, which is no step: its kind and what
            its numbers are, so that it counts no more once they are others. Empty for a card of the layout.
        stake: the stake that it drives; sets: the marks that it sets.
        title: its name in a list; main: its number there, empty without one; where: what it belongs to.
        text: what to do; notes: what else has to be known here.
    """

    number: int
    kind: str
    mark: str
    steps: list[int]
    stake: str | None
    sets: list[str]
    title: str
    main: str
    where: str
    text: str
    numbers: list[CardNumber]
    right: CardRight | None
    notes: list[str]
    lines: list[CardLine]


@final
class LocatedPart(TypedDict):
    """The locate ticket as it's written down: its number, and when it was called; empty where it isn't."""

    ticket: str
    called: str


@final
class WayOutRow(TypedDict):
    """What settles one of the answer's ``stops``, in their order.

    Attributes:
        stop: its sentence; reason: it, or what alone in it matters here; text: what not to do, in short; button: what
            to do.
        panel: the question of the numbers that settles it, empty where the numbers themselves do, ``got`` where what
            was got at a stake does, ``None`` where another method does.
        fields: what to put into the job, by field; empty where somebody has to say it.
    """

    stop: str
    reason: str
    text: str
    button: str
    panel: str | None
    fields: dict[str, str]
