"""What is worn on no level of the trunk: a bag in the hand or over the shoulder, a hat on the head, at true scale
beside the body."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Literal

from kit.geometry import Point
from kit.picture.assembled import Assembled, of_kind
from kit.picture.drawing import Fill, Item
from kit.picture.place import slid
from kit.picture.put_on import on_piece
from kit.picture.round_hat import on_head, round_hat
from kit.picture.tied import handle_rows, handles
from kit.picture.wearer import Wearer

Carried = Literal["hand", "shoulder", "head"]
_ARM_PASSES = 240.0
"""mm of room above a bag, under its handles, from which it goes over the shoulder (common practice, no source)."""
_CLEAR = 40.0  # mm that a bag in the hand hangs clear of the floor, at least
_BREADTH = 0.53  # how wide a head looks from in front, of half its girth: it is longer than broad (figure's own)


def how_carried(garment: Assembled, wearer: Wearer) -> Carried | None:
    """How the thing is carried; None where nothing of it says so."""
    if any(flat.piece.guide_of("head_line") is not None for flat in garment.flats):
        return "head"
    if not of_kind(garment.pattern, "attach_handle") or not garment.flats:
        return None
    _, bottom, _, top = garment.box()
    apex = _apex(garment)
    long = apex - top > _ARM_PASSES or wearer.hand.y - (apex - bottom) < wearer.floor + _CLEAR
    return "shoulder" if long else "hand"


def _bag(garment: Assembled) -> list[Item]:
    found: list[Item] = []
    for flat in garment.flats:
        found += handles(flat, garment)
        found += on_piece(flat, garment)
        found += handle_rows(flat, garment)
    return found


def _apex(garment: Assembled) -> float:
    """The height of the highest place under the handles."""
    inner = [
        (min(c.start.x for c in item.curves), max(p.y for c in item.curves for p in c.points(0.5)))
        for flat in garment.near
        for item in handles(flat, garment)
        if isinstance(item, Fill)
    ]
    wide = max((strip.finished_width for strip in garment.pattern.strips), default=0.0) or 0.0
    return max((y for _, y in inner), default=garment.box()[3]) - wide


def carried_items(garment: Assembled, wearer: Wearer, how: Carried) -> list[Item]:
    """The thing where it is carried by the wearer's left, or on the head."""
    if how == "head":
        return _hat(garment, wearer)
    left = 1.0 if garment.view == "front" else -1.0
    x0, _, x1, _ = garment.box()
    if how == "hand":
        spot = Point(left * wearer.hand.x, wearer.hand.y - 10.0)
    else:
        spot = Point(left * (wearer.tip.x - 30.0), wearer.tip.y + 12.0)
    slide = spot - Point((x0 + x1) / 2, _apex(garment))
    return [slid(item, slide) for item in _bag(garment)]


def _hat(garment: Assembled, wearer: Wearer) -> list[Item]:
    """A hat whose crown is one ring as it stands; a hat of panels as a dome: the way up over it from the brow is a
    quarter of a circle."""
    flat = next(flat for flat in garment.flats if flat.piece.guide_of("head_line") is not None)
    brow = wearer.put((0.0, 1612.0)).y
    hat = round_hat(garment.pattern)
    if hat is not None:
        return on_head(hat, garment.view, brow, _BREADTH * math.pi / 2)
    line = flat.piece.guide_of("head_line")
    assert line is not None
    low = flat.put(line.start).y
    high = max(garment.box()[3] - low, 1.0)
    radius = 2 * high / math.pi

    def bent(p: Point) -> Point:
        up = p.y - low
        return Point(p.x * _BREADTH, brow + (radius * math.sin(up / radius) if up > 0 else up))

    found: list[Item] = []
    for each in garment.near:
        found += on_piece(replace(each, bent=bent), garment)
    return found
