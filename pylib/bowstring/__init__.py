"""Bowstring: an exact arc put on the ground, from the drawing's numbers to stakes, with a tape and a string."""

from bowstring.errors import BadJob
from bowstring.job.form import JobForm
from bowstring.job.link import read_link, write_link
from bowstring.report.answer import Answering, answer, answering
from bowstring.report.forms.answer import Answer
from bowstring.version import __version__

__all__ = ["Answer", "Answering", "BadJob", "JobForm", "__version__", "answer", "answering", "read_link", "write_link"]
