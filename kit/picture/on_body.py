"""A garment bent round the figure that wears it: where each place of the garment laid flat is then seen.

Heights stay as they were drafted, so that every length down the body is true. Across, what goes round the trunk is
seen as much narrower as the trunk is narrower than a board (`Wearer.seen`), front and back meeting at the side; on the
shoulder it lies across the body and keeps its width. A sleeve cut on in one with the body turns down as a whole about
the shoulder point, as far as the underarm comes in, so that lengths along it are true too.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from kit.geometry import Point, Vector
from kit.picture.assembled import Assembled, Flat, of_kind
from kit.picture.chains import crossings, dense
from kit.picture.drawn_up import CORDS, draws_all
from kit.picture.on_legs import on_legs, then
from kit.picture.wearer import HANGING, Wearer
from kit.piece.piece import Side
from kit.wear.girth import Worn

_DRAWN_UP = ("gather", "thread_elastic", *CORDS)
_STEP = 5.0  # mm between the heights at which widths are taken
_ROUND_ARM = 50.0  # mm outside the armhole line over which the trunk goes over into the sleeve
_LOWERED = math.radians(9.0)
"""How much further a cut-on sleeve is let down than its underarm comes in: what the cloth under the arm takes in
folds (by eye, on the example lessons)."""
_IN_SLEEVE = math.radians(2.0)  # how far below the overarm the arm inside points, its outline being no straight line
_OVER = 2.0  # mm that drawn-up cloth lies outside the body
_FULL = 0.5
"""How much of the width that it has laid flat drawn-up cloth shows beyond the body: the rest hangs in folds (by eye, on
the example lessons)."""
_EASE = 1.03  # how much further than the body cloth reaches that goes round it from in front and is open behind


@dataclass(frozen=True)
class Sleeve:
    """How a cut-on sleeve hangs (viewer's right, mm above the waist): it turns about the shoulder point `top` by `turn`
    (radians); `under` is where its underarm leaves the side; it ends at `end`, the upper end of its opening."""

    top: Point
    under: Point
    end: Point
    turn: float

    @property
    def way(self) -> float:
        """How far below the level (radians) it points when it hangs."""
        run = self.end - self.top
        return math.atan2(-run.y, run.x) + self.turn

    def turned(self, p: Point) -> Point:
        cos, sin = math.cos(-self.turn), math.sin(-self.turn)
        off = p - self.top
        return self.top + Vector(off.x * cos - off.y * sin, off.x * sin + off.y * cos)

    def share(self, p: Point) -> float:
        """How far a place belongs to the sleeve: 0 on the trunk, up to the armhole line, and 1 a little outside it."""
        line = (self.top - self.under).unit()
        out = -line.cross(p - self.under)
        at = min(max(out / _ROUND_ARM, 0.0), 1.0)
        return at * at * (3.0 - 2.0 * at)


@dataclass(frozen=True)
class Bent:
    """Bends one layer of a garment: `rise` mm up, then `widths`, (height, share of x) from below, and its sleeve. Of
    one that is open behind, `limits` are (height, how far out it is seen), `reach` how wide half of it lies there."""

    rise: float
    widths: tuple[tuple[float, float], ...]
    sleeve: Sleeve | None = None
    limits: tuple[tuple[float, float], ...] = ()
    reach: tuple[tuple[float, float], ...] = ()

    def behind(self, y: float) -> float:
        """How far from the middle behind the cloth ends that goes round the body from in front, at a height; the side
        of the body where it does not reach round."""
        side = _at(self.limits, y)
        return min(side, 2 * side - _at(self.reach, y) * _at(self.widths, y))

    def __call__(self, lying: Point) -> Point:
        p = Point(abs(lying.x), lying.y + self.rise)
        there = Point(p.x * _at(self.widths, p.y), p.y)
        if self.limits:
            there = Point(min(there.x, _at(self.limits, p.y)), p.y)
        if self.sleeve is not None:
            there = there.lerp(self.sleeve.turned(p), self.sleeve.share(p))
        return there if lying.x >= 0 else Point(-there.x, there.y)


def _at(table: Sequence[tuple[float, float]], y: float) -> float:
    """The value of a table in even steps at a height; that of its ends beyond them."""
    low = table[0][0]
    place = (y - low) / _STEP
    i = min(max(int(place), 0), len(table) - 2)
    share = min(max(place - i, 0.0), 1.0)
    return table[i][1] + (table[i + 1][1] - table[i][1]) * share


def on_body(garment: Assembled, worn: Worn) -> tuple[Assembled, Wearer] | None:
    """The garment as it is seen on its body, and the body, its arms along the sleeves; None where nothing of it says
    where the body is, and where it is drawn up, but for trousers with elastic or a cord and skirts of which it is known
    how far. `Assembled.lying` of it is the garment as it was."""
    rise = _rise(garment, worn)
    drawn_up = [each.kind for each in of_kind(garment.pattern, *_DRAWN_UP)]
    all_drawn = "gather" not in drawn_up and draws_all(garment.pattern, _hung(worn))
    if rise is not None and worn.legs and all_drawn:
        return _legs(garment, worn, bool(drawn_up))
    if rise is None or worn.legs:
        return None
    if _is_drawn_up(garment, worn):
        return _draped(garment, worn, rise)
    set_in = any(flat.piece.role == "sleeve" for flat in garment.flats)
    wearer = Wearer(worn.body, straight=set_in)
    sleeve = _sleeve(garment, rise, wearer)
    if sleeve is not None:
        wearer = replace(wearer, arms=sleeve.way + _IN_SLEEVE)
    trunk = [flat for flat in garment.flats if flat.piece.name in _hung(worn)]
    groups = [[flat for flat in trunk if flat.near is near] for near in (True, False)]
    top = sleeve.under.y if sleeve else min(worn.underarm, wearer.underarm)
    over, under = (_reaches(group, rise, top) for group in groups)
    open_behind = not (over and under) and not _closed(worn)
    rounds = _rounds(worn, over, under)
    made: dict[bool, Callable[[Point], Point]] = {}
    if over:
        made[True] = _bent(over, rounds, rise, top, wearer, sleeve, open_behind)
    if under:
        made[False] = _bent(under, rounds, rise, top, wearer, sleeve, open_behind)
    if not made:
        return None
    some = next(iter(made.values()))

    def put(flat: Flat) -> Flat:
        return replace(flat, bent=made.get(flat.near, some))

    seen = replace(
        garment,
        flats=tuple(put(flat) for flat in garment.flats),
        within=tuple(replace(flat, bent=made.get(False, some)) for flat in garment.within),
        lying=garment,
    )
    return seen, wearer


def _is_drawn_up(garment: Assembled, worn: Worn) -> bool:
    """Whether anything of what goes round the trunk is gathered, or has elastic or a cord in it."""
    drawn = of_kind(garment.pattern, *_DRAWN_UP)
    return any(run.piece in _hung(worn) for each in drawn for run in each.runs())


def _draped(garment: Assembled, worn: Worn, rise: float) -> tuple[Assembled, Wearer] | None:
    """A skirt of cloth that is drawn up: it follows the figure there, and below hangs from its widest place in folds,
    which take up a part of its fullness. None for what hangs from the shoulders, and where it is not known how far the
    cloth is drawn up: not drawn yet."""
    hung = _hung(worn)
    trunk = [flat for flat in garment.flats if flat.piece.name in hung]
    shoulders = any(edge.role == "shoulder" for flat in trunk for edge in flat.piece.edges)
    if shoulders or not draws_all(garment.pattern, hung):
        return None
    wearer = Wearer(worn.body)
    made: dict[bool, Bent] = {}
    for near in (True, False):
        own = _reaches([flat for flat in trunk if flat.near is near], rise, wearer.underarm)
        if own:
            made[near] = Bent(rise, _hanging_widths(own, wearer))
    if not made or not _closed_round(trunk):
        return None
    some = next(iter(made.values()))

    def put(flat: Flat) -> Flat:
        return replace(flat, bent=then(flat.bent, made.get(flat.near, some)))

    flats, within = tuple(map(put, garment.flats)), tuple(map(put, garment.within))
    return replace(garment, flats=flats, within=within, lying=garment), wearer


def _closed_round(trunk: Sequence[Flat]) -> bool:
    """Whether it goes all round: cloth before and behind."""
    return {flat.near for flat in trunk} == {True, False}


def _hanging_widths(own: dict[int, float], wearer: Wearer) -> tuple[tuple[float, float], ...]:
    """(height, share of x) of drawn-up cloth that is so wide laid flat, from below."""
    found: list[tuple[float, float]] = []
    body = 0.0
    for step in range(max(own), min(own) - 1, -1):
        y = step * _STEP
        wide = own.get(step) or own[min(own, key=lambda at: abs(at - step))]
        body = max(body, wearer.half(y) + _OVER)
        seen = body + max(wide * wearer.seen(y) - body, 0.0) * _FULL
        found.append((y, seen / max(wide, 1.0)))
    return tuple(reversed(found))


def _legs(garment: Assembled, worn: Worn, elastic: bool) -> tuple[Assembled, Wearer] | None:
    """Trousers on their body."""
    wearer = Wearer(worn.body)
    trunk = [flat for flat in garment.flats if flat.piece.name in _hung(worn)]
    over, under = ([flat for flat in trunk if flat.near is near] for near in (True, False))
    made = {}
    for near, own, other in ((True, over, under), (False, under, over)):
        # Front and back hang by their own lines: laid flat, one may lie higher than the other.
        rises = [_own_rise(flats[0], worn) if flats else 0.0 for flats in (own, other)]
        made[near] = on_legs(own, other, (rises[0], rises[1]), worn.crotch, wearer, elastic)
    some = made[True] or made[False]
    if some is None:
        return None

    def put(flat: Flat) -> Flat:
        return replace(flat, bent=then(flat.bent, made[flat.near] or some))

    flats, within = tuple(map(put, garment.flats)), tuple(map(put, garment.within))
    return replace(garment, flats=flats, within=within, lying=garment), wearer


def _hung(worn: Worn) -> set[str]:
    return set(worn.hung.up) if worn.hung is not None else set()


def _rise(garment: Assembled, worn: Worn) -> float | None:
    """How far up from where it lies the garment hangs."""
    for flat in garment.flats:
        if flat.piece.name in _hung(worn):
            return _own_rise(flat, worn)
    return None


def _own_rise(flat: Flat, worn: Worn) -> float:
    """How far up from where it lies a piece hangs."""
    return worn.up(flat.piece, 0.0) - flat.motion(Point(0.0, 0.0)).y


def _closed(worn: Worn) -> bool:
    found = worn.round(worn.heights.get("waist", 0.0))
    return found is not None and found.closed


def _reaches(flats: Sequence[Flat], rise: float, top: float) -> dict[int, float]:
    """Half the width of a layer at each height, counted in steps, below the armholes."""
    found: dict[int, tuple[float, float]] = {}
    for flat in flats:
        ring = flat.ring
        low, high = min(p.y for p in ring) + rise, min(max(p.y for p in ring) + rise, top)
        for step in range(math.ceil(low / _STEP), int(high / _STEP) + 1):
            xs = crossings(ring, step * _STEP - rise - 0.01)
            if xs:
                a, b = found.get(step, (xs[0], xs[-1]))
                found[step] = (min(a, xs[0]), max(b, xs[-1]))
    return {step: (b - a) / 2 for step, (a, b) in found.items()}


def _rounds(worn: Worn, one: dict[int, float], other: dict[int, float]) -> dict[int, float]:
    """A quarter of how far round the garment goes at each height where it is closed; else midway between its
    layers."""
    found: dict[int, float] = {}
    for step in one.keys() & other.keys():
        there = worn.round(step * _STEP)
        found[step] = there.girth / 4 if there is not None and there.closed else (one[step] + other[step]) / 2
    return found


def _bent(
    own: dict[int, float],
    rounds: dict[int, float],
    rise: float,
    top: float,
    wearer: Wearer,
    sleeve: Sleeve | None,
    open_behind: bool,
) -> Bent:
    """How a layer bends that is so wide, where a quarter of the garment's girth is that."""
    widths: list[tuple[float, float]] = []
    limits: list[tuple[float, float]] = []
    low, high = min(own), max(math.ceil(wearer.crown / _STEP), max(own))
    share = 1.0
    for step in range(low, high + 1):
        y = step * _STEP
        if own.get(step) and rounds.get(step):
            share = rounds[step] / own[step]
        over = share
        if y > top:  # front and back no longer meet at the side: each keeps its width up to the shoulder
            left = max(wearer.tip.y - top, 1.0)
            over = 1.0 + (share - 1.0) * max(0.0, 1.0 - (y - top) / left)
        widths.append((y, wearer.seen(y) * over))
        if open_behind:
            limits.append((y, wearer.half(y) * _EASE))
    reach = tuple((y, own.get(round(y / _STEP), 0.0)) for y, _ in widths) if open_behind else ()
    return Bent(rise, tuple(widths), sleeve, tuple(limits), reach)


def _on_top(flat: Flat, side: Side, x: float) -> Point:
    """The place of the shoulder and overarm so far out."""
    names = [edge.name for edge in flat.piece.edges if edge.role == "shoulder"]
    line = dense([p for name in names for p in flat.edge(name, side)], 2.0)
    return min(line or flat.ring, key=lambda p: abs(p.x - x))


def _sleeve(garment: Assembled, rise: float, wearer: Wearer) -> Sleeve | None:
    """The cut-on sleeve at the viewer's right; None where there is none."""
    up = Vector(0.0, rise)
    for flat in garment.near:
        roles = {edge.role: edge.name for edge in flat.piece.edges}
        if "underarm" not in roles or "opening" not in roles or flat.piece.role == "sleeve":
            continue
        side = max(flat.sides, key=lambda side: max(p.x for p in flat.edge(roles["underarm"], side)))
        under = min((p + up for p in flat.edge(roles["underarm"], side)), key=lambda p: abs(p.x))
        end = max((p + up for p in flat.edge(roles["opening"], side)), key=lambda p: p.y)
        point = flat.piece.point_of("shoulder_tip")
        at = abs(flat.put(point, side).x) if point is not None else wearer.tip.x
        top = _on_top(flat, side, at) + up
        if end.x <= top.x or under.x <= 0.0:
            continue
        there = Point(under.x * wearer.seen(under.y), under.y)
        turn = abs((under - top).turn_to(there - top)) + _LOWERED
        sleeve = Sleeve(top, under, end, turn)
        return replace(sleeve, turn=min(turn, max(HANGING - sleeve.way + turn, 0.0)))
    return None
