"""Whether stakes stand that nobody has checked yet."""

from __future__ import annotations

from bowstring.report.forms.answer import Answer


def nothing_read(answer: Answer) -> bool:
    """Whether there are checks to make, and none was read."""
    return bool(answer["read"]["wanted"]) and not answer["read"]["count"]
