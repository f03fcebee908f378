"""The lessons on paper, and the page with string and chalk: what differs on a British site."""

MESSAGES = {
    "chalk.need_2": "a builder's square, or a sheet of paper with a square corner",
}
