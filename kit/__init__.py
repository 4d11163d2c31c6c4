"""Draft sewing patterns in a notebook; print the instruction booklet and true-scale pattern pages.

The names a lesson needs. Each is fetched when it is first asked for, so that `import kit` is quick. `BenchPiece`,
`Make` and `PieceHandle` are there to be written beside the arguments of a step: a piece on the bench, and in a sewing
step `make` and a cut piece.
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING, Any

from kit import diagnostic

if TYPE_CHECKING:
    from kit.blocks.blank import blank_paper
    from kit.blocks.bodice import bodice_block
    from kit.blocks.darted_bodice import darted_bodice_block
    from kit.blocks.skirt import skirt_block
    from kit.blocks.sleeve import with_sleeve
    from kit.blocks.traced import Traced
    from kit.blocks.traced_file import read_traced
    from kit.blocks.trousers import trouser_block
    from kit.body.advice import advise
    from kit.body.body import Body
    from kit.body.chart import SizeChart, load_chart, read_chart, workshop_chart
    from kit.body.check import check_body
    from kit.body.file import load_body, save_body
    from kit.body.make import make_body
    from kit.errors import KitError
    from kit.lesson.another import open_lesson
    from kit.lesson.bench import BenchPiece
    from kit.lesson.goals import at_least, at_most, grows, is_length, keeps, moves, passes_proof, shrinks
    from kit.live.beside import Lesson
    from kit.live.body_form import body_form
    from kit.live.canvas.widget import canvas
    from kit.live.class_lesson import class_lesson
    from kit.live.clips import lesson_clips
    from kit.live.comparing import compare
    from kit.live.exercise import exercise
    from kit.live.film_notes import film_notes
    from kit.live.grade_table import grade_table
    from kit.live.large import show_large
    from kit.live.name_edges import name_edges
    from kit.live.panel import panel
    from kit.live.player import player
    from kit.live.practising import practice_cloth, practice_paper
    from kit.live.print_mine import print_mine
    from kit.live.stage import stage
    from kit.proof.mending import remedies
    from kit.sewing.handle import PieceHandle
    from kit.sewing.make import Make
    from kit.sewing.seam_walk import walk
    from kit.units import Length, cm, inch, mm

    __version__: str

_HOMES = {
    "Lesson": "kit.live.beside",
    "stage": "kit.live.stage",
    "panel": "kit.live.panel",
    "canvas": "kit.live.canvas.widget",
    "player": "kit.live.player",
    "show_large": "kit.live.large",
    "lesson_clips": "kit.live.clips",
    "film_notes": "kit.live.film_notes",
    "compare": "kit.live.comparing",
    "grade_table": "kit.live.grade_table",
    "body_form": "kit.live.body_form",
    "grows": "kit.lesson.goals",
    "shrinks": "kit.lesson.goals",
    "keeps": "kit.lesson.goals",
    "is_length": "kit.lesson.goals",
    "at_least": "kit.lesson.goals",
    "at_most": "kit.lesson.goals",
    "moves": "kit.lesson.goals",
    "passes_proof": "kit.lesson.goals",
    "exercise": "kit.live.exercise",
    "class_lesson": "kit.live.class_lesson",
    "print_mine": "kit.live.print_mine",
    "mm": "kit.units",
    "cm": "kit.units",
    "inch": "kit.units",
    "Length": "kit.units",
    "BenchPiece": "kit.lesson.bench",
    "Make": "kit.sewing.make",
    "PieceHandle": "kit.sewing.handle",
    "open_lesson": "kit.lesson.another",
    "blank_paper": "kit.blocks.blank",
    "bodice_block": "kit.blocks.bodice",
    "darted_bodice_block": "kit.blocks.darted_bodice",
    "with_sleeve": "kit.blocks.sleeve",
    "skirt_block": "kit.blocks.skirt",
    "trouser_block": "kit.blocks.trousers",
    "Traced": "kit.blocks.traced",
    "read_traced": "kit.blocks.traced_file",
    "name_edges": "kit.live.name_edges",
    "walk": "kit.sewing.seam_walk",
    "remedies": "kit.proof.mending",
    "practice_paper": "kit.live.practising",
    "practice_cloth": "kit.live.practising",
    "Body": "kit.body.body",
    "make_body": "kit.body.make",
    "load_body": "kit.body.file",
    "save_body": "kit.body.file",
    "check_body": "kit.body.check",
    "advise": "kit.body.advice",
    "SizeChart": "kit.body.chart",
    "load_chart": "kit.body.chart",
    "read_chart": "kit.body.chart",
    "workshop_chart": "kit.body.chart",
    "KitError": "kit.errors",
}

__all__ = [
    "Lesson",
    "stage",
    "panel",
    "canvas",
    "player",
    "show_large",
    "lesson_clips",
    "film_notes",
    "compare",
    "grade_table",
    "body_form",
    "grows",
    "shrinks",
    "keeps",
    "is_length",
    "at_least",
    "at_most",
    "moves",
    "passes_proof",
    "exercise",
    "class_lesson",
    "print_mine",
    "mm",
    "cm",
    "inch",
    "Length",
    "BenchPiece",
    "Make",
    "PieceHandle",
    "open_lesson",
    "blank_paper",
    "bodice_block",
    "darted_bodice_block",
    "with_sleeve",
    "skirt_block",
    "trouser_block",
    "Traced",
    "read_traced",
    "name_edges",
    "walk",
    "remedies",
    "practice_paper",
    "practice_cloth",
    "Body",
    "make_body",
    "load_body",
    "save_body",
    "check_body",
    "advise",
    "SizeChart",
    "load_chart",
    "read_chart",
    "workshop_chart",
    "KitError",
    "__version__",
]


def _worded(told: diagnostic.Message, system: diagnostic.System) -> str:
    from kit.wording.worded import worded

    return worded(told, system)


diagnostic.words_by(_worded)


def __getattr__(name: str) -> Any:
    if name == "__version__":
        from importlib.metadata import PackageNotFoundError, version

        try:
            found: Any = version("pattern-lesson-kit")
        except PackageNotFoundError:
            found = "0+unknown"
    elif name in _HOMES:
        found = getattr(import_module(_HOMES[name]), name)
    else:
        raise AttributeError(f"module 'kit' has no attribute {name!r}")
    globals()[name] = found
    return found


def __dir__() -> list[str]:
    return sorted(__all__)
