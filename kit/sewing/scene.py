"""What a sewing picture shows, said without drawing: which layers lie how, and what is stitched.

An operation describes its scene; `kit.picture` draws it from the real pieces.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from itertools import pairwise
from typing import Literal

from kit.geometry import Path
from kit.piece.recut import PieceChange
from kit.sewing.run import Run
from kit.sewing.state import State

Face = Literal["right", "wrong"]
Ink = Literal["new", "old"]
Stuff = Literal["main", "facing", "interfacing", "strip"]
ThingKind = Literal[
    "zip",
    "zip_tape",
    "button",
    "buttonhole",
    "hook",
    "bar",
    "eye",
    "snap",
    "socket",
    "eyelet",
    "cut",
    "tower",
    "elastic",
    "cord",
    "threaded",
    "binding",
    "clips",
    "wedges",
    "caught",
    "tie",
    "gap",
]


Way = Literal["seamed", "turned", "faced", "hung"]


@dataclass(frozen=True)
class EdgeLie:
    """How a stretch of `edge` lies that is no cut edge any more, from `start` to `end` mm along it as drafted: "seamed"
    to another, "turned" over to the wrong side, "faced" by what lies inside it, or "hung" with a band. `deep` mm of its
    allowance lie over the wrong side; a row holds them `row` mm from the fold (0: none)."""

    edge: str
    start: float
    end: float
    way: Way
    deep: float = 0.0
    row: float = 0.0


@dataclass(frozen=True)
class Along:
    """How a straight band follows the run it is sewn to. The run starts at `start` and ends at `end`, mm along the
    band's own run (`end` the lesser where they run against each other). Of the band `depth` (from, to) is seen, mm from
    its own run; past its `middle` it is folded back (0: it lies single). It hangs `outward` beyond the garment's edge
    or lies on the cloth. `beyond` is how far it is seen past the run's start and end; None where it goes on."""

    start: float
    end: float
    depth: tuple[float, float]
    outward: bool
    middle: float = 0.0
    beyond: tuple[float | None, float | None] = (None, None)
    raw: tuple[bool, bool] = (False, False)


@dataclass(frozen=True)
class RoundLie:
    """How a layer lies that is closed to a ring, seen as it stands: the surface from the circle `near` (radius, height)
    of its `edge` to the circle `far` of its `others` (none: a round piece). `seam` is the edge its own ends are sewn
    by, `work` says that its edge is worked at, `inside` that one only looks into it, `raw` whether its edge and the
    others are cut edges."""

    near: tuple[float, float]
    far: tuple[float, float]
    edge: str
    others: tuple[str, ...] = ()
    seam: str = ""
    work: bool = False
    inside: bool = False
    raw: tuple[bool, bool] = (False, False)

    @property
    def level(self) -> bool:
        """Whether it lies level, as a disc or a brim on a table does."""
        return abs(self.near[1] - self.far[1]) < 1.0


@dataclass(frozen=True)
class Layer:
    """One cloth layer: `run.piece` (and `run.side`) says which cut piece; `up` which face the viewer sees.
    `stuff` is facing, interfacing, main or strip. With `on`, this layer is laid so that its `run` lies on
    the run `on` of an earlier layer: `together` turns it over onto that layer, `open` lays it beside the
    seam (opened out), `flat` lays it exactly where its draft coordinates put it. `turn` folds an edge over:
    (edge name, depth in mm) turned to the viewer; `back` turns the allowance of a part of an edge to the wrong side:
    (run, depth in mm); `fold` is a straight line across the piece (draft coordinates) along
    which the part to the right of it, as the line runs, is folded over to the viewer. How the piece has come to lie by
    now: `lies` are its edges that are sewn already, `shut` its darts and pleats that are, `fused` says that its wrong
    side is interfacing, `along` that it is a band and how it follows the run `on`. With `ring` it is the far side of a
    tube, and `place` is the line on the layer `on` that its outline lies on (a pocket's). Allowances `trimmed` are cut
    back in this step to that many mm, those `creased` end at a fold so far outside their stitch line: (run, mm). Where
    a seam opened out is pressed to one side, `lain` mm of it lie over this piece (0: none on this one); None where each
    allowance lies back on its own piece. `bound` are its edges that are shut in a binding by now: (run, mm that it
    shows). `round` tells how it lies where it is a ring that is seen as it stands; then the picture has no other. One
    laid `together` that is `spread` follows the edge it is laid on, as clips and ease let cloth do; `against` tells
    whether the two edges run against each other, where it is known."""

    run: Run
    up: Face = "right"
    stuff: Stuff = "main"
    on: Run | None = None
    how: Literal["together", "open", "flat"] = "flat"
    turn: tuple[tuple[str, float], ...] = ()
    back: tuple[tuple[Run, float], ...] = ()
    fold: Path | None = None
    lies: tuple[EdgeLie, ...] = ()
    shut: tuple[str, ...] = ()
    fused: bool = False
    along: Along | None = None
    ring: bool = False
    place: Path | None = None
    trimmed: tuple[tuple[Run, float], ...] = ()
    creased: tuple[tuple[Run, float], ...] = ()
    lain: float | None = None
    bound: tuple[tuple[Run, float], ...] = ()
    round: RoundLie | None = None
    spread: bool = False
    against: bool | None = None


@dataclass(frozen=True)
class Row:
    """A row of stitching on `run`, `inset` mm inside the stitch line (negative: in the allowance).
    `ink` is new for this operation, old for what stood before. `gap` leaves out (start, end) mm. `style` tells a
    machine row, a zigzag, long basting or gathering stitches, hand stitches and a box with a cross apart; the box lies
    round the line at `inset`, as long as the run and twice as deep as the inset. With `line`, the row follows that
    path in draft coordinates of the run's piece instead of the run (a dart's leg, a pocket's edge). One that `goes_on`
    is part of another row of the scene, on the next piece. Where it goes on over the fold of its piece, `folded` tells
    which end of its run lies there; it is sewn from the other one."""

    run: Run
    inset: float = 0.0
    ink: Ink = "new"
    gap: tuple[float, float] | None = None
    zigzag: bool = False
    style: Literal["machine", "zigzag", "baste", "gather", "hand", "box"] = "machine"
    line: Path | None = None
    goes_on: bool = False
    folded: Literal["", "start", "end"] = ""


@dataclass(frozen=True)
class Ply:
    """One cloth of a cross-section: its `stuff` and its course as a polyline (x along, y up, in units of cloth
    thickness; level runs lie on the cloth, upright ones are folds). `raw` says whether its first and its last end
    are cut edges; the other ends go on into the garment. `name` tells plies of one stuff apart ("front"). `right` is
    the side of its course on which its right side lies, +1 left and -1 right, where that follows from the seam itself
    (0: from how the cloth lies in the scene)."""

    stuff: str
    path: tuple[tuple[float, float], ...]
    raw: tuple[bool, bool] = (False, False)
    name: str = ""
    right: int = 0

    @property
    def runs(self) -> tuple[tuple[float, float, float], ...]:
        """(least x, greatest x, y) of each level run, in order along the ply."""
        return tuple((min(a, c), max(a, c), b) for (a, b), (c, d) in pairwise(self.path) if abs(b - d) < 1e-9)

    @property
    def folds(self) -> int:
        """How often it is folded back on itself."""
        level = [(c - a) for (a, b), (c, d) in pairwise(self.path) if abs(b - d) < 1e-9]
        return sum(1 for one, two in pairwise(level) if one * two < 0)


@dataclass(frozen=True)
class Section:
    """Cross-section: `plies` from bottom to top; `stitches` are needle lines (x, y from, y to)."""

    plies: tuple[Ply, ...]
    stitches: tuple[tuple[float, float, float], ...] = ()

    def at(self, x: float) -> tuple[str, ...]:
        """What lies at `x`, from the bottom up: the name, or else the stuff, of each ply met."""
        found = [(y, ply.name or ply.stuff) for ply in self.plies for low, high, y in ply.runs if low <= x <= high]
        return tuple(name for _, name in sorted(found))

    @property
    def raw_edges(self) -> int:
        """How many cut edges the section shows."""
        return sum(sum(ply.raw) for ply in self.plies)

    @property
    def enclosed(self) -> int:
        """How many of the cut edges have cloth both above and below them."""
        levels = [run for ply in self.plies for run in ply.runs]
        count = 0
        for ply in self.plies:
            for end, beside, raw in ((ply.path[0], ply.path[1], ply.raw[0]), (ply.path[-1], ply.path[-2], ply.raw[1])):
                if raw:
                    x = end[0] + (0.01 if beside[0] > end[0] else -0.01)
                    over = any(low <= x <= high and y > end[1] for low, high, y in levels)
                    under = any(low <= x <= high and y < end[1] for low, high, y in levels)
                    count += over and under
        return count

    def through(self, stitch: int) -> tuple[str, ...]:
        """What the row of stitching of that number passes through, from the bottom up."""
        x, low, high = self.stitches[stitch]
        met = [
            (y, ply.name or ply.stuff) for ply in self.plies for a, b, y in ply.runs if a <= x <= b and low < y < high
        ]
        return tuple(name for _, name in sorted(met))


@dataclass(frozen=True)
class Thing:
    """Something sewn on that is no cut piece: zip (or one tape of an open one, on the outer side of `line`), button, a
    line to cut along, a placket's tower, hook and eye or bar, the halves of a snap, buttonhole, eyelet, elastic, cord,
    what is threaded into a tunnel, a bodkin ahead of it; binding, a strip's end caught under the layer, a tie or strap
    that is seen, of the strip `of`; a gap that is open to turn through; or cut away: clips and wedges in an allowance,
    `apart` mm from each other. It lies along `line` (draft coordinates of `run.piece`), or at its start where it has no
    length, `width` mm across. `ink` is old for clips that an earlier picture has shown."""

    kind: ThingKind
    run: Run
    line: Path
    width: float = 10.0
    apart: float = 0.0
    ink: Ink = "new"
    of: str = ""


@dataclass(frozen=True)
class StripShape:
    """A strip by itself as an operation leaves it. `slant`: mm by which its far end is slanted, the seamed edge being
    the shorter; `rows` of stitching beside its long edges, mm from the "open" (or seamed) one and from the "fold".
    `tube`: it lies folded in two, right sides together, as wide as half of what is cut, its row (new, or `old`) `seam`
    mm from the raw edges, which are trimmed to `back` mm there and to `back_end` across its end (0: not at all), the
    `upper` of the two to so many. `hem` is the width of a hem turned along its long edges, `hem_ends` at how many of
    its short ones; `ends` mm of each short end are tucked in, and stitched.
    `pieced`: two of its lengths are being joined, as "bias" ends, "corner" on corner or "straight".
    `placket`: it is on a slit of the piece `on`, `slit` mm long and pulled straight: "laid" under it, "covering" its
    raw edges, or folded and stitched on a "slant"."""

    slant: float = 0.0
    rows: tuple[tuple[Literal["open", "fold"], float], ...] = ()
    tube: bool = False
    seam: float = 0.0
    back: float = 0.0
    back_end: float = 0.0
    upper: float = 0.0
    old: bool = False
    hem: float = 0.0
    hem_ends: int = 0
    ends: float = 0.0
    pieced: str = ""
    placket: Literal["", "laid", "covering", "slant"] = ""
    on: str = ""
    slit: float = 0.0


@dataclass(frozen=True)
class Scene:
    """`layers` from the bottom up, `rows` of stitching, `focus` the run the picture is centred on (None: all),
    `arrows` pressing or folding directions (from run, "in" or "out"), `strip` names a strip that is shown, its
    `shape` how it lies by itself, `pins` runs that are pinned, `things` what is sewn on. With `recut` it shows a
    piece whose cloth is cut: the old line, the new one and what is trimmed; `resewn` are its edges that a row lies
    along. `stage` is the stage of the operation that it shows ("": its last). `folds` are darts and pleats of the
    last layer that this step has sewn; `over` says that the work was turned over since the picture before. A band's
    picture is seen from the `inside` of the garment or from outside; with `beside` what is sewn to the focus is
    laid open beside it, although it will lie inside. With `worn` the garment is seen as it is tried on; what is
    shown `once` is left out where an operation of the same step was alike. `sewn` is the garment as it is at that
    moment (None: nobody has asked). `faces` tells on which side of its course (+1 left, -1 right) each ply of the
    section has its right side, 0 where it is not told. The section is cut across the run `cut` where that is not the
    focus."""

    layers: tuple[Layer, ...]
    rows: tuple[Row, ...] = ()
    focus: Run | None = None
    arrows: tuple[tuple[Run, Literal["in", "out"]], ...] = ()
    section: Section | None = None
    strip: str = ""
    pins: tuple[Run, ...] = ()
    things: tuple[Thing, ...] = ()
    recut: PieceChange | None = None
    resewn: tuple[str, ...] = ()
    stage: str = ""
    shape: StripShape | None = None
    folds: tuple[str, ...] = ()
    over: bool = False
    inside: bool = False
    beside: bool = False
    worn: bool = False
    once: bool = False
    cut: Run | None = None
    sewn: State | None = field(default=None, repr=False, compare=False)
    faces: tuple[int, ...] = field(default=(), repr=False, compare=False)
