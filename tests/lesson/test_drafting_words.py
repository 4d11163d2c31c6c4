"""What a refusal says while drafting: the end and the angle, the plan that is missing; and units as they are said."""

from __future__ import annotations

from pathlib import Path

import pytest

from kit.blocks.bodice import bodice_block
from kit.errors import KitError
from kit.language import languages, speaking
from kit.lesson.lesson import Lesson
from kit.units import cm


@pytest.fixture
def lesson(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Lesson:
    monkeypatch.chdir(tmp_path)
    return Lesson("Draft", start=bodice_block, size="W4")


def test_a_facing_that_does_not_fit_names_the_end_and_its_angle(lesson: Lesson) -> None:
    @lesson.step("Face", makes="facing")
    def face(front, facing):
        """Deeper than the shoulder is long."""
        facing.face(front.neck, depth=30 * cm, ends=("centre", "shoulder"))

    with pytest.raises(KitError) as told:
        lesson.work()
    assert told.value.told.says.key == "drafting.facing_end"  # type: ignore[union-attr]
    assert "the shoulder seam of front bodice, " in str(told.value)
    assert "stands at 90° to the neck edge" in str(told.value)
    for code in languages():
        with speaking(code):
            assert "drafting" not in str(told.value) and "90°" in str(told.value)


def test_a_facing_too_deep_for_its_curve_says_so(lesson: Lesson) -> None:
    @lesson.step("Face", makes="facing")
    def face(front, facing):
        """Deeper than the armhole is round."""
        facing.face(front.armhole, depth=30 * cm, ends=("shoulder", "side"))

    with pytest.raises(KitError, match=r"a facing 30 cm .* deep does not fit"):
        lesson.work()


def test_a_piece_that_is_never_cut_is_told_to_lack_its_plan(lesson: Lesson) -> None:
    @lesson.step("Draw a pocket", makes="pocket")
    def pocket(pocket):
        """A square."""
        a, b = pocket.place(0, 0), pocket.place(10 * cm, 0)
        c, d = pocket.place(10 * cm, 10 * cm), pocket.place(0, 10 * cm)
        pocket.draw(low=a.to(b), front_side=b.to(c), mouth=c.to(d), back_side=d.to(a))

    @lesson.sew("Hem it")
    def hem(make, pocket):
        """Turn the mouth."""
        make.hem(pocket.left.mouth, first=1 * cm, second=1 * cm)

    with pytest.raises(KitError, match=r"no step says how Pocket is cut.* pocket\.cut\(2, mirrored=True\)"):
        lesson.work()

    @lesson.step("Cut it", after="pocket")
    def plan(pocket):
        """One."""
        pocket.cut(1)

    with pytest.raises(KitError, match="Pocket has no left half: it is cut as one single layer"):
        lesson.work()


@pytest.mark.parametrize("said", ["in", "inch"])
def test_inches_are_said_as_people_say_them(said: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    lesson = Lesson("Inches", start=bodice_block, units=said)  # type: ignore[arg-type]
    assert (lesson.units, lesson.info.units) == ("inch", "inch")
    lesson.choose(units="cm")
    lesson.choose(units=said)  # type: ignore[arg-type]
    assert lesson.units == "inch"
    assert lesson.variation("Other", units=said).info.units == "inch"
    with pytest.raises(KitError, match="not 'feet'"):
        lesson.choose(units="feet")  # type: ignore[arg-type]


def test_a_variation_begins_from_another_start(lesson: Lesson) -> None:
    with pytest.raises(KitError, match="starts from a block"):
        lesson.variation("Other", start="my top")  # type: ignore[arg-type]
