"""The column beside a sewing picture: the seam's cross-section, and a small plan of the whole."""

from __future__ import annotations

from kit.geometry import Line, Point
from kit.language import say
from kit.picture.drawing import Fill, Item, Label, Stroke, StrokeRole
from kit.picture.laid import Box, Placed
from kit.picture.place import Scaling, polyline, rectangle
from kit.sewing.scene import Section


def panel(section: Section | None, placed: list[Placed], window: Box, whole: Box) -> tuple[list[Item], Box]:
    """A column at the right with the cross-section above and the plan of the whole below."""
    high = window[3] - window[1]
    wide = max((window[2] - window[0]) * 0.3, high * 0.36)
    left, right = window[2], window[2] + wide
    items: list[Item] = [Fill(rectangle(left, window[1] - high, right + wide, window[3] + high), "frame")]
    gap = wide * 0.05
    middle = (window[1] + window[3]) / 2 if section is not None and placed else None
    if section is not None:
        low = middle + gap / 2 if middle is not None else window[3] - min(high, wide * 0.8)
        items.extend(_section_items(section, (left + gap, low, right, window[3])))
    if placed:
        top = middle - gap / 2 if middle is not None else window[3]
        items.extend(_plan_items(placed, (left + gap, window[1], right, top), window, whole))
    items.append(Stroke(rectangle(*window), "page", closed=True))
    edge = wide * 0.01
    return items, (window[0] - edge, window[1] - edge, right + edge, window[3] + edge)


def _section_items(section: Section, frame: Box) -> list[Item]:
    xs = [x for ply in section.plies for x, _ in ply.path]
    ys = [y for ply in section.plies for _, y in ply.path]
    ys += [y for _, a, b in section.stitches for y in (a, b)]
    x0, x1, y0, y1 = min(xs) - 1.0, max(xs) + 1.0, min(ys) - 1.0, max(ys) + 1.0
    scale = min((frame[2] - frame[0]) * 0.9 / (x1 - x0), (frame[3] - frame[1]) * 0.7 / (y1 - y0))
    cx, cy = (frame[0] + frame[2]) / 2, (frame[1] + frame[3]) / 2
    ox, oy = cx - (x0 + x1) / 2 * scale, cy - (y0 + y1) / 2 * scale

    def at(x: float, y: float) -> Point:
        return Point(ox + x * scale, oy + y * scale)

    items: list[Item] = [Stroke(rectangle(*frame), "page", closed=True)]
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
    foot = Point(cx, frame[1] + (frame[3] - frame[1]) * 0.08)
    items.append(Label(say("picture.section"), foot, "small"))
    return items


def _plan_items(placed: list[Placed], frame: Box, window: Box, whole: Box) -> list[Item]:
    """All layers small, with a frame around the part the picture shows."""
    wide, high = whole[2] - whole[0], whole[3] - whole[1]
    scale = min((frame[2] - frame[0]) * 0.86 / wide, (frame[3] - frame[1]) * 0.86 / high)
    centre = Point((frame[0] + frame[2]) / 2, (frame[1] + frame[3]) / 2)
    to = Point(centre.x - (whole[0] + whole[2]) / 2 * scale, centre.y - (whole[1] + whole[3]) / 2 * scale)
    small = Scaling(scale, to)
    items: list[Item] = [Stroke(rectangle(*frame), "page", closed=True)]
    for p in placed:
        curves = small.curves(p.outline)
        items.append(Fill(curves, "paper"))
        items.append(Stroke(curves, "kept", closed=True))
    low, far = small.point(Point(window[0], window[1])), small.point(Point(window[2], window[3]))
    x0, y0, x1, y1 = max(low.x, frame[0]), max(low.y, frame[1]), min(far.x, frame[2]), min(far.y, frame[3])
    items.append(Stroke(rectangle(x0, y0, x1, y1), "press", closed=True))
    return items
