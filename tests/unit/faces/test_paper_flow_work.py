"""What it takes to set a line's form sheet: sizes are tried many times, so texts are measured once and written once."""

from __future__ import annotations

from typing import Any

import pytest

from bowstring.faces import paper_flow, paper_lined
from helping import answer_to
from line_jobs import SHAPES
from lined_jobs import FIVE


def counted(monkeypatch: pytest.MonkeyPatch, module: Any, name: str) -> list[Any]:
    calls: list[Any] = []
    real = getattr(module, name)

    def counting(*asked: Any) -> Any:
        calls.append(asked)
        return real(*asked)

    monkeypatch.setattr(module, name, counting)
    return calls


@pytest.mark.parametrize("job", [FIVE, SHAPES["many"]], ids=["five", "many"])
def test_each_text_is_measured_once_a_size_and_each_table_written_once(
    job: dict[str, Any], monkeypatch: pytest.MonkeyPatch
) -> None:
    answer = answer_to(job)
    for remembered in (paper_flow._longest, paper_flow._least, paper_flow._whole, paper_flow._columns_wide):
        remembered.cache_clear()
    measured = counted(monkeypatch, paper_flow, "unstarred")  # of every text that is measured
    written = counted(monkeypatch, paper_lined, "html_of")
    placed = counted(monkeypatch, paper_lined, "placed")
    html = paper_lined.lined_sides(answer, "")
    assert len(placed) >= 2 * len(paper_lined.DRAWN)  # every height of the drawing, with and without hundredths
    bands = [band for band, _row in written]
    assert len(bands) == len({repr(band) for band in bands}) and html.count("<h3>") >= 1
    texts = {text for (text,) in measured}
    sizes = len(paper_flow.ROWS) + 1
    # For its longest word and whole, in each size; each cell and head that is written asks for its stars once more.
    assert len(measured) <= len(texts) * sizes * 2 + html.count("<t") + html.count("<h3>")
