"""The terminal door: ``python3 -m bowstring JOB [--method NAME] [--all | --json | --link | --csv]``."""

from __future__ import annotations

import argparse
import io
import json
import os
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import NoReturn

from bowstring.errors import BadJob, bad
from bowstring.job.form import JobForm
from bowstring.job.jobfile import TEXT_LIMIT, job_of_text
from bowstring.job.link import read_link, write_link
from bowstring.methods.catalogue import BY_NAME
from bowstring.report.answer import answer, answering
from bowstring.report.linked import with_method
from bowstring.units.echo import quoted, visible
from bowstring.words import say

ANSWERED, UNUSABLE = 0, 2


class _Parser(argparse.ArgumentParser):
    """The library's parser, whose complaints are refusals like any other: one line, and nothing in two voices."""

    def error(self, message: str) -> NoReturn:
        raise bad("job", "usage.not_readable")


def main(arguments: Sequence[str] | None = None) -> int:
    """Answer one job; return the exit code: 0 when answered, 2 when the job can't be used.

    >>> main(["no such file.json"])
    2
    """
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="replace")
    try:
        options = _options(arguments)
        job = _job(options.job)
        if options.method is not None:
            job["method"] = options.method
        text = _text(job, options)
    except BadJob as refusal:
        print(visible(str(refusal)), file=sys.stderr)
        return UNUSABLE
    try:
        sys.stdout.write(text)
        sys.stdout.flush()
    except BrokenPipeError:
        # Whoever read the sheet closed it early; Python would complain once more when it flushes at exit.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    return ANSWERED


def _options(arguments: Sequence[str] | None) -> argparse.Namespace:
    """Return what was called for: ``job`` and the options. Raises ``BadJob`` for a call that can't be followed."""
    parser = _Parser(usage=say("usage.call"), description=say("terminal.what"), allow_abbrev=False)
    parser.add_argument("job", metavar="JOB", nargs="?", help=say("terminal.job"))
    parser.add_argument("--method", metavar="NAME", help=say("terminal.method", methods=", ".join(BY_NAME)))
    parser.add_argument("--all", action="store_true", help=say("terminal.all"))
    parser.add_argument("--json", action="store_true", help=say("terminal.json"))
    parser.add_argument("--link", action="store_true", help=say("terminal.link"))
    parser.add_argument("--csv", action="store_true", help=say("terminal.csv"))
    parser.add_argument("--messages", action="store_true", help=say("terminal.messages"))
    options, unknown = parser.parse_known_args(arguments)
    if unknown:
        raise bad("job", "usage.not_known", word=quoted(unknown[0]))
    if options.job is None:
        raise bad("job", "usage.no_job")
    if options.all + options.json + options.link + options.csv + options.messages > 1:
        raise bad("job", "usage.one_of_two")
    return options


def _text(job: JobForm, options: argparse.Namespace) -> str:
    """Return what was asked for; no part of the answer is worked out that it doesn't show."""
    if options.json:
        return json.dumps(answer(job), allow_nan=False) + "\n"
    answered = answering(job)  # refuses a job that can't be used, whatever is shown of it
    if options.link:
        return write_link(with_method(job, answered)) + "\n"
    if options.csv:
        from bowstring.sheet.csv import stakes_csv

        return stakes_csv(answered)
    if options.messages:
        from bowstring.sheet.messages import messages

        return "\n\n".join(messages(answered)) + "\n"
    if options.all:
        from bowstring.sheet.text import sheet_text

        return sheet_text(answered)
    from bowstring.sheet.short import short_text

    return short_text(answered)


def _job(name: str) -> JobForm:
    """Return the job of a path, of standard input, or of a link."""
    if name == "-":
        if sys.stdin is None:  # closed by whoever called
            raise bad("job", "job.no_file", name=quoted(name))
        return job_of_text(_decoded(sys.stdin.buffer.read(4 * TEXT_LIMIT)))
    try:
        # A name with a NUL or half a surrogate pair is no path either.
        is_file = Path(name).is_file()
    except (OSError, ValueError):
        is_file = False
    if is_file:
        try:
            with Path(name).open("rb") as file:
                return job_of_text(_decoded(file.read(4 * TEXT_LIMIT)))
        except OSError:
            raise bad("job", "job.no_file", name=quoted(name)) from None
    try:
        return read_link(name)
    except BadJob as refusal:
        if refusal.key == "link.not_one" and "#" not in name:
            raise bad("job", "job.no_file", name=quoted(name)) from None
        raise


def _decoded(raw: bytes) -> str:
    try:
        return raw.decode("utf-8-sig")
    except UnicodeDecodeError:
        raise bad("job", "job.not_json", reason=say("terminal.not_utf8")) from None
