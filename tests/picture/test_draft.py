"""Drafting pictures say what their record says: nothing missing, nothing else."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.geometry import Line, Path, Point, Vector
from kit.lesson.pattern import Pattern, StepMeasure
from kit.picture.draft import bench_drawing, shown_value, step_drawing
from kit.picture.drawing import Area, Dimension, Dot, Label, Stroke
from kit.picture.piece_sheet import piece_drawing, piece_items
from kit.picture.place import slid
from kit.picture.step_texts import Telling, measures_of
from kit.piece.allowance import cut_line
from kit.piece.piece import Edge, Mark, Notch, Piece, Strip
from kit.units import System, both, show


def strokes(items: tuple[object, ...], role: str) -> set[str]:
    """The names of the strokes of a role; what an enlarged corner shows again is left out."""
    names = {item.name for item in items if isinstance(item, Stroke) and item.role == role}
    return {name for name in names if not name.startswith("lens.")}


def test_new_kept_and_removed_have_their_roles(wrap_top: Pattern) -> None:
    step = wrap_top.steps[0]
    items = step_drawing(step).items
    assert strokes(items, "new") == {f"{piece}.{name}" for piece, name, _ in step.new}
    assert strokes(items, "removed") == {f"{piece}.{name}" for piece, name, _ in step.removed}
    kept = {"front.side", "front.hem", "front.wrap_edge", "front.wrap_neck"}
    assert strokes(items, "kept") == kept
    assert strokes(items, "guide") == {"front.bust_line"}


@pytest.mark.parametrize("system", ["cm", "inch"])
def test_every_spot_is_dimensioned_with_its_value(wrap_top: Pattern, system: System) -> None:
    step = wrap_top.steps[0]
    drawing = step_drawing(step, system)
    found = {item.name: item.text for item in drawing.items if isinstance(item, Dimension)}
    assert set(found) == {spot.name for spot in step.spots}
    for spot in step.spots:
        assert show(spot.value, system) in found[spot.name]
        assert show(spot.value, system) in drawing.alt
    curved = next(i for i in drawing.items if isinstance(i, Dimension) and i.name == "underarm_length")
    assert curved.along


def test_both_systems_on_request(wrap_top: Pattern) -> None:
    step = wrap_top.steps[0]
    drawing = step_drawing(step, "cm", both=True)
    assert both(12.0, "cm") in drawing.alt
    assert any(both(12.0, "cm") in item.text for item in drawing.items if isinstance(item, Dimension))


def test_shares_and_counts_carry_no_unit(wrap_top: Pattern) -> None:
    spot = wrap_top.steps[0].spots[0]
    assert shown_value(replace(spot, value=0.7, kind="share"), "cm") == "70%"
    assert shown_value(replace(spot, value=5, kind="count"), "inch") == "5"


def test_new_points_and_alt_text(wrap_top: Pattern) -> None:
    drawing = step_drawing(wrap_top.steps[0])
    dots = {i.name.removeprefix("lens.") for i in drawing.items if isinstance(i, Dot) and i.role == "new"}
    assert dots == {"front.raised_tip"}
    assert any(i.text == "raised tip" for i in drawing.items if isinstance(i, Label))
    for words in ("shoulder and overarm seam", "raised tip", "Taken away", "armhole"):
        assert words in drawing.alt


def test_an_unfinished_piece_is_drawn_without_closing_it(wrap_top: Pattern) -> None:
    step = wrap_top.steps[0]
    piece = step.pieces[0]
    open_piece = replace(piece, edges=piece.edges[:3])
    items = step_drawing(replace(step, pieces=(open_piece,))).items
    assert strokes(items, "new")


def test_notches_marks_and_cut_lines_of_a_step_are_new(wrap_top: Pattern) -> None:
    front = wrap_top.piece("front")
    step = replace(
        wrap_top.steps[0],
        pieces=wrap_top.pieces,
        new=(),
        removed=(),
        new_points=(),
        spots=(),
        new_notches=(("front", Notch("side", 100, "double")),),
        new_marks=(("front", Mark("tie_opening", "opening", edge="side", start=90, end=130)),),
        allowed=("back",),
    )
    drawing = step_drawing(step)
    assert strokes(drawing.items, "new") == {"front.notch", "front.tie_opening", "back.cut"}
    assert front.title in {i.text for i in drawing.items if isinstance(i, Label)}
    assert "Front facing" not in {i.text for i in drawing.items if isinstance(i, Label)}
    assert "double notch" in drawing.alt
    assert "tie opening" in drawing.alt


def test_strips_are_dimensioned(wrap_top: Pattern) -> None:
    strip = Strip("tie", "Tie", 770.0, 80.0, 2)
    step = replace(wrap_top.steps[0], pieces=(), new=(), removed=(), new_points=(), spots=(), strips=(strip,))
    drawing = step_drawing(step)
    assert {i.text for i in drawing.items if isinstance(i, Dimension)} == {"77 cm", "8 cm"}
    assert "77 cm" in drawing.alt


def test_bench_shows_every_edge_of_every_piece(wrap_top: Pattern) -> None:
    drawing = bench_drawing(wrap_top)
    names = strokes(drawing.items, "new") | strokes(drawing.items, "fold")
    assert names == {f"{piece.name}.{edge.name}" for piece in wrap_top.pieces for edge in piece.edges}
    assert all(piece.title in drawing.alt for piece in wrap_top.pieces)


def test_piece_sheet_says_all_that_a_cutter_needs(wrap_top: Pattern) -> None:
    for piece in wrap_top.pieces:
        items = piece_items(piece, wrap_top)
        text = " ".join(item.text for item in items if isinstance(item, Label))
        for words in (piece.title, str(piece.number), "Tideline wrap top", "size W4", "edition 1", "2026-11"):
            assert words in text, (piece.name, words)
        assert ("place on fold" in text) == bool(piece.fold)
        assert ("mirrored" in text) == piece.cut.mirrored
        assert ("interfacing" in text) == bool(piece.cut.interfacing)
        grain = [item for item in items if isinstance(item, Stroke) and item.name == "grainline"]
        assert grain and grain[0].arrow == "both"
        wanted = sum(1 if notch.kind == "single" else 2 for notch in piece.notches)
        assert sum(isinstance(item, Stroke) and item.role == "notch" for item in items) == wanted
        assert all(item.size > 0 for item in items if isinstance(item, Label))


def test_an_allowance_is_silent_only_where_the_same_picture_tells_it(wrap_top: Pattern) -> None:
    """Two edges of 1 cm: the longer names the width where one step gives both; a step that gives one names it."""
    a, b, c = Point(0, 0), Point(300, 0), Point(300, 100)
    edges = (Edge("long", Path.line(a, b), 10.0), Edge("short", Path.line(b, c), 10.0))
    flag = Piece("flag", "Flag", (*edges, Edge("slant", Path.line(c, a), 15.0)))

    def told(*names: str) -> list[str]:
        spots = tuple(
            StepMeasure(f"{name}_allowance", 10.0, "flag", a, Point(0, 10), edge=name, allowance=True) for name in names
        )
        step = replace(wrap_top.steps[0], pieces=(flag,), new=(), removed=(), spots=spots, allowed=("flag",), moves=())
        return [measure.name for measure in measures_of(flag, step, Telling())]

    assert told("long", "short") == ["long_allowance"]
    assert told("short") == ["short_allowance"]


def test_what_is_slid_takes_along_what_its_text_names() -> None:
    line, by = Line(Point(0, 0), Point(10, 0)), Vector(3, 4)
    named = slid(Label("seam", Point(1, 1), of=(line,)), by)
    assert named == Label("seam", Point(4, 5), of=(Line(Point(3, 4), Point(13, 4)),))
    assert slid(Label("A", Point(1, 1), of=Area((line,))), by).of == Area((Line(Point(3, 4), Point(13, 4)),))  # type: ignore[union-attr]
    assert slid(Dimension(Point(0, 0), Point(10, 0), "1 cm"), by) == Dimension(Point(3, 4), Point(13, 4), "1 cm")
    assert slid(Dot(Point(0, 0)), by) == Dot(Point(3, 4))


def test_piece_text_lies_inside_the_stitch_line_but_for_the_allowances(wrap_top: Pattern) -> None:
    for piece in wrap_top.pieces:
        widths = {show(edge.allowance, "cm", "allowance") for edge in piece.edges if edge.allowance}
        for item in piece_items(piece, wrap_top):
            if isinstance(item, Label) and item.text not in widths:
                assert piece.outline.contains(item.at), (piece.name, item.text)


def test_moving_a_piece_moves_all_of_it(wrap_top: Pattern) -> None:
    piece = wrap_top.pieces[0]
    still, moved = piece_items(piece, wrap_top), piece_items(piece, wrap_top, at=Point(100, -50))
    for a, b in zip(still, moved, strict=True):
        p = a.curves[0].start if isinstance(a, Stroke) else a.at  # type: ignore[union-attr]
        q = b.curves[0].start if isinstance(b, Stroke) else b.at  # type: ignore[union-attr]
        assert (q.x - p.x, q.y - p.y) == pytest.approx((100, -50))


def test_a_piece_without_allowances_shows_its_stitch_line_alone(wrap_top: Pattern) -> None:
    piece = wrap_top.piece("front")
    bare = replace(piece, edges=tuple(replace(edge, allowance=None) for edge in piece.edges), notches=())
    items = piece_drawing(bare, wrap_top).items
    assert not strokes(items, "cut")
    assert len(strokes(items, "stitch")) == len(bare.edges)


def test_cut_line_is_drawn_as_computed_except_along_the_fold(wrap_top: Pattern) -> None:
    for piece in wrap_top.pieces:
        cuts = [i for i in piece_items(piece, wrap_top) if isinstance(i, Stroke) and i.role == "cut"]
        drawn = [curve for cut in cuts for curve in cut.curves]
        wanted = [c for c in cut_line(piece).curves if not piece.fold or abs(c.start.x) + abs(c.end.x) > 1e-6]
        assert sorted(c.length for c in drawn) == pytest.approx(sorted(c.length for c in wanted))
        assert len(cuts) == 1 and cuts[0].closed == (not piece.fold)
