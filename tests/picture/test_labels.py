"""Text in the finished pictures of the example booklets, counted by rule and kind of picture. A quick run looks at one
lesson on A4; the whole set, all examples in three sizes on paper and on the screen, is marked slow."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

import kit.booklet.pictures as drawn
from kit.body import workshop_chart
from kit.booklet.buying import shopping
from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.forms import FORMS, SCREEN
from kit.booklet.handover import Handover
from kit.booklet.run_notebook import read_notebook
from kit.picture.lettered import Lettered
from tests.example import EXAMPLE
from tests.lesson_words import example_lessons
from tests.picture.label_rules import PHONE_LEAST, PRINT_LEAST, Finished, as_made, broken

_KINDS = {"draft": "drafting", "sew": "sewing", "sheet": "worksheet", "lay": "layout", "piece": "piece"}
_PHONE = 350.0  # CSS px that a picture has on a phone of 390
_NEVER = ("text over a line", "13 plate over cloth", "two texts overlap", "text outside the picture")
_SCENES = ("sewing",)
"""Kinds in whose pictures none of these rules may be broken more often than in two of a hundred texts."""

Counts = dict[str, Counter[str]]


lessons = cache(example_lessons)


def booklet_pictures(name: str, size: str, form: str, monkeypatch: pytest.MonkeyPatch) -> Iterator[Finished]:
    """Every picture of a lesson's booklet as it is placed on its page at last."""
    seen = {}
    write, named = drawn.written, drawn._named
    last: list[Lettered] = []
    monkeypatch.setattr(drawn, "written", lambda made, theme: last.append(made) or write(made, theme))
    monkeypatch.setattr(drawn, "_named", lambda text, key, alt: seen.update({key: last[-1]}) or named(text, key, alt))
    path: Path = EXAMPLE.parent / f"{name}.ipynb"
    pattern = lessons()[name].work(workshop_chart()[size])
    given = Handover(pattern)
    chosen = SCREEN if form == "screen" else FORMS[form]
    compose(given, read_notebook(path), LessonFolder(path.parent), (), chosen, bought=shopping(given))
    monkeypatch.undo()
    for key, made in seen.items():
        yield as_made(key, made)


def counted(pictures: Iterator[Finished], form: str) -> Counts:
    found: Counts = defaultdict(Counter)
    for picture in pictures:
        kind = next((said for start, said in _KINDS.items() if picture.name.startswith(start)), "other")
        wide = (picture.bounds[2] - picture.bounds[0]) / picture.unit
        least = PRINT_LEAST if form != "screen" else PHONE_LEAST * max(wide / _PHONE, 1.0)
        found[kind].update({"pictures": 1, "texts": len(picture.texts), **broken(picture, least)})
    return found


def told(found: Counts, capsys: pytest.CaptureFixture[str], of: str) -> None:
    with capsys.disabled():
        print(f"\n  {of}")
        for kind, counts in sorted(found.items()):
            print(f"    {kind}: " + ", ".join(f"{rule} {n}" for rule, n in counts.items()))


def held(found: Counts) -> None:
    for kind in _SCENES:
        for rule in _NEVER:
            assert found[kind][rule] <= 0.02 * found[kind]["texts"], (kind, rule, found[kind])
        assert found[kind]["13 leaders cross"] <= 0.02 * found[kind]["texts"]


def test_texts_of_one_booklet(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    found = counted(booklet_pictures("dune_skirt", "W4", "a4", monkeypatch), "a4")
    told(found, capsys, "dune_skirt W4 a4")
    assert sum(counts["pictures"] for counts in found.values()) > 30
    held(found)


@pytest.mark.slow
@pytest.mark.parametrize("form", ["a4", "screen"])
@pytest.mark.parametrize("size", ["W1", "W4", "W10"])
def test_texts_of_all_booklets(
    size: str, form: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    found: Counts = defaultdict(Counter)
    for name in lessons():
        if name != "blocks_and_moves":  # it gives no allowances, and so has no booklet
            for kind, counts in counted(booklet_pictures(name, size, form, monkeypatch), form).items():
                found[kind].update(counts)
    told(found, capsys, f"all examples {size} {form}")
    held(found)
