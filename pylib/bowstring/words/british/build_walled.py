"""A wall and its footing, where Britain says something else."""

MESSAGES = {
    "walled.line_again": "After the footing's pour, set the line again on it, from the pegs.",
    "walled.designed": "Pressure, ties and bracing: the form supplier and a temporary works designer.",  # from memory
    "in_dig.hint": "As it is: set pegs before you dig.",
}
