# Stands for sha256 66bc0d856252e3c3690a9c9cc2f73a4e88d7a9cc5beafa712194cadda4eb2b70
"""Nothing is loaded into the page's Python: all that it has is in its library. Only the places are asked for."""

from site import getsitepackages


class _Place:
    def __init__(self, path):
        self.path = path

    def __str__(self):
        return self.path


SITE_PACKAGES = _Place(getsitepackages()[0])
DSO_DIR = _Place("/usr/lib")


def init_loaded_packages():
    pass
