"""Fold-over casings; what is drawn through them is in `drawn_in`."""

from __future__ import annotations

from collections.abc import Iterator

from kit.sewing.cut import Cut
from kit.sewing.fields import part, runs, width
from kit.sewing.operation import Operation, Say, operation, shown
from kit.sewing.operations.places import alike, closed_but, sewn_length
from kit.sewing.outcome import Closing
from kit.sewing.reading import DEEPEST_HEM
from kit.sewing.rules import Asking, Case, Excess, Of, Rule, in_a_row
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.sections import bindings as section
from kit.sewing.state import State
from kit.units import mm

EDGE = 2.0  # mm from the inner fold to the row


def _in_the_casing(casing: Casing, state: State, pattern: Cut) -> Iterator[Case]:
    if casing.gap is not None:
        covered = {(each.piece, edge) for each in casing.edges for edge in each.edges}
        yield Case(all((casing.gap.piece, edge) in covered for edge in casing.gap.edges), casing.gap)


@operation
class Casing(Operation):
    """Fold an edge over to a tunnel `depth` deep. `gap`: a part of it (front.waist.between(...)) left open.

    Example::

        make.casing(tote.top, first=1 * cm, depth=3 * cm)
    """

    kind = "casing"
    seam_class = "6.03.01"
    cautions = ("needle", "iron")
    tools = ("machine", "pins", "iron")
    crosses = True
    says = (
        "first",
        "second",
        Say("sew", lambda casing: casing.gap is None),
        Say("sew_gap", lambda casing: casing.gap is not None),
        lambda casing, pattern: alike(pattern, casing.edges),
    )
    why = ("why",)
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
        Rule(Asking(_in_the_casing), "gap_elsewhere"),
    )

    edges: tuple[Run, ...] = runs(takes=("first", "depth"))
    first: float = width(default=10 * mm, said="first turn", fills="part")
    depth: float = width(most=DEEPEST_HEM, fills={"second": "part"})
    gap: Run | None = part(by_name=True, default=None, fills={"where": "place"})

    def runs(self) -> tuple[Run, ...]:
        return self.edges

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closed_but(pattern, self.edges, (self.gap,) if self.gap else (), "hemmed")

    def values(self, pattern: Cut) -> dict[str, tuple[object, str]]:
        found = super().values(pattern)
        found |= {"total": (self.first + self.depth, "allowance"), "row": (EDGE, "allowance")}
        return found | ({"gap": (sewn_length(pattern, (self.gap,)), "length")} if self.gap else {})

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.edges[0])
        gap = None
        if self.gap is not None and self.gap.piece == run.piece and self.gap.edges == run.edges:
            gap = (self.gap.start or 0.0, self.gap.end or sewn_length(pattern, (shown(pattern, self.gap),)))
        return (
            Scene(
                layers=(Layer(run, up="wrong", turn=tuple((edge, self.depth) for edge in run.edges)),),
                rows=(Row(run, inset=max(self.depth - EDGE, self.depth / 2), gap=gap),),
                focus=run,
                arrows=((run, "in"),),
                section=section.casing(),
            ),
        )
