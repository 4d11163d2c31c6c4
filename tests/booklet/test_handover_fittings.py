"""Fittings handed over with the pattern: drafted before and after."""

from __future__ import annotations

from pathlib import Path

import pytest

from kit.blocks.bodice import bodice_block
from kit.booklet.handover import work
from kit.lesson.lesson import Lesson, rewrite
from kit.units import cm


@pytest.fixture
def lesson(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Lesson:
    monkeypatch.chdir(tmp_path)
    lesson = Lesson("Short block", start=bodice_block, size="W4")
    lesson.length("hem_drop", 8 * cm, least=2 * cm, most=18 * cm)
    lesson.length("neck_drop", 1 * cm, least=0 * cm, most=4 * cm)

    @lesson.step("Lower the hem")
    def lower(front, hem_drop, neck_drop):
        """Rule the hem {hem_drop} below the waist."""
        front.draw(hem=front.waist.parallel(hem_drop, "down"), instead_of=front.hip)
        front.join(front.side, front.hem)
        front.join(front.hem, front.centre)
        front.lower_neckline(neck_drop)

    return lesson


def hem(pattern: object) -> float:
    return pattern.piece("front").edge("hem").path.end.y  # type: ignore[attr-defined, no-any-return]


def test_before_and_after_with_all_else_as_now(lesson: Lesson) -> None:
    lesson.fitting("First toile", "It rode up.", hem_drop=(6 * cm, 7 * cm))
    lesson.change(neck_drop=3 * cm)
    found = work(lesson, "W6", "inch")
    (result,) = found.fittings
    assert result.trouble == "" and result.before is not None and result.after is not None
    assert (hem(result.before), hem(result.after), hem(found.pattern)) == (-60.0, -70.0, -80.0)
    for pattern in (result.before, result.after):
        assert pattern.value("neck_drop") == 30.0 and pattern.body.name == "W6" and pattern.lesson.units == "inch"


def test_one_that_can_no_longer_be_drafted_says_why(lesson: Lesson) -> None:
    lesson.fitting("First toile", "It rode up.", hem_drop=(6 * cm, 7 * cm))
    lesson.length("hem_drop", 8 * cm, least=7 * cm, most=18 * cm)
    (result,) = work(lesson, None, None).fittings
    assert result.before is None and result.after is None
    assert "hem drop is 6 cm" in result.trouble


def test_live_ones_follow_and_broken_ones_are_noted(lesson: Lesson) -> None:
    lesson.fitting("First toile", "It rode up.", hem_drop=(6 * cm, 7 * cm))
    lesson.begin_fitting("Second toile")
    lesson.change(hem_drop=9 * cm)
    lesson.keep_fitting("Longer still.", date="")
    text = lesson.sitting.sidecar.read_text()
    lesson.sitting.sidecar.write_text(text.replace('"fittings": [', '"fittings": [ {"title": 3},'))
    again = Lesson("Short block", start=bodice_block, size="W4")
    rewrite(again, parameters=lesson.parameters, entries=lesson.entries, fittings=lesson.definition.fittings)
    found = work(again, None, None)
    assert [r.fitting.title for r in found.fittings] == ["First toile", "Second toile"]
    assert any("1 of the fittings" in note for note in found.notes)
