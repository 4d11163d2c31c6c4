"""Cutting paper: a piece's outline divided into parts that are moved, with everything drawn on them.

The parts of a slashed piece are the outline from one place on to another. What lies on a part goes with it; the
gaps that open are ruled straight, edge by edge.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, replace
from itertools import pairwise

from kit.diagnostic import measured, message, named_edge
from kit.errors import KitError
from kit.geometry import Motion, Path, Point, Region
from kit.piece.dart import mouth
from kit.piece.darts_and_pleats import Dart, Pleat
from kit.piece.piece import Mark, Notch, Piece
from kit.piece.pleat import stretches

AlongEdge = tuple[str, float]
"""A place on the outline: an edge and mm along it."""

SAME = 1e-6
JOIN = 0.01
STAY = Motion.identity()


@dataclass(frozen=True)
class SlashedPart:
    """A part of the paper: the outline from one place on to another, how it is moved, and the inner corner."""

    start: AlongEdge
    end: AlongEdge
    motion: Motion
    inner: Point | None = None


def _stretches(piece: Piece, start: AlongEdge, end: AlongEdge) -> list[tuple[str, float, float]]:
    """The outline from `start` on around to `end`, edge by edge: (edge, from, to)."""
    names = [edge.name for edge in piece.edges]
    lengths = {edge.name: edge.path.length for edge in piece.edges}
    found: list[tuple[str, float, float]] = []
    name, at = start
    for _ in range(len(names) + 1):
        last = name == end[0] and (end[1] > at + SAME or (bool(found) and end[1] >= at - SAME))
        to = end[1] if last else lengths[name]
        if to - at > SAME:
            found.append((name, at, to))
        if last:
            return found
        name, at = names[(names.index(name) + 1) % len(names)], 0.0
    return found


def _shape(piece: Piece, part: SlashedPart) -> Region:
    points = [
        p for n, a, b in _stretches(piece, part.start, part.end) for p in piece.edge(n).path.between(a, b).points(0.05)
    ]
    points += [part.inner] if part.inner is not None else []
    return Region.of(points)


@dataclass(frozen=True)
class _Outline:
    """The edges after the parts were moved: the paths that make up each, and for every stretch of an old edge (from,
    to, in mm along it) how far along the new one it begins, less what is ruled before the whole edge (`shifts`), and
    how it was moved."""

    paths: dict[str, list[Path]]
    placed: dict[str, list[tuple[float, float, float, Motion]]]
    shifts: dict[str, float]

    def place(self, name: str, at: float, after: bool) -> float:
        """Where `at` mm along an old edge lies on the new one. A place where a gap opens has two answers, the end of
        the stretch before it and the beginning of the one `after`: what starts there lies after the gap, what ends
        there before it, so that nothing that was marked is stretched over the new paper."""
        spots = self.placed[name]
        for low, high, new, _ in reversed(spots) if after else spots:
            if low - SAME <= at <= high + SAME:
                return self.shifts[name] + new + at - low
        # It lay in a mouth that is cut out of the outline: what is left of it is the end of what came before.
        return self.shifts[name] + max((s[2] + s[1] - s[0] for s in spots if s[1] <= at), default=0.0)


def _relaid(piece: Piece, parts: tuple[SlashedPart, ...], prefer: str) -> _Outline:
    """The outline put together again from the moved parts.

    It is done edge by edge, not part by part, because an edge keeps its name, its allowance and its notches when it is
    cut: the stretches of it that lie on several parts are moved each with its own part and chained with straight lines
    where they no longer touch. A gap between two edges has no edge of its own; it is given to one of the two, to the
    first unless the other is the one that the author opens (`prefer`).
    """
    by_edge: dict[str, list[tuple[float, float, Motion]]] = {edge.name: [] for edge in piece.edges}
    for part in parts:
        for name, low, high in _stretches(piece, part.start, part.end):
            by_edge[name].append((low, high, part.motion))
    curves: dict[str, list[Path]] = {}
    placed: dict[str, list[tuple[float, float, float, Motion]]] = {}
    for name, found in by_edge.items():
        run: list[Path] = []
        spots, length = [], 0.0
        for low, high, motion in sorted(found, key=lambda item: item[0]):
            path = piece.edge(name).path.between(low, high).moved(motion)
            if run and run[-1].end.distance(path.start) > JOIN:
                run.append(Path.line(run[-1].end, path.start))
                length += run[-1].length
            spots.append((low, high, length, motion))
            run.append(path)
            length += path.length
        curves[name], placed[name] = run, spots
    names = [edge.name for edge in piece.edges]
    shifts = dict.fromkeys(names, 0.0)
    for name, following in zip(names, names[1:] + names[:1], strict=True):
        if not curves[name] or not curves[following]:
            continue
        a, b = curves[name][-1].end, curves[following][0].start
        if a.distance(b) > 0.05:
            if prefer == following:
                curves[following].insert(0, Path.line(a, b))
                shifts[following] += a.distance(b)
            else:
                curves[name].append(Path.line(a, b))
    return _Outline(curves, placed, shifts)


def rearranged(
    piece: Piece, parts: tuple[SlashedPart, ...], cuts: tuple[Path, ...], prefer: str = ""
) -> tuple[Piece, Callable[[str, float, bool], float]]:
    """The piece with its parts moved; gaps on the outline are ruled straight (onto the edge `prefer` where two
    edges part). Also gives where a place on an old edge lies on the new one (before or after a gap there).

    What is bound to an edge (notches, mouths of darts and pleats, marks along it) is carried by its place along that
    edge. What lies in the middle of the paper (points, guides, marks) goes with the part it lies on; a guide that
    crosses a cut is cut there too, each bit going its own way."""
    shapes = [(_shape(piece, part), part.motion) for part in parts]

    def motion_at(point: Point) -> Motion:
        # A point on the cut belongs to both parts; it stays where the paper stays, so that a draft which is opened
        # and closed again finds its points where they were.
        gaps = [shape.distance(point) for shape, _ in shapes]
        least = min(gaps) + 1e-3
        return min(
            (motion for gap, (_, motion) in zip(gaps, shapes, strict=True) if gap <= least),
            key=lambda m: 0 if m == STAY else 1,
        )

    outline = _relaid(piece, parts, prefer)
    curves, placed, new_place = outline.paths, outline.placed, outline.place
    edges = tuple(replace(e, path=Path.of(*curves[e.name])) if curves[e.name] else e for e in piece.edges)
    darts = []
    for dart in piece.darts:
        motion = next((m for a, b, _, m in placed[dart.edge] if a - SAME <= dart.start and dart.end <= b + SAME), STAY)
        start = new_place(dart.edge, dart.start, True)
        darts.append(replace(dart, start=start, end=start + dart.end - dart.start, apex=motion(dart.apex)))
    pleats = []
    for pleat in piece.pleats:
        start = new_place(pleat.edge, pleat.start, True)
        moves = [motion_at(leg.at(leg.length / 2)) for leg in pleat.lines]
        lines = tuple(leg.moved(go) for leg, go in zip(pleat.lines, moves, strict=True))
        moved = replace(pleat, start=start, end=start + pleat.end - pleat.start, lines=(lines[0], lines[1]))
        if pleat.far:
            low = new_place(pleat.far, pleat.far_start, True)
            moved = replace(moved, far_start=low, far_end=low + pleat.far_end - pleat.far_start)
        pleats.append(moved)
    guides: list[tuple[str, Path]] = []
    for name, path in piece.guides:
        for i, bit in enumerate(_cut_at(path, cuts)):
            guides.append((name if i == 0 else f"{name}_{i + 1}", bit.moved(motion_at(bit.at(bit.length / 2)))))
    marks = []
    for mark in piece.marks:
        if mark.edge:
            mark = replace(
                mark, start=new_place(mark.edge, mark.start, True), end=new_place(mark.edge, mark.end, False)
            )
        if mark.path is not None:
            mark = replace(mark, path=mark.path.moved(motion_at(mark.path.at(mark.path.length / 2))))
        if mark.point is not None:
            mark = replace(mark, point=motion_at(mark.point)(mark.point))
        marks.append(mark)
    result = replace(
        piece,
        edges=edges,
        darts=tuple(darts),
        pleats=tuple(pleats),
        notches=tuple(replace(n, distance=new_place(n.edge, n.distance, False)) for n in piece.notches),
        marks=tuple(marks),
        points=tuple((name, motion_at(p)(p)) for name, p in piece.points),
        guides=tuple(guides),
    )
    return result, new_place


def _cut_at(path: Path, cuts: tuple[Path, ...]) -> list[Path]:
    marks = sorted({round(path.nearest(p), 6) for cut in cuts for p in path.crossings(cut)})
    marks = [m for m in marks if 0.5 < m < path.length - 0.5]
    ends = [0.0, *marks, path.length]
    return [path.between(a, b) for a, b in pairwise(ends) if b - a > 0.5]


def holds(piece: Piece, part: SlashedPart) -> float:
    """How strongly a part wants to stay: the fold, then the grainline's middle, then size."""
    found = _stretches(piece, part.start, part.end)
    if piece.fold and any(name == piece.fold for name, _, _ in found):
        return math.inf
    shape = _shape(piece, part)
    if piece.grain is not None:
        middle = piece.grain.start.mid(piece.grain.end)
        if shape.contains(middle):
            return 1e12 + shape.area
    return shape.area


def on_edge(piece: Piece, edge: str, at: float) -> Point:
    path = piece.edge(edge).path
    if not -SAME <= at <= path.length + SAME:
        raise KitError(
            message(
                "refusal.no_place_on", at=measured(at), edge=named_edge(piece.edge(edge)), length=measured(path.length)
            ),
            where=piece.title,
            do=message("refusal.shorter_do"),
        )
    if edge == piece.fold:
        raise KitError(
            f"the {piece.edge(edge).label} lies on the fold, so the paper cannot be cut there.",
            where=piece.title,
            do="Choose another edge.",
        )
    for dart in piece.darts:
        if dart.edge == edge and dart.start + SAME < at < dart.end - SAME:
            raise KitError(
                message("refusal.inside_fold", at=measured(at), edge=named_edge(piece.edge(edge)), fold=dart.label),
                where=piece.title,
                do=message("refusal.beside_do"),
            )
    for start, end, pleat in stretches(piece, edge):
        if start + SAME < at < end - SAME:
            raise KitError(
                message("refusal.inside_fold", at=measured(at), edge=named_edge(piece.edge(edge)), fold=pleat.label),
                where=piece.title,
                do=message("refusal.beside_do"),
            )
    return path.at(min(max(at, 0.0), path.length))


def slash_line(piece: Piece, start: Point, end: Point, apart_from: str = "") -> Path:
    """The straight slash line, checked to stay on the paper and clear of other darts."""
    line = Path.line(start, end)
    for edge in piece.edges:
        for p in line.crossings(edge.path):
            if p.distance(end) > 0.1 and p.distance(start) > 0.1:
                raise KitError(
                    message("refusal.slash_leaves", edge=named_edge(edge)),
                    where=piece.title,
                    do=message("refusal.slash_leaves_do"),
                )
    middle = line.at(line.length / 2)
    if not piece.outline.contains(middle):
        raise KitError(message("refusal.slash_outside"), where=piece.title, do=message("refusal.other_place_do"))
    for dart in piece.darts:
        if dart.name != apart_from:
            for side in mouth(piece, dart):
                if any(p.distance(dart.apex) > 0.1 for p in line.crossings(Path.line(dart.apex, side))):
                    raise KitError(
                        message("refusal.slash_through", fold=dart.label),
                        where=piece.title,
                        do=message("refusal.slash_dart_do"),
                    )
    for pleat in piece.pleats:
        if any(line.crossings(leg) for leg in pleat.lines):
            raise KitError(
                message("refusal.slash_through", fold=pleat.label),
                where=piece.title,
                do=message("refusal.slash_pleat_do"),
            )
    return line


def with_path(piece: Piece, edge: str, path: Path, there: Callable[[float], float]) -> Piece:
    """The piece with one edge redrawn; `there` gives new distances along it for old ones."""

    def notch(n: Notch) -> Notch:
        return replace(n, distance=there(n.distance)) if n.edge == edge else n

    def mark(m: Mark) -> Mark:
        return replace(m, start=there(m.start), end=there(m.end)) if m.edge == edge else m

    def dart(d: Dart) -> Dart:
        return replace(d, start=there(d.start), end=there(d.end)) if d.edge == edge else d

    def pleat(p: Pleat) -> Pleat:
        if p.edge == edge:
            p = replace(p, start=there(p.start), end=there(p.end))
        return replace(p, far_start=there(p.far_start), far_end=there(p.far_end)) if p.far == edge else p

    return replace(
        piece.with_edges(**{edge: replace(piece.edge(edge), path=path)}),
        notches=tuple(map(notch, piece.notches)),
        marks=tuple(map(mark, piece.marks)),
        darts=tuple(map(dart, piece.darts)),
        pleats=tuple(map(pleat, piece.pleats)),
    )
