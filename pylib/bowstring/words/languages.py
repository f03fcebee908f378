"""The languages in which everything can be said, and which of them somebody's device is served with."""

from __future__ import annotations

LANGUAGES = ("english", "british", "spanish")
"""American English first: it's whole, and what a device without any of them gets."""

NEXT = {"british": "english"}
"""Where a language has no sentence of its own, that of the next one holds."""

TRADE = ("spanish",)
"""Languages with a table of trade words (``trade.TRADE``) that a crew can change."""

TAGS = {"english": "en", "british": "en-GB", "spanish": "es"}
"""What a page says that its language is (BCP 47)."""

SPOKEN_AS = {
    "english": ("en", "en-us", "en-ca"),
    "british": ("en-gb", "en-ie", "en-au", "en-nz", "en-za"),
    "spanish": ("es",),
}
"""What a device calls the languages for which each is chosen, regions included: the longest that fits holds."""

NAMES = {"english": "English (US)", "british": "English (UK)", "spanish": "Español"}
"""What each calls itself, the same whatever is spoken."""
