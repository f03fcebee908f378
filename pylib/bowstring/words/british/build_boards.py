"""The form boards, where Britain says something else."""

MESSAGES: dict[str, str] = {}
