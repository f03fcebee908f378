"""What an answer tells of the boards."""

from typing import TypedDict, final


@final
class BoardsPart(TypedDict):
    """To come."""
