"""Every language says everything, with the same places filled in, and nothing of another one is left in it."""

from __future__ import annotations

import importlib
import pkgutil
import re
from fractions import Fraction
from string import Formatter

import pytest

from bowstring.demo import DEMO
from bowstring.page.fields import fields_of_job
from bowstring.page.measuring import read_back
from bowstring.report.answer import answering
from bowstring.units.slopes import read_slope
from bowstring.words import british, catalogue, english, say, spanish, speak, spoken
from bowstring.words.languages import LANGUAGES, NAMES, SPOKEN_AS, TAGS, TRADE
from bowstring.words.spanish.trade import TRADE as CREWS
from bowstring.words.trade_words import in_words

ENGLISH = catalogue("english")
SAME_IN_BOTH = 0.06
"""Most of the sentences that may be alike in English and Spanish: signs, names, "no", "arco" is none of them."""


def places(template: str) -> list[tuple[str, str, str]]:
    return sorted(
        (name, kind or "", form or "") for _, name, form, kind in Formatter().parse(template) if name is not None
    )


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_language_says_everything_with_the_same_places(language: str) -> None:
    said = catalogue(language)
    assert said.keys() == ENGLISH.keys()
    assert {key: text for key, text in said.items() if places(text) != places(ENGLISH[key])} == {}


def test_what_is_written_in_a_language_is_there_to_be_said() -> None:
    for package in (spanish, british):
        for module in pkgutil.iter_modules(package.__path__):
            if package is spanish and module.name == "trade":
                continue
            own = importlib.import_module(f"{package.__name__}.{module.name}").MESSAGES
            there = importlib.import_module(f"{english.__name__}.{module.name}").MESSAGES
            assert own.keys() <= there.keys(), module.name
            if package is spanish:
                assert list(own) == list(there), module.name  # side by side
            else:
                assert [key for key, text in own.items() if text == there[key]] == [], module.name  # only what differs


def test_spanish_is_no_english() -> None:
    said = catalogue("spanish")
    alike = [key for key, text in said.items() if text == ENGLISH[key] and re.search("[a-z]{3}", text)]
    assert len(alike) < SAME_IN_BOTH * len(said), sorted(alike)
    english_words = re.compile(r"\b(?:the|and|with|from|stake|stakes|string|tape|curve)\b")
    bare = {
        key: re.sub(r"\{[^}]*\}|[\"“][^\"”]*[\"”]", "", text) for key, text in said.items()
    }  # a job's own keys are English
    left = [key for key, text in bare.items() if english_words.search(text) and "(" not in text]
    assert left == []


def test_a_crews_own_word_stands_in_every_sentence_of_it() -> None:
    changed = {**CREWS, "banqueta": "acera", "concreto": "hormigón"}
    assert in_words("~Concreto~ de la ~banqueta~", changed) == "Hormigón de la acera"
    with pytest.raises(KeyError):
        in_words("~cordel~", changed)
    assert [key for key, text in catalogue("spanish").items() if "~" in text] == []
    assert TRADE == ("spanish",)


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_slope_is_read_as_its_own_remedy_writes_it(language: str) -> None:
    """2%, 1/4 in a foot, 20 mm a metre and 1 in 50 are 2, 25/12, 2 and 2 percent, by hand."""
    said = catalogue(language)
    offered = re.findall(r"(?:as|como) (\d.*?)(?=, | or as| o como|\.$)", said["job.slope.remedy"])
    assert [read_slope(one, "grade.slope", 25) for one in offered] == [2, Fraction(25, 12), 2, 2]
    told = re.search(r"\{typed\}.*?(?=,)", said["job.slope_fraction.remedy"])
    assert told and read_slope(told[0].format(typed="1/4"), "grade.slope", 25) == Fraction(25, 12)


def test_the_same_job_has_the_same_numbers_in_every_language() -> None:
    told = {}
    for language in LANGUAGES:
        speak(language)
        answer = answering(DEMO)
        told[language] = [
            [one["shown"] for step in answer["steps"] for one in step["measures"]],
            [(stake["name"], stake["x_shown"], stake["y_shown"]) for stake in answer["stakes"]],
            len(answer["cautions"]),
            len(answer["stops"]),
        ]
    assert told["spanish"] == told["british"] == told["english"]


def test_what_was_remembered_in_one_language_is_not_said_in_another() -> None:
    typed = tuple(
        (name, text) for name, text in {**fields_of_job(DEMO), "tolerance": "abc"}.items() if "arc" not in name
    )
    said = set()
    for language in LANGUAGES:
        speak(language)
        _echoes, errors = read_back(typed)
        said.add(errors[0]["text"])
    assert len(said) >= 2
    with pytest.raises(ValueError):
        speak("klingon")


def test_each_language_has_its_name_and_its_tag() -> None:
    assert NAMES.keys() == TAGS.keys() == SPOKEN_AS.keys() == set(LANGUAGES)
    assert len(set(TAGS.values())) == len(LANGUAGES)
    speak("spanish")
    assert (spoken(), say("numbers.state_missing_2") != ENGLISH["numbers.state_missing_2"]) == ("spanish", True)
