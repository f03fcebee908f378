"""The package's version, stated once."""

__version__ = "0.1.0"
