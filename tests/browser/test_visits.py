"""A first visit: nothing is fetched twice, and a network that dies at any file leaves a page that works and says so."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable
from pathlib import Path

from playwright.sync_api import BrowserContext, Page, expect

from bowstring.words import say
from builder import serve
from changing_site import ChangingSite
from page_acting import PATIENCE, open_desk, type_in, wait_for

# Register the service worker anew and wait for how it ends; tell that, and the caches that are left.
INSTALL = """async () => {
  for (const old of await navigator.serviceWorker.getRegistrations()) await old.unregister();
  const registration = await navigator.serviceWorker.register("./sw.js", { updateViaCache: "none" });
  const worker = registration.installing ?? registration.waiting ?? registration.active;
  while (!["redundant", "activated"].includes(worker.state)) await new Promise((done) => setTimeout(done, 10));
  return [worker.state, await caches.keys()];
}"""
LARGE = 30_000_000


def test_nothing_is_fetched_twice(profile: Callable[..., BrowserContext], site: Path) -> None:
    sent: Counter[str] = Counter()

    class Counting(serve.SiteHandler):
        def log_request(self, code: object = "-", size: object = "-") -> None:
            if str(code).startswith("200"):
                sent[self.path] += 1

    with serve.served(site, Counting) as url:
        page = profile("visitor", url).new_page()
        page.goto(url)
        wait_for(page, "computed")
        page.wait_for_selector("html[data-offline=ready]", timeout=PATIENCE)
        names = re.findall(r'^ "([^"]+)": "sha256-', (site / "sw.js").read_text("utf-8"), re.MULTILINE)
        assert len(names) > 8 and set(names) <= {name.removeprefix("/") or "./" for name in sent}
        assert {name: times for name, times in sent.items() if times > 1} == {}
        before = sum(sent.values())
        page.reload()
        wait_for(page, "computed")
        assert sum(sent.values()) - before <= 1  # but for a look whether there is a newer version


def test_a_network_that_dies_at_a_file_of_the_first_visit_leaves_nothing_half_there(
    profile: Callable[..., BrowserContext], site: Path, tmp_path: Path, faults: list[str]
) -> None:
    changing = ChangingSite(site, tmp_path)
    sw = (changing.folder / "sw.js").read_text("utf-8")
    names = re.findall(r'^ "([^"]+)": "sha256-', sw, re.MULTILINE)
    with serve.served(changing.folder) as url:
        context = profile("visitor", url)
        page = context.new_page()
        # Its own try comes to nothing, so that each of these is a first one.
        (changing.folder / "icon.svg").rename(changing.folder / "away")
        page.goto(url)
        wait_for(page, "computed")
        expect(page.locator("#offline")).to_have_text(say("page.offline_failed"), timeout=PATIENCE)
        (changing.folder / "away").rename(changing.folder / "icon.svg")
        # One of each kind: that each file is among those that are taken whole or not at all is held above.
        parts = [
            next(name for name in names if name.endswith(end)) for end in ("./", "180.png", "page.js", ".wasm", ".zip")
        ]
        for name in parts:
            file = changing.folder / ("index.html" if name == "./" else name)
            file.rename(changing.folder / "away")
            state, left = page.evaluate(INSTALL)
            (changing.folder / "away").rename(file)
            assert (state, left) == ("redundant", []), name
        type_in(page, "arc-chord", "41 ft")
        wait_for(page, "computed")  # the page in hand has worked on
        assert page.evaluate(INSTALL)[0] == "activated"
        page.reload()
        wait_for(page, "computed")
        assert page.locator("#arc-chord").input_value() == "41 ft"
        page.wait_for_selector("html[data-offline=ready]", timeout=PATIENCE)
    assert [fault for fault in faults if "404" not in fault] == []
    faults.clear()


def test_a_wrong_clock_changes_nothing(open_page: Callable[..., Page]) -> None:
    page = open_page(before_goto=lambda context: context.clock.set_system_time("1970-01-02T12:00:00Z"))
    wait_for(page, "computed")
    type_in(page, "arc-chord", "41 ft")
    wait_for(page, "computed")
    open_desk(page)
    expect(page.locator("#job-list li")).to_contain_text("1970")
    page.context.clock.set_system_time("2106-02-08T12:00:00Z")  # a day after the last that 32 bits can count
    page.reload()
    wait_for(page, "computed")
    assert page.locator("#arc-chord").input_value() == "41 ft"
    type_in(page, "arc-chord", "42 ft")
    wait_for(page, "computed")
    open_desk(page)
    expect(page.locator("#job-list li")).to_have_count(1)
    expect(page.locator("#job-list li")).to_contain_text("2106")


def test_a_file_that_is_no_job_for_its_size_or_its_version_is_refused_at_once(page: Page, tmp_path: Path) -> None:
    type_in(page, "arc-chord", "41 ft")
    wait_for(page, "computed")
    large = tmp_path / "large.json"
    large.write_bytes(b'{"bowstring": 1, "title": "' + b"x" * LARGE + b'"}')
    newer = tmp_path / "newer.json"
    newer.write_text('{"bowstring": 2, "arc": {"chord": "40 ft", "sagitta": "5 ft"}}', "utf-8")
    half = tmp_path / "half.json"
    half.write_text('{"bowstring": 1, "arc": {"chord": "40 ft", "sag', "utf-8")
    for file in (large, newer, half):
        page.set_input_files("#file-in", file)
        expect(page.locator("#open-wrong")).not_to_be_empty()
        expect(page.locator("#offer")).to_be_hidden()
        assert page.locator("#arc-chord").input_value() == "41 ft"
    page.set_input_files("#file-in", large)
    expect(page.locator("#open-wrong")).to_have_text(say("page.desk_file_large"))
    type_in(page, "arc-chord", "42 ft")
    wait_for(page, "computed")
