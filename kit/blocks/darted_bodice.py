"""The bodice block with darts, neck to waist: a front with bust and waist darts, a back with shoulder and waist
darts. It is written as a lesson whose steps say how it is drafted; `darted_bodice_block.lesson()` is that lesson, to
read and to change.

Around the bust, at the level of the bust points, and around the waist the paper measures the body and its ease
once the darts are closed. Ease, what the waist darts take and the shoulder dart are parameters of the lesson, which the
block itself leaves as they are.
"""

from __future__ import annotations

from kit.blocks.block import Block, drafted, steps_of
from kit.blocks.darted_plan import (
    BACK_WIDTH_EASE,
    BUST_EASE,
    FRONT_WIDTH_EASE,
    NECK_EASE,
    PARAMETERS,
    WAIST_EASE,
    DartPlan,
    HalfPlan,
    Plan,
    plan,
)
from kit.diagnostic import message
from kit.geometry import Path, Point
from kit.lesson.bench import BenchPiece
from kit.lesson.pencil import PaperLine, PaperPoint
from kit.piece.darts_and_pleats import Dart, Pressed
from kit.units import Length

__all__ = [
    "BACK_WIDTH_EASE",
    "BUST_EASE",
    "FRONT_WIDTH_EASE",
    "NECK_EASE",
    "WAIST_EASE",
    "darted_bodice_block",
]

TITLE = "Darted bodice block"
MEASURES = (
    "bust_girth",
    "under_bust_girth",
    "waist_girth",
    "neck_base_girth",
    "shoulder_length",
    "back_width",
    "front_width",
    "back_waist_length",
    "armscye_depth",
)


def _line(piece: BenchPiece, path: Path) -> PaperLine:
    return PaperLine(piece, path)


def _point(piece: BenchPiece, point: Point) -> PaperPoint:
    return PaperPoint(piece, point)


def _put(piece: BenchPiece, name: str, edge: str, dart: DartPlan, pressed: Pressed) -> None:
    """The dart laid on its edge, its cap drawn."""
    path = piece.freeze().edge(edge).path
    start, end = path.nearest(dart.first), path.nearest(dart.second)
    piece.lay_dart(Dart(name, edge, dart.apex, start, end, pressed, dart.short))


_step = steps_of(plan, PARAMETERS)


@_step("Rule the frame", makes=("front", "back"))
def frame(front: BenchPiece, back: BenchPiece, draft: Plan, back_waist_length: Length) -> None:
    """On each piece rule the centre line up from the waist; at the back it measures {back_waist_length} to the nape.
    Rule the bust line square to it, at the level of the bust points: on the front {bust_width} wide, a quarter of the
    bust girth with its ease; on the back also what the waist dart still takes there."""
    for piece, half in ((front, draft.front), (back, draft.back)):
        piece.draw(centre=_line(piece, half.centre))
        piece.guide(
            bust_line=_line(piece, half.bust_line),
            waist_line=_line(piece, Path.line(half.centre.start, half.side_waist)),
        )
        piece.mark(centre_waist=_point(piece, half.centre.start), side_waist=_point(piece, half.side_waist))
    back.measure(back_waist_length=_line(back, draft.back.centre))
    front.mark(bust_point=_point(front, draft.bust_point))
    front.measure(bust_width=front.bust_line)


@_step("Draw necks and shoulders")
def necks(front: BenchPiece, back: BenchPiece, draft: Plan, shoulder_length: Length) -> None:
    """The two neck curves leave the centre square and reach the shoulder square; together they measure half the neck
    base girth with its ease. The front shoulder is {shoulder_length} long and falls more steeply than the back's. The
    back shoulder is the same with its dart closed: rule it, mark the dart a little inside its middle, and open the
    outer part about the dart's point over the shoulder blade until the dart is {shoulder_dart_width} wide."""
    for piece, half in ((front, draft.front), (back, draft.back)):
        piece.draw(neck=_line(piece, half.neck), shoulder=_line(piece, half.shoulder), after="centre")
        piece.mark(
            centre_neck=_point(piece, half.neck.start),
            neck_point=_point(piece, half.neck.end),
            shoulder_tip=_point(piece, half.tip),
        )
    front.measure(shoulder_length=_line(front, draft.front.shoulder))
    dart = draft.back.shoulder_dart
    if dart is not None:
        back.measure(shoulder_dart_width=(_point(back, dart.first), _point(back, dart.second)))


@_step("Draw side seams")
def sides(front: BenchPiece, back: BenchPiece, draft: Plan) -> None:
    """Each side seam is straight, begins {underarm_drop} below the armpit and leans in to the waist, passing the end of
    the bust line. On the front the bust
    dart is opened in it below the bust line: turn the part above about the dart's point by the bust angle, wider for
    a fuller bust. With the dart closed the two side seams are equally long."""
    for piece, half in ((front, draft.front), (back, draft.back)):
        piece.draw(side=_line(piece, half.side), after="shoulder")
        piece.mark(underarm_point=_point(piece, half.underarm))


@_step("Draw the armholes")
def armholes(front: BenchPiece, back: BenchPiece, draft: Plan, front_width: Length, back_width: Length) -> None:
    """Leave the shoulder tip square, run straight down at half of the front width {front_width} or the back width
    {back_width} with its ease, and curve round to reach the side seam square."""
    for piece, half in ((front, draft.front), (back, draft.back)):
        piece.draw(armhole=_line(piece, half.armhole), after="shoulder")


@_step("Draw the waist and its darts")
def waists(front: BenchPiece, back: BenchPiece, draft: Plan) -> None:
    """The waist darts take {dart_share} of the difference between bust and waist, the side seams the rest. Draw the
    waist square to the centre, to both legs of the dart and to the side, so that it is smooth when the dart is closed.
    Then fold each dart, press it toward the centre or down, and draw its cap along the edge it lies under."""
    for piece, half in ((front, draft.front), (back, draft.back)):
        piece.draw(waist=_line(piece, half.waist), after="side")
        _darts(piece, half)
        piece.say(side="side seam")
        piece.cut(fold="centre", title=f"{piece.piece_name.capitalize()} bodice")
        piece.grain(at=_point(piece, Point(half.waist_dart.apex.x * 0.62, half.underarm.y * 0.8)))


def _darts(piece: BenchPiece, half: HalfPlan) -> None:
    if half.shoulder_dart is not None:
        _put(piece, "shoulder_dart", "shoulder", half.shoulder_dart, "start")
    if half.side_dart is not None:
        _put(piece, "bust_dart", "side", half.side_dart, "end")
    _put(piece, "waist_dart", "waist", half.waist_dart, "end")


STEPS = (frame, necks, sides, armholes, waists)

darted_bodice_block = Block(
    TITLE,
    MEASURES,
    drafted(TITLE, STEPS, None, PARAMETERS),
    STEPS,
    parameters=PARAMETERS,
    said=message("block_title.darted_bodice"),
)
