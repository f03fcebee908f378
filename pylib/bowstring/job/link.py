"""A whole job as a short text of letters, digits, ``-`` and ``_``: what stands after ``#`` in a link.

Form 2: ``b2``, the length of the body as three base-36 digits, the body (the job as JSON without its defaults, deflated
against a fixed dictionary, base64url without padding), and a CRC-32 of all before it as seven base-36 digits. The CRC
finds every change of one character, every swap of neighbours and every burst within 32 bits for certain, any other with
all but one chance in four thousand million; the length finds every cut. Form 1 differs in its dictionary, and in what a
job meant that named no method. Decoders are kept for ever.
"""

from __future__ import annotations

import base64
import binascii
import json
import re
import zlib
from collections.abc import Mapping
from typing import cast

from bowstring.errors import BadJob, bad
from bowstring.job.dictionary import DICTIONARY_1, DICTIONARY_2, ORDER
from bowstring.job.form import JobForm
from bowstring.job.job import VERSION, read_job
from bowstring.job.jobfile import TEXT_LIMIT, job_of_text
from bowstring.job.kept import part_kept
from bowstring.job.linkfinder import (
    CHECK_DIGITS,
    FORMS,
    LENGTH_DIGITS,
    LINK_LIMIT,
    MESSAGE_LIMIT,
    base36,
    check_of,
    find_links,
)
from bowstring.job.terms import RECORD_KEYS, TANGENT_FROM
from bowstring.methods.meant import BEFORE, meant_beside
from bowstring.units.tape import make_tape

FORM = "b2"
DICTIONARIES = dict(zip(FORMS, (DICTIONARY_1, DICTIONARY_2), strict=True))

_LIKE_ONE = re.compile(r"(?:#|^\s*)(b[0-9][A-Za-z0-9_-]*)")

_PLACES = {key: place for place, key in enumerate(ORDER)}


def write_link(job: JobForm, *, whole: bool = False) -> str:
    """Return the link text of a job (the part after ``#``); a method that it doesn't name stays unsaid.

    What was done and read, by whom and when, stays out of it unless it's asked for the ``whole`` job.

    Raises ``BadJob`` when a value in the job can't be used, or when there is too much in it for a link.

    >>> read_link(write_link({"bowstring": 1, "arc": {"radius": "12 m", "chord": "9 m"}}))["arc"]
    {'radius': '12 m', 'chord': '9 m'}
    """
    read_job(job if whole else part_kept(job)[0])  # a reading that is no length stops nothing
    sent = {key: value for key, value in _without_defaults(job).items() if whole or key not in RECORD_KEYS}
    text = json.dumps(_in_order(sent), ensure_ascii=False, separators=(",", ":"))
    packer = zlib.compressobj(9, zlib.DEFLATED, -15, 9, zlib.Z_DEFAULT_STRATEGY, DICTIONARIES[FORM])
    packed = packer.compress(text.encode()) + packer.flush()
    body = base64.urlsafe_b64encode(packed).rstrip(b"=").decode()
    head = FORM + base36(len(body), LENGTH_DIGITS) + body
    link = head + check_of(head)
    if len(link) > LINK_LIMIT:
        raise bad("link", "link.too_long", count=len(link), limit=LINK_LIMIT)
    return link


def read_link(text: str) -> JobForm:
    """Return the job of a link: a whole address, the part after ``#``, or a message with one in it.

    Raises ``BadJob`` when it is damaged, of a newer form, or no link of this tool, and where a text holds two.
    """
    if not isinstance(text, str) or len(text) > MESSAGE_LIMIT:
        raise bad("link", "link.not_one")
    links = find_links(text)
    if not links:
        raise _no_link(text)
    if len(links) > 1:
        raise bad("link", "link.several", count=len(links))
    form, body = links[0][: len(FORM)], links[0][len(FORM) + LENGTH_DIGITS : -CHECK_DIGITS]
    job: JobForm = {"bowstring": VERSION, **job_of_text(_unpacked(body, DICTIONARIES[form]))}
    return _as_meant_before(job) if form == FORMS[0] else job


def _no_link(text: str) -> BadJob:
    """Why a text holds no link that can be read, judged by what looks most like one."""
    found = _LIKE_ONE.search(text)
    if not found:
        return bad("link", "link.not_one")
    link = found[1]
    if link[: len(FORM)] not in FORMS:
        return bad("link", "link.newer")
    start = len(FORM) + LENGTH_DIGITS
    length = len(link) - start - CHECK_DIGITS
    if length < 0 or link[len(FORM) : start] != base36(length, LENGTH_DIGITS):
        return bad("link", "link.cut")
    return bad("link", "link.damaged")


def _as_meant_before(job: JobForm) -> JobForm:
    """Return a job of the first form with all that it meant, said."""
    meant = {"method": BEFORE, **job}
    return cast("JobForm", {**meant_beside(str(meant["method"]), meant.keys()), **meant})


def _unpacked(body: str, dictionary: bytes) -> str:
    try:
        packed = base64.urlsafe_b64decode(body + "=" * (-len(body) % 4))
        unpacker = zlib.decompressobj(-15, dictionary)
        plain = unpacker.decompress(packed, 4 * TEXT_LIMIT)
        whole = unpacker.eof and not unpacker.unused_data
        if whole and base64.urlsafe_b64encode(packed).rstrip(b"=").decode() == body:
            return plain.decode()
    except (zlib.error, binascii.Error, UnicodeDecodeError):
        pass
    raise bad("link", "link.damaged")


def _in_order(value: object) -> object:
    """Return a value with the keys of its objects as the dictionary has them: one job has one link."""
    if isinstance(value, Mapping):
        keys = sorted(value, key=lambda key: _PLACES.get(key, len(_PLACES)))
        return {key: _in_order(value[key]) for key in keys}
    return [_in_order(one) for one in value] if isinstance(value, list | tuple) else value


def _without_defaults(job: JobForm) -> dict[str, object]:
    """Return the job without what a reader would take anyway.

    A hand that was said stays, left too: it isn't the same as one that wasn't. So does a method: without one the
    advised is taken.
    """
    unit = job.get("unit", "ft-in")
    kept: dict[str, object] = {}
    for key, value in job.items():
        same_as_none = (
            (key == "bowstring")
            or (key == "unit" and value == "ft-in")
            or (key == "mark" and make_tape(unit, value) == make_tape(unit, None))
            or (key == "start" and value == "ends" and "line" not in job)
            or (key == "tangent_from" and value == TANGENT_FROM[2])
            or (key == "tapes_from" and list(cast("list[object]", value)) == ["A", "B"])
            or (key in ("title", "note") and not value)
            or (key in ("ties", "ends", "got", "ground", "known", "stations", *RECORD_KEYS) and not value)
            or (key == "greater" and value is False)
        )
        if key == "ends" and isinstance(value, Mapping):
            value = {end: landmark for end, landmark in value.items() if landmark}
            same_as_none = not value
        if not same_as_none:
            kept[key] = value
    return kept
