"""Cutting and marking: every notch, mark, dart and interfacing of every piece is told, and the allowances it is cut
with (counted from the pieces themselves)."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from kit.booklet.marking import marking
from kit.lesson.pattern import Pattern
from kit.sewing.operations.hems import Hem
from kit.units import both
from tests.renamed import plain_lesson, work


@pytest.fixture(scope="module", params=["tideline_wrap_top", "dune_skirt", "ferry_tote"])
def pattern(request: pytest.FixtureRequest) -> Pattern:
    return work(plain_lesson(f"{request.param}.ipynb"))


def test_each_piece_has_its_row_with_every_notch_mark_and_dart(pattern: Pattern) -> None:
    told = marking(pattern)
    assert told.table is not None
    assert [row[0] for row in told.table.rows] == sorted((str(piece.number) for piece in pattern.pieces), key=int)
    column = {title: i for i, title in enumerate(told.table.head)}
    for piece in pattern.pieces:
        row = next(row for row in told.table.rows if row[0] == str(piece.number))
        if piece.notches:
            counts = [int(found) for found in re.findall(r": (\d+)", row[column["Notches"]])]
            assert sum(counts) == len(piece.notches)
        for name in [mark.label for mark in piece.marks] + [dart.name.replace("_", " ") for dart in piece.darts]:
            assert name in row[column["Marks"]]
        if piece.cut.interfacing:
            assert str(piece.cut.interfacing) in row[column["Interfacing"]]


def test_the_allowances_are_those_the_pieces_are_cut_with(pattern: Pattern) -> None:
    line = marking(pattern).allowances
    widths = {edge.allowance + edge.extra for piece in pattern.pieces for edge in piece.edges
              if edge.allowance and edge.name != piece.fold}  # fmt: skip
    for width in widths:
        assert both(width, pattern.lesson.units, "allowance") in line


def test_a_sleeve_that_is_hemmed_counts_among_the_hems() -> None:
    pattern = work(plain_lesson("tideline_wrap_top.ipynb"))
    seams, hems = marking(pattern).allowances.split(";")
    opening = pattern.piece("front").edge("opening").allowance
    assert opening is not None
    said = both(opening, pattern.lesson.units, "allowance")
    assert said in hems and said not in seams


def test_a_hem_is_one_whatever_it_is_called(monkeypatch: pytest.MonkeyPatch) -> None:
    pattern = work(plain_lesson("tideline_wrap_top.ipynb"))
    line = marking(pattern).allowances
    kinds = {type(op) for record in pattern.sewing for op in record.operations if isinstance(op, Hem)}
    assert kinds
    for kind in kinds:
        monkeypatch.setattr(kind, "kind", "turned_edge")
    assert marking(pattern).allowances == line


def test_widths_that_read_alike_are_told_once() -> None:
    """10 mm and 10.2 mm are 1 cm on a ruler."""
    pattern = work(plain_lesson("ferry_tote.ipynb"))
    first, *others = pattern.pieces
    edges = tuple(replace(e, allowance=10.2 if i % 2 else 10.0, role="outer") for i, e in enumerate(first.edges))
    line = marking(replace(pattern, pieces=(replace(first, edges=edges), *others))).allowances
    seams, _ = line.split(";")
    assert seams.count(both(10.0, pattern.lesson.units, "allowance")) == 1, line


def test_what_no_piece_asks_for_is_not_told() -> None:
    """The tote has no interfacing: no column of it, and no step."""
    told = marking(work(plain_lesson("ferry_tote.ipynb")))
    assert told.table is not None and "Interfacing" not in told.table.head
    assert not any("interfacing" in step for step in told.steps)
