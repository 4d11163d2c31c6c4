"""Hems that do not show or go beyond a machine-stitched turn: blind, wide, taped, rolled by hand."""

from __future__ import annotations

from kit.geometry import parallel
from kit.sewing.operations.hems import BEGUN, ONE_ROW_EACH, TURNED, Hem, stitched
from kit.sewing.sections import hems as shapes
from kit.sewing.vocabulary import *

LEAST_BLIND = 15.0  # mm of hem that can be sewn blind (common practice, no source)
MOST_ROLLED = 10.0  # mm of edge that can be rolled (common practice, no source)
LEAST_SURPLUS = 2.0  # mm of fullness that needs easing
MOST_SURPLUS = 0.15
"""Share of the edge that can be eased into a wide hem (common practice, no source)."""


@operation
class HandHem(Hem):
    """A hem `depth` deep whose stitches do not show, sewn by "hand" or "machine". `turn`: its raw edge is turned under
    by so much first, else it gets its `finish`.

    Example::

        make.blind_hem(skirt_front.hem, depth=3 * cm)
    """

    kind = "blind_hem"
    tools: ClassVar[Words] = ("machine", "pins", "iron", "hand_needle")
    stages: ClassVar[tuple[Stage, ...]] = (Stage("fold", (*BEGUN, *TURNED), sews=False), stitched("baste", "{by}"))
    why: ClassVar[Keys] = ("why",)
    work: ClassVar[Work] = Work(6.0, lambda hem: 20.0 if hem.by == "hand" else 8.0)  # 20 cm by hand in 4 minutes
    rules: ClassVar[Rules] = (*Hem.rules, at_least("depth", LEAST_BLIND, "blind_hem_narrow", of="edges"))

    first: float = width(most=DEEPEST_HEM, argument="depth")
    second: float = size(default=0, most=DEEPEST_HEM, argument="turn")
    by: str = word(("hand", "machine"), default="hand")

    @classmethod
    def made(cls, asked: Asked) -> Hem:
        """What is turned first is written last."""
        depth, turn = asked.read["first"], asked.read["second"]
        return cls(**asked.read | {"first": turn or depth, "second": depth if turn else 0.0})

    def _section(self) -> Section:
        return shapes.blind(self.second > 0)

    def rows(self, run: Run) -> tuple[Row, ...]:
        return (Row(run, inset=max(self.depth - 6.0, self.depth / 2), style="hand" if self.by == "hand" else "zigzag"),)


def _long_enough(hem: WideHem, state: State, pattern: Cut) -> Iterable[Case]:
    surplus = hem.surplus(pattern)
    return (off_by(hem.edges[0], -surplus, LEAST_SURPLUS, surplus=-surplus),)


def _short_enough(hem: WideHem, state: State, pattern: Cut) -> Iterable[Case]:
    surplus, size = hem.surplus(pattern), sum(run_length(pattern, run) for run in hem.edges)
    return (off_by(hem.edges[0], surplus, MOST_SURPLUS * size, surplus=surplus),)


@operation
class WideHem(HandHem):
    """A deep hem turned once, eased where its edge curves, its raw edge finished or covered with hem `tape`, sewn down
    by "hand" or "machine".

    Example::

        make.wide_hem(skirt_front.hem, depth=4 * cm, tape=True)
    """

    # where its edge curves, the raw edge is longer than the place it is sewn to: it is drawn up on ease stitching
    kind = "wide_hem"
    stages = (
        Stage("fold", (*BEGUN, lambda hem, pattern: hem.told(hem.raw_edge(pattern), pattern)), sews=False),
        stitched("wide_hem.{by}", press="wide_hem.press"),
    )
    why = ("wide_hem.why",)
    also = (Also("surplus", lambda hem, pattern: hem.surplus(pattern), "length"),)
    rules = (
        *HandHem.rules,
        Rule(Asking(_long_enough), "wide_hem_short", do="do_face_or_narrow_hem"),
        Rule(Asking(_short_enough), "wide_hem_full", do="do_face_or_narrow_hem"),
    )

    second: float = fixed(0.0)
    tape: bool = flag(default=False)

    @classmethod
    def made(cls, asked: Asked) -> Hem:
        return (BoughtTapeHem if asked.read["tape"] else WideHem)(**asked.read)

    def surplus(self, pattern: Cut) -> float:
        """mm by which the raw edge is longer than the place it is turned up to, on one half; below zero where it is
        shorter, as at an edge that curves inward."""
        return sum(_surplus(pattern, run, self.first) for run in self.edges)

    def raw_edge(self, pattern: Cut) -> list[str]:
        """The keys of what becomes of the raw edge."""
        eased = self.surplus(pattern) > LEAST_SURPLUS
        keys = ["wide_hem.ease"] if eased else []
        keys += ["wide_hem.tape" if not eased else "wide_hem.tape_eased"] if self.tape else []
        keys += ["hem.finish"] if not self.tape and self.finish != "none" else []
        return [*keys, "hem.single", *(["wide_hem.draw"] if eased else [])]

    def _section(self) -> Section:
        return shapes.taped() if self.tape else shapes.blind(False)


@operation(verb="")
class BoughtTapeHem(WideHem):
    """A wide hem whose raw edge is covered by hem tape."""

    kind = "taped_hem"
    notions = ("thread", "hem_tape")

    tape: bool = fixed(True)

    def notion_amounts(self, pattern: Cut) -> dict[str, tuple[float, str]]:
        return {"hem_tape": (sum(span.length for run in self.edges for span in spans(pattern, run)), "length")}


@operation
class RolledHem(Hem):
    """A fine edge rolled and slip-stitched by hand; it takes `turn` in all.

    Example::

        make.rolled_hem(sleeve.wrist, turn=6 * mm)
    """

    kind = "rolled_hem"
    tools = ("machine", "scissors", "hand_needle")
    says = (*BEGUN, "stay", "trim", "roll", "slip")
    stages = ()  # rolled a little at a time, each bit sewn at once
    why = ("why",)
    also = (Also("row", lambda hem, pattern: max(hem.first - 2.0, hem.first / 2)),)  # it keeps the edge from stretching
    work = Work(5.0, 30.0)
    gives = (Of("shut_in", "edges"),)
    rules = (ONE_ROW_EACH, *Hem.rules, at_most("first", MOST_ROLLED, "rolled_hem_wide", of="edges"))

    first: float = width(default=6 * mm, most=20.0, argument="turn")
    second: float = fixed(0.0)
    catching: tuple[Run, ...] = fixed(())
    finish: str = fixed("none")

    def _section(self) -> Section:
        return shapes.rolled()

    def rows(self, run: Run) -> tuple[Row, ...]:
        return (Row(run, inset=2.0, style="hand"),)


def _surplus(pattern: Cut, run: Run, depth: float) -> float:
    """mm by which a raw edge turned up by `depth` is longer than the line it comes to lie on."""
    piece = pattern.piece(run.piece)
    path = path_of(pattern, run)
    if path.is_straight:
        return 0.0
    middle = path.length / 2
    outside = not piece.outline.contains(path.at(middle) + path.normal_at(middle) * 0.5)
    out = depth if outside else -depth
    return parallel(path, out).length - parallel(path, -out).length
