"""One length, one reading: what a finished booklet says of a length is the same wherever it says it.

Every pair of every booklet is read back from its text (tests/readings.py): of the example lessons read in centimetres
and in inches, in a small, a middle and the largest size, of the wrap top in every language, and of a lesson whose
author thinks in inches.
"""

from __future__ import annotations

import json
import re
from functools import cache
from html import unescape
from pathlib import Path
from typing import Any

import pytest
from nbformat import NotebookNode

from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.forms import SCREEN
from kit.booklet.handover import Handover, SizeRow, alone, work
from kit.booklet.html import to_html
from kit.booklet.own_language import in_one_system, spoken
from kit.booklet.run_notebook import read_notebook
from kit.booklet.starter import start
from kit.diagnostic import reading
from kit.language import speaking
from kit.lesson.another import find_lesson
from kit.lesson.pattern import Pattern
from kit.resources import examples
from kit.units import System
from tests.example import lesson_notebooks, notebook_names
from tests.readings import far_off, length_of, lines, pairs, plain, read_two_ways, units_in
from tests.unplaced import texts_unplaced

LESSONS = [path.stem for path in lesson_notebooks() if path.stem != "blocks_and_moves"]
SYSTEMS: tuple[System, ...] = ("cm", "inch")


@cache
def lesson_of(path: Path) -> tuple[Any, NotebookNode]:
    """A lesson and its notebook, worked in this process."""
    return find_lesson(notebook_names(path)), read_notebook(path)


charts: dict[Path, tuple[SizeRow, ...]] = {}
"""Of each lesson, its chart: the same for every reader."""


@cache
def written(path: Path, size: str, units: System, code: str = "en", only: bool = False) -> tuple[str, Handover]:
    """The booklet as HTML, and what it was made from."""
    lesson, notebook = lesson_of(path)
    lesson.reset()
    given = work(lesson, size, units, chart=charts.get(path))
    charts.setdefault(path, given.chart)
    given = alone(given) if only else given
    with speaking(code), reading(units):
        given, notebook, _ = spoken(given, notebook, path, code)
        if only:
            given, notebook = in_one_system(given, notebook)
        with texts_unplaced(words_alone=True):
            return to_html(compose(given, notebook, LessonFolder(path.parent), (), SCREEN), SCREEN), given


_WHOLE = re.compile(r"(?:turns take|take the seam allowance of) ([^()]+?)(?: \(([^()]+)\))?\.(?!\d)")
_SAY_IT = ("hem.second", "hem.narrow", "casing.second", "pocket_hem.fold", "french_seam.takes")


def sums(pattern: Pattern) -> list[tuple[float, ...]]:
    """The parts, in mm, of every operation that says parts and their whole: the turns of a hem, the rows of a seam."""
    found = []
    for record in pattern.sewing:
        for operation in record.operations:
            said = operation.sentences(pattern)
            parts = {name: float(v) for _, values in said for name, (v, kind) in values.items() if kind == "part"}
            found += [tuple(parts.values()) for key, _ in said if key in _SAY_IT]
    return found


def do_not_add_up(pattern: Pattern, html: str, own: System) -> set[str]:
    """Sums of an English booklet whose parts, as it reads them, are not the whole it names, in a system it names."""
    told = {pair.metric: pair for pair in pairs(html) if not pair.bought}
    unit = 1.0 if own == "cm" else 25.4 / 16
    wholes = _WHOLE.findall(plain(re.sub(r"<[^>]*>", "", html)))
    wrong = set()
    for parts, said in zip(sums(pattern), wholes, strict=True):
        read = [min(told.values(), key=lambda pair: abs(float(pair.first(own)) - part)) for part in parts]
        assert all(abs(float(pair.first(own)) - part) <= unit for pair, part in zip(read, parts, strict=True))
        for text in filter(None, said):
            mm, kind = length_of(text)
            if mm != sum(pair.metric if kind == "metric" else pair.english for pair in read):
                wrong.add(" + ".join(pair.said for pair in read) + f" = {' '.join(said)}")
    return wrong


def held(html: str, pattern: Pattern, own: System, code: str = "en") -> None:
    found = pairs(html)
    assert len(found) > 20
    assert read_two_ways(found, own) == {}
    assert far_off(found) == set()
    if code == "en":  # the readings of a language are those of the others, in its own signs
        assert do_not_add_up(pattern, html, own) == set()


def size_of(lesson: Any, which: str) -> str:
    """The least, the middle or the largest size of a lesson's chart."""
    names = lesson.sizes.names
    return str({"least": names[0], "middle": names[(len(names) - 1) // 2], "largest": names[-1]}[which])


@pytest.mark.slow
@pytest.mark.parametrize(
    ("which", "units"), [("least", "inch"), ("middle", "cm"), ("middle", "inch"), ("largest", "cm")]
)
@pytest.mark.parametrize("lesson", LESSONS)
def test_a_length_reads_the_same_all_through(lesson: str, which: str, units: System) -> None:
    path = examples() / f"{lesson}.ipynb"
    html, given = written(path, size_of(lesson_of(path)[0], which), units)
    held(html, given.pattern, "cm")


@pytest.mark.slow
@pytest.mark.parametrize("units", SYSTEMS)
@pytest.mark.parametrize("code", ["de", "es", "fr"])
def test_a_length_reads_the_same_in_every_language(code: str, units: System) -> None:
    html, given = written(examples() / "tideline_wrap_top.ipynb", "W4", units, code)
    held(html, given.pattern, "cm", code)


def in_inches(folder: Path) -> Path:
    """The starter's lesson with every length of its own in sixteenths of an inch."""
    path = start("Pebble top", folder)
    book = json.loads(path.read_text(encoding="utf-8"))
    for cell in book["cells"]:
        source = "".join(cell["source"])
        if cell["cell_type"] == "code":
            source = source.replace('units="cm"', 'units="inch"').replace("cm, mm", "cm, inch, mm")
            source = re.sub(r"([\d.]+) \* (cm|mm)\b", lambda found: sixteenths(found[1], found[2]), source)
        cell["source"] = source
    path.write_text(json.dumps(book), encoding="utf-8")
    return path


def sixteenths(amount: str, unit: str) -> str:
    return f"({round(float(amount) * (10 if unit == 'cm' else 1) / 25.4 * 16)} / 16 * inch)"


@pytest.mark.parametrize("units", SYSTEMS)
def test_a_lesson_thought_in_inches_prints_its_inches(tmp_path: Path, units: System) -> None:
    html, given = written(in_inches(tmp_path), "W4", units)
    held(html, given.pattern, "inch")
    text = re.sub(r"[\u00a0 ]+", " ", unescape(re.sub(r"<[^>]*>", "", html)))
    assert "⁹⁄₁₆ in" in text  # the seam allowance as its author set it, 9/16 in


@pytest.mark.slow
@pytest.mark.parametrize(("units", "signs"), [("cm", {"mm", "cm", "m"}), ("inch", {"in", "yd"})])
@pytest.mark.parametrize("lesson", ["dune_skirt", "tideline_wrap_top", "neap_tide_wrap"])
def test_one_system_alone(lesson: str, units: System, signs: set[str]) -> None:
    """What its author wrote out is told in it too. But for the test squares to print, for whichever ruler is at hand,
    and the length of a stitch, which machines tell in millimetres."""
    path = examples() / f"{lesson}.ipynb"
    size = size_of(lesson_of(path)[0], "middle")  # read in both systems above
    html, _ = written(path, size, units, only=True)
    assert pairs(html) == ()
    for line in lines(html):
        if "test squares" in line or "stitches" in line:
            continue
        assert units_in(line) <= signs, line
    assert units_in(html) >= signs
    both, _ = written(path, size, units)
    assert {"cm", "in"} < units_in(both)


def test_that_it_is_converted_is_said_once(tmp_path: Path) -> None:
    path = in_inches(tmp_path)
    for only in (False, True):
        html, _ = written(path, "W4", "cm", only=only)
        assert html.count("This lesson is drafted in inches") == 1
        assert "is drafted in" not in written(path, "W4", "inch", only=only)[0]


@pytest.mark.slow
def test_a_zip_is_named_by_the_sizes_it_is_sold_in() -> None:
    """A zip of 18 cm is one of 7 in (common practice, no source)."""
    path = examples() / "dune_skirt.ipynb"
    size = size_of(lesson_of(path)[0], "middle")
    html, _ = written(path, size, "cm")
    text = plain(re.sub(r"<[^>]*>", "", html))
    assert "zip, 18 cm (7 in)" in text and "1 button, 18 mm (11/16 in)" not in text
    inches = plain(re.sub(r"<[^>]*>", " ", written(path, size, "inch", only=True)[0]))
    assert "zip, 7 in" in inches and "7 in down the side seam" in inches and "7 1/8 in" not in inches
