"""How long pictures take: the whole wrap top's draft (aim: under 4 ms to write), placing the texts of one step (aims:
20 ms for a live picture of few texts, 100 ms for the fullest step in print), the cut lines."""

from __future__ import annotations

from typing import Any

import pytest

from kit.geometry import Cubic, Line, Path, Point
from kit.picture.drawing import Drawing, Label, Stroke
from kit.picture.lettered import lettered
from kit.picture.svg_pen import svg
from kit.piece.allowance import cut_line
from kit.piece.piece import Edge, Piece


def draft() -> Drawing:
    """60 curves and 20 labels, about what a wrap top's draft holds."""
    items: list[Any] = []
    for i in range(30):
        x = (i % 6) * 210.0
        y = (i // 6) * 160.0
        a, b = Point(x, y), Point(x + 180, y + 20)
        items.append(Stroke((Line(a, b),), "kept", name=f"piece.edge{i}"))
        items.append(Stroke((Cubic(b, Point(x + 150, y + 60), Point(x + 60, y + 140), a),), "new"))
    for i in range(20):
        items.append(Label(f"label number {i}", Point((i % 5) * 230.0, (i // 5) * 190.0)))
    return Drawing(tuple(items), alt="A draft.", title="Draft")


def points_as_text(drawing: Drawing) -> str:
    """Baseline: the same curves as sampled points, 50 to a curve."""
    out = []
    for item in drawing.items:
        if isinstance(item, Stroke):
            for curve in item.curves:
                points = [curve.point(i / 49) for i in range(50)]
                out.append(" ".join(f"{p.x:.2f},{-p.y:.2f}" for p in points))
    return "".join(out)


@pytest.mark.benchmark(group="picture as svg")
def test_svg_of_a_whole_draft(benchmark: Any) -> None:
    drawing = draft()
    assert "<svg" in benchmark(svg, drawing)


@pytest.mark.benchmark(group="picture as svg")
def test_baseline_sampled_points(benchmark: Any) -> None:
    drawing = draft()
    assert benchmark(points_as_text, drawing)


@pytest.mark.benchmark(group="placing texts")
@pytest.mark.parametrize("texts", [12, 40])
def test_placing_the_texts_of_a_step(benchmark: Any, texts: int) -> None:
    """Twelve is what a live picture of a step has, forty more than any of the examples."""
    shown = draft()
    edges = [item.curves for item in shown.items if isinstance(item, Stroke)]
    names = [
        Label(f"name of line {i}", curves[0].start, "new", of=curves)
        if i % 2
        else Label(f"point {i}", curves[0].start, "small", of=curves[0].start)
        for i, curves in enumerate(edges[:texts])
    ]
    lines = tuple(item for item in shown.items if isinstance(item, Stroke))
    drawing = Drawing((*lines, *names), alt="A step.", title="Step")
    made = benchmark(lettered, drawing, 640.0)
    assert {text.item for text in made.texts} == {len(lines) + n for n in range(texts)}


@pytest.mark.benchmark(group="cut line")
def test_cut_line_of_a_front(benchmark: Any) -> None:
    def line(*points: tuple[float, float]) -> Path:
        return Path.line(Point(*points[0]), Point(*points[1]))

    neck = Path((Cubic(Point(-160, 0), Point(-90, 130), Point(45, 300), Point(80, 420)),))
    underarm = Path((Cubic(Point(351, 157), Point(290, 174), Point(252, 150), Point(250, 90)),))
    piece = Piece(
        "front",
        "Front",
        (
            Edge("neck", neck, 10.0),
            Edge("overarm", line((80, 420), (400, 330)), 10.0),
            Edge("opening", line((400, 330), (351, 157)), 50.0),
            Edge("underarm", underarm, 15.0),
            Edge("side", line((250, 90), (255, -140)), 15.0),
            Edge("hem", line((255, -140), (-160, -140)), 25.0),
            Edge("wrap_edge", line((-160, -140), (-160, 0)), 10.0),
        ),
    )
    assert benchmark(cut_line, piece).curves
