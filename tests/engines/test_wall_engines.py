"""The wall in the other engines: opened, stepped through, its slider moved, its own numbers typed."""

from __future__ import annotations

from bowstring import write_link
from bowstring.demo import DEMO
from bowstring.words import say
from builder import serve
from builder.house import SITE
from driving.drivers import Driver

SIGN = "return document.documentElement.dataset.sheet"
TURN = "document.querySelector(`[data-tab='${arguments[0]}']`).click()"
PRESS = """
  for (const key of arguments[0])
    document.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true }));
"""
PLACE = "return location.hash"
SHOWN = "return document.querySelector('#wall .picture svg') !== null"
SAID = "return document.querySelector('#wall [role=status]').textContent"
# What can't be read: too small, or past the edge of the screen.
UNREAD = """
  return [...document.querySelectorAll("#wall .picture text")]
    .filter((text) => getComputedStyle(text).visibility !== "hidden")
    .map((text) => [text.textContent, text.getBoundingClientRect(), text.closest(".stage").getBoundingClientRect(),
                    text.getAttribute("font-size") * text.getScreenCTM().a])
    .filter(([, box, stage, size]) => box.left < stage.left || box.right > stage.right || size < stage.height / 45)
    .map(([text]) => text)
"""
BEND = "return document.querySelector('#wall .bend text')?.textContent"
DRAG = """
  const knob = document.querySelector("#wall [data-knob]"), box = knob.getBoundingClientRect();
  const y = box.top + box.height / 2;
  const tell = (kind, x, buttons) => knob.dispatchEvent(new PointerEvent(kind, {
    pointerId: 1, clientX: x, clientY: y, buttons, bubbles: true, cancelable: true, isPrimary: true }));
  knob.setPointerCapture = () => {};
  tell("pointerdown", box.left + box.width / 2, 1);
  tell("pointermove", box.left + 300, 1);
  tell("lostpointercapture", box.left + 300, 0);
"""
OPEN = "return document.querySelector('#wall .own:not([hidden])') !== null"
TYPE = """
  const form = document.querySelector("#wall .own");
  form.querySelector("[name=wall-chord]").value = arguments[0];
  form.querySelector("[name=wall-out]").value = arguments[1];
  form.querySelector("[type=submit]").click();
"""
KICK = "return [...document.querySelectorAll('#wall [data-s=\"0\"] text')].map((text) => text.textContent).join(' ')"


def test_the_wall_opens_steps_and_slides(driver: Driver) -> None:
    with serve.served(SITE) as address:
        driver.go(f"{address}#{write_link(DEMO)}")
        driver.until(SIGN, "computed")
        driver.run(TURN, "why")
        driver.until("return document.querySelector('[data-do=wall]') !== null", True)
        driver.run("document.querySelector('[data-do=wall]').click()")
        driver.until(SHOWN, True)
        step_through(driver)
        slide(driver)
        own_numbers(driver)
        driver.run(PRESS, ["Escape"])
        driver.until("return document.getElementById('wall') === null", True)


def step_through(driver: Driver) -> None:
    for figure in range(7):
        driver.run(PRESS, [str(figure)])
        driver.until(PLACE, f"#wall-{figure}-0")
        strokes = driver.run("return Number(document.querySelector('#wall .edge').ariaValueMax)")
        assert strokes > 5
        for stroke in range(1, strokes + 1):
            driver.run(PRESS, ["PageDown"])
            driver.until(PLACE, f"#wall-{figure}-{stroke}")
            driver.until(UNREAD, [])
        driver.run(PRESS, ["PageUp"])
        driver.until(PLACE, f"#wall-{figure}-{strokes - 1}")


def slide(driver: Driver) -> None:
    driver.run(PRESS, ["4"])
    driver.until(PLACE, "#wall-4-0")
    for _ in range(20):
        if driver.run(SAID) == say("lesson.4.bend"):
            break
        driver.run(PRESS, ["PageDown"])
    driver.until("return document.querySelector('#wall .bend') !== null", True)
    before = driver.until_some(BEND)
    driver.run(PRESS, ["]", "}"])
    driver.until(f"return document.querySelector('#wall .bend text').textContent !== {before!r}", True)
    by_key = driver.run(BEND)
    driver.run(DRAG)
    driver.until(f"return document.querySelector('#wall .bend text').textContent !== {by_key!r}", True)


def own_numbers(driver: Driver) -> None:
    driver.run(PRESS, ["0"])
    driver.until(PLACE, "#wall-0-0")
    driver.run(PRESS, ["n"])
    driver.until(OPEN, True)
    driver.run(TYPE, "38", "none")
    driver.until("return document.querySelector('#wall .own .wrong').textContent !== ''", True)
    driver.run(TYPE, "24", "2")
    driver.until(OPEN, False)
    driver.until(f"{KICK}.includes('24')", True)
    assert say("wall.own_job") in driver.run(KICK)
