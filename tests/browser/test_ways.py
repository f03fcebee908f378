"""The ways side by side on the page: the advice is there before the drawings, blunders are drawn when asked for."""

from __future__ import annotations

from pathlib import Path

from playwright.sync_api import Page, expect

from bowstring import answer
from bowstring.sheet.csv import stakes_csv
from page_acting import PATIENCE, choose, open_desk, type_in, unfold, wait_for

MARKS = "() => performance.getEntriesByType('mark').map((mark) => mark.name).filter((name) => /^bowstring-/.test(name))"
JOB = {"arc": {"chord": "41 ft", "sagitta": "5 ft"}, "tolerance": "1/4 in", "side": "left", "drawn_to": "face"}


def do_job(page: Page) -> None:
    page.click("#clear")
    for name in ("chord", "sagitta"):
        type_in(page, f"arc-{name}", JOB["arc"][name])  # type: ignore[index]
    type_in(page, "tolerance", str(JOB["tolerance"]))
    choose(page, "side", "left")
    choose(page, "drawn_to", "face")
    wait_for(page, "computed")


def test_the_advice_comes_first_and_is_the_sheet_s_own(page: Page) -> None:
    do_job(page)
    unfold(page)
    before = page.evaluate(MARKS)
    page.evaluate("performance.clearMarks()")
    type_in(page, "tape-length", "15 ft")
    wait_for(page, "computed")
    assert before and page.evaluate(MARKS) == ["bowstring-advice", "bowstring-sheet"]
    advice = answer({**JOB, "tape": {"length": "15 ft"}})["advice"]
    expect(page.locator("#sheet-advice")).to_contain_text(advice["text"])  # type: ignore[index]
    expect(page.locator("#site-advice")).to_contain_text(advice["text"])  # type: ignore[index]


def test_a_blunder_is_drawn_when_its_fold_is_opened(page: Page) -> None:
    do_job(page)
    told = answer(JOB)["mistakes"]
    folds = page.locator("#sheet details[data-mistake]")
    expect(folds).to_have_count(len(told))  # type: ignore[arg-type]
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
    with page.expect_download() as download:
        page.click("#stakes-out")
    file = tmp_path / "stakes.csv"
    download.value.save_as(file)
    assert download.value.suggested_filename.endswith(".csv")
    assert file.read_text("utf-8").splitlines() == stakes_csv(answer({**JOB, "method": "ordinates"})).splitlines()
