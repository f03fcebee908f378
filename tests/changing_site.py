"""A site that changes under its visitors: a folder to serve, and a version of the site that differs in its name."""

from __future__ import annotations

import base64
import hashlib
import re
import shutil
from pathlib import Path

from builder import squeeze, website

NEXT = "0badcafe"
TEXTS = {".html", ".js", ".css", ".webmanifest"}


def scripts_in(text: str) -> list[str]:
    return re.findall(r"<script>(.*?)</script>", text, re.DOTALL)


def digest(script: str) -> str:
    return base64.b64encode(hashlib.sha256(script.encode()).digest()).decode()


class ChangingSite:
    """A copy of the built site, served from ``folder``; ``publish_next`` puts a newer version in its place."""

    def __init__(self, site: Path, work: Path) -> None:
        self.folder = work / "published"
        # Without squeezed copies, which a look at the site's size leaves beside its files: they'd be the old version's.
        shutil.copytree(site, self.folder, ignore=shutil.ignore_patterns(*(f"*.{end}" for end in squeeze.FORMATS)))
        (versioned,) = self.folder.glob("v-*")
        self.now = versioned.name.removeprefix("v-")
        self.version, self.next_version = (self._version(name) for name in (self.now, NEXT))

    @staticmethod
    def _version(name: str) -> str:
        return f"{website.package_version()}+{name}"

    def publish_next(self) -> Path:
        """Publish the next version, whole; return the folder of its files."""
        old = self.folder / f"v-{self.now}"
        old.rename(self.folder / f"v-{NEXT}")
        hashes = {}  # of the new files by those of the old ones: they stand in the page, which is written last
        for file in sorted(self.folder.rglob("*"), key=lambda file: file.suffix == ".html"):
            if file.suffix in TEXTS:
                text = file.read_text("utf-8")
                newer = text.replace(self.now, NEXT)
                hashes[digest(text)] = digest(newer)
                for before, after in hashes.items():
                    newer = newer.replace(before, after)
                for before, after in zip(scripts_in(text), scripts_in(newer), strict=True):
                    newer = newer.replace(digest(before), digest(after))  # the policy allows it by its hash
                file.write_bytes(newer.encode())
        (self.folder / "sw.js").unlink()  # no file of itself
        website.write_service_worker(self.folder, self.next_version)
        return self.folder / f"v-{NEXT}"
