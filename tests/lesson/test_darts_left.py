"""An edge drawn again with a dart in it: the dart stays where it lies on the paper. What is compared is the block's own
dart, whose legs are equally long; a wrap skirt carries its waist past the centre and so begins it elsewhere."""

from __future__ import annotations

import pytest

from kit import Lesson, cm, skirt_block
from kit.piece.dart import mouth, sewn_length


def skirt(*, carried: bool) -> Lesson:
    lesson = Lesson("Wrap skirt", start=skirt_block, size="W4")

    @lesson.step("Carry the waist past the centre")
    def over(front):  # type: ignore[no-untyped-def]
        if not carried:
            return
        low, top = sorted((front.centre.start, front.centre.end), key=lambda point: point.y)
        corner = top.into(15 * cm)
        hem = front.hem.joined(low.ruled("in", 15 * cm))
        waist = corner.to(top).joined(front.waist)
        front.draw(hem=hem, edge=hem.end.to(corner), waist=waist, instead_of=(front.hem, front.centre, front.waist))

    return lesson


def test_a_dart_stays_where_it_lies_when_its_edge_begins_elsewhere() -> None:
    before = skirt(carried=False).work().piece("front")
    after = skirt(carried=True).work().piece("front")
    assert len(before.darts) == len(after.darts) > 0
    for old, new in zip(before.darts, after.darts, strict=True):
        assert (new.start, new.end) == pytest.approx((old.start + 150.0, old.end + 150.0), abs=1e-3)
        for was, lies in zip(mouth(before, old), mouth(after, new), strict=True):
            assert was.distance(lies) < 1e-6
    assert sewn_length(after, "waist") == pytest.approx(sewn_length(before, "waist") + 150.0, abs=1e-3)


def test_a_dart_that_its_edge_has_left_keeps_its_distance() -> None:
    lesson = Lesson("Lower waist", start=skirt_block, size="W4")

    @lesson.step("Lower the waist")
    def lower(front):  # type: ignore[no-untyped-def]
        front.waist = front.centre_waist.curve_to(front.side.start, fullness=1.3)

    before, after = skirt(carried=False).work().piece("front"), lesson.work().piece("front")
    assert [(dart.start, dart.end) for dart in after.darts] == [(dart.start, dart.end) for dart in before.darts]
