"""The sheet of paper prints as two pages, Letter and A4, for twenty jobs, with nothing cut."""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest
import zxingcpp
from playwright.sync_api import Browser, Page

from bowstring import answering, write_link
from bowstring.faces.paper import paper_html
from bowstring.faces.paper_forms import forms_sides
from bowstring.words import speak
from bowstring.words.languages import LANGUAGES
from builder.house import ROOT
from form_jobs import JOBS as SLABS
from form_jobs import WALLS
from line_jobs import CREEK, METRIC, SHAPES
from lined_jobs import KINKED
from paper_jobs import JOBS
from pictures import dots_of

STYLES = ROOT / "site"
PAPERS = ("Letter", "A4")
WIDE, TALL = 688, 952  # pixels between the margins, on either paper
ADDRESS = "https://example.org/bowstring/#"
DOTS = 300  # of a printer, to the inch
LEAST_MODULE = 0.35  # millimeters: a phone's camera tells them apart at a hand's breadth
# All codes in one picture; how wide a module of each is, in pixels.
GATHERED = """() => {
    const codes = [...document.querySelectorAll(".paper .back .qr")], paper = document.querySelector(".paper");
    const modules = codes.map(code => code.getBoundingClientRect().width / code.viewBox.baseVal.width);
    document.body.replaceChildren(paper);
    paper.replaceChildren(...codes);
    for (const code of codes) code.style.display = "inline-block";
    return modules;
}"""
DAY = "November 26, 2026"
HARD = {
    **JOBS["four rounds"],
    "title": "W" * 80,
    "note": "Mind the roots. " * 17,
    "ends": {"A": "\u05e9\u05e2\u05e8 " * 10, "B": "M" * 40},
    "ties": {"A": [{"to": "W" * 40, "distance": "9 ft"}, {"to": "tree \U0001f333", "distance": "8 ft"}]},
}
CUT = """wide => {
    const found = [];
    for (const side of document.querySelectorAll(".side")) {
        const right = side.getBoundingClientRect().left + wide + 1;
        for (const inner of side.querySelectorAll("*")) {
            if (inner.closest("svg") && inner.tagName !== "svg") continue;
            if (inner.getBoundingClientRect().right > right) found.push(`${inner.tagName} ${inner.textContent}`);
            if (inner.scrollWidth > inner.clientWidth + 1 && getComputedStyle(inner).overflowX !== "visible")
                found.push(`cut: ${inner.tagName} ${inner.textContent}`);
        }
    }
    return found.slice(0, 5);
}"""


@pytest.fixture(scope="module")
def printer(chromium: Browser) -> Iterator[Page]:
    """A page that shows what is printed, as wide as the paper between its margins."""
    page = chromium.new_page(viewport={"width": WIDE, "height": 950})
    page.emulate_media(media="print")
    yield page
    page.close()


def written(*jobs: dict[str, object]) -> str:
    """The paper of some jobs, one after the other, as a document with its styles."""
    face, printed = ((STYLES / name).read_text("utf-8") for name in ("face-paper.css", "print.css"))
    html = "".join(paper_html(answering(job), ADDRESS + write_link(job), DAY) for job in jobs)  # type: ignore[arg-type]
    own = "*{box-sizing:border-box}body{margin:0}article+article{break-before:page}"
    style = f"<style>{own}{face}</style><style media=print>{printed}</style>"
    return f"<!doctype html><html lang=en><meta charset=utf-8><title>x</title>{style}{html}"


def pages(page: Page, paper: str) -> int:
    return len(re.findall(rb"/Type\s*/Page\b", page.pdf(format=paper)))


def test_twenty_sheets_are_two_pages_each_and_nothing_is_cut(printer: Page) -> None:
    printer.set_content(written(*JOBS.values()))
    sides = printer.locator(".paper > .side")
    assert (len(JOBS), sides.count()) == (20, 40)
    assert printer.evaluate(CUT, WIDE) == []
    assert printer.evaluate("document.documentElement.scrollWidth") <= WIDE
    heights = sides.evaluate_all("sides => sides.map(side => side.getBoundingClientRect().height)")
    assert max(heights) <= TALL
    # no side is on less than a page, so that none of them is on two
    assert {paper: pages(printer, paper) for paper in PAPERS} == dict.fromkeys(PAPERS, 40)


@pytest.fixture
def printed(chromium: Browser) -> Iterator[Page]:
    """A page with the dots of a printer."""
    page = chromium.new_page(viewport={"width": WIDE, "height": 950}, device_scale_factor=DOTS / 96)
    page.emulate_media(media="print")
    yield page
    page.close()


def test_the_code_of_each_of_twenty_jobs_scans_off_its_back(printed: Page) -> None:
    printed.set_content(written(*JOBS.values()))
    modules = printed.evaluate(GATHERED)
    assert len(modules) == len(JOBS) and min(modules) / 96 * 25.4 >= LEAST_MODULE
    found = zxingcpp.read_barcodes(dots_of(printed.screenshot(full_page=True)))
    assert sorted(code.text for code in found) == sorted(ADDRESS + write_link(job) for job in JOBS.values())  # type: ignore[arg-type]


def test_long_names_a_note_and_a_wide_face_make_no_side_longer_than_its_page(printer: Page) -> None:
    printer.set_content(written(HARD, JOBS["four rounds"], JOBS["angles off the straight"]))
    for family in ("Liberation Sans", "DejaVu Sans"):
        printer.add_style_tag(content=f".paper {{ font-family: '{family}' !important; }}")
        assert printer.evaluate(CUT, WIDE) == []
        assert {paper: pages(printer, paper) for paper in PAPERS} == dict.fromkeys(PAPERS, 6)


def test_more_stakes_than_its_sides_hold_print_on_further_pages(printer: Page) -> None:
    printer.set_content(written({**JOBS["halving"], "levels": 6, "arc": {"chord": "140 ft", "sagitta": "20 ft"}}))
    sides = printer.locator(".paper > .side").count()
    assert sides > 3
    assert {paper: pages(printer, paper) for paper in PAPERS} == dict.fromkeys(PAPERS, sides)


def test_on_a_phone_nothing_is_wider_than_the_screen(chromium: Browser) -> None:
    page = chromium.new_page(viewport={"width": 360, "height": 740})
    page.set_content(written(JOBS["four rounds"]))
    assert page.evaluate("document.documentElement.scrollWidth") <= 360
    small = page.locator(".setting tbody td").nth(2).evaluate("cell => parseFloat(getComputedStyle(cell).fontSize)")
    assert small >= 12
    page.close()


def test_the_form_sheets_are_two_pages_each_and_nothing_is_cut(printer: Page) -> None:
    printer.set_content(written(*SLABS.values()))
    for style in sorted(STYLES.glob("face-*.css")):  # no other face's looks may reach them
        printer.add_style_tag(content=style.read_text("utf-8"))
    printer.add_style_tag(content="body { overflow: visible; height: auto; }")
    assert printer.locator(".paper > .side").count() == 4 * len(SLABS)
    assert printer.evaluate(CUT, WIDE) == []
    assert set(printer.locator(".boxed").evaluate_all("all => all.map(one => getComputedStyle(one).display)")) == {
        "block"
    }
    heights = printer.locator(".side.forms").evaluate_all("all => all.map(one => one.getBoundingClientRect().height)")
    assert max(heights) <= TALL
    assert {paper: pages(printer, paper) for paper in PAPERS} == dict.fromkeys(PAPERS, 4 * len(SLABS))


LINES = {"creek": CREEK, "nine pieces": METRIC, "many": SHAPES["many"], "kinks": KINKED,
         "old ends": {**KINKED, "slab": {**KINKED["slab"], "at_A": "against", "at_B": "against"}}}  # fmt: skip
FAMILIES = ("Liberation Sans", "DejaVu Sans")
OVERLAPS = """() => {
    const found = [];
    for (const side of document.querySelectorAll(".side")) {
        const inner = [...side.children].map(one => [one, one.getBoundingClientRect()]);
        for (const [one, box] of inner)
            for (const deep of one.querySelectorAll("p, li, td, th, h3"))
                if (deep.getBoundingClientRect().bottom > box.bottom + 1.5) found.push(`under: ${deep.textContent}`);
        for (const [at, [one, box]] of inner.entries())
            if (at && box.top < inner[at - 1][1].bottom - 1) found.push(`over: ${one.className}`);
        if (side.lastElementChild.getBoundingClientRect().bottom > side.getBoundingClientRect().top + 951)
            found.push(`low: ${side.lastElementChild.className}`);
    }
    return found.slice(0, 5);
}"""


@pytest.fixture(params=LANGUAGES)
def language(request: pytest.FixtureRequest) -> Iterator[str]:
    speak(request.param)
    yield request.param
    speak("english")


USUAL = ("Liberation Sans", "DejaVu Sans Condensed")


@pytest.mark.parametrize("name", SLABS)
def test_the_form_sheet_of_an_arc_has_room_in_every_language_and_face_with_old_numbers(
    printer: Page, name: str, language: str
) -> None:
    html = paper_html(answering(SLABS[name]), "", DAY, old=("old " * 12, "old " * 20))  # type: ignore[arg-type]
    printer.set_content(written(SLABS[name]).partition("<article")[0] + html)
    for family in USUAL:
        printer.add_style_tag(content=f".paper {{ font-family: '{family}' !important; }}")
        heights = printer.locator(".side").evaluate_all("all => all.map(one => one.getBoundingClientRect().height)")
        assert max(heights) <= TALL
        assert {paper: pages(printer, paper) for paper in PAPERS} == dict.fromkeys(PAPERS, len(heights))


def form_sheet(job: dict[str, object]) -> str:
    """The form sheet of a job alone, as a document with its styles."""
    face, printed = ((STYLES / name).read_text("utf-8") for name in ("face-paper.css", "print.css"))
    own = "*{box-sizing:border-box}body{margin:0}"
    style = f"<style>{own}{face}</style><style media=print>{printed}</style>"
    sides = forms_sides(answering(job), DAY)  # type: ignore[arg-type]
    return f'<!doctype html><html lang=en><meta charset=utf-8><title>x</title>{style}<article class="paper">{sides}'


FLAT: dict[str, object] = {"side": "left", "drawn_to": "face", "arc": {"chord": "14 ft", "sagitta": "3 ft"},
                           "grade": {"slope": 1, "high": "A", "low": "outside"}}  # fmt: skip
FLAT_SLAB = {"thickness": "6 in", "fills": True, "sides": "21 ft"}


@pytest.mark.parametrize("both", [False, True])
@pytest.mark.parametrize("level", ["job lumber", "selected"])
def test_the_form_sheet_of_a_slab_with_straight_sides_is_one_sheet(
    printer: Page, language: str, level: str, both: bool
) -> None:
    """With a bevel, boards lower than the slab, and where nothing bends: what is told of each has room on its front."""
    slab = {**FLAT_SLAB, **({"both_ends": True} if both else {})}
    printer.set_content(form_sheet({**FLAT, "slab": slab, "board": {"level": level}}))
    assert printer.locator(".side.forms").count() == 2
    front = printer.locator(".side.forms").first.evaluate("one => one.getBoundingClientRect().height")
    assert front <= TALL
    if language != "spanish":  # whose heads are wider than the table has room for
        assert printer.evaluate(CUT, WIDE) == []


@pytest.mark.parametrize("name", LINES)
def test_the_form_sheet_of_a_line_is_one_sheet_for_four_pieces_and_nothing_is_cut(
    printer: Page, name: str, language: str
) -> None:
    printer.set_content(form_sheet(LINES[name]))
    sides = printer.locator(".side.lined").count()
    longer = language == "spanish"  # whose sentences are longer
    assert sides == 2 + longer if name.startswith("creek") else 2 <= sides <= 5
    for family in FAMILIES:
        printer.add_style_tag(content=f".paper {{ font-family: '{family}' !important; }}")
        assert printer.evaluate(CUT, WIDE) == []
        assert printer.evaluate(OVERLAPS) == []
        assert {paper: pages(printer, paper) for paper in PAPERS} == dict.fromkeys(PAPERS, sides)
    smallest = printer.locator(".side.lined :is(td, th, p, li)").evaluate_all(
        "all => Math.min(...all.map(one => parseFloat(getComputedStyle(one).fontSize)))"
    )
    assert smallest >= 12


@pytest.mark.parametrize("name", WALLS)
def test_the_sheet_of_a_wall_is_two_sides_and_two_for_its_forms(printer: Page, name: str, language: str) -> None:
    printer.set_content(written(WALLS[name]))
    assert printer.locator(".paper > .side").count() == 4
    for family in FAMILIES:
        printer.add_style_tag(content=f".paper {{ font-family: '{family}' !important; }}")
        assert printer.evaluate(CUT, WIDE) == []
        heights = printer.locator(".side").evaluate_all("all => all.map(one => one.getBoundingClientRect().height)")
        assert max(heights) <= TALL
        assert {paper: pages(printer, paper) for paper in PAPERS} == dict.fromkeys(PAPERS, 4)
    smallest = printer.locator(".side.forms :is(td, th, p, li)").evaluate_all(
        "all => Math.min(...all.map(one => parseFloat(getComputedStyle(one).fontSize)).filter(one => one))"
    )
    assert smallest >= 12


def test_on_a_phone_the_form_sheets_tables_are_within_the_screen_or_their_own_box(chromium: Browser) -> None:
    page = chromium.new_page(viewport={"width": 360, "height": 740})
    page.set_content(written(*WALLS.values(), *SLABS.values()))
    over = page.locator(".side.forms").evaluate_all(
        """all => all.flatMap(side => [...side.querySelectorAll("table, th, td, p, li")].filter(one => {
            const box = one.closest(".lines, .tops, .joint-tops");
            return one.getBoundingClientRect().right > 361 && (!box || box === one);
        }).map(one => one.textContent.slice(0, 60)))"""
    )
    assert over == []
    assert set(
        page.locator(".forms :is(.lines, .tops, .joint-tops)").evaluate_all(
            "all => all.map(one => getComputedStyle(one).overflowX)"
        )
    ) == {"auto"}
    page.close()
