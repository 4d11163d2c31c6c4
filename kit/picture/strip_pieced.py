"""Two lengths of a strip being joined: laid right sides together and stitched, and below it opened out. The long edges
go on beyond the picture, so their far ends are drawn open."""

from __future__ import annotations

import math

from kit.geometry import Line, Point, Vector
from kit.language import say
from kit.picture.drawing import Dot, Fill, FillRole, Item, Label, Stroke
from kit.picture.laid import Box, box_of, grown
from kit.picture.place import polyline
from kit.picture.stitching import START
from kit.piece.piece import Strip

ARM = 1.6
"""Widths of a strip that are shown of it beyond the seam."""
SHOWN = 0.3
"""Share of its width up to which an allowance is drawn as wide as it is; a wider one would hide the strip."""


def strip_pieced(strip: Strip, way: str) -> tuple[list[Item], Box]:
    """The two lengths, `way` "bias", "corner" or "straight", and the box around both pictures of them."""
    wide, allowance = strip.width, min(strip.join_allowance, SHOWN * strip.width)
    laid = _straight(strip, wide, allowance) if way == "straight" else _angled(strip, wide, allowance, way == "bias")
    around = box_of(tuple(curve for item in laid if isinstance(item, Fill) for curve in item.curves))
    top = around[1] - wide * 1.1
    opened = _opened(strip, wide, allowance, top - wide, way == "straight")
    whole = box_of(tuple(curve for item in (*laid, *opened) if isinstance(item, Fill) for curve in item.curves))
    middle = (whole[0] + whole[2]) / 2
    names = [
        Label(say("picture.strip_laid"), Point(middle, whole[3] + wide * 0.45), "name"),
        Label(say("picture.strip_opened"), Point(middle, top + wide * 0.45), "name"),
    ]
    return [*laid, *opened, *names], grown(whole, wide * 0.9)


def _angled(strip: Strip, wide: float, allowance: float, bias: bool) -> list[Item]:
    """One length from its right side, running to the left, and on it the other from its wrong side, running down. Their
    long edges cross on the stitch line, which lies at 45 degrees."""
    off = allowance * math.sqrt(2.0) if bias else 0.0  # from the tip of a slanted end to the crossing, along the edge
    far = -wide - off - ARM * wide
    left, right = -wide - off, -off
    end = [Point(0.0, 0.0), Point(-wide, wide)] if bias else [Point(0.0, 0.0), Point(0.0, wide)]
    under = [Point(far, 0.0), *end, Point(far, wide)]
    tips = [Point(left, wide + off), Point(right, off)] if bias else [Point(left, wide), Point(right, wide)]
    over = [Point(left, -ARM * wide), *tips, Point(right, -ARM * wide)]
    row = Line(Point(left, wide), Point(right, 0.0))
    return [*_length(strip, under, "strip"), *_length(strip, over, "wrong_side"), Stroke((row,), "row"), _begin(row)]


def _straight(strip: Strip, wide: float, allowance: float) -> list[Item]:
    """The other length on the first, its end on the same line; a little of the under one shows beside it."""
    far, shift = -3 * ARM * wide, wide * 0.06
    under = [Point(far, shift), Point(0.0, shift), Point(0.0, wide + shift), Point(far, wide + shift)]
    over = [Point(far, 0.0), Point(0.0, 0.0), Point(0.0, wide), Point(far, wide)]
    row = Line(Point(-allowance, wide), Point(-allowance, 0.0))
    return [*_length(strip, under, "strip"), *_length(strip, over, "wrong_side"), Stroke((row,), "row"), _begin(row)]


def _opened(strip: Strip, wide: float, allowance: float, low: float, straight: bool) -> list[Item]:
    """The joined strip from its wrong side: the seam, its allowances pressed open and cut off along the edges."""
    lean, arm = 0.0 if straight else wide, 2.0 * ARM * wide
    back = allowance if straight else allowance * math.sqrt(2.0)
    foot, head = Point(0.0, low), Point(-lean, low + wide)
    far, near = Point(-arm - wide, low), Point(arm, low)
    up = Vector(0.0, wide)
    items = _length(strip, [far, near, near + up, far + up], "wrong_side", ends=(False, False))
    for way in (-1.0, 1.0):
        aside = Vector(way * back, 0.0)
        flap = polyline([foot, foot + aside, head + aside, head, foot])
        items += [Fill(flap, "strip", strip.name), Stroke(flap, "edge", closed=True)]
    items.append(Stroke((Line(foot, head),), "edge"))
    middle = foot.mid(head)
    reach = Vector(back * 1.6, 0.0)
    items += [Stroke((Line(middle, middle + way),), "press", arrow="end", name="press out") for way in (reach, -reach)]
    return items


def _length(strip: Strip, corners: list[Point], role: FillRole, ends: tuple[bool, bool] = (False, True)) -> list[Item]:
    """A length whose corners are its far end, its near end and its far end again; its edge is drawn at the ends asked
    for alone."""
    first, second, third, fourth = corners
    edges = [Line(first, second), Line(third, fourth)]
    edges += [Line(second, third)] * ends[1] + [Line(fourth, first)] * ends[0]
    shape = polyline([*corners, first])
    return [Fill(shape, role, strip.name), *(Stroke((line,), "edge", name=strip.name) for line in edges)]


def _begin(row: Line) -> Dot:
    return Dot(row.start, "new", START)
