"""The form sheet: what stands on its two sides, and when there is none."""

from __future__ import annotations

import re
from html import unescape

import pytest

from bowstring import answering
from bowstring.faces.paper import paper_html
from bowstring.faces.paper_forms import forms_sides
from bowstring.faces.paper_forms_tall import flowed
from bowstring.words import say, speak
from bowstring.words.languages import LANGUAGES
from form_jobs import BARE, CROSSED, HUBS, JOBS, WALK, WALL, WALLS


def text_of(html: str) -> str:
    """The words of a side; a number that is held together on its line runs on into what follows it."""
    words = re.sub(r'<span class="n">([^<]*)</span>', r"\1", html)
    return " ".join(unescape(re.sub(r"<[^>]+>", " ", words)).split())


def sides(job: dict[str, object]) -> list[str]:
    html = forms_sides(answering(job), "May 31")  # type: ignore[arg-type]
    return [text_of(side) for side in re.findall(r"<section.*?</section>", html, re.DOTALL)]


def test_a_job_without_a_slab_has_no_form_sheet() -> None:
    assert sides({key: value for key, value in WALK.items() if key not in ("width", "edge")}) == []


@pytest.mark.parametrize("unsaid", ["side", "drawn_to"])
def test_a_stopped_job_has_none(unsaid: str) -> None:
    assert sides({key: value for key, value in WALK.items() if key != unsaid}) == []


def test_the_walks_front_has_its_edges_boards_and_joints() -> None:
    front, back = sides(WALK)
    # Worked by hand from R 62 ft, chord 48 ft, width 5 ft: theta = 2 asin(24/62) = 0.7949616, chord = 2 R sin(theta/2).
    for told in (
        "57' 0\"",
        "44' 1-1/2\"",
        "4' 5-3/8\"",
        "45' 3-3/4\"",
        "4' 11-1/8\"",
        "4' 6-3/8\"",
        "LEFT",
        "7' 8-7/8\"",
    ):
        assert told in front, told
    assert "M in 22' 0-3/4\" 4' 5-3/8\"" in front  # half the inner chord, the inner mid-ordinate
    for told in ('11-3/8"', '10-1/2"', "0.95", '7/8" low', "3-1/4", "24' 8\"", "37' 0\"", "2.09%"):
        assert told in back, told


def test_each_side_says_which_it_is() -> None:
    front, back = sides(WALK)
    assert "FORMS, front" in front and "FORMS, back" in back
    assert front.startswith("Garden walk: forms") and back.startswith("Garden walk: grade and pour")


def test_a_width_alone_has_edges_and_says_what_the_back_waits_for() -> None:
    front, back = sides(BARE)
    assert "57' 0\"" in front
    waits = [row["text"] for row in answering(BARE)["build"] if row["key"] in ("grades", "pour")]  # type: ignore[arg-type]
    assert all(text in back for text in waits) and "yards" not in back


@pytest.mark.parametrize("name", JOBS)
def test_it_is_two_sides_up_to_sixteen_stakes(name: str) -> None:
    assert len(sides(JOBS[name])) == 2


def test_more_stakes_go_on_over_the_page_and_none_is_lost() -> None:
    job = {**WALK, "levels": 5}
    told = " ".join(sides(job))
    answer = answering(job)  # type: ignore[arg-type]
    assert len(sides(job)) > 2
    rows = answer["edges"]["seconds"][0]["rows"] if answer["edges"] else []
    assert len(rows) == 33
    close = told.replace(" ", "")  # "W9 in" is held together from the 9 on, as a length is
    assert all(f"{row['name']}{row['along_shown']}{row['off_shown']}".replace(" ", "") in close for row in rows)


def test_what_is_typed_stays_a_text() -> None:
    html = forms_sides(answering({**WALK, "title": "<b>walk</b>"}), "<i>")  # type: ignore[arg-type]
    assert "<b>walk" not in html and "<i>" not in html


def test_a_wall_has_no_boards_on_its_sheet_and_its_footing_is_ordered_by_itself() -> None:
    front, back = sides(WALL)
    assert "Faces " in front and "Screw every stake" not in front
    # By hand: the footing lies from 18 ft 8 in to 16 ft 8 in: 60° x (R² - r²)/2 x 10 in.
    assert "1.14 yd³" in back and "1-1/2, then" in back


def test_joints_that_stop_stand_nowhere_on_the_sheet_and_it_says_why() -> None:
    job = {**WALK, "joints": {"panels": 3}}
    joints = answering(job)["joints"]  # type: ignore[arg-type]
    front, back = sides(job)
    assert joints is not None and joints["stop"] and " ".join(joints["stop"].split()) in front
    assert "outer form" not in front and "joint 1" not in back and "Joints marked" not in back


@pytest.mark.parametrize("name", WALLS)
def test_a_wall_is_two_sides_the_back_behind_the_front(name: str) -> None:
    front, back = sides(WALLS[name])
    assert front.endswith("Turn over: grade, pour") and "FORMS, back" in back


def test_a_walls_front_tells_its_sizes_and_every_line_off_the_stakes() -> None:
    front, _back = sides(HUBS)
    assert "Drawing: R 32' 0\" to the INNER FACE" in front and "Stakes' line: radius 35' 0\"" in front
    assert "Your stakes: 3' 0\" OUTSIDE the drawing's line." in front
    assert "Wall 8\" thick, 3' 6\" high, OUTSIDE the drawing's line. Footing 2' 6\" x 1' 0\"" in front
    # By hand, from hubs on R 35 ft: the wall from R 32 ft 8 in to 32 ft, its footing half of 2 ft 6 in to each side of
    # R 32 ft 4 in, the dig 1 ft past that.
    for line, off, radius in (
        ("Dig line, outside", '5"', "34' 7\""),
        ("Footing, outside edge", "1' 5\"", "33' 7\""),
        ("Outer face", "2' 4\"", "32' 8\""),
        ("Inner face", "3' 0\"", "32' 0\""),
        ("Footing, inside edge", "3' 11\"", "31' 1\""),
        ("Dig line, inside", "4' 11\"", "30' 1\""),
    ):
        assert f"{line} {off} inside {radius}" in front, line
    edges = answering(HUBS)["edges"]  # type: ignore[arg-type]
    assert edges is not None and "lines" in edges
    for told in edges["faces_sheet"]:
        assert told.replace(" ", "") in front.replace(" ", ""), told
    assert "form stakes" in front and "Sheets 4' 0\" x 8' 0\"" in front


def test_stakes_on_a_walls_face_say_so_and_have_no_second_radius() -> None:
    front, _back = sides(WALLS["stakes on the line"])
    assert "Your stakes: Inner face." in front and "Stakes' line" not in front and "radius 32' 0\"" in front
    assert "Set hubs outside the dig first" in front


def test_a_level_top_is_one_line_with_its_level_and_rod() -> None:
    _front, back = sides(HUBS)
    # 109.27 - 104.50 = 4.77 ft, and 0.77 ft = 9.24 in; the wall's 3 ft 6 in and the footing's 1 ft below
    told = "Top of wall 0 104.50 4.77 (4' 9-1/4\") Top of footing 3' 6\" 101.00 8.27 (8' 3-1/4\")"
    heads = "below top of wall elevation, ft rod; HI 109.27"
    for text in ("Top level all along, and across.", heads, told, "Bottom of dig 4' 6\" 100.00 9.27"):
        assert text.replace(" ", "") in back.replace(" ", ""), text
    assert back.count("109.27") == 1
    assert "as set" not in back and "0.00" not in back.replace("100.00", "").replace("101.00", "")
    _front, plain = sides(WALLS["hubs and no height"])
    assert "Top level all along" in plain and "rod; HI" not in plain and "0.00" not in plain
    assert "Top of footing 3' 6\" below top of wall, bottom of dig 4' 6\" below top of wall." in plain


def test_a_top_that_rises_has_levels_and_rod_at_every_stake() -> None:
    front, back = sides(WALLS["a top that rises"])
    assert "bottom of dig 4' 6\" below top of wall." in front and say("walled.runs_with_top") in front
    # the middle of 104.50 and 105.10; 109.27 - 104.80
    assert 'M 3-5/8" high 104.80 4.47' in back and "both forms" in back and "base under top" not in back
    assert "Steepest edge" not in back


def test_a_wall_and_its_footing_are_signed_off_by_their_sizes() -> None:
    _front, back = sides(HUBS)
    for told in (
        "Footing width 2' 6\"",
        "Footing thickness 1' 0\"",
        'Wall thickness at A, middle, B 8"',
        "Wall height 3' 6\"",
    ):
        assert told in back, told
    _front, back = sides({**HUBS, "slab": {"poured": "wall", "thickness": "3 ft 6 in"}})
    assert "Footing" not in back and "Wall height" in back


def test_what_comes_before_the_forms_is_whole_sheets() -> None:
    for levels in (3, 4, 5, 6):
        html = paper_html(answering({**HUBS, "levels": levels}))  # type: ignore[arg-type]
        labels = re.findall(r'<section class="side[^"]*" aria-label="([^"]*)"', html)
        front = labels.index("FORMS, front")
        assert front % 2 == 0 and labels[front + 1] == "FORMS, back", (levels, labels)


SIDEWALK: dict[str, object] = {
    "bowstring": 1, "title": "School walk", "arc": {"radius": "72' 6\"", "chord": "44' 9\""}, "side": "left",
    "ends": {"A": "hydrant", "B": "curb inlet"}, "drawn_to": "face", "width": "5 ft", "edge": "inside",
    "method": "ordinates", "parallel": "6 ft", "tolerance": "1/4 in",
    "slab": {"thickness": "4 in", "base": "4 in", "overdig": "6 in", "waste": 10,
             "apron": {"from": "17 ft", "to": "31 ft", "thickness": "6 in"}},
    "joints": {"every": "5 ft"},
    "grade": {"from": "100.00 ft", "slope": 3, "high": "B", "cross": 1.75, "low": "inside", "instrument": "104.62 ft"},
    "ground": [{"name": "oak", "stops": "tape", "at": ["14 ft", "0.5 ft"], "diameter": "18 in"}],
}  # fmt: skip


@pytest.mark.parametrize("spacing", ["8 ft", "4 ft", "2 ft", "18 in", "1 ft"])
@pytest.mark.parametrize("language", LANGUAGES)
def test_every_sheet_of_a_job_begins_on_a_front(language: str, spacing: str) -> None:
    """Printed on both sides, whatever stands on an even page is the back of the page before it."""
    speak(language)
    try:
        html = paper_html(answering({**SIDEWALK, "spacing": spacing}), "", "")  # type: ignore[arg-type]
        names = re.findall(r'<section class="side[^"]*" aria-label="([^"]*)"', html)
        front, back, more = (say(f"forms.{name}") for name in ("front", "back", "more"))
        at = names.index(front)
        assert at % 2 == 0 and names[at + 1] == back and set(names[at + 2 :]) <= {more}
        assert names[:2] == [say("paper.front"), say("paper.back")]
    finally:
        speak("english")


def test_what_a_column_has_no_room_for_stands_under_the_shorter_one_and_none_is_lost() -> None:
    job = SIDEWALK
    answer = answering(job)  # type: ignore[arg-type]
    told = sides(job)
    assert answer["edges"] and len(told) == 3 and "FORMS, back" in told[1]
    rows = answer["edges"]["seconds"][0]["rows"]
    assert len(rows) == 23
    front, more = (told[page].replace(" ", "") for page in (0, 2))
    texts = [f"{row['name']}{row['along_shown']}{row['off_shown']}".replace(" ", "") for row in rows]
    assert all((text in front) != (text in more) for text in texts)
    assert sum(text in front for text in texts) >= 14
    last = [row["outside"]["shown"] for row in answer["grades"]["rows"] if row["kind"] == "stake"]  # type: ignore[index]
    assert all(shown.replace(" ", "") in (told[1] + told[2]).replace(" ", "") for shown in last)


def test_the_forms_sheet_tells_the_dig_the_diagonals_the_rod_and_the_boards_in_feet() -> None:
    """By hand: 4 in of concrete on 4 in of base is 8 in, the apron's 6 in make it 10; 104.62 - 100.00 reads 4.62."""
    answer = answering(SIDEWALK)  # type: ignore[arg-type]
    front, back, _more = sides(SIDEWALK)
    assert '8" under the tops, 10" in the apron' in front and 'dig 2" deeper' not in front
    assert back.count(" rod ") == 2 and " A 0 4.62 " in back and "4.71" in back
    assert answer["edges"] and answer["boards"]
    each = {bay["forth_shown"] for bay in answer["edges"]["bays"]}
    assert len(each) > 1 and all(shown in front for shown in each)
    assert re.search(r"Splices, \d+ of 2' 0\"\s*: from \d+ ft", front) and re.search(r"Outer edge: [\d, ]+ ft", front)


def test_without_a_base_or_an_instrument_nothing_of_them_stands_there() -> None:
    slab = {key: value for key, value in SIDEWALK["slab"].items() if key != "base"}  # type: ignore[attr-defined]
    grade = {key: value for key, value in SIDEWALK["grade"].items() if key != "instrument"}  # type: ignore[attr-defined]
    front, back, _more = sides({**SIDEWALK, "slab": slab, "grade": grade})
    assert "under the tops" not in front and 'dig 2" deeper' in front
    assert " rod " not in back and back.count(" elev. ") == 2 and " A 0 100.00 " in back


def test_a_table_flows_under_the_shorter_one_and_none_of_its_rows_is_lost() -> None:
    """16 rows have room; the shorter one leaves 13, of which 3 are the heads of what flows under it."""
    rows = [[f"{number}"] for number in range(30)]
    shown, rest = flowed([("long", (), rows), ("short", (), rows[:3])], 16.5, 3.0)
    assert [[len(one[2]) for one in column] for column in shown] == [[16], [3, 10]]
    assert [one[2] for one in rest] == [rows[26:]] and shown[0][0][2] + shown[1][1][2] + rest[0][2] == rows


OLD = (
    "Set by the old numbers: M, Q1. The numbers here are newer.",
    "Old numbers: M, Q1 +19. The numbers here are newer.",
)


def counted(job: dict[str, object], old: tuple[str, str] = ("", "")) -> int:
    html = paper_html(answering(job), "https://example.org/#x", "May 31", old=old)  # type: ignore[arg-type]
    assert html.count(OLD[1]) == bool(old[1]) * (
        html.count("<section") - 1
    )  # on every side but the front, which has more
    return html.count("<section")


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_stands_by_old_numbers_takes_no_further_side(language: str) -> None:
    speak(language)
    try:
        spaced = [{**SIDEWALK, "spacing": spacing} for spacing in ("8 ft", "4 ft", "3 ft", "30 in", "27 in", "2 ft")]
        for job in [*JOBS.values(), *WALLS.values(), *spaced]:
            assert counted(job, OLD) == counted(job)
    finally:
        speak("english")


@pytest.mark.parametrize(("spacing", "stakes", "count"), [("3 ft", 17, 4), ("27 in", 22, 5)])
def test_an_apron_with_readings_of_the_rod_is_on_few_sides(spacing: str, stakes: int, count: int) -> None:
    """Ten joints and 17 stakes have room on the forms' two sides; 22 stakes take one side more, and none but that."""
    job = {**SIDEWALK, "spacing": spacing}
    assert len(answering(job)["stakes"]) == stakes and counted(job) == count  # type: ignore[arg-type]


def test_the_joints_tops_stand_a_row_each_in_columns() -> None:
    """Ten joints in three columns are four rows: of the second column the fifth is the first."""
    _front, back, *_more = sides(SIDEWALK)
    grades = answering(SIDEWALK)["grades"]  # type: ignore[arg-type]
    rows = [row for row in grades["rows"] if row["kind"] == "joint"] if grades else []  # type: ignore[typeddict-item]
    assert len(rows) == 10 and back.count("joint outer inner") == 3
    line = [rows[place] for place in (0, 4, 8)]
    told = " ".join(f"{row['name']} {row['outside']['tight']} {row['inside']['tight']}" for row in line)
    assert told.replace(" ", "") in back.replace(" ", "")


def test_the_front_says_that_pins_come_out_before_the_board() -> None:
    assert sides(WALK)[0].count("the board's face goes where its center was") == 1


def test_the_rods_column_says_by_which_instrument_and_from_which_top() -> None:
    """On each side that has rods: an arc's, a wall's, a pad's, and the sides that follow."""
    read = "HI 105.60, datum: top at A 101.35"
    assert forms_sides(answering(CROSSED), "").count(f"outer form; {read}</th>") == 1
    pad = {**CROSSED, "edge": "outside", "slab": {"fills": True, "sides": "20 ft", "thickness": "4 in"}}
    del pad["width"]
    grade = {"from": "101.35 ft", "slope": 1, "high": "A", "cross": 1, "low": "outside", "instrument": "105.60 ft"}
    assert f"outer form; {read}</th>" in forms_sides(answering({**pad, "grade": grade}), "")
    sloping = forms_sides(answering(WALLS["a top that rises"]), "")  # type: ignore[arg-type]
    assert "both forms; HI 109.27, datum: top at A 104.50</th>" in sloping
    level = forms_sides(answering(WALLS["hubs and levels"]), "")  # type: ignore[arg-type]
    told = unescape(re.sub("<[^>]+>", "", level)).replace("\N{NO-BREAK SPACE}", " ")
    assert "rod; HI 109.27" in told and "Top of wall0104.50" in told
    many = {**CROSSED, "levels": 6}
    sides = forms_sides(answering(many), "")
    assert sides.count(read) == sides.count('<table class="tops">') > 1
