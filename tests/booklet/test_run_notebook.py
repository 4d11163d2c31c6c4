"""Running a notebook: fresh kernel, cell ids, plain messages for whatever goes wrong."""

from __future__ import annotations

from pathlib import Path

import nbformat
import pytest

from kit.booklet.handover import receive
from kit.booklet.run_notebook import cell_title, parse_notebook, read_notebook, run_notebook
from kit.errors import KitError

from .conftest import Writer, code, markdown


def notebook(*sources: str) -> nbformat.NotebookNode:
    return nbformat.v4.new_notebook(cells=[code(source) for source in sources])


def test_steps_know_their_cells(write_lesson: Writer) -> None:
    path = write_lesson()
    said: list[str] = []
    ran = run_notebook(read_notebook(path), path.parent, name=path.name, progress=said.append)
    pattern = ran.handover.pattern
    ids = [cell.id for cell in ran.notebook.cells]
    assert [step.cell for step in pattern.steps] == [
        "open-up",
        "hem",
        "true-hem",
        "armhole",
        "allowances",
        "allowances",
    ]
    assert [step.cell for step in pattern.sewing] == ["shoulders", "neck", "sides", "edges"]
    assert {"hem", "armhole", "shoulders"} <= set(ids)
    assert 'Code cell 3 ("Rule the hem")' in said
    assert len(said) == sum(1 for cell in ran.notebook.cells if cell.cell_type == "code")


def test_the_size_and_units_asked_for(write_lesson: Writer) -> None:
    path = write_lesson()
    ran = run_notebook(read_notebook(path), path.parent, size="W7", units="inch")
    assert ran.handover.pattern.body.name == "W7"
    assert ran.handover.pattern.lesson.units == "inch"
    assert [row.name for row in ran.handover.chart][:2] == ["W1", "W2"]
    chest = [dict(row.finished)["Chest, all round"] for row in ran.handover.chart if row.finished]
    assert chest == sorted(chest) and len(chest) >= 8


def test_saved_values_are_used_and_never_written(write_lesson: Writer) -> None:
    path = write_lesson()
    saved = path.parent / "pebble-top.values.json"
    saved.write_text('{"lesson": "pebble-top", "size": "W6", "units": "inch", "values": {"seam": 12.0}}')
    before = saved.read_bytes()
    pattern = run_notebook(read_notebook(path), path.parent).handover.pattern
    assert (pattern.body.name, pattern.lesson.units, pattern.value("seam")) == ("W6", "inch", 12.0)
    run_notebook(read_notebook(path), path.parent, size="W2")
    assert saved.read_bytes() == before
    assert sorted(item.name for item in path.parent.iterdir()) == ["pebble-top.values.json", "pebble_top.ipynb"]


def test_broken_saved_values_are_said(write_lesson: Writer) -> None:
    path = write_lesson()
    (path.parent / "pebble-top.values.json").write_text("{")
    assert "pebble-top.values.json" in run_notebook(read_notebook(path), path.parent).handover.notes[0]


def test_a_byte_order_mark_is_no_fault(write_lesson: Writer) -> None:
    path = write_lesson()
    path.write_text("\ufeff" + path.read_text("utf-8"), "utf-8")
    assert len(read_notebook(path).cells) > 5


@pytest.mark.parametrize("text", ["", "!!!", "AAAA", "gASV", "x" * 1000, "gASVBQAAAAAAAACMAWGULg=="])
def test_a_garbled_answer_of_the_kernel_is_said(text: str) -> None:
    with pytest.raises(KitError, match="Build again"):
        receive(text)


def test_the_kernel_has_its_folder_cell_id_and_build_flag(tmp_path: Path) -> None:
    book = notebook(
        "import os\nfrom pathlib import Path\n"
        "found = [os.environ['LESSONKIT_BUILD'], get_ipython().get_parent()['metadata']['cellId']]\n"
        "Path('seen.txt').write_text(' '.join(found))",
    )
    with pytest.raises(KitError, match="no lesson"):
        run_notebook(book, tmp_path)
    assert (tmp_path / "seen.txt").read_text() == f"1 {book.cells[0].id}"


def test_a_kit_error_keeps_its_words(tmp_path: Path) -> None:
    book = notebook(
        "x = 1",
        "from kit.errors import KitError\nraise KitError('the bust girth is 9 cm.', where='Body', do='Measure again.')",
    )
    with pytest.raises(KitError) as caught:
        run_notebook(book, tmp_path)
    message = str(caught.value)
    assert message.startswith("Code cell 2 (")
    assert message.endswith("Body: the bust girth is 9 cm. Measure again.")
    assert "Traceback" not in message and "\n" not in message


@pytest.mark.parametrize(
    ("source", "words"),
    [
        ("sleeve + 1", ["NameError", "sleeve", "from the top"]),
        ("def f(:\n  pass", ["SyntaxError", "line 1"]),
        ("1 / 0", ["ZeroDivisionError", "division by zero", "JupyterLab"]),
        ("import os\nos._exit(3)", ["ended the notebook's kernel"]),
        ("raise SystemExit", ["SystemExit"]),
    ],
)
def test_other_errors_are_one_line(tmp_path: Path, source: str, words: list[str]) -> None:
    with pytest.raises(KitError) as caught:
        run_notebook(notebook("x = 1", source), tmp_path)
    message = str(caught.value)
    assert "Code cell 2" in message and "\n" not in message and "Traceback" not in message and "\x1b" not in message
    for word in words:
        assert word in message


def test_a_cell_without_end_is_stopped(tmp_path: Path) -> None:
    with pytest.raises(KitError, match=r"Code cell 1 .* ran longer than 2 s") as caught:
        run_notebook(notebook("while True: pass"), tmp_path, timeout=2)
    assert "\n" not in str(caught.value) and "Traceback" not in str(caught.value)
    assert caught.value.__cause__ is None and caught.value.__suppress_context__, "nor does a notebook show another's"


def test_two_lessons_are_refused(write_lesson: Writer) -> None:
    path = write_lesson({"end": [code('other = Lesson("Another", start=bodice_block)')]})
    with pytest.raises(KitError, match=r"2 lessons: lesson \(Pebble top\), other \(Another\)"):
        run_notebook(read_notebook(path), path.parent)


def test_a_lesson_that_cannot_be_drafted_says_which_step(write_lesson: Writer) -> None:
    def spoil(book: nbformat.NotebookNode) -> None:
        next(cell for cell in book.cells if cell.id == "armhole").source += "\n    front.armhoel = front.side\n"

    path = write_lesson(change=spoil)
    with pytest.raises(KitError, match=r"Redraw the armhole.*armhoel.*Did you mean 'armhole'"):
        run_notebook(read_notebook(path), path.parent)


def test_an_unknown_size_is_refused(write_lesson: Writer) -> None:
    path = write_lesson()
    with pytest.raises(KitError, match="no size 'W44'"):
        run_notebook(read_notebook(path), path.parent, size="W44")


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("", "not JSON"),
        ("[" * 100_000, "nested without end"),
        ('{"nbformat": 4, "cells": ' + "[" * 100_000, "nested without end"),
        ('{"nbformat": ' + "9" * 5000 + "}", "not JSON"),
        ('{"nbformat": true}', "does not say its format"),
        ("not a notebook", "not JSON"),
        ('{"cells": [', "not JSON"),
        ("[1, 2]", "does not say its format"),
        ('{"a": 1}', "does not say its format"),
        ('{"nbformat": 3, "nbformat_minor": 0, "metadata": {}, "worksheets": []}', "format 3"),
        ('{"nbformat": 4, "nbformat_minor": 5, "metadata": {}, "cells": [{"x": 1}]}', "proper cells"),
        ('{"nbformat": 4, "nbformat_minor": 5}', "proper cells"),
    ],
)
def test_broken_files(text: str, words: str) -> None:
    with pytest.raises(KitError, match=words) as caught:
        parse_notebook(text, "lesson.ipynb")
    assert "lesson.ipynb" in str(caught.value)


def test_missing_and_unreadable_files(tmp_path: Path) -> None:
    (tmp_path / "dune_skirt.ipynb").write_text("{}")
    with pytest.raises(KitError, match=r"no notebook .*dune_skrit.ipynb.*dune_skirt\.ipynb"):
        read_notebook(tmp_path / "dune_skrit.ipynb")
    with pytest.raises(KitError, match="is a folder"):
        read_notebook(tmp_path)
    (tmp_path / "picture.ipynb").write_bytes(b"\x89PNG\xff\xfe")
    with pytest.raises(KitError, match="not text in UTF-8"):
        read_notebook(tmp_path / "picture.ipynb")


def test_cells_without_ids_are_run(write_lesson: Writer) -> None:
    path = write_lesson({"hem": [markdown("Between.")]})
    text = path.read_text()
    book = nbformat.reads(text, as_version=4)
    book.nbformat_minor = 4
    for cell in book.cells:
        cell.pop("id")
    ran = run_notebook(parse_notebook(nbformat.writes(book), "x.ipynb"), path.parent)
    places = {cell.id: i for i, cell in enumerate(ran.notebook.cells)}
    order = [places[step.cell] for step in (*ran.handover.pattern.steps, *ran.handover.pattern.sewing)]
    assert order == sorted(order)


def test_cell_titles() -> None:
    assert cell_title('@lesson.step("Lower the hem")\ndef hem(front): ...') == "Lower the hem"
    assert cell_title("# a note\nx = 1") == "x = 1"
    assert len(cell_title("y = " + "1 + " * 40 + "1")) <= 48
