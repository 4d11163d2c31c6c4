"""Parameters, steps and working."""

from __future__ import annotations

import pickle
from collections.abc import Callable
from dataclasses import FrozenInstanceError

import pytest

from kit.blocks.bodice import bodice_block
from kit.blocks.traced import Traced
from kit.errors import KitError
from kit.lesson.lesson import Lesson
from kit.units import cm, mm

Make = Callable[[], Lesson]


def test_a_pattern_is_frozen_and_can_be_handed_over(make_lesson: Make) -> None:
    pattern = make_lesson().work()
    assert pickle.loads(pickle.dumps(pattern)) == pattern
    with pytest.raises(FrozenInstanceError):
        pattern.pieces[0].title = "x"  # type: ignore[misc]


def test_a_record_says_what_is_new_kept_and_removed(make_lesson: Make) -> None:
    record = make_lesson().work().steps[0]
    assert [(piece, name) for piece, name, _ in record.new] == [("front", "hem")]
    assert {name for _, name, _ in record.removed} == {"hip", "side", "centre"}
    (spot,) = record.spots
    assert (spot.name, spot.value, spot.label) == ("hem_drop", 80.0, "hem drop")
    assert spot.start.distance(spot.end) == pytest.approx(80.0)
    assert record.values == (("hem_drop", 80.0, "length"),)


def test_values_move_the_draft_and_nothing_else(make_lesson: Make) -> None:
    lesson = make_lesson()
    short, long = lesson.work(values={"hem_drop": 50.0}), lesson.work(values={"hem_drop": 120.0})
    assert short.piece("front").edge("hem").path.start.y == pytest.approx(-50.0)
    assert long.piece("front").edge("hem").path.start.y == pytest.approx(-120.0)
    assert short.piece("back") == long.piece("back")
    assert lesson.work(values={"hem_drop": 50.0}) == short


def test_a_bare_number_is_refused(make_lesson: Make) -> None:
    lesson = make_lesson()
    with pytest.raises(KitError, match=r"Parameter 'sleeve': 23 has no unit. Write 23 \* cm"):
        lesson.length("sleeve", 23, least=0 * cm, most=60 * cm)
    lesson.step("Slip")(lambda front: front.mark(tip=front.shoulder_tip.up(2)))
    with pytest.raises(KitError, match="Step 'Slip', up: 2 has no unit"):
        lesson.work()


def test_a_mistyped_edge_name_is_caught_on_both_sides(make_lesson: Make) -> None:
    lesson = make_lesson()

    def wrong(front):
        front.hemm = front.hem.parallel(1 * cm, "down")

    lesson.step("Wrong")(wrong)
    with pytest.raises(KitError, match=r"no edge, line or point 'hemm' to change. Did you mean 'hem'"):
        lesson.work()
    lesson.remove("wrong")
    lesson.step("Other")(lambda front: front.sholder_tip.up(1 * cm))
    with pytest.raises(KitError, match="Did you mean 'shoulder_tip'"):
        lesson.work()


def test_a_mistyped_argument_is_refused_with_the_near_name(make_lesson: Make) -> None:
    lesson = make_lesson()
    lesson.step("Wrong")(lambda frnt: None)
    with pytest.raises(KitError, match=r"'frnt'. Did you mean 'front'"):
        lesson.work()


def test_a_new_edge_says_what_it_replaces(make_lesson: Make) -> None:
    lesson = make_lesson()
    lesson.step("Loose")(lambda front: front.draw(slit=front.neck_point.to(front.shoulder_tip)))
    with pytest.raises(KitError, match="not said what slit stands instead of"):
        lesson.work()


def test_the_text_may_name_only_what_the_step_knows(make_lesson: Make) -> None:
    lesson = make_lesson()

    def told(front):
        """Lower it by {hem_dropp}."""

    lesson.step("Told")(told)
    with pytest.raises(KitError, match=r"the text names \{hem_dropp\}"):
        lesson.work()


def test_running_a_step_again_replaces_it(make_lesson: Make) -> None:
    lesson = make_lesson()
    lesson.step("After")(lambda front: None)

    def lower(front, hem_drop):
        """Only {hem_drop}."""
        front.draw(hem=front.waist.parallel(hem_drop, "down"), instead_of=front.hip)
        front.join(front.side, front.hem)
        front.join(front.hem, front.centre)

    lesson.step("Lower the hem, again")(lower)
    assert [e.title for e in lesson.entries] == ["Lower the hem, again", "After"]


def test_a_piece_that_does_not_close_says_where(make_lesson: Make) -> None:
    lesson = make_lesson()
    lesson.step("Gap")(lambda front: front.draw(hem2=front.hem.parallel(1 * cm, "down"), instead_of=front.hem))
    with pytest.raises(KitError, match="hem2"):
        lesson.work()


def test_edges_that_cross_are_named(make_lesson: Make) -> None:
    lesson = make_lesson()

    def cross(front):
        low = front.centre.start.down(5 * cm)
        front.draw(
            hem=front.side.end.to(front.centre_neck), centre=low.to(front.centre_neck), instead_of=("hem", "centre")
        )

    lesson.step("Cross")(cross)
    with pytest.raises(KitError):
        lesson.work()


def test_code_that_stops_is_reported_by_its_step(make_lesson: Make) -> None:
    lesson = make_lesson()
    lesson.step("Stops")(lambda front: 1 / 0)
    with pytest.raises(KitError, match=r"Step 'Stops', at .*: the step's own code stopped: ZeroDivisionError"):
        lesson.work()


def test_ranges(make_lesson: Make) -> None:
    lesson = make_lesson()
    with pytest.raises(KitError, match=r"hem drop is 40 cm \(15 3/4 in\), outside its range of 2 cm"):
        lesson.work(values={"hem_drop": 400.0})
    with pytest.raises(KitError, match=r"no parameter 'hem_drp'. Did you mean 'hem_drop'"):
        lesson.work(values={"hem_drp": 50.0})
    with pytest.raises(KitError, match="outside its range"):
        lesson.length("other", 9 * cm, least=1 * cm, most=2 * cm)


def test_values_outlive_the_lesson(make_lesson: Make) -> None:
    lesson = make_lesson()
    lesson.change(hem_drop=11 * cm)
    lesson.choose(size="W7", units="inch")
    lesson.save()
    again = make_lesson()
    assert again.values == {"hem_drop": 110.0} and again.body.name == "W7" and again.units == "inch"
    lesson.sitting.sidecar.write_text("{ broken")
    broken = make_lesson()
    assert "cannot be read" in str(broken.sitting.saved.trouble) and broken.values == {"hem_drop": 80.0}
    broken.save()
    assert lesson.sitting.sidecar.with_suffix(".json.broken").read_text() == "{ broken"


def test_a_build_never_writes_the_values(make_lesson: Make, monkeypatch: pytest.MonkeyPatch) -> None:
    lesson = make_lesson()
    monkeypatch.setenv("LESSONKIT_BUILD", "1")
    lesson.save()
    assert not lesson.sitting.sidecar.exists()


def test_a_variation_keeps_the_rest(make_lesson: Make) -> None:
    lesson = make_lesson()
    long = lesson.variation("Long block")
    long.change(hem_drop=15 * cm)
    long.step("Notch")(lambda front: front.notch("side", 5 * cm))
    assert len(lesson.entries) == 1 and len(long.entries) == 2 and long.parent is lesson
    assert lesson.work().piece("front").notches == ()
    assert long.work().value("hem_drop") == 150.0 and lesson.work().value("hem_drop") == 80.0


def test_a_bag_without_a_block() -> None:
    """The first evening's tote: one rectangle on fresh paper."""
    tote = Lesson("Ferry tote", start=lambda body: ())
    tote.length("width", 40 * cm, least=20 * cm, most=60 * cm)
    tote.length("depth", 45 * cm, least=20 * cm, most=60 * cm)

    @tote.step("Draw the bag", makes="bag")
    def bag(bag, width, depth):
        """Draw a rectangle half of {width} wide and {depth} deep; the left edge lies on the fold."""
        corner = bag.place(0, 0)
        right, top = corner.out(width / 2), corner.up(depth)
        far = right.up(depth)
        bag.draw(fold_line=corner.to(top), top=top.to(far), side=far.to(right), bottom=right.to(corner))
        bag.measure(width=(corner, right), depth=(corner, top))
        bag.allow(top=4 * cm, side=1 * cm, bottom=1 * cm)
        bag.cut(2, fold="fold_line")
        bag.grain()

    piece = tote.work().piece("bag")
    assert abs(piece.outline.area) == pytest.approx(200.0 * 450.0)
    assert [e.allowance for e in piece.edges] == [0.0, 40.0, 10.0, 10.0]


def test_a_skirt_from_a_traced_outline() -> None:
    """A lesson may start from a traced piece instead of a block."""
    traced = Traced(
        "My skirt",
        {
            "front": {
                "centre": [(0, 0), (0, 60)],
                "waist": [(0, 60), (9, 60.4), (18, 61.5)],
                "side": [(18, 61.5), (23, 42), (27, 0)],
                "hem": [(27, 0), (0, 0)],
            }
        },
        unit="cm",
    )
    skirt = Lesson("Dune skirt", start=traced)
    skirt.length("longer", 5 * cm, least=0 * cm, most=20 * cm)

    @skirt.step("Lengthen it")
    def lengthen(front, longer):
        """Rule a new hem {longer} below the old one."""
        front.draw(new_hem=front.hem.parallel(longer, "down"), instead_of=front.hem)
        front.join(front.side, front.new_hem)
        front.join(front.new_hem, front.centre)

    piece = skirt.work().piece("front")
    assert piece.edge("centre").path.length == pytest.approx(650.0, abs=0.01)
    assert piece.outline.self_crossing() is None


def test_lesson_wants_a_start_and_units() -> None:
    with pytest.raises(KitError, match="units are 'cm' or 'inch'"):
        Lesson("x", start=bodice_block, units="feet")  # type: ignore[arg-type]
    with pytest.raises(KitError, match="starts from a block"):
        Lesson("x", start="bodice")  # type: ignore[arg-type]
    assert Lesson("Tideline: wrap top!", start=bodice_block).info.slug == "tideline-wrap-top"
    assert 3 * mm == 3.0
