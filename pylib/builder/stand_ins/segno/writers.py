# Stands for sha256 67e7c07a2da8aabe435587782d393a093a430e6e073d4698f74b321babbdeec4
"""No writers: a code's modules are drawn by bowstring.drawings.qr. They are a third of that package, and bring the
reading and writing of compressed files and of XML along."""


def __getattr__(name):
    raise AttributeError(f"the page writes no code by {name}")
