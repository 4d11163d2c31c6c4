"""Bands: collar bands, cuffs and waistbands, seamed, set on and closed over the seam.

A band is two pieces, an outer and an inner one, or one piece folded lengthwise. Its order: interfaced; its upper edge
and ends seamed (`seam_band`) or, folded, its ends stitched across (`band_ends`); turned out; its lower edge set on the
garment (`set_band`); its other lower edge turned under and closed over that seam (`close_band`). A folded band may be
set on before its ends are stitched.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from kit.diagnostic import Diagnostic, measured, message, named_edge, titled
from kit.errors import KitError
from kit.geometry import Path
from kit.piece.role import PieceRole
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Operation, Sentence, closings, shown, taken
from kit.sewing.operations.drawn import fits
from kit.sewing.operations.places import (
    alike,
    beside,
    facts_of,
    part,
    raw_beside,
    refuse,
    sewn_length,
    without_end,
)
from kit.sewing.operations.seams import unjoined
from kit.sewing.operations.turned import SeamToTurn, turned_facts
from kit.sewing.outcome import Closing, Effect, Fact
from kit.sewing.reading import Reader, Runs, in_call, read_size, read_width
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.sections import bands as section
from kit.sewing.spans import neighbours, path_of, run_length
from kit.sewing.state import State
from kit.sewing.verb import verb
from kit.units import Size


@dataclass(frozen=True, kw_only=True)
class SeamBand(SeamToTurn):
    """Outer and inner band seamed along their upper edge and ends, to be turned."""

    kind: ClassVar[str] = "seam_band"

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("seam_band.why", {}), Sentence("seam_to_turn.why", {}))


@dataclass(frozen=True, kw_only=True)
class BandEnds(Operation):
    """The ends of a band folded lengthwise right sides together, each stitched across, and with `extra` along the
    part that reaches beyond the garment."""

    kind: ClassVar[str] = "band_ends"
    seam_class: ClassVar[str] = "1"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "scissors", "iron")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron", "scissors")

    ends: tuple[Run, ...]
    allowance: float
    extra: tuple[Run, ...] = ()

    def runs(self) -> tuple[Run, ...]:
        return self.ends + self.extra

    def _pieces(self) -> tuple[str, ...]:
        return tuple(dict.fromkeys(run.piece for run in self.ends))

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.runs(), "sewn")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.runs(), self.allowance)

    def effect(self, pattern: Cut) -> Effect:
        return Effect(inside_out=self._pieces(), facts=facts_of(pattern, self.ends, "end_stitched"))

    def wants(self, pattern: Cut) -> tuple[Fact, ...]:
        return turned_facts(self._pieces())

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "pieces": (self._pieces(), "piece"),
            "edge": (self.ends, "edge"),
            "allowance": (self.allowance, "allowance"),
        }
        keys = ["fold", "sew", *(["extra"] if self.extra else []), "trim"]
        return (*(Sentence(f"band_ends.{key}", values) for key in keys), *alike(pattern, self.ends))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("band_ends.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        fold = self._fold(pattern)
        first = shown(pattern, self.ends[0])
        seen = [_above(pattern, shown(pattern, run, first.side), fold) for run in self.runs()]
        return (
            Scene(
                layers=(Layer(first, up="wrong" if fold is None else "right", fold=fold),),
                rows=tuple(Row(run) for run in seen if run is not None and run.piece == first.piece),
                focus=first,
                section=section.band_end(),
            ),
        )

    def _fold(self, pattern: Cut) -> Path | None:
        """The middle of the band, from end to end, where both its ends are there to be seen."""
        piece = self.ends[0].piece
        ends = {run.edges: path_of(pattern, run) for run in self.ends if run.piece == piece}
        if len(ends) != 2:
            return None
        one, two = ends.values()
        return Path.line(one.at(one.length / 2), two.at(two.length / 2))

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = []
        for run in self.ends:
            if ("turned_out", run.piece) in state.facts:
                found.append(
                    refuse(
                        pattern,
                        run,
                        "turned_already",
                        message("sewing_trouble.turned_already", piece=titled(pattern.piece(run.piece).title)),
                        message("sewing_trouble.turned_already_do"),
                    )
                )
        return tuple(found)


def _above(pattern: Cut, run: Run, fold: Path | None) -> Run | None:
    """What of a run is still to be seen where it was, once the cloth to the right of `fold` is folded over."""
    if fold is None:
        return run
    size = run_length(pattern, run)
    way = fold.end - fold.start
    path = path_of(pattern, run)

    def left(at: float) -> bool:
        return way.cross(path.at(at) - fold.start) > 0

    if left(1.0) == left(size - 1.0):
        return run if left(size / 2) else None
    return part(pattern, run, 0.0, size / 2) if left(1.0) else part(pattern, run, size / 2, size)


@dataclass(frozen=True, kw_only=True)
class SetBand(Operation):
    """The lower edge of a band (`a`, without what reaches beyond) sewn to the garment's edge `b`, right sides
    together, both allowances pressed into the band. `ease` mm by which all of `b` is longer on purpose."""

    kind: ClassVar[str] = "set_band"
    seam_class: ClassVar[str] = "1"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "scissors", "iron")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron", "scissors")
    crosses: ClassVar[bool] = True

    a: tuple[Run, ...]
    b: tuple[Run, ...]
    allowance: float
    ease: float = 0.0
    beyond: float = 0.0

    def runs(self) -> tuple[Run, ...]:
        return self.a + self.b

    @property
    def joins(self) -> tuple[tuple[Run, Run], ...]:
        return tuple((one, other) for one in self.a for other in self.b)

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.runs(), "sewn")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.runs(), self.allowance)

    def roles(self) -> tuple[tuple[str, PieceRole, str], ...]:
        return tuple((run.piece, "band", "") for run in self.a)

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=facts_of(pattern, self.a, "band_set"), faced=self.a + self.b)

    def wants(self, pattern: Cut) -> tuple[Fact, ...]:
        return facts_of(pattern, self.a, "band_closed")

    def minutes(self, pattern: Cut) -> float:
        return 8.0 + 15.0 * sewn_length(pattern, self.a) / 1000

    def _bands(self) -> tuple[str, ...]:
        return tuple(dict.fromkeys(run.piece for run in self.a))

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "band": (self._bands(), "piece"),
            "edge": (self.b, "place"),
            "allowance": (self.allowance, "allowance"),
            "ease": (self.ease, "length"),
            "beyond": (self.beyond, "length"),
        }
        keys = ["pin", "ends_beyond" if self.beyond > 0 else "match"]
        keys += ["ease"] if self.ease > 0 else []
        keys += ["sew", "trim", "press"]
        return (*(Sentence(f"set_band.{key}", values) for key in keys), *alike(pattern, self.a))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("set_band.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        band, garment = shown(pattern, self.a[-1]), shown(pattern, self.b[-1])
        return (
            Scene(
                layers=(
                    Layer(garment, up="right"),
                    Layer(band, up="wrong", on=garment, how="together"),
                ),
                rows=(Row(garment),),
                focus=garment,
                pins=(garment,),
                section=section.band_set(),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        rows = unjoined(state, pattern, self.b)
        raw = None if rows else raw_beside(state, pattern, self.b)
        if raw is not None:
            rows = (
                refuse(
                    pattern,
                    raw,
                    "band_end_raw",
                    message("sewing_trouble.band_end_raw", place=placed(pattern, raw)),
                    message("sewing_trouble.band_end_raw_do"),
                ),
            )
        return rows + fits(state, pattern, self.a, self.b, self.ease, "band_length")


def end_of(reader: Reader, at: Run | None, overlap: Size, where: str) -> tuple[Run | None, float]:
    """The end beyond which a band reaches, and how far."""
    size = read_size(overlap, f"{where}, overlap")
    if at is None and size == 0:
        return None, 0.0
    if at is None or size == 0:
        raise KitError(
            "an overlap needs the end it lies at, and the end an overlap.",
            where=where,
            do="Write both: overlap=3 * cm, at=waistband.end.",
        )
    (run, *more) = reader.runs(at, f"{where}, at")
    if more:
        raise KitError("the overlap lies at one end.", where=where, do="Name one end: at=waistband.end.")
    for name in neighbours(reader.cut.piece(run.piece), run.edges):
        long = reader.cut.piece(run.piece).edge(name).path.length
        if size >= long:
            raise KitError(
                message("refusal.overlap_long", size=measured(size), edge=named_edge(name), length=measured(long)),
                where=in_call(where),
                do=message("refusal.overlap_long_do"),
            )
    return run, size


@verb
def seam_band(
    reader: Reader, outer: Runs, inner: Runs, *, allowance: Size, overlap: Size = 0, at: Run | None = None
) -> SeamBand:
    """Seam outer and inner band along their upper edges and ends. `overlap` beyond the garment at the end `at`.

    Example::

        make.seam_band(band.end + band.top, inner_band.end + inner_band.top, allowance=1 * cm)
    """
    where = "seam band"
    a, b = reader.pair(outer, inner, where)
    end, size = end_of(reader, at, overlap, where)
    extra: tuple[Run, ...] = ()
    if end is not None:
        named = {name for run in a for name in run.edges}
        lower = [run for run in beside(reader.cut, end, size) if run.edges[0] not in named]
        others = tuple(dict.fromkeys(run.piece for run in b))
        twins = [Run(piece, run.edges, run.side, run.start, run.end) for piece in others for run in lower]
        extra = (*lower, *twins)
    width = read_width(allowance, f"{where}, allowance")
    return SeamBand(a=a, b=b, allowance=width, extra=extra, gap=None, press="one side")


@verb
def band_ends(reader: Reader, *ends: Runs, allowance: Size, overlap: Size = 0, at: Run | None = None) -> BandEnds:
    """Fold a band lengthwise right sides together and stitch its ends across; `overlap` beyond the garment at the
    end `at`.

    Example::

        make.band_ends(waistband.start, waistband.end, allowance=1 * cm,
                       overlap=3 * cm, at=waistband.end)
    """
    where = "band ends"
    runs = reader.runs(ends, where)
    end, size = end_of(reader, at, overlap, where)
    return BandEnds(
        ends=runs,
        allowance=read_width(allowance, f"{where}, allowance"),
        extra=beside(reader.cut, end, size) if end is not None else (),
    )


@verb
def set_band(
    reader: Reader,
    band: Runs,
    to: Runs,
    *,
    allowance: Size,
    ease: Size = 0,
    overlap: Size = 0,
    at: Run | None = None,
) -> SetBand:
    """Sew the lower edge of a band to a garment's edge. `overlap` reaches beyond it at the band's end `at`; `ease`
    is how much longer the garment's edge is in all.

    Example::

        make.set_band(band.neck, [front.neck, back.neck], allowance=1 * cm)
    """
    where = "set band"
    a, b = reader.pair(band, to, where)
    end, size = end_of(reader, at, overlap, where)
    return SetBand(
        a=tuple(cut for run in a for cut in without_end(reader.cut, run, end, size)),
        b=b,
        allowance=read_width(allowance, f"{where}, allowance"),
        ease=read_size(ease, f"{where}, ease", 3000.0),
        beyond=size,
    )
