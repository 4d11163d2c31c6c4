"""The search for a layout of few pages."""

from __future__ import annotations

import math

import pytest
import shapely
from shapely import affinity

from kit.lesson.pattern import Pattern
from kit.paper.layout import best_layout, useful_angles
from kit.paper.papers import A3, A4, LETTER, Paper
from kit.paper.plan import count_pages, plan_pages
from kit.paper.printing import laid_for
from kit.paper.request import PageRequest
from kit.paper.sheet import sheet
from kit.pausing import Stopped, pausing

from .shelf import shelf_pages

GAP = 10.0


def test_a_long_piece_lies_aslant_when_only_so_a_page_takes_it_whole() -> None:
    strip = shapely.box(0, 0, 15, 290)  # a page of A4 carries 180 x 267 mm; the diagonal is 322
    assert any(
        shapely.box(0, 0, *A4.step).contains(affinity.translate(turned, -turned.bounds[0], -turned.bounds[1]))
        for turned in (affinity.rotate(strip, angle, use_radians=True) for angle in useful_angles(strip, A4))
    )
    found = best_layout([strip], (A4,), GAP, 841, lambda moved, width, height: count_pages(moved, width, height, A4))
    moved = affinity.translate(affinity.affine_transform(strip, found.poses[0].matrix), 0, found.height)
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


@pytest.mark.parametrize("pauses", [1, 4, 20])
def test_a_search_can_be_stopped(pauses: int) -> None:
    left = pauses

    def pause() -> None:
        nonlocal left
        left -= 1
        if left == 0:
            raise Stopped

    shapes = [shapely.box(0, 0, 60 + 7 * at, 90 + 11 * at) for at in range(6)]
    with pausing(pause), pytest.raises(Stopped):
        best_layout(shapes, (A4,), GAP, 841, lambda moved, width, height: count_pages(moved, width, height, A4))
