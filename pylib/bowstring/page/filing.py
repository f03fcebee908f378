"""What files are called."""

from __future__ import annotations

import re

LONGEST = 40
"""Most characters of a title that a file's name repeats."""


def file_name(title: str, ending: str) -> str:
    """Return a file's name for a job.

    >>> file_name("Lodge drive, north (new)", "csv"), file_name("", "json")
    ('bowstring-lodge-drive-north-new.csv', 'bowstring-job.json')
    """
    return f"bowstring-{re.sub('[^a-z0-9]+', '-', title.lower())[:LONGEST].strip('-') or 'job'}.{ending}"
