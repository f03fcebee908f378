"""Runs inside the browser's Python (see prepare.mjs): return the library's modules that the page's questions import."""

import json
import sys

sys.path.insert(0, "/packages.zip")

from bowstring.demo import DEMO
from bowstring.page.calls import handle

STANDARD = "python314.zip"
TEXTS = (json.dumps(DEMO), "{", '{"bowstring": 1, "arc": {"chord": "5 3"}}')


def questions() -> None:
    for text in TEXTS:
        opened = json.loads(handle("open_file", json.dumps({"text": text})))
        fields = opened.get("fields", {"arc-chord": "5 3", "arc-radius": "12 m"})
        sheet = json.loads(handle("sheet", json.dumps({"fields": fields, "unit_before": "m", "address": ""})))
        handle("open_link", json.dumps({"text": sheet.get("link") or "b1"}))
        handle("job_file", json.dumps({"fields": fields}))
    try:
        handle("no such call", "{}")
    except ValueError as fault:
        import traceback  # what the runtime does with an exception that reaches the page's script

        traceback.format_exception(fault)


questions()
found = sorted(
    name
    for name, module in sys.modules.items()
    if (origin := getattr(getattr(module, "__spec__", None), "origin", None) or "")
    if f"/{STANDARD}/" in origin or (origin.startswith("/packages.zip/") and not name.startswith("bowstring"))
)
"\n".join(found)
