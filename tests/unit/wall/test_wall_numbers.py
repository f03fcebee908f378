"""The wall's numbers against the package's own answers, sums done by hand, and 40-digit arithmetic."""

from __future__ import annotations

import math
import re

import pytest
from mpmath import MPContext

from bowstring import answer
from bowstring.demo import DEMO
from bowstring.units.sizes import FOOT, INCH
from bowstring.wall.bend import BENDS, ENDS, FIRST, miss_at, slider
from bowstring.wall.errors import moved
from bowstring.wall.exercises import EXERCISES
from bowstring.wall.figures import job_sheets, sheets_of
from bowstring.wall.hand_sum import bow_sum, hand_sum, next_sagitta
from bowstring.wall.parabola import Gap
from bowstring.wall.shape import Given, arc_of, share
from bowstring.wall.triangles import lean
from bowstring.words import say
from unit.wall.wall_reader import texts, varied

mp = MPContext()  # the precision of its own: other tests have another
mp.dps = 40
mpf = mp.mpf
JOB = Given(38 * FOOT, 5.25 * FOOT, next(varied())[1].tape)


def shown(sheets: list) -> list[str]:
    return [text for sheet in sheets for text in texts(sheet)]


def test_the_job_on_the_wall_has_the_answers_numbers() -> None:
    told = answer(DEMO)
    given = Given.of_answer(told)
    sheets = job_sheets(given, "j")
    on_wall = shown(sheets)
    for row in told["halving"]:
        assert row["sagitta_shown"] in on_wall, row["level"]
    first, second = told["halving"][:2]
    assert {first["half_shown"], first["half_chord_shown"], told["arc_shown"]["chord"]} <= set(on_wall)
    assert f"= 1.337 ft = {second['sagitta_shown']}" in on_wall
    away = given.show(told["arc"]["radius"] - told["arc"]["sagitta"])
    assert say("wall.ends.away", away=away) in on_wall


@pytest.mark.parametrize(("name", "given"), list(varied()), ids=[name for name, _given in varied()])
def test_the_sum_done_by_hand_gives_the_exact_next_mid_ordinate(name: str, given: Given) -> None:
    """h (h - a) / (2 s), with the numbers as they are written, against R (1 - cos(I/4)) in 40 digits."""
    written = hand_sum(given)
    half, out = mpf(given.half), mpf(given.sagitta)
    radius, quarter = (half**2 + out**2) / (2 * out), mp.atan(out / half)  # tan(I/4)
    exact = radius * (1 - mp.cos(quarter)) / mpf(given.size)
    assert written.next == f"{float(exact):.3f}"
    worked = float(written.long) * float(written.past) / float(written.twice)
    assert f"{worked:.3f}" == written.next
    assert next_sagitta(given) == pytest.approx(given.arc.part(2).sagitta, rel=1e-12)


@pytest.mark.parametrize(("name", "given"), list(varied()), ids=[name for name, _given in varied()])
def test_the_sum_off_a_bow_comes_out_with_the_numbers_as_they_are_written(name: str, given: Given) -> None:
    half, out, square, rest, radius = map(float, bow_sum(given))
    assert f"{radius:.2f}" == given.decimal(given.arc.radius, 2)
    if given.sagitta < given.half / 20:
        return  # flat: told with two decimals
    places = max(2, *(len(text.partition(".")[2]) for text in bow_sum(given)[:4]))
    near = 0.51 * 10**-places
    assert half * half == pytest.approx(square, abs=near)
    assert square / out == pytest.approx(rest, abs=near)
    assert f"{(rest + out) / 2:.2f}" == f"{radius:.2f}"
    assert f"{square:.1f}" == f"{out * rest:.1f}"


def test_the_share_is_exact() -> None:
    for angle in (1, 30, 61.785, 90, 180, 217, 300):
        half = mp.radians(mpf(angle)) / 2
        radius = mpf(7)
        exact = (1 - mp.cos(half / 2)) / (1 - mp.cos(half))
        assert share(float(half)) == pytest.approx(float(exact), rel=1e-12)
        assert miss_at(Given(float(2 * radius * mp.sin(half)), 1.0, JOB.tape), angle) == pytest.approx(
            float(radius * ((1 - mp.cos(half / 2)) - (1 - mp.cos(half)) / 4)), rel=1e-11
        )


def test_the_sliders_table_is_exact_and_shows_its_own_text() -> None:
    table = slider(JOB)
    rows = table["rows"]
    assert len(rows) == BENDS - FIRST + 1 >= 181
    scale = (ENDS[1] - ENDS[0]) / 38
    misses = []
    for angle, row in zip(range(FIRST, BENDS + 1), rows, strict=True):
        half = mp.radians(mpf(angle)) / 2
        radius = mpf(19) / mp.sin(half)
        exact, quarter = radius * (1 - mp.cos(half / 2)) * 12, radius * (1 - mp.cos(half)) * 3
        assert row["texts"][1] == f"{float(exact - quarter):.2f} in", angle
        assert f"{angle}°" in row["texts"][0]
        assert f"{float(exact):.2f} in" in row["texts"][3] and f"{float(quarter):.2f} in" in row["texts"][4]
        assert row["radius"][0] == pytest.approx(float(radius) * scale, abs=1e-3)
        assert row["large"] == (angle > 180)
        # M and Q1 stand on the arc that is drawn through both ends.
        center = ((ENDS[0] + ENDS[1]) / 2, ENDS[2] + float(radius * mp.cos(half)) * scale)
        for name in ("m", "q"):
            away = math.dist(center, row[name])
            assert away == pytest.approx(row["radius"][0], abs=0.02), (angle, name)
        assert math.dist(row["q"], row["rule"]) == pytest.approx(float(exact - quarter) / 12 * scale, abs=0.02)
        misses.append(exact - quarter)
    assert misses == sorted(misses)
    assert table["job"] == pytest.approx(61.785 - FIRST, abs=1e-3)


def test_a_triangle_leans_by_the_law_of_cosines() -> None:
    for along, out in ((3, 4), (5, 12), (8, 15), (15, 20)):
        error = INCH / 8
        a, b, c = (
            mpf(along * FOOT),
            mpf(out * FOOT),
            mp.sqrt(mpf(along * FOOT) ** 2 + mpf(out * FOOT) ** 2) + mpf(error),
        )
        angle = mp.acos((a**2 + b**2 - c**2) / (2 * a * b))  # between the string and the squared line
        assert lean(along * FOOT, out * FOOT, error) == pytest.approx(float(mp.sin(angle - mp.pi / 2)), rel=1e-9)
    told = shown(sheets_of(2, JOB))
    assert [text for text in told if re.fullmatch(r"[0-9.]+ in", text)][:4] == [
        "1.04 in",
        "0.54 in",
        "0.35 in",
        "0.21 in",
    ]


def test_at_m_a_lean_costs_nothing_and_near_an_end_it_does() -> None:
    at_m, at_end = (
        next(text for text in shown(sheets_of(2, JOB)) if text.startswith(start)) for start in ("At M", "Near")
    )
    assert at_m.endswith("off the arc 0.00 in")
    (slid, off) = (float(number) for number in re.findall(r"([0-9.]+) in", at_end))
    assert 0.02 < off < slid


def test_halving_drags_what_was_set_from_a_bad_stake_and_nothing_else() -> None:
    off = moved(JOB, "M", INCH)
    assert off.off["M"] == pytest.approx(INCH, rel=1e-9)
    assert set(off.dragged) == {"R1", "Q1", "R2", "R3", "Q2", "R4"}
    assert off.off["Q1"] == pytest.approx(off.off["Q2"], rel=1e-9)
    assert moved(JOB, "Q1", INCH).dragged == ["R1", "R2"] and moved(JOB, "R1", INCH).dragged == []
    assert all(abs(value) < 1e-12 for value in moved(JOB, "M", 0.0).off.values())


def test_quarters_straight_up_land_on_the_parabola() -> None:
    gap, half, out = Gap(JOB), JOB.half, JOB.sagitta
    assert out / 2 + out / 4 == pytest.approx(gap.parabola(half / 2))
    assert 0.375 * out + out / 16 == pytest.approx(gap.parabola(0.75 * half))
    for x in (0.1 * half, half / 2, 0.9 * half):
        exact = mp.sqrt(mpf(gap.radius) ** 2 - mpf(x) ** 2) - (mpf(gap.radius) - mpf(out))
        assert gap.circle(x) == pytest.approx(float(exact), rel=1e-12)
    assert {"0.87 in", "1.20 in"} <= set(shown(sheets_of(6, JOB)))
    assert arc_of(JOB.chord, out).miss(JOB.arc.point_at(0.3)) == pytest.approx(0, abs=1e-12)


# By hand, from the question's numbers alone.
@pytest.mark.parametrize(
    ("lesson", "feet"), [(1, "37' 0\""), (2, "1/2 in"), (3, "6' 1\", 6\", 6' 1-1/4\""), (4, "0.84 in"), (5, "R1, R2"),
                         (6, "2.48 in")],
)  # fmt: skip
def test_an_exercise_comes_out(lesson: int, feet: str) -> None:
    assert EXERCISES[lesson](True).answer == feet
    metric = EXERCISES[lesson](False)
    assert metric.answer and not re.search(r"in\b|'", metric.answer)
    assert all(metric.question) and metric.steps
