"""What an author may write in a sewing step for one thing: a piece or its name, a count of the lesson or a number."""

from __future__ import annotations

import pytest

from kit import Lesson, blank_paper, cm, mm
from kit.errors import KitError
from kit.proof import prove
from kit.sewing.order import operations


def pouch(stretch: float = 0.0, grain: str = "crosswise", press: str = "piece") -> Lesson:
    lesson = Lesson("Pouch", start=blank_paper, units="cm", stretch=stretch)
    lesson.count("rows", 3, least=1, most=6)

    @lesson.step("Draw", makes=("front", "back"), strips="edging")
    def draw(front, back, edging):  # type: ignore[no-untyped-def]
        for piece in (front, back):
            a, b = piece.place(0 * mm, 0 * mm), piece.place(20 * cm, 0 * mm)
            c, d = b.up(15 * cm), a.up(15 * cm)
            mouth = c.curve_to(d, toward="up", end_toward="down", fullness=0.5)
            piece.draw(bottom=a.to(b), right=b.to(c), mouth=mouth, left=d.to(a))
            piece.allow(bottom=1 * cm, right=1 * cm, left=1 * cm, mouth=0 * mm)
            piece.grain()
            piece.cut(1)
        edging.bind(finished_length=front.mouth.length, finished_width=1 * cm, ends=1 * cm, grain=grain)

    @lesson.sew("Sew")
    def sew(make, front, back, edging, rows):  # type: ignore[no-untyped-def]
        make.bind(front.mouth, strip=edging, finished=1 * cm)
        make.plain_seam(front.bottom, back.bottom, allowance=1 * cm, press=front if press == "piece" else press)
        make.topstitch(front.bottom, rows=rows)

    return lesson


def test_a_count_of_the_lesson_is_a_whole_number() -> None:
    done = {operation.kind: operation for _, operation in operations(pouch().work())}
    assert done["topstitch"].rows == 3 and type(done["topstitch"].rows) is int


def test_a_seam_is_pressed_to_a_piece_or_to_its_name() -> None:
    pressed = [
        next(op.press for _, op in operations(pouch(press=press).work()) if op.kind == "plain_seam")
        for press in ("piece", "front")
    ]
    assert pressed == ["front", "front"]


@pytest.mark.parametrize(
    ("stretch", "grain", "bends"),
    [(0.0, "bias", True), (0.0, "crosswise", False), (0.1, "crosswise", False), (0.4, "crosswise", True)],
)
def test_a_strip_cut_across_a_knit_bends_as_one_on_the_bias(stretch: float, grain: str, bends: bool) -> None:
    """From 20 % of stretch on (common practice, no source)."""
    found = [each for each in prove(pouch(stretch, grain).work()) if each.code == "binding_not_bias"]
    assert (not found) == bends


def test_a_strip_says_that_it_has_no_edges() -> None:
    lesson = pouch()

    @lesson.sew("Set it on")
    def set_on(make, front, edging):  # type: ignore[no-untyped-def]
        make.set_band(edging.lower, front.left, allowance=1 * cm)

    with pytest.raises(KitError, match=r"strip and has no edge or mark 'lower'.*draw"):
        lesson.work()
