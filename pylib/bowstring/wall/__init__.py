"""The construction and six lessons for a wall: figures that come stroke by stroke, a slider's table, and handouts.

A figure is a list of sheets (``board.Sheet``), each one SVG whose groups carry ``data-s``, the stroke that they come
with, and ``data-to``, the last one that they stay for. No number stands in a sentence here: all are made from an arc.
"""
