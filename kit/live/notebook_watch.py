"""What the page tells of the notebook's cells: a step whose cell is deleted is known at once, not when the notebook is
saved.

A part of the panel that nobody sees; it brings the panel's style sheet, and tells what room the picture has. Where the
front end does not let a widget see its notebook it is silent of cells.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import anywidget

from kit.lesson.cells import note_cells
from kit.resources import templates


class NotebookWatch(anywidget.AnyWidget):
    """Hears of the cells; `changed` is called when they are others than before. `roomy` is called with the room of the
    panel's picture, in CSS px, when it is another."""

    _esm = templates() / "live" / "notebook_watch.js"
    _css = templates() / "live" / "panel.css"

    def __init__(self, changed: Callable[[], None], roomy: Callable[[float, float], None]) -> None:
        super().__init__(layout={"display": "none"})
        self._changed, self._roomy = changed, roomy
        self._cells: tuple[tuple[str, str], ...] = ()
        self.on_msg(self._heard)

    def _heard(self, _: Any, content: Any, buffers: Any) -> None:
        """A message of the browser: {"cells": [[id, source], ...]} or {"room": [width, height]}."""
        if not isinstance(content, dict):
            return
        match content.get("room"):
            case [int() | float() as wide, int() | float() as high]:
                self._roomy(float(wide), float(high))
        told = content.get("cells")
        if not isinstance(told, list):
            return
        cells = tuple((str(cell[0]), str(cell[1])) for cell in told if isinstance(cell, list) and len(cell) == 2)
        if cells != self._cells:
            self._cells = cells
            note_cells(cells)
            self._changed()
