"""Three browsers behind one small interface: open an address, run a script in the page, restart.

Chromium is driven by Playwright; Firefox by its own remote protocol; WebKit by its WebDriver, on a screen in memory.
"""

from __future__ import annotations

import atexit
import os
import shutil
import socket
import subprocess
import time
from abc import ABC, abstractmethod
from collections.abc import Callable
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

from builder import browser
from driving.marionette import Marionette

if TYPE_CHECKING:
    from playwright.sync_api import Playwright

PATIENCE = 60.0  # seconds
PAUSE = 0.05


DESK, PHONE = (1280, 900), (360, 740)
"""Sizes of a window: width and height. Engines that have a least width take that."""


class Driver(ABC):
    """A running browser; ``folder`` is what it may keep its profile in, ``window`` how large its window is."""

    lasting = True
    """Whether what a site has put on the device is there after a restart."""

    def __init__(self, folder: Path, window: tuple[int, int] = DESK) -> None:
        self.folder, self.window = folder, window
        self.start()

    @abstractmethod
    def start(self) -> None: ...

    @abstractmethod
    def close(self) -> None: ...

    @abstractmethod
    def go(self, address: str) -> None:
        """Open an address in the one tab."""

    @abstractmethod
    def run(self, script: str, *values: Any) -> Any:
        """Run a function's body in the page, which finds ``values`` in ``arguments``; return what it returns."""

    @abstractmethod
    def press(self, place: str) -> None:
        """Press what a selector finds as a finger does: a page may do more then than for a script of its own."""

    @property
    @abstractmethod
    def version(self) -> str: ...

    def restart(self) -> None:
        self.close()
        self.start()

    def until_some(self, script: str, *values: Any, patience: float = PATIENCE) -> Any:
        """Wait until a script returns something, and return that."""
        end = time.monotonic() + patience
        while (found := self.run(script, *values)) is None:
            assert time.monotonic() < end, f"{script}: nothing"
            time.sleep(PAUSE)
        return found

    def until(self, script: str, wanted: Any) -> None:
        """Wait until a script returns what is wanted; raises ``AssertionError`` with what it returned at last."""
        end = time.monotonic() + PATIENCE
        while (found := self.run(script)) != wanted:
            assert time.monotonic() < end, f"{script}: {found!r}, not {wanted!r}"
            time.sleep(PAUSE)


@cache
def playwright_here() -> Playwright:
    """Return the one Playwright of this process: it can't have two."""
    from playwright.sync_api import sync_playwright

    manager = sync_playwright()
    running = manager.start()
    atexit.register(running.stop)
    return running


class Chromium(Driver):
    def start(self) -> None:
        self.context = playwright_here().chromium.launch_persistent_context(
            str(self.folder / "profile"),
            executable_path=browser.find(),
            args=browser.arguments(),
            viewport={"width": self.window[0], "height": self.window[1]},
        )
        self.page = self.context.pages[0]

    def close(self) -> None:
        self.context.close()

    def go(self, address: str) -> None:
        self.page.goto(address)

    def run(self, script: str, *values: Any) -> Any:
        return self.page.evaluate(f"(values) => (function () {{ {script} }}).apply(null, values)", list(values))

    def press(self, place: str) -> None:
        self.page.click(place)

    @property
    def version(self) -> str:
        running = self.context.browser
        return running.version if running else str(self.page.evaluate("navigator.userAgent"))


FIREFOX = (
    'user_pref("browser.shell.checkDefaultBrowser", false);',
    'user_pref("app.update.disabledForTesting", true);',
    'user_pref("datareporting.policy.dataSubmissionEnabled", false);',
    'user_pref("network.captive-portal-service.enabled", false);',
    'user_pref("network.connectivity-service.enabled", false);',
    'user_pref("browser.startup.page", 0);',
    'user_pref("browser.sessionstore.resume_from_crash", false);',
)


class Firefox(Driver):
    def start(self) -> None:
        profile = self.folder / "profile"
        profile.mkdir(exist_ok=True)
        port = free_port()
        # Tests of one page: nothing is to be asked, fetched or reported elsewhere.
        (profile / "user.js").write_text("\n".join([*FIREFOX, f'user_pref("marionette.port", {port});', ""]), "utf-8")
        command = [str(browser.find_firefox()), "--headless", "--marionette", "--profile", str(profile), "--no-remote"]
        self.process = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        self.marionette = Marionette(port, PATIENCE)
        self.marionette.ask("WebDriver:SetWindowRect", width=self.window[0], height=self.window[1])

    def close(self) -> None:
        self.marionette.quit()
        ended(self.process)

    def go(self, address: str) -> None:
        self.marionette.navigate(address)

    def run(self, script: str, *values: Any) -> Any:
        return self.marionette.execute(script, list(values))

    def press(self, place: str) -> None:
        self.marionette.press(place)

    @property
    def version(self) -> str:
        return str(self.marionette.capabilities["browserVersion"])


class WebKit(Driver):
    lasting = False  # a browser under test keeps nothing of its own accord

    def start(self) -> None:
        from selenium.webdriver import WebKitGTK, WebKitGTKOptions
        from selenium.webdriver.webkitgtk.service import Service

        self.screen, display = unseen_screen()
        options = WebKitGTKOptions()
        options.binary_location = str(browser.find_webkit())
        options.add_argument("--automation")
        env = {**os.environ, "DISPLAY": display, "WEBKIT_DISABLE_COMPOSITING_MODE": "1"}
        service = Service(str(shutil.which("WebKitWebDriver")), env=env)
        self.driver = WebKitGTK(options=options, service=service)
        self.driver.set_script_timeout(PATIENCE)
        self.driver.set_window_size(*self.window)

    def close(self) -> None:
        self.driver.quit()
        self.screen.terminate()
        ended(self.screen)

    def go(self, address: str) -> None:
        self.driver.get(address)

    def run(self, script: str, *values: Any) -> Any:
        return self.driver.execute_script(script, *values)

    def press(self, place: str) -> None:
        self.driver.find_element("css selector", place).click()

    @property
    def version(self) -> str:
        return str(self.driver.capabilities["browserVersion"])


ENGINES: dict[str, tuple[type[Driver], Callable[[], object]]] = {
    "chromium": (Chromium, browser.find),
    "firefox": (Firefox, browser.find_firefox),
    "webkit": (WebKit, browser.find_webkit),
}
"""Each engine's driver, and what tells whether it's on this machine."""


def free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return int(probe.getsockname()[1])


def unseen_screen() -> tuple[subprocess.Popen[bytes], str]:
    """Start a screen in memory; return it with its name."""
    reading, writing = os.pipe()
    command = ["Xvfb", "-displayfd", str(writing), "-screen", "0", "1280x900x24", "-nolisten", "tcp"]
    screen = subprocess.Popen(command, pass_fds=[writing], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    os.close(writing)
    with os.fdopen(reading) as told:
        return screen, f":{told.readline().strip()}"


def ended(process: subprocess.Popen[bytes]) -> None:
    """Wait for a process to end; after a while, end it."""
    try:
        process.wait(20)
    except subprocess.TimeoutExpired:
        process.kill()
        process.wait()
