"""Fitting shapes together on the sheet."""

from __future__ import annotations

import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import affinity

from kit.paper.nest import lying, nest

GAP = 10.0
SIDES = st.tuples(st.floats(15, 400), st.floats(15, 400))


def placed(shapes, width, quarters=(0, 1, 2, 3)):  # type: ignore[no-untyped-def]
    ways = [[lying(shape, each, GAP) for each in quarters] for shape in shapes]
    spots = nest(ways, range(len(shapes)), width)
    if spots is None:
        return None
    return [
        affinity.translate(affinity.rotate(shape, 90 * spot.quarters, origin=(0, 0)), spot.dx, spot.dy)
        for shape, spot in zip(shapes, spots, strict=True)
    ]


@given(st.lists(SIDES, min_size=1, max_size=6))
@settings(max_examples=40)
def test_shapes_never_touch_and_stay_on_the_sheet(sides: list[tuple[float, float]]) -> None:
    shapes = [shapely.Polygon([(7, -3), (7 + w, -3), (7 + w * 0.4, -3 + h * 0.3), (7, -3 + h)]) for w, h in sides]
    found = placed(shapes, 841)
    assert found is not None
    for place, one in enumerate(found):
        left, _, right, top = one.bounds
        assert left >= GAP / 2 - 1e-6 and right <= 841 - GAP / 2 + 1e-6 and top <= -GAP / 2 + 1e-6
        for other in found[place + 1 :]:
            assert one.distance(other) >= GAP - 1e-6


def test_a_small_piece_lies_in_the_bend_of_a_large_one() -> None:
    corner = shapely.Polygon([(0, 0), (400, 0), (400, 80), (80, 80), (80, 500), (0, 500)])
    small = shapely.box(0, 0, 200, 200)
    found = placed([corner, small], 420)
    assert found is not None
    assert shapely.box(*corner.bounds).area >= shapely.box(*shapely.union_all(found).bounds).area - 1e-6


def test_two_triangles_make_a_square() -> None:
    half = shapely.Polygon([(0, 0), (300, 0), (0, 300)])
    found = placed([half, half], 350)
    assert found is not None
    left, bottom, right, top = shapely.union_all(found).bounds
    assert right - left < 345 and top - bottom < 345  # two boxes would need 610


def test_a_shape_too_wide_is_refused() -> None:
    assert placed([shapely.box(0, 0, 500, 500)], 300) is None
    assert placed([shapely.box(0, 0, 500, 100)], 300) is not None  # turned, it fits
