"""What the hand does in a step is written down by the verbs themselves, in order, with square corners and tangents."""

from __future__ import annotations

import math

import pytest

from kit.blocks import bodice_block
from kit.body.chart import workshop_chart
from kit.geometry import Arc, Line, Path, Point, Vector
from kit.lesson.bench import BenchPiece, opened
from kit.lesson.hand import HandMove, carried_out, ends_of, right_angles, square_sign
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern, StepRecord
from kit.piece.piece import Piece
from kit.units import Length, cm
from tests.example import EXAMPLE, GARMENTS, notebook_names

LEVEL, UP = Path.line(Point(0, 0), Point(100, 0)), Vector(0, 1)


def worked(name: str) -> Pattern:
    found = [v for v in notebook_names(EXAMPLE.parent / f"{name}.ipynb").values() if isinstance(v, Lesson)]
    return found[-1].work(values={})


@pytest.fixture(scope="module")
def tideline() -> Pattern:
    return worked("tideline_wrap_top")


def step(pattern: Pattern, key: str) -> StepRecord:
    return next(record for record in pattern.steps if record.key == key)


def told(record: StepRecord, piece: str) -> list[tuple[str, str, list[str]]]:
    return [(m.kind, m.name, [f"{s.kind} {s.to}".strip() for s in m.signs]) for m in record.moves if m.piece == piece]


def test_moves_stand_in_the_order_of_the_sentence(tideline: Pattern) -> None:
    # Read off the sentences of the lesson by hand.
    assert told(step(tideline, "overarm"), "front") == [("mark", "raised_tip", ["square"]), ("rule", "overarm", [])]
    assert told(step(tideline, "back_from_front"), "back") == [
        ("trace", "", []),
        ("across", "", ["square centre"]),
        ("mark", "", []),
        ("curve", "neck", ["square centre", "square overarm"]),
    ]
    assert told(step(tideline, "wrap"), "front") == [
        ("mirror", "", []),
        ("mark", "wrap_corner", []),
        ("curve", "wrap_neck", ["square overarm"]),
        ("rule", "wrap_edge", ["square far_waist"]),
    ]
    assert told(step(tideline, "underarm_curve"), "front") == [
        ("mark", "", []),
        ("curve", "underarm", ["square opening", "tangent side"]),
    ]


def test_a_measure_from_the_other_end_and_one_from_the_corner_are_known(tideline: Pattern) -> None:
    (mark,) = [m for m in step(tideline, "true_hem").moves if m.kind == "mark"]
    assert mark.measure == "hem_rise" and mark.size == pytest.approx(18.0)
    skirt = worked("dune_skirt")
    spots = {(s.name, s.piece): s for s in step(skirt, "length").spots}
    assert spots["skirt_length", "front"].start == Point(0, 0)
    assert spots["skirt_length", "front"].end == Point(0, -580)
    rise = {(s.name, s.piece): s for s in step(skirt, "true_hem").spots}["hem_rise", "back"]
    assert rise.value == pytest.approx(12.0) and rise.start.distance(rise.end) == pytest.approx(12.0, abs=0.2)


def test_a_length_knows_what_was_taken_off_it() -> None:
    rise = Length(12.0, "rise")
    assert (40 * cm - rise).rest is rise and (40 * cm - 1 * cm).rest is None
    assert (-rise).name == "rise" and abs(-rise).name == "rise"
    assert (40 * cm - rise).name == ""
    assert (40 * cm + rise).parts == (400.0, rise) and (40 * cm + 1 * cm).parts is None


def test_what_was_added_last_is_measured_at_the_end_of_the_line() -> None:
    front = BenchPiece(bodice_block(workshop_chart()["W4"])[0])
    line = front.centre.square(10 * cm + Length(30.0, "ease"), "out", at="start")
    (spot,) = opened(front).spots
    assert spot.name == "ease" and spot.end.distance(line.path.end) < 1e-9
    assert spot.start.distance(spot.end) == pytest.approx(30.0)


def test_every_square_sign_stands_on_a_right_angle(tideline: Pattern) -> None:
    count = 0
    others = [worked(name) for name in GARMENTS if name != "tideline_wrap_top"]
    for pattern in (tideline, *others):
        for record in pattern.steps:
            for move in record.moves:
                for sign in move.signs:
                    turn = math.degrees(math.acos(max(-1.0, min(1.0, sign.way.dot(sign.other)))))
                    assert turn == pytest.approx(90.0 if sign.kind == "square" else 180.0, abs=0.2), (record.key, sign)
                    if move.path is not None:
                        assert move.path.distance_to(sign.at) < 0.1
                    count += sign.kind == "square"
    assert count > 40


def test_what_is_only_computed_with_is_no_move() -> None:
    front = BenchPiece(bodice_block(workshop_chart()["W4"])[0])
    here = opened(front)
    front.shoulder_tip.up(3 * cm).out(2 * cm)  # leads to nothing
    raised = front.shoulder_tip.up(1 * cm)
    front.mark(raised_tip=raised)
    moves = carried_out(here.hand, [raised.point])
    assert [(m.kind, m.name) for m in moves] == [("mark", "raised_tip")]
    assert len(here.hand) == 3


def test_the_place_where_a_pocket_is_laid_is_a_move() -> None:
    lesson = Lesson("Bodice", start=bodice_block)

    @lesson.step("Draw the pocket", makes="pocket")
    def draw_pocket(pocket):
        """Rule."""
        a, b, c, d = (pocket.place(x * cm, y * cm) for x, y in ((0, 0), (4, 0), (4, 5), (0, 5)))
        pocket.draw(low=a.to(b), right=b.to(c), top=c.to(d), left=d.to(a))

    @lesson.step("Lay it on")
    def lay_on(front, pocket):
        """Lay."""
        front.shoulder_tip.down(2 * cm)  # leads to nothing
        front.placement("pocket_place", pocket, at=front.centre_waist.up(8 * cm).out(3 * cm))

    moves = [move for move in lesson.work().steps[-1].moves if move.piece == "front"]
    across = moves[-1].end
    assert [(m.kind, m.name) for m in moves] == [("mark", ""), ("mark", "")]
    assert moves[0].end.distance(across) == pytest.approx(30.0) and moves[0].start.y == pytest.approx(across.y - 80.0)


def test_the_ends_of_a_run_of_curves_are_told_once_each() -> None:
    a, b, c, d, e = (Point(x, 0) for x in (0, 10, 20, 30, 40))
    assert ends_of([Line(a, b), Line(b, c), Line(d, e), Line(e, a)]) == [a, b, c, d, e]
    assert ends_of([]) == []


def test_a_measure_along_a_line_has_no_square_and_one_off_it_has() -> None:
    lines = (("base", LEVEL),)
    (sign,) = square_sign(Point(40, 0), UP, lines)
    assert sign.to == "base" and abs(sign.other.x) == 1
    assert square_sign(Point(40, 0), Vector(1, 0), lines) == ()
    (paper,) = square_sign(Point(40, 30), UP, lines)  # off every line: square to the level of the paper
    assert paper.to == "" and paper.other.y == 0


def test_corners_of_a_ruled_outline_are_square_only_where_they_are() -> None:
    corners = [Point(0, 0), Point(100, 0), Point(100, 50), Point(20, 50)]
    edges = [(str(i), Path.of(Line(corners[i], corners[(i + 1) % 4]))) for i in range(4)]
    assert {sign.at for sign in right_angles(edges)} == {Point(100, 0), Point(100, 50)}


def test_only_straight_lines_that_meet_have_a_square_corner() -> None:
    up = Path.of(Line(Point(100, 0), Point(100, 50)))
    round_corner = Path((Arc(Point(100, 50), 50.0, -math.pi / 2, math.pi / 2),))  # sets out level, where `up` begins
    assert round_corner.start.distance(up.start) < 1e-9 and round_corner.start_tangent.y == pytest.approx(0)
    away = Path.of(Line(Point(130, 0), Point(130, 50)))
    for later, corners in ((up, [Point(100, 0)]), (away, []), (round_corner, [])):
        assert [sign.at for sign in right_angles([("level", LEVEL), ("later", later)])] == corners
    turned = Path((Arc(Point(0, 50), 50.0, -math.pi / 2, math.pi / 2),))  # ends upright, where `over` sets out level
    over = Path.of(Line(turned.end, turned.end + Vector(-20, 0)))
    assert right_angles([("turned", turned), ("over", over)]) == []


def test_one_corner_has_one_sign() -> None:
    move = HandMove("rule", "a", Point(0, 0), Point(0, 10), name="x", signs=square_sign(Point(0, 0), UP, ()))
    again = HandMove("rule", "a", Point(0, 0), Point(0, 20), name="y", signs=square_sign(Point(0, 0), UP, ()))
    kept = carried_out([move, again], [])
    assert [len(m.signs) for m in kept] == [1, 0]


def test_a_rectangle_on_fresh_paper_has_four_square_corners() -> None:
    page = BenchPiece(Piece("page", "Page", ()))
    a, b, c, d = (page.place(x * cm, y * cm) for x, y in ((0, 0), (20, 0), (20, 30), (0, 30)))
    page.draw(low=a.to(b), right=b.to(c), top=c.to(d), left=d.to(a))
    assert sum(len(move.signs) for move in opened(page).hand) == 4
