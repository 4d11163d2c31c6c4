"""What a sewer is told once and where there is one of it, read in the example lessons."""

from __future__ import annotations

import pytest

from kit.lesson.another import open_lesson
from kit.prose.say import sentences
from tests.example import EXAMPLE


def told(lesson: str, kind: str) -> list[str]:
    """The words of every operation of that kind."""
    pattern = open_lesson(EXAMPLE.parent / f"{lesson}.ipynb").work()
    made = [one for record in pattern.sewing for one in record.operations if one.kind == kind]
    return [" ".join(sentences(pattern, one, "cm")) for one in made]


def test_of_a_gathered_edge_the_seam_does_not_tell_its_fullness_again() -> None:
    """The gathering told how far its threads are pulled; whoever spread it "on purpose" once more would start anew."""
    assert all("instead of" in text for text in told("breaker_skirt", "gather"))
    seams = told("breaker_skirt", "plain_seam")
    assert len(seams) >= 4
    assert not any("on purpose" in text for text in seams)


@pytest.mark.parametrize(("lesson", "two"), [("oyster_apron", False), ("harbour_jacket", True)])
def test_a_pocket_is_told_for_both_sides_where_there_are_two(lesson: str, two: bool) -> None:
    """One wide pocket, though it is cut on the fold, goes onto an apron cut whole; a jacket's onto each front."""
    (text,) = told(lesson, "patch_pocket")
    assert ("left and the right side alike" in text) is two
