"""Two notebooks of one title in a folder: each keeps its own values, and says so."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from kit import Lesson, bodice_block, cm
from kit.lesson.sitting import troubles
from kit.lesson.where import acting


def made(notebook: Path | None) -> Lesson:
    with acting(notebook=notebook is not None, named=(str(notebook),) if notebook else ()):
        lesson = Lesson("Shore top", start=bodice_block)
    lesson.length("hem", 10 * cm, least=1 * cm, most=20 * cm)
    return lesson


@pytest.fixture
def books(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> tuple[Path, Path]:
    monkeypatch.chdir(tmp_path)
    found = tmp_path / "shore.ipynb", tmp_path / "shore for the evening.ipynb"
    for path in found:
        path.write_text("{}")
    return found


def told(lesson: Lesson) -> str:
    return " ".join(troubles(lesson.sitting, lesson.definition))


def test_the_second_does_not_take_the_values_of_the_first(books: tuple[Path, Path]) -> None:
    first = made(books[0])
    first.change(hem=15 * cm)
    first.save()
    second = made(books[1])
    assert second.values == {"hem": 100.0}
    assert "shore.ipynb in this folder has the same title" in told(second) and not told(first)
    second.change(hem=5 * cm)
    second.save()
    assert made(books[0]).values == {"hem": 150.0} and made(books[1]).values == {"hem": 50.0}
    assert sorted(path.name for path in Path().glob("*.json")) == [
        "shore-top.shore for the evening.values.json",
        "shore-top.values.json",
    ]


def test_of_two_open_before_anything_is_kept_the_first_to_keep_something_has_the_file(books: tuple[Path, Path]) -> None:
    """Else the second writes its values over those of the first, which has them when it is opened again."""
    first, second = made(books[0]), made(books[1])
    first.change(hem=15 * cm)
    first.save()
    second.change(hem=5 * cm)
    second.save()
    assert made(books[0]).values == {"hem": 150.0} and made(books[1]).values == {"hem": 50.0}
    assert "shore.ipynb in this folder has the same title" in told(second) and not told(first)
    second.begin_fitting("First toile")
    second.change(hem=6 * cm)
    second.keep_fitting("Too short.")
    assert not made(books[0]).fittings and [one.title for one in made(books[1]).fittings] == ["First toile"]


def test_a_notebook_that_was_renamed_keeps_its_values(books: tuple[Path, Path]) -> None:
    first = made(books[0])
    first.change(hem=15 * cm)
    first.save()
    books[0].unlink()
    renamed = made(books[1])
    assert renamed.values == {"hem": 150.0} and not told(renamed)
    renamed.save()
    assert json.loads(Path("shore-top.values.json").read_text())["notebook"] == books[1].name


def test_plain_python_reads_what_a_notebook_kept(books: tuple[Path, Path]) -> None:
    first = made(books[0])
    first.change(hem=15 * cm)
    first.save()
    plain = made(None)
    assert plain.values == {"hem": 150.0}
    plain.save()
    assert json.loads(Path("shore-top.values.json").read_text())["notebook"] == books[0].name


def test_a_file_from_before_belongs_to_whoever_saves_it_first(books: tuple[Path, Path]) -> None:
    Path("shore-top.values.json").write_text(json.dumps({"lesson": "shore-top", "values": {"hem": 120.0}}))
    first = made(books[0])
    assert first.values == {"hem": 120.0}
    first.save()
    assert made(books[1]).values == {"hem": 100.0}


def test_a_lesson_opened_from_another_notebook_has_the_values_of_that_one(books: tuple[Path, Path]) -> None:
    first = made(books[0])
    first.change(hem=15 * cm)
    first.save()
    with acting(opening=(books[0],)):
        opened = made(books[1])
    assert opened.values == {"hem": 150.0} and not told(opened)
