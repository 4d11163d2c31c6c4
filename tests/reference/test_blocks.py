"""What the reference tells of the blocks is what lies on them, and everything told may be written in a step."""

from __future__ import annotations

import re

import pytest

import kit
from kit import Lesson
from kit.body.chart import workshop_chart
from kit.language import languages, speaking
from kit.reference.blocks import BLOCKS, FOR, SIZE, lying
from kit.reference.notebooks import reference
from kit.reference.told import help_on


def test_every_block_that_can_be_imported_is_told() -> None:
    offered = {name for name in kit.__all__ if name.endswith("_block")} | {"with_sleeve"}
    assert set(BLOCKS) == offered == set(FOR)


@pytest.mark.parametrize("name", BLOCKS)
def test_a_step_may_name_all_that_is_told(name: str) -> None:
    """Names are written in a step of a lesson that starts from the block; lengths are those of its lines."""
    lesson = Lesson("Practice", start=BLOCKS[name], size=SIZE)
    pieces = [one.piece for one in lying(name)]
    found: dict[tuple[str, str], float] = {}
    names: dict[str, list[str]] = {
        one.piece: [line.split()[0] for line in (*one.edges, *one.points, *one.levels)] for one in lying(name)
    }

    def look(**given: object) -> None:
        for piece, words in names.items():
            for word in words:
                line = getattr(given[piece], word)
                if hasattr(line, "length"):
                    found[piece, word] = float(line.length)

    source = f"def step({', '.join(pieces)}):\n    look({', '.join(f'{piece}={piece}' for piece in pieces)})"
    space: dict[str, object] = {"look": look}
    exec(source, space)
    lesson.step("Look at it")(space["step"])
    lesson.work()
    for one in lying(name):
        for line in (*one.edges, *one.levels):
            word, long = line.split()
            assert found[one.piece, word] == pytest.approx(float(long) * 10, abs=0.51)


def test_darts_are_told_with_the_edge_they_open_on() -> None:
    for name, block in BLOCKS.items():
        if name == "with_sleeve":
            continue
        for piece, one in zip(block(workshop_chart()[SIZE]), lying(name), strict=True):
            assert [line.split()[0] for line in one.darts] == [dart.name for dart in piece.darts]
            assert all(f" on {dart.edge} " in line for dart, line in zip(piece.darts, one.darts, strict=True))


def test_terminal_and_notebook_tell_them() -> None:
    text = help_on("trouser_block")
    assert "crotch_point" in text and "waist_dart_2" in text and "inseam" in text
    assert "trouser_block" in help_on("trousers") and "kit.read_chart" in help_on("chart")
    every = help_on("block")
    assert all(name in every for name in BLOCKS if name != "with_sleeve") and len(every.split("\n")) < 10
    assert "make.set_band" in help_on("overlap") and "make.attach_strip" in help_on("waistband tie")
    notebook = reference("drafting")
    assert all(
        re.search(rf"`{line.split()[0]}`", notebook) for name in BLOCKS for one in lying(name) for line in one.edges
    )


@pytest.mark.parametrize("code", languages())
def test_its_headings_are_said_in_every_language(code: str) -> None:
    with speaking(code):
        text = help_on("skirt_block")
    assert "side_waist" in text and ("edges, in order" in text) == (code == "en")
