"""Names of things that may belong to a service: nobody is told to move those."""

from __future__ import annotations

import re
import unicodedata

_WORDS = (
    "gas", "water", "mains?", "power", "electr", "energy", "volt", "cable", "wire", "sewer", "sewage", "storm", "drain",
    "culvert", "catch ?basin", "hydrant", "meter", "man ?hole", "hand ?hole", "utilit", "valve", "pipe", "conduit",
    "duct", "fiber", "fibre", "telecom", "telephone", "phone", "comms?", "transformer", "pole", "pedestal", "vault",
    "septic", "clean-?out", "gully", "petrol", "fuel", "oil", "steam", "chamber", "curb ?stop", "stop ?cock", "riser",
    "services?", "substation", "switchgear", "irrigation", "backflow",
)  # fmt: skip

_SERVICE = re.compile(rf"(?<![^\W\d_])({'|'.join(_WORDS)})|(main|pipe|line|valve|meter|hydrant|manhole)s?(?![^\W\d_])")
"""A word that begins with one of these, or ends with one as ``watermain`` does."""


def may_be_service(name: str) -> bool:
    """Return whether an obstacle's name sounds like a service or a part of one.

    >>> [may_be_service(name) for name in ("Gas meter", "WATERMAIN", "the shed", "old oak")]
    [True, True, False, False]
    """
    plain = unicodedata.normalize("NFKC", name).casefold()
    return bool(_SERVICE.search("".join(sign for sign in plain if unicodedata.category(sign) != "Cf")))
