"""Rows that are sewn on both halves: what is open on one of them alone, and what a seam has made one row."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.piece.piece import CutPlan
from kit.sewing.in_work import shown_scenes
from kit.units import cm, mm


@pytest.fixture(scope="module")
def legs(garments):
    """Two pieces cut as pairs, side to side and centre to centre."""
    corners = [(0, 0), (150, 0), (150, -300), (0, -300)]
    edges = {"top": 40, "side": 15, "hem": 40, "centre": 15}
    front = garments.polygon("front", corners, edges, cut=CutPlan(2, mirrored=True))
    return front, replace(front, name="back", title="Back")


def _sides(make, front, back):
    make.plain_seam(front.side, back.side, allowance=15 * mm)


def _ring(make, front, back):
    """Left and right one tube."""
    _sides(make, front, back)
    make.plain_seam(front.left.centre, front.right.centre, allowance=15 * mm)
    make.plain_seam(back.left.centre, back.right.centre, allowance=15 * mm)


def _legs(make, front, back):
    """Left and right a tube each."""
    _sides(make, front, back)
    make.plain_seam(front.centre, back.centre, allowance=15 * mm)


def _closing(found) -> str:
    return found.last.sentences(found.pattern)[-1].key


@pytest.mark.parametrize("half", ["left", "right"])
@pytest.mark.parametrize("verb", ["plain_seam", "french_seam", "seam_to_turn"])
def test_what_is_named_on_one_half_is_open_there_alone(sewn, legs, verb, half):
    """Until now the seam stayed open on both halves, and both were told to be sewn alike."""

    def write(make, front, back):
        stretch = getattr(front, half).side.between(5 * cm, 12 * cm)
        if verb == "plain_seam":
            make.plain_seam(front.side, back.side, allowance=15 * mm, gap=stretch)
        elif verb == "french_seam":
            make.french_seam(front.side, back.side, first=8 * mm, second=7 * mm, opening=stretch)
        else:
            make.seam_to_turn(front.side, back.side, allowance=15 * mm, gap=stretch)

    found = sewn(legs, write)
    assert found.codes == []
    assert _closing(found) == f"both_sides_open_{half}"
    other = "right" if half == "left" else "left"
    for piece in ("front", "back"):
        sewn_on = {side: sum(j.length for j in _joined(found, piece, side)) for side in (half, other)}
        assert sewn_on[half] == pytest.approx(230, abs=0.5) and sewn_on[other] == pytest.approx(300, abs=0.5)
    shown = found.last.scenes(found.pattern)[0]
    assert shown.rows[0].run.side == half and shown.rows[0].gap is not None


def _joined(found, piece: str, side: str):
    return [done.span for done in found.state.on((piece, side, "side")) if done.how == "sewn"]


def test_what_is_named_on_both_halves_is_open_on_both(sewn, legs):
    def write(make, front, back):
        make.plain_seam(front.side, back.side, allowance=15 * mm, gap=front.side.between(5 * cm, 12 * cm))

    assert _closing(sewn(legs, write)) == "both_sides"


def test_a_seam_of_one_half_with_a_gap_is_one_row(sewn, legs):
    def write(make, front, back):
        stretch = front.left.side.between(5 * cm, 12 * cm)
        make.plain_seam(front.left.side, back.left.side, allowance=15 * mm, gap=stretch)

    assert not _closing(sewn(legs, write)).startswith("both")


@pytest.mark.parametrize(
    ("before", "left", "closing"),
    [
        (_ring, None, ""),
        (_ring, "left", ""),
        (_legs, None, "both_sides"),
        (_legs, "left", "both_sides_open_left"),
        (_legs, "right", "both_sides_open_right"),
    ],
)
def test_a_casing_is_one_row_where_seams_join_its_halves(sewn, legs, before, left, closing):
    def write(make, front, back):
        before(make, front, back)
        gap = {"gap": getattr(back, left).top.between(4 * cm, 9 * cm)} if left else {}
        make.casing(front.top, back.top, first=1 * cm, depth=3 * cm, **gap)

    found = sewn(legs, write)
    told = _closing(found)
    assert told == closing or (not closing and not told.startswith("both"))
    if left:
        (scene,) = shown_scenes(found.pattern, found.last)
        assert (scene.focus.piece, scene.focus.side) == ("back", left)
        assert scene.rows[0].gap == pytest.approx((40.0, 90.0))


@pytest.mark.parametrize(("before", "both"), [(_ring, False), (_legs, True)])
def test_a_hem_is_one_row_where_seams_join_its_halves(sewn, legs, before, both):
    def write(make, front, back):
        before(make, front, back)
        make.hem(front.hem, back.hem, first=1 * cm, second=3 * cm)

    assert (_closing(sewn(legs, write)) == "both_sides") is both
