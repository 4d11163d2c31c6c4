"""Pressing a seam that was left for later."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from kit.diagnostic import Diagnostic, message
from kit.sewing import section
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Operation, Sentence, both_sides, shown
from kit.sewing.outcome import Effect
from kit.sewing.reading import Reader, Runs, read_word
from kit.sewing.run import PieceHandle, Run
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.sections import seams as shapes
from kit.sewing.spans import sides_of
from kit.sewing.state import State
from kit.sewing.trouble import trouble
from kit.sewing.verb import verb


@dataclass(frozen=True, kw_only=True)
class Press(Operation):
    """The seams along `seams` pressed `way`: open, to one side, or towards the piece of that name."""

    kind: ClassVar[str] = "press"
    stitch_type: ClassVar[str] = ""
    cautions: ClassVar[tuple[str, ...]] = ("iron",)
    tools: ClassVar[tuple[str, ...]] = ("iron", "press_cloth")
    notions: ClassVar[tuple[str, ...]] = ()

    seams: tuple[Run, ...]
    way: str = "open"

    def runs(self) -> tuple[Run, ...]:
        return self.seams

    def effect(self, pattern: Cut) -> Effect:
        return Effect(pressed=self.seams)

    def minutes(self, pattern: Cut) -> float:
        """2 minutes a seam, more than the row itself would take a careful presser (common practice, no source)."""
        return 1.0 + 2.0 * sum(len(sides_of(pattern, run)) for run in self.seams)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {"edge": (self.seams, "place")}
        key = {"open": "open", "one side": "one_side"}.get(self.way, "towards")
        if key == "towards":
            values["piece"] = ((self.way,), "piece")
        return (Sentence(f"press.{key}", values), *both_sides(pattern, self.seams))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("press.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.seams[0])
        return (
            Scene(
                layers=(Layer(run, up="wrong"),),
                rows=(Row(run, ink="old"),),
                focus=run,
                arrows=((run, "in"),) if self.way in ("open", "one side", run.piece) else ((run, "out"),),
                section=section.pressed_open() if self.way == "open" else shapes.pressed_one_side(),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = []
        for run in self.seams:
            joined = all(
                any((run.piece, side, edge) in seam for seam in state.seams)
                for side in sides_of(pattern, run)
                for edge in run.edges
            )
            if not joined:
                found.append(
                    trouble(
                        "pressed_early",
                        message("sewing_trouble.pressed_early", place=placed(pattern, run)),
                        pattern.piece(run.piece).title,
                        message("sewing_trouble.pressed_early_do"),
                        piece=run.piece,
                        edge=run.edges[0],
                    )
                )
            elif self.way == "open" and any(
                ("shut_in", run.piece, side, edge) in state.facts
                for side in sides_of(pattern, run)
                for edge in run.edges
            ):
                found.append(
                    trouble(
                        "pressed_open_shut_in",
                        message("sewing_trouble.pressed_open_shut_in", place=placed(pattern, run)),
                        pattern.piece(run.piece).title,
                        message("sewing_trouble.pressed_open_shut_in_do"),
                        piece=run.piece,
                        edge=run.edges[0],
                    )
                )
        return tuple(found)


@verb
def press(reader: Reader, *seams: Runs, way: str | PieceHandle = "open") -> Press:
    """Press seams already sewn, each named by one of its edges. `way`: open, one side, or the piece they are pressed
    towards.

    Example::

        make.plain_seam(front.side, back.side, allowance=1.5 * cm, press="later")
        make.press(front.side, way="open")
    """
    where = "press"
    runs = reader.runs(seams, where)
    if isinstance(way, PieceHandle):
        way = reader.piece(way, where)
    return Press(
        seams=runs, way=read_word(way, ("open", "one side", *(p.name for p in reader.cut.pieces)), "way", where)
    )
