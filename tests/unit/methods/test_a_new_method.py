"""A method that nobody has thought of yet goes through the whole house, and all that it needs is written here.

It is ``BEAM``: a crossed beam of light runs along the chord and square to it; each stake's two lengths are taped along
the beam. What a new method needs:

- a recipe, one function: ``by_the_beam``;
- its row among ``bowstring.methods.catalogue.METHODS``, with what others ask of it: ``ROW`` (here with a table of its
  own and with the arcs that it isn't for);
- its sentences: ``SENTENCES``, keyed by the method's name, the kinds of its steps, the heads of its table and the keys
  of why it is none for an arc.

Where it does on the ground what no other does, the move is one class: ``AlongBeam``. Every figure is held to one that
is worked out by hand: chord 24 m, sagitta 4 m, so the radius is 20 m and the centre 16 m behind the chord.
"""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import asin, cos, dist, sin, sqrt
from typing import Any

import pytest

import bowstring
from bowstring import terminal
from bowstring.construction import PULL, Line, Move, Number, Recipe, Scatter, Shifts, Stake
from bowstring.construction.scatter import weighted_sum
from bowstring.drawings.method import method_svg
from bowstring.drawings.mistakes import mistakes_svg
from bowstring.drawings.siteplan import site_plan_svg
from bowstring.geometry.plane import Point, distance, left_of, unit_vector
from bowstring.methods import catalogue
from bowstring.methods.method import Column, Method, Table
from bowstring.methods.setting import Setting
from bowstring.methods.stands import EQUAL
from bowstring.page.calls import handle
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.page.form import form_html
from bowstring.sheet.blocks import Drawing
from bowstring.sheet.csv import stakes_csv
from bowstring.sheet.html import sheet_html
from bowstring.sheet.outline import outline
from bowstring.sheet.text import sheet_text
from bowstring.words import templates
from helping import SAID

BEAM = "beam"


@dataclass(frozen=True)
class AlongBeam(Move):
    """A length taped along a beam through a mark: parallel to the string from A to B, or ``square`` to it."""

    mark: str
    start: str
    length: float
    square: bool = False

    def _way(self, at: Mapping[str, Point]) -> Point:
        along = unit_vector(at["A"], at["B"])
        return left_of(along) if self.square else along

    def place(self, at: Mapping[str, Point], number: Number) -> Point:
        return at[self.start].plus(self._way(at), number(self.length))

    @property
    def pulls(self) -> tuple[float, ...]:
        return (self.length,)

    @property
    def uses(self) -> tuple[str, ...]:
        return self.start, "A", "B"

    @property
    def lines(self) -> tuple[Line, ...]:
        return ((PULL, self.start, self.mark),)

    @property
    def readings(self) -> int:
        return 1

    def mirrored(self) -> AlongBeam:
        return AlongBeam(self.mark, self.start, -self.length if self.square else self.length, self.square)

    def spread(self, scatter: Scatter) -> Shifts:
        way, chord = self._way(scatter.at), distance(scatter.at["A"], scatter.at["B"])
        across = left_of(unit_vector(scatter.at["A"], scatter.at["B"]))
        turning = scatter.turning("A", "B", across, self.length / chord, left_of(way))
        shifts = weighted_sum((1.0, scatter.shifts[self.start]), (1.0, turning))
        scatter.add_pull(shifts, self.start, self.mark, way)
        scatter.add_scale(shifts, way, self.length)
        scatter.mean_shift[self.mark] = scatter.mean_shift_of(self.start)
        return shifts


def by_the_beam(recipe: Recipe, setting: Setting, stakes: Sequence[Stake]) -> None:
    """Along the beam from A, then along its square one."""
    for stake in stakes[1:-1]:
        point, foot = setting.arc.point_at(stake.fraction), f"foot {stake.name}"
        moves = [AlongBeam(foot, "A", point.x), AlongBeam(stake.name, foot, point.y, square=True)]
        recipe.do("beam", 1, moves, [("A", foot), (foot, stake.name)], stake=stake.name, start="A", foot=foot)


def overhangs(setting: Setting, stakes: Sequence[Stake]) -> str | None:
    return "beam_overhang" if setting.arc.cosine < 0 else None


COLUMNS = (Column("beam_along", 0), Column("square_off", 1, "table.beam_square"))
ROW = Method(BEAM, EQUAL, 1, by_the_beam, {"beam": Table("beam", COLUMNS)}, overhangs, stick=True)
SENTENCES = {
    "method.name.beam": "a crossed beam",
    "form.method.beam": "crossed beam",
    "card.beam": "Tape along the beam from {start}, then along the square one. Drive {stake}.",
    "step.beam": "{stake}: along the beam from {start} tape {length0}, along the square one {length1}. Drive {stake}.",
    "table.beam_along": "along the beam",
    "table.beam_square": "{shown} from {foot}",
    "method.beam_overhang.wrong": "This arc turns more than half round, so it runs back under its own beam.",
    "method.beam_overhang.remedy": "Use halving.",
}

CHORD, SAGITTA, RADIUS, CENTRE = 24.0, 4.0, 20.0, (12.0, -16.0)
HALF = asin(CHORD / 2 / RADIUS)
JOB: dict[str, Any] = {
    "bowstring": 1, "unit": "m", "mark": 0.01, "arc": {"chord": CHORD, "sagitta": SAGITTA}, **SAID,
    "method": BEAM, "levels": 2, "tolerance": "10 mm",
}  # fmt: skip
PLACES = {
    f"K{number}": (12 - RADIUS * sin(HALF * (1 - number / 2)), -16 + RADIUS * cos(HALF * (1 - number / 2)))
    for number in (1, 2, 3)
}
WALL = {"name": "shed", "stops": "tape", "outline": [[11.5, 1.5], [12.5, 1.5], [12.5, 2.5], [11.5, 2.5]]}


@pytest.fixture(autouse=True)
def house_with_a_beam(monkeypatch: pytest.MonkeyPatch) -> None:
    """Put the row among the others, the last of the everyday ones, and the sentences among the others."""
    last = 1 + max(number for number, method in enumerate(catalogue.METHODS) if method.everyday)
    monkeypatch.setattr(catalogue, "METHODS", (*catalogue.METHODS[:last], ROW, *catalogue.METHODS[last:]))
    for key, text in SENTENCES.items():
        there = templates(key.partition(".")[0], "english")
        assert key not in there
        monkeypatch.setitem(there, key, text)  # type: ignore[arg-type]


def answered(**keys: Any) -> dict[str, Any]:
    return bowstring.answer({**JOB, **keys})


def own_row(told: Mapping[str, Any], method: str = BEAM) -> dict[str, Any]:
    (row,) = [row for row in told["methods"] if row["method"] == method]
    return row


def shown(metres: float) -> str:
    return f"{metres:.2f} m"


def test_its_stakes_stand_on_the_arc_and_its_steps_say_how() -> None:
    told = answered()
    assert [stake["name"] for stake in told["stakes"]] == ["A", "K1", "K2", "K3", "B"]
    for stake in told["stakes"][1:-1]:
        assert (stake["x"], stake["y"]) == pytest.approx(PLACES[stake["name"]], abs=1e-12)
    steps = [step for step in told["steps"] if step["level"]]
    for (name, (x, y)), step in zip(PLACES.items(), steps, strict=True):
        want = f"{name}: along the beam from A tape {shown(x)}, along the square one {shown(y)}. Drive {name}."
        assert step["text"] == want
    assert told["tables"] == [
        {
            "kind": "beam",
            "head": ["drive", "along the beam", "square off"],
            "rows": [[name, shown(x), f"{shown(y)} from foot {name}"] for name, (x, y) in PLACES.items()],
        }
    ]
    assert [mark["label"] for mark in told["stick"]["marks"]] == ["K1, K3", "K2"]
    assert told["stick"]["length"] == pytest.approx(SAGITTA)


def test_it_is_compared_with_the_others() -> None:
    told = answered()
    row = own_row(told)
    assert (row["name"], row["possible"], row["hands"], row["stakes"]) == ("a crossed beam", True, 1, 5)
    assert row["measurements"] == 2 * 3
    assert row["longest_pull"] == pytest.approx(PLACES["K3"][0])
    # One person alone can use the beam or swing from the centre, and for that there isn't the room.
    alone = answered(method="halving", hands=1, room={"behind": "10 m"})
    assert not own_row(alone, "centre")["possible"]
    assert alone["advice"]["method"] == BEAM and "a crossed beam" in alone["advice"]["text"]
    other = bowstring.answer({**JOB, "method": "halving"})
    assert own_row(other)["miss_95"] == row["miss_95"]


def test_the_numbers_shown_cost_what_they_cost() -> None:
    told = answered()
    misses = {name: dist((round(x, 2), round(y, 2)), CENTRE) - RADIUS for name, (x, y) in PLACES.items()}
    for stake in told["rounding"]["stakes"]:
        assert stake["miss"] == pytest.approx(misses.get(stake["name"], 0.0), abs=1e-9)
    assert abs(told["rounding"]["worst_miss"]) == pytest.approx(max(map(abs, misses.values())), abs=1e-9)
    assert own_row(told)["shift"] == abs(told["rounding"]["worst_miss"])


def test_it_is_as_true_as_its_move_says() -> None:
    """Two pulls, each read at both ends, in two square directions: across the arc they come to one pull's variance,
    whatever the direction. The scale takes the stake outward by its place's part that way."""
    told = answered()
    errors = told["accuracy"]["errors"]
    for stake in told["stakes"][1:-1]:
        x, y = PLACES[stake["name"]]
        out = ((x - CENTRE[0]) / RADIUS, (y - CENTRE[1]) / RADIUS)
        by_scale = errors["scale"] * (x * out[0] + y * out[1])
        along = errors["scale"] * (x * out[1] - y * out[0])
        both = 2 * errors["read"] ** 2 + errors["stake"] ** 2
        assert stake["sigma_across"] == pytest.approx(sqrt(both + by_scale**2), rel=1e-9)
        assert stake["sigma_along"] == pytest.approx(sqrt(both + along**2), rel=1e-9)
    worst = max(stake["sigma_across"] for stake in told["stakes"])
    assert told["accuracy"]["miss_95"] == pytest.approx(1.96 * worst)
    assert told["accuracy"]["reliable"]


def test_it_takes_over_what_its_ends_are_off() -> None:
    """With the ends off by s in x and in y a stake at (x, y) over the chord c goes by
    ax - y/c (by - ay) along it and by ay + x/c (by - ay) off it."""
    sigma = 0.02
    ends = [{"name": "A", "x": 0, "y": 0, "sigma": sigma}, {"name": "B", "x": CHORD, "y": 0, "sigma": sigma}]
    plain, off = answered(), answered(known=ends)
    for before, after in zip(plain["stakes"][1:-1], off["stakes"][1:-1], strict=True):
        x, y = PLACES[after["name"]]
        u, v = (x - CENTRE[0]) / RADIUS, (y - CENTRE[1]) / RADIUS
        parts = (u, u * y / CHORD + v * (1 - x / CHORD), -u * y / CHORD + v * x / CHORD)
        want = before["sigma_across"] ** 2 + sum((sigma * part) ** 2 for part in parts)
        assert after["sigma_across"] ** 2 == pytest.approx(want, rel=1e-9)


def test_what_is_in_the_way_of_its_pull_stops_it() -> None:
    told = answered(ground=[WALL])
    row = own_row(told)
    assert not row["possible"]
    assert [(block["kind"], block["step"], block["from"], block["to"], block["what"]) for block in row["blocks"]] == [
        ("pull", 4, "foot K2", "K2", "shed")
    ]
    assert any("you can't use a crossed beam on this ground" in text for text in told["stops"])
    beside = {**WALL, "outline": [[x + 3, y] for x, y in WALL["outline"]]}
    assert own_row(answered(ground=[beside]))["possible"]
    short = own_row(answered(tape={"length": "15 m"}))
    assert [(block["kind"], block["from"], block["to"]) for block in short["blocks"]] == [("tape", "A", "foot K3")]


def test_blunders_are_made_at_its_pulls() -> None:
    """The tape held at its 10-cm mark throws a stake farthest where the pull goes straight across the arc: at the
    middle. On the other hand all stakes are mirrored, and no chord was laid off for the arc's length."""
    told = answered()
    rows = {row["kind"]: row for row in told["mistakes"]}
    one = rows["burned_foot"]
    assert "K2" in one["text"]
    assert (one["at"], one["worst_miss"], one["moved"]) == ("K2", pytest.approx(-0.1), pytest.approx(0.1))
    for stake in rows["burned_foot_all"]["stakes"][1:-1]:
        x, y = PLACES[stake["name"]]
        assert (stake["x"], stake["y"]) == pytest.approx((x - 0.1, y - 0.1))
    for stake in rows["wrong_hand"]["stakes"][1:-1]:
        x, y = PLACES[stake["name"]]
        assert (stake["x"], stake["y"]) == pytest.approx((x, -y))
    rise = SAGITTA - PLACES["K1"][1]  # of the middle over its neighbours' string: no step measures it
    (seen,) = [check for check in one["caught_by"] if check["to"] == "K2" and check["kind"] == "alternate"]
    assert (seen["should"], seen["reads"]) == (pytest.approx(rise), pytest.approx(rise - 0.1))
    assert not {"wrong_leg", "diameter", "arc_for_gaps"} & rows.keys()


def test_it_stands_on_the_sheets_and_in_the_drawings() -> None:
    beside = {**WALL, "outline": [[x + 3, y] for x, y in WALL["outline"]]}
    told = answered(ground=[beside])
    assert "Set the stakes: a crossed beam" in [section.title for section in outline(told)]
    text, page = " ".join(sheet_text(told).split()), sheet_html(told, "x")
    for step in told["steps"]:
        assert " ".join(step["text"].split()) in text
    assert "K2: along the beam from A tape 12.00 m" in page
    drawn = [block.kind for section in outline(told) for block in section.blocks if isinstance(block, Drawing)]
    assert {"plan", "way", "site", "scatter", "stick"} <= set(drawn) and "level" not in drawn
    assert page.count("<svg") == len(drawn) - drawn.count("mistake")  # those are drawn when they are asked for
    way = method_svg(told, id="way")
    assert all(f">{name}<" in way for name in PLACES)
    assert f">{shown(12)}<" in way and f">{shown(SAGITTA)}<" in way  # the numbers of the step that is shown: K2's
    assert "shed" in site_plan_svg(told, id="site")
    assert mistakes_svg(told, "burned_foot", id="one").startswith("<svg")


def test_it_stands_in_the_file_of_values() -> None:
    rows = list(csv.reader(io.StringIO(stakes_csv(answered()))))
    found = {row[0]: row for row in rows[1:]}
    x, y = PLACES["K3"]
    assert found["K3"][2:4] == [f"{x:.6f}", f"{y:.6f}"]
    assert shown(x) in found["K3"][-2] and "along the beam" in found["K3"][-2]
    assert f"{shown(y)} from foot K3" in found["K3"][-1]


def test_the_form_offers_it_and_answers_it() -> None:
    page = form_html()
    assert 'value="beam"' in page and "<span>crossed beam</span>" in page
    assert page.index('value="beam"') < page.index("Instrument and road methods") < page.index('value="produced"')
    fields = fields_of_job(JOB)
    assert fields["method"] == BEAM
    assert job_of_fields(fields)["method"] == BEAM
    asked = json.dumps({"fields": fields, "address": "https://example.org/"})
    assert "K2: along the beam from A tape 12.00 m" in json.loads(handle("sheet", asked))["sheet"]
    for face in ("stakes", "checks", "build", "paper", "why"):
        shown = json.loads(handle("face", json.dumps({"fields": fields, "face": face})))
        assert (shown["sign"], shown["state"]["sign"]) == ("computed", "ask" if face == "build" else "computed")
    later = json.loads(handle("numbers_later", asked))
    assert "a crossed beam" in later["advice"] and later["state"]["sign"] == "computed"
    assert "K3" in json.loads(handle("hand_file", json.dumps({**json.loads(asked), "kind": "people"})))["text"]


def test_a_link_carries_it(capsys: pytest.CaptureFixture[str]) -> None:
    link = bowstring.write_link(JOB)
    again = bowstring.read_link(link)
    assert again["method"] == BEAM
    assert bowstring.answer(again) == answered()
    assert terminal.main([link, "--all"]) == 0
    assert "SET THE STAKES: A CROSSED BEAM" in capsys.readouterr().out
    assert terminal.main([bowstring.write_link({**JOB, "method": "tapes"}), "--method", BEAM, "--all"]) == 0
    assert "SET THE STAKES: A CROSSED BEAM" in capsys.readouterr().out


def test_where_it_is_none_it_is_refused_and_compared_as_such() -> None:
    round_one = {"chord": 8, "sagitta": 16}
    with pytest.raises(bowstring.BadJob, match="runs back under its own beam") as refused:
        answered(arc=round_one)
    assert (refused.value.field, refused.value.key) == ("method", "method.beam_overhang")
    row = own_row(answered(arc=round_one, method="halving"))
    assert not row["possible"] and row["why_not"] == SENTENCES["method.beam_overhang.wrong"]


def test_without_its_row_nobody_knows_it(monkeypatch: pytest.MonkeyPatch) -> None:
    rows = tuple(method for method in catalogue.METHODS if method is not ROW)
    monkeypatch.setattr(catalogue, "METHODS", rows)
    assert 'value="beam"' not in form_html()
    with pytest.raises(bowstring.BadJob) as refused:
        answered()
    assert refused.value.field == "method"
    assert BEAM not in [row["method"] for row in answered(method="halving")["methods"]]


@pytest.mark.parametrize("fact", ["place", "pulls", "uses", "lines", "readings", "mirrored", "spread"])
def test_a_move_that_leaves_a_fact_unsaid_cannot_be_made(fact: str) -> None:
    facts = {name: member for name, member in vars(AlongBeam).items() if not name.startswith("__") and name != fact}
    half: Any = type("Half", (Move,), facts)
    with pytest.raises(TypeError, match=fact):
        half()
