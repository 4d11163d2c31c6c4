"""Fold-over casings; what is drawn through them is in `drawn_in`."""

from __future__ import annotations

from kit.sewing.fields import part
from kit.sewing.operations.hems import clipped
from kit.sewing.places import closed_but, in_two_rows, sewn_length
from kit.sewing.sections import bindings as section
from kit.sewing.vocabulary import *

EDGE = 2.0  # mm from the inner fold to the row


def in_its_edges(casing: Any, state: State, pattern: Cut) -> Iterator[Case]:
    """The gap lies on the edges that are sewn."""
    if casing.gap is not None:
        covered = {(each.piece, edge) for each in casing.edges for edge in each.edges}
        yield Case(all((casing.gap.piece, edge) in covered for edge in casing.gap.edges), casing.gap)


def holds_gap(run: Run, gap: Run) -> bool:
    """Whether a gap lies on just the edges of a run."""
    return (run.piece, run.edges) == (gap.piece, gap.edges) and run.side in (None, gap.side)


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
    says = (
        clipped,
        "first",
        "second",
        Say("sew", lambda casing: casing.gap is None),
        Say("sew_gap", lambda casing: casing.gap is not None),
        in_two_rows("edges"),
    )
    why = ("why",)
    also = (
        Also("total", lambda casing, pattern: casing.first + casing.depth),
        Also("row", EDGE),
        Also("gap", lambda casing, pattern: sewn_length(pattern, (casing.gap,)) if casing.gap else 0.0, "length"),
    )
    gives = (Of("casing", "edges"), Of("casing_depth", "edges", size="depth"))
    wanted = (Of("threaded", "edges"),)
    rules = (
        in_a_row("edges"),
        Rule(
            Excess(lambda casing: casing.first - casing.depth, of="edges", slack=0.5),
            "hem_turns",
            says="casing_turns",
            do="do_deepen_second_turn",
            tells=(),
        ),
        Rule(Asking(in_its_edges), "gap_elsewhere"),
    )

    edges: tuple[Run, ...] = runs(takes=("first", "depth"))
    first: float = width(default=10 * mm, said="first turn", fills="part")
    depth: float = width(most=DEEPEST_HEM, fills={"second": "part"})
    gap: Run | None = part(by_name=True, default=None, fills={"where": "place"})

    def runs(self) -> tuple[Run, ...]:
        return self.edges

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closed_but(pattern, self.edges, (self.gap,) if self.gap else (), "hemmed")

    def effect(self, pattern: Cut) -> Effect:
        row = max(self.depth - EDGE, self.depth / 2)
        return replace(super().effect(pattern), turned=tuple(Turned(run, self.depth, row) for run in self.edges))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run, gap = shown(pattern, self.edges[0]), None
        if self.gap is not None:  # the picture is of the edge that is left open
            side = self.gap.side
            run = next((shown(pattern, each, side) for each in self.edges if holds_gap(each, self.gap)), run)
            part = shown(pattern, self.gap, run.side)
            gap = (part.start or 0.0, run_length(pattern, replace(part, start=None)) if part.end is None else part.end)
        row = Row(run, inset=max(self.depth - EDGE, self.depth / 2), gap=gap)
        return (turned_up(run, self.depth, row, section=section.casing()),)
