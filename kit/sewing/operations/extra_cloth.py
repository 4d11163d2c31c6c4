"""Cloth that was cut to fit with, and is trimmed once the fit is right."""

from __future__ import annotations

from kit.piece.piece import Piece
from kit.piece.recut import PieceChange
from kit.sewing.rules import whole_edges
from kit.sewing.vocabulary import *


def _has_extra(trim: TrimToFit, state: State, pattern: Cut) -> Iterable[Case]:
    for run in trim.along:
        piece = pattern.piece(run.piece)
        for name in run.edges:
            yield Case(piece.edge(name).extra > 0, run, name)


def _reachable(trim: TrimToFit, state: State, pattern: Cut) -> Iterable[Case]:
    """The edge is not turned under, faced or shut in: scissors reach it."""
    for run in trim.along:
        for side in sides_of(pattern, run):
            for name in run.edges:
                shut = state.touches(("shut_in", run.piece, side, name))
                gone = any(done.how != "sewn" for done in state.on((run.piece, side, name)))
                yield Case(not shut and not gone, run, name)


@operation
class TrimToFit(Operation):
    """Trim the cloth that was cut to fit with, once the fit is right: the edges keep the allowance they are sewn with.

    Example::

        make.trim_to_fit(front.side, back.side)
    """

    kind = "trim_to_fit"
    tools = ("scissors",)
    says = (lambda made, pattern: made.widths(pattern), both("along"))
    work = Work(1.0, each=2.0)
    gives = (Of("trimmed_to_fit", "along"),)
    rules = (
        whole_edges("along"),
        Rule(Asking(_has_extra), "no_extra_to_trim", each=True, ends="run"),
        Rule(Of("trimmed_to_fit", "along"), "trimmed_to_fit_twice", holds=False, do="do_take_one_out", each=True),
        Rule(Asking(_reachable), "trimmed_to_fit_late", each=True),
    )

    along: tuple[Run, ...] = runs()

    def widths(self, pattern: Cut) -> Iterator[Sentence]:
        """A sentence for each allowance that is left."""
        found: dict[float, list[Run]] = {}
        for run in self.along:
            for name in run.edges:
                width = pattern.piece(run.piece).edge(name).allowance or 0.0
                found.setdefault(width, []).append(Run(run.piece, (name,), run.side))
        for width, runs_of in found.items():
            values = {"edge": (tuple(runs_of), "place"), "allowance": (width, "allowance")}
            yield Sentence("trim_to_fit.cut", values)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        """Each piece as it was cut, with what is trimmed off it."""
        found = []
        for name in dict.fromkeys(run.piece for run in self.along):
            piece = pattern.piece(name)
            edges = {edge for run in self.along if run.piece == name for edge in run.edges}
            left = {edge: replace(piece.edge(edge), extra=0.0) for edge in edges}
            layer = Layer(shown(pattern, Run(name, (piece.edges[0].name,))), up="wrong")
            found.append(Scene(layers=(layer,), recut=PieceChange(piece, piece.with_edges(**left), ())))
        return tuple(found)


def untrimmed(pieces: Iterable[Piece], state: State) -> Iterator[tuple[Piece, str]]:
    """(piece, edge) of every edge whose extra cloth was never trimmed, on either half."""
    for piece in pieces:
        for edge in piece.edges:
            if edge.extra > 0 and any(
                not state.holds(("trimmed_to_fit", piece.name, side, edge.name)) for side in piece.sides
            ):
                yield piece, edge.name
