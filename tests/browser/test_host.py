"""A host that doesn't send what was published: the page says what is wrong, and heals once that's mended."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, expect

from bad_host import BadHost, host, mend
from bowstring.words import say
from builder import serve
from page_acting import PATIENCE, type_in, wait_for

# What a browser may keep for a year it asks nobody for: what it got once stays, unless the page has it fetched anew.
A_YEAR = "public, max-age=31536000, immutable"
NOON = "2027-03-01T12:00:00Z"
REST = "rest.bin"
FAULTS = [
    ("mistyped", (".js", ".mjs"), "type"),
    ("missing", "/v-", "missing"),
    ("damaged", "page.js", "damaged"),
    ("damaged", "worker.js", "damaged"),
    ("damaged", ".wasm", "damaged"),
    ("damaged", "library.zip", "damaged"),
    ("damaged", REST, "damaged"),
]
# Harm one file as the device holds it: a byte of it, or its type.
HARM = """async ([end, type]) => {
  const cache = await caches.open((await caches.keys())[0]);
  const request = (await cache.keys()).find(({ url }) => url.endsWith(end));
  const kept = await cache.match(request);
  const bytes = new Uint8Array(await kept.arrayBuffer());
  if (!type) bytes[bytes.length >> 1] ^= 0x55;
  const headers = { "content-type": type || kept.headers.get("content-type") };
  await cache.put(request, new Response(type === "half" ? bytes.slice(0, 400) : bytes, { headers }));
}"""


@contextmanager
def visitor(chromium: Browser, folder: Path, kind: type[BadHost]) -> Iterator[tuple[BrowserContext, str]]:
    """Serve a folder by a bad host; gives a browser's context of its own, of a phone's size, and the address."""
    with serve.served(folder, kind) as url:
        context = chromium.new_context(viewport={"width": 360, "height": 740})
        context.set_default_timeout(PATIENCE)
        yield context, url
        context.close()


def ready(page: Page) -> bool:
    return page.locator("html").get_attribute("data-offline") == "ready"


@pytest.mark.parametrize(
    ("harm", "ends", "kind"), FAULTS, ids=["type", "folder", "page", "worker", "core", "library", "rest"]
)
def test_what_is_wrong_with_the_host_is_told_at_once_and_is_over_once_it_is_mended(
    chromium: Browser, site: Path, harm: str, ends: str | tuple[str, ...], kind: str
) -> None:
    bad = host(A_YEAR)
    setattr(bad, harm, staticmethod(lambda path: ends in path if harm == "missing" else path.endswith(ends)))
    with visitor(chromium, site, bad) as (context, url):
        context.clock.install(time=NOON)
        page = context.new_page()
        if ends != REST:  # which comes after the first answer
            page.clock.pause_at("2027-03-02T12:00:00Z")  # nothing waits for a time: the page's clock stands still
        page.goto(url)
        trouble = page.locator("#trouble")
        expect(trouble).to_contain_text(say(f"host.{kind}"))
        expect(trouble.locator("code")).to_contain_text("v-")
        expect(trouble).to_be_in_viewport()
        expect(page.locator("#status")).to_have_text(say("page.status_failed"))
        assert not ready(page) and say("page.offline_ready") not in page.locator("#offline").inner_text()
        mend(bad)
        page.clock.resume()
        page.reload()
        wait_for(page, "computed")
        expect(trouble).to_be_hidden()


def test_scripts_of_a_wrong_type_run_from_the_device_which_has_them_with_the_right_one(
    chromium: Browser, site: Path
) -> None:
    bad = host()
    bad.mistyped = staticmethod(lambda path: path.endswith(".mjs"))  # type: ignore[assignment]
    with visitor(chromium, site, bad) as (context, url):
        page = context.new_page()
        page.goto(url)
        wait_for(page, "computed")
        page.wait_for_selector("html[data-offline=ready]")
        expect(page.locator("#trouble")).to_be_hidden()
        type_in(page, "arc-chord", "41 ft")
        wait_for(page, "computed")
        page.reload()
        wait_for(page, "computed")
        assert page.locator("#arc-chord").input_value() == "41 ft"


def test_a_script_that_never_comes_is_told_before_five_seconds_are_over(open_page: Callable[..., Page]) -> None:
    def before(context: BrowserContext) -> None:
        context.clock.install(time=NOON)
        context.route("**/page.js", lambda route: None)

    page = open_page(before_goto=before, path="#nothing", wait_until="commit")
    page.wait_for_selector("#words", state="attached")
    page.clock.fast_forward(4500)
    expect(page.locator("#trouble")).to_contain_text(say("host.late"))
    page.context.unroute_all(behavior="ignoreErrors")


def test_what_is_harmed_on_the_device_is_fetched_anew(chromium: Browser, site: Path) -> None:
    bad = host()
    with visitor(chromium, site, bad) as (context, url):
        page = context.new_page()
        page.goto(url)
        page.wait_for_selector("html[data-offline=ready]")
        for end, type_ in (("page.js", ""), ("library.zip", ""), ("pyodide.mjs", "text/plain")):
            page.evaluate(HARM, [end, type_])
            page.reload()
            wait_for(page, "computed")
            page.wait_for_selector("html[data-offline=ready]")
            expect(page.locator("#trouble")).to_be_hidden()

        page.evaluate(HARM, ["/", "half"])  # the page itself, of which nothing runs: the next visit has it again
        page.reload()
        page.wait_for_selector("html:not([data-up])", state="attached")
        page.goto("about:blank")
        page.goto(url)
        wait_for(page, "computed")

        # Harmed, and the host is gone: then it doesn't say that it works without one.
        page.wait_for_selector("html[data-offline=ready]")
        page.evaluate(HARM, ["library.zip", ""])
        bad.missing = staticmethod(lambda path: True)  # type: ignore[assignment]
        page.reload()
        expect(page.locator("#trouble")).to_contain_text(say("host.missing"), timeout=PATIENCE)
        expect(page.locator("#offline")).to_have_text(say("page.offline_dead"), timeout=PATIENCE)
        assert not ready(page)
        mend(bad)
        page.reload()
        wait_for(page, "computed")
        page.wait_for_selector("html[data-offline=ready]")
