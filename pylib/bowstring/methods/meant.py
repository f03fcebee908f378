"""What jobs meant in the first form of a link and in the first version's storage, which keep their meaning for good."""

from __future__ import annotations

from collections.abc import Mapping

BEFORE = "halving"
"""The method of a job that named none. For good, whatever is taken later where none is named."""

BESIDE: Mapping[str, Mapping[str, str]] = {"centre": {"centre": "reachable"}}
"""What a method that was named meant beside itself: who swung from the centre could reach it."""
