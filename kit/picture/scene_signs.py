"""The signs of a sewing picture: where the iron presses, that the work was turned over, where the cross-section is."""

from __future__ import annotations

import math

from kit.geometry import Arc, Line, Path, Point, Vector
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Fill, Item, Label, Stroke
from kit.picture.lettering import text_width
from kit.picture.place import rectangle, widths_of
from kit.picture.placed import Box, PlacedLayer, find
from kit.picture.theme import THEME
from kit.sewing.run import Run
from kit.sewing.scene import Row, Scene, Thing
from kit.sewing.spans import path_of

_SHORT = 2.5  # times as long as its arrows a run is at least that has three of them
_WORDS = 30.0  # CSS px of height in which a line of small words stands free, where names beside the cloth take room too
_GROWN = 1.3  # times as large beside its lines a text may become, where names round them take room
_STEP = 5.0  # mm between the places of a line that are looked at
TURN, CUT = "turn over", "cut mark"
"""The names of the signs."""


def seen_part(path: Path, window: Box) -> tuple[float, float] | None:
    """From where to where (mm along it) a line of the picture is seen, between its first and its last place in the
    window."""
    count = max(int(path.length / _STEP), 40)
    inside = [
        i / count
        for i in range(count + 1)
        if window[0] <= (q := path.at(path.length * i / count)).x <= window[2] and window[1] <= q.y <= window[3]
    ]
    return (inside[0] * path.length, inside[-1] * path.length) if len(inside) > 1 else None


def press_items(
    run: Run, way: str, placed: list[PlacedLayer], pattern: Pattern, extent: float, window: Box
) -> list[Item]:
    """Three short arrows from the stitching of a run: into its piece, or out of it; one where it is short itself."""
    p = find(placed, run, None)
    if p is None:
        return []
    path = path_of(pattern, run)
    lies = p.lay(path, run.side)
    part = seen_part(lies, window) or (0.0, lies.length)
    turned = max((depth for edge, depth in p.layer.turn if edge in run.edges), default=0.0)
    wide = max((widths_of(p.piece)[edge] for edge in run.edges), default=0.0)
    reach = turned * 0.8 if turned else max(wide * 0.85, extent * 0.055)
    reach = max(reach, extent * 0.045)
    inner = p.inner(path)[1]
    left = path.normal_at(path.length / 2).dot(inner) > 0
    out: list[Item] = []
    for share in (0.15, 0.5, 0.85) if part[1] - part[0] > _SHORT * reach else (0.5,):
        at = part[0] + (part[1] - part[0]) * share
        own = min(at / lies.length, 1.0) * path.length
        step = path.normal_at(own) * (2.0 if left else -2.0)
        foot = p.point(path.at(own), run.side)
        into = (p.point(path.at(own) + step, run.side) - foot).unit()
        tip = foot + into * (reach if way == "in" else -reach)
        out.append(Stroke((Line(foot, tip),), "press", arrow="end", name=f"press {way}"))
    return out


def cut_mark(scene: Scene, placed: list[PlacedLayer], pattern: Pattern, extent: float, window: Box) -> list[Item]:
    """A short stroke on either side of the row of this step, or of the run it is about, where the cross-section beside
    the picture is taken."""
    found: list[Row | Thing] = [thing for thing in scene.things if thing.kind in ("binding", "tower") and thing.of]
    found += [row for row in scene.rows if row.ink == "new" and row.line is not None]
    row = found[0] if found else None  # across what is sewn on, else across its row
    run = row.run if row is not None else scene.cut or scene.focus
    p = find(placed, run, None) if run is not None else None
    if run is None or p is None:
        return []
    lies = p.lay(row.line if row is not None and row.line is not None else path_of(pattern, run), run.side)
    part = seen_part(lies, window)
    if part is None:
        return []
    at = part[0] + (part[1] - part[0]) * 0.88
    return cut_mark_at(lies.at(at), lies.normal_at(at), lies.tangent_at(at), extent)


def cut_mark_at(foot: Point, way: Vector, along: Vector, extent: float) -> list[Item]:
    """The sign of a cut through `foot` in the direction `way`, looked at against `along` (unit vectors)."""
    near, far, look = extent * 0.035, extent * 0.07, along * (-extent * 0.03)
    found: list[Item] = []
    for side in (1.0, -1.0):  # as in a plan: the ends of the cut, and arrows the way it is looked at
        inner, outer = foot + way * (near * side), foot + way * (far * side)
        found.append(Stroke((Line(inner, outer),), "symbol", name=CUT))
        found.append(Stroke((Line(outer, outer + look),), "symbol", arrow="end", name=CUT))
    return found


def turned_over(window: Box, px: float) -> tuple[list[Item], Box]:
    """A bent arrow below the picture at its left, and what it means; with the window that has room for both, wider than
    its cloth where the words are. `px` is how many mm of the picture a CSS px is: words do not become smaller with
    it."""
    x0, y0, x1, y1 = window
    words, em = say("picture.turn_over"), THEME.texts["small"].size * px * _GROWN
    size = max(max(x1 - x0, y1 - y0) * 0.042, _WORDS * px / 3.0)
    foot, right = y0 - size * 3.0, max(x1, x0 + size * 3.6 + text_width(words, em) * 1.15)
    centre = Point(x0 + size * 1.4, foot + size * 1.5)
    bow = Arc(centre, size, math.radians(200), math.radians(-220))
    label = Label(words, centre + Vector(size * 1.8, 0.0), "small", anchor="start")
    grounds = [rectangle(x0 - size, foot - size * 40, right + size, y0)]
    grounds += [rectangle(x1, y0, right + size, y1 + size)] if right > x1 else []
    items: list[Item] = [Fill(ground, "frame") for ground in grounds]
    return [*items, Stroke((bow,), "symbol", arrow="end", name=TURN), label], (x0, foot, right, y1)


def outside(item: Item, window: Box) -> bool:
    """Whether an item is a pressing arrow that starts beside the window."""
    if not isinstance(item, Stroke) or item.role != "press":
        return False
    start = item.curves[0].start
    return not (window[0] <= start.x <= window[2] and window[1] <= start.y <= window[3])


def around(window: Box, items: list[Item]) -> Box:
    """The window, wide enough for every pressing arrow that starts in it."""
    x0, y0, x1, y1 = window
    for item in items:
        if isinstance(item, Stroke) and item.role == "press":
            start, tip = item.curves[0].start, item.curves[-1].end
            if x0 <= start.x <= x1 and y0 <= start.y <= y1:
                room = 0.2 * start.distance(tip)
                x0, y0 = min(x0, tip.x - room), min(y0, tip.y - room)
                x1, y1 = max(x1, tip.x + room), max(y1, tip.y + room)
    return x0, y0, x1, y1
