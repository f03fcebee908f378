"""The page made whole at build time, with an empty form in it."""

from __future__ import annotations

import base64
import hashlib
import json
import re
from html import escape

from bowstring.drawings.svg import STYLE
from bowstring.job.jobfile import TEXT_LIMIT
from bowstring.methods.meant import BEFORE, BESIDE, PLACED
from bowstring.page.beside import OF_THE_DAY, PLAIN, READ_ROW
from bowstring.page.fields import MARKS, MOST_FIELDS
from bowstring.page.form import form_html
from bowstring.page.rows import MEASURE_ID, SURE_ID
from bowstring.page.tapped import DRAWN
from bowstring.units.tape import make_tape
from bowstring.words import say
from bowstring.words.languages import LANGUAGES, NAMES, SPOKEN_AS, TAGS

_STATES = ("starting", "last", "waiting", "failed")
_TROUBLES = ("start", "no_wasm", "slow_start", "slow", "fault", "old")
_HOST = ("missing", "type", "damaged", "unreachable", "late", "copy")
_KEPT = ("kept", "full", "none")
_OFFLINE = ("fetching", "ready", "saved", "never", "failed", "dead")
_JOB = (
    "elsewhere_both",
    "elsewhere_gone",
    "elsewhere_keep",
    "elsewhere_leave",
    "other_part",
    "nothing",
    "sent",
    "copied",
)
_DESK = (
    *("untitled", "unreadable", "remove", "file_large", "open_failed", "copied", "copy_by_hand"),
    *("saving", "saved", "save_failed", "no_address", "open_already", "ask_failed", "received", "copy"),
)
KEPT_BESIDE = "|".join(
    [*PLAIN, *(re.sub(r"\?P<[a-z]+>", "?:", one.pattern) for one in (READ_ROW, MEASURE_ID, SURE_ID))]
)
"""What the page's script lets stand beside the form, as a pattern: any other field that the form hasn't is left out."""
_MARK = re.compile(r"@([a-zA-Z_.]+)@")


def build_page(template: str, version: str) -> str:
    """Return the whole page: the template with the empty form and every sentence put in.

    Marks in the template: ``@FORM@``, ``@VERSION@``, ``@WORDS@`` (what the script needs, as JSON), ``@STYLE@`` (the
    drawings' style for the page's policy), and any message of the page's topic by its key.

    Raises ``ValueError`` when a mark is missing or unknown.
    """
    parts = {
        "FORM": form_html({}, {}, ""),
        "VERSION": escape(version),
        "WORDS": _script_words(),
        "STYLE": _digest(STYLE),
    }
    missing = parts.keys() - set(_MARK.findall(template))
    if missing:
        raise ValueError(f"the template has no {sorted(missing)}")

    def filled(mark: re.Match[str]) -> str:
        name = mark[1]
        if name in parts:
            return str(parts[name])
        if not name.startswith(("page.", "shown.")):
            raise ValueError(f"the template has an unknown mark: {name}")
        return escape(say(name, version=version))

    return _MARK.sub(filled, template)


def _script_words() -> str:
    """Return what the script shows before or without Python, as JSON that can stand inside an element."""
    words = {
        "units": {unit: say(f"form.beside.{unit}") for unit in MARKS},
        "decimal": [unit for unit in MARKS if unit != "ft-in"],
        "metric": [unit for unit in MARKS if not make_tape(unit, None).feet],
        "status": {state: say(f"page.status_{state}") for state in _STATES},
        "trouble": {
            **{trouble: say(f"page.trouble_{trouble}") for trouble in _TROUBLES},
            **{f"host_{fault}": say(f"host.{fault}") for fault in _HOST},
        },
        "job": {
            **{word: say(f"page.{word}") for word in _JOB},
            "kept": {state: say(f"page.kept_{state}") for state in _KEPT},
            "undo": {what: say(f"page.undo_{what}") for what in ("clear", "empty", "remove", "done", "again")},
            "desk": {"untitled": say("page.desk_untitled")},
        },
        "new_job": say("page.new_job"),
        "languages": [
            {"name": name, "called": NAMES[name], "tag": TAGS[name], "calls": SPOKEN_AS[name]} for name in LANGUAGES
        ],
        "kept_beside": KEPT_BESIDE,
        "of_the_day": OF_THE_DAY,
        "offline": {state: say(f"page.offline_{state}") for state in _OFFLINE},
        "desk": {word: say(f"page.desk_{word}") for word in _DESK},
        "tapping": {drawn: say(f"siteplan.tapping.{drawn}") for drawn in DRAWN},
        "sizes": {"text": TEXT_LIMIT, "fields": MOST_FIELDS},
        "meant": {"method": BEFORE, "beside": BESIDE, "placed": PLACED},
    }
    return json.dumps(words).replace("<", "\\u003c")


def _digest(text: str) -> str:
    """Return what a page's policy allows an inline style by."""
    return f"'sha256-{base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()}'"
