"""The example garments for the measured women whose figures lie farthest from any chart: wide waists, short backs,
strong arms, narrow shoulders, hips no wider than the waist. `tests/bench/every_body.py` counts all 993."""

from __future__ import annotations

from functools import cache

import pytest

from kit.body import make_body, workshop_chart
from kit.lesson.lesson import Lesson
from kit.lesson.working import work
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


@pytest.mark.skipif(not survey.women(), reason=survey.ABSENT)
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


def test_an_opening_that_is_hardly_bent_can_be_cut_out() -> None:
    """A sleeve opening bent on a circle of 3.6 m: where its allowance ends a hair short of the arc, what is left of
    the arc turns through nothing, and is left out."""
    values = {"shoulder_lift": 24.0, "sleeve_length": 161.0, "sleeve_ease": 62.0, "hem_drop": 223.0, "hem_rise": 26.0}
    values |= {"underarm_drop": 149.0, "underarm_round": 40.0, "back_neck_drop": 31.0, "seam": 6.0, "side_seam": 24.0}
    values |= {"hem_allowance": 31.0, "pocket_width": 117.0, "pocket_depth": 138.0, "pocket_hem": 18.0}
    jacket = lesson_of("harbour_jacket")
    pattern = work(jacket.definition, workshop_chart()["W4"], {**jacket.definition.defaults, **values})
    assert not [str(finding) for _, finding in errors(pattern)]
