"""Practice lessons in a notebook, where what a step makes is shown under its cell."""

from __future__ import annotations

from kit.live import beside  # lessons made from now on have a notebook's side
from kit.reference.practice import practice_cloth, practice_paper

__all__ = ["beside", "practice_cloth", "practice_paper"]
