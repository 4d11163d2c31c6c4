"""The lay plan's picture: all that lies on the cloth is drawn where it lies, every text has room, and nobody needs to
see it to know what it says. The pictures are kept in out/test-artefacts for people to look at."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from dataclasses import replace
from functools import cache
from itertools import combinations
from pathlib import Path as FilePath
from typing import Any

import pytest
import shapely

from kit.cloth.lay import CuttingTable, Lay, lays
from kit.cloth.parts import polygon
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Dimension, Drawing, Fill, Label, Stroke
from kit.picture.lay import lay_drawing
from kit.picture.lettering import LINE_HEIGHT, text_width
from kit.picture.svg_pen import svg
from kit.piece.piece import Strip
from kit.units import both


@pytest.fixture(scope="session")
def plans(wrap_top: Pattern) -> tuple[tuple[str, Lay, Pattern], ...]:
    """Flat, folded in part, with a nap, with strips on the bias, and interfacing on the fold."""
    whole = replace(wrap_top, lesson=replace(wrap_top.lesson, cloth_widths=(1400.0, 1120.0)))
    napped = replace(whole, lesson=replace(whole.lesson, nap="one_way"))
    bias = replace(whole, strips=(*whole.strips, Strip("binding", "Binding", 500.0, 40.0, 4, 9, grain="bias")))
    table = CuttingTable.of(whole, "main")
    folded = table._made(table._folded(1400.0, 60), 1400.0)
    assert folded is not None and folded.fold == "part"
    made = [(f"lay {lay.cloth} {lay.width:.0f}", lay, whole) for lay in lays(whole)]
    made.append(("lay part", folded, whole))
    made.append(("lay nap", lays(napped)[0], napped))
    made.append(("lay bias", lays(bias)[0], bias))
    return tuple(made)


@cache
def drawn(lay: Lay, pattern: Pattern) -> Drawing:
    return lay_drawing(lay, pattern)


def labels(drawing: Drawing) -> list[Label]:
    return [item for item in drawing.items if isinstance(item, Label)]


def box(label: Label) -> Any:
    wide = text_width(label.text, label.size, label.role == "title")
    flat = shapely.box(-wide / 2, -label.size * LINE_HEIGHT / 2, wide / 2, label.size * LINE_HEIGHT / 2)
    turned = shapely.affinity.rotate(flat, label.angle, origin=(0, 0), use_radians=True)
    return shapely.affinity.translate(turned, label.at.x, label.at.y)


def fills(drawing: Drawing, role: str) -> list[Any]:
    return [polygon(item.curves) for item in drawing.items if isinstance(item, Fill) and item.role == role]


def test_every_piece_is_drawn_once_in_its_own_shape(plans: tuple[tuple[str, Lay, Pattern], ...]) -> None:
    for _, lay, pattern in plans:
        drawing = drawn(lay, pattern)
        paper = fills(drawing, "paper")
        assert len(paper) == len(lay.placed)
        areas = sorted(each.area for each in paper)
        assert areas == pytest.approx(sorted(polygon(each.outline).area for each in lay.placed))
        cloth = [item for item in drawing.items if isinstance(item, Fill) and item.name == "cloth"]
        assert len(cloth) == (2 if lay.fold == "part" else 1)
        ground = shapely.union_all([polygon(item.curves) for item in cloth])
        assert all(ground.buffer(0.1).covers(each) for each in paper)
        assert all(one.distance(other) > 9.9 for one, other in combinations(paper, 2))


def test_every_text_has_room(plans: tuple[tuple[str, Lay, Pattern], ...]) -> None:
    for name, lay, pattern in plans:
        drawing = drawn(lay, pattern)
        boxes = [(label.text, box(label)) for label in labels(drawing)]
        for (text, one), (other_text, other) in combinations(boxes, 2):
            shared = one.intersection(other).area
            assert shared < 0.1 * min(one.area, other.area), (name, text, other_text)
        assert drawing.bounds is not None
        frame = shapely.box(*drawing.bounds)
        paper = fills(drawing, "paper")
        for text, one in boxes:
            assert frame.covers(one), (name, text)
            on = [each for each in paper if each.intersects(one)]
            assert len(on) <= 1 and all(each.buffer(1.0).covers(one) for each in on), (name, text)
        px = (drawing.bounds[2] - drawing.bounds[0]) / 560
        assert min(label.size for label in labels(drawing)) >= 8.9 * px
        arrows = [item for item in drawing.items if isinstance(item, Stroke) and item.name == "grainline"]
        for item in arrows:
            a, b = item.curves[0].start, item.curves[-1].end
            line = shapely.LineString([(a.x, a.y), (b.x, b.y)])
            assert not [text for text, one in boxes if line.intersects(one)], name


def test_every_piece_is_told_by_its_number(plans: tuple[tuple[str, Lay, Pattern], ...]) -> None:
    for name, lay, pattern in plans:
        drawing = drawn(lay, pattern)
        paper = [item for item in drawing.items if isinstance(item, Fill) and item.role == "paper"]
        for item in paper:
            numbers = {str(each.number) for each in lay.placed if item.name == f"{each.piece} {each.copy}"}
            outline = polygon(item.curves)
            inside = [label.text.split(" ")[0] for label in labels(drawing) if outline.intersects(box(label))]
            assert numbers & set(inside), (name, item.name, inside)


def test_width_and_lengths_are_dimensioned(plans: tuple[tuple[str, Lay, Pattern], ...]) -> None:
    by_name = {name: drawn(lay, pattern) for name, lay, pattern in plans}
    for name, lay, _ in plans:
        spans = [item for item in by_name[name].items if isinstance(item, Dimension)]
        across = [abs(item.start.x - item.end.x) for item in spans if item.start.y == item.end.y]
        along = [abs(item.start.y - item.end.y) for item in spans if item.start.x == item.end.x]
        half, whole = lay.width / 2, lay.width
        assert across == pytest.approx({"flat": [whole], "lengthwise": [half], "part": [half, whole]}[lay.fold])
        assert along[0] == pytest.approx(lay.length if lay.fold == "flat" else lay.folded)
        said = [item.text for item in spans if item.start.y == item.end.y]
        if lay.fold == "flat":
            assert said == [both(lay.width, "cm", "finished")]
    halves = [item.text for item in by_name["lay part"].items if isinstance(item, Dimension) and "half" in item.text]
    assert halves == ["half: 70 cm (27 1/2 in)"]


def test_a_length_is_never_shown_shorter_than_it_is(wrap_top: Pattern) -> None:
    (lay, *_) = lays(wrap_top)
    heading = labels(lay_drawing(replace(lay, length=1301.0), wrap_top))[0].text
    # 130.5 cm, which reads 51 1/2 in (1308 mm) wherever it stands; 1301 mm are 51.22 in.
    assert heading.endswith("130.5 cm (51 1/2 in) long")


def test_fold_selvedges_grain_and_turned_paper(plans: tuple[tuple[str, Lay, Pattern], ...]) -> None:
    for name, lay, pattern in plans:
        drawing = drawn(lay, pattern)
        texts = [label.text for label in labels(drawing)]
        assert ("fold" in texts) == (lay.fold != "flat")
        assert ("both selvedges" in texts) == (lay.fold != "flat")
        (arrow, *_) = [i for i in drawing.items if isinstance(i, Stroke) and i.name == "grain of the cloth"]
        assert arrow.arrow == ("end" if lay.nap else "both")
        assert ("tops this way" in texts) == lay.nap
        dashed = [i for i in drawing.items if isinstance(i, Stroke) and i.role == "placement"]
        over = [each for each in lay.placed if each.turned_over]
        assert len(dashed) == len(over), name
        assert any("Dashed outline" in text for text in texts) == bool(over)


def test_sides_of_the_cloth(plans: tuple[tuple[str, Lay, Pattern], ...]) -> None:
    expected = {"flat": ["right_side"], "lengthwise": ["wrong_side"], "part": ["wrong_side", "right_side"]}
    for _, lay, pattern in plans:
        cloth = [i.role for i in drawn(lay, pattern).items if isinstance(i, Fill) and i.name == "cloth"]
        assert cloth == (["interfacing"] if lay.cloth == "interfacing" else expected[lay.fold])


def test_letters_are_sized_for_the_room(plans: tuple[tuple[str, Lay, Pattern], ...]) -> None:
    for name, lay, pattern in plans:
        for room in ((620.0, 420.0), (330.0, 500.0)):
            drawing = lay_drawing(lay, pattern, room=room)
            assert drawing.bounds is not None
            x0, y0, x1, y1 = drawing.bounds
            px = (x1 - x0) / room[0]
            assert (y1 - y0) / px <= room[1] + 1e-6, (name, room)
            assert min(label.size for label in labels(drawing)) >= 8.9 * px
            frame = shapely.box(*drawing.bounds)
            assert all(frame.covers(each) for each in fills(drawing, "paper"))
            # The pen's scale is the one the letters were sized for.
            found = re.match(r'<svg [^>]*width="([\d.]+)"', svg(drawing, width=room[0], height=room[1]))
            assert found and float(found[1]) == pytest.approx(room[0], abs=0.5)


def test_long_cloth_lies_on_its_side_in_a_low_room(plans: tuple[tuple[str, Lay, Pattern], ...]) -> None:
    (lay, pattern) = next((lay, pattern) for name, lay, pattern in plans if name == "lay main 1120")
    for room, level in (((620.0, 420.0), True), ((420.0, 620.0), False)):
        drawing = lay_drawing(lay, pattern, room=room)
        ways = [i.curves[0].tangent(0.0) for i in drawing.items if isinstance(i, Stroke) and i.name == "grainline"]
        assert ways and all((abs(way.y) < 1e-6) == level and (abs(way.x) < 1e-6) != level for way in ways)
        # On its side it is turned, not mirrored: what is not turned over keeps its face.
        paper = fills(drawing, "paper")
        for each, seen in zip(lay.placed, paper, strict=True):
            asis = polygon(each.outline)
            x, y = seen.centroid.x - seen.bounds[0], seen.centroid.y - seen.bounds[1]
            u, v = asis.centroid.x - asis.bounds[0], asis.centroid.y - asis.bounds[1]
            high = asis.bounds[2] - asis.bounds[0]
            assert (x, y) == pytest.approx((v, high - u) if level else (u, v), abs=0.1)


def test_bias_strips_are_parted(plans: tuple[tuple[str, Lay, Pattern], ...]) -> None:
    (lay, pattern) = next((lay, pattern) for name, lay, pattern in plans if name == "lay bias")
    drawing = drawn(lay, pattern)
    parting = [item for item in drawing.items if isinstance(item, Stroke) and item.role == "cut" and not item.closed]
    assert len(parting) == 3
    for item in parting:
        a, b = item.curves[0].start, item.curves[0].end
        assert abs(a.x - b.x) == pytest.approx(abs(a.y - b.y))
    assert "4 strips" in [label.text for label in labels(drawing)]


def test_alternative_text_tells_the_lay(plans: tuple[tuple[str, Lay, Pattern], ...]) -> None:
    by_name = {name: drawn(lay, pattern).alt for name, lay, pattern in plans}
    assert by_name["lay part"].startswith("Cutting layout. Main cloth 140 cm (55 in) wide, ")
    assert "folded along its length for the first part" in by_name["lay part"]
    assert "Piece 1, Back, lies at the fold." in by_name["lay part"]
    assert "Piece 2, Front, is laid for 2 of them." in by_name["lay main 1400"]
    assert "turned over" in by_name["lay main 1400"]


def test_pens_draw_it(plans: tuple[tuple[str, Lay, Pattern], ...], out_folder: FilePath) -> None:
    out_folder.mkdir(parents=True, exist_ok=True)
    for name, lay, pattern in plans:
        text = svg(drawn(lay, pattern), width=560)
        ET.fromstring(text)
        assert len(text) < 45_000
        (out_folder / f"{name.replace(' ', '_')}.svg").write_text(text, encoding="utf-8")
