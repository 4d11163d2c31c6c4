"""What a sewing picture tells besides its cloth: where on the garment the work is, how its layers lie, what falls away.

Rules 3, 5, 8, 16 and 17 of a picture grammar made by looking at every picture of the booklets; facts of the trade are
common practice, no source, where nothing else stands beside them.
"""

from __future__ import annotations

import gc
import weakref
from dataclasses import replace
from itertools import pairwise
from typing import Any

import pytest
import shapely

from kit.body import workshop_chart
from kit.booklet.forms import FORMS, PHONE
from kit.booklet.step_shown import sewn
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Dot, Drawing, Fill, Label, Stroke
from kit.picture.lettered import WrittenText, lettered
from kit.picture.locator import SPOT, garment_so_far
from kit.picture.scene_signs import CUT, TURN
from kit.picture.sewing import scene_drawing, staged
from kit.picture.strip_alone import BECOMES
from kit.picture.theme import THEME, contrast
from kit.picture.tried_on import FLOOR, RISE
from kit.sewing.before import state_before
from kit.sewing.clipped_first import gathers_on_top
from kit.sewing.in_work import shown_scenes
from kit.sewing.order import of_kind
from kit.sewing.right_sides import right_sides
from kit.sewing.run import Run
from kit.sewing.scene import Scene
from kit.sewing.section import folded_in_four, tube, turned_tube
from kit.sewing.sections.bands import rolled_out
from kit.sewing.sections.seams import enclosed_pressed
from kit.sewing.spans import spans
from kit.sewing.state import Done, State
from tests.lesson_words import example_lessons

PX = 96 / 25.4
STAGE = (295.0, 264.0)  # CSS px of one of two pictures beside each other on A4
NAMES = ("ferry_tote", "dune_skirt", "breaker_skirt", "harbour_jacket", "tideline_wrap_top", "slack_water_trousers")


@pytest.fixture(scope="module")
def worked() -> dict[str, Pattern]:
    body, lessons = workshop_chart()["W4"], example_lessons()
    return {name: lessons[name].work(body) for name in NAMES}


def scenes(pattern: Pattern, kind: str, number: int = 0) -> tuple[Scene, ...]:
    found = [each for record in pattern.sewing for each in record.operations if each.kind == kind]
    return shown_scenes(pattern, found[number])


def box(item: Stroke | Fill) -> tuple[float, float, float, float]:
    boxes = [curve.bounds() for curve in item.curves]
    return (min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes))


def strokes(drawing: Drawing, *roles: str, name: str = "") -> list[Stroke]:
    found = [item for item in drawing.items if isinstance(item, Stroke) and item.role in roles]
    return [item for item in found if item.name.startswith(name)]


# ---- 17: the locator ------------------------------------------------------------------------------------------


def located(pattern: Pattern, scene: Scene) -> tuple[set[str], Drawing]:
    drawing = staged(scene, pattern)(STAGE)
    found = strokes(drawing, "kept", name="locator ")
    return {item.name.removeprefix("locator ") for item in found}, drawing


def test_the_plan_shows_the_garment_as_it_is_by_then(worked: dict[str, Pattern]) -> None:
    """The skirt's first dart is sewn on one piece; its zip in a skirt without a band; its button on one with a band."""
    skirt = worked["dune_skirt"]
    assert located(skirt, scenes(skirt, "dart")[0])[0] == {"front"}
    zipped = located(skirt, scenes(skirt, "lapped_zip")[-1])[0]
    assert zipped >= {"front", "back"} and "waistband" not in zipped
    assert located(skirt, scenes(skirt, "buttons")[0])[0] >= {"front", "back", "waistband"}


def test_the_place_of_the_work_lies_on_the_garment(worked: dict[str, Pattern]) -> None:
    """A spot within the outline and no wider than it; at the hem it is low, at the waist it is high."""
    skirt = worked["dune_skirt"]
    high: dict[str, float] = {}
    for kind in ("hem", "close_band", "lapped_zip"):
        _, drawing = located(skirt, scenes(skirt, kind)[-1])
        boxes = [box(item) for item in strokes(drawing, "kept", name="locator ")]
        x0, y0 = min(b[0] for b in boxes), min(b[1] for b in boxes)
        x1, y1 = max(b[2] for b in boxes), max(b[3] for b in boxes)
        (spot,) = [item.at for item in drawing.items if isinstance(item, Dot) and item.name == SPOT]
        room = (x1 - x0) * 0.03
        assert x0 - room <= spot.x <= x1 + room and y0 - room <= spot.y <= y1 + room, kind
        high[kind] = (spot.y - y0) / (y1 - y0)
    assert high["hem"] < 0.15 < 0.6 < high["lapped_zip"] < high["close_band"]


def test_a_skirt_is_upright_in_every_plan(worked: dict[str, Pattern]) -> None:
    """However the pieces are turned in the picture, the garment stands: it is widest at the hem, as it was drafted."""
    skirt = worked["dune_skirt"]
    for scene in (*scenes(skirt, "plain_seam", 0)[1:], *scenes(skirt, "close_band"), *scenes(skirt, "hem")):
        _, drawing = located(skirt, scene)
        outline = max(strokes(drawing, "kept", name="locator front"), key=lambda item: box(item)[2] - box(item)[0])
        points = [point for curve in outline.curves for point in (curve.start, curve.end)]
        middle = (box(outline)[1] + box(outline)[3]) / 2
        low, high = [p.x for p in points if p.y < middle], [p.x for p in points if p.y > middle]
        assert max(low) - min(low) > max(high) - min(high)


# ---- pictures that are left out -------------------------------------------------------------------------------


def test_where_pictures_are_left_out_the_last_one_says_so(worked: dict[str, Pattern]) -> None:
    """The tote's side seams show two pictures of the four that its first seam shows; nothing else is left out."""
    rest, tote = say("booklet.rest_pictured"), worked["ferry_tote"]
    shown = [sewn(tote.sewing[0], number, tote, FORMS["a4"], "p") for number in range(3)]
    captions = [[sketch.caption for sketch in operation.sketches] for operation in shown]
    assert [len(each) for each in captions] == [4, 2, 2]
    assert [[rest in caption for caption in each] for each in captions] == [[False] * 4, *([[False, True]] * 2)]


# ---- 16: cross-sections ---------------------------------------------------------------------------------------


def test_a_section_takes_the_column_and_its_caption_stays_in_it(worked: dict[str, Pattern]) -> None:
    """At the size of the page: a third of the column at least, no cloth thinner than a line of text is high, nothing
    over the next column."""
    for pattern in worked.values():
        for record in pattern.sewing:
            for operation in record.operations:
                for scene in shown_scenes(pattern, operation):
                    if scene.section is None or scene.recut is not None or not scene.layers:
                        continue
                    drawing = staged(scene, pattern)(STAGE)
                    assert drawing.bounds is not None and drawing.window is not None
                    x0, y0, x1, y1 = drawing.bounds
                    unit = max((x1 - x0) / STAGE[0], (y1 - y0) / STAGE[1]) * PX
                    plies = [box(item) for item in strokes(drawing, *PLIES)]
                    wide = (max(b[2] for b in plies) - min(b[0] for b in plies)) / unit
                    thick = min(item.thickness or 0.0 for item in strokes(drawing, *PLIES)) / unit
                    assert wide > 25.0 and thick > 0.9, (operation.kind, wide, thick)
                    under = max(b[3] for b in plies) < drawing.window[1]
                    assert under or min(b[0] for b in plies) > drawing.window[2], operation.kind
                    assert x0 - 0.1 <= min(b[0] for b in plies) and max(b[2] for b in plies) <= x1 + 0.1


def test_what_is_turned_out_shows_its_seam_rolled_to_the_edge(worked: dict[str, Pattern]) -> None:
    """Where it is pressed so: in the section the row lies in the fold of both cloths, their right sides outside, and
    the section is cut across that seam, not across the opening (common practice, no source)."""
    seen = 0
    for pattern in worked.values():
        for operation in of_kind(pattern, "turn_out"):
            opened, rolled = shown_scenes(pattern, operation)
            assert opened.focus is not None and rolled.section is not None
            (row,) = rolled.section.stitches
            folds = [max(x for x, _ in ply.path) for ply in rolled.section.plies]
            assert all(0.0 <= fold - row[0] <= 1.0 for fold in folds)
            assert [side for _, side in tops(rolled)] == [-1, 1]  # the lower one's below, the upper one's above
            across = rolled.cut or rolled.focus
            assert across is not None and across not in (opened.focus, *operation.runs())
            drawing = scene_drawing(rolled, pattern)
            marks = [box(item) for item in strokes(drawing, "symbol", name=CUT)]
            tips = [item.curves[0].start for item in strokes(drawing, "press")]
            x0, y0 = min(b[0] for b in marks), min(b[1] for b in marks)
            x1, y1 = max(b[2] for b in marks), max(b[3] for b in marks)
            line = shapely.LineString([(p.x, p.y) for p in tips])
            assert line.distance(shapely.box(x0, y0, x1, y1)) < 1.0
            seen += 1
    assert seen > 1


PLIES = ("ply_main", "ply_facing", "ply_interfacing", "ply_strip", "ply_lining")


def tops(scene: Scene) -> list[tuple[str, int]]:
    assert scene.section is not None
    return [(ply.name, side) for ply, side in zip(scene.section.plies, right_sides(scene), strict=True)]


def test_right_sides_face_each_other_in_a_plain_seam_and_lie_outside_in_a_french_one(
    worked: dict[str, Pattern],
) -> None:
    """Both plies run from the garment at the left to the raw edge at the right: +1, their left, is their upper side.
    Common practice, no source."""
    plain, french = scenes(worked["dune_skirt"], "plain_seam")[0], scenes(worked["ferry_tote"], "french_seam")
    assert tops(plain) == [("lower", 1), ("upper", -1)]
    assert tops(french[0]) == [("lower", -1), ("upper", 1)]
    assert tops(french[2]) == [("lower", 1), ("upper", -1)]


def test_no_right_side_is_claimed_where_an_allowance_is_turned_to(worked: dict[str, Pattern]) -> None:
    """Allowances are pressed to the wrong side (common practice, no source): a seam whose section is cut from the right
    side while the layers lie wrong side up tells nothing; a hem, cut as it lies, does."""
    opened = scenes(worked["dune_skirt"], "plain_seam")[-1]
    assert opened.section is not None and right_sides(opened) == ()
    assert right_sides(scenes(worked["dune_skirt"], "hem")[-1]) == (-1,)


def test_where_the_layers_do_not_tell_it_no_right_side_is_claimed(worked: dict[str, Pattern]) -> None:
    zip = scenes(worked["dune_skirt"], "lapped_zip")[-1]
    assert zip.section is not None and right_sides(zip) == ()


# ---- 5, 8: trimmed, creased, pressed over ---------------------------------------------------------------------


def test_a_french_seam_is_one_thing_a_picture(worked: dict[str, Pattern]) -> None:
    """First row; trimmed; turned, second row; pressed. What is trimmed is narrower than the second row takes, so that
    no raw edge shows (A Complete Course in Dressmaking, vol. 1, 1921, p. 98)."""
    tote = worked["ferry_tote"]
    first, trim, second, pressed = scenes(tote, "french_seam")
    (seam, *_) = [each for each in tote.sewing[0].operations if each.kind == "french_seam"]
    assert [len([row for row in each.rows if row.ink == "new"]) for each in (first, trim, second, pressed)][::3] == [
        1,
        0,
    ]
    for layer in trim.layers[:2]:
        ((_, left),) = layer.trimmed
        assert left - seam.second < seam.second and left > seam.second
    assert {mm for layer in second.layers for _, mm in layer.creased} == {seam.second}
    assert sorted(layer.lain for layer in pressed.layers[:2] if layer.lain is not None) == [0.0, seam.second]
    assert any(each.over for each in (second, pressed))


def test_what_is_trimmed_falls_away_outside_the_new_cut(worked: dict[str, Pattern]) -> None:
    tote = worked["ferry_tote"]
    drawing = scene_drawing(scenes(tote, "french_seam")[1], tote)
    (cut,) = strokes(drawing, "new", name="trim ")
    gone = strokes(drawing, "removed", name="trimmed ")
    assert len(gone) == 2
    assert all(box(item)[1] < box(cut)[1] for item in gone)  # the bottom of the bag: outside is below


def test_a_seam_pressed_to_one_side_lies_over_that_piece_alone(worked: dict[str, Pattern]) -> None:
    tote = worked["ferry_tote"]
    drawing = scene_drawing(scenes(tote, "french_seam")[3], tote)
    flaps = [item for item in drawing.items if isinstance(item, Fill) and item.name.endswith(".turned")]
    assert [flap.name for flap in flaps] == ["back.turned"]
    assert flaps[0].role == "wrong_side"  # the other piece's allowance runs on over the seam unturned


# ---- zips, notches --------------------------------------------------------------------------------------------


def test_the_row_beside_a_zip_runs_clear_of_its_teeth(worked: dict[str, Pattern]) -> None:
    folds, tape, lap = scenes(worked["dune_skirt"], "lapped_zip")
    assert folds.arrows and not folds.rows and not folds.things
    assert [thing.kind for thing in tape.things] == ["zip"]
    drawing = scene_drawing(tape, worked["dune_skirt"])
    (row,) = [item for item in strokes(drawing, "row") if item.name]
    teeth = max(strokes(drawing, "symbol", name="zip on"), key=lambda item: len(item.curves))
    nearest = min(a.start.distance(b.start) for a in row.curves for b in teeth.curves)
    assert nearest > 2.0
    assert lap.rows and lap.over


def test_a_notch_is_seen_on_either_layer_while_its_edge_is_cut(worked: dict[str, Pattern]) -> None:
    """On the cut edge before the seam, on the allowance when it is pressed open; gone when it is sewn."""
    skirt = worked["dune_skirt"]
    together, opened = scenes(skirt, "plain_seam", 0)
    for scene in (together, opened):
        drawing = scene_drawing(scene, skirt)
        assert {item.name for item in strokes(drawing, "notch", name="notch ")} >= {
            "notch front.side",
            "notch back.side",
        }
    hem = scene_drawing(scenes(skirt, "hem")[-1], skirt)
    assert not strokes(hem, "notch", name="notch front.side")


# ---- what is named, and what the cloth is shown with ---------------------------------------------------------------


def names(drawing: Drawing) -> list[str]:
    return [item.text for item in drawing.items if isinstance(item, Label) and item.role == "name"]


def test_one_cloth_is_named_once_and_which_half_it_is_where_both_are_seen(worked: dict[str, Pattern]) -> None:
    """A cuff is sewn to a ring by its own two ends; the two halves of a front are sewn to each other at the crotch."""
    for scene in scenes(worked["harbour_jacket"], "plain_seam", 1):
        assert names(scene_drawing(scene, worked["harbour_jacket"])) == ["Cuff"]
    halves = [
        names(scene_drawing(scene, worked["slack_water_trousers"]))
        for number in range(3)
        for scene in scenes(worked["slack_water_trousers"], "plain_seam", number)
        if len({layer.run.piece for layer in scene.layers})
        < len({(each.run.piece, each.run.side) for each in scene.layers})
    ]
    assert halves
    for told in halves:
        assert len(told) > 1 and len(set(told)) == len(told)


def test_the_ends_of_a_pockets_hem_are_stitched_before_it_is_turned_out(worked: dict[str, Pattern]) -> None:
    """Two rows from the fold of the mouth to the inner edge of the hem, 1 cm from the cut sides, as its sentence says:
    common practice, no source."""
    jacket = worked["harbour_jacket"]
    folded, hemmed = (scene_drawing(scene, jacket) for scene in scenes(jacket, "pocket_hem"))
    rows = strokes(folded, "row")
    pocket = next(item for item in folded.items if isinstance(item, Fill) and item.name == "pocket")
    left, _, right, top = box(pocket)
    assert [round(box(row)[3] - box(row)[1]) for row in rows] == [25, 25]
    assert {round(box(row)[3] - top) for row in rows} == {0}
    assert sorted(round(box(row)[0] - left) for row in rows) == [10, round(right - left) - 10]
    assert len(strokes(hemmed, "row")) == 1


# ---- trying on ------------------------------------------------------------------------------------------------


def test_a_try_on_shows_the_garment_so_far_and_its_hem_levelled_from_the_floor(worked: dict[str, Pattern]) -> None:
    """The band is on and the hem is not sewn: it is pinned at places as high above one floor as they are marked."""
    skirt = worked["dune_skirt"]
    (scene,) = scenes(skirt, "try_on")
    drawing = scene_drawing(scene, skirt)
    names = {item.name for item in drawing.items if isinstance(item, Fill)}
    assert names >= {"front", "back", "waistband"}
    floors = strokes(drawing, "guide", name=FLOOR)
    assert len(floors) == 2  # front and back
    rises = strokes(drawing, "check", name=RISE)
    assert len(rises) >= 6
    assert {round(item.curves[0].start.y, 3) for item in rises} == {round(box(floors[0])[1], 3)}
    assert len(strokes(drawing, "pin")) == len(rises)
    (named,) = (item for item in drawing.items if isinstance(item, Label))
    assert named.text == "floor" and isinstance(named.of, tuple)
    assert named.of[0].start.y == pytest.approx(box(floors[1])[1])


def test_ties_that_are_on_by_then_are_tied_to_try_it_on(worked: dict[str, Pattern]) -> None:
    """A wrap stays shut by its ties: round the back, which shows one, and knotted in front."""
    wrap = worked["tideline_wrap_top"]
    (scene,) = scenes(wrap, "try_on")
    assert scene.sewn is not None
    ties = [item for item in scene_drawing(scene, wrap).items if isinstance(item, Fill) and item.name == "tie"]
    assert len(ties) > 3
    loose = replace(scene, sewn=replace(scene.sewn, attached=()))
    assert not [item for item in scene_drawing(loose, wrap).items if isinstance(item, Fill) and item.name == "tie"]


def test_a_hem_that_is_sewn_by_then_is_levelled_no_more(worked: dict[str, Pattern]) -> None:
    """The pieces lie as they lay before the hem, and the edge is no cut edge any more."""
    skirt = worked["dune_skirt"]
    (scene,) = scenes(skirt, "try_on")
    state = scene.sewn
    assert state is not None and strokes(scene_drawing(scene, skirt), "check", name=RISE)
    hemmed = tuple(Done(span, "hemmed", "Hem") for run in scene.pins for span in spans(skirt, run))
    after = replace(scene, sewn=replace(state, closed=(*state.closed, *hemmed)))
    assert not strokes(scene_drawing(after, skirt), "check", name=RISE)


def test_what_was_put_together_of_a_pattern_is_let_go(worked: dict[str, Pattern]) -> None:
    first = replace(worked["ferry_tote"])
    here = weakref.ref(first)
    garment_so_far(first, State(), "front")
    del first
    for _ in range(2):
        garment_so_far(replace(worked["ferry_tote"]), State(), "front")
    gc.collect()
    assert here() is None


def test_a_try_on_that_changes_a_value_asks_for_that_and_levels_no_hem() -> None:
    wrap = example_lessons()["neap_tide_wrap"].work(workshop_chart()["W4"])
    operations = [each for record in wrap.sewing for each in record.operations]
    operation: Any = next(each for each in operations if each.kind == "try_on" and each.asks)
    first: Any = shown_scenes(wrap, operation)[0]
    assert first.worn and not first.pins
    assert state_before(wrap, operation).seams
    assert not strokes(scene_drawing(first, wrap), "check", name=RISE)


# ---- names and signs beside the cloth -------------------------------------------------------------------------


def every_scene(pattern: Pattern) -> list[Scene]:
    return [scene for record in pattern.sewing for each in record.operations for scene in shown_scenes(pattern, each)]


def lies(text: WrittenText) -> tuple[float, float, float, float]:
    return (text.x - text.wide / 2, text.y - text.high / 2, text.x + text.wide / 2, text.y + text.high / 2)


@pytest.mark.parametrize("lesson", ["ferry_tote", "dune_skirt", "breaker_skirt", "harbour_jacket"])
def test_what_a_sign_means_stands_beside_it(worked: dict[str, Pattern], lesson: str) -> None:
    """Away from its bent arrow a "turn over" is read as a caption of the cross-section."""
    pattern = worked[lesson]
    told = 0
    for scene in every_scene(pattern):
        if not scene.over:
            continue
        made = lettered(staged(scene, pattern)(STAGE), *STAGE)
        (text,) = (text for text in made.texts if text.text == say("picture.turn_over"))
        _, y0, x1, y1 = box(strokes(made.drawing, "symbol", name=TURN)[0])
        left, low, _, high = lies(text)
        assert x1 < left < x1 + 30 * made.unit and low < (y0 + y1) / 2 < high
        told += 1
    assert told


LARGE = (295.0, 155.0)  # CSS px of a picture in large print, as many letters wide


@pytest.mark.parametrize("lesson", ["dune_skirt", "harbour_jacket", "tideline_wrap_top"])
@pytest.mark.parametrize("room", [STAGE, LARGE, PHONE], ids=["A4", "large print", "phone"])
def test_words_beside_a_sign_and_of_a_strip_stay_in_their_frame(
    worked: dict[str, Pattern], lesson: str, room: tuple[float, float]
) -> None:
    """A frame through a word cuts it off, and words that stand elsewhere are read of something else."""
    pattern = worked[lesson]
    words = {say("picture.turn_over"), *(say(f"picture.strip_{key}") for key in ("sewn", "turned", "folded"))}
    words |= {say("picture.strip_as_cut", strip=strip.title) for strip in pattern.strips}
    told = 0
    for scene in every_scene(pattern):
        if not scene.over and not (scene.strip and not scene.layers):
            continue
        made = lettered(staged(scene, pattern)(room), *room)
        frames = [box(item) for item in strokes(made.drawing, "page")]
        signs = [box(item) for item in strokes(made.drawing, "symbol", name=TURN)]
        frames += [(f[0], min(s[1] for s in signs), f[2], f[3]) for f in frames if signs]
        for text in made.texts:
            if text.text in words:
                left, low, right, high = lies(text)
                room_of = max(frames, key=lambda frame: frame[3] - frame[1])
                assert room_of[0] <= left and right <= room_of[2], text.text
                assert room_of[1] - 6 * made.unit <= low and high <= room_of[3], text.text
                told += 1
    assert told


def test_a_zip_is_seen_from_near_where_it_is_sewn_along(worked: dict[str, Pattern]) -> None:
    """Its tape takes a sixth of the width of the picture at least, and its upper end is in sight: an upright tape of
    25 mm in the whole of a long opening has a ninth."""
    zipped = 0
    for operation in of_kind(worked["dune_skirt"], "lapped_zip"):
        for scene in shown_scenes(worked["dune_skirt"], operation):
            if not any(thing.kind == "zip" for thing in scene.things):
                continue
            drawing = scene_drawing(scene, worked["dune_skirt"])
            assert drawing.window is not None
            x0, y0, x1, y1 = drawing.window
            tape = next(i for i in drawing.items if isinstance(i, Fill) and i.name == "zip on back")
            assert 25.0 / (x1 - x0) > 1 / 6
            assert y0 < box(tape)[3] < y1
            zipped += 1
    assert zipped == 1


def test_ends_of_a_strip_are_cut_edges_until_they_are_tucked_in(worked: dict[str, Pattern]) -> None:
    """Folds are drawn heavier than cut edges. The belt's ends are tucked in and stitched, those of its loops are cut
    edges when they are folded."""
    jacket = worked["harbour_jacket"]

    def upright(kind: str) -> dict[str, int]:
        drawing = scene_drawing(scenes(jacket, kind)[-1], jacket)
        ends = [
            i for i in strokes(drawing, "edge", "crease", "row") if len(i.curves) == 1 and box(i)[2] - box(i)[0] < 0.1
        ]
        return {role: sum(item.role == role for item in ends) for role in ("edge", "crease", "row")}

    assert upright("turn_strip") == {"edge": 0, "crease": 2, "row": 2}
    assert upright("fold_strip") == {"edge": 2, "crease": 0, "row": 0}


@pytest.mark.parametrize("room", [STAGE, LARGE], ids=["A4", "large print"])
def test_the_column_beside_the_cloth_is_as_wide_as_its_words(
    worked: dict[str, Pattern], room: tuple[float, float]
) -> None:
    """Where the cross-section stands beside the cloth, what is written under it reaches neither into the cloth nor out
    of the picture."""
    beside = 0
    for lesson in ("dune_skirt", "harbour_jacket"):
        for scene in every_scene(worked[lesson]):
            if scene.section is None or not scene.layers:
                continue
            made = lettered(staged(scene, worked[lesson])(room), *room)
            window, texts = made.drawing.window, [text for text in made.texts if text.text == say("picture.section")]
            plies = [box(item) for item in strokes(made.drawing, *PLIES)]
            if window is None or not texts or min(ply[0] for ply in plies) <= window[2]:
                continue
            left, _, right, _ = lies(texts[0])
            assert window[2] < left and right <= made.bounds[2]
            beside += 1
    assert beside > 5


def test_a_new_row_is_told_from_a_fold_in_grey(worked: dict[str, Pattern]) -> None:
    """A row beside a fold is dark on dark in a grey print, 2.1 to 1: so paper lies under it, which parts it from both
    at 3 to 1 (WCAG 2.2, 1.4.11), wider than the row by more than half a px on either side."""
    ground, row, fold = (THEME.lines[role] for role in ("row_ground", "row", "crease"))
    assert contrast(row.colour, fold.colour) < 3 < min(contrast(ground.colour, x.colour) for x in (row, fold))
    assert ground.width - row.width > 1.0 and not ground.dash
    for pattern in worked.values():
        for scene in every_scene(pattern):
            if not scene.layers or scene.recut is not None or scene.worn or any(each.round for each in scene.layers):
                continue
            items = scene_drawing(scene, pattern).items
            new = {row.run.said for row in scene.rows if row.ink == "new" and row.style != "box"}
            for before, item in pairwise(items):
                if isinstance(item, Stroke) and item.role in ("row", "baste", "hand") and item.name in new:
                    assert isinstance(before, Stroke) and before.role == "row_ground"
                    assert before.curves == item.curves


def test_faces_of_a_cross_section_differ_in_grey(worked: dict[str, Pattern]) -> None:
    """The right side is a line that stands off its cloth's tint at 3 to 1 (WCAG 2.2, 1.4.11), and where it
    follows from the seam itself which side that is, the section tells it."""
    face = THEME.lines["ply_face"].colour
    for role in THEME.ply.values():
        assert contrast(face, THEME.fills[role].tint) > 3
    for shape in (tube(), turned_tube(), folded_in_four(), enclosed_pressed(), rolled_out()):
        assert all(ply.right for ply in shape.plies)


def test_the_gathered_piece_lies_uppermost(worked: dict[str, Pattern]) -> None:
    """Who sews with the gathers below catches folds across the row (common practice, no source)."""
    tiers = worked["breaker_skirt"]
    for number, upper in enumerate(("second", "third")):
        first, opened = scenes(tiers, "plain_seam", number)
        assert [layer.run.piece for layer in first.layers][-1] == upper
        (row,) = {row.run.piece for row in first.rows if row.ink == "new"}
        assert row == upper
        assert {layer.run.piece for layer in opened.layers} >= {upper}


def test_an_opening_beside_gathers_is_looked_at_as_it_is_elsewhere(worked: dict[str, Pattern]) -> None:
    """Opened out no piece lies on the other; what the picture shows is the opening, and not the whole of the seam."""
    tiers = worked["breaker_skirt"]
    seam = of_kind(tiers, "plain_seam")[0]
    gap = Run("first", ("lower",), None, 40.0, 80.0)
    opened = replace(seam.scenes(tiers)[1], focus=gap)
    state = state_before(tiers, seam)
    assert gathers_on_top(tiers, seam, state, seam.scenes(tiers)[0]) != seam.scenes(tiers)[0]
    assert gathers_on_top(tiers, seam, state, opened).focus == gap


def test_a_name_is_led_to_its_cloth_over_as_little_other_as_may_be() -> None:
    """A line through a pocket to the cloth below it names the pocket."""
    apron = example_lessons()["oyster_apron"].work(workshop_chart()["W4"])
    for scene in scenes(apron, "patch_pocket"):
        made = lettered(staged(scene, apron)(STAGE), *STAGE)
        pocket = next(item for item in made.drawing.items if isinstance(item, Fill) and item.name == "pocket")
        inside = shapely.box(*box(pocket)).buffer(-2.0)
        (name,) = (text for text in made.texts if text.text == "Apron")
        assert name.leader and not shapely.LineString(name.leader).intersects(inside)


def test_words_of_a_strip_stand_in_its_frame_in_a_low_room(worked: dict[str, Pattern]) -> None:
    """What is cut above, what is made below, an arrow between: also where the page leaves little height."""
    tote = worked["ferry_tote"]
    low = (300.0, 130.0)
    made = lettered(staged(scenes(tote, "fold_strip")[0], tote)(low), *low)
    assert made.drawing.window is not None
    (arrow,) = strokes(made.drawing, "symbol", name=BECOMES)
    x0, y0, x1, y1 = made.drawing.window
    texts = {text.text: lies(text) for text in made.texts}
    cut, folded = texts["Handle, as cut"], texts["folded and stitched"]
    for left, below, right, above in (cut, folded):
        assert x0 < left and right < x1 and y0 < below and above < y1
    assert cut[1] > box(arrow)[3] and folded[3] < box(arrow)[1]


# ---- what is worked on a band that bends ------------------------------------------------------------------------


def test_a_slit_is_straight_and_as_long_as_it_is_cut_on_a_band_that_bends(worked: dict[str, Pattern]) -> None:
    """The waistband is drawn along the skirt's curved waist; its buttonhole is a straight slit."""
    skirt = worked["dune_skirt"]
    (mark,) = [mark for mark in skirt.piece("waistband").marks if mark.kind == "buttonhole"]
    assert mark.path is not None
    found = strokes(scene_drawing(scenes(skirt, "buttonholes")[0], skirt), "new", name="buttonhole on waistband")
    slit = max(found, key=lambda item: sum(curve.length for curve in item.curves))
    assert sum(curve.length for curve in slit.curves) == pytest.approx(mark.path.length, abs=0.01)
    assert slit.curves[0].start.distance(slit.curves[-1].end) == pytest.approx(mark.path.length, abs=0.01)
