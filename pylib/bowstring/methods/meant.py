"""What jobs meant in the first form of a link and in the first version's storage, which keep their meaning for good."""

from __future__ import annotations

from collections.abc import Collection, Mapping

BEFORE = "halving"
"""The method of a job that named none. For good, whatever is taken later where none is named."""

USUAL_LEVELS = "usual"
"""For ``levels``: as many as the usual gap wants, at equal steps, where a job that says nothing has round distances."""

PLACED = ("spacing", "levels", "stations", "halve_first")
"""Keys with any of which a job says itself where its stakes stand."""

BESIDE: Mapping[str, Mapping[str, str]] = {
    "centre": {"centre": "reachable"},
    "ordinates": {"levels": USUAL_LEVELS},
    "tangent": {"levels": USUAL_LEVELS},
}
"""What a method that was named meant beside itself: who swung from the centre could reach it, and stakes along a line
stood at equal steps."""


def meant_beside(method: str, keys: Collection[str]) -> dict[str, str]:
    """Return what a job of the first form with these keys meant beside them.

    >>> meant_beside("ordinates", {"arc"}), meant_beside("ordinates", {"arc", "spacing"})
    ({'levels': 'usual'}, {})
    """
    said = any(key in keys for key in PLACED)
    return {key: value for key, value in BESIDE.get(method, {}).items() if not (said and key in PLACED)}
