"""Bands: collar bands, cuffs and waistbands, seamed, set on and closed over the seam.

A band is two pieces, an outer and an inner one, or one piece folded lengthwise. Its order: interfaced; its upper edge
and ends seamed (`seam_band`) or, folded, its ends stitched across (`band_ends`); turned out; its lower edge set on the
garment (`set_band`); its other lower edge turned under and closed over that seam (`close_band`). A folded band may be
set on before its ends are stitched.
"""

from __future__ import annotations

from collections.abc import Collection
from typing import NamedTuple

from kit.piece.piece import Piece
from kit.sewing.caught import caught_on
from kit.sewing.curves import Bend, needs_scissors, tightest
from kit.sewing.drawn import fits
from kit.sewing.hanging import beside_run
from kit.sewing.operations.joined import in_rows
from kit.sewing.operations.trimming import STAYSTITCH, clipped, spacing
from kit.sewing.operations.turned import SeamToTurn
from kit.sewing.outcome import Hung
from kit.sewing.places import all_raw_beside, part, sewn_over
from kit.sewing.reaching import Beyond, at_end, corner, overlap, shorter
from kit.sewing.scenes import Shows
from kit.sewing.section import caught as caught_between
from kit.sewing.section import superimposed
from kit.sewing.sections import bands as section
from kit.sewing.stretching import across
from kit.sewing.vocabulary import *

CAUGHT_AGREES = 2.0
"""mm by which a collar caught between two bands may differ from the edge it lies along."""
_SMALL = 0.35  # share of the longest run below which another is too small to show the work on
_MEET = 1.0  # mm within which a marked line meets the end of a band

# ---- its ends -------------------------------------------------------------------------------------------------


def along_of(made: SeamBand, pattern: Cut, caught: Run) -> Run | None:
    """The edge of the outer band that a caught edge lies along: the one as long as it is."""
    size = sewn_length(pattern, (caught,)) / len(sides_of(pattern, caught))
    edges = [replace(run, edges=(name,)) for run in made.a if run.start is None for name in run.edges]
    found = [(abs(sewn_length(pattern, (run,)) / len(sides_of(pattern, run)) - size), run) for run in edges]
    off, run = min(found, key=lambda each: each[0], default=(CAUGHT_AGREES + 1.0, None))
    return run if off <= CAUGHT_AGREES else None


def _fits_between(made: SeamBand, state: State, pattern: Cut) -> Iterable[Case]:
    """What is caught between the two bands is as long as the edge it lies along."""
    for run in made.catching:
        yield Case(along_of(made, pattern, run) is not None, run, amount=sewn_length(pattern, (run,)))


def _caught_between(made: SeamBand, pattern: Cut) -> Iterator[Sentence]:
    """How what is caught is laid between the two bands."""
    if made.catching:
        on = along_of(made, pattern, made.catching[0]) or made.a[0]
        yield Sentence("seam_band.catch", {"caught": (made.catching, "place"), "on": ((on,), "place")})


@operation
class SeamBand(SeamToTurn):
    """Seam outer and inner band along their upper edges and ends. `overlap` beyond the garment at the end `at`;
    `catching` are edges of a collar, made and turned, that lie between the two.

    Example::

        make.seam_band(band.end + band.top, inner_band.end + inner_band.top, allowance=1 * cm)
    """

    kind = "seam_band"
    says: ClassVar[Keys] = (_caught_between, *SeamToTurn.says)
    why = ("why", "seam_to_turn.why")
    joined = (("catching", "a"),)
    rules = (*SeamToTurn.rules, whole_edges("a"), Rule(Asking(_fits_between), "caught_length", each=True))

    a: tuple[Run, ...] = meets("b", argument="outer", takes="allowance", fills={"edge": "edge"})
    b: tuple[Run, ...] = meets("a", argument="inner", takes="allowance")
    gap: tuple[float, float] | None = fixed(None)
    ease: float = fixed(0.0)
    overlap: float = overlap()
    at: Beyond | None = at_end()
    catching: tuple[Run, ...] = row(by_name=True, default=(), closes="sewn", takes="allowance")

    @classmethod
    def made(cls, asked: Asked) -> SeamBand:
        return cls(**asked.read | {"extra": corner(asked)})

    @property
    def pieces(self) -> tuple[str, ...]:
        return tuple(dict.fromkeys(run.piece for run in self.a + self.b + self.extra))

    def caught_along(self, pattern: Cut, caught: Run, piece: str) -> Run | None:
        """The edge of one of the two bands that a caught edge lies along."""
        on = along_of(self, pattern, caught)
        if on is None or on.piece == piece:
            return on
        row, others = ([(run, edge) for run in runs for edge in run.edges] for runs in (self.a, self.b))
        at = next((n for n, (run, edge) in enumerate(row) if (run.piece, edge) == (on.piece, on.edges[0])), len(others))
        if len(row) != len(others) or at == len(others) or others[at][0].piece != piece:
            return None
        run, edge = others[at]
        return replace(run, edges=(edge,))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        """With a collar between the two, turned out already, its edges even with theirs."""
        (laid,) = super().scenes(pattern)
        if not self.catching:
            return (laid,)
        below, above = laid.layers
        on = self.caught_along(pattern, self.catching[0], below.run.piece)
        found = [below, above]
        if on is not None:
            collar = shown(pattern, self.catching[0], below.run.side)
            on = replace(on, side=below.run.side)
            found.insert(1, Layer(collar, up="right", on=on, how="together"))
        return (replace(laid, layers=tuple(found), section=caught_between("main", "facing")),)


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
    tools = ("machine", "pins", "iron", "scissors")
    says = (
        lambda band, pattern: "fold_marked" if band.off_the_middle(pattern) else "fold",
        lambda band, pattern: "sew_set" if band.is_set(pattern) else "sew",
        Say("extra", lambda band: bool(band.extra)),
        Say("trim", lambda band: band.trim),
        alike_of("ends"),
    )
    gives = (Of("end_stitched", "ends"),)
    changes = (Brings("inside_out", lambda band, pattern: tuple(dict.fromkeys(run.piece for run in band.ends))),)
    wanted = (Of("turned_out", "ends", each="piece"),)
    rules = (
        whole_edges("ends"),
        Rule(Of("turned_out", "ends", each="piece"), "turned_already", holds=False, each=True),
    )

    ends: tuple[Run, ...] = runs(closes="sewn", takes="allowance", fills={"pieces": "piece", "edge": "edge"})
    allowance: float = width()
    overlap: float = overlap()
    at: Beyond | None = at_end()
    extra: tuple[Run, ...] = read_by(
        lambda given, asked, name: corner(asked), "", way="none", held=(), closes="sewn", takes="allowance"
    )
    trim: bool = flag(default=True)

    def is_set(self, pattern: Cut) -> bool:
        """Whether the band hangs on the garment already."""
        pieces = {run.piece for run in self.ends}
        return any(fact[0] == "band_set" and fact[1] in pieces for fact in state_before(pattern, self).facts)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        fold = self._fold(pattern)
        ends = [run for run in self.ends if self.at is not None and run.edges == self.at.at.edges] or self.ends
        first = shown(pattern, ends[0])
        seen = [_above(pattern, shown(pattern, run, first.side), fold) for run in self.runs()]
        rows = [Row(run) for run in seen if run is not None and run.piece == first.piece]
        ties = caught_on(pattern, self, tuple(run for run in self.ends if run.piece == first.piece))
        show: Shows = {"focus": first, "section": section.band_end(), "things": ties}
        if fold is None:
            return (laid(first, *rows, up="wrong", **show),)
        return (folded_over(first, fold, *rows, up="right", **show),)

    def off_the_middle(self, pattern: Cut) -> bool:
        """Whether the band is marked to be folded elsewhere than where its long edges meet."""
        middle, marked = self._middle(pattern), self._marked(pattern)
        return middle is not None and marked is not None and middle.distance_to(marked.at(marked.length / 2)) > 0.5

    def _fold(self, pattern: Cut) -> Path | None:
        """The line it is folded along, as it is marked, else its middle from end to end."""
        middle, marked = self._middle(pattern), self._marked(pattern)
        if middle is None or marked is None:
            return middle
        way = (marked.end - marked.start).dot(middle.end - middle.start)
        return marked if way > 0 else marked.reversed()

    def _marked(self, pattern: Cut) -> Path | None:
        edges = tuple(name for run in self.ends if run.piece == self.ends[0].piece for name in run.edges)
        return marked_fold(pattern.piece(self.ends[0].piece), edges)

    def _middle(self, pattern: Cut) -> Path | None:
        """The middle of the band, from end to end, where both its ends are there to be seen."""
        piece = self.ends[0].piece
        ends = {run.edges: path_of(pattern, run) for run in self.ends if run.piece == piece}
        if len(ends) != 2:
            return None
        one, two = ends.values()
        return Path.line(one.at(one.length / 2), two.at(two.length / 2))


def marked_fold(piece: Piece, ends: Collection[str]) -> Path | None:
    """The line marked on a band from one of its ends to another, along which it is folded; None where none is."""
    for mark in piece.marks:
        if mark.kind != "line" or mark.path is None:
            continue
        tips = (mark.path.start, mark.path.end)
        met = [name for tip in tips for name in ends if piece.edge(name).path.distance_to(tip) < _MEET]
        if len(set(met)) == 2:
            return mark.path
    return None


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


class Snipped(NamedTuple):
    """Runs whose allowance is clipped before they are sewn, `apart` mm from clip to clip, because of a `curve`."""

    key: str
    along: tuple[Run, ...]
    curve: tuple[Run, ...]
    apart: float


def _curved(pattern: Cut, runs: Iterable[Run], allowance: float, way: Bend) -> tuple[Run, ...]:
    """The edges of the runs along which an allowance does not lie smoothly of itself."""
    edges = [replace(run, edges=(name,)) if run.start is None else run for run in runs for name in run.edges]
    return tuple(dict.fromkeys(run for run in edges if needs_scissors(tightest(pattern, run, way), allowance)))


def _snipped(made: SetBand, pattern: Cut) -> Iterator[Snipped]:
    """Where a straight band meets a curve: a curve that bends inward is staystitched and clipped, for one that bends
    outward the band is; unless a step of its own has done it."""
    state = state_before(pattern, made)

    def done(what: str, runs: Iterable[Run]) -> bool:
        return all(map(state.holds, facts_of(pattern, runs, what)))

    if not made.clip or made.shaped(pattern) or done("gathered", made.b) or done("eased", made.b):
        return
    inward, outward = (_curved(pattern, made.b, made.allowance, way) for way in ("in", "out"))
    inward = tuple(run for run in inward if not done("clipped_first", (run,)))
    if inward:
        key = "clip_curve" if done("staystitched", inward) else "staystitch"
        yield Snipped(key, inward, inward, spacing(pattern, inward, "in"))
    if outward and not done("clipped_first", made.a):
        yield Snipped("clip_band", made.a, outward, spacing(pattern, outward, "out"))


def _cut_first(made: SetBand, pattern: Cut) -> Iterator[Sentence]:
    for each in _snipped(made, pattern):
        lengths = {"spacing": (each.apart, "allowance"), "row": (STAYSTITCH, "allowance")}
        runs = {"edge": (each.curve, "place"), "straight": (each.along, "place")}
        yield Sentence(f"set_band.{each.key}", made.values(pattern) | lengths | runs)


def _laid_on(made: SetBand, pattern: Cut) -> Iterator[Sentence]:
    """How the band lies on the edge: round it, end on end, or with an end beyond it; its own ends finished or not."""
    state = state_before(pattern, made)
    raw = "" if all(("turned_out", run.piece) in state.facts for run in made.a) else "_raw"
    if made.at is not None:
        yield Sentence(f"set_band.ends_beyond{raw}", made.values(pattern) | {"end": ((made.at.at,), "edge")})
    else:
        yield from made.told(("match_ring" if is_ring(state, pattern, made.a) else f"match{raw}",), pattern)


def _fullness(made: SetBand, pattern: Cut) -> str:
    """How a longer edge comes to the band: pinned in, or the band pulled to it in cloth that stretches, unless threads
    have drawn the edge in by then."""
    state = state_before(pattern, made)
    threads = any(
        state.touches((what, *fact[1:]))
        for what in ("eased", "gathered")
        for fact in facts_of(pattern, made.b, "eased")
    )
    if made.ease <= 0:
        return ""
    return "pull" if across(pattern) and not threads else "ease"


def _raw_end(made: SetBand, state: State, pattern: Cut) -> Iterable[Case]:
    """The garment's edge ends at finished lines: at edges that are closed, or caught in this seam, or that are closed
    later together with the end of the band, as a collar goes over the neck and the upper end of a button band."""
    caught = {(run.piece, name) for run in made.catching for name in run.edges}
    for raw in all_raw_beside(state, pattern, made.b) if in_rows(made, state, pattern, "b") else ():
        if (raw.piece, raw.edges[0]) not in caught and not sewn_over(pattern, made.entire, raw, made.a):
            return (Case(False, raw),)
    return ()


def _to_show(pattern: Cut, runs: tuple[Run, ...]) -> Run:
    """The run that a picture shows: the last one, unless it is but a small part of the row, as the end of a button band
    beside a neck; then the longest."""
    sizes = [run_length(pattern, run) for run in runs]
    return runs[-1] if sizes[-1] > _SMALL * max(sizes) else runs[sizes.index(max(sizes))]


CAUGHT = Rule(Hanging("catching", "b"), "caught_loose", says="caught_loose_in_seam", do="caught_loose_do", each=True)


@operation
class SetBand(Operation):
    """Sew the lower edge of a band to a garment's edge. `overlap` reaches beyond it at the band's end `at`; `ease`
    is how much longer the garment's edge is in all (ribbing is pulled to it, by up to half of the lesson's `stretch`);
    `catching` are facing ends sewn into the seam with it. What steps of their own do is left out here: `clip=False`,
    `grade=False`, `press="later"`.

    Example::

        make.set_band(band.neck, [front.neck, back.neck], allowance=1 * cm)
    """

    # a is the band's edge without what reaches beyond; both allowances are pressed into the band
    kind = "set_band"
    seam_class = "1"
    tools = ("machine", "pins", "iron", "scissors")
    crosses = True
    says = (
        _cut_first,
        Say("catch", lambda band: band.catching),
        "pin",
        _laid_on,
        _fullness,
        "sew",
        Say("trim", lambda band: band.grade),
        lambda band, pattern: "clip" if band.clip and band.shaped(pattern) else "",
        Say("press", lambda band: band.press == "band"),
        PRESS_LATER,
        alike_of("a"),
    )
    work = Work(8.0, 15.0, of="a")
    joined = (("a", "b"),)
    gives = (Of("band_set", "a"),)
    changes = (
        Brings("hung", lambda band, pattern: (Hung(band.a, band.b),)),
        Brings("unpressed", lambda band, pattern: band.a + band.b if band.press == "later" else ()),
    )
    wanted = (Of("band_closed", "a"),)
    rules = (whole_edges("a"), in_a_row("b"), Rule(Asking(_raw_end), "band_end_raw"), CAUGHT, *fits("band_length"))

    a: tuple[Run, ...] = meets(
        "b", argument="band", closes="sewn", takes="allowance", becomes="faced", role="band", fills={"band": "piece"}
    )
    b: tuple[Run, ...] = meets(
        "a", argument="to", closes="sewn", takes="allowance", becomes="faced", fills={"edge": "place"}
    )
    allowance: float = width()
    ease: float = size(default=0, most=3000.0, fills="length")
    overlap: float = overlap()
    at: Beyond | None = at_end()
    catching: tuple[Run, ...] = row(
        by_name=True, default=(), closes="sewn", takes="allowance", becomes="faced", fills={"caught": "place"}
    )
    clip: bool = flag(default=True)
    grade: bool = flag(default=True)
    press: str = word(("band", "later"), default="band")

    @classmethod
    def made(cls, asked: Asked) -> SetBand:
        return cls(**asked.read | {"a": shorter(asked, "a")})

    def shaped(self, pattern: Cut) -> bool:
        """Whether the band's own edge is a curve."""
        return any(_curved(pattern, self.a, self.allowance, way) for way in ("in", "out"))

    def _section(self) -> Section:
        if self.press == "band":
            return section.band_set(bool(self.catching))
        return section.band_laid_on_facing() if self.catching else superimposed("main", "facing")

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        band, garment = shown(pattern, self.a[-1]), shown(pattern, _to_show(pattern, self.b))
        found = [
            clipped(pattern, _to_show(pattern, cut.along[::-1]), cut.apart, cut.curve == cut.along)
            for cut in _snipped(self, pattern)
        ]
        layers = self._section()
        band = beside_run(pattern, band, self.b, garment)
        laid = together(garment, band, Row(garment), pins=(garment,), section=layers)
        return (*found, replace(laid, layers=(laid.layers[0], replace(laid.layers[1], spread=True))))
