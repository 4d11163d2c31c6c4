"""Notches in pairs, marks carried over, drill marks, buttonholes and placements, as a step writes them."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from kit.blocks.darted_bodice import darted_bodice_block
from kit.blocks.sleeve import with_sleeve
from kit.body.chart import workshop_chart
from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson.bench import BenchPiece, opened
from kit.lesson.match_verbs import level
from kit.lesson.place_verbs import TOWARD_EDGE
from kit.piece.piece import CutPlan, Edge, Mark, Piece
from kit.sewing.seam_walk import walk
from kit.units import Length, cm, inch, mm


def rectangle(name: str, wide: float, high: float, x: float = 0.0) -> Piece:
    """Corners from the top left round by the right; the side is its right edge."""
    a, b, c, d = Point(x, high), Point(x + wide, high), Point(x + wide, 0), Point(x, 0)
    names = zip(("top", "side", "hem", "centre"), ((a, b), (b, c), (c, d), (d, a)), strict=True)
    return Piece(name, name.capitalize(), tuple(Edge(n, Path.line(p, q)) for n, (p, q) in names))


@pytest.fixture
def front() -> BenchPiece:
    return BenchPiece(rectangle("front", 200, 400))


@pytest.fixture
def back() -> BenchPiece:
    return BenchPiece(rectangle("back", 200, 400))


@pytest.fixture
def bodice() -> dict[str, BenchPiece]:
    return {p.name: BenchPiece(p) for p in with_sleeve(darted_bodice_block)(workshop_chart()["W4"])}


def told(bench: BenchPiece, edge: str = "side") -> list[tuple[float, str]]:
    return [(round(n.distance, 3), n.kind) for n in bench.freeze().notches if n.edge == edge]


# ---- pairs ------------------------------------------------------------------------------------------------


def test_one_call_notches_both_edges_single_and_double(front, back) -> None:
    """Single for the front, double for the back (common practice, no source)."""
    front.match(front.side, back.side, at=[8 * cm, 20 * cm])
    assert told(front) == [(80, "single"), (200, "single")]
    assert told(back) == [(80, "double"), (200, "double")]
    assert [n.name for n in front.freeze().notches] == [n.name for n in back.freeze().notches]


@pytest.mark.parametrize(("double", "kinds"), [("own", ("double", "single")), ("neither", ("single", "single"))])
def test_the_doubles_go_where_they_are_said(front, back, double, kinds) -> None:
    front.match(front.side, back.side, at=8 * cm, double=double)
    assert (told(front)[0][1], told(back)[0][1]) == kinds


def test_they_are_measured_from_the_ends_that_meet(front) -> None:
    """The other edge runs the other way round its piece, and the pieces lie beside each other."""
    beside = BenchPiece(rectangle("back", 200, 400, x=200))
    front.match(front.side, beside.centre, at=8 * cm)
    assert told(front) == [(80, "single")] and told(beside, "centre") == [(320, "double")]
    front.match(front.side, beside.centre, at=3 * cm, measured_from="end")
    assert told(front)[-1] == (370, "single") and told(beside, "centre")[-1] == (30, "double")
    front.match(front.side, beside.centre, at=15 * cm, turned=False)
    assert told(beside, "centre")[-1] == (150, "double")


def test_ease_lies_between_the_notches_that_are_given_both_ways(bodice) -> None:
    front, sleeve = bodice["front"], bodice["sleeve"]
    front.match(front.armhole, sleeve.front_cap, at=[(4 * cm, 4.4 * cm)], double="neither")
    found = walk([front.freeze(), sleeve.freeze()], "front.armhole", "sleeve.front_cap")
    first = next(s for s in found.stations if s.what == "notch")
    assert (first.a, first.difference) == (pytest.approx(40), pytest.approx(4))
    assert not found.unmatched


def test_darts_are_folded_shut_when_measuring(bodice) -> None:
    """15 cm along the side lies beyond the bust dart of the front; on paper its mouth comes on top."""
    front, back = bodice["front"], bodice["back"]
    front.match(front.side, back.side, at=15 * cm)
    piece = front.freeze()
    dart = next(d for d in piece.darts if d.edge == "side")
    taken = dart.end - dart.start
    assert told(front) == [(round(150 + taken, 3), "single")] and told(back) == [(150, "double")]
    assert not walk([piece, back.freeze()], "front.side", "back.side").unmatched


def test_several_edges_are_one_run(bodice) -> None:
    front, back = bodice["front"], bodice["back"]
    over = front.armhole.length + 2 * cm
    front.match((front.armhole, front.side), (back.armhole, back.side), at=over)
    assert told(front) == [(20.0, "single")]


def test_a_point_on_the_edge_is_a_place(front, back) -> None:
    front.match(front.side, back.side, at=front.side.at(12 * cm))
    assert told(back) == [(120, "double")]


def test_a_named_measure_is_dimensioned(front, back) -> None:
    front.match(front.side, back.side, at=[Length(80.0, "first_notch")])
    (spot,) = opened(front).spots
    assert (spot.name, spot.value, spot.start, spot.end) == ("first_notch", 80, Point(200, 400), Point(200, 320))


@pytest.mark.parametrize(
    ("at", "message"),
    [
        (50 * cm, "past the end of the front side seam, which is 40 cm"),
        (8, "has no unit"),
        ((8 * cm, 9 * cm, 10 * cm), "3 lengths"),
        ([8 * cm, 8 * cm], "already a notch"),
        (-1 * cm, "less than nothing"),
    ],
)
def test_bad_places_are_told(front, back, at, message) -> None:
    with pytest.raises(KitError, match=message):
        front.match(front.side, back.side, at=at)


def test_bad_words_and_edges_are_told(front, back) -> None:
    with pytest.raises(KitError, match="not 'middle'"):
        front.match(front.side, back.side, at=8 * cm, measured_from="middle")
    with pytest.raises(KitError, match="double='both'"):
        front.match(front.side, back.side, at=8 * cm, double="both")
    with pytest.raises(KitError, match="not sewn to itself"):
        front.match(front.side, front.side, at=8 * cm)
    with pytest.raises(KitError, match="does not lie on the front side seam"):
        front.match(front.side, back.side, at=front.centre.middle)


# ---- marks carried over -----------------------------------------------------------------------------------


def test_an_opening_is_carried_over_to_the_same_place_along_the_seam(front) -> None:
    beside = BenchPiece(rectangle("back", 200, 400, x=200))
    front.leave_open("tie_opening", "side", at=10 * cm, size=4 * cm, said="opening for the tie")
    beside.transfer(front, "tie_opening", front.side, beside.centre)
    (mark,) = beside.freeze().marks
    assert (mark.edge, mark.start, mark.end) == ("centre", pytest.approx(260), pytest.approx(300))
    assert mark.said == "opening for the tie" and mark.kind == "opening"


def test_a_dart_lies_between_and_is_closed(bodice) -> None:
    front, back = bodice["front"], bodice["back"]
    back.leave_open("tie_opening", "side", at=12 * cm, size=4 * cm)
    front.transfer(back, "tie_opening", back.side, front.side)
    found = walk([front.freeze(), back.freeze()], "front.side", "back.side")
    ends = [s for s in found.stations if s.what == "mark"]
    assert len(ends) == 2 and all(s.on == "both" and abs(s.difference) < 1e-6 for s in ends)


def test_a_point_on_the_edge_is_carried_over(front, back) -> None:
    front.mark_point("tie_place", front.side.at(10 * cm))
    back.transfer(front, "tie_place", front.side, back.side)
    assert back.freeze().marks[0].point == Point(200, 300)


def test_what_cannot_be_carried_over_is_told(front, back) -> None:
    with pytest.raises(KitError, match="no mark 'tie'"):
        back.transfer(front, "tie", front.side, back.side)
    front.leave_open("tie", "hem", at=2 * cm, size=2 * cm)
    with pytest.raises(KitError, match="does not lie on the front side seam"):
        back.transfer(front, "tie", front.side, back.side)
    back.transfer(front, "tie", front.hem, back.hem)
    with pytest.raises(KitError, match="already marked"):
        back.transfer(front, "tie", front.hem, back.hem)


def test_the_height_of_a_tie_opening_is_taken_from_the_wrap_edge(front) -> None:
    """The neck edge of the wrap reaches past the centre line; folded over, it runs down to the near side seam."""
    front.guide(wrap_neck=front.place(8 * cm, 40 * cm).to(front.place(-19.5 * cm, 12 * cm)))
    front.leave_open("tie_opening", "side", at=front.wrap_neck, size=4 * cm)
    slope = (400 - 120) / (80 + 195)
    # folded over the line runs from (-80, 400) to (195, 120): at x = 200 it has come down a little more
    height = 120 - slope * 5
    assert front.freeze().marks[0].start == pytest.approx(400 - height, abs=1e-6)
    assert level(opened(front), "side", front.place(-15 * cm, 25 * cm)) == pytest.approx(150)
    with pytest.raises(KitError, match="does not meet the side"):
        front.guide(high=front.place(0 * cm, 60 * cm).to(front.place(10 * cm, 60 * cm)))
        front.leave_open("other", "side", at=front.high, size=1 * cm)
    with pytest.raises(KitError, match="no line meets the side"):
        front.leave_open("other", "side", at=front.place(0 * cm, 60 * cm), size=1 * cm)


# ---- drill marks, buttonholes, placements -----------------------------------------------------------------


def test_a_drill_mark_lies_inside(front) -> None:
    front.drill("pocket_top", front.place(5 * cm, 20 * cm))
    assert front.freeze().marks == (Mark("pocket_top", "drill", point=Point(50, 200)),)
    with pytest.raises(KitError, match="lies outside the piece"):
        front.drill("other", front.place(50 * cm, 20 * cm))
    with pytest.raises(KitError, match="already marked"):
        front.drill("pocket_top", front.place(6 * cm, 20 * cm))


def holes(bench: BenchPiece) -> list[Mark]:
    return [m for m in bench.freeze().marks if m.kind == "buttonhole"]


def buttons(bench: BenchPiece) -> list[Point]:
    return [m.point for m in bench.freeze().marks if "button" in m.name and m.point is not None]


def test_buttonholes_by_count_lie_square_to_the_edge(front) -> None:
    """The slit is the button's diameter and its thickness; it begins 3 mm nearer to the edge than the button, because
    the button pulls to its end (common practice, no source)."""
    assert (
        front.buttonholes(
            front.centre, inside=2 * cm, first=3 * cm, last=33 * cm, count=4, button=15 * mm, thick=3 * mm
        )
        == 4
    )
    # the centre runs up from (0, 0) to (0, 400)
    assert [m.path.start.y for m in holes(front)] == pytest.approx([30, 130, 230, 330])
    for mark in holes(front):
        assert mark.path.length == pytest.approx(18)
        assert (mark.path.start.x, mark.path.end.x) == (pytest.approx(20 - TOWARD_EDGE), pytest.approx(35))
    assert [(p.x, round(p.y, 6)) for p in buttons(front)] == [(20, 30), (20, 130), (20, 230), (20, 330)]


def test_buttonholes_by_spacing_stand_upright_along_the_edge(front) -> None:
    count = front.buttonholes(
        "centre", inside=2 * cm, first=3 * cm, last=33 * cm, spacing=8 * cm, slit=0.75 * inch, lie="vertical"
    )
    assert count == 4  # 3, 11, 19 and 27 cm; the next would lie past the last place
    assert [m.path.at(m.path.length / 2).y for m in holes(front)] == pytest.approx([30, 110, 190, 270])
    for mark in holes(front):
        assert mark.path.length == pytest.approx(19.05) and mark.path.start.x == pytest.approx(20)


def test_the_buttons_are_marked_on_the_piece_that_laps_under(front) -> None:
    beside = BenchPiece(rectangle("under", 200, 400, x=-200))
    front.buttonholes(front.centre, inside=2 * cm, first=3 * cm, last=33 * cm, count=2, button=1 * cm, onto=beside.side)
    assert buttons(front) == []
    assert [(p.x, p.y) for p in buttons(beside)] == [pytest.approx((-20, 30)), pytest.approx((-20, 330))]


def test_buttonholes_follow_a_guide_such_as_the_centre_line(front) -> None:
    front.guide(middle=front.place(10 * cm, 0 * cm).to(front.place(10 * cm, 40 * cm)))
    front.buttonholes("middle", inside=0 * cm, first=5 * cm, last=5 * cm, count=1, button=1 * cm)
    assert buttons(front) == [Point(100, 50)]


@pytest.mark.parametrize(
    ("changes", "message"),
    [
        ({"last": 50 * cm}, "do not lie on the centre line, which is 40 cm"),
        ({"count": None}, "not said how many"),
        ({"spacing": 3 * cm}, "not said how many"),
        ({"count": 1}, "do not fill"),
        ({"count": None, "spacing": 0 * cm}, "spacing is nothing"),
        ({"count": None, "spacing": 1 * mm}, "more than a garment has"),
        ({"button": None}, "how long the slit is"),
        ({"slit": 1 * cm}, "how long the slit is"),
        ({"button": 0 * cm}, "some length"),
        ({"lie": "diagonal"}, "does not lie 'diagonal'"),
        ({"lie": "vertical", "count": 40}, "run into one another"),
        ({"inside": 30 * cm}, "lies outside the piece"),
    ],
)
def test_buttonholes_that_cannot_be_are_told(front, changes, message) -> None:
    given = {"inside": 2 * cm, "first": 3 * cm, "last": 33 * cm, "count": 4, "button": 15 * mm} | changes
    with pytest.raises(KitError, match=message):
        front.buttonholes(front.centre, **given)


def test_unequal_edges_for_buttons_are_told(front) -> None:
    under = BenchPiece(rectangle("under", 200, 380, x=-200))
    with pytest.raises(KitError, match="for the buttons is 38 cm"):
        front.buttonholes(
            front.centre, inside=2 * cm, first=3 * cm, last=33 * cm, count=2, button=1 * cm, onto=under.side
        )


def test_a_pocket_is_laid_at_a_point_and_an_angle(front) -> None:
    pocket = BenchPiece(rectangle("pocket", 80, 90))
    front.placement("pocket_place", pocket, at=front.place(5 * cm, 20 * cm), by=pocket.top.start, turned=10)
    (mark,) = front.freeze().marks
    assert mark.kind == "placement" and mark.path is not None and mark.path.is_closed
    assert mark.path.length == pytest.approx(340) and mark.path.start.close_to(Point(50, 200))
    way = mark.path.start_tangent
    assert math.degrees(math.atan2(way.y, way.x)) == pytest.approx(10)


def test_a_pocket_on_the_fold_is_opened_out(front) -> None:
    half = rectangle("pocket", 40, 90)
    pocket = BenchPiece(replace(half, cut=CutPlan(1, fold="centre")))
    front.placement("pocket_place", pocket, at=front.place(10 * cm, 20 * cm), by=pocket.top.start)
    path = front.freeze().marks[0].path
    assert path is not None and path.bounds() == pytest.approx((60, 110, 140, 200))


def test_placements_that_cannot_be_are_told(front) -> None:
    pocket = BenchPiece(rectangle("pocket", 80, 90))
    with pytest.raises(KitError, match="reaches 3 cm"):
        front.placement("pocket_place", pocket, at=front.place(15 * cm, 20 * cm), by=pocket.top.start)
    with pytest.raises(KitError, match="laid on itself"):
        front.placement("pocket_place", front, at=front.place(5 * cm, 20 * cm))
    with pytest.raises(KitError, match="does not lie on the Pocket"):
        front.placement("pocket_place", pocket, at=front.place(5 * cm, 20 * cm), by=front.top.start)
    with pytest.raises(KitError, match="not an angle"):
        front.placement("pocket_place", pocket, at=front.place(5 * cm, 20 * cm), turned=math.nan)


def test_a_pocket_on_the_fold_laid_on_a_fold_is_its_half(front) -> None:
    """From fold to fold, without the fold itself: both halves of the garment together show the whole."""
    front.cut(1, fold="centre")
    pocket = BenchPiece(replace(rectangle("pocket", 40, 90), cut=CutPlan(1, fold="centre")))
    front.placement("middle", pocket, at=front.place(0 * cm, 20 * cm), by=pocket.top.start)
    front.placement("aside", pocket, at=front.place(10 * cm, 20 * cm), by=pocket.top.start)
    middle, aside = (mark.path for mark in front.freeze().marks)
    assert middle.length == pytest.approx(40 + 90 + 40) and middle.start.x == middle.end.x == 0.0
    assert aside.is_closed and aside.length == pytest.approx(2 * (80 + 90))


def test_a_whole_pocket_over_the_fold_is_told_to_be_cut_on_it(front) -> None:
    front.cut(1, fold="centre")
    pocket = BenchPiece(rectangle("pocket", 80, 90))
    with pytest.raises(KitError, match=r"reaches 4 cm .* cut it on the fold too"):
        front.placement("pocket_place", pocket, at=front.place(0 * cm, 20 * cm), by=pocket.top.middle)
