"""Points, lines, curves and outlines in millimetres.

All values are immutable, hashable and picklable, y up, angles in radians counter-clockwise from +x. Lines and
arcs are exact; cubics keep to `TOLERANCE` (0.01 mm). Bad shapes raise `kit.errors.KitError` in plain words.
"""

from kit.geometry.arc import Arc
from kit.geometry.cubic import Cubic
from kit.geometry.curve import Bounds, Curve
from kit.geometry.line import Line
from kit.geometry.meet import Meeting, meet, meet_lines
from kit.geometry.motion import Motion
from kit.geometry.outline import Outline
from kit.geometry.parallels import beside, parallel
from kit.geometry.path import Path
from kit.geometry.point import DOWN, LEFT, RIGHT, TOLERANCE, UP, Point, Vector, place
from kit.geometry.region import Region, inside_length
from kit.geometry.rounding import bent_clear, rounded, tightest_of
from kit.geometry.square import square_curve

__all__ = [
    "Point",
    "Vector",
    "UP",
    "DOWN",
    "LEFT",
    "RIGHT",
    "TOLERANCE",
    "place",
    "Motion",
    "Bounds",
    "Curve",
    "Line",
    "Arc",
    "Cubic",
    "Meeting",
    "meet",
    "meet_lines",
    "Path",
    "parallel",
    "beside",
    "square_curve",
    "bent_clear",
    "rounded",
    "tightest_of",
    "Outline",
    "Region",
    "inside_length",
]
