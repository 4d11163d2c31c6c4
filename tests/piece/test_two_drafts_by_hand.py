"""Two drafts of one piece told apart, by numbers worked by hand: an oblong 100 by 200 mm whose right side moves."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from kit.geometry import Motion, Path, Point, Vector
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import CutPlan, Edge, Mark, Piece
from kit.piece.recut import ALIKE, SLACK, TOLD, EdgeChange, PieceChange, areas, matched, piece_change


def front(top: float = 100.0, low: float = 100.0, *, by: tuple[float, float] = (0.0, 0.0), **more: object) -> Piece:
    """Hem from (0, 0), side up, top back, centre down; `top` and `low` wide; drawn `by` aside."""
    corners = [Point(0, 0), Point(low, 0), Point(top, 200), Point(0, 200)]
    names = {"hem": 30.0, "side": 20.0, "top": 10.0, "centre": 15.0}
    edges = tuple(
        Edge(name, Path.line(a, b), allowance)
        for (name, allowance), a, b in zip(names.items(), corners, [*corners[1:], corners[0]], strict=True)
    )
    found = replace(Piece("front", "Front", edges), **more)
    return moved(found, *by) if by != (0.0, 0.0) else found


def moved(piece: Piece, x: float, y: float) -> Piece:
    motion = Motion.translation(Vector(x, y))
    return replace(
        piece,
        edges=tuple(replace(edge, path=edge.path.moved(motion)) for edge in piece.edges),
        marks=tuple(
            replace(m, path=m.path and m.path.moved(motion), point=m.point and motion(m.point)) for m in piece.marks
        ),
        darts=tuple(replace(dart, apex=motion(dart.apex)) for dart in piece.darts),
        points=tuple((name, motion(point)) for name, point in piece.points),
        guides=tuple((name, path.moved(motion)) for name, path in piece.guides),
    )


def change(was: Piece, now: Piece, **more: object) -> PieceChange:
    found = piece_change(was, now, **more)  # type: ignore[arg-type]
    assert found is not None
    return found


def side(was: Piece, now: Piece, **more: object) -> EdgeChange:
    found = change(was, now, **more).edge("side")
    assert found is not None
    return found


# ---- how far --------------------------------------------------------------------------------------------------


def test_a_side_moved_alike_all_along() -> None:
    edge = side(front(), front(88, 88))
    assert [at.off for at in edge.stations] == pytest.approx([-12] * 33)
    assert [at.along for at in edge.stations] == pytest.approx([200 * n / 32 for n in range(33)])
    assert (edge.shape, edge.before, edge.after) == ("all_along", "hem", "top")
    assert edge.foot(edge.start) == Point(100, 0) and edge.place(edge.start) == Point(88, 0)
    assert edge.parts_at == (0, 200)


def test_walked_the_other_way_round_out_is_out() -> None:
    def turned(piece: Piece) -> Piece:
        return replace(piece, edges=tuple(replace(edge, path=edge.path.reversed()) for edge in reversed(piece.edges)))

    assert side(turned(front()), turned(front(112, 112))).start.off == pytest.approx(12)


@pytest.mark.parametrize(
    ("top", "low", "shape"),
    [
        (100 + TOLD + 0.1, 100, "to_nothing"),
        (100 + TOLD + 0.1, 100 - TOLD - 0.1, "crossing"),
        (112, 100 - TOLD + 0.1, "to_nothing"),
        (112, 112 - ALIKE + 0.1, "all_along"),
        (112, 112 - ALIKE - 0.1, "unequal"),
        (112, 100 + TOLD - 0.1, "to_nothing"),
        (112, 100 + TOLD + 0.1, "unequal"),
    ],
)
def test_how_the_distance_runs_either_side_of_each_limit(top: float, low: float, shape: str) -> None:
    assert side(front(), front(top, low)).shape == shape


def test_a_line_moved_by_less_than_a_ruler_shows_is_the_same() -> None:
    assert piece_change(front(), front(100 + TOLD - 0.05, 100 + TOLD - 0.05)) is None
    assert change(front(), front(100 + TOLD + 0.05, 100)).edge("side").moved  # type: ignore[union-attr]


def test_where_outward_inward_and_most_lie() -> None:
    edge = side(front(), front(94, 104))
    assert edge.outward is edge.start and edge.inward is edge.end and edge.most is edge.end
    slant = math.atan2(10, 200)  # measured square to the old line, which is upright: no cosine
    assert (edge.start.off, edge.end.off) == pytest.approx((4, -6)) and slant < 0.06


def test_lines_part_from_one_station_before_they_differ() -> None:
    bent = Path.line(Point(100, 0), Point(100, 100)).joined(Path.line(Point(100, 100), Point(120, 200)))
    now = front(120)
    now = now.with_edges(side=replace(now.edge("side"), path=bent))
    low, high = side(front(), now).parts_at
    # 4 % of 20 mm is 0.8: that far apart 4 mm beyond the bend, which lies at 100
    step = bent.length / 32
    assert 100 - step < low < 104 and high == pytest.approx(bent.length)


# ---- the cloth --------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("out", "left", "short"), [(8.0, 12, 8), (20.0, 0, 20), (26.0, -6, 26)])
def test_the_cloth_that_is_left_outside_the_new_line(out: float, left: float, short: float) -> None:
    edge = side(front(), front(100 + out, 100 + out))
    middle = edge.stations[16]
    assert middle.left == pytest.approx(left, abs=0.1) and middle.need == pytest.approx(20, abs=0.1)
    assert middle.short == pytest.approx(short, abs=0.2)
    assert edge.shortest is not None


def test_half_a_mm_may_lack_and_is_not_told() -> None:
    assert SLACK == 0.5
    was = front()
    for allowance, told in ((20.4, False), (20.7, True)):
        now = front(99, 99)  # an edge moved in by 1 mm has 1 mm more cloth
        now = now.with_edges(side=replace(now.edge("side"), allowance=allowance + 1.0))
        assert (side(was, now).shortest is not None) is told, allowance


def test_spare_cloth_is_what_lies_beyond_the_new_cut_line() -> None:
    assert side(front(), front(88, 88)).spare == pytest.approx(12, abs=0.1)
    extra = front().with_edges(side=replace(front().edge("side"), extra=15.0))
    assert side(extra, front(88, 88)).spare == pytest.approx(27, abs=0.1)


def test_of_trimmed_cloth_less_is_left_and_where_it_stays_nothing_is_asked() -> None:
    was, now = front(), front(110, 110)
    assert side(was, now, cut_back={"side": 6.0}).stations[16].left == pytest.approx(-4, abs=0.1)
    assert side(was, now, cut_back={"side": 25.0}).stations[16].left == pytest.approx(10, abs=0.1)  # never more
    taken_in = side(was, front(90, 90), cut_back={"side": 6.0})
    assert taken_in.stations[16].need is None and taken_in.shortest is None


def test_what_is_trimmed_off_is_the_strip_between_the_cut_lines() -> None:
    """88 instead of 100 wide, 240 mm high with hem and top: a strip of 12 mm less what is not worth it (0.5)."""
    found = areas(change(front(), front(88, 88)))
    assert found is not None
    assert found.cut.area == pytest.approx((100 + 20 + 15) * (200 + 30 + 10))
    assert found.wanted.area == pytest.approx((88 + 20 + 15) * 240)
    assert found.off.area == pytest.approx(11.5 * 240, rel=0.001)


# ---- drawn elsewhere on the paper ---------------------------------------------------------------------------------

FULL = {
    "marks": (
        Mark("spot", "point", point=Point(40, 80)),
        Mark("fold_line", "line", path=Path.line(Point(0, 60), Point(90, 60))),
    ),
    "darts": (Dart("dart", "top", Point(50, 120), 40.0, 60.0),),
    "points": (("tip", Point(10, 10)),),
    "guides": (("chest", Path.line(Point(0, 150), Point(100, 150))),),
}


@pytest.mark.parametrize("by", [(250.0, 0.0), (0.0, -330.0), (-70.0, 45.0)])
def test_a_draft_begun_elsewhere_is_laid_on_the_cloth_with_all_that_is_drawn_on_it(by: tuple[float, float]) -> None:
    assert piece_change(front(**FULL), front(by=by, **FULL)) is None
    found = change(front(**FULL), front(112, 112, by=by, **FULL))
    there = front(112, 112, **FULL)
    for laid, known in zip(found.now.edges, there.edges, strict=True):
        assert laid.path.start.distance(known.path.start) < 1e-6 and laid.path.end.distance(known.path.end) < 1e-6
    assert found.now.darts[0].apex.distance(Point(50, 120)) < 1e-6
    assert found.now.marks[0].point.distance(Point(40, 80)) < 1e-6  # type: ignore[union-attr]
    assert found.now.marks[1].path.end.distance(Point(90, 60)) < 1e-6  # type: ignore[union-attr]
    assert found.now.points[0][1].distance(Point(10, 10)) < 1e-6
    assert found.now.guides[0][1].start.distance(Point(0, 150)) < 1e-6
    assert found.marks == () and found.edge("side").start.off == pytest.approx(12)  # type: ignore[union-attr]


def test_laid_elsewhere_the_fold_stays_on_the_fold() -> None:
    fold = {"cut": CutPlan(1, fold="centre")}
    found = change(front(**fold), front(112, 112, by=(0.0, 300.0), **fold))
    assert found.now.edge("centre").path.start.x == pytest.approx(0)
    assert [edge.edge for edge in found.edges] == ["hem", "side", "top"]  # nobody sews a fold


# ---- what else differs ------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("x", "moved_there"), [(40.7, False), (40.9, True)])
def test_a_mark_that_lies_elsewhere(x: float, moved_there: bool) -> None:
    was = front(marks=(Mark("spot", "point", point=Point(40, 80)), Mark("other", "point", point=Point(1, 1))))
    now = front(90, 90, marks=(Mark("spot", "point", point=Point(x, 80)), Mark("other", "point", point=Point(1, 1))))
    assert change(was, now).marks == (("spot",) if moved_there else ())


def test_lines_move_by_either_end_and_places_on_edges_with_them() -> None:
    def line(x: float) -> tuple[Mark, ...]:
        return (Mark("line", "line", path=Path.line(Point(0, 60), Point(x, 60))),)

    assert change(front(marks=line(50)), front(marks=line(52))).marks == ("line",)
    on_side = (Mark("slit", "opening", edge="side", start=40.0, end=90.0),)
    assert change(front(marks=on_side), front(88, 88, marks=on_side)).marks == ("slit",)
    assert change(front(), front(marks=on_side)).marks == ("slit",)  # a new one


@pytest.mark.parametrize(
    ("dart", "told"),
    [
        (Dart("dart", "top", Point(50, 120), 40.0, 60.0), False),
        (Dart("dart", "top", Point(50, 121), 40.0, 60.0), True),
        (Dart("dart", "top", Point(50, 120), 41.0, 60.0), True),
        (Dart("dart", "top", Point(50, 120), 40.0, 61.0), True),
        (Dart("dart", "top", Point(50, 120.5), 40.5, 60.5), False),
    ],
)
def test_a_dart_moves_by_its_point_or_a_leg(dart: Dart, told: bool) -> None:
    was = front(darts=(Dart("dart", "top", Point(50, 120), 40.0, 60.0),))
    now = front(100, 90, darts=(dart,))  # the hem is shorter; the top, where the dart opens, is as it was
    assert change(was, now).folds == (("dart",) if told else ())


def test_a_new_dart_is_told_and_edges_of_one_draft_alone() -> None:
    dart = Dart("dart", "top", Point(50, 120), 40.0, 60.0)
    assert change(front(), front(darts=(dart,))).folds == ("dart",)
    now = front(90, 90)
    renamed = replace(now, edges=(*now.edges[:2], replace(now.edges[2], name="yoke", role=""), now.edges[3]))
    assert set(change(front(), renamed).only) == {"top", "yoke"}


def test_edges_are_matched_by_name_then_by_the_only_role() -> None:
    def roles(**names: str) -> Piece:
        piece = front()
        edges = tuple(
            replace(edge, name=name, role=role) for edge, (name, role) in zip(piece.edges, names.items(), strict=True)
        )
        return replace(piece, edges=edges)

    was = roles(low="hem", a="side", up="neck", b="side")
    assert matched(was, roles(other="hem", a="side", up="neck", b="side")) == {
        "other": "low", "a": "a", "up": "up", "b": "b",
    }  # fmt: skip
    # two sides are left: neither is known
    assert matched(was, roles(low="hem", c="side", up="neck", d="side")) == {"low": "low", "up": "up"}
    # one of them keeps its name
    assert matched(was, roles(low="hem", c="side", up="neck", b="side"))["c"] == "a"
    assert "x" not in matched(was, roles(x="", a="side", up="neck", b="side"))
