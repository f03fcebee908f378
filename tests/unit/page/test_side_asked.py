"""The bar asks on which side of the line a work of some width lies, on every face, until somebody says it."""

from __future__ import annotations

from bowstring.page.facing import FACES
from bowstring.words import say
from page_asking import face, numbers


def test_every_face_asks_on_which_side_of_the_line_the_work_lies() -> None:
    """Inside and outside say nothing of a line of several pieces: what was answered of one arc is asked again."""
    arc = {"arc-radius": "28 ft", "arc-central_angle": "75", "side": "left", "turn": "right", "drawn_to": "face"}
    arc |= {
        "width": "10 in",
        "slab-poured": "wall",
        "edge": "outside",
        "slab-thickness": "3 ft 6 in",
        "offset": "6 ft",
        "toward": "outside",
    }
    assert numbers(arc)["state"]["text"] == say("numbers.state_done")
    for waits, key in (
        ({**arc, "before-0-straight": "12 ft"}, "numbers.state_side_of_wall"),
        ({**arc, "slab-poured": "slab", "edge": ""}, "numbers.state_side"),
    ):
        asked = {"sign": "ask", "text": say(key), "panel": "slab"}
        assert numbers(waits)["state"] == asked, key
        assert [face(waits, name)["state"] for name in FACES if name != "build"] == [asked] * (len(FACES) - 1)
        assert face(waits, "build")["state"]["sign"] == "ask"
    settled = {**arc, "before-0-straight": "12 ft", "edge": "left"}
    assert numbers(settled)["state"]["sign"] == face(settled, "stakes")["state"]["sign"] == "computed"
