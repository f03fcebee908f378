"""What an answer tells of the grades."""

from typing import TypedDict, final


@final
class GradesPart(TypedDict):
    """To come."""
