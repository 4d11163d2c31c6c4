"""The trouser block with darts: straight legs, a front and a back half. It is written as a lesson whose steps say how
it is drafted; `trouser_block.lesson` is that lesson, to read and to change.

Around waist (darts closed), hip and thigh, and along the crotch seam, the paper measures the body and the ease stated
in `kit.blocks.trouser_plan`; ease at waist, hip and knee, the front's share of the darts and the height of the hem are
parameters of the lesson, which the block itself leaves as they are. Front and back share one side seam; their inseams
are equally long, and the crotch seam runs on without a corner where they are joined.
"""

from __future__ import annotations

from kit.blocks.block import Block, drafted, steps_of
from kit.blocks.darted_waist import put_darts
from kit.blocks.trouser_plan import (
    CROTCH_EASE,
    HIP_EASE,
    KNEE_EASE,
    PARAMETERS,
    RISE_EASE,
    THIGH_EASE,
    WAIST_EASE,
    LegPlan,
    TrouserPlan,
    plan,
)
from kit.diagnostic import message
from kit.geometry import Path, Point
from kit.lesson.bench import BenchPiece
from kit.lesson.pencil import PaperLine, PaperPoint
from kit.units import Length

__all__ = ["CROTCH_EASE", "HIP_EASE", "KNEE_EASE", "RISE_EASE", "THIGH_EASE", "WAIST_EASE", "trouser_block"]

TITLE = "Trouser block"
MEASURES = (
    "waist_girth",
    "hip_girth",
    "thigh_girth",
    "knee_girth",
    "waist_to_hip",
    "body_rise",
    "total_crotch_length",
    "inside_leg_length",
)


def _halves(front: BenchPiece, back: BenchPiece, draft: TrouserPlan) -> tuple[tuple[BenchPiece, LegPlan], ...]:
    return (front, draft.front), (back, draft.back)


_step = steps_of(plan, PARAMETERS)


@_step("Rule the levels", makes=("front", "back"))
def levels(
    front: BenchPiece,
    back: BenchPiece,
    draft: TrouserPlan,
    waist_to_hip: Length,
    body_rise: Length,
    thigh_girth: Length,
    inside_leg_length: Length,
) -> None:
    """On the front mark the centre of the waist; {waist_to_hip} below it rule the hip line, and 1.5 cm below the body
    rise of {body_rise} the thigh line. The hip line is {front_hip} wide on the front and {back_hip} on the back, 2 cm
    more: together half the hip girth with its ease. On the crotch side add what goes between the legs, a third of it on
    the front, two thirds on the back: 15.5 per cent of the hip girth, up to 19 where the crotch seam is long for the
    rise, and in any case so much that the thigh lines together measure the thigh girth of {thigh_girth} and 6 cm of
    ease. Where the body rise is not measured and the crotch length is, the thigh line lies up to 4 cm lower, as the
    crotch seam asks. The inside leg of {inside_leg_length} gives the hem, {hem_height} above the floor, and the knee a
    little above its middle."""
    for piece, half in _halves(front, back, draft):
        hem = Path.line(half.side.end, half.inseam.start)
        piece.draw(hem=PaperLine(piece, hem))
        piece.guide(
            hip_line=PaperLine(piece, half.hip_line),
            thigh_line=PaperLine(piece, half.thigh_line),
            knee_line=PaperLine(piece, half.knee_line),
        )
        piece.mark(
            centre_waist=PaperPoint(piece, half.waist.path.start),
            centre_hip=PaperPoint(piece, half.hip_line.start),
            side_hip=PaperPoint(piece, half.hip_line.end),
            crotch_point=PaperPoint(piece, half.thigh_line.start),
        )
    front.measure(waist_to_hip=(front.centre_waist, front.centre_hip), front_hip=front.hip_line)
    back.measure(back_hip=back.hip_line)


@_step("Draw the inseams")
def inseams(front: BenchPiece, back: BenchPiece, draft: TrouserPlan, knee_girth: Length) -> None:
    """Knee and hem are equally wide: {front_knee} on the front and {back_knee} on the back, 2 cm more; together the
    knee girth of {knee_girth} and {knee_ease} of ease. The middle of the front's knee lies under the middle of its
    thigh line. Rule each inseam straight up to the knee, then let it bend out to the crotch point. The back's would be
    longer: lower its crotch point until both are equally long."""
    for piece, half in _halves(front, back, draft):
        piece.draw(inseam=PaperLine(piece, half.inseam), after="hem")
    front.measure(front_knee=front.knee_line)
    back.measure(back_knee=back.knee_line)


@_step("Draw the crotch seams")
def crotches(front: BenchPiece, back: BenchPiece, draft: TrouserPlan, total_crotch_length: Length) -> None:
    """From the crotch point leave square to the inseam, so that front and back run into one another when the inseam
    is sewn, and curve round to the hip line. On the front go straight up to the waist. On the back lean to the side
    by 1.8 cm for every 10 cm, up to 2.7 cm where the centre back rises high, and go up until both crotch seams
    together measure the total crotch length of {total_crotch_length} and 0.5 cm. An estimated crotch length is
    followed as long as the centre back comes to lie 0 to 9 cm above the front waist."""
    for piece, half in _halves(front, back, draft):
        piece.draw(crotch=PaperLine(piece, half.crotch), after="inseam")


@_step("Draw the side seams")
def sides(front: BenchPiece, back: BenchPiece, draft: TrouserPlan) -> None:
    """The side seam runs straight down at the hip line, bends in to the knee, and is ruled straight from the knee to
    the hem. Above the hip it curves in to the waist by about a third of what hip and waist differ by, at most 2.6 cm.
    Trace one side seam for both pieces, so that they are equally long."""
    for piece, half in _halves(front, back, draft):
        piece.draw(side=PaperLine(piece, half.side), after="crotch")
        piece.mark(side_waist=PaperPoint(piece, half.side.start))


@_step("Draw the waist and its darts")
def waists(front: BenchPiece, back: BenchPiece, draft: TrouserPlan) -> None:
    """The darts take what is left of the difference between hip and waist: {front_share} of it the front, the rest the
    back. What is more than 3.2 cm is shared by two darts. Front darts stand upright, back darts square to the
    sloping waist. Draw the waist square to the centre seam, to both legs of every dart and to the side, so that it is
    one smooth curve with the darts closed. Fold each dart, press it toward the centre, and draw its cap."""
    for piece, half in _halves(front, back, draft):
        piece.draw(waist=PaperLine(piece, half.waist.path), after="crotch")
        put_darts(piece, half.waist)
        piece.say(side="side seam", crotch="crotch seam")
        piece.cut(2, mirrored=True, title=f"{piece.piece_name.capitalize()} trouser leg")
        knee = half.knee_line
        piece.grain(at=PaperPoint(piece, Point(knee.start.mid(knee.end).x, knee.start.y)))


STEPS = (levels, inseams, crotches, sides, waists)

trouser_block = Block(
    TITLE,
    MEASURES,
    drafted(TITLE, STEPS, None, PARAMETERS),
    STEPS,
    parameters=PARAMETERS,
    said=message("block_title.trousers"),
)
