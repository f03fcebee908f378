"""Squeeze files into gzip by ``libdeflate``, in the environment's Python: ``tighten.py FROM TO [FROM TO ...]``."""

from __future__ import annotations

import os
import sys
from pathlib import Path

import deflate

BEST = 12

if __name__ == "__main__":
    files = sys.argv[1:]
    for source, to in zip(files[::2], files[1::2], strict=True):
        made = Path(f"{to}.new")  # whole or not at all
        made.write_bytes(deflate.gzip_compress(Path(source).read_bytes(), BEST))
        os.replace(made, to)
