"""Which browsers the tests use: those on the machine, or those from Debian's packages where that may be."""

from __future__ import annotations

import os
import shutil
import subprocess
from pathlib import Path

from builder.house import CannotGoOn, environment_with, tell

VARIABLE = "BOWSTRING_BROWSER"
NAMES = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome")
DEBIAN_PACKAGES = ("chromium", "fonts-dejavu-core", "fonts-liberation")
FIREFOX_NAMES = ("firefox-esr", "firefox")
WEBKIT_PLACES = ("*/webkit2gtk-4.1/MiniBrowser", "*/webkit2gtk-4.0/MiniBrowser", "webkit2gtk-4.1/MiniBrowser")
OTHER_PACKAGES = ("firefox-esr", "webkit2gtk-driver", "xvfb")
"""What brings the other two engines; the page works in them too, and the tests hold that where they are found."""
# A browser that tests one site has nothing to fetch, report or keep up to date elsewhere.
ARGUMENTS = (
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
)

# For tests, not for times: each page starts a Python of its own, and optimizing its code costs more than it wins.
UNOPTIMIZED = "--js-flags=--liftoff-only"


def arguments() -> list[str]:
    """Return the browser's arguments; its sandbox can't start for root, so there it's left out."""
    as_root = hasattr(os, "geteuid") and os.geteuid() == 0
    return [*ARGUMENTS, "--no-sandbox"] if as_root else list(ARGUMENTS)


def find() -> str | None:
    """Return the browser's program, or None where there isn't one.

    Raises ``CannotGoOn`` when the variable names something that isn't a program.
    """
    named = os.environ.get(VARIABLE)
    if named:
        program = shutil.which(named)
        if program is None:
            raise CannotGoOn(f"{VARIABLE} is {named!r}, which isn't a program here. Set it to a browser.")
        return program
    return next(filter(None, map(shutil.which, NAMES)), None)


def find_firefox() -> str | None:
    """Return Firefox's program, or None where there isn't one."""
    return next(filter(None, map(shutil.which, FIREFOX_NAMES)), None)


def find_webkit() -> str | None:
    """Return the program of WebKit's small browser, or None where it, its driver or a screen in memory is missing."""
    if not (shutil.which("WebKitWebDriver") and shutil.which("Xvfb")):
        return None
    lib = Path("/usr/lib")
    return next((str(found) for place in WEBKIT_PLACES for found in sorted(lib.glob(place))), None)


def ensure_others() -> None:
    """Install the other engines where this user may; elsewhere their tests say that they are missing."""
    if (find_firefox() and find_webkit()) or not _may_install():
        return
    tell(f"Installing more browsers for the tests: {' '.join(OTHER_PACKAGES)}")
    if _apt_get("update"):
        _apt_get("install", "-y", "--no-install-recommends", *OTHER_PACKAGES)


def _may_install() -> bool:
    return (
        shutil.which("apt-get") is not None
        and Path("/etc/debian_version").exists()
        and hasattr(os, "geteuid")
        and os.geteuid() == 0
    )


def _apt_get(*words: str) -> bool:
    done = subprocess.run(
        ["apt-get", "-qq", *words],
        env=environment_with({"DEBIAN_FRONTEND": "noninteractive"}),
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
    )
    if done.returncode:
        tell(done.stderr.rstrip())
    return done.returncode == 0


def ensure() -> str:
    """Return the browser's program, installed first where this user may.

    Raises ``CannotGoOn`` with what to install otherwise.
    """
    found = find()
    if found is None and _may_install():
        tell(f"Installing a browser for the tests: {' '.join(DEBIAN_PACKAGES)}")
        if _apt_get("update") and _apt_get("install", "-y", "--no-install-recommends", *DEBIAN_PACKAGES):
            found = find()
    if found is None:
        raise CannotGoOn(
            "The browser tests need Chromium or Chrome: none was found. Install one (on Debian and Ubuntu:\n"
            f"  sudo apt-get install {' '.join(DEBIAN_PACKAGES)}\n"
            f"elsewhere from your system's packages) or set {VARIABLE} to a browser's path.\n"
            "Without browser tests: python3 build.py test --quick"
        )
    return found
