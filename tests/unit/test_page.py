"""The page's Python side: questions answered as the script expects them, and a page built whole."""

from __future__ import annotations

import base64
import hashlib
import json
import re
from html import escape, unescape
from pathlib import Path
from typing import Any

import pytest

from bowstring import answer
from bowstring.demo import DEMO
from bowstring.views.fields import all_fields, fields_of_job
from bowstring.views.page import build_page, handle
from bowstring.words import catalogue, say

SITE = Path(__file__).resolve().parents[2] / "site"
TEMPLATE = (SITE / "page.html").read_text("utf-8")


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


def test_the_page_is_whole() -> None:
    page = build_page(TEMPLATE, "1.2.3+<x>")
    assert not re.search(r"@[A-Za-z_.]+@", page)
    assert 'data-sheet="prebuilt"' in page and 'data-version="1.2.3+&lt;x&gt;"' in page
    result = ask(fields_of_job(DEMO))
    assert result["sheet"] in page
    assert 'value="38 ft"' in page and escape(str(DEMO["note"])) in page
    ids = re.findall(r'\sid="([^"]+)"', page)
    assert len(ids) == len(set(ids))


def test_the_page_s_policy_allows_the_drawings_style_and_nothing_from_elsewhere() -> None:
    page = build_page(TEMPLATE, "1")
    policy = re.search(r'http-equiv="Content-Security-Policy" content="([^"]+)"', page)
    assert policy is not None and "unsafe" not in policy[1].replace("'wasm-unsafe-eval'", "")
    for style in set(re.findall(r"<style[^>]*>(.*?)</style>", page, re.DOTALL)):
        inside = style.removeprefix("<![CDATA[").removesuffix("]]>")
        assert f"sha256-{base64.b64encode(hashlib.sha256(inside.encode()).digest()).decode()}" in policy[1]
    assert "//" not in re.sub(r'xmlns(:\w+)?="[^"]*"', "", re.sub(r"<style.*?</style>", "", page, flags=re.DOTALL))


def test_the_script_finds_its_words() -> None:
    page = build_page(TEMPLATE, "1")
    found = re.search(r'<script type="application/json" id="words">(.*?)</script>', page, re.DOTALL)
    assert found is not None
    words = json.loads(found[1])
    assert words["units"]["ft-in"] == say("form.beside.ft-in")
    script = (SITE / "page.js").read_text("utf-8")
    for state in re.findall(r'(?:status|trouble|wait)\("([a-z_]+)"', script):
        assert state in words["status"] or state in words["trouble"], state
    for name in re.findall(r'\bat\("([a-z-]+)"\)', script):
        assert f'id="{name}"' in page, name


def test_the_script_has_no_sentence() -> None:
    script = (SITE / "page.js").read_text("utf-8")
    assert not [text for text in re.findall(r'"([^"\n]*)"', script) if len(text.split()) > 3]


def test_a_template_with_a_wrong_mark_is_refused() -> None:
    for template in (TEMPLATE.replace("@FORM@", ""), TEMPLATE + "@NOTHING@"):
        with pytest.raises(ValueError, match="template"):
            build_page(template, "1")
    assert "page.clear" in catalogue()
