"""The bodice block, neck to hip, without darts: a front and a back half. Its steps say how it is drafted;
`bodice_block.lesson` is a lesson of them, to read and to change, with ease and the depth of the armhole to move.

The centre line is x = 0 with the body's side at x > 0; the waistline is y = 0. Widths, ease and proportions
are common practice (no source) and stand here as named constants. The girth on the paper is exactly the
body's plus the stated ease, and the two neck curves together measure the neck base girth plus its ease.

The shaping darts of bust and back are left out: their fullness stays as ease, so this block suits loose tops.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

from kit.blocks.block import Block, steps_of
from kit.blocks.refused import refusal, telling_by
from kit.body.body import Body
from kit.diagnostic import message
from kit.geometry import Cubic, Path, Point, Vector
from kit.lesson.bench import BenchPiece
from kit.lesson.parameter import Parameter
from kit.lesson.pencil import PaperLine, PaperPoint
from kit.piece.piece import CutPlan, Edge, Grain, Piece
from kit.piece.role import EdgeRole
from kit.units import Length

BUST_EASE = 100.0
"""Room to breathe and reach (about 60 mm) and the fullness a bust dart would have held (about 40 mm), in mm."""
WAIST_EASE = 160.0
"""More than at the bust: without waist darts only the side seams shape, and one that takes in more than about
3 cm a quarter pulls."""
HIP_EASE = 80.0
"""Room to sit and step."""
NECK_EASE = 10.0
"""The neckline lies a little outside the neck base, or it would bind when the head turns."""
SCYE_EASE = 15.0
"""How far the armhole lies below the armpit."""
BACK_WIDTH_EASE = 20.0
"""Across the whole back, for reaching forward."""
FRONT_WIDTH_EASE = 10.0
"""Across the whole chest; arms reach forward, so less than the back."""

BACK_SLOPE = math.radians(20)
FRONT_SLOPE = math.radians(24)
BACK_RISE = 0.30
"""Height of the neck point above the nape, as a part of the half neck width."""
FRONT_DROP = 1.05
"""Depth of the front neck below the neck point, as a part of the half neck width."""
BACK_PITCH = 0.50
FRONT_PITCH = 0.42
"""Where the armhole runs straight down, as a part of its height from the underarm up."""

_ROUND = 0.5523  # handle of a cubic that follows a quarter ellipse
_LONG_HANDLE = 0.85
_NECK_ROUND = 0.62  # a neck curve is fuller than an ellipse, or the front neck would run almost straight

PARAMETERS = (
    Parameter("bust_ease", "length", BUST_EASE, 60.0, 180.0, "room to breathe and reach, and what a dart would hold"),
    Parameter("waist_ease", "length", WAIST_EASE, 100.0, 240.0, "the side seams alone shape the waist"),
    Parameter("hip_ease", "length", HIP_EASE, 40.0, 160.0, "room to sit and step"),
    Parameter("neck_ease", "length", NECK_EASE, 0.0, 40.0, "the neckline lies a little outside the neck base"),
    Parameter("underarm_drop", "length", SCYE_EASE, 5.0, 35.0, "how far the armhole lies below the armpit"),
)

MEASURES = (
    "bust_girth",
    "waist_girth",
    "hip_girth",
    "neck_base_girth",
    "shoulder_length",
    "back_width",
    "front_width",
    "back_waist_length",
    "armscye_depth",
    "waist_to_hip",
)


def _corner_curve(start: Point, corner: Point, end: Point, fullness: float = _ROUND) -> Cubic:
    """A curve leaving `start` toward `corner` and reaching `end` coming from it, by its handles' share."""
    return Cubic(start, start.lerp(corner, fullness), end.lerp(corner, fullness), end)


def _bend(start: Point, corner: Point, end: Point) -> Cubic:
    """A slight bend from `start` by way of `corner` to `end`. Where one leg is much shorter than the other, its handle
    reaches the corner and the other's nearly does: at half their legs the whole turn would lie beside the short one,
    on a radius of a centimetre, which no seam allowance follows."""
    one, other = start.distance(corner), end.distance(corner)
    uneven = abs(one - other) / (one + other)
    short, long = (_ROUND + uneven * (most - _ROUND) for most in (1.0, _LONG_HANDLE))
    first, second = (short, long) if one < other else (long, short)
    return Cubic(start, start.lerp(corner, first), end.lerp(corner, second), end)


def _neck(width: float, depth: float, slope: float) -> Cubic:
    """A neck curve from (0, 0), square to the centre line, to the neck point (width, depth), square to a
    shoulder falling by `slope`."""
    return _corner_curve(Point(0.0, 0.0), Point(width - depth * math.tan(slope), 0.0), Point(width, depth), _NECK_ROUND)


# Both neck curves grow with their width, so the width that gives a wanted neck length is one division.
_NECK_LENGTH = (
    2
    * (_neck(1000.0, 1000 * BACK_RISE, BACK_SLOPE).length + _neck(1000.0, 1000 * FRONT_DROP, FRONT_SLOPE).length)
    / 1000
)


@dataclass(frozen=True)
class _Frame:
    """What front and back share, in mm: half neck width, quarter widths, levels, and the side seam."""

    neck: float
    neck_point_level: float
    bust: float
    underarm: float
    hip_level: float
    side: Path
    side_lean: float


def _frame(numbers: tuple[float, ...], body: Body) -> _Frame:
    bust_ease, waist_ease, hip_ease, neck_ease, drop = numbers
    neck = (body["neck_base_girth"] + neck_ease) / _NECK_LENGTH
    if neck > 0.55 * body["back_width"] / 2:
        raise refusal(body, "neck_base_girth", "neck_shoulders", "back_width")
    bust = (body["bust_girth"] + bust_ease) / 4
    waist = (body["waist_girth"] + waist_ease) / 4
    hip = (body["hip_girth"] + hip_ease) / 4
    back_length = body["back_waist_length"]
    underarm = back_length - body["armscye_depth"] - drop
    if underarm < 30:
        raise refusal(body, "armscye_depth", "no_side_seam", "back_waist_length")
    neck_point_level = back_length + BACK_RISE * neck
    if neck_point_level - FRONT_DROP * neck < underarm + 20:
        raise refusal(body, "neck_base_girth", "neck_armhole", "armscye_depth")
    hip_level = -body["waist_to_hip"]
    if abs(waist - bust) > underarm:
        raise refusal(body, "waist_girth", "side_flat", "bust_girth")
    if abs(hip - waist) > -hip_level:
        raise refusal(body, "hip_girth", "side_flat", "waist_girth")
    side, lean = _side(bust, underarm, waist, hip, hip_level)
    return _Frame(neck, neck_point_level, bust, underarm, hip_level, side, lean)


def _side(bust: float, underarm: float, waist: float, hip: float, hip_level: float) -> tuple[Path, float]:
    """The side seam, underarm to waist to hip, and its lean inward at the underarm in radians.

    Each part is a cubic whose width is a function of height, so it cannot double back; where the waist is the
    narrowest or widest place it runs straight down there, and at the hip it is square to the hip line.
    """
    upper = (waist - bust) / underarm
    lower = (hip - waist) / -hip_level
    at_waist = 2 * upper * lower / (upper + lower) if upper * lower > 0 else 0.0
    at_underarm = min(upper, 0.0)
    return (
        Path(
            (
                _falling(Point(bust, underarm), at_underarm, Point(waist, 0.0), at_waist),
                _falling(Point(waist, 0.0), at_waist, Point(hip, hip_level), 0.0),
            )
        ),
        math.atan(-at_underarm),
    )


def _falling(start: Point, start_gain: float, end: Point, end_gain: float) -> Cubic:
    """A cubic downward from `start` to `end`; the gains are x per unit of falling at either end."""
    third = (start.y - end.y) / 3
    return Cubic(
        start, Point(start.x + start_gain * third, start.y - third), Point(end.x - end_gain * third, end.y + third), end
    )


def _armhole(body: Body, frame: _Frame, tip: Point, slope: float, width_name: str, ease: float, pitch: float) -> Path:
    """Square to the shoulder at its tip, straight down at the pitch, square to the side at the underarm."""
    height = tip.y - frame.underarm
    if height < 110:
        raise refusal(body, "armscye_depth", "armhole_shallow", "shoulder_length")
    if tip.x > frame.bust - 10:
        raise refusal(body, "shoulder_length", "shoulder_beyond", "bust_girth")
    wanted = (body[width_name] + ease) / 2
    if wanted > frame.bust - 10:
        raise refusal(body, width_name, "width_beyond", "bust_girth")
    if wanted < tip.x - 60:
        raise refusal(body, width_name, "width_inside", "shoulder_length")
    if wanted > tip.x + 40:
        raise refusal(body, width_name, "width_past_tip", "shoulder_length")
    pitch_level = frame.underarm + pitch * height
    run = math.tan(slope) * (tip.y - pitch_level)
    # An armhole that bulged outside the shoulder tip would not lie flat: it is kept within what its square
    # start allows.
    x = min(max(wanted, tip.x - 0.9 * run), tip.x - 0.15 * run)
    turn = Point(x, tip.y - (tip.x - x) / math.tan(slope))
    place = Point(x, pitch_level)
    underarm = Point(frame.bust, frame.underarm)
    corner = Point(x, frame.underarm + (frame.bust - x) * math.tan(frame.side_lean))
    if corner.y > pitch_level - 5:
        raise refusal(body, "waist_girth", "side_leans", "bust_girth")
    return Path((_bend(tip, turn, place), _corner_curve(place, corner, underarm)))


def _half(name: Literal["front", "back"], title: str, frame: _Frame, neck: Cubic, tip: Point, armhole: Path) -> Piece:
    hip = frame.side.end
    waist = frame.side.at(_upper_length(frame.side))
    centre_hip = Point(0.0, frame.hip_level)
    centre_waist = Point(0.0, 0.0)
    underarm = Point(frame.bust, frame.underarm)
    paths: tuple[tuple[EdgeRole, Path], ...] = (  # its edges are named after what they are
        ("neck", Path((neck,))),
        ("shoulder", Path.line(neck.end, tip)),
        ("armhole", armhole),
        ("side", frame.side),
        ("hip", Path.line(hip, centre_hip)),
        ("centre", Path.line(centre_hip, neck.start)),
    )
    grain_x = frame.bust * 0.4
    return Piece(
        name,
        title,
        tuple(Edge(edge, path, role=edge) for edge, path in paths),
        role=name,
        cut=CutPlan(fold="centre"),
        grain=Grain(Point(grain_x, frame.hip_level * 0.6), Point(grain_x, frame.underarm * 0.8)),
        points=(
            ("centre_neck", neck.start),
            ("neck_point", neck.end),
            ("shoulder_tip", tip),
            ("underarm_point", underarm),
            ("side_waist", waist),
            ("centre_waist", centre_waist),
            ("side_hip", hip),
            ("centre_hip", centre_hip),
        ),
        guides=(
            ("waist", Path.line(centre_waist, waist)),
            ("bust_line", Path.line(Point(0.0, frame.underarm), underarm)),
        ),
        landmarks=(
            ("neck_point", "neck_point"),
            ("shoulder_tip", "shoulder_tip"),
            ("underarm_point", "underarm_point"),
            ("waist", "waist_line"),
            ("bust_line", "bust_line"),
        ),
    )


def _upper_length(side: Path) -> float:
    return side.curves[0].length


@telling_by
def _drafted(numbers: tuple[float, ...], body: Body) -> tuple[Piece, ...]:
    """Front and back; the numbers are those of `PARAMETERS`."""
    frame = _frame(numbers, body)
    neck_point = Point(frame.neck, frame.neck_point_level)
    length = body["shoulder_length"]
    halves = []
    name: Literal["front", "back"]
    for name, slope, depth, width_name, ease, pitch in (
        ("front", FRONT_SLOPE, FRONT_DROP, "front_width", FRONT_WIDTH_EASE, FRONT_PITCH),
        ("back", BACK_SLOPE, BACK_RISE, "back_width", BACK_WIDTH_EASE, BACK_PITCH),
    ):
        shape = _neck(frame.neck, depth * frame.neck, slope)
        up = Vector(0.0, frame.neck_point_level - depth * frame.neck)
        neck = Cubic(shape.start + up, shape.c1 + up, shape.c2 + up, neck_point)
        tip = neck_point + Vector(length * math.cos(slope), -length * math.sin(slope))
        armhole = _armhole(body, frame, tip, slope, width_name, ease, pitch)
        halves.append(_half(name, f"{name.capitalize()} bodice", frame, neck, tip, armhole))
    return tuple(halves)


def _draft(body: Body) -> tuple[Piece, ...]:
    return _drafted(body, *(parameter.default for parameter in PARAMETERS))


def _ruled(piece: BenchPiece, half: Piece, *names: str) -> dict[str, PaperLine]:
    """Lines of the finished half, as a step draws them."""
    lines = dict(half.guides) | {edge.name: edge.path for edge in half.edges}
    return {name: PaperLine(piece, lines[name]) for name in names}


def _marked(piece: BenchPiece, half: Piece, *names: str) -> None:
    points = dict(half.points)
    piece.mark(**{name: PaperPoint(piece, points[name]) for name in names})


_step = steps_of(_drafted, PARAMETERS)


@_step("Rule the frame", makes=("front", "back"))
def frame(
    front: BenchPiece,
    back: BenchPiece,
    draft: tuple[Piece, ...],
    back_waist_length: Length,
    waist_to_hip: Length,
) -> None:
    """On each piece rule the centre line up from the hip: {waist_to_hip} to the waist, and on the back
    {back_waist_length} on to the nape. Square three lines across it, each a quarter of the girth with its ease: at the
    hip {hip_width}, at the waist {waist_width}, and at the underarm {bust_width} for the bust. The underarm lies
    {underarm_drop} below the armpit."""
    for piece, half in zip((front, back), draft, strict=True):
        piece.draw(**_ruled(piece, half, "hip", "centre"))
        piece.guide(**_ruled(piece, half, "waist", "bust_line"))
        _marked(piece, half, "underarm_point", "side_waist", "centre_waist", "side_hip", "centre_hip")
    front.measure(
        waist_to_hip=(front.centre_waist, front.centre_hip),
        hip_width=front.hip,
        waist_width=front.waist,
        bust_width=front.bust_line,
    )
    _marked(back, draft[1], "centre_neck")
    back.measure(back_waist_length=(back.centre_waist, back.centre_neck))


@_step("Draw necks and shoulders")
def necks(front: BenchPiece, back: BenchPiece, draft: tuple[Piece, ...], shoulder_length: Length) -> None:
    """The two neck curves leave the centre square and reach the shoulder square; together they measure half the neck
    base girth with its ease. The neck points of front and back lie equally high. From there rule the shoulders,
    {shoulder_length} long; the front's falls more steeply than the back's."""
    for piece, half in zip((front, back), draft, strict=True):
        piece.draw(**_ruled(piece, half, "neck", "shoulder"), after="centre")
        _marked(piece, half, "neck_point", "shoulder_tip")
    _marked(front, draft[0], "centre_neck")
    front.measure(shoulder_length=front.shoulder)


@_step("Draw the side seams")
def sides(front: BenchPiece, back: BenchPiece, draft: tuple[Piece, ...]) -> None:
    """Draw the side seam from the underarm in to the end of the waist line and out to the hip, where it meets the hip
    line square. Trace it for both pieces, so that they are equally long."""
    for piece, half in zip((front, back), draft, strict=True):
        piece.draw(**_ruled(piece, half, "side"), after="shoulder")


@_step("Draw the armholes")
def armholes(
    front: BenchPiece,
    back: BenchPiece,
    draft: tuple[Piece, ...],
    front_width: Length,
    back_width: Length,
) -> None:
    """Leave the shoulder tip square, run straight down at half of the front width {front_width} or the back width
    {back_width} with its ease, and curve round to reach the side seam square."""
    for piece, half in zip((front, back), draft, strict=True):
        piece.draw(**_ruled(piece, half, "armhole"), after="shoulder")
        piece.say(side="side seam")
        piece.cut(fold="centre", title=half.title)
        if half.grain is not None:
            piece.grain(at=PaperPoint(piece, half.grain.start.mid(half.grain.end)))


bodice_block = Block(
    "Bodice block",
    MEASURES,
    _draft,
    (frame, necks, sides, armholes),
    parameters=PARAMETERS,
    said=message("block_title.bodice"),
)
