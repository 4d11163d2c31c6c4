"""Fittings: recorded in the notebook or at a live try-on, kept beside the notebook, taken back."""

from __future__ import annotations

import json
from collections.abc import Callable
from operator import attrgetter

import pytest

from kit.errors import KitError
from kit.lesson.cells import added
from kit.lesson.fitting import Begun, Change, Fitting, FittingCell, as_data, fitting_between, from_data
from kit.lesson.lesson import Lesson
from kit.lesson.moved import differences, direction, moved_pieces
from kit.units import cm, mm

Making = Callable[[], Lesson]


def kept(lesson: Lesson) -> dict[str, object]:
    found: dict[str, object] = json.loads(lesson.sitting.sidecar.read_text("utf-8"))
    return found


def test_a_fitting_of_the_notebook_changes_no_value(make_lesson: Making) -> None:
    lesson = make_lesson()
    lesson.share("wrap", 0.7, least=0.3, most=1.0)
    lesson.fitting("First toile", "It rode up.", hem_drop=(8 * cm, "9 cm"), wrap=(0.7, 0.8), date="2026-05-04")
    changes = (Change("hem_drop", 80.0, 90.0), Change("wrap", 0.7, 0.8))
    assert lesson.fittings == (Fitting("First toile", "2026-05-04", "It rode up.", changes),)
    assert lesson.values == {"hem_drop": 80.0, "wrap": 0.7}
    assert not lesson.sitting.sidecar.exists()


def test_written_again_it_replaces_itself(make_lesson: Making) -> None:
    lesson = make_lesson()
    lesson.fitting("First", "short", hem_drop=(8 * cm, 9 * cm))
    lesson.fitting("Second", "shorter", hem_drop=(9 * cm, 10 * cm))
    lesson.fitting("First", "too short", hem_drop=(8 * cm, 8.5 * cm))
    assert [(f.title, f.why) for f in lesson.fittings] == [("First", "too short"), ("Second", "shorter")]


def test_a_cell_run_again_replaces_what_it_wrote() -> None:
    one, two = (Fitting(title, "", "", (Change("a", 1.0, 2.0),)) for title in ("One", "Two"))
    renamed = Fitting("Uno", "", "", one.changes)
    title = attrgetter("title")
    written = (FittingCell(one, "c1", 1), FittingCell(two, "c2", 2))
    assert [w.fitting.title for w in added(written, FittingCell(renamed, "c1", 3), title)] == ["Uno", "Two"]
    both = added((FittingCell(one, "c1", 1),), FittingCell(two, "c1", 1), title)  # two in one cell
    assert [w.fitting.title for w in both] == ["One", "Two"]


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"hem_dorp": (8 * cm, 9 * cm)}, "hem_drop"),
        ({"hem_drop": (8 * cm, 30 * cm)}, "outside its range"),
        ({"hem_drop": (8 * cm, 8 * cm)}, "before and after"),
        ({"hem_drop": 9 * cm}, "two values"),
        ({"hem_drop": (8, 9)}, "no unit"),
        ({}, "Name a parameter"),
    ],
)
def test_what_cannot_be_is_refused_in_plain_words(make_lesson: Making, changes: dict[str, object], said: str) -> None:
    lesson = make_lesson()
    with pytest.raises(KitError, match=said) as refused:
        lesson.fitting("First toile", "why", **changes)
    assert "First toile" in refused.value.where and refused.value.do
    assert lesson.fittings == ()


def test_a_live_fitting_is_kept_and_survives_the_kernel(make_lesson: Making) -> None:
    lesson = make_lesson()
    lesson.begin_fitting("First toile")
    lesson.change(hem_drop=9.5 * cm)
    lesson.keep_fitting("It rode up when the arms were raised.", date="2026-05-04")
    again = make_lesson()
    assert again.values["hem_drop"] == 95.0
    expected = Fitting(
        "First toile", "2026-05-04", "It rode up when the arms were raised.", (Change("hem_drop", 80.0, 95.0),)
    )
    assert again.fittings == lesson.fittings == (expected,)


def test_what_else_stands_in_the_sidecar_survives(make_lesson: Making) -> None:
    lesson = make_lesson()
    lesson.sitting.sidecar.write_text(json.dumps({"values": {}, "video": {"marks": {"lower": 12.0}}, "later": [1, 2]}))
    lesson = make_lesson()
    lesson.begin_fitting("One")
    lesson.change(hem_drop=9 * cm)
    lesson.keep_fitting("why")
    lesson.save()
    data = kept(lesson)
    assert data["later"] == [1, 2] and data["video"] == {"marks": {"lower": 12.0}}
    assert data["fittings"] and data["values"] == {"hem_drop": 90.0}


def test_taking_back_sets_the_values_back(make_lesson: Making) -> None:
    lesson = make_lesson()
    for title, drop in (("One", 9 * cm), ("Two", 10.05 * cm)):
        lesson.begin_fitting(title)
        lesson.change(hem_drop=drop)
        lesson.keep_fitting("why", date="")
    with pytest.raises(KitError, match="'Two' changed hem drop again"):
        lesson.take_back(0)
    assert lesson.take_back(1).title == "Two"
    assert lesson.values["hem_drop"] == 90.0 and [f.title for f in lesson.fittings] == ["One"]
    assert [f.title for f in make_lesson().fittings] == ["One"]
    lesson.take_back(0)
    assert lesson.values["hem_drop"] == 80.0 and lesson.fittings == () and kept(lesson)["fittings"] == []


def test_taking_back_what_is_not_there_or_written_is_refused(make_lesson: Making) -> None:
    lesson = make_lesson()
    with pytest.raises(KitError, match="no fitting 0"):
        lesson.take_back(0)
    lesson.fitting("Written", "why", hem_drop=(8 * cm, 9 * cm))
    with pytest.raises(KitError, match="Delete its cell"):
        lesson.take_back(0)


def test_a_fitting_not_begun_or_without_change_is_refused(make_lesson: Making) -> None:
    lesson = make_lesson()
    with pytest.raises(KitError, match="begin_fitting"):
        lesson.keep_fitting("why")
    lesson.begin_fitting("One")
    with pytest.raises(KitError, match="nothing has changed"):
        lesson.keep_fitting("why")
    with pytest.raises(KitError, match="title"):
        lesson.begin_fitting(" ")


def test_values_in_fitting_out(make_lesson: Making) -> None:
    lesson = make_lesson()
    begun = Begun("One", (("hem_drop", 80.0), ("gone", 1.0)))
    found = fitting_between(begun, "why", "", {"hem_drop": 90.0}, lesson.parameters)
    assert found.before == {"hem_drop": 80.0} and found.after == {"hem_drop": 90.0}
    assert from_data(as_data([found])) == ((found,), "")


def test_broken_fittings_in_the_sidecar_are_told_and_the_rest_kept() -> None:
    good = as_data([Fitting("One", "", "", (Change("a", 1.0, 2.0),))])
    found, trouble = from_data([*good, {"title": "no changes"}, 7])
    assert [f.title for f in found] == ["One"] and trouble.startswith("2 of")
    assert from_data(None) == ((), "") and from_data("text")[1]


def test_a_variation_has_fittings_of_its_own(make_lesson: Making) -> None:
    lesson = make_lesson()
    lesson.fitting("One", "why", hem_drop=(8 * cm, 9 * cm))
    other = lesson.variation("Longer block")
    assert other.fittings == () and len(lesson.fittings) == 1


# ---- what moved -------------------------------------------------------------------------------------------


def test_a_lowered_hem_moves_the_hem_and_no_other_line(make_lesson: Making) -> None:
    lesson = make_lesson()
    before, after = (lesson.work(values={"hem_drop": drop}) for drop in (80.0, 100.0))
    assert moved_pieces(before, after) == ("front",)
    shifts = differences(before, after, "front")
    hem = [shift for shift in shifts if shift.edge == "hem"]
    assert [(s.place, round(s.dx, 6), round(s.dy, 6)) for s in hem] == [("start", 0.0, -20.0), ("end", 0.0, -20.0)]
    assert {direction(s) for s in hem} == {"down"}
    assert all(s.size < 1.0 for s in shifts if s.edge != "hem"), "what only became longer has not moved"
    assert moved_pieces(before, before) == ()
    assert differences(before, after, "back") == ()


def test_a_raised_shoulder_tapers_to_nothing_at_the_neck(tideline: Lesson) -> None:
    before, after = (tideline.work(values={"shoulder_lift": lift}) for lift in (8.0, 12.0))
    start, end = sorted(
        (s for s in differences(before, after, "back") if s.edge == "overarm"), key=lambda shift: shift.size
    )
    assert start.size == 0 and end.size == pytest.approx(11.8, abs=0.5) and direction(end) == "up"
    assert (
        end.to == after.piece("back").edge("overarm").path.end
        or end.to == after.piece("back").edge("overarm").path.start
    )
    assert float(4 * mm) < end.size
    assert set(moved_pieces(before, after)) == {"front", "back", "front_facing", "back_facing"}


def test_an_allowance_moves_no_line(tideline: Lesson) -> None:
    before, after = (tideline.work(values={"seam": seam}) for seam in (10.0, 12.0))
    assert moved_pieces(before, after) == ()
