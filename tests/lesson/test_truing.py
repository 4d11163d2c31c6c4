"""Truing: both edges equal, the lines across the seam smooth, what is marked staying in its place."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from kit.blocks.bodice import bodice_block
from kit.blocks.darted_bodice import darted_bodice_block
from kit.blocks.sleeve import with_sleeve
from kit.body.chart import workshop_chart
from kit.errors import KitError
from kit.geometry import Line, Path, Point
from kit.lesson.bench import BenchPiece
from kit.lesson.lesson import Lesson
from kit.lesson.truing import trued
from kit.piece.darts_and_pleats import Dart
from kit.piece.folded import corner_at, folded
from kit.piece.piece import Declared, Edge, Notch, Piece
from kit.sewing.seam_walk import Walk, walk
from kit.units import Length, cm, mm


def skirt(name: str, long: float, flare: float, hem: float, rise: float = 8.0, waist: float = 180.0) -> Piece:
    """A quarter of a skirt: centre at x = 0, side flaring by `flare`, its hem starting `hem` mm lower at the side."""
    side = Path.line(Point(waist, 0), Point(waist + flare, -math.sqrt(max(long**2 - flare**2, 1.0))))
    foot = Point(0, side.end.y + hem)
    line = Path.line(side.end, foot)
    top = Path.through([Point(0, -rise), Point(waist, 0)])
    return Piece(
        name,
        name.capitalize(),
        (
            Edge("waist", top),
            Edge("side", side),
            Edge("hem", line),
            Edge("centre", Path.line(foot, Point(0, -rise))),
        ),
    )


def sums(found: Walk) -> tuple[float, float]:
    """The two angles together at the start and the end of the seam, in degrees."""
    angles = []
    for end in (False, True):
        one, other = corner_at(found.a, end), corner_at(found.b, end)
        assert one is not None and other is not None
        angles.append(math.degrees(one.angle + other.angle))
    return angles[0], angles[1]


SIZES = st.tuples(st.floats(380, 420), st.floats(0, 60), st.floats(-25, 25), st.floats(0, 25))


@given(SIZES, SIZES, st.sampled_from(["half", "own", "other"]), st.sampled_from(["start", "end"]))
def test_after_truing_the_walk_is_equal_and_the_corners_are_straight(one, other, share, hold) -> None:
    a, b = skirt("front", *one), skirt("back", *other)
    before = walk([a, b], "front.side", "back.side")
    assume(all(abs(total - 180) < 40 for total in sums(before)))
    result = trued(a, ("side",), b, ("side",), share=share, hold=hold)
    after = walk([result.own, result.other], "front.side", "back.side")
    assert abs(after.difference) <= 0.1
    assert sums(after) == pytest.approx((180.0, 180.0), abs=0.1)
    assert result.difference == pytest.approx(-before.difference)
    for piece in (result.own, result.other):
        assert piece.outline.self_crossing() is None
        for edge in piece.edges:  # no new corner inside a line
            assert not edge.path.corners


def test_the_difference_is_shared_or_taken_by_one() -> None:
    a, b = skirt("front", 410, 0, 0, 0), skirt("back", 400, 0, 0, 0)

    def lengths(share: str) -> tuple[float, float]:
        found = trued(a, ("side",), b, ("side",), share=share)  # type: ignore[arg-type]
        return tuple(round(p.edge("side").path.length, 6) for p in (found.own, found.other))  # type: ignore[return-value]

    assert lengths("half") == (405.0, 405.0)
    assert lengths("own") == (400.0, 400.0)
    assert lengths("other") == (410.0, 410.0)


def test_the_held_end_stays_and_square_corners_are_left_alone() -> None:
    a, b = skirt("front", 410, 0, 0, 0), skirt("back", 400, 0, 0, 0)
    found = trued(a, ("side",), b, ("side",))
    assert found.own.edge("waist").path == a.edge("waist").path
    assert found.own.edge("side").path.start == a.edge("side").path.start
    assert found.own.edge("side").path.end.y == pytest.approx(-405)
    held = trued(a, ("side",), b, ("side",), hold="end")
    assert held.own.edge("side").path.end == a.edge("side").path.end
    assert held.own.edge("side").path.start.y == pytest.approx(-5)
    again = trued(found.own, ("side",), found.other, ("side",))
    assert (again.own, again.other, again.changes) == (found.own, found.other, ())


def test_ease_is_left_in() -> None:
    a, b = skirt("front", 400, 0, 0, 0), skirt("back", 403, 0, 0, 0)
    found = trued(a, ("side",), b, ("side",), ease=5.0)
    assert walk([found.own, found.other], "front.side", "back.side").difference == pytest.approx(5.0)


@pytest.mark.parametrize(
    ("share", "front", "back"),
    [
        ("half", 399.0, 404.0),  # 400 + 403 = 803 = 2 x 399 + 5: each gives or takes one
        ("own", 398.0, 403.0),  # the front alone, 5 shorter than the back
        ("other", 400.0, 405.0),  # the back alone, 5 longer than the front
    ],
)
def test_each_side_has_the_length_reckoned_by_hand(share: str, front: float, back: float) -> None:
    """Sides of 400 and 403, the back meant to be eased in by 5 (mm)."""
    a, b = skirt("front", 400, 0, 0, 0), skirt("back", 403, 0, 0, 0)
    found = trued(a, ("side",), b, ("side",), share=share, ease=5.0)  # type: ignore[arg-type]
    assert found.own.edge("side").path.length == pytest.approx(front, abs=1e-6)
    assert found.other.edge("side").path.length == pytest.approx(back, abs=1e-6)
    assert {name: by for name, _, by, _, _ in found.changes} == pytest.approx(
        {name: by for name, by in (("front", front - 400), ("back", back - 403)) if by}
    )


def test_marks_keep_their_distance_from_the_end_that_stays() -> None:
    a = replace(skirt("front", 410, 0, 0, 0), notches=(Notch("side", 100.0), Notch("hem", 150.0)))
    b = replace(skirt("back", 400, 0, 0, 0), notches=(Notch("side", 100.0, "double"),))
    down = trued(a, ("side",), b, ("side",))
    assert [n.distance for n in down.own.notches if n.edge == "side"] == [pytest.approx(100.0)]
    up = trued(a, ("side",), b, ("side",), hold="end")
    assert [n.distance for n in up.own.notches if n.edge == "side"] == [pytest.approx(95.0)]
    side = folded(down.own, ("hem",))
    assert side.length - next(n.distance for n in down.own.notches if n.edge == "hem") == pytest.approx(30.0, abs=0.5)


def test_a_pointed_hem_is_cut_back_and_runs_in_one_even_curve() -> None:
    """Flared side seams on a straight hem come to a point, and the hem is raised there (common practice, no source):
    the trued hem never dips below the straight one."""
    a, b = skirt("front", 400, 50, 0), skirt("back", 400, 50, 0)
    found = trued(a, ("side",), b, ("side",), ends="end")
    for piece, old in ((found.own, a), (found.other, b)):
        hem = piece.edge("hem").path
        assert hem.start.y > old.edge("hem").path.start.y + 2.0
        assert min(p.y for p in hem.points()) >= old.edge("hem").path.start.y - 0.3


def test_a_declared_corner_a_fold_and_an_end_not_named_are_left() -> None:
    a, b = skirt("front", 400, 30, -10), skirt("back", 400, 30, -10)
    declared = replace(a, declared=(Declared("side", "hem", "V point"),))
    assert trued(declared, ("side",), b, ("side",)).own.edge("hem") == a.edge("hem")
    folded_hem = replace(a, cut=replace(a.cut, fold="hem"))
    assert trued(folded_hem, ("side",), b, ("side",)).own.edge("hem") == a.edge("hem")
    assert trued(a, ("side",), b, ("side",), ends="start").own.edge("hem") == a.edge("hem")


def test_two_edges_of_one_piece_are_trued_as_one_sleeve() -> None:
    """The underarm seams of a sleeve: both on one piece, the wrist and the cap crossing them."""
    sleeve = next(p for p in with_sleeve(darted_bodice_block)(workshop_chart()["W4"]) if p.name == "sleeve")
    old = sleeve.edge("front_underarm").path
    longer = Path.line(old.start, old.end + (old.end - old.start).unit() * 9.0)
    wrist = sleeve.edge("wrist").path
    spoilt = sleeve.with_edges(
        front_underarm=replace(sleeve.edge("front_underarm"), path=longer),
        wrist=replace(sleeve.edge("wrist"), path=Path((Line(longer.end, wrist.end),))),
    )
    found = trued(spoilt, ("front_underarm",), spoilt, ("back_underarm",), hold="start")
    after = walk([found.own], "sleeve.front_underarm", "sleeve.back_underarm")
    assert abs(after.difference) <= 0.1
    assert sums(after) == pytest.approx((180.0, 180.0), abs=0.1)
    found.own.outline  # noqa: B018  the outline still closes


@pytest.mark.parametrize("size", ["W1", "W4", "W10"])
def test_the_blocks_are_true_already(size: str) -> None:
    for block in (bodice_block, darted_bodice_block):
        front, back = (next(p for p in block(workshop_chart()[size]) if p.name == n) for n in ("front", "back"))
        for edge in ("side", "shoulder"):
            found = trued(front, (edge,), back, (edge,), ends="none")
            assert abs(found.difference) < 0.5
            assert sums(walk([front, back], f"front.{edge}", f"back.{edge}"))[0] == pytest.approx(180, abs=3)


def test_too_much_is_not_hidden() -> None:
    with pytest.raises(KitError, match="more than truing should hide"):
        trued(skirt("front", 500, 0, 0), ("side",), skirt("back", 400, 0, 0), ("side",))


def test_a_dart_in_the_way_is_told() -> None:
    a = skirt("front", 410, 0, 0, 0)
    dart = Dart("hem_dart", "hem", Point(172, -300), 4.0, 12.0)
    dart = replace(dart, apex=Point(172.0, -300.0))
    with pytest.raises(KitError, match="no room on the hem"):
        trued(
            replace(a, darts=(dart,)),
            ("side",),
            skirt("back", 410, 20, 30, 0),
            ("side",),
        )


def test_too_sharp_a_corner_named_is_told_and_else_left_to_the_proof() -> None:
    a, b = skirt("front", 400, 0, 160), skirt("back", 400, 0, 160)
    assert trued(a, ("side",), b, ("side",)).own.edge("hem") == a.edge("hem")
    with pytest.raises(KitError, match="too sharp"):
        trued(a, ("side",), b, ("side",), ends="end")


def test_unknown_words_are_told() -> None:
    a, b = skirt("front", 400, 0, 0), skirt("back", 400, 0, 0)
    with pytest.raises(KitError, match="shared 'half'"):
        trued(a, ("side",), b, ("side",), share="third")  # type: ignore[arg-type]
    with pytest.raises(KitError, match="do not say an end"):
        trued(a, ("side",), b, ("side",), hold="middle")  # type: ignore[arg-type]


# ---- the verb ---------------------------------------------------------------------------------------------


def test_a_step_trues_both_pieces_and_shows_old_and_new(tmp_path, monkeypatch) -> None:
    monkeypatch.chdir(tmp_path)
    lesson = Lesson("Trued", start=bodice_block, size="W4")

    @lesson.step("Lower the hems")
    def lower(front, back):
        """Rule the hems."""
        for piece, drop in ((front, 7 * cm), (back, 8 * cm)):
            piece.draw(hem=piece.waist.parallel(drop, "down"), instead_of=piece.hip)
            piece.join(piece.side, piece.hem)
            piece.join(piece.hem, piece.centre)

    @lesson.step("True the side seams")
    def side(front, back):
        """Walk the side seams and true them."""
        assert abs(front.true(front.side, back.side) - 10.3 * mm) < 0.5

    pattern = lesson.work()
    found = walk(pattern, "front.side", "back.side")
    assert abs(found.difference) <= 0.1 and sums(found) == pytest.approx((180.0, 180.0), abs=0.1)
    record = pattern.steps[-1]
    assert {(piece, name) for piece, name, _ in record.new} == {
        (p, e) for p in ("front", "back") for e in ("side", "hem")
    }
    assert {(piece, name) for piece, name, _ in record.removed} == {(p, e) for p, e, _ in record.new}
    assert {spot.name for spot in record.spots} == {"side_taken_off"}


def test_the_verb_tells_which_piece_an_edge_lies_on() -> None:
    front, back = (BenchPiece(skirt(name, 400, 0, 0)) for name in ("front", "back"))
    with pytest.raises(KitError, match="does not lie on this piece"):
        front.true(back.side, front.side)
    with pytest.raises(KitError, match="on which piece"):
        front.true(front.side, "side")
    with pytest.raises(KitError, match="has no unit"):
        front.true(front.side, back.side, ease=3)
    assert isinstance(front.true(front.side, back.side), Length)


def test_a_short_straight_line_beside_the_seam_is_ruled_anew() -> None:
    """A raglan's end at the neck is 2 cm long: too short to bend into its old course, long enough for a ruler."""

    def part(name: str, long: float) -> Piece:
        seam = Path.line(Point(100, 0), Point(100 - long / 5, long))
        top = Path.line(seam.end, Point(seam.end.x - 20, long))
        far = Path.line(top.end, Point(0, 0))
        return Piece(
            name,
            name,
            (
                Edge("hem", Path.line(Point(0, 0), Point(100, 0))),
                Edge("seam", seam),
                Edge("top", top),
                Edge("far", far),
            ),
        )

    own, other = part("own", 200.0), part("other", 215.0)
    found = trued(own, ("seam",), other, ("seam",), share="own", ends="none").own
    assert found.edge("seam").path.length == pytest.approx(other.edge("seam").path.length, abs=1e-6)
    top = found.edge("top").path
    assert top.is_straight and top.end == own.edge("top").path.end
    assert top.start.distance(found.edge("seam").path.end) < 1e-9


def test_lines_on_paper_are_not_added() -> None:
    lesson = Lesson("Added", start=bodice_block, size="W4")

    @lesson.step("Add")
    def add(front, back):  # type: ignore[no-untyped-def]
        front.measure(neck=front.neck + back.neck)

    with pytest.raises(KitError, match=r"not added with \+.*\[front.neck, back.neck\]"):
        lesson.work()
