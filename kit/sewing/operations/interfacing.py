"""Sewn-in interfacing."""

from __future__ import annotations

from kit.sewing.operations.facings import INTERFACED, Interfacing
from kit.sewing.vocabulary import *


def _beyond_cloth(row: BasteInterfacing, state: State, pattern: Cut) -> Iterable[Case]:
    """The row lies in the allowance."""
    for run in row.around(pattern):
        allowance = pattern.piece(run.piece).edge(run.edges[0]).allowance
        if allowance:
            yield Case(allowance > row.distance, run, amount=row.distance - allowance)


@operation
class BasteInterfacing(Interfacing):
    """Baste sewn-in interfacing to the wrong side of whole pieces, `distance` outside the stitch line.

    Example::

        make.baste_interfacing(waistband)
    """

    kind = "baste_interfacing"
    tools = ("machine", "pins", "scissors")
    notions = ("thread", "sewn_in_interfacing")
    says = ("lay", "sew", "trim")
    rules = (*INTERFACED, Rule(Asking(_beyond_cloth), "basting_outside_cloth", each=True))

    pieces: tuple[str, ...] = pieces(like="make.baste_interfacing(collar)")
    distance: float = width(default=3 * mm)

    def around(self, pattern: Cut) -> tuple[Run, ...]:
        """The edges it is basted along."""
        return tuple(
            Run(name, (edge.name,))
            for name in self.pieces
            for edge in pattern.piece(name).edges
            if edge.name != pattern.piece(name).fold
        )

    def minutes(self, pattern: Cut) -> float:
        metres = sum(span.length for run in self.around(pattern) for span in spans(pattern, run)) / 1000
        return 4.0 + 6.0 * metres

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        first = pattern.piece(self.pieces[0])
        runs = [shown(pattern, run) for run in self.around(pattern) if run.piece == first.name]
        return (self.lined(runs[0], *(Row(each, inset=-self.distance, style="baste") for each in runs)),)
