"""A cut piece where it lies in the finished garment laid flat."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import cached_property
from itertools import pairwise
from typing import Literal

from kit.geometry import Motion, Point, Vector
from kit.lesson.pattern import Pattern
from kit.picture.chains import Chain, dense, joined, length, part
from kit.picture.place import fold_mirror
from kit.picture.shut import Shut, edge_points, shut_by
from kit.piece.piece import Piece, Side
from kit.sewing.run import Run
from kit.sewing.spans import path_of, spans


@dataclass(frozen=True)
class Flat:
    """A cut piece where it lies: whole where it is cut on the fold, else one half. `motion` takes the draft of its
    first side there; `up` is the face that is seen, `near` whether it lies uppermost. `folds` are shut; `drawn_in` is
    (height, share of its distance from x = 0) of places in the draft, where it was drawn in or out to lie edge on edge
    with what it is sewn to; `bent` takes a place where it lies to where it is seen on the body."""

    piece: Piece
    sides: tuple[Side, ...]
    motion: Motion
    up: Literal["right", "wrong"]
    near: bool
    folds: tuple[Shut, ...] = ()
    drawn_in: tuple[tuple[float, float], ...] = ()
    bent: Callable[[Point], Point] | None = None

    @property
    def side(self) -> Side:
        return self.sides[0]

    def put(self, p: Point, side: Side | None = None) -> Point:
        """Where a point of the draft lies, on the half `side` of a piece on the fold."""
        return self.put_shut(shut_by(self.folds)(p), side)

    def put_shut(self, moved: Point, side: Side | None = None) -> Point:
        """The same for a point that is given as it lies with the folds shut."""
        moved = self._in(moved)
        if self.piece.fold and side is not None and side != self.side:
            moved = fold_mirror(self.piece)(moved)
        there = self.motion(moved)
        return there if self.bent is None else self.bent(there)

    def edge(self, name: str, side: Side | None = None) -> Chain:
        """An edge as it lies, run as it was drafted."""
        motion = self.motion
        if self.piece.fold and side is not None and side != self.side:
            motion = fold_mirror(self.piece).then(self.motion)
        chain = edge_points(self.piece, name, self.folds)
        if self.drawn_in:
            chain = [self._in(p) for p in dense(chain, 15.0)]
        if self.bent is None:
            return [motion(p) for p in chain]
        return [self.bent(motion(p)) for p in dense(chain, 8.0)]

    def _in(self, p: Point) -> Point:
        """A point drawn in towards x = 0 by the share of its height."""
        if not self.drawn_in:
            return p
        low, high = self.drawn_in[0], self.drawn_in[-1]
        if p.y <= low[0] or p.y >= high[0]:
            return Point(p.x * (low[1] if p.y <= low[0] else high[1]), p.y)
        for (y0, one), (y1, two) in pairwise(self.drawn_in):
            if y0 <= p.y <= y1:
                return Point(p.x * (one + (two - one) * (p.y - y0) / max(y1 - y0, 1e-9)), p.y)
        return p

    @cached_property
    def ring(self) -> Chain:
        """Its outline, closed."""
        names = [edge.name for edge in self.piece.edges]
        if not self.piece.fold:
            chains = [self._oriented(name, self.side) for name in names]
            return [p for chain in chains for p in chain[:-1]]
        at = names.index(self.piece.fold)
        order = names[at + 1 :] + names[:at]
        one = [p for name in order for p in self._oriented(name, self.side)[:-1]]
        one.append(self._oriented(order[-1], self.side)[-1])
        other = [p for name in order for p in self._oriented(name, self.sides[-1])[:-1]]
        other.append(self._oriented(order[-1], self.sides[-1])[-1])
        return one + other[::-1][1:-1]

    def _oriented(self, name: str, side: Side) -> Chain:
        """An edge the way the outline goes round."""
        path = self.piece.edge(name).path
        placed = self.piece.outline.edge(name)
        chain = self.edge(name, side)
        return chain if path.start.distance(placed.start) < path.end.distance(placed.start) else chain[::-1]

    def run(self, pattern: Pattern, run: Run) -> list[Chain]:
        """The stretches that a run means here, what meets over the fold made one."""
        found: list[Chain] = []
        for side in self.sides if run.side is None else (run.side,):
            if side not in self.sides:
                continue
            whole: list[Chain] = []
            for span in spans(pattern, replace(run, side=side)):
                chain = self.edge(span.edge, side)
                full = self.piece.edge(span.edge).path.length
                if span.end - span.start < full - 0.5:
                    scale = length(chain) / full
                    chain = part(chain, span.start * scale, span.end * scale)
                whole.append(chain)
            found += joined(whole)
        return joined(found)

    def place(self, pattern: Pattern, run: Run, distance: float, side: Side) -> tuple[Point, Vector]:
        """The place so many mm along a run on one half, and the way out of the piece there, square to its edge."""
        path = path_of(pattern, run)
        at = min(max(distance, 0.0), path.length)
        here = path.at(at)
        step = path.normal_at(min(max(at, 0.5), path.length - 0.5))
        near = path.at(min(max(at, 0.5), path.length - 0.5))
        if self.piece.outline.contains(near + step * 1.5):
            step = step * -1.0
        there = self.put(here, side)
        way = self.put(here + step, side) - there
        return there, way.unit() if way.length > 1e-9 else Vector(0.0, 1.0)
