"""Edge finishes, rows on closed edges, scissors on allowances, tacking."""

from __future__ import annotations

import math

import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.piece.piece import Edge, Piece
from kit.sewing.operations.trimming import bend
from kit.sewing.run import Run
from kit.sewing.sections import finishes as shapes
from kit.units import cm, mm


@pytest.fixture
def pair(wrap):
    def panel(name):
        return wrap.polygon(
            name, [(0, 0), (200, 0), (200, 300), (0, 300)], {"hem": 30, "side": 15, "top": 10, "centre": 15}
        )

    return panel("front"), panel("back")


def disc(name: str) -> Piece:
    """A half ring: its outer edge bends out of it, its inner edge into it."""

    def arc(radius, back=False):
        angles = [i * math.pi / 16 for i in range(17)]
        return Path.through(
            [Point(radius * math.cos(a), radius * math.sin(a)) for a in (reversed(angles) if back else angles)]
        )

    outer, hole = arc(200.0), arc(80.0, back=True)
    return Piece(
        name,
        name.capitalize(),
        (
            Edge("outer", outer, 10),
            Edge("left", Path.line(outer.end, hole.start), 10),
            Edge("neck", hole, 10),
            Edge("right", Path.line(hole.end, outer.start), 10),
        ),
    )


def side(make, front, back):
    make.plain_seam(front.side, back.side, allowance=15 * mm)


def test_a_raw_edge_is_finished_while_it_can_be_reached(sewn, pair):
    finish = lambda make, front, back: make.edge_finish(front.side)  # noqa: E731
    french = lambda make, front, back: make.french_seam(front.side, back.side, first=9 * mm, second=6 * mm)  # noqa: E731
    assert sewn(pair, side, finish).codes == []
    assert sewn(pair, finish, side).codes == []
    assert sewn(pair, french, finish).codes == ["finished_late"]
    hem = lambda make, front, back: make.hem(front.hem, first=1 * cm, second=2 * cm)  # noqa: E731
    assert sewn(pair, hem, lambda make, front, back: make.edge_finish(front.hem)).codes == ["finished_late"]


def test_an_edgestitch_is_a_row_very_close_to_the_edge(sewn, pair):
    edge = lambda make, front, back: make.edgestitch(front.side)  # noqa: E731
    found = sewn(pair, side, edge)
    assert found.codes == []
    assert found.said == ["Edgestitch along the side seam of the front from the right side, 2 mm (1/16 in) from it."]
    assert sewn(pair, edge).codes == ["edge_still_raw"]
    with pytest.raises(KitError, match="wider than"):
        sewn(pair, lambda make, front, back: make.edgestitch(front.side, distance=1 * cm))


def test_a_seam_is_topstitched_once_pressed(sewn, pair):
    later = lambda make, front, back: make.plain_seam(front.side, back.side, allowance=15 * mm, press="later")  # noqa: E731
    top = lambda make, front, back: make.topstitch(back.side)  # noqa: E731
    press = lambda make, front, back: make.press(front.side)  # noqa: E731
    assert sewn(pair, later, top).codes == ["topstitched_unpressed"]
    assert sewn(pair, later, press, top).codes == []


@pytest.mark.parametrize("verb", ["clip", "notch_curve", "trim", "grade"])
def test_allowances_are_cut_after_the_seam_and_before_they_are_shut_in(sewn, pair, verb):
    more = {"to": 8 * mm} if verb == "trim" else {}
    cut = lambda make, front, back: getattr(make, verb)(front.side, **more)  # noqa: E731
    french = lambda make, front, back: make.french_seam(front.side, back.side, first=9 * mm, second=6 * mm)  # noqa: E731
    found = sewn(pair, side, cut)
    assert found.codes == []
    assert found.last.closes(found.pattern) == () and found.last.takes(found.pattern) == {}
    assert f"{verb}_early" in sewn(pair, cut, side).codes
    assert sewn(pair, french, cut).codes == [f"{verb}_late"]


def test_inward_curves_are_clipped_and_outward_ones_notched(sewn):
    """Common practice, no source."""
    pieces = (disc("upper"), disc("under"))

    def ring(make, upper, under):
        make.plain_seam(upper.outer, under.outer, allowance=10 * mm)
        make.plain_seam(upper.neck, under.neck, allowance=10 * mm)

    found = sewn(pieces, ring)
    assert bend(found.pattern, Run("upper", ("outer",))) == "out"
    assert bend(found.pattern, Run("upper", ("neck",))) == "in"
    assert bend(found.pattern, Run("upper", ("left",))) == "straight"
    assert sewn(pieces, ring, lambda make, upper, under: make.clip(upper.neck)).codes == []
    assert sewn(pieces, ring, lambda make, upper, under: make.clip(upper.outer)).codes == ["clipped_outward_curve"]
    assert sewn(pieces, ring, lambda make, upper, under: make.notch_curve(upper.outer)).codes == []
    assert sewn(pieces, ring, lambda make, upper, under: make.notch_curve(upper.neck)).codes == ["notched_inward_curve"]


def test_trimming_leaves_enough_and_takes_something(sewn, pair):
    trim = lambda to: lambda make, front, back: make.trim(front.side, to=to)  # noqa: E731
    assert sewn(pair, side, trim(6 * mm)).said == [
        "Trim the allowances along the side seam of the front to 6 mm (1/4 in)."
    ]
    assert sewn(pair, side, trim(1 * mm)).codes == ["trimmed_away"]
    assert sewn(pair, side, trim(15 * mm)).codes == ["nothing_to_trim"]


def test_grading_needs_two_allowances(sewn, pair):
    grade = lambda make, front, back: make.grade(front.side)  # noqa: E731
    hem = lambda make, front, back: make.hem(front.side, first=15 * mm)  # noqa: E731
    found = sewn(pair, side, grade)
    assert found.said[0].endswith(
        "trim this allowance to 4 mm (1/8 in) and leave the one nearer the outside 7 mm (1/4 in) wide."
    )
    assert sewn(pair, hem, grade).codes == ["one_layer_graded"]
    with pytest.raises(KitError, match="is not wider than"):
        sewn(pair, lambda make, front, back: make.grade(front.side, to=5 * mm, wider=5 * mm))


def test_a_facing_is_tacked_to_the_seams_it_crosses(sewn, wrap):
    pieces = (wrap.BACK, wrap.FRONT, wrap.FRONT_FACING, wrap.BACK_FACING)
    shoulders = lambda make, front, back, **_: make.plain_seam(front.overarm, back.overarm, allowance=1 * cm)  # noqa: E731
    attach = lambda make, back, back_facing, **_: make.attach_facing(  # noqa: E731
        back_facing.neck, back.neck, allowance=1 * cm
    )
    finish = lambda make, back_facing, **_: make.edge_finish(back_facing.outer, leave=True)  # noqa: E731
    tack = lambda make, front, back_facing, **_: make.tack_down(back_facing.outer, to=front.overarm)  # noqa: E731
    found = sewn(pieces, finish, shoulders, attach, tack)
    assert found.codes == []
    assert found.said[0] == (
        "Tack the outer edge of the back facing to the allowances of the overarm of the front with a few hand stitches "
        "that do not go through to the right side."
    )
    assert sewn(pieces, shoulders, attach, tack).codes == ["tacked_raw"]
    assert sewn(pieces, finish, attach, tack).codes == ["tacked_to_no_seam"]
    assert set(sewn(pieces, finish, shoulders, tack).codes) == {"tacked_loose"}


def test_sections_by_hand():
    graded = shapes.graded()
    assert graded.at(3.0) == ("wider",) and graded.at(1.0) == ("wider", "narrower")
    assert graded.through(0) == ("wider", "narrower") and graded.raw_edges == 2
    assert shapes.tacked().through(0) == ("other", "facing")  # the allowance, not the garment under it
