"""Pieces and strips of a sampler, made by hand: what the examples of the sewing operations are sewn on (invented)."""

from __future__ import annotations

import math
from dataclasses import replace

from kit.geometry import Arc, Path, Point
from kit.lesson.bench import BenchPiece
from kit.piece.dart import Dart
from kit.piece.double_dart import around
from kit.piece.piece import CutPlan, Edge, Mark, Notch, Piece, Strip
from kit.units import cm, mm

Corner = tuple[float, float]


def polygon(name: str, corners: list[Corner], edges: dict[str, float], cut: CutPlan, *marks: Mark) -> Piece:
    """A piece of straight edges; `edges` gives name -> allowance (mm) in the order of the corners."""
    points = [Point(x, y) for x, y in corners]
    made = tuple(
        Edge(edge, Path.line(a, b), allowance)
        for (edge, allowance), a, b in zip(edges.items(), points, points[1:] + points[:1], strict=True)
    )
    return Piece(name, name.replace("_", " ").capitalize(), made, cut=cut, marks=marks)


def rectangle(name: str, wide: float, high: float, edges: dict[str, float], cut: CutPlan, *marks: Mark) -> Piece:
    return polygon(name, [(0, 0), (wide, 0), (wide, high), (0, high)], edges, cut, *marks)


PAIR, SINGLE = CutPlan(count=2, mirrored=True), CutPlan()
NECK = (90.0**2 + 50.0**2) ** 0.5 + (70.0**2 + 10.0**2) ** 0.5
_LINE = Path.line(Point(60, 150), Point(60, 10)).joined(Path.line(Point(60, 10), Point(180, 10)))
POCKET_LINE = _LINE.joined(Path.line(Point(180, 10), Point(180, 150)))
BODICE = [(-20.0, 360.0), (70.0, 410.0), (200.0, 380.0), (200.0, 200.0), (220.0, -100.0), (-20.0, -100.0)]
MOUTH = Mark("pocket_mouth", "opening", edge="side", start=50, end=200, said="pocket mouth")


def _hole(name: str, height: float) -> Mark:
    return Mark(name, "buttonhole", path=Path.line(Point(-11, height), Point(10, height)))


FRONT = polygon(
    "front",
    BODICE,
    {"neck": 10, "shoulder": 15, "armhole": 15, "side": 15, "hem": 30, "front_edge": 40},
    PAIR,
    Mark("pocket_place", "placement", path=POCKET_LINE, said="pocket place"),
    _hole("hole_1", 300),
    _hole("hole_2", 200),
    Mark("button_1", "point", point=Point(0, 300), said="upper button"),
)
FRONT = FRONT.with_edges(side=replace(FRONT.edge("side"), extra=20.0))
FRONT_LINING = replace(FRONT, name="front_lining", title="Front lining", marks=(), cut=replace(PAIR, cloth="lining"))
BACK = polygon(
    "back",
    [(0, 400), (70, 410), (200, 380), (200, 200), (220, -100), (0, -100)],
    {"neck": 10, "shoulder": 15, "armhole": 15, "side": 15, "hem": 30, "centre": 0},
    CutPlan(fold="centre"),
)
FRONT_FACING = polygon(
    "front_facing",
    [(-20, 360), (70, 410), (120, 398), (-20, 290)],
    {"inner": 10, "shoulder": 15, "outer": 6, "front_edge": 10},
    replace(PAIR, interfacing=2),
)
BACK_FACING = polygon(
    "back_facing",
    [(0, 400), (70, 410), (120, 398), (0, 330)],
    {"inner": 10, "shoulder": 15, "outer": 6, "centre": 0},
    CutPlan(fold="centre", interfacing=1),
)
BACK = BACK.with_edges(side=replace(BACK.edge("side"), extra=20.0))
SLEEVE = replace(
    polygon(
        "sleeve",
        [(-150, 0), (0, 130), (150, 0), (110, -300), (-110, -300)],
        {"back_cap": 15, "front_cap": 15, "front_underarm": 15, "wrist": 10, "back_underarm": 15},
        PAIR,
    ),
    notches=(Notch("front_cap", 100), Notch("back_cap", 100, "double")),
    marks=(Mark("cuff_slit", "slit", path=Path.line(Point(-50, -300), Point(-50, -220)), said="sleeve slit"),),
)
TOWER = polygon(
    "tower",
    [(0, 0), (50, 0), (50, 110), (25, 130), (0, 110)],
    {"lower": 10, "outer": 6, "right_point": 6, "left_point": 6, "edge": 6},
    PAIR,
)
CUFF = rectangle("cuff", 210, 100, {"lower": 10, "end": 10, "inner": 10, "start": 10}, replace(PAIR, interfacing=2))
BAND = rectangle(
    "band", NECK, 35, {"neck": 10, "end": 10, "top": 10, "centre": 0}, CutPlan(fold="centre", interfacing=1)
)
INNER_BAND = replace(BAND, name="inner_band", title="Inner band", cut=CutPlan(fold="centre"))
POCKET = rectangle("pocket", 120, 140, {"bottom": 10, "right_side": 10, "top": 36, "left_side": 10}, PAIR)
FLAP = rectangle("flap", 120, 60, {"outer": 6, "right_end": 6, "upper": 10, "left_end": 6}, PAIR)
FLAP_LINING = replace(FLAP, name="flap_lining", title="Flap lining", cut=replace(PAIR, cloth="lining"))

_SKIRT = [(0.0, 0.0), (200.0, 0.0), (250.0, -600.0), (0.0, -600.0)]
SKIRT_FRONT = replace(
    polygon("skirt_front", _SKIRT, {"waist": 10, "side": 15, "hem": 50, "centre": 0}, CutPlan(fold="centre"), MOUTH),
    darts=(Dart("waist_dart", "waist", Point(90, -120), 80, 100, "start", 20),),
)
SKIRT_BACK = polygon(
    "skirt_back",
    _SKIRT,
    {"waist": 10, "side": 15, "hem": 50, "centre": 20},
    PAIR,
    MOUTH,
    Mark("zip_opening", "opening", edge="centre", start=400, end=600, said="zip opening"),
)
_DIAMOND = [Point(90, 330), Point(78, 200), Point(90, 80), Point(102, 200)]
DRESS_BACK = rectangle(
    "dress_back",
    220,
    400,
    {"hem": 20, "side": 15, "neck": 10, "centre": 15},
    PAIR,
    Mark("waist_dart", "dart", path=around(*_DIAMOND), said="waist dart"),
)
FLY_FACING = rectangle("fly_facing", 50, 200, {"lower": 0, "outer": 6, "upper": 10, "edge": 20}, SINGLE)
HEM_FACING = polygon(
    "hem_facing",
    [(0, 0), (250, 0), (250, 60), (0, 60)],
    {"lower": 10, "end": 10, "upper": 6, "centre": 0},
    CutPlan(fold="centre"),
)
FRONT_BAG = polygon(
    "front_bag",
    [(0, 0), (0, -150), (120, -210), (120, 20)],
    {"mouth": 15, "bottom": 10, "outer": 10, "upper": 10},
    replace(PAIR, cloth="lining"),
)
BACK_BAG = replace(FRONT_BAG, name="back_bag", title="Back bag")
WAISTBAND = rectangle(
    "waistband",
    830,
    70,
    {"waist": 10, "end": 10, "inner": 10, "start": 10},
    CutPlan(interfacing=1),
    Mark("hook", "point", point=Point(10, 20), said="hook"),
    Mark("bar", "point", point=Point(815, 20), said="bar"),
)
_bench = BenchPiece(
    rectangle("panel", 300, 500, {"hem": 30, "side": 15, "waist": 10, "centre": 0}, CutPlan(fold="centre"))
)
_bench.add_pleat("pleat", "waist", at=8 * cm, intake=6 * cm)
PANEL = _bench.freeze()
_bench = BenchPiece(
    rectangle("yoke", 300, 200, {"lower": 10, "side": 15, "upper": 10, "centre": 0}, CutPlan(fold="centre"))
)
_bench.add_tuck("tuck", "upper", at=8 * cm, depth=5 * mm)
YOKE = _bench.freeze()
TOTE = rectangle(
    "tote",
    350,
    400,
    {"bottom": 10, "right_side": 10, "top": 40, "left_side": 10},
    SINGLE,
    Mark("eyelet", "point", point=Point(20, 385), said="eyelet"),
)
BIB = Piece(
    "bib",
    "Bib",
    (
        Edge("lower", Path.line(Point(0, 0), Point(200, 0)), 10),
        Edge("side", Path.line(Point(200, 0), Point(200, 300)), 10),
        Edge("shoulder", Path.line(Point(200, 300), Point(80, 300)), 10),
        Edge("neck", Path.of(Arc(Point(0, 300), 80, 0, -math.pi / 2)), 10),
        Edge("centre", Path.line(Point(0, 220), Point(0, 0)), 0),
    ),
    cut=CutPlan(fold="centre"),
)
PIECES = (
    FRONT,
    FRONT_LINING,
    BACK,
    FRONT_FACING,
    BACK_FACING,
    SLEEVE,
    CUFF,
    TOWER,
    BAND,
    INNER_BAND,
    POCKET,
    FLAP,
    FLAP_LINING,
    SKIRT_FRONT,
    SKIRT_BACK,
    DRESS_BACK,
    FLY_FACING,
    HEM_FACING,
    FRONT_BAG,
    BACK_BAG,
    WAISTBAND,
    PANEL,
    YOKE,
    TOTE,
    BIB,
)
STRIPS = (
    Strip("tie", "Tie", 620, 56, 1, finished_length=600, finished_width=22, fold="in_two"),
    Strip("handle", "Handle", 600, 100, 1, finished_length=600, finished_width=25, fold="in_four"),
    Strip("loop", "Belt loop", 80, 40, 2, finished_length=60, finished_width=10, fold="in_four"),
    Strip("placket", "Placket strip", 190, 30, 2),
    Strip("sash", "Sash", 1020, 120, 1, finished_length=1000, finished_width=100, fold="hemmed"),
    Strip("binding", "Binding", 900, 40, 1, finished_length=880, finished_width=10, grain="bias"),
    Strip("facing_strip", "Facing strip", 900, 22, 2, finished_length=880, finished_width=10, grain="bias"),
)

SHOULDERS = "make.plain_seam(front.shoulder, back.shoulder, allowance=1.5 * cm)"
SIDES = "make.plain_seam(front.side, back.side, allowance=1.5 * cm)"
FACED = "make.plain_seam(front_facing.shoulder, back_facing.shoulder, allowance=1.5 * cm)"
FACING = "make.attach_facing([front_facing.inner, back_facing.inner], [front.neck, back.neck], allowance=1 * cm)"
EDGES = "make.hem(front.front_edge, first=1 * cm, second=3 * cm)"
ZIP_SEAM = """make.plain_seam(skirt_back.left.centre.between(0 * cm, 40 * cm),
                skirt_back.right.centre.between(0 * cm, 40 * cm), allowance=2 * cm)"""
SLEEVE_SEAM = "make.plain_seam(sleeve.front_underarm, sleeve.back_underarm, allowance=1.5 * cm)"
CUFFED = """make.plain_seam(sleeve.front_underarm, sleeve.back_underarm, allowance=1.5 * cm,
                opening=(24 * cm, 30.26 * cm))
make.gather(sleeve.wrist, to=18 * cm)
make.band_ends(cuff.start, cuff.end, allowance=1 * cm, overlap=3 * cm, at=cuff.end)
make.turn_out(cuff, through=cuff.inner)"""
EASED = "make.ease_stitch(sleeve.back_cap + sleeve.front_cap, to=36 * cm)"
WAIST_ENDS = "make.band_ends(waistband.start, waistband.end, allowance=1 * cm, overlap=3 * cm, at=waistband.end)"

BEFORE = {
    "attach_facing": (SHOULDERS, FACED),
    "bias_facing": (SHOULDERS,),
    "buttonholes": (EDGES,),
    "buttons": (EDGES, "make.buttonholes(front.left.hole_1, length=21 * mm)"),
    "centred_zip": (ZIP_SEAM,),
    "channel": (
        "make.seam_to_turn(flap.outer, flap_lining.outer, allowance=6 * mm)",
        "make.turn_out(flap, flap_lining, through=[flap.upper, flap_lining.upper])",
    ),
    "clip": (SHOULDERS, FACED, FACING.replace("allowance", "clip=False, allowance")),
    "close_band": (CUFFED, "make.set_band(cuff.lower, sleeve.wrist, allowance=1 * cm, overlap=3 * cm, at=cuff.end)"),
    "fasteners": (WAIST_ENDS,),
    "finish_facing": (FACED,),
    "fly_zip": (ZIP_SEAM,),
    "grade": (SHOULDERS, FACED, FACING.replace("allowance", "grade=False, allowance")),
    "hem": (SIDES,),
    "lapped_zip": (ZIP_SEAM,),
    "patch_pocket": (
        "make.pocket_hem(pocket.top, second=3 * cm)",
        "make.fold_pocket(pocket.left_side, pocket.bottom, pocket.right_side, allowance=1 * cm)",
    ),
    "pocket_seam": (
        "make.pocket_bag(front_bag.mouth, skirt_front.pocket_mouth, allowance=1.5 * cm)",
        "make.pocket_bag(back_bag.mouth, skirt_back.pocket_mouth, allowance=1.5 * cm)",
    ),
    "set_band": (EDGES, SHOULDERS),
    "set_in_sleeve": (
        SHOULDERS,
        SIDES,
        SLEEVE_SEAM,
        "make.ease_stitch(sleeve.back_cap + sleeve.front_cap, to=36 * cm)",
    ),
    "tack_down": (SHOULDERS, FACED, FACING, "make.finish_facing(front_facing.outer, back_facing.outer)"),
    "thread_cord": ("make.eyelets(tote.eyelet)", "make.casing(tote.top, depth=3 * cm)"),
    "understitch": (SHOULDERS, FACED, FACING),
}
"""What was sewn before the example of an operation."""
