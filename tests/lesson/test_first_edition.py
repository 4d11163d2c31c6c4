"""Lessons written against the first edition of the kit go on working: its example notebooks and its README, kept as
they were in `first_edition/`. What may change, and how a lesson is told of it, stands in DEVELOPERS.md."""

from __future__ import annotations

import ast
import inspect
import re
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

import kit
from kit import Lesson
from kit.blocks.traced_file import TracedFile
from kit.lesson.another import open_lesson
from kit.lesson.bench import BenchPiece
from kit.lesson.bench_strip import BenchStrip
from kit.lesson.pencil import PaperLine, PaperPoint
from kit.lesson.verb import VERBS as DRAFTING
from kit.proof.prove import prove
from kit.sewing.verb import VERBS as SEWING
from tests.told import Kept

KEPT = Path(__file__).parent / "first_edition"
README = (KEPT / "README.md").read_text(encoding="utf-8")
NOTEBOOKS = ("dune_skirt", "ferry_tote", "harbour_jacket", "tideline_wrap_top")


@pytest.fixture(scope="module")
def lessons() -> dict[str, Lesson]:
    return {name: open_lesson(KEPT / f"{name}.ipynb") for name in NOTEBOOKS}


@pytest.mark.parametrize("name", NOTEBOOKS)
def test_an_old_lesson_is_drafted_and_proven(name: str, lessons: dict[str, Lesson]) -> None:
    """Sizes at both ends and the middle; what a lesson drafts in its own sizes is asked there."""
    lesson = lessons[name]
    for size in {lesson.sizes.names[at] for at in (0, 3, -1)}:
        found = [str(each) for each in prove(lesson.work(lesson.sizes[size])) if each.level == "error"]
        assert found == [], size


def test_an_old_lesson_gives_the_pattern_it_gave(lessons: dict[str, Lesson]) -> None:
    """The file was written by the first edition itself. Where a block, a default or a curve is put right on purpose,
    CHANGELOG.md tells, and it is read anew."""
    found = {}
    for name, lesson in lessons.items():
        lines = []
        for piece in lesson.work(lesson.sizes[lesson.sizes.names[3]]).pieces:
            edges = ", ".join(f"{edge.name} {edge.path.length:.1f}" for edge in piece.edges)
            lines.append(f"{piece.name}: {edges}")
        found[name] = "\n".join(lines)
    Kept(KEPT / "patterns_W4.txt").holds(found)


HOLDERS = (Lesson, BenchPiece, BenchStrip, PaperPoint, PaperLine, TracedFile, kit)


def ways(name: str) -> Iterator[Callable[..., Any]]:
    """Everything of this name that a lesson can call."""
    for verbs in (DRAFTING, SEWING):
        if name in verbs:
            yield verbs[name]
    for holder in HOLDERS:
        if callable(found := getattr(holder, name, None)):
            yield found


def takes(way: Callable[..., Any], words: list[str]) -> bool:
    """Whether it has arguments of these names, or takes any (as a lesson's own parameters are given)."""
    given = inspect.signature(way).parameters.values()
    return any(each.kind is each.VAR_KEYWORD for each in given) or {*words} <= {each.name for each in given}


CALLS = [
    (ast.unparse(node), node)
    for block in re.findall(r"```python\n(.*?)```", README, re.DOTALL)
    for node in ast.walk(ast.parse(block))
    if isinstance(node, ast.Call)
]


@pytest.mark.parametrize("call", [node for _, node in CALLS], ids=[text[:60] for text, _ in CALLS])
def test_what_the_old_readme_wrote_can_still_be_written(call: ast.Call) -> None:
    name = call.func.attr if isinstance(call.func, ast.Attribute) else ast.unparse(call.func)
    words = [each.arg for each in call.keywords if each.arg]
    assert any(takes(way, words) for way in ways(name)), f"nothing called {name} takes {words}"


def test_every_operation_the_old_readme_named_is_there() -> None:
    section = README[README.index("Seams: `plain_seam`") : README.index("Your docstring is read before")]
    names = {*re.findall(r"`(?:make\.)?([a-z_]+)[`(]", section)} - {"together"}
    assert len(names) > 50
    assert names - {*SEWING} == set()
