"""What was begun and never finished, and notions listed for nothing."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.lesson.pattern import Pattern
from kit.proof import prove
from tests.proof.test_mutants import lesson


def without(pattern: Pattern, kind: str) -> Pattern:
    steps = tuple(
        replace(record, operations=tuple(o for o in record.operations if o.kind != kind)) for record in pattern.sewing
    )
    return replace(pattern, sewing=steps)


@pytest.mark.parametrize(
    ("name", "kind", "said"),
    [
        ("dune_skirt", "buttons", "the buttonhole 1 has no button to go through it"),
        ("dune_skirt", "turn_out", "sewn to be turned right side out and never is"),
        ("dune_skirt", "close_band", "the band set on along the outer edge is never closed"),
        ("harbour_jacket", "patch_pocket", "the bottom is pressed under and never sewn down"),
    ],
)
def test_what_is_prepared_must_be_used(name: str, kind: str, said: str) -> None:
    found = [finding for finding in prove(without(lesson(name), kind)) if finding.code == "never_used"]
    assert any(said in finding.what for finding in found), [finding.what for finding in found]
    assert all(finding.level == "error" and finding.do and finding.step and finding.piece for finding in found)


def test_every_notion_listed_is_used_and_every_notion_used_is_listed() -> None:
    skirt = lesson("dune_skirt")
    more = replace(skirt, lesson=replace(skirt.lesson, notions=(*skirt.lesson.notions, "1 m of elastic")))
    (spare,) = [finding for finding in prove(more) if finding.code == "notion_spare"]
    assert "1 m of elastic" in spare.what
    fewer = replace(skirt, lesson=replace(skirt.lesson, notions=("sewing thread", "interfacing")))
    missing = [finding.what for finding in prove(fewer) if finding.code == "notion_missing"]
    assert len(missing) == 2 and "buttons" in missing[0] and "zip" in missing[1]
