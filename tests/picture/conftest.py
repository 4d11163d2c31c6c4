"""A pattern made by hand, of the shape of a wrap top with cut-on sleeves: pictures are tested without working a
lesson. Its measures are invented."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest

from kit.body.body import Body, Measure
from kit.geometry import Cubic, Line, Path, Point
from kit.lesson.pattern import LessonInfo, Pattern, StepMeasure, StepRecord
from kit.piece.piece import CutPlan, Edge, Grain, Mark, Notch, Piece, Strip


def p(x: float, y: float) -> Point:
    return Point(x, y)


def line(*points: tuple[float, float]) -> Path:
    corners = [p(*q) for q in points]
    return Path(tuple(Line(a, b) for a, b in pairwise(corners)))


def bend(a: tuple[float, float], b: tuple[float, float], c: tuple[float, float], d: tuple[float, float]) -> Path:
    return Path((Cubic(p(*a), p(*b), p(*c), p(*d)),))


def sleeve() -> tuple[Edge, ...]:
    return (
        Edge("overarm", line((80, 420), (400, 330)), 10.0, "shoulder and overarm seam"),
        Edge("opening", line((400, 330), (351, 157)), 50.0, "sleeve opening"),
        Edge("underarm", bend((351, 157), (290, 174), (250, 150), (250, 90)), 15.0, "underarm seam"),
        Edge("side", line((250, 90), (255, -140)), 15.0, "side seam"),
    )


def make_back() -> Piece:
    return Piece(
        "back",
        "Back",
        (
            Edge("neck", bend((0, 395), (40, 395), (73, 397), (80, 420)), 10.0, "neck edge"),
            *sleeve(),
            Edge("hem", line((255, -140), (0, -140)), 25.0),
            Edge("centre", line((0, -140), (0, 395)), 0.0),
        ),
        number=1,
        cut=CutPlan(1, fold="centre"),
        grain=Grain(p(90, -80), p(90, 220)),
        notches=(Notch("side", 110, "double"), Notch("overarm", 160, "double"), Notch("neck", 40, "double")),
        marks=(
            Mark("waistline", "line", path=line((0, 0), (252, 0))),
            Mark("tie_opening", "opening", edge="side", start=90, end=130),
        ),
        points=(("neck_point", p(80, 420)), ("centre_neck", p(0, 395))),
    )


def make_front() -> Piece:
    return Piece(
        "front",
        "Front",
        (
            Edge("wrap_neck", bend((-160, 0), (-90, 130), (45, 300), (80, 420)), 10.0, "neck edge"),
            *sleeve(),
            Edge("hem", line((255, -140), (-160, -140)), 25.0),
            Edge("wrap_edge", line((-160, -140), (-160, 0)), 10.0, "wrap edge"),
        ),
        number=2,
        cut=CutPlan(2, mirrored=True),
        grain=Grain(p(60, -80), p(60, 220)),
        notches=(Notch("side", 110), Notch("overarm", 160), Notch("wrap_neck", 240)),
        marks=(
            Mark("waistline", "line", path=line((-160, 0), (252, 0))),
            Mark("tie_opening", "opening", edge="side", start=90, end=130),
            Mark("wrap_corner", "point", point=p(-160, 0)),
        ),
        points=(("neck_point", p(80, 420)), ("wrap_corner", p(-160, 0))),
        guides=(("bust_line", line((0, 190), (300, 190))),),
    )


def make_front_facing() -> Piece:
    outer = Path(
        (
            Cubic(p(128, 406.5), p(93, 290), p(-42, 120), p(-110, 0)),
            Line(p(-110, 0), p(-110, -140)),
        )
    )
    return Piece(
        "front_facing",
        "Front facing",
        (
            Edge("wrap_edge", line((-160, -140), (-160, 0)), 10.0, "wrap edge"),
            Edge("wrap_neck", bend((-160, 0), (-90, 130), (45, 300), (80, 420)), 10.0, "neck edge"),
            Edge("shoulder", line((80, 420), (128, 406.5)), 10.0),
            Edge("outer", outer, 10.0, "outer edge"),
            Edge("hem", line((-110, -140), (-160, -140)), 25.0),
        ),
        number=3,
        cut=CutPlan(2, mirrored=True, interfacing=2),
        grain=Grain(p(-135, -130), p(-135, -30)),
        notches=(Notch("wrap_neck", 240),),
    )


def make_back_facing() -> Piece:
    return Piece(
        "back_facing",
        "Back neck facing",
        (
            Edge("neck", bend((0, 395), (40, 395), (73, 397), (80, 420)), 10.0, "neck edge"),
            Edge("shoulder", line((80, 420), (128, 406.5)), 10.0),
            Edge("outer", bend((128, 406.5), (120, 362), (70, 345), (0, 345)), 10.0, "outer edge"),
            Edge("centre", line((0, 345), (0, 395)), 0.0),
        ),
        number=4,
        cut=CutPlan(1, fold="centre", interfacing=1),
        grain=Grain(p(30, 350), p(30, 390)),
    )


def make_step(front: Piece) -> StepRecord:
    shoulder = line((80, 420), (205, 375))
    trimmed = replace(front, marks=(), notches=(), cut=CutPlan())
    raised = p(208, 384)
    return StepRecord(
        key="overarm",
        title="Raise the shoulder and extend it into a sleeve",
        text="From the shoulder tip square up {shoulder_lift} and mark.",
        cell="c1",
        uses=("front", "shoulder_lift", "sleeve_length"),
        values=(("shoulder_lift", 12.0, "length"), ("sleeve_length", 230.0, "length")),
        pieces=(trimmed,),
        new=(
            ("front", "overarm", front.edge("overarm").path),
            ("front", "opening", front.edge("opening").path),
            ("front", "underarm", front.edge("underarm").path),
        ),
        removed=(
            ("front", "shoulder", shoulder),
            ("front", "armhole", bend((205, 375), (190, 260), (210, 190), (250, 190))),
        ),
        new_points=(("front", "raised_tip", raised),),
        spots=(
            StepMeasure("shoulder_lift", 12.0, "front", p(205, 375), raised),
            StepMeasure("sleeve_length", 200.0, "front", raised, p(400, 330)),
            StepMeasure("opening_depth", 180.0, "front", p(400, 330), p(351, 157)),
            StepMeasure("underarm_length", 130.0, "front", p(351, 157), p(250, 90), along=front.edge("underarm").path),
        ),
    )


@pytest.fixture(scope="session")
def wrap_top() -> Pattern:
    front, back = make_front(), make_back()
    return Pattern(
        lesson=LessonInfo("Tideline wrap top", "tideline-wrap-top", edition="1", date="2026-11"),
        body=Body("W4", (Measure("bust_girth", 920.0),)),
        values=(),
        pieces=(back, front, make_front_facing(), make_back_facing()),
        strips=(
            Strip("tie", "Tie", 770.0, 80.0, 2, 5, finished_length=750.0, finished_width=20.0),
            Strip("belt_loop", "Belt loop", 60.0, 40.0, 1, 6, finished_length=40.0, finished_width=10.0),
        ),
        steps=(make_step(front),),
        sewing=(),
    )
