"""A hat whose crown is one ring is seen as it stands. Its radii and heights are worked out here by hand: a circle is as
long as 2 pi times its radius, and a cone's slant, height and radii make a right triangle (Euclid)."""

from __future__ import annotations

import math
from typing import Any

import pytest

from kit import open_lesson
from kit.picture.drawing import Fill, Stroke
from kit.picture.flat import cover_drawing, laid_flat
from kit.picture.round_hat import round_hat
from kit.picture.worn_view import worn_drawing
from kit.resources import examples
from tests.wear.garments import lesson_of

HEAD, EASE, NARROWER, BRIM, CIRCLE = 560.0, 15.0, 0.14, 65.0, 0.75


@pytest.fixture(scope="module")
def hat() -> Any:
    return open_lesson(examples() / "limpet_hat.ipynb").work()


def test_its_shape_follows_from_the_lengths_of_its_pieces(hat: Any) -> None:
    shape = round_hat(hat)
    assert shape is not None and shape.brim is not None and shape.tip is not None
    below = (HEAD + EASE) / (2 * math.pi)
    above = below * (1 - NARROWER)
    slant = 170.0 - above  # the crown height less the radius of the top
    assert (shape.crown.outer, shape.crown.inner) == pytest.approx((below, above), abs=0.05)
    assert shape.crown.top == pytest.approx(math.sqrt(slant**2 - (below - above) ** 2), abs=0.05)
    assert shape.brim.inner == pytest.approx(below, abs=0.05)
    assert shape.brim.outer == pytest.approx(below + BRIM * CIRCLE, abs=0.05)
    assert shape.brim.low == pytest.approx(-BRIM * math.sqrt(1 - CIRCLE**2), abs=0.05)
    assert shape.tip.name == "tip"


def test_a_flatter_brim_reaches_farther_out_and_falls_less() -> None:
    lesson = open_lesson(examples() / "limpet_hat.ipynb")
    steep, flat = (round_hat(lesson.work(values={"circle": share})) for share in (0.6, 0.95))
    assert steep and steep.brim and flat and flat.brim
    assert flat.brim.outer > steep.brim.outer and flat.brim.low > steep.brim.low


def test_the_back_shows_the_back_seams_and_both_views_the_rows_of_the_brim(hat: Any) -> None:
    views = {view: laid_flat(hat, view).items for view in ("front", "back")}  # type: ignore[arg-type]
    rows = [sum(isinstance(i, Stroke) and i.role == "old_row" for i in items) for items in views.values()]
    assert rows == [4, 4]
    seams = [sum(isinstance(i, Stroke) and i.name.endswith(".back") for i in items) for items in views.values()]
    assert seams == [0, 2]
    assert cover_drawing(hat).items


def test_it_is_worn_on_the_head(hat: Any) -> None:
    drawing = worn_drawing(hat)
    assert drawing is not None
    assert {item.name for item in drawing.items if isinstance(item, Fill)} >= {"crown", "tip", "brim"}


def test_a_hat_of_panels_is_none() -> None:
    assert round_hat(lesson_of("hat").work()) is None
