"""The page's scripts made one: each module keeps its own names, and where a line comes from is found again."""

from __future__ import annotations

import json
import re
import subprocess
from pathlib import Path

import pytest

from builder import npm, scripts, website
from builder.house import CannotGoOn

ALONE = {"early.js", "host.js", "worker.js"}  # each a script of its own
SOURCES = {file.name: file.read_text("utf-8") for file in website.SCRIPTS.glob("*.js")}


@pytest.fixture(scope="module")
def page() -> scripts.Bundle:
    return scripts.bundled(website.SCRIPTS / "page.js")


def test_the_page_has_every_module_and_none_of_what_stands_alone(page: scripts.Bundle) -> None:
    inside = re.findall(r"^// site/scripts/(\S+)$", page.script, re.MULTILINE)
    assert sorted(inside) == sorted(SOURCES.keys() - ALONE)
    assert not re.search(r"^(?:import|export)\b", page.script, re.MULTILINE)
    for name in ALONE:
        assert ' from "./' not in SOURCES[name], name


def test_modules_may_have_names_in_common(tmp_path: Path) -> None:
    (tmp_path / "a.js").write_text('import { b } from "./b.js";\nconst name = 1;\nconsole.log(name + b());\n')
    (tmp_path / "b.js").write_text("const name = 20;\nexport const b = () => name;\n")
    (tmp_path / "one.mjs").write_text(scripts.bundled(tmp_path / "a.js").script)
    done = subprocess.run([npm.node(), tmp_path / "one.mjs"], check=True, capture_output=True, text=True)
    assert done.stdout == "21\n"


@pytest.mark.parametrize("wrong", ['import { c } from "./b.js";\nc();', 'import "./none.js";', "const = 1;"])
def test_what_cannot_be_made_one_stops_the_build(tmp_path: Path, wrong: str) -> None:
    (tmp_path / "a.js").write_text(wrong)
    (tmp_path / "b.js").write_text("export const b = 1;\n")
    with pytest.raises(CannotGoOn, match=r"a\.js:1:"):
        scripts.bundled(tmp_path / "a.js")


def test_lines_stay_readable_and_the_worker_is_found_beside_the_script(page: scripts.Bundle) -> None:
    """Where something fails a browser tells a line and a function, which lead somewhere without the map too."""
    lines = page.script.splitlines()
    assert len(lines) > 1000 and sorted(map(len, lines))[len(lines) * 99 // 100] < 130
    for source in (text for name, text in SOURCES.items() if name not in ALONE):
        for function in re.findall(r"^export (?:async )?function (\w+)", source, re.MULTILINE):
            assert re.search(rf"^(?:async )?function {function}\b", page.script, re.MULTILINE), function
    assert 'new URL("./worker.js", import.meta.url)' in page.script


def test_the_map_is_no_part_of_the_script_and_names_no_place_outside_the_house(page: scripts.Bundle) -> None:
    told = json.loads(page.map)
    assert {Path(name).name for name in told["sources"]} == SOURCES.keys() - ALONE
    assert all(re.fullmatch(r"(?:\.\./)+site/scripts/\w+\.js", name) for name in told["sources"])
    assert "sourceMappingURL" not in page.script


def test_what_modules_share_does_not_change() -> None:
    """A module that exports what it changes has every other one depend on when it does."""
    assert [
        name for name, text in SOURCES.items() if re.search(r"^export (?:let|var|default)\b", text, re.MULTILINE)
    ] == []


def test_the_walls_script_is_one_of_its_own_with_its_look_and_no_sentence() -> None:
    """It comes when it is asked for: nothing of it stands in the page's script, and all that it says is Python's."""
    folder = website.SCRIPTS / "wall"
    made = scripts.bundled(folder / "wall.js").script
    inside = re.findall(r"^// site/scripts/wall/(\S+)$", made, re.MULTILINE)
    assert sorted(inside) == sorted(file.name for file in folder.glob("*.js"))
    assert "globalThis.bowstringWall =" in made and ".w-arc" in made
    for file in folder.glob("*.js"):
        bare = re.sub(r"^\s*//.*|(?<=[;{,]) // .*", "", file.read_text("utf-8"), flags=re.MULTILINE)
        assert not re.findall(r'"[^"\n]*[A-Za-z]{2,} [a-z]{2,} [a-z]{2,}[^"\n]*"', bare), file.name
