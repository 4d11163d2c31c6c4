"""A ring and what is sewn to it, drawn as they stand and seen a little from above: discs and brims level, tubes with
their near side, and the row round them, dashed where it lies behind."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

from kit.geometry import Curve, Line, Motion, Path, Point, Vector
from kit.lesson.pattern import Pattern
from kit.picture.chains import Chain, drawn, inside, whole_steps
from kit.picture.cloth_items import OTHER, cloth
from kit.picture.drawing import Dot, Fill, Item, Stroke, StrokeRole
from kit.picture.place import widths_of
from kit.picture.placed import Box, PlacedLayer, box_of, grown
from kit.picture.scene_signs import cut_mark_at
from kit.picture.stitching import ROLES, row_signs
from kit.piece.piece import Piece, Side
from kit.sewing.run import Run
from kit.sewing.scene import Layer, RoundLie, Row, Scene, Thing
from kit.sewing.spans import sides_of

_SEEN, _HIGH = 0.42, 0.9  # of a circle's depth and of a height, seen from 25 degrees above
_SEAM = math.radians(-35.0)
"""Where the seam lies that a ring is closed by: at the right, on the near side."""
_STEPS = 72
_PINS = 8
_OVERLAP = 0.02  # of the way round between a row's start and end, so that both are seen
_SLIDE = 0.014  # of the picture by which an allowance peeps out from below another
_ROOM = 0.06


@dataclass(frozen=True)
class _Shown:
    """One layer with its outline: what covers what lies behind it."""

    layer: Layer
    lie: RoundLie
    placed: PlacedLayer
    side: Side
    wide: float  # the allowance of the edge that is worked at, where it is a cut edge
    short: float = 0.0  # mm by which it is shown shorter, so that what is below shows

    @property
    def piece(self) -> Piece:
        return self.placed.piece

    @property
    def out(self) -> float:
        """+1 where the piece goes outward from its edge, -1 where it goes inward."""
        return 1.0 if self.lie.others and self.lie.far[0] > self.lie.near[0] else -1.0

    def at(self, off: float) -> tuple[float, float]:
        """Radius and height of the circle `off` mm into the piece from its edge, in its allowance below 0."""
        (r0, z0), (r1, z1) = self.lie.near, self.lie.far
        if self.lie.level:
            return r0 + self.out * off, z0
        if off < 0:
            return (r0 - off, z0) if z1 > z0 else (r0, z0 - off)
        share = off / max(math.hypot(r1 - r0, z1 - z0), 1e-6)
        return r0 + (r1 - r0) * share, z0 + (z1 - z0) * share


def is_round(scene: Scene) -> bool:
    """Whether a scene is seen in the round."""
    return any(layer.round is not None for layer in scene.layers)


def round_items(scene: Scene, pattern: Pattern) -> tuple[list[Item], list[PlacedLayer], Box]:
    """What is drawn, the layers with their outlines, and the window."""
    lies = [layer.round for layer in scene.layers if layer.round is not None]
    size = 2.0 * max(max(lie.near[0], lie.far[0]) for lie in lies)
    shown: list[_Shown] = []
    items: list[Item] = []
    for layer in scene.layers:
        if layer.round is not None:
            over = layer.round.work and layer.round.level and any(s.lie.work and s.lie.level for s in shown)
            each = _shown(layer, layer.round, pattern, size * _SLIDE if over else 0.0)
            items += _cloth(each, shown, size * _SLIDE)
            shown.append(each)
    for number, each in enumerate(shown):
        covers = [other.placed for other in shown[number + 1 :]]
        radius, height = each.at(-each.wide)
        outline = _arc((radius * 0.97, height), 0.0, 2 * math.pi)
        if each.lie.level and all(any(_covered(q, over) for over in covers) for q in outline):
            items.append(Stroke(_circle(each.lie.near, 0.0, math.pi), "hidden", name=f"below {each.piece.name}"))
    box = box_of(tuple(c for s in shown for part in (s.placed.outline, *s.placed.flaps) for c in part))
    window = grown(box, size * _ROOM)
    rows = list(dict.fromkeys(replace(row, run=replace(row.run, side=None)) for row in scene.rows))
    halves = {replace(row, run=replace(row.run, side=None)): row.run.side for row in reversed(scene.rows)}
    for row in rows:
        items += _row(row, halves[row], shown, size, window)
    for run in scene.pins[:1]:
        items += _pins(run.piece, shown, size)
    items += _notches(shown)
    for thing in scene.things:
        items += _clips(thing, shown)
    if scene.section is not None:
        items += _mark(scene, shown, size)
    return items, [s.placed for s in shown], window


def _shown(layer: Layer, lie: RoundLie, pattern: Pattern, short: float) -> _Shown:
    piece = pattern.piece(layer.run.piece)
    side = layer.run.side or sides_of(pattern, layer.run)[-1]
    placed = PlacedLayer(layer, piece, side, Motion.identity(), seen_up=layer.up)
    wide = widths_of(piece)[lie.edge] if lie.raw[0] and lie.work else 0.0
    found = _Shown(layer, lie, placed, side, wide, short)
    placed.outline = _outline(found)
    return found


# ---- circles --------------------------------------------------------------------------------------------------


def _spot(circle: tuple[float, float], turn: float) -> Point:
    radius, height = circle
    return Point(radius * math.cos(turn), height * _HIGH + radius * math.sin(turn) * _SEEN)


def _arc(circle: tuple[float, float], start: float, end: float) -> Chain:
    count = max(whole_steps(abs(end - start), 2 * math.pi / _STEPS), 2)
    return [_spot(circle, start + (end - start) * i / count) for i in range(count + 1)]


def _circle(circle: tuple[float, float], start: float = 0.0, end: float = 2 * math.pi) -> tuple[Line, ...]:
    return drawn(_arc(circle, start, end))


# ---- cloth ----------------------------------------------------------------------------------------------------


def _outline(s: _Shown) -> tuple[Line, ...]:
    """What a layer covers: a disc, a level ring with its hole, the near side of a tube, or the mouth one looks into."""
    near, far = s.at(s.short - s.wide) if s.lie.level else s.lie.near, s.lie.far
    if s.lie.inside:
        return _circle(s.lie.near)
    if s.lie.level:
        if not s.lie.others:
            return _circle(near)
        outer, inner = (far, near) if s.out > 0 else (near, far)
        ring = [*_arc(outer, _SEAM, _SEAM - 2 * math.pi), *_arc(inner, _SEAM, _SEAM + 2 * math.pi)]
        return drawn(ring, True)
    upper, lower = (far, near) if far[1] > near[1] else (s.at(s.short - s.wide), far)
    return drawn([*_arc(upper, math.pi, 2 * math.pi), *_arc(lower, 2 * math.pi, math.pi)], True)


def _cloth(s: _Shown, below: list[_Shown], slide: float) -> Iterator[Item]:
    """The fill and the edges of one layer."""
    lie, piece = s.lie, s.piece
    face, back = cloth(s.placed, s.layer.up), cloth(s.placed, OTHER[s.layer.up])
    near_name, cut = f"{piece.name}.{s.side}.{lie.edge}", "edge" if lie.raw[0] else "crease"
    far_name = f"{piece.name}.{s.side}.{lie.others[0]}" if lie.others else ""
    beyond: StrokeRole = "edge" if lie.raw[1] else "crease"
    at_edge: StrokeRole = "edge" if cut == "edge" else "crease"
    if lie.inside:
        yield Fill(s.placed.outline, face, piece.name)
        return
    if lie.level:
        yield Fill(s.placed.outline, face, piece.name)
        yield Stroke(_circle(s.at(s.short - s.wide)), at_edge, name=near_name)
        if lie.others:
            yield Stroke(_circle(lie.far), beyond, name=far_name)
    else:
        upper, lower = (lie.far, lie.near) if lie.far[1] > lie.near[1] else (s.at(s.short - s.wide), lie.far)
        on_table = lie.work and lie.far[1] > lie.near[1]
        if on_table and s.wide:
            yield from _allowance(s, slide, near_name)
        looked_into = _circle(upper)
        if not any(other.lie.inside for other in below):
            s.placed.flaps.append(looked_into)
            yield Fill(looked_into, back, f"{piece.name}.turned")
        yield Fill(s.placed.outline, face, piece.name)
        top, foot = (far_name, near_name) if upper == lie.far else (near_name, far_name)
        ways = (beyond, at_edge) if upper == lie.far else (at_edge, beyond)
        yield Stroke(looked_into, ways[0], name=top)
        if not on_table:
            yield Stroke(_circle(lower, math.pi, 2 * math.pi), ways[1], name=foot)
        for turn in (0.0, math.pi):
            yield Stroke((Line(_spot(upper, turn), _spot(lower, turn)),), "crease", name=piece.name)
    if lie.seam:
        line = Line(_spot(s.at(s.short - s.wide), _SEAM), _spot(lie.far, _SEAM))
        yield Stroke((line,), "crease", name=f"{piece.name}.{s.side}.{lie.seam}")


def _allowance(s: _Shown, slide: float, name: str) -> Iterator[Item]:
    """The allowance of a tube that stands on its edge: it lies flat outside, a little short of what is below it."""
    radius, height = s.at(s.short - s.wide)
    ring = _circle((radius - slide, height))
    s.placed.flaps.append(ring)
    yield Fill(ring, cloth(s.placed, s.layer.up), f"{s.piece.name}.turned")
    yield Stroke(ring, "edge", name=name)


# ---- the work -------------------------------------------------------------------------------------------------


def _covered(q: Point, over: PlacedLayer) -> bool:
    return any(inside(q, [curve.start for curve in part]) for part in (over.outline, *over.flaps))


def _seen(s: _Shown, shown: list[_Shown]) -> Callable[[Point, float], bool]:
    """Whether a place of a layer is seen: nothing lies over it, and of a tube it is on the near side."""
    over = [other.placed for other in shown[shown.index(s) + 1 :]]

    def there(q: Point, turn: float) -> bool:
        if not s.lie.level and math.sin(turn) > 0.02:
            return False
        return not any(_covered(q, each) for each in over)

    return there


def _row(row: Row, half: Side | None, shown: list[_Shown], size: float, window: Box) -> Iterator[Item]:
    """A row all round, from the ring's own seam on, or from a gap's one end to its other; dashed where it is hidden."""
    own = [s for s in shown if s.lie.work and (row.inset <= 0 or s.piece.name == row.run.piece)]
    if not own:
        return
    s = own[-1]
    role: StrokeRole = "old_row" if row.ink == "old" else ROLES[row.style]
    circle, seen = s.at(row.inset), _seen(s, shown)
    first, last = _SEAM, _SEAM - 2 * math.pi * (1 - _OVERLAP)
    if row.gap is not None:
        one, two = sorted(_turn(s, at, half) for at in row.gap)
        first, last = (one, two - 2 * math.pi)
    count = _STEPS * 2
    turns = [first + (last - first) * i / count for i in range(count + 1)]
    places = [_spot(circle, turn) for turn in turns]
    visible = [seen(q, turn) for q, turn in zip(places, turns, strict=True)]
    start, named = 0, True
    for number in range(1, count + 1):
        if number < count and visible[number] == visible[start]:
            continue
        part = drawn(places[start : number + 1])
        if part and visible[start]:
            yield Stroke(part, role, name=row.run.said if named else "")
            if named and row.ink == "new":
                yield from row_signs(Path(part), size, window, ends=number == count)
            named = False
        elif part:
            yield Stroke(part, "hidden")
        start = number


def _turn(s: _Shown, at: float, half: Side | None) -> float:
    """The angle of the place `at` mm along the edge as drafted: both halves start at the ring's seam."""
    path = s.piece.edge(s.lie.edge).path
    share = min(max(at / path.length, 0.0), 1.0)
    if not s.piece.fold:
        return _SEAM - 2 * math.pi * share
    if s.lie.seam:
        seam = s.piece.edge(s.lie.seam).path
        at_end = min(path.end.distance(q) for q in (seam.start, seam.end)) < 0.5
        share = 1.0 - share if at_end else share
    return _SEAM - math.pi * share


def _notches(shown: list[_Shown]) -> Iterator[Item]:
    """The notches of the uppermost ring, on its allowance; both halves of a piece on the fold have them."""
    s = next((s for s in reversed(shown) if s.lie.work and s.lie.seam and s.wide > s.short), None)
    if s is None:
        return
    seen = _seen(s, shown)
    for notch in s.piece.notches:
        if notch.edge != s.lie.edge:
            continue
        turn = _turn(s, notch.distance, s.side)
        for there in {turn, 2 * _SEAM - turn} if s.piece.fold else {turn}:
            line = Line(_spot(s.at(s.short - s.wide), there), _spot(s.at((s.short - s.wide) / 2), there))
            if seen(line.start.mid(line.end), there):
                yield Stroke((line,), "notch", name=f"notch {s.piece.name}.{notch.edge}")


def _clips(thing: Thing, shown: list[_Shown]) -> Iterator[Item]:
    """Cuts across the allowance of a ring, where they are seen."""
    s = next((s for s in reversed(shown) if s.lie.work and s.piece.name == thing.run.piece), None)
    if s is None or thing.kind != "clips":
        return
    seen, name = _seen(s, shown), f"{thing.kind} on {thing.run.piece}"
    count = max(round(2 * math.pi * s.lie.near[0] / max(thing.apart, 1.0)), 3)
    for number in range(count):
        turn = _SEAM + 2 * math.pi * (number + 0.5) / count
        foot, top = _spot(s.at(thing.width - s.wide), turn), _spot(s.at(s.short - s.wide), turn)
        if seen(foot.mid(top), turn):
            yield Stroke((Line(top, foot),), "new" if thing.ink == "new" else "symbol", name=name)


def _pins(piece: str, shown: list[_Shown], size: float) -> Iterator[Item]:
    """Pins across the row, where they are seen, their heads outside the edge."""
    s = next((s for s in reversed(shown) if s.piece.name == piece and s.lie.work), None)
    if s is None:
        return
    seen = _seen(s, shown)
    for number in range(_PINS):
        turn = math.pi / _PINS + 2 * math.pi * number / _PINS
        head, tip = _spot(s.at(-s.wide - size * 0.01), turn), _spot(s.at(max(s.wide, size * 0.03)), turn)
        if seen(head.mid(tip), turn):
            yield Stroke((Line(head, tip),), "pin", name="pin")
            yield Dot(head, "mark")


def _mark(scene: Scene, shown: list[_Shown], size: float) -> list[Item]:
    """Where the cross-section is taken: on the near side, square to the edge."""
    focus = scene.focus
    s = next((s for s in reversed(shown) if focus is not None and s.piece.name == focus.piece and s.lie.work), None)
    s = s or next((s for s in reversed(shown) if s.lie.work), None)
    if s is None:
        return []
    turn = math.radians(-85.0)
    foot = _spot(s.lie.near, turn)
    along = (_spot(s.lie.near, turn + 0.05) - foot).unit()
    return cut_mark_at(foot, Vector(-along.y, along.x), along, size * 0.8)


# ---- small ----------------------------------------------------------------------------------------------------


def round_plan(
    layers: tuple[Layer, ...], pattern: Pattern, run: Run
) -> tuple[list[tuple[str, tuple[Curve, ...]]], tuple[Line, ...]]:
    """The outlines of rings as they stand, by their piece's name and in painting order, and the place of a run on
    them: the near side of its circle, or the seam of its ring."""
    outlines: list[tuple[str, tuple[Curve, ...]]] = []
    place: tuple[Line, ...] = ()
    for layer in layers:
        if layer.round is None:
            continue
        s = _shown(layer, layer.round, pattern, 0.0)
        lie = s.lie
        if not lie.level:
            outlines.append((s.piece.name, _circle(max(lie.near, lie.far, key=lambda circle: circle[1]))))
        outlines.append((s.piece.name, s.placed.outline))
        if s.piece.name != run.piece:
            continue
        if lie.edge in run.edges or set(lie.others) & set(run.edges):
            place = _circle(lie.near if lie.edge in run.edges else lie.far, math.pi, 2 * math.pi)
        else:
            place = (Line(_spot(lie.near, _SEAM), _spot(lie.far, _SEAM)),)
    return outlines, place
