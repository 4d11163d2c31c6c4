"""What a cross-section has from its scene, on sections small enough to be seen through: each expectation is the cloth
held in the hand, right side and wrong side (common practice, no source)."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.body.body import Body
from kit.geometry import Path, Point
from kit.lesson.pattern import LessonInfo, Pattern
from kit.piece.piece import Piece
from kit.sewing.right_sides import in_cloth, right_sides
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Ply, Scene, Section

PIECES = (
    Piece("bodice", "Bodice", (), role="front"),
    Piece("strip", "Strip", (), role="strip"),
    Piece("inner", "Inner neck", (), role="facing"),
)
PATTERN = Pattern(LessonInfo("Trial", "trial"), Body("W4", ()), (), PIECES, (), (), ())
LOWER = Ply("main", ((-10.0, 0.0), (0.0, 0.0)), (False, True), "lower")
UPPER = Ply("main", ((-10.0, 1.0), (0.0, 1.0)), (False, True), "upper")
TURNED = Ply("main", ((-10.0, 0.0), (5.0, 0.0), (5.0, 1.0), (-4.0, 1.0)), (False, True))


def on(piece: str, **more: object) -> Layer:
    return Layer(Run(piece, ("edge",)), **more)  # type: ignore[arg-type]


def back(ply: Ply) -> Ply:
    """The same cloth, its course run the other way."""
    return replace(ply, path=ply.path[::-1], raw=ply.raw[::-1])


@pytest.mark.parametrize(
    ("layers", "stuff"),
    [
        ((on("bodice"),), "main"),
        ((on("bodice"), on("strip")), "main"),
        ((on("bodice"), on("strip", stuff="facing")), "facing"),
        ((on("bodice"), on("inner")), "facing"),
    ],
)
def test_a_ply_is_told_as_a_facing_only_where_a_facing_is_sewn(layers: tuple[Layer, ...], stuff: str) -> None:
    section = Section((LOWER, Ply("facing", UPPER.path), Ply("lining", UPPER.path)))
    found = in_cloth(PATTERN, Scene(layers, section=section))
    assert found is not None and [ply.stuff for ply in found.plies] == ["main", stuff, "lining"]
    assert in_cloth(PATTERN, Scene(layers)) is None


SEAM = Scene(
    (on("bodice"), on("strip", up="wrong", on=Run("bodice", ("edge",)), how="together")),
    section=Section((LOWER, UPPER)),
)


@pytest.mark.parametrize(
    ("plies", "sides"),
    [
        ((LOWER, UPPER), (1, -1)),  # right sides together: up on the lower, down on the upper
        ((UPPER, LOWER), (-1, 1)),
        ((back(LOWER), UPPER), (-1, -1)),
        ((LOWER, back(UPPER)), (1, 1)),
    ],
)
def test_right_sides_together_face_each_other(plies: tuple[Ply, ...], sides: tuple[int, ...]) -> None:
    assert right_sides(replace(SEAM, section=Section(plies))) == sides


def test_interfacing_and_the_far_side_of_a_tube_tell_nothing() -> None:
    more = (*SEAM.layers, on("bodice", stuff="interfacing"), on("bodice", ring=True))
    assert right_sides(replace(SEAM, layers=more)) == (1, -1)


@pytest.mark.parametrize(
    ("up", "ply", "sides"),
    [
        ("wrong", TURNED, (-1,)),  # a hem seen from its wrong side: the right side lies below
        ("wrong", back(TURNED), (1,)),
        ("right", TURNED, ()),  # it would be turned to the right side
        ("right", back(TURNED), ()),
        ("right", LOWER, (1,)),
        ("wrong", LOWER, (-1,)),
        ("right", back(LOWER), (-1,)),
        ("right", replace(LOWER, path=((-0.5, 0.0), (0.0, 0.0))), (1,)),  # however short
    ],
)
def test_what_is_turned_lies_on_the_wrong_side(up: str, ply: Ply, sides: tuple[int, ...]) -> None:
    assert right_sides(Scene((on("bodice", up=up),), section=Section((ply,)))) == sides


FOLD = Path.line(Point(0, 0), Point(0, 10))


@pytest.mark.parametrize(
    "scene",
    [
        replace(SEAM, section=None),
        replace(SEAM, section=Section((LOWER,))),
        replace(SEAM, section=Section((LOWER, UPPER, Ply("strip", UPPER.path)))),
        replace(SEAM, section=Section((LOWER, replace(UPPER, raw=(True, True))))),
        replace(SEAM, section=Section((LOWER, replace(UPPER, raw=(False, False))))),
        replace(SEAM, layers=(SEAM.layers[0], replace(SEAM.layers[1], how="open"))),
        replace(SEAM, layers=(SEAM.layers[0], replace(SEAM.layers[1], fold=FOLD))),
        replace(SEAM, layers=(SEAM.layers[0], replace(SEAM.layers[1], place=FOLD))),
        replace(SEAM, layers=(*SEAM.layers, on("bodice"))),
    ],
)
def test_where_layers_do_not_tell_it_nothing_is_said(scene: Scene) -> None:
    assert right_sides(scene) == ()
