"""What comes from strangers: bad links and files are refused with a sentence, and nothing in a good one ever runs."""

from __future__ import annotations

import json
import random
from collections.abc import Callable, Iterator
from typing import Any

from playwright.sync_api import Page, expect

from bowstring import write_link
from bowstring.page.facing import FACES
from page_acting import look_at, open_desk, sheet_of, type_in, wait_for

JOB: dict[str, Any] = {
    "bowstring": 1,
    "title": "Lodge drive",
    "arc": {"chord": "44 ft", "sagitta": "6 ft"},
    "ends": {"A": "post", "B": "pier"},
    "side": "left",
}
EVIL = "<img src=x onerror=hit()><script>hit()</script>"
SHORT_EVIL = "<svg onload=hit()>\"'><b>"


# Types each link, presses the button and waits for what is said: in the page, for hundreds of ways there take long.
OPEN_ALL = """async (links) => {
  const at = (id) => document.getElementById(id);
  const told = [];
  for (const link of links) {
    at("link-in").value = link;
    at("link-open").click(); // what was said of the one before is taken back at once
    const until = Date.now() + 60_000;
    while (!at("open-wrong").textContent && Date.now() < until) await new Promise((next) => setTimeout(next, 2));
    told.push(at("open-wrong").textContent);
  }
  return told;
}"""


def bad_links() -> Iterator[str]:
    """Every cut of a good link, and changed, dropped, added and swapped characters all over it; and no links at all."""
    link = write_link(JOB)
    yield from (link[:length] for length in range(1, len(link)))
    chance = random.Random(811)
    for place in range(0, len(link), 2):
        other = chance.choice([sign for sign in "abcXYZ019-_" if sign != link[place]])
        yield link[:place] + other + link[place + 1 :]
        yield link[:place] + link[place + 1 :] + ("" if link[place] != link[-1] else "x")
        if place:  # what stands before a link is no part of it
            yield link[:place] + other + link[place:]
    for place in range(0, len(link) - 1, 3):
        if link[place] != link[place + 1]:
            yield link[:place] + link[place + 1] + link[place] + link[place + 2 :]
    yield from ("b1" + link[2:], "b9" + link[2:], "https://example.org/", "javascript:hit()", "b1", "b2", "#", EVIL)
    yield from (form * 20_000 for form in ("b1", "b2"))


def bad_files() -> Iterator[str]:
    """Texts that aren't jobs, and jobs with one thing wrong."""
    yield from ("", "null", "[]", "7", '"b1"', "{", "{}", '{"arc": {"chord": 1, "chord": 2}}', "\x00", "[" * 50_000)
    yield json.dumps({**JOB, "bowstring": 2})
    yield json.dumps({**JOB, "title": "x" * 81})
    yield json.dumps({**JOB, "title": "dro\u202eev"})
    yield json.dumps({**JOB, "note": "a\x1b[2Jb"})
    yield json.dumps({**JOB, "side": EVIL})
    yield json.dumps({**JOB, EVIL: 1})
    yield json.dumps({**JOB, "__proto__": {"title": "x"}})
    for value in (True, [], {}, "7 bananas", "1e999", -4, 0, "NaN", EVIL, "40' 13\""):
        yield json.dumps({**JOB, "arc": {"chord": value, "sagitta": "6 ft"}})


# Every job as it is kept; the face that was shown last comes a moment later.
KEPT = "JSON.stringify(Object.entries(localStorage).filter(([name]) => name !== 'bowstring.2.last').sort())"


# The last value is none that would be called.
WATCH = "window.hits = []; window.hit = window.alert = (...words) => hits.push(words.join()); 0"


def hits(page: Page) -> list[str]:
    """What has run on the page, or spoken, since it was watched."""
    found: list[str] = page.evaluate("window.hits")
    return found


def test_two_hundred_bad_links_and_files_are_refused_and_leave_the_work_alone(page: Page) -> None:
    page.evaluate(WATCH)
    wait_for(page, "computed")
    type_in(page, "arc-chord", "45 ft")
    wait_for(page, "computed")
    before = sheet_of(page)
    open_desk(page)
    kept = page.evaluate(KEPT)
    wrong = page.locator("#open-wrong")
    links, files = list(dict.fromkeys(bad_links())), list(dict.fromkeys(bad_files()))
    assert len(links) + len(files) >= 200
    for link, told in zip(links, page.evaluate(OPEN_ALL, links), strict=True):
        assert len(told.split()) >= 4, link[:60]
    for text in files:
        page.set_input_files("#file-in", {"name": "job.json", "mimeType": "application/json", "buffer": text.encode()})
        page.wait_for_selector("#open-wrong:not(:empty)")
        assert len(wrong.inner_text().split()) >= 4, text[:60]
    page.set_input_files("#file-in", {"name": "big.json", "mimeType": "application/json", "buffer": b" " * 3_000_000})
    page.wait_for_selector("#open-wrong:not(:empty)")
    expect(page.locator("#offer")).to_be_hidden()
    assert page.locator("#arc-chord").input_value() == "45 ft"
    assert sheet_of(page) == before
    assert page.evaluate(KEPT) == kept
    assert hits(page) == []


def test_markup_in_every_text_is_shown_and_never_run(page: Page) -> None:
    job = {
        **JOB,
        "title": EVIL,
        "note": EVIL,
        "ends": {"A": SHORT_EVIL, "B": SHORT_EVIL + "2"},
        "ties": {end: [{"to": SHORT_EVIL + str(row), "distance": "3 ft"} for row in range(2)] for end in "AB"},
    }
    open_desk(page)
    page.click("#clear")
    page.evaluate(WATCH)
    page.evaluate(f"location.hash = '{write_link(job)}'")
    expect(page.locator("#job-name")).to_have_text(EVIL)
    wait_for(page, "computed")
    for face in FACES:
        look_at(page, face)
        wait_for(page, "computed")
        expect(page.locator(f"#{face} > *")).not_to_have_count(0)
        for fold in page.locator("#why .fold").all() if face == "why" else ():
            fold.evaluate("fold => (fold.open = true)")
            expect(fold.locator(".in > *")).to_have_count(1)
        nothing_of_it_is_there(page)
    assert EVIL in page.locator("#paper").inner_text() and EVIL in sheet_of(page)
    nothing_of_it_is_there(page)
    open_desk(page)
    expect(page.locator("#job-list")).to_contain_text(EVIL)
    page.evaluate(f"location.hash = '{write_link({**job, 'title': EVIL + '2'})}'")
    expect(page.locator("#offer-title")).to_have_text(EVIL + "2")
    assert page.pdf().startswith(b"%PDF")
    nothing_of_it_is_there(page)


def nothing_of_it_is_there(page: Page) -> None:
    """No element or handler has come of what was typed, and nothing of it has run."""
    assert page.locator("main").locator("script, img, iframe, [onload], [onerror]").count() == 0
    assert hits(page) == []


def test_the_policy_stops_what_markup_would_do_if_it_ever_got_in(
    open_page: Callable[..., Page], faults: list[str], site_url: str
) -> None:
    page = open_page()
    page.evaluate(WATCH)
    failures: dict[str, str | None] = {}
    page.on("requestfailed", lambda request: failures.update({request.url: request.failure}))
    wait_for(page, "computed")
    injected = [
        "<img src=x onerror=hit()>",
        "<svg onload=hit()></svg>",
        "<iframe srcdoc='<script>parent.hit()</script>'></iframe>",
        "<iframe src='javascript:parent.hit()'></iframe>",
        "<a id=trap href='javascript:hit()'>x</a>",
        "<form action='https://example.org/'><button id=trap-send>x</button></form>",
        "<object data='data:text/html,<script>parent.hit()</script>'></object>",
        "<img src='https://example.org/seen.png'>",
        "<style>@import 'https://example.org/seen.css'; body { display: none }</style>",
        "<base href='https://example.org/'>",
    ]
    for text in injected:
        page.evaluate("text => { document.getElementById('sheet').insertAdjacentHTML('beforeend', text); }", text)
    page.evaluate("""() => {
        const script = document.createElement('script');
        script.textContent = 'hit()';
        document.body.append(script);
        fetch('https://example.org/').catch(() => {});
    }""")
    for trap in ("#trap", "#trap-send"):
        page.locator(trap).evaluate("element => element.click()")
    page.wait_for_timeout(1000)
    assert hits(page) == []
    assert page.url.startswith(site_url)
    assert page.locator("body").is_visible()
    # What was tried stands in the console as refused; every request that was begun was ended by the policy.
    assert faults
    begun = [fault.removeprefix("request: ") for fault in faults if fault.startswith("request: ")]
    assert [url for url in begun if failures.get(url) != "csp"] == []
    faults.clear()
