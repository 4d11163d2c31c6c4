"""A small garment of our own for the paper tests, and pages turned into pixels."""

from __future__ import annotations

import subprocess
from collections.abc import Callable
from pathlib import Path as FilePath

import numpy as np
import pytest
from PIL import Image

from kit.body.body import Body, Measure
from kit.geometry import Cubic, Line, Path, Point
from kit.lesson.pattern import LessonInfo, ParameterValue, Pattern
from kit.piece.piece import CutPlan, Edge, Grain, Mark, Notch, Piece, Strip

Render = Callable[..., list[np.ndarray]]


def _edge(name: str, allowance: float | None, *places: tuple[float, float]) -> Edge:
    """A straight edge through two places, or a cubic through four."""
    points = [Point(*place) for place in places]
    curve = Line(*points) if len(points) == 2 else Cubic(*points)
    return Edge(name, Path((curve,)), allowance)


def _body_half(name: str, title: str, number: int, depth: float, cut: CutPlan) -> Piece:
    """Half a top: centre at x = 0, hem at the bottom, a cut-on sleeve to the right."""
    return Piece(
        name,
        title,
        (
            _edge("hem", 20, (0, -150), (255, -150)),
            _edge("side", 10, (255, -150), (255, 60)),
            _edge("underarm", 10, (255, 60), (255, 170), (300, 210), (390, 190)),
            _edge("opening", 20, (390, 190), (400, 330)),
            _edge("overarm", 10, (400, 330), (75, 420)),
            _edge("neck", 10, (75, 420), (70, 420 - depth / 2), (40, 420 - depth), (0, 420 - depth)),
            _edge("centre", 0 if cut.fold else 10, (0, 420 - depth), (0, -150)),
        ),
        number=number,
        cut=cut,
        grain=Grain(Point(60, -100), Point(60, 200)),
        notches=(Notch("side", 100, "single", "hip"), Notch("overarm", 150, "double")),
        marks=(Mark("waist", "line", path=Path.line(Point(0, 0), Point(255, 0))),),
    )


@pytest.fixture(scope="session")
def garment() -> Pattern:
    return make_garment()


def make_garment() -> Pattern:
    """Back, front and neck facing in plain curves, with a tie."""
    facing = Piece(
        "neck_facing",
        "Neck facing",
        (
            _edge("outer", 10, (0, 330), (90, 330), (150, 370), (160, 395)),
            _edge("overarm", 10, (160, 395), (75, 420)),
            _edge("neck", 10, (75, 420), (70, 405), (40, 390), (0, 390)),
            _edge("centre", 0, (0, 390), (0, 330)),
        ),
        number=3,
        cut=CutPlan(1, fold="centre", interfacing=1),
        grain=Grain(Point(20, 340), Point(20, 380)),
    )
    return Pattern(
        LessonInfo("Tideline wrap top", "tideline-wrap-top", edition="2", date="2026-11"),
        Body("W4", (Measure("bust_girth", 920.0), Measure("back_waist_length", 405.1234, estimated=True))),
        (ParameterValue("sleeve_length", 230.0, "length", 230.0, 50.0, 600.0, "how far the sleeve reaches"),),
        (
            _body_half("back", "Back", 1, 30, CutPlan(1, fold="centre")),
            _body_half("front", "Front", 2, 90, CutPlan(2, mirrored=True)),
            facing,
        ),
        (Strip("tie", "Tie", 700, 60, 2, number=4),),
        (),
        (),
        (("bust", 1020.0),),
    )


@pytest.fixture(scope="session")
def render(tmp_path_factory: pytest.TempPathFactory) -> Render:
    """`render(pdf bytes, dpi, first, last, printed, crop)`: the pages as arrays of darkness, 0 white to 1 black
    (poppler). `printed` is how large a printer prints them, across and down; `crop` (left, top, width, height) is in
    mm of what comes out of it."""

    def pages(
        pdf: bytes,
        dpi: float,
        first: int = 1,
        last: int = 0,
        *,
        printed: tuple[float, float] = (1.0, 1.0),
        crop: tuple[float, float, float, float] | None = None,
    ) -> list[np.ndarray]:
        folder = tmp_path_factory.mktemp("render")
        source = folder / "in.pdf"
        source.write_bytes(pdf)
        span = ["-f", str(first), *(["-l", str(last)] if last else [])]
        scale = ["-rx", repr(dpi * printed[0]), "-ry", repr(dpi * printed[1])]
        if crop:
            left, top, width, height = (str(round(value * dpi / 25.4)) for value in crop)
            scale += ["-x", left, "-y", top, "-W", width, "-H", height]
        subprocess.run(["pdftoppm", "-gray", *scale, *span, str(source), str(folder / "p")], check=True)
        found = sorted(folder.glob("p-*.pgm"), key=lambda path: int(path.stem.rsplit("-", 1)[1]))
        return [_darkness(path) for path in found]

    return pages


def _darkness(path: FilePath) -> np.ndarray:
    with Image.open(path) as image:
        return 1.0 - np.asarray(image, dtype=np.float32) / 255.0
