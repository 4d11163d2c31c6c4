"""Signs of what fastens a garment: hook, bar, eye, the halves of a snap, eyelet. One drawing of each, for the printed
piece, the picture of a drafting step and the picture of its sewing."""

from __future__ import annotations

import math

from kit.geometry import Arc, Curve, Line, Path, Point, Vector

LONG = 10.0
"""mm of a hook, a bar or an eye where its mark says no length: a middle size for a waistband (common practice, no
source)."""
ACROSS = 8.0
"""mm across a snap or an eyelet where nothing says another size (common practice, no source)."""
SIGNS = ("hook", "bar", "eye", "snap", "socket", "eyelet")

Sign = tuple[tuple[Curve, ...], bool]
"""A line of a sign, and whether it is closed."""


def sign(kind: str, line: Path, across: float = ACROSS) -> list[Sign]:
    """The lines of a sign. Hook, bar and eye lie along `line`, a hook and an eye with their bend at its end; the others
    stand at its start, `across` mm wide.

    A hook is its two sewing rings at the foot, the shank, and a bend that turns back beside it; an eye the rings and a
    loop; a bar a straight wire between two rings. The ball half of a snap has four holes round its ball, the socket a
    ring in their place; an eyelet is a ring round its hole.
    """
    at, end, long = line.start, line.end, line.length
    if kind in ("snap", "socket", "eyelet"):
        rim = _circle(at, across / 2)
        if kind == "eyelet":
            return [rim, _circle(at, across / 4)]
        if kind == "socket":
            return [rim, _circle(at, across / 5), *_holes(at, across)]
        return [rim, _circle(at, across / 12), *_holes(at, across)]
    way = (end - at).unit()
    side, ring = way.left(), long * 0.13
    if kind == "bar":
        wire = Line(at + way * (2 * ring), end - way * (2 * ring))
        return [_circle(at + way * ring, ring), _circle(end - way * ring, ring), ((wire,), False)]
    feet = [_circle(at + way * ring + side * (turn * ring * 1.4), ring) for turn in (1.0, -1.0)]
    bend = long * (0.16 if kind == "hook" else 0.3)
    centre = end - way * bend
    # From the shank over the tip to the other side: half a circle whose middle lies `bend` short of the tip.
    arc = Arc(centre, bend, (side * -1.0).angle, math.pi)
    foot = at + way * (2 * ring)
    shank = Line(foot - side * bend, centre - side * bend)
    back = Line(centre + side * bend, (foot if kind == "eye" else centre - way * (long * 0.25)) + side * bend)
    return [*feet, ((shank, arc, back), False)]


def _circle(at: Point, radius: float) -> Sign:
    return (Arc(at, radius, 0.0, math.pi), Arc(at, radius, math.pi, math.pi)), True


def _holes(at: Point, across: float) -> list[Sign]:
    return [_circle(at + Vector(x, y) * (across * 0.34), across / 14) for x, y in ((1, 0), (0, 1), (-1, 0), (0, -1))]
