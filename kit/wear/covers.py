"""Findings about what a front that opens covers: a wrap over the bust and the thigh, buttons at the bust."""

from __future__ import annotations

import math
from itertools import pairwise

from kit.diagnostic import Diagnostic, measure, measured, message
from kit.sewing.operations.buttons import Buttons
from kit.sewing.operations.fasteners import Fasteners
from kit.sewing.operations.strips import AttachStrip
from kit.sewing.order import operations
from kit.wear.girth import Worn
from kit.wear.needs import taken
from kit.wear.passage import has_neck
from kit.wear.told import told

THIGH = 0.2
"""The part of the hip by which the fronts of a wrap lie over one another at the thigh, at least, so that a step and a
chair do not part them (common practice, no source)."""
AT_BUST = 60.0
"""mm from the bust within which a front that is buttoned has a button (common practice, no source)."""


GAPES, SHORT = 15.0, 25.0
"""mm by which the edge of a wrap may be longer than the body, before it stands away, and shorter, before it pulls: it
lies on the slant and gives (common practice, no source)."""
_HIGH, _BEYOND = 200.0, 20.0  # mm of a front from waist to neck point, and past the centre, at least


def wraps(worn: Worn) -> list[Diagnostic]:
    """Fronts that only ties hold and that do not meet under the bust, or part at the thigh."""
    torso = {piece.name for piece in worn.torso}
    ties = [each for _, each in operations(worn.pattern) if isinstance(each, AttachStrip) and each.to.piece in torso]
    if not ties or _buttons(worn) or any(isinstance(each, Fasteners) for _, each in operations(worn.pattern)):
        return []
    return [*_under_bust(worn, ties[0].to.piece), *_thigh(worn, ties[0].to.piece)]


def _under_bust(worn: Worn, piece: str) -> list[Diagnostic]:
    level = worn.heights.get("under_bust")
    waist = worn.round(0.0)
    if level is None or not has_neck(worn) or waist is None or not waist.overlap:
        return []
    at = worn.round(level)
    if at is None or (at.closed and at.overlap):
        return []
    heights = [float(height) for height in range(0, int(level), 5)]
    meet = max((height for height in heights if (each := worn.round(height)) and each.overlap), default=0.0)
    says = message("wear.wrap_low", meets=measured(meet), bust=measured(level))
    can = message("wear.wrap_low_do", amount=measured(level - meet))
    return [told("wrap_low", "warning", says, can, amount=level - meet, piece=piece)]


def _thigh(worn: Worn, piece: str) -> list[Diagnostic]:
    hip, level = taken(worn.body, "hip_girth"), worn.heights.get("thigh")
    if hip is None or level is None or worn.legs or worn.span[0] > level - 20.0:
        return []
    at, need = worn.round(level), THIGH * hip
    if at is None or not at.closed or not at.overlap or at.overlap >= need - 5.0:
        return []
    says = message("wear.wrap_thigh", has=measured(at.overlap), least=measured(need))
    can = message("wear.wrap_thigh_do", half=measured((need - at.overlap) / 2))
    return [told("wrap_thigh", "warning", says, can, amount=need - at.overlap, piece=piece, measures=("hip_girth",))]


def gape(worn: Worn) -> list[Diagnostic]:
    """The free neck edge of a front that wraps, against the body it lies on: heights on paper are taken as the body's,
    measured from the neck over the bust to the waist, widths as they are. A bodice lengthened or shortened above the
    waist is worn by somebody that much longer or shorter there than the size it is drafted in."""
    measured_there = {each.name for each in worn.body.measures if not each.estimated}
    if "front_waist_length" not in measured_there or worn.gives > 1.1:
        return []
    for piece in worn.torso:
        neck = piece.point_of("neck_point")
        high = worn.up(piece, neck.y) if neck is not None else 0.0
        if not piece.cut.mirrored or high < _HIGH:
            continue
        longer = (worn.body["front_waist_length"] + _fitted(worn, "above_waist")) / high
        for edge in piece.edges:
            points = edge.path.points(0.5)
            if edge.role != "neck" or min(point.x for point in points) > -_BEYOND:
                continue
            body = sum(math.hypot(b.x - a.x, (b.y - a.y) * longer) for a, b in pairwise(points))
            more = edge.path.length - body
            if -SHORT <= more <= GAPES:
                return []
            kind = "wrap_gapes" if more > 0 else "wrap_pulls"
            says = message(f"wear.{kind}", has=measured(edge.path.length), body=measured(body))
            can = message(f"wear.{kind}_do", amount=measured(abs(more)))
            place = {"piece": piece.name, "edge": edge.name}
            return [told(kind, "warning", says, can, amount=abs(more), measures=("front_waist_length",), **place)]
    return []


def _fitted(worn: Worn, place: str) -> float:
    """mm by which fit changes made the pieces longer at that place."""
    set_to = {each.name: float(each.value) for each in worn.pattern.values}
    return set_to.get(f"lengthen_{place}", 0.0) - set_to.get(f"shorten_{place}", 0.0)


def _buttons(worn: Worn) -> list[tuple[str, str, float]]:
    """(step, piece, height above the waist) of every button on the trunk."""
    torso = {piece.name: piece for piece in worn.torso}
    found = []
    for record, operation in operations(worn.pattern):
        for place in operation.places if isinstance(operation, Buttons) else ():
            mark = place.mark
            at = mark.point or (mark.path.at(mark.path.length / 2) if mark.path is not None else None)
            if place.piece in torso and at is not None:
                found.append((str(record.key), place.piece, worn.up(torso[place.piece], at.y)))
    return found


def buttons(worn: Worn) -> list[Diagnostic]:
    """A front that is buttoned over the bust and has no button near it."""
    level, found = worn.heights.get("bust"), _buttons(worn)
    at = worn.round(level - 3.0) if level is not None else None
    if level is None or at is None or not at.closed or not at.overlap:
        return []
    heights = [height for _, _, height in found]
    if not heights or not min(heights) < level < max(heights):
        return []
    step, piece, height = min(found, key=lambda each: abs(each[2] - level))
    off = abs(height - level)
    if off <= AT_BUST:
        return []
    says = message("wear.button_bust", off=measured(off), most=measured(AT_BUST), part=measure("bust_girth"))
    can = message("wear.button_bust_do", height=measured(level))
    return [told("button_bust", "warning", says, can, amount=off - AT_BUST, step=step, piece=piece)]
