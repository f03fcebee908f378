"""The face of the build, where Britain says something else."""

MESSAGES: dict[str, str] = {
    "build.foot": "The drawing, the specification and the local regulations govern. These numbers come after them.",
}
