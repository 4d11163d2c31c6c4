"""Corners of the allowances set by hand in a drafting step."""

from __future__ import annotations

import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson.bench import BenchPiece
from kit.piece.allowance import cut_line
from kit.piece.corner import Corner, Declared
from kit.piece.piece import Edge, Piece
from kit.units import cm, mm


def bench(name: str = "front") -> BenchPiece:
    points = [Point(0, 0), Point(0, 300), Point(100, 300), Point(130, 0)]
    names = {"centre": 10.0, "waist": 10.0, "side": 15.0, "hem": 40.0}
    edges = tuple(
        Edge(edge, Path.line(a, b), width)
        for (edge, width), a, b in zip(names.items(), points, [*points[1:], points[0]], strict=True)
    )
    return BenchPiece(Piece(name, name.capitalize(), edges))


def test_corners_are_kept_by_hand_and_drawn() -> None:
    front = bench()
    front.finish_corner(front.side, front.hem, "turned", turned=front.hem, folds=(0, 3 * cm))
    front.finish_corner(front.waist, front.side, "squared")
    front.finish_corner(front.centre, front.waist, "clipped", size=12 * mm)
    piece = front.freeze()
    assert piece.corners == (
        Corner("side", "hem", "turned", turned="hem", folds=(0.0, 30.0), by_hand=True),
        Corner("waist", "side", "squared", turned="waist", by_hand=True),
        Corner("centre", "waist", "clipped", size=12.0, by_hand=True),
    )
    assert cut_line(piece).polygon().is_valid


def test_the_order_of_the_edges_is_free_and_the_last_word_counts() -> None:
    front = bench()
    front.finish_corner(front.hem, front.side, "turned")
    front.finish_corner("side", "hem", "rounded")
    front.finish_corner(front.hem, front.side, "mitre")
    assert front.freeze().corners == (Corner("side", "hem", "mitre", by_hand=True),)
    front.finish_corner(front.hem, front.side, "turned")
    assert front.freeze().corners[0].turned == "hem"


@pytest.mark.parametrize(
    ("words", "say"),
    [
        (("side", "centre", "squared"), "not neighbours"),
        (("side", "side", "squared"), "both sides"),
        (("side", "helm", "squared"), "no edge 'helm'"),
        (("side", "hem", "square"), "'square' is not a way"),
        (("side", 3, "squared"), "not an edge"),
    ],
)
def test_wrong_edges_and_rules_are_refused(words: tuple[object, object, str], say: str) -> None:
    with pytest.raises(KitError, match=say) as caught:
        bench().finish_corner(*words)  # type: ignore[arg-type]
    assert caught.value.do


@pytest.mark.parametrize(
    ("rule", "more", "say"),
    [
        ("turned", {"folds": (3 * cm, 0)}, "folds lie at"),
        ("turned", {"folds": 4 * cm}, "beyond the cloth"),
        ("turned", {"folds": ()}, "no fold is named"),
        ("turned", {"turned": "waist"}, "does not meet"),
        ("turned", {"size": 1 * cm}, "has no size"),
        ("squared", {"folds": (0, 1 * cm)}, "not folded"),
        ("clipped", {"turned": "hem"}, "no turned edge"),
        ("clipped", {"size": -1 * cm}, "cannot be cut"),
        ("clipped", {"size": 20 * cm}, "cuts nothing off"),
        ("rounded", {"size": 1 * cm}, "cut into the allowance"),
    ],
)
def test_sizes_that_do_not_fit_are_refused(rule: str, more: dict[str, object], say: str) -> None:
    front = bench()
    with pytest.raises(KitError, match=say) as caught:
        front.finish_corner(front.hem, front.side, rule, **more)  # type: ignore[arg-type]
    assert "hem" in str(caught.value)
    assert front.freeze().corners == ()


def test_an_edge_of_another_piece_is_refused() -> None:
    front, back = bench(), bench("back")
    with pytest.raises(KitError, match="another piece, back"):
        front.finish_corner(front.side, back.hem, "squared")


def test_a_corner_drawn_on_purpose_is_declared() -> None:
    front = bench()
    front.declare(front.waist, front.centre, why="V point")
    front.declare(front.centre, front.waist, why=" slit ")
    assert front.freeze().declared == (Declared("centre", "waist", "slit"),)
    with pytest.raises(KitError, match="not neighbours"):
        front.declare(front.waist, front.hem, why="gusset")
    with pytest.raises(KitError, match="not said why"):
        front.declare(front.waist, front.side, why="")
