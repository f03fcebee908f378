"""What an answer tells of the edges."""

from typing import TypedDict, final


@final
class EdgesPart(TypedDict):
    """To come."""
