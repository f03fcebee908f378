"""The form sheet on paper, where Britain says something else."""

MESSAGES: dict[str, str] = {}
