"""A command starts without what it does not need."""

from __future__ import annotations

import subprocess
import sys

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
