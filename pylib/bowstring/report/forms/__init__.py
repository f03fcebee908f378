"""The answer's form: what stands under each of its keys, for whoever reads one.

A name ends with ``Row`` where a list holds many of them and with ``Part`` where one stands under a key. Lengths are
metres and angles degrees, as floats; the text beside one (``..._shown``) is what a crew reads on its tape. ``None``
stands where there is no such figure for this job; a key that isn't always there is ``NotRequired``.

Without ``from __future__ import annotations``: as texts, these annotations would each be compiled by themselves when
the page starts, which takes ten times as long.
"""
