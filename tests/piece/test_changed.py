"""A value with some fields changed: what the standard library's `replace` gives."""

from __future__ import annotations

from dataclasses import FrozenInstanceError, fields, replace

import pytest

from kit import bodice_block, workshop_chart
from kit.geometry import Path, Point
from kit.piece.changed import changed
from kit.piece.piece import Edge, Piece

FRONT = bodice_block(workshop_chart()["W4"])[0]


def test_it_is_what_the_standard_library_makes() -> None:
    """Reference: dataclasses.replace."""
    edges = tuple(replace(edge, allowance=10.0) for edge in FRONT.edges)
    for given in ({}, {"title": "Front facing"}, {"edges": edges, "number": 3}, {"role": None, "landmarks": None}):
        made, wanted = changed(FRONT, **given), replace(FRONT, **given)
        assert made == wanted and type(made) is Piece and made is not FRONT
        assert [getattr(made, field.name) for field in fields(Piece)] == [
            getattr(wanted, field.name) for field in fields(Piece)
        ]


def test_what_a_class_finds_out_is_found_out_again() -> None:
    edge = Edge("hem", Path.line(Point(0, 0), Point(100, 0)))
    assert edge.role == "hem" and changed(edge, name="fald", role=None).role == ""


def test_what_was_worked_out_of_the_old_one_stays_behind() -> None:
    outline = FRONT.outline
    longer = tuple(replace(edge, name=f"{edge.name}_2") for edge in FRONT.edges)
    assert changed(FRONT, edges=longer).outline != outline and FRONT.outline is outline


def test_what_is_no_field_is_refused_and_it_stays_frozen() -> None:
    with pytest.raises(TypeError, match="Piece has no field size, tilte"):
        changed(FRONT, tilte="Front", size=1)
    with pytest.raises(FrozenInstanceError):
        changed(FRONT).title = "Back"  # type: ignore[misc]
