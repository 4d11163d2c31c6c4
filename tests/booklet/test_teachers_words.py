"""The teacher's words before, after or instead of the operations' own; why lines on demand; rough times."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.handover import Handover
from kit.booklet.model import SewStep
from kit.errors import KitError
from kit.lesson.another import open_lesson
from kit.lesson.lesson import rewrite
from kit.lesson.pattern import Pattern
from kit.lesson.steps import Entry
from kit.live.fragments import sew_step
from tests.example import EXAMPLE
from tests.unplaced import texts_unplaced


def tote(words: str = "before", whys: bool = False) -> Pattern:
    lesson = open_lesson(EXAMPLE.with_name("ferry_tote.ipynb"))
    entries = tuple(placed(entry, words) for entry in lesson.entries)
    rewrite(lesson, info=replace(lesson.info, whys=whys), entries=entries)
    return lesson.work()  # type: ignore[no-any-return]


def placed(entry: Entry, words: str) -> Entry:
    return replace(entry, words=words) if entry.kind == "sew" else entry  # type: ignore[arg-type]


def test_words_stand_where_the_teacher_wants_them() -> None:
    own, made = "folds sharply", "Press each fold"
    sentence = "Fold the handle lengthwise"
    texts = {}
    for words in ("before", "after", "instead"):
        pattern = tote(words)
        record = next(record for record in pattern.sewing if record.key == "make_handles")
        texts[words] = sew_step(record, pattern, "cm")
    assert made in texts["before"] and own not in texts["before"]
    assert texts["before"].index(made) < texts["before"].index(sentence)
    assert texts["after"].index(made) > texts["after"].index(sentence)
    assert made in texts["instead"] and sentence not in texts["instead"]


def test_why_is_told_on_demand_and_times_always(tmp_path) -> None:  # type: ignore[no-untyped-def]
    import nbformat

    book = nbformat.v4.new_notebook()
    with texts_unplaced():
        plain, taught = (compose(Handover(tote(whys=whys)), book, LessonFolder(tmp_path)) for whys in (False, True))
    steps = [block for block in plain.sewing.blocks if isinstance(block, SewStep)]
    assert all(step.time.startswith("about ") for step in steps)
    assert not any(operation.why for step in steps for operation in step.operations)
    told = [block for block in taught.sewing.blocks if isinstance(block, SewStep)]
    assert any(operation.why for step in told for operation in step.operations)


def test_an_unknown_place_is_refused() -> None:
    lesson = open_lesson(EXAMPLE.with_name("ferry_tote.ipynb"))
    with pytest.raises(KitError, match=r"words is 'behind'"):
        lesson.sew("Late", words="behind")
