"""Facts of the garment in work, as operations write and ask them: of edges, of halves, of marks. See `outcome.Fact`."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from kit.piece.piece import Side
from kit.sewing.cut import Cut
from kit.sewing.marked import Place
from kit.sewing.outcome import Fact
from kit.sewing.run import Run
from kit.sewing.spans import sides_of, spans
from kit.sewing.state import State
from kit.sewing.stretches import Stretch, of_stretch


def facts_of(pattern: Cut, runs: Iterable[Run], what: str) -> tuple[Fact, ...]:
    """(what, piece, side, edge) of every edge the runs mean; of a part of an edge with its stretch
    (`kit.sewing.stretches`)."""
    return tuple(dict.fromkeys(fact for run in runs for fact in _of_run(pattern, run, what)))


def _of_run(pattern: Cut, run: Run, what: str) -> Iterator[Fact]:
    if run.start is None and run.end is None:
        yield from ((what, run.piece, side, edge) for side in sides_of(pattern, run) for edge in run.edges)
        return
    piece = pattern.piece(run.piece)
    for span in spans(pattern, run):
        size = piece.edge(span.edge).path.length
        yield of_stretch((what, run.piece, span.side, span.edge), Stretch(span.start, span.end, size))


def edge_facts(pattern: Cut, runs: Iterable[Run], what: str) -> tuple[Fact, ...]:
    """(what, piece, side, edge) of every edge the runs lie on, whole or in part."""
    return tuple(
        dict.fromkeys(
            (what, run.piece, side, edge) for run in runs for side in sides_of(pattern, run) for edge in run.edges
        )
    )


def half_facts(pattern: Cut, runs: Iterable[Run], what: str) -> tuple[Fact, ...]:
    """(what, piece, side) of every half the runs mean."""
    return tuple(dict.fromkeys((what, run.piece, side) for run in runs for side in sides_of(pattern, run)))


def place_facts(pattern: Cut, places: Iterable[Place], what: str) -> tuple[Fact, ...]:
    """(what, piece, side, mark) of every mark on every half it is meant on."""
    return tuple(
        (what, place.piece, side, place.mark.name)
        for place in places
        for side in ((place.side,) if place.side else pattern.piece(place.piece).sides)
    )


def at_place(pattern: Cut, fact: Fact, at: float) -> Fact:
    """A fact of an edge asked of the place `at` mm along it alone."""
    size = pattern.piece(fact[1]).edge(fact[3]).path.length
    return of_stretch(fact, Stretch(max(at - 1.0, 0.0), min(at + 1.0, size), size))


def lacking(state: State, facts: Iterable[Fact]) -> tuple[Fact, ...]:
    """The facts that do not hold."""
    return tuple(fact for fact in facts if not state.holds(fact))


def drawn_facts(pattern: Cut, run: Run, to: float) -> tuple[Fact, ...]:
    """("drawn_up_to", piece, half, its edges, mm) of each half of a run that long stitches draw up to that length."""
    return tuple((*_drawn(run, side), f"{to:.2f}") for side in sides_of(pattern, run))


def drawn_up_to(state: State, run: Run, side: Side) -> float | None:
    """mm that a half of a run is drawn up to, where it is."""
    return next((float(fact[4]) for fact in state.facts if fact[:4] == _drawn(run, side)), None)


def _drawn(run: Run, side: Side) -> Fact:
    return ("drawn_up_to", run.piece, side, "+".join(sorted(run.edges)))
