"""The answer to what stands in the page's fields, its link, and the long sheet."""

from __future__ import annotations

from collections.abc import Generator, Mapping
from time import monotonic

from bowstring import Answer, BadJob, answering
from bowstring.page.beside import for_layout, is_read
from bowstring.page.fields import field_of, unit_of
from bowstring.page.labels import label_of
from bowstring.page.shown import answering_here, shown_here
from bowstring.page.slab_fields import without_slab
from bowstring.page.talk import Asked, refused
from bowstring.page.unit import is_unit_open, settled_job, unit_note
from bowstring.sheet.entries import entry_name
from bowstring.words import say

PIECE = 0.012
"""Seconds after which no other method is begun at a time."""


class LastAnswer:
    """The answer to what stands in the fields, kept until they change: several faces ask for one job."""

    def __init__(self) -> None:
        self._fields: Mapping[str, str] | None = None
        self._answer: Answer | None = None
        self._link: tuple[str, str] | None = None
        self._begun: tuple[Mapping[str, str], Generator[object, None, Answer]] | None = None

    def for_fields(self, fields: Mapping[str, str]) -> Answer:
        """Return the answer to what stands in the fields, its parts worked out as they are read, in which what was read
        waits wherever it has to; raises ``BadJob``."""
        self._answer = self._read(self._laid(fields), fields)
        return self._answer

    def _read(self, answered: Answer, fields: Mapping[str, str]) -> Answer:
        if not is_read(fields):
            return answered
        from bowstring.page.waiting import waiting

        return waiting(answered, fields, lambda: self.link(fields)[0])

    def _laid(self, fields: Mapping[str, str]) -> Answer:
        asked = for_layout(fields)
        if self._answer is None or self._fields != asked:
            self._keep(asked, self._formed(asked) if self._is_laid_out(asked) else answering_here(asked))
        assert self._answer is not None
        return self._answer

    def _is_laid_out(self, asked: Mapping[str, str]) -> bool:
        """Tell whether the layout that is kept is that of the fields: nothing has changed, or no more than the slab."""
        return self._fields is not None and without_slab(self._fields) == without_slab(asked)

    def _formed(self, asked: Mapping[str, str]) -> Answer:
        """Return the answer by the layout that is kept, its slab as the fields say it; raises ``BadJob``."""
        from bowstring.report.answer import formed

        assert self._answer is not None
        return formed(self._answer, settled_job(asked))

    def _keep(self, asked: Mapping[str, str], answer: Answer) -> None:
        self._fields, self._answer, self._link, self._begun = asked, answer, None, None

    def own(self, fields: Mapping[str, str]) -> Answer:
        """Return the same answer in the job's own unit, whatever this device shows: a file that goes with the drawing
        has the drawing's unit. Raises ``BadJob``."""
        if shown_here() in (None, unit_of(fields)):
            return self.for_fields(fields)
        return answering(settled_job(for_layout(fields)))

    def goes_on(self, fields: Mapping[str, str]) -> bool:
        """Do a piece of the answer to what stands in the fields, and tell whether there is more to do: a key that is
        typed in between waits for one piece. Raises ``BadJob``."""
        from bowstring.report.answer import answering_in_pieces

        asked = for_layout(fields)
        if self._is_laid_out(asked):
            self.for_fields(fields)
            return False
        if self._begun is None or without_slab(self._begun[0]) != without_slab(asked):
            self._begun = asked, answering_in_pieces(settled_job(asked), shown=shown_here())
        enough, (begun, pieces) = monotonic() + PIECE, self._begun
        try:
            next(pieces)
            while monotonic() < enough:
                next(pieces)
        except StopIteration as end:
            self._keep(begun, end.value)
            self.for_fields(fields)
        except BadJob:
            self._begun = None
            raise
        return self._begun is not None

    def link(self, fields: Mapping[str, str]) -> tuple[str, str]:
        """Return the link of what stands in the fields, with the method that is taken, and why there is none; made once
        for all faces, since no more hangs in it than the answer does. Raises ``BadJob``."""
        from bowstring.page.linking import link_of
        from bowstring.report.linked import with_method

        answered = self._laid(fields)
        if self._link is None:
            self._link = link_of(with_method(settled_job(for_layout(fields)), answered))
        return self._link

    def whole_link(self, asked: Asked) -> str:
        """Return the link of what stands in the fields with the page's ``address`` before it."""
        link, address = self.link(asked["fields"])[0], str(asked.get("address") or "")
        return f"{address}#{link}" if address and link else link


def shown_sheet(asked: Asked, last: LastAnswer) -> Mapping[str, object]:
    """Return the long sheet, every part of it: ``{"fields", "address"}`` gives ``{"sheet": HTML}`` or
    ``{"error"}``. Where nobody has said which unit the numbers are in, that is all it says."""
    from bowstring.sheet.html import sheet_html

    if is_unit_open(asked["fields"]):
        return {"sheet": unit_note(asked["fields"])}
    try:
        answered = last.for_fields(asked["fields"])
        link = last.whole_link(asked)
    except BadJob as refusal:
        return refused(refusal)
    return {"sheet": sheet_html(answered, link, label_at)}


def shown_link(asked: Asked, last: LastAnswer) -> Mapping[str, object]:
    """Return ``{"link", "link_note"}`` for ``{"fields"}``: the part after ``#``; empty for a job that can't be used."""
    try:
        link, why_none = last.link(asked["fields"])
    except BadJob:
        return {"link": "", "link_note": say("page.unit_first") if is_unit_open(asked["fields"]) else ""}
    return {"link": link, "link_note": why_none}


def label_at(place: str) -> str:
    """Return a field's label where the form has one: nobody who fills in a form knows a job's keys."""
    return label_of(field_of(place) or "") or entry_name(place)
