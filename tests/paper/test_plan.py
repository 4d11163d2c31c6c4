"""The page plan: which tiles there are and which are printed."""

from __future__ import annotations

from dataclasses import replace

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from kit.errors import KitError
from kit.lesson.pattern import Pattern
from kit.paper.page_cost import EDGE
from kit.paper.papers import A0, A4, LETTER, Paper
from kit.paper.plan import all_tiles, grid, letters, plan_on, plan_pages
from kit.paper.sheet import GAP, sheet

PAPERS = st.sampled_from([A4, A4.turned, LETTER, LETTER.turned])


@given(st.floats(20, 3000), st.floats(20, 3000), PAPERS)
def test_tiles_cover_the_sheet_once(width: float, height: float, paper: Paper) -> None:
    tiles = [shapely.box(tile.left, tile.bottom, tile.right, tile.top) for tile in all_tiles(width, height, paper)]
    whole = shapely.box(0, 0, width, height)
    assert shapely.union_all(tiles).buffer(1e-6).covers(whole)
    total = sum(tile.area for tile in tiles)
    assert abs(total - shapely.union_all(tiles).area) < 1e-3 * len(tiles)


@given(st.floats(20, 3000), st.floats(20, 3000), PAPERS)
def test_no_row_or_column_too_many(width: float, height: float, paper: Paper) -> None:
    whole = shapely.box(0, 0, width, height)
    for tile in all_tiles(width, height, paper):
        assert whole.buffer(1e-6).intersects(shapely.box(tile.left, tile.bottom, tile.right, tile.top))


@pytest.mark.parametrize(
    ("width", "height", "paper", "rows", "columns"),
    [
        (190, 277, A4, 1, 1),  # 210 x 297 mm less 10 mm of margin on every side: one page
        (191, 278, A4, 2, 2),
        (370, 544, A4, 2, 2),  # two pages glued 10 mm over each other: 2 x 190 - 10 and 2 x 277 - 10
        (371, 545, A4, 3, 3),
        (550, 811, A4, 3, 3),
        (277, 190, A4.turned, 1, 1),
        (545, 371, A4.turned, 3, 3),
        (380, 554, replace(A4, overlap=0.0), 2, 2),
        (381, 555, replace(A4, overlap=0.0), 3, 3),
        (340, 514, replace(A4, overlap=40.0), 2, 2),
        (341, 515, replace(A4, overlap=40.0), 3, 3),
    ],
)
def test_pages_glued_over_each_other_reckoned_by_hand(width, height, paper, rows, columns) -> None:
    assert grid(width, height, paper) == (rows, columns)
    tiles = all_tiles(width, height, paper)
    assert len(tiles) == rows * columns
    assert max(tile.right for tile in tiles) >= width and min(tile.bottom for tile in tiles) <= 0


def test_a_tile_without_paper_of_a_piece_is_left_out() -> None:
    # Two small pieces in opposite corners of a 3 by 3 grid.
    across, down = A4.step
    ink = [shapely.box(5, 5, 60, 60), shapely.box(3 * across - 60, 3 * down - 60, 3 * across - 5, 3 * down - 5)]
    plan = plan_on(ink, 3 * across, 3 * down, A4)
    assert [tile.name for tile in plan.tiles] == ["1C", "3A"]
    assert plan.borders == ()


def test_a_tile_wholly_inside_a_piece_is_kept() -> None:
    across, down = A4.step
    plan = plan_on([shapely.box(5, 5, 3 * across - 5, 3 * down - 5)], 3 * across, 3 * down, A4)
    assert len(plan.tiles) == 9


def test_paper_is_turned_when_that_saves_pages() -> None:
    assert plan_pages([shapely.box(5, 5, 260, 180)], 270, 185, A4).paper.landscape
    assert not plan_pages([shapely.box(5, 5, 180, 260)], 185, 270, A4).paper.landscape


def test_columns_beyond_z() -> None:
    assert [letters(place) for place in (0, 25, 26, 27, 52)] == ["A", "Z", "AA", "AB", "BA"]


def test_pieces_keep_their_gap_and_lie_on_the_sheet(garment: Pattern) -> None:
    laid = sheet(garment)
    whole = shapely.box(EDGE, EDGE, laid.width - EDGE, laid.height - EDGE).buffer(1e-6)
    inks = laid.ink
    for place, ink in enumerate(inks):
        assert whole.covers(ink)
        for other in inks[place + 1 :]:
            assert ink.distance(other) >= GAP - 1e-6


def test_every_piece_is_laid_at_its_own_size(garment: Pattern) -> None:
    for placement in sheet(garment).placements:
        assert not placement.motion.flips
        outline = placement.outline
        for a, b, c, d in zip(placement.corners, placement.corners[1:], outline, outline[1:], strict=False):
            assert abs(a.distance(b) - c.distance(d)) < 1e-9


def test_the_same_pattern_gives_the_same_sheet(garment: Pattern) -> None:
    assert sheet(garment) == sheet(garment)


def test_laying_together_takes_no_more_pages_than_each_piece_alone(garment: Pattern) -> None:
    laid = sheet(garment, papers=(A4,))
    together = len(plan_pages(laid.ink, laid.width, laid.height, A4).tiles)
    alone = 0
    for piece in garment.pieces:
        single = sheet(replace(garment, pieces=(piece,)), papers=(A4,))
        alone += len(plan_pages(single.ink, single.width, single.height, A4).tiles)
    assert laid.width <= A0.width
    assert together <= alone


def test_a_pattern_without_pieces_is_refused(garment: Pattern) -> None:
    with pytest.raises(KitError, match="no pieces"):
        sheet(replace(garment, pieces=()))


def test_only_pages_that_share_a_piece_are_joined() -> None:
    across, down = A4.step
    one = shapely.box(5, down + 5, across + 50, 2 * down - 5)  # over the upper two pages
    other = shapely.box(5, 5, 60, 60)  # alone on the lower left one
    plan = plan_on([one, other], 2 * across, 2 * down, A4)
    assert [tile.name for tile in plan.tiles] == ["1A", "1B", "2A"]
    assert [(a.name, b.name) for a, b in plan.borders] == [("1A", "1B")]
    assert plan.groups == 2


def test_pages_of_one_patch_are_joined_all_round() -> None:
    # A ring of a piece over four pages: the border that nothing crosses is joined too, or the pages would overlap.
    across, down = A4.step
    ring = shapely.Polygon(
        [(20, 20), (2 * across - 20, 20), (2 * across - 20, 2 * down - 20), (across + 20, 2 * down - 20)]
        + [(across + 20, 60), (across - 20, 60), (across - 20, 2 * down - 20), (20, 2 * down - 20)]
    )
    plan = plan_on([ring], 2 * across, 2 * down, A4)
    assert len(plan.tiles) == 4 and plan.groups == 1
    assert len(plan.crossed) == 3 and len(plan.borders) == 4
