"""What is told of stakes that stand within the dig, before one is driven."""

from typing import TypedDict, final


@final
class OutOfDig(TypedDict):
    """One way to set them clear of it: what its button says, and the fields that it fills."""

    text: str
    fields: dict[str, str]


@final
class InDigPart(TypedDict):
    """Stakes that are dug out.

    Attributes:
        text: that they are, and how far past the edges it is dug.
        hint: what to do where they stay on their line.
        deep_shown: how deep the dig was taken to be for the ways, empty where they don't hang on that.
        designed: no forms' card tells of hubs: its forms and its dig are designed, as a wall's are.
        outside, inside: metres off the drawing's line that a stake must be past to stand clear of the dig.
        ways: how to set them clear, none on a side that has no room for it.
    """

    text: str
    hint: str
    deep_shown: str
    designed: bool
    outside: float
    inside: float
    ways: list[OutOfDig]
