"""Values are frozen: whoever holds one knows that nobody changes it."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent

CHANGING = {
    "kit/lesson/halted.py:_Halt": "a draft that was stopped is left behind once the lesson's values are others",
    "kit/live/beside.py:_Said": "words in a cell are said anew as values change",
    "kit/live/picked.py:DrawnMove": "a move is put together field by field while its cell is written",
    "kit/live/remedy_box.py:_Line": "a line on the panel stays and is given another remedy",
    "kit/release/release.py:_Work": "the files of a release are gathered language by language",
    "kit/picture/placing.py:_Text": "a text is moved from place to place until all of a picture stand well",
    "kit/room/gate.py:Door": "the port that cookies carry is known once the room listens",
    "kit/room/gathering.py:Student": "who is in a class moves from step to step, raises a hand, allows a look",
    "kit/room/makings.py:_Making": "what is being made has a process and a folder as it goes on",
    "kit/room/seats.py:Seat": "a seat has lines that open and close, and asks less as it is used",
    "kit/room/workers.py:_Task": "a question is put back once where a worker ended idle",
    "kit/picture/placed.py:PlacedLayer": "a layer is folded and moved as the layers above it are laid",
}
"""{"kit/room/module.py:Class": why its fields are set anew after it was made}."""


def open_dataclasses(source: str) -> list[str]:
    """Names of the dataclasses in a module's text, wherever they stand, that are not frozen."""
    found = []
    for node in ast.walk(ast.parse(source)):
        if not isinstance(node, ast.ClassDef):
            continue
        for mark in node.decorator_list:
            call = mark.func if isinstance(mark, ast.Call) else mark
            if ast.unparse(call).rsplit(".", 1)[-1] != "dataclass":
                continue
            given = mark.keywords if isinstance(mark, ast.Call) else []
            if not any(
                k.arg == "frozen" and isinstance(k.value, ast.Constant) and k.value.value is True for k in given
            ):
                found.append(node.name)
    return found


@pytest.mark.parametrize(
    ("source", "found"),
    [
        ("@dataclass\nclass A: ...", ["A"]),
        ("@dataclasses.dataclass(eq=False)\nclass A: ...", ["A"]),
        ("def f():\n    @dataclass(frozen=False)\n    class A: ...", ["A"]),
        ("@dataclass(frozen=True, eq=False)\nclass A: ...", []),
        ("@total_ordering\nclass A: ...", []),
    ],
)
def test_an_open_dataclass_is_found(source: str, found: list[str]) -> None:
    assert open_dataclasses(source) == found


def test_every_dataclass_of_the_kit_is_frozen_or_says_why_not() -> None:
    found = {
        f"{path.relative_to(ROOT).as_posix()}:{name}"
        for path in sorted((ROOT / "kit").rglob("*.py"))
        for name in open_dataclasses(path.read_text("utf-8"))
    }
    assert found - set(CHANGING) == set(), "freeze these, or list them with the reason"
    assert set(CHANGING) - found == set(), "frozen by now, or gone: take these off the list"
