"""Every example lesson with all its sliders anywhere and all sorts of bodies: nothing ends in a traceback, what the
proof lets pass is sound when it is measured with other libraries (`soundness.py`), and what is refused names a slider
and what mends it, or the measurement to change.

`make test` searches the same few settings each time. By hand the search is long, and new each time:

    KIT_FUZZ=2000 .venv/bin/python -m pytest tests/fuzz -n auto        (or: make fuzz)

What passes unsoundly, and whatever is raised that is no refusal, fails; hypothesis prints how to have it again.
"""

from __future__ import annotations

import os
import zlib
from collections import Counter
from collections.abc import Mapping
from functools import cache
from itertools import islice
from typing import Any

import pytest
from hypothesis import HealthCheck, Phase, event, given, settings
from hypothesis import strategies as st

from kit.body.body import NOBODY, Body
from kit.body.make import make_body
from kit.diagnostic import Diagnostic
from kit.errors import KitError
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern
from kit.lesson.working import work
from kit.proof import prove
from kit.proof.mending import mending
from kit.proof.prove import errors
from kit.units import Length
from tests.example import EXAMPLE, GARMENTS, notebook_names

from .soundness import faults, seams

LONG = int(os.environ.get("KIT_FUZZ", "0"))
SEARCH: dict[str, Any] = (
    {"max_examples": LONG, "derandomize": False, "print_blob": True}
    if LONG
    else {"max_examples": 12, "derandomize": True, "database": None, "phases": (Phase.explicit, Phase.generate)}
)
ONE_IN = 5
"""Of so many refusals one is asked for its remedy: to find what mends a draft costs some hundred drafts."""
ALL = list(HealthCheck)
PATIENCE = 300.0
"""Seconds a draft may take: a busy machine must not stop one."""


@cache
def lesson_of(name: str) -> Lesson:
    lesson: Lesson = notebook_names(EXAMPLE.with_name(f"{name}.ipynb"))["lesson"]
    return lesson


def bodies(lesson: Lesson) -> st.SearchStrategy[Body]:
    """A size of the chart, and people who measure unlike it here and there: a fifth more or less at up to six places,
    as far as a person can measure that."""
    if not lesson.measures:
        return st.just(NOBODY)

    def unlike(size: str, at: Mapping[str, float]) -> Body:
        body, given = lesson.sizes[size], {}
        for name, factor in at.items():
            row = lesson.sizes.measurement(name)
            given[name] = Length(round(min(max(body[name] * factor, row.least), row.most), 1))
        first = "bust_girth" if "bust_girth" in body else lesson.measures[0]
        given.setdefault(first, Length(body[first]))  # the one that a body is completed from
        return make_body(given, lesson.sizes, f"{size} otherwise")

    sizes = st.sampled_from(lesson.sizes.sizes)
    names = st.sampled_from(tuple(lesson.measures))
    return st.one_of(
        sizes.map(lambda size: lesson.sizes[size]),
        st.builds(unlike, sizes, st.dictionaries(names, st.floats(0.8, 1.2), min_size=1, max_size=6)),
    )


def values(lesson: Lesson) -> st.SearchStrategy[dict[str, float]]:
    """Each slider where it stands, at an end of its range, or anywhere in between on a step of half a mm."""

    def one(p: Any) -> st.SearchStrategy[float]:
        if p.kind == "count":
            return st.integers(int(p.least), int(p.most)).map(float)
        step = 0.5 if p.kind == "length" else 0.01
        anywhere = st.floats(p.least, p.most).map(lambda v: min(max(round(v / step) * step, p.least), p.most))
        return st.one_of(anywhere, st.sampled_from((p.default, p.least, p.most)), anywhere)

    near = st.fixed_dictionaries({}, optional={p.name: one(p) for p in lesson.parameters})
    return st.one_of(st.fixed_dictionaries({p.name: one(p) for p in lesson.parameters}), near)


def names_of(lesson: Lesson) -> list[str]:
    """What sliders and measurements are called, in lower case."""
    found = [p.label for p in lesson.parameters] + [lesson.sizes.measurement(m).said for m in lesson.measures]
    return [name.lower() for name in found]


def says_what_to_do(lesson: Lesson, told: Diagnostic) -> bool:
    """Whether a text names a slider or a measurement, and says what to do."""
    text = str(told).lower()
    named = bool(told.parameter or told.measures) or any(name in text for name in names_of(lesson))
    return named and bool(told.do)


def mends(lesson: Lesson, body: Body, setting: Mapping[str, float]) -> bool:
    """Whether a remedy is found; it must do what it says, and name what it changes."""
    for remedy in islice(mending(lesson.definition, body, setting, system=lesson.units, count=1), 1):
        mended = work(
            lesson.definition,
            body,
            {**setting, **{name: float(v) for name, v in remedy.values.items()}},
            time_limit=PATIENCE,
        )
        assert not list(errors(mended)), f"the remedy does not mend: {remedy}"
        labels = [p.label.lower() for p in lesson.parameters]
        assert remedy.back or any(label in str(remedy).lower() for label in labels), str(remedy)
        return True
    return False


def trouble(lesson: Lesson, body: Body, setting: Mapping[str, float]) -> tuple[Pattern | None, list[Diagnostic]]:
    """The pattern, None where there is none, and what speaks against it; whatever else is raised is a fault."""
    try:
        made = work(lesson.definition, body, setting, time_limit=PATIENCE)
    except KitError as error:
        return None, [error.told]
    return made, [finding for finding in prove(made) if finding.level == "error"]


@pytest.mark.slow
@pytest.mark.parametrize("name", GARMENTS)
def test_what_passes_is_sound_and_what_does_not_says_why(name: str, capsys: pytest.CaptureFixture[str]) -> None:
    lesson = lesson_of(name)
    seen: Counter[str] = Counter()
    least = min(2, len(list(seams(lesson.work()))))  # an apron that is bound and hemmed all round has none

    @settings(**SEARCH, deadline=None, suppress_health_check=ALL)
    @given(bodies(lesson), values(lesson))
    def search(body: Body, setting: dict[str, float]) -> None:
        made, wrong = trouble(lesson, body, setting)
        outcome = "refused" if made is None else "objected to" if wrong else "passed"
        seen[outcome] += 1
        event(outcome)
        for told in wrong:
            assert told.what and told.do and "Traceback" not in str(told), str(told)
        if wrong:
            first = wrong[0]
            named = says_what_to_do(lesson, first)
            if not named or zlib.crc32(repr(setting).encode()) % ONE_IN == 0:
                assert mends(lesson, body, setting) or named, f"nothing is named: {first}"
        elif made is not None:
            assert len(list(seams(made))) >= least, "its seams are not all measured"
            assert faults(made) == []

    search()
    with capsys.disabled():
        print(f"\n{name}: {dict(seen)}")
    assert seen["passed"] > 0
