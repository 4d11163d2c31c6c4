"""A channel: two rows through the layers of a turned edge, between which a cord or elastic runs.

What would sew, and why (common practice, no source). Each was written before the check ran on it."""

from __future__ import annotations

from types import SimpleNamespace

import pytest

from kit.geometry import Point
from kit.picture.drawing import Stroke
from kit.picture.sewing import scene_drawing
from kit.piece.piece import Mark
from kit.proof.unfinished import unfinished
from kit.prose import sentences
from kit.sewing.in_work import shown_scenes
from kit.sewing.operations.channels import reach
from kit.sewing.order import of_kind
from kit.sewing.run import Run
from kit.units import cm, mm

DISTANCE, DEPTH = 30 * mm, 15 * mm
TOPS = ("front", "back")


@pytest.fixture(scope="module")
def bag(garments):
    """Two panels 200 mm wide and 300 mm deep, 400 mm round, and the lining of each. Along the right side from the top
    down, along the left side up to it: the slits of a cord 30 to 45 mm below the top, and one too long."""

    def panel(name, high=300):
        return garments.polygon(
            name,
            [(0, 0), (200, 0), (200, -high), (0, -high)],
            {"top": 10, "right_side": 15, "bottom": 10, "left_side": 15},
            marks=(
                Mark("right_slit", "opening", edge="right_side", start=30, end=45, said="right slit"),
                Mark("left_slit", "opening", edge="left_side", start=high - 45, end=high - 30, said="left slit"),
                Mark("short_right", "opening", edge="right_side", start=30, end=40, said="short right slit"),
                Mark("short_left", "opening", edge="left_side", start=high - 40, end=high - 30, said="short left slit"),
                Mark("long_slit", "opening", edge="right_side", start=30, end=60, said="long slit"),
                Mark("hole", "point", point=Point(100, -37), said="hole"),
                Mark("high_hole", "point", point=Point(100, -15), said="high hole"),
                Mark("near_hole", "point", point=Point(100, -42), said="hole near a row"),
                Mark("turning_gap", "opening", edge="bottom", start=50, end=150, said="gap for turning"),
            ),
        )

    return (*map(panel, TOPS), *(panel(f"{name}_lining", 290) for name in TOPS))


def outer(right=None, left=None):
    """The outer bag, with what is left open in its side seams."""

    def write(make, front, back, **_):
        for side, slit in (("right_side", right), ("left_side", left)):
            opening = getattr(front, slit) if slit else None
            seam = [getattr(piece, side) for piece in (front, back)]
            make.plain_seam(*seam, allowance=15 * mm, opening=opening)
        make.plain_seam(front.bottom, back.bottom, allowance=10 * mm)

    return write


def lining(make, front_lining, back_lining, **_):
    for side in ("right_side", "left_side"):
        make.plain_seam(getattr(front_lining, side), getattr(back_lining, side), allowance=15 * mm)
    make.plain_seam(front_lining.bottom, back_lining.bottom, allowance=10 * mm, gap=front_lining.turning_gap)


def joined(make, front, back, front_lining, back_lining):
    make.seam_to_turn([front.top, back.top], [front_lining.top, back_lining.top], allowance=10 * mm)


def turned(make, front, back, front_lining, back_lining):
    make.turn_out(front, back, front_lining, back_lining, through=front_lining.turning_gap)


def turned_not_pressed(make, front, back, front_lining, back_lining):
    make.turn_out(front, back, front_lining, back_lining, through=front_lining.turning_gap, press="later")


def channel(**options):
    def write(make, front, back, **_):
        make.channel(front.top, back.top, **({"distance": DISTANCE, "depth": DEPTH} | options))

    return write


def gapped(make, front, back, **_):
    gap = front.top.between(5 * cm, 9 * cm)
    make.channel(front.top, back.top, distance=DISTANCE, depth=DEPTH, gap=gap)


def eyelet(name="hole"):
    return lambda make, front, **_: make.eyelets(getattr(front, name))


def cord(*through):
    def write(make, front, back, **_):
        make.thread_cord(front.top, back.top, cord=60 * cm, through=[getattr(front, name) for name in through])

    return write


def elastic(wide=10 * mm, named=True):
    def write(make, front, back, **_):
        gap = front.top.between(5 * cm, 9 * cm) if named else None
        make.thread_elastic(front.top, back.top, length=30 * cm, width=wide, gap=gap)

    return write


def hem(deep):
    return lambda make, front, back, **_: make.hem(front.top, back.top, first=10 * mm, second=deep)


def casing(depth):
    return lambda make, front, back, **_: make.casing(front.top, back.top, first=5 * mm, depth=depth)


LINED = (lining, joined, turned)
SLITS = outer("right_slit", "left_slit")
SHORT = outer("short_right", "short_left")

SEWS = {
    "a cord in and out at slits in both side seams": (
        (SLITS, *LINED, channel(), cord("right_slit", "left_slit")),
        "the slits lie between the rows, in the outer bag alone",
    ),
    "two cords, each in and out at a slit of its own": (
        (SLITS, *LINED, channel(), cord("right_slit"), cord("left_slit")),
        "pulled from both sides the bag closes; a channel holds two cords",
    ),
    "a cord out at an eyelet of the outer bag": (
        (eyelet(), outer(), *LINED, channel(), cord("hole")),
        "the eyelet was set in one layer, between the rows to be",
    ),
    "elastic through a gap in the lower row": (
        (outer(), *LINED, gapped, elastic()),
        "10 mm elastic runs in 15 mm; the gap in the row is closed after it",
    ),
    "elastic as wide as runs freely": (
        (outer(), *LINED, gapped, elastic(13 * mm)),
        "2 mm of room are left between two rows",
    ),
    "a cord out of a casing at a slit of the seam": (
        (outer("right_slit"), casing(50 * mm), cord("right_slit")),
        "the slit, 30 to 45 mm below the fold, opens into the casing, whose row lies 48 mm below it",
    ),
    "an eyelet set while the lining hangs apart": (
        (outer(), lining, joined, eyelet(), turned, channel(), cord("hole")),
        "joined at the top, but still wrong side out: the lining is held aside and is not punched",
    ),
    "two cords where there is just room for both": (
        (SHORT, *LINED, channel(depth=12 * mm), cord("short_right"), cord("short_left")),
        "each takes 5 mm, and 2 mm are left for them to run",
    ),
    "one cord in a narrow channel": (
        (outer("short_right"), *LINED, channel(depth=10 * mm), cord("short_right")),
        "it takes 5 mm, and 5 mm are left",
    ),
    "a frill above a channel in a deep hem": (
        (eyelet(), outer(), hem(60 * mm), channel(), cord("hole")),
        "cloth and hem are two layers down to 60 mm, the second row lies at 45 mm",
    ),
}
REFUSED = {
    "an edge that is raw": (
        (outer("right_slit"), channel(), cord("right_slit")),
        ["channel_one_layer"],
        "two rows through one layer leave no tunnel",
    ),
    "an edge hemmed less deep than the rows": (
        (outer("right_slit"), hem(20 * mm), channel(), cord("right_slit")),
        ["channel_beyond"],
        "the hem ends above the first row",
    ),
    "a bag still inside out": (
        (outer("right_slit"), lining, joined, channel(), cord("right_slit"), turned),
        ["inside_out"],
        "bag and lining do not lie wrong sides together yet",
    ),
    "an edge that is not pressed": (
        (outer("right_slit"), lining, joined, turned_not_pressed, channel(), cord("right_slit")),
        ["topstitched_unpressed"],
        "the first row is measured from the pressed edge",
    ),
    "panels not sewn together yet": (
        (
            lambda make, front, front_lining, **_: make.seam_to_turn(front.top, front_lining.top, allowance=10 * mm),
            lambda make, back, back_lining, **_: make.seam_to_turn(back.top, back_lining.top, allowance=10 * mm),
            lambda make, front, front_lining, **_: make.turn_out(front, front_lining, through=front.bottom),
            lambda make, back, back_lining, **_: make.turn_out(back, back_lining, through=back.bottom),
            channel(),
        ),
        ["not_joined_yet"],
        "a cord does not run over a gap between two panels",
    ),
    "rows too near each other": (
        (SLITS, *LINED, channel(depth=5 * mm)),
        ["channel_shallow"],
        "a cord takes 5 mm and 2 mm to run freely",
    ),
    "rows below the end of the lining": (
        (outer(), *LINED, channel(distance=250 * mm, depth=45 * mm)),
        ["channel_beyond"],
        "at 295 mm there is the bag, 300 mm deep, but no lining, 290 mm deep",
    ),
    "a slit longer than the channel is deep": (
        (outer("long_slit"), *LINED, channel(), cord("long_slit")),
        ["hole_off_channel"],
        "below the second row the slit opens between bag and lining",
    ),
    "a slit that goes on below a casing": (
        (outer("right_slit"), casing(40 * mm), cord("right_slit")),
        ["hole_off_channel"],
        "from 38 mm on, where the row lies, it opens into the bag",
    ),
    "an eyelet above the rows": (
        (eyelet("high_hole"), outer(), *LINED, channel(), cord("high_hole")),
        ["hole_off_channel"],
        "the cord runs lower down, behind the first row",
    ),
    "an eyelet that a row would run into": (
        (eyelet("near_hole"), outer(), *LINED, channel(), cord("near_hole")),
        ["hole_off_channel"],
        "an eyelet 8 mm wide with its middle 3 mm from the row lies in it",
    ),
    "an eyelet set once the lining lies under it": (
        (outer(), *LINED, eyelet(), channel(), cord("hole")),
        ["eyelet_in_lining"],
        "turned right side out bag and lining lie on each other: the eyelet clamps both, and no cord gets out between",
    ),
    "an eyelet set once the hem lies under it": (
        (outer(), hem(60 * mm), eyelet(), channel(), cord("hole")),
        ["eyelet_in_lining"],
        "37 mm below the edge the hem, 60 mm deep, is a second layer",
    ),
    "two cords in a channel for one": (
        (SHORT, *LINED, channel(depth=10 * mm), cord("short_right"), cord("short_left")),
        ["cords_no_room"],
        "two cords of 5 mm and 2 mm to run take 12 mm; in less they twist into each other",
    ),
    "an eyelet set once the rows are sewn": (
        (outer(), *LINED, channel(), eyelet(), cord("hole")),
        ["eyelet_late"],
        "it would go through both layers",
    ),
    "a cord out at a seam that was sewn shut": (
        (outer(), *LINED, channel(), cord("right_slit")),
        ["no_eyelet"],
        "nothing was left open there",
    ),
    "two cords out at one slit": (
        (SLITS, *LINED, channel(), cord("right_slit"), cord("right_slit")),
        ["threaded_twice"],
        "as with eyelets, each cord has places of its own",
    ),
    "a channel sewn after the cord": (
        (SLITS, *LINED, cord("right_slit"), channel()),
        ["no_casing"],
        "there is nothing to draw it through yet",
    ),
    "elastic wider than the rows leave": (
        (outer(), *LINED, gapped, elastic(14 * mm)),
        ["elastic_wide"],
        "1 mm is too little for it to run freely",
    ),
    "elastic through a gap where none was left": (
        (outer(), *LINED, channel(), elastic()),
        ["gap_shut"],
        "both rows go all round",
    ),
    "two channels along one edge": (
        (SLITS, *LINED, channel(), channel(distance=60 * mm)),
        ["channel_twice"],
        "the verbs that draw something in name an edge, and could not tell which is meant",
    ),
    "a gap beside the channel": (
        (
            outer(),
            *LINED,
            lambda make, front, back, **_: make.channel(
                front.top, back.top, depth=DEPTH, gap=front.right_side.between(1 * cm, 3 * cm)
            ),
        ),
        ["gap_elsewhere"],
        "the side seam is no part of the second row",
    ),
}


@pytest.mark.parametrize("name", SEWS)
def test_what_would_sew_is_sewn(sewn, bag, name):
    assert sewn(bag, *SEWS[name][0]).codes == []


@pytest.mark.parametrize("name", REFUSED)
def test_what_would_not_sew_is_refused(sewn, bag, name):
    writes, codes, _ = REFUSED[name]
    assert list(dict.fromkeys(sewn(bag, *writes).codes)) == codes  # each panel may be told


# ---- what it says, leaves and shows ----------------------------------------------------------------------------


WHOLE = SEWS["two cords, each in and out at a slit of its own"][0]


def _channel(found):
    (made,) = of_kind(found.pattern, "channel")
    return made


def test_it_says_both_rows_and_how_far_the_second_is(sewn, bag):
    found = sewn(bag, *WHOLE)
    said = sentences(found.pattern, _channel(found))
    assert "3 cm (1 3/16 in) from the edge" in said[0] and "1.5 cm (5/8 in) below it" in said[0]
    assert said[2].startswith(
        "Stitch along the lower line, 4.5 cm from the edge, through all layers too."
    )  # in inches they do not add up
    assert len(said) == 3  # all round, in one row


def test_a_gap_is_said_and_shown_in_the_second_row_alone(sewn, bag):
    found = sewn(bag, *SEWS["elastic through a gap in the lower row"][0])
    said = sentences(found.pattern, _channel(found))
    assert "leave 4 cm (1 9/16 in) open for threading, on the top of the front from 5 cm" in said[2]
    first, second = _channel(found).scene(found.pattern).rows
    assert (first.inset, first.gap) == (30.0, None) and (second.inset, second.gap) == (45.0, (50.0, 90.0))
    assert found.last.closes(found.pattern) == ()  # the edge is closed already; what is closed lies in the row


def test_the_knot_of_a_cord_out_at_a_slit(sewn, bag):
    """It must run all round, so that it is tacked nowhere (common practice, no source)."""
    keys = [sentence.key for sentence in sewn(bag, *WHOLE).last.sentences(sewn(bag, *WHOLE).pattern)]
    assert "thread_cord.knot" in keys and "thread_cord.tack" not in keys
    eyelets = sewn(bag, *SEWS["a cord out at an eyelet of the outer bag"][0])
    assert "thread_cord.tack" in [sentence.key for sentence in eyelets.last.sentences(eyelets.pattern)]


def test_a_cord_is_shown_between_its_rows(sewn, bag):
    found = sewn(bag, *WHOLE)
    (scene,) = found.last.scenes(found.pattern)
    assert [(row.inset, row.ink) for row in scene.rows] == [(30.0, "old"), (45.0, "old")]
    assert {round(point.y, 3) for point in scene.things[0].line.points()} == {-37.5}


@pytest.mark.parametrize(
    ("writes", "left"),
    [
        (WHOLE, set()),
        ((SLITS, *LINED, channel()), {"proof.never_threaded"}),
        ((outer(), *LINED, gapped, elastic(named=False)), {"proof.never_row_gap_closed"}),
        ((outer(), *LINED, gapped, elastic()), set()),
    ],
)
def test_what_is_left_undone_is_told(sewn, bag, writes, left):
    found = sewn(bag, *writes)
    assert found.codes == []
    told = unfinished(found.pattern, found.state)
    assert {finding.says.key for finding in told} == left


def test_how_far_a_piece_goes_on_from_an_edge(bag, garments):
    """By hand: 300 mm of panel; a triangle 200 mm high; the narrow side of a panel that slants."""
    (front, *_) = bag
    triangle = garments.polygon("front", [(0, 0), (200, 0), (100, -200)], {"top": 10, "right": 10, "left": 10})
    slanted = garments.polygon(
        "front", [(0, 0), (200, 0), (200, -300), (0, -240)], {"top": 10, "right": 10, "bottom": 10, "left": 10}
    )
    wanted = {300.0: front, 200.0: triangle, 240.0: slanted}
    for high, piece in wanted.items():
        assert reach(SimpleNamespace(piece=lambda _, of=piece: of), Run("front", ("top",))) == pytest.approx(high)


def test_the_picture_shows_both_rows_however_far_they_lie_from_the_edge(sewn, bag):
    found = sewn(bag, outer(), *LINED, channel(depth=80 * mm))
    (scene,) = shown_scenes(found.pattern, _channel(found))
    drawing = scene_drawing(scene, found.pattern)
    low, high = drawing.window[1], drawing.window[3]
    rows = [item for item in drawing.items if isinstance(item, Stroke) and item.role == "row"]
    levels = {round(item.curves[0].start.y) for item in rows}
    assert len(levels) == 2 and max(levels) - min(levels) == 80
    assert low < min(levels) and max(levels) < high
