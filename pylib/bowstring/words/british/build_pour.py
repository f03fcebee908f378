"""The concrete, where Britain says something else."""

MESSAGES: dict[str, str] = {}
