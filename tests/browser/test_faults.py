"""Python's worker hangs, is killed, or can't be had: the work is kept, and the page goes on without a reload."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from playwright.sync_api import BrowserContext, Page, expect

from bowstring.words import say
from builder.website import SAVED
from page_acting import at_card, look_at, sheet_of, show_example, sign, type_in, wait_for

# Every worker that the page starts. One that is asked of the job in `window.hangs` hears nothing more, nor does
# the next; the one in `window.kills` kills its worker, once. What is asked just then of the job before is answered.
WORKERS = """
window.workers = [];
window.Worker = class extends Worker {
  constructor(...words) { super(...words); window.workers.push(this); }
  postMessage(data, ...words) {
    const of = (job) => Boolean(job && data.payload?.includes(job));
    const kills = of(window.kills), root = document.documentElement;
    this.deaf ||= kills || of(window.hangs);
    if (!this.deaf) return super.postMessage(data, ...words);
    if (kills) { window.kills = ""; this.terminate(); }
    root.setAttribute("data-in-vain", Number(root.getAttribute("data-in-vain")) + 1);
  }
};
"""
FACE_KEPT = """async (words) => {
  while (!(localStorage["bowstring.2.last"] ?? "").includes(words)) await new Promise((next) => setTimeout(next, 20));
}"""
TWO_FRAMES = """() => new Promise((done) => {
  const frame = new MessageChannel();
  frame.port1.onmessage = () => requestAnimationFrame(() => requestAnimationFrame(done));
  frame.port2.postMessage("");
})"""
ELEMENTS = """[...document.querySelectorAll("#stakes *")].map((one) =>
  [one.localName, one.id, one.getAttribute("class"), one.getAttribute("d"), one.getAttribute("viewBox")].join(" "))"""
JOBS = "Object.entries(localStorage).filter(([key]) => key.startsWith('bowstring.2.job.'))"
NO_WORKER = "window.Worker = class { constructor() { throw new DOMException('refused', 'SecurityError'); } };"


def test_a_worker_that_never_answers_is_replaced_and_the_work_goes_on(open_page: Callable[..., Page]) -> None:
    page = open_page(before=WORKERS, before_goto=lambda context: context.clock.install())
    page.clock.resume()
    show_example(page)
    page.evaluate("window.kills = '41 ft'")
    type_in(page, "arc-chord", "41 ft")
    page.wait_for_selector("html[data-stale][data-in-vain='1']")
    assert sign(page) != "computed"
    page.clock.fast_forward(46_000)
    wait_for(page, "computed")
    assert page.evaluate("workers.length") == 2
    assert "41' 0\"" in sheet_of(page)
    assert page.locator("#arc-chord").input_value() == "41 ft"
    type_in(page, "arc-chord", "42 ft")
    assert "42' 0\"" in sheet_of(page)


# A question of which `window.breaks` is a part can't be answered.
BREAKING = """
window.Worker = class extends Worker {
  postMessage(asked, ...words) {
    const hit = asked.call === "face" && window.breaks && asked.payload.includes(window.breaks);
    const payload = asked.payload?.replace('"face":"stakes"', '"face":"none"');
    super.postMessage(hit ? { ...asked, payload } : asked, ...words);
  }
};
"""


def test_a_panel_or_a_card_that_cant_be_made_leaves_the_stakes_at_work(open_page: Callable[..., Page]) -> None:
    """What went wrong is told, and the card that stood there can be worked: no button is dead."""
    page = open_page(360, 740, before=BREAKING)
    show_example(page)
    look_at(page, "stakes")
    wait_for(page, "computed")
    card, trouble = page.locator("#stakes .card"), page.locator("#trouble")
    for number in (1, 2):
        at_card(page, number)
        page.locator("#stakes [data-do=done]").click()
    at_card(page, 3)
    wait_for(page, "computed")
    page.locator("#stakes [data-do=back]").click()
    expect(card).to_have_attribute("data-card", "2")
    wait_for(page, "computed")
    page.evaluate("""window.breaks = '"panel":"got"'""")
    page.locator("#stakes [data-do=got]").click()
    expect(trouble).to_contain_text(say("page.trouble_fault")[:20])
    wait_for(page, "computed")
    expect(card).to_have_attribute("data-card", "2")
    assert page.locator("html").get_attribute("data-panel") is None
    page.locator("#stakes [data-do=done]").click()
    expect(card).to_have_attribute("data-card", "3")
    expect(trouble).to_be_hidden()
    page.evaluate("""window.breaks = '"card":5'""")  # card 4 is made already, ahead of the tap
    page.locator("#stakes [data-do=done]").click()
    expect(card).to_have_attribute("data-card", "4")
    wait_for(page, "computed")
    page.locator("#stakes [data-do=done]").click()
    expect(trouble).to_be_visible()
    wait_for(page, "computed")
    expect(card).to_have_attribute("data-card", "4")
    page.locator("#stakes [data-do=back]").click()
    expect(card).to_have_attribute("data-card", "3")


def test_a_job_that_hangs_every_worker_is_told_and_another_one_is_answered(open_page: Callable[..., Page]) -> None:
    page = open_page(before=WORKERS, before_goto=lambda context: context.clock.install())
    page.clock.resume()
    show_example(page)
    page.evaluate("window.hangs = '41 ft'")
    type_in(page, "arc-chord", "41 ft")
    page.wait_for_selector("html[data-in-vain='1']")
    page.clock.fast_forward(46_000)
    # The second worker comes up in its own time, and its patience begins when it is asked.
    page.wait_for_selector("html[data-in-vain='2']")
    page.clock.fast_forward(46_000)
    expect(page.locator("#trouble")).to_contain_text(say("page.trouble_fault")[:20])
    assert page.locator("#arc-chord").input_value() == "41 ft"
    type_in(page, "arc-chord", "42 ft")
    page.wait_for_selector("html[data-in-vain='3']")  # the worker hangs still
    page.clock.fast_forward(46_000)
    wait_for(page, "computed")
    assert page.evaluate("workers.length") == 3
    assert "42' 0\"" in sheet_of(page)


def test_without_a_worker_python_works_on_the_page_s_own_thread(open_page: Callable[..., Page]) -> None:
    page = open_page(before=NO_WORKER)
    show_example(page)
    type_in(page, "arc-chord", "41 ft")
    assert "41' 0\"" in sheet_of(page)


def test_a_saved_page_works_without_a_worker_too(
    profile: Callable[..., BrowserContext], site: Path, tmp_path: Path
) -> None:
    context = profile("own", SAVED.as_uri())
    context.add_init_script(NO_WORKER)
    page = context.new_page()
    page.goto(SAVED.as_uri())
    show_example(page)
    type_in(page, "arc-chord", "41 ft")
    assert "41' 0\"" in sheet_of(page)


BAD_FACES = {
    "script": "<script>window.ran = 1</script><p>x</p>",
    "handler": "<p onclick='window.ran = 1'>x</p><svg onload='window.ran = 1'></svg>",
    "frame": "<iframe srcdoc='<script>parent.ran = 1</script>'></iframe>",
    "link": "<a href='https://example.org/'>x</a><a href='javascript:window.ran=1'>y</a>",
    "image": "<img src='https://example.org/x.png'><svg><image href='https://example.org/y'/></svg>",
    "style": "<p style='position:fixed'>x</p><link rel=stylesheet href='https://example.org/z.css'>",
    "form": "<form action='https://example.org/'><input name=q></form><meta http-equiv=refresh content='0;url=/x'>",
}


def built_anew_and_nothing_in_it_runs(page: Page, faults: list[str]) -> None:
    """Whatever stands in the place of the kept face: only what a face is made of is shown."""
    odd = "script, iframe, img, image, link, form, a, meta, [style], [onclick], [onload], [href], [src]"
    for name, markup in BAD_FACES.items():
        page.evaluate(
            """(html) => {
              const kept = JSON.parse(localStorage["bowstring.2.last"]);
              localStorage["bowstring.2.last"] = JSON.stringify({ ...kept, html });
            }""",
            f"{markup}<h2>{name} from last time</h2>",
        )
        page.reload()
        expect(page.locator("#stakes h2")).to_have_text(f"{name} from last time")
        page.evaluate(TWO_FRAMES)  # what was put in would have run by now
        assert page.evaluate("window.ran") is None, name
        assert page.locator("#stakes").locator(odd).count() == 0, name
    assert all("Content Security Policy" in fault for fault in faults)  # it was parsed, and the policy saw what it is
    faults.clear()


def test_the_last_face_stands_there_before_python_is_up_and_only_for_its_own_numbers(
    open_page: Callable[..., Page], faults: list[str]
) -> None:
    page = open_page()
    show_example(page)
    type_in(page, "arc-chord", "41 ft")
    wait_for(page, "computed")
    page.evaluate(FACE_KEPT, "41 ft")  # once nothing has changed for a moment
    told, made = page.locator("#stakes").inner_text(), page.evaluate(ELEMENTS)
    page.context.route("**/worker.js", lambda route: None)  # Python doesn't come
    page.reload()
    expect(page.locator("#status")).to_have_text(say("page.status_last"))
    assert page.locator("html").get_attribute("data-stale") is None and sign(page) == "prebuilt"
    assert page.locator("#stakes").inner_text() == told and page.evaluate(ELEMENTS) == made
    kept = page.evaluate(JOBS)
    for step in ("done", "back"):  # what it is a step of isn't known yet
        page.locator(f"#stakes [data-do={step}]").evaluate("button => { button.disabled = false; button.click(); }")
    assert page.locator("#stakes").inner_text() == told and page.evaluate(JOBS) == kept
    built_anew_and_nothing_in_it_runs(page, faults)
    type_in(page, "arc-chord", "40 ft")
    page.wait_for_selector("html[data-stale]")
    page.reload()  # now other numbers are kept than the face's
    page.wait_for_selector("html[data-stale]")
