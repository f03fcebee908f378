"""What stands in a stake's row of a table, by the kind of the step that sets it."""

from __future__ import annotations

from bowstring.methods.method import DEFLECTION, HALF_CHORD, OFF_CHORD, TAPED, Column, Table

_STRING, _BEFORE = "sheet.from_to", "table.from_mark"
_SQUARE_OFF = Column("square_off", 1)

STRINGS = Table(
    "stake",
    (
        Column("string_between", None, _STRING),
        Column("half", 0),
        Column("square_off", TAPED),
        Column("half_chord", HALF_CHORD),
    ),
)
HALF_CHORDS = Table(
    "crossed", (Column("tape_between", None, _STRING), Column("half_chord_first", 0), Column("half_chord_second", 1))
)
ORDINATES = Table(
    "ordinate",
    # Every string as one walks from A to B, so that all offsets are on one hand, whichever end a mark is taped from.
    (Column("string_from", None, "table.string"), Column("at", 0, "table.from_start", running=True), _SQUARE_OFF),
)
_WHERE = {
    "on": "start_toward", "past": "past_start", "end": "at_start", "mid": "middle_toward", "middle": "middle_of",
}  # fmt: skip
"""The cells that name a place on a string, by what a step calls it."""


def _off_string(cell: str, at: bool = True, way: str = "") -> Table:
    """The row of an ordinate whose distance along its string, if it has one, starts where ``cell`` says."""
    along = Column("at", 0 if at else None, "" if at else "table.no_distance", running=at)
    return Table("ordinate", (Column("string_from", None, cell), along, Column("square_off", int(at), way)))


SWINGS = Table("swing", (Column("from_centre", 0), Column("from_before", 1, _BEFORE)))
CROSSINGS = Table("cross", (Column("from_first", 0), Column("from_second", 1)))
POLARS = Table("polar", (Column("turn", 1), Column("away", 0)))
SIGHTS = Table(
    "sight", (Column("deflection", DEFLECTION), Column("off_chord", OFF_CHORD), Column("from_before", 0, _BEFORE))
)
OFFSETS = Table(
    "tangent_offset", (Column("tangent_at", None, "table.toward"), Column("at", 0, running=True), _SQUARE_OFF)
)
OFFSETS_PAST = Table(
    "tangent_offset", (Column("tangent_at", None, "table.past"), Column("at", 0, running=True), _SQUARE_OFF)
)
# The first gap leaves A along the tangent, toward its mark: carried on from there to A it would run backward.
PRODUCED_FIRST = Table(
    "produce", (Column("line_on", None, "table.from_toward"), Column("carry_on", 0), Column("swing_in", 2))
)
PRODUCED = Table("produce", (Column("line_on", None, "table.line"), Column("carry_on", 0), Column("swing_in", 2)))

OF_HALVING = {"stake": STRINGS, "stake_back": STRINGS, "stake_got": STRINGS, "stake_crossed": HALF_CHORDS}
OF_ORDINATES = {
    **OF_HALVING,
    "ordinate": ORDINATES,
    "ordinate_mid": _off_string("table.middle_toward"),
    "ordinate_middle": _off_string("table.middle_of", at=False),
    **{
        f"parallel_{way}_{where}": _off_string(f"table.{cell}", where not in ("end", "middle"), f"table.off_{way}")
        for way in ("toward", "away", "over")
        for where, cell in _WHERE.items()
    },
}
OF_SWINGS = {"swing": SWINGS, "swing_beside": SWINGS}
OF_SIGHTS = {"sight": SIGHTS, "sight_ahead": SIGHTS, "sight_back": SIGHTS}
OF_TANGENTS = {"tangent_offset": OFFSETS, "tangent_offset_past": OFFSETS_PAST, "tangent_offset_out": OFFSETS}
OF_PRODUCING = {"produce_first": PRODUCED_FIRST, "produce_straight": PRODUCED, "produce": PRODUCED}
