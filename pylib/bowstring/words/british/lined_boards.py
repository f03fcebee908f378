"""The boards along a line of several pieces, where Britain says something else."""

MESSAGES = {
    "lined.loose_ends": "With nothing run past the line's ends, picked strips are figured as clear timber.",
}
