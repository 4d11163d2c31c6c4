"""A sleeve made wider at the upper arm, against triangles anyone can work out: all its seams are straight."""

from __future__ import annotations

from math import hypot, sqrt

import pytest

from kit.geometry import Path, Point
from kit.lesson.fit_bust import arm_fuller
from kit.piece.piece import Edge, Piece

WRIST, ARM, UP, TOP = 100.0, 150.0, 400.0, 520.0  # half the wrist, half the upper arm, and how high they lie


def sleeve() -> Piece:
    places = [Point(-WRIST, 0), Point(WRIST, 0), Point(ARM, UP), Point(0, TOP), Point(-ARM, UP)]
    names = ("wrist", "front_underarm", "front_cap", "back_cap", "back_underarm")
    roles = ("wrist", "underarm", "cap", "cap", "underarm")
    lines = [Path.line(one, two) for one, two in zip(places, places[1:] + places[:1], strict=True)]
    edges = tuple(Edge(*each[:2], role=each[2]) for each in zip(names, lines, roles, strict=True))  # type: ignore[arg-type]
    return Piece("sleeve", "Sleeve", edges, points=(("cap_top", places[3]), ("front_arm", places[2])))


@pytest.mark.parametrize("amount", [40.0, 12.0, -12.0, -40.0])
def test_each_half_turns_about_the_wrist_until_the_arm_is_so_much_wider(amount: float) -> None:
    """Cut down the middle and across, hinged at wrist, cap top and underarms (the full-arm alteration: common practice,
    no source), each part is rigid. So the underarm moves on a circle about the middle of the wrist, and the cap top
    comes as high over it as the slant of the cap allows."""
    after = arm_fuller(sleeve(), amount)
    path = {edge.name: edge.path for edge in after.edges}
    arm = ARM + amount / 2
    up = sqrt(hypot(ARM, UP) ** 2 - arm**2)
    top = up + sqrt(hypot(ARM, TOP - UP) ** 2 - arm**2)
    for name, place in {
        "front_cap": ((arm, up), (0.0, top)),
        "back_cap": ((0.0, top), (-arm, up)),
    }.items():
        ends = [value for p in (path[name].start, path[name].end) for value in (p.x, p.y)]
        assert ends == pytest.approx([*place[0], *place[1]], abs=1e-6)
    assert dict(after.points)["cap_top"].y == pytest.approx(top)
    assert dict(after.points)["front_arm"].x == pytest.approx(arm)
    for name in ("front_underarm", "back_underarm"):
        assert path[name].length == pytest.approx(hypot(ARM - WRIST, UP))
    assert path["wrist"].is_straight
    # The hinge opens: the ends of the wrist turn by the angle of the underarm, seen from the middle of the wrist.
    turn = (arm * UP - up * ARM) / hypot(ARM, UP) ** 2  # the sine of it, as a cross product
    assert path["wrist"].length == pytest.approx(2 * WRIST * sqrt(1 - turn**2))
    assert path["wrist"].end.y == pytest.approx(-WRIST * turn)


def test_no_change_is_the_sleeve_itself() -> None:
    before = sleeve()
    assert arm_fuller(before, 0.0) is before
