"""The example garments for the measured women whose figures lie farthest from any chart: wide waists, short backs,
strong arms, narrow shoulders, hips no wider than the waist. `tests/bench/every_body.py` counts all 993."""

from __future__ import annotations

from functools import cache

import pytest

from kit.body import make_body
from kit.lesson.lesson import Lesson
from kit.proof.prove import errors
from tests.body import survey
from tests.example import EXAMPLE, notebook_names

ODD = (0, 10, 20, 100, 110, 130, 140, 180, 280, 320, 360, 480, 510, 890, 910)
"""Rows of the survey's table that were refused, or drew an error of the proof, before the underarm had a least radius,
short sleeves were bent clear of the side, and straight figures went without darts."""


@cache
def lesson_of(notebook: str) -> Lesson:
    lesson: Lesson = notebook_names(EXAMPLE.with_name(f"{notebook}.ipynb"))["lesson"]
    return lesson


@pytest.mark.skipif(not survey.women(), reason="the survey's table is not beside the checkout")
@pytest.mark.parametrize("notebook", ["tideline_wrap_top", "harbour_jacket", "dune_skirt"])
def test_an_odd_figure_gets_her_garment(notebook: str) -> None:
    for row in ODD:
        pattern = lesson_of(notebook).work(make_body(survey.women()[row], name=str(row)))
        assert not [str(finding) for _, finding in errors(pattern)], row


def test_what_needs_no_dart_says_so_and_is_passed_over() -> None:
    """A waist of 96 cm on a hip of 97: the front needs no dart, and whoever sews it is told."""
    straight = make_body({"bust_girth": "94 cm", "waist_girth": "96 cm", "hip_girth": "97 cm"}, name="straight")
    pattern = lesson_of("dune_skirt").work(straight)
    assert not pattern.piece("front").darts and "waist_dart" in pattern.piece("front").spared
    record = next(record for record in pattern.sewing if record.key == "sew_darts")
    said = [sentence.key for op in record.operations for sentence in op.sentences(pattern)]
    assert "dart.spared" in said
    assert not list(errors(pattern))
