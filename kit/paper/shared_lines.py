"""What several sizes draw alike is drawn once.

Lines are compared curve by curve, since sizes rarely have a whole outline in common and often a neckline or a fold.
Equal curves are shared by the sizes that draw them; straight lines that run over one another (a fold, a waistline, an
edge that does not change) are cut where one of them ends, and each stretch belongs to the sizes that cover it. Nothing
is moved: the parts of one size, put together, are that size's drawing.

Comparing every line with every other would take the square of their number. Curves are looked up instead by their
points rounded to a fiftieth of a millimetre, and straight lines are sorted, by their direction and then by how far the
endless line they lie in passes from the origin; neighbours that differ by less than drawing does are one.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from kit.geometry import Curve, Line, Point
from kit.picture.drawing import Dot, Item, Label, Stroke

_SAME = 0.02
"""mm: what lies no farther apart than so is one, on paper a tenth of a line's width."""
_TURN = 5e-5
"""radians: so much two straight lines may differ in direction; over a metre that is a twentieth of a millimetre."""

Key = tuple[object, ...]


@dataclass(frozen=True)
class SharedPart:
    """What is drawn for `sizes` (their places among all, from 0) and for nobody else."""

    sizes: tuple[int, ...]
    items: tuple[Item, ...]


def shared(drawings: Sequence[Sequence[Item]]) -> tuple[SharedPart, ...]:
    """The drawings of all sizes (mm, lying as they shall lie, small to large) as parts: those of most sizes first. A
    label of the same words is kept once, from the middle size that has it.

    >>> short, long = (Stroke((Line(Point(0, 0), Point(0, down)),), "fold") for down in (-400, -430))
    >>> for part in shared([[short], [long]]):
    ...     (stroke,) = part.items
    ...     print(part.sizes, [round(point.y) for point in (stroke.curves[0].start, stroke.curves[0].end)])
    (0, 1) [0, -400]
    (1,) [-400, -430]
    """
    strokes: dict[Key, list[tuple[int, Stroke]]] = {}
    dots: dict[Key, list[tuple[int, Dot]]] = {}
    labels: dict[str, list[tuple[int, Label]]] = {}
    for size, items in enumerate(drawings):
        for item in items:
            if isinstance(item, Stroke):
                # Only lines that look alike can be one. A cut line may be shared in part, so whether it closes is left
                # out; any other closed line is compared whole.
                key: Key = (item.role, item.closed and item.role != "cut", item.arrow, item.thickness)
                strokes.setdefault(key, []).append((size, item))
            elif isinstance(item, Dot):
                place = (round(item.at.x / _SAME), round(item.at.y / _SAME), item.role)
                dots.setdefault(place, []).append((size, item))
            elif isinstance(item, Label):
                labels.setdefault(item.text, []).append((size, item))
    found: dict[tuple[int, ...], list[Item]] = {}
    for group in strokes.values():
        for sizes, stroke in _strokes(group):
            found.setdefault(sizes, []).append(stroke)
    for placed in dots.values():
        found.setdefault(_sizes(size for size, _ in placed), []).append(placed[0][1])
    for said in labels.values():
        found.setdefault(_sizes(size for size, _ in said), []).append(said[len(said) // 2][1])
    return tuple(
        SharedPart(sizes, tuple(found[sizes])) for sizes in sorted(found, key=lambda sizes: (-len(sizes), sizes))
    )


def _sizes(places: Iterable[int]) -> tuple[int, ...]:
    return tuple(sorted(set(places)))


def _strokes(group: Sequence[tuple[int, Stroke]]) -> list[tuple[tuple[int, ...], Stroke]]:
    """Strokes of one kind as strokes with the sizes they belong to.

    What `_owners` gives is walked stroke by stroke, and pieces that follow one another and belong to the same sizes are
    put together again, so that a dashed line is dashed in one go. A piece that several sizes have is drawn by the first
    that comes to it, `done` for all others.
    """
    # An arrow and a small closed sign mean something as a whole only.
    if group[0][1].arrow or (group[0][1].closed and group[0][1].role != "cut"):
        whole: dict[Key, list[tuple[int, Stroke]]] = {}
        for size, stroke in group:
            whole.setdefault(tuple(_curve_key(curve) for curve in stroke.curves), []).append((size, stroke))
        return [(_sizes(size for size, _ in same), same[0][1]) for same in whole.values()]
    places: list[tuple[int, int, int]] = []  # size, stroke, place of the curve in the stroke
    curves: list[Curve] = []
    for number, (size, stroke) in enumerate(group):
        for place, curve in enumerate(stroke.curves):
            places.append((size, number, place))
            curves.append(curve)
    pieces = _owners(places, curves)
    out: list[tuple[tuple[int, ...], Stroke]] = []
    done: set[int] = set()
    for number, (_, stroke) in enumerate(group):
        run: list[Curve] = []
        owner: tuple[int, ...] = ()
        for place in range(len(stroke.curves)):
            for piece, sizes, identity in pieces[number, place]:
                if identity in done:
                    continue
                done.add(identity)
                # It ends where the sizes change, and where a piece drawn before has left a hole.
                if run and (sizes != owner or not run[-1].end.close_to(piece.start, 1e-6)):
                    out.append((owner, replace(stroke, curves=tuple(run), closed=False)))
                    run = []
                run.append(piece)
                owner = sizes
        if run:
            # Closed is only what came through without a cut.
            whole_line = stroke.closed and len(run) == len(stroke.curves)
            out.append((owner, replace(stroke, curves=tuple(run), closed=whole_line)))
    return out


def _owners(
    places: Sequence[tuple[int, int, int]], curves: Sequence[Curve]
) -> dict[tuple[int, int], list[tuple[Curve, tuple[int, ...], int]]]:
    """For every curve (by stroke and place in it) its pieces in order, the sizes of each, and a number that is the
    same for pieces that are the same line."""
    pieces: dict[tuple[int, int], list[tuple[Curve, tuple[int, ...], int]]] = {}
    identity = 0
    bent: dict[Key, list[int]] = {}
    straight: list[int] = []
    for i, curve in enumerate(curves):
        if isinstance(curve, Line) and curve.length > _SAME:
            straight.append(i)
        else:
            bent.setdefault(_curve_key(curve), []).append(i)
    for same in bent.values():
        sizes = _sizes(places[i][0] for i in same)
        for i in same:
            pieces[places[i][1:]] = [(curves[i], sizes, identity)]
        identity += 1
    for same in _in_line(curves, straight):
        identity = _stretches(same, places, curves, pieces, identity)
    return pieces


def _stretches(
    same: Sequence[int],
    places: Sequence[tuple[int, int, int]],
    curves: Sequence[Curve],
    pieces: dict[tuple[int, int], list[tuple[Curve, tuple[int, ...], int]]],
    identity: int,
) -> int:
    """Cut the straight lines `same`, which lie in one endless line, where any of them ends, and put what comes of it
    into `pieces`. Gives the next number that is free.

    Each line becomes a span of distances along the first one. The ends of all spans, those nearer than `_SAME` taken as
    one, are the places where the endless line is cut; between two of them lies a slot, and all lines that cover it have
    the same number there. A line keeps its own two ends to the last digit: only what lies between is cut.
    """
    first = curves[same[0]]
    way = (first.end - first.start).unit()
    spans = {i: ((curves[i].start - first.start).dot(way), (curves[i].end - first.start).dot(way)) for i in same}
    ends = sorted(value for span in spans.values() for value in span)
    cuts = [ends[0]]
    for value in ends[1:]:
        if value - cuts[-1] > _SAME:
            cuts.append(value)
    numbers: dict[int, int] = {}
    for i in same:
        start, end = spans[i]
        low, high = min(start, end), max(start, end)
        stops = [low, *(cut for cut in cuts if low + _SAME < cut < high - _SAME), high]
        curve = curves[i]
        found: list[tuple[Curve, tuple[int, ...], int]] = []
        # In the line's own direction, which may be against that of the first.
        for a, b in pairwise(stops if start < end else stops[::-1]):
            middle = (a + b) / 2
            sizes = _sizes(places[j][0] for j in same if min(spans[j]) < middle < max(spans[j]))
            slot = max(place for place, cut in enumerate(cuts) if cut <= middle)
            number = numbers.setdefault(slot, identity + len(numbers))
            one, other = ((value - start) / (end - start) for value in (a, b))
            found.append((Line(curve.start.lerp(curve.end, one), curve.start.lerp(curve.end, other)), sizes, number))
        pieces[places[i][1:]] = found
    return identity + len(numbers)


def _in_line(curves: Sequence[Curve], straight: Sequence[int]) -> list[list[int]]:
    """Straight lines gathered by the endless line they lie in: by direction first, then by distance from the origin."""

    def angle(i: int) -> float:
        way = curves[i].end - curves[i].start
        turn = math.atan2(way.y, way.x) % math.pi  # there and back is one direction
        return turn - math.pi if turn > math.pi - _TURN else turn

    def off(i: int, turn: float) -> float:
        start = curves[i].start
        return start.y * math.cos(turn) - start.x * math.sin(turn)

    turned = sorted((angle(i), i) for i in straight)
    groups: list[list[int]] = []
    for members in _clusters(turned, _TURN):
        turn = angle(members[len(members) // 2])
        groups.extend(_clusters(sorted((off(i, turn), i) for i in members), _SAME))
    return groups


def _clusters(ordered: Sequence[tuple[float, int]], gap: float) -> list[list[int]]:
    """Places in the order of their values, parted where two that follow each other are more than `gap` apart."""
    out: list[list[int]] = []
    last = -math.inf
    for value, i in ordered:
        if value - last > gap:
            out.append([])
        out[-1].append(i)
        last = value
    return out


def _curve_key(curve: Curve) -> Key:
    """The same for curves that are drawn alike, from the same end; arcs and other curves go by their cubics."""
    if isinstance(curve, Line):
        return ("line", *_rounded(curve.start, curve.end))
    return tuple(place for cubic in curve.as_cubics() for place in _rounded(cubic.start, cubic.c1, cubic.c2, cubic.end))


def _rounded(*points: Point) -> tuple[int, ...]:
    return tuple(round(value / _SAME) for point in points for value in (point.x, point.y))
