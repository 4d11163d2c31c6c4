"""Each seam's cross-section by its structure: which ply is where, what a row goes through, how many cut edges are
shut in. The counts are worked by hand from the textbook diagrams of each seam (common practice, no source)."""

from __future__ import annotations

import pytest

from kit.sewing import section

BY_HAND = {
    # name: (section, cut edges, of these shut in)
    "plain": (section.superimposed(), 2, 0),
    "pressed open": (section.pressed_open(), 2, 0),
    "French, first row": (section.french_first(), 2, 0),
    "French": (section.french_second(), 2, 2),
    "faced": (section.faced(), 2, 2),
    "hem turned once": (section.hem_once(), 1, 0),
    "hem turned twice": (section.hem_twice(10.0, 20.0), 1, 1),
    "hem of equal turns": (section.hem_twice(6.0, 6.0), 1, 1),
    "strip in four": (section.folded_in_four(), 2, 2),
    "strip turned": (section.turned_tube(), 2, 2),
}


@pytest.mark.parametrize("name", BY_HAND)
def test_cut_edges_shut_in(name):
    found, raw, enclosed = BY_HAND[name]
    assert (found.raw_edges, found.enclosed) == (raw, enclosed)


def test_rows_go_through_what_they_hold():
    assert section.superimposed().through(0) == ("lower", "upper")
    first, second = 0, 1
    assert section.french_second().through(first) == ("lower", "upper")
    assert section.french_second().through(second) == ("lower", "upper")
    assert section.faced(understitched=True).through(0) == ("facing", "facing", "garment")
    assert section.hem_once().through(0) == ("main", "main")
    assert section.hem_twice(10.0, 20.0).through(0) == ("main",) * 3


def test_what_lies_where():
    assert section.french_second().at(6.0) == ("lower", "lower", "upper", "upper")
    assert section.pressed_open().at(-3.0) == ("left", "left")
    assert section.faced().at(-2.0) == ("facing", "facing", "garment", "garment")


def test_folds():
    assert [ply.folds for ply in section.folded_in_four().plies] == [3]
    assert [ply.folds for ply in section.hem_twice(6.0, 6.0).plies] == [2]
    assert [ply.folds for ply in section.pressed_open().plies] == [1, 1]
