"""How the cloth of a garment lies at one moment of its sewing: what a picture of that moment must show.

An edge once sewn is no longer a cut edge: it lies along a seam with its partner beside it, is turned over to the wrong
side as a hem, has a facing inside it or a band hanging from it. A dart once sewn is shut. All of it follows from what
the operations declare (`outcome`), none of it from which operation it was; so a new operation needs nothing here.
"""

from __future__ import annotations

import weakref
from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from itertools import pairwise
from typing import Any

from kit.errors import KitError
from kit.piece.piece import Piece, Side
from kit.sewing import stretches
from kit.sewing.cut import Cut
from kit.sewing.operation import Operation
from kit.sewing.outcome import Hung, Outcome
from kit.sewing.run import Run
from kit.sewing.scene import EdgeLie
from kit.sewing.spans import Span, spans
from kit.sewing.state import EdgeKey, State

FOLDS = ("dart", "pleated")
"""The facts that a dart, pleat or tuck is folded away."""
_SAME = 0.5  # mm between places along an edge that are one
_DEEP = 6.0  # mm of allowance shown turned back where nobody has said how much


@dataclass(frozen=True)
class Lying:
    """The garment's `state` and the stretches that were left as `openings` of the finished garment."""

    state: State = field(default_factory=State)
    openings: tuple[Span, ...] = ()

    def edges(self, pattern: Cut, piece: Piece, side: Side) -> tuple[EdgeLie, ...]:
        """How the edges of one half lie that are no cut edges any more, in the order of its outline."""
        found: list[EdgeLie] = []
        turned = self._on_piece(pattern, piece.name, (each.run for each in self.state.turned))
        hung = self._on_piece(pattern, piece.name, (run for each in self.state.hung for run in each.to))
        for edge in piece.edges:
            key = (piece.name, side, edge.name)
            done = [each.span for each in self.state.on(key) if _shuts(each.how)]
            rows = [span for join in self.state.joins for span in (join.a, join.b) if span.key == key]
            ends = [end for span in (*done, *rows, *turned, *hung) if span.key == key for end in span.ends]
            for what in ("faced", "shut_in"):
                parts = stretches.parts(self.state.facts, (what, *key), edge.path.length)
                ends += [end for part in parts for end in part[:2]]
            for whole in _joined(done):
                inner = {round(end, 1) for end in ends if whole.start + _SAME < end < whole.end - _SAME}
                places = pairwise((whole.start, *sorted(inner), whole.end))
                lies = (self._lie(pattern, piece, replace(whole, start=low, end=high)) for low, high in places)
                found += _alike(lies)
            for span in turned:  # pressed under, and sewn later
                if span.key == key and not any(_on(lie, span) for lie in found):
                    found.append(self._lie(pattern, piece, span))
        return tuple(found)

    def _on_piece(self, pattern: Cut, name: str, runs: Iterable[Run]) -> list[Span]:
        return [span for run in runs if run.piece == name for span in spans(pattern, run)]

    def _lie(self, pattern: Cut, piece: Piece, span: Span) -> EdgeLie:
        size = piece.edge(span.edge).path.length
        allowance = float(piece.edge(span.edge).allowance or 0.0)
        for turned in reversed(self.state.turned):
            if any(span.overlap(each) > _SAME for each in spans(pattern, turned.run)):
                return EdgeLie(span.edge, span.start, span.end, "turned", turned.deep, turned.row)
        hung = self._on_piece(pattern, piece.name, (run for each in self.state.hung for run in each.to))
        if any(span.overlap(each) > _SAME for each in hung):
            return EdgeLie(span.edge, span.start, span.end, "hung")
        if self.state.holds(stretches.of_span("faced", span, size)):
            return EdgeLie(span.edge, span.start, span.end, "faced")
        hemmed = any(done.how == "hemmed" and done.span.overlap(span) > _SAME for done in self.state.on(span.key))
        if hemmed and not self.state.across((span,)):
            return EdgeLie(span.edge, span.start, span.end, "turned", min(allowance, _DEEP))
        if not self.partners(span.key):
            return EdgeLie(span.edge, span.start, span.end, "faced")
        shut_in = self.state.touches(stretches.of_span("shut_in", span, size))
        return EdgeLie(span.edge, span.start, span.end, "seamed", allowance / 2 if shut_in else allowance)

    def partners(self, key: EdgeKey) -> tuple[EdgeKey, ...]:
        """The edges that one is sewn to."""
        return tuple(sorted(other for seam in self.state.seams if key in seam for other in seam if other != key))

    def shut(self, piece: Piece, side: Side) -> tuple[str, ...]:
        """The darts, pleats and tucks of one half that are sewn."""
        facts = self.state.facts
        names = [dart.name for dart in piece.darts] + [pleat.name for pleat in piece.pleats]
        return tuple(name for name in names if any((what, piece.name, side, name) in facts for what in FOLDS))

    def fused(self, piece: str) -> bool:
        """Whether a piece has its interfacing on its wrong side."""
        return piece in self.state.fused or ("interfaced", piece) in self.state.facts

    def band(self, piece: str) -> Hung | None:
        """What the piece hangs on, where it is a band sewn on."""
        return next((hung for hung in self.state.hung if any(run.piece == piece for run in hung.band)), None)

    def open_at(self, span: Span) -> bool:
        """Whether a stretch, closed or not, is an opening of the finished garment."""
        return any(span.overlap(each) > _SAME for each in self.openings)

    def after(self, pattern: Cut, outcome: Outcome, opens: tuple[Span, ...], step: str) -> Lying:
        """What follows an operation."""
        return Lying(self.state.after(outcome, pattern, step), self.openings + opens)


def _shuts(how: str) -> bool:
    """Whether an edge closed in that way is a cut edge no longer; one that is only finished still is."""
    return how != "finished"


def _on(lie: EdgeLie, span: Span) -> bool:
    return lie.edge == span.edge and min(lie.end, span.end) - max(lie.start, span.start) > _SAME


def _alike(found: Iterable[EdgeLie]) -> list[EdgeLie]:
    """Stretches of one edge that follow one another, those that lie alike as one."""
    out: list[EdgeLie] = []
    for lie in found:
        if out and replace(out[-1], end=lie.end) == replace(lie, start=out[-1].start):
            out[-1] = replace(out[-1], end=lie.end)
        else:
            out.append(lie)
    return out


def _joined(found: Iterable[Span]) -> list[Span]:
    """Spans of one edge in order, those that touch as one."""
    out: list[Span] = []
    for span in sorted(found, key=lambda span: span.start):
        if out and span.start - out[-1].end <= _SAME:
            last = out.pop()
            span = Span(last.piece, last.side, last.edge, last.start, max(last.end, span.end))
        out.append(span)
    return out


_KNOWN: dict[int, tuple[weakref.ref[Any], tuple[tuple[Operation, Lying], ...]]] = {}


def _all(pattern: Cut) -> tuple[tuple[Operation, Lying], ...]:
    """Every operation of a pattern with how the cloth lies before it. Worked once for a pattern, which never changes:
    each of its pictures asks for it."""
    known = _KNOWN.get(id(pattern))
    if known is not None and known[0]() is pattern:
        return known[1]
    found: list[tuple[Operation, Lying]] = []
    lying = Lying()
    for record in getattr(pattern, "sewing", ()):
        for operation in record.operations:
            found.append((operation, lying))
            try:
                lying = lying.after(pattern, operation.outcome(pattern), operation.opens(pattern), record.title)
            except KitError:  # it names what is gone: the proof tells of it
                continue
    key = id(pattern)
    _KNOWN[key] = (weakref.ref(pattern, lambda _: _forget(key)), tuple(found))
    return tuple(found)


def _forget(key: int) -> None:
    _KNOWN.pop(key, None)


def lying_before(pattern: Cut, made: Operation) -> Lying:
    """How the cloth lies just before an operation of the pattern's order; that of a garment not begun for one that is
    in no order."""
    known = _all(pattern)
    for each, lying in known:
        if each is made:
            return lying
    return next((lying for each, lying in known if each == made), Lying())
