"""The SVG pen: well-formed, safe, true to the drawing, and the theme's contrasts."""

from __future__ import annotations

import re
from itertools import combinations
from xml.etree import ElementTree

import pytest
from svgpathtools import parse_path

from kit.geometry import Arc, Line, Point
from kit.lesson.pattern import Pattern
from kit.picture.draft import bench_drawing
from kit.picture.drawing import Dimension, Drawing, Fill, Label, Stroke
from kit.picture.legend import legend
from kit.picture.lettering import overlap, text_box
from kit.picture.piece_sheet import piece_drawing
from kit.picture.place import rectangle
from kit.picture.svg_pen import path_data, svg
from kit.picture.theme import THEME, contrast

NS = "{http://www.w3.org/2000/svg}"
NASTY = '<script>alert("x")</script> & "quoted" \x07 \ud800'


def test_markup_in_text_is_escaped_everywhere() -> None:
    drawing = Drawing(
        (
            Label(NASTY, Point(0, 0)),
            Stroke((Line(Point(0, 0), Point(9, 9)),), "new", name=NASTY),
            Fill(rectangle(0, 0, 5, 5), "right_side", name=NASTY),
            Dimension(Point(0, 0), Point(50, 0), NASTY, name=NASTY),
        ),
        alt=NASTY,
        title=NASTY,
    )
    text = svg(drawing)
    assert "<script" not in text
    root = ElementTree.fromstring(text)
    assert root.get("role") == "img"
    assert "alert" in (root.get("aria-label") or "")
    assert root.find(f"{NS}title") is not None


def test_outline_reads_back_within_five_hundredths_of_a_millimetre(wrap_top: Pattern) -> None:
    """Reference: svgpathtools reads the path data."""
    for piece in wrap_top.pieces:
        drawing = piece_drawing(piece, wrap_top)
        curves = next(i.curves for i in drawing.items if isinstance(i, Stroke) and i.role == "cut")
        root = ElementTree.fromstring(svg(drawing, width=480))
        found = [e for e in root.iter(f"{NS}path") if e.get("data-name") == f"{piece.name}.cut"]
        path = parse_path(found[0].get("d"))
        segments = [s for s in path if s.length() > 0.02]
        assert len(segments) == len(curves)
        for segment, curve in zip(segments, curves, strict=True):
            for t in (0.0, 0.3, 0.7, 1.0):
                wanted, read = curve.point(t), segment.point(t)
                assert abs(complex(wanted.x, -wanted.y) - read) < 0.05


@pytest.mark.parametrize("sweep", [0.4, -0.4, 3.5, -3.5, 6.283185307179586])
def test_arcs_read_back(sweep: float) -> None:
    """Reference: svgpathtools' arc implementation of SVG 1.1 appendix F.6."""
    arc = Arc(Point(10, 20), 30.0, 0.7, sweep)
    path = parse_path(path_data((arc,)))
    for t in (0.1, 0.5, 0.9):
        wanted = arc.point(t)
        near = min(abs(path.point(i / 400) - complex(wanted.x, -wanted.y)) for i in range(401))
        assert near < 0.3
    assert path.length() == pytest.approx(arc.length, abs=0.05)


def test_real_size_is_given_in_millimetres() -> None:
    drawing = Drawing((Stroke(rectangle(0, 0, 210, 297), "page", closed=True),), bounds=(0, 0, 210, 297))
    text = svg(drawing, width=None)
    assert 'width="210mm" height="297mm" viewBox="0 -297 210 297"' in text


def test_fitting_into_width_and_height_keeps_both() -> None:
    root = ElementTree.fromstring(svg(Drawing((Stroke(rectangle(0, 0, 100, 900), "cut"),)), width=400, height=300))
    assert float(root.get("width") or 0) <= 400.01
    assert float(root.get("height") or 0) == pytest.approx(300, abs=1.0)


def test_pattern_ids_are_unique_to_their_picture() -> None:
    def ids(text: str) -> set[str]:
        return set(re.findall(r'id="([^"]+)"', text))

    one = svg(Drawing((Fill(rectangle(0, 0, 10, 10), "right_side"),)))
    two = svg(Drawing((Fill(rectangle(0, 0, 20, 10), "right_side"),)))
    assert ids(one)
    assert not ids(one) & ids(two)
    for text in (one, two):
        assert set(re.findall(r"url\(#([^)]+)\)", text)) == ids(text)
    assert one == svg(Drawing((Fill(rectangle(0, 0, 10, 10), "right_side"),)))


def test_no_style_sheets_scripts_or_references_outside(wrap_top: Pattern) -> None:
    text = svg(bench_drawing(wrap_top))
    assert not re.search(r"<style|<script|href|class=|style=", text)
    assert len(text) < 12_000


def test_labels_make_way_for_each_other() -> None:
    """Two labels asked for the same place do not stand on one another."""
    items = tuple(Label("sleeve opening", Point(0, 0)) for _ in range(4))
    frame = Stroke(rectangle(-300, -200, 300, 200), "page", closed=True)
    root = ElementTree.fromstring(svg(Drawing((frame, *items))))
    boxes = []
    for group in root.iter(f"{NS}g"):
        rect = group.find(f"{NS}rect")
        move = re.match(r"translate\((\S+) (\S+)\)", group.get("transform") or "")
        if rect is not None and move:
            x, y = float(move[1]), float(move[2])
            size = group.find(f"{NS}text").get("font-size")  # type: ignore[union-attr]
            boxes.append(text_box(x, y, float(rect.get("width") or 0) * 0.9, float(size or 0), 0.0))
    assert len(boxes) == 4
    assert all(overlap(a, b) == 0 for a, b in combinations(boxes, 2))


def test_text_never_stands_on_its_head() -> None:
    for end in (Point(100, 0), Point(-100, 3), Point(0, 100), Point(2, -100), Point(-70, -70)):
        text = svg(Drawing((Dimension(Point(0, 0), end, "12 cm"),)), width=900)
        turns = [float(t) for t in re.findall(r"rotate\((-?[\d.]+)\)", text)]
        assert all(-90.05 <= t <= 90.05 for t in turns)


def test_contrast_formula_at_its_published_ends() -> None:
    """WCAG 2.2: black on white is 21:1; #767676 on white is the well-known 4.54:1."""
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)
    assert contrast("#767676", "#ffffff") == pytest.approx(4.54, abs=0.01)


def test_ink_is_readable_on_paper_and_cloth() -> None:
    """WCAG 2.2: 4.5:1 for text (success criterion 1.4.3), 3:1 for lines that matter (1.4.11)."""
    tints = [cloth.tint for cloth in THEME.fills.values()]
    for role, ink in THEME.texts.items():
        ground = THEME.accent if role == "order" else THEME.paper  # the numbers of strokes stand in a patch of accent
        assert contrast(ink.colour, ground) >= 4.5, role
    for role in ("edge", "row", "old_row", "press", "hidden"):
        assert all(contrast(THEME.lines[role].colour, tint) >= 3 for tint in tints), role
    for role, line in THEME.lines.items():
        assert role == "row_ground" or contrast(line.colour, THEME.paper) >= 3, role  # that one is paper, under a row


def test_cloth_differs_by_pattern_as_well_as_tint() -> None:
    cloths = [cloth for cloth in THEME.fills.values() if cloth.motif]
    assert len({cloth.motif for cloth in cloths}) == len(cloths) == 6
    assert len({cloth.tint for cloth in cloths}) == 6
    assert all(contrast(cloth.ink, cloth.tint) >= 2 for cloth in cloths)


def test_new_and_kept_lines_differ_without_colour() -> None:
    new, kept, removed = (THEME.lines[r] for r in ("new", "kept", "removed"))
    assert new.width >= 2 * kept.width
    assert removed.dash and not kept.dash


def test_legend_shows_every_cloth() -> None:
    examples = legend()
    fills = {item.role for each in examples for item in each.drawing.items if isinstance(item, Fill)}
    assert fills == {"right_side", "wrong_side", "interfacing", "facing", "strip", "lining"}
    for each in examples:
        ElementTree.fromstring(svg(each.drawing))
