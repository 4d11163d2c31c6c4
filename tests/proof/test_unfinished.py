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
        ("dune_skirt", "buttons", "buttonhole 1 has no button to go through it"),
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


def test_braces_in_a_notion_are_told_since_nothing_is_filled_in_there() -> None:
    skirt = lesson("dune_skirt")
    own = skirt.lesson.notions
    assert not [finding for finding in prove(skirt) if finding.code == "notion_braces"]
    braced = replace(skirt, lesson=replace(skirt.lesson, notions=(*own, "zip, {opening_size}", "zip, {opening:inch}")))
    found = [finding for finding in prove(braced) if finding.code == "notion_braces"]
    assert [finding.level for finding in found] == ["warning", "warning"]
    assert "{opening_size}" in found[0].what and "{opening:inch}" in found[1].what and found[0].do


def test_a_buttonhole_without_a_button_says_where_a_tie_goes_through() -> None:
    found = [finding for finding in prove(without(lesson("dune_skirt"), "buttons")) if finding.code == "never_used"]
    assert any("make.buttons" in finding.do and "leave_open" in finding.do for finding in found)


def amounts_of(pattern: Pattern, *notions: str) -> list[str]:
    listed = replace(pattern, lesson=replace(pattern.lesson, notions=("sewing thread", "interfacing", *notions)))
    return [each.what for each in prove(listed) if each.code in ("notion_count", "notion_length")]


def test_notions_are_counted_and_measured_against_the_list() -> None:
    skirt = lesson("dune_skirt")  # one button, a zip of 18 cm
    assert amounts_of(skirt, "zip, 18 cm", "1 button, 18 mm") == []
    assert amounts_of(skirt, "a zip", "a button") == []  # nothing is told to compare with
    (buttons,) = amounts_of(skirt, "zip, 18 cm", "3 buttons, 18 mm across")
    assert "buttons: 1, and the list of notions has 3" in buttons
    (zip_,) = amounts_of(skirt, "zip, 22 cm", "1 button")
    assert "18 cm" in zip_ and "22 cm" in zip_
    assert amounts_of(skirt, "zip, 7 in", "1 button, 3/4 in") == []  # 17.8 cm


@pytest.mark.parametrize("name", ["tideline_wrap_top", "dune_skirt", "harbour_jacket", "ferry_tote"])
def test_the_examples_list_what_they_use(name: str) -> None:
    assert not [each.what for each in prove(lesson(name)) if each.code in ("notion_count", "notion_length")]


def test_a_raw_edge_left_inside_gets_a_note_where_nothing_hides_it() -> None:
    """What frays and what does not is common practice, no source."""
    for name in ("tideline_wrap_top", "dune_skirt", "harbour_jacket", "ferry_tote"):
        assert not [finding for finding in prove(lesson(name)) if finding.code == "raw_inside"], name
    skirt = lesson("dune_skirt")

    def with_sides(**changes: object) -> Pattern:
        steps = tuple(
            replace(
                record,
                operations=tuple(replace(o, **changes) if o.kind == "plain_seam" else o for o in record.operations),
            )
            for record in skirt.sewing
        )
        return replace(skirt, sewing=steps)

    raw = with_sides(finish="none")
    found = [finding for finding in prove(raw) if finding.code == "raw_inside"]
    assert [(finding.level, finding.piece, finding.edge) for finding in found] == [
        ("note", "front", "side"),
        ("note", "back", "side"),
    ]
    assert "side seam is left raw inside" in found[0].what and "overcast" in found[0].do
    lined = replace(raw, pieces=(*raw.pieces, replace(raw.piece("front"), name="front_lining", role="lining")))
    assert not [finding for finding in prove(lined) if finding.code == "raw_inside"]
