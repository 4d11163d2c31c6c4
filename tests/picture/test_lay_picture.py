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
from kit.picture.lay import lay_drawing, shared_scale
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
    folded = table.made(table.folded(1400.0, 60), 1400.0)
    assert folded is not None and folded.fold == "part"
    made = [(f"lay {lay.cloth} {lay.width:.0f} {lay.fold}", lay, whole) for lay in lays(whole)]
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
        # One arrow, or two halves that its name parts: heads at both outer ends, at one where the cloth has a nap.
        heads = [i.arrow for i in drawing.items if isinstance(i, Stroke) and i.name == "grain of the cloth"]
        if lay.nap:
            assert heads in (["end"] * len(heads), ["", "end"] * (len(heads) // 2))
        else:
            assert set(heads) == {"both"} or (heads == ["end"] * len(heads) and len(heads) % 2 == 0)
        assert ("tops this way" in texts) == lay.nap
        dashed = {i.name for i in drawing.items if isinstance(i, Stroke) and i.role == "placement"}
        over = {f"{each.piece} {each.copy}" for each in lay.placed if each.turned_over or each.axis}
        assert dashed == over, name
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


def test_cloth_lies_upright_in_every_room(plans: tuple[tuple[str, Lay, Pattern], ...]) -> None:
    """Its selvedges at the sides, what is not turned over showing the face it was drafted with."""
    for name, lay, pattern in plans:
        for room in ((620.0, 420.0), (420.0, 620.0)):
            drawing = lay_drawing(lay, pattern, room=room)
            sides = [i for i in drawing.items if isinstance(i, Stroke) and i.name in ("selvedge", "fold")]
            assert sides and all(abs(i.curves[0].start.x - i.curves[0].end.x) < 1e-6 for i in sides), name
            for each, seen in zip(
                sorted(lay.placed, key=lambda each: each.opened), fills(drawing, "paper"), strict=True
            ):
                asis = polygon(each.outline)
                x, y = seen.centroid.x - seen.bounds[0], seen.centroid.y - seen.bounds[1]
                u, v = asis.centroid.x - asis.bounds[0], asis.centroid.y - asis.bounds[1]
                assert (x, y) == pytest.approx((u, v), abs=0.1)


def test_all_lays_of_a_lesson_have_one_scale(plans: tuple[tuple[str, Lay, Pattern], ...]) -> None:
    """On paper, from what the pen writes: the same piece is as large on wide cloth as on narrow cloth."""
    room = (640.0, 900.0)
    scale = shared_scale([lay for _, lay, _ in plans], room)
    for name, lay, pattern in plans:
        drawing = lay_drawing(lay, pattern, room=room, scale=scale)
        text = svg(drawing, width=room[0], height=5000)
        found = re.match(r'<svg [^>]*width="([\d.]+)" height="([\d.]+)" viewBox="(\S+) (\S+) (\S+) (\S+)"', text)
        assert found
        assert float(found[5]) / float(found[1]) == pytest.approx(scale, rel=1e-3), name
        assert float(found[2]) <= room[1], name


def test_each_piece_has_its_grain_along_the_selvedge(plans: tuple[tuple[str, Lay, Pattern], ...]) -> None:
    for name, lay, pattern in plans:
        drawing = drawn(lay, pattern)
        arrows = [item for item in drawing.items if isinstance(item, Stroke) and item.name == "grainline"]
        paper = fills(drawing, "paper")
        assert len(arrows) == len(paper)
        for item in arrows:
            a, b = item.curves[0].start, item.curves[-1].end
            assert abs(a.x - b.x) < 0.03 * abs(a.y - b.y), name
            line = shapely.LineString([(a.x, a.y), (b.x, b.y)])
            assert sum(area.buffer(0.5).covers(line) for area in paper) == 1, name


def test_a_half_shows_where_its_paper_is_turned(plans: tuple[tuple[str, Lay, Pattern], ...]) -> None:
    """A piece drafted as a half and laid whole is solid on the side of its paper, which its grainline is on, and dashed
    on the other; both together are its outline."""
    halves = 0
    for name, lay, pattern in plans:
        drawing = drawn(lay, pattern)
        for each in lay.placed:
            if not each.axis or each.turned_over:
                continue
            halves += 1
            own = f"{each.piece} {each.copy}"
            lines = {
                role: shapely.union_all(
                    [
                        shapely.LineString([(p.x, p.y) for c in item.curves for p in c.points(0.2)])
                        for item in drawing.items
                        if isinstance(item, Stroke) and item.name == own and item.role == role
                    ]
                )
                for role in ("cut", "placement")
            }
            long = polygon(each.outline).exterior.length
            assert lines["cut"].length == pytest.approx(lines["placement"].length, rel=0.01), name
            assert lines["cut"].length + lines["placement"].length == pytest.approx(long, rel=0.01)
            assert "Dashed outline" in " ".join(label.text for label in labels(drawing))
            assert "is a half" in drawing.alt
    assert halves >= 2


def test_every_piece_is_told_by_its_full_name(plans: tuple[tuple[str, Lay, Pattern], ...]) -> None:
    """On it, or in the line below the cloth that goes with the number on it."""
    for name, lay, pattern in plans:
        drawing = drawn(lay, pattern)
        below = min(area.bounds[1] for area in fills(drawing, "paper"))
        listed = " ".join(label.text for label in labels(drawing) if label.at.y < below)
        paper = {item.name: polygon(item.curves) for item in drawing.items if isinstance(item, Fill)}
        for each in lay.placed:
            area = paper[f"{each.piece} {each.copy}"]
            on = " ".join(label.text for label in labels(drawing) if area.intersects(box(label)))
            assert f"{each.number} {each.title}" in on or f"{each.number} {each.title}" in listed, (
                name,
                each.title,
                on,
            )


def test_bias_strips_are_parted(plans: tuple[tuple[str, Lay, Pattern], ...]) -> None:
    (lay, pattern) = next((lay, pattern) for name, lay, pattern in plans if name == "lay bias")
    drawing = drawn(lay, pattern)
    parting = [item for item in drawing.items if isinstance(item, Stroke) and item.role == "cut" and not item.name]
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
    flat = next(alt for name, alt in by_name.items() if name.startswith("lay main") and name.endswith(" flat"))
    assert "Piece 2, Front, is laid for 2 of them." in flat
    assert "turned over" in flat


def test_pens_draw_it(plans: tuple[tuple[str, Lay, Pattern], ...], out_folder: FilePath) -> None:
    out_folder.mkdir(parents=True, exist_ok=True)
    for name, lay, pattern in plans:
        text = svg(drawn(lay, pattern), width=560)
        ET.fromstring(text)
        assert len(text) < 45_000
        (out_folder / f"{name.replace(' ', '_')}.svg").write_text(text, encoding="utf-8")
