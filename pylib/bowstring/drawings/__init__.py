"""The drawings of an answer, as SVG."""
