"""What the page hands over: the code, the texts and the files of the job in its fields."""

from __future__ import annotations

import json
import re
from html import unescape
from typing import Any

import pytest

from bowstring import write_link
from bowstring.demo import DEMO
from bowstring.page.calls import handle
from bowstring.page.fields import fields_of_job
from bowstring.sheet.csv import stakes_csv
from bowstring.sheet.messages import messages
from bowstring.words import say
from helping import answer_to
from paper_jobs import JOBS

STOPPED = JOBS["no hand, no line, a wall"]
KINDS = ("people", "svg", "png", "dxf", "instrument-n-e", "instrument-x-y")


def ask(call: str, job: Any, **more: object) -> dict[str, Any]:
    question = {"fields": fields_of_job(job), "address": "https://example.org/", **more}
    told: dict[str, Any] = json.loads(handle(call, json.dumps(question)))
    return told


def test_the_texts_stand_there_each_with_its_button() -> None:
    html = ask("hand_over", DEMO, what="messages")["html"]
    shown = [unescape(re.sub("<[^>]+>", "", one)) for one in re.findall(r"<li><p>(.*?)</p>", html)]
    assert shown == messages(answer_to(DEMO))  # type: ignore[arg-type]
    assert html.count("data-copy") == len(shown)


def test_a_title_from_a_stranger_is_only_text() -> None:
    html = ask("hand_over", {**DEMO, "title": "<b>x</b>"}, what="messages")["html"]
    assert "<b>" not in html and "&lt;b&gt;x" in html


def test_the_code_is_drawn_or_it_is_said_why_not() -> None:
    assert 'class="qr"' in ask("hand_over", DEMO, what="qr")["html"]
    assert say("hand_over.qr_no_address") not in unescape(ask("hand_over", DEMO, what="qr")["html"])
    assert say("hand_over.qr_no_address") in unescape(ask("hand_over", DEMO, what="qr", address="")["html"])
    corners = [[f"{x * 7.1317} ft", f"{-5 - (x * 37 % 11) * 1.0913 - y * 20} ft"] for y in (0, 1) for x in range(30)]
    corners = corners[:30] + corners[:29:-1]
    ground = [
        {"name": f"bed {n}", "stops": "feet", "outline": [[x, f"{float(y[:-3]) - 60 * n} ft"] for x, y in corners]}
        for n in range(8)
    ]
    job = {**DEMO, "ground": ground}
    assert len(write_link(job)) > 2500  # type: ignore[arg-type]
    html = unescape(ask("hand_over", job, what="qr")["html"])
    assert "<svg" not in html and say("hand_over.qr_long") in html


def test_every_file_that_is_offered_can_be_had() -> None:
    offered = re.findall(r'data-file="([^"]+)"', ask("hand_over", DEMO, what="files")["html"])
    assert sorted(offered) == sorted(KINDS)
    names = {kind: ask("hand_file", DEMO, kind=kind)["name"] for kind in offered}
    assert {name.rsplit(".", 1)[1] for name in names.values()} == {"csv", "svg", "png", "dxf"}
    assert len(set(names.values())) == len(KINDS), "no file is taken for another"
    assert names["instrument-x-y"].endswith("-x-y-ft.csv") and names["instrument-n-e"].endswith("-y-x-ft.csv")
    drawn = ask("hand_file", JOBS["coordinates"], kind="instrument-n-e")["name"]
    assert re.search(r"-n-e-(ft|m)\.csv$", drawn)
    assert ask("hand_file", DEMO, kind="people")["text"] == stakes_csv(answer_to(DEMO))  # type: ignore[arg-type]


def test_it_is_said_whose_coordinates_an_instrument_gets() -> None:
    for job, key in ((DEMO, "instrument"), (JOBS["coordinates"], "instrument_drawn")):
        assert say(f"hand_over.{key}") in unescape(ask("hand_over", job, what="files")["html"])


def test_of_a_stopped_job_nothing_is_handed_over_that_doesn_t_say_so() -> None:
    html = unescape(ask("hand_over", STOPPED, what="files")["html"])
    assert say("hand_over.stopped") in html
    assert set(re.findall(r'data-file="([^"]+)"', html)) == {"people", "svg", "png"}
    for kind in ("dxf", "instrument-n-e", "instrument-x-y"):
        told = ask("hand_file", STOPPED, kind=kind)
        assert told == {"error": say("hand_over.stopped")}
    assert "DON'T BUILD" in ask("hand_file", STOPPED, kind="people")["text"]
    assert say("draw.stopped") in unescape(ask("hand_file", STOPPED, kind="svg")["text"])


def test_the_picture_is_as_fine_as_a_printer_wants_on_white() -> None:
    told = ask("hand_file", DEMO, kind="png")
    width, height = told["pixels"]
    assert width == round(190 / 25.4 * 300)
    assert f'width="{width}"' in told["text"] and f'height="{height}"' in told["text"]
    box = re.search(r'viewBox="([^"]+)"', told["text"])
    assert box
    _, _, wide, high = map(float, box[1].split())
    assert height / width == pytest.approx(high / wide, rel=1e-3)
    assert "#fcfbf7" not in told["text"] and "#fff" in told["text"]


def test_a_job_that_can_t_be_used_is_told_so() -> None:
    bad = {"fields": {"arc-chord": "5 3", "arc-sagitta": "1 ft"}, "address": ""}
    for call, more in (("hand_over", {"what": "messages"}), ("hand_file", {"kind": "dxf"})):
        told = json.loads(handle(call, json.dumps({**bad, **more})))
        assert set(told) == {"error"} and len(told["error"].split()) > 4


def test_what_the_page_never_asks_is_refused() -> None:
    for call, more in (("hand_over", {"what": "fax"}), ("hand_file", {"kind": "exe"})):
        with pytest.raises(ValueError, match=r"fax|exe"):
            ask(call, DEMO, **more)
