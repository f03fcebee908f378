"""The tops of the forms, where Britain says something else."""

MESSAGES: dict[str, str] = {}
