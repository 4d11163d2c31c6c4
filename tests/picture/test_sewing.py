"""Sewing pictures: pieces are moved rigidly to where the scene says, faces and rows as it says."""

from __future__ import annotations

from dataclasses import replace
from xml.etree import ElementTree

import pytest
from shapely.geometry import Polygon

from kit.geometry import Curve
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Dimension, Drawing, Fill, Label, Stroke
from kit.picture.flat import laid_flat
from kit.picture.laid import place_all
from kit.picture.sewing import scene_drawing
from kit.picture.svg_pen import svg
from kit.piece.piece import CutPlan
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Ply, Row, Scene, Section
from kit.sewing.spans import path_of
from kit.units import both

SECTION = Section((Ply("main", ((0.0, 0.0), (9.0, 0.0))), Ply("facing", ((0.0, 1.4), (9.0, 1.4)))), ((4.0, -1.0, 2.0),))


def seam(up: str = "wrong", how: str = "together", edge: str = "overarm", side: str = "right") -> Scene:
    front, back = Run("front", (edge,), side), Run("back", (edge,), side)  # type: ignore[arg-type]
    top = Layer(front, up=up, on=back, how=how)  # type: ignore[arg-type]
    base = Layer(back, up="wrong" if how == "open" else "right")
    return Scene((base, top), (Row(front),), focus=back, section=SECTION)


def test_the_half_is_named_only_where_a_piece_has_two(wrap_top: Pattern) -> None:
    text = scene_drawing(seam(), wrap_top).alt
    assert "Front, right, wrong side up" in text and "front right " in text
    single = [replace(p, cut=CutPlan()) if p.name == "front" else p for p in wrap_top.pieces]
    text = scene_drawing(seam(), replace(wrap_top, pieces=tuple(single))).alt
    assert "Front, wrong side up" in text and "front right" not in text


def area(curves: tuple[Curve, ...]) -> float:
    return Polygon([(p.x, p.y) for c in curves for p in c.points(0.1)[:-1]]).area


@pytest.mark.parametrize("how", ["together", "open"])
@pytest.mark.parametrize("side", ["left", "right"])
def test_the_two_runs_coincide(wrap_top: Pattern, how: str, side: str) -> None:
    scene = seam(how=how, side=side)
    base, top = place_all(scene, wrap_top)
    over = path_of(wrap_top, scene.layers[1].run).moved(top.motion)
    under = path_of(wrap_top, scene.layers[0].run).moved(base.motion)
    for share in (0.0, 0.3, 1.0):
        assert over.at(over.length * share).distance(under.at(under.length * share)) < 0.01


def test_together_lies_on_the_piece_and_open_beside_it(wrap_top: Pattern) -> None:
    for how, wanted in (("together", True), ("open", False)):
        base, top = place_all(seam(how=how, edge="side"), wrap_top)
        middle = top.motion(wrap_top.piece("front").outline.label_point())
        from shapely.geometry import Point as Spot

        cloth = Polygon([(p.x, p.y) for c in base.outline for p in c.points(0.1)[:-1]])
        assert cloth.contains(Spot(middle.x, middle.y)) is wanted


def test_right_sides_together_turns_the_upper_piece_over(wrap_top: Pattern) -> None:
    """Cloth seen from its right side and from its wrong side are mirror images: the two layers, both drafted at
    x > 0, lie the same way round when one of them is turned over."""
    base, top = place_all(seam(), wrap_top)
    assert base.motion.flips == top.motion.flips
    base, top = place_all(seam(how="open"), wrap_top)
    assert base.motion.flips != top.motion.flips


def test_faces_rows_and_names(wrap_top: Pattern) -> None:
    drawing = scene_drawing(seam(), wrap_top)
    fills = {item.name: item.role for item in drawing.items if isinstance(item, Fill) and item.name}
    assert fills == {"back": "right_side", "front": "wrong_side"}
    assert any(isinstance(i, Stroke) and i.role == "row" for i in drawing.items)
    text = [i.text for i in drawing.items if isinstance(i, Label)]
    assert {"Front", "Back"} <= set(text)  # the side of the cloth is told by its pattern
    assert "Front, right, wrong side up" in drawing.alt


def test_layers_below_are_dashed(wrap_top: Pattern) -> None:
    drawing = scene_drawing(seam(), wrap_top)
    assert sum(isinstance(i, Stroke) and i.role == "hidden" for i in drawing.items) == 1
    opened = scene_drawing(seam(how="open"), wrap_top)
    assert not any(isinstance(i, Stroke) and i.role == "hidden" for i in opened.items)


def test_pieces_keep_their_true_size(wrap_top: Pattern) -> None:
    from kit.piece.allowance import cut_line

    drawing = scene_drawing(seam(), wrap_top)
    front = next(i for i in drawing.items if isinstance(i, Fill) and i.name == "front")
    back = next(i for i in drawing.items if isinstance(i, Fill) and i.name == "back")
    assert area(front.curves) == pytest.approx(cut_line(wrap_top.piece("front")).polygon().area, rel=1e-4)
    assert area(back.curves) == pytest.approx(2 * cut_line(wrap_top.piece("back")).polygon().area, rel=1e-4)


def test_focus_crops_and_adds_section_and_plan(wrap_top: Pattern) -> None:
    near = scene_drawing(seam(), wrap_top)
    far = scene_drawing(Scene(seam().layers), wrap_top)
    assert near.bounds and far.bounds
    assert near.bounds[3] - near.bounds[1] < far.bounds[3] - far.bounds[1]
    plies = [i for i in near.items if isinstance(i, Stroke) and i.thickness > 0]
    assert {i.role for i in plies} == {"ply_main", "ply_facing"}
    assert any(isinstance(i, Stroke) and i.role == "needle" for i in near.items)


def test_a_gap_leaves_the_row_open(wrap_top: Pattern) -> None:
    run = Run("front", ("side",), "right")
    scene = Scene((Layer(run),), (Row(run, gap=(90.0, 130.0)),))
    rows = [i for i in scene_drawing(scene, wrap_top).items if isinstance(i, Stroke) and i.role == "row"]
    whole = wrap_top.piece("front").edge("side").path.length
    assert len(rows) == 2
    assert sum(c.length for r in rows for c in r.curves) == pytest.approx(whole - 40.0, abs=0.1)


def test_a_turned_hem_shows_the_other_face(wrap_top: Pattern) -> None:
    run = Run("front", ("hem",), "right")
    scene = Scene((Layer(run, up="wrong", turn=(("hem", 20.0),)),), (Row(run, inset=18.0),), focus=run)
    drawing = scene_drawing(scene, wrap_top)
    flap = next(i for i in drawing.items if isinstance(i, Fill) and i.name == "front.turned")
    assert flap.role == "right_side"
    box = [c.bounds() for c in flap.curves]
    assert max(b[3] for b in box) - min(b[1] for b in box) == pytest.approx(20.0, abs=0.1)


def test_strip_alone_is_shown_as_cut_and_made(wrap_top: Pattern) -> None:
    drawing = scene_drawing(Scene((), section=SECTION, strip="tie"), wrap_top)
    assert {"Tie, as cut", "folded and stitched"} <= {i.text for i in drawing.items if isinstance(i, Label)}


def outlines(drawing: Drawing) -> dict[str, Polygon]:
    return {
        item.name: Polygon([(p.x, p.y) for c in item.curves for p in c.points(0.5)[:-1]]).buffer(0)
        for item in drawing.items
        if isinstance(item, Stroke) and item.role == "edge" and item.name
    }


def test_laid_flat_laps_the_wearers_right_front_over_the_left(wrap_top: Pattern) -> None:
    drawing = laid_flat(wrap_top)
    names = [i.name for i in drawing.items if isinstance(i, Stroke) and i.role == "edge"]
    assert names.index("back.right") < names.index("front.left") < names.index("front.right")
    shapes = outlines(drawing)
    assert shapes["front.right"].centroid.x < 0 < shapes["front.left"].centroid.x
    assert shapes["front.right"].bounds[2] == pytest.approx(160.0)
    fills = [i.role for i in drawing.items if isinstance(i, Fill) and i.name == "back"]
    assert fills == ["wrong_side"]
    assert not any("facing" in name for name in shapes)
    assert "Tie" in drawing.alt


def test_laid_flat_from_the_back_shows_the_back_on_top(wrap_top: Pattern) -> None:
    fills = [i for i in laid_flat(wrap_top, "back").items if isinstance(i, Fill) and i.name in ("back", "front")]
    assert (fills[-1].name, fills[-1].role) == ("back", "right_side")


@pytest.mark.parametrize("keep", ["front", "back", "front_facing"])
def test_laid_flat_of_a_single_piece(wrap_top: Pattern, keep: str) -> None:
    from dataclasses import replace

    one = replace(wrap_top, pieces=(wrap_top.piece(keep),), strips=())
    drawing = laid_flat(one)
    ElementTree.fromstring(svg(drawing))
    assert bool(drawing.items) == (keep != "front_facing")


def test_all_of_it_is_well_formed(wrap_top: Pattern) -> None:
    for drawing in (scene_drawing(seam(), wrap_top), scene_drawing(seam(how="open"), wrap_top), laid_flat(wrap_top)):
        root = ElementTree.fromstring(svg(drawing))
        assert root.get("aria-label")


def test_the_flat_garment_draws_the_numbers_of_the_lesson(wrap_top: Pattern) -> None:
    """The finished measurements that one of its lines has, from the pieces' own corners; no others."""
    back = wrap_top.piece("back")
    sleeves, long = 2 * back.outline.bounds()[2], back.edge("centre").path.length
    rows = (("Sleeve to sleeve", sleeves), ("Back length", long), ("Something else", 1234.0))
    drawing = laid_flat(replace(wrap_top, finished=rows), "back", "cm")
    wide, upright = (
        next(i for i in drawing.items if isinstance(i, Stroke) and i.arrow == "both" and i.name == title)
        for title in ("Sleeve to sleeve", "Back length")
    )
    assert wide.curves[0].start.distance(wide.curves[-1].end) == pytest.approx(sleeves, abs=0.5)
    assert upright.curves[0].start.distance(upright.curves[-1].end) == pytest.approx(long, abs=0.5)
    assert both(sleeves, "cm", "finished") in drawing.alt
    assert "Something else" not in {getattr(item, "name", "") for item in drawing.items}
    assert not [i for i in laid_flat(wrap_top, "back").items if isinstance(i, Dimension)]
