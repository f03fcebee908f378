"""The small pictures at the rows of the build."""

from __future__ import annotations

_SHAPES = {
    "line": '<path d="M4 36h10Q22 36 24 26T34 12l6-4"/><path class="s" d="M10 32h8v8h-8zM20 20h8v8h-8zM30 8h8v8h-8z"/>',
    "edges": '<path d="M4 34Q22 8 40 34M12 40Q22 26 32 40"/>',
    "boards": '<path d="M4 30Q22 8 40 30l-4 5Q22 16 8 35zM11 20l-4-9M22 13V4M33 20l4-9"/>',
    "joints": '<path class="s" d="M4 28Q22 6 40 28l-7 11Q22 24 11 39z"/>'
    '<path class="d" d="M14 20l6 11M22 17v12M30 20l-6 11"/>',
    "grades": '<path d="M4 36h36M4 36L40 16M22 12V4M18 8l4-5 4 5"/><path class="d" d="M40 16v20"/>',
    "pour": '<path class="s" d="M4 22h36v14H4z"/><path d="M30 4L18 18M14 12l4 7 8-1"/>',
}

ICONS = {key: f'<svg viewBox="0 0 44 44" aria-hidden="true">{shape}</svg>' for key, shape in _SHAPES.items()}
"""By the row's key."""

BACK = '<svg width="14" height="20" viewBox="0 0 14 20" aria-hidden="true"><path d="M12 2 3 10l9 8"/></svg>'
