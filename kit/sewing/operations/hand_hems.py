"""Hems that do not show or go beyond a machine-stitched turn: blind, wide, taped, rolled by hand."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from kit.diagnostic import Diagnostic, measured, message
from kit.geometry import parallel
from kit.sewing.cut import Cut
from kit.sewing.operation import Sentence, both_sides
from kit.sewing.operations.hems import Hem
from kit.sewing.operations.joined import shut_in, trouble_on
from kit.sewing.outcome import Effect
from kit.sewing.reading import DEEPEST_HEM, FINISHES, Reader, Runs, read_size, read_width, read_word
from kit.sewing.run import Run
from kit.sewing.scene import Row, Section
from kit.sewing.sections import hems as shapes
from kit.sewing.spans import path_of, run_length, spans
from kit.sewing.state import State
from kit.sewing.verb import verb
from kit.units import Length, Size

LEAST_BLIND = 15.0  # mm of hem that can be sewn blind (common practice, no source)
MOST_ROLLED = 10.0  # mm of edge that can be rolled (common practice, no source)
LEAST_SURPLUS = 2.0  # mm of fullness that needs easing
MOST_SURPLUS = 0.15
"""Share of the edge that can be eased into a wide hem (common practice, no source)."""


@dataclass(frozen=True, kw_only=True)
class HandHem(Hem):
    """A hem of depth `second` (or `first`, turned once) held by stitches that do not show: each takes a thread or two
    of the garment. `by` hand, slipped between the layers, or by the machine's blind-hem stitch."""

    kind: ClassVar[str] = "blind_hem"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "iron")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron", "hand_needle")

    by: str = "hand"

    @property
    def hem_class(self) -> str:
        """ISO 4916 class 6, edges finished; its number is left out."""
        return "6"

    def minutes(self, pattern: Cut) -> float:
        """A learner sews 20 cm of blind hem by hand in about 4 minutes (common practice, no source)."""
        metres = sum(span.length for run in self.runs() for span in spans(pattern, run)) / 1000
        return 6.0 + (20.0 if self.by == "hand" else 8.0) * metres

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values = self._values()
        keys = [f"hem.{key}" for key in self._first()]
        if self.second > 0:
            keys += ["hem.first", "hem.second"]
        else:
            keys += [*(["hem.finish"] if self.finish != "none" else []), "hem.single"]
        keys += ["blind_hem.baste", f"blind_hem.{self.by}", "blind_hem.press"]
        return (*(Sentence(key, values) for key in keys), *both_sides(pattern, self.edges))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("blind_hem.why", {}),)

    def _section(self) -> Section:
        return shapes.blind(self.second > 0)

    def _rows(self, run: Run) -> tuple[Row, ...]:
        return (Row(run, inset=max(self.depth - 6.0, self.depth / 2), style="hand" if self.by == "hand" else "zigzag"),)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = super().check(state, pattern)
        if self.depth < LEAST_BLIND:
            found += (
                trouble_on(
                    pattern,
                    self.edges,
                    "blind_hem_narrow",
                    message("sewing_trouble.blind_hem_narrow", depth=measured(self.depth, "allowance")),
                    message("sewing_trouble.blind_hem_narrow_do", least=measured(LEAST_BLIND, "allowance")),
                    amount=LEAST_BLIND - self.depth,
                ),
            )
        return found


@dataclass(frozen=True, kw_only=True)
class WideHem(HandHem):
    """A deep hem, turned once. Where its edge curves, the raw edge is longer than the place it is sewn to: it is drawn
    up on a row of ease stitching. `tape` covers the raw edge instead of an overcast one."""

    kind: ClassVar[str] = "wide_hem"

    tape: bool = False

    def surplus(self, pattern: Cut) -> float:
        """mm by which the raw edge is longer than the place it is turned up to, on one half; below zero where it is
        shorter, as at an edge that curves inward."""
        return sum(_surplus(pattern, run, self.first) for run in self.edges)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        surplus = self.surplus(pattern)
        values = {**self._values(), "surplus": (surplus, "length")}
        keys = [f"hem.{key}" for key in self._first()]
        eased = surplus > LEAST_SURPLUS
        keys += ["wide_hem.ease"] if eased else []
        keys += ["wide_hem.tape" if not eased else "wide_hem.tape_eased"] if self.tape else []
        keys += ["hem.finish"] if not self.tape and self.finish != "none" else []
        keys += ["hem.single", *(["wide_hem.draw"] if eased else []), f"wide_hem.{self.by}", "wide_hem.press"]
        return (*(Sentence(key, values) for key in keys), *both_sides(pattern, self.edges))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("wide_hem.why", {}),)

    def _section(self) -> Section:
        return shapes.taped() if self.tape else shapes.blind(False)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = super().check(state, pattern)
        size = sum(run_length(pattern, run) for run in self.edges)
        surplus = self.surplus(pattern)
        if surplus < -LEAST_SURPLUS:
            return (
                *found,
                trouble_on(
                    pattern,
                    self.edges,
                    "wide_hem_short",
                    message(
                        "sewing_trouble.wide_hem_short",
                        first=measured(self.first, "allowance"),
                        surplus=measured(-surplus),
                    ),
                    message("sewing_trouble.do_face_or_narrow_hem"),
                    amount=-surplus,
                ),
            )
        if surplus > MOST_SURPLUS * size:
            return (
                *found,
                trouble_on(
                    pattern,
                    self.edges,
                    "wide_hem_full",
                    message(
                        "sewing_trouble.wide_hem_full",
                        first=measured(self.first, "allowance"),
                        surplus=measured(surplus),
                    ),
                    message("sewing_trouble.do_face_or_narrow_hem"),
                    amount=surplus,
                ),
            )
        return found


@dataclass(frozen=True, kw_only=True)
class BoughtTapeHem(WideHem):
    """A wide hem whose raw edge is covered by hem tape."""

    kind: ClassVar[str] = "taped_hem"
    notions: ClassVar[tuple[str, ...]] = ("thread", "hem_tape")

    tape: bool = True

    def notion_amounts(self, pattern: Cut) -> dict[str, tuple[float, str]]:
        return {"hem_tape": (sum(span.length for run in self.edges for span in spans(pattern, run)), "length")}


@dataclass(frozen=True, kw_only=True)
class RolledHem(Hem):
    """A fine edge rolled between the fingers and slip-stitched by hand, `first` mm turned in all. A row `first` less
    2 mm inside the raw edge keeps it from stretching."""

    kind: ClassVar[str] = "rolled_hem"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "scissors")
    tools: ClassVar[tuple[str, ...]] = ("machine", "scissors", "hand_needle")
    crosses: ClassVar[bool] = True

    @property
    def hem_class(self) -> str:
        """ISO 4916 class 6, edges finished; its number is left out."""
        return "6"

    def effect(self, pattern: Cut) -> Effect:
        return shut_in(super().effect(pattern), pattern, self.runs())

    def minutes(self, pattern: Cut) -> float:
        """Half an hour a metre (common practice, no source)."""
        return 5.0 + 30.0 * sum(span.length for run in self.runs() for span in spans(pattern, run)) / 1000

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values = {**self._values(), "row": (max(self.first - 2.0, self.first / 2), "allowance")}
        keys = [f"hem.{key}" for key in self._first()] + [
            f"rolled_hem.{key}" for key in ("stay", "trim", "roll", "slip")
        ]
        return (*(Sentence(key, values) for key in keys), *both_sides(pattern, self.edges))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("rolled_hem.why", {}),)

    def _section(self) -> Section:
        return shapes.rolled()

    def _rows(self, run: Run) -> tuple[Row, ...]:
        return (Row(run, inset=2.0, style="hand"),)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = super().check(state, pattern)
        if self.first > MOST_ROLLED:
            found += (
                trouble_on(
                    pattern,
                    self.edges,
                    "rolled_hem_wide",
                    message("sewing_trouble.rolled_hem_wide", first=measured(self.first, "allowance")),
                    message("sewing_trouble.rolled_hem_wide_do", most=measured(MOST_ROLLED, "allowance")),
                    amount=self.first - MOST_ROLLED,
                ),
            )
        return found


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


@verb
def blind_hem(
    reader: Reader,
    *edges: Runs,
    depth: Size,
    turn: Size = 0,
    by: str = "hand",
    finish: str = "zigzag",
    catching: Runs = (),
    ring: bool = False,
) -> HandHem:
    """A hem `depth` deep whose stitches do not show, sewn by "hand" or "machine". `turn`: its raw edge is turned under
    by so much first, else it gets its `finish`.

    Example::

        make.blind_hem(skirt_front.hem, depth=3 * cm)
    """
    where = "blind hem"
    deep = read_width(depth, f"{where}, depth", DEEPEST_HEM)
    under = read_size(turn, f"{where}, turn", DEEPEST_HEM)
    return HandHem(
        edges=reader.runs(edges, where),
        first=under or deep,
        second=deep if under else 0.0,
        by=read_word(by, ("hand", "machine"), "by", where),
        finish=read_word(finish, FINISHES, "finish", where),
        catching=reader.runs((catching,), where, empty=True),
        ring=bool(ring),
    )


@verb
def wide_hem(
    reader: Reader,
    *edges: Runs,
    depth: Size,
    tape: bool = False,
    by: str = "hand",
    finish: str = "zigzag",
    catching: Runs = (),
    ring: bool = False,
) -> WideHem:
    """A deep hem turned once, eased where its edge curves, its raw edge finished or covered with hem `tape`, sewn down
    by "hand" or "machine".

    Example::

        make.wide_hem(skirt_front.hem, depth=4 * cm, tape=True)
    """
    where = "wide hem"
    kind = BoughtTapeHem if tape else WideHem
    return kind(
        edges=reader.runs(edges, where),
        first=read_width(depth, f"{where}, depth", DEEPEST_HEM),
        by=read_word(by, ("hand", "machine"), "by", where),
        finish=read_word(finish, FINISHES, "finish", where),
        catching=reader.runs((catching,), where, empty=True),
        ring=bool(ring),
    )


@verb
def rolled_hem(reader: Reader, *edges: Runs, turn: Size = Length(6.0), ring: bool = False) -> RolledHem:
    """A fine edge rolled and slip-stitched by hand; it takes `turn` in all.

    Example::

        make.rolled_hem(sleeve.wrist, turn=6 * mm)
    """
    where = "rolled hem"
    return RolledHem(
        edges=reader.runs(edges, where),
        first=read_width(turn, f"{where}, turn", 20.0),
        finish="none",
        ring=bool(ring),
    )
