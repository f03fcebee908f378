"""The methods side by side on the page: the numbers come before the advice, blunders are drawn when asked for."""

from __future__ import annotations

from pathlib import Path

from playwright.sync_api import Page, expect

from bowstring import answer
from bowstring.sheet.csv import stakes_csv
from bowstring.words import say
from page_acting import (
    PATIENCE,
    choose,
    close_panel,
    look_at,
    open_desk,
    open_panel,
    reveal,
    sheet_of,
    type_in,
    wait_for,
)

MARKS = "() => performance.getEntriesByType('mark').map((mark) => mark.name).filter((name) => /^bowstring-/.test(name))"
JOB = {"arc": {"chord": "41 ft", "sagitta": "5 ft"}, "tolerance": "1/4 in", "side": "left", "drawn_to": "face"}


def do_job(page: Page) -> None:
    open_panel(page, "jobs")
    page.click("#clear")
    page.wait_for_selector("html:not([data-panel])")
    for name in ("chord", "sagitta"):
        type_in(page, f"arc-{name}", JOB["arc"][name])  # type: ignore[index]
    type_in(page, "tolerance", str(JOB["tolerance"]))
    choose(page, "side", "left")
    choose(page, "drawn_to", "face")
    wait_for(page, "computed")


def test_the_numbers_come_first_and_the_advice_is_the_answer_s_own(page: Page) -> None:
    do_job(page)
    reveal(page, "tape-length")
    wait_for(page, "computed")
    before = page.evaluate(MARKS)
    page.evaluate("performance.clearMarks()")
    type_in(page, "tape-length", "15 ft")
    wait_for(page, "computed")
    assert before and page.evaluate(MARKS) == ["bowstring-numbers", "bowstring-sheet"]
    told = answer({**JOB, "tape": {"length": "15 ft"}})
    advice = told["advice"]
    name = say(f"method.name.{advice['method']}")  # type: ignore[index]
    close_panel(page)
    expect(page.locator("#ask-method-said")).to_contain_text(name[1:])
    open_panel(page, "method")
    expect(page.locator("#method-advice")).to_contain_text(advice["text"])  # type: ignore[index]
    assert advice["text"] in sheet_of(page)  # type: ignore[index]


def test_only_the_face_that_is_looked_at_is_made(page: Page) -> None:
    do_job(page)
    look_at(page, "checks")
    wait_for(page, "computed")
    expect(page.locator("#checks")).not_to_be_empty()
    checks = page.locator("#checks").text_content()
    look_at(page, "why")
    wait_for(page, "computed")
    type_in(page, "arc-chord", "42 ft")
    wait_for(page, "computed")
    assert page.locator("#checks").text_content() == checks, "made anew when somebody looks"
    look_at(page, "checks")
    wait_for(page, "computed")
    assert page.locator("#checks").text_content() != checks


def test_a_blunder_is_drawn_when_its_fold_is_opened(page: Page) -> None:
    do_job(page)
    told = answer(JOB)["mistakes"]
    look_at(page, "why")
    wait_for(page, "computed")
    fold = page.locator("#why details[data-fold]", has=page.locator("[data-mistake]"))
    page.locator("#why details[data-fold=mistakes] > summary").click()
    folds = page.locator("#why details[data-mistake]")
    expect(folds).to_have_count(len(told))  # type: ignore[arg-type]
    expect(fold).to_have_count(1)
    last = folds.last
    expect(last.locator("svg")).to_have_count(0)
    last.locator("summary").click()
    expect(last.locator("svg")).to_have_count(1, timeout=PATIENCE)
    expect(last.locator("svg desc")).not_to_be_empty()


def test_the_stakes_go_into_a_file_of_values(page: Page, tmp_path: Path) -> None:
    do_job(page)
    choose(page, "method", "ordinates")
    wait_for(page, "computed")
    open_desk(page)
    page.click("[data-hand=files]")
    with page.expect_download() as download:
        page.click("[data-file=people]")
    file = tmp_path / "stakes.csv"
    download.value.save_as(file)
    assert download.value.suggested_filename.endswith(".csv")
    assert file.read_text("utf-8").splitlines() == stakes_csv(answer({**JOB, "method": "ordinates"})).splitlines()
