"""Beside a sewing picture: the seam's cross-section, and a small plan of the whole."""

from __future__ import annotations

from collections.abc import Iterator

from kit.geometry import Line, Point
from kit.language import say
from kit.picture.drawing import Fill, Item, Label, Stroke, StrokeRole
from kit.picture.laid import Box, Placed
from kit.picture.place import Scaling, polyline, rectangle
from kit.sewing.scene import Section

_TALL = 1.2  # of its width that a window must be high to have the insets beside it
_GAP = 0.04


def panel(section: Section | None, placed: list[Placed], window: Box, whole: Box) -> tuple[list[Item], Box]:
    """The seam's cross-section and the plan of the whole: under a wide window beside each other, beside a tall one
    under each other. Each is parted from the next by white paper; the caption stands below its section."""
    x0, y0, x1, y1 = window
    wide, high = x1 - x0, y1 - y0
    tall = high > wide * _TALL
    items: list[Item] = [*_paper(window, max(wide, high) * 2)]
    frames: list[Box] = []
    gap = max(wide, high) * _GAP
    count = (section is not None) + bool(placed)
    if tall:
        across, left = max(wide * 0.34, high * 0.4), x1 + gap
        down = (high - gap * (count - 1)) / 2
        frames = [(left, y1 - (n + 1) * down - n * gap, left + across, y1 - n * (down + gap)) for n in range(count)]
    else:
        down, low = max(wide * 0.24, high * 0.3), y0 - gap
        share = 0.62 if section is not None else 0.38
        at = x0 + (wide - gap) * share
        frames = [(x0, low - down, at, low), (at + gap, low - down, x1, low)][:count]
    if section is not None:
        items.extend(_section_items(section, frames[0]))
    if placed:
        items.extend(_plan_items(placed, frames[-1], window, whole))
    items.append(Stroke(rectangle(*window), "page", closed=True))
    boxes = [window, *frames]
    bounds = (min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes))
    return items, bounds


def _paper(window: Box, far: float) -> Iterator[Fill]:
    """Paper round the window, over whatever is drawn beyond it."""
    x0, y0, x1, y1 = window
    yield Fill(rectangle(x0 - far, y0 - far, x0, y1 + far), "frame")
    yield Fill(rectangle(x1, y0 - far, x1 + far, y1 + far), "frame")
    yield Fill(rectangle(x0, y0 - far, x1, y0), "frame")
    yield Fill(rectangle(x0, y1, x1, y1 + far), "frame")


def _section_items(section: Section, frame: Box) -> list[Item]:
    xs = [x for ply in section.plies for x, _ in ply.path]
    ys = [y for ply in section.plies for _, y in ply.path]
    ys += [y for _, a, b in section.stitches for y in (a, b)]
    x0, x1, y0, y1 = min(xs) - 1.0, max(xs) + 1.0, min(ys) - 1.0, max(ys) + 1.0
    scale = min((frame[2] - frame[0]) * 0.94 / (x1 - x0), (frame[3] - frame[1]) * 0.86 / (y1 - y0))
    cx, cy = (frame[0] + frame[2]) / 2, (frame[1] + frame[3]) / 2
    ox, oy = cx - (x0 + x1) / 2 * scale, cy - (y0 + y1) / 2 * scale

    def at(x: float, y: float) -> Point:
        return Point(ox + x * scale, oy + y * scale)

    items: list[Item] = []
    roles: dict[str, StrokeRole] = {
        "main": "ply_main",
        "facing": "ply_facing",
        "interfacing": "ply_interfacing",
        "strip": "ply_strip",
        "lining": "ply_lining",
        "binding": "ply_strip",
        "zip": "ply_interfacing",
        "elastic": "ply_strip",
        "cord": "ply_strip",
    }
    for ply in section.plies:
        curves = polyline([at(x, y) for x, y in ply.path])
        role = roles.get(ply.stuff, "ply_main")
        items.append(Stroke(curves, role, thickness=0.72 * scale, name=f"section {ply.stuff}"))
    for x, a, b in section.stitches:
        items.append(Stroke((Line(at(x, a), at(x, b)),), "needle"))
    # The lowest cloth of the section is what the caption stands under, inside the width of the column.
    below = Line(Point(frame[0], oy + y0 * scale), Point(frame[2], oy + y0 * scale))
    items.append(Label(say("picture.section"), Point(cx, frame[1] - (frame[3] - frame[1])), "small", of=(below,)))
    return items


def _plan_items(placed: list[Placed], frame: Box, window: Box, whole: Box) -> list[Item]:
    """All layers small, with a frame around the part the picture shows."""
    wide, high = whole[2] - whole[0], whole[3] - whole[1]
    scale = min((frame[2] - frame[0]) * 0.86 / wide, (frame[3] - frame[1]) * 0.86 / high)
    centre = Point((frame[0] + frame[2]) / 2, (frame[1] + frame[3]) / 2)
    to = Point(centre.x - (whole[0] + whole[2]) / 2 * scale, centre.y - (whole[1] + whole[3]) / 2 * scale)
    small = Scaling(scale, to)
    items: list[Item] = []
    for p in placed:
        curves = small.curves(p.outline)
        items.append(Fill(curves, "paper"))
        items.append(Stroke(curves, "kept", closed=True))
    low, far = small.point(Point(window[0], window[1])), small.point(Point(window[2], window[3]))
    x0, y0, x1, y1 = max(low.x, frame[0]), max(low.y, frame[1]), min(far.x, frame[2]), min(far.y, frame[3])
    items.append(Stroke(rectangle(x0, y0, x1, y1), "press", closed=True))
    return items
