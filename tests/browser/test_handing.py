"""Handing a job over from a phone, without a network: its code, its texts, its files, the device's own ways."""

from __future__ import annotations

import base64
import struct
from collections.abc import Iterator
from pathlib import Path

import ezdxf
import pytest
import zxingcpp
from playwright.sync_api import Browser, Page, expect

from bowstring import answer, read_link
from bowstring.demo import DEMO
from bowstring.sheet.messages import messages
from page_acting import look_at, open_desk, type_in, wait_for
from pictures import dots_of, parts_of
from started_page import StartedPage

SHARES = "window.shared = []; navigator.share = async (what) => { window.shared.push(what); };"
# How many of a picture's dots are dark, and how many there are, painted small.
DARK = """async (text) => {
  const bytes = Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0));
  const picture = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
  const canvas = Object.assign(document.createElement("canvas"), { width: 220, height: 260 });
  const pen = canvas.getContext("2d");
  pen.drawImage(picture, 0, 0, 220, 260);
  const { data } = pen.getImageData(0, 0, 220, 260);
  let dark = 0;
  for (let at = 0; at < data.length; at += 4) if (data[at] < 128) dark += 1;
  return [dark, data[0], data[1], data[2], data[3]];
}"""


@pytest.fixture(scope="module")
def sharing(chromium: Browser, site_url: str) -> Iterator[StartedPage]:
    options = {"viewport": {"width": 360, "height": 740}, "device_scale_factor": 2, "has_touch": True}
    started = StartedPage(chromium, site_url, before=SHARES, **options)
    yield started
    started.close()


@pytest.fixture
def desk(sharing: StartedPage, faults: list[str], request: pytest.FixtureRequest) -> Iterator[Page]:
    """A phone with the example, everything loaded, the network gone, and the panel of the jobs open."""
    for page in sharing.in_turn(faults, request):
        page.evaluate("window.shared.length = 0")
        open_desk(page)
        expect(page.locator("#link-copy")).to_be_enabled()
        page.context.set_offline(True)
        page.context.grant_permissions(["clipboard-read", "clipboard-write"])
        yield page


def hand(page: Page, what: str) -> None:
    page.click(f"[data-hand={what}]")
    expect(page.locator("#handed > *").first).to_be_visible()


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_the_code_on_the_screen_is_read_by_another_decoder(desk: Page, scheme: str) -> None:
    desk.emulate_media(color_scheme=scheme)  # type: ignore[arg-type]
    hand(desk, "qr")
    code = desk.locator("#handed .qr")
    box = code.bounding_box()
    assert box and box["width"] == box["height"] == 360, "as wide as the phone"
    (found,) = zxingcpp.read_barcodes(dots_of(code.screenshot()))
    assert found.text == desk.locator("#link-text").input_value()
    assert read_link(found.text)["arc"] == DEMO["arc"]
    assert desk.evaluate("document.documentElement.scrollWidth") <= 360


def test_each_text_is_copied_as_it_stands(desk: Page) -> None:
    hand(desk, "messages")
    wanted = messages(answer(DEMO))
    buttons = desk.locator("#handed [data-copy]")
    expect(buttons).to_have_count(len(wanted))
    for number in (0, len(wanted) - 1):
        buttons.nth(number).click()
        desk.wait_for_selector("#link-said:not(:empty)")
        assert desk.evaluate("navigator.clipboard.readText()") == wanted[number]


def test_the_link_goes_to_the_device_s_own_ways(desk: Page) -> None:
    desk.click("#link-share")
    link = desk.locator("#link-text").input_value()
    assert desk.evaluate("window.shared") == [{"title": DEMO["title"], "url": link}]
    desk.click("#link-copy")
    desk.wait_for_selector("#link-said:not(:empty)")
    assert desk.evaluate("navigator.clipboard.readText()") == link


def test_what_was_handed_over_goes_when_the_job_changes(desk: Page) -> None:
    hand(desk, "qr")
    desk.context.set_offline(False)  # a browser asks for the page's icon at each new place
    look_at(desk, "numbers")
    type_in(desk, "arc-chord", "39 ft")
    wait_for(desk, "computed")
    expect(desk.locator("#handed > *")).to_have_count(0)


def test_the_files_are_saved_without_a_network(desk: Page, tmp_path: Path) -> None:
    hand(desk, "files")
    saved = {}
    for button in desk.locator("#handed [data-file]").all():
        kind = button.get_attribute("data-file") or ""
        with desk.expect_download() as download:
            button.click()
        saved[kind] = tmp_path / kind
        download.value.save_as(saved[kind])
    points = ezdxf.readfile(saved["dxf"]).modelspace().query("POINT")
    assert len(points) == len(answer(DEMO)["stakes"])
    assert saved["instrument-n-e"].read_text("utf-8").startswith("name,y ft,x ft")
    assert saved["svg"].read_text("utf-8").startswith("<svg")
    picture = saved["png"].read_bytes()
    parts = dict(parts_of(picture))
    assert struct.unpack(">II", parts["IHDR"][:8])[0] == round(190 / 25.4 * 300)
    assert struct.unpack(">IIB", parts["pHYs"]) == (round(300 / 0.0254), round(300 / 0.0254), 1)
    dark, *corner = desk.evaluate(DARK, base64.b64encode(picture).decode())
    assert corner == [255, 255, 255, 255] and 300 < dark < 20_000
