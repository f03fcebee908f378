"""The face of the build, in words."""

MESSAGES = {
    "build.title": "Build",
}
