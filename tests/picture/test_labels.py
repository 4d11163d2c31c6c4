"""Text in the finished pictures of the example booklets, counted by rule and kind of picture, on paper and on a phone
390 CSS px wide. A quick run looks at two lessons in each form; the whole set, all examples in three sizes, is marked
slow. A table tells the counts, and every broken rule with its picture and text."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from functools import cache, lru_cache
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
from kit.picture.theme import Theme
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


@pytest.fixture(scope="module", autouse=True)
def let_go() -> Iterator[None]:
    """Thousands of drawings are of no use to the files of tests that follow."""
    yield
    letterer.cache_clear()
    worked.cache_clear()


lessons = cache(example_lessons)


@cache
def worked(name: str, size: str) -> tuple[Handover, Shopping]:
    """A lesson worked, and its cloth, which are the same in every form."""
    given = Handover(lessons()[name].work(workshop_chart()[size]))
    return given, shopping(given)


def size_of(name: str, size: str) -> str:
    """The size, or W4 for a lesson that takes no measure: it comes out the same for every body."""
    return size if lessons()[name].measures else "W4"


@lru_cache(maxsize=2)
def letterer(size: str, form: str) -> Callable[..., Lettered]:
    """What letters a drawing, asked once for a drawing and its room: a variation draws many steps as its parent does,
    in the same size and form."""
    known: dict[tuple[Drawing, str], Lettered] = {}
    letter = drawn.lettered

    def lettered(drawing: Drawing, *room: object) -> Lettered:
        key = drawing, repr(room)
        if key not in known:
            known[key] = letter(drawing, *room)
        return known[key]

    return lettered


def booklet_pictures(name: str, size: str, form: str, letter: Callable[..., Lettered]) -> Iterator[Finished]:
    """Every picture of a lesson's booklet as it is placed on its page at last."""
    seen: dict[str, Lettered] = {}
    write, named = drawn.written, drawn._named
    last: list[Lettered] = []

    def noted_write(made: Lettered, theme: Theme) -> str:
        """The picture's frame alone: what stands in it is read before it is written."""
        last.append(made)
        return write(replace(made, drawing=replace(made.drawing, items=()), texts=()), theme)

    def noted_name(text: str, key: str, alt: str) -> str:
        seen[key] = last[-1]
        return named(text, key, alt)

    path: Path = EXAMPLE.parent / f"{name}.ipynb"
    given, bought = worked(name, size)
    chosen = SCREEN if form == "screen" else FORMS[form]
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(drawn, "written", noted_write)
        patch.setattr(drawn, "_named", noted_name)
        patch.setattr(drawn, "lettered", letter)
        compose(given, read_notebook(path), LessonFolder(path.parent), (), chosen, bought=bought)
    for key, made in seen.items():
        yield as_made(key, made)


@cache
def counted(name: str, size: str, form: str) -> tuple[Counts, tuple[str, ...]]:
    """The counts of a lesson's booklet by kind of picture, and every broken rule with its picture and text."""
    found: Counts = defaultdict(Counter)
    seen: list[str] = []
    least = PHONE_LEAST if form == "screen" else PRINT_LEAST
    for picture in booklet_pictures(name, size, form, letterer(size, form)):
        kind = next((said for start, said in _KINDS.items() if picture.name.startswith(start)), "other")
        rules = broken(picture, least, seen)
        found[kind].update({"pictures": 1, "texts": len(picture.texts), **rules})
    return dict(found), tuple(seen)


def told(found: Counts, seen: Sequence[str], capsys: pytest.CaptureFixture[str], of: str) -> None:
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
def test_texts_of_one_booklet(lesson: str, form: str, capsys: pytest.CaptureFixture[str]) -> None:
    found, seen = counted(lesson, size_of(lesson, "W4"), form)
    told(found, seen, capsys, f"{lesson} W4 {form}")
    assert sum(counts["pictures"] for counts in found.values()) > 30
    # The dune skirt's drafting pictures are few and full of measures: they count among all booklets.
    held({kind: counts for kind, counts in found.items() if (lesson, kind) != ("dune_skirt", "drafting")})


@pytest.mark.slow
@pytest.mark.parametrize(("size", "form"), [("W1", "screen"), ("W4", "a4"), ("W4", "screen"), ("W10", "screen")])
def test_texts_of_all_booklets(size: str, form: str, capsys: pytest.CaptureFixture[str]) -> None:
    """The smallest and the largest size on a screen alone: its page letters every picture twice, for a page of text of
    nearly A4's width and for a phone, so a text that stands wrongly for the shape of a size is met in two rooms there.
    What a page of A4 asks otherwise of its pictures is the same in every size."""
    found: Counts = defaultdict(Counter)
    seen: list[str] = []
    for name in lessons():
        if name != "blocks_and_moves":  # it gives no allowances, and so has no booklet
            counts_of_it, broken_in_it = counted(name, size_of(name, size), form)
            seen += broken_in_it
            for kind, counts in counts_of_it.items():
                found[kind].update(counts)
    told(found, seen, capsys, f"all examples {size} {form}")
    held(found)
