"""A small wrap top of straight lines, made by hand: what sewing, proof and prose are tried on (invented)."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from kit.body.body import Body
from kit.geometry import Path, Point
from kit.lesson.pattern import LessonInfo, Pattern, SewRecord
from kit.piece.piece import CutPlan, Edge, Mark, Piece, Strip
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
    title = name.replace("_", " ").capitalize()
    return Piece(name, title, made, **more)  # type: ignore[arg-type]


BACK = polygon(
    "back",
    [(0, 200), (80, 200), (300, 180), (300, 60), (200, 60), (200, -150), (0, -150)],
    {"neck": 10, "overarm": 10, "opening": 20, "underarm": 15, "side": 15, "hem": 20, "centre": 0},
    cut=CutPlan(fold="centre"),
)
FRONT = replace(
    polygon(
        "front",
        [(80, 200), (300, 180), (300, 60), (200, 60), (200, -150), (-150, -150), (-150, -60)],
        {"overarm": 10, "opening": 20, "underarm": 15, "side": 15, "hem": 20, "wrap_edge": 10, "wrap_neck": 10},
        cut=CutPlan(count=2, mirrored=True),
    ),
    marks=(
        Mark("tie_opening", "opening", edge="side", start=20, end=50, said="tie opening"),
        Mark("tie_place", "point", edge="wrap_edge", start=80, end=80, said="tie place"),
    ),
)
FRONT_FACING = polygon(
    "front_facing",
    [(80, 200), (130, 195), (-90, -150), (-150, -150), (-150, -60)],
    {"shoulder": 10, "outer": 6, "hem": 20, "wrap_edge": 10, "wrap_neck": 10},
    cut=CutPlan(count=2, mirrored=True, interfacing=2),
)
BACK_FACING = polygon(
    "back_facing",
    [(0, 200), (80, 200), (130, 195), (0, 140)],
    {"neck": 10, "shoulder": 10, "outer": 6, "centre": 0},
    cut=CutPlan(fold="centre", interfacing=1),
)
TIE = Strip("tie", "Tie", 900, 60, 2, finished_length=880, finished_width=15)
LOOP = Strip("belt_loop", "Belt loop", 80, 40, 1, finished_length=60, finished_width=10)


@dataclass(frozen=True)
class Table:
    """The pieces as handles, and a `make` to write with."""

    make: Make
    back: PieceHandle
    front: PieceHandle
    front_facing: PieceHandle
    back_facing: PieceHandle
    tie: StripHandle
    belt_loop: StripHandle


def table(pieces: tuple[Piece, ...] = (BACK, FRONT, FRONT_FACING, BACK_FACING)) -> Table:
    return Table(
        Make(pieces, (TIE, LOOP)), *(PieceHandle(piece) for piece in pieces), StripHandle(TIE), StripHandle(LOOP)
    )


Step = tuple[str, Callable[[Table], None]]


def whole_order() -> list[Step]:
    """The sewing order of the wrap top, a step at a time."""

    def side_seams(t: Table) -> None:
        left = t.front.left.underarm + t.front.left.side
        right = t.front.right.underarm + t.front.right.side
        t.make.plain_seam(left, t.back.left.underarm + t.back.left.side, allowance=15 * mm)
        t.make.plain_seam(
            right,
            t.back.right.underarm + t.back.right.side,
            allowance=15 * mm,
            opening=t.front.right.tie_opening,
        )

    def facings(t: Table) -> None:
        t.make.attach_facing(
            [t.back_facing.neck, t.front_facing.wrap_neck + t.front_facing.wrap_edge],
            [t.back.neck, t.front.wrap_neck + t.front.wrap_edge],
            allowance=1 * cm,
        )

    return [
        ("Staystitch", lambda t: t.make.staystitch(t.back.neck)),
        (
            "Interface and face",
            lambda t: t.make.face_with_interfacing(t.front_facing.outer, t.back_facing.outer, allowance=6 * mm),
        ),
        ("Shoulders", lambda t: t.make.french_seam(t.front.overarm, t.back.overarm, first=6 * mm, second=4 * mm)),
        (
            "Facing shoulders",
            lambda t: t.make.plain_seam(t.front_facing.shoulder, t.back_facing.shoulder, allowance=1 * cm),
        ),
        ("Facing", facings),
        ("Understitch", lambda t: t.make.understitch(t.back_facing.neck, t.front_facing.wrap_neck)),
        ("Make ties", lambda t: t.make.fold_strip(t.tie)),
        ("Ties", lambda t: t.make.attach_strip(t.tie, t.front.wrap_edge, at="end")),
        ("Side seams", side_seams),
        ("Make loop", lambda t: t.make.fold_strip(t.belt_loop, ends=0)),
        ("Loop", lambda t: t.make.belt_loop(t.belt_loop, t.back.left.side, at=5 * cm)),
        ("Sleeve hems", lambda t: t.make.hem([t.front.opening, t.back.opening], first=1 * cm, second=1 * cm)),
        (
            "Hem",
            lambda t: t.make.hem([t.front.hem, t.back.hem], first=1 * cm, second=1 * cm, catching=t.front_facing.hem),
        ),
    ]


def pattern_of(
    steps: list[Step],
    pieces: tuple[Piece, ...] = (BACK, FRONT, FRONT_FACING, BACK_FACING),
    strips: tuple[Strip, ...] = (TIE, LOOP),
    **info: object,
) -> Pattern:
    """A pattern sewn by `steps`."""
    records = []
    for title, write in steps:
        own = table(pieces)
        write(own)
        records.append(SewRecord(title.lower().replace(" ", "_"), title, "", "", own.make.operations))
    lesson = LessonInfo("Test top", "test-top", notions=("thread", "fusible interfacing"), **info)  # type: ignore[arg-type]
    return Pattern(lesson, Body("W4", ()), (), pieces, strips, (), tuple(records))
