"""The page before the faces, open or kept on a device, becomes today's: every job, every link and the place survive."""

from __future__ import annotations

import json
import shutil
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from bowstring import answer, read_link, write_link
from bowstring.page.fields import fields_of_job
from builder import dress, serve
from page_acting import PATIENCE, open_desk, wait_for

HERE = Path(__file__).parent
OLDER = "0.1.0+before"
ROWS: list[dict[str, Any]] = json.loads((HERE.parent / "unit" / "job" / "links_of_form_1.json").read_text("utf-8"))
LOOK_FOR_UPDATES = "document.dispatchEvent(new Event('visibilitychange'))"
KEPT = "prefix => Object.fromEntries(Object.entries(localStorage).filter(([key]) => key.startsWith(prefix)))"
# As version 0.1 kept them: where no method was named it halved; and what was taken down on the ground stands there.
WALK = {"title": "Old walk", "unit": "ft-in", "arc-chord": "38 ft", "arc-sagitta": "5' 3\"", "side": "left",
        "drawn_to": "face", "ends-A": "lamp post", "ties-A-0-to": "oak", "ties-A-0-distance": "21' 4\"",
        "ties-A-1-to": "shed", "ties-A-1-distance": "17'",
        "got-0-stake": "M", "got-0-sagitta": "5' 3-1/8\"", "tolerance": "1/2 in"}  # fmt: skip
PIT = {"title": "Old pit", "unit": "ft-in", "arc-radius": "12 ft", "arc-central_angle": "90", "method": "centre"}
FIRST = {"walkwalk1": WALK, "pitpitpit": PIT}
# And as the page before the faces kept them, every field text as it was: each kind of job that a link of form 1 held.
SECOND = {
    f"keptjob{number:03}": {**fields_of_job(row["job"]), "title": f"{number}: {row['what']}"}
    for number, row in enumerate(ROWS)
    if row["job"].get("levels") != "usual"
}
OPEN = "keptjob000"


def texts() -> dict[str, str]:
    """What stands in the device's storage, by its keys."""
    kept = {}
    for prefix, jobs in (("bowstring.1.", FIRST), ("bowstring.2.", SECOND)):
        for number, (name, fields) in enumerate(jobs.items()):
            kept[f"{prefix}job.{name}"] = json.dumps({"fields": fields, "edited": 1_700_000_000_000 + number})
    opened = {"bowstring.1.open": "walkwalk1", "bowstring.2.open": OPEN}
    return {**kept, **opened, "bowstring.1.sheet": json.dumps({"html": "<p>the whole sheet</p>"})}


class Device:
    """A device with the older page, its service worker and its jobs; ``publish`` puts today's page at its address."""

    def __init__(self, context: BrowserContext, folder: Path, site: Path, url: str) -> None:
        self.context, self.folder, self.site, self.url = context, folder, site, url
        self.page = self.opened("")
        self.page.evaluate("texts => keep(texts)", texts())

    def opened(self, link: str) -> Page:
        page = self.context.new_page()
        page.goto(f"{self.url}{link and '#'}{link}")
        page.wait_for_selector("html[data-offline=ready]", timeout=PATIENCE)
        return page

    def visited_again(self, link: str) -> Page:
        """Every window closed, and one opened. A browser lets go of closed windows when it gets to it: until then the
        older page stays, as under somebody's hands, and one closes again."""
        blank = self.context.new_page()
        until = time.monotonic() + PATIENCE / 1000
        while True:
            for one in self.context.pages:
                if one != blank:
                    one.close()
            page = self.opened(link)
            if not is_older(page) or time.monotonic() > until:
                return page
            blank.wait_for_timeout(250)

    def publish(self) -> None:
        shutil.rmtree(self.folder)
        shutil.copytree(self.site, self.folder, copy_function=shutil.copyfile)  # newer than what was there


@pytest.fixture
def device(profile: Callable[..., BrowserContext], site: Path, tmp_path: Path) -> Iterator[Device]:
    folder = tmp_path / "published"
    (folder / "v-before").mkdir(parents=True)
    page = (HERE / "before" / "index.html").read_text("utf-8").replace("@VERSION@", OLDER)
    (folder / "index.html").write_text(page, "utf-8")
    shutil.copyfile(HERE / "before" / "page.js", folder / "v-before" / "page.js")
    names = {"./": folder / "index.html", "v-before/page.js": folder / "v-before" / "page.js"}
    files = json.dumps({name: dress.integrity(file.read_bytes()) for name, file in names.items()})
    worker = (HERE / "before" / "sw.js").read_text("utf-8").replace("@VERSION@", OLDER).replace('"@FILES@"', files)
    (folder / "sw.js").write_text(worker, "utf-8")
    with serve.served(folder) as url:
        yield Device(profile("device", url), folder, site, url)


def is_older(page: Page) -> bool:
    return page.locator("html").get_attribute("data-version") == OLDER


def link_on(page: Page) -> str:
    open_desk(page)
    page.wait_for_selector("#link-copy:enabled", timeout=PATIENCE)
    return page.locator("#link-text").input_value()


def stakes_of(job: Any) -> list[Any]:
    return answer(job)["stakes"]  # type: ignore[return-value]


def every_job_is_there(page: Page) -> None:
    """In the storage as it was, and in the list; each of version 0.1 with what it meant."""
    before = page.evaluate(KEPT, "bowstring.1.job.")
    assert before == {key: text for key, text in texts().items() if key.startswith("bowstring.1.job.")}
    kept = {
        key.rsplit(".")[-1]: json.loads(text)["fields"] for key, text in page.evaluate(KEPT, "bowstring.2.job.").items()
    }
    assert {name: kept[name] for name in SECOND} == SECOND
    assert kept["walkwalk1"] == {**WALK, "method": "halving"}
    assert kept["pitpitpit"] == {**PIT, "centre": "reachable"}
    assert page.evaluate("localStorage['bowstring.1.sheet'] ?? null") is None, "it only takes room"
    open_desk(page)
    expect(page.locator("#job-list li")).to_have_count(len(kept))
    expect(page.locator("#job-list button:disabled")).to_have_count(0)


def opens_with_its_stakes(page: Page, title: str, job: Any) -> None:
    """A job of the list, opened: the same stakes as ever."""
    open_desk(page)
    page.locator("#job-list li").filter(has_text=title).locator("button").first.click()
    expect(page.locator("#title")).to_have_value(title)
    wait_for(page, "computed")
    assert stakes_of(read_link(link_on(page))) == stakes_of(job)


def test_an_open_page_turns_and_keeps_its_jobs_its_link_and_its_place(device: Device) -> None:
    row = ROWS[2]
    page = device.opened(row["link"])
    assert is_older(page)
    device.page.close()
    device.publish()
    page.evaluate(LOOK_FOR_UPDATES)
    expect(page.locator("#update")).to_be_visible(timeout=PATIENCE)
    with page.expect_navigation():
        page.click("#update-take")
    expect(page.locator("#title")).to_have_value(SECOND[OPEN]["title"])  # the job that was open
    assert not is_older(page)
    expect(page.locator("#offer-title")).to_have_text(row["job"]["title"])  # the link has waited in the address
    every_job_is_there(page)
    page.click("#offer-open")
    expect(page.locator("#title")).to_have_value(row["job"]["title"])
    wait_for(page, "computed")
    assert stakes_of(read_link(link_on(page))) == stakes_of(row["job"])
    opens_with_its_stakes(page, "Old pit", {"bowstring": 1, "arc": {"radius": "12 ft", "central_angle": "90"},
                                            "method": "centre", "centre": "reachable"})  # fmt: skip


def test_a_page_on_the_device_is_today_s_at_the_next_visit_and_works_without_a_network(device: Device) -> None:
    device.context.set_offline(True)
    assert is_older(device.opened(""))
    device.context.set_offline(False)
    device.publish()
    page = device.opened("")
    assert is_older(page), "never under somebody's hands"
    page.evaluate(LOOK_FOR_UPDATES)
    expect(page.locator("#update")).to_be_visible(timeout=PATIENCE)
    job = {**ROWS[6]["job"], "title": "Sent on"}
    page = device.visited_again(write_link(job))
    assert not is_older(page)
    assert page.evaluate("caches.keys()") == [f"bowstring-{page.locator('html').get_attribute('data-version')}"]
    device.context.set_offline(True)
    page.reload()
    expect(page.locator("#title")).to_have_value(SECOND[OPEN]["title"])
    expect(page.locator("#offer-title")).to_have_text("Sent on")
    page.click("#offer-leave")
    wait_for(page, "computed")
    every_job_is_there(page)
    assert stakes_of(read_link(link_on(page))) == stakes_of({**ROWS[0]["job"], "title": SECOND[OPEN]["title"]})
    opens_with_its_stakes(page, "Old walk", {
        "bowstring": 1, "arc": {"chord": "38 ft", "sagitta": "5' 3\""}, "side": "left", "drawn_to": "face",
        "method": "halving", "tolerance": "1/2 in", "got": [{"stake": "M", "sagitta": "5' 3-1/8\""}],
    })  # fmt: skip
