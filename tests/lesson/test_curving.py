"""Curves on the cloth's side of a sleeve's end, in a direction the author says, and mirrored with the piece."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from kit.blocks.bodice import bodice_block
from kit.body.chart import workshop_chart
from kit.errors import KitError
from kit.geometry import Curve, Line, Path, Point, Vector
from kit.language import say
from kit.lesson.bench import BenchPiece
from kit.lesson.curving import EndWay, curve
from kit.lesson.pencil import PaperLine
from kit.piece.piece import CutPlan, Edge, Piece
from kit.units import cm, mm

SIZES = tuple(workshop_chart().names)
MIDDLE = Line(Point(0, 0), Point(0, 1))


def front(size: str) -> Piece:
    return next(piece for piece in bodice_block(workshop_chart()[size]) if piece.name == "front")


def mirrored(piece: Piece) -> Piece:
    """The same half drawn on the other side of the centre line."""
    return replace(
        piece,
        edges=tuple(replace(edge, path=edge.path.mirrored(MIDDLE)) for edge in piece.edges),
        points=tuple((name, Point(-p.x, p.y)) for name, p in piece.points),
        guides=tuple((name, path.mirrored(MIDDLE)) for name, path in piece.guides),
    )


def opened(piece: Piece) -> Piece:
    """The half and its mirror image as one piece, the edges of the other half called far_."""
    half = [edge for edge in piece.edges if edge.name != "centre"]
    far = [Edge(f"far_{e.name}", e.path.mirrored(MIDDLE).reversed(), role=e.role) for e in reversed(half)]
    return replace(piece, edges=(*half, *far), cut=CutPlan(), guides=(), darts=(), grain=None)


def sleeve(
    bench: BenchPiece, depth: float = 20, join: float = 30, toward: str = "", prefix: str = "", back: bool = False
) -> PaperLine:
    """A short, very wide cut-on sleeve along the shoulder and the underarm of it, joined far down the side."""
    edge = {name: bench.edge(prefix + name) for name in ("shoulder", "side")}
    shoulder, side = edge["shoulder"], edge["side"]
    if back:  # the far half of an opened piece is walked the other way
        shoulder, side = (PaperLine(line.sheet, line.path.reversed(), line.name) for line in (shoulder, side))
    overarm = shoulder.start.through(shoulder.end, beyond=20 * cm)
    bench.draw(**{f"{prefix}overarm": overarm}, instead_of=f"{prefix}shoulder")
    opening = overarm.square(depth * cm, "down")
    return opening.curve_into(side, at=join * cm, toward=toward)


@pytest.mark.parametrize("size", SIZES)
def test_a_wide_sleeves_underarm_does_not_bulge_past_the_sleeves_end(size: str) -> None:
    bench = BenchPiece(front(size))
    curve = sleeve(bench)
    overarm = bench.overarm.path
    inward = overarm.end_tangent * -1.0
    assert curve.path.start_tangent.dot(inward) == pytest.approx(1.0)
    ends = (curve.path.start.x, curve.path.end.x)
    assert max(p.x for p in curve.path.points()) <= max(ends) + 1e-6
    outward = sleeve(BenchPiece(front(size)), toward="out")
    assert max(p.x for p in outward.path.points()) > max(ends) + 20  # what it was before, and may still be said
    # It still runs into the side without a corner, where it was told to.
    assert curve.path.end.close_to(bench.side.path.at(300))
    assert curve.path.end_tangent.cross(bench.side.path.tangent_at(300)) == pytest.approx(0.0, abs=1e-6)


def test_room_in_the_last_few_millimetres_before_at_most_is_found() -> None:
    """Where the curve has room at some place, it has it too when asked from 8 mm before to half a millimetre after."""

    def joins(at: float, most: float) -> float:
        bench = BenchPiece(front("W4"))
        overarm = bench.shoulder.start.through(bench.shoulder.end, beyond=10 * cm)
        opening = overarm.square(17 * cm, "down")
        curve = opening.curve_into(bench.side, at=at * mm, least_radius=4 * cm, at_most=most * mm)
        return bench.side.path.nearest(curve.path.end)

    place = joins(20, 200)
    assert place > 28 + 1
    assert joins(place - 8, place + 0.5) == pytest.approx(place, abs=0.3)


def test_the_author_says_the_other_side_and_an_unmatched_word_is_refused() -> None:
    out = sleeve(BenchPiece(front("W4")), toward="out")
    away = sleeve(BenchPiece(front("W4")), toward="outside")
    within = sleeve(BenchPiece(front("W4")), toward="inside")
    assert out.path == away.path
    assert out.path.start_tangent.x > 0.9 > -0.9 > within.path.start_tangent.x
    with pytest.raises(KitError, match=r"toward='sideways' is no direction"):
        sleeve(BenchPiece(front("W4")), toward="sideways")
    bench = BenchPiece(front("W4"))
    level = bench.shoulder_tip.ruled("out", 10 * cm).square(10 * cm, "down")
    with pytest.raises(KitError, match=r"does not let a curve leave or arrive up\. There it goes out .* or in") as told:
        level.curve_into(bench.side, at=10 * cm, toward="up")
    assert told.value.told.says.key == "drafting.neither_side"  # type: ignore[union-attr]


def test_curve_to_takes_the_cloths_side_too_in_both_directions() -> None:
    bench = BenchPiece(front("W4"))
    sleeve(bench)
    bench.draw(opening=bench.overarm.square(20 * cm, "down"), after=bench.overarm)
    join = bench.side.at(30 * cm)
    there = bench.opening.end.curve_to(join, square_to=bench.opening, end_along=bench.side)
    assert there.path.start_tangent.dot(bench.overarm.path.end_tangent) == pytest.approx(-1.0)
    back = join.curve_to(bench.opening.end, along=bench.side, end_square_to=bench.opening)
    for distance in (0.0, 50.0, 120.0):
        assert back.path.reversed().at(distance).close_to(there.path.at(distance), 1e-6)
    out = bench.opening.end.curve_to(join, square_to=bench.opening, toward="out", end_along=bench.side)
    assert out.path.start_tangent.dot(bench.overarm.path.end_tangent) == pytest.approx(1.0)


def test_what_cannot_be_drawn_names_the_direction_and_an_s_is_drawn_when_said() -> None:
    bench = BenchPiece(front("W4"))
    overarm = bench.neck_point.through(bench.shoulder_tip.up(1 * cm), beyond=40 * cm)
    opening = overarm.square(32 * cm, "down")  # deeper than the place it joins
    with pytest.raises(KitError, match=r"opening|line.*setting out in toward the centre, would double back") as told:
        opening.curve_into(bench.side, at=1 * cm)
    assert "toward=" in told.value.do
    curve = opening.curve_into(bench.side, at=6 * cm, toward="in")
    assert curve.path.start_tangent.x < 0 and curve.path.end.close_to(bench.side.path.at(60))
    crossing = overarm.square(20 * cm, "down").curve_into(bench.side, at=20 * cm, toward="in")
    turns = {c.curvature(t) > 0 for c in crossing.path.curves for t in (0.05, 0.95)}
    assert turns  # drawn; its bends are the curve's own affair
    with pytest.raises(KitError, match="is the most"):
        # Straight away from the target.
        bench.neck_point.curve_to(bench.shoulder_tip, along=bench.shoulder, toward="in")


def test_an_s_curve_turns_both_ways() -> None:
    bench = BenchPiece(Piece("pouch", "Pouch", ()))
    post = bench.place(0, 0).ruled("up", 20 * cm)
    other = bench.place(10 * cm, 10 * cm).ruled("up", 10 * cm)
    curve = post.end.curve_to(other.end, square_to=post, end_square_to=other, end_toward="out")
    bends = [curve.path.curves[0].curvature(t) for t in (0.1, 0.9)]
    assert bends[0] * bends[1] <= 1e-12  # level at both ends and level between
    low = bench.place(10 * cm, 2 * cm)
    s = post.end.curve_to(low, square_to=post, toward="out", end_along=bench.place(0, 2 * cm).to(low))
    first, last = (s.path.curves[0].curvature(t) for t in (0.1, 0.9))
    assert first < 0 < last


@pytest.mark.parametrize("toward", ["", "in", "out", "inside", "outside"])
@pytest.mark.parametrize("size", ["W1", "W4", "W10"])
def test_a_curve_on_a_mirrored_piece_is_the_mirror_image(size: str, toward: str) -> None:
    one = sleeve(BenchPiece(front(size)), toward=toward)
    two = sleeve(BenchPiece(mirrored(front(size))), toward=toward)
    _same(one.path, two.path.mirrored(MIDDLE))


@pytest.mark.parametrize("toward", ["", "in", "out"])
def test_a_curve_on_the_far_half_of_an_opened_piece_is_the_mirror_image(toward: str) -> None:
    bench = BenchPiece(opened(front("W4")))
    near = sleeve(bench, toward=toward)
    far_bench = BenchPiece(opened(front("W4")))
    far = sleeve(far_bench, toward=toward, prefix="far_", back=True)
    _same(near.path, far.path.mirrored(MIDDLE))


def test_into_and_out_keep_their_sense_on_a_mirrored_half_and_a_wrap_is_what_it_was() -> None:
    plain, other = BenchPiece(front("W4")), BenchPiece(mirrored(front("W4")))
    for name in ("shoulder_tip", "underarm_point", "side_hip"):
        for verb in ("into", "out"):
            a, b = (getattr(bench.point(name), verb)(3 * cm).point for bench in (plain, other))
            assert b.close_to(Point(-a.x, a.y), 1e-9)
        a, b = (bench.point(name).ruled("in", 2 * cm).path.end for bench in (plain, other))
        assert b.close_to(Point(-a.x, a.y), 1e-9)
    assert other.side.parallel(1 * cm, "out").path.start.x < other.side.path.start.x
    whole = BenchPiece(opened(front("W4")))
    tip = whole.edge("far_shoulder").start  # the far shoulder is walked from tip to neck
    assert tip.into(1 * cm).point.x > tip.point.x
    # Beyond the centre of a half, in is on, past the centre, as it was.
    plain.mirror("centre")
    corner = plain.guide("far_waist").share(0.7)
    assert corner.into(1 * cm).point.close_to(corner.point + Vector(-10, 0))


def _same(one: Path, two: Path) -> None:
    assert one.length == pytest.approx(two.length, abs=1e-9)
    for share in (0, 0.2, 0.5, 0.8, 1):
        assert one.at(one.length * share).close_to(two.at(two.length * share), 1e-9)


def leaving(degrees: float, fullness: float, *, sure: bool) -> Curve:
    """A curve of 10 cm to the right that leaves so many degrees off the straight line and arrives along it."""
    way = EndWay(Vector.at_angle(math.radians(degrees)), sure=sure)
    return curve(Point(0, 0), way, Point(100, 0), EndWay(Vector(1, 0)), fullness)


@pytest.mark.parametrize("fullness", [0.05, 1.0, 3.0])
def test_a_curve_turns_back_where_its_side_is_sure_at_every_fullness_it_may_have(fullness: float) -> None:
    assert leaving(100.0, fullness, sure=True).tangent(0.0).x < -0.1
    with pytest.raises(KitError, match="double back"):
        leaving(100.0, fullness, sure=False)


@pytest.mark.parametrize("fullness", [0.049, 3.01])
def test_too_full_a_curve_is_told_before_how_far_it_turns(fullness: float) -> None:
    """From 120 degrees on (our own limit) a curve turns back too far."""
    with pytest.raises(KitError, match="fullness"):
        leaving(121.0, fullness, sure=True)
    with pytest.raises(KitError, match="121"):
        leaving(121.0, 1.0, sure=True)
    assert leaving(120.0, 1.0, sure=True)


def test_ends_in_one_place_have_no_curve_however_sure_its_side() -> None:
    """Nor is it told how far such a curve would turn back."""
    way = EndWay(Vector(-1, 0), sure=True)
    for near in (0.0, 0.009):
        with pytest.raises(KitError) as refused:
            curve(Point(5, 5), way, Point(5 + near, 5), EndWay(Vector(1, 0)), 1.0)
        assert str(refused.value.what) == say("refusal.curve_ends")
