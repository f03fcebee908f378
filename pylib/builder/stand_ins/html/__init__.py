# Stands for sha256 923d82d821e75e8d235392c10c145ab8587927b3faf9c952bbd48081eebd8522
"""Text made safe for HTML, without the table of all named characters: the page never reads HTML."""

_SAFE = str.maketrans({"&": "&amp;", "<": "&lt;", ">": "&gt;"})
_SAFE_QUOTED = str.maketrans({"&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#x27;"})


def escape(s, quote=True):
    return s.translate(_SAFE_QUOTED if quote else _SAFE)
