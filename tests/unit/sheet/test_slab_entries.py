"""Each length that a slab's fields take is called by a plain name where the entries are compared with the drawing."""

import pytest

from bowstring.page.slab_fields import SLAB_FIELDS
from bowstring.sheet.entries import entry_name

LENGTHS = ("fine", "length", "bed", "zero", "signed")
PLACES = [place for place, kind, _word, _choices in SLAB_FIELDS if kind in LENGTHS]


@pytest.mark.parametrize("place", [*PLACES, "board.lengths[0]", "grade.ground[1].level"])
def test_a_length_of_the_slab_has_a_plain_name(place: str) -> None:
    name = entry_name(place)
    assert name != place and "." not in name and "_" not in name


def test_a_row_is_told_by_its_number() -> None:
    assert entry_name("board.lengths[1]") == "board length 2"
    assert entry_name("grade.ground[0].level") == "the ground, row 1"
