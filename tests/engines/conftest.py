"""A running browser for each engine but the one that has tests of its own."""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path

import pytest

from driving.drivers import ENGINES, Driver


@pytest.fixture(params=[name for name in ENGINES if name != "chromium"])
def driver(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Driver]:
    make, find = ENGINES[request.param]
    if not find():
        told = f"{request.param} isn't on this machine: python3 build.py test installs it where it may"
        if os.environ.get("CI"):
            pytest.fail(told, pytrace=False)
        pytest.skip(told)
    running = make(tmp_path)
    yield running
    running.close()
