"""What is shown of a line of several pieces, where Britain says something else."""

MESSAGES = {
    "lined.back_title": "{title}: levels and pour",
    "lined.spot_level": "level",
    "lined.spot_rod": "staff reads",
}
