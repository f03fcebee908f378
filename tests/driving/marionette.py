"""Firefox's own remote protocol, as little of it as the tests need.

Messages are JSON with their length in front: [0, id, command, parameters] there and [1, id, error, result] back.
(Source: the remote protocol's page in Firefox's source documentation.) The library that speaks it, marionette_driver,
brings sixteen packages for that, one of them compiled; selenium wants a program of its own between, which Debian
doesn't have.
"""

from __future__ import annotations

import json
import socket
import time
from typing import Any


class Refused(RuntimeError):
    """What Firefox says of a command that failed."""


class Marionette:
    """A session with a Firefox that listens at a port of this machine; ``patience`` in seconds."""

    def __init__(self, port: int, patience: float) -> None:
        self._socket = _connected(port, patience)
        self._socket.settimeout(patience)
        self._file = self._socket.makefile("rb")
        self._last = 0
        self._receive()  # it introduces itself
        self.capabilities: dict[str, Any] = self.ask("WebDriver:NewSession")["capabilities"]
        self.ask("WebDriver:SetTimeouts", script=int(patience * 1000), pageLoad=int(patience * 1000))

    def ask(self, command: str, **parameters: Any) -> Any:
        """Send a command and return its result; raises ``Refused``."""
        self._last += 1
        text = json.dumps([0, self._last, command, parameters])
        self._socket.sendall(f"{len(text.encode())}:{text}".encode())
        _kind, number, error, result = self._receive()
        assert number == self._last
        if error:
            raise Refused(f"{command}: {error['error']}: {error['message']}")
        return result

    def navigate(self, address: str) -> None:
        self.ask("WebDriver:Navigate", url=address)

    def execute(self, script: str, values: list[Any]) -> Any:
        """Return what a function's body returns that runs in the page itself."""
        return self.ask("WebDriver:ExecuteScript", script=script, args=values, sandbox=None)["value"]

    def press(self, place: str) -> None:
        """Press what a selector finds."""
        found = self.ask("WebDriver:FindElement", using="css selector", value=place)["value"]
        self.ask("WebDriver:ElementClick", id=next(iter(found.values())))

    def quit(self) -> None:
        """Have the browser end, as if somebody had closed it."""
        self.ask("Marionette:Quit", flags=["eAttemptQuit"])
        self._file.close()
        self._socket.close()

    def _receive(self) -> Any:
        length = b""
        while (sign := self._file.read(1)) != b":":
            if not sign:
                raise ConnectionError("Firefox is gone")
            length += sign
        return json.loads(self._file.read(int(length)))


def _connected(port: int, patience: float) -> socket.socket:
    end = time.monotonic() + patience
    while True:
        try:
            return socket.create_connection(("127.0.0.1", port), timeout=patience)
        except OSError:
            if time.monotonic() > end:
                raise
            time.sleep(0.05)
