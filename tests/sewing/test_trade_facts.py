"""What operations take and the order of their rows, against published handwork and common practice."""

from __future__ import annotations

import pytest

from kit.units import Length, cm, inch, mm, show

# A Complete Course in Dressmaking, vol. 1 (1921, public domain), p. 98: French seam, first row 1/8 in from the
# edge with the wrong sides together; turn and crease; second row 1/4 in from the crease.
BOOK_FIRST = inch / 8
BOOK_SECOND = inch / 4


@pytest.fixture
def book_seam(wrap):
    table = wrap.table()
    table.make.french_seam(table.front.overarm, table.back.overarm, first=BOOK_FIRST, second=BOOK_SECOND)
    return table.make.operations[0], wrap.pattern_of([])


def test_french_seam_order_agrees_with_the_1921_handbook(book_seam):
    seam, pattern = book_seam
    order = [key.removeprefix("french_seam.") for key, _ in seam.sentences(pattern)]
    assert order.index("pin_wrong") < order.index("first") < order.index("turn") < order.index("second")


def test_french_seam_faces_agree_with_the_1921_handbook(book_seam):
    seam, pattern = book_seam
    first, _trimmed, second, _pressed = seam.scenes(pattern)
    # wrong sides together: the two faces that show outside are right sides, below turned away, above up
    assert [layer.up for layer in first.layers] == ["wrong", "right"]
    assert [layer.up for layer in second.layers] == ["right", "wrong"]


def test_french_seam_rows_lie_where_the_1921_handbook_puts_them(book_seam):
    seam, pattern = book_seam
    first, _trimmed, second, _pressed = seam.scenes(pattern)
    allowance = seam.takes(pattern)[("front", "overarm")]
    assert allowance == pytest.approx(float(BOOK_FIRST + BOOK_SECOND))
    (row,) = first.rows
    assert allowance + row.inset == pytest.approx(float(BOOK_FIRST))  # from the raw edge
    old, new = second.rows
    assert (old.ink, new.ink) == ("old", "new")
    assert new.inset - old.inset == pytest.approx(float(BOOK_SECOND))  # from the crease, which is the first row


def test_french_seam_section_shuts_the_raw_edges_between_the_plies(book_seam):
    section = book_seam[0].scenes(book_seam[1])[2].section
    second_row = min(section.stitches)
    for ply in (each.path for each in section.plies):
        raw_end, crease = ply[-1][0], max(x for x, _ in ply)
        assert second_row[0] < raw_end < crease
        assert second_row[1] < min(y for _, y in ply) and second_row[2] > max(y for _, y in ply)


def test_no_trimming_is_needed_for_the_handbook_rows_but_is_for_wider_first_rows(book_seam, wrap):
    seam, pattern = book_seam
    assert "french_seam.trim_narrow" not in [key for key, _ in seam.sentences(pattern)]
    table = wrap.table()
    table.make.french_seam(table.front.overarm, table.back.overarm, first=6 * mm, second=4 * mm)
    keys = [key for key, _ in table.make.operations[0].sentences(pattern)]
    assert keys.index("french_seam.first") < keys.index("french_seam.trim_narrow") < keys.index("french_seam.second")


def test_three_eighths_make_a_quarter_and_an_eighth():
    """A 3/8 in allowance is sewn as a French seam of 1/4 in, then 1/8 in (common practice, no source)."""
    shown = [show(part, "inch", "allowance") for part in (6, 4)]
    assert shown == ["1/4 in", "1/8 in"]
    assert show(10, "inch", "allowance") == "3/8 in"


def test_an_inch_hem_turned_twice_takes_two_inches(wrap):
    """Common practice, no source."""
    table = wrap.table()
    table.make.hem([table.front.hem, table.back.hem], first=1 * inch, second=1 * inch)
    takes = table.make.operations[0].takes(wrap.pattern_of([]))
    assert takes == {("front", "hem"): pytest.approx(50.8), ("back", "hem"): pytest.approx(50.8)}


def test_a_hem_turned_once_takes_its_depth(wrap):
    """Common practice, no source."""
    table = wrap.table()
    table.make.hem(table.front.hem, first=3 * cm)
    assert table.make.operations[0].takes(wrap.pattern_of([])) == {("front", "hem"): 30.0}


def test_a_strip_folded_in_four_finishes_at_a_quarter(wrap):
    """Common practice, no source."""
    table = wrap.table()
    table.make.fold_strip(table.tie)
    assert table.make.operations[0].finished_width(60.0) == 15.0


def test_a_turned_strip_loses_half_and_its_allowance():
    """Common practice, no source."""
    from kit.sewing.operations.made_strips import TurnStrip

    assert TurnStrip(name="sash", allowance=6.0).finished_width(60.0) == 24.0


def test_a_plain_seam_takes_its_allowance_on_both_edges(wrap):
    table = wrap.table()
    table.make.plain_seam(table.front.side, table.back.side, allowance="5/8 in")
    assert table.make.operations[0].takes(wrap.pattern_of([])) == {
        ("front", "side"): pytest.approx(15.875),
        ("back", "side"): pytest.approx(15.875),
    }


def test_lengths_are_kept_as_plain_millimetres(wrap):
    table = wrap.table()
    table.make.topstitch(table.front.hem, distance=Length(6))
    assert type(table.make.operations[0].distance) is float
