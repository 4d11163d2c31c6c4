"""The page's engine as a room needs it: it keeps nothing of whoever asked last, and tells a draft's outlines, so that
many can be shown over one another."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import Any

from kit.forgetting import forget
from kit.page.drafts import Drafts
from kit.page.engine import Answer, Engine
from kit.page.exercises import Exercises

_FINE = 0.5
"""mm that a drawn chord may be beside its curve."""


class RoomEngine(Engine):
    """An `Engine` that answers one more message, {"do": "outlines"}: for each piece of the finished draft its `name`,
    `title`, outline as points (mm, y up, rounded to a tenth) and whether it is cut on the fold."""

    def __init__(
        self,
        path: Path,
        *,
        offered: Sequence[str] = (),
        sliders: Sequence[str] | None = None,
        cloth: Mapping[str, Any] | None = None,
    ) -> None:
        super().__init__(path, offered=offered, sliders=sliders, cloth=cloth)
        self._tasks["outlines"] = self._outlines

    def answer(self, text: str) -> str:
        made = super().answer(text)
        self.forget()
        return made

    def forget(self) -> None:
        """Nobody is answered with the last setting, and of a body that somebody typed nothing stays. A draft for a size
        of the chart is kept, to follow a slider sooner."""
        own = self._last is not None and self._last.setting.typed is not None
        body_of_theirs = self.lesson.body.name not in self.lesson.sizes.names and bool(self.lesson.measures)
        self._last = None
        self.lesson.sitting = self._opened_at
        if own or body_of_theirs:
            self._exercises = Exercises(self.lesson)
            self._drafts = Drafts()
            forget()

    def _outlines(self, asked: Mapping[str, Any]) -> Answer:
        pattern = self._worked(asked).pattern
        pieces = []
        for piece in pattern.pieces:
            points = piece.outline.points(_FINE)
            pieces.append(
                {
                    "name": piece.name,
                    "title": piece.title,
                    "points": [[round(point.x, 1), round(point.y, 1)] for point in points],
                }
            )
        return {"pieces": pieces}
