"""The command line of build.py."""

from __future__ import annotations

import argparse
import os
import shutil
from collections.abc import Sequence
from urllib.parse import urlsplit

from builder import check, environment, library, serve, squeeze, website
from builder.house import CACHE, DIST, PACKAGES, ROOT, TESTS, VENV, CannotGoOn, run_in_sight, tell


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(prog="build.py", description="Set up, build, serve, test, format, bench, clean.")
    commands = parser.add_subparsers(dest="command", required=True, metavar="COMMAND")
    serving = commands.add_parser("serve", help="build the page and serve it on this machine")
    ports = "default %(default)s, or the next free one"
    serving.add_argument("--port", type=int, default=serve.PORT, help=ports)
    building = commands.add_parser("build", help="build dist/site and the saved page, dist/bowstring.html")
    told = "where the site will be published: what links begin with in a saved page"
    building.add_argument("--address", type=_address, help=told)
    testing = commands.add_parser("test", help="lint, format, types, all tests; what stands after -- goes to pytest")
    testing.add_argument("--quick", action="store_true", help="leave the browser tests out")
    testing.add_argument("extra", nargs="*", metavar="-- ARGUMENT", help="for pytest")
    commands.add_parser("format", help="format every source: Python, scripts")
    commands.add_parser("library", help="list anew, in .build/library.txt, the modules that the page's Python imports")
    timing = commands.add_parser("bench", help="time the package and the page in every engine; also in dist/bench.md")
    timing.add_argument("--rounds", type=int, default=5, help="how often each is measured (default %(default)s)")
    commands.add_parser("clean", help="remove everything that these commands made")
    return parser


def _address(text: str) -> str:
    """Return an address that links can begin with; raises ``ArgumentTypeError``."""
    parts = urlsplit(text)
    if parts.scheme not in ("http", "https") or not parts.netloc or parts.fragment or not text.isascii() or " " in text:
        raise argparse.ArgumentTypeError("an address like https://example.org/arcs/, without a #, is wanted")
    return text


def _clean() -> None:
    compiled = [found for top in (PACKAGES, TESTS) for found in top.rglob("__pycache__")]
    for folder in (DIST, CACHE, VENV, ROOT / ".hypothesis", *compiled):
        if folder.is_symlink():
            folder.unlink()  # what it leads to is somebody else's
        elif folder.is_dir():
            shutil.rmtree(folder)


def _bench(rounds: int) -> int:
    environment.ensure("build", "test")
    squeeze.beside(website.build(), best=True)
    bench = TESTS / "bench" / "bench.py"
    return run_in_sight(
        [environment.python(), bench, str(rounds)], PYTHONPATH=os.pathsep.join([str(PACKAGES), str(TESTS)])
    )


def main(words: Sequence[str]) -> int:
    """Run one command and return its exit code."""
    asked = _parser().parse_args(words)
    try:
        match asked.command:
            case "serve":
                site = website.build()
                squeeze.beside(site, best=False)
                serve.serve(site, asked.port)
            case "build":
                site = website.build(asked.address or "")
                squeeze.beside(site, best=True)
                print(site.relative_to(ROOT).as_posix())
                print(website.SAVED.relative_to(ROOT).as_posix())
            case "test":
                return check.test(asked.extra, quick=asked.quick)
            case "format":
                return check.tidy()
            case "library":
                print(library.trace().relative_to(ROOT).as_posix())
            case "bench":
                return _bench(asked.rounds)
            case "clean":
                _clean()
    except CannotGoOn as reason:
        tell(f"build.py: {reason}")
        return 1
    except KeyboardInterrupt:
        return 130
    return 0
