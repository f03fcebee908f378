"""The package as others get it: its wheel, alone in an environment of its own, without a network."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import venv
from pathlib import Path

import pytest

from bowstring import answer
from bowstring.demo import DEMO
from bowstring.sheet.short import short_text
from builder import library

PROGRAMS = "Scripts" if os.name == "nt" else "bin"
PIP = ("pip", "--disable-pip-version-check", "--no-input", "--quiet", "--python")
EXAMPLE = """
import bowstring, importlib.util, json
from importlib.resources import files
assert importlib.util.find_spec("svgwrite") is None
assert files("bowstring").joinpath("py.typed").is_file()
print(json.dumps(bowstring.answer({"bowstring": 1, "arc": {"chord": "38 ft", "sagitta": "5 ft 3 in"}})["arc_shown"]))
"""


@pytest.fixture(scope="module")
def programs(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder of programs of an environment that has the wheel and nothing else."""
    folder = tmp_path_factory.mktemp("wheel")
    home = folder / "environment"
    venv.create(home, with_pip=False, symlinks=os.name != "nt")
    wheel = library.package_wheel(folder)
    python = home / PROGRAMS / "python"
    subprocess.run([sys.executable, "-m", *PIP, python, "install", "--no-deps", "--no-index", wheel], check=True)
    return home / PROGRAMS


def run(programs: Path, program: str, *words: str) -> subprocess.CompletedProcess[str]:
    """Run one of them away from the house, with a bare environment."""
    bare = {"PATH": os.defpath, "PYTHONUTF8": "1", "PYTHONIOENCODING": "utf-8"}
    command = [programs / program, *words]
    return subprocess.run(command, cwd=programs, env=bare, capture_output=True, text=True, encoding="utf-8")


def test_the_command_answers_a_job_as_the_package_does(programs: Path, tmp_path: Path) -> None:
    job = tmp_path / "job.json"
    job.write_text(json.dumps(DEMO), "utf-8")
    done = run(programs, "bowstring", str(job))
    assert (done.returncode, done.stderr) == (0, "")
    assert done.stdout == short_text(answer(DEMO))


def test_the_command_refuses_with_its_exit_code_and_one_line(programs: Path) -> None:
    done = run(programs, "bowstring", "no-such-file.json")
    assert (done.returncode, done.stdout, len(done.stderr.splitlines())) == (2, "", 1)


def test_the_library_answers_with_nothing_beside_it_and_has_its_types(programs: Path) -> None:
    done = run(programs, "python", "-c", EXAMPLE)
    assert done.returncode == 0, done.stderr
    assert json.loads(done.stdout)["chord"] == "38' 0\""
