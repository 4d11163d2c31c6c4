"""The projector's sheet, measured in what would be projected."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from io import BytesIO

import numpy as np
import pikepdf
import pytest
import shapely

from kit.errors import KitError
from kit.geometry import Point
from kit.lesson.pattern import Pattern
from kit.paper.pdf_pen import INKS
from kit.paper.projector import GAP, ProjectorSheet, along_cloth, heavy, projector_pdf, projector_sheet
from kit.picture.drawing import Stroke
from kit.piece.allowance import cut_line
from kit.piece.piece import Grain

Render = Callable[..., list[np.ndarray]]


@pytest.fixture(scope="module")
def laid(garment: Pattern) -> ProjectorSheet:
    return projector_sheet(garment)


def test_pieces_keep_their_size_and_their_distance(laid: ProjectorSheet, garment: Pattern) -> None:
    whole = shapely.box(0, 0, laid.width, laid.top)
    for place, each in enumerate(laid.pieces):
        own = shapely.Polygon([(p.x, p.y) for p in cut_line(garment.pieces[place]).points(0.1)])
        assert each.paper.area == pytest.approx(own.area, rel=1e-4)
        assert whole.covers(each.paper)
        for other in laid.pieces[place + 1 :]:
            assert each.paper.distance(other.paper) >= GAP - 1e-6


def test_the_grain_runs_one_way_in_every_piece(laid: ProjectorSheet) -> None:
    for each in laid.pieces:
        (line,) = (item for item in each.items if isinstance(item, Stroke) and item.name == "grainline")
        way = line.curves[0].end - line.curves[0].start
        assert way.x > 0 and abs(way.y) < 1e-6


@pytest.mark.parametrize(("kind", "degrees"), [("lengthwise", 0), ("crosswise", 90), ("bias", 45)])
def test_pieces_on_other_grains_are_turned_to_suit(garment: Pattern, kind: str, degrees: float) -> None:
    piece = replace(garment.pieces[1], grain=Grain(Point(10, 10), Point(60, 110), kind))  # type: ignore[arg-type]
    way = along_cloth(piece).vector(Point(60, 110) - Point(10, 10))
    assert math.degrees(math.atan2(way.y, way.x)) == pytest.approx(degrees)


def test_the_page_is_the_sheet_at_full_scale(laid: ProjectorSheet, garment: Pattern) -> None:
    with pikepdf.open(BytesIO(projector_pdf(laid, garment))) as document:
        (page,) = document.pages
        box = [float(value) * 25.4 / 72 for value in page.mediabox]
        assert box == pytest.approx([0, 0, laid.width, laid.height], abs=0.01)


def test_the_squares_measure_true(laid: ProjectorSheet, garment: Pattern, render: Render) -> None:
    (image,) = render(projector_pdf(laid, garment), 50)
    dot = 25.4 / 50
    row = round((20 + 26 + 255.3) / dot)  # between grid lines, through both squares above their middle
    strong = image[row - 60 : row - 57].min(axis=0)
    runs = np.split(np.flatnonzero(strong > 0.8), np.flatnonzero(np.diff(np.flatnonzero(strong > 0.8)) > 1) + 1)
    edges = [float((run[0] + run[-1] + 1) / 2 * dot) for run in runs if len(run) >= 3]
    assert laid.squares == (500.0, 508.0)  # 20 in of exactly 25.4 mm
    assert edges[1] - edges[0] == pytest.approx(500.0, abs=0.5)
    assert edges[3] - edges[2] == pytest.approx(508.0, abs=0.5)


def test_dark_is_light_lines_on_black(laid: ProjectorSheet, garment: Pattern, render: Render) -> None:
    (light,), (dark,) = (render(projector_pdf(laid, garment, dark), 25) for dark in (False, True))
    assert light.shape == dark.shape
    assert light.mean() < 0.25 and dark.mean() > 0.75
    assert np.abs(light + dark - 1).mean() < 0.05  # one is the other's negative


def test_lines_are_heavy_and_differ(laid: ProjectorSheet) -> None:
    look = heavy(False)
    assert all(ink.width >= 0.8 and ink.grey <= 0.3 for ink in look.inks.values())
    assert look.inks["cut"].width >= 3 * INKS["cut"].width
    assert len({(look.inks[role].dash) for role in ("cut", "stitch", "fold", "mark")}) == 4


def test_the_sheet_may_be_given(garment: Pattern) -> None:
    given = projector_sheet(garment, (1800.0, 1500.0))
    assert (given.width, given.height) == (1800.0, 1500.0)
    small = projector_sheet(garment, (1200.0, 1150.0))
    assert max(small.squares) < 500  # a smaller square where the room is needed for the pieces


@pytest.mark.parametrize(("size", "said"), [((300.0, 2000.0), "wide"), ((1500.0, 300.0), "high")])
def test_a_sheet_too_small_is_refused(garment: Pattern, size: tuple[float, float], said: str) -> None:
    with pytest.raises(KitError, match=f"do not fit.*{said}"):
        projector_sheet(garment, size)


def test_nothing_to_project_is_refused(garment: Pattern) -> None:
    with pytest.raises(KitError, match="no pieces"):
        projector_sheet(replace(garment, pieces=()))
    with pytest.raises(KitError, match="more than a page of a PDF"):
        projector_sheet(garment, (6000.0, 1500.0))
