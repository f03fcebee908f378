"""What ``build.py`` does: the environment, the runtime of the page, the site, the server, the tests, bench.

Standard library only: it runs on the machine's own Python, before anything is installed.
"""
