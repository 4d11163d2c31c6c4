"""Findings about what a front that opens covers: a wrap over the bust and the thigh, buttons at the bust."""

from __future__ import annotations

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
