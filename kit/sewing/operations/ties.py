"""Handles and straps: one strip fixed at both its ends."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from kit.diagnostic import Diagnostic, measured, message
from kit.errors import KitError
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Operation, Sentence, both_sides, shown
from kit.sewing.operations.places import around, refuse
from kit.sewing.operations.strips import attach_trouble
from kit.sewing.outcome import Effect, Fact, Uses
from kit.sewing.reading import Reader, read_width, read_word
from kit.sewing.run import Run, StripHandle
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.spans import run_length, sides_of
from kit.sewing.state import State
from kit.sewing.verb import verb
from kit.units import Length, Size


@dataclass(frozen=True, kw_only=True)
class AttachHandle(Operation):
    """A made strip fixed to a run at two places, `at` mm along it, as a handle or strap (one for each half the run
    means). `method`: "caught" bastes its ends to the raw edge on the right side for the next seam or facing,
    "in_hem" on the wrong side, so that the hem turned over them catches them; "stitched_on" lays its ends `lap` mm
    over the finished edge and stitches boxes."""

    kind: ClassVar[str] = "attach_handle"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "pins")

    name: str
    to: Run
    at: tuple[float, float]
    method: str = "caught"
    lap: float = 25.0
    halves: int = 1

    def runs(self) -> tuple[Run, ...]:
        return (self.to,)

    @property
    def uses(self) -> Uses:
        return Uses(pieces=(self.to.piece,), strips={self.name: self.halves})

    def effect(self, pattern: Cut) -> Effect:
        return Effect(attached={self.name: self.halves}, facts=self._facts(pattern))

    def _facts(self, pattern: Cut) -> tuple[Fact, ...]:
        return tuple(
            ("handle", self.to.piece, side, self.to.edges[0], f"{at:.1f}")
            for side in sides_of(pattern, self.to)
            for at in self.at
        )

    def minutes(self, pattern: Cut) -> float:
        return 8.0 * self.halves

    def _width(self, pattern: Cut) -> float:
        strip = pattern.strip(self.name)
        return strip.finished_width or strip.width / 4

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "strip": (self.name, "strip"),
            "run": ((self.to,), "place"),
            "first": (self.at[0], "length"),
            "second": (self.at[1], "length"),
            "lap": (self.lap, "allowance"),
        }
        keys = [f"{self.method}_place", "twist", f"{self.method}_sew"]
        return (*(Sentence(f"attach_handle.{key}", values) for key in keys), *both_sides(pattern, (self.to,)))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("attach_handle.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.to)
        inset = self.lap / 2 if self.method == "stitched_on" else -2.0
        style = "machine" if self.method == "stitched_on" else "baste"
        ends = tuple(around(pattern, run, at, self._width(pattern)) for at in self.at)
        return (
            Scene(
                layers=(Layer(run, up="wrong" if self.method == "in_hem" else "right"),),
                rows=tuple(Row(end, inset=inset, style=style) for end in ends),  # type: ignore[arg-type]
                focus=ends[0],
                strip=self.name,
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = list(attach_trouble(state, pattern, self.name, self.halves))
        size = run_length(pattern, self.to)
        if max(self.at) > size + 0.5:
            return (
                *found,
                refuse(
                    pattern,
                    self.to,
                    "place_outside_run",
                    message(
                        "sewing_trouble.end_outside_run",
                        at=measured(max(self.at)),
                        place=placed(pattern, self.to),
                        size=measured(size),
                    ),
                    message("sewing_trouble.end_outside_run_do"),
                    max(self.at) - size,
                ),
            )
        if any(fact in state.facts for fact in self._facts(pattern)):
            found.append(
                refuse(
                    pattern,
                    self.to,
                    "handle_twice",
                    message("sewing_trouble.handle_twice", place=placed(pattern, self.to)),
                    message("sewing_trouble.do_take_one_operation_out"),
                )
            )
        ends = [around(pattern, self.to, at, self._width(pattern)) for at in self.at]
        if self.method == "stitched_on" and not all(state.is_closed(pattern, end) for end in ends):
            found.append(
                refuse(
                    pattern,
                    self.to,
                    "edge_still_raw",
                    message("sewing_trouble.handle_edge_raw", place=placed(pattern, self.to)),
                    message("sewing_trouble.handle_edge_raw_do"),
                )
            )
        if self.method != "stitched_on" and not all(state.is_raw(pattern, end) for end in ends):
            found.append(
                refuse(
                    pattern,
                    self.to,
                    "edge_closed_already",
                    message("sewing_trouble.handle_edge_closed", place=placed(pattern, self.to)),
                    message("sewing_trouble.handle_edge_closed_do"),
                )
            )
        return tuple(found)


@verb
def attach_handle(
    reader: Reader,
    strip: StripHandle,
    to: Run,
    *,
    at: tuple[Size, Size],
    method: str = "caught",
    lap: Size = Length(25.0),
) -> AttachHandle:
    """Fix both ends of a made strip to a run, at two lengths along it.

    Example::

        make.fold_strip(handle, ends=0)
        make.attach_handle(handle, tote.top, at=(8 * cm, 27 * cm), method="in_hem")
    """
    where = "attach handle"
    name = reader.strip(strip, where)
    if not isinstance(at, tuple | list) or len(at) != 2:
        raise KitError(f"at is {at!r}.", where=where, do="Give both places along the run: at=(8 * cm, 28 * cm).")
    spots = [reader.spot(to, each, where) for each in at]
    first, second = sorted(spot[1] for spot in spots)
    if second - first < 1.0:
        raise KitError("both ends are placed at the same spot.", where=where, do="Give two places along the run.")
    run = spots[0][0]
    return AttachHandle(
        name=name,
        to=run,
        at=(first, second),
        method=read_word(method, ("caught", "in_hem", "stitched_on"), "method", where),
        lap=read_width(lap, f"{where}, lap"),
        halves=len(sides_of(reader.cut, run)),
    )
