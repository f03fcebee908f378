"""The layout as a drawing for other programs, read back by a library that shares nothing with what wrote it."""

from __future__ import annotations

import io
from math import cos, hypot, radians, sin
from typing import Any

import ezdxf
import pytest
from ezdxf.document import Drawing

from bowstring.demo import DEMO
from bowstring.drawings.dxf import LAYERS, layout_dxf
from helping import answer_to
from paper_jobs import JOBS

NEAR = 1e-6
ROUND = {"name": "tank", "stops": "feet", "at": ["19 ft", "-9 ft"], "diameter": "6 ft"}
SHOWN: dict[str, Any] = {
    "the example": DEMO,
    "a right hand": {**DEMO, "side": "right"},
    "round": {**DEMO, "ground": [*DEMO["ground"], ROUND]},
    "off the drawn line": {**DEMO, "offset": "6 in", "toward": "outside", "driven": "hub"},
    "a string past a half circle": {**JOBS["ordinates from a parallel string"], "ties": {},
                                    "arc": {"radius": "30 ft", "central_angle": 230}},
    "past a half circle": {**JOBS["halving"], "arc": {"radius": "30 ft", "central_angle": 230}, "method": "halving",
                           "ties": {}},
    "past a half circle, right": {**JOBS["halving"], "arc": {"radius": "30 ft", "central_angle": 230}, "ties": {},
                                  "side": "right"},
    **{name: JOBS[name] for name in ("ordinates", "ordinates from a parallel string", "coordinates", "two tapes",
                                     "two tapes from pins", "hubs off one end", "angles off the chord")},
}  # fmt: skip


def opened(job: dict[str, Any]) -> tuple[Any, Drawing, float]:
    """An answer, its drawing read back and checked, and the metres of one of the drawing's units."""
    answer = answer_to(job)
    text = layout_dxf(answer)  # type: ignore[arg-type]
    document = ezdxf.read(io.StringIO(text, newline=None))
    auditor = document.audit()
    assert not auditor.errors and not auditor.fixes
    return answer, document, 0.3048 if answer["unit"] in ("ft", "ft-in") else 1.0


def to_plan(answer: Any, x: float, y: float) -> tuple[float, float]:
    """Where a place of the answer's frame stands on a map, metres, by the drawing's own coordinates of A and B."""
    y *= {"left": 1, "right": -1}[answer["side"]]
    if answer["site"]["axes"] is None:
        return x, y
    assert answer["site"]["axes"] == "n-e"
    (na, ea), (nb, eb) = answer["stakes"][0]["drawing"], answer["stakes"][-1]["drawing"]
    length = hypot(eb - ea, nb - na)
    ux, uy = (eb - ea) / length, (nb - na) / length
    return ea + x * ux - y * uy, na + x * uy + y * ux


@pytest.mark.parametrize("name", SHOWN)
def test_the_stakes_stand_where_the_answer_has_them(name: str) -> None:
    answer, document, size = opened(SHOWN[name])
    assert document.dxfversion == "AC1009"
    points = [one.dxf.location for one in document.modelspace().query("POINT[layer=='STAKES']")]
    assert len(points) == len(answer["stakes"])
    for stake, point in zip(answer["stakes"], points, strict=True):
        there = (point.x * size, point.y * size)
        assert there == pytest.approx(to_plan(answer, stake["x"], stake["y"]), abs=NEAR)
        if answer["site"]["axes"]:
            assert there == pytest.approx(tuple(reversed(stake["drawing"])), abs=NEAR)


@pytest.mark.parametrize("name", SHOWN)
def test_the_arc_goes_through_every_stake_and_from_end_to_end(name: str) -> None:
    answer, document, size = opened(SHOWN[name])
    (arc,) = document.modelspace().query("ARC[layer=='ARC']")
    drawn = document.modelspace().query("ARC[layer=='DRAWN']")
    assert len(drawn) == bool(answer["offset"])
    for one in drawn:
        assert one.dxf.center == arc.dxf.center
        assert one.dxf.radius * size == pytest.approx(answer["arc"]["radius"], abs=NEAR)
    centre, radius = arc.dxf.center, arc.dxf.radius
    assert radius * size == pytest.approx(answer["staked"]["radius"], abs=NEAR)
    swept = (arc.dxf.end_angle - arc.dxf.start_angle) % 360
    assert swept == pytest.approx(answer["staked"]["central_angle"], abs=1e-6)
    points = [one.dxf.location for one in document.modelspace().query("POINT")]
    for point in points:
        assert hypot(point.x - centre.x, point.y - centre.y) * size == pytest.approx(radius * size, abs=NEAR)
    ends = {(round(centre.x + radius * cos(radians(one)), 5), round(centre.y + radius * sin(radians(one)), 5))
            for one in (arc.dxf.start_angle, arc.dxf.end_angle)}  # fmt: skip
    assert ends == {(round(point.x, 5), round(point.y, 5)) for point in (points[0], points[-1])}
    middle = radians(arc.dxf.start_angle + swept / 2)
    top = to_plan(answer, answer["staked"]["chord"] / 2, answer["staked"]["sagitta"])
    found = ((centre.x + radius * cos(middle)) * size, (centre.y + radius * sin(middle)) * size)
    assert found == pytest.approx(top, abs=1e-5), "on the stakes' hand"


@pytest.mark.parametrize("name", SHOWN)
def test_strings_checks_and_obstacles_are_where_the_answer_has_them(name: str) -> None:
    answer, document, size = opened(SHOWN[name])
    space = document.modelspace()
    strings = [(one.dxf.start, one.dxf.end) for one in space.query("LINE[layer=='STRING']")]
    chord, along = answer["staked"]["chord"], [stake["x"] for stake in answer["stakes"]]
    ends = [(0.0, 0.0, chord)]
    if answer["parallel"] is not None:
        ends.append((answer["parallel"], min(0.0, *along), max(chord, *along)))
    for (start, end), (off, first, last) in zip(strings, ends, strict=True):
        assert (start.x * size, start.y * size) == pytest.approx(to_plan(answer, first, off), abs=NEAR)
        assert (end.x * size, end.y * size) == pytest.approx(to_plan(answer, last, off), abs=NEAR)
    checks = [one for one in answer["checks"] if one["recommended"] or one["kind"] == "closing"]
    seen = [one for one in checks if not one["blind"]]
    drawn = [hypot(*(one.dxf.end - one.dxf.start).vec2) * size for one in space.query("LINE[layer=='CHECKS']")]
    assert drawn == pytest.approx([one["distance"] for one in seen], abs=NEAR) and drawn
    outlines = [one for one in answer["site"]["obstacles"] if one["at"] is None]
    for one, line in zip(outlines, space.query("POLYLINE[layer=='OBSTACLES']"), strict=True):
        assert line.is_closed
        corners = [(corner.dxf.location.x * size, corner.dxf.location.y * size) for corner in line.vertices]
        for corner, (x, y) in zip(corners, one["outline"], strict=True):
            assert corner == pytest.approx(to_plan(answer, x, y), abs=NEAR)
    rounds = [one for one in answer["site"]["obstacles"] if one["at"] is not None]
    for one, circle in zip(rounds, space.query("CIRCLE[layer=='OBSTACLES']"), strict=True):
        assert circle.dxf.radius * size == pytest.approx(one["diameter"] / 2, abs=NEAR)
        at = (circle.dxf.center.x * size, circle.dxf.center.y * size)
        assert at == pytest.approx(to_plan(answer, *one["at"]), abs=NEAR)


def test_layers_are_roles_and_every_text_stands_on_its_own() -> None:
    answer, document, _ = opened(DEMO)  # type: ignore[arg-type]
    assert {layer.dxf.name for layer in document.layers} - {"0", "Defpoints", "DEFPOINTS"} == set(LAYERS)
    kinds = {"ARC": "ARC", "POINT": "STAKES", "TEXT": "TEXT", "POLYLINE": "OBSTACLES"}
    for one in document.modelspace():
        assert one.dxf.layer == kinds.get(one.dxftype(), one.dxf.layer)
        assert one.dxf.layer in LAYERS
    texts = [one.dxf.text for one in document.modelspace().query("TEXT")]
    assert {stake["name"] for stake in answer["stakes"]} <= set(texts)
    assert {"pond", "hedge", "west bed", "east bed", answer["title"]} <= set(texts)


@pytest.mark.parametrize(("unit", "word"), [("ft-in", "feet"), ("ft", "feet"), ("m", "meters"), ("mm", "meters")])
def test_the_head_and_the_drawing_say_the_unit(unit: str, word: str) -> None:
    job = {**JOBS["ordinates"], "unit": unit, "tolerance": "10 mm"}
    text = layout_dxf(answer_to(job))  # type: ignore[arg-type]
    head = text.split("SECTION")[0]
    assert f"999\r\nUnits: {word}" in head and "A is at 0, 0" in head
    _, document, _ = opened(job)
    assert any(one.dxf.text.startswith(f"Units: {word}") for one in document.modelspace().query("TEXT"))
    x = [one.dxf.location.x for one in document.modelspace().query("POINT")][-1]
    assert x == pytest.approx(12.4 / 0.3048 if word == "feet" else 12.4, abs=1e-6)


@pytest.mark.parametrize("name", SHOWN)
def test_the_head_tells_how_far_everything_reaches(name: str) -> None:
    _, document, _ = opened(SHOWN[name])
    low, high = document.header["$EXTMIN"], document.header["$EXTMAX"]
    for one in document.modelspace().query("POINT VERTEX TEXT"):
        at = one.dxf.insert if one.dxftype() == "TEXT" else one.dxf.location
        assert low[1] <= at.y and low[0] <= at.x + 1e-9, one.dxf.layer
        if one.dxftype() == "POINT":
            assert at.x <= high[0] + 1e-9 and at.y <= high[1] + 1e-9


def test_stakes_off_the_drawn_line_say_so() -> None:
    answer, document, _ = opened(SHOWN["off the drawn line"])
    texts = " ".join(one.dxf.text for one in document.modelspace().query("TEXT"))
    assert "layer DRAWN" in texts and "6" in answer["offset"]["text"]
    assert answer["offset"]["text"].split()[0] in texts


def test_it_is_plain_ascii_whatever_somebody_named() -> None:
    title = "Jardín Ñandú ½ \u05d2\u05e9\u05e8"
    job = {**DEMO, "title": title, "ground": [{**DEMO["ground"][0], "name": "árbol 50%%c"}]}
    answer = answer_to(job)
    text = layout_dxf(answer)  # type: ignore[arg-type]
    assert text.isascii() and text.count("\r\nEOF\r\n") == 1 and text.endswith("  0\r\nEOF\r\n")
    _, document, _ = opened(job)
    texts = [one.dxf.text for one in document.modelspace().query("TEXT")]
    assert any(one.startswith("Jardin Nandu 1/2 ???") for one in texts) and "arbol 50% %c" in texts


def test_a_stopped_job_has_no_drawing_to_build_from() -> None:
    with pytest.raises(ValueError, match="stopped"):
        layout_dxf(answer_to(JOBS["no hand, no line, a wall"]))  # type: ignore[arg-type]
