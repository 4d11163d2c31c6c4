"""A hem faced with a piece of its own shape instead of being turned."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from kit.diagnostic import Diagnostic, message
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Sentence, both_sides, closings, shown, taken
from kit.sewing.operations.facings import AttachFacing
from kit.sewing.operations.joined import read_ease, shut_in, trouble_on, unjoined
from kit.sewing.outcome import Closing, Effect
from kit.sewing.reading import Reader, Runs, read_size, read_width, read_word
from kit.sewing.run import Run
from kit.sewing.scene import Row, Scene
from kit.sewing.sections import hems as shapes
from kit.sewing.state import State
from kit.sewing.verb import verb
from kit.units import Size


@dataclass(frozen=True, kw_only=True)
class FacedHem(AttachFacing):
    """Hem edges `b` faced with `a`: seamed right sides together, the facing turned wholly inside and its `free` edge,
    turned under by `turn` or finished before, sewn down `by` hand or machine."""

    kind: ClassVar[str] = "faced_hem"
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron", "scissors", "hand_needle")

    free: tuple[Run, ...] = ()
    turn: float = 0.0
    by: str = "hand"

    def runs(self) -> tuple[Run, ...]:
        return self.a + self.b

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        found = super().closes(pattern)
        return found + closings(pattern, self.free, "hemmed") if self.turn > 0 else found

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        found = super().takes(pattern)
        return found | taken(self.free, self.turn) if self.turn > 0 else found

    def effect(self, pattern: Cut) -> Effect:
        found = replace(super().effect(pattern), faced=self.a + self.b)
        return shut_in(found, pattern, self.a + self.b + (self.free if self.turn > 0 else ()))

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "facing": (self._names()[0], "piece"),
            "edge": (self.b, "place"),
            "allowance": (self.allowance, "allowance"),
            "turn": (self.turn, "allowance"),
        }
        free = "turn_free" if self.turn > 0 else "free_done"
        keys = [free, "pin", "sew", *(["grade"] if self.grade else []), *(["clip"] if self.clip else [])]
        keys += ["press", self.by]
        pinned = keys.index("pin") + 1
        found = [Sentence("attach_facing.clip" if key == "clip" else f"faced_hem.{key}", values) for key in keys]
        between = self._match(pattern) + self._ease()
        return (*found[:pinned], *between, *found[pinned:], *both_sides(pattern, self.b))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("faced_hem.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        first, last = super().scenes(pattern)
        garment = shown(pattern, self.b[-1])
        free = shown(pattern, self.free[0], garment.side)
        down = Row(free, inset=1.5, style="hand" if self.by == "hand" else "machine")
        return (
            replace(first, pins=(garment,)),
            replace(last, rows=(*last.rows, down), section=shapes.faced_down()),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = super().check(state, pattern) + unjoined(state, pattern, self.free)
        if self.turn == 0:
            found += tuple(
                trouble_on(
                    pattern,
                    (run,),
                    "free_edge_raw",
                    message("sewing_trouble.free_edge_raw", place=placed(pattern, run)),
                    message("sewing_trouble.free_edge_raw_do"),
                )
                for run in self.free
                if not state.is_closed(pattern, run)
            )
        return found


@verb
def faced_hem(
    reader: Reader,
    facing: Runs,
    to: Runs,
    *,
    allowance: Size,
    free: Runs,
    turn: Size = 0,
    by: str = "hand",
    clip: bool = False,
    grade: bool = True,
    ease: Size = 0,
) -> FacedHem:
    """Face a hem with a piece: its edge `facing` is sewn to `to`, and its `free` edge, turned under by `turn` (0: it is
    finished already), sewn down inside by "hand" or "machine".

    Example::

        make.faced_hem(hem_facing.lower, skirt_front.hem, allowance=1 * cm,
                       free=hem_facing.upper, turn=6 * mm)
    """
    where = "faced hem"
    a, b = reader.pair(facing, to, where)
    return FacedHem(
        a=a,
        b=b,
        allowance=read_width(allowance, f"{where}, allowance"),
        free=reader.runs(free, f"{where}, free edge"),
        turn=read_size(turn, f"{where}, turn"),
        by=read_word(by, ("hand", "machine"), "by", where),
        clip=bool(clip),
        grade=bool(grade),
        ease=read_ease(reader, a, b, ease, where),
    )
