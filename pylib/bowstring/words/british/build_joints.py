"""The joints, where Britain says something else."""

MESSAGES: dict[str, str] = {}
