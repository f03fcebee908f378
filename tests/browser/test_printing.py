"""What is printed right after an edit: the paper of the numbers in the fields, or one sentence; never another paper."""

from __future__ import annotations

import pytest
from playwright.sync_api import Page

from bowstring.words import say
from page_acting import look_at, wait_for

# Printing notes what would be on the paper, in place of a printer.
NOTED = """() => {
  document.documentElement.removeAttribute("data-printed");
  window.print = () => {
    const told = "paper" in document.documentElement.dataset ? document.getElementById("paper").textContent : "";
    document.documentElement.setAttribute("data-printed", told || "nothing");
  };
}"""
# A number typed, and in the same moment what the browser's menu would print.
TYPED = """(text) => {
  const field = document.getElementById("arc-sagitta");
  field.value = text;
  field.dispatchEvent(new InputEvent("input", { bubbles: true }));
  return document.getElementById("face-paper").innerText;
}"""
OLD, NEW = "5' 3\"", "6' 1\""


def printed(page: Page) -> str:
    page.wait_for_selector("html[data-printed]")
    return page.locator("html").get_attribute("data-printed") or ""


def paper_made(page: Page) -> None:
    page.wait_for_selector("html[data-paper]")
    assert OLD in (page.locator("#paper").text_content() or "")


@pytest.fixture
def example(page: Page) -> Page:
    page.evaluate(NOTED)
    paper_made(page)
    return page


@pytest.mark.parametrize("face", ["stakes", "paper"])
def test_the_menus_print_right_after_an_edit_has_one_sentence(example: Page, face: str) -> None:
    """On a desk the paper may stand beside the numbers while they change."""
    look_at(example, face)
    wait_for(example, "computed")
    example.emulate_media(media="print")
    before = example.evaluate("document.getElementById('face-paper').innerText")
    assert OLD in before and say("page.paper_wait") not in before
    assert example.evaluate(TYPED, NEW).strip() == say("page.paper_wait")
    paper = example.locator("#face-paper")
    example.wait_for_selector("html[data-paper]")
    assert NEW in paper.inner_text() and say("page.paper_wait") not in paper.inner_text()


@pytest.mark.parametrize("keys", ["Control+p", "Meta+P"])
def test_the_key_to_print_waits_for_the_paper_of_the_new_numbers(example: Page, keys: str) -> None:
    example.evaluate(TYPED, NEW)
    example.keyboard.press(keys)
    assert NEW in printed(example) and OLD not in printed(example)


def test_the_button_waits_for_it_too(example: Page) -> None:
    look_at(example, "paper")
    wait_for(example, "computed")
    example.evaluate(TYPED, NEW)
    example.locator("#print").click()
    assert NEW in printed(example) and OLD not in printed(example)


def test_who_prints_from_the_menu_too_early_has_the_paper_made_at_once(example: Page) -> None:
    example.evaluate(TYPED, NEW)
    example.evaluate("dispatchEvent(new Event('beforeprint'))")
    example.wait_for_selector("html[data-paper]")
    assert NEW in (example.locator("#paper").text_content() or "")


def test_other_keys_print_nothing(example: Page) -> None:
    for keys in ("p", "Control+Shift+p", "Control+k"):
        example.locator("body").press(keys)
    assert example.locator("html").get_attribute("data-printed") is None
