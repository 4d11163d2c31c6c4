"""The inner edge of a band closed over the seam."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from kit.diagnostic import Diagnostic, measured, message, named_edge, titled
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Operation, Sentence, closings, shown, taken
from kit.sewing.operations.bands import end_of
from kit.sewing.operations.places import (
    alike,
    facts_of,
    lacking,
    refuse,
    sewn_length,
    without_end,
)
from kit.sewing.operations.turned import still_inside_out
from kit.sewing.outcome import Closing, Effect
from kit.sewing.reading import Reader, Runs, read_width, read_word
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.sections import bands as section
from kit.sewing.spans import neighbours, sides_of
from kit.sewing.state import State
from kit.sewing.verb import verb
from kit.units import Size

AGREE = 2.0
"""mm by which the inner edge of a band may differ from its outer one."""


@dataclass(frozen=True, kw_only=True)
class CloseBand(Operation):
    """The other lower edge of a band turned under by `allowance` mm and laid over the seam at `over`: "edgestitch"ed
    or stitched in the "groove" of the seam from the right side, or slip stitched by "hand"."""

    kind: ClassVar[str] = "close_band"
    seam_class: ClassVar[str] = "2"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "iron")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron", "hand_needle")
    crosses: ClassVar[bool] = True

    inner: tuple[Run, ...]
    over: tuple[Run, ...]
    allowance: float
    method: str = "edgestitch"

    def runs(self) -> tuple[Run, ...]:
        return self.inner

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.inner, "faced")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.inner, self.allowance)

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=facts_of(pattern, self.over, "band_closed"))

    def minutes(self, pattern: Cut) -> float:
        return 6.0 + (40.0 if self.method == "hand" else 12.0) * sewn_length(pattern, self.inner) / 1000

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "edge": (self.inner, "place"),
            "allowance": (self.allowance, "allowance"),
        }
        keys = ("turn", "pin", self.method)
        return (*(Sentence(f"close_band.{key}", values) for key in keys), *alike(pattern, self.inner))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("close_band.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.inner[-1])
        row = Row(run, style="hand") if self.method == "hand" else Row(run, inset=2.0)
        return (
            Scene(
                layers=(Layer(run, up="right"),),
                rows=(row,),
                focus=run,
                pins=(run,),
                section=section.band_closed(stitched=self.method != "hand"),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        first = self.inner[0]
        if lacking(state, facts_of(pattern, self.over, "band_set")):
            return (
                refuse(
                    pattern,
                    self.over[0],
                    "band_not_set",
                    message("sewing_trouble.band_not_set", place=placed(pattern, self.over[0])),
                    message("sewing_trouble.band_not_set_do"),
                ),
            )
        found = list(still_inside_out(state, pattern, self.inner + self.over))
        parts = [(run, side) for run in self.inner for side in sides_of(pattern, run)]
        for run, side in parts:
            loose = [other for other in self.over if other.piece != run.piece]
            if any(
                not any(state.joined((run.piece, side), (other.piece, half)) for half in sides_of(pattern, other))
                for other in loose
            ):
                found.append(
                    refuse(
                        pattern,
                        run,
                        "band_not_seamed",
                        message("sewing_trouble.band_not_seamed", piece=titled(pattern.piece(run.piece).title)),
                        message("sewing_trouble.band_not_seamed_do"),
                    )
                )
                break
        for run, side in parts:
            piece = pattern.piece(run.piece)
            open_ends = [
                name for name in neighbours(piece, run.edges) if name != piece.fold and state.raw(piece, side, name)
            ]
            if open_ends:
                found.append(
                    refuse(
                        pattern,
                        Run(run.piece, (open_ends[0],), side),
                        "band_end_open",
                        message(
                            "sewing_trouble.band_end_open",
                            edge=named_edge(piece.edge(open_ends[0])),
                            piece=titled(piece.title),
                        ),
                        message("sewing_trouble.band_end_open_do"),
                    )
                )
                break
        off = sewn_length(pattern, self.inner) - sewn_length(pattern, self.over)
        if abs(off) > AGREE:
            found.append(
                refuse(
                    pattern,
                    first,
                    "band_inner_length",
                    message(
                        f"sewing_trouble.band_inner_{'longer' if off > 0 else 'shorter'}",
                        place=placed(pattern, first),
                        amount=measured(abs(off)),
                    ),
                    message("sewing_trouble.band_inner_do"),
                    abs(off),
                )
            )
        return tuple(found)


@verb
def close_band(
    reader: Reader,
    inner: Runs,
    over: Runs,
    *,
    allowance: Size,
    method: str = "edgestitch",
    overlap: Size = 0,
    at: Run | None = None,
) -> CloseBand:
    """Turn the other edge of a band under and close it over the seam of `over`. `at` is the end of the band (of its
    inner piece, where it is two) at which the overlap lies.

    Example::

        make.close_band(cuff.inner, cuff.lower, allowance=1 * cm, overlap=3 * cm, at=cuff.end)
    """
    where = "close band"
    end, size = end_of(reader, at, overlap, where)

    def cut(given: Runs) -> tuple[Run, ...]:
        runs = reader.runs(given, where)
        if end is None:
            return runs
        twins = [end if run.piece == end.piece else Run(run.piece, end.edges, end.side) for run in runs]
        pairs = zip(runs, twins, strict=True)
        return tuple(kept for run, twin in pairs for kept in without_end(reader.cut, run, twin, size))

    return CloseBand(
        inner=cut(inner),
        over=cut(over),
        allowance=read_width(allowance, f"{where}, allowance"),
        method=read_word(method, ("edgestitch", "groove", "hand"), "method", where),
    )
