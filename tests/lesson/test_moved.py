"""What moved between two drafts, just more and just less than is told. On a panel of straight lines."""

from __future__ import annotations

import math
from dataclasses import replace
from types import SimpleNamespace
from typing import Any

import pytest

from kit.geometry import Path, Point
from kit.lesson.moved import Shift, differences, direction, moved_edges, moved_pieces
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import Edge, Piece


def panel(low: float = 0.0, right: float = 200.0, flip: bool = False, **more: Any) -> Piece:
    """A panel from `low` to 300 high and `right` wide: hem, side, top, centre."""
    at = [Point(0, low), Point(right, low), Point(right, 300), Point(0, 300)]
    names = ("hem", "side", "top", "centre")
    edges = [Edge(n, Path.line(a, b)) for n, a, b in zip(names, at, [*at[1:], at[0]], strict=True)]
    if flip:
        edges = [replace(e, path=e.path.reversed()) for e in reversed(edges)]
    return replace(Piece("front", "Front", tuple(edges)), **more)


def pattern(*pieces: Piece) -> Any:
    found = {piece.name: piece for piece in pieces}
    return SimpleNamespace(pieces=pieces, piece=found.__getitem__)


@pytest.mark.parametrize(("by", "moved"), [(0.0, False), (0.45, False), (0.55, True), (-0.55, True), (20.0, True)])
def test_an_edge_moves_by_more_than_half_a_millimetre(by: float, moved: bool) -> None:
    was, now = panel(), panel(low=by)
    assert moved_edges(was, now) == (("hem",) if moved else ())
    assert moved_pieces(pattern(was), pattern(now)) == (("front",) if moved else ())
    shifts = differences(pattern(was), pattern(now), "front")
    assert [(s.edge, s.place) for s in shifts] == ([("hem", "start"), ("hem", "end")] if moved else [])
    for shift in shifts:
        assert (shift.dx, shift.dy, shift.size) == (pytest.approx(0), pytest.approx(by), pytest.approx(abs(by)))
        assert shift.to.y == pytest.approx(by) and direction(shift) == ("up" if by > 0 else "down")


@pytest.mark.parametrize("flip", [False, True])
@pytest.mark.parametrize(("by", "way"), [(12.0, "out"), (-12.0, "in")])
def test_a_side_goes_out_of_the_cloth_or_into_it(by: float, way: str, flip: bool) -> None:
    shifts = differences(pattern(panel(flip=flip)), pattern(panel(right=200 + by, flip=flip)), "front")
    assert {s.edge for s in shifts} == {"side"} and {direction(s) for s in shifts} == {way}
    assert all((s.outward.x, s.outward.y) == pytest.approx((1.0, 0.0)) for s in shifts)


def shift(dx: float, dy: float, out: float) -> Shift:
    from kit.geometry import Vector

    return Shift("e", "start", dx, dy, math.hypot(dx, dy), Point(0, 0), Vector(math.cos(out), math.sin(out)))


@pytest.mark.parametrize(
    ("dx", "dy", "out", "way"),
    [
        (0.0, 0.4, 90, "up"),
        (0.0, -0.4, 90, "down"),
        (0.0, 0.4, -50, "up"),
        (3.0, 0.9, 46, "up"),
        (0.4, 0.0, 0, "out"),
        (-0.4, 0.0, 0, "in"),
        (-0.4, 0.0, 180, "out"),
        (0.9, -0.1, 40, "out"),
    ],
)
def test_level_lines_go_up_and_upright_ones_out(dx: float, dy: float, out: float, way: str) -> None:
    assert direction(shift(dx, dy, math.radians(out))) == way


def bulged(by: float, at: float = 0.5) -> Piece:
    """The hem drawn through a corner that stands `by` below its place."""
    piece = panel()
    tip = Point(200 * at, -by)
    path = Path.of(Path.line(Point(0, 0), tip), Path.line(tip, Point(200, 0)))
    return piece.with_edges(hem=replace(piece.edge("hem"), path=path))


@pytest.mark.parametrize(("at", "told"), [(0.5, True), (0.25, True), (0.05, False)])
def test_the_middle_is_told_where_it_moved_clearly_more(at: float, told: bool) -> None:
    shifts = differences(pattern(panel()), pattern(bulged(16.0, at)), "front")
    assert [s.place for s in shifts] == (["start", "middle", "end"] if told else ["start", "end"])
    if told:
        start, middle, end = shifts
        assert start.size == end.size == pytest.approx(0.0) and middle.size == pytest.approx(16.0, rel=0.1)
        assert middle.dy < 0 and middle.to.x == pytest.approx(200 * at, abs=8)


def test_pieces_that_are_not_as_they_were() -> None:
    dart = Dart("dart", "top", Point(100, 200), 90.0, 110.0)
    was = panel(darts=(dart,))
    for now, moved in (
        (panel(darts=(replace(dart, apex=Point(100, 200.4)),)), False),
        (panel(darts=(replace(dart, apex=Point(100, 201)),)), True),
        (panel(darts=(replace(dart, apex=Point(101, 200)),)), True),
        (panel(darts=(replace(dart, short=1.0),)), True),
        (panel(darts=(replace(dart, name="other"),)), True),
        (panel(), True),
        (replace(was, edges=tuple(replace(e, name=f"{e.name}_2") for e in was.edges)), True),
    ):
        assert (moved_pieces(pattern(was), pattern(now)) == ("front",)) is moved
    other = replace(was, name="back")
    assert set(moved_pieces(pattern(was), pattern(other))) == {"front", "back"}
    assert moved_pieces(pattern(was, other), pattern(was, other)) == ()
    assert differences(pattern(was), pattern(other), "front") == ()
