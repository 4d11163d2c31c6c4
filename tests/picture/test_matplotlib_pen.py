"""The matplotlib pen draws the same items on axes."""

from __future__ import annotations

import pytest

from kit.lesson.pattern import Pattern
from kit.picture.draft import step_drawing
from kit.picture.drawing import Fill, Stroke
from kit.picture.flat import laid_flat
from kit.picture.matplotlib_pen import draw
from kit.picture.svg_pen import bounds_of

figure = pytest.importorskip("matplotlib.figure")


def test_every_line_and_fill_becomes_a_patch(wrap_top: Pattern) -> None:
    drawing = laid_flat(wrap_top)
    ax = figure.Figure().add_subplot()
    draw(drawing, ax)
    assert len(ax.patches) == sum(isinstance(item, Stroke | Fill) for item in drawing.items)
    x0, _, x1, _ = bounds_of(drawing)
    low, high = ax.get_xlim()
    assert low < x0 < x1 < high
    assert ax.get_aspect() == 1.0


def test_text_of_a_step_is_written(wrap_top: Pattern) -> None:
    ax = figure.Figure().add_subplot()
    draw(step_drawing(wrap_top.steps[0]), ax)
    assert any("sleeve length 20 cm" in text.get_text() for text in ax.texts)
