"""Starting where something is amiss: each way in which the start can fail has its sentence, and none loses the work."""

from __future__ import annotations

import io
import marshal
import re
import zipfile
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, Route, expect

from bowstring.words import say
from builder import dress
from builder.inside.compile import FIRST
from page_acting import sign, type_in, wait_for

PARTS = ("worker.js", "pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm", "library.zip")


@pytest.mark.parametrize("part", PARTS)
def test_a_part_that_doesn_t_come_is_told_and_nothing_is_shown_as_an_answer(
    open_page: Callable[..., Page], faults: list[str], part: str
) -> None:
    page = open_page(missing=f"**/{part}")
    expect(page.locator("#trouble")).to_contain_text(say("host.unreachable"))
    expect(page.locator("#trouble code")).to_contain_text(part)
    expect(page.locator("#status")).to_have_text(say("page.status_failed"))
    assert sign(page) == "prebuilt"
    type_in(page, "arc-chord", "50 ft")
    type_in(page, "arc-sagitta", "6 ft")
    expect(page.locator("#status")).to_have_text(say("page.status_failed"))
    expect(page.locator("#arc-radius")).to_have_attribute("placeholder", "")
    expect(page.locator(".card, article.paper, .folds, #sheet > *")).to_have_count(0)
    assert sign(page) == "prebuilt"
    faults.clear()  # the request that was stopped may have been told in the console
    if part != "library.zip":
        return
    page.context.unroute_all()
    page.reload()
    wait_for(page, "computed")
    assert page.locator("#arc-chord").input_value() == "50 ft"


def test_the_rest_that_doesn_t_come_is_told_and_comes_with_the_next_start(
    open_page: Callable[..., Page], faults: list[str]
) -> None:
    page = open_page(missing="**/rest.bin")
    expect(page.locator("#trouble")).to_contain_text(say("host.unreachable"))
    expect(page.locator("#trouble code")).to_contain_text("rest.bin")
    expect(page.locator("#status")).to_have_text(say("page.status_failed"))
    type_in(page, "arc-chord", "50 ft")
    type_in(page, "arc-sagitta", "6 ft")
    page.locator("[data-tab=stakes]").click()
    expect(page.locator(".card, article.paper, .folds, #sheet > *")).to_have_count(0)
    faults.clear()  # the request that was stopped may have been told in the console
    page.context.unroute_all()
    page.reload()
    expect(page.locator(".card")).to_be_visible()
    assert page.locator("#arc-chord").input_value() == "50 ft"


def test_a_browser_without_webassembly_is_told_so(open_page: Callable[..., Page]) -> None:
    page = open_page(before="delete globalThis.WebAssembly")
    expect(page.locator("#trouble")).to_contain_text(say("page.trouble_no_wasm"))
    type_in(page, "arc-chord", "50 ft")
    page.reload()
    assert page.locator("#arc-chord").input_value() == "50 ft"


def test_a_browser_too_old_for_the_script_is_told_so(open_page: Callable[..., Page], faults: list[str]) -> None:
    def unchecked(route: Route) -> None:
        answered = route.fetch()
        route.fulfill(response=answered, body=re.sub(' integrity="[^"]*"', "", answered.text()))

    # The file is the one that was published: what the page has it compared with later is that.
    def older(route: Route) -> None:
        if route.request.resource_type == "script":
            route.fulfill(content_type="text/javascript", body="const new from the future")
        else:
            route.continue_()

    def published(context: BrowserContext) -> None:
        context.route(re.compile("/$"), unchecked)
        context.route("**/page.js", older)

    page = open_page(before_goto=published)
    expect(page.locator("#trouble")).to_contain_text(say("page.trouble_old"))
    expect(page.locator(".late")).to_be_hidden()
    faults.clear()


def test_a_browser_that_runs_no_script_of_the_page_says_so_after_some_seconds(open_page: Callable[..., Page]) -> None:
    def without_scripts(route: Route) -> None:
        answered = route.fetch()
        route.fulfill(response=answered, body=re.sub("<script.*?</script>", "", answered.text(), flags=re.DOTALL))

    page = open_page(before_goto=lambda context: context.route(re.compile("/$"), without_scripts))
    late = page.locator(".late")
    assert late.evaluate("said => parseFloat(getComputedStyle(said).animationDelay)") <= 5
    late.evaluate("said => said.getAnimations().forEach((wait) => wait.finish())")
    expect(late).to_be_visible()
    expect(late).to_have_text(say("page.not_started"))


def test_a_wasm_file_under_a_wrong_type_starts_all_the_same(open_page: Callable[..., Page], site: Path) -> None:
    def mistyped(route: Route) -> None:
        (file,) = site.glob("v-*/pyodide/pyodide.asm.wasm")
        route.fulfill(content_type="text/plain", body=file.read_bytes())

    page = open_page(before_goto=lambda context: context.route("**/*.wasm", mistyped))
    wait_for(page, "computed")
    expect(page.locator("#status")).to_have_text(say("numbers.state_missing_2"))
    expect(page.locator("#trouble")).to_be_hidden()


def without(held: bytes, name: str) -> bytes:
    """Return a piece of the library that lacks a module."""
    modules = marshal.loads(held)
    del modules[name]
    return marshal.dumps(modules, 2)


def test_a_module_that_the_prepared_library_lacks_is_fetched_and_told_once(
    open_page: Callable[..., Page], site: Path
) -> None:
    (folder,) = site.glob("v-*/python")
    whole = {name: (folder / name).read_bytes() for name in ("library.zip", "rest.bin")}
    made = io.BytesIO()
    with zipfile.ZipFile(folder / "library.zip") as archive, zipfile.ZipFile(made, "w") as lacking:
        for name in archive.namelist():
            content = archive.read(name)
            lacking.writestr(name, without(content, "fractions") if name == FIRST else content)
    # A module that the first face needs, and one inside a package that drawings need.
    cut = {"library.zip": made.getvalue(), "rest.bin": without(whole["rest.bin"], "xml.etree.ElementPath")}

    def lacking_one(route: Route) -> None:
        route.fulfill(body=cut[route.request.url.split("/")[-1]])

    def worker(route: Route) -> None:
        (script,) = site.glob("v-*/worker.js")
        text = script.read_text("utf-8")
        for name, content in whole.items():  # it takes no library but the one that it knows
            text = text.replace(dress.integrity(content), dress.integrity(cut[name]))
        route.fulfill(content_type="text/javascript", body=text)

    def published(context: BrowserContext) -> None:
        for name in whole:
            context.route(f"**/{name}", lacking_one)
        context.route("**/worker.js", worker)

    page = open_page(before_goto=published)
    wait_for(page, "computed")
    expect(page.locator("#lacked")).to_contain_text(say("page.lacked"))
    type_in(page, "arc-chord", "43 ft")
    type_in(page, "arc-sagitta", "4 ft")
    wait_for(page, "computed")
    expect(page.locator("#live")).to_be_visible()
