"""Which modules of the library the page's questions import, seen in the browser's own Python (see ``prepare.mjs``)."""

import json
import sys

STANDARD = "python314.zip"
BROKEN = ("{", '{"bowstring": 1, "arc": {"chord": "5 3"}}')


def traced(packages: str) -> str:
    """Return the names of the modules, one a line; ``packages`` is where the archive of installed sources lies."""
    sys.path.insert(0, packages)
    _questions()
    return "\n".join(sorted(name for name in list(sys.modules) if _of_the_library(name, packages)))


def _questions() -> None:
    from bowstring.demo import DEMO
    from bowstring.page.calls import handle

    for text in (json.dumps(DEMO), *BROKEN):
        opened = json.loads(handle("open_file", json.dumps({"text": text})))
        fields = opened.get("fields", {"arc-chord": "5 3", "arc-radius": "12 m"})
        asked = json.dumps({"fields": fields, "unit_before": "m", "address": "", "panel": "way"})
        for call in ("numbers", "numbers_later", "sheet"):
            handle(call, asked)
        _faces({**fields, "method": "ordinates", "done": "1", "stood": "b1"})
        handle("open_link", json.dumps({"text": json.loads(handle("link", asked))["link"] or "b1"}))
        for file in ("job_file", "stakes_file"):
            handle(file, json.dumps({"fields": fields}))
        handle("mistake", json.dumps({"fields": fields, "kind": "burned_foot"}))
        tapped = {"stops": "tape", "scale": "20", "up": "-1", "points": [[0, 0], [60, 0], [60, 60]]}
        handle("outline", json.dumps({"fields": fields, **tapped}))
    handle("example", "{}")
    try:
        handle("no such call", "{}")
    except ValueError as fault:
        import traceback  # what the runtime does with an exception that reaches the page's script

        traceback.format_exception(fault)


def _faces(fields: dict[str, str]) -> None:
    """Every face, the panel of what was got with something typed in it, and every fold."""
    from bowstring.faces.conclusions import FOLDS
    from bowstring.page.calls import handle

    for face in ("stakes", "checks", "paper", "why"):
        for more in ({}, {"panel": "got", "card": 4, "got": {"m0": "3"}}):
            handle("face", json.dumps({"fields": fields, "face": face, **more}))
    for key in FOLDS:
        handle("fold", json.dumps({"fields": fields, "key": key}))


def _of_the_library(name: str, packages: str) -> bool:
    origin = getattr(getattr(sys.modules[name], "__spec__", None), "origin", None) or ""
    other = origin.startswith(f"{packages}/") and not name.startswith("bowstring")
    return other or f"/{STANDARD}/" in origin
