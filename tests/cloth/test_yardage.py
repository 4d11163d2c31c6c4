"""Cloth to buy. Every length belongs to a lay that exists: it is found again from the lay itself. That a lay is never
shorter than area over width is elementary; shrinkage as a share of the length lost: bought x (1 - share) = left."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kit.body.body import Body
from kit.body.chart import workshop_chart
from kit.cloth.cut_list import boxes
from kit.cloth.lay import CuttingTable
from kit.cloth.need import need
from kit.cloth.parts import parts
from kit.cloth.range_lay import TRIES
from kit.cloth.yardage import Yardage, notes, to_buy, yardage
from kit.errors import KitError
from kit.geometry import Line, Path, Point
from kit.lesson.pattern import Pattern
from kit.piece.piece import Piece

SIZES = ("W1", "W4", "W7", "W10")


def larger(piece: Piece, factor: float) -> Piece:
    """`piece` with every edge ruled straight and drawn `factor` times as large."""

    def grown(point: Point) -> Point:
        return Point(point.x * factor, point.y * factor)

    edges = tuple(
        replace(edge, path=Path((Line(grown(edge.path.start), grown(edge.path.end)),))) for edge in piece.edges
    )
    grain = piece.grain and replace(piece.grain, start=grown(piece.grain.start), end=grown(piece.grain.end))
    return replace(piece, edges=edges, grain=grain, notches=(), marks=(), corners=())


@pytest.fixture(scope="session")
def sizes(wrap_top: Pattern) -> tuple[Pattern, ...]:
    chart = workshop_chart()
    info = replace(wrap_top.lesson, cloth_widths=(1400.0, 900.0), shrinkage=0.05)
    return tuple(
        replace(
            wrap_top,
            lesson=info,
            body=chart[name],
            pieces=tuple(larger(piece, 0.85 + 0.1 * at) for piece in wrap_top.pieces),
        )
        for at, name in enumerate(SIZES)
    )


@pytest.fixture(scope="session")
def table(sizes: tuple[Pattern, ...]) -> tuple[Yardage, ...]:
    return yardage(sizes)


def test_every_cloth_width_and_size_has_its_length(table: tuple[Yardage, ...]) -> None:
    assert [(row.cloth, row.width) for row in table] == [("main", 1400.0), ("main", 900.0), ("interfacing", 900.0)]
    for row in table:
        assert tuple(amount.size for amount in row.amounts) == SIZES


def test_every_length_belongs_to_a_lay_that_exists(sizes: tuple[Pattern, ...], table: tuple[Yardage, ...]) -> None:
    for row in table:
        for pattern, amount in zip(sizes, row.amounts, strict=True):
            if amount.trouble:
                continue
            area = sum(part.area(False) * len(part.copies) for part in parts(pattern, row.cloth))
            assert amount.laid >= area / row.width
            assert amount.laid <= need(boxes(pattern, row.cloth), row.width).length + 1e-6
            lost = 0.0 if row.cloth == "interfacing" else 0.05
            assert amount.length * (1 - lost) == pytest.approx(amount.laid)
    for row in table:
        assert all(amount.folds for amount in row.amounts if not amount.trouble)


def test_larger_sizes_take_more(table: tuple[Yardage, ...]) -> None:
    for row in table:
        lengths = [amount.laid for amount in row.amounts if not amount.trouble]
        assert lengths[-1] > lengths[0]


def test_too_narrow_says_for_what(sizes: tuple[Pattern, ...]) -> None:
    wide = replace(sizes[3], lesson=replace(sizes[3].lesson, cloth_widths=(700.0,)))
    (amount,) = yardage([wide])[0].amounts
    assert amount.laid == amount.length == 0.0 and amount.shown() == ""
    assert "Back is" in amount.trouble and "more than cloth of 70 cm" in amount.trouble


def test_the_same_table_each_time(sizes: tuple[Pattern, ...], table: tuple[Yardage, ...]) -> None:
    assert yardage(sizes) == table


def test_a_size_that_was_not_laid(table: tuple[Yardage, ...]) -> None:
    with pytest.raises(KitError, match="size W2 was not laid"):
        table[0].of("W2")


@given(st.floats(1.0, 20000.0), st.floats(0.0, 0.5))
def test_what_is_left_after_washing_is_the_lay(laid: float, share: float) -> None:
    assert to_buy(laid, share) * (1 - share) == pytest.approx(laid)


@pytest.mark.parametrize("share", [-0.01, 1.0, 5.0, math.nan])
def test_no_cloth_shrinks_so(share: float) -> None:
    with pytest.raises(KitError, match="cloth cannot shrink by"):
        to_buy(1000.0, share)


def test_lengths_are_rounded_up_as_cloth_is_sold(sizes: tuple[Pattern, ...]) -> None:
    # Both systems are rounded up from the exact length: tenths of a metre, eighths of a yard (common practice, no
    # source); a yard is 914.4 mm (international yard and pound agreement, 1959).
    (row, *_) = yardage(sizes[:1])
    amount = replace(row.amounts[0], length=1301.0)
    assert amount.shown() == "1.4 m (1 1/2 yd)"
    assert amount.shown("inch") == "1 1/2 yd (1.4 m)"
    assert replace(amount, length=1300.0).shown() == "1.3 m (1 1/2 yd)"


def test_notes_say_how_and_what_is_lost(sizes: tuple[Pattern, ...]) -> None:
    found = notes(sizes[0])
    assert len(found) == 2 and "5%" in found[1]
    napped = replace(sizes[0], lesson=replace(sizes[0].lesson, nap="one_way", shrinkage=0.0))
    assert len(notes(napped)) == 3 and "Nothing is added" in notes(napped)[1]


def test_a_body_without_a_size(wrap_top: Pattern) -> None:
    mine = replace(wrap_top, body=Body("my own", wrap_top.body.measures))
    table = CuttingTable.of(mine, "main")
    assert yardage([mine])[0].of("my own").laid == min(each.length for each in table.tries(1400.0, TRIES))
