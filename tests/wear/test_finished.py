"""Finished measurements that a garment has by itself."""

from __future__ import annotations

import pytest

from kit.booklet.tables import ease_table
from kit.live.fragments import finished
from kit.wear.finished import fitted
from tests.wear.garments import lesson_of


def test_a_dress_tells_bust_waist_and_hip_with_their_ease() -> None:
    pattern = lesson_of("shift").work()
    rows = {row.measure: row for row in fitted(pattern)}
    assert list(rows) == ["bust_girth", "waist_girth", "hip_girth"]
    # The block has 10 cm of ease round the bust and 8 round the hip; the darts leave 4 at the waist.
    assert [rows[name].ease for name in rows] == [pytest.approx(each, abs=1.5) for each in (100.0, 41.0, 80.0)]
    assert all(row.girth - row.ease == pattern.body[name] for name, row in rows.items())


def test_what_the_lesson_measures_itself_is_not_told_twice() -> None:
    """The skirt's own waist is that of the band; the wrap top's own chest is taken 9 cm below the bust."""
    assert [row.measure for row in fitted(lesson_of("dune_skirt").work())] == ["hip_girth"]
    assert "bust_girth" in [row.measure for row in fitted(lesson_of("tideline_wrap_top").work())]


def test_a_sleeve_is_told_at_the_upper_arm() -> None:
    """The blouse's sleeve has 6 cm of ease."""
    rows = {row.measure: row.ease for row in fitted(lesson_of("blouse").work())}
    assert rows["upper_arm_girth"] == pytest.approx(60.0, abs=2.0)


def test_ease_may_be_less_than_nothing() -> None:
    rows = {row.measure: row.ease for row in fitted(lesson_of("full_skirt").work())}
    assert rows["waist_girth"] == pytest.approx(660.0 - 715.0)


def test_a_bag_has_none() -> None:
    assert fitted(lesson_of("ferry_tote").work()) == ()


def test_they_stand_in_the_booklet_and_on_the_panel() -> None:
    pattern = lesson_of("dune_skirt").work()
    table = ease_table(pattern)
    assert table is not None
    assert ("Finished girth at the hip", "Hip girth", "96 cm (37 3/4 in)", "4 cm (1 9/16 in)") in table.rows
    assert "Finished girth at the hip" in finished(pattern, "cm") and "Waist, buttoned" in finished(pattern, "cm")
