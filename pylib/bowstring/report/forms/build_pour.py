"""What an answer tells of the pour."""

from typing import TypedDict, final


@final
class PourPart(TypedDict):
    """To come."""
