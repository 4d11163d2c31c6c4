"""Two drafts of a piece laid over each other. Distances are checked against elementary geometry, worked by hand, and
against shapely's distance of a point to a line; cloth against shapely's difference of areas."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from shapely import LineString
from shapely import Point as Spot

from kit.geometry import Cubic, Path, Point
from kit.piece.allowance import cut_line
from kit.piece.piece import CutPlan, Edge, Mark, Piece
from kit.piece.recut import areas, matched, piece_change, without_extra


def trapezium(top: float, hem: float = 300.0, *, x: float = 0.0, side: float = 15.0, extra: float = 0.0) -> Piece:
    """Half a tunic 600 mm long, its centre on the fold."""
    low, high, corner, out = Point(x, 0), Point(x, 600), Point(x + top, 600), Point(x + hem, 0)
    return Piece(
        "front",
        "Front",
        (
            Edge("centre", Path.line(low, high), 0.0),
            Edge("top", Path.line(high, corner), 15.0),
            Edge("side", Path.line(corner, out), side, extra=extra),
            Edge("hem", Path.line(out, low), 30.0),
        ),
        cut=CutPlan(1, fold="centre", said=True),
    )


def side(was: Piece, now: Piece, **more):
    change = piece_change(was, now, **more)
    assert change is not None
    found = change.edge("side")
    assert found is not None
    return found


def test_a_line_taken_in_at_one_end_tapers_to_nothing() -> None:
    """The corner moves 30 mm level; square to the old line that is 30 times the cosine of its slant."""
    edge = side(trapezium(280), trapezium(250))
    slant = math.atan2(300 - 280, 600)
    assert edge.start.off == pytest.approx(-30 * math.cos(slant), abs=1e-6)
    assert edge.end.off == pytest.approx(0.0, abs=1e-6)
    assert edge.shape == "to_nothing" and (edge.before, edge.after) == ("top", "hem")


@pytest.mark.parametrize(
    ("tops", "hems", "shape"),
    [
        ((280, 250), (300, 300), "to_nothing"),
        ((280, 250), (300, 270), "all_along"),
        ((280, 250), (300, 290), "unequal"),
        ((280, 250), (300, 310), "crossing"),
        ((250, 280), (300, 310), "unequal"),
    ],
)
def test_how_the_distance_runs_along_the_edge(tops, hems, shape) -> None:
    assert side(trapezium(tops[0], hems[0]), trapezium(tops[1], hems[1])).shape == shape


def test_a_belly_is_farthest_in_the_middle() -> None:
    now = trapezium(280)
    bowed = Cubic(Point(280, 600), Point(320, 400), Point(330, 200), Point(300, 0))
    edge = side(now, replace(now, edges=(*now.edges[:2], Edge("side", Path((bowed,)), 15.0), now.edges[3])))
    assert edge.shape == "middle" and edge.most.off > 20
    line = LineString([(280, 600), (300, 0)])
    for station in edge.stations:
        place = edge.place(station)
        assert abs(station.off) == pytest.approx(line.distance(Spot(place.x, place.y)), abs=1e-6)


def test_an_edge_that_only_gets_shorter_has_not_moved() -> None:
    change = piece_change(trapezium(280), trapezium(250))
    assert change is not None
    assert [edge.edge for edge in change.moved] == ["side"]


def test_the_same_piece_begun_elsewhere_on_the_paper_is_the_same() -> None:
    assert piece_change(trapezium(280), trapezium(280, x=120)) is None
    edge = side(trapezium(280), trapezium(250, x=120))
    assert edge.shape == "to_nothing" and edge.start.off == pytest.approx(-29.98, abs=0.02)


def test_a_fold_stays_on_the_fold() -> None:
    """Moved aside, top, side and hem would lie on the old lines, and the piece would seem unchanged."""
    was, now = trapezium(250), trapezium(260, 310)
    edge = side(was, now)
    for at in edge.stations:
        assert at.off == pytest.approx(10 * math.cos(math.atan2(50, 600)))


def test_an_edge_of_another_name_is_known_by_its_role() -> None:
    was = trapezium(280)
    renamed = replace(was, edges=(*was.edges[:3], replace(was.edges[3], name="lower", role="hem")))
    assert matched(was, renamed)["lower"] == "hem"
    nameless = replace(was, edges=(*was.edges[:3], replace(was.edges[3], name="lower", role="")))
    assert "lower" not in matched(was, nameless)
    change = piece_change(was, nameless)
    assert change is not None and set(change.only) == {"hem", "lower"}


@pytest.mark.parametrize("out", [5.0, 10.0, 14.0])
def test_let_out_within_the_allowance_less_of_it_is_left(out: float) -> None:
    """Moved out alike all along, what is left is the allowance less the distance (level times cosine)."""
    edge = side(trapezium(250), trapezium(250 + out, 300 + out))
    away = out * math.cos(math.atan2(50, 600))
    middle = edge.stations[len(edge.stations) // 2]
    assert middle.left == pytest.approx(15 - away, abs=0.15)
    assert edge.shortest is not None and edge.shortest.short == pytest.approx(away, abs=0.3)


def test_let_out_beyond_the_cut_edge_the_cloth_does_not_reach() -> None:
    edge = side(trapezium(250), trapezium(300))
    at = edge.shortest
    assert at is not None and at is edge.start and at.left is not None
    assert at.left == pytest.approx(15 - 50 * math.cos(math.atan2(50, 600)), abs=0.3)


def test_cloth_cut_to_fit_with_reaches_and_is_no_part_of_what_is_wanted() -> None:
    edge = side(trapezium(250, extra=50), trapezium(300, extra=50))
    assert edge.shortest is None
    assert edge.end.left == pytest.approx(65, abs=1.0)
    assert edge.end.need == pytest.approx(15, abs=0.5)


def test_what_was_trimmed_off_before_is_gone() -> None:
    wide = side(trapezium(250), trapezium(255), cut_back={})
    narrow = side(trapezium(250), trapezium(255), cut_back={"side": 4.0})
    assert wide.shortest is not None and wide.shortest.left is not None and wide.shortest.left > 9
    assert narrow.shortest is not None and narrow.shortest.left is not None and narrow.shortest.left < 0


def test_cloth_without_allowances_is_not_judged() -> None:
    was, now = (
        replace(p, edges=tuple(replace(e, allowance=None) for e in p.edges)) for p in (trapezium(250), trapezium(300))
    )
    edge = side(was, now)
    assert edge.shape == "to_nothing" and edge.shortest is None and edge.start.left is None


def test_what_is_trimmed_is_the_difference_of_the_cut_pieces() -> None:
    was, now = trapezium(280, extra=20), trapezium(250, extra=20)
    change = piece_change(was, now)
    assert change is not None
    found = areas(change)
    assert found is not None
    expected = cut_line(was).polygon().difference(cut_line(without_extra(now)).polygon().buffer(0.5))
    assert found.off.area == pytest.approx(expected.area, rel=1e-6) and found.off.area > 600 * 20
    assert found.cut.area > found.wanted.area
    assert found.kept.area == pytest.approx(found.cut.area - found.off.area) and found.lack.is_empty


def test_marks_that_lie_elsewhere() -> None:
    def marked(piece: Piece, x: float) -> Piece:
        return replace(
            piece, marks=(Mark("tie", "point", point=Point(x, 300)), Mark("pocket", "point", point=Point(80, 200)))
        )

    change = piece_change(marked(trapezium(280), 100), marked(trapezium(280), 112))
    assert change is not None and change.marks == ("tie",) and not change.moved
