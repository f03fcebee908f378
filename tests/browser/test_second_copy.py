"""Work kept twice: where the first copy can't be used, for any reason, the second one is; and odd ones do no harm."""

from __future__ import annotations

import json
from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

from bowstring.words import say
from page_acting import open_desk, type_in, wait_for

KEY = "bowstring.2.job."
FAR = 9e15
# What the first copy is when the page comes up again: a script that has the job's key in `key`.
SPOILT = {
    "gone": "localStorage.removeItem(key)",
    "no json": 'localStorage[key] = \'{"fields": {"arc-chord"\'',
    "another shape": f'localStorage[key] = JSON.stringify({{ fields: ["44 ft"], edited: {FAR} }})',
    "nothing in it": "localStorage[key] = ''",
    "a number": 'localStorage[key] = JSON.stringify({ fields: { "arc-chord": 44 }, edited: Date.now() + 1000 })',
    "which one was open": 'localStorage["bowstring.2.open"] = "?"',
}
UNREADABLE = f"""
const read = Storage.prototype.getItem;
Storage.prototype.getItem = function (key) {{
  if (key.startsWith("{KEY}")) throw new DOMException("broken", "UnknownError");
  return read.call(this, key);
}};
"""
NO_STORAGE = "Object.defineProperty(window, 'localStorage', { get() { throw new Error('none') } });"
# Wait until the second copy, the browser's database, has a text; give the key.
COPIED = """async (text) => {
  const done = (request) => new Promise((resolve) => (request.onsuccess = () => resolve(request.result)));
  const database = await done(indexedDB.open("bowstring.1"));
  for (;;) {
    const store = database.transaction("kept").objectStore("kept");
    const [keys, texts] = [await done(store.getAllKeys()), await done(store.getAll())];
    const place = texts.findIndex((one) => one.includes(text));
    if (place >= 0) return database.close(), keys[place];
    await new Promise((next) => setTimeout(next, 20));
  }
}"""


def keep(page: Page, chord: str) -> str:
    """Type a chord and wait until both copies have it; return the job's key."""
    type_in(page, "arc-chord", chord)
    key: str = page.evaluate(COPIED, f'"arc-chord":"{chord}"')
    return key


def test_the_second_copy_is_used_when_the_first_can_t_be(page: Page) -> None:
    for number, (name, spoilt) in enumerate(SPOILT.items()):
        chord = f"{44 + number} ft"
        key = keep(page, chord)
        # When the page goes, so that nothing of it writes behind this.
        page.evaluate(f"key => addEventListener('pagehide', () => {{ {spoilt} }})", key)
        page.reload()
        expect(page.locator("#arc-chord")).to_have_value(chord)
        assert page.evaluate("key => JSON.parse(localStorage[key]).fields['arc-chord']", key) == chord, name
    wait_for(page, "computed")


@pytest.mark.parametrize("broken", [UNREADABLE, NO_STORAGE], ids=["reading", "all of it"])
def test_the_second_copy_is_used_where_the_first_breaks_at_every_look(
    open_page: Callable[..., Page], broken: str, site_url: str
) -> None:
    page = open_page()
    keep(page, "44 ft")
    other = page.context.new_page()
    other.add_init_script(broken)
    other.goto(site_url)
    expect(other.locator("#arc-chord")).to_have_value("44 ft")
    wait_for(other, "computed")
    open_desk(other)
    expect(other.locator("#job-list li")).to_have_count(1)
    expect(other.locator("#job-list button").first).to_be_enabled()


ODD = [FAR, 1e308, -5, "x", None, 8.64e15]


def test_an_absurd_date_or_row_does_no_harm_and_loses_nothing(open_page: Callable[..., Page]) -> None:
    """No date is made of what can't be one, and no thousand rows of a form for a field that says it's in the last."""
    fields = {"arc-sagitta": "6 ft", "side": "left", "drawn_to": "face", "unit": "ft-in"}
    jobs = [
        {"fields": {**fields, "arc-chord": f"{41 + place} ft"}, "edited": edited} for place, edited in enumerate(ODD)
    ]
    rows = {"ground-999-name": "shed", "got-999-stake": "Q1", "got-999-sagitta": "1 ft", "known-998-name": "hydrant"}
    jobs.append({"fields": {**fields, "arc-chord": "61 ft", **rows}, "edited": 1})
    lines = [f"localStorage['{KEY}abcdefgh{place}'] = {json.dumps(json.dumps(job))};" for place, job in enumerate(jobs)]
    lines.append(f"localStorage['bowstring.2.open'] = 'abcdefgh{len(jobs) - 1}';")
    page = open_page(before=f"if (location.protocol === 'http:') {{ {' '.join(lines)} }}")
    assert page.locator("#arc-chord").input_value() == "61 ft"
    expect(page.locator("[data-rows] > *")).to_have_count(
        2 + 4 + 2 + 2
    )  # each obstacle and mark has an empty one behind it, and a line has one before and after its arc
    assert page.locator("#ground-0-name").input_value() == "shed"
    assert page.locator("#got-0-sagitta").input_value() == "1 ft"
    open_desk(page)
    rows_of_jobs = page.locator("#job-list li")
    expect(rows_of_jobs).to_have_count(len(jobs))
    expect(rows_of_jobs.get_by_text(say("page.desk_unreadable"))).to_have_count(0)
    wait_for(page, "refused")  # the obstacle has no outline
    rows_of_jobs.nth(1).locator("button").first.click()
    wait_for(page, "computed")
    assert page.locator("#arc-chord").input_value() in {f"{41 + place} ft" for place in range(len(ODD))}
