"""Darts as drawn: legs to the cut line, fold to the cap's tip, drill mark inside the point."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest

from kit.blocks import darted_bodice_block
from kit.body import workshop_chart
from kit.geometry import Line, Path, Point, Vector
from kit.picture.dart import DRILL
from kit.picture.darts_shut import warped
from kit.picture.draft import step_drawing
from kit.picture.drawing import Dot, Stroke
from kit.picture.piece_sheet import piece_drawing
from kit.piece.allowance import cut_line
from kit.piece.dart import legs, sewn_point


def test_a_printed_dart_reaches_the_cut_line_and_is_told_in_words() -> None:
    pattern = darted_bodice_block.lesson.work(workshop_chart()["W4"])
    front = pattern.piece("front")
    front = replace(front, edges=tuple(replace(e, allowance=0.0 if e.name == "centre" else 15.0) for e in front.edges))
    drawing = piece_drawing(front, pattern)
    cut = cut_line(front)
    for dart in front.darts:
        name = f"front.{dart.name}"
        drawn = [item for item in drawing.items if isinstance(item, Stroke) and item.name == name]
        assert [s.curves for s in drawn] == [leg.curves for leg in legs(front, dart)]
        notches = [i for i in drawing.items if isinstance(i, Stroke) and i.name == f"{name}.notch"]
        assert len(notches) == 2
        for notch in notches:
            assert cut.edge(dart.edge).distance_to(notch.curves[0].end) < 0.05
        (drill,) = (i for i in drawing.items if isinstance(i, Dot) and i.name == f"{name}.drill")
        assert drill.at.distance(sewn_point(front, dart)) == pytest.approx(DRILL, abs=1e-6)
    assert "bust dart taking 4 cm" in drawing.alt


def test_the_step_that_draws_darts_shows_their_legs_as_new() -> None:
    pattern = darted_bodice_block.lesson.work(workshop_chart()["W4"])
    items = step_drawing(pattern.steps[-1]).items
    for name in ("front.bust_dart", "front.waist_dart", "back.shoulder_dart", "back.waist_dart"):
        assert [i.role for i in items if isinstance(i, Stroke) and i.name == name] == ["new", "new"]


def test_a_line_that_leaves_what_is_moved_is_carried_on_without_a_gap() -> None:
    corners = [Point(0, 0), Point(60, 0), Point(60, 100), Point(0, 100)]
    path = Path(tuple(Line(a, b) for a, b in pairwise(corners)))
    moved = warped(path, lambda p: p + Vector(0.0, 6.0), reach=(-1.0, -1.0, 61.0, 1.0))
    assert moved.start == Point(0, 6) and moved.end == Point(0, 100)
    untouched = warped(path, lambda p: p + Vector(0.0, 6.0), reach=(200.0, 200.0, 201.0, 201.0))
    assert untouched.curves == path.curves
    partly = warped(path, lambda p: p + Vector(0.0, 6.0), reach=(-10.0, -10.0, 59.0, 10.0))
    assert partly.start == Point(0, 6) and partly.end == Point(0, 100)  # the second line stays where it was
    assert any(c.start.distance(Point(60, 6)) < 1e-9 and c.end.distance(Point(60, 0)) < 1e-9 for c in partly.curves)
