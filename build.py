#!/usr/bin/env python3
"""Set up, build, serve, test, bench and clean: ``python3 build.py COMMAND``.

This file only finds a Python that serves (3.11 or newer, able to make environments) and hands over to
``pylib/builder``. It must parse on any Python 3, or the sentence below would never be read.
"""

import os
import shutil
import subprocess
import sys

PROBE = "import sys, venv, ensurepip; sys.exit(sys.version_info < (3, 11))"
OTHERS = ("python3.14", "python3.13", "python3.12", "python3.11", "python3", "python")


def serves(python):
    """Tell whether an interpreter is new enough and can make an environment."""
    with open(os.devnull, "w") as nowhere:
        return subprocess.call([python, "-c", PROBE], stdout=nowhere, stderr=nowhere) == 0


def this_one_serves():
    """Tell the same of the interpreter that runs this file, without starting another."""
    if sys.version_info < (3, 11):
        return False
    try:
        import ensurepip  # noqa: F401
        import venv  # noqa: F401
    except ImportError:
        return False
    return True


def main():
    if this_one_serves():
        sys.dont_write_bytecode = True
        sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "pylib"))
        from builder.commands import main as command

        return command(sys.argv[1:])
    which = getattr(shutil, "which", lambda name: None)  # not there on the oldest
    for python in filter(None, map(which, OTHERS)):
        if serves(python):
            return subprocess.call([python, os.path.abspath(__file__)] + sys.argv[1:])  # noqa: RUF005
    sys.exit(
        "build.py: Python 3.11 or newer with its venv and ensurepip modules is needed, and none was found; "
        "this is Python %d.%d. Install a newer Python (on Debian and Ubuntu also the package python3-venv) "
        "and run the command again." % sys.version_info[:2]
    )


if __name__ == "__main__":
    sys.exit(main())
