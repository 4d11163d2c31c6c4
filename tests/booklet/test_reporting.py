"""A report holds the lesson, its values, version and pictures, and nobody's measurements."""

from __future__ import annotations

import io
import json
import zipfile
from pathlib import Path
from typing import Any

import nbformat
import pytest

from kit.booklet.reporting import without_bodies
from kit.cli import main

BODY = """from kit import make_body
lesson.choose(
    body=make_body({"bust_girth": "97.3 cm", "waist_girth": "81.1 cm"}, name="Ottilie")
)
"""


def test_a_report_has_everything_but_the_body(
    write_lesson: Any, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    path = write_lesson({"end": [nbformat.v4.new_code_cell(BODY)]})
    assert main(["report", str(path), "--says", "The hem runs the wrong way."]) == 0
    said = capsys.readouterr().out
    (file,) = tmp_path.glob("*-report.zip")
    assert str(file.name) in said
    with zipfile.ZipFile(io.BytesIO(file.read_bytes())) as archive:
        files = {name: archive.read(name).decode("utf-8") for name in archive.namelist()}
    assert not [name for name, text in files.items() if "Ottilie" in text]
    for name in ("pebble_top.ipynb", "report.json"):
        assert not [word for word in ("Ottilie", "97.3", "973", "81.1", "811") if word in files[name]]
    about = json.loads(files["report.json"])
    assert about["says"] == "The hem runs the wrong way." and about["bodies_taken_out"] == 1
    assert about["lesson"] == "Pebble top" and about["size"] == "W4"
    assert about["values"]["hem_turn"] == 10.0 and about["versions"]["pattern-lesson-kit"]
    book = nbformat.reads(files["pebble_top.ipynb"], as_version=4)
    assert not [cell for cell in book.cells if cell.cell_type == "code" and cell.outputs]
    assert files["pictures/hem.svg"].startswith("<svg") and any(
        name.startswith("pictures/shoulders-") for name in files
    )
    assert main(["report", str(path), "--step", "hemm"]) == 2
    assert "'hem'" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("source", "count"),
    [
        ('mine = kit.make_body({"a": "1 cm"})', 1),
        ('a = load_body("me.toml"); b = make_body({"ä": "1 cm"}, name="x")', 2),
        ("make_body = 3", 0),
        ("not python ('1 cm'", 1),
        ('%matplotlib inline\nb = make_body({"a": "1 cm"}, name="me.toml")', 1),
        ('%%time\nb = make_body({"a": "1 cm"})', 1),
        ('b = exec("make_body({1 cm})")', 1),
        ('from kit import make_body as mb  # me.toml\nm = {}\nm["me.toml"] = "1 cm"\nb = mb(m)', 1),
        ('m = {"a": "1 cm"}\nfor n in ["me.toml"]:\n    b = kit.Body(n, m)', 1),
        ('def of(m):\n    return make_body(m)\nb = of({"a": "1 cm"})', 2),
        ('from functools import partial\np = partial(make_body, name="me.toml")\nb = p({"a": "1 cm"})', 2),
    ],
)
def test_bodies_are_found_in_code(source: str, count: int) -> None:
    book = nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell(source)])
    changed, found = without_bodies(book)
    assert found == count
    assert not count or ("1 cm" not in changed.cells[0].source and "me.toml" not in changed.cells[0].source)


def test_measurements_in_a_cell_of_their_own_go_too_and_the_rest_stays() -> None:
    sources = ['mine: dict = {"bust_girth": "97.3 cm"}', "body = make_body(mine)", 'ease = 97.3\nsay = "Ottilie"']
    book = nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell(source) for source in sources])
    made = [cell.source for cell in without_bodies(book)[0].cells]
    assert "97.3" not in made[0] and "make_body" not in made[1] and made[2] == "ease = 97.3\nsay = 'Ottilie'"
