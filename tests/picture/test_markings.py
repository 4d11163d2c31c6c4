"""Every kind of mark has its sign, on the printed piece and in the picture of the step that draws it."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from kit.geometry import Line, Path, Point, Vector
from kit.lesson import pleating
from kit.lesson.pattern import Pattern, StepRecord
from kit.picture.draft import step_drawing
from kit.picture.drawing import Dot, Item, Label, Stroke
from kit.picture.legend import legend
from kit.picture.markings import DRILL_RADIUS
from kit.picture.piece_sheet import piece_drawing, piece_items
from kit.piece.allowance import cut_line
from kit.piece.piece import Edge, Mark, Piece

POCKET = Path((Line(Point(60, 150), Point(60, 60)), Line(Point(60, 60), Point(130, 60))))
MARKS = (
    Mark("pocket_corner", "drill", point=Point(60, 150)),
    Mark("pocket", "placement", path=POCKET, said="patch pocket"),
    Mark("top_button", "buttonhole", path=Path.line(Point(10, 250), Point(30, 250))),
    Mark("zip", "opening", edge="side", start=180, end=290),
    Mark("button", "point", point=Point(170, 220)),
    Mark("loop", "point", edge="waist", start=40.0),
    Mark("hip_line", "line", path=Path.line(Point(0, 120), Point(200, 120))),
)


def panel() -> Piece:
    corners = [Point(0, 0), Point(220, 0), Point(200, 300), Point(0, 300)]
    edges = [
        Edge(name, Path.line(a, b), 10.0)
        for name, a, b in zip(("hem", "side", "waist", "centre"), corners, [*corners[1:], corners[0]], strict=True)
    ]
    return Piece("panel", "Panel", tuple(edges), number=1, marks=MARKS)


def strokes(items: tuple[Item, ...], name: str) -> list[Stroke]:
    return [item for item in items if isinstance(item, Stroke) and item.name == name]


def test_each_mark_has_its_own_sign_and_its_name(wrap_top: Pattern) -> None:
    items = piece_items(panel(), wrap_top)
    (circle,) = strokes(items, "panel.pocket_corner")
    assert circle.role == "symbol" and circle.curves[0].length == pytest.approx(2 * math.pi * DRILL_RADIUS)
    cross = strokes(items, "panel.pocket_corner.cross")
    assert [s.curves[0].start.mid(s.curves[0].end) for s in cross] == [Point(60, 150)] * 2
    (slit,) = strokes(items, "panel.top_button")
    assert slit.role == "symbol" and slit.curves[0].length == pytest.approx(20.0)
    bars = strokes(items, "panel.top_button.bar")
    assert {round(bar.curves[0].start.mid(bar.curves[0].end).x) for bar in bars} == {10, 30}
    assert all(abs(bar.curves[0].start.x - bar.curves[0].end.x) < 1e-9 for bar in bars)
    (pocket,) = strokes(items, "panel.pocket")
    assert pocket.role == "placement" and pocket.curves == POCKET.curves
    assert len(strokes(items, "panel.zip")) == 2
    dots = {item.name: item.at for item in items if isinstance(item, Dot)}
    assert dots["panel.button"] == Point(170, 220)
    assert dots["panel.loop"] == panel().edge("waist").path.at(40.0)
    texts = {item.text for item in items if isinstance(item, Label)}
    assert {mark.label for mark in MARKS} <= texts


def test_a_step_shows_what_it_marks_as_new(wrap_top: Pattern) -> None:
    record = StepRecord(
        "m", "Mark", "", "c", (), (), (panel(),), (), (), (), (), new_marks=tuple(("panel", m) for m in MARKS)
    )
    items = step_drawing(record).items
    for name in ("pocket_corner", "pocket_corner.cross", "top_button", "top_button.bar", "pocket", "zip", "hip_line"):
        found = strokes(items, f"panel.{name}")
        assert found and all(stroke.role == "new" for stroke in found), name
    assert {i.name for i in items if isinstance(i, Dot) and i.role == "new"} >= {"panel.button", "panel.loop"}
    assert {m.label for m in MARKS} <= {i.text for i in items if isinstance(i, Label)}


def test_a_pleat_runs_to_the_cut_line_with_its_fold_and_the_way_it_is_laid(wrap_top: Pattern) -> None:
    piece = replace(panel(), marks=())
    far = pleating.across(piece, "waist", 90.0)
    for laid in ("start", "end"):
        pleated = pleating.add_pleat(piece, "front_pleat", ("waist", 90.0), far, 40.0, laid=laid)
        drawing = piece_drawing(pleated, wrap_top)
        items = piece_items(pleated, wrap_top)
        lines = strokes(items, "panel.front_pleat")
        assert len(lines) == 2 and all(line.role == "pleat" for line in lines)
        assert len(strokes(items, "panel.front_pleat.fold")) == 1
        notches = strokes(items, "panel.front_pleat.notch")
        assert len(notches) == 4
        for notch in notches:
            assert any(cut_line(pleated).edge(e).distance_to(notch.curves[0].end) < 0.05 for e in ("waist", "hem"))
        (pleat,) = pleated.pleats
        along = pleated.edge("waist").path.tangent_at(pleat.start) * (1.0 if laid == "end" else -1.0)
        arrows = strokes(items, "panel.front_pleat.laid")
        assert arrows and all(a.arrow == "end" for a in arrows)
        assert all((a.curves[-1].end - a.curves[0].start).dot(along) > 20.0 for a in arrows)
        assert "front pleat taking 4 cm" in drawing.alt


def test_a_tuck_is_dashed_as_far_as_it_is_sewn(wrap_top: Pattern) -> None:
    piece = replace(panel(), marks=())
    row = pleating.tuck_row(
        piece, "tuck", ("waist", 60.0), count=3, depth=4.0, apart=20.0, sewn=100.0, way=Vector(0.0, 1.0)
    )
    items = piece_items(row, wrap_top)
    for number in (1, 2, 3):
        sewn = strokes(items, f"panel.tuck_{number}")
        assert [round(sum(c.length for c in s.curves)) for s in sewn] == [100, 100]
        assert all(s.role == "stitch" for s in sewn)
        assert all(s.role == "pleat" for s in strokes(items, f"panel.tuck_{number}.beyond"))
    assert {"tuck 1", "tuck 2", "tuck 3"} <= {i.text for i in items if isinstance(i, Label)}


def test_the_legend_tells_of_markings_placements_and_pleats() -> None:
    examples = legend()
    roles = {item.role for each in examples for item in each.drawing.items if isinstance(item, Stroke)}
    assert {"mark", "placement", "pleat"} <= roles
    assert "pleat or tuck line" in [each.said for each in examples]
