"""A command starts without what it does not need."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

ASKED = """
import sys
import {module}
import nbformat
book = nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell("1")])
nbformat.validate(book)
book.cells[0].cell_type = "drawing"
try:
    nbformat.validate(book)
except nbformat.ValidationError:
    print("refused", "lark" in sys.modules, "weasyprint" in sys.modules)
"""


@pytest.mark.parametrize("module", ["kit.cli", "kit.booklet.build"])
def test_neither_grammar_nor_typesetter_is_loaded_and_notebooks_are_still_checked(module: str) -> None:
    """`lark` reads the grammar of web addresses that jsonschema would load."""
    done = subprocess.run([sys.executable, "-c", ASKED.format(module=module)], capture_output=True, text=True)
    assert done.stdout.split() == ["refused", "False", "False"], done.stderr


def test_a_lesson_in_a_notebook_leaves_the_loaded_modules_alone() -> None:
    code = "import sys; from kit import Lesson, panel; print('rfc3987_syntax' in sys.modules)"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True)
    assert done.stdout.strip() == "False", done.stderr


COUNTED = """
import sys
begun = []
sys.addaudithook(lambda event, given: begun.append(given[0]) if event == "subprocess.Popen" else None)
from kit.booklet.typesetter import load_typesetter
load_typesetter()
from ctypes.util import find_library
print(len(begun), "weasyprint" in sys.modules, find_library.__module__)
"""


@pytest.mark.skipif(sys.platform != "linux", reason="elsewhere libraries have other names")
def test_the_typesetter_is_loaded_without_asking_the_linker() -> None:
    done = subprocess.run([sys.executable, "-c", COUNTED], capture_output=True, text=True)
    assert done.stdout.split() == ["0", "True", "ctypes.util"], done.stderr


@pytest.mark.skipif(sys.platform != "linux", reason="elsewhere it is searched for at once")
def test_a_library_that_its_name_does_not_find_is_searched_for(tmp_path: Path) -> None:
    """In the place of WeasyPrint stands what wants a library that only the search finds, or that is nowhere."""
    for wanted, said in (("True", "loaded"), ("False", "OSError: cannot load library")):
        (tmp_path / "weasyprint.py").write_text(
            "import ctypes.util\n"
            "print('words of its own')\n"
            f"if ctypes.util.find_library('c') is None or not {wanted}:\n"
            "    raise OSError('cannot load library')\n"
        )
        code = "from kit.booklet.typesetter import load_typesetter as load; load(); print('loaded')"
        path = os.pathsep.join((str(tmp_path), *filter(None, sys.path)))
        done = subprocess.run(
            [sys.executable, "-c", code], env={**os.environ, "PYTHONPATH": path}, capture_output=True, text=True
        )
        assert (done.stdout + done.stderr).strip().splitlines()[-1] == said
        assert done.stdout.count("words of its own") == 1, "what was said in vain is not shown"
