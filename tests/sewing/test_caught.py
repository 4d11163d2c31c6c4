"""A strip basted to an edge is shown between the layers by the seam that catches it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.lesson.another import open_lesson
from kit.picture.drawing import Stroke
from kit.picture.sewing import scene_drawing
from kit.prose.alt import scene_alt
from kit.sewing import section
from tests.example import EXAMPLE


@pytest.mark.parametrize(
    ("name", "step", "kind", "ends"),
    [("neap_tide_wrap", "attach_facing", "attach_facing", 1), ("lantern_bag", "join_and_turn", "seam_to_turn", 2)],
)
def test_the_seam_that_catches_a_strip_shows_it(name: str, step: str, kind: str, ends: int) -> None:
    pattern = open_lesson(EXAMPLE.with_name(f"{name}.ipynb")).work()
    (record,) = [each for each in pattern.sewing if each.key == step]
    (seam,) = [each for each in record.operations if each.kind == kind]
    scene = seam.scenes(pattern)[0]
    assert [thing.kind for thing in scene.things] == ["caught"] * ends
    assert scene.section is not None and len(scene.section.through(0)) == 3 and "strip" in scene.section.through(0)
    drawing = scene_drawing(scene, pattern)
    assert any(item.role == "hidden" for item in drawing.items if isinstance(item, Stroke) and "caught" in item.name)
    assert "caught between the layers" in scene_alt(pattern, scene)
    for thing in scene.things:
        piece = pattern.piece(thing.run.piece)
        allowance = piece.edge(thing.run.edges[-1] if len(thing.run.edges) == 1 else "wrap_edge").allowance
        assert not piece.outline.contains(thing.line.start) and piece.outline.contains(thing.line.at(allowance + 5))
    basted = ("caught_ties", "straps")
    without = replace(pattern, sewing=tuple(each for each in pattern.sewing if each.key not in basted))
    assert seam.scenes(without)[0].things == ()


def test_the_section_is_counted_by_hand() -> None:
    """Cloth, the folded strip, cloth: the row goes through all three, whose four ends at the seam are cut (the strip's
    other end, and those of the cloths, go on)."""
    drawn = section.caught("main", "facing")
    assert drawn.at(0.0) == ("lower", "strip", "upper") and drawn.through(0) == ("lower", "strip", "upper")
    assert drawn.raw_edges == 3 and drawn.enclosed == 1
