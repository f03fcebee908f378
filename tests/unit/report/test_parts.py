"""An answer in parts: each is what stands in the whole, is worked out once, and loads no more than it needs."""

from __future__ import annotations

import json
import subprocess
import sys
from collections import Counter
from pathlib import Path

import pytest

from bowstring import BadJob, answer
from bowstring.demo import DEMO
from bowstring.faces.fold_insides import section_of
from bowstring.report import parts
from bowstring.report.answer import Answering
from halving_jobs import JOBS


@pytest.mark.parametrize("name", JOBS)
def test_the_parts_are_the_whole_in_its_order(name: str) -> None:
    whole = answer(JOBS[name])
    assert list(Answering(JOBS[name], whole=True)) == list(whole)
    backwards = Answering(JOBS[name], whole=True)
    assert {part: backwards[part] for part in reversed(list(whole))} == whole


def test_each_part_is_worked_out_once_and_only_when_it_is_read(monkeypatch: pytest.MonkeyPatch) -> None:
    made: Counter[str] = Counter()

    def counting(part: str) -> object:
        work_out = parts.PARTS[part]

        def counted(work: object) -> object:
            made[part] += 1
            return work_out(work)  # type: ignore[arg-type]

        return counted

    monkeypatch.setattr("bowstring.report.answer.PARTS", {part: counting(part) for part in parts.PARTS})
    answering = Answering(DEMO)
    assert not made
    assert "mistakes" in answering and len(answering) == len(parts.PARTS)
    assert not made, "asking whether a part is there works nothing out"
    assert answering["arc"] is answering["arc"]
    assert made == {"arc": 1}
    assert section_of(answering, "rounding")
    assert made == {"arc": 1, "rounding": 1}
    dict(answering)
    assert set(made.values()) == {1} and made.keys() == parts.PARTS.keys()


def test_a_part_that_is_none_is_refused() -> None:
    with pytest.raises(KeyError):
        Answering(DEMO)["no such part"]


def test_a_job_that_cannot_be_used_is_refused_before_any_part_is_read() -> None:
    with pytest.raises(BadJob):
        Answering({"bowstring": 1, "arc": {"radius": 1, "chord": 3}})


LOADED = """
import json, sys
sys.path.insert(0, sys.argv[1])
{work}
print(json.dumps([name for name in sys.modules if name.startswith("bowstring.")]))
"""


@pytest.mark.parametrize(
    ("work", "wanted", "unwanted"),
    [
        (
            "from bowstring import answering; from bowstring.demo import DEMO; answering(DEMO)['arc_shown']",
            "job.job",
            ("analysis.accuracy", "analysis.mistakes", "layout.comparison", "report.cautions", "drawings", "sheet"),
        ),
        (
            "from bowstring import answering; from bowstring.demo import DEMO; answering(DEMO)['steps']",
            "job.job",
            ("analysis.accuracy", "analysis.mistakes", "layout.comparison", "drawings", "sheet"),
        ),
        ("import bowstring.page.calls", "page.fields", ("layout", "report", "analysis", "drawings", "sheet", "faces")),
        ("import bowstring.terminal", "job.job", ("drawings", "sheet", "analysis.mistakes", "page")),
    ],
)
def test_what_nobody_asked_for_is_not_even_imported(
    house: Path, work: str, wanted: str, unwanted: tuple[str, ...]
) -> None:
    command = [sys.executable, "-c", LOADED.format(work=work), str(house / "pylib")]
    done = subprocess.run(command, capture_output=True, text=True, check=True)
    loaded = json.loads(done.stdout)
    assert f"bowstring.{wanted}" in loaded
    assert [name for name in loaded for one in unwanted if f"{name}.".startswith(f"bowstring.{one}.")] == []
