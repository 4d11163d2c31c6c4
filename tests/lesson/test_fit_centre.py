"""Where a level line meets the centre of a back: whichever way its outline runs, on whichever side it is drafted, and
by its role or by the fold of the cloth alone."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.errors import KitError
from kit.geometry import Line, Path, Point
from kit.lesson.fit_centre import centre_spot, wedged
from kit.piece.piece import CutPlan, Edge, Piece
from kit.piece.role import EdgeRole

MIDDLE = Line(Point(0, 0), Point(0, 1))


def back(role: EdgeRole | None, fold: str | None, *, mirrored: bool = False, turned: bool = False) -> Piece:
    """200 wide and 300 high, its centre at x = 0; `mirrored` on its left, `turned` with its outline the other way."""
    corners = [Point(0, 300), Point(0, 0), Point(200, 0), Point(200, 300)]
    names = ("centre", "hem", "side", "waist")
    roles: tuple[EdgeRole | None, ...] = (role, "hem", "side", "waist")
    lines = [Path.line(a, b) for a, b in zip(corners, [*corners[1:], corners[0]], strict=True)]
    if mirrored:
        lines = [line.mirrored(MIDDLE) for line in lines]
    edges = [
        Edge(name, line, 0.0 if name == fold else 10.0, role=own or "")
        for name, own, line in zip(names, roles, lines, strict=True)
    ]
    if turned:
        edges = [replace(edge, path=edge.path.reversed()) for edge in reversed(edges)]
    return Piece("back", "Back", tuple(edges), cut=CutPlan(fold=fold) if fold else CutPlan(2, mirrored=True))


@pytest.mark.parametrize("turned", [False, True])
@pytest.mark.parametrize("mirrored", [False, True])
@pytest.mark.parametrize(("role", "fold"), [("centre", None), ("crotch", None), (None, "centre"), ("centre", "centre")])
def test_the_centre_is_found_by_its_role_or_by_the_fold(
    role: EdgeRole | None, fold: str | None, mirrored: bool, turned: bool
) -> None:
    spot = centre_spot(back(role, fold, mirrored=mirrored, turned=turned), 120.0)
    assert (spot.x, spot.y) == pytest.approx((0.0, 120.0), abs=1e-9)


@pytest.mark.parametrize("turned", [False, True])
def test_a_wedge_opens_at_the_centre_and_the_side_is_its_hinge(turned: bool) -> None:
    """The centre is 10 longer, the side as long as before (reckoned from the corners)."""
    before = back(None, "centre", turned=turned)
    after = wedged(before, 120.0, 10.0)
    assert after.edge("side").path.length == pytest.approx(300.0, abs=0.05)
    assert after.edge("centre").path.length == pytest.approx(310.0, abs=0.3)


def test_without_a_centre_nothing_is_guessed() -> None:
    with pytest.raises(KitError, match="Back"):
        centre_spot(back(None, None), 120.0)
