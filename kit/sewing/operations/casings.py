"""Fold-over casings; what is drawn through them is in `drawn_in`."""

from __future__ import annotations

from kit.sewing.fields import part
from kit.sewing.operations.hems import clipped
from kit.sewing.sections import bindings as section
from kit.sewing.vocabulary import *

EDGE = 2.0  # mm from the inner fold to the row


def in_its_edges(casing: Any, state: State, pattern: Cut) -> Iterator[Case]:
    """The gap lies on the edges that are sewn."""
    if casing.gap is not None:
        covered = {(each.piece, edge) for each in casing.edges for edge in each.edges}
        yield Case(all((casing.gap.piece, edge) in covered for edge in casing.gap.edges), casing.gap)


def gap_shown(made: Any, pattern: Cut) -> tuple[Run, tuple[float, float] | None]:
    """The edge that a picture shows, the one that is left open if any is, and from where to where it is, mm along."""
    first, at = shown(pattern, made.edges[0]), made.gap
    if at is None:
        return first, None
    just = (run for run in made.edges if (run.piece, run.edges) == (at.piece, at.edges) and run.side in (None, at.side))
    run = next((shown(pattern, each, at.side) for each in just), first)
    gap = shown(pattern, at, run.side)
    return run, (gap.start or 0.0, run_length(pattern, replace(gap, start=None)) if gap.end is None else gap.end)


@operation
class Casing(Operation):
    """Fold an edge over to a tunnel `depth` deep. `gap`: a part of it (front.waist.between(...)) left open.

    Example::

        make.casing(tote.top, first=1 * cm, depth=3 * cm)
    """

    kind = "casing"
    seam_class = "6.03.01"
    tools = ("machine", "pins", "iron")
    crosses = True
    says = (clipped, "first", "second", Say("sew", lambda casing: casing.gap is None, "sew_gap"), in_two_rows("edges"))
    also = (
        Also("total", lambda casing, pattern: casing.first + casing.depth),
        Also("row", EDGE),
        Also("gap", lambda casing, pattern: sewn_length(pattern, (casing.gap,)) if casing.gap else 0.0, "length"),
    )
    gives = (Of("casing", "edges"), Of("casing_depth", "edges", size="depth"))
    wanted = (Of("threaded", "edges"),)
    changes = (Brings("turned", lambda made, pattern: tuple(Turned(run, made.depth, made.row) for run in made.edges)),)
    rules = (
        in_a_row("edges"),
        deeper_turn("edges", "depth", says="casing_turns"),
        Rule(Asking(in_its_edges), "gap_elsewhere"),
    )

    edges: tuple[Run, ...] = runs(takes=("first", "depth"))
    first: float = width(default=10 * mm, said="first turn", fills="part")
    depth: float = width(most=DEEPEST_HEM, fills={"second": "part"})
    gap: Run | None = part(by_name=True, default=None, fills={"where": "place"}, touched=False)

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closed_but(pattern, self.edges, (self.gap,) if self.gap else (), "hemmed")

    @property
    def row(self) -> float:
        """mm from the fold to the row."""
        return max(self.depth - EDGE, self.depth / 2)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run, gap = gap_shown(self, pattern)
        row = Row(run, inset=self.row, gap=gap)
        return (turned_up(run, self.depth, row, section=section.casing()),)
