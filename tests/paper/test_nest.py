"""Fitting shapes together on the sheet, and the search for few pages."""

from __future__ import annotations

import math

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import affinity

from kit.lesson.pattern import Pattern
from kit.paper.layout import best_layout, matrix, useful_angles
from kit.paper.nest import EDGE, Mesh, lying, nest
from kit.paper.papers import A3, A4, LETTER, Paper
from kit.paper.plan import count_pages, plan_pages
from kit.paper.printing import laid_for
from kit.paper.request import PageRequest
from kit.paper.sheet import sheet

from .shelf import shelf_pages

GAP = 10.0
SIDES = st.tuples(st.floats(15, 400), st.floats(15, 400))
QUARTERS = (0.0, math.pi / 2, math.pi, 3 * math.pi / 2)


def placed(shapes, columns, angles=QUARTERS, mesh=None, **keys):  # type: ignore[no-untyped-def]
    mesh = mesh or Mesh.of(5000, 5000, GAP)
    ways = [[lying(shape, each, mesh, columns) for each in angles] for shape in shapes]
    found = nest(ways, range(len(shapes)), mesh, columns, **keys)
    if found is None:
        return None
    return [affinity.affine_transform(shape, matrix(spot)) for shape, spot in zip(shapes, found[0], strict=True)]


@given(st.lists(SIDES, min_size=1, max_size=6), st.floats(0, 6), st.integers(0, 3))
@settings(max_examples=40)
def test_shapes_never_touch_and_stay_on_the_sheet(sides: list[tuple[float, float]], angle: float, way_in: int) -> None:
    shapes = [shapely.Polygon([(7, -3), (7 + w, -3), (7 + w * 0.4, -3 + h * 0.3), (7, -3 + h)]) for w, h in sides]
    found = placed(shapes, 84, (0.0, angle), Mesh.of(180, 267, GAP), way_in=way_in)
    assert found is not None
    for place, one in enumerate(found):
        left, _, right, top = one.bounds
        assert left >= EDGE - 1e-6 and right <= 840 - EDGE + 1e-6 and top <= -EDGE + 1e-6
        for other in found[place + 1 :]:
            assert one.distance(other) >= GAP - 1e-6


def test_a_small_piece_lies_in_the_bend_of_a_large_one() -> None:
    corner = shapely.Polygon([(0, 0), (400, 0), (400, 80), (80, 80), (80, 500), (0, 500)])
    small = shapely.box(0, 0, 200, 200)
    found = placed([corner, small], 42)
    assert found is not None
    assert shapely.box(*corner.bounds).area >= shapely.box(*shapely.union_all(found).bounds).area - 1e-6


def test_two_triangles_make_a_square() -> None:
    half = shapely.Polygon([(0, 0), (300, 0), (0, 300)])
    found = placed([half, half], 35)
    assert found is not None
    left, bottom, right, top = shapely.union_all(found).bounds
    assert right - left < 345 and top - bottom < 345  # two boxes would need 610


def test_a_shape_too_wide_is_refused() -> None:
    assert placed([shapely.box(0, 0, 500, 500)], 30) is None
    assert placed([shapely.box(0, 0, 500, 100)], 30) is not None  # turned, it fits


def test_a_small_piece_is_kept_on_one_page() -> None:
    # Beside the large piece there is room across the border of two pages; it goes where it stays whole.
    mesh = Mesh.of(180, 267, GAP)
    found = placed([shapely.box(0, 0, 120, 500), shapely.box(0, 0, 90, 90)], 36, (0.0,), mesh)
    assert found is not None
    left, bottom, right, top = found[1].bounds
    assert left // 180 == right // 180 and bottom // 267 == top // 267


def test_a_page_already_in_use_is_filled_before_a_new_one() -> None:
    mesh = Mesh.of(180, 267, GAP)
    found = placed([shapely.box(0, 0, 150, 150), shapely.box(0, 0, 150, 70)], 72, (0.0,), mesh)
    assert found is not None
    assert found[1].bounds[0] < 180 and found[1].bounds[1] > -267


def test_a_long_piece_lies_aslant_when_only_so_a_page_takes_it_whole() -> None:
    strip = shapely.box(0, 0, 15, 290)  # a page of A4 carries 180 x 267 mm; the diagonal is 322
    assert any(
        shapely.box(0, 0, *A4.step).contains(affinity.translate(turned, -turned.bounds[0], -turned.bounds[1]))
        for turned in (affinity.rotate(strip, angle, use_radians=True) for angle in useful_angles(strip, A4))
    )
    found = best_layout([strip], (A4,), GAP, 841, lambda moved, width, height: count_pages(moved, width, height, A4))
    moved = affinity.translate(affinity.affine_transform(strip, matrix(found.spots[0])), 0, found.height)
    assert count_pages([moved], found.width, found.height, A4) == 1


def test_turned_as_drafted_first_and_by_no_angle_twice() -> None:
    angles = useful_angles(affinity.rotate(shapely.box(0, 0, 100, 400), 20), A4)
    assert angles[0] == 0.0 and len(set(angles)) == len(angles)
    assert any(math.isclose(math.degrees(angle) % 90, 70, abs_tol=0.01) for angle in angles)


@pytest.mark.parametrize("paper", [A4, LETTER, A3], ids=lambda paper: paper.name)
def test_fewer_pages_than_shelves(paper: Paper, garment: Pattern) -> None:
    # The baseline: next-fit decreasing height, the plain way to pack boxes on shelves (Coffman, Garey, Johnson and
    # Tarjan 1980), each piece in its box, shelves as wide as one to four pages, the best of them.
    request = PageRequest((paper,))
    laid = laid_for(garment, paper, request)
    ours = len(plan_pages(laid.ink, laid.width, laid.height, paper).tiles)
    assert ours < shelf_pages(laid, paper)


def test_the_same_shapes_lie_the_same_way(garment: Pattern) -> None:
    assert sheet(garment, (A4,)) == sheet(garment, (A4,))
