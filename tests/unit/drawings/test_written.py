"""A drawing's text is what ElementTree makes of the same elements, sign for sign."""

from __future__ import annotations

import svgwrite  # type: ignore[import-untyped]
import svgwrite.base  # type: ignore[import-untyped]

from bowstring.drawings.svg import STYLE, Drawing
from bowstring.drawings.written import written

HOSTILE = "</svg><b> & \"'` ]]> \u05d2 é 𝄞"


def test_every_kind_of_element_is_written_as_elementtree_does() -> None:
    drawing = svgwrite.Drawing(debug=False)
    drawing.attribs["aria-label"] = HOSTILE
    title = svgwrite.base.Title(HOSTILE)
    title.xml.set("id", "a-title")
    drawing.elements.insert(0, title)
    drawing.defs.add(drawing.style(STYLE))
    group = drawing.g()
    for element in (
        drawing.rect(),
        drawing.circle(),
        drawing.path(d="M0,0 L3,4 Z"),
        drawing.text(HOSTILE),
        drawing.text(""),
    ):
        element.attribs["data-for"] = HOSTILE
        group.add(element)
    drawing.add(group)
    assert written(drawing.get_xml()) == drawing.tostring()


def test_a_drawing_is_written_so() -> None:
    drawing = Drawing(id="a", title=HOSTILE, description=HOSTILE)
    drawing.lines([[(0.0, 0.0), (3.0, 4.0)]], "line")
    drawing.text(HOSTILE, (1.0, 2.0), "number", data={"for": HOSTILE})
    text = drawing.finish((0.0, 0.0, 10.0, 10.0))
    assert text == drawing._svg.tostring()
    assert "&lt;/svg&gt;&lt;b&gt; &amp; &quot;'" in text
