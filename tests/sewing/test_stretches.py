"""Facts of a part of an edge: what was done to one half of it is not true of the other.

Facts of the trade are common practice, no source.
"""

from __future__ import annotations

import pytest

from kit.piece.piece import CutPlan, Mark
from kit.proof import prove
from kit.proof.edges import raw_edges
from kit.sewing.stretches import Stretch, holds, of_stretch, parted, touches, without
from kit.units import cm, mm

WHOLE = ("clip", "front", "left", "neck")


def part(start: float, end: float):
    return of_stretch(WHOLE, Stretch(start, end, 120.0))


# ---- what a stretch is --------------------------------------------------------------------------------------------


def test_a_stretch_is_written_at_the_end_and_read_back():
    assert part(0.2, 119.8) == WHOLE and parted(WHOLE) == (WHOLE, None)
    assert parted(part(12.0, 57.3)) == (WHOLE, Stretch(12.0, 57.3, 120.0))


@pytest.mark.parametrize(
    ("known", "asked", "all_of_it", "any_of_it"),
    [
        ([WHOLE], part(10, 20), True, True),
        ([part(0, 60)], part(10, 20), True, True),
        ([part(0, 60)], part(60, 120), False, False),
        ([part(0, 60)], part(50, 70), False, True),
        ([part(0, 60)], WHOLE, False, True),
        ([part(0, 60), part(60, 120)], WHOLE, True, True),
        ([part(0, 70), part(40, 120)], WHOLE, True, True),
        ([part(0, 50), part(60, 120)], WHOLE, False, True),
        ([part(0, 60)], ("clip", "front", "right", "neck"), False, False),
        ([], WHOLE, False, False),
    ],
)
def test_what_holds_of_all_and_what_of_any(known, asked, all_of_it, any_of_it):
    facts = frozenset(known)
    assert (holds(facts, asked), touches(facts, asked)) == (all_of_it, any_of_it)


@pytest.mark.parametrize(
    ("known", "gone", "left"),
    [
        ([WHOLE], part(40, 80), {part(0, 40), part(80, 120)}),
        ([part(0, 60)], part(40, 80), {part(0, 40)}),
        ([part(0, 60)], WHOLE, set()),
        ([WHOLE], WHOLE, set()),
        ([part(0, 60)], part(60, 90), {part(0, 60)}),
    ],
)
def test_what_is_taken_back_leaves_what_lies_beside(known, gone, left):
    assert without(frozenset(known), [gone]) == left


# ---- what follows for the sewing ------------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def vest(garments):
    """Front and back on the fold, their sides 400 mm long with a slit of 10 cm at the hem."""

    def half(name):
        return garments.polygon(
            name,
            [(0, 0), (70, 20), (150, 0), (150, -400), (0, -400)],
            {"neck": 10, "shoulder": 15, "side": 15, "hem": 20, "centre": 0},
            cut=CutPlan(fold="centre"),
            marks=(Mark("slit", "opening", edge="side", start=300, end=400, said="slit"),),
        )

    return half("front"), half("back")


def halves(edge):
    return edge.before(20 * cm), edge.after(20 * cm)


def test_clips_of_one_half_are_not_those_of_the_other(sewn, vest):
    """A straight band wants the curve staystitched where it is clipped."""

    def stay(make, front, back):
        make.staystitch(front.neck.before(4 * cm))

    def seam(make, front, back):
        make.plain_seam(front.side, back.side, allowance=15 * mm)

    def clip(make, front, back):
        make.clip(halves(front.side)[0])

    state = sewn(vest, stay, seam, clip).state
    upper, lower = "@0.00:200.00/400.00", "@200.00:400.00/400.00"
    assert state.holds(("clip", "front", "left", "side", upper))
    assert not state.touches(("clip", "front", "left", "side", lower))
    assert not state.holds(("staystitched", "front", "left", "neck"))
    assert state.touches(("staystitched", "front", "left", "neck"))


def test_a_hem_on_a_part_leaves_the_rest_raw_and_within_reach(sewn, vest):
    def slit(make, front, back):
        make.hem(front.side.after(30 * cm), first=6 * mm, second=9 * mm)
        make.hem(back.side.after(30 * cm), first=6 * mm, second=9 * mm)

    def seam(make, front, back):
        make.plain_seam(front.side.before(30 * cm), back.side.before(30 * cm), allowance=15 * mm)

    def trim(make, front, back):
        make.trim(front.side.before(30 * cm), to=6 * mm)

    def trim_hem(make, front, back):
        make.trim(front.side.after(25 * cm), to=6 * mm)

    found = sewn(vest, slit)
    left = [each for each in raw_edges(found.pattern, found.state) if each.edge == "side"]
    assert left and all(each.amount == pytest.approx(300.0) for each in left)
    assert sewn(vest, slit, seam, trim).codes == []
    assert sewn(vest, slit, seam, trim_hem).codes == ["trim_late"]


def test_a_half_that_is_pressed_open_may_lie_beside_one_that_is_shut_in(sewn, vest):
    def seams(make, front, back):
        make.french_seam(*(halves(each.side)[1] for each in (front, back)), first=8 * mm, second=7 * mm)
        make.plain_seam(*(halves(each.side)[0] for each in (front, back)), allowance=15 * mm, press="later")

    def upper(make, front, back):
        make.press(halves(front.side)[0], way="open")

    def lower(make, front, back):
        make.press(halves(front.side)[1], way="open")

    assert sewn(vest, seams, upper).codes == []
    assert sewn(vest, seams, lower).codes == ["pressed_open_shut_in"]


def test_basting_taken_out_of_one_half_stays_in_the_other(sewn, vest):
    def baste(make, front, back):
        make.baste(front.side, distance=0 * mm)

    def fit(make, front, back):
        make.try_on()

    def out(number):
        return lambda make, front, back: make.remove_basting(halves(front.side)[number])

    def never_used(*steps):
        found = sewn(vest, baste, fit, *steps)
        assert found.codes == []
        return [each.code for each in prove(found.pattern) if each.code == "never_used"]

    assert never_used(out(0)) == ["never_used"]
    assert never_used(out(0), out(1)) == []
    assert sewn(vest, baste, fit, out(0), out(0)).codes == ["not_basted"]


def test_gathers_along_one_half_do_not_wait_in_the_other(sewn, vest):
    def gather(make, front, back):
        make.gather(halves(front.side)[0], to=15 * cm)

    def seam(number):
        return lambda make, front, back: make.plain_seam(
            halves(front.side)[number], halves(back.side)[number], allowance=15 * mm
        )

    assert sewn(vest, gather, seam(1)).codes == []
    assert sewn(vest, gather, seam(0)).codes == ["gathers_not_taken_up"]


def test_interfacing_seamed_to_a_part_and_a_seam_left_half_sewn(sewn, vest):
    """A tie is caught by a seam that is still to come where it lies, not by one that is left elsewhere."""

    def first(make, front, back):
        make.french_seam(*(halves(each.side)[1] for each in (front, back)), first=8 * mm, second=7 * mm, rows="first")

    state = sewn(vest, first).state
    assert state.holds(("half_sewn", "front", "left", "side", "@200.00:400.00/400.00"))
    assert not state.touches(("half_sewn", "front", "left", "side", "@0.00:200.00/400.00"))


def test_a_row_may_cross_the_end_of_a_seam_that_is_left_at_its_other_end(sewn, vest):
    """A French seam begun below the armhole does not wait where the hem crosses; at that corner it does."""

    def first(number):
        def write(make, front, back):
            make.french_seam(
                *(halves(each.side)[number] for each in (front, back)), first=8 * mm, second=7 * mm, rows="first"
            )

        return write

    def hem(make, front, back):
        make.hem(front.hem, first=10 * mm, second=10 * mm)

    assert "half_sewn" not in sewn(vest, first(0), hem).codes
    assert "half_sewn" in sewn(vest, first(1), hem).codes
