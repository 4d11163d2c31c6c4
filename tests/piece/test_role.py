"""Roles: what a name's trade words make of a piece or edge, once; afterwards only the role counts."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.geometry import Path, Point
from kit.picture.place import as_drafted
from kit.piece.allowance import cut_line, hem_edges
from kit.piece.piece import CutPlan, Edge, Piece
from kit.piece.role import edge_role, landmark, piece_role

BACKS = ("back", "ruecken", "rücken", "Rücken", "espalda", "dos")
HEMS = ("hem", "saum", "dobladillo", "ourlet")


@pytest.mark.parametrize("name", BACKS)
def test_a_back_is_a_back_in_four_languages(name: str) -> None:
    piece = Piece(name, name, ())
    assert (piece.role, piece.worn) == ("back", "back")
    assert as_drafted(piece, "right", wrong_up=False)


@pytest.mark.parametrize(
    ("words", "role"),
    [
        (("back_facing", "Back neck facing"), ("facing", "back")),
        (("rueckenbeleg", ""), ("facing", "back")),
        (("vista", "Vista de la espalda"), ("facing", "back")),
        (("parementure_dos", ""), ("facing", "back")),
        (("back_pocket", ""), ("pocket", "back")),
        (("poche", ""), ("pocket", "")),
        (("backing", "Feedback"), ("", "")),  # whole words only
        (("cepo", "Cepo"), ("", "")),
    ],
)
def test_words_of_a_piece(words: tuple[str, ...], role: tuple[str, str]) -> None:
    assert piece_role(*words) == role


@pytest.mark.parametrize("word", ["Ärmel", "A\u0308RMEL", "aermel", "armel", "manga", "manche", "sleeve"])
def test_a_word_is_known_with_its_accents_and_without(word: str) -> None:
    assert piece_role(f"{word}_links", "") == ("sleeve", "")
    assert piece_role("", "Canesú") == piece_role("canesu", "") == ("yoke", "")


def test_words_of_an_edge() -> None:
    assert [edge_role(name) for name in HEMS] == ["hem"] * 4
    assert edge_role("left_side") == "side"
    assert edge_role("top", "top hem") == "hem"
    assert edge_role("hem_side") == "hem"
    assert edge_role("themes") == edge_role("chemise") == ""
    assert (landmark("Halspunkt"), landmark("punkto")) == ("neck_point", None)


def skirt(name: str, said: str = "", **more: object) -> Piece:
    """A flared quarter skirt with a wide allowance below."""
    corners = [Point(0, 0), Point(300, 0), Point(220, 500), Point(0, 500)]
    names = (name, "side", "waist", "centre")
    paths = (Path.line(a, b) for a, b in zip(corners, [*corners[1:], corners[0]], strict=True))
    edges = [Edge(n, p, 40.0 if n == name else 15.0) for n, p in zip(names, paths, strict=True)]
    edges[0] = replace(edges[0], said=said, **more)  # type: ignore[arg-type]
    return Piece("skirt", "Skirt", tuple(edges), cut=CutPlan(fold="centre"))


@pytest.mark.parametrize("name", HEMS)
def test_a_hem_is_cut_alike_in_four_languages(name: str) -> None:
    assert cut_line(skirt(name)).curves == cut_line(skirt("hem")).curves
    assert cut_line(skirt("valo")).curves != cut_line(skirt("hem")).curves


def test_the_role_decides_and_not_the_name() -> None:
    assert hem_edges(skirt("valo", role="hem")) == ("valo",)
    assert cut_line(skirt("valo", role="hem")).curves == cut_line(skirt("hem")).curves
    assert hem_edges(skirt("hem", role="")) == ()
    assert cut_line(skirt("hem", role="")).curves == cut_line(skirt("valo")).curves


def test_a_role_outlives_its_name() -> None:
    edge = replace(Edge("hem", Path.line(Point(0, 0), Point(1, 0))), name="saum_x", said="Kante")
    assert edge.role == "hem"
    piece = replace(Piece("back", "Back", ()), name="front", title="Front")
    assert (piece.role, piece.worn) == ("back", "back")
    assert Piece("x", "X", (), role="front").worn == "front"
    assert Piece("back", "Back", (), role="").worn == ""
