"""A jacket, a skirt and a tote of straight lines, made by hand, each with its whole sewing order (invented)."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import Any

from kit.body.body import Body
from kit.geometry import Path, Point
from kit.lesson.pattern import LessonInfo, Pattern, SewRecord
from kit.piece.piece import CutPlan, Edge, Mark, Notch, Piece, Strip
from kit.sewing.handle import PieceHandle, StripHandle
from kit.sewing.make import Make
from kit.units import cm, mm


def polygon(name: str, corners: list[tuple[float, float]], edges: dict[str, float], **more: object) -> Piece:
    """A piece of straight edges; `edges` gives name -> allowance in the order of the corners."""
    points = [Point(x, y) for x, y in corners]
    ends = points[1:] + points[:1]
    made = tuple(
        Edge(edge, Path.line(a, b), allowance)
        for (edge, allowance), a, b in zip(edges.items(), points, ends, strict=True)
    )
    return Piece(name, name.replace("_", " ").capitalize(), made, **more)  # type: ignore[arg-type]


def rectangle(name: str, wide: float, high: float, edges: dict[str, float], **more: object) -> Piece:
    return polygon(name, [(0, 0), (wide, 0), (wide, high), (0, high)], edges, **more)


PAIR = CutPlan(count=2, mirrored=True)


class Table:
    """The pieces and strips as handles, and a `make` to write with."""

    def __init__(self, pieces: tuple[Piece, ...], strips: tuple[Strip, ...]) -> None:
        self.make = Make(pieces, strips)
        self._known: dict[str, Any] = {piece.name: PieceHandle(piece) for piece in pieces}
        self._known |= {strip.name: StripHandle(strip) for strip in strips}

    def __getattr__(self, name: str) -> Any:
        return self._known[name]


Step = tuple[str, Callable[[Table], None]]


@dataclass(frozen=True)
class Garment:
    pieces: tuple[Piece, ...]
    strips: tuple[Strip, ...]
    steps: tuple[Step, ...]
    notions: tuple[str, ...] = ("thread",)

    def pattern(self, steps: list[Step] | tuple[Step, ...] | None = None, **pieces: Piece) -> Pattern:
        """Sewn by its own steps, or others; `pieces` by name take the place of its own."""
        own = tuple(pieces.get(piece.name, piece) for piece in self.pieces)
        records = []
        for title, write in self.steps if steps is None else steps:
            table = Table(own, self.strips)
            write(table)
            records.append(SewRecord(title.lower().replace(" ", "_"), title, "", "", table.make.operations))
        lesson = LessonInfo("Test", "test", notions=self.notions)
        return Pattern(lesson, Body("W4", ()), (), own, self.strips, (), tuple(records))

    def without(self, *titles: str) -> Pattern:
        assert all(any(title == name for name, _ in self.steps) for title in titles)
        return self.pattern([step for step in self.steps if step[0] not in titles])

    def swapped(self, earlier: str, later: str) -> Pattern:
        """`earlier` moved behind `later`."""
        names = [name for name, _ in self.steps]
        i, j = names.index(earlier), names.index(later)
        assert i < j
        steps = list(self.steps)
        return self.pattern([*steps[:i], *steps[i + 1 : j + 1], steps[i], *steps[j + 1 :]])

    def twice(self, title: str) -> Pattern:
        steps = list(self.steps)
        i = [name for name, _ in steps].index(title)
        return self.pattern([*steps[: i + 1], steps[i], *steps[i + 1 :]])


# ---- the jacket -----------------------------------------------------------------------------------------------

HALF_NECK = 70.0**2 + 10.0**2, 90.0**2 + 50.0**2
NECK = HALF_NECK[0] ** 0.5 + HALF_NECK[1] ** 0.5
CAP = 2 * (150.0**2 + 130.0**2) ** 0.5
UNDERARM = (40.0**2 + 300.0**2) ** 0.5
_U = Path.line(Point(40, 150), Point(40, 10)).joined(Path.line(Point(40, 10), Point(160, 10)))
POCKET_LINE = _U.joined(Path.line(Point(160, 10), Point(160, 150)))

JACKET_BACK = replace(
    polygon(
        "back",
        [(0, 400), (70, 410), (200, 380), (200, 200), (220, -100), (0, -100)],
        {"neck": 10, "shoulder": 15, "armscye": 15, "side": 15, "hem": 30, "centre": 0},
        cut=CutPlan(fold="centre"),
    ),
    notches=(Notch("armscye", 90, "double"),),
)
JACKET_FRONT = replace(
    polygon(
        "front",
        [(-20, 360), (70, 410), (200, 380), (200, 200), (220, -100), (-20, -100)],
        {"neck": 10, "shoulder": 15, "armscye": 15, "side": 15, "hem": 30, "front_edge": 40},
        cut=PAIR,
    ),
    notches=(Notch("armscye", 90),),
    marks=(
        Mark("pocket_place", "placement", path=POCKET_LINE, said="pocket place"),
        Mark("hole_1", "buttonhole", path=Path.line(Point(-11, 300), Point(10, 300)), said="upper buttonhole"),
        Mark("hole_2", "buttonhole", path=Path.line(Point(-11, 200), Point(10, 200)), said="lower buttonhole"),
        Mark("button_1", "point", point=Point(0, 300), said="upper button"),
        Mark("button_2", "point", point=Point(0, 200), said="lower button"),
    ),
)
SLEEVE = replace(
    polygon(
        "sleeve",
        [(-150, 0), (0, 130), (150, 0), (110, -300), (-110, -300)],
        {"back_cap": 15, "front_cap": 15, "front_underarm": 15, "wrist": 10, "back_underarm": 15},
        cut=PAIR,
    ),
    notches=(Notch("front_cap", 100), Notch("back_cap", 100, "double")),
)
CUFF = replace(
    rectangle("cuff", 210, 100, {"lower": 10, "end": 10, "inner": 10, "start": 10}, cut=replace(PAIR, interfacing=2)),
    marks=(
        Mark("hole", "buttonhole", path=Path.line(Point(8, 25), Point(29, 25)), said="cuff buttonhole"),
        Mark("button", "point", point=Point(195, 25), said="cuff button"),
    ),
)
BAND = polygon(
    "band",
    [(0, 0), (NECK, 0), (NECK, 35), (0, 35)],
    {"neck": 10, "end": 10, "top": 10, "centre": 0},
    cut=CutPlan(fold="centre", interfacing=1),
)
INNER_BAND = replace(BAND, name="inner_band", title="Inner band", cut=CutPlan(fold="centre"))
POCKET = rectangle("pocket", 120, 140, {"bottom": 10, "right_side": 10, "top": 36, "left_side": 10}, cut=PAIR)
LOOP = Strip("loop", "Belt loop", 80, 40, 2, finished_length=60, finished_width=10)


def _cuffs(t: Table) -> None:
    t.make.band_ends(t.cuff.start, t.cuff.end, allowance=1 * cm, overlap=3 * cm, at=t.cuff.end)
    t.make.turn_out(t.cuff, through=t.cuff.inner)


JACKET = Garment(
    (JACKET_BACK, JACKET_FRONT, SLEEVE, CUFF, BAND, INNER_BAND, POCKET),
    (LOOP,),
    (
        ("Interface", lambda t: t.make.fuse(t.band, t.cuff)),
        ("Pocket hem", lambda t: t.make.pocket_hem(t.pocket.top, second=30 * mm)),
        (
            "Pocket edges",
            lambda t: t.make.fold_pocket(
                t.pocket.left_side, t.pocket.bottom, t.pocket.right_side, allowance=1 * cm, corners="mitred"
            ),
        ),
        (
            "Pockets",
            lambda t: t.make.patch_pocket(
                t.pocket.left_side, t.pocket.bottom, t.pocket.right_side, at=t.front.pocket_place, allowance=1 * cm
            ),
        ),
        ("Front edges", lambda t: t.make.hem(t.front.front_edge, first=1 * cm, second=3 * cm)),
        ("Shoulders", lambda t: t.make.plain_seam(t.front.shoulder, t.back.shoulder, allowance=15 * mm)),
        (
            "Seam band",
            lambda t: t.make.seam_band(t.band.end + t.band.top, t.inner_band.end + t.inner_band.top, allowance=1 * cm),
        ),
        ("Turn band", lambda t: t.make.turn_out(t.band, t.inner_band, through=t.band.neck)),
        (
            "Set band",
            lambda t: t.make.set_band(t.band.neck, [t.front.neck, t.back.neck], allowance=1 * cm),
        ),
        (
            "Close band",
            lambda t: t.make.close_band(t.inner_band.neck, t.band.neck, allowance=1 * cm, method="hand"),
        ),
        ("Side seams", lambda t: t.make.plain_seam(t.front.side, t.back.side, allowance=15 * mm)),
        (
            "Ease caps",
            lambda t: t.make.ease_stitch(t.sleeve.back_cap + t.sleeve.front_cap, to=36 * cm),
        ),
        (
            "Sleeve seams",
            lambda t: t.make.plain_seam(
                t.sleeve.front_underarm,
                t.sleeve.back_underarm,
                allowance=15 * mm,
                opening=((UNDERARM - 60) * mm, UNDERARM * mm),
            ),
        ),
        ("Gather wrists", lambda t: t.make.gather(t.sleeve.wrist, to=18 * cm)),
        ("Cuffs", _cuffs),
        (
            "Set cuffs",
            lambda t: t.make.set_band(t.cuff.lower, t.sleeve.wrist, allowance=1 * cm, overlap=3 * cm, at=t.cuff.end),
        ),
        (
            "Close cuffs",
            lambda t: t.make.close_band(t.cuff.inner, t.cuff.lower, allowance=1 * cm, overlap=3 * cm, at=t.cuff.end),
        ),
        (
            "Sleeves",
            lambda t: t.make.set_in_sleeve(
                t.sleeve.back_cap + t.sleeve.front_cap,
                [t.back.armscye, t.front.armscye],
                allowance=15 * mm,
                ease=(CAP - 360) * mm,
            ),
        ),
        ("Hem", lambda t: t.make.hem([t.front.hem, t.back.hem], first=1 * cm, second=2 * cm)),
        ("Make loops", lambda t: t.make.fold_strip(t.loop, ends=0)),
        ("Loops", lambda t: t.make.belt_loop(t.loop, t.front.side, at=10 * cm)),
        (
            "Buttonholes",
            lambda t: t.make.buttonholes(t.front.left.hole_1, t.front.left.hole_2, t.cuff.hole, length=21 * mm),
        ),
        (
            "Buttons",
            lambda t: t.make.buttons(
                t.front.right.button_1,
                t.front.right.button_2,
                t.cuff.button,
                size=18 * mm,
                holes=[t.front.left.hole_1, t.front.left.hole_2, t.cuff.hole],
            ),
        ),
    ),
    ("thread", "fusible interfacing", "4 buttons"),
)


# ---- the skirt ------------------------------------------------------------------------------------------------

_MOUTH = Mark("pocket_mouth", "opening", edge="side", start=50, end=200, said="pocket mouth")
SKIRT_FRONT = replace(
    polygon(
        "front",
        [(0, 0), (200, 0), (250, -600), (0, -600)],
        {"waist": 10, "side": 15, "hem": 30, "centre": 0},
        cut=CutPlan(fold="centre"),
    ),
    marks=(_MOUTH,),
)
SKIRT_BACK = replace(
    polygon(
        "back",
        [(0, 0), (200, 0), (250, -600), (0, -600)],
        {"waist": 10, "side": 15, "hem": 30, "centre": 20},
        cut=PAIR,
    ),
    marks=(_MOUTH, Mark("zip_opening", "opening", edge="centre", start=400, end=600, said="zip opening")),
)
FRONT_BAG = polygon(
    "front_bag",
    [(0, 0), (0, -150), (120, -210), (120, 20)],
    {"mouth": 15, "bottom": 10, "outer": 10, "upper": 10},
    cut=replace(PAIR, cloth="lining"),
)
BACK_BAG = replace(FRONT_BAG, name="back_bag", title="Back bag")
WAISTBAND = replace(
    rectangle("waistband", 830, 70, {"waist": 10, "end": 10, "inner": 10, "start": 10}, cut=CutPlan(interfacing=1)),
    marks=(
        Mark("hook", "point", point=Point(10, 20), said="hook"),
        Mark("bar", "point", point=Point(815, 20), said="bar"),
    ),
)


def _pockets(t: Table) -> None:
    t.make.pocket_bag(t.front_bag.mouth, t.front.pocket_mouth, allowance=15 * mm)
    t.make.pocket_bag(t.back_bag.mouth, t.back.pocket_mouth, allowance=15 * mm)


def _round(bag: PieceHandle) -> Any:
    return bag.bottom + bag.outer + bag.upper


SKIRT = Garment(
    (SKIRT_FRONT, SKIRT_BACK, FRONT_BAG, BACK_BAG, WAISTBAND),
    (),
    (
        ("Interface", lambda t: t.make.baste_interfacing(t.waistband)),
        ("Pocket bags", _pockets),
        (
            "Side seams",
            lambda t: t.make.pocket_seam(
                t.front.side,
                t.back.side,
                bags=(_round(t.front_bag), _round(t.back_bag)),
                mouth=t.front.pocket_mouth,
                allowance=15 * mm,
                bag_allowance=1 * cm,
            ),
        ),
        (
            "Centre seam",
            lambda t: t.make.plain_seam(
                t.back.left.centre.between(0 * cm, 40 * cm),
                t.back.right.centre.between(0 * cm, 40 * cm),
                allowance=2 * cm,
            ),
        ),
        (
            "Zip",
            lambda t: t.make.lapped_zip(
                t.back.left.zip_opening, t.back.right.zip_opening, allowance=2 * cm, length=19 * cm
            ),
        ),
        (
            "Set waistband",
            lambda t: t.make.set_band(
                t.waistband.waist,
                [t.back.left.waist, t.front.waist, t.back.right.waist],
                allowance=1 * cm,
                overlap=3 * cm,
                at=t.waistband.end,
            ),
        ),
        (
            "Waistband ends",
            lambda t: t.make.band_ends(
                t.waistband.start, t.waistband.end, allowance=1 * cm, overlap=3 * cm, at=t.waistband.end
            ),
        ),
        ("Turn waistband", lambda t: t.make.turn_out(t.waistband, through=t.waistband.inner)),
        (
            "Close waistband",
            lambda t: t.make.close_band(
                t.waistband.inner,
                t.waistband.waist,
                allowance=1 * cm,
                method="groove",
                overlap=3 * cm,
                at=t.waistband.end,
            ),
        ),
        ("Hook", lambda t: t.make.fasteners(t.waistband.hook, under=t.waistband.bar, kind="hooks")),
        ("Hem", lambda t: t.make.hem([t.back.left.hem, t.front.hem, t.back.right.hem], first=1 * cm, second=2 * cm)),
    ),
    ("thread", "sewn-in interfacing", "zip 19 cm", "1 hook and eye"),
)


# ---- the tote -------------------------------------------------------------------------------------------------


def _panel(name: str) -> Piece:
    """A panel with squares of 50 mm cut out of its lower corners."""
    return polygon(
        name,
        [(0, 400), (350, 400), (350, 50), (300, 50), (300, 0), (50, 0), (50, 50), (0, 50)],
        {
            "top": 40,
            "right_side": 10,
            "right_across": 10,
            "right_up": 10,
            "bottom": 10,
            "left_up": 10,
            "left_across": 10,
            "left_side": 10,
        },
        cut=CutPlan(count=1),
    )


STRAP = Strip("strap", "Strap", 600, 100, 2, finished_width=25)


def _tote_sides(t: Table) -> None:
    t.make.plain_seam(t.front.right_side, t.back.right_side, allowance=1 * cm)
    t.make.plain_seam(t.front.left_side, t.back.left_side, allowance=1 * cm)
    t.make.plain_seam(t.front.bottom, t.back.bottom, allowance=1 * cm)


def _boxed(t: Table) -> None:
    for up, across in (("right_up", "right_across"), ("left_up", "left_across")):
        t.make.plain_seam(
            [getattr(t.front, across), getattr(t.back, across)],
            [getattr(t.front, up), getattr(t.back, up)],
            allowance=1 * cm,
            press="one side",
        )


def _straps(t: Table) -> None:
    t.make.attach_handle(t.strap, t.front.top, at=(8 * cm, 27 * cm), method="in_hem")
    t.make.attach_handle(t.strap, t.back.top, at=(8 * cm, 27 * cm), method="in_hem")


TOTE = Garment(
    (_panel("front"), _panel("back")),
    (STRAP,),
    (
        ("Sides and bottom", _tote_sides),
        ("Boxed corners", _boxed),
        ("Make straps", lambda t: t.make.fold_strip(t.strap, ends=0)),
        ("Straps", _straps),
        ("Top hem", lambda t: t.make.hem([t.front.top, t.back.top], first=1 * cm, second=3 * cm)),
    ),
)
