"""The folds of Why: what differs on a British site."""

MESSAGES = {
    "why.stick": "Storey rod",
    "why.accuracy.over_hubs": "Expect the worst *{miss} off*; use pegs.",
    "why.mistake.burned_foot": "One foot not subtracted",
    "why.mistake.burned_foot_all": "A foot never subtracted",
    "why.mistake.arc_for_chord": "Arc set out for chord",
    "why.on_line.pin": "The *centre of each pin*.",
    "why.on_line.pin_back": "Each pin's *edge towards the board*, not its centre.",
    "why.on_line.pin_maybe": "The *centre of each pin*; its edge where it meets a board.",
    "why.on_line.hub": "The *nail in each peg*.",
    "why.on_line.board_off": "The *face of each stake*, towards the board.",
    "why.notes.told": "*{count} notes* on this setting out.",
}
