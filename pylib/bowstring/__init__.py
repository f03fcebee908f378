"""Bowstring: an exact arc put on the ground, from the drawing's numbers to stakes, with a tape and a string."""

from bowstring.errors import BadJob
from bowstring.job.link import read_link, write_link
from bowstring.report.answer import Answering, answer
from bowstring.version import __version__

__all__ = ["Answering", "BadJob", "__version__", "answer", "read_link", "write_link"]
