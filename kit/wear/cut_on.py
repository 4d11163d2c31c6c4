"""How far an arm can be raised in a sleeve that is cut on with the body: a finding where it cannot come level.

Such a sleeve has no armhole. What holds the arm down is the way along the side and the underarm, from the waist to
where the sleeve ends; the cloth may span it straight, as a web under the arm. On the body that way is the third side of
a triangle: from the armpit down to the waist, from the armpit out along the arm to the sleeve's end, and the angle the
arm is raised by between the two (the law of cosines). Where the garment is shorter, its hem goes up by what is missing.
"""

from __future__ import annotations

import math
from typing import NamedTuple

from kit.diagnostic import Diagnostic, measured, message
from kit.piece.piece import Edge, Piece
from kit.wear.girth import Worn
from kit.wear.moved import ARMPIT, GIVES, LIFTS, armpit
from kit.wear.told import told

LEVEL = 90.0
"""Degrees up from hanging at which an arm is level with the shoulder: everyday reach (common practice, no source)."""
_STEP = 2.0  # mm between the points an edge is measured by


class Raised(NamedTuple):
    """A sleeve that is cut on: mm from the waist to its end, along side and underarm, that the garment `has` and a body
    with a level arm wants (`need`); the degrees (0 to 180, 90 is level) an arm goes up `before` the hem moves; and the
    piece and edge that draw the way."""

    has: float
    need: float
    before: float
    piece: str
    edge: str


def way_on_body(down: float, out: float, angle: float) -> float:
    """mm straight from a place `down` below the armpit to one `out` from it along an arm that is raised by `angle`
    degrees from hanging (the law of cosines).

    >>> round(way_on_body(300.0, 400.0, 90.0), 6), way_on_body(300.0, 400.0, 180.0)
    (500.0, 700.0)
    """
    return math.sqrt(max(down**2 + out**2 - 2 * down * out * math.cos(math.radians(angle)), 0.0))


def goes_up(down: float, out: float, has: float) -> float:
    """The degrees from hanging an arm is raised by when the way of `way_on_body` measures `has`: 0 to 180.

    >>> round(goes_up(300.0, 400.0, 500.0)), goes_up(300.0, 400.0, 800.0)
    (90, 180.0)
    """
    share = (down**2 + out**2 - has**2) / (2 * down * out)
    return math.degrees(math.acos(min(max(share, -1.0), 1.0)))


def raised(worn: Worn) -> Raised | None:
    """The first piece with a sleeve cut on; None where there is none, or where the body or its cloth do not tell."""
    high = armpit(worn)
    if high is None or worn.gives >= GIVES or "shoulder_length" not in worn.body:
        return None
    for piece in worn.torso:
        unders, shoulders = piece.with_role("underarm"), piece.with_role("shoulder")
        if not unders or not shoulders or not piece.with_role("opening") or piece.with_role("armhole"):
            continue
        from_edge = max(_lowest(worn, piece), 0.0)  # of a short top: nothing holds it below its hem
        down, out = high - from_edge, _down_the_arm(worn, shoulders) - ARMPIT
        if down <= 0.0 or out <= 0.0:
            continue
        has = sum(edge.path.length for edge in unders)
        has += sum(_above(worn, piece, edge, from_edge) for edge in piece.with_role("side"))
        return Raised(has, way_on_body(down, out, LEVEL), goes_up(down, out, has), piece.name, unders[0].name)
    return None


def level_arm(worn: Worn) -> list[Diagnostic]:
    """A sleeve cut on in which an arm that is raised level with the shoulder lifts the hem."""
    found = raised(worn)
    if found is None or found.has >= found.need - LIFTS:
        return []
    up, amount = found.need - found.has, found.need - LIFTS - found.has
    says = message(
        "wear.cut_on", has=measured(found.has), need=measured(found.need), angle=round(found.before), up=measured(up)
    )
    can = message("wear.cut_on_do", amount=measured(amount))
    return [told("arm_raised", "warning", says, can, amount=amount, piece=found.piece, edge=found.edge)]


def _down_the_arm(worn: Worn, shoulders: tuple[Edge, ...]) -> float:
    """mm from the shoulder's tip to the sleeve's end. What a wide neck takes off the shoulder lies before its line."""
    begins = min(abs(point.x) for edge in shoulders for point in (edge.path.start, edge.path.end))
    neck = worn.body["neck_base_girth"] / 5 if "neck_base_girth" in worn.body else begins
    long = sum(edge.path.length for edge in shoulders) + max(begins - neck, 0.0)
    return long - worn.body["shoulder_length"]


def _lowest(worn: Worn, piece: Piece) -> float:
    return min(worn.up(piece, point.y) for edge in piece.edges for point in edge.path.points(1.0))


def _above(worn: Worn, piece: Piece, edge: Edge, height: float) -> float:
    """mm of an edge that lie higher above the waist than that."""
    count = max(int(edge.path.length / _STEP), 1)
    step = edge.path.length / count
    return step * sum(worn.up(piece, edge.path.at((at + 0.5) * step).y) > height for at in range(count))
