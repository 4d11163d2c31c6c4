"""Text in the finished pictures of the example booklets, counted by rule and kind of picture, on paper and on a phone
390 CSS px wide. A quick run looks at one lesson in each form; the whole set, all examples in three sizes, is marked
slow. A table tells the counts, and every broken rule with its picture and text."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Callable, Iterator
from functools import cache
from pathlib import Path

import pytest

import kit.booklet.pictures as drawn
from kit.body import workshop_chart
from kit.booklet.buying import Shopping, shopping
from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.forms import FORMS, SCREEN
from kit.booklet.handover import Handover
from kit.booklet.run_notebook import read_notebook
from kit.picture.drawing import Drawing
from kit.picture.lettered import Lettered
from tests.example import EXAMPLE
from tests.lesson_words import example_lessons
from tests.picture.label_rules import PHONE_LEAST, PRINT_LEAST, Finished, as_made, broken, clusters

_KINDS = {"draft": "drafting", "sew": "sewing", "sheet": "worksheet", "lay": "layout", "piece": "piece"}
_SHARES = {"text over a line": 0.04, "13 plate over cloth": 0.04}
"""So many of a kind's texts may break a rule; others, and those of sewing pictures, 2 in a hundred. Over a line:
letters and short names of points where three or four lines meet within a finger's breadth have no other place near
enough. Over cloth: pieces of a layout that lie on it."""
_SHARE = 0.02
_NEVER = ("15 text too small", "15 more than two sizes")

Counts = dict[str, Counter[str]]


lessons = cache(example_lessons)


@cache
def worked(name: str, size: str) -> tuple[Handover, Shopping]:
    """A lesson worked, and its cloth, which are the same in every form."""
    given = Handover(lessons()[name].work(workshop_chart()[size]))
    return given, shopping(given)


def once(letter: Callable[..., Lettered]) -> Callable[..., Lettered]:
    """`letter`, asked once for a drawing and its room: a variation draws many steps as its parent does."""
    known: dict[tuple[Drawing, str], Lettered] = {}

    def lettered(drawing: Drawing, *room: object) -> Lettered:
        key = drawing, repr(room)
        if key not in known:
            known[key] = letter(drawing, *room)
        return known[key]

    return lettered


def booklet_pictures(
    name: str, size: str, form: str, monkeypatch: pytest.MonkeyPatch, letter: Callable[..., Lettered] = drawn.lettered
) -> Iterator[Finished]:
    """Every picture of a lesson's booklet as it is placed on its page at last."""
    seen = {}
    write, named = drawn.written, drawn._named
    last: list[Lettered] = []
    monkeypatch.setattr(drawn, "written", lambda made, theme: last.append(made) or write(made, theme))
    monkeypatch.setattr(drawn, "_named", lambda text, key, alt: seen.update({key: last[-1]}) or named(text, key, alt))
    monkeypatch.setattr(drawn, "lettered", letter)
    path: Path = EXAMPLE.parent / f"{name}.ipynb"
    given, bought = worked(name, size)
    chosen = SCREEN if form == "screen" else FORMS[form]
    compose(given, read_notebook(path), LessonFolder(path.parent), (), chosen, bought=bought)
    monkeypatch.undo()
    for key, made in seen.items():
        yield as_made(key, made)


def counted(pictures: Iterator[Finished], form: str, seen: list[str]) -> Counts:
    found: Counts = defaultdict(Counter)
    least = PHONE_LEAST if form == "screen" else PRINT_LEAST
    for picture in pictures:
        kind = next((said for start, said in _KINDS.items() if picture.name.startswith(start)), "other")
        rules = broken(picture, least, seen)
        found[kind].update({"pictures": 1, "texts": len(picture.texts), **rules})
    return found


def told(found: Counts, seen: list[str], capsys: pytest.CaptureFixture[str], of: str) -> None:
    with capsys.disabled():
        print(f"\n  {of}")
        for kind, counts in sorted(found.items()):
            print(f"    {kind}: " + ", ".join(f"{rule} {n}" for rule, n in counts.items()))
        for line in seen:
            print(f"      {line}")


def held(found: Counts) -> None:
    for kind, counts in found.items():
        for rule, count in counts.items():
            if rule in _NEVER:
                assert not count, (kind, rule, counts)
            elif rule not in ("pictures", "texts"):
                share = _SHARE if kind == "sewing" else _SHARES.get(rule, _SHARE)
                most = max(1.0, share * counts["texts"])
                assert count <= most, (kind, rule, counts)


@pytest.mark.parametrize(("sizes", "found"), [((), 0), ((9.0, 9.2, 12.0), 2), ((9.0, 9.2, 9.4, 9.6, 9.8), 3)])
def test_sizes_that_drift_by_small_steps_are_several(sizes: tuple[float, ...], found: int) -> None:
    assert clusters(sizes) == found


@pytest.mark.parametrize("form", ["a4", "screen"])
@pytest.mark.parametrize("lesson", ["ferry_tote", "dune_skirt"])
def test_texts_of_one_booklet(
    lesson: str, form: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    seen: list[str] = []
    found = counted(booklet_pictures(lesson, "W4", form, monkeypatch), form, seen)
    told(found, seen, capsys, f"{lesson} W4 {form}")
    assert sum(counts["pictures"] for counts in found.values()) > 30
    if lesson == "dune_skirt":  # its drafting pictures are few and full of measures: they count among all booklets
        del found["drafting"]
    held(found)


@pytest.mark.slow
@pytest.mark.parametrize("form", ["a4", "screen"])
@pytest.mark.parametrize("size", ["W1", "W4", "W10"])
def test_texts_of_all_booklets(
    size: str, form: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    found: Counts = defaultdict(Counter)
    seen: list[str] = []
    letter = once(drawn.lettered)
    for name in lessons():
        if name != "blocks_and_moves":  # it gives no allowances, and so has no booklet
            pictures = booklet_pictures(name, size, form, monkeypatch, letter)
            for kind, counts in counted(pictures, form, seen).items():
                found[kind].update(counts)
    told(found, seen, capsys, f"all examples {size} {form}")
    held(found)
