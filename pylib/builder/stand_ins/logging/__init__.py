# Stands for sha256 60682a2e00512c56fe9de436034fbe7a882891964145a8e0b438bb2e6b55cd98
"""What the event loop tells of its troubles goes to the browser's console: nobody sets a level or a file here."""

import sys

DEBUG, INFO, WARNING, ERROR, CRITICAL = 10, 20, 30, 40, 50


class StreamHandler:
    pass


class _Logger:
    def addHandler(self, handler):
        pass

    def isEnabledFor(self, level):
        return level >= WARNING

    def debug(self, message, *values, **more):
        pass

    info = debug

    def error(self, message, *values, exc_info=None, **more):
        print(message % values if values else message, file=sys.stderr)
        if exc_info:
            sys.excepthook(*(exc_info if isinstance(exc_info, tuple) else sys.exc_info()))

    warning = critical = exception = error


_LOGGER = _Logger()


def getLogger(name=None):
    return _LOGGER
