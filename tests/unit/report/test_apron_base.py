"""Where the base is at an apron, under boards lower than the slab, and by measured depths: said alike on every page."""

from __future__ import annotations

from typing import Any

import pytest

from form_jobs import CROSSED
from helping import answer_to
from lined_jobs import CREEK


def with_slab(job: dict[str, Any], **slab: Any) -> Any:
    return answer_to({**job, "slab": {**job["slab"], **slab}})


def test_in_an_apron_the_base_is_as_much_lower_under_the_foot() -> None:
    """By hand: a 2x4 is 3-1/2 in high, so 4 in of slab lie 1/2 in under its foot, and 6 in of apron 2-1/2 in."""
    base = " ".join(answer_to(CROSSED)["grades"]["base"])
    assert 'That is 1/2" under the foot of a form 3-1/2" high. Apron: 6" thick' in base
    assert 'The base steps down there, *2-1/2" under the foot*.' in base
    taller = answer_to({**CROSSED, "board": {"kind": "2x6"}})["grades"]["base"]
    assert 'steps down there, *1/2" under the foot*' in " ".join(taller)
    own = {**CROSSED, "board": {"thickness": "3/4 in", "height": "6 in"}}
    assert "The base steps down there, to the foot." in " ".join(answer_to(own)["grades"]["base"])


@pytest.mark.parametrize("job", [CROSSED, CREEK], ids=["an arc", "a line"])
def test_what_the_forms_stand_on_stays_and_the_deeper_part_is_cut_inside_them(job: dict[str, Any]) -> None:
    """It is dug past the edges and filled with base: no earth is left standing under a form."""
    answer = with_slab({**job, "slab": {**job["slab"], "apron": CROSSED["slab"]["apron"]}})
    if job is CROSSED:
        told = " ".join(answer["pour"]["deep"]["apron"])
    else:
        told = str([page for page in answer["lined"]["pages"] if page["key"] == "pour"])
    assert "What they stand on stays: cut the deeper part inside the forms." in told
    assert "earth under them" not in told and "deeper between the forms" in told


@pytest.mark.parametrize(
    ("depths", "told"),
    [
        ([("0", "4-1/4 in"), ("40 ft", "4-1/4 in")], 'as measured the base is up to 3/4" below its foot'),
        ([("0", "4-1/4 in"), ("18 ft", "6-1/4 in"), ("40 ft", "4-3/8 in")], 'up to 7/8" below its foot'),
        ([("0", "4 in"), ("18 ft", "6-1/2 in"), ("40 ft", "3-3/4 in")], 'high: the base is 1/2" below its foot'),
        ([("0", "4-5/8 in"), ("40 ft", "4 in")], 'leaves 1-1/8" open under its foot: use a taller board'),
        ([("18 ft", "6-1/4 in"), ("20 ft", "6-1/4 in")], 'high: the base is 1/2" below its foot'),
    ],
)
def test_measured_depths_say_how_far_the_base_is_below_the_foot(depths: list[tuple[str, str]], told: str) -> None:
    """The most that was measured less the board's 3-1/2 in; in the apron no board stands on what is cut."""
    rows = [{"at": at, "depth": depth} for at, depth in depths]
    assert told in " ".join(with_slab(CROSSED, depths=rows)["pour"]["lines"])
