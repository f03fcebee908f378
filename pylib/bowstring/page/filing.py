"""What files are called."""

from __future__ import annotations

import re

LONGEST = 40
"""Most characters of a title that a file's name repeats."""


def file_name(title: str, ending: str, what: str = "") -> str:
    """Return a file's name for a job; ``what`` tells files with one ending apart.

    >>> file_name("Lodge drive, north (new)", "csv", "x-y-ft"), file_name("", "json")
    ('bowstring-lodge-drive-north-new-x-y-ft.csv', 'bowstring-job.json')
    """
    name = re.sub("[^a-z0-9]+", "-", title.lower())[:LONGEST].strip("-") or "job"
    return f"bowstring-{name}{what and '-'}{what}.{ending}"
