"""Darts on an edge, against figures worked by hand and shapely's rotate."""

from __future__ import annotations

import math

import pytest
from shapely import affinity
from shapely.geometry import Point as Spot

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson.moves import add_dart, true_dart
from kit.piece.allowance import cut_line
from kit.piece.dart import closed_edge, closing, dart_of, darts_on, depth, fold_line, intake, legs, mouth, sewn_length
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import Edge, Piece


def square(allowance: float | None = None) -> Piece:
    corners = [Point(0, 0), Point(300, 0), Point(300, 300), Point(0, 300)]
    names = ["hem", "right", "top", "left"]
    paths = [Path.line(a, b) for a, b in zip(corners, corners[1:] + corners[:1], strict=True)]
    return Piece("p", "Square", tuple(Edge(n, q, allowance) for n, q in zip(names, paths, strict=True)))


def two_darts() -> Piece:
    piece = add_dart(square(), "one", "hem", at=100.0, intake=30.0, apex=Point(100, 120))
    return add_dart(piece, "two", "hem", at=220.0, intake=20.0, apex=Point(220, 100))


def test_intake_depth_and_sewn_length() -> None:
    piece = two_darts()
    one, two = darts_on(piece, "hem")
    assert (intake(piece, one), intake(piece, two)) == pytest.approx((30.0, 20.0))
    assert (depth(piece, one), depth(piece, two)) == pytest.approx((120.0, 100.0))
    assert sewn_length(piece, "hem") == pytest.approx(250.0)
    assert closed_edge(piece, "hem").length == pytest.approx(250.0)
    assert sewn_length(piece, "top") == pytest.approx(300.0)


def test_closing_is_the_turn_shapely_makes() -> None:
    piece = two_darts()
    dart = dart_of(piece, "one")
    first, second = mouth(piece, dart)
    angle = 2 * math.atan(15 / 120)
    turned = affinity.rotate(Spot(second.x, second.y), -angle, origin=(100, 120), use_radians=True)
    assert closing(piece, dart)(second).distance(first) < 1e-9
    assert math.dist((turned.x, turned.y), (first.x, first.y)) < 1e-9


@pytest.mark.parametrize("pressed", ["start", "end"])
def test_cap_of_a_square_dart_worked_by_hand(pressed: str) -> None:
    """The leg falls 120 over 15, so it leans by b = atan(1/8). The hem mirrored in it falls by 2b, and meets the
    middle line 15 mm across, 15 tan(2b) below the hem."""
    piece = true_dart(two_darts(), "one", pressed)  # type: ignore[arg-type]
    dart = dart_of(piece, "one")
    tip = fold_line(piece, dart).end
    assert tip.x == pytest.approx(100.0, abs=1e-6)
    assert tip.y == pytest.approx(-15 * math.tan(2 * math.atan(15 / 120)), abs=1e-6)
    assert sewn_length(piece, "hem") == pytest.approx(250.0)
    assert dart_of(piece, "two").end - dart_of(piece, "two").start == pytest.approx(20.0)
    assert intake(piece, dart_of(piece, "two")) == pytest.approx(20.0)


def test_cut_line_runs_around_the_cap() -> None:
    piece = true_dart(add_dart(square(10.0), "one", "hem", at=100.0, intake=30.0, apex=Point(100, 120)), "one")
    tip = fold_line(piece, dart_of(piece, "one")).end
    gaps = [cut_line(piece, ()).edge("hem").distance_to(p) for p in (Point(40, 0), tip)]
    assert gaps[0] == pytest.approx(10.0, abs=0.01)
    assert gaps[1] + 0.01 >= 10.0


def test_legs_that_differ_are_refused_with_their_lengths() -> None:
    piece = square()
    crooked = Piece("p", "Square", piece.edges, darts=(Dart("d", "hem", Point(100, 120), 90.0, 130.0),))
    one, two = legs(crooked, crooked.darts[0])
    assert one.length < two.length
    with pytest.raises(KitError, match=r"12 cm.*equal"):
        closing(crooked, crooked.darts[0])
    with pytest.raises(KitError, match="no dart 'e'"):
        dart_of(crooked, "e")
    beyond = Piece("p", "Square", piece.edges, darts=(Dart("d", "hem", Point(100, 120), 290.0, 330.0),))
    with pytest.raises(KitError, match="30 cm"):
        intake(beyond, beyond.darts[0])
