"""Programs of other people that come as one file a machine: esbuild and biome, from npm."""

from __future__ import annotations

import os
import platform
import sys
from pathlib import Path

from builder import npm
from builder.house import CannotGoOn

_PROCESSORS = {"x86_64": "x64", "amd64": "x64", "aarch64": "arm64", "arm64": "arm64"}


def machine() -> str:
    """Return this machine's kind as npm's packages name it: ``linux-x64``."""
    processor = platform.machine().lower()
    return f"{sys.platform}-{_PROCESSORS.get(processor, processor)}"


def _program(product: str, package: str, file: str) -> Path:
    if package not in npm.locked()[product]["integrity"]:
        raise CannotGoOn(f"{product} isn't locked for this machine ({machine()}): add its package to .build/npm.toml.")
    return npm.fetched(product, package, [file], kept=f"-{machine()}") / Path(file).name


def esbuild() -> Path:
    """Return the program that makes scripts one, fetched and checked the first time."""
    return _program("esbuild", f"@esbuild/{machine()}", "esbuild.exe" if os.name == "nt" else "bin/esbuild")


def biome() -> Path:
    """Return the program that formats and lints scripts and styles, fetched and checked the first time."""
    package = f"@biomejs/cli-{machine()}{'-musl' if sys.platform == 'linux' else ''}"
    return _program("biome", package, "biome.exe" if os.name == "nt" else "biome")
