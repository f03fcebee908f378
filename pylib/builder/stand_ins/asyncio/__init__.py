# Stands for sha256 8148552daea881e3b33639d6e9bdab0da2021367ab694ee0604431c33c16983f
"""What the browser's own event loop is made of; no sockets, no processes, no encryption: the page has none."""

from . import coroutines, events, exceptions, futures, runners, tasks
from .coroutines import *
from .events import *
from .exceptions import *
from .futures import *
from .runners import *
from .tasks import *

__all__ = (
    *coroutines.__all__,
    *events.__all__,
    *exceptions.__all__,
    *futures.__all__,
    *runners.__all__,
    *tasks.__all__,
)

DefaultEventLoopPolicy = events._BaseDefaultEventLoopPolicy  # what the browser's policy is derived from
