"""Sewn-in interfacing."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from kit.diagnostic import Diagnostic, measured, message
from kit.errors import KitError
from kit.sewing import section
from kit.sewing.cut import Cut
from kit.sewing.operation import Operation, Sentence, shown
from kit.sewing.operations.facings import interfaced, interfacing_trouble
from kit.sewing.operations.places import refuse
from kit.sewing.outcome import Effect, Uses
from kit.sewing.reading import Reader, read_width
from kit.sewing.run import PieceHandle, Run
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.spans import spans
from kit.sewing.state import State
from kit.sewing.verb import verb
from kit.units import Length, Size


@dataclass(frozen=True, kw_only=True)
class BasteInterfacing(Operation):
    """Interfacing without adhesive basted to the wrong side of whole pieces, `distance` mm outside the stitch line;
    the seams catch it."""

    kind: ClassVar[str] = "baste_interfacing"
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "scissors")
    notions: ClassVar[tuple[str, ...]] = ("thread", "sewn_in_interfacing")

    pieces: tuple[str, ...]
    distance: float

    def runs(self) -> tuple[Run, ...]:
        return ()

    @property
    def uses(self) -> Uses:
        return Uses(pieces=self.pieces, interfacing=self.pieces)

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=interfaced(self.pieces))

    def minutes(self, pattern: Cut) -> float:
        metres = sum(span.length for run in self._around(pattern) for span in spans(pattern, run)) / 1000
        return 4.0 + 6.0 * metres

    def _around(self, pattern: Cut) -> tuple[Run, ...]:
        return tuple(
            Run(name, (edge.name,))
            for name in self.pieces
            for edge in pattern.piece(name).edges
            if edge.name != pattern.piece(name).fold
        )

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "pieces": (self.pieces, "piece"),
            "distance": (self.distance, "allowance"),
        }
        return tuple(Sentence(f"baste_interfacing.{key}", values) for key in ("lay", "sew", "trim"))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("baste_interfacing.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        first = pattern.piece(self.pieces[0])
        runs = [shown(pattern, run) for run in self._around(pattern) if run.piece == first.name]
        run = runs[0]
        return (
            Scene(
                layers=(Layer(run, up="wrong", stuff="main"), Layer(run, up="right", stuff="interfacing", on=run)),
                rows=tuple(Row(each, inset=-self.distance, style="baste") for each in runs),
                section=section.fused(),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = list(interfacing_trouble(state, pattern, self.pieces))
        for run in self._around(pattern):
            allowance = pattern.piece(run.piece).edge(run.edges[0]).allowance
            if allowance is not None and 0 < allowance <= self.distance:
                found.append(
                    refuse(
                        pattern,
                        run,
                        "basting_outside_cloth",
                        message("sewing_trouble.basting_outside_cloth", distance=measured(self.distance, "allowance")),
                        message("sewing_trouble.basting_outside_cloth_do"),
                        self.distance - allowance,
                    )
                )
        return tuple(found)


@verb
def baste_interfacing(reader: Reader, *pieces: PieceHandle, distance: Size = Length(3.0)) -> BasteInterfacing:
    """Baste sewn-in interfacing to the wrong side of whole pieces, `distance` outside the stitch line.

    Example::

        make.baste_interfacing(waistband)
    """
    where = "baste interfacing"
    names = tuple(reader.piece(piece, where) for piece in pieces)
    if not names:
        raise KitError("no piece is named.", where=where, do="Name the pieces: make.baste_interfacing(collar).")
    return BasteInterfacing(pieces=names, distance=read_width(distance, f"{where}, distance"))
