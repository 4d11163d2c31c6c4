"""The finished garment put together flat: which halves lie on which, each as it is after the last sewing step.

Seen from in front the wearer's left is at the viewer's right. Fronts and backs lie on each other, neck points level;
of a pair of fronts the right one laps over the left (common practice of women's wear, no source). What is sewn to them
and is neither band nor pocket lies opened out beyond its seam, or behind when the seam goes round most of it. Only what
the sewing joins is put together; the rest is named in `left`.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from itertools import pairwise
from typing import Literal

from kit.errors import KitError
from kit.geometry import Motion, Point, Vector
from kit.lesson.pattern import Pattern
from kit.picture.chains import Chain, at, box, crossings, length
from kit.picture.drawn_up import drawn_up
from kit.picture.flat_piece import Flat
from kit.picture.forked import closed_legs
from kit.picture.place import flat_motion, is_back, is_facing
from kit.picture.shut import FINE, Shut, edge_points, shut_folds
from kit.piece.piece import Piece, Side
from kit.piece.role import PieceRole
from kit.sewing.order import of_kind as of_kind
from kit.sewing.order import operations
from kit.sewing.state import State

__all__ = ["Assembled", "Flat", "View", "assembled", "finished_state", "of_kind"]

View = Literal["front", "back"]
_ON_TOP: tuple[PieceRole, ...] = ("pocket", "flap")
_INSIDE: tuple[PieceRole, ...] = ("facing", "lining", "interfacing", "bag")
_AROUND = 0.5  # share of an outline that is sewn to another piece when the two lie on each other
_ON = 0.3  # mm beside a line within which a point is on it
_FOLDS = ("dart", "pleat", "tuck")


@dataclass(frozen=True)
class Assembled:
    """The garment of one view: `flats` from the bottom up, `left` the pieces that no sewing step joins to it, `within`
    the facings seen inside. On a body, `lying` is the same garment laid flat, which tells how long things are."""

    pattern: Pattern
    view: View
    flats: tuple[Flat, ...]
    state: State
    left: tuple[str, ...] = ()
    within: tuple[Flat, ...] = field(default_factory=tuple)
    lying: Assembled | None = None

    @property
    def near(self) -> tuple[Flat, ...]:
        return tuple(flat for flat in self.flats if flat.near)

    @property
    def lined(self) -> frozenset[str]:
        """The pieces whose lining is sewn in, so that it shows where one sees inside."""
        linings = {piece.name: piece.source for piece in self.pattern.pieces if piece.cut.cloth == "lining"}
        sewn = {name for seam in self.state.seams for name, _, _ in seam}
        return frozenset(source for name, source in linings.items() if source and name in sewn)

    def of(self, name: str, side: Side | None = None) -> list[Flat]:
        """Where a cut piece lies, one half or all of it."""
        return [flat for flat in self.flats if flat.piece.name == name and (side is None or side in flat.sides)]

    def box(self) -> tuple[float, float, float, float]:
        return box(flat.ring for flat in self.flats)

    def widest(self, y: float, x: float) -> tuple[float, float] | None:
        """From where to where the garment reaches at a level, around `x`; None where it is not there."""
        found: list[tuple[float, float]] = []
        for flat in self.flats:
            xs = crossings(flat.ring, y)
            found += list(zip(xs[::2], xs[1::2], strict=False))
        held = [pair for pair in found if pair[0] - 1.0 <= x <= pair[1] + 1.0]
        if not held:
            return None
        low, high = min(a for a, _ in held), max(b for _, b in held)
        for a, b in sorted(found):
            if a <= high + 1.0 and b >= low - 1.0:
                low, high = min(low, a), max(high, b)
        return low, high


def finished_state(pattern: Pattern) -> State:
    """The garment after the last operation. What cannot be worked is left out: the proof tells of it."""
    state = State()
    for _, operation in operations(pattern):
        try:
            state = state.after(operation.outcome(pattern), pattern)
        except KitError:
            continue
    return state


def assembled(pattern: Pattern, view: View, state: State | None = None, *, worn: bool = False) -> Assembled:
    """The garment of a pattern as `state` has it, finished when None, seen from the front or the back. Where it is to
    be `worn`, front and back that no dart shapes keep their own widths: the body tells where they meet."""
    state = finished_state(pattern) if state is None else state
    shown = [piece for piece in pattern.pieces if piece.cut.cloth == "main" and piece.role not in _INSIDE]
    body = [piece for piece in shown if _is_body(piece)]
    flats = _stack(body or _largest(shown, state), view, state, pattern)
    flats = closed_legs(_edge_on_edge(flats, state, worn), state)
    flats = drawn_up(flats, pattern, state)
    done = {flat.piece.name for flat in flats}
    by_band = _sewn_otherwise(pattern)
    flats, added = _others(flats, [p for p in shown if p.name not in done | by_band], pattern, state)
    done |= added | by_band
    return Assembled(
        pattern,
        view,
        tuple(flats),
        state,
        tuple(piece.name for piece in shown if piece.name not in done),
        tuple(_facings(flats, pattern, state)),
    )


def _is_body(piece: Piece) -> bool:
    """Whether a piece lies where the body is: it is worn at the front or back, and sewn on nothing."""
    return bool(piece.worn) and piece.role not in (*_ON_TOP, "sleeve", "collar", "cuff", "band", "strip")


def _largest(shown: list[Piece], state: State) -> list[Piece]:
    """What to begin with where nothing is a front or a back: the largest of the pieces."""
    sewn = [piece for piece in shown if piece.role not in _ON_TOP]
    return [max(sewn, key=lambda piece: abs(piece.outline.area))] if sewn else []


def _folds_of(piece: Piece, state: State) -> tuple[Shut, ...]:
    names = {fact[3] for fact in state.facts if fact[0] in _FOLDS and len(fact) > 3 and fact[1] == piece.name}
    return shut_folds(piece, names) if names else ()


def _stack(body: list[Piece], view: View, state: State, pattern: Pattern) -> list[Flat]:
    """The layers from the bottom up."""
    backs = [piece for piece in body if is_back(piece)]
    fronts = [piece for piece in body if not is_back(piece)]
    far, near = (backs, fronts) if view == "front" else (fronts, backs)
    order: tuple[Side, Side] = ("left", "right") if view == "front" else ("right", "left")
    out: list[Flat] = []
    for group, wrong in ((far, True), (near, False)):
        for piece in group:
            folds = _folds_of(piece, state)
            shift = _level(piece, body, state)
            if piece.fold:
                motion = flat_motion(piece, "right", wrong)
                sides: tuple[tuple[Side, ...], ...] = (("right", "left"),)
            elif piece.cut.mirrored:
                sides = tuple((side,) for side in order)
                motion = Motion.identity()
            else:
                sides = (("right",),)
                motion = _centred(piece, view, wrong)
            for halves in sides:
                own = flat_motion(piece, halves[0], wrong) if piece.cut.mirrored and not piece.fold else motion
                own = own.then(Motion.translation(Vector(0.0, shift)))
                out.append(Flat(piece, halves, own, "wrong" if wrong else "right", not wrong or not far, folds))
    return out


def _centred(piece: Piece, view: View, wrong: bool) -> Motion:
    """A piece cut single, its middle at x = 0, seen from its right side or its wrong side."""
    x0, _, x1, _ = piece.outline.bounds()
    slide = Motion.translation(Vector(-(x0 + x1) / 2, 0.0))
    turned = Motion.reflection(Point(0.0, 0.0), Point(0.0, 1.0))
    return slide.then(turned) if wrong else slide


def _level(piece: Piece, body: list[Piece], state: State) -> float:
    """How far up a piece moves so that its neck point lies as high as the first piece's, or else the edges that are
    sewn to each other do."""
    if piece is body[0]:
        return 0.0
    first, own = body[0].point_of("neck_point"), piece.point_of("neck_point")
    if first is not None and own is not None:
        return first.y - own.y
    offs = []
    for seam in state.seams:
        ends = {name: edge for name, _, edge in seam}
        if body[0].name in ends and piece.name in ends:
            a, b = body[0].edge(ends[body[0].name]).path, piece.edge(ends[piece.name]).path
            offs.append(max(a.start.y, a.end.y) - max(b.start.y, b.end.y))
    return sum(offs) / len(offs) if offs else 0.0


def _edge_on_edge(flats: list[Flat], state: State, darted: bool) -> list[Flat]:
    """Fronts and backs of which one is wider than the other, as trousers are drafted and as darts leave skirts, drawn
    in and out so that the edges sewn to each other lie on each other, midway; of `darted` ones alone."""
    made = list(flats)
    for seam in sorted(state.seams, key=sorted):
        pair = sorted(seam)
        if len(pair) != 2 or pair[0][1] != pair[1][1] or pair[0][0] == pair[1][0]:
            continue
        spots = [
            next((i for i, flat in enumerate(made) if flat.piece.name == name and side in flat.sides), None)
            for name, side, _ in pair
        ]
        if spots[0] is None or spots[1] is None:
            continue
        if darted and not (made[spots[0]].folds or made[spots[1]].folds):
            continue
        if made[spots[0]].drawn_in or made[spots[1]].drawn_in:
            continue
        lines = [
            edge_points(made[i].piece, edge, made[i].folds)
            for i, (_, _, edge) in zip(spots, pair, strict=True)
            if i is not None
        ]
        shares = [_shares(lines[0], lines[1]), _shares(lines[1], lines[0])]
        for i, share in zip(spots, shares, strict=True):
            if i is not None and share:
                made[i] = replace(made[i], drawn_in=share)
    return made


def _shares(own: Chain, other: Chain) -> tuple[tuple[float, float], ...]:
    """(height, by what share of its x) a line moves to lie midway between itself and the other at its own heights;
    empty where the lines lie on each other already, run across, or touch x = 0."""
    if abs(own[0].y - own[-1].y) < 0.5 * length(own):
        return ()
    up = own if own[0].y < own[-1].y else own[::-1]
    beside = other if other[0].y < other[-1].y else other[::-1]
    found = []
    for step in range(25):
        share = step / 24
        p, q = at(up, share * length(up))[0], at(beside, share * length(beside))[0]
        if abs(p.x) < 20.0 or abs(q.x) < 20.0:
            return ()
        found.append((p.y, (abs(p.x) + abs(q.x)) / 2 / abs(p.x)))
    return tuple(found) if any(abs(share - 1.0) > 0.002 for _, share in found) else ()


def _sewn_otherwise(pattern: Pattern) -> set[str]:
    """Pieces that are bands, pockets or towers: they have pictures of their own (kit/picture/put_on.py)."""
    found = {run.piece for op in of_kind(pattern, "set_band", "seam_band") for run in op.a}
    found |= {run.piece for op in of_kind(pattern, "seam_band") for run in op.b}
    found |= {op.tower.piece for op in of_kind(pattern, "tower_placket")}
    return found | {run.piece for op in of_kind(pattern, "patch_pocket") for run in op.edges}


# ---- what is sewn to it ------------------------------------------------------------------------------------


def _others(flats: list[Flat], pieces: list[Piece], pattern: Pattern, state: State) -> tuple[list[Flat], set[str]]:
    """The pieces that seams join to those that lie there, one after another."""
    waiting, added = list(pieces), set[str]()
    grown = True
    while grown and waiting:
        grown = False
        for piece in waiting:
            found = _beside(piece, flats, pattern, state)
            if found:
                behind = [flat for flat in found if not flat.near]
                flats = behind + flats + [flat for flat in found if flat.near]
                added.add(piece.name)
                waiting.remove(piece)
                grown = True
                break
    return flats, added


def _beside(piece: Piece, flats: list[Flat], pattern: Pattern, state: State) -> list[Flat]:
    """A piece laid along the seams it has with what lies there, every half of it."""
    found: list[Flat] = []
    folds = _folds_of(piece, state)
    sides: tuple[tuple[Side, ...], ...] = (("right", "left"),) if piece.fold else tuple((side,) for side in piece.sides)
    for halves in sides:
        seams: list[tuple[str, Flat, str, Side]] = []
        for seam in state.seams:
            keys = list(seam)
            if len(keys) != 2:
                continue
            for (name, side, edge), (other, half, own) in (keys, keys[::-1]):
                if name == piece.name and side in halves and other != name:
                    seams += [
                        (edge, flat, own, half) for flat in flats if flat.piece.name == other and half in flat.sides
                    ]
        if not seams:
            continue
        sewn = sum(piece.edge(name).path.length for name in {edge for edge, *_ in seams})
        edge, flat, own, half = max(
            sorted(seams, key=lambda s: (s[0], s[1].piece.name, s[2], s[3])),
            key=lambda seam: (seam[1].near, piece.edge(seam[0]).path.length),
        )
        if (sleeve := _hanging_sleeve(piece, halves, edge, flat, flat.edge(own, half), folds)) is not None:
            found.append(sleeve)
            continue
        around = sewn > _AROUND * piece.outline.perimeter and not piece.fold
        found.append(_laid(piece, halves, edge, flat, own, half, folds, around))
    return found


def _hanging_sleeve(
    piece: Piece, halves: tuple[Side, ...], edge: str, flat: Flat, armhole: Chain, folds: tuple[Shut, ...]
) -> Flat | None:
    """A set-in sleeve laid flat, folded along its middle: the cap of its near half along the armhole, from the shoulder
    down; of the far half only the fold is seen. None for any other piece."""
    caps = [each for each in piece.edges if each.role == "cap"]
    if piece.role != "sleeve" or len(caps) != 2 or piece.fold or edge not in {each.name for each in caps}:
        return None
    one, two = (each.path for each in caps)
    top = min((p for p in (one.start, one.end)), key=lambda p: min(p.distance(two.start), p.distance(two.end)))
    line = edge_points(piece, edge, folds)
    line = line if line[0].distance(top) < line[-1].distance(top) else line[::-1]
    target = armhole if armhole[0].y > armhole[-1].y else armhole[::-1]
    low = min((p for each in piece.edges for p in each.path.points(FINE * 4)), key=lambda p: p.y)
    motions = [Motion.matching(line[0], line[-1], target[0], target[-1], flip) for flip in (False, True)]
    motion = max(motions, key=lambda each: abs(each(Point(top.x, low.y)).x))
    crown, down = motion(top), (motion(top + Vector(0.0, -1.0)) - motion(top)).unit()
    near = down.left() if (motion(line[len(line) // 2]) - crown).dot(down.left()) > 0 else down.left() * -1.0

    cap = [motion(p) for p in line]

    def folded_over(p: Point) -> Point:
        on = _along(cap, p)
        if on is not None:  # sewn in, the cap lies along the armhole
            return at(target, on * length(target))[0]
        beyond = (p - crown).dot(near)
        return p if beyond >= 0 else p - near * beyond

    return Flat(piece, halves, motion, flat.up, flat.near, folds, bent=folded_over)


def _along(chain: Chain, p: Point) -> float | None:
    """How far along a chain a point on it lies, as a share; None where it lies beside it."""
    walked, whole = 0.0, length(chain)
    for a, b in pairwise(chain):
        step = a.distance(b)
        way = (b - a) / step if step > 1e-9 else Vector(1.0, 0.0)
        along = min(max((p - a).dot(way), 0.0), step)
        if p.distance(a + way * along) < _ON:
            return (walked + along) / whole
        walked += step
    return None


def _laid(
    piece: Piece,
    halves: tuple[Side, ...],
    edge: str,
    flat: Flat,
    own: str,
    half: Side,
    folds: tuple[Shut, ...],
    around: bool,
) -> Flat:
    """The piece moved so that its edge lies on that of `flat`: beyond it, or behind the whole when the seam goes
    round."""
    target = flat.edge(own, half)
    line = edge_points(piece, edge, folds)
    middle = target[len(target) // 2]
    tests: list[tuple[bool, bool, float, int, Motion]] = []
    for flip in (False, True):
        for a, b in ((target[0], target[-1]), (target[-1], target[0])):
            if line[0].distance(line[-1]) < 1.0 or a.distance(b) < 1.0:
                continue
            motion = Motion.matching(line[0], line[-1], a, b, flip)
            ring = [motion(p) for p in piece.outline.points(FINE * 4)]
            centre = Point(sum(p.x for p in ring) / len(ring), sum(p.y for p in ring) / len(ring))
            base = Point(sum(p.x for p in flat.ring) / len(flat.ring), sum(p.y for p in flat.ring) / len(flat.ring))
            apart = (centre - middle).dot(base - middle) < 0
            there = motion(line[len(line) // 2]).distance(middle)
            tests.append((apart == around, motion.flips != flat.motion.flips, there, len(tests), motion))
    motion = min(tests, key=lambda t: t[:4])[4] if tests else flat.motion
    face: Literal["right", "wrong"] = "wrong" if around and flat.up == "right" else flat.up
    return Flat(piece, halves, motion, face, flat.near and not around, folds)


def _facings(flats: list[Flat], pattern: Pattern, state: State) -> Iterable[Flat]:
    """Facings that are seen inside: on what lies wrong side up."""
    for piece in pattern.pieces:
        if not is_facing(piece) or piece.cut.cloth != "main":
            continue
        for flat in flats:
            if flat.up == "right" or piece.source != flat.piece.name:
                continue
            if any({name for name, _, _ in seam} == {piece.name, flat.piece.name} for seam in state.seams):
                yield Flat(piece, flat.sides, flat.motion, "right", False)
