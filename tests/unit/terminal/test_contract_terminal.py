"""The terminal door: `python3 -m bowstring JOB`.

A process of its own, run as its user runs it with nothing but the standard library, where the process is the point:
exit codes, locales, streams, modules. All else asks the same function inside this one.
"""

from __future__ import annotations

import io
import json
import os
import subprocess
import sys
from functools import cache
from pathlib import Path
from types import SimpleNamespace
from typing import Any

import pytest

import bowstring
from bad_job_keys import ALL as CASES
from bowstring.demo import DEMO
from bowstring.terminal import main
from helping import SAID, all_hold, answer_to

PYLIB = Path(bowstring.__file__).resolve().parent.parent
_JOBS: dict[str, dict[str, Any]] = {
    "broad": {
        "bowstring": 1,
        "title": "Läube ½",
        "unit": "ft-in",
        "arc": {"chord": "168'", "sagitta": "33'"},
        "levels": 4,
        "method": "halving",
        "tolerance": "1/4 in",
        "ends": {"A": "the oak — north", "B": "a gate post, 38 letters long, or more."},
    },
    "metric": {
        "unit": "m",
        "arc": {"radius": "8 m", "central_angle": "250° 30'"},
        "levels": 3,
        "side": "right",
        "note": "n " * 140,
    },
    "two-arcs": {
        "unit": "mm",
        "arc": {"radius": 6000, "chord": 9000},
        "offset": 25,
        "toward": "outside",
        "title": "T" * 80,
    },
    "points": {"unit": "ft", "arc": {"points": [[0, 0], [20, 4.5], [40, 0]]}, "spacing": 3},
}
JOBS = {name: {**SAID, **job} for name, job in _JOBS.items()}
ALL = pytest.mark.parametrize("name", JOBS)


def run(*words: str, stdin: str | bytes = "", **env: str) -> subprocess.CompletedProcess[bytes]:
    """Run the terminal door without site-packages, in the C locale, with a bare environment."""
    given = stdin.encode() if isinstance(stdin, str) else stdin
    bare = {"PYTHONPATH": str(PYLIB), "LANG": "C", "LC_ALL": "C", "PATH": os.environ.get("PATH", ""), **env}
    return subprocess.run(
        [sys.executable, "-S", "-m", "bowstring", *words],
        input=given,
        env=bare,
        capture_output=True,
        timeout=60,
        check=False,
    )


def call(*words: str, stdin: str | bytes = "") -> subprocess.CompletedProcess[bytes]:
    """Call the terminal door's function with streams of its own, as a process would have them."""
    given = stdin.encode() if isinstance(stdin, str) else stdin
    out, err = (io.TextIOWrapper(io.BytesIO(), "utf-8", write_through=True) for _ in range(2))
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(sys, "stdin", SimpleNamespace(buffer=io.BytesIO(given)))
        patch.setattr(sys, "stdout", out)
        patch.setattr(sys, "stderr", err)
        try:
            code = main(words)
        except SystemExit as end:
            code = end.code  # type: ignore[assignment]
    texts = (stream.buffer.getvalue() for stream in (out, err))  # type: ignore[attr-defined]
    return subprocess.CompletedProcess(words, code, *texts)


@cache
def sheet(name: str, *flags: str) -> str:
    done = call("-", *flags, stdin=json.dumps(JOBS[name]))
    assert done.returncode == 0 and done.stderr == b"", done.stderr
    return done.stdout.decode()


@ALL
def test_sheet_is_plain_text_of_80_columns(name: str) -> None:
    for flags in ((), ("--all",)):
        lines = sheet(name, *flags).splitlines()
        assert len(lines) > 15
        assert not [line for line in lines if len(line) > 80]
        assert all(line.isprintable() for line in lines)


@ALL
def test_sheet_holds_the_numbers_of_the_answer(name: str) -> None:
    text, got = sheet(name, "--all"), answer_to(JOBS[name])
    for step in got["steps"]:
        for measure in step["measures"]:
            assert measure["shown"] in text
    for stake in got["stakes"]:
        assert stake["name"] in text
    first_words = [" ".join(caution.split()[:3]) for caution in got["cautions"]]
    flowing = " ".join(text.split())
    for words in first_words:
        assert words in flowing


def test_the_short_sheet_is_a_screen_or_two_with_every_number_that_is_set() -> None:
    done = call("-", stdin=json.dumps(DEMO))
    text, got = done.stdout.decode(), answer_to(DEMO)
    assert done.returncode == 0 and len(text.splitlines()) <= 60
    flowing = " ".join(text.split())
    for step in got["steps"]:
        for measure in step["measures"]:
            assert measure["shown"] in text
    for word in (DEMO["title"], "on your LEFT", "square off, LEFT", "must read", "Call 811", "--all"):
        assert word in flowing
    for check in got["checks"]:
        assert not check["recommended"] or check["shown"] in text
    assert len(text) < len(call("-", "--all", stdin=json.dumps(DEMO)).stdout.decode()) / 4


def test_a_short_sheet_that_nobody_may_build_from_says_why_and_has_no_step() -> None:
    job = {key: value for key, value in DEMO.items() if key != "side"}
    text, got = call("-", stdin=json.dumps(job)).stdout.decode(), answer_to(job)
    flowing = " ".join(text.split())
    assert "STOP" in text.split() and all(" ".join(stop.split()) in flowing for stop in got["stops"])
    numbers = {one["shown"] for step in got["steps"] for one in step["measures"]}
    assert numbers and not [one for one in numbers if one in text]


@ALL
def test_json_is_the_answer(name: str) -> None:
    assert json.loads(sheet(name, "--json")) == answer_to(JOBS[name], whole=True)


@ALL
def test_a_link_is_one_word_and_the_whole_job(name: str) -> None:
    link = sheet(name, "--link").strip()
    assert "\n" not in link and "#" not in link
    received, sent = answer_to(bowstring.read_link(link)), answer_to(JOBS[name])
    assert received["method_said"]
    # The same sheet: the link says which method was taken, and no longer what chose it.
    notes = [note for note in sent["notes"] if "so the method is" not in note]
    assert received == {**sent, "method_said": True, "notes": notes}


def test_path_standard_input_link_and_process_give_the_same(tmp_path: Path) -> None:
    """By the one with letters outside ASCII; that a link is the whole job is held for every one above."""
    name = "broad"
    file = tmp_path / "job with space.json"
    file.write_text(json.dumps(JOBS[name], ensure_ascii=False), encoding="utf-8")
    link = sheet(name, "--link").strip()
    for word in (str(file), link, "https://example.org/arc/#" + link):
        done = call(word, "--json")
        assert done.returncode == 0, done.stderr
        assert json.loads(done.stdout) == json.loads(sheet(name, "--json"))
    own = run(str(file))
    assert own.returncode == 0 and own.stderr == b""
    assert own.stdout.decode() == sheet(name)


def test_a_job_file_with_a_byte_order_mark() -> None:
    marked = call("-", "--json", stdin=b"\xef\xbb\xbf" + json.dumps(JOBS["broad"], ensure_ascii=False).encode())
    assert marked.returncode == 0
    assert json.loads(marked.stdout) == answer_to(JOBS["broad"], whole=True)


def test_a_bare_terminal_shows_the_sheet_with_what_it_has() -> None:
    bare = run(
        "-",
        stdin=json.dumps(JOBS["broad"]),
        PYTHONIOENCODING="ascii",
        PYTHONUTF8="0",
        PYTHONCOERCECLOCALE="0",
    )
    assert bare.returncode == 0 and b"Traceback" not in bare.stderr
    assert bare.stdout.isascii() and b"L?ube" in bare.stdout


def test_nothing_but_the_standard_library_is_loaded() -> None:
    code = (
        "import sys, runpy; sys.argv = ['bowstring', '-']; before = set(sys.modules)\n"
        "try:\n    runpy.run_module('bowstring', run_name='__main__')\nexcept SystemExit: pass\n"
        "strange = {m.split('.')[0] for m in set(sys.modules) - before} - sys.stdlib_module_names\n"
        "strange -= {'bowstring', '__main__'}\n"
        "print('STRANGE', sorted(strange))"
    )
    done = subprocess.run(
        [sys.executable, "-S", "-c", code],
        input=json.dumps(JOBS["metric"]).encode(),
        check=False,
        env={"PYTHONPATH": str(PYLIB), "LANG": "C"},
        capture_output=True,
        timeout=60,
    )
    assert done.returncode == 0, done.stderr
    assert done.stdout.decode().splitlines()[-1] == "STRANGE []"


def refused(done: subprocess.CompletedProcess[bytes], *fields: str) -> str:
    """Hold a refusal to the contract: exit 2, one line `FIELD: ...` on standard error, nothing on standard
    output."""
    assert done.returncode == 2, (done.returncode, done.stdout[:300], done.stderr[:300])
    assert done.stdout == b""
    text = done.stderr.decode()
    assert text.endswith("\n") and text.count("\n") == 1 and text[:-1].isprintable(), text
    field = text.partition(": ")[0]
    assert any(field == one or (one.endswith("*") and field.startswith(one[:-1])) for one in fields), text
    assert len(text) > len(field) + 12
    return text


EVERY = max(1, len(CASES) // 18)
SAMPLE = [
    case
    for case in CASES[::EVERY]
    if isinstance(case[1], dict) and all(isinstance(k, str) for k in case[1]) and "deep" not in case[0]
]


def test_bad_jobs_in_the_terminal() -> None:
    """One of each kind of fault: that every one is refused, and how, is held where jobs are read."""
    assert len(SAMPLE) > 12
    cases = {name: (bad, fields) for name, bad, fields in SAMPLE}
    all_hold(cases, lambda bad, fields: refused(call("-", "--json", stdin=json.dumps(bad)), *fields, "job"))


BAD_FILES: dict[str, tuple[bytes, tuple[str, ...]]] = {
    "empty": (b"", ("job",)),
    "not-json": (b"chord: 10", ("job",)),
    "cut-short": (b'{"arc": {"chord": 10', ("job",)),
    "two-objects": (b"{} {}", ("job",)),
    "not-utf8": (b'{"title": "\xff\xfe"}', ("job",)),
    "list": (b"[1, 2]", ("job",)),
    "nan": (b'{"unit": "m", "arc": {"chord": NaN, "sagitta": 1}}', ("job", "arc.chord")),
    "infinity": (b'{"unit": "m", "arc": {"chord": 10, "sagitta": -Infinity}}', ("job", "arc.sagitta")),
    "overflow": (b'{"unit": "m", "arc": {"chord": 1e999, "sagitta": 1}}', ("job", "arc.chord")),
    "twice-same-key": (
        b'{"unit": "m", "arc": {"chord": 10, "chord": 12, "sagitta": 1}}',
        ("job", "arc.chord", "arc", "chord"),
    ),
    "twice-arc": (
        b'{"unit": "m", "arc": {"chord": 9, "sagitta": 1}, "arc": {"chord": 10, "sagitta": 1}}',
        ("job", "arc"),
    ),
    "deep": (b"[" * 100000, ("job",)),
    "deep-closed": (b'{"title": ' + b"[" * 50000 + b"]" * 50000 + b"}", ("job", "title")),
    "long-integer": (
        b'{"unit": "m", "arc": {"chord": ' + b"9" * 6000 + b', "sagitta": 1}}',
        ("job", "arc.chord"),
    ),
    "nul": (b"\x00\x00", ("job",)),
    "lone-surrogate": (
        b'{"unit": "m", "title": "\\ud800", "arc": {"chord": 10, "sagitta": 1}}',
        ("job", "title"),
    ),
}


def test_bad_files() -> None:
    all_hold(BAD_FILES, lambda content, fields: refused(call("-", stdin=content), *fields))


@pytest.mark.parametrize("name", ["cut-short", "not-utf8", "deep-closed"])
def test_bad_files_in_a_process_of_its_own(name: str) -> None:
    """Its exit code, and no traceback; the deep one could end an interpreter."""
    content, fields = BAD_FILES[name]
    refused(run("-", stdin=content), *fields)


def test_a_file_that_is_not_there_and_a_folder(tmp_path: Path) -> None:
    refused(call(str(tmp_path / "no such job.json")), "job")
    refused(call(str(tmp_path)), "job")


@pytest.mark.parametrize(
    ("words", "named"),
    [
        ((), ""),
        (("--json",), ""),
        (("-", "--colour"), "--colour"),
        (("--colour",), "--colour"),
        (("-", "--js"), "--js"),
        (("-", "--json=5"), ""),
        (("-", "--json", "--link"), "--link"),
        (("-", "--all", "--csv"), "--all"),
        (("-", "--messages", "--csv"), "--messages"),
        (("-", "-"), "-"),
        (("one.json", "an other\n.json"), "an other"),
    ],
    ids=str,
)
def test_a_wrong_command_line_is_refused_on_one_line_that_says_how_to_call(words: tuple[str, ...], named: str) -> None:
    text = refused(call(*words, stdin=json.dumps(JOBS["metric"])), "job")
    assert "python3 -m bowstring JOB" in text
    assert named in text


def test_a_closed_standard_input_is_refused_too() -> None:
    code = "import sys; from bowstring.terminal import main; sys.stdin = None; sys.exit(main(['-']))"
    done = subprocess.run(
        [sys.executable, "-S", "-c", code], env={"PYTHONPATH": str(PYLIB)}, capture_output=True, timeout=60, check=False
    )
    refused(done, "job")


def test_messages_are_printed_apart() -> None:
    done = call("-", "--messages", stdin=json.dumps(JOBS["metric"]))
    assert done.returncode == 0 and done.stderr == b""
    found = done.stdout.decode().rstrip("\n").split("\n\n")
    assert len(found) > 1 and [one.split("/")[0] for one in found] == [str(number + 1) for number in range(len(found))]


def test_help_says_how_to_call() -> None:
    done = call("--help")
    assert done.returncode == 0 and done.stderr == b""
    assert "python3 -m bowstring JOB" in done.stdout.decode()
