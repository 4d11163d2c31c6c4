"""The garment as it grows: what is closed, joined, fused and made after each operation.

A `State` is a value; the outcome of an operation gives a new one. It knows no operations: what speaks against one is
asked in `kit.sewing.order`.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import cached_property
from typing import NamedTuple

from kit.piece.piece import Piece, Side
from kit.sewing import stretches
from kit.sewing.cut import Cut
from kit.sewing.joins import EdgeKey as EdgeKey
from kit.sewing.joins import Join, joins_of
from kit.sewing.outcome import Bound, Fact, How, Hung, Outcome, Turned
from kit.sewing.refit import Refit
from kit.sewing.run import Run
from kit.sewing.spans import Span, corner, minus, neighbours, sides_of, spans

TOLERANCE = 0.5  # mm along a stitch line that may stay unaccounted for

Part = tuple[str, Side]


class Done(NamedTuple):
    """A closed stretch with the step that closed it."""

    span: Span
    how: How
    step: str


@dataclass(frozen=True)
class State:
    """`closed` stretches in sewing order; `joins` stretches sewn to each other; `laid` edges of pieces sewn onto a
    place of another; `fused` pieces; `made` strips and how many of each are `attached`; `handled` pieces; `facts` that
    hold (see `outcome.Fact`), those of stretches that lie at an edge ("faced") or whose seam waits for the iron
    ("unpressed") among them; `inside_out` pieces that lie wrong side out; `turned` what lies folded over to the wrong
    side, `bound` what is shut in a binding; `hung` bands that hang on the garment; `refits` what try-ons have changed
    of the cloth since it was cut, in their order."""

    closed: tuple[Done, ...] = ()
    joins: frozenset[Join] = frozenset()
    laid: frozenset[frozenset[EdgeKey]] = frozenset()
    fused: tuple[str, ...] = ()
    made: tuple[str, ...] = ()
    attached: tuple[tuple[str, int], ...] = ()
    handled: frozenset[str] = frozenset()
    facts: frozenset[Fact] = frozenset()
    inside_out: frozenset[str] = frozenset()
    turned: tuple[Turned, ...] = ()
    bound: tuple[Bound, ...] = ()
    hung: tuple[Hung, ...] = ()
    refits: tuple[Refit, ...] = ()

    @cached_property
    def seams(self) -> frozenset[frozenset[EdgeKey]]:
        """Pairs of edges that are joined somewhere along them."""
        return self.laid | {join.keys for join in self.joins}

    @cached_property
    def seamed(self) -> tuple[Span, ...]:
        """The stretches that lie in a seam, with the openings and gaps in it."""
        return tuple(span for join in self.joins for span in (join.a, join.b))

    def edges(self, what: str) -> frozenset[EdgeKey]:
        """The edges that a fact is true of, all along or in part."""
        return frozenset((fact[1], fact[2], fact[3]) for fact in self.facts if fact[0] == what)  # type: ignore[misc]

    def sewn_there(self, one: EdgeKey, at: float, two: EdgeKey, to: float) -> bool:
        """Whether two edges are sewn to each other at the places `at` of the one and `to` of the other (mm)."""
        return any(join.meets(one, at, two, to) for join in self.joins)

    def across(self, found: Iterable[Span]) -> tuple[Span, ...]:
        """What lies opposite some stretches along the seams they are in."""
        every = ((join, span) for span in found for join in self.joins)
        return tuple(there for join, span in every if (there := join.across(span)) is not None)

    def opposite(self, pattern: Cut, run: Run) -> tuple[Run, ...]:
        """What lies opposite a run along the seams it is in, as parts of edges."""
        return tuple(Run(span.piece, (span.edge,), span.side, *span.ends) for span in self.across(spans(pattern, run)))

    def holds(self, fact: Fact) -> bool:
        """Whether a fact is true of all it is asked of: of a whole edge, or of the stretch it tells."""
        return stretches.holds(self.facts, fact)

    def touches(self, fact: Fact) -> bool:
        """Whether a fact is true of any of what it is asked of."""
        return stretches.touches(self.facts, fact)

    def on(self, key: EdgeKey) -> tuple[Done, ...]:
        """What closed stretches lie on one edge of one half."""
        return tuple(done for done in self.closed if (done.span.piece, done.span.side, done.span.edge) == key)

    def raw(self, piece: Piece, side: Side, edge: str) -> tuple[Span, ...]:
        """The stretches of that edge still raw, longer than `TOLERANCE`. An edge on the fold has none."""
        if edge == piece.fold:
            return ()
        left: list[Span] = []
        here = 0.0
        size = piece.edge(edge).path.length
        for done in sorted(self.on((piece.name, side, edge)), key=lambda done: done.span.start):
            if done.span.start - here > TOLERANCE:
                left.append(Span(piece.name, side, edge, here, done.span.start))
            here = max(here, done.span.end)
        if size - here > TOLERANCE:
            left.append(Span(piece.name, side, edge, here, size))
        return tuple(left)

    def covered(self, pattern: Cut, run: Run) -> float:
        """mm of the run that is closed, over the halves it means."""
        return sum(done.span.overlap(span) for span in spans(pattern, run) for done in self.closed)

    def is_raw(self, pattern: Cut, run: Run) -> bool:
        """Whether none of the run is closed."""
        return self.covered(pattern, run) <= TOLERANCE

    def is_closed(self, pattern: Cut, run: Run) -> bool:
        """Whether all of the run is closed."""
        return sum(span.length for span in spans(pattern, run)) - self.covered(pattern, run) <= TOLERANCE

    def count(self, strip: str) -> int:
        """How many of the strip are attached."""
        return sum(number for name, number in self.attached if name == strip)

    def joined(self, a: Part, b: Part) -> bool:
        """Whether two cut pieces hang together by whatever seams."""
        return any(a in group and b in group for group in self.groups((a, b)))

    def groups(self, parts: tuple[Part, ...], folds: frozenset[str] = frozenset()) -> tuple[frozenset[Part], ...]:
        """The cut pieces in `parts` and those seamed to them, as groups that hang together. `folds` names the
        pieces whose two halves are one cloth."""
        links: list[frozenset[Part]] = [frozenset((piece, side) for piece, side, _ in seam) for seam in self.seams]
        links += [frozenset({(piece, "left"), (piece, "right")}) for piece in folds]
        groups = [frozenset({part}) for part in parts]
        for link in links:
            touching = [group for group in groups if group & link]
            groups = [group for group in groups if not group & link]
            groups.append(frozenset().union(link, *touching))
        return tuple(groups)

    def continuous(self, pattern: Cut, a: Run, b: Run) -> bool:
        """Whether two runs lie end to end on the garment so far: a seam joins an edge beside the one with an
        edge beside the other."""
        if a.piece == b.piece:
            return True
        return any(self._meet(pattern, a, i, b, j) for i in sides_of(pattern, a) for j in sides_of(pattern, b))

    def meets(self, pattern: Cut, a: Run, b: Run) -> bool:
        """Whether two runs named as one line lie end to end by now on every half they mean: over a fold, or with a seam
        between an edge beside the one and an edge beside the other. Two halves of one piece are one cloth only where it
        was cut on the fold."""
        piece = pattern.piece(a.piece)
        if a.piece == b.piece and piece.fold and all(piece.fold in neighbours(piece, run.edges) for run in (a, b)):
            return True
        mine, theirs = sides_of(pattern, a), sides_of(pattern, b)
        shared = [(side, side) for side in mine if side in theirs] if len(mine) == len(theirs) > 1 else []
        return all(self._meet(pattern, a, i, b, j) for i, j in shared or [(i, j) for i in mine for j in theirs])

    def _meet(self, pattern: Cut, a: Run, i: Side, b: Run, j: Side) -> bool:
        """Whether an edge beside one run, on one half each, is sewn to an edge beside another where they end."""
        first, second = (replace(run, start=None, end=None) for run in (a, b))
        return any(
            self.sewn_there(
                (a.piece, i, left), corner(pattern, first, left), (b.piece, j, right), corner(pattern, second, right)
            )
            for left in neighbours(pattern.piece(a.piece), a.edges)
            for right in neighbours(pattern.piece(b.piece), b.edges)
        )

    def after(self, outcome: Outcome, pattern: Cut, step: str = "") -> State:
        """The garment once an operation with that outcome is done in the step of that title."""
        uses, effect = outcome.uses, outcome.effect
        again = {(effect.also[what], *rest) for what, *rest in self.facts if what in effect.also}
        joins = set(self.joins).union(*(joins_of(pattern, a, b, outcome.left) for a, b in outcome.joins))
        laid = set(self.laid).union(*(_pairs(pattern, a, b) for a, b in effect.laid))
        faced = _told(pattern, "faced", (span for run in effect.faced for span in spans(pattern, run)))
        waiting = minus((span for run in effect.unpressed for span in spans(pattern, run)), outcome.left)
        made = replace(self, joins=frozenset(joins), laid=frozenset(laid))
        iron = tuple(span for run in effect.pressed for span in spans(pattern, run))
        ironed = _told(pattern, "unpressed", iron + made.across(iron))
        facts = stretches.without(self.facts, effect.undone) | set(effect.facts) | again | set(faced)
        return replace(
            made,
            closed=self.closed + tuple(Done(c.span, c.how, step) for c in outcome.closes),
            fused=self.fused + tuple(uses.interfacing),
            made=self.made + effect.made,
            attached=self.attached + tuple(effect.attached.items()),
            handled=self.handled | set(uses.pieces),
            facts=stretches.without(facts | set(_told(pattern, "unpressed", waiting)), ironed),
            inside_out=(self.inside_out | set(effect.inside_out)) - set(effect.right_side_out),
            turned=self.turned + effect.turned,
            bound=self.bound + effect.bound,
            hung=self.hung + effect.hung,
            refits=self.refits if effect.refit is None else (*self.refits, effect.refit),
        )


def _told(pattern: Cut, what: str, found: Iterable[Span]) -> tuple[Fact, ...]:
    """A fact of stretches of edges."""
    return tuple(stretches.of_span(what, span, pattern.piece(span.piece).edge(span.edge).path.length) for span in found)


def _pairs(pattern: Cut, a: Run, b: Run) -> set[frozenset[EdgeKey]]:
    """Joined edges of two runs: left to left and right to right, unless a half is named."""
    first, second = sides_of(pattern, a), sides_of(pattern, b)
    found: set[frozenset[EdgeKey]] = set()
    for i in first:
        for j in second:
            if i == j or len(first) == 1 or len(second) == 1:
                for left in a.edges:
                    for right in b.edges:
                        found.add(frozenset({(a.piece, i, left), (b.piece, j, right)}))
    return found
