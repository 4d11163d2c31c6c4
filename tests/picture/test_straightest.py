"""Where pieces opened out are laid: along the straightest edge of a run, the first where some are alike."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path as FilePath

import pytest

from kit import open_lesson
from kit.geometry import Path, Point
from kit.lesson.pattern import Pattern
from kit.picture.laid import straightest
from kit.sewing.run import Run

ROOT = FilePath(__file__).parents[2]
SIDES = ("left_side", "left_corner", "bottom", "right_corner", "right_side")


@pytest.fixture(scope="module")
def bag() -> Pattern:
    """A lining as high on the left as on the right."""
    made: Pattern = open_lesson(ROOT / "example_notebooks" / "lantern_bag.ipynb").work()
    return made


def longer(pattern: Pattern, edge: str, by: float) -> Pattern:
    """The lining's left or right side begun or ended so much higher."""
    lining = pattern.piece("front_lining")
    line = lining.edge(edge).path
    up = {"left_side": (by, 0.0), "right_side": (0.0, by)}[edge]
    path = Path.line(Point(line.start.x, line.start.y + up[0]), Point(line.end.x, line.end.y + up[1]))
    changed = lining.with_edges(**{edge: replace(lining.edge(edge), path=path)})
    return replace(pattern, pieces=tuple(changed if p.name == lining.name else p for p in pattern.pieces))


@pytest.mark.parametrize("edge", ["left_side", "right_side"])
@pytest.mark.parametrize("by", [0.0, 1e-13, 1e-10])
def test_of_edges_alike_it_is_the_first_whatever_the_last_bit_says(bag: Pattern, edge: str, by: float) -> None:
    """Two Pythons, and two machines, may add the last bit otherwise."""
    assert straightest(Run("front_lining", SIDES), longer(bag, edge, by)).edges == ("left_side",)
    assert straightest(Run("front_lining", SIDES[::-1]), longer(bag, edge, by)).edges == ("right_side",)


def test_one_that_is_longer_is_longer(bag: Pattern) -> None:
    assert straightest(Run("front_lining", SIDES), longer(bag, "right_side", 0.1)).edges == ("right_side",)
