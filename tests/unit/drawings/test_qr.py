"""The code of a job's link, read by a decoder that shares nothing with what made it."""

from __future__ import annotations

import re
from typing import Any

import numpy as np
import pytest
import zxingcpp

from bowstring import read_link, write_link
from bowstring.drawings.qr import MOST_SIDE, QUIET, code_of, qr_svg
from paper_jobs import JOBS

ADDRESS = "https://example.org/bowstring/"
PIXELS = 3  # of a module, as on a small phone


def picture_of(svg: str) -> np.ndarray[Any, Any]:
    """Paint the drawing's paths as a browser does: white, then black, each module some pixels wide."""
    found = re.search(r'viewBox="0 0 ([0-9]+) ([0-9]+)"', svg)
    assert found and found[1] == found[2]
    side = int(found[1])
    picture = np.full((side, side), 128, np.uint8)
    for colour, path in re.findall(r'<path fill="(#fff|#000)" d="([^"]+)"', svg):
        pieces = re.findall(r"M([0-9]+) ([0-9]+)h([0-9]+)v([0-9]+)h-\3z", path)
        assert "".join(f"M{x} {y}h{w}v{h}h-{w}z" for x, y, w, h in pieces) == path
        for x, y, w, h in (map(int, piece) for piece in pieces):
            picture[y : y + h, x : x + w] = 255 if colour == "#fff" else 0
    assert set(np.unique(picture)) == {0, 255}
    return np.kron(picture, np.ones((PIXELS, PIXELS), np.uint8))


def decoded(picture: np.ndarray[Any, Any]) -> str:
    (found,) = zxingcpp.read_barcodes(picture)
    assert found.format == zxingcpp.BarcodeFormat.QRCode
    return found.text


def test_there_are_twenty_jobs() -> None:
    assert len(JOBS) == 20


@pytest.mark.parametrize("name", JOBS)
def test_the_code_of_a_job_gives_its_link_back(name: str) -> None:
    address = f"{ADDRESS}#{write_link(JOBS[name])}"  # type: ignore[arg-type]
    code = code_of(address)
    assert code
    told = decoded(picture_of(qr_svg(code, id="code")))
    assert told == address
    assert read_link(told)["arc"] == read_link(write_link(JOBS[name]))["arc"]  # type: ignore[arg-type]


def test_a_code_has_its_quiet_zone_and_stands_some_harm() -> None:
    code = code_of(f"{ADDRESS}#{write_link(JOBS['halving'])}")  # type: ignore[arg-type]
    assert code and code.level == "m"
    picture = picture_of(qr_svg(code, id="code"))
    edge = QUIET * PIXELS
    for side in (picture[:edge], picture[-edge:], picture[:, :edge], picture[:, -edge:]):
        assert (side == 255).all()
    assert (picture[edge : edge + PIXELS, edge : edge + PIXELS] == 0).all()
    middle, spot = len(picture) // 2, len(picture) // 10
    picture[middle : middle + spot, middle : middle + spot] = 255  # a glare in its middle
    assert decoded(picture).startswith(ADDRESS)


def test_a_longer_text_has_less_correction_and_one_too_long_has_no_code() -> None:
    lengths = {length: code_of(ADDRESS + "a" * length) for length in (400, 1600, 1900, 2600)}
    assert [code.level if code else None for code in lengths.values()] == ["m", "l", "l", None]
    assert all(code.side <= MOST_SIDE for code in lengths.values() if code)
    longest = lengths[1900]
    assert longest and decoded(picture_of(qr_svg(longest, id="code"))) == ADDRESS + "a" * 1900


def test_what_stands_in_the_drawing_is_escaped() -> None:
    code = code_of("x")
    assert code and 'id="a&quot;b"' in qr_svg(code, id='a"b')
