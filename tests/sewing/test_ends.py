"""Which allowance end is folded at a corner, and where, as the sewing order has it (common practice, no source)."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from kit.body.body import Body
from kit.geometry import Path, Point
from kit.lesson.cornered import with_corners
from kit.lesson.pattern import LessonInfo, Pattern, SewRecord
from kit.piece.corner import Corner
from kit.piece.piece import CutPlan, Edge, Piece
from kit.sewing.handle import PieceHandle
from kit.sewing.make import Make
from kit.units import inch, mm

Step = Callable[[Make, PieceHandle, PieceHandle], None]


def half(name: str, **more: object) -> Piece:
    """A straight piece on the fold at x = 0."""
    corners = [(0, 0), (0, 300), (60, 320), (100, 310), (120, 0)]
    points = [Point(x, y) for x, y in corners]
    names = {"centre": 0.0, "neck": 10.0, "shoulder": 10.0, "side": 15.0, "hem": 40.0}
    edges = tuple(
        Edge(edge, Path.line(a, b), width)
        for (edge, width), a, b in zip(names.items(), points, [*points[1:], points[0]], strict=True)
    )
    return replace(Piece(name, name.capitalize(), edges, cut=CutPlan(fold="centre")), **more)  # type: ignore[arg-type]


def sewn(*steps: Step, front: Piece | None = None) -> dict[str, dict[tuple[str, str], Corner]]:
    """{piece: {(before, after): corner}} after the steps, in order."""
    pieces = (front or half("front"), half("back"))
    records = []
    for number, step in enumerate(steps):
        make = Make(pieces)
        step(make, *(PieceHandle(piece) for piece in pieces))
        records.append(SewRecord(f"s{number}", f"Step {number}", "", "", tuple(make.operations)))
    pattern = Pattern(LessonInfo("Trial", "trial"), Body("W4", ()), (), pieces, (), (), tuple(records))
    return {p.name: {(c.before, c.after): c for c in p.corners} for p in with_corners(pattern).pieces}


def side_seam(press: str = "open") -> Step:
    return lambda make, front, back: make.plain_seam(front.side, back.side, allowance=15 * mm, press=press)


def shoulder_seam(press: str = "open") -> Step:
    return lambda make, front, back: make.plain_seam(front.shoulder, back.shoulder, allowance=10 * mm, press=press)


def french(press: str) -> Step:
    def step(make: Make, front: PieceHandle, back: PieceHandle) -> None:
        make.french_seam(front.shoulder, back.shoulder, first=0.25 * inch, second=0.125 * inch, press=press)

    return step


def hem(first: float, second: float = 0.0) -> Step:
    return lambda make, front, back: make.hem(front.hem, back.hem, first=first * mm, second=second * mm)


def test_the_seam_sewn_first_is_the_folded_one() -> None:
    found = sewn(shoulder_seam(), side_seam())
    corner = found["front"]["shoulder", "side"]
    assert (corner.rule, corner.turned, corner.folds) == ("turned", "shoulder", (0.0,))
    found = sewn(side_seam(), shoulder_seam())
    assert found["front"]["shoulder", "side"].turned == "side"


def test_a_seam_pressed_to_one_side_folds_where_it_is_pressed_onto() -> None:
    found = sewn(shoulder_seam("back"), side_seam())
    assert found["back"]["shoulder", "side"].rule == "turned"
    assert found["front"]["shoulder", "side"].rule == "mitre"


def test_a_french_seam_folds_at_its_crease_and_on_one_piece_at_the_seam_too() -> None:
    """Common practice, no source: a 3/8 in French seam is sewn as 1/4 in, then 1/8 in."""
    found = sewn(french("back"), side_seam())
    assert found["back"]["shoulder", "side"].folds == (0.0, 0.125 * 25.4)
    assert found["front"]["shoulder", "side"].folds == (0.125 * 25.4,)
    assert found["front"]["shoulder", "side"].turned == "shoulder"


def test_a_hem_is_the_folded_one_whenever_it_is_sewn() -> None:
    for order in ((hem(40), side_seam()), (side_seam(), hem(40))):
        corner = sewn(*order)["front"]["side", "hem"]
        assert (corner.rule, corner.turned, corner.folds) == ("turned", "hem", (0.0,))
    assert sewn(side_seam(), hem(10, 30))["front"]["side", "hem"].folds == (0.0, 30.0)


def test_no_corner_at_the_fold_nor_beside_an_edge_without_allowance() -> None:
    bare = half("front")
    bare = bare.with_edges(neck=replace(bare.edge("neck"), allowance=0.0))
    found = sewn(shoulder_seam(), side_seam(), hem(40), front=bare)["front"]
    assert set(found) == {("shoulder", "side"), ("side", "hem")}


def test_edges_closed_by_one_operation_are_mitred() -> None:
    def bound(make: Make, front: PieceHandle, back: PieceHandle) -> None:
        make.attach_facing(back.shoulder + back.side, front.shoulder + front.side, allowance=10 * mm)

    assert sewn(bound)["front"]["shoulder", "side"].rule == "mitre"


def test_a_faced_edge_is_enclosed() -> None:
    def faced(make: Make, front: PieceHandle, back: PieceHandle) -> None:
        make.attach_facing(back.neck, front.neck, allowance=10 * mm)

    found = sewn(faced, shoulder_seam())
    for piece in ("front", "back"):
        assert (found[piece]["neck", "shoulder"].turned, found[piece]["neck", "shoulder"].folds) == ("neck", (0.0,))


def test_edges_no_operation_closes_are_mitred_but_a_hem_is_turned() -> None:
    found = sewn(hem(40))["front"]
    assert found["neck", "shoulder"].rule == "mitre"
    assert found["side", "hem"].turned == "hem"


def test_part_of_a_run_counts_where_it_reaches_the_corner() -> None:
    def upper(make: Make, front: PieceHandle, back: PieceHandle) -> None:
        part = front.side.between(0 * mm, 100 * mm), back.side.between(0 * mm, 100 * mm)
        make.plain_seam(*part, allowance=15 * mm)

    found = sewn(upper, shoulder_seam(), hem(40))["front"]
    assert found["shoulder", "side"].turned == "side"
    assert found["side", "hem"].turned == "hem"


def test_a_corner_set_by_hand_is_kept() -> None:
    said = Corner("side", "hem", "squared", turned="hem", by_hand=True)
    old = Corner("shoulder", "side", "clipped", size=4.0)
    found = sewn(shoulder_seam(), side_seam(), hem(40), front=half("front", corners=(said, old)))["front"]
    assert found["side", "hem"] == said
    assert found["shoulder", "side"].rule == "turned"


def test_without_sewing_nothing_is_said() -> None:
    assert sewn()["front"] == {}


def test_the_pattern_that_leaves_a_lesson_carries_its_corners() -> None:
    from kit.lesson.lesson import Lesson
    from tests.example import EXAMPLE, notebook_names

    lesson = notebook_names(EXAMPLE)["lesson"]
    assert isinstance(lesson, Lesson)
    pattern = lesson.work(values={})
    corners = {(c.before, c.after): c for c in pattern.piece("back").corners}
    assert corners["side", "hem"].turned == "hem"
    assert corners["neck", "overarm"].turned == "overarm"
    allowing = next(step for step in pattern.steps if "back" in step.allowed)
    drawn = next(piece for piece in allowing.pieces if piece.name == "back")
    assert drawn.corners == pattern.piece("back").corners


def test_a_seam_pressed_later_folds_as_it_is_pressed_then() -> None:
    def pressed(make: Make, front: PieceHandle, back: PieceHandle) -> None:
        make.press(front.shoulder, way="back")

    found = sewn(shoulder_seam("later"), pressed, side_seam())
    assert found["back"]["shoulder", "side"].rule == "turned"
    assert found["front"]["shoulder", "side"].rule == "mitre"
