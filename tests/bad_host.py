"""A host that doesn't send what was published: for some files another type, none at all, or harmed bytes."""

from __future__ import annotations

import io
from collections.abc import Callable
from http import HTTPStatus
from pathlib import Path
from typing import BinaryIO

from builder import serve

Harm = Callable[[str], bool]


class BadHost(serve.SiteHandler):
    """Serves a site with the faults that its class holds; ``host()`` makes a class of its own for a test."""

    mistyped: Harm
    missing: Harm
    damaged: Harm
    kept_for = ""
    """What it says about how long a browser may keep a file; nothing: as the house's own server."""

    def send_head(self) -> BinaryIO | None:
        path = self.path.partition("?")[0]
        if type(self).missing(path):
            self.send_error(HTTPStatus.NOT_FOUND)
            return None
        if not type(self).damaged(path):
            return super().send_head()
        whole = Path(self.translate_path(path)).read_bytes()
        content = bytearray(whole[: len(whole) * 2 // 3])
        content[len(whole) // 3] ^= 0x55
        content += b"\n)]}"  # a script that ends early can be whole by chance: this one can't be run
        self.send_response(HTTPStatus.OK)
        self.send_header("Content-Type", self.guess_type(path))
        self.send_header("Content-Length", str(len(content)))
        self.end_headers()
        return io.BytesIO(bytes(content))

    def guess_type(self, path: object) -> str:
        return "text/plain" if type(self).mistyped(str(path)) else super().guess_type(str(path))

    def send_header(self, keyword: str, value: str) -> None:
        # A browser that may keep a file asks nobody for it: the one it got stays.
        kept = keyword == "Cache-Control" and type(self).kept_for and "/v-" in self.path
        super().send_header(keyword, type(self).kept_for if kept else value)


def host(kept_for: str = "") -> type[BadHost]:
    """Return the class of a host without a fault yet."""
    none = staticmethod(lambda path: False)
    return type("Host", (BadHost,), {"mistyped": none, "missing": none, "damaged": none, "kept_for": kept_for})


def mend(made: type[BadHost]) -> None:
    """Take every fault away."""
    made.mistyped = made.missing = made.damaged = staticmethod(lambda path: False)  # type: ignore[assignment]
