"""Places along a run with its folds shut, by arithmetic on a square panel of 200 mm by 300 with a dart of 20 mm in its
top: as drafted the top runs from x = 200 to x = 0, the dart takes x = 110 to 90."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.piece.corner import Declared
from kit.piece.darts_and_pleats import Dart
from kit.piece.folded import cloth_left, corner_at, folded, sewn_part, walked_ways
from kit.piece.piece import Edge, Piece
from tests.pleated import panel, pleated


def square(*darts: Dart) -> Piece:
    corners = [Point(0, 300), Point(0, 0), Point(200, 0), Point(200, 300)]
    paths = [Path.line(a, b) for a, b in zip(corners, [*corners[1:], corners[0]], strict=True)]
    edges = tuple(Edge(n, p) for n, p in zip(("left", "hem", "right", "top"), paths, strict=True))
    return Piece("panel", "Panel", edges, darts=darts)


DART = Dart("dart", "top", Point(100, 150), 90.0, 110.0)
AT_END = Dart("end", "top", Point(190, 150), 0.0, 20.0)


@pytest.mark.parametrize(
    ("drafted", "sewn"),
    [(0.0, 0.0), (60.0, 60.0), (90.0, 90.0), (97.0, 90.0), (110.0, 90.0), (150.0, 130.0), (200.0, 180.0)],
)
def test_a_place_on_the_draft_is_taken_over_to_the_run(drafted: float, sewn: float) -> None:
    assert folded(square(DART), ("top",)).sewn("top", drafted) == pytest.approx(sewn)


def test_a_place_off_the_run_is_nowhere() -> None:
    run = folded(square(DART), ("top",))
    assert run.sewn("hem", 10.0) is None
    assert run.part(0.0, 50.0).sewn("top", 60.0) is None
    assert run.part(0.0, 50.0).sewn("top", 50.05) == pytest.approx(50.0), "within a tenth of a millimetre it is its end"


@pytest.mark.parametrize(
    ("sewn", "drafted"), [(0.0, 0.0), (89.0, 89.0), (91.0, 111.0), (180.0, 200.0), (180.05, 200.0)]
)
def test_a_place_on_the_run_is_taken_back_to_the_draft(sewn: float, drafted: float) -> None:
    edge, at = folded(square(DART), ("top",)).drafted(sewn)
    assert edge == "top" and at == pytest.approx(drafted)


@pytest.mark.parametrize("off", [-0.2, 180.2])
def test_a_place_beyond_its_ends_is_refused_with_both_lengths(off: float) -> None:
    with pytest.raises(KitError, match=r"18 cm") as caught:
        folded(square(DART), ("top",)).drafted(off)
    assert caught.value.where == "Panel" and caught.value.do


def test_over_two_edges_the_second_goes_on_where_the_first_ends() -> None:
    run = folded(square(DART), ("right", "top"))
    assert run.length == pytest.approx(480.0)
    assert run.sewn("top", 150.0) == pytest.approx(430.0)
    assert run.drafted(430.0) == ("top", pytest.approx(150.0))
    assert [(fold.name, fold.at, fold.taken) for fold in run.folds] == [("dart", pytest.approx(390.0), 20.0)]


def test_walked_from_the_other_end_every_place_is_counted_from_there() -> None:
    run = folded(square(DART), ("right", "top"))
    back = run.reversed()
    assert back.edges == ("top", "right") and back.length == pytest.approx(480.0)
    assert [part.forward for part in back.stretches] == [False, False, False]
    for edge, at in (("right", 30.0), ("top", 20.0), ("top", 170.0)):
        assert back.sewn(edge, at) == pytest.approx(480.0 - run.sewn(edge, at))
    assert back.folds[0].at == pytest.approx(90.0)
    assert (run.cloth_left, back.cloth_left) == (True, False)
    assert back.reversed().path.length == pytest.approx(run.path.length)


def test_the_far_side_of_a_dart_comes_to_lie_on_the_near_one() -> None:
    run = folded(square(DART), ("top",))
    before, after = run.stretches
    assert (before.length, after.length) == (90.0, 90.0) and after.at == pytest.approx(90.0)
    assert before.motion(Point(150, 300)).close_to(Point(150, 300))
    # Turned about the point by the dart's own angle: 10 of 150 to both sides.
    assert run.beyond(Point(100, 150)).close_to(Point(100, 150), 1e-9)
    assert run.beyond(Point(90, 300)).close_to(Point(110, 300), 1e-9)
    turned = run.beyond.vector(Point(0, 300) - Point(90, 300))
    assert abs(turned.turn_to(Point(0, 300) - Point(90, 300))) == pytest.approx(2 * math.atan(10 / 150))


def test_a_part_keeps_the_folds_inside_it_and_counts_from_its_own_start() -> None:
    run = folded(square(DART), ("right", "top"))
    part = run.part(350.0, 420.0)
    assert part.length == pytest.approx(70.0) and part.edges == ("top",)
    assert [fold.at for fold in part.folds] == [pytest.approx(40.0)]
    assert part.sewn("top", 60.0) == pytest.approx(10.0) and part.sewn("top", 120.0) == pytest.approx(50.0)
    assert run.part(0.0, 300.0).edges == ("right",) and run.part(0.0, 300.0).folds == ()


@pytest.mark.parametrize(
    ("start", "end", "length"),
    [
        (None, None, 480.0),
        (320.0, None, 160.0),
        (None, 350.0, 350.0),
        (320.0, 480.0, 140.0),
        (320.0, 900.0, 160.0),
    ],
)
def test_a_part_is_given_in_mm_of_the_draft(start: float | None, end: float | None, length: float) -> None:
    """The draft runs 300 up the right and 200 along the top; the dart takes its 390th to 410th mm."""
    assert sewn_part(square(DART), ("right", "top"), start, end).length == pytest.approx(length, abs=1e-6)


def test_a_part_inside_a_dart_is_nothing() -> None:
    with pytest.raises(KitError, match="nothing between"):
        sewn_part(square(DART), ("right", "top"), 395.0, 405.0)


@pytest.mark.parametrize(("start", "end"), [(100.0, 100.0), (120.0, 100.0), (-1.0, 100.0)])
def test_a_part_that_holds_nothing_is_refused(start: float, end: float) -> None:
    with pytest.raises(KitError, match="50 cm") as caught:
        sewn_part(square(DART), ("right", "top"), start, end)
    assert caught.value.do


def test_edges_that_do_not_follow_are_refused_with_the_gap() -> None:
    with pytest.raises(KitError, match=r"left.*right") as caught:
        folded(square(), ("left", "right"))
    assert "20 cm" in str(caught.value) and caught.value.where == "Panel"
    with pytest.raises(KitError, match="no edge is named"):
        walked_ways(square(), ())


def test_the_way_each_edge_is_walked_shows_from_its_neighbour() -> None:
    piece = square()
    assert walked_ways(piece, ("left", "hem")) == (True, True)
    assert walked_ways(piece, ("hem", "left")) == (False, False)
    assert walked_ways(piece, ("hem",)) == (True,)
    turned = piece.with_edges(hem=replace(piece.edge("hem"), path=piece.edge("hem").path.reversed()))
    assert walked_ways(turned, ("left", "hem", "right")) == (True, False, True)


def test_where_the_cloth_lies_follows_from_the_way_round() -> None:
    piece = square()
    assert cloth_left(piece)
    edges = tuple(replace(edge, path=edge.path.reversed()) for edge in reversed(piece.edges))
    assert not cloth_left(replace(piece, edges=edges))


def test_an_edge_that_is_all_dart_is_refused() -> None:
    with pytest.raises(KitError) as caught:
        folded(square(Dart("all", "top", Point(100, 150), 0.0, 200.0)), ("top",))
    assert caught.value.do and caught.value.where == "Panel"


def test_two_darts_one_over_the_other_are_refused() -> None:
    over = Dart("over", "top", Point(90, 150), 100.0, 120.0)
    with pytest.raises(KitError, match="top"):
        folded(square(DART, over), ("top",))


def test_a_run_is_called_by_its_edges_and_its_piece() -> None:
    piece = square()
    assert folded(piece, ("left", "hem")).label == "left and hem of the panel"
    assert folded(replace(piece, title=""), ("left",)).label == "left of the panel"


def test_a_pleat_is_folded_like_a_dart_with_parallel_legs() -> None:
    piece = pleated(panel(lean=0.0))
    run = folded(piece, ("waist",))
    whole = piece.edge("waist").path.length
    (fold,) = run.folds
    assert run.length == pytest.approx(whole - fold.taken) and fold.taken > 0
    assert run.path.start.distance(run.path.end) == pytest.approx(run.length), "a straight waist stays straight"
    back = run.reversed()
    assert back.folds[0].at == pytest.approx(run.length - fold.at)


# ---- the corner at the end of a run -----------------------------------------------------------------------------


@pytest.mark.parametrize(("edges", "beside"), [(("top",), ("right", "left")), (("left", "hem"), ("top", "right"))])
def test_the_corners_of_a_rectangle_are_right_angles(edges: tuple[str, ...], beside: tuple[str, str]) -> None:
    run = folded(square(), edges)
    for end, name in zip((False, True), beside, strict=True):
        corner = corner_at(run, end)
        assert corner is not None and corner.beside == name
        assert corner.angle == pytest.approx(math.pi / 2)
    back = run.reversed()
    corner = corner_at(back, True)
    assert corner is not None and (corner.beside, corner.angle) == (beside[0], pytest.approx(math.pi / 2))


def test_a_slanted_side_opens_the_corner_at_the_hem_and_shuts_the_other() -> None:
    piece = panel(lean=40.0)  # the side leans in by 40 in 500
    run = folded(piece, ("side",))
    low, high = corner_at(run, False), corner_at(run, True)
    assert low is not None and high is not None
    lean = math.atan(40 / 500)
    assert low.angle == pytest.approx(math.pi / 2 - lean) and high.angle == pytest.approx(math.pi / 2 + lean)
    assert (low.before, low.after) == ("hem", "side") and (high.before, high.after) == ("side", "waist")


def test_a_run_that_ends_within_its_edge_has_no_corner_there() -> None:
    part = folded(square(), ("top",)).part(0.0, 100.0)
    assert corner_at(part, True) is None and corner_at(part, False) is not None


def test_a_dart_at_the_very_corner_is_shut_before_the_angle_is_taken() -> None:
    """The dart takes the top from x = 200 to 180, its point at (190, 150): both legs stand atan(10 / 150) off the
    upright. The cloth right of it turns in about its point, so that the right edge runs outward from the left leg."""
    piece = square(AT_END)
    run = folded(piece, ("top",))
    assert run.length == pytest.approx(180.0)
    corner = corner_at(run, False)
    assert corner is not None and corner.beside == "right"
    assert corner.angle == pytest.approx(math.pi / 2 + 2 * math.atan(10 / 150))


def test_a_corner_is_declared_whichever_edge_is_named_first() -> None:
    piece = square()
    corner = corner_at(folded(piece, ("top",)), True)
    assert corner is not None and not corner.declared(piece)
    for before, after in (("top", "left"), ("left", "top")):
        assert corner.declared(replace(piece, declared=(Declared(before, after, "a V point"),)))
    assert not corner.declared(replace(piece, declared=(Declared("top", "right", "a V point"),)))
