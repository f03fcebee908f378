"""Which modules of the library the page's questions import, seen in the browser's own Python (see ``prepare.mjs``)."""

import json
import sys
from typing import Any

STANDARD = "python314.zip"
BROKEN = ("{", '{"bowstring": 1, "arc": {"chord": "5 3"}}')
CLASS = {"numbers": 1, "own": {"chord": "38", "out": "5"}}
TAPPED = {"stops": "tape", "scale": "20", "turn": "1", "points": [[0, 0], [60, 0], [60, 60]]}
# A job that somebody has begun, and one that is a stop: beside the example and jobs that can't be read.
BEGUN = {"done": "1 2", "read-0-check": "A-M", "read-0-value": "19 ft", "by": "R.", "date": "2027-03-01"}
GOT = {
    "got-0-stake": "M",
    "got-0-measures-0-from": "A",
    "got-0-measures-0-to": "M",
    "got-0-measures-0-distance": "20 ft",
}
SLAB = {
    "width": "5 ft",
    "edge": "outside",
    "slab-thickness": "4 in",
    "grade-slope": "2",
    "grade-high": "B",
    "grade-low": "inside",
}
STOPPED = {"arc-chord": "400 ft", "arc-sagitta": "60 ft", "method": "halving", "tape-length": "30 ft"}


def traced(packages: str) -> str:
    """Return the names of the modules, one a line; ``packages`` is where the archive of installed sources lies."""
    sys.path.insert(0, packages)
    _questions()
    return "\n".join(sorted(name for name in list(sys.modules) if _of_the_library(name, packages)))


def _questions() -> None:
    from bowstring.demo import DEMO
    from bowstring.page.calls import CALLS

    asked: set[str] = set()
    for text in BROKEN:
        _ask("open_file", asked, text=text)
    part = 0
    while _ask("warm", asked, part=part)["more"]:
        part += 1
    fields = _ask("open_file", asked, text=json.dumps(DEMO))["fields"]
    for more in ({}, {"arc-chord": ""}, {"arc-chord": "5 3"}, {"unit": "m", "mark": ""}, BEGUN, GOT, STOPPED):
        _about({**fields, **more}, asked)
    left = set(CALLS) - asked
    if left:
        raise ValueError(f"never asked here, so what these import may be missing: {sorted(left)}")
    try:
        _ask("no such call", asked)
    except ValueError as fault:
        import traceback  # what the runtime does with an exception that reaches the page's script

        traceback.format_exception(fault)


def _shown_in(unit: str, fields: dict[str, str], asked: set[str]) -> None:
    """Ask what a device asks that shows another unit than the job's."""
    from bowstring.page.shown import show_in

    show_in(unit)
    _ask("spelled", asked, fields=fields, text="19.02", must="19.02 ft")
    for face in ("checks", "paper"):
        _ask("face", asked, fields=fields, face=face, card=None, panel="", address="")
    show_in(None)


def _about(fields: dict[str, str], asked: set[str]) -> None:
    """Ask everything that the page asks about a job."""
    from bowstring.faces.conclusions import FOLDS
    from bowstring.page.facing import FACES

    for panel in ("", "way"):
        for call in ("numbers", "numbers_later"):
            _ask(call, asked, fields={**fields, "unit_before": "m"}, panel=panel, focus="arc-chord")
    _ask("numbers", asked, fields={**fields, "before-0-straight": "20 ft"}, panel="pieces")
    for face in FACES:
        _ask("face", asked, fields=fields, face=face, card=None, panel="", address="https://example.org/")
    for page in ("edges", "boards", "joints", "grades", "pour"):
        _ask("face", asked, fields={**fields, **SLAB}, face="build", card=None, panel=page, address="")
    got = {"m0": "19 ft 2 in", "m1": "19 ft"}
    for card, panel in ((1, "got"), (2, "got"), (2, "list"), (3, "")):
        _ask("face", asked, fields=fields, face="stakes", card=card, panel=panel, got=got, address="")
    for key in FOLDS:
        for head in (True, False):
            _ask("fold", asked, fields=fields, key=key, head=head)
    link = _ask("link", asked, fields=fields, address="").get("link")
    _ask("open_link", asked, text=link or "b1")
    _ask("set_back", asked, fields={**fields, "stood": link or "b1", "spacing": "3 ft"})
    for call in ("sheet", "job_file"):
        _ask(call, asked, fields=fields, address="")
    for what in ("qr", "messages", "files"):
        _ask("hand_over", asked, fields=fields, address="https://example.org/", what=what)
    for kind in ("people", "svg", "png", "dxf", "instrument-n-e", "instrument-x-y"):
        _ask("hand_file", asked, fields=fields, kind=kind)
    _shown_in("ft", fields, asked)
    _ask("mistake", asked, fields=fields, kind="burned_foot")
    _ask("outline", asked, fields=fields, **TAPPED)
    for question in ({"figure": 0}, {"figure": 1}, {"slider": 1}, {"list": 1}, {"handout": 4}, CLASS):
        _ask("wall", asked, fields=fields, **question)
    _ask("example", asked)


def _ask(call: str, asked: set[str], **question: object) -> dict[str, Any]:
    from bowstring.page.calls import handle

    told: dict[str, Any] = json.loads(handle(call, json.dumps(question)))
    asked.add(call)
    return told


def _of_the_library(name: str, packages: str) -> bool:
    origin = getattr(getattr(sys.modules[name], "__spec__", None), "origin", None) or ""
    other = origin.startswith(f"{packages}/") and not name.startswith("bowstring")
    return other or f"/{STANDARD}/" in origin
