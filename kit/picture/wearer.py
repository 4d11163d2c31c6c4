"""A plain standing figure with the measures of one body, to see a garment on.

It is the measuring figure (kit/picture/figure.py) drawn anew: its levels lie where the body's heights are, its widths
follow from the body's girths, and its arms hang at an angle that is asked for. Heights are mm above the waist, x = 0 is
the middle; seen from in front the wearer's left is at the viewer's right.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise

from kit.body.body import Body
from kit.geometry import Curve, Line, Motion, Point, Vector
from kit.geometry.spline import spline
from kit.picture.drawing import Fill, Item, Stroke
from kit.picture.figure import ARM_IN, ARM_OUT, FOOT, HAND, INSIDE, NECK, SHOULDER, SIDE, View
from kit.wear.levels import body_heights

_Spot = tuple[float, float]
_Knots = tuple[tuple[float, float], ...]

# The measuring figure's own size: its measures in mm, of a middle size, for what a body does not tell.
_OWN = {
    "height": 1672.0, "waist_height": 1042.0, "back_waist_length": 404.0, "waist_to_hip": 205.0, "body_rise": 280.0,
    "bust_girth": 900.0, "waist_girth": 715.0, "hip_girth": 960.0, "neck_base_girth": 363.0, "shoulder_length": 122.0,
    "head_girth": 560.0, "knee_girth": 362.0, "ankle_girth": 230.0, "upper_arm_girth": 282.0, "arm_length": 541.0,
    "armscye_depth": 190.0,
}  # fmt: skip
_NECK_RISE = 20.0
"""mm that the side neck point lies above the nape (common practice, no source)."""
_SLOPE = 0.357  # fall of the shoulder of its run across, in the measuring figure
_SHOULDER = Point(166.0, 1396.0)  # about where the arm turns, in the measuring figure
_WRIST = Point(304.5, 892.0)
_HEAD: Sequence[_Spot] = ((0, 1672), (-66, 1630), (-74, 1568), (-52, 1496), (0, 1462))
_BULGE = 25.0  # mm that the upper arm of the measuring figure stands out from the line from shoulder point to wrist
_LEVELLED = math.radians(20.0)  # an arm raised so far has its upper side straight on from the shoulder
HANGING = math.radians(74.0)
"""How far below the level an arm points that hangs (the measuring figure's own)."""


def _between(knots: _Knots, at: float) -> float:
    """The value at a place, straight from knot to knot and on beyond the last two.

    >>> _between(((0.0, 10.0), (100.0, 20.0), (200.0, 60.0)), 150.0)
    40.0
    """
    pair = next((two for two in pairwise(knots) if at <= two[1][0]), (knots[-2], knots[-1]))
    (a, one), (b, two) = pair
    return one + (two - one) * (at - a) / max(b - a, 1e-9)


@dataclass(frozen=True)
class Wearer:
    """The figure of a `body`; what the body does not tell is that of a middle size. Its `arms` point so far (radians)
    below the level; in a sleeve their upper side is `straight`.

    >>> from kit import workshop_chart
    >>> figure = Wearer(workshop_chart()["W4"])
    >>> round(figure.crown), round(figure.floor), round(2 * figure.half(0.0))  # mm: a waist of 71.5 cm all round
    (628, -1042, 246)
    """

    body: Body
    arms: float = HANGING
    straight: bool = False

    def _of(self, name: str) -> float:
        return self.body[name] if name in self.body else _OWN[name]

    def _ratio(self, name: str) -> float:
        return self._of(name) / _OWN[name]

    # ---- levels and widths --------------------------------------------------------------------------------

    @property
    def crown(self) -> float:
        """The top of the head."""
        return self._of("height") - self._of("waist_height")

    @property
    def floor(self) -> float:
        return -self._of("waist_height")

    @property
    def nape(self) -> float:
        """The back neck point: the back waist length above the waist."""
        return self._of("back_waist_length")

    @cached_property
    def neck(self) -> Point:
        """The side neck point."""
        return Point(66.0 * self._ratio("neck_base_girth"), self.nape + _NECK_RISE)

    @cached_property
    def tip(self) -> Point:
        """The shoulder point: the shoulder length from the side neck point."""
        across = self._of("shoulder_length") / math.hypot(1.0, _SLOPE)
        return Point(self.neck.x + across, self.neck.y - _SLOPE * across)

    @property
    def underarm(self) -> float:
        """The level of the armscye depth below the nape."""
        return self.nape - self._of("armscye_depth")

    @cached_property
    def _levels(self) -> _Knots:
        """(height in the measuring figure, height of this body above the waist), from the floor up."""
        told = body_heights(self.body)
        return (
            (0.0, self.floor),
            (468.0, told.get("knee", 0.28 * self._of("height") - self._of("waist_height"))),
            (762.0, -self._of("body_rise")),
            (837.0, -self._of("waist_to_hip")),
            (1042.0, 0.0),
            (1256.0, self.underarm),
            (1410.0, self.tip.y),
            (1452.0, self.neck.y),
            (1672.0, self.crown),
        )

    @cached_property
    def _widths(self) -> _Knots:
        """(height in the measuring figure, how much wider this body is there)."""
        hip, knee = self._ratio("hip_girth"), self._ratio("knee_girth")
        return (
            (0.0, self._ratio("ankle_girth")),
            (104.0, self._ratio("ankle_girth")),
            (460.0, knee),
            (728.0, hip),
            (837.0, hip),
            (1042.0, self._ratio("waist_girth")),
            (1214.0, self._ratio("bust_girth")),
            (1268.0, self._ratio("bust_girth")),
            (1410.0, self.tip.x / 176.0),
            (1452.0, self._ratio("neck_base_girth")),
            (1540.0, self._ratio("neck_base_girth")),
            (1672.0, self._ratio("neck_base_girth")),
        )

    def put(self, spot: _Spot) -> Point:
        """Where a place of the measuring figure lies on this one."""
        x, y = spot
        return Point(x * _between(self._widths, y), _between(self._levels, y))

    @cached_property
    def _side(self) -> _Knots:
        """(height, half the trunk's width) from the crotch to the armpit."""
        spots = [self.put(spot) for spot in spline_spots(SIDE) if spot[1] >= 700.0]
        return tuple(sorted({round(p.y, 3): p.x for p in spots}.items()))

    def half(self, y: float) -> float:
        """Half the width of the trunk at a height, as it is seen from in front."""
        side = self._side
        return _between(side, min(max(y, side[0][0]), side[-1][0]))

    @cached_property
    def _inside(self) -> _Knots:
        """(height, how far from the middle the inside of a leg lies) from the floor to the crotch."""
        spots = [self.put(spot) for spot in spline_spots(INSIDE)]
        return tuple(sorted({round(p.y, 3): p.x for p in spots}.items()))

    @cached_property
    def _outside(self) -> _Knots:
        """(height, how far from the middle the outside of a leg lies) from the ankle up."""
        spots = [self.put(spot) for spot in spline_spots(SIDE)]
        return tuple(sorted({round(p.y, 3): p.x for p in spots}.items()))

    def leg(self, y: float) -> tuple[float, float]:
        """From where to where, mm from the middle, a leg reaches at a height below the crotch, as it is seen from in
        front; below the ankle as there."""
        found = []
        for side in (self._inside, self._outside):
            found.append(_between(side, min(max(y, side[0][0]), side[-1][0])))
        return found[0], found[1]

    def seen(self, y: float) -> float:
        """How wide what goes round the trunk at a height looks from in front, of its half: a body is no board. About
        0.69 at bust and waist, 0.74 at the hip, and all of it on the shoulder, where cloth lies across the body."""
        knots = (
            (-self._of("waist_to_hip"), 0.737),
            (0.0, 0.688),
            (self.underarm, 0.693),
            (self.tip.y - 10.0, 1.0),
        )
        return _between(knots, min(max(y, knots[0][0]), knots[-1][0]))

    # ---- the drawing --------------------------------------------------------------------------------------

    def arm_way(self) -> Vector:
        """The way the arm at the viewer's right points."""
        return Vector(math.cos(self.arms), -math.sin(self.arms))

    @property
    def hand(self) -> Point:
        """The middle of that hand."""
        return self._on_arm((325.0, 800.0))

    def _on_arm(self, spot: _Spot) -> Point:
        """A place of the measuring figure's arm on this one's: as far along from the shoulder point as the arm is long,
        as far aside as it is thick, and turned as this one hangs."""
        along = (_WRIST - _SHOULDER).unit()
        off = Point(*map(float, spot)) - Point(*map(float, SHOULDER[-1]))
        far = off.dot(along) * self._ratio("arm_length")
        raised = 1.0 if self.straight else min(1.0, (HANGING - self.arms) / _LEVELLED)
        aside = (along.cross(off) - _BULGE * raised) * self._ratio("upper_arm_girth")
        way = self.arm_way()
        return self.tip + way * far + way.left() * aside

    def items(self, view: View) -> list[Item]:
        """Its cloth-white shape and quiet lines, from the bottom up."""
        found: list[Item] = []
        neck, shoulder = self._run(NECK), self._run(SHOULDER)
        leg = [*self._run(SIDE), *self._run(FOOT), *self._run(INSIDE)]
        torso = [*neck, *shoulder, Line(shoulder[-1].end, leg[0].start), *leg]
        other = [curve.reversed() for curve in reversed(_mirrored(torso))]
        whole = (*torso, Line(torso[-1].end, other[0].start), *other, Line(other[-1].end, torso[0].start))
        if view == "back":
            found += self._head()
        arms = [self._arm(), _mirrored(self._arm())]
        for arm in arms:
            found += [Fill((*arm, Line(arm[-1].end, arm[0].start)), "frame", "body")]
            found += [Stroke(tuple(arm), "kept", name="body")]
        found.append(Fill(whole, "frame", "body"))
        for part in ([*neck, *shoulder], leg):
            found += [Stroke(tuple(part), "kept", name="body"), Stroke(tuple(_mirrored(part)), "kept", name="body")]
        found.append(Stroke((Line(leg[-1].end, _mirrored(leg)[-1].end),), "kept", name="body"))
        if view == "front":
            found += self._head()
        return found

    def _head(self) -> list[Item]:
        wide = self._ratio("head_girth")
        spots = [Point(x * wide, self.put((0.0, float(y))).y) for x, y in _HEAD]
        one = spline(spots)
        face = (*one, *(curve.reversed() for curve in reversed(_mirrored(one))))
        return [Fill(face, "frame", "body"), Stroke(face, "kept", closed=True, name="body")]

    def _arm(self) -> list[Curve]:
        return [curve for part in (ARM_OUT, HAND, ARM_IN) for curve in spline([self._on_arm(spot) for spot in part])]

    def _run(self, spots: Sequence[_Spot]) -> list[Curve]:
        return list(spline([self.put(spot) for spot in spots]))


def spline_spots(spots: Sequence[_Spot]) -> list[_Spot]:
    """Places close together on the curve through some places."""
    found = [p for curve in spline([Point(float(x), float(y)) for x, y in spots]) for p in curve.points(0.5)]
    return [(p.x, p.y) for p in found]


def _mirrored(curves: Sequence[Curve]) -> list[Curve]:
    flip = Motion.reflection(Point(0.0, 0.0), Point(0.0, 1.0))
    return [curve.moved(flip) for curve in curves]
