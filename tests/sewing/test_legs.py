"""What a landmark of a line is called: a notch by its kind where it is the only one of it, else by its number. At which
ends rows of edges go on in one another."""

from __future__ import annotations

import pytest

from kit.diagnostic import EdgeName, NamedLandmark
from kit.geometry import Path, Point
from kit.piece.piece import Edge, Notch, Piece
from kit.sewing.legs import Landmark, at_notch, chained, named_landmark, run_legs


def panel(*notches: tuple[float, str]) -> Piece:
    """A square of 200 with notches on its side, which runs up."""
    corners = [Point(0, 0), Point(200, 0), Point(200, 200), Point(0, 200)]
    edges = tuple(
        Edge(name, Path.line(a, b), 10.0)
        for name, a, b in zip(("hem", "side", "top", "centre"), corners, [*corners[1:], corners[0]], strict=True)
    )
    marks = tuple(Notch("side", at, kind) for at, kind in notches)  # type: ignore[arg-type]
    return Piece("front", "Front", edges, notches=marks)


def called(piece: Piece, number: int) -> NamedLandmark:
    line = run_legs(piece, ("side",), None)
    notch = piece.notches[number - 1]
    (landmark,) = at_notch(line, "front", notch, None)
    assert landmark == Landmark("notch", notch.distance, "side", "", "front", None, number)
    return named_landmark(line, landmark)


def test_the_only_notch_of_its_kind_is_called_by_it() -> None:
    piece = panel((40.0, "single"), (90.0, "single"), (150.0, "double"))
    assert called(piece, 3) == NamedLandmark("notch", "", "double")
    assert [called(piece, number) for number in (1, 2)] == [
        NamedLandmark("notch", EdgeName("hem"), "number", number=number) for number in (1, 2)
    ]
    first = panel((40.0, "double"), (90.0, "single"), (150.0, "single"))
    assert called(first, 1) == NamedLandmark("notch", "", "double")
    assert called(panel((40.0, "single"), (90.0, "double")), 1) == NamedLandmark("notch", "")
    assert called(panel((40.0, "double"), (90.0, "double")), 2).number == 2


@pytest.mark.parametrize(("singles", "way"), [(0, "number"), (1, ""), (2, "number")])
def test_a_notch_beyond_those_that_are_left_is_told_as_a_single_one(singles: int, way: str) -> None:
    """A try-on may take a line away under its notches."""
    line = run_legs(panel(*((40.0 + 30 * n, "single") for n in range(singles))), ("side",), None)
    named = named_landmark(line, Landmark("notch", 190.0, "side", "", "front", None, singles + 1))
    assert named.way == way


def half(name: str, side: str, centre: str, at: float, kind: str = "centre") -> Piece:
    """A half of a skirt drafted `at` mm to the right, its centre on the left, an edge of that `kind`."""
    corners = [Point(at, 0), Point(at + 100, 0), Point(at + 100, 200), Point(at, 200)]
    edges = tuple(
        Edge(edge, Path.line(a, b), 10.0, role=role)  # type: ignore[arg-type]
        for edge, role, a, b in zip(
            ("hem", side, "waist", centre),
            ("hem", "side", "waist", kind),
            corners,
            [*corners[1:], corners[0]],
            strict=True,
        )
    )
    return Piece(name, name, edges)


@pytest.mark.parametrize("names", [("apron", "band"), ("band", "apron")])
@pytest.mark.parametrize("at", [120.0, -120.0])
def test_rows_of_two_pieces_go_on_where_their_edges_are_of_one_kind(names: tuple[str, str], at: float) -> None:
    """Whatever the pieces are called, and however near other ends are drafted: 20 mm is between side and centre."""
    one, two = half(names[0], "side", "centre", 0.0), half(names[1], "long", "front", at, "opening")
    (first, second), walked = chained([run_legs(one, ("hem",), None), run_legs(two, ("hem",), None)])
    assert (first[-1].beside("end"), second[0].beside("start")) == ("side", "long")
    assert walked == (True, False)


def test_rows_of_one_piece_go_on_at_one_edge_whatever_its_kind() -> None:
    piece = half("apron", "side", "centre", 0.0)
    (first, second), _ = chained([run_legs(piece, ("hem",), None), run_legs(piece, ("waist",), None)])
    assert first[-1].beside("end") == second[0].beside("start")
