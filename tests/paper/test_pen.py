"""The PDF pen: every role has ink, curves stay curves, text is where it should be."""

from __future__ import annotations

import math
from io import BytesIO
from typing import get_args, get_type_hints

import numpy as np
import pikepdf
import pytest
from reportlab.pdfbase import pdfmetrics

from kit.geometry import Arc, Cubic, Line, Point
from kit.paper.pdf_pen import DOTS, FILLS, INKS, LETTERS, draw, fonts, new_canvas, text_width, wrap
from kit.picture.drawing import Dimension, Dot, Drawing, Fill, FillRole, Label, LabelRole, Stroke, StrokeRole


def page(*items: object, size: float = 100.0) -> bytes:
    target = BytesIO()
    canvas = new_canvas(target, size, size, "A drawing")
    draw(canvas, Drawing(items))  # type: ignore[arg-type]
    canvas.showPage()
    canvas.save()
    return target.getvalue()


def commands(pdf: bytes) -> list[tuple[list[float], str]]:
    with pikepdf.open(BytesIO(pdf)) as document:
        parsed = pikepdf.parse_content_stream(document.pages[0])
        return [
            ([float(v) for v in each.operands], str(each.operator)) for each in parsed if str(each.operator) in "mlch"
        ]


def test_every_role_has_its_ink() -> None:
    assert set(INKS) == set(get_args(StrokeRole))
    assert set(FILLS) == set(get_args(FillRole))
    assert set(LETTERS) == set(get_args(LabelRole))
    assert set(DOTS) == set(get_args(get_type_hints(Dot)["role"]))


def test_line_kinds_differ_without_colour() -> None:
    looks = [(INKS[role].width, INKS[role].dash) for role in ("cut", "stitch", "fold", "mark", "guide", "grain")]
    assert len(set(looks)) == len(looks)


def test_a_cubic_is_one_curve_in_the_file() -> None:
    curve = Cubic(Point(10, 10), Point(30, 80), Point(60, 90), Point(90, 20))
    drawn = commands(page(Stroke((curve,), "cut")))
    assert [op for _, op in drawn] == ["m", "c"]
    # 1 mm is 72 / 25.4 points (ISO 32000-1, 8.3.2.3; the inch of 1959).
    expected = [value * 72 / 25.4 for value in (30, 80, 60, 90, 90, 20)]
    assert drawn[1][0] == pytest.approx(expected, abs=1e-3)


def test_an_arc_stays_round(render) -> None:  # type: ignore[no-untyped-def]
    arc = Arc(Point(50, 50), 40, 0, 2 * math.pi)
    image = render(page(Stroke((arc,), "cut")), 300)[0]
    rows, columns = np.nonzero(image > 0.5)
    dot = 25.4 / 300
    radius = np.hypot((columns + 0.5) * dot - 50, 100 - (rows + 0.5) * dot - 50)
    assert radius.min() > 39.65 and radius.max() < 40.35


def test_closed_strokes_and_fills_close() -> None:
    corners = [Point(10, 10), Point(60, 10), Point(10, 60)]
    lines = tuple(Line(a, b) for a, b in zip(corners, corners[1:] + corners[:1], strict=True))
    assert [op for _, op in commands(page(Stroke(lines, "cut", closed=True)))][-1] == "h"
    assert [op for _, op in commands(page(Fill(lines, "facing")))][-1] == "h"


def test_a_label_is_centred_on_its_place(render) -> None:  # type: ignore[no-untyped-def]
    image = render(page(Label("HHH", Point(50, 50), "title", size=10.0)), 300)[0]
    rows, columns = np.nonzero(image > 0.5)
    dot = 25.4 / 300
    assert (columns.min() + columns.max() + 1) / 2 * dot == pytest.approx(50, abs=0.3)
    assert (rows.min() + rows.max() + 1) / 2 * dot == pytest.approx(50, abs=0.3)
    # Capitals of DejaVu Sans Bold are 1493 of 2048 units high (the font's own OS/2 table).
    assert (rows.max() - rows.min() + 1) * dot == pytest.approx(10 * 1493 / 2048, abs=0.15)


def test_dimensions_and_dots_are_drawn(render) -> None:  # type: ignore[no-untyped-def]
    bare = render(page(), 100)[0]
    assert bare.max() == 0
    measured = render(page(Dimension(Point(20, 50), Point(80, 50), "6 cm", 5.0), Dot(Point(50, 20), "new")), 100)[0]
    dot = 25.4 / 100
    assert measured[round((100 - 55) / dot), round(30 / dot)] > 0.2
    assert measured[round((100 - 20) / dot), round(50 / dot)] > 0.8


def test_text_is_measured_as_the_font_says() -> None:
    regular, _ = fonts()
    points = 3 * 72 / 25.4 / 0.729
    assert text_width("Tideline", 3) == pytest.approx(pdfmetrics.stringWidth("Tideline", regular, points) * 25.4 / 72)
    lines = wrap("Cut away from your fingers and yourself and close the cutter", 2.2, 40)
    assert len(lines) > 1 and all(text_width(line, 2.2) <= 40 for line in lines)
