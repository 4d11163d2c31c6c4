"""Closing a band: its other long edge turned under and laid over the seam that holds it."""

from __future__ import annotations

from itertools import combinations

from kit.sewing.operations.bands import SeamBand, SetBand, marked_fold
from kit.sewing.operations.turned import right_side_out
from kit.sewing.places import corner, sewn_over
from kit.sewing.reaching import Beyond, at_end, overlap, shorter
from kit.sewing.sections import bands as section
from kit.sewing.state import EdgeKey
from kit.sewing.vocabulary import *

DEPTH = 1.0
"""mm by which the inner piece of a band may be deeper or less deep than its outer one unnoticed."""
IN_THE_GROOVE = 3.0
"""mm that it is deeper where a row in the groove of the seam is to catch it (common practice, no source)."""
TACK = 12.0  # mm of hand stitches at a seam, as they are drawn
AGREE = 2.0
"""mm by which the inner edge of a band may differ from its outer one."""


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
    """Nothing beside the inner edge is raw any more, but for an end whose two layers are shut in together later."""
    for run in made.inner:
        piece = pattern.piece(run.piece)
        for side in sides_of(pattern, run):
            for name in neighbours(piece, run.edges):
                if name != piece.fold:
                    end = Run(run.piece, (name,), side)
                    yield Case(not state.raw(piece, side, name) or sewn_over(pattern, made.entire, end, made.over), end)


def _as_long(made: CloseBand, state: State, pattern: Cut) -> Iterator[tuple[str, Case]]:
    off = sewn_length(pattern, made.inner) - sewn_length(pattern, made.over)
    if abs(off) > AGREE:
        yield "longer" if off > 0 else "shorter", Case(False, made.inner[0], amount=abs(off))


def _depths(pattern: Cut, state: State, run: Run, other: str) -> list[float] | None:
    """How deep a band is at three places along its lower edge, up to where it is sewn to the piece `other`; None where
    no edge above it is."""
    piece = pattern.piece(run.piece)
    side = sides_of(pattern, run)[-1]
    below = {*run.edges, *neighbours(piece, run.edges)}
    above = {
        name
        for seam in state.seams
        if any(part == other for part, _, _ in seam)
        for part, half, name in seam
        if (part, half) == (run.piece, side) and name not in below
    }
    if not above:
        return None
    path = path_of(pattern, replace(run, side=side))
    places = [path.at(path.length * share) for share in (0.25, 0.5, 0.75)]
    return [min(piece.edge(name).path.distance_to(place) for name in above) for place in places]


def _to_fold(pattern: Cut, run: Run, other: Run) -> list[float] | None:
    """How deep one side of a folded band is at three places along its edge, up to the line it is folded along."""
    piece = pattern.piece(run.piece)
    ends = {edge.name for edge in piece.edges} - {*run.edges, *other.edges}
    fold = marked_fold(piece, ends)
    if fold is None:
        return None
    path = path_of(pattern, run)
    return [fold.distance_to(path.at(path.length * share)) for share in (0.25, 0.5, 0.75)]


def deeper_by(made: CloseBand, state: State, pattern: Cut) -> Iterator[tuple[Run, float]]:
    """(run, mm) by which the inner side of a band is deeper than the outer one, where it is so most; below zero where
    it is less deep. Of two pieces each reaches up to where it is sewn to the other, of one to the fold that is marked
    on it; without a mark it is folded edge to edge, and so equally deep on both sides."""
    for run in made.inner:
        for outer in made.over:
            if outer.piece == run.piece:
                mine, theirs = _to_fold(pattern, run, outer), _to_fold(pattern, outer, run)
            else:
                mine, theirs = _depths(pattern, state, run, outer.piece), _depths(pattern, state, outer, run.piece)
            if mine and theirs:
                ways = [[a - b for a, b in zip(mine, row, strict=True)] for row in (theirs, theirs[::-1])]
                yield run, max(min(ways, key=lambda way: max(map(abs, way))), key=abs)


def _as_deep(made: CloseBand, state: State, pattern: Cut) -> Iterator[tuple[str, Case]]:
    """Its fold reaches the seam, and not farther past it than it is meant to."""
    most = max(made.deeper, IN_THE_GROOVE if made.method == "groove" else 0.0)
    for run, by in deeper_by(made, state, pattern):
        if not -DEPTH <= by <= most + DEPTH:
            yield "deeper" if by > 0 else "shallower", Case(False, run, amount=abs(by))


def _fold_first(pattern: Cut, run: Run) -> bool:
    """Whether a run of a piece on the fold is walked from there."""
    piece = pattern.piece(run.piece)
    return piece.edge(piece.fold).path.distance_to(path_of(pattern, run).start) < 0.1


def seams_met(pattern: Cut, state: State, over: Run) -> tuple[list[EdgeKey], int]:
    """The edges of the garment that a band's edge is sewn to, on one half, and how many of the garment's seams end at
    it there."""
    side = sides_of(pattern, over)[-1]
    mine = {(over.piece, side, name) for name in over.edges}
    held = sorted({key for seam in state.seams if seam & mine for key in seam - mine})
    beside = {
        (piece, half, name): corner(pattern, Run(piece, (edge,)), name)
        for piece, half, edge in held
        for name in neighbours(pattern.piece(piece), (edge,))
        if (piece, half, name) not in held
    }
    return held, sum(state.sewn_there(*one, *two) for one, two in combinations(beside.items(), 2))


def _meets_seams(made: CloseBand, state: State, pattern: Cut, over: Run) -> bool:
    """There are seams that its inner side can be held at."""
    return seams_met(pattern, state, over)[1] > 0


@operation
class CloseBand(Operation):
    """Turn the other edge of a band under and close it over the seam of `over`. `at` is the end of the band (of its
    inner piece, where it is two) at which the overlap lies; `deeper` is how far its fold reaches past the seam on
    purpose, 2 to 3 mm where it is caught from the right side. `method`: "edgestitch", "groove", by "hand", or tacked
    down at the "seams" it meets alone.

    Example::

        make.close_band(cuff.inner, cuff.lower, allowance=1 * cm, overlap=3 * cm, at=cuff.end)
    """

    # "edgestitch"ed or stitched in the "groove" of the seam from the right side, or slip stitched by "hand"
    kind = "close_band"
    seam_class = "2"
    tools = ("machine", "pins", "iron", "hand_needle")
    crosses = True
    says = ("turn", "pin", "{method}", alike_of("inner"))
    work = Work(6.0, lambda band: 40.0 if band.method == "hand" else 12.0, of="inner")
    gives = (Of("band_closed", "over"),)
    rules = (
        whole_edges("inner"),
        Rule(Of("band_set", "over", each="run"), "band_not_set", ends="all"),
        right_side_out("inner", "over"),
        Rule(Pressed("over"), "band_not_pressed"),
        Rule(Asking(_seamed), "band_not_seamed"),
        Rule(Asking(_ends_closed), "band_end_open"),
        *(
            Rule(First(_as_long, way), "band_inner_length", says=f"band_inner_{way}", do="band_inner_do")
            for way in ("longer", "shorter")
        ),
        *(Rule(First(_as_deep, way), f"band_inner_{way}", do="band_inner_depth_do") for way in ("deeper", "shallower")),
        Rule(Each("over", _meets_seams), "band_meets_no_seam", when=lambda band: band.method == "seams"),
    )
    also = (Also("turned", lambda band, pattern: band.turned(pattern)),)

    inner: tuple[Run, ...] = row(closes="faced", takes="allowance", fills={"edge": "place"})
    over: tuple[Run, ...] = row(touched=False)
    allowance: float = width()
    method: str = word(("edgestitch", "groove", "hand", "seams"), default="edgestitch")
    deeper: float = size(default=0, most=6.0)
    overlap: float = overlap()
    at: Beyond | None = at_end()

    @classmethod
    def agree(cls, asked: Asked) -> None:
        if asked.read["deeper"] >= asked.read["allowance"]:
            lengths = {name: measured(asked.read[name], "allowance") for name in ("deeper", "allowance")}
            raise KitError(
                message("refusal.band_fold_eaten", **lengths),
                where=in_call(asked.where),
                do=message("refusal.band_fold_eaten_do"),
            )

    @classmethod
    def made(cls, asked: Asked) -> CloseBand:
        return cls(**asked.read | {name: shorter(asked, name, twins=True) for name in ("inner", "over")})

    def turned(self, pattern: Cut) -> float:
        """mm turned under: less than the allowance by what the fold is to reach past the seam, as far as the inner
        piece is not drawn deeper itself."""
        drawn = [by for _, by in deeper_by(self, state_before(pattern, self), pattern)]
        return self.allowance - max(self.deeper - max(drawn, default=0.0), 0.0)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.inner[-1])
        by_hand = self.method in ("hand", "seams")
        held = self.spots(pattern, run) if self.method == "seams" else (run,)
        rows = [Row(spot, style="hand") if by_hand else Row(spot, inset=2.0) for spot in held]
        shape = section.band_closed(stitched=not by_hand)
        scene = laid(run, *rows, focus=run, pins=(run,), section=shape, inside=by_hand)
        deep = max(pattern.piece(run.piece).edge(name).allowance or 0.0 for name in run.edges)
        return (replace(scene, layers=(replace(scene.layers[0], back=((run, deep),)),)),)  # turned under

    def spots(self, pattern: Cut, run: Run) -> tuple[Run, ...]:
        """Where its fold is held to the seams it meets, on the half that is shown: as far along as the garment's edges
        are long, counted from the band's end. At its ends, where a seam holds it already, it needs none."""
        state, size = state_before(pattern, self), run_length(pattern, run)
        piece = pattern.piece(run.piece)
        found: list[Run] = []
        for over in self.over:
            held, _ = seams_met(pattern, state, over)
            keys = [(each.piece, each.side or "right", each.edges) for each in self._order(pattern, over)]
            row = sorted(held, key=lambda key: next((i for i, k in enumerate(keys) if k[0] == key[0]), 0))
            at = 0.0
            for name, _, edge in row[:-1]:
                at += pattern.piece(name).edge(edge).path.length
                if 0.0 < at < size:
                    far = piece.fold in neighbours(piece, run.edges) and _fold_first(pattern, run)
                    found.append(around(pattern, run, size - at if far else at, TACK))
        return tuple(found) or (around(pattern, run, size / 2, TACK),)

    def _order(self, pattern: Cut, over: Run) -> tuple[Run, ...]:
        """The garment's edges in the order they were named when the band was set on, from its end."""
        for record in getattr(pattern, "sewing", ()):
            for made in record.operations:
                whole = made.entire
                if isinstance(whole, SetBand) and any(each.piece == over.piece for each in whole.a):
                    return whole.b
        return ()


def ends_deeper(pattern: Cut, seam: SeamBand) -> float:
    """mm by which the inner band's ends may be longer than the outer one's where they are seamed: what its fold is to
    reach past the seam that it is closed over, at each end that runs into its lower edge."""
    for record in getattr(pattern, "sewing", ()):
        for made in record.operations:
            if not isinstance(made, CloseBand):
                continue
            lower = {(run.piece, name) for run in made.inner for name in run.edges}
            ends = sum(
                (run.piece, name) in lower for run in seam.b for name in neighbours(pattern.piece(run.piece), run.edges)
            )
            if ends:
                return ends * max(made.deeper, IN_THE_GROOVE if made.method == "groove" else 0.0)
    return 0.0
