"""Bands: collar bands, cuffs and waistbands, seamed, set on and closed over the seam.

A band is two pieces, an outer and an inner one, or one piece folded lengthwise. Its order: interfaced; its upper edge
and ends seamed (`seam_band`) or, folded, its ends stitched across (`band_ends`); turned out; its lower edge set on the
garment (`set_band`); its other lower edge turned under and closed over that seam (`close_band`). A folded band may be
set on before its ends are stitched.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from typing import Any

from kit.diagnostic import measured, message, named_edge
from kit.errors import KitError
from kit.geometry import Path
from kit.sewing.cut import Cut
from kit.sewing.fields import Asked, fixed, meets, read_by, row, runs, size, width, word
from kit.sewing.operation import Operation, Say, operation, shown
from kit.sewing.operations.drawn import fits
from kit.sewing.operations.joined import in_rows
from kit.sewing.operations.places import alike_of, beside, part, raw_beside, sewn_length, without_end
from kit.sewing.operations.turned import SeamToTurn, right_side_out
from kit.sewing.outcome import Effect
from kit.sewing.reading import in_call
from kit.sewing.rules import Asking, Case, First, Of, Rule, in_a_row, whole_edges
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.sections import bands as section
from kit.sewing.spans import neighbours, path_of, run_length, sides_of
from kit.sewing.state import State

AGREE = 2.0
"""mm by which the inner edge of a band may differ from its outer one."""


# ---- what reaches beyond --------------------------------------------------------------------------------------


@dataclass(frozen=True)
class Beyond:
    """What of a band reaches beyond the garment's edge: the `size` mm next to its end `at`."""

    at: Run
    size: float

    def off(self, cut: Cut, run: Run, twins: bool = False) -> tuple[Run, ...]:
        """A long edge of the band without it; with `twins` it lies on every piece at the end of that name."""
        at = replace(self.at, piece=run.piece) if twins else self.at
        return without_end(cut, run, at, self.size)


def _overlap() -> Any:
    """How far a band reaches beyond the garment's edge."""
    return size(default=0, fills={"beyond": "length"})


def _at() -> Any:
    """The end it does so at."""
    return read_by(_beyond, "Run | None", default=None, held=None)


def _beyond(given: Any, asked: Asked, name: str) -> Beyond | None:
    size, cut = asked.read["overlap"], asked.reader.cut
    if given is None and size == 0:
        return None
    if given is None or size == 0:
        raise KitError(
            "an overlap needs the end it lies at, and the end an overlap.",
            where=asked.where,
            do="Write both: overlap=3 * cm, at=waistband.end.",
        )
    (run, *more) = asked.reader.runs(given, asked.at(name))
    if more:
        raise KitError("the overlap lies at one end.", where=asked.where, do="Name one end: at=waistband.end.")
    for edge in (cut.piece(run.piece).edge(name) for name in neighbours(cut.piece(run.piece), run.edges)):
        if size >= edge.path.length:
            says = {"size": measured(size), "edge": named_edge(edge), "length": measured(edge.path.length)}
            raise KitError(
                message("refusal.overlap_long", **says),
                where=in_call(asked.where),
                do=message("refusal.overlap_long_do"),
            )
    return Beyond(run, size)


def _corner(asked: Asked) -> tuple[Run, ...]:
    """The short parts beside an end that reaches beyond, which its row carries on along, on every piece of the band."""
    beyond = asked.read["at"]
    if beyond is None:
        return ()
    sewn = {edge for run in asked.read.get("a", ()) for edge in run.edges}
    found = [run for run in beside(asked.reader.cut, beyond.at, beyond.size) if run.edges[0] not in sewn]
    others = dict.fromkeys(run.piece for run in asked.read.get("b", ()))
    return (*found, *(replace(run, piece=piece) for piece in others for run in found))


# ---- its ends -------------------------------------------------------------------------------------------------


@operation
class SeamBand(SeamToTurn):
    """Seam outer and inner band along their upper edges and ends. `overlap` beyond the garment at the end `at`.

    Example::

        make.seam_band(band.end + band.top, inner_band.end + inner_band.top, allowance=1 * cm)
    """

    kind = "seam_band"
    why = ("why", "seam_to_turn.why")
    rules = (*SeamToTurn.rules, whole_edges("a"))

    a: tuple[Run, ...] = meets("b", argument="outer", fills={"edge": "edge"})
    b: tuple[Run, ...] = meets("a", argument="inner")
    gap: tuple[float, float] | None = fixed(None)
    ease: float = fixed(0.0)
    overlap: float = _overlap()
    at: Beyond | None = _at()

    @classmethod
    def made(cls, asked: Asked) -> SeamBand:
        return cls(**asked.read | {"extra": _corner(asked)})


@operation
class BandEnds(Operation):
    """Fold a band lengthwise right sides together and stitch its ends across; `overlap` beyond the garment at the
    end `at`.

    Example::

        make.band_ends(waistband.start, waistband.end, allowance=1 * cm,
                       overlap=3 * cm, at=waistband.end)
    """

    kind = "band_ends"
    seam_class = "1"
    cautions = ("needle", "scissors", "iron")
    tools = ("machine", "pins", "iron", "scissors")
    says = ("fold", "sew", Say("extra", lambda band: bool(band.extra)), "trim", alike_of("ends"))
    why = ("why",)
    gives = (Of("end_stitched", "ends"),)
    wanted = (Of("turned_out", "ends", each="piece"),)
    rules = (
        whole_edges("ends"),
        Rule(Of("turned_out", "ends", each="piece"), "turned_already", holds=False, tells=("piece",), each=True),
    )

    ends: tuple[Run, ...] = runs(closes="sewn", takes="allowance", fills={"pieces": "piece", "edge": "edge"})
    allowance: float = width()
    overlap: float = _overlap()
    at: Beyond | None = _at()
    extra: tuple[Run, ...] = read_by(
        lambda given, asked, name: _corner(asked), "", way="none", held=(), closes="sewn", takes="allowance"
    )

    def effect(self, pattern: Cut) -> Effect:
        pieces = tuple(dict.fromkeys(run.piece for run in self.ends))
        return replace(super().effect(pattern), inside_out=pieces)

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


# ---- set on ---------------------------------------------------------------------------------------------------


def _raw_end(made: SetBand, state: State, pattern: Cut) -> Iterable[Case]:
    """The garment's edge ends at finished lines."""
    raw = raw_beside(state, pattern, made.b) if in_rows(made, state, pattern, "b") else None
    return () if raw is None else (Case(False, raw),)


@operation
class SetBand(Operation):
    """Sew the lower edge of a band to a garment's edge. `overlap` reaches beyond it at the band's end `at`; `ease`
    is how much longer the garment's edge is in all.

    Example::

        make.set_band(band.neck, [front.neck, back.neck], allowance=1 * cm)
    """

    # a is the band's edge without what reaches beyond; both allowances are pressed into the band
    kind = "set_band"
    seam_class = "1"
    cautions = ("needle", "scissors", "iron")
    tools = ("machine", "pins", "iron", "scissors")
    crosses = True
    says = (
        "pin",
        Say("ends_beyond", lambda band: band.overlap > 0),
        Say("match", lambda band: band.overlap == 0),
        Say("ease", lambda band: band.ease > 0),
        "sew",
        "trim",
        "press",
        alike_of("a"),
    )
    why = ("why",)
    gives = (Of("band_set", "a"),)
    wanted = (Of("band_closed", "a"),)
    rules = (whole_edges("a"), in_a_row("b"), Rule(Asking(_raw_end), "band_end_raw"), *fits("band_length"))

    a: tuple[Run, ...] = meets(
        "b",
        argument="band",
        closes="sewn",
        takes="allowance",
        becomes="faced",
        role="band",
        fills={"band": "piece"},
    )
    b: tuple[Run, ...] = meets(
        "a", argument="to", closes="sewn", takes="allowance", becomes="faced", fills={"edge": "place"}
    )
    allowance: float = width()
    ease: float = size(default=0, most=3000.0, fills="length")
    overlap: float = _overlap()
    at: Beyond | None = _at()

    @classmethod
    def made(cls, asked: Asked) -> SetBand:
        return cls(**asked.read | {"a": _shorter(asked, "a")})

    @property
    def joins(self) -> tuple[tuple[Run, Run], ...]:
        return tuple((one, other) for one in self.a for other in self.b)

    def minutes(self, pattern: Cut) -> float:
        return 8.0 + 15.0 * sewn_length(pattern, self.a) / 1000

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        band, garment = shown(pattern, self.a[-1]), shown(pattern, self.b[-1])
        return (
            Scene(
                layers=(Layer(garment, up="right"), Layer(band, up="wrong", on=garment, how="together")),
                rows=(Row(garment),),
                focus=garment,
                pins=(garment,),
                section=section.band_set(),
            ),
        )


def _shorter(asked: Asked, name: str, twins: bool = False) -> tuple[Run, ...]:
    """The runs of a field without what reaches beyond the garment."""
    beyond: Beyond | None = asked.read["at"]
    if beyond is None:
        return asked.read[name]
    return tuple(kept for run in asked.read[name] for kept in beyond.off(asked.reader.cut, run, twins))


# ---- closed ---------------------------------------------------------------------------------------------------


def _seamed(made: CloseBand, state: State, pattern: Cut) -> Iterator[Case]:
    """The inner band hangs on the outer one."""
    for run in made.inner:
        for side in sides_of(pattern, run):
            others = [
                [(other.piece, half) for half in sides_of(pattern, other)]
                for other in made.over
                if other.piece != run.piece
            ]
            yield Case(all(any(state.joined((run.piece, side), part) for part in halves) for halves in others), run)


def _ends_closed(made: CloseBand, state: State, pattern: Cut) -> Iterator[Case]:
    """Nothing beside the inner edge is raw any more."""
    for run in made.inner:
        piece = pattern.piece(run.piece)
        for side in sides_of(pattern, run):
            for name in neighbours(piece, run.edges):
                if name != piece.fold:
                    yield Case(not state.raw(piece, side, name), Run(run.piece, (name,), side))


def _as_long(made: CloseBand, state: State, pattern: Cut) -> Iterator[tuple[str, Case]]:
    off = sewn_length(pattern, made.inner) - sewn_length(pattern, made.over)
    if abs(off) > AGREE:
        yield "longer" if off > 0 else "shorter", Case(False, made.inner[0], amount=abs(off))


@operation
class CloseBand(Operation):
    """Turn the other edge of a band under and close it over the seam of `over`. `at` is the end of the band (of its
    inner piece, where it is two) at which the overlap lies.

    Example::

        make.close_band(cuff.inner, cuff.lower, allowance=1 * cm, overlap=3 * cm, at=cuff.end)
    """

    # "edgestitch"ed or stitched in the "groove" of the seam from the right side, or slip stitched by "hand"
    kind = "close_band"
    seam_class = "2"
    cautions = ("needle", "iron")
    tools = ("machine", "pins", "iron", "hand_needle")
    crosses = True
    says = ("turn", "pin", "{method}", alike_of("inner"))
    why = ("why",)
    gives = (Of("band_closed", "over"),)
    rules = (
        whole_edges("inner"),
        Rule(Of("band_set", "over", each="run"), "band_not_set", ends="all"),
        right_side_out("inner", "over"),
        Rule(Asking(_seamed), "band_not_seamed", tells=("piece",)),
        Rule(Asking(_ends_closed), "band_end_open", tells=("edge", "piece")),
        *(
            Rule(
                First(_as_long, way),
                "band_inner_length",
                says=f"band_inner_{way}",
                do="band_inner_do",
                tells=("place", "amount"),
            )
            for way in ("longer", "shorter")
        ),
    )

    inner: tuple[Run, ...] = row(closes="faced", takes="allowance", fills={"edge": "place"})
    over: tuple[Run, ...] = row()
    allowance: float = width()
    method: str = word(("edgestitch", "groove", "hand"), default="edgestitch")
    overlap: float = _overlap()
    at: Beyond | None = _at()

    @classmethod
    def made(cls, asked: Asked) -> CloseBand:
        return cls(**asked.read | {name: _shorter(asked, name, twins=True) for name in ("inner", "over")})

    def runs(self) -> tuple[Run, ...]:
        return self.inner

    def minutes(self, pattern: Cut) -> float:
        return 6.0 + (40.0 if self.method == "hand" else 12.0) * sewn_length(pattern, self.inner) / 1000

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
