"""A slip in an author's own code is told in words, with the line it stands in."""

from __future__ import annotations

from typing import Any

import pytest

from kit import Lesson, blank_paper, cm, mm
from kit.errors import KitError
from kit.lesson.own_code import told


@pytest.fixture
def lesson() -> Lesson:
    lesson = Lesson("A bag", start=blank_paper, units="cm")
    lesson.length("seam", 1 * cm, least=8 * mm, most=15 * mm, why="narrow")

    @lesson.step("Draw the panels", makes=("front", "back"))
    def panels(front: Any, back: Any) -> None:
        """Rule two rectangles."""
        for piece in (front, back):
            a, b = piece.place(0 * mm, 0 * mm), piece.place(20 * cm, 0 * mm)
            c, d = piece.place(20 * cm, 30 * cm), piece.place(0 * mm, 30 * cm)
            piece.draw(bottom=a.to(b), left=b.to(c), top=c.to(d), right=d.to(a))

    return lesson


def refusal(lesson: Lesson) -> str:
    with pytest.raises(KitError) as caught:
        lesson.work()
    return str(caught.value)


def test_an_argument_left_out_is_named_with_its_line(lesson: Lesson) -> None:
    @lesson.sew("Sew the bottom")
    def bottom(make: Any, front: Any, back: Any) -> None:
        """Pin well."""
        make.plain_seam(front.bottom, back.bottom)

    said = refusal(lesson)
    assert "plain_seam is not told its allowance. Write allowance=... between its brackets." in said
    assert "Step 'Sew the bottom', at “make.plain_seam(front.bottom, back.bottom)”" in said
    assert "TypeError" not in said


def test_a_step_with_the_name_of_an_operation_is_not_taken_for_it(lesson: Lesson) -> None:
    @lesson.sew("Bind the top")
    def bind(make: Any, front: Any, back: Any) -> None:
        """Bind it."""
        make.bind(front.top, finishd=8 * mm)

    said = refusal(lesson)
    assert "bind knows no argument 'finishd'. Did you mean 'finished'?" in said
    assert "front" not in said.split("”")[-1]


def test_a_step_with_the_name_of_a_verb_of_the_bench_is_not_taken_for_it(lesson: Lesson) -> None:
    @lesson.step("Notch the front")
    def notch(front: Any) -> None:
        """Notch it."""
        front.notch()

    said = refusal(lesson)
    assert "notch is not told its edge and at. Write edge=... and at=... between its brackets. For example: " in said
    assert "at “front.notch()”" in said


def test_an_argument_spelt_wrong_is_told_with_the_near_one(lesson: Lesson) -> None:
    @lesson.sew("Sew the bottom")
    def bottom(make: Any, front: Any, back: Any, seam: Any) -> None:
        """Pin well."""
        make.plain_seam(front.bottom, back.bottom, allowence=seam)

    said = refusal(lesson)
    assert "plain_seam" in said and "allow" in said and "TypeError" not in said


def test_a_name_that_is_not_there_is_told_with_the_near_one(lesson: Lesson) -> None:
    @lesson.sew("Sew the bottom")
    def bottom(make: Any, front: Any, back: Any, seam: Any) -> None:
        """Pin well."""
        make.plain_seam(front.bottom, back.bottom, allowance=seamm)  # type: ignore[name-defined]  # noqa: F821

    assert "nothing is called 'seamm' here. Did you mean 'seam'?" in refusal(lesson)


def test_a_lesson_says_which_argument_was_meant() -> None:
    message = "Lesson.__init__() got an unexpected keyword argument 'license'"
    assert told("TypeError", message, {"Lesson": Lesson}) == (
        "Lesson knows no argument 'license'.",
        "Did you mean 'licence'?",
    )


def test_a_method_of_the_lesson_says_which_argument_was_meant() -> None:
    found = told("TypeError", "Lesson.length() got an unexpected keyword argument 'leest'", {"Lesson": Lesson})
    assert found == ("length knows no argument 'leest'.", "Did you mean 'least'?")


def test_other_errors_keep_their_own_words() -> None:
    assert told("ZeroDivisionError", "division by zero", {}) is None


def test_widths_of_cloth_are_a_list() -> None:
    with pytest.raises(KitError, match=r"A bag: cloth_widths is '112 cm', not a list of widths\. Write cloth_widths="):
        Lesson("A bag", start=blank_paper, units="cm", cloth_widths="112 cm")
