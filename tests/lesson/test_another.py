"""A variation in a notebook of its own: the other notebook's lesson is opened, varied and keeps its order."""

from __future__ import annotations

from pathlib import Path

import nbformat
import pytest

from kit.blocks.blank import blank_paper
from kit.errors import KitError
from kit.lesson.another import open_lesson
from kit.lesson.lesson import Lesson
from kit.units import cm
from tests.example import EXAMPLE

PLAIN = """
from kit.lesson.lesson import Lesson
from kit.blocks.bodice import bodice_block
from kit.units import cm
lesson = Lesson("Plain top", start=bodice_block)
lesson.length("drop", 10 * cm, least=1 * cm, most=30 * cm)
@lesson.step("Lower the hem")
def lower(front, drop):
    "Lower it {drop}."
    front.draw(hem=front.waist.parallel(drop, "down"), instead_of=front.hip)
    front.join(front.side, front.hem)
    front.join(front.hem, front.centre)
@lesson.step("Nothing more")
def rest(back):
    "Leave the back."
"""


def notebook(path: Path, *cells: str) -> Path:
    book = nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell(cell) for cell in cells])
    path.write_text(nbformat.writes(book), encoding="utf-8")
    return path


def test_a_variation_keeps_the_parents_order_where_it_replaces(tmp_path: Path) -> None:
    parent = open_lesson(notebook(tmp_path / "plain.ipynb", PLAIN))
    jacket = parent.variation("Long top")

    @jacket.step("Lower the hem twice")
    def lower(front, drop):  # type: ignore[no-untyped-def]
        """Lower it {drop} and again."""
        front.draw(hem=front.waist.parallel(drop * 2, "down"), instead_of=front.hip)
        front.join(front.side, front.hem)
        front.join(front.hem, front.centre)

    @jacket.step("Between", after="lower")
    def between(front):  # type: ignore[no-untyped-def]
        """Look at it."""

    assert [e.name for e in jacket.entries] == ["lower", "between", "rest"]
    assert [e.title for e in parent.entries] == ["Lower the hem", "Nothing more"]
    long, short = jacket.work().piece("front"), parent.work().piece("front")
    assert long.edge("side").path.length > short.edge("side").path.length + 90


def test_the_example_opens_and_works_as_it_does_by_itself() -> None:
    found = open_lesson(EXAMPLE)
    assert [piece.name for piece in found.work().pieces] == ["back", "front", "front_facing", "back_facing"]
    assert found.variation("Harbour jacket").work().lesson.slug == "harbour-jacket"


def test_steps_and_parameters_nothing_uses_can_be_taken_out(tmp_path: Path) -> None:
    jacket = open_lesson(notebook(tmp_path / "plain.ipynb", PLAIN)).variation("Short top")
    with pytest.raises(KitError, match="still used in 'Lower the hem'"):
        jacket.remove("drop")
    jacket.remove("lower", "drop")
    assert [e.name for e in jacket.entries] == ["rest"] and jacket.parameters == ()
    with pytest.raises(KitError, match="no step or parameter 'drap'"):
        jacket.remove("drap")


def test_a_step_to_follow_must_be_there(tmp_path: Path) -> None:
    jacket = open_lesson(notebook(tmp_path / "plain.ipynb", PLAIN)).variation("Short top")
    with pytest.raises(KitError, match=r"no step 'lowr' to follow.*lower"):

        @jacket.step("After nothing", after="lowr")
        def late(front):  # type: ignore[no-untyped-def]
            """Never."""


@pytest.mark.parametrize(
    ("cell", "said"),
    [
        ("x = 1", "has no lesson"),
        ("1 / 0", "code cell 1 stops with ZeroDivisionError"),
        ("from kit.lesson.another import open_lesson\nopen_lesson('{own}')", "opens itself"),
        (PLAIN + "\nother = Lesson('Another', start=bodice_block)", "has 2 lessons"),
    ],
)
def test_what_cannot_be_opened_is_said_plainly(tmp_path: Path, cell: str, said: str) -> None:
    own = tmp_path / "own.ipynb"
    notebook(own, cell.replace("{own}", str(own)))
    with pytest.raises(KitError, match=said):
        open_lesson(own)


def test_missing_and_broken_files(tmp_path: Path) -> None:
    notebook(tmp_path / "there.ipynb", PLAIN)
    with pytest.raises(KitError, match=r"no notebook 'their.ipynb'.*there.ipynb"):
        open_lesson(tmp_path / "their.ipynb")
    (tmp_path / "bad.ipynb").write_text("{", encoding="utf-8")
    with pytest.raises(KitError, match="broken"):
        open_lesson(tmp_path / "bad.ipynb")


def test_a_lesson_can_begin_on_blank_paper() -> None:
    lesson = Lesson("Square", start=blank_paper)

    @lesson.step("Draw a square", makes="square")
    def draw(square):  # type: ignore[no-untyped-def]
        """Draw it."""
        a, b, c, d = (square.place(x * cm, y * cm) for x, y in ((0, 0), (30, 0), (30, 30), (0, 30)))
        square.draw(foot=a.to(b), right=b.to(c), top=c.to(d), left=d.to(a))

    (piece,) = lesson.work().pieces
    assert piece.outline.area == pytest.approx(90000)
    assert lesson.measures == ()
    assert lesson.work().body.said == "one size"
