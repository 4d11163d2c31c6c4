"""A drawing in the making: order, growth, and that nothing moves while it grows."""

from __future__ import annotations

import math
import re
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from kit.geometry import Arc, Cubic, Line, Point
from kit.lesson.pattern import Pattern
from kit.picture.draft import step_drawing
from kit.picture.drawing import Dimension, Dot, Drawing, Fill, Label, Stroke
from kit.picture.filming import GROUNDS, LEAST, filming
from kit.picture.raster import Raster, raster
from kit.picture.reveal import NEW, part_of, reveal, seconds, turns
from kit.picture.staged import StagedDrawing
from kit.picture.svg_pen import svg
from kit.picture.theme import PAPER, THEME, contrast


def p(x: float, y: float) -> Point:
    return Point(x, y)


CLOTH = (Line(p(0, 0), p(200, 0)), Line(p(200, 0), p(200, 100)), Line(p(200, 100), p(0, 100)), Line(p(0, 100), p(0, 0)))
BEND = Cubic(p(0, 0), p(60, 10), p(140, 60), p(200, 100))
SEAM = Drawing(
    (
        Fill(CLOTH, "wrong_side"),
        Stroke(CLOTH, "edge", closed=True),
        Label("back: wrong side", p(100, 50), "name"),
        Stroke((Line(p(0, 10), p(200, 10)),), "row"),
        Stroke((BEND, Line(p(200, 100), p(220, 100))), "new", arrow="both"),
        Dot(p(0, 50), "new"),
        Label("corner", p(0, 56), "small"),
        Dimension(p(0, 10), p(200, 10), "20 cm", 8.0),
        Label("curve", p(120, 45), "new"),
    )
)


@pytest.fixture(scope="module")
def step(wrap_top: Pattern) -> Drawing:
    return step_drawing(wrap_top.steps[0])


def inked(drawing: Drawing) -> float:
    """The length of every line there is, mm."""
    total = 0.0
    for item in drawing.items:
        if isinstance(item, Stroke):
            total += sum(curve.length for curve in item.curves)
            gap = item.curves[-1].end.distance(item.curves[0].start) if item.closed else 0.0
            total += gap
    return total


def test_at_one_it_is_the_drawing(step: Drawing) -> None:
    assert reveal(step, 1.0) == step
    assert reveal(SEAM, 1.0) == SEAM
    assert reveal(SEAM, 7.0) == SEAM, "more than all of it is all of it"


def test_at_nothing_only_what_stood_before(step: Drawing) -> None:
    for drawing in (step, SEAM):
        bare = reveal(drawing, 0.0)
        standing = [i for i in drawing.items if isinstance(i, Stroke | Fill) and i.role not in NEW]
        assert [i for i in bare.items if isinstance(i, Stroke | Fill)] == standing
        assert not any(isinstance(i, Dimension) for i in bare.items)
        assert not any(isinstance(i, Dot) and i.role == "new" for i in bare.items)
    assert {i.text for i in reveal(SEAM, 0.0).items if isinstance(i, Label)} == {"back: wrong side"}
    assert any(isinstance(i, Stroke) for i in reveal(step, 0.0).items)


@given(st.floats(0, 1), st.floats(0, 1))
def test_what_is_inked_only_grows(one: float, other: float) -> None:
    low, high = sorted((one, other))
    less, more = reveal(SEAM, low), reveal(SEAM, high)
    assert inked(less) <= inked(more) + 1e-6
    assert len(less.items) <= len(more.items)


def test_a_real_step_grows_without_a_leap(step: Drawing) -> None:
    lengths = [inked(reveal(step, k / 400)) for k in range(401)]
    assert all(b >= a - 1e-6 for a, b in pairwise(lengths))
    assert max(b - a for a, b in pairwise(lengths)) < 0.03 * lengths[-1]
    assert lengths[-1] == pytest.approx(inked(step))


def test_one_after_another_and_names_after_their_line() -> None:
    found = turns(SEAM)
    row, bend, dot, corner, size, name = (found[i] for i in (3, 4, 5, 6, 7, 8))
    assert row.start == 0.0 and row.end > 0
    assert size.start >= row.end, "a dimension comes when its line is drawn"
    assert bend.start >= size.end, "the second line comes after the first and what belongs to it"
    assert name.start >= bend.end
    assert corner.start >= dot.end
    assert max(turn.end for turn in found) == 1.0
    begun = sorted((turn.start, turn.end) for turn in found if not turn.stands)
    assert all(first[1] == pytest.approx(second[0]) for first, second in pairwise(begun)), "no two at once, no gap"


def test_a_part_lies_on_the_line_and_has_its_length() -> None:
    stroke = SEAM.items[4]
    assert isinstance(stroke, Stroke)
    whole = sum(curve.length for curve in stroke.curves)
    for share in (0.1, 0.5, 0.93):
        part = part_of(stroke, share)
        assert isinstance(part, Stroke)
        assert sum(c.length for c in part.curves) == pytest.approx(whole * share, abs=0.02)
        assert part.curves[0].start == stroke.curves[0].start
        assert part.arrow == "start", "the head at the end comes with the end"
        tip = part.curves[-1].end
        assert min(c.point(c.nearest(tip)).distance(tip) for c in stroke.curves) < 0.02


def test_a_closed_line_is_closed_only_at_the_end() -> None:
    square = Stroke((*CLOTH[:3],), "new", closed=True)
    half, most = part_of(square, 0.5), part_of(square, 0.95)
    assert isinstance(half, Stroke) and isinstance(most, Stroke)
    assert not half.closed
    assert sum(c.length for c in half.curves) == pytest.approx(300.0)
    assert sum(c.length for c in most.curves) == pytest.approx(570.0), "the closing side grows too"
    assert part_of(square, 1.0) == square


def test_a_step_takes_its_time(step: Drawing) -> None:
    assert 1.0 <= seconds(step) <= 10.0
    assert seconds(Drawing((Fill(CLOTH, "right_side"),))) == 0.0, "nothing in it is made"


# ---- on the stage -----------------------------------------------------------------------------------------


def test_the_frame_and_the_texts_stay_where_they_are(step: Drawing) -> None:
    stage = StagedDrawing(step, 960, 640)
    box = re.search(r'viewBox="([^"]+)"', stage.at(1.0))
    texts = set(re.findall(r'<g transform="[^"]+">.*?</text></g>', stage.at(1.0)))
    assert box and texts
    for share in (0.0, 0.3, 0.6, 0.9):
        assert f'viewBox="{box[1]}"' in stage.at(share)
        assert set(re.findall(r'<g transform="[^"]+">.*?</text></g>', stage.at(share))) <= texts


def test_the_whole_stage_is_the_pens_own_picture(step: Drawing) -> None:
    """The same marks in the same order as the SVG pen draws."""
    for drawing in (step, SEAM):
        plain, staged = svg(drawing, 960, 640), StagedDrawing(drawing, 960, 640).at(1.0)
        assert re.findall(r' d="[^"]+"', plain) == re.findall(r' d="[^"]+"', staged)
        assert re.findall(r"<text.*?</text>", plain) == re.findall(r"<text.*?</text>", staged)


def test_the_browsers_picture_carries_every_turn() -> None:
    text = StagedDrawing(SEAM, 960, 640).svg()
    groups = re.findall(r'<g data-from="([\d.]+)" data-to="([\d.]+)" data-kind="(line|show)">', text)
    assert sum(kind == "line" for *_, kind in groups) == 2
    assert all(0 <= float(a) < float(b) <= 1 for a, b, _ in groups)


def test_a_measure_of_no_length_keeps_its_place() -> None:
    drawing = Drawing((*SEAM.items, Dimension(p(50, 50), p(50, 50), "0 cm"), Label("late", p(20, 80), "new")))
    text = StagedDrawing(drawing, 960, 640).svg()
    assert ">0 cm<" in text and ">late<" in text


# ---- as pixels --------------------------------------------------------------------------------------------


def test_pixels_lie_where_the_lines_are() -> None:
    """A square of 100 mm in 200 px, drawn 4 px wide: known pixels are ink, others are not."""
    box = (Line(p(20, 20), p(80, 20)), Line(p(80, 20), p(80, 80)), Line(p(80, 80), p(20, 80)))
    drawing = Drawing((Stroke(box, "cut", closed=True),), bounds=(0.0, 0.0, 100.0, 100.0))
    pixels = raster(StagedDrawing(drawing, 200, 200, ground=False).at(1.0), (200, 200))
    ink = tuple(int(THEME.lines["cut"].colour[i : i + 2], 16) for i in (1, 3, 5))
    for x, y in ((100, 160), (160, 100), (100, 40), (40, 100)):
        assert tuple(pixels[y - 1, x - 1, :3]) == pytest.approx(ink, abs=2)
        assert pixels[y - 1 : y + 1, x - 1 : x + 1, 3].max() > 200
    assert pixels[100, 100, 3] == 0 and pixels[5, 5, 3] == 0


def test_arcs_fill_their_area() -> None:
    """A disc of radius 40 px covers pi r^2 pixels."""
    disc = Arc(p(50, 50), 40.0, 0.0, 2 * math.pi)
    drawing = Drawing((Fill((disc,), "right_side"),), bounds=(0.0, 0.0, 100.0, 100.0))
    pixels = raster(StagedDrawing(drawing, 300, 300, ground=False).at(1.0), (300, 300))
    assert pixels[:, :, 3].sum() / 255 == pytest.approx(math.pi * 120**2, rel=0.004)
    assert len(np.unique(pixels[:, :, :3].reshape(-1, 3), axis=0)) > 2, "the cloth's motif is on it"


def test_what_is_kept_between_frames_changes_nothing(step: Drawing) -> None:
    for drawing in (step, SEAM):
        stage, pen = StagedDrawing(drawing, 480, 270), Raster((480, 270), "#00b140")
        for share in (0.0, 0.1, 0.35, 0.3, 0.8, 1.0, 1.0):
            assert np.array_equal(pen.draw(stage.at(share)), raster(stage.at(share), (480, 270), "#00b140")), share


def test_ink_for_filming_is_bold_and_has_contrast() -> None:
    theme = filming()
    inks = {role: ink for role, ink in theme.lines.items() if role != "row_ground"}  # that is paper under a row
    assert all(contrast(ink.colour, PAPER) >= LEAST for ink in inks.values())
    on = {"order": THEME.accent}  # the number of a stroke stands on a sign of its own, not on paper
    assert all(contrast(ink.colour, on.get(role, PAPER)) >= LEAST for role, ink in theme.texts.items())
    assert theme.texts["measure"].size > THEME.texts["measure"].size * 1.25
    assert contrast(theme.lines["new"].colour, theme.lines["kept"].colour) > 1.1


def test_a_flat_ground_is_far_from_every_cloth() -> None:
    """Keying takes away what is near the ground: no tint or ink of ours may be."""
    colours = {cloth.tint for role, cloth in THEME.fills.items() if role not in ("paper", "frame")}
    colours |= {ink.colour for ink in THEME.lines.values()}

    def parts(colour: str) -> np.ndarray:
        return np.array([int(colour[i : i + 2], 16) for i in (1, 3, 5)], float)

    for name in ("green", "blue"):
        assert min(np.linalg.norm(parts(GROUNDS[name]) - parts(c)) for c in colours) > 90
        assert filming(GROUNDS[name]).fills["frame"].tint == GROUNDS[name]


def test_a_curve_that_leaves_the_canvas_is_stroked_where_it_lies() -> None:
    """A line goes off to the right and a level curve comes back from there: it crosses the canvas at one height."""
    shape = "M0 10L200 10C150 60 50 60 0 60L0 10Z"
    svg = (
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100">'
        f'<path d="{shape}" fill="none" stroke="#000000" stroke-width="2"/></svg>'
    )
    pixels = raster(svg, (100, 100), "#ffffff")
    for column in (20, 50, 80):
        share = next(t / 1000 for t in range(1001) if _cubic(t / 1000, 200, 150, 50, 0) <= column)
        height = _cubic(share, 10, 60, 60, 60)
        dark = [row for row in range(20, 100) if pixels[row, column, 0] < 128]
        assert dark and abs(sum(dark) / len(dark) - height) < 2.0, (column, dark, height)


def _cubic(t: float, *points: float) -> float:
    a, b, c, d = points
    return a * (1 - t) ** 3 + 3 * b * t * (1 - t) ** 2 + 3 * c * t * t * (1 - t) + d * t**3
