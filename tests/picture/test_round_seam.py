"""Rings and what is sewn to them are seen as they stand: what their pictures must show, and how large. Radii and
heights are worked out by hand: a circle is as long as 2 pi times its radius (Euclid)."""

from __future__ import annotations

import math
from typing import Any

import pytest

from kit import Lesson, blank_paper, cm, open_lesson
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Fill, Stroke
from kit.picture.locator import SPOT
from kit.picture.sewing import scene_drawing
from kit.resources import examples
from kit.sewing.before import state_before
from kit.sewing.in_the_round import standing
from kit.sewing.in_work import shown_scenes
from kit.sewing.order import operations
from kit.sewing.run import Run
from kit.sewing.scene import Scene
from kit.sewing.state import State

ROUND, HIGH = 60.0, 25.0  # cm round the bucket, and its height


def bucket(*, closed: bool = True, all_round: bool = True) -> Pattern:
    """A straight side of one piece and a round bottom, of half of which the draft is."""
    lesson = Lesson("Bucket", start=blank_paper, author="Trial", date="2026-11", edition="1")

    @lesson.step("Draw the side", makes="side")
    def side(side: Any) -> None:
        "Draw it."
        a = side.place(0 * cm, 0 * cm)
        b, c, d = a.out(ROUND * cm), a.out(ROUND * cm).up(HIGH * cm), a.up(HIGH * cm)
        side.draw(lower=a.to(b), first=b.to(c), upper=c.to(d), last=d.to(a))

    @lesson.step("Draw the bottom", makes="bottom")
    def bottom(bottom: Any, side: Any) -> None:
        "Draw it."
        radius = side.lower.length / (2 * math.pi)
        front = bottom.place(0 * cm, 0 * cm)
        middle, back = front.up(radius), front.up(radius * 2)
        bottom.draw(centre=back.to(front), rim=front.arc(about=middle, angle=180, toward="out"))

    @lesson.step("Allowances")
    def allowances(side: Any, bottom: Any) -> None:
        "Add them."
        side.allow(lower=1 * cm, first=1 * cm, upper=1 * cm, last=1 * cm)
        bottom.allow(rim=1 * cm)
        side.cut(1)
        bottom.cut(1, fold="centre")

    @lesson.sew("Sew")
    def sew(make: Any, side: Any, bottom: Any) -> None:
        "Sew it."
        if closed:
            make.plain_seam(side.first, side.last, allowance=1 * cm, finish="none")
        if all_round:
            make.plain_seam(side.lower, bottom.rim, allowance=1 * cm, finish="none")
        else:
            make.plain_seam(side.lower.between(0 * cm, 30 * cm), bottom.right.rim, allowance=1 * cm, finish="none")

    return lesson.work()


def first_scene(pattern: Pattern, number: int) -> Scene:
    """The first in which two edges are laid together; where one of them is clipped before that, it is seen alone."""
    operation = list(operations(pattern))[number][1]
    return next(scene for scene in shown_scenes(pattern, operation) if len(scene.layers) > 1)


def test_the_edge_that_is_clipped_first_is_seen_alone_and_its_clips_on_the_ring() -> None:
    """A straight side goes round a bottom only when its allowance is clipped (common practice, no source): the text
    says so before it is pinned."""
    pattern = bucket()
    alone, pinned, *_ = shown_scenes(pattern, list(operations(pattern))[1][1])
    assert [layer.run.piece for layer in alone.layers] == ["side"] and not alone.rows
    (cuts,) = alone.things
    assert (cuts.kind, cuts.ink, cuts.run.piece) == ("clips", "new", "side") and 10.0 <= cuts.apart <= 20.0
    (seen,) = pinned.things
    assert (seen.kind, seen.ink) == ("clips", "old")
    drawn = [item for item in scene_drawing(pinned, pattern).items if isinstance(item, Stroke)]
    assert sum(item.name == "clips on side" for item in drawn) >= 3


def test_a_round_bottom_lies_under_the_side_that_stands_on_it() -> None:
    pattern = bucket()
    scene = first_scene(pattern, 1)
    lies = {layer.run.piece: layer.round for layer in scene.layers}
    assert all(lies.values())
    radius = ROUND * 10 / (2 * math.pi)
    assert lies["bottom"].near == pytest.approx((radius, 0.0), abs=0.1)  # type: ignore[union-attr]
    assert lies["side"].far == pytest.approx((radius, HIGH * 10), abs=0.1)  # type: ignore[union-attr]
    assert [layer.run.piece for layer in scene.layers] == ["bottom", "side"]
    drawing = scene_drawing(scene, pattern)
    fills = [item.name for item in drawing.items if isinstance(item, Fill)]
    assert fills.index("bottom") < fills.index("side")
    rows = [item for item in drawing.items if isinstance(item, Stroke) and item.role == "row" and item.name]
    assert len(rows) == 1 and sum(c.length for c in rows[0].curves) > radius


@pytest.mark.parametrize("how", [{"closed": False}, {"all_round": False}])
def test_what_is_no_ring_yet_or_is_sewn_in_part_lies_flat(how: dict[str, bool]) -> None:
    pattern = bucket(**how)
    scene = first_scene(pattern, 0 if "closed" in how else 1)
    assert not any(layer.round for layer in scene.layers)


@pytest.fixture(scope="module")
def hat() -> Pattern:
    return open_lesson(examples() / "limpet_hat.ipynb").work()


def round_scene(pattern: Pattern, step: str, kind: str, of: str = "") -> Scene:
    found = [
        scene
        for record, operation in operations(pattern)
        if record.key == step and operation.kind == kind
        for scene in shown_scenes(pattern, operation)
        if any(layer.round for layer in scene.layers) and (not of or of in {each.run.piece for each in scene.layers})
    ]
    assert len(found) == 1
    return found[0]


# What lies where, from the bottom up, and the face it turns to whoever looks from above and outside; by reasoning with
# the pieces in the hand: right sides together, the work wrong side out but for what hangs below an upturned brim.
HAT = [
    ("sew_crown", "plain_seam", [("tip", "right"), ("crown", "wrong")]),
    ("outer_brim", "plain_seam", [("tip", "right"), ("crown", "right"), ("brim", "wrong")]),
    ("finish", "topstitch", [("brim", "right"), ("crown", "right"), ("tip", "right")]),
]


@pytest.mark.parametrize(("step", "kind", "wanted"), HAT, ids=[f"{row[0]} {row[1]}" for row in HAT])
def test_the_hat_lies_as_in_the_hand(hat: Pattern, step: str, kind: str, wanted: list[tuple[str, str]]) -> None:
    scene = round_scene(hat, step, kind)
    assert [(layer.run.piece, layer.up) for layer in scene.layers] == wanted


def test_one_hat_lies_in_the_other(hat: Pattern) -> None:
    """Right sides together: the lining turns its wrong side out, and one looks into the wrong side of the crown."""
    scene = round_scene(hat, "join", "seam_to_turn")
    up = {layer.run.piece: layer.up for layer in scene.layers}
    assert up["crown_lining"] == "wrong" and up["crown"] == "wrong"
    assert (up["under_brim"], up["brim"]) == ("right", "wrong")
    assert [layer.run.piece for layer in scene.layers if layer.round and layer.round.inside] == ["crown"]
    rows = [i for i in scene_drawing(scene, hat).items if isinstance(i, Stroke) and i.role == "row" and i.name]
    around = sum(c.length for row in rows for c in row.curves)
    brim = scene.layers[-1].round
    assert brim is not None and around > 4 * brim.near[0], "all of the row is seen"


def test_a_gap_is_left_in_the_row(hat: Pattern) -> None:
    """The gap of 11 cm in 57.5 cm round: as much of the ellipse is left out, seen aslant."""
    scene = round_scene(hat, "inner_hat", "plain_seam", "under_brim")
    items = scene_drawing(scene, hat).items
    row = next(i for i in items if isinstance(i, Stroke) and i.role == "row" and i.name)
    assert row.curves[0].start.distance(row.curves[-1].end) > 40.0


def test_the_plan_beside_a_cropped_picture_shows_the_hat_as_it_is_worn(hat: Pattern) -> None:
    """The brim's seam is pressed once top, side and brim hang together: top above, brim below, the seam between."""
    seam = next(
        operation
        for record, operation in operations(hat)
        if record.key == "outer_brim" and any(run.edges == ("inner",) for run in operation.runs())
    )
    items = scene_drawing(shown_scenes(hat, seam)[-1], hat).items
    middle = {}
    for name in ("tip", "crown", "brim"):
        ys = [c.start.y for i in items if isinstance(i, Stroke) and i.name == f"locator {name}" for c in i.curves]
        middle[name] = (min(ys) + max(ys)) / 2
    assert middle["tip"] > middle["crown"] > middle["brim"]
    (spot,) = [i for i in items if isinstance(i, Stroke) and i.name == SPOT]
    assert middle["crown"] > spot.curves[0].start.y


def test_a_bag_hangs_from_its_opening() -> None:
    pattern = bucket()
    state = state_before(pattern, list(operations(pattern))[1][1])
    assert standing(pattern, state, Run("side", ("lower",))) == (), "nothing is sewn to the side yet"
    sewn = lying_at_end(pattern)
    layers = {layer.run.piece: layer.round for layer in standing(pattern, sewn, Run("side", ("lower",)))}
    assert layers["bottom"].near[1] == pytest.approx(-HIGH * 10, abs=0.1)  # type: ignore[union-attr]


def lying_at_end(pattern: Pattern) -> State:
    last = list(operations(pattern))[-1][1]
    return state_before(pattern, last).after(last.outcome(pattern), pattern)


def test_the_notches_of_both_halves_stand_on_the_allowance_of_the_upper_ring(hat: Pattern) -> None:
    """The brim is notched halfway along the brow, on either half, which its own seam and fold part from one another."""
    scene = round_scene(hat, "outer_brim", "plain_seam")
    items = scene_drawing(scene, hat).items
    notches = [i for i in items if isinstance(i, Stroke) and i.name == "notch brim.inner"]
    one, other = (notch.curves[0].start for notch in notches)
    assert one.x == pytest.approx(-other.x, abs=0.1) and one.y == pytest.approx(-other.y, abs=0.1)
