"""The server: each file squeezed where the browser takes it, and never another file's bytes."""

from __future__ import annotations

import gzip
import http.client
import os
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path
from urllib.parse import urlsplit

import brotli
import pytest

from builder import serve, squeeze

TEXT = b"<!doctype html>" + b"an arc on the ground " * 200


@pytest.fixture(scope="module")
def address(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    folder = tmp_path_factory.mktemp("site")
    for name in ("index.html", "page.js", "alone.js", "core.wasm"):
        (folder / name).write_bytes(TEXT + name.encode())
        if name != "alone.js":
            (folder / f"{name}.br").write_bytes(brotli.compress(TEXT + name.encode()))
            (folder / f"{name}.gz").write_bytes(gzip.compress(TEXT + name.encode()))
    with serve.served(folder) as at:
        yield at


def get(address: str, path: str, **headers: str) -> tuple[int, dict[str, str], bytes]:
    with closing(http.client.HTTPConnection(urlsplit(address).netloc, timeout=60)) as connection:
        connection.request("GET", path, headers={name.replace("_", "-"): value for name, value in headers.items()})
        with connection.getresponse() as response:
            return response.status, {name.lower(): value for name, value in response.getheaders()}, response.read()


OPEN = {"br": brotli.decompress, "gzip": gzip.decompress, None: bytes}


@pytest.mark.parametrize(
    ("wish", "encoding"),
    [
        ("gzip, deflate, br, zstd", "br"),
        ("gzip", "gzip"),
        ("br;q=0, gzip;q=0.5", "gzip"),
        ("identity", None),
        ("", None),
        ("deflate", None),
    ],
)
@pytest.mark.parametrize(
    ("path", "kind"), [("/", "text/html"), ("/page.js", "text/javascript"), ("/core.wasm", "application/wasm")]
)
def test_a_file_is_squeezed_as_the_browser_takes_it(
    address: str, wish: str, encoding: str, path: str, kind: str
) -> None:
    status, headers, body = get(address, path, Accept_Encoding=wish)
    assert status == 200 and headers.get("content-encoding") == encoding
    assert headers["content-type"].startswith(kind) and headers["vary"] == "Accept-Encoding"
    assert int(headers["content-length"]) == len(body)
    assert OPEN[encoding](body) == TEXT + (path.strip("/") or "index.html").encode()


def test_a_file_without_a_squeezed_copy_is_sent_as_it_is(address: str) -> None:
    status, headers, body = get(address, "/alone.js", Accept_Encoding="br")
    assert (status, body) == (200, TEXT + b"alone.js") and "content-encoding" not in headers


def test_what_a_browser_has_is_not_sent_again_and_the_two_forms_are_kept_apart(address: str) -> None:
    tags = {wish: get(address, "/page.js", Accept_Encoding=wish)[1]["etag"] for wish in ("br", "gzip")}
    assert tags["br"] != tags["gzip"]
    status, headers, body = get(address, "/page.js", Accept_Encoding="br", If_None_Match=tags["br"])
    assert (status, body) == (304, b"") and headers["etag"] == tags["br"]
    assert get(address, "/page.js", Accept_Encoding="br", If_None_Match=tags["gzip"])[0] == 200


def test_what_is_not_there_is_not_found(address: str) -> None:
    assert get(address, "/nothing.js", Accept_Encoding="br")[0] == 404
    assert get(address, "/../secrets", Accept_Encoding="br")[0] == 404
    assert get(address, "/%ff%fe", Accept_Encoding="br")[0] == 404


@pytest.mark.parametrize(
    "path",
    ["/%00", "/page.js%00", "/%0d%0aX: y", "/" + "a" * 2000, "/" + "a" * 100_000, "/a" * 400, "/.." * 20_000],
    ids=["null", "null-behind", "lines", "long", "endless", "segments", "thousands"],
)
def test_a_path_that_no_file_can_have_is_a_bad_request(address: str, path: str) -> None:
    status, headers, body = get(address, path.replace(" ", "%20"), Accept_Encoding="br")
    assert status == 400 and b"page.js" not in body and headers["connection"] == "close"
    assert get(address, "/page.js")[0] == 200, "and the server goes on"


@pytest.mark.skipif(os.name == "nt", reason="makes symbolic links")
def test_no_folder_is_listed_and_no_link_leads_out(tmp_path: Path) -> None:
    site, outside = tmp_path / "site", tmp_path / "outside"
    (site / "icons").mkdir(parents=True)
    outside.mkdir()
    for file in (site / "page.js", site / "icons" / "a.png", outside / "secret.js", outside / "index.html"):
        file.write_bytes(TEXT)
    (site / "page.js.br").symlink_to(outside / "secret.js")
    (site / "out.js").symlink_to(outside / "secret.js")
    (site / "away").symlink_to(outside)
    (site / "within.js").symlink_to(site / "page.js")
    with serve.served(site) as at:
        for path in ("/", "/icons", "/icons/", "/out.js", "/away", "/away/", "/away/secret.js", "/away/index.html"):
            status, _, body = get(at, path)
            assert status == 404 and b"a.png" not in body and TEXT not in body, path
        assert get(at, "/within.js")[2] == TEXT and get(at, "/icons/a.png")[2] == TEXT
        assert "content-encoding" not in get(at, "/page.js", Accept_Encoding="br")[1]


def test_only_where_somebody_works_on_the_page_is_its_map_told_of(tmp_path: Path) -> None:
    (tmp_path / "site" / "v-1").mkdir(parents=True)
    (tmp_path / "site" / "v-1" / "page.js").write_bytes(TEXT)
    (tmp_path / "site" / "v-1" / "worker.js").write_bytes(TEXT)
    with serve.served(tmp_path / "site", serve.MappedHandler) as at:
        assert get(at, "/page.js.map")[0] == 404, "none was made"
        (tmp_path / "page.js.map").write_bytes(b"{}")
        status, headers, body = get(at, "/v-1/page.js")
        assert (status, body, headers["sourcemap"]) == (200, TEXT, "/page.js.map")
        status, headers, body = get(at, headers["sourcemap"])
        assert (status, body, headers["content-type"]) == (200, b"{}", "application/json; charset=utf-8")
        assert "sourcemap" not in get(at, "/v-1/worker.js")[1]
    with serve.served(tmp_path / "site") as at:
        assert "sourcemap" not in get(at, "/v-1/page.js")[1] and get(at, "/page.js.map")[0] == 404


def test_squeezed_copies_are_made_once_and_hold_the_file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(squeeze, "CACHE", tmp_path / "cache")
    site = tmp_path / "site"
    site.mkdir()
    (site / "page.js").write_bytes(TEXT)
    (site / "small.js").write_bytes(b"1")
    (site / "icon.png").write_bytes(TEXT)
    squeeze.beside(site, best=False)
    made = {file.name for file in site.iterdir()}
    assert made == {"page.js", "page.js.br", "page.js.gz", "small.js", "icon.png"}
    assert brotli.decompress((site / "page.js.br").read_bytes()) == TEXT
    assert gzip.decompress((site / "page.js.gz").read_bytes()) == TEXT
    monkeypatch.setattr(squeeze, "_squeeze", lambda jobs: pytest.fail("squeezed again"))
    squeeze.beside(site, best=False)
