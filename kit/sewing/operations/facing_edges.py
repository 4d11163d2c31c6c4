"""The free outer edge of a facing, finished on its own."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from kit.diagnostic import Diagnostic
from kit.sewing import section
from kit.sewing.cut import Cut
from kit.sewing.operation import Operation, Sentence, both_sides, closings, shown, taken
from kit.sewing.operations.seams import unjoined
from kit.sewing.outcome import Closing
from kit.sewing.reading import FINISHES, Reader, Runs, read_width, read_word
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.state import State
from kit.sewing.verb import verb
from kit.units import Length, Size


@dataclass(frozen=True, kw_only=True)
class FinishFacing(Operation):
    """The outer edge of a facing: overcast or pinked and left (takes nothing), or "turned" under by `turn` mm and
    edgestitched (ISO 4916 6.02.01, from memory)."""

    kind: ClassVar[str] = "finish_facing"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "iron")
    tools: ClassVar[tuple[str, ...]] = ("machine", "iron")

    outer: tuple[Run, ...]
    stitch: str = "zigzag"
    turn: float = 6.0

    def runs(self) -> tuple[Run, ...]:
        return self.outer

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.outer, "hemmed" if self.stitch == "turned" else "finished")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.outer, self.turn if self.stitch == "turned" else 0.0)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "edge": (self.outer, "place"),
            "turn": (self.turn, "allowance"),
            "finish": (f"finish.{'zigzag' if self.stitch == 'turned' else self.stitch}", "word"),
        }
        keys = ("guide", "fold", "sew") if self.stitch == "turned" else ("overcast",)
        return (*(Sentence(f"finish_facing.{key}", values) for key in keys), *both_sides(pattern, self.outer))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("finish_facing.why_turned" if self.stitch == "turned" else "finish_facing.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.outer[0])
        if self.stitch == "turned":
            return (
                Scene(
                    layers=(Layer(run, up="wrong", stuff="facing", turn=((run.edges[0], self.turn),)),),
                    rows=(Row(run, inset=self.turn / 2),),
                    focus=run,
                    arrows=((run, "in"),),
                    section=section.hem_once(),
                ),
            )
        return (
            Scene(
                layers=(Layer(run, up="right", stuff="facing"),),
                rows=(Row(run, inset=1.5, zigzag=True),),
                focus=run,
                section=section.one_ply("facing"),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        return unjoined(state, pattern, self.outer)


@verb
def finish_facing(reader: Reader, *outer: Runs, stitch: str = "zigzag", turn: Size = Length(6.0)) -> FinishFacing:
    """Finish the free edge of a facing: zigzag, overlock, pinked, or turned under by `turn` and stitched.

    Example::

        make.finish_facing(front_facing.outer, back_facing.outer, stitch="turned", turn=6 * mm)
    """
    where = "finish facing"
    return FinishFacing(
        outer=reader.runs(outer, where),
        stitch=read_word(stitch, (*FINISHES[:3], "turned"), "stitch", where),
        turn=read_width(turn, f"{where}, turn", 15.0),
    )
