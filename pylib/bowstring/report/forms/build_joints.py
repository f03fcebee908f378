"""What an answer tells of the joints."""

from typing import TypedDict, final


@final
class JointsPart(TypedDict):
    """To come."""
