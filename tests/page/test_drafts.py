"""A page's drafts while sliders move: each is what the lesson gives when it is worked from the start."""

from __future__ import annotations

from pathlib import Path
from random import Random
from typing import Any

import pytest

from kit import cm, open_lesson
from kit.errors import KitError
from kit.lesson import working
from kit.lesson.working import work
from kit.page.drafts import Drafts

ROOT = Path(__file__).parents[2]


def opened(name: str) -> Any:
    return open_lesson(ROOT / "example_notebooks" / f"{name}.ipynb")


def either(make: Any, *given: Any) -> Any:
    """The pattern, or what is said where it is refused."""
    try:
        return make(*given)
    except KitError as error:
        return str(error)


@pytest.mark.parametrize("name", ["tideline_wrap_top", "dune_skirt", "ferry_tote"])
def test_a_walk_of_sliders_gives_what_work_gives(name: str) -> None:
    """Each slider is pulled some steps, then another, some values too far, the size changed once and back."""
    lesson, random, drafts = opened(name), Random(7), Drafts()
    refused = 0
    for size in [*lesson.sizes.names[:1], *lesson.sizes.names[-1:], *lesson.sizes.names[:1]] or [""]:
        if size:
            lesson.choose(size=size)
        definition, body, values = lesson.definition, lesson.body, dict(lesson.values)
        for parameter in random.sample(list(lesson.parameters), min(4, len(lesson.parameters))):
            for _ in range(3):
                ends = (parameter.least, parameter.most + 50.0)
                values[parameter.name] = (
                    round(random.uniform(*ends)) if parameter.kind == "count" else random.uniform(*ends)
                )
                made = either(drafts.pattern, definition, body, values)
                assert made == either(work, definition, body, values)
                refused += isinstance(made, str)
            values[parameter.name] = parameter.default
    assert refused, "nothing was refused: the walk is too tame"


def test_a_slider_that_moves_works_only_what_follows(monkeypatch: pytest.MonkeyPatch) -> None:
    lesson, drafts, taken = opened("tideline_wrap_top"), Drafts(), []
    take = working._take
    monkeypatch.setattr(working, "_take", lambda entry, *given: (taken.append(entry.name), take(entry, *given))[1])
    definition, body, values = lesson.definition, lesson.body, dict(lesson.values)
    entries = [entry.name for entry in definition.entries]
    use = {
        p.name: next(i for i, entry in enumerate(definition.entries) if p.name in entry.uses) for p in lesson.parameters
    }
    early, late = min(use, key=lambda name: use[name]), max(use, key=lambda name: use[name])
    assert use[early] < use[late]
    drafts.pattern(definition, body, values)
    assert taken == entries
    for name, worked in (
        (late, entries[use[late] :]),
        (early, entries[use[early] :]),
        (early, entries[use[early] :]),
        (late, entries),  # the early one stands elsewhere by now: all is worked once more
        (late, entries[use[late] :]),
    ):
        taken.clear()
        values[name] += 1.0
        drafts.pattern(definition, body, values)
        assert taken == worked


def test_a_refused_draft_leaves_the_next_one_right() -> None:
    lesson, drafts = opened("tideline_wrap_top"), Drafts()
    definition, body, values = lesson.definition, lesson.body, dict(lesson.values)
    with pytest.raises(KitError) as refused:
        drafts.pattern(definition, body, {**values, "sleeve_length": 1e5})
    assert str(refused.value) == either(work, definition, body, {**values, "sleeve_length": 1e5})
    assert drafts.pattern(definition, body, values) == work(definition, body, values)


def test_a_fit_change_comes_and_goes() -> None:
    """It is a step of its own, which a lesson has while its amount is not nothing."""
    lesson, drafts = opened("dune_skirt"), Drafts()
    for amount, length in ((0, 58), (1, 58), (1, 60), (2, 60), (0, 60)):
        lesson.change(lengthen_above_hip=amount * cm, skirt_length=length * cm)
        made = drafts.pattern(lesson.definition, lesson.body, lesson.values)
        assert made == work(lesson.definition, lesson.body, lesson.values)
