"""The finished garment on the body it was drafted for, from the front and the back at one scale.

The body is a quiet outline from its own measures (kit/picture/wearer.py); the garment is the one put together from the
end of the sewing, bent round it (kit/picture/on_body.py), with its ties tied. What hangs on no level of the body is
carried in the hand, over the shoulder or on the head (kit/picture/carried.py). Anything else is not drawn on a body.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from kit.geometry import Curve, Vector
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.picture.assembled import Assembled, View, assembled
from kit.picture.carried import carried_items, how_carried
from kit.picture.chains import drawn
from kit.picture.drawing import Drawing, Fill, Item, Stroke
from kit.picture.drawn_up import folds
from kit.picture.hung_on import neck_strap, open_behind, set_in_sleeves
from kit.picture.on_body import Bent, on_body
from kit.picture.place import slid
from kit.picture.placed import Box, box_of
from kit.picture.put_on import on_piece
from kit.picture.tied import belted, loops, ties_behind, ties_over
from kit.picture.wearer import Wearer
from kit.wear.girth import Worn

_BETWEEN = 60.0  # mm between the two views
_BELOW = 120.0  # mm of the body below the hem or the crotch, where the picture of a short garment ends
_EDGE = 12.0
_BODY = "body"


@dataclass(frozen=True)
class WornView:
    """One view of a garment on its body: the `wearer`, the `garment` bent round it (laid flat where it is carried), and
    all that is drawn from the bottom up; what is drawn of the body is named "body". `how` is "worn" round the body, or
    how it is carried."""

    wearer: Wearer
    garment: Assembled
    items: tuple[Item, ...]
    how: str = "worn"


def worn_view(pattern: Pattern, view: View) -> WornView | None:
    """The garment on its body seen from the front or the back; None where nothing of it says how it is worn."""
    garment = assembled(pattern, view, worn=True)
    if not garment.flats:
        return None
    found = on_body(garment, Worn(pattern, garment.state))
    if found is None:
        wearer = Wearer(pattern.body)
        how = how_carried(garment, wearer)
        if how is None:
            return None
        thing, body = carried_items(garment, wearer, how), wearer.items(view)
        return WornView(wearer, garment, tuple([*thing, *body] if how == "hand" else [*body, *thing]), how)
    seen, wearer = found
    return WornView(wearer, seen, tuple(_worn(seen, wearer, view)))


def _worn(seen: Assembled, wearer: Wearer, view: View) -> list[Item]:
    items: list[Item] = []
    sleeves = {flat.piece.name for flat in seen.flats if flat.piece.role == "sleeve"}
    for flat in seen.flats:
        if flat.near or flat.piece.name in sleeves:
            continue
        items += on_piece(flat, seen)
        for facing in seen.within:
            if facing.motion == flat.motion and facing.sides == flat.sides:
                ring = drawn(facing.ring, True)
                items += [Fill(ring, "facing", facing.piece.name)]
                items += [Stroke(ring, "edge", closed=True, name=f"{facing.piece.name}.{facing.side}")]
    items += wearer.items(view)
    items += set_in_sleeves(seen, wearer)
    items += neck_strap(seen, wearer)
    for flat in seen.near:
        if flat.piece.name not in sleeves:
            items += on_piece(flat, seen)
            items += folds(flat, seen.pattern)
    if not any(isinstance(flat.bent, Bent) and flat.bent.limits for flat in seen.flats):
        items += ties_behind(seen)
    items += open_behind(seen)
    items += belted(seen)
    items += ties_over(seen)
    for _, fill, stroke in loops(seen):
        items += [fill, stroke]
    return items


def worn_drawing(pattern: Pattern) -> Drawing | None:
    """Front and back of the garment on its body, beside each other at one scale and on one level; None where nothing of
    it says how it is worn."""
    pair = worn_views(pattern)
    return None if pair is None else beside(pattern, *pair)


def worn_views(pattern: Pattern) -> tuple[WornView, WornView] | None:
    """The garment on its body from the front and the back; None where nothing of it says how it is worn."""
    one, two = worn_view(pattern, "front"), worn_view(pattern, "back")
    return None if one is None or two is None else (one, two)


def beside(pattern: Pattern, one: WornView, two: WornView) -> Drawing:
    """Two views beside each other, at one scale and on one level."""
    boxes = [_box(view) for view in (one, two)]
    slide = Vector(boxes[0][2] + _BETWEEN - boxes[1][0], 0.0)
    items = (*one.items, *(slid(item, slide) for item in two.items))
    x0, x1 = boxes[0][0], boxes[1][2] + slide.x
    y0, y1 = min(box[1] for box in boxes), max(box[3] for box in boxes)
    low = max(y0 - _EDGE, _cut_off(one, two))
    alt = say(f"picture.on_body_{one.how}", title=pattern.lesson.title, body=pattern.body.said)
    bounds = (x0 - _EDGE, low, x1 + _EDGE, y1 + _EDGE)
    return Drawing(items, alt=alt, title=pattern.lesson.title, bounds=bounds)


def _cut_off(*views: WornView) -> float:
    """Where the picture ends below: at the feet, or below a garment that ends above the legs, its ties in full."""
    cloth = [box_of(_curves(item for item in view.items if not _is_body(item)))[1] for view in views]
    wearer = views[0].wearer
    crotch = wearer.put((0.0, 762.0)).y
    if views[0].how == "head":
        return wearer.underarm
    hem = min(view.garment.box()[1] for view in views)
    if views[0].how != "worn" or hem < crotch:
        return wearer.floor - 4 * _EDGE
    return min(hem - _BELOW, crotch - _BELOW, *(low - _EDGE for low in cloth))


def _box(view: WornView) -> Box:
    """What a view takes; under a hat, head and shoulders."""
    box = box_of(_curves(view.items))
    shoulders = view.wearer.tip.x + 55.0
    return (-shoulders, box[1], shoulders, box[3]) if view.how == "head" else box


def _is_body(item: Item) -> bool:
    return isinstance(item, Fill | Stroke) and item.name == _BODY


def _curves(items: Iterable[Item]) -> tuple[Curve, ...]:
    return tuple(c for item in items if isinstance(item, Fill | Stroke) for c in item.curves)
