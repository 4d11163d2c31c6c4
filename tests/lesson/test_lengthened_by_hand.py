"""Edges made longer and shorter on a square of 200 mm, by coordinates worked by hand: hem from (0, 0), then side, top
and centre. What lies on the edge keeps its distance from the end that is held."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson.truing import lengthened
from kit.piece.folded import folded
from kit.piece.piece import CutPlan, Edge, Notch, Piece


def square(shift: float = 0.0, **more: object) -> Piece:
    """`shift` moves the lower corner of the centre aside, so that the centre is slanted."""
    at = {"hem": (shift, 0), "side": (200, 0), "top": (200, 200), "centre": (0, 200)}
    points = [Point(*each) for each in at.values()]
    edges = tuple(Edge(name, Path.line(a, b)) for name, a, b in zip(at, points, [*points[1:], points[0]], strict=True))
    return replace(Piece("front", "Front", edges), **more)


def longer(piece: Piece, end: bool, by: float, *edges: str) -> Piece:
    return lengthened(piece, folded(piece, edges or ("side",)), end, by)


def ends(piece: Piece, name: str) -> tuple[tuple[float, float], tuple[float, float]]:
    path = piece.edge(name).path
    return (round(path.start.x, 6), round(path.start.y, 6)), (round(path.end.x, 6), round(path.end.y, 6))


@pytest.mark.parametrize("by", [10.0, 0.5, -10.0, -30.0])
def test_at_its_end_the_line_beside_it_comes_along(by: float) -> None:
    found = longer(square(), True, by)
    assert ends(found, "side") == ((200, 0), (200, 200 + by))
    assert ends(found, "top") == ((200, 200 + by), (0, 200))
    assert ends(found, "hem") == ((0, 0), (200, 0)) and ends(found, "centre") == ((0, 200), (0, 0))


@pytest.mark.parametrize("by", [10.0, -10.0, -30.0])
def test_at_its_start_too(by: float) -> None:
    found = longer(square(), False, by)
    assert ends(found, "side") == ((200, -by), (200, 200))
    assert ends(found, "hem") == ((0, 0), (200, -by))
    assert ends(found, "top") == ((200, 200), (0, 200))


def test_half_a_centimetre_of_an_edge_must_stay() -> None:
    for end in (True, False):
        with pytest.raises(KitError, match=r"^Front: 19\.6 cm .* cannot be taken off the side seam: only 20 cm"):
            longer(square(), end, -196.0)
        with pytest.raises(KitError, match=r"there is no room on the (top|hem) to draw it smooth"):
            longer(square(), end, -195.0)  # 5 mm would stay, but the line beside it cannot follow so far


@pytest.mark.parametrize(("end", "by", "at"), [(True, 10, 50), (True, -10, 50), (False, 10, 60), (False, -10, 40)])
def test_a_notch_stays_where_it_is_on_the_cloth(end: bool, by: float, at: float) -> None:
    found = longer(square(notches=(Notch("side", 50.0),)), end, by)
    assert [notch.distance for notch in found.notches] == pytest.approx([at])


def test_of_several_edges_the_one_at_that_end_is_made_longer() -> None:
    far = longer(square(), True, 10.0, "hem", "side")
    assert ends(far, "side") == ((200, 0), (200, 210)) and ends(far, "hem") == ((0, 0), (200, 0))
    near = longer(square(), False, 10.0, "hem", "side")
    assert ends(near, "hem") == ((-10, 0), (200, 0)) and ends(near, "side") == ((200, 0), (200, 200))
    assert ends(near, "centre") == ((0, 200), (-10, 0))


def test_walked_the_other_way_its_end_is_where_it_is_drawn_from() -> None:
    found = longer(square(), True, 10.0, "side", "hem")
    assert ends(found, "hem") == ((-10, 0), (200, 0)) and ends(found, "side") == ((200, 0), (200, 200))


def test_beside_a_fold_only_an_edge_square_to_it_changes() -> None:
    fold = {"cut": CutPlan(1, fold="centre")}
    # square to the fold: it moves off it, parallel
    assert ends(longer(square(**fold), False, 10.0, "hem"), "hem")[0] == (-10, 0)
    with pytest.raises(KitError, match="fold"):
        longer(square(40.0, **fold), False, 10.0, "hem")
    assert ends(longer(square(40.0), False, 10.0, "hem"), "hem")[0] == (30, 0)  # without a fold any edge does
