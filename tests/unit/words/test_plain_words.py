"""Every sentence that a person reads is short, and calls one thing by one name."""

from __future__ import annotations

import re

from bowstring.words import catalogue
from helping import all_hold

MOST_WORDS = 20
PLACE = re.compile(r"\{[^{}]*\}")
# A sentence ends at its point, or at the end of a line; a point within a number or a key ends none.
END = re.compile(r"[.?!][\"')]*(?:\s+|$)|\n")
WORD = re.compile(r"\w")
# A word that another name has taken, and the keys that say it as something else. The form and the levels worked by
# hand tell the mid-ordinate's other names, once each.
OTHER_NAMES = {
    r"sagitta|sagittae|middle ordinates?|rise": {
        "hand_work.first",
        "numbers.tell.sagitta",
        "lesson.1.arrow",
        "lesson.1.sagitta_word",
    },
    r"half chords?": set(),
    r"levels": set(),
    r"(?<!in the )ways?": {
        *("step.stake_back", "step.back_short", "link.damaged.wrong"),
    },
    r"centres?|metres?|millimetres?|neighbours?|neighbouring|kerbs?|colours?": set(),
}


def sentences(template: str) -> list[str]:
    """Return the sentences of a template, each value as one word."""
    return [part for part in END.split(PLACE.sub("value", template)) if part.strip()]


def words(sentence: str) -> int:
    """Return how many words a sentence has: what has no letter and no digit, a sign of a formula, is none."""
    return sum(1 for part in sentence.split() if WORD.search(part))


def is_short(key: str) -> None:
    for sentence in sentences(catalogue()[key]):
        assert words(sentence) <= MOST_WORDS, f"{words(sentence)} words: {sentence}"


def test_every_sentence_is_short() -> None:
    all_hold({key: (key,) for key in catalogue()}, is_short)


def has_one_name(name: str) -> None:
    found = re.compile(rf"\b(?:{name})\b", re.IGNORECASE)
    said = {key for key, template in catalogue().items() if found.search(PLACE.sub("value", template))}
    assert said == OTHER_NAMES[name]


def test_one_thing_has_one_name() -> None:
    all_hold({name: (name,) for name in OTHER_NAMES}, has_one_name)


def test_the_counting_counts() -> None:
    assert sentences("One {a} two. Three 1.5 {b:.2f}? Four (five.) Six") == [
        "One value two",
        "Three 1.5 value",
        "Four (five",
        "Six",
    ]
    assert [words(text) for text in ("One two three", "a × (b - c) = {d}", "")] == [3, 4, 0]
    assert len(sentences("No end at 5.25 or job.key here")) == 1


def test_utilities_are_marked_some_days_before_and_caps_go_on_at_each_stake() -> None:
    told = catalogue()
    for words_of_it in ("call 811", "a few working days", "ticket number"):
        assert words_of_it in told["top.services"]
    assert "ticket number" in told["caution.services"]
    assert "as it is driven" in told["top.stakes"] and "as you drive it" in told["caution.services"]
