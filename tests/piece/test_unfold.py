"""Opened pieces and the two of a pair: nothing changes but that the other half is there."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.affinity import scale
from shapely.ops import unary_union

from kit.blocks.darted_bodice import darted_bodice_block
from kit.blocks.skirt import skirt_block
from kit.body.chart import workshop_chart
from kit.errors import KitError
from kit.geometry import Cubic, Path, Point
from kit.piece.allowance import cut_line, notch_lines
from kit.piece.corner import Corner, Declared
from kit.piece.dart import sewn_length
from kit.piece.darts_and_pleats import Dart, Pleat
from kit.piece.piece import CutPlan, Edge, Grain, Mark, Notch, Piece
from kit.piece.pleat import cap, lies
from kit.piece.unfold import pair, unfolded
from tests.pleated import panel, pleated


def _up(x: float) -> Path:
    return Path.line(Point(x, 2), Point(x, 60))


def half(wide: float = 200.0, long: float = 500.0, dip: float = 60.0, flare: float = 20.0) -> Piece:
    """A half front: neck square to the fold, a sloping shoulder, a flared side, a curved hem."""
    neck = Cubic(Point(0, long - dip), Point(40, long - dip), Point(70, long - 30), Point(75, long))
    hem = Cubic(Point(wide + flare, 10), Point(wide * 0.6, 0), Point(wide * 0.3, 0), Point(0, 0))
    edges = (
        Edge("centre", Path.line(Point(0, 0), Point(0, long - dip)), 0.0),
        Edge("neck", Path.of(neck), 6.0, said="neck edge"),
        Edge(
            "side",
            Path.of(
                Path.line(Point(75, long), Point(wide, long - 40)),
                Path.line(Point(wide, long - 40), Point(wide + flare, 10)),
            ),
            15.0,
        ),
        Edge("hem", Path.of(hem), 20.0),
    )
    return Piece(
        "front",
        "Front",
        edges,
        cut=CutPlan(fold="centre", interfacing=1),
        grain=Grain(Point(30, 40), Point(30, 300)),
        notches=(Notch("side", 150.0), Notch("hem", 80.0, "double")),
        marks=(
            Mark("waist", "line", path=Path.line(Point(0, 200), Point(wide, 200))),
            Mark("button", "point", edge="centre", start=100.0),
            Mark("pocket", "point", point=Point(90, 120)),
            Mark("slit", "opening", edge="side", start=120.0, end=180.0),
        ),
        points=(("low", Point(0, long - dip)), ("tip", Point(wide, long - 40))),
        corners=(Corner("side", "hem", "turned", "hem"),),
        pleats=(Pleat("fullness", "hem", 60.0, 90.0, (_up(150), _up(120)), laid="start"),),
    )  # fmt: skip


@given(st.floats(150, 300), st.floats(350, 700), st.floats(30, 100), st.floats(-20, 60))
def test_opening_doubles_the_piece_and_its_cut_line(wide: float, long: float, dip: float, flare: float) -> None:
    piece = half(wide, long, dip, flare)
    whole = unfolded(piece)
    assert abs(whole.outline.area) == pytest.approx(2 * abs(piece.outline.area), rel=1e-9)
    assert whole.outline.self_crossing() is None
    one = cut_line(piece).polygon(0.02)
    both = unary_union([one, scale(one, -1.0, 1.0, origin=(0.0, 0.0))])
    assert cut_line(whole).polygon(0.02).symmetric_difference(both).area < 2.0


def test_everything_is_there_twice_and_called_by_its_side() -> None:
    piece = half()
    whole = unfolded(piece)
    assert [e.name for e in whole.edges] == [
        "right_neck",
        "right_side",
        "right_hem",
        "left_hem",
        "left_side",
        "left_neck",
    ]
    assert whole.edge("left_neck").label == "left neck edge" and whole.edge("left_hem").allowance == 20.0
    assert whole.cut == CutPlan(interfacing=1) and not whole.fold and whole.grain == piece.grain
    assert dict(whole.points) == {"low": Point(0, 440), "right_tip": Point(200, 460), "left_tip": Point(-200, 460)}
    assert dict(whole.guides)["centre"] == piece.edge("centre").path
    for notch in piece.notches:
        at = piece.edge(notch.edge).path.at(notch.distance)
        spots = [whole.edge(n.edge).path.at(n.distance) for n in whole.notches if n.edge.endswith(notch.edge)]
        assert any(p.close_to(at, 1e-6) for p in spots)
        assert any(p.close_to(Point(-at.x, at.y), 1e-6) for p in spots)
    marks = {mark.name: mark for mark in whole.marks}
    assert set(marks) == {
        "right_waist",
        "left_waist",
        "button",
        "right_pocket",
        "left_pocket",
        "right_slit",
        "left_slit",
    }
    assert marks["button"].point == Point(0, 100) and not marks["button"].edge
    slit, path = marks["left_slit"], whole.edge("left_side").path
    assert path.at(slit.end).close_to(
        Point(-piece.edge("side").path.at(120.0).x, piece.edge("side").path.at(120.0).y), 1e-6
    )
    assert {(c.before, c.after, c.turned) for c in whole.corners} == {
        ("right_side", "right_hem", "right_hem"),
        ("left_hem", "left_side", "left_hem"),
    }
    pleat = next(p for p in whole.pleats if p.name == "left_fullness")
    hem = whole.edge("left_hem").path
    assert pleat.laid == "end" and pleat.end - pleat.start == 30.0
    start = piece.edge("hem").path.at(90.0)
    assert hem.at(pleat.start).close_to(Point(-start.x, start.y), 1e-6)
    assert pleat.lines[0].start.close_to(Point(-120, 2), 1e-6)
    assert len(notch_lines(whole)) == 4
    assert unfolded(whole) is whole


def test_a_dart_is_pressed_the_mirrored_way_and_a_corner_meant_stays_one() -> None:
    darts = (
        Dart("bust", "side", Point(120, 300), 160.0, 190.0, pressed="start"),
        Dart("waist", "side", Point(120, 200), 260.0, 280.0, pressed="end"),
    )
    piece = replace(half(), darts=darts, declared=(Declared("side", "hem", "slit"),))
    whole = unfolded(piece)

    def toward(of: Piece, dart: Dart) -> Point:
        return of.edge(dart.edge).path.at(dart.start if dart.pressed == "start" else dart.end)

    for dart in darts:
        spot = toward(piece, dart)
        right, left = (next(d for d in whole.darts if d.name == side + dart.name) for side in ("right_", "left_"))
        assert toward(whole, right).close_to(spot, 1e-6)
        assert toward(whole, left).close_to(Point(-spot.x, spot.y), 1e-6)
    assert [(d.before, d.after, d.why) for d in whole.declared] == [
        ("right_side", "right_hem", "slit"),
        ("left_hem", "left_side", "slit"),  # the mirrored outline runs the other way round
    ]


@pytest.mark.parametrize("block", [darted_bodice_block, skirt_block])
def test_blocks_open_with_their_darts(block: object) -> None:
    for piece in block(workshop_chart()["W4"]):  # type: ignore[operator]
        whole = unfolded(piece)
        assert len(whole.darts) == 2 * len(piece.darts)
        assert abs(whole.outline.area) == pytest.approx(2 * abs(piece.outline.area))
        for edge in piece.edges:
            if edge.name != piece.fold:
                for side in ("left_", "right_"):
                    assert sewn_length(whole, side + edge.name) == pytest.approx(sewn_length(piece, edge.name))
        for dart in piece.darts:
            other = next(d for d in whole.darts if d.name == f"left_{dart.name}")
            a, b = piece.edge(dart.edge).path.at(dart.start), whole.edge(other.edge).path.at(other.end)
            assert b.close_to(Point(-a.x, a.y), 1e-6)


def test_a_pair_gives_a_left_and_a_right() -> None:
    piece = replace(half(), cut=CutPlan(2, mirrored=True, interfacing=2))
    piece = piece.with_edges(centre=replace(piece.edge("centre"), allowance=10.0))
    left, right = pair(piece)
    assert (left.name, left.title, right.title) == ("left_front", "Front, left", "Front, right")
    assert left.cut == CutPlan(1, interfacing=1, right_side_up=True)
    assert right.edges == piece.edges
    assert left.outline.area == pytest.approx(-right.outline.area)
    mirrored = scale(cut_line(right).polygon(0.02), -1.0, 1.0, origin=(0.0, 0.0))
    assert cut_line(left).polygon(0.02).symmetric_difference(mirrored).area < 1.0
    assert left.grain and left.grain.start == Point(-30, 40)
    for a, b in zip(notch_lines(left), notch_lines(right), strict=True):
        assert a.lines[0].start.close_to(Point(-b.lines[0].start.x, b.lines[0].start.y), 1e-6)


def test_what_cannot_be_opened_or_paired() -> None:
    with pytest.raises(KitError, match="on the fold, not as a pair"):
        pair(half())
    with pytest.raises(KitError, match="cut single"):
        pair(replace(half(), cut=CutPlan()))
    with pytest.raises(KitError, match="not straight"):
        unfolded(replace(half(), cut=CutPlan(fold="neck")))


def test_a_pleat_that_runs_across_ends_on_the_same_edge_of_its_own_half() -> None:
    """A panel 300 mm wide, a pleat of 60 mm put 200 mm from its fold: on the mirrored half it lies as far from it."""
    whole = unfolded(pleated(panel(lean=0.0), held="both"))
    right, left = whole.pleats
    (near,) = pleated(panel(lean=0.0), held="both").pleats
    assert (right.far, right.far_start, right.far_end) == ("right_hem", near.far_start, near.far_end)
    assert (left.far, left.far_start, left.far_end) == ("left_hem", 360.0 - near.far_end, 360.0 - near.far_start)
    assert lies(whole, right) and lies(whole, left) and left.held == "both"
    one, two = cap(whole, right, far=True), cap(whole, left, far=True)
    assert all(Point(-p.x, p.y).close_to(q, 1e-9) for p, q in zip(two.reversed().points(), one.points(), strict=True))


def test_a_pleat_that_runs_to_the_fold_has_no_edge_to_end_on() -> None:
    half = pleated(panel(lean=0.0))
    (pleat,) = half.pleats
    to_fold = replace(pleat, edge="side", far="centre", held="both")
    for found in unfolded(replace(half, pleats=(to_fold,))).pleats:
        assert (found.far, found.far_start, found.far_end, found.held) == ("", 0.0, 0.0, "near")
