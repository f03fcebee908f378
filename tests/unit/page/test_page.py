"""The page's Python side: questions answered as the script expects them, and a page built whole."""

from __future__ import annotations

import base64
import gzip
import hashlib
import json
import re
from html import escape, unescape
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bowstring import answer, write_link
from bowstring.demo import DEMO
from bowstring.faces.questions import panel_of
from bowstring.page.build import build_page
from bowstring.page.calls import handle
from bowstring.page.facing import FACES
from bowstring.page.fields import all_fields, fields_of_job
from bowstring.page.form import form_html
from bowstring.words import catalogue, say
from builder import dress, scripts, website
from page_asking import ask, face, numbers

SITE = Path(__file__).resolve().parents[3] / "site"
SCRIPT = scripts.bundled(website.SCRIPTS / "page.js").script
ALONE = ("early.js", "host.js", "worker.js")
# As they are written: made one, names that two have in common are told apart by a number.
SOURCE = "\n".join(file.read_text("utf-8") for file in website.SCRIPTS.glob("*.js") if file.name not in ALONE)
GIVEN_WORDS = {
    "job.js": "job",
    "progress.js": "job",
    "desk.js": "desk",
    "handing.js": "desk",
}  # scripts that are given a part of the words
PLAIN = (SITE / "page.html").read_text("utf-8")
LOOKS = {name: (SITE / name).read_text("utf-8") for name in website.STYLES}
START = {f"v-1/{name}": dress.integrity(name.encode()) for name in website.START}
TEMPLATE = dress.served(PLAIN, "v-1", LOOKS, website.early_script(), "", START)
SHELL = dress.shell(PLAIN, LOOKS, (SITE / "icon.svg").read_text("utf-8"), SCRIPT)


def plain(markup: str) -> str:
    return unescape(re.sub(r"<[^>]*>", "", markup))


def test_the_example_is_given_and_computed_on_every_face() -> None:
    fields = ask("example")["fields"]
    assert fields == fields_of_job(DEMO)
    told = answer(DEMO)
    shown = numbers(fields)
    assert shown["sign"] == "computed" and shown["errors"] == [] and shown["state"]["sign"] == "computed"
    readings = {row["field"]: row["text"] for row in told["readings"]}  # type: ignore[attr-defined]
    assert readings["arc.chord"].endswith(" ft") and "38' 0\"" in readings["arc.chord"]
    assert shown["rows"]["arc-chord"]["beside"] == "38' 0\"\n38.000 ft"
    assert shown["rows"]["arc-radius"]["out"] == told["arc_shown"]["radius"]  # type: ignore[index]
    assert plain(shown["echoes"]["tolerance"]) == readings["tolerance"]
    for name in FACES:
        made = face(fields, name)
        open_slab = say("build.state_open", count=2)  # the example says nothing of a slab
        text = open_slab if name == "build" else say("page.state_ready")
        assert made["sign"] == "computed" and made["state"]["text"] == text, name
        assert made["html"] and "@" not in plain(made["html"]), name
    assert escape(str(DEMO["title"])) in face(fields, "paper")["html"]


CLEAR = {"offset": "5 ft", "toward": "outside"}
"""Of the edge of a walk 5 ft wide about its center line, and of its dig."""


def test_every_face_says_that_the_edge_is_asked() -> None:
    fields = {**fields_of_job(dict(DEMO)), "drawn_to": "centre", "width": "5 ft"}
    fields.pop("offset", None)
    asked = numbers(fields)["state"]
    assert asked == {"sign": "ask", "text": say("numbers.state_open", count=1)}
    assert [face(fields, name)["state"] for name in FACES if name != "build"] == [asked] * (len(FACES) - 1)
    settled = {name: text for name, text in {**fields, **CLEAR}.items() if not name.startswith("ground-")}
    assert numbers(settled)["state"]["sign"] == face(settled, "stakes")["state"]["sign"] == "computed"


def test_the_bar_and_the_tab_say_how_many_checks_are_out() -> None:
    fields = fields_of_job(dict(DEMO))
    rows = (("Q1-B", "29' 1-7/8\""), ("R1-R2-Q1", '4-3/8"'), ("R2-R3-M", '4"'))
    for number, (check, value) in enumerate(rows):
        fields |= {f"read-{number}-check": check, f"read-{number}-value": value}
    for name in FACES:
        made = face(fields, name)
        assert made["state"] == {"sign": "stop", "text": "2 checks out", "panel": "checks"}, name
        assert made["badges"] == {"checks": "2"}, name
    one = face({**fields, "read-1-value": ""}, "checks")
    assert one["state"]["text"] == "1 check out" and one["badges"] == {"checks": "1"}
    assert face(fields_of_job(dict(DEMO)), "checks")["badges"] == {"checks": ""}


def test_an_own_job_has_nothing_of_the_example_on_any_face() -> None:
    own = {"arc-chord": "44 ft", "arc-sagitta": "5' 3\"", "tolerance": "1/4 in"}
    said = [str(DEMO["title"]), str(DEMO["note"]), *DEMO["ends"].values()]  # type: ignore[attr-defined]
    for name in FACES:
        text = plain(face(own, name)["html"])
        assert not [one for one in said if one in text], name
    sheet = plain(ask("sheet", fields=own, address="")["sheet"])
    assert "44' 0\"" in sheet and not [one for one in said if one in sheet]


def test_a_refusal_stands_beside_its_field_and_keeps_the_other_echoes() -> None:
    fields = {"arc-chord": "38", "arc-sagitta": "5 3", "tolerance": "1/4", "offset": "0"}
    shown = numbers(fields)
    rows = shown["rows"]
    assert shown["sign"] == "refused"
    assert [name for name, row in rows.items() if row["state"] == "wrong"] == ["arc-sagitta"]
    assert "5 3" in rows["arc-sagitta"]["told"] and "5' 3\"" in rows["arc-sagitta"]["readings"]
    assert rows["arc-sagitta"]["told"].endswith("Write 5' 3\" or 5.3 ft.")  # what to type is said, as beside an angle
    assert rows["arc-chord"]["beside"] == "38' 0\"\n38.000 ft"
    (wrong,) = shown["errors"]
    assert (wrong["id"], wrong["field"]) == ("tolerance", "tolerance")
    assert wrong["line"] == f"{say('form.tolerance')}: {wrong['text']}"
    assert set(shown["echoes"]) == {"offset"}


def test_no_face_shows_anything_of_a_refused_job_but_why_and_the_way_to_the_numbers() -> None:
    fields = {"arc-chord": "38", "arc-sagitta": "5 3"}
    for name in FACES:
        made = face(fields, name)
        assert made["sign"] == "refused" and "5' 3\"" in plain(made["html"]), name
        assert 'data-face="numbers"' in made["html"] and "<svg" not in made["html"], name
    assert ask("sheet", fields=fields, address="").keys() == {"error"}


def test_a_reading_that_is_no_length_stops_neither_a_face_nor_a_link_nor_a_file() -> None:
    fields = {"arc-chord": "38", "arc-sagitta": "5' 3\"", "read-0-check": "A-M", "read-0-value": "good", "done": "1 2"}
    link = ask("link", fields=fields, address="")
    assert link["link"] and link == ask("link", fields={**fields, "read-0-value": "19 ft"}, address="")
    for name in FACES:
        assert face(fields, name)["sign"] == "computed", name
    opened = ask("open_file", text=ask("job_file", fields=fields)["text"])
    assert opened["fields"].items() >= fields.items()
    harmed = ask("job_file", fields=fields)["text"].replace("good", "go\\u202eod")
    assert "go" in ask("open_file", text=harmed)["error"], "nothing that turns a line round is shown"


def test_numbers_are_read_alike_with_and_without_a_layout() -> None:
    fields = {"unit": "mm", "arc-chord": "12 m", "arc-sagitta": "900", "arc-central_angle": "33°30'"}
    fields |= {"offset": "38", "toward": "centre"}
    good, bad = numbers(fields), numbers({**fields, "levels": "13"})
    assert good["echoes"] == bad["echoes"] and set(good["echoes"]) == {"offset"}
    assert good["rows"] == bad["rows"]
    assert good["errors"] == [] and [one["id"] for one in bad["errors"]] == ["levels"]
    assert face({**fields, "levels": "13"}, "stakes")["sign"] == "refused"


def test_an_outline_is_echoed_whole_with_and_without_a_layout() -> None:
    fields = {"unit": "m", "arc-chord": "12", "arc-sagitta": "0.9", "ground-1-stops": "feet"}
    fields |= {"ground-1-outline": "3, -2; 5, -2.5; 4, -6", "known-0-name": "tree", "known-0-x": "1", "known-0-y": "-1"}
    wrong = {**fields, "levels": "13"}
    good, bad = numbers(fields), numbers(wrong)
    assert plain(good["echoes"]["ground-1-outline"]) == "3.000 m, -2.000 m; 5.000 m, -2.500 m; 4.000 m, -6.000 m"
    assert good["echoes"] == bad["echoes"] and "known-0-y" in good["echoes"]
    plans = [ask("numbers_later", fields=one, panel="way")["site_plan"] for one in (fields, wrong)]
    assert 'data-scale="' in plans[0] and plans[1] == ""


def test_an_empty_form_asks_for_two_numbers_and_calls_nothing_wrong() -> None:
    shown = numbers({})
    assert shown["sign"] == "open" and shown["errors"] == []
    assert {row["state"] for row in shown["rows"].values()} == {"empty"}
    for name in FACES:
        made = face({}, name)
        assert made["sign"] == "open" and say("page.two_first") in plain(made["html"]), name


def test_every_refusal_of_one_wrong_field_comes_back_to_it() -> None:
    good = {"arc-chord": "38 ft", "arc-sagitta": "5 ft"}
    for field in all_fields({}):
        if field.kind in ("text", "note", "flag", "choice", "kept"):
            continue
        fields = {**good, field.id: "seven"}
        if field.id == "slab-sides":
            fields["slab-fills"] = "yes"  # a band along the curve has none
        shown = numbers(fields)
        wrong = [error["id"] for error in shown["errors"]]
        wrong += [name for name, row in shown["rows"].items() if row["state"] == "wrong"]
        assert field.id in wrong, field.id
        if panel_of(field.id):  # and its line on the face says so
            line = {**shown["lines"], **ask("numbers_later", fields=fields)["lines"]}[panel_of(field.id)]
            assert line["state"] == "wrong", field.id
        for name in FACES:  # what no stake hangs on leaves the stakes standing
            alone = panel_of(field.id) in ("slab", "slope") and field.id != "width"
            stands = alone and name in ("stakes", "checks", "why")
            assert face(fields, name)["sign"] == ("computed" if stands else "refused"), (field.id, name)


def test_questions_that_the_page_never_asks() -> None:
    for call, question in (
        ("sheets", {"fields": {}}),
        ("sheet", {"fields": {"x": "1"}}),
        ("face", {"fields": {}, "face": "numbers"}),
        ("face", {"fields": {}, "face": "sheet"}),
    ):
        with pytest.raises(ValueError):
            ask(call, **question)


def test_a_link_is_found_in_the_message_that_it_was_sent_with() -> None:
    link = write_link(dict(DEMO))

    def opened(text: str) -> dict[str, Any]:
        found: dict[str, Any] = json.loads(handle("open_link", json.dumps({"text": text})))
        return found

    assert opened(f"Here's the curb: https://example.org/x/#{link}. Thanks!") == opened(link)
    assert opened(f"https://example.org/#{link}") == opened(link)
    assert "error" in opened(f"Here: https://example.org/#{link[:-1]}, thanks")
    assert "error" in opened("See item #b1 on the list")


def test_the_page_is_whole() -> None:
    page = build_page(TEMPLATE, "1.2.3+<x>")
    assert not re.search(r"@[A-Za-z_.]+@", page)
    assert 'data-sheet="prebuilt"' in page and 'data-version="1.2.3+&lt;x&gt;"' in page
    assert form_html({}, {}, "") in page, "an empty form: nothing of the example stands in it"
    assert str(DEMO["title"]) not in unescape(page) and not re.search(r'<input type="text"[^>]* value="[^"]', page)
    for name in ("numbers", *FACES):
        assert f'id="face-{name}"' in page and f'data-tab="{name}"' in page, name
    ids = re.findall(r'\sid="([^"]+)"', page)
    assert len(ids) == len(set(ids))
    links = set(re.findall(r'href="#([^"]+)"', page))
    assert {f"face-{name}" if name in FACES or name == "numbers" else name for name in links} <= set(ids)


def policy_of(page: str) -> str:
    found = re.search(r'http-equiv="Content-Security-Policy" content="([^"]+)"', page)
    assert found is not None
    return found[1]


@pytest.mark.parametrize("template", [TEMPLATE, SHELL], ids=["served", "saved"])
def test_the_policy_allows_the_page_s_own_styles_by_hash_and_nothing_made_from_text(template: str) -> None:
    page = build_page(template, "1")
    policy = policy_of(page)
    assert "unsafe" not in policy.replace("'wasm-unsafe-eval'", "")
    assert policy.startswith("default-src 'none'; ")
    for style in set(re.findall(r"<style[^>]*>(.*?)</style>", page, re.DOTALL)):
        inside = style.removeprefix("<![CDATA[").removesuffix("]]>")
        assert f"sha256-{base64.b64encode(hashlib.sha256(inside.encode()).digest()).decode()}" in policy


def test_a_served_page_asks_for_nothing_elsewhere() -> None:
    page = build_page(TEMPLATE, "1")
    page = re.sub(r"<style.*?</style>", "", page, flags=re.DOTALL)
    page = re.sub(r"(?:^|(?<=[;>}]))\s*// .*$", "", page, flags=re.MULTILINE)  # a script's comments
    assert "//" not in re.sub(r"""xmlns(:\w+)?="[^"]*"|'sha256-[^']*'""", "", page)  # a hash may have both in a row


def test_a_served_page_s_styles_and_early_script_are_allowed_by_their_hashes() -> None:
    page = build_page(TEMPLATE, "1")
    policy = policy_of(page)
    (early,) = re.findall(r"<script>(.*?)</script>", page, re.DOTALL)
    assert '"v-1/worker.js"' in early
    head = page.partition("</head>")[0]
    styles = re.findall(r"<style>(.*?)</style>", head, re.DOTALL)
    assert len(styles) == len(LOOKS)
    for text in (early, *styles):
        assert f"'sha256-{base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()}'" in policy
    assert "unsafe-inline" not in policy


def test_a_saved_page_s_one_script_is_allowed_by_its_hash_and_no_request_is() -> None:
    page = build_page(SHELL, "1")
    (script,) = re.findall(r'<script type="module">(.*?)</script>', page, re.DOTALL)
    policy = policy_of(page)
    assert f"'sha256-{base64.b64encode(hashlib.sha256(script.encode()).digest()).decode()}'" in policy
    assert "connect-src 'none'" in policy and "'self'" not in policy and "http" not in policy


def unpacked(text: str) -> bytes:
    """Bits of two signs of 91 from "!" on, thirteen of them, and six of one that is alone; "|" for "<"."""
    values = [ord(sign) - 33 for sign in text.replace("|", "<")]
    pairs = zip(values[::2], values[1::2], strict=False)
    bits = "".join(f"{one * 91 + other:013b}" for one, other in pairs)
    bits += f"{values[-1]:06b}" if len(values) % 2 else ""
    whole = len(bits) - len(bits) % 8
    return bytes(int(bits[start : start + 8], 2) for start in range(0, whole, 8))


def test_a_saved_page_has_a_place_for_each_part_and_is_filled_with_their_bytes(tmp_path: Path) -> None:
    shell = tmp_path / "shell.html"
    shell.write_text(build_page(SHELL, "1"), "utf-8")
    parts = {}
    for name in (*dress.PLAIN, *dress.SQUEEZED):
        if name != "shell":
            parts[name] = tmp_path / name
            parts[name].write_bytes(f"bytes of {name}".encode())
    page = dress.saved(shell, parts, 'https://example.org/"<arc>')
    assert "[[packed:" not in page
    for name in parts:
        found = re.search(rf'<script type="text/plain" id="packed-{re.escape(name)}">([!-;=-|]+)</script>', page)
        assert found is not None
        content = gzip.decompress(unpacked(found[1])) if name in dress.SQUEEZED else base64.b64decode(found[1])
        assert content == parts[name].read_bytes()
    assert 'content="https://example.org/&quot;&lt;arc&gt;"' in page
    assert page == dress.saved(shell, parts, 'https://example.org/"<arc>')


def test_the_build_and_the_page_pack_the_same_parts() -> None:
    """The page fills the places of a shell that the build has made: both have to know the same names."""
    (listed,) = re.findall(r"PACKED = (\[.*?\]);", SOURCE, re.DOTALL)
    listed = re.sub(r",\s*\]", "]", listed)
    (plain,) = re.findall(r"PLAIN = (\[.*?\]);", SOURCE)
    assert sorted(json.loads(listed)) == sorted((*dress.PLAIN, *dress.SQUEEZED))
    assert sorted(json.loads(plain)) == sorted(dress.PLAIN)
    (files,) = re.findall(r'id="files">(.*?)</script>', TEMPLATE)
    assert sorted(json.loads(files)) == sorted(json.loads(listed))


def is_among(words: Any, chain: list[str]) -> bool:
    """Whether words have what a script reads of them, step by step; what it does with a text is its own."""
    for name in chain:
        if isinstance(words, str):
            return True
        if name not in words:
            return False
        words = words[name]
    return True


def test_the_script_finds_its_words() -> None:
    page = build_page(TEMPLATE, "1")
    found = re.search(r'<script type="application/json" id="words">(.*?)</script>', page, re.DOTALL)
    assert found is not None
    words = json.loads(found[1])
    assert words["units"]["ft-in"] == say("form.beside.ft-in")
    for state in re.findall(r'(?:status|trouble|wait|slow)\("([a-z_]+)"', SOURCE):
        assert state in words["status"] or state in words["trouble"], state
    for state in re.findall(r'\btold\("([a-z]+)"\)', SOURCE):
        assert state in words["offline"], state
    for file in website.SCRIPTS.glob("*.js"):
        given = GIVEN_WORDS.get(file.name)
        assert given is None or f"words: words.{given} " in SOURCE or f"words: words.{given}," in SOURCE, file.name
        for chain in re.findall(r"\bwords((?:\.[a-z_]+)+)", file.read_text("utf-8")):
            if file.name not in ALONE:
                assert is_among(words[given] if given else words, chain.split(".")[1:]), (file.name, chain)
    for name in re.findall(r'\bat\("([a-z-]+)"\)', SOURCE):
        # A saved page holds its files itself and has no list of them.
        assert f'id="{name}"' in page, name


def test_the_script_has_no_sentence() -> None:
    bare = re.sub(r"^\s*//.*|(?<=[;{,]) // .*", "", SOURCE, flags=re.MULTILINE)
    bare = re.sub(r'matchMedia\("[^"]*"\)', "", bare)  # a question about the window
    assert not [text for text in re.findall(r'"([^"\n]*)"', bare) if len(text.split()) > 3]


def test_a_template_with_a_wrong_mark_is_refused() -> None:
    for template in (TEMPLATE.replace("@FORM@", ""), TEMPLATE + "@NOTHING@"):
        with pytest.raises(ValueError, match="template"):
            build_page(template, "1")
    assert "page.clear" in catalogue()


@given(st.binary(max_size=200))
def test_bytes_are_packed_and_come_out_again(content: bytes) -> None:
    text = dress.packed(content)
    assert unpacked(text) == content and "<" not in text
    assert len(text) <= 16 / 13 * len(content) + 2
