"""Where a lesson runs is asked in one place, and what follows from it."""

from __future__ import annotations

import ast
import os
from pathlib import Path
from typing import Any

import pytest

from kit.lesson import where
from kit.lesson.cells import running_cell
from kit.lesson.where import Where, acting, here

KIT = Path(where.__file__).parent.parent


@pytest.fixture(autouse=True)
def clear(monkeypatch: pytest.MonkeyPatch) -> None:
    for name in (where.BUILD, where.NOTEBOOK, "JPY_SESSION_NAME"):
        monkeypatch.delenv(name, raising=False)


def test_plain_python_is_nowhere() -> None:
    assert here() == Where()
    assert not here().shows and here().file is None and running_cell() == ("", 0)


def test_the_environment_says_it(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    book = tmp_path / "top.ipynb"
    monkeypatch.setenv(where.BUILD, "1")
    monkeypatch.setenv("JPY_SESSION_NAME", str(book))
    assert here().building
    assert here().file is None, "told, but not there"
    book.write_text("{}")
    assert here().file == book
    other = tmp_path / "other.ipynb"
    other.write_text("{}")
    monkeypatch.setenv(where.NOTEBOOK, str(other))
    assert here().file == other, "the kit's own word counts first"


@pytest.mark.parametrize(
    ("place", "shows"),
    [
        ({}, False),
        ({"notebook": True}, True),
        ({"notebook": True, "building": True}, False),
        ({"notebook": True, "opening": (Path("top.ipynb"),)}, False),
    ],
)
def test_a_cell_shows_something_only_where_somebody_looks_on(place: dict[str, Any], shows: bool) -> None:
    assert Where(**place).shows is shows


def test_a_place_taken_for_a_while_is_left_again() -> None:
    with acting(notebook=True, cell="a", run=3):
        assert here().shows and running_cell() == ("a", 3)
        with acting(opening=(Path("top.ipynb"),)):
            assert here().notebook and not here().shows
        assert here().shows
    with pytest.raises(ZeroDivisionError), acting(notebook=True):
        raise ZeroDivisionError
    assert here() == Where()


def _name(node: ast.expr) -> str:
    return node.id if isinstance(node, ast.Name) else ""


def test_nobody_else_asks_for_it() -> None:
    """The variables are named, the shell is fetched and fields are kept in one place each; no state hides."""
    names = {where.BUILD, where.NOTEBOOK, "JPY_SESSION_NAME"}
    trouble = []
    for path in sorted(KIT.rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            found = ""
            if isinstance(node, ast.Constant) and node.value in names:
                found = str(node.value)
            elif isinstance(node, ast.Attribute) and node.attr == "get_ipython":
                found = node.attr
            elif isinstance(node, ast.Attribute) and node.attr == "__dict__" and _name(node.value) != "kernel":
                found = "__dict__"
            elif isinstance(node, ast.ImportFrom) and any(alias.name == "get_ipython" for alias in node.names):
                found = "get_ipython"
            # A value with other fields is made there, of nothing but its fields.
            if found == "__dict__" and path == KIT / "piece" / "changed.py":
                continue
            if found and path != KIT / "lesson" / "where.py":
                trouble.append(f"{path.relative_to(KIT)}:{node.lineno} {found}")
    assert trouble == []
    assert os.environ.get(where.BUILD) is None
