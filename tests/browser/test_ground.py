"""The method and the site told in the form, and an obstacle drawn with a finger on the plan."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from bowstring import answer
from bowstring.page.fields import job_of_fields
from bowstring.units.lengths import read_length
from bowstring.words import say
from builder.website import SAVED
from page_acting import choose, look_at, open_desk, open_panel, type_in, wait_for

FOOT = 0.3048
CHORD, RISE = 40 * FOOT, 6 * FOOT
DEPTH = ((CHORD / 2) ** 2 + RISE**2) / (2 * RISE) - RISE
"""How far the centre lies behind the chord, metres: the circle through the ends and the middle (Pythagoras)."""
CENTRE = (CHORD / 2, -DEPTH)
SPOT = (CHORD / 2, RISE / 2)
"""A place on the plan, which shows the work and not the center."""
TYPED = {"arc-chord": "40 ft", "arc-sagitta": "6 ft", "spacing": "6 ft", "tolerance": "3/8 in"}

# The plan's place in the window, and its map from the ground: as the drawing itself says.
WHERE = """(svg) => {
  const { a, d, e, f } = svg.getScreenCTM();
  const { scale, turn } = svg.querySelector("[data-scale]").dataset;
  return { a, d, e, f, scale: Number(scale), turn: Number(turn) };
}"""


def describe(page: Page, side: str, method: str) -> None:
    """Empty the form and type a job of one's own."""
    wait_for(page, "computed")
    open_desk(page)
    page.click("#clear")
    for name, text in TYPED.items():
        type_in(page, name, text)
    choose(page, "drawn_to", "face")
    choose(page, "driven", "pin")
    choose(page, "side", side)
    choose(page, "method", method)
    if method == "centre":
        choose(page, "centre", "reachable")
    open_panel(page, "way")
    expect(page.locator("#draw-tape")).to_be_enabled()  # the plan is there, and that of the fields as they are


def around(middle: tuple[float, float], half: float) -> list[tuple[float, float]]:
    x, y = middle
    return [(x - half, y - half), (x + half, y - half), (x + half, y + half), (x - half, y + half)]


def on_screen(page: Page, corner: tuple[float, float]) -> tuple[float, float, float]:
    """Return where a place on the ground (metres) is in the window, and how many metres a pixel is."""
    at: dict[str, float] = page.locator("#site-plan svg").evaluate(WHERE)
    x, y = corner[0] * at["scale"] * at["turn"], -corner[1] * at["scale"]
    return at["a"] * x + at["e"], at["d"] * y + at["f"], 1 / (at["scale"] * at["a"])


def draw(page: Page, stops: str, corners: list[tuple[float, float]]) -> float:
    """Draw an obstacle with taps; return how many metres a pixel is on the plan."""
    page.locator(f"#draw-{stops}").tap()
    expect(page.locator("#draw-done")).to_be_disabled()
    pixel = 0.0
    for number, corner in enumerate(corners, 1):
        x, y, pixel = on_screen(page, corner)
        page.touchscreen.tap(x, y)
        expect(page.locator("#draw-said")).to_have_text(f"{say(f'siteplan.tapping.{stops}')} {number}")
    return pixel


def corners_in(page: Page, row: int) -> list[list[float]]:
    text = page.locator(f"#ground-{row}-outline").input_value()
    return [[read_length(one, "ft-in", "x", signed=True, zero=True).metres for one in pair.split(",")]
            for pair in text.split(";")]  # fmt: skip


def told(page: Page) -> dict[str, Any]:
    """Return what Python on this machine answers to what stands in the form."""
    script = "form => Object.fromEntries([...new FormData(form)].filter(([, text]) => typeof text === 'string'))"
    fields: dict[str, str] = page.locator("#form").evaluate(script)
    return dict(answer(job_of_fields(fields)))


def answer_way_out(page: Page) -> dict[str, Any]:
    """The first stop of what stands in the form, with what settles it."""
    way: dict[str, Any] = told(page)["ways_out"][0]
    return way


@pytest.mark.parametrize("side", ["left", "right"])
def test_a_pond_drawn_over_the_centre_stops_the_swing_and_another_way_is_advised(phone: Page, side: str) -> None:
    describe(phone, side, "centre")
    expect(phone.locator("#status")).to_have_text(say("numbers.state_done"))
    corners = around(SPOT, 0.5)
    pixel = draw(phone, "feet", corners)
    phone.locator("#draw-done").tap()
    expect(phone.locator("#ground-0-outline")).not_to_have_value("")
    wait_for(phone, "computed")

    # What was tapped stands in the form, to the pixel and the tape's mark, whatever hand the curve is on.
    for found, true in zip(corners_in(phone, 0), corners, strict=True):
        assert found == [pytest.approx(value, abs=pixel + FOOT / 96) for value in true]
    # The plan shows the work: a pond as far off as the center is typed.
    pond = "; ".join(f"{x / FOOT:.3f} ft, {y / FOOT:.3f} ft" for x, y in around(CENTRE, 1.5))
    type_in(phone, "ground-0-outline", pond)
    expect(phone.locator("#draw-tape")).to_be_enabled()
    expect(phone.locator("#ground-0-name")).to_have_value(say("siteplan.name.feet"))
    expect(phone.locator("input[name=ground-0-stops][value=feet]")).to_be_checked()

    # The plan shows it, and the sheet says that it is in the way, and which way to take.
    expect(phone.locator("#site-plan [data-stops=feet]").first).to_be_visible()
    expect(phone.locator("#site-plan svg text", has_text="pond")).to_be_visible()
    stands = say("block.feet", what="pond", start="C", end="C")
    expect(phone.locator("#site-plan .caution")).to_contain_text(stands)
    expect(phone.locator("#status")).to_have_text(say("numbers.state_stopped"))
    advice = told(phone)["advice"]
    assert advice["method"] not in (None, "centre")
    expect(phone.locator("#site-advice")).to_contain_text(advice["text"])
    look_at(phone, "stakes")
    wait_for(phone, "computed")
    name = answer_way_out(phone)
    expect(phone.locator("#stakes .stopbox")).to_contain_text(name["reason"])
    phone.locator("#stakes [data-do=fill]").tap()  # and there is the way out
    expect(phone.locator("#stakes .card:not(.stopped)")).to_be_visible()
    expect(phone.locator(f"input[name=method][value={advice['method']}]")).to_be_checked()


def test_a_wall_across_the_chord_stops_strings_and_a_pond_there_doesn_t(phone: Page) -> None:
    describe(phone, "left", "halving")
    across = around((CHORD / 3, 0.0), 0.6)
    draw(phone, "tape", across)
    phone.locator("#draw-done").tap()
    expect(phone.locator("#ground-0-name")).to_have_value(say("siteplan.name.tape"))
    wait_for(phone, "computed")
    blocks = next(row for row in told(phone)["methods"] if row["method"] == "halving")["blocks"]
    assert any(block["kind"] == "string" and {block["from"], block["to"]} == {"A", "B"} for block in blocks)
    expect(phone.locator("#site-plan .caution li").first).to_have_text(blocks[0]["text"])
    expect(phone.locator("#ground-1-outline")).to_be_attached()  # a free row follows
    choose(phone, "ground-0-stops", "feet")
    wait_for(phone, "computed")
    expect(phone.locator("#site-plan .caution")).to_have_count(0)


def test_corners_are_undone_given_up_and_asked_for(phone: Page) -> None:
    describe(phone, "left", "halving")
    corners = around(SPOT, 0.5)
    draw(phone, "feet", corners[:3])
    plan = phone.locator("#site-plan svg")
    expect(plan).to_have_css("touch-action", "none")
    for button in ("undo", "done", "cancel"):
        size = phone.locator(f"#draw-{button}").bounding_box()
        assert size and size["height"] >= 48 and size["width"] >= 48
        expect(phone.locator(f"#draw-{button}")).to_be_in_viewport(ratio=1)  # in sight with the plan
    phone.locator("#draw-undo").tap()
    expect(phone.locator("#draw-said")).to_contain_text("2")
    phone.locator("#draw-done").tap()
    expect(phone.locator("#draw-wrong")).to_have_text(say("siteplan.few"))
    x, y, _ = on_screen(phone, corners[2])
    phone.touchscreen.tap(x, y)
    expect(phone.locator("#draw-wrong")).to_be_hidden()
    phone.locator("#draw-cancel").tap()
    expect(phone.locator(".tapped")).to_have_count(0)
    expect(plan).not_to_have_css("touch-action", "none")
    expect(phone.locator("#ground-0-outline")).to_have_value("")
    expect(phone.locator("#draw-feet")).to_be_focused()

    # Who leaves the panel with something drawn means it.
    draw(phone, "feet", corners)
    phone.locator("#panel-way [data-do=panel-close]").last.tap()
    expect(phone.locator("#ground-0-outline")).not_to_have_value("")
    expect(phone.locator("#panel-way")).to_be_hidden()
    open_panel(phone, "way")
    expect(phone.locator("#draw-tape")).to_be_enabled()

    phone.locator("#draw-tape").tap()
    type_in(phone, "arc-chord", "42 ft")  # another arc: what was begun was on the plan of the one before
    expect(phone.locator("#draw-going")).to_be_hidden()
    wait_for(phone, "computed")
    type_in(phone, "arc-chord", "nothing")
    wait_for(phone, "refused")
    open_panel(phone, "way")
    expect(phone.locator("#site-none")).to_be_visible()
    expect(phone.locator("#draw-tape")).to_be_disabled()


def test_a_corner_goes_with_the_finger_until_it_leaves(page: Page) -> None:
    describe(page, "left", "halving")
    page.click("#draw-feet")
    corners = around(SPOT, 0.5)
    for corner in corners:
        x, y, _ = on_screen(page, corner)
        page.mouse.move(x + 30, y - 20)
        page.mouse.down()
        page.mouse.move(x, y, steps=3)
        page.mouse.up()
    page.click("#draw-done")
    expect(page.locator("#ground-0-outline")).not_to_have_value("")
    pixel = on_screen(page, SPOT)[2]
    for found, true in zip(corners_in(page, 0), corners, strict=True):
        assert found == [pytest.approx(value, abs=pixel + FOOT / 96) for value in true]


def test_the_site_is_typed_kept_and_comes_back(page: Page) -> None:
    describe(page, "left", "tapes")
    rows = {
        "ground-0-name": "shed",
        "ground-0-outline": "10 ft, -8 ft; 16 ft, -8 ft; 16 ft, -3 ft",
        "known-0-name": "hydrant",
        "known-0-x": "4 ft",
        "known-0-y": "-6 ft",
        "tapes_from-0": "hydrant",
        "tapes_from-1": "B",
        "tape-length": "60 ft",
        "errors-scale": "0.0001",
    }
    choose(page, "ground-0-stops", "tape")
    for name, text in rows.items():
        type_in(page, name, text)
    wait_for(page, "computed")
    (shed,) = told(page)["site"]["obstacles"]
    assert shed["name"] == "shed" and len(shed["outline"]) == 3
    expect(page.locator("#known-1-name")).to_have_value("")  # a free row follows, and holds nothing
    page.reload()
    wait_for(page, "computed")
    for name, text in rows.items():
        expect(page.locator(f"[id='{name}']")).to_have_value(text)
    expect(page.locator("input[name=method][value=tapes]")).to_be_checked()
    open_desk(page)
    page.click("#clear")
    for name in rows:
        expect(page.locator(f"[id='{name}']")).to_have_value("")
    expect(page.locator("input[name=method][value='']")).to_be_checked()
    expect(page.locator("input[name=ground-0-stops][value='']")).to_be_checked()


def test_a_saved_page_is_drawn_on_too(profile: Callable[..., BrowserContext]) -> None:
    context = profile("saved", SAVED.as_uri(), has_touch=True, viewport={"width": 360, "height": 740})
    page = context.pages[0]
    page.goto(SAVED.as_uri())
    describe(page, "right", "centre")
    draw(page, "feet", around(SPOT, 0.5))
    page.locator("#draw-done").tap()
    expect(page.locator("#ground-0-name")).to_have_value(say("siteplan.name.feet"))
    wait_for(page, "computed")
    expect(page.locator("#site-advice")).to_contain_text(told(page)["advice"]["text"])
