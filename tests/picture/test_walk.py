"""The picture of a walk and of the place of a finding: what is drawn, and that words and picture agree."""

from __future__ import annotations

import math
import xml.etree.ElementTree as ET
from dataclasses import replace

import pytest

from kit.blocks.darted_bodice import darted_bodice_block
from kit.blocks.sleeve import with_sleeve
from kit.body.chart import workshop_chart
from kit.geometry import Point
from kit.lesson.pattern import SewRecord
from kit.picture.drawing import Fill, Label, Stroke
from kit.picture.finding import finding_drawing
from kit.picture.svg_pen import svg
from kit.picture.walk import difference_words, walk_drawing, walk_words
from kit.piece.piece import Notch
from kit.proof import Finding, prove
from kit.sewing.handle import PieceHandle
from kit.sewing.make import Make
from kit.sewing.seam_walk import Walk, walk
from kit.units import cm
from tests.sewing import wrap_top as wrap


@pytest.fixture(scope="module")
def capped() -> Walk:
    pieces = with_sleeve(darted_bodice_block)(workshop_chart()["W4"])
    return walk(pieces, "front.armhole", "sleeve.front_cap")


def labels(drawing) -> list[str]:
    return [item.text for item in drawing.items if isinstance(item, Label)]


def test_every_place_is_numbered_and_its_difference_written_in_both_systems(capped) -> None:
    drawing = walk_drawing(capped)
    texts = labels(drawing)
    for number, _ in enumerate(capped.stations, start=1):
        assert str(number) in texts and any(text.startswith(f"{number}  ") for text in texts)
    assert any("sleeve 1.3 cm (1/2 in) longer" in text for text in texts)
    inches = walk_drawing(capped, "inch")
    assert any("sleeve 1/2 in (1.3 cm) longer" in text for text in labels(inches))


def test_words_and_picture_come_from_one_walk(capped) -> None:
    drawing = walk_drawing(capped)
    assert drawing.alt == " ".join(walk_words(capped))
    for line in walk_words(capped)[1:-1]:
        number, said = line.rstrip(".").split(": ", 1)
        assert f"{number}  {said}" in labels(drawing)


def test_ghosts_stand_where_the_piece_rolls(capped) -> None:
    for count in (0, 3, 6):
        ghosts = [
            item
            for item in walk_drawing(capped, ghosts=count).items
            if isinstance(item, Stroke) and item.role == "removed" and item.closed
        ]
        assert len(ghosts) == max(count - 1, 0)  # the last place is the piece itself
        for ghost, i in zip(ghosts, range(count), strict=False):
            at = capped.motion(min(capped.a.length, capped.b.length) * i / max(count - 1, 1))
            assert ghost.curves[0].start.close_to(at(capped.b.piece.edges[0].path.start))
    halfway = walk_drawing(capped, ghosts=0, at=100.0)
    rolled = next(i for i in halfway.items if isinstance(i, Stroke) and i.name == "second edge")
    assert rolled.curves[0].start.close_to(capped.motion(100.0)(capped.b.path.start))


def test_a_run_with_darts_shows_them_shut() -> None:
    pieces = darted_bodice_block(workshop_chart()["W4"])
    drawing = walk_drawing(walk(pieces, "front.side", "back.side"))
    dart = [i for i in drawing.items if isinstance(i, Stroke) and i.name == "bust_dart"]
    assert len(dart) == 1 and not any(i for i in drawing.items if isinstance(i, Fill) and i.role == "right_side")


def test_equal_and_unequal_are_said(capped) -> None:
    assert difference_words(capped, 0.3, "cm") == "equal"
    assert difference_words(capped, -5.0, "cm") == "front bodice 5 mm (3/16 in) longer"
    eased = replace(capped, ease=capped.difference)
    assert walk_words(eased)[-1].endswith("longer, which is eased in.")


def test_the_svg_is_sound_and_tells_what_it_shows(capped) -> None:
    root = ET.fromstring(svg(walk_drawing(capped), 640))
    assert root.get("role") == "img"
    assert "sleeve" in "".join(root.itertext())


# ---- findings ---------------------------------------------------------------------------------------------


@pytest.fixture
def bent():
    """Two panels whose lower edges come to a point of 17 degrees, one 5 mm longer and notched alone."""
    edges = {"top": 10, "seam": 10, "bottom": 10, "far": 10}
    a = wrap.polygon("left_panel", [(0, 100), (100, 100), (100, 0), (0, 30)], edges, notches=(Notch("seam", 40.0),))
    b = wrap.polygon("right_panel", [(0, 105), (100, 105), (100, 0), (0, 0)], edges)
    make = Make((a, b))
    make.plain_seam(PieceHandle(a).seam, PieceHandle(b).seam, allowance=1 * cm)
    record = SewRecord("seam", "Seam", "", "", tuple(make.operations))
    return replace(wrap.pattern_of([], pieces=(a, b), strips=()), sewing=(record,))


def one(pattern, code: str) -> Finding:
    return next(f for f in prove(pattern) if f.code == code)


def test_an_untrue_corner_is_drawn_with_its_angles(bent) -> None:
    finding = one(bent, "corner_not_true")
    drawing = finding_drawing(finding, bent)
    assert drawing is not None and drawing.alt == str(finding)
    assert {"73\u00b0", "90\u00b0", "bends by 17\u00b0"} <= set(labels(drawing))
    arcs = [i for i in drawing.items if isinstance(i, Stroke) and i.role == "press"]
    sweeps = sorted(round(abs(math.degrees(arc.curves[0].sweep))) for arc in arcs)  # type: ignore[attr-defined]
    assert sweeps == [73, 90]
    assert drawing.bounds is not None
    x0, y0, x1, y1 = drawing.bounds
    assert x0 < 100 < x1 and y0 < 0 < y1  # the corner lies in the picture


def test_the_two_pieces_lie_on_either_side_of_the_seam(bent) -> None:
    drawing = finding_drawing(one(bent, "corner_not_true"), bent)
    assert drawing is not None
    left, right = (i for i in drawing.items if isinstance(i, Fill))
    assert max(p.x for c in left.curves for p in (c.start, c.end)) <= 100 + 1e-6
    assert min(p.x for c in right.curves for p in (c.start, c.end)) >= 100 - 1e-6


@pytest.mark.parametrize("code", ["seam_length", "notch_unmatched"])
def test_unequal_edges_and_lonely_notches_are_shown_walked(bent, code) -> None:
    drawing = finding_drawing(one(bent, code), bent)
    assert drawing is not None and any("5 mm (3/16 in) longer" in text for text in labels(drawing))


def test_any_other_edge_is_shown_heavy(bent) -> None:
    finding = one(bent, "raw_edge")
    drawing = finding_drawing(finding, bent)
    assert drawing is not None
    heavy = [i.name for i in drawing.items if isinstance(i, Stroke) and i.role == "new"]
    assert heavy == [f"{finding.piece}.{finding.edge}"]


def test_a_finding_without_a_place_has_no_picture(bent) -> None:
    assert finding_drawing(Finding("no_sewing", "note", "nothing"), bent) is None
    assert finding_drawing(Finding("raw_edge", "error", "it", piece="gone"), bent) is None
    broken = replace(bent, pieces=tuple(replace(p, edges=()) for p in bent.pieces))
    assert finding_drawing(Finding("raw_edge", "error", "it", piece="left_panel"), broken) is None


def test_points_on_the_rulers_are_in_order(capped) -> None:
    rows = [i for i in walk_drawing(capped).items if isinstance(i, Label) and i.anchor == "start"][1:]
    heights = [row.at.y for row in rows]
    assert heights == sorted(heights, reverse=True) and len(set(heights)) == len(heights)
    assert isinstance(rows[0].at, Point)
