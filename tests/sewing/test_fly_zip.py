"""The fly: what must be sewn before, what must be wide and long enough, its curve and its section.

Its order and measures are common practice, no source."""

from __future__ import annotations

from itertools import pairwise

import pytest

from kit.errors import KitError
from kit.piece.piece import CutPlan, Mark
from kit.proof import prove
from kit.sewing.order import sew
from kit.sewing.sections import closures as shapes
from kit.units import cm, mm

LONG = 190.0


def pieces(garments, wide=50.0, facing=LONG, shield=LONG):
    """Trouser fronts with the opening at the upper end of the crotch edge, straight for counting by hand."""
    front = garments.polygon(
        "front",
        [(0, 0), (180, 0), (180, 300), (0, 300)],
        {"inseam": 15, "side": 15, "waist": 10, "crotch": 15},
        cut=garments.PAIR,
        marks=(Mark("fly", "opening", edge="crotch", start=0, end=LONG, said="fly opening"),),
    )
    return (
        front,
        garments.rectangle(
            "fly_facing", wide, facing, {"lower": 6, "outer": 6, "upper": 10, "edge": 15}, cut=CutPlan()
        ),
        garments.rectangle("fly_shield", 80, shield, {"lower": 6, "outer": 15, "upper": 10, "edge": 15}, cut=CutPlan()),
    )


def crotch(make, front, **_):
    below = [each.crotch.between(19 * cm, 30 * cm) for each in (front.left, front.right)]
    make.plain_seam(*below, allowance=1.5 * cm)


def lower_end(make, fly_shield, **_):
    make.narrow_hem(fly_shield.lower)


def waist(make, front, **_):
    make.narrow_hem(front.waist)


def fly(lap=35 * mm, length=18 * cm, over="left", shield=True, allowance=1.5 * cm):
    def write(make, front, fly_facing, fly_shield):
        under = "right" if over == "left" else "left"
        make.fly_zip(
            getattr(front, over).fly,
            getattr(front, under).fly,
            facing=fly_facing.edge,
            shield=fly_shield.edge if shield else None,
            allowance=allowance,
            length=length,
            lap=lap,
        )

    return write


def test_in_its_order_it_is_sewn(garments, sewn):
    assert sewn(pieces(garments), crotch, lower_end, fly(), waist).codes == []
    assert sewn(pieces(garments), crotch, fly(shield=False), waist).codes == []


@pytest.mark.parametrize(
    ("writes", "found"),
    [
        ((fly(shield=False), crotch), "seam_below_zip"),
        ((crotch, waist, fly(shield=False)), "zip_late"),
        ((crotch, fly(), lower_end), "fly_shield_open"),
        ((crotch, fly(shield=False), fly(shield=False)), "closed_twice"),
    ],
)
def test_out_of_its_order_it_is_refused(garments, sewn, writes, found):
    assert found in sewn(pieces(garments), *writes).codes


def test_left_out_its_edges_stay_raw(garments, sewn):
    def raw(*writes):
        return {(f.piece, f.edge) for f in prove(sewn(pieces(garments), *writes).pattern) if f.code == "raw_edge"}

    edges = {("front", "crotch"), ("fly_facing", "edge"), ("fly_shield", "edge")}
    assert not raw(crotch, lower_end, fly()) & edges
    assert raw(crotch, lower_end) >= {("front", "crotch")}


@pytest.mark.parametrize(
    ("wide", "found"), [(50, []), (40, []), (39, ["fly_facing_narrow"]), (30, ["fly_facing_narrow"])]
)
def test_the_curve_catches_the_facing(garments, sewn, wide, found):
    """A curve 35 mm from the edge and 5 mm of facing beyond it: 40 mm."""
    assert sewn(pieces(garments, wide=wide), crotch, fly(shield=False)).codes == found


@pytest.mark.parametrize(
    ("facing", "shield", "found"),
    [
        (190, 210, []),
        (185, 190, ["fly_facing_length"]),
        (215, 190, ["fly_facing_length"]),
        (160, 160, ["fly_facing_length"] * 2),
    ],
)
def test_facing_and_shield_are_as_long_as_the_opening(garments, sewn, facing, shield, found):
    assert sewn(pieces(garments, facing=facing, shield=shield), crotch, lower_end, fly()).codes == found


def test_a_zip_stops_above_the_end_of_the_opening(garments, sewn):
    assert sewn(pieces(garments), crotch, fly(shield=False, length=20 * cm)).codes == ["zip_long"]
    assert sewn(pieces(garments), crotch, fly(shield=False, length=17 * cm)).codes == ["zip_short"]


def test_the_author_says_which_side_laps(garments, sewn):
    left = sewn(pieces(garments), crotch, fly(over="left", shield=False)).said
    right = sewn(pieces(garments), crotch, fly(over="right", shield=False)).said
    lap = next(line for line in left if line.startswith("Lap"))
    assert "left front" in lap and "right front" in next(line for line in right if line.startswith("Lap"))


def test_what_is_said_in_order(garments, sewn):
    said = sewn(pieces(garments), crotch, lower_end, fly()).said
    order = (
        "Pin",
        "Press",
        "Lay the fold of",
        "underneath",
        "zip foot",
        "Lap",
        "out of the way",
        "to the facing alone",
    )
    order += ("chalk the curve", "bar across", "second bar")
    assert [word for word, line in zip(order, said, strict=True) if word not in line] == []
    assert len(sewn(pieces(garments), crotch, fly(shield=False)).said) == len(said) - 3


def test_the_curve_runs_beside_the_edge_and_rounds_to_the_seam(garments, sewn):
    done = sewn(pieces(garments), crotch, fly(shield=False))
    path = done.last.curve(done.pattern)
    # The crotch edge runs down x = 0 from the waist at y = 300; the opening ends at y = 110.
    assert (path.start.x, path.start.y) == pytest.approx((35.0, 300.0))
    assert (path.end.x, path.end.y) == pytest.approx((0.0, 110.0))
    assert path.at(100).x == pytest.approx(35.0)
    xs = [path.at(path.length * n / 50).x for n in range(51)]
    assert all(b <= a + 1e-6 for a, b in pairwise(xs))


def test_facing_and_shield_are_pieces_of_their_own(garments, sewn):
    def same(make, front, fly_facing, **_):
        make.fly_zip(front.left.fly, front.right.fly, facing=front.left.side, allowance=1.5 * cm, length=18 * cm)

    def twice(make, front, fly_facing, **_):
        make.fly_zip(
            front.left.fly,
            front.right.fly,
            facing=fly_facing.edge,
            shield=fly_facing.outer,
            allowance=1.5 * cm,
            length=18 * cm,
        )

    for write in (same, twice):
        with pytest.raises(KitError, match="no piece of its own"):
            sewn(pieces(garments), crotch, write)


def test_the_curve_holds_the_lap_and_not_the_zip():
    """Counts worked by hand."""
    with_shield, without = shapes.zip_fly(True), shapes.zip_fly()
    assert with_shield.through(0) == ("shield", "shield", "zip", "under", "under")
    assert without.through(0) == ("zip", "under", "under")
    for section in (with_shield, without):
        assert section.through(1) == ("zip", "facing")
        assert section.through(2) == ("facing", "over")
    assert without.at(2.0) == ("zip", "under", "under", "facing", "facing", "over", "over")


def test_the_state_knows_it_as_a_zip(garments, sewn):
    done = sewn(pieces(garments), crotch, fly(shield=False))
    state, _ = sew(done.pattern)
    zipped = {fact[:4] for fact in state.facts}
    assert ("zip_in", "front", "left", "crotch") in zipped and not state.holds(("zip_in", "front", "left", "crotch"))
    assert done.last.takes(done.pattern)[("fly_facing", "edge")] == 15.0
    assert [(s.side, s.start, s.end) for s in done.last.opens(done.pattern)] == [("left", 0, LONG), ("right", 0, LONG)]
