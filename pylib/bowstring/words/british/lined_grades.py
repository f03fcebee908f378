"""The tops of the forms along a line of several pieces, where Britain says something else."""

MESSAGES = {
    "lined.no_tops": "No levels until this is settled.",
    "lined.no_banking_left": "No superelevation: the left edge stays low through every curve.",
    "lined.no_banking_right": "No superelevation: the right edge stays low through every curve.",
}
