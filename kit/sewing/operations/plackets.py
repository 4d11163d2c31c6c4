"""Plackets: what finishes a slit so that it can open. The continuous bound placket, of one strip.

The order (a row round the end before anything is cut, the cut, the slit pulled straight, the strip, the slanted row
that keeps it inside) is common practice, no source."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from kit.diagnostic import as_value
from kit.geometry import Path
from kit.piece.slit import Slit, slit_of
from kit.sewing.fields import mark
from kit.sewing.mark_spot import halves
from kit.sewing.sections import plackets as section
from kit.sewing.vocabulary import *

_NEAR = 15.0  # mm of the edge on either side of a slit that must still be raw


def _slit(made: BoundPlacket, pattern: Cut) -> Slit | None:
    return slit_of(pattern.piece(made.slit.piece), made.slit.mark)


def _mouth(made: BoundPlacket, pattern: Cut, slit: Slit) -> Run:
    """The stretch of edge round its mouth."""
    size = pattern.piece(made.slit.piece).edge(slit.edge).path.length
    low, high = max(slit.at - _NEAR, 0.0), min(slit.at + _NEAR, size)
    return Run(made.slit.piece, (slit.edge,), made.slit.side, low, high)


def _opens(made: BoundPlacket, state: State, pattern: Cut) -> Iterator[Case]:
    yield Case(_slit(made, pattern) is not None, made.slit)


def _raw(made: BoundPlacket, state: State, pattern: Cut) -> Iterator[Case]:
    if (slit := _slit(made, pattern)) is not None:
        mouth = _mouth(made, pattern, slit)
        yield Case(state.is_raw(pattern, mouth), mouth)


def _enough(made: BoundPlacket, state: State, pattern: Cut) -> Iterator[Case]:
    strip, count = pattern.strip(made.name), state.count(made.name) + made.count(pattern)
    yield Case(count <= strip.count, strip, values={"count": as_value(count), "cut": as_value(strip.count)})


def _long(made: BoundPlacket, state: State, pattern: Cut) -> Iterator[Case]:
    strip, needed = pattern.strip(made.name), made.needed(pattern)
    values = {"length": measured(strip.length), "needed": measured(needed)}
    yield Case(strip.length >= needed - 0.5, strip, amount=needed - strip.length, values=values)


def _wide(made: BoundPlacket, state: State, pattern: Cut) -> Iterator[Case]:
    strip, needed = pattern.strip(made.name), 4 * made.allowance
    values = {"width": measured(strip.width), "needed": measured(needed)}
    yield Case(strip.width >= needed - 0.5, strip, amount=needed - strip.width, values=values)


@operation
class BoundPlacket(Operation):
    """Cut a slit open and bind both its sides with one straight strip, as for a cuff. Each half takes a strip.

    Example::

        make.bound_placket(placket, slit=sleeve.cuff_slit)
    """

    kind = "bound_placket"
    cautions = ("scissors", "needle", "iron")
    tools = ("machine", "pins", "iron", "scissors", "chalk")
    says = ("mark", "reinforce", "cut", "open", "cover", "slant", "lie")
    why = ("why", "why_row")
    gives = (Of("slit_finished", "slit"),)
    rules = (
        Rule(Of("slit_finished", "slit"), "placket_twice", holds=False, says="worked_twice", do="do_take_one_out"),
        Rule(Asking(_opens), "slit_adrift", ends="all"),
        Rule(Asking(_raw), "placket_late"),
        Rule(Asking(_enough), "too_few_strips", tells=("count", "cut")),
        Rule(Asking(_long), "placket_short", tells=("length", "needed")),
        Rule(Asking(_wide), "placket_narrow", tells=("width", "needed")),
    )
    also = (
        Also("long", lambda made, pattern: made.line(pattern).length, "length"),
        Also("wide", lambda made, pattern: made.finished(pattern)),
        Also("edge", lambda made, pattern: made.edge(pattern), "place"),
    )

    name: str = strip(argument="strip", fills={"strip": "strip"})
    slit: Place = mark(
        "slit", refused="is no slit.", do='Draw one with slit("cuff_slit", ...) and name it.', fills={"slit": "mark"}
    )
    allowance: float = width(default=6 * mm)

    def count(self, pattern: Cut) -> int:
        """How many strips it takes, one for each half."""
        return len(halves(pattern, self.slit))

    def line(self, pattern: Cut) -> Path:
        """The slit, from the edge to its end."""
        slit = _slit(self, pattern)
        assert self.slit.mark.path is not None
        return slit.line if slit is not None else self.slit.mark.path

    def edge(self, pattern: Cut) -> tuple[Run, ...]:
        """The edge it opens on."""
        slit = _slit(self, pattern)
        edges = pattern.piece(self.slit.piece).edges
        return (Run(self.slit.piece, (slit.edge if slit is not None else edges[0].name,), self.slit.side),)

    def needed(self, pattern: Cut) -> float:
        """mm of strip: down one side of the slit and up the other, from the cut edge."""
        (edge,) = self.edge(pattern)
        allowed = pattern.piece(edge.piece).edge(edge.edges[0]).allowance or 0.0
        return 2 * (self.line(pattern).length + allowed)

    def finished(self, pattern: Cut) -> float:
        """mm across the placket when it is made."""
        return (pattern.strip(self.name).width - 2 * self.allowance) / 2

    @property
    def uses(self) -> Uses:
        return replace(super().uses, strips={self.name: 2 if self.slit.side is None else 1})

    def effect(self, pattern: Cut) -> Effect:
        return replace(super().effect(pattern), made=(self.name,), attached={self.name: self.count(pattern)})

    def minutes(self, pattern: Cut) -> float:
        """25 minutes each (common practice, no source)."""
        return 5.0 + 25.0 * self.count(pattern)

    def rows_round(self, pattern: Cut) -> tuple[Path, Path]:
        """The reinforcing row: from the allowance beside the slit at its mouth to its very end, and back."""
        line = self.line(pattern)
        aside = line.start_tangent.left() * self.allowance
        return Path.line(line.start + aside, line.end), Path.line(line.end, line.start - aside)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        (edge,) = self.edge(pattern)
        run, line = shown(pattern, edge), self.line(pattern)
        into, back = self.rows_round(pattern)
        near = replace(run, start=None, end=None)
        slit = _slit(self, pattern)
        if slit is not None:
            size = pattern.piece(run.piece).edge(slit.edge).path.length
            near = replace(run, start=max(slit.at - line.length, 0.0), end=min(slit.at + line.length, size))
        across = self.finished(pattern)
        aside = line.start_tangent.left() * (across / 2)
        placket = Path.line(line.start + aside, line.end + aside)
        return (
            Scene(
                layers=(Layer(run, up="wrong"),),
                rows=(Row(run, line=into), Row(run, line=back)),
                focus=near,
                things=(Thing("cut", run, line, 3.0),),
            ),
            Scene(
                layers=(Layer(run, up="right"),),
                focus=near,
                things=(Thing("binding", run, placket, across),),
                section=section.placket_bound(),
            ),
        )
