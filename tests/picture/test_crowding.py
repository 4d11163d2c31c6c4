"""Words and measures keep clear of each other in every step's picture, as the pen writes them."""

from __future__ import annotations

import math
import re
from itertools import combinations
from typing import Any

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from shapely import affinity

from kit.blocks import darted_bodice_block, skirt_block, trouser_block
from kit.body import workshop_chart
from kit.lesson.lesson import Lesson
from kit.picture.draft import step_drawing
from kit.picture.drawing import Drawing
from kit.picture.lettering import turned_overlap
from kit.picture.svg_pen import svg
from tests.example import lesson_notebooks, notebook_names

_TEXT = re.compile(
    r'<g transform="translate\(([^ ]+) ([^)]+)\)(?:rotate\(([^)]+)\))?">'
    r'<rect x="([^"]+)" y="([^"]+)" width="([^"]+)" height="([^"]+)"[^>]*/><text[^>]*>([^<]*)</text>'
)


def written(picture: str) -> list[tuple[str, Any]]:
    """Every text of an SVG picture with the paper it stands on."""
    found = []
    for x, y, turn, left, top, wide, high, text in _TEXT.findall(picture):
        box = shapely.box(float(left), float(top), float(left) + float(wide), float(top) + float(high))
        found.append((text, affinity.translate(affinity.rotate(box, float(turn or 0), (0, 0)), float(x), float(y))))
    assert len(found) == picture.count("<text")
    return found


def touching(picture: str) -> list[tuple[str, str]]:
    return [
        (one, two)
        for (one, a), (two, b) in combinations(written(picture), 2)
        if a.intersection(b).area > 0.02 * min(a.area, b.area)
    ]


@pytest.fixture(scope="module")
def lessons() -> list[Lesson]:
    found = [block.lesson for block in (darted_bodice_block, skirt_block, trouser_block)]
    for notebook in lesson_notebooks():
        mine = [value for value in notebook_names(notebook).values() if isinstance(value, Lesson)]
        assert mine, notebook.name
        found += mine
    return found


@pytest.mark.parametrize("size", ["W1", "W4", "W10"])
def test_no_two_texts_of_a_step_picture_touch(size: str, lessons: list[Lesson]) -> None:
    pictures: set[tuple[Drawing, float]] = set()  # a variation draws many steps as its parent does
    for lesson in lessons:
        for step in lesson.work(workshop_chart()[size]).steps:
            for wide in (540.0, 640.0):
                for both in (False, True):
                    drawing = step_drawing(step, "cm", both)
                    if (drawing, wide) in pictures:
                        continue
                    pictures.add((drawing, wide))
                    found = touching(svg(drawing, width=wide))
                    assert not found, (step.title, found)
    assert len(pictures) > 100


number = st.floats(-30, 30)
size = st.floats(1, 30)
turned = st.tuples(number, number, size, size, st.sampled_from([0.0, 0.4, math.pi / 2, -0.9]))


@given(turned, turned)
def test_shared_area_of_turned_boxes(a: Any, b: Any) -> None:
    """Reference: shapely. Nothing is shared exactly where the boxes lie apart; else the answer is never too small."""

    def shape(box: Any) -> Any:
        x, y, wide, high, angle = box
        flat = shapely.box(-wide / 2, -high / 2, wide / 2, high / 2)
        return affinity.translate(affinity.rotate(flat, angle, (0, 0), use_radians=True), x, y)

    shared = shape(a).intersection(shape(b)).area
    found = turned_overlap(a, b)
    assert found >= shared - 1e-6
    if shape(a).distance(shape(b)) > 1e-6:
        assert found == pytest.approx(0.0, abs=1e-9)
