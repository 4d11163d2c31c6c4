"""A lesson so small that its sets cost next to nothing: a napkin on blank paper, a fifth of a body's girth wide."""

from __future__ import annotations

from pathlib import Path

import nbformat

from tests.booklet.conftest import code

NAPKIN = '''
from kit import Lesson, blank_paper, cm

lesson = Lesson("Pebble napkin", start=blank_paper, units="cm", cloth_widths=("140 cm",))

@lesson.step("Draw the napkin", makes="front")
def draw(front, bust_girth):
    """Rule a rectangle a fifth of {bust_girth} wide."""
    a, b = front.place(0 * cm, 0 * cm), front.place(bust_girth / 5, 0 * cm)
    c, d = front.place(bust_girth / 5, 12 * cm), front.place(0 * cm, 12 * cm)
    front.draw(bottom=a.to(b), right_side=b.to(c), top=c.to(d), left_side=d.to(a))
    front.allow(bottom=2 * cm, right_side=2 * cm, top=2 * cm, left_side=2 * cm)
    front.grain()
    front.cut(1, title="Napkin", number=1)

@lesson.finished("Width")
def wide(front):
    return front.bottom.length

@lesson.sew("Hem it all round")
def hems(make, front):
    """Hem the sides, then the ends."""
    make.hem(front.right_side, front.left_side, first=1 * cm, second=1 * cm)
    make.hem(front.top, front.bottom, first=1 * cm, second=1 * cm)
'''


def napkin_at(folder: Path, *more: str) -> Path:
    """The notebook of the napkin in a new folder `lesson` of `folder`, with cells of `more` code after it."""
    home = folder / "lesson"
    home.mkdir()
    path = home / "pebble_napkin.ipynb"
    nbformat.write(nbformat.v4.new_notebook(cells=[code(NAPKIN), *map(code, more)]), path)
    return path
