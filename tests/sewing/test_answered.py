"""A refusal about an argument ends with the verb's example and where to read more; one that a draft's values bring, and
that students read, does not."""

from __future__ import annotations

import pickle

import pytest

from kit import KitError
from kit.errors import KitError as Refusal
from kit.reference.practice import practice_cloth, practice_paper, written


def refused(lines: str, *names: str, sewn: bool = False) -> KitError:
    lesson = practice_cloth("set_band") if sewn else practice_paper()
    (lesson.sew if sewn else lesson.step)("Try")(written("trying", lines, names))
    with pytest.raises(KitError) as trouble:
        lesson.work()
    return trouble.value


@pytest.mark.parametrize(
    ("lines", "names", "says"),
    [
        ("make.set_band(band.neck)", ("make", "band"), "is not told"),
        ("make.set_band(band.neck, [front.neck], allowance=7)", ("make", "band", "front"), "7 has no unit"),
        ("make.set_band(band.neck, [front.neck], allowance=1 * cm, grad=1)", ("make", "band", "front"), "'grade'"),
        ("make.set_band('x', front.neck, allowance=1 * cm)", ("make", "front"), "x"),
    ],
)
def test_a_refusal_of_sewing_ends_with_the_example(lines: str, names: tuple[str, ...], says: str) -> None:
    text = str(refused(lines, *names, sewn=True))
    assert says in text
    assert text.count("For example: make.set_band(band.neck") == 1
    assert text.endswith('(more: lesson.help("set_band"))')


@pytest.mark.parametrize(
    ("lines", "verb"),
    [
        ("front.notch('armhole', 8)", "notch"),
        ("front.notch('armhol', 8 * cm)", "notch"),
        ("front.move_dart('x', to='y', at=3 * cm)", "move_dart"),
        ("front.guide(a=front.side.parallel())", "parallel"),
        ("front.guide(a=front.side.parallel(3, 'down'))", "parallel"),
        ("front.guide(a=front.side.parallel(3 * cm, 'down', 7))", "parallel"),
        ("front.guide(a=front.neck_point.ruled('sideways', 3 * cm))", "ruled"),
        ("front.mark(a=front.neck_point.up(5))", "up"),
    ],
)
def test_a_refusal_of_the_bench_ends_with_the_example_of_the_verb_that_was_called(lines: str, verb: str) -> None:
    text = str(refused(lines, "front"))
    assert f".{verb}(" in text.partition("For example: ")[2]
    assert text.endswith(f'(more: lesson.help("{verb}"))')


def test_a_refusal_that_values_bring_has_no_example() -> None:
    """It may be a slider that is too far; a student reads it."""
    error = refused("front.notch('armhole', 3000 * mm)", "front")
    assert error.example == "" and "lesson.help" not in str(error)


def test_an_example_goes_along_with_a_refusal() -> None:
    error = Refusal("7 has no unit.", do="Write 7 * cm.").showing("For example: x")
    assert str(error.at("Step 'Hem'")) == "Step 'Hem': 7 has no unit. Write 7 * cm. For example: x"
    assert str(pickle.loads(pickle.dumps(error))) == str(error)
    assert error.do == "Write 7 * cm."
