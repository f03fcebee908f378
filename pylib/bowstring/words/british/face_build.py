"""The face of the build, where Britain says something else."""

MESSAGES: dict[str, str] = {}
