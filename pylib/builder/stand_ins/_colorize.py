# Stands for sha256 15db41bec8e25fd1ba81cf234df2cc7446d0fbc10285fda73186176365efd730
"""Tracebacks without colours: nobody reads them on a terminal here."""


class _Plain:
    def __getattr__(self, name):
        return ""


class _Theme:
    traceback = _Plain()


def can_colorize(*, file=None):
    return False


def get_theme(*, tty_file=None, force_color=False, force_no_color=False):
    return _Theme()
