"""The page in the other engines: served, without a network, linked to, and as one saved file. One set of scenarios.

In Chromium all of that is held, and more, by the browser's own tests, but for the link that somebody reads in Spanish.
"""

from __future__ import annotations

from contextlib import closing
from pathlib import Path

from bowstring import answer, write_link
from bowstring.words import catalogue
from builder import serve
from builder.house import SITE
from builder.website import SAVED
from driving.drivers import ENGINES, PHONE, Driver

SIGN = "return document.documentElement.dataset.stale === undefined ? document.documentElement.dataset.sheet : 'stale'"
OFFLINE = "return document.documentElement.dataset.offline"
TYPE = """
  for (const [name, text] of Object.entries(arguments[0])) {
    const field = document.getElementById(name);
    field.focus();
    field.value = text;
    field.dispatchEvent(new InputEvent("input", { bubbles: true }));
  }
"""
CHOOSE = """
  for (const [name, value] of Object.entries(arguments[0])) {
    document.querySelector(`input[name='${name}'][value='${value}']`).click();
  }
"""
# Each face of the job but the numbers, turned to: it stands there once it has more than a word that it's being made.
FACES = ("stakes", "checks", "build", "paper", "why")
TURN = "document.querySelector(`[data-tab='${arguments[0]}']`).click()"
MADE = "return document.querySelector('#face-{face}:not([hidden]) #{face} > :not(.working)') !== null"
AWAKE = "delete document.documentElement.dataset.turned"  # a second tap right after the first does nothing
CARD = "return Number(document.querySelector('#stakes .card')?.dataset.card)"
APPENDIX = "document.getElementById('appendix').open = true"
WHOLE = "return document.querySelector('#sheet .part') !== null"
# Before anything of the page runs there is nothing to see: requests are listed by the browser itself.
ASKED = "return performance.getEntriesByType('resource').map((one) => one.name)"
# What would be saved as a file is looked at instead: how wide the picture is, how many of its dots are dark, painted
# small, its corner, and how many dots it says are to the meter.
CAUGHT = """
  const address = URL.createObjectURL;
  HTMLAnchorElement.prototype.click = () => {};
  window.painted = null;
  URL.createObjectURL = (blob) => {
    look(blob).then((told) => (window.painted = told), (reason) => (window.painted = String(reason)));
    return address.call(URL, blob);
  };
  async function look(blob) {
    const picture = await createImageBitmap(blob);
    const pen = Object.assign(document.createElement("canvas"), { width: 220, height: 260 }).getContext("2d");
    pen.drawImage(picture, 0, 0, 220, 260);
    const { data } = pen.getImageData(0, 0, 220, 260);
    let dark = 0;
    for (let at = 0; at < data.length; at += 4) if (data[at] < 128) dark += 1;
    const density = new DataView(await blob.arrayBuffer()).getUint32(41);
    return [picture.width, dark, [...data.slice(0, 4)], density];
  }
"""
JOB = {
    "bowstring": 1,
    "arc": {"radius": "62' 6\"", "chord": "41' 3\""},
    "drawn_to": "face",
    "side": "right",
    "tolerance": "1/4 in",
    "method": "halving",
}

ENDS = {"A": "post", "B": "pier"}


def do_the_job(driver: Driver) -> None:
    """Type a job by hand and read its numbers off its faces."""
    driver.run("document.getElementById('clear').click()")
    driver.run(TYPE, {"arc-radius": "62' 6\"", "arc-chord": "41' 3\"", "tolerance": "1/4 in"})
    driver.run(CHOOSE, {"drawn_to": "face", "side": "right", "method": "halving"})
    driver.until(SIGN, "computed")
    read_the_job(driver)


def read_the_job(driver: Driver) -> None:
    told = answer(JOB)
    for face in FACES:
        driver.run(TURN, face)
        driver.until(MADE.format(face=face), True)
        driver.until(SIGN, "computed")
    driver.run(TURN, "paper")
    driver.until(SIGN, "computed")
    driver.run(APPENDIX)
    driver.until(WHOLE, True)
    sheet = driver.run("return document.getElementById('sheet').textContent")
    for row in told["halving"]:  # type: ignore[attr-defined]
        assert row["sagitta_shown"] in sheet and row["half_chord_shown"] in sheet
    assert told["arc_shown"]["arc_length"] in sheet  # type: ignore[index]


def asks_nobody_else(driver: Driver, address: str) -> None:
    strangers = [name for name in driver.run(ASKED) if not name.startswith((address, "data:", "blob:"))]
    assert strangers == []


def test_a_day_with_one_visit_and_then_no_network_and_the_saved_page(driver: Driver) -> None:
    """In one browser, for its start is what takes long."""
    one_visit_and_then_no_network(driver)
    the_saved_page_from_a_disk(driver)


def test_in_chromium_too_from_a_received_link_to_the_last_stake_in_spanish(tmp_path: Path) -> None:
    """The rest of a day in Chromium is held by the browser's own tests."""
    with closing(ENGINES["chromium"][0](tmp_path, PHONE)) as driver:
        with serve.served(SITE) as address:
            driver.go(address)
            driver.until(SIGN, "computed")
            driver.run(TYPE, {"arc-radius": "62' 6\"", "arc-chord": "41' 3\""})  # one's own work: the link asks first
            driver.until(OFFLINE, "ready")
        to_the_last_stake_in_spanish(driver, address)


def one_visit_and_then_no_network(driver: Driver) -> None:
    with serve.served(SITE) as address:
        driver.go(address)
        driver.until(SIGN, "computed")
        driver.run(TYPE, {"arc-chord": "47 6"})
        driver.until(SIGN, "refused")
        do_the_job(driver)
        driver.until(OFFLINE, "ready")
        asks_nobody_else(driver, address)
    if driver.lasting:
        driver.restart()
    driver.go(address)  # nobody serves it any more
    driver.until(SIGN, "computed")
    if driver.lasting:
        read_the_job(driver)
    else:
        do_the_job(driver)
    driver.run("location.hash = arguments[0]", write_link({**JOB, "title": "Somebody else"}))
    driver.until("return document.getElementById('offer').hidden", False)  # asked first: work stands there
    driver.run("document.getElementById('offer-open').click()")
    driver.until("return document.getElementById('job-name').textContent", "Somebody else")
    driver.until(SIGN, "computed")
    read_the_job(driver)
    to_the_last_stake_in_spanish(driver, address)


def to_the_last_stake_in_spanish(driver: Driver, address: str) -> None:
    """Who reads Spanish first opens a link from somebody else, with no network: the language is the reader's."""
    driver.run("localStorage.setItem('bowstring.2.language', 'spanish')")
    driver.go("about:blank")
    driver.go(address)
    driver.until("return document.documentElement.lang", "es")
    driver.until(SIGN, "computed")
    driver.run("location.hash = arguments[0]", write_link({**JOB, "title": "Received", "ends": ENDS}))
    driver.until("return document.getElementById('offer').hidden", False)
    driver.run("document.getElementById('offer-open').click()")
    driver.until("return document.getElementById('job-name').textContent", "Received")
    driver.run(TURN, "stakes")
    driver.until(MADE.format(face="stakes"), True)
    spanish, english = catalogue("spanish"), catalogue("english")
    tab = driver.run("return document.querySelector('[data-tab=stakes]').textContent.trim()")
    assert tab == spanish["page.face_stakes"]
    last = len(answer({**JOB, "ends": ENDS})["cards"])  # type: ignore[arg-type]
    for card in range(1, last + 1):
        driver.until(CARD, card)
        driver.until(SIGN, "computed")
        told = driver.run("return document.querySelector('#stakes .thumb').textContent")
        assert english["card.do.back"] not in told and spanish["card.do.back"] in told, card
        driver.run(AWAKE)
        driver.run(f"document.querySelector('#stakes [data-do={'done' if card < last else 'face'}]').click()")
    driver.until("return document.documentElement.dataset.face", "checks")
    driver.until(MADE.format(face="checks"), True)


def the_saved_page_from_a_disk(driver: Driver) -> None:
    driver.go(SAVED.as_uri())
    driver.until(SIGN, "computed")
    do_the_job(driver)
    hands_it_over(driver)
    asks_nobody_else(driver, "file:")
    driver.until(OFFLINE, "ready")


def hands_it_over(driver: Driver) -> None:
    """The link is copied, and the drawing is painted as a picture that isn't empty, with 300 dots to the inch."""
    driver.run("document.getElementById('menu').click(); document.getElementById('hand-over').open = true")
    driver.until("return document.getElementById('link-copy').disabled", False)
    driver.press("#link-copy")
    driver.until("return document.getElementById('link-said').textContent", catalogue("english")["page.desk_copied"])
    driver.run(CAUGHT)
    driver.press("[data-hand=files]")
    driver.until("return document.querySelector('[data-file=png]') !== null", True)
    driver.press("[data-file=png]")
    wide, dark, corner, density = driver.until_some("return window.painted")
    assert (wide, corner, density) == (round(190 / 25.4 * 300), [255, 255, 255, 255], round(300 / 0.0254))
    assert 300 < dark < 20_000
