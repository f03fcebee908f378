"""What every test shares: the root of the house, and how many examples the property tests try."""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings

from bowstring.words import speak
from bowstring.words.languages import LANGUAGES

# Each process of the tests has a core for itself: threads of one's linear algebra would stand in the other's way.
for library in ("OPENBLAS", "OMP", "MKL"):
    os.environ.setdefault(f"{library}_NUM_THREADS", "1")

# "house": the same examples in every run, so that a failure is somebody's change and not luck.
# "wide": many more, new ones each time, to look for what the house run can't see: HYPOTHESIS_PROFILE=wide
settings.register_profile("house", derandomize=True, deadline=None, max_examples=100, database=None, print_blob=True)
settings.register_profile(
    "wide",
    deadline=None,
    max_examples=3000,
    database=None,
    print_blob=True,
    suppress_health_check=[HealthCheck.too_slow],
)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "house"))


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    """Print what tests want told whether they pass or fail: what they recorded as ``told``."""
    for report in [*terminalreporter.getreports("passed"), *terminalreporter.getreports("failed")]:
        for name, text in report.user_properties:
            if name == "told":
                terminalreporter.section(report.nodeid.rpartition("::")[2])
                terminalreporter.write_line(str(text))


@pytest.fixture(autouse=True)
def in_english() -> Iterator[None]:
    """Whatever a test spoke, the next one begins in English."""
    yield
    speak(LANGUAGES[0])


@pytest.fixture(scope="session")
def house() -> Path:
    """The repository's top folder."""
    return Path(__file__).resolve().parents[1]
