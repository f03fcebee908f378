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

from bowstring import answer, write_link
from bowstring.demo import DEMO
from bowstring.page.build import build_page
from bowstring.page.calls import handle
from bowstring.page.fields import all_fields, fields_of_job
from bowstring.words import catalogue, say
from builder import dress, scripts, website

SITE = Path(__file__).resolve().parents[3] / "site"
SCRIPT = scripts.bundled(website.SCRIPTS / "page.js").script
ALONE = ("early.js", "host.js", "worker.js")
# As they are written: made one, names that two have in common are told apart by a number.
SOURCE = "\n".join(file.read_text("utf-8") for file in website.SCRIPTS.glob("*.js") if file.name not in ALONE)
PLAIN = (SITE / "page.html").read_text("utf-8")
LOOKS = {name: (SITE / name).read_text("utf-8") for name in website.STYLES}
START = {f"v-1/{name}": dress.integrity(name.encode()) for name in website.START}
TEMPLATE = dress.served(PLAIN, "v-1", LOOKS, website.early_script(), "", START)
SHELL = dress.shell(PLAIN, LOOKS, (SITE / "icon.svg").read_text("utf-8"), SCRIPT)


def ask(fields: dict[str, str]) -> dict[str, Any]:
    answered: dict[str, Any] = json.loads(handle("sheet", json.dumps({"fields": fields})))
    return answered


def plain(markup: str) -> str:
    return unescape(re.sub(r"<[^>]*>", "", markup))


def test_the_example_is_computed_and_called_one() -> None:
    result = ask(fields_of_job(DEMO))
    assert result["sign"] == "computed" and result["example"] and result["errors"] == []
    assert escape(say("page.example")) in result["sheet"]
    readings = {row["field"]: row["text"] for row in answer(DEMO)["readings"]}  # type: ignore[attr-defined]
    assert plain(result["echoes"]["arc-chord"]) == readings["arc.chord"]
    assert plain(result["echoes"]["tolerance"]) == readings["tolerance"]


def test_what_is_left_of_the_example_is_named_until_its_words_are_gone() -> None:
    mixed = ask({**fields_of_job(DEMO), "arc-chord": "44 ft"})
    assert not mixed["example"]
    banner = plain(mixed["sheet"].partition("</p>")[0])
    assert say("form.sagitta") in banner and say("form.title") in banner and say("form.chord") not in banner
    own = ask({"arc-chord": "44 ft", "arc-sagitta": "5' 3\"", "tolerance": "1/4 in"})
    assert "banner" not in own["sheet"] and not own["example"]


def test_a_refusal_stands_beside_its_field_and_keeps_the_other_echoes() -> None:
    result = ask({"arc-chord": "38", "arc-sagitta": "5 3", "tolerance": "1/4", "offset": "0"})
    assert result["sign"] == "refused" and "sheet" not in result
    assert [error["id"] for error in result["errors"]] == ["arc-sagitta", "tolerance"]
    first = result["errors"][0]
    assert first["field"] == "arc.sagitta" and "5' 3\"" in first["text"]
    assert first["line"] == f"{say('form.sagitta')}: {first['text']}"
    assert plain(result["echoes"]["arc-chord"]) == "38' 0\" = 38.0000 ft"
    assert set(result["echoes"]) == {"arc-chord", "offset"}


def test_numbers_are_read_alike_with_and_without_a_sheet() -> None:
    fields = {"unit": "mm", "arc-chord": "12 m", "arc-sagitta": "900", "arc-central_angle": "33°30'"}
    fields |= {"offset": "38", "toward": "centre"}
    good, bad = ask(fields), ask({**fields, "levels": "13"})
    assert (good["sign"], bad["sign"]) == ("computed", "refused")
    assert good["echoes"] == bad["echoes"] and len(good["echoes"]) == 4
    assert bad["errors"][0]["id"] == "levels"


def test_an_outline_is_echoed_whole_with_and_without_a_sheet() -> None:
    fields = {"unit": "m", "arc-chord": "12", "arc-sagitta": "0.9", "ground-1-stops": "feet"}
    fields |= {"ground-1-outline": "3, -2; 5, -2.5; 4, -6", "known-0-name": "tree", "known-0-x": "1", "known-0-y": "-1"}
    good, bad = ask(fields), ask({**fields, "levels": "13"})
    assert (good["sign"], bad["sign"]) == ("computed", "refused")
    assert plain(good["echoes"]["ground-1-outline"]) == "3.000 m, -2.000 m; 5.000 m, -2.500 m; 4.000 m, -6.000 m"
    assert good["echoes"] == bad["echoes"] and "known-0-y" in good["echoes"]
    assert 'data-scale="' in good["site_plan"] and bad["site_plan"] == ""


def test_an_empty_form_asks_for_the_arc() -> None:
    result = ask({})
    assert result["sign"] == "refused" and result["errors"][0]["id"] == "arc-chord"
    assert result["errors"][0]["line"].startswith(say("form.section_arc"))


def test_every_refusal_of_one_wrong_field_comes_back_to_it() -> None:
    good = {"arc-chord": "38 ft", "arc-sagitta": "5 ft"}
    for field in all_fields({}):
        if field.kind in ("text", "note", "flag", "choice"):
            continue
        result = ask({**good, field.id: "seven"})
        assert result["sign"] == "refused", field.id
        assert field.id in [error["id"] for error in result["errors"]], field.id


def test_questions_that_the_page_never_asks() -> None:
    for call, fields in (("sheets", "{}"), ("sheet", '{"arc-chord": 38}'), ("sheet", '{"x": "1"}')):
        payload = f'{{"fields": {fields}}}'
        with pytest.raises(ValueError):
            handle(call, payload)


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
    result = ask(fields_of_job(DEMO))
    assert result["sheet"] in page
    assert 'value="38 ft"' in page and escape(str(DEMO["note"])) in page
    ids = re.findall(r'\sid="([^"]+)"', page)
    assert len(ids) == len(set(ids))
    assert set(re.findall(r'href="#([^"]+)"', page)) <= set(ids), "every link leads somewhere"


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
    assert "//" not in re.sub(r'xmlns(:\w+)?="[^"]*"', "", page)


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
        found = re.search(rf'<script type="text/plain" id="packed-{re.escape(name)}">([A-Za-z0-9+/=]+)</script>', page)
        assert found is not None
        content = base64.b64decode(found[1])
        assert (gzip.decompress(content) if name in dress.SQUEEZED else content) == parts[name].read_bytes()
    assert 'content="https://example.org/&quot;&lt;arc&gt;"' in page
    assert page == dress.saved(shell, parts, 'https://example.org/"<arc>')


def test_the_build_and_the_page_pack_the_same_parts() -> None:
    """The page fills the places of a shell that the build has made: both have to know the same names."""
    (listed,) = re.findall(r"PACKED = (\[.*?\]);", SOURCE)
    (plain,) = re.findall(r"PLAIN = (\[.*?\]);", SOURCE)
    assert sorted(json.loads(listed)) == sorted((*dress.PLAIN, *dress.SQUEEZED))
    assert sorted(json.loads(plain)) == sorted(dress.PLAIN)
    (files,) = re.findall(r'id="files">(.*?)</script>', TEMPLATE)
    assert sorted(json.loads(files)) == sorted(json.loads(listed))


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
    for word in re.findall(r"\bwords\.([a-z_]+)", SOURCE):
        assert word in words or word in words["desk"], word
    for name in re.findall(r'\bat\("([a-z-]+)"\)', SOURCE):
        # A saved page holds its files itself and has no list of them.
        assert f'id="{name}"' in page, name


def test_the_script_has_no_sentence() -> None:
    bare = re.sub(r"^\s*//.*|(?<=[;{,]) // .*", "", SOURCE, flags=re.MULTILINE)
    assert not [text for text in re.findall(r'"([^"\n]*)"', bare) if len(text.split()) > 3]


def test_a_template_with_a_wrong_mark_is_refused() -> None:
    for template in (TEMPLATE.replace("@FORM@", ""), TEMPLATE + "@NOTHING@"):
        with pytest.raises(ValueError, match="template"):
            build_page(template, "1")
    assert "page.clear" in catalogue()
