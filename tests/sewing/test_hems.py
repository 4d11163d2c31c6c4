"""Hems: what each takes, says and refuses, and how its section is built."""

from __future__ import annotations

import math

import pytest

from kit.geometry import Path, Point
from kit.piece.piece import CutPlan, Edge, Piece
from kit.sewing.sections import hems as shapes
from kit.units import cm, mm


@pytest.fixture
def skirt(wrap):
    """Front and back on the fold, 250 wide, hem straight, 40 mm of hem allowance."""

    def panel(name):
        return wrap.polygon(
            name,
            [(0, 0), (250, 0), (250, 600), (0, 600)],
            {"hem": 40, "side": 15, "waist": 10, "centre": 0},
            cut=CutPlan(fold="centre"),
        )

    return panel("front"), panel("back")


def flared(radius: float = 600.0, depth: float = 50.0, inward: bool = False) -> Piece:
    """A quarter circle skirt: the hem bends out with `radius` about the origin (or in, at the top edge)."""
    points = [Point(radius * math.cos(a), -radius * math.sin(a)) for a in (i * math.pi / 32 for i in range(17))]
    small = [Point(p.x / 3, p.y / 3) for p in reversed(points)]
    outer, inner = Path.through(points), Path.through(small)
    edges = (
        Edge("side", Path.line(inner.end, outer.start), 15),
        Edge("hem", outer, depth),
        Edge("centre", Path.line(outer.end, inner.start), 15),
        Edge("waist", inner, depth if inward else 10),
    )
    return Piece("skirt", "Skirt", edges)


def sides(make, front, back, **_):
    make.plain_seam(front.side, back.side, allowance=15 * mm)


def test_a_ring_is_hemmed_once_it_is_one(sewn, skirt):
    ring = lambda make, front, back: make.hem([front.hem, back.hem], first=1 * cm, second=3 * cm, ring=True)  # noqa: E731
    found = sewn(skirt, sides, ring)
    assert found.codes == []
    assert found.said == [
        "Turn the ring inside out and work round it with the free arm of the machine, beginning and ending at a seam.",
        "Turn the hem of the front and back 1 cm (3/8 in) to the wrong side and press.",
        "Turn it again by 3 cm (1 3/16 in) and press; the two turns take 4 cm (1 9/16 in).",
        "Stitch 2 mm (1/16 in) from the inner fold.",
        "Let the row run over its own beginning for a few stitches.",
        "Press the hem.",
    ]
    assert "not_a_ring_yet" in sewn(skirt, ring).codes
    left = lambda make, front, back: make.plain_seam(front.left.side, back.left.side, allowance=15 * mm)  # noqa: E731
    assert "not_a_ring_yet" in sewn(skirt, left, ring).codes


def test_what_is_caught_in_a_hem_hangs_on_the_garment_already(sewn, wrap):
    pieces = (wrap.BACK, wrap.FRONT, wrap.FRONT_FACING, wrap.BACK_FACING)
    attach = lambda make, front, front_facing, **_: make.attach_facing(  # noqa: E731
        front_facing.wrap_neck + front_facing.wrap_edge, front.wrap_neck + front.wrap_edge, allowance=1 * cm
    )
    hem = lambda make, front, front_facing, **_: make.hem(  # noqa: E731
        front.hem, first=1 * cm, second=1 * cm, catching=front_facing.hem
    )
    assert sewn(pieces, attach, hem).codes == []
    assert sewn(pieces, hem, attach).codes == ["caught_loose"]


def test_a_blind_hem_takes_its_depth_and_what_is_turned_under(sewn, skirt):
    blind = lambda make, front, back: make.blind_hem(front.hem, back.hem, depth=4 * cm)  # noqa: E731
    found = sewn(skirt, sides, blind)
    assert found.codes == []
    assert found.last.takes(found.pattern) == {("front", "hem"): 40.0, ("back", "hem"): 40.0}
    assert {closing.how for closing in found.last.closes(found.pattern)} == {"hemmed"}
    assert found.said[:3] == [
        "Finish the raw edge of the hem of the front and back with a zigzag stitch.",
        "Turn the hem of the front and back 4 cm (1 9/16 in) to the wrong side and press.",
        "Baste the hem near its fold, so that it cannot shift.",
    ]
    under = lambda make, front, back: make.blind_hem(  # noqa: E731
        front.hem, back.hem, depth=3 * cm, turn=1 * cm, by="machine"
    )
    found = sewn(skirt, sides, under)
    assert found.last.takes(found.pattern)[("front", "hem")] == 40.0
    assert "Fold the garment back" in found.said[3]
    assert sewn(skirt, lambda make, front, back: make.blind_hem(front.hem, depth=1 * cm)).codes == ["blind_hem_narrow"]


def test_a_wide_hem_on_a_curve_is_eased(sewn):
    """Turned up, the raw edge of a hem of radius R and depth d is longer by 2 d times the angle: a quarter circle and
    50 mm give 2 * 50 * pi / 2 = 157 mm."""
    found = sewn((flared(1200.0),), lambda make, skirt: make.wide_hem(skirt.hem, depth=5 * cm))
    assert found.codes == []
    assert found.last.surplus(found.pattern) == pytest.approx(157.08, abs=0.5)
    assert "it is 15.7 cm (6 3/16 in) longer than the place where it will be sewn" in found.said[0]
    assert "Pull up the ease stitching" in found.said[3]
    tight = sewn((flared(600.0),), lambda make, skirt: make.wide_hem(skirt.hem, depth=5 * cm))
    assert tight.codes == ["wide_hem_full"]
    inward = sewn((flared(900.0, inward=True),), lambda make, skirt: make.wide_hem(skirt.waist, depth=5 * cm))
    assert inward.codes == ["wide_hem_short"]


def test_a_straight_wide_hem_is_not_eased_and_may_be_taped(sewn, skirt):
    found = sewn(skirt, sides, lambda make, front, back: make.wide_hem(front.hem, back.hem, depth=4 * cm, tape=True))
    assert found.codes == []
    assert found.said[0] == (
        "Lay hem tape on the right side of the raw edge, half of its width over it, and stitch it close to its edge."
    )
    assert found.last.notions == ("thread", "hem_tape")
    assert found.last.notion_amounts(found.pattern) == {"hem_tape": (1000.0, "length")}
    assert not any("ease" in line for line in found.said)


def test_a_faced_hem(sewn, skirt, wrap):
    facing = wrap.polygon(
        "hem_facing",
        [(0, 0), (250, 0), (250, 60), (0, 60)],
        {"hem": 10, "side": 15, "upper": 6, "centre": 0},
        cut=CutPlan(fold="centre"),
    )
    pieces = (skirt[0], facing)
    write = lambda make, front, hem_facing: make.faced_hem(  # noqa: E731
        hem_facing.hem, front.hem, allowance=10 * mm, free=hem_facing.upper, turn=6 * mm
    )
    found = sewn(pieces, write)
    assert found.codes == []
    assert found.last.takes(found.pattern) == {
        ("hem_facing", "hem"): 10.0,
        ("front", "hem"): 10.0,
        ("hem_facing", "upper"): 6.0,
    }
    assert {(c.span.piece, c.span.edge, c.how) for c in found.last.closes(found.pattern)} == {
        ("hem_facing", "hem", "sewn"),
        ("front", "hem", "faced"),
        ("hem_facing", "upper", "hemmed"),
    }
    assert found.said[:2] == [
        "Turn the free edge of the facing under by 6 mm (1/4 in) and press.",
        "Pin the hem facing to the hem of the front, right sides together.",
    ]
    assert found.said[-1] == "Sew it down by hand with loose blind stitches."
    raw = lambda make, front, hem_facing: make.faced_hem(  # noqa: E731
        hem_facing.hem, front.hem, allowance=10 * mm, free=hem_facing.upper
    )
    assert sewn(pieces, raw).codes == ["free_edge_raw"]
    finish = lambda make, front, hem_facing: make.edge_finish(hem_facing.upper, leave=True)  # noqa: E731
    assert sewn(pieces, finish, raw).codes == []


def test_a_hem_turned_once_may_keep_its_raw_edge(sewn, skirt):
    found = sewn(skirt, lambda make, front, back: make.hem(front.hem, first=4 * cm, finish="none"))
    assert found.said[0].startswith("Turn the hem of the front 4 cm")


def test_a_rolled_hem(sewn, skirt):
    found = sewn(skirt, lambda make, front, back: make.rolled_hem(front.hem, turn=6 * mm))
    assert found.codes == [] and found.last.takes(found.pattern) == {("front", "hem"): 6.0}
    assert found.said[0] == "Stitch a fine row 4 mm (1/8 in) from the hem of the front as cut."
    assert sewn(skirt, lambda make, front, back: make.rolled_hem(front.hem, turn=12 * mm)).codes == ["rolled_hem_wide"]


def test_hems_cross_seams_only_once_they_are_pressed(sewn, skirt):
    later = lambda make, front, back: make.plain_seam(front.side, back.side, allowance=15 * mm, press="later")  # noqa: E731
    for write in (
        lambda make, front, back: make.blind_hem(front.hem, depth=4 * cm),
        lambda make, front, back: make.wide_hem(front.hem, depth=4 * cm),
        lambda make, front, back: make.rolled_hem(front.hem, turn=6 * mm),
    ):
        assert set(sewn(skirt, later, write).codes) == {"not_pressed"}


# name: (section, cut edges, of these shut in), worked by hand from textbook diagrams (common practice, no source)
BY_HAND = {
    "blind, turned once": (shapes.blind(False), 1, 0),
    "blind, turned twice": (shapes.blind(True), 1, 1),
    "taped": (shapes.taped(), 1, 1),
    "rolled": (shapes.rolled(), 1, 1),
    "faced": (shapes.faced_down(), 3, 3),
}


@pytest.mark.parametrize("name", BY_HAND)
def test_cut_edges_shut_in(name):
    found, raw, enclosed = BY_HAND[name]
    assert (found.raw_edges, found.enclosed) == (raw, enclosed)


def test_what_the_rows_go_through():
    assert shapes.blind(False).through(0) == ("main", "main")
    assert shapes.blind(True).through(0) == ("main", "main")  # garment and the turned edge, not the outer hem
    assert shapes.taped().through(0) == ("hem", "tape")  # the first row lies in the hem alone
    assert shapes.faced_down().through(0) == ("garment", "facing")  # the two allowances
    assert shapes.faced_down().through(1) == ("garment", "facing", "facing")
    assert [ply.folds for ply in shapes.rolled().plies] == [2]
