"""A small server for the built site, on this machine's own address only."""

from __future__ import annotations

import contextlib
import functools
import os
import re
import threading
from collections.abc import Iterator
from http import HTTPStatus
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import BinaryIO
from urllib.parse import unquote

from builder import squeeze
from builder.house import CannotGoOn

HOST = "127.0.0.1"
PORT = 8787
PORTS_TRIED = 50
LONGEST_PATH = 1000  # characters that a request may name a file with; no file of a site needs a tenth of it
MOST_SEGMENTS = 32
MOST_LINES = 200  # of a refused request, read to its end so that the answer arrives


class SiteHandler(SimpleHTTPRequestHandler):
    """Serves files with the types that browsers insist on, and has them look again before reusing a copy."""

    protocol_version = "HTTP/1.1"
    # Stated here, not taken from the machine's registry: a wrong type for the wasm hangs the page's start.
    extensions_map = {  # noqa: RUF012
        "": "application/octet-stream",
        ".css": "text/css; charset=utf-8",
        ".html": "text/html; charset=utf-8",
        ".ico": "image/x-icon",
        ".js": "text/javascript; charset=utf-8",
        ".json": "application/json; charset=utf-8",
        ".mjs": "text/javascript; charset=utf-8",
        ".pdf": "application/pdf",
        ".png": "image/png",
        ".svg": "image/svg+xml; charset=utf-8",
        ".txt": "text/plain; charset=utf-8",
        ".wasm": "application/wasm",
        ".webmanifest": "application/manifest+json; charset=utf-8",
        ".webp": "image/webp",
        ".woff2": "font/woff2",
        ".zip": "application/zip",
    }

    def send_head(self) -> BinaryIO | None:
        """Send a file squeezed where there is such a copy beside it and the browser takes it; otherwise as it is.

        A path that no file can have is a bad request; a folder, and whatever a link leads to outside, isn't there.
        """
        if not _is_path(self.path):
            self.send_error(HTTPStatus.BAD_REQUEST)
            return None
        plain = Path(self.translate_path(self.path))
        if plain.is_dir():
            plain /= "index.html"
        if not self._is_inside(plain):
            self.send_error(HTTPStatus.NOT_FOUND)
            return None
        taken = _taken(self.headers.get("Accept-Encoding", ""))
        for ending, encoding in squeeze.FORMATS.items():
            copy = plain.with_name(f"{plain.name}.{ending}")
            if encoding in taken and copy.is_file() and self._is_inside(copy):
                return self._send_squeezed(plain, copy, encoding)
        return super().send_head()

    def _is_inside(self, file: Path) -> bool:
        """Tell whether it is a file of the served folder once every link on its way is followed."""
        return file.is_file() and file.resolve().is_relative_to(Path(self.directory).resolve())

    def send_error(self, code: int, message: str | None = None, explain: str | None = None) -> None:
        if code == HTTPStatus.REQUEST_URI_TOO_LONG:  # said before anything of the request was looked at
            self._read_on()
            code = HTTPStatus.BAD_REQUEST
        super().send_error(code, message, explain)

    def _read_on(self) -> None:
        """Read what is left of a request: a connection that is closed over unread bytes takes the answer with it."""
        for _ in range(MOST_LINES):
            if self.rfile.readline(65536) in (b"", b"\n", b"\r\n"):
                return

    def _send_squeezed(self, plain: Path, copy: Path, encoding: str) -> BinaryIO | None:
        # One file's two forms are two things to a cache: each has a tag of its own.
        tag = f'"{copy.stat().st_mtime_ns:x}-{copy.stat().st_size:x}-{encoding}"'
        if self.headers.get("If-None-Match") == tag:
            self.send_response(HTTPStatus.NOT_MODIFIED)
            self.send_header("ETag", tag)
            self.end_headers()
            return None
        self.send_response(HTTPStatus.OK)
        self.send_header("Content-Type", self.guess_type(plain))
        self.send_header("Content-Encoding", encoding)
        self.send_header("Content-Length", str(copy.stat().st_size))
        self.send_header("ETag", tag)
        self.end_headers()
        return copy.open("rb")

    def guess_type(self, path: str | os.PathLike[str]) -> str:
        return self.extensions_map.get(Path(path).suffix.lower(), self.extensions_map[""])

    def end_headers(self) -> None:
        self.send_header("Cache-Control", "no-cache")
        self.send_header("Vary", "Accept-Encoding")
        self.send_header("X-Content-Type-Options", "nosniff")
        super().end_headers()

    def log_request(self, code: object = "-", size: object = "-") -> None:
        """Say nothing about what went well."""


class MappedHandler(SiteHandler):
    """Serves a site on which somebody works: the script's map lies beside the site, and a header says where to ask."""

    MAP = "/page.js.map"

    def send_head(self) -> BinaryIO | None:
        script_map = Path(self.directory).with_name(self.MAP.removeprefix("/"))
        if self.path != self.MAP or not script_map.is_file():
            return super().send_head()
        self.send_response(HTTPStatus.OK)
        self.send_header("Content-Type", self.guess_type("map.json"))
        self.send_header("Content-Length", str(script_map.stat().st_size))
        self.end_headers()
        return script_map.open("rb")

    def end_headers(self) -> None:
        if self.path.endswith("/page.js"):
            self.send_header("SourceMap", self.MAP)
        super().end_headers()


def _is_path(address: str) -> bool:
    """Tell whether a request's address can name a file: endless ones and unseen characters can't."""
    path = address.partition("?")[0].partition("#")[0]
    text = unquote(path)
    return len(path) <= LONGEST_PATH and path.count("/") <= MOST_SEGMENTS and not re.search(r"[\x00-\x1f\x7f]", text)


def _taken(header: str) -> set[str]:
    """Return the encodings that a browser takes, by what it says of itself."""
    wishes = (wish.strip().partition(";") for wish in header.lower().split(","))
    return {name.strip() for name, _, weight in wishes if weight.replace(" ", "") not in ("q=0", "q=0.0", "q=0.00")}


class SiteServer(ThreadingHTTPServer):
    daemon_threads = True
    # Where the system would let two servers share a port, ask it not to.
    allow_reuse_address = os.name != "nt"

    def handle_error(self, request: object, client_address: object) -> None:
        """A browser that goes away in the middle of a file is nothing to report."""


def open_server(folder: Path, port: int = PORT, kind: type[SiteHandler] = SiteHandler) -> SiteServer:
    """Return a server for ``folder`` at ``port`` or the next free one; ``port`` 0 takes any free one.

    ``kind`` handles the requests.

    Raises ``CannotGoOn`` when none of the next fifty is free.
    """
    handler = functools.partial(kind, directory=str(folder))
    for candidate in range(port, min(port + PORTS_TRIED, 65536)) if port else [0]:
        try:
            return SiteServer((HOST, candidate), handler)
        except OSError:
            continue
    raise CannotGoOn(f"No free port from {port} on: name another with --port.")


def address(server: SiteServer) -> str:
    """Return the address to type into a browser."""
    return f"http://{HOST}:{server.server_address[1]}/"


@contextlib.contextmanager
def served(folder: Path, kind: type[SiteHandler] = SiteHandler) -> Iterator[str]:
    """Serve ``folder`` at any free port while the block runs; gives the address. ``kind`` handles the requests."""
    server = open_server(folder, 0, kind)
    thread = threading.Thread(target=server.serve_forever, kwargs={"poll_interval": 0.05}, daemon=True)
    thread.start()
    try:
        yield address(server)
    finally:
        server.shutdown()
        server.server_close()
        thread.join()


def serve(folder: Path, port: int) -> None:
    """Serve ``folder`` until the person stops it."""
    with open_server(folder, port, MappedHandler) as server:
        print(f"Bowstring is at {address(server)}   (Ctrl-C stops it)", flush=True)
        with contextlib.suppress(KeyboardInterrupt):
            server.serve_forever()
        print(flush=True)
