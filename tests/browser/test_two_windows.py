"""Two windows on one job: what each changed is merged, and where both changed one field both values are shown."""

from __future__ import annotations

import time

import pytest
from playwright.sync_api import Page, expect

from bowstring.words import say
from browser.test_kept import KEY
from page_acting import (
    PATIENCE,
    open_desk,
    type_in,
    wait_for,
)


def two_windows(page: Page, site_url: str) -> Page:
    """Keep a job, and open a second window on it."""
    type_in(page, "arc-chord", "44 ft")
    page.add_init_script(CAN_SLEEP)
    page.reload()
    other = page.context.new_page()
    other.goto(site_url)
    expect(other.locator("#arc-chord")).to_have_value("44 ft")
    wait_for(other, "computed")
    return other


def test_two_windows_on_one_job_merge_what_each_changed(page: Page, site_url: str) -> None:
    other = two_windows(page, site_url)
    type_in(other, "arc-sagitta", "6 ft")
    expect(page.locator("#arc-sagitta")).to_have_value("6 ft")
    type_in(page, "tolerance", "1/2 in")
    expect(other.locator("#tolerance")).to_have_value("1/2 in")
    for one in (page, other):
        wait_for(one, "computed")
        expect(one.locator("#elsewhere")).to_be_hidden()
        expect(one.locator("#arc-chord")).to_have_value("44 ft")
        expect(one.locator("#arc-sagitta")).to_have_value("6 ft")


# A window whose tab is asleep hears nothing of the other one.
CAN_SLEEP = "addEventListener('storage', (event) => window.sleeping && event.stopImmediatePropagation());"
ASLEEP = "window.sleeping = true"
AWAKE = "window.sleeping = false"
KEPT = "key => JSON.parse(localStorage.getItem(key)).fields"


def kept_key(page: Page) -> str:
    """Under which key the job is kept that is open."""
    return KEY + str(page.evaluate("localStorage.getItem('bowstring.2.open')"))


def wait_until_kept(page: Page, **wanted: str) -> None:
    """Wait until fields are kept as a window sees the storage: what another process has written takes its time."""
    until = time.monotonic() + PATIENCE / 1000
    while time.monotonic() < until:
        kept = page.evaluate(KEPT, kept_key(page))
        if all(kept.get(name.replace("arc_", "arc-")) == text for name, text in wanted.items()):
            return
        page.wait_for_timeout(20)
    pytest.fail(f"{wanted} isn't kept")


def test_a_window_that_slept_overwrites_nothing(page: Page, site_url: str) -> None:
    other = two_windows(page, site_url)
    page.evaluate(ASLEEP)
    type_in(other, "arc-sagitta", "6 ft")
    wait_until_kept(page, arc_sagitta="6 ft")
    type_in(page, "tolerance", "1/2 in")
    expect(page.locator("#arc-sagitta")).to_have_value("6 ft")
    expect(other.locator("#tolerance")).to_have_value("1/2 in")
    kept = page.evaluate(KEPT, kept_key(page))
    assert (kept["arc-sagitta"], kept["tolerance"]) == ("6 ft", "1/2 in")
    page.evaluate(AWAKE)
    expect(page.locator("#elsewhere")).to_be_hidden()


def test_where_two_windows_changed_one_field_both_values_are_shown_and_chosen_from(page: Page, site_url: str) -> None:
    other = two_windows(page, site_url)
    page.evaluate(ASLEEP)
    for name, text in (("arc-chord", "46 ft"), ("arc-sagitta", "6 ft"), ("tolerance", "3/8 in")):
        type_in(other, name, text)
    wait_until_kept(page, arc_chord="46 ft", tolerance="3/8 in")
    type_in(page, "arc-chord", "45 ft")
    said = page.locator("#elsewhere")
    expect(said).to_contain_text(say("page.elsewhere_both"))
    expect(said.locator("li")).to_contain_text(["Chord"])
    expect(said.locator("li button")).to_have_text(["45 ft", "46 ft"])
    expect(page.locator("#arc-sagitta")).to_have_value("6 ft")
    type_in(page, "arc-chord", "47 ft")  # nobody has chosen yet: the other's value stays, here and there
    expect(said.locator("li button")).to_have_text(["47 ft", "46 ft"])
    assert page.evaluate(KEPT, kept_key(page))["arc-chord"] == "46 ft"
    expect(other.locator("#arc-chord")).to_have_value("46 ft")
    said.get_by_role("button", name="47 ft").click()
    expect(said).to_be_hidden()
    expect(page.locator("#arc-chord")).to_have_value("47 ft")
    expect(other.locator("#arc-chord")).to_have_value("47 ft")
    assert page.evaluate(KEPT, kept_key(page))["arc-chord"] == "47 ft"
    page.evaluate(AWAKE)


def test_the_other_window_s_value_can_be_taken(page: Page, site_url: str) -> None:
    other = two_windows(page, site_url)
    page.evaluate(ASLEEP)
    type_in(other, "arc-chord", "46 ft")
    wait_until_kept(page, arc_chord="46 ft")
    type_in(page, "arc-chord", "45 ft")
    page.locator("#elsewhere").get_by_role("button", name="46 ft").click()
    expect(page.locator("#elsewhere")).to_be_hidden()
    page.evaluate(AWAKE)
    for one in (page, other):
        expect(one.locator("#arc-chord")).to_have_value("46 ft")
        wait_for(one, "computed")


def test_a_job_removed_in_another_window_is_said_to_be(page: Page, site_url: str) -> None:
    other = two_windows(page, site_url)
    open_desk(other)
    other.locator("#job-list [aria-current] + button").click()
    said = page.locator("#elsewhere")
    expect(said).to_contain_text(say("page.elsewhere_gone"))
    expect(page.locator("#arc-chord")).to_have_value("44 ft")
    said.get_by_role("button", name=say("page.elsewhere_keep")).click()
    expect(said).to_be_hidden()
    open_desk(page)
    expect(page.locator("#job-list li")).to_have_count(1)
    other.close()
