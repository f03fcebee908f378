"""A whole job as a short text of letters, digits, ``-`` and ``_``: what stands after ``#`` in a link.

Form 1: ``b1``, the length of the body as three base-36 digits, the body (the job as JSON without its defaults, deflated
against a fixed dictionary, base64url without padding), and a CRC-32 of all before it as seven base-36 digits. The CRC
finds every change of one character, every swap of neighbours and every burst within 32 bits for certain, any other with
all but one chance in four thousand million; the length finds every cut. Decoders are kept for ever.
"""

from __future__ import annotations

import base64
import binascii
import json
import re
import zlib
from collections.abc import Mapping
from typing import cast

from bowstring.errors import bad
from bowstring.job.form import JobForm
from bowstring.job.job import VERSION, read_job
from bowstring.job.jobfile import TEXT_LIMIT, job_of_text
from bowstring.methods.setting import TANGENT_FROM
from bowstring.units.tape import make_tape

FORM = "b1"
DIGITS = "0123456789abcdefghijklmnopqrstuvwxyz"
LENGTH_DIGITS, CHECK_DIGITS = 3, 7
LINK_LIMIT = 20_000

DICTIONARY_1 = (
    b'"half_chords":["stake":"got":["sure":true"hold":"directions"arc_length"radius"tape":"ground"level"fall":"'
    b'"found":{"chord":["distance":"ties":{"A":[{"to":"start":"neither"corner"one-end"driven":"hub"pin"board"'
    b'"drawn_to":"unsure"back"centre"face"greater":true"points":[[0,"external":"tangent_length":"degree":'
    b'"central_angle":"arc_length":"radius":"note":"title":"unit":"mm"m"ft"mark":"1/16 in""side":"right"'
    b'"toward":"outside"centre","offset":"1-1/2 in","spacing":"4 ft","levels":3,"ends":{"A":"","B":""},'
    b'"tolerance":"1/4 in","arc":{"sagitta":"\' 0-1/2\\"","chord":"\' 0\\""},{"arc":{"chord":"'
)
"""What a job's text is likely to hold, likeliest last. Part of form 1: never to be changed."""


def write_link(job: JobForm) -> str:
    """Return the link text of a job (the part after ``#``).

    Raises ``BadJob`` when a value in the job can't be used.

    >>> read_link(write_link({"bowstring": 1, "arc": {"radius": "12 m", "chord": "9 m"}}))["arc"]
    {'radius': '12 m', 'chord': '9 m'}
    """
    read_job(job)
    text = json.dumps(_without_defaults(job), ensure_ascii=False, separators=(",", ":"))
    packer = zlib.compressobj(9, zlib.DEFLATED, -15, 9, zlib.Z_DEFAULT_STRATEGY, DICTIONARY_1)
    packed = packer.compress(text.encode()) + packer.flush()
    body = base64.urlsafe_b64encode(packed).rstrip(b"=").decode()
    head = FORM + _base36(len(body), LENGTH_DIGITS) + body
    return head + _base36(zlib.crc32(head.encode()), CHECK_DIGITS)


def read_link(text: str) -> JobForm:
    """Return the job of a link: a whole address, or the part after ``#``.

    Raises ``BadJob`` when it is damaged, of a newer form, or no link of this tool.
    """
    if not isinstance(text, str) or len(text) > LINK_LIMIT:
        raise bad("link", "link.not_one")
    text = text.strip().rpartition("#")[2]
    if not re.fullmatch(r"b[0-9][A-Za-z0-9_-]*", text):
        raise bad("link", "link.not_one")
    if text[:2] != FORM:
        raise bad("link", "link.newer")
    head, check = text[:-CHECK_DIGITS], text[-CHECK_DIGITS:]
    start = len(FORM) + LENGTH_DIGITS
    body = head[start:]
    if len(text) < start + CHECK_DIGITS or head[len(FORM) : start] != _base36(len(body), LENGTH_DIGITS):
        raise bad("link", "link.cut")
    if check != _base36(zlib.crc32(head.encode()), CHECK_DIGITS):
        raise bad("link", "link.damaged")
    return {"bowstring": VERSION, **job_of_text(_unpacked(body))}


def _unpacked(body: str) -> str:
    try:
        packed = base64.urlsafe_b64decode(body + "=" * (-len(body) % 4))
        unpacker = zlib.decompressobj(-15, DICTIONARY_1)
        plain = unpacker.decompress(packed, 4 * TEXT_LIMIT)
        whole = unpacker.eof and not unpacker.unused_data
        if whole and base64.urlsafe_b64encode(packed).rstrip(b"=").decode() == body:
            return plain.decode()
    except (zlib.error, binascii.Error, UnicodeDecodeError):
        pass
    raise bad("link", "link.damaged")


def _base36(number: int, digits: int) -> str:
    text = ""
    for _ in range(digits):
        number, digit = divmod(number, 36)
        text = DIGITS[digit] + text
    return text


def _without_defaults(job: JobForm) -> dict[str, object]:
    """Return the job without what a reader would take anyway.

    A hand that was said stays, left too: it isn't the same as one that wasn't.
    """
    unit = job.get("unit", "ft-in")
    kept: dict[str, object] = {}
    for key, value in job.items():
        same_as_none = (
            (key == "bowstring")
            or (key == "unit" and value == "ft-in")
            or (key == "mark" and make_tape(unit, value) == make_tape(unit, None))
            or (key == "start" and value == "ends")
            or (key == "tangent_from" and value == TANGENT_FROM[2])
            or (key == "tapes_from" and list(cast("list[object]", value)) == ["A", "B"])
            or (key in ("title", "note") and not value)
            or (key in ("ties", "ends", "got", "ground", "known", "stations") and not value)
            or (key == "greater" and value is False)
        )
        if key == "ends" and isinstance(value, Mapping):
            value = {end: landmark for end, landmark in value.items() if landmark}
            same_as_none = not value
        if not same_as_none:
            kept[key] = value
    return kept
