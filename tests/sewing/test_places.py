"""Places along runs by numbers worked by hand, on oblongs of 100 by 60 mm whose edges run round from the hem."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import pairwise

import pytest

from kit.geometry import Path, Point
from kit.piece.piece import CutPlan, Notch
from kit.sewing.joined_lengths import gaps_of, pairs, stitch_length
from kit.sewing.placement import laid_on
from kit.sewing.places import (
    alike,
    around,
    beside,
    closed_at,
    closed_but,
    corner,
    free_ends,
    inside,
    is_ring,
    minus,
    on_both,
    part,
    raw_beside,
    sewn_length,
    without_end,
)
from kit.sewing.run import Run
from kit.sewing.seam_walk import walk
from kit.sewing.spans import Span
from kit.units import cm

ROUND = {"hem": 10, "far": 10, "top": 10, "near": 10}
PAIR = CutPlan(count=2, mirrored=True)


@pytest.fixture
def oblong(garments):
    """oblong(name, wide=100, high=60, **more): a piece whose hem runs from (0, 0) to (wide, 0)."""
    return lambda name, wide=100, high=60, **more: garments.rectangle(name, wide, high, ROUND, **more)


@pytest.fixture
def one(sewn, oblong):
    """The pattern of one piece "a"."""
    return sewn((oblong("a"),)).pattern


HEM = Run("a", ("hem",))


def test_a_part_of_a_run_is_counted_from_where_the_run_begins(one) -> None:
    assert part(one, HEM, 10, 40) == replace(HEM, start=10, end=40)
    assert part(one, HEM, -5, 140) == replace(HEM, start=0, end=100)
    middle = replace(HEM, start=20, end=70)
    assert part(one, middle, 10, 30) == replace(HEM, start=30, end=50)
    assert part(one, middle, 10, 80) == replace(HEM, start=30, end=70)


def test_around_a_place_as_wide_as_the_thing_and_inside_at_the_ends(one) -> None:
    def found(at: float, width: float) -> tuple[float, float]:
        run = around(one, HEM, at, width)
        return run.start, run.end

    assert found(50, 20) == (40, 60)
    assert found(3, 20) == (0, 20) and found(10, 20) == (0, 20) and found(11, 20) == (1, 21)
    assert found(99, 20) == (80, 100) and found(90, 20) == (80, 100) and found(89, 20) == (79, 99)
    assert found(50, 140) == (0, 100)  # wider than the edge


def test_the_same_stretch_on_both_sides_of_a_seam(sewn, oblong) -> None:
    """Right sides together `a.far`, which runs up, lies on `b.near`, which runs down."""
    pattern = sewn((oblong("a"), oblong("b"))).pattern
    a, b, other = Run("a", ("far",)), Run("b", ("near",)), Run("b", ("far",))
    assert on_both(pattern, a, b, (10, 25)) == (replace(a, start=10, end=25), replace(b, start=35, end=50))
    assert on_both(pattern, a, other, (10, 25)) == (replace(a, start=10, end=25), replace(other, start=10, end=25))


def span(start: float, end: float, edge: str = "hem", side: str = "right") -> Span:
    return Span("a", side, edge, start, end)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("cut", "left"),
    [
        ([], [(20, 80)]),
        ([(0, 20)], [(20, 80)]),  # touches, takes nothing
        ([(80, 90)], [(20, 80)]),
        ([(0, 30)], [(30, 80)]),
        ([(70, 100)], [(20, 70)]),
        ([(40, 50)], [(20, 40), (50, 80)]),
        ([(20, 50)], [(50, 80)]),
        ([(50, 80)], [(20, 50)]),
        ([(0, 100)], []),
        ([(30, 40), (50, 60)], [(20, 30), (40, 50), (60, 80)]),
        ([(30, 60), (50, 70)], [(20, 30), (70, 80)]),
    ],
)
def test_what_is_left_when_stretches_are_taken_out(cut, left) -> None:
    assert minus([span(20, 80)], [span(*each) for each in cut]) == tuple(span(*each) for each in left)


def test_stretches_of_other_edges_and_halves_take_nothing_out() -> None:
    assert minus([span(20, 80)], [span(0, 100, edge="top")]) == (span(20, 80),)
    assert minus([span(20, 80)], [span(0, 100, side="left")]) == (span(20, 80),)


def test_all_is_closed_but_the_gap(one) -> None:
    closed = closed_but(one, [HEM, Run("a", ("top",))], [replace(HEM, start=30, end=50)], "sewn")
    assert [(c.how, c.span.edge, c.span.start, c.span.end) for c in closed] == [
        ("sewn", "hem", 0, 30),
        ("sewn", "hem", 50, 100),
        ("sewn", "top", 0, 100),
    ]


def test_beside_the_end_of_a_band(one, sewn, oblong) -> None:
    """The hem runs towards the right end, the top away from it."""
    right, left = Run("a", ("far",)), Run("a", ("near",))

    def found(at: Run) -> dict[str, tuple[float, float]]:
        return {run.edges[0]: (run.start, run.end) for run in beside(one, at, 15)}

    assert found(right) == {"hem": (85, 100), "top": (0, 15)}
    assert found(left) == {"hem": (0, 15), "top": (85, 100)}
    folded = sewn((oblong("a", cut=CutPlan(1, fold="top")),)).pattern
    assert [run.edges for run in beside(folded, right, 15)] == [("hem",)]


def test_a_long_edge_without_its_end(one, sewn, oblong) -> None:
    right, left, top = Run("a", ("far",)), Run("a", ("near",)), Run("a", ("top",))
    assert without_end(one, HEM, right, 15) == (replace(HEM, start=0, end=85),)
    assert without_end(one, HEM, left, 15) == (replace(HEM, start=15, end=100),)
    assert without_end(one, replace(HEM, start=5, end=95), right, 15) == (replace(HEM, start=5, end=85),)
    assert without_end(one, replace(HEM, start=40, end=70), right, 15) == (replace(HEM, start=40, end=70),)
    for at, size in ((None, 15), (right, 0), (right, -1), (top, 15), (replace(right, piece="b"), 15)):
        assert without_end(one, HEM, at, size) == (HEM,), (at, size)
    both = Run("a", ("hem", "far"))
    assert without_end(one, both, right, 15) == (both,)
    pair = sewn((oblong("a", cut=PAIR),)).pattern
    assert without_end(pair, HEM, replace(right, side="left"), 15) == (
        replace(HEM, side="left", start=0, end=85),
        replace(HEM, side="right"),
    )
    assert without_end(pair, HEM, right, 15) == (replace(HEM, start=0, end=85),)


def test_where_a_neighbour_meets_a_run(one) -> None:
    assert corner(one, HEM, "far") == 0 and corner(one, HEM, "near") == 60
    assert corner(one, Run("a", ("hem", "far")), "top") == 0


def test_raw_beside_and_what_has_closed_a_place(sewn, oblong) -> None:
    part_hemmed = sewn((oblong("a"),), lambda make, a: make.hem(a.far.before(3 * cm), first=0.5 * cm, second=0.5 * cm))
    pattern, state = part_hemmed.pattern, part_hemmed.state
    assert [len(closed_at(state, ("a", "right", "far"), at)) for at in (0, 29, 30.5, 30.6, 60)] == [1, 1, 1, 0, 0]
    # beside the hem: the right edge is closed where they meet, the left one raw
    assert raw_beside(state, pattern, [HEM]) == Run("a", ("near",), "right")
    assert raw_beside(state, pattern, [replace(HEM, start=0, end=50)]) is None  # parts are not asked
    assert raw_beside(state, pattern, [Run("a", ("top",))]) == Run("a", ("far",), "right")
    folded = sewn((oblong("a", cut=CutPlan(1, fold="near")),))
    assert raw_beside(folded.state, folded.pattern, [HEM]).edges == ("far",)


def test_a_ring_is_closed_when_the_edges_beside_it_are_sewn_to_one_another(sewn, oblong) -> None:
    pieces = (oblong("a"), oblong("b"))

    def half(make, a, b):
        make.plain_seam(a.far, b.near, allowance=1 * cm)

    def whole(make, a, b):
        half(make, a, b)
        make.plain_seam(a.near, b.far, allowance=1 * cm)

    hems = (HEM, Run("b", ("hem",)))
    for write, free in (
        (lambda make, a, b: None, {("a", "far"), ("a", "near"), ("b", "far"), ("b", "near")}),
        (half, {("a", "near"), ("b", "far")}),
        (whole, set()),
    ):
        done = sewn(pieces, write)
        found = free_ends(done.state, done.pattern, hems)
        assert {(piece, edge) for piece, _, edge in found} == free
        assert is_ring(done.state, done.pattern, hems) is (not free)
        assert all(at == (0 if edge == "far" else 60) for (_, _, edge), at in found.items())


def test_both_sides_are_told_where_every_piece_is_a_pair(sewn, oblong) -> None:
    pair = sewn((oblong("a", cut=PAIR), oblong("b"))).pattern
    assert len(alike(pair, [HEM])) == 1
    assert alike(pair, [HEM, Run("b", ("hem",))]) == ()


def test_a_line_so_deep_inside_an_edge(one) -> None:
    for edge, line in (
        ("hem", ((0, 12), (100, 12))),
        ("far", ((88, 0), (88, 60))),
        ("top", ((100, 48), (0, 48))),
        ("near", ((12, 60), (12, 0))),
    ):
        found = inside(one, Run("a", (edge,)), 12)
        ends = tuple((round(p.x, 6), round(p.y, 6)) for p in (found.start, found.end))
        assert ends == line, edge


# ---- lengths --------------------------------------------------------------------------------------------------


def test_lengths_count_both_halves(sewn, oblong) -> None:
    pattern = sewn((oblong("a", cut=PAIR), oblong("b"))).pattern
    assert sewn_length(pattern, [HEM]) == 200 and sewn_length(pattern, [HEM, Run("b", ("near",))]) == 260
    assert stitch_length(pattern, (HEM, Run("b", ("near",)))) == 260
    assert stitch_length(pattern, (replace(HEM, side="left", start=10, end=35),)) == 25


def test_rows_of_as_many_runs_are_compared_one_by_one(sewn, oblong) -> None:
    pattern = sewn((oblong("a", cut=PAIR), oblong("b", wide=90, cut=PAIR), oblong("c", wide=50))).pattern
    a, b, c = HEM, Run("b", ("hem",)), Run("c", ("hem",))
    right = Run("a", ("far",))
    assert pairs((a, right), (b, c)) == [((a,), (b,)), ((right,), (c,))]
    assert pairs((a, right), (b,)) == [((a, right), (b,))]
    assert [gap for *_, gap in gaps_of(pattern, (a,), (b,))] == [10]  # told of one half
    assert [gap for *_, gap in gaps_of(pattern, (b,), (a,))] == [-10]
    assert [gap for *_, gap in gaps_of(pattern, (a,), (c,))] == [150]  # both halves along one edge
    assert [gap for *_, gap in gaps_of(pattern, (replace(a, side="left"), right), (b,))] == [(100 + 120 - 180) / 2]


# ---- a piece on its placement line ------------------------------------------------------------------------------


def _line(*corners: tuple[float, float]) -> Path:
    points = [Point(*at) for at in corners]
    found = Path.line(points[0], points[1])
    for a, b in pairwise(points[1:]):
        found = found.joined(Path.line(a, b))
    return found


@pytest.mark.parametrize("start", [0, 1, 2, 3])
@pytest.mark.parametrize("way", [1, -1])
def test_an_oblong_is_laid_on_its_outline_wherever_that_begins(oblong, start: int, way: int) -> None:
    """Moved by (200, 300), drawn from any corner, either way round: never turned upside down, nor over."""
    at = [(200, 300), (300, 300), (300, 360), (200, 360)][::way]
    at = at[start:] + at[:start]
    motion = laid_on(oblong("a"), _line(*at, at[0]))
    for x, y in ((0, 0), (100, 0), (100, 60), (20, 30)):
        moved = motion(Point(x, y))
        assert (moved.x, moved.y) == pytest.approx((200 + x, 300 + y), abs=1e-6)


def test_a_slanted_outline_turns_the_piece(oblong) -> None:
    turn = math.radians(20)

    def lies(x: float, y: float) -> tuple[float, float]:
        return 50 + x * math.cos(turn) - y * math.sin(turn), 80 + x * math.sin(turn) + y * math.cos(turn)

    corners = [lies(*at) for at in ((0, 0), (100, 0), (100, 60), (0, 60), (0, 0))]
    motion = laid_on(oblong("a"), _line(*corners))
    moved = motion(Point(30, 40))
    assert (moved.x, moved.y) == pytest.approx(lies(30, 40), abs=1e-6)


# ---- notches that belong together -----------------------------------------------------------------------------


def _notched(oblong, name: str, *at: float, high: float = 60, names: tuple[str, ...] = ()):
    named = (*names, *("" for _ in at))
    notches = tuple(Notch("far", each, name=called) for each, called in zip(at, named, strict=False))
    return oblong(name, high=high, notches=notches)


def _matched(oblong, one, two, *, high: float = 60, names=((), ())) -> list[tuple[float, float]]:
    a = _notched(oblong, "a", *one, names=names[0], high=200)
    b = _notched(oblong, "b", *two, high=200 + high - 60, names=names[1])
    found = walk((a, b), "a.far", "b.far", turned=False)
    return [(s.a, s.b) for s in found.stations if s.what == "notch" and s.on == "both"]


def test_the_nearest_notches_belong_together_up_to_2_cm(oblong) -> None:
    assert _matched(oblong, [50], [69]) == [(50, 69)]
    assert _matched(oblong, [50], [70]) == [(50, 70)]
    assert _matched(oblong, [50], [71]) == []
    assert _matched(oblong, [50], [75], high=66) == [(50, 75)]  # and as far as the edges differ: 6 mm
    assert _matched(oblong, [50], [77], high=66) == []
    assert _matched(oblong, [50, 60], [58]) == [(60, 58)]
    assert _matched(oblong, [50, 60, 100], [62, 100]) == [(60, 62), (100, 100)]


def test_notches_of_one_name_come_first_and_none_cross(oblong) -> None:
    assert _matched(oblong, [50, 60], [58], names=(("x", ""), ("x",))) == [(50, 58)]
    # x pairs with x over 10 mm; what is left would cross it
    assert _matched(oblong, [50, 60], [60, 50], names=(("x", ""), ("x", ""))) == [(50, 60)]
    assert _matched(oblong, [50, 60], [52, 61]) == [(50, 52), (60, 61)]


def test_between_shared_notches_places_are_in_proportion(oblong) -> None:
    a, b = _notched(oblong, "a", 100, high=200), _notched(oblong, "b", 110, high=230)
    found = walk((a, b), "a.far", "b.far", turned=False)
    assert found.difference == 30
    assert found.opposite(50) == pytest.approx(55) and found.opposite(150) == pytest.approx(170)
    assert found.opposite(0) == 0 and found.opposite(200) == pytest.approx(230)
    assert [(s.what, s.a, s.b, s.difference) for s in found.stations] == [
        ("start", 0, 0, 0),
        ("notch", 100, 110, 10),
        ("end", 200, 230, 30),
    ]
    lone = walk((a, _notched(oblong, "b", high=230)), "a.far", "b.far", turned=False)
    assert [(s.on, s.a, s.b) for s in lone.unmatched] == [("a", 100, pytest.approx(115))]
