"""The canvas without a browser: what it sends, where its handles stand, and what a drag does to the lesson."""

from __future__ import annotations

import asyncio
import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from kit import Body, KitError, Lesson, canvas, cm, panel, skirt_block, trouser_block, workshop_chart
from kit.geometry import parallel
from kit.language import say
from kit.live.beside import beside
from kit.live.canvas.handles import Ground, Handle, handles, on_scale
from kit.live.canvas.outline import levels
from kit.live.canvas.sewn import fates
from kit.live.canvas.shown import LAYERS, View, arranged, shown
from kit.live.canvas.state import canvas_state, taken
from kit.live.canvas.steady import SEGMENTS, steady
from kit.live.followers import followers
from kit.live.history import History
from kit.units import both

from .conftest import LessonMaker, until

EXAMPLE = "tideline_wrap_top.ipynb"
ALL = View(layers=frozenset(LAYERS))


@pytest.fixture(scope="module")
def wrap_top(root: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Lesson]:
    """The wrap top, in a folder of its own."""
    patch = pytest.MonkeyPatch()
    patch.chdir(tmp_path_factory.mktemp("top"))
    names: dict[str, Any] = {}
    book = json.loads((root / "example_notebooks" / EXAMPLE).read_text(encoding="utf-8"))
    for cell in book["cells"]:
        source = "".join(cell["source"])
        if cell["cell_type"] == "code" and not source.startswith("panel("):
            exec(compile(source, "<cell>", "exec"), names)
    yield names["lesson"]
    patch.undo()


def path_of(state: dict[str, Any], edge: str) -> list[float]:
    """The numbers of an edge such as "front.hem"."""
    at = 0
    for item, segments in zip(state["scene"]["items"], state["shape"], strict=True):
        long = taken(item["k"], segments)
        if item.get("edge") == edge:
            found: list[float] = state["numbers"][at : at + long]
            return found
        at += long
    raise AssertionError(f"no edge {edge}")


def items(state: dict[str, Any], **like: str) -> list[dict[str, Any]]:
    return [item for item in state["scene"]["items"] if all(item.get(k) == v for k, v in like.items())]


# ---- the state --------------------------------------------------------------------------------------------


def test_the_state_is_plain_data_and_holds_no_markup(wrap_top: Lesson) -> None:
    pattern = wrap_top.work()
    state = canvas_state(pattern, ALL, block=wrap_top.start(wrap_top.body), handles=handles(wrap_top, pattern))
    text = json.dumps(state, allow_nan=False)
    assert json.loads(text)["numbers"] == state["numbers"]
    assert "<" not in text and "#" not in text, "no markup and no colour"
    assert {item["layer"] for item in state["scene"]["items"]} >= set(LAYERS) - {"grid", "ghost"}


def test_the_numbers_are_the_edges_control_points(wrap_top: Lesson) -> None:
    """Each edge, read back from its numbers with the place of its piece taken off, lies on the draft's own curve."""
    pattern = wrap_top.work()
    state = canvas_state(pattern, ALL)
    for piece in pattern.pieces:
        x, y = state["places"][piece.name]
        for edge in piece.edges:
            row = np.array(path_of(state, f"{piece.name}.{edge.name}")).reshape(-1, 2) - (x, y)
            long = 0.0
            for i in range(0, len(row) - 1, 3):
                t = np.linspace(0, 1, 400)[:, None]
                a, b, c, d = row[i : i + 4]
                line = a * (1 - t) ** 3 + 3 * b * t * (1 - t) ** 2 + 3 * c * t * t * (1 - t) + d * t**3
                long += float(np.hypot(*np.diff(line, axis=0).T).sum())
            assert long == pytest.approx(edge.path.length, rel=2e-4), edge.name
            assert row[0] == pytest.approx((edge.path.start.x, edge.path.start.y))
            assert row[-1] == pytest.approx((edge.path.end.x, edge.path.end.y))


def test_structure_stays_and_numbers_move_with_a_value(wrap_top: Lesson) -> None:
    found = handles(wrap_top, wrap_top.work())
    one = canvas_state(wrap_top.work(), ALL, handles=found)
    other = canvas_state(wrap_top.work(values={**wrap_top.values, "hem_drop": 150.0}), ALL, handles=found)
    assert one["scene"]["id"] == other["scene"]["id"]
    apart = [a != b for a, b in zip(one["shape"], other["shape"], strict=True)]
    assert sum(apart) <= 2, "only a cut line whose corners change may take other segments"
    assert path_of(one, "front.hem") != path_of(other, "front.hem")
    longer = wrap_top.work(values={**wrap_top.values, "wrap_share": 1.0})
    assert canvas_state(longer, View(step="overarm"))["scene"]["id"] != one["scene"]["id"]


def test_a_bend_keeps_its_number_of_segments_and_its_shape(wrap_top: Lesson) -> None:
    """A parallel is fitted with ever other cubics; drawn steadily it lies on the fitted line to 0.05 mm."""
    fitted, steadied = set(), set()
    for drop in (80.0, 90.0, 100.0, 110.0):
        piece = wrap_top.work(values={**wrap_top.values, "underarm_drop": drop}).piece("front")
        for side in (10.0, 15.0):
            bend = parallel(piece.edge("underarm").path, side)
            fitted.add(len(bend.curves))
            steadied.add(len(steady(bend.curves)))
            for cubic in steady(bend.curves):
                for t in (0.0, 0.3, 0.7):
                    at = cubic.point(t)
                    assert bend.at(bend.nearest(at)).distance(at) < 0.05
    assert len(fitted) > 1 and len(steadied) == 1
    many = [cubic for curve in piece.edge("underarm").path.curves for cubic in steady([curve])]
    assert len(many) == SEGMENTS
    split = [half for cubic in many for half in cubic.split(0.5)]
    drawn = steady(split)
    assert len(drawn) == SEGMENTS < len(split)
    path = piece.edge("underarm").path
    assert max(path.at(path.nearest(c.point(0.5))).distance(c.point(0.5)) for c in drawn) < 0.05


def test_an_edge_is_told_in_both_units_with_what_it_is_sewn_to(wrap_top: Lesson) -> None:
    pattern = wrap_top.work()
    said = canvas_state(pattern, ALL)["edges"]
    long = both(pattern.piece("front").edge("overarm").path.length)
    assert said["front.overarm"] == (
        f"shoulder and overarm seam, front: {long}. Sewn to the shoulder and overarm seam of the back."
    )
    assert "Sewn to the neck edge of the front." in said["front_facing.wrap_neck"]
    assert said["back.centre"].endswith("On the fold.")
    assert said["front.hem"].endswith("Hemmed.")
    assert said["front.side"].endswith("Sewn to the side seam of the back."), "its short opening is no hem"


def test_sewing_pairs_are_the_ones_that_measure_alike(wrap_top: Lesson) -> None:
    """Edges said to be sewn to one other edge are as long as it to 0.5 mm (design.md section 7: seam pairs)."""
    pattern = wrap_top.work()
    by_place = {
        (say("phrase.place", edge=edge.said or edge.label, piece=piece.title.lower())): edge.path.length
        for piece in pattern.pieces
        for edge in piece.edges
    }
    checked = 0
    for (piece, edge), text in fates(pattern).items():
        for place, long in by_place.items():
            if text.startswith(say("canvas.sewn_to", edges=place)):
                assert pattern.piece(piece).edge(edge).path.length == pytest.approx(long, abs=0.5), text
                checked += 1
    assert checked >= 8


def test_a_step_shows_what_is_new_and_what_stood_before(wrap_top: Lesson) -> None:
    pattern = wrap_top.work()
    state = canvas_state(pattern, View(step="wrap", layers=frozenset(LAYERS)))
    new = {item["name"] for item in items(state, k="path", role="new", piece="front")}
    assert new >= {"wrap_neck", "wrap_edge"}
    assert items(state, layer="ghost", role="removed")
    assert state["dims"] == [f"wrap reach {15.3} cm"]
    assert {piece for piece, _ in state["scene"]["pieces"]} == {"front", "back"}, "no facings yet"
    assert shown(pattern, "overarm").record is not None and len(shown(pattern, "overarm").pieces) == 1


def test_layers_can_be_switched_off(wrap_top: Lesson) -> None:
    pattern, block = wrap_top.work(), wrap_top.start(wrap_top.body)
    for layer in sorted(set(LAYERS) - {"grid"}):
        step = "wrap" if layer == "ghost" else ""
        on = canvas_state(pattern, View(step=step, layers=frozenset({layer})), block=block)
        off = canvas_state(pattern, View(step=step, layers=frozenset(LAYERS) - {layer}), block=block)
        assert items(on, layer=layer), layer
        assert not items(off, layer=layer), layer


def test_pieces_keep_their_place_until_they_meet(wrap_top: Lesson) -> None:
    pieces = wrap_top.work().pieces
    first = arranged(pieces, {})
    little = wrap_top.work(values={**wrap_top.values, "sleeve_length": 270.0}).pieces
    assert arranged(little, first) == first
    much = wrap_top.work(values={**wrap_top.values, "sleeve_length": 450.0}).pieces
    assert arranged(much, first, held=True) == first, "while a handle is held"
    apart = arranged(much, first)
    assert apart != first
    boxes = []
    for piece in much:
        x0, y0, x1, y1 = piece.outline.bounds()
        by = apart[piece.name]
        boxes.append((x0 + by.x, y0 + by.y, x1 + by.x, y1 + by.y))
    for i, a in enumerate(boxes):
        for b in boxes[i + 1 :]:
            assert a[2] < b[0] or b[2] < a[0] or a[3] < b[1] or b[3] < a[1]


def test_the_body_is_a_quarter_of_each_girth_at_the_blocks_own_origin() -> None:
    """W4 of the workshop's chart: the waist level lies at 0, each level is as long as a quarter of its girth."""
    body = workshop_chart()["W4"]
    found = {level.measure: level for level in levels(body, skirt_block(body)[0])}
    assert found["waist_girth"].y == 0.0
    assert found["waist_girth"].width * 4 == pytest.approx(body["waist_girth"])
    assert found["hip_girth"].y == -body["waist_to_hip"]
    assert found["hip_girth"].width * 4 == pytest.approx(body["hip_girth"])
    assert "bust_girth" not in found, "a skirt does not reach the bust"
    assert levels(body, trouser_block(body)[0]) == (), "a leg has no line on the body's centre"


# ---- handles ----------------------------------------------------------------------------------------------


def missed_by(lesson: Lesson, handle: Handle, values: dict[str, float], far: float) -> float:
    """Drag `handle` by `far` mm along its direction: how far from there it comes to lie, mm. The browser asks again
    from each answer, so a place that does not move evenly is reached in a few turns."""
    parameter = next(p for p in lesson.parameters if p.name == handle.name)
    start = Ground(lesson.work(values=values)).at(handle.anchor)
    assert start is not None
    target = start + handle.direction * far
    at, value = start, values[handle.name]
    for _ in range(4):
        value = on_scale(parameter, "cm", value + (target - at).dot(handle.direction) / handle.rate)
        now = Ground(lesson.work(values={**values, handle.name: value})).at(handle.anchor)
        assert now is not None
        at = now
    return at.distance(target)


def test_every_length_that_moves_a_line_has_a_handle(wrap_top: Lesson) -> None:
    found = {handle.name: handle for handle in handles(wrap_top, wrap_top.work())}
    # Strips have no paper; the least radius is a limit, and no line touches it as the lesson stands.
    limits = {name for record in wrap_top.work().steps for name in record.limits}
    assert len(limits) == 1
    still = {"tie_length", "tie_width"} | limits
    assert set(found) == {p.name for p in wrap_top.parameters} - still
    assert found["sleeve_length"].anchor.piece == "front", "where the step says it is measured"
    assert found["wrap_share"].anchor.name == "wrap_corner"
    assert found["seam"].anchor.kind == "cut", "an allowance moves its cut line alone"


def test_a_dragged_place_goes_where_it_is_dragged(wrap_top: Lesson) -> None:
    """To 0.5 mm, or half a step of the slider where one step moves the place by more than a millimetre."""
    checked = 0
    for handle in handles(wrap_top, wrap_top.work()):
        parameter = next(p for p in wrap_top.parameters if p.name == handle.name)
        step = (0.01 if parameter.kind == "share" else 1.0) * handle.rate
        room = parameter.most - wrap_top.values[handle.name]
        far = 6.0 if room * handle.rate > 6.0 else -6.0
        if (wrap_top.values[handle.name] - parameter.least) * handle.rate < 6.0 and far < 0:
            continue
        assert missed_by(wrap_top, handle, wrap_top.values, far) <= 0.5 + max(step - 1.0, 0.0) / 2 + 1e-6, handle
        checked += 1
    assert checked >= 12


def test_a_wrong_direction_would_be_seen(wrap_top: Lesson) -> None:
    """The check above fails for a handle that points the wrong way."""
    handle = next(h for h in handles(wrap_top, wrap_top.work()) if h.name == "sleeve_length")
    turned = Handle(handle.name, handle.anchor, handle.direction.rotated(1.0), handle.rate)
    assert missed_by(wrap_top, turned, wrap_top.values, 6.0) > 3.0


def test_handles_of_a_step_stand_on_its_pieces(wrap_top: Lesson) -> None:
    pattern = wrap_top.work()
    found = handles(wrap_top, pattern, View(step="overarm"))
    assert {h.name for h in found} == {"shoulder_lift", "sleeve_length"}
    assert handles(wrap_top, pattern, View(step="overarm"), found) == found, "they keep their places"


def test_no_two_handles_share_a_place(wrap_top: Lesson) -> None:
    pattern = wrap_top.work()
    ground = Ground(pattern)
    spots = [(h.anchor.piece, ground.at(h.anchor)) for h in handles(wrap_top, pattern)]
    for i, (piece, one) in enumerate(spots):
        for other_piece, other in spots[i + 1 :]:
            assert one is not None and other is not None
            assert piece != other_piece or one.distance(other) > 5.0


# ---- the widget -------------------------------------------------------------------------------------------


def numbers(shown: Any) -> Any:
    return np.frombuffer(shown.answer["numbers"], dtype=np.float32)


def test_a_move_changes_the_lesson_the_panel_and_the_sidecar(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown, sliders = canvas(lesson), panel(lesson)
    before = numbers(shown)
    shown.move("hem_drop", 95.4, turn=7)
    assert lesson.values["hem_drop"] == 95.0, "the slider's nearest step"
    assert sliders.rows["hem_drop"].slider.value == 9.5
    assert sliders.rows["hem_drop"].box.value == "9.5 cm"
    assert shown.answer["turn"] == 7
    assert shown.answer["values"]["hem_drop"]["text"] == "9.5 cm (3 3/4 in)"
    assert not np.array_equal(numbers(shown), before)
    assert json.loads(lesson.sitting.sidecar.read_text())["values"]["hem_drop"] == 95.0


def test_a_panel_beside_it_takes_over_what_the_canvas_has_just_worked(make_lesson: LessonMaker) -> None:
    """A move is worked once, not once for each view; what the panel shows is what it would have worked itself, and
    when it draws again for another reason it works for itself: a step may read something new."""
    lesson = make_lesson()
    worked: list[None] = []

    @lesson.step("Count")
    def counted(front: Any) -> None:
        """Look on."""
        worked.append(None)

    async def moves() -> None:
        shown, sliders = canvas(lesson), panel(lesson)
        await until(lambda: sliders.drawn)
        worked.clear()
        drawn = sliders.drawn
        shown.move("hem_drop", 95.0, turn=1, last=False)
        await until(lambda: sliders.drawn > drawn)
        assert len(worked) == 1
        assert sliders.pattern == lesson.work() and sliders.pattern.values[0].value == 95.0
        worked.clear()
        drawn = sliders.drawn
        lesson.choose(units="inch")
        await until(lambda: sliders.drawn > drawn)
        assert worked
        shown.close()
        sliders.close()

    asyncio.run(moves())


def test_the_canvas_follows_the_panel(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown, sliders = canvas(lesson), panel(lesson)
    sliders.rows["hem_drop"].box.value = "3 1/2 in"
    assert shown.answer["values"]["hem_drop"]["text"] == "8.9 cm (3 1/2 in)"
    row = canvas_state(lesson.work(), shown.view, block=lesson.start(lesson.body))["numbers"]
    assert numbers(shown)[: len(row)] == pytest.approx(row, abs=1e-3)
    lesson.choose(units="inch")
    assert shown.answer["units"] == "inch"
    assert shown.answer["values"]["hem_drop"]["step"] == pytest.approx(25.4 / 16)


def test_slopes_are_how_the_numbers_change(make_lesson: LessonMaker) -> None:
    """Half a centimetre further by the slopes and by working the lesson again."""
    lesson = make_lesson()
    shown = canvas(lesson)
    assert shown.slopes["scene"] == shown.scene["id"]
    rows = np.frombuffer(shown.slopes["rows"], dtype=np.float32).reshape(len(shown.slopes["names"]), -1)
    slope, before = rows[shown.slopes["names"].index("hem_drop")], numbers(shown)
    shown.move("hem_drop", lesson.values["hem_drop"] + 5.0, last=False)
    assert before + 5.0 * slope == pytest.approx(numbers(shown), abs=0.05)
    assert np.abs(numbers(shown) - before).max() > 4.9


def test_values_are_held_inside_their_range(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = canvas(lesson)
    shown.move("hem_drop", 1e6)
    assert lesson.values["hem_drop"] == 200.0
    for nonsense in (float("nan"), "far", None):
        shown.move("hem_drop", nonsense)
    shown.move("no_such", 3.0)
    assert lesson.values["hem_drop"] == 200.0


def test_what_cannot_be_drafted_snaps_back_in_plain_words(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()

    @lesson.step("Leave an opening")
    def leave(front, hem_drop):
        """Leave an opening."""
        front.leave_open("slit", "side", at=front.side.length - hem_drop * 0.2, size=2 * cm)

    shown = canvas(lesson)
    kept, before = lesson.values, numbers(shown)
    assert shown.answer["message"] == ""
    shown.move("hem_drop", 60.0)
    assert "does not fit on the side" in shown.answer["message"]
    assert "Traceback" not in shown.answer["message"]
    assert lesson.values == kept and not beside(lesson).history.can_undo
    assert np.array_equal(numbers(shown), before)
    assert not shown.answer["stale"]
    shown.move("hem_drop", 130.0)
    assert shown.answer["message"] == ""


def test_a_value_the_panel_set_that_cannot_be_drafted_is_told_over_the_last_draft(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()

    @lesson.step("Divide")
    def divide(front, buttons):
        """Divide by {buttons}."""
        1 / buttons

    shown = canvas(lesson)
    before = numbers(shown)
    lesson.change(buttons=0)
    assert shown.answer["stale"] and "ZeroDivisionError" in shown.answer["message"]
    assert np.array_equal(numbers(shown), before)
    assert lesson.undo()
    assert not shown.answer["stale"] and shown.answer["message"] == ""


def test_a_lesson_being_written_shows_what_stands(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = canvas(lesson)

    @lesson.step("Raise the shoulder")
    def raise_shoulder(front):
        """Raise it."""
        front.draw(over=front.neck_point.through(front.shoulder_tip.up(3 * cm)), instead_of=front.shoulder)

    assert [title for _, title in shown.steps][-1] == "Step 3: Raise the shoulder"
    assert shown.answer["message"], "its outline stands open"
    assert not shown.answer["stale"]
    assert "front.over" in shown.answer["edges"]


def test_the_step_shown_can_be_chosen(make_lesson: LessonMaker) -> None:
    shown = canvas(make_lesson())
    assert shown.steps[0] == ["", "The draft"]
    shown.step = "lower_hem"
    assert shown.scene["step"] == "lower_hem"
    shown.layers = ["stitch"]
    assert {item["layer"] for item in shown.scene["items"]} <= {"stitch", "names", "handles"}


def test_a_lesson_made_again_keeps_its_canvas_and_history(make_lesson: LessonMaker) -> None:
    lesson, again = make_lesson(), make_lesson()
    shown = canvas(lesson)
    lesson.change(hem_drop=9 * cm)
    beside(again).go_on(lesson)
    assert shown.lesson is again and shown in followers(again).canvases and shown not in followers(lesson).canvases
    assert beside(again).history.can_undo
    shown.close()
    assert shown not in followers(again).canvases


def test_only_a_lesson_can_be_shown() -> None:
    with pytest.raises(KitError, match="a canvas shows a lesson, not Body"):
        canvas(Body("W4", ()))  # type: ignore[arg-type]


# ---- undo and redo ----------------------------------------------------------------------------------------


def test_undo_and_redo_of_values(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = canvas(lesson)
    start = lesson.values
    assert not shown.answer["undo"]
    shown.move("hem_drop", 90.0)
    shown.move("wrap_share", 0.5)
    done = lesson.values
    assert shown.answer["undo"] and not shown.answer["redo"]
    shown._heard(shown, {"do": "undo"}, [])
    assert lesson.values == {**start, "hem_drop": 90.0}
    shown._heard(shown, {"do": "undo"}, [])
    assert lesson.values == start
    assert not shown.answer["undo"] and shown.answer["redo"]
    assert shown.answer["values"]["hem_drop"]["value"] == start["hem_drop"]
    shown._heard(shown, {"do": "redo"}, [])
    shown._heard(shown, {"do": "redo"}, [])
    assert lesson.values == done
    assert not lesson.redo()


def test_a_drag_is_one_change(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = canvas(lesson)
    start = lesson.values
    for value in (139.0, 135.0, 120.0):
        shown.move("hem_drop", value, last=False)
    shown.move("hem_drop", 118.0)
    shown.move("hem_drop", 110.0)
    assert lesson.undo() and lesson.values["hem_drop"] == 118.0
    assert lesson.undo() and lesson.values == start


def test_reset_and_panel_moves_can_be_undone(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    sliders = panel(lesson)
    sliders.rows["hem_drop"].slider.value = 9
    beside(lesson).history.seal()
    sliders.rows["wrap_share"].slider.value = 45
    moved = lesson.values
    lesson.reset()
    assert lesson.undo() and lesson.values == moved
    assert lesson.undo() and lesson.values["wrap_share"] == 0.7
    assert sliders.rows["wrap_share"].slider.value == 70


def test_moves_within_eight_tenths_of_a_second_are_one_drag(monkeypatch: pytest.MonkeyPatch) -> None:
    clock = [100.0]
    monkeypatch.setattr("kit.live.history.time.monotonic", lambda: clock[0])
    history = History()
    for now, hem in ((100.0, 1.0), (100.7, 2.0), (101.4, 3.0), (102.3, 4.0), (103.0, 5.0), (110.0, 6.0)):
        clock[0] = now
        history.note({"hem": hem - 1.0}, {"hem": hem})
    # 0.7 s apart it is one drag however long it lasts; 0.9 s and 7 s are pauses.
    assert [history.undo(), history.undo(), history.undo(), history.undo()] == [
        {"hem": 5.0},
        {"hem": 3.0},
        {"hem": 0.0},
        None,
    ]
    history.note({"hem": 0.0}, {"hem": 1.0})
    clock[0] += 0.1
    history.note({"waist": 7.0}, {"waist": 8.0})
    assert history.undo() == {"waist": 7.0}, "another value is another change, however soon"


def test_a_new_change_forgets_what_was_undone() -> None:
    history = History()
    history.note({"a": 1.0, "b": 2.0}, {"a": 5.0, "b": 2.0})
    assert history.undo() == {"a": 1.0}
    history.note({"a": 1.0, "b": 2.0}, {"a": 1.0, "b": 3.0})
    assert not history.can_redo
    assert history.undo() == {"b": 2.0}
    history.note({"a": 1.0}, {"a": 1.0})
    assert history.can_redo, "nothing changed"


def test_a_variation_has_a_history_of_its_own(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = canvas(lesson)
    lesson.change(hem_drop=9 * cm)
    other = lesson.variation("Longer vest")
    assert not beside(other).history.can_undo and shown not in followers(other).canvases
