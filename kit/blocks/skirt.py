"""The skirt block with darts, waist to knee: a front and a back half. It is written as a lesson whose steps say how
it is drafted; `skirt_block.lesson` is that lesson, to read and to change.

The centre line is x = 0 with the body's side at x > 0; the front's waist begins at y = 0. Ease, shares and depths
are common practice (no source) and stand here as named constants; ease, length and the front's share of the darts are
parameters of the lesson, which the block itself leaves as they are. Around the waist, with the darts closed, and
around the hip the paper measures the body and its ease; the two side seams are the same line.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from kit.blocks.block import Block, drafted, steps_of
from kit.blocks.darted_waist import (
    MOST_DART,
    DartWish,
    Waist,
    darted_waist,
    put_darts,
    root,
    sewn,
    wishes,
)
from kit.blocks.refused import refusal, telling_by
from kit.body.body import Body
from kit.diagnostic import message
from kit.geometry import Cubic, Line, Path, Point, Vector
from kit.lesson.bench import BenchPiece
from kit.lesson.parameter import Parameter
from kit.lesson.pencil import PaperLine, PaperPoint
from kit.units import Length

WAIST_EASE = 20.0
"""Room to breathe and for what is tucked in, in mm."""
HIP_EASE = 40.0
"""Room to sit and step, in mm."""
LENGTH = 600.0
"""From the waist to the hem, about the knee, in mm."""
SIDE_SHARE = 0.34
"""How much of the difference between hip and waist the side seams take; the darts take the rest."""
SIDE_MOST = 30.0
"""A side seam that takes in more than this on either side, in mm, stands off the hip."""
FRONT_SHARE = 0.33
"""The front's part of what the darts take: the seat is rounder than the belly."""
FRONT_DEEP = (0.52, 0.48)
BACK_DEEP = (0.64, 0.56)
"""How deep the darts are, as a part of waist to hip: nearer the centre, nearer the side."""
FRONT_PLACES = (0.58, (0.48, 0.76))
BACK_PLACES = (0.46, (0.34, 0.67))
"""Where the darts lie on the closed waist from the centre: one dart, or two."""
BACK_LEAN = 0.5
"""The front's darts stand upright; the back's lean half as far as a spoke between centre and side would."""

PARAMETERS = (
    Parameter("waist_ease", "length", WAIST_EASE, 0.0, 60.0, "room to breathe and for what is tucked in"),
    Parameter("hip_ease", "length", HIP_EASE, 20.0, 100.0, "room to sit and step"),
    Parameter("front_share", "share", FRONT_SHARE, 0.25, 0.5, "the front's part of what the darts take"),
    Parameter("skirt_length", "length", LENGTH, 350.0, 1000.0, "from the waist to the hem"),
)

TITLE = "Skirt block"
MEASURES = ("waist_girth", "hip_girth", "waist_to_hip")


@dataclass(frozen=True)
class SkirtHalf:
    """One half on paper: the waist with its darts and the side seam from waist to hem."""

    waist: Waist
    side: Path


@dataclass(frozen=True)
class SkirtPlan:
    """The skirt of one body, in mm: a quarter of the hip with its ease, the levels, and the halves."""

    hip: float
    hip_level: float
    hem_level: float
    front: SkirtHalf
    back: SkirtHalf


@telling_by
def plan(numbers: tuple[float, ...], body: Body) -> SkirtPlan:
    """Everything the steps draw, in mm, worked once for each body and numbers (those of `PARAMETERS`). `KitError`
    naming the measurements that do not go together, and what would go."""
    waist_ease, hip_ease, front_share, length = numbers
    half_waist = (body["waist_girth"] + waist_ease) / 2
    # A waist larger than the hip is what the skirt hangs from: it is as wide there, and falls straight.
    hip = max((body["hip_girth"] + hip_ease) / 4, half_waist / 2)
    deep = body["waist_to_hip"]
    taken = 2 * hip - half_waist
    darts = taken - 2 * min(SIDE_SHARE * taken / 2, SIDE_MOST)
    front = wishes(darts * front_share, FRONT_PLACES, (FRONT_DEEP[0] * deep, FRONT_DEEP[1] * deep))
    back = wishes(darts * (1 - front_share), BACK_PLACES, (BACK_DEEP[0] * deep, BACK_DEEP[1] * deep), BACK_LEAN)
    if any(wish.wide > MOST_DART for wish in (*front, *back)):
        raise refusal(body, "waist_girth", "darts_wide", "hip_girth")

    def drawn(side: float) -> tuple[Waist, Waist, float]:
        return _waists(hip, side, deep, front, back)

    def miss(side: float) -> float:
        one, two, _ = drawn(side)
        return sewn(one) + sewn(two) - half_waist

    nominal = (taken - sum(wish.wide for wish in (*front, *back))) / 2
    side = root(miss, nominal, nominal - 1.0)
    waist_front, waist_back, gain = drawn(side)
    top = waist_front.path.end
    if abs(side) > 0.5 * deep:
        raise refusal(body, "waist_to_hip", "hip_side_flat", "hip_girth")
    third = (top.y + deep) / 3
    end = Point(hip, -deep)
    curve = Cubic(top, top + Vector(gain, -1.0) * third, end + Vector(0.0, third), end)
    hem = -length
    if hem > -deep - 50:
        raise refusal(body, "waist_to_hip", "below_hem", "hip_girth")
    line = Path((curve, Line(end, Point(hip, hem))))
    return SkirtPlan(hip, -deep, hem, SkirtHalf(waist_front, line), SkirtHalf(waist_back, line))


def _waists(
    hip: float, side: float, deep: float, front: tuple[DartWish, ...], back: tuple[DartWish, ...]
) -> tuple[Waist, Waist, float]:
    """Both waists ending at one point, `side` mm inside the hip, square to one side seam; and how far that seam
    gains outward at its top for every mm of falling."""
    one, gain = hip - side - sum(wish.wide for wish in front), 0.0
    for _ in range(40):
        waist = darted_waist(Point(0.0, 0.0), one, 0.0, math.atan(gain), front)
        top = waist.path.end
        before = one, gain
        one += hip - side - top.x
        gain = 2 * side / (deep + top.y)
        if (one, gain) == before:
            break
    two = hip - side - sum(wish.wide for wish in back)
    for _ in range(40):
        other = darted_waist(Point(0.0, 0.0), two, 0.0, math.atan(gain), back)
        missing = hip - side - other.path.end.x
        if two + missing == two:
            break
        two += missing
    return waist, other.moved(Vector(0.0, waist.path.end.y - other.path.end.y)), gain


def _halves(front: BenchPiece, back: BenchPiece, draft: SkirtPlan) -> tuple[tuple[BenchPiece, SkirtHalf], ...]:
    return (front, draft.front), (back, draft.back)


_step = steps_of(plan, PARAMETERS)


@_step("Rule the frame", makes=("front", "back"))
def frame(front: BenchPiece, back: BenchPiece, draft: SkirtPlan, waist_to_hip: Length) -> None:
    """On each piece rule the centre line up from the hem, {skirt_length} long on the front, a little less on the back.
    Rule the hip line square to it, {waist_to_hip} below the front waist and {hip_width} wide: a quarter of the hip
    girth with its ease, or of the waist with its ease where that is more. Rule the hem square to the centre line, as
    wide as the hip line."""
    for piece, half in _halves(front, back, draft):
        top = half.waist.path.start
        bottom = Point(0.0, draft.hem_level)
        corner = Point(draft.hip, draft.hem_level)
        piece.draw(hem=PaperLine(piece, Path.line(corner, bottom)), centre=PaperLine(piece, Path.line(bottom, top)))
        hip = Path.line(Point(0.0, draft.hip_level), Point(draft.hip, draft.hip_level))
        piece.guide(hip_line=PaperLine(piece, hip))
        piece.mark(
            centre_waist=PaperPoint(piece, top),
            centre_hip=PaperPoint(piece, hip.start),
            side_hip=PaperPoint(piece, hip.end),
            centre_hem=PaperPoint(piece, bottom),
            side_hem=PaperPoint(piece, corner),
        )
    front.measure(waist_to_hip=(PaperPoint(front, Point(0.0, 0.0)), front.centre_hip))
    front.measure(hip_width=(front.centre_hip, front.side_hip), skirt_length=front.centre)


@_step("Draw the side seams")
def sides(front: BenchPiece, back: BenchPiece, draft: SkirtPlan) -> None:
    """From the hem to the hip line the side seam is ruled straight up. Above it, curve in to the waist: the side
    takes about a third of what hip and waist differ by, at most 3 cm, and rises above the waistline because it leans.
    Trace one side seam for both pieces, so that they are equally long."""
    for piece, half in _halves(front, back, draft):
        piece.draw(side=PaperLine(piece, half.side), after="centre")
        piece.mark(side_waist=PaperPoint(piece, half.side.start))


@_step("Draw the waist and its darts")
def waists(front: BenchPiece, back: BenchPiece, draft: SkirtPlan) -> None:
    """The darts take what is left of the difference between hip and waist: {front_share} of it the front, the rest the
    back, whose darts are deeper and lean a little to the side. What is more than 3.2 cm is shared by two darts. Draw
    the waist square to the centre, to both legs of every dart and to the side, so that it is one smooth curve with
    the darts closed; the back waist begins lower than the front's. Fold each dart, press it toward the centre, and
    draw its cap."""
    for piece, half in _halves(front, back, draft):
        piece.draw(waist=PaperLine(piece, half.waist.path), after="centre")
        put_darts(piece, half.waist)
        piece.say(side="side seam")
        piece.cut(fold="centre", title=f"{piece.piece_name.capitalize()} skirt")
        piece.grain(at=PaperPoint(piece, Point(draft.hip * 0.5, (draft.hip_level + draft.hem_level) / 2)))


STEPS = (frame, sides, waists)

skirt_block = Block(
    TITLE,
    MEASURES,
    drafted(TITLE, STEPS, None, PARAMETERS),
    STEPS,
    parameters=PARAMETERS,
    said=message("block_title.skirt"),
)
