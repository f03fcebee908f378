"""The form boards, where Britain says something else."""

MESSAGES: dict[str, str] = {
    "boards.more_near": "site timber stops at R {radius}",
    "boards.level_job": "Site timber",
    "boards.no_table": "No published table covers timber: these are workshop figures.",
    "boards.taken_level": "Site timber, unless you say it's better.",
    "boards.kicker_stakes": "Raking struts aren't counted: a stake more for each one.",
    "boards.kickers": "Then the raking struts, and sight along the top.",
    "boards.row_clear": "{board} bends only in clear timber",
    "boards.only_clear": "{board} bends only in clear timber.",
    "boards.how_good": "How good is the timber?",
    "boards.level_clear": "Clear timber",
    "boards.push_note": "The push is a guide: timber varies. Bend one board before you count on it.",
    "boards.loose_ends": (
        "Picked strips need both ends held. With nothing run past A and B, they are figured as clear timber."
    ),
}
