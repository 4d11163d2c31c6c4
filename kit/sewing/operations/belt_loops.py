"""Belt loops."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from kit.diagnostic import Diagnostic, measured, message
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Operation, Sentence, shown
from kit.sewing.operations.strips import attach_trouble, beyond
from kit.sewing.outcome import Effect, Uses
from kit.sewing.reading import Reader, read_size
from kit.sewing.run import Run, StripHandle
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.spans import run_length, sides_of
from kit.sewing.state import State
from kit.sewing.trouble import trouble
from kit.sewing.verb import verb
from kit.units import Length, Size


@dataclass(frozen=True, kw_only=True)
class BeltLoop(Operation):
    """A loop stitched over a sewn seam, its top end `at` mm along it; both `ends` (mm) are turned under. `halves`
    is how many loops that makes."""

    kind: ClassVar[str] = "belt_loop"

    name: str
    seam: Run
    at: float
    ends: float = 10.0
    halves: int = 1

    def runs(self) -> tuple[Run, ...]:
        return (self.seam,)

    @property
    def uses(self) -> Uses:
        return Uses(pieces=(self.seam.piece,), strips={self.name: self.halves})

    def effect(self, pattern: Cut) -> Effect:
        return Effect(attached={self.name: self.halves})

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "strip": (self.name, "strip"),
            "seam": ((self.seam,), "edge"),
            "at": (self.at, "length"),
            "ends": (self.ends, "allowance"),
            "length": (pattern.strip(self.name).length - 2 * self.ends, "length"),
        }
        return tuple(Sentence(f"belt_loop.{key}", values) for key in ("turn", "place", "sew"))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.seam)
        size = run_length(pattern, run)
        loop = max(pattern.strip(self.name).length - 2 * self.ends, 10.0)
        low = (run.start or 0.0) + min(self.at, max(size - loop, 0.0))
        part = Run(run.piece, run.edges, run.side, low, low + min(loop, size))
        return (Scene(layers=(Layer(run, up="right"),), rows=(Row(run, ink="old"),), focus=part, strip=self.name),)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        number = len(sides_of(pattern, self.seam))
        found = list(attach_trouble(state, pattern, self.name, number))
        found += beyond(pattern, self.seam, self.at, pattern.strip(self.name).title)
        strip = pattern.strip(self.name)
        left = strip.length - 2 * self.ends
        if strip.finished_length and abs(left - strip.finished_length) > 0.5:
            found.append(
                trouble(
                    "strip_length",
                    message(
                        "sewing_trouble.strip_length",
                        length=measured(strip.length),
                        ends=measured(self.ends, "allowance"),
                        left=measured(left),
                        finished_length=measured(strip.finished_length),
                    ),
                    strip.title,
                    message("sewing_trouble.strip_length_do"),
                    amount=abs(left - strip.finished_length),
                )
            )
        if not state.is_closed(pattern, self.seam):
            found.append(
                trouble(
                    "loop_before_seam",
                    message("sewing_trouble.loop_before_seam", place=placed(pattern, self.seam)),
                    pattern.strip(self.name).title,
                    message("sewing_trouble.do_sew_seam_first"),
                    piece=self.seam.piece,
                    edge=self.seam.edges[0],
                )
            )
        return tuple(found)


@verb
def belt_loop(reader: Reader, strip: StripHandle, seam: Run, *, at: Size, ends: Size = Length(10.0)) -> BeltLoop:
    """Stitch a made strip over a seam as a loop, its top end `at` along the seam.

    Example::

        make.plain_seam(front.side, back.side, allowance=1.5 * cm)
        make.fold_strip(loop, ends=0)
        make.belt_loop(loop, front.side, at=10 * cm)
    """
    where = "belt loop"
    name = reader.strip(strip, where)
    run, place, _ = reader.spot(seam, at, where)
    return BeltLoop(
        name=name,
        seam=run,
        at=place,
        ends=read_size(ends, f"{where}, ends"),
        halves=len(sides_of(reader.cut, run)),
    )
