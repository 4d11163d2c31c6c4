"""One layer of a sewing picture where it lies, and the lines of its draft taken there."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from kit.geometry import Curve, Motion, Path, Point, Vector
from kit.picture.cloth_edges import Bit
from kit.picture.darts_shut import Reach, ShutFold, Warp, all_of, reach_of, warped
from kit.picture.gathered import STEP as GATHERED
from kit.picture.gathered import Gathered, drawn_in
from kit.picture.place import fold_mirror, moved_curves
from kit.piece.piece import Piece, Side
from kit.sewing.run import Run
from kit.sewing.scene import Face, Layer

Box = tuple[float, float, float, float]


@dataclass
class PlacedLayer:
    """One layer where it lies: `motion` takes the draft of its half to the picture. Of edges in `parts` only the
    stretch given for each half (mm along the edge as drafted) is turned or opened out. `bits` are its outline told by
    its edges, `folds` its darts and pleats that are shut, `gathers` its edges that are drawn up. A band lies as `bend`
    takes its draft, and of it is `seen` what lies between two places (its run's start, the way it runs, from and to in
    mm); a piece laid open along a seam that bends follows it as `follow` says. `seen_up` is the face of what lies on
    top where the work is. `base` is the layer it was laid by; `slid` how far it was slid so that what lies below shows,
    `shift` how far it was moved in all."""

    layer: Layer
    piece: Piece
    side: Side
    motion: Motion
    outline: tuple[Curve, ...] = ()
    bits: list[Bit] = field(default_factory=list)
    flaps: list[tuple[Curve, ...]] = field(default_factory=list)
    lain: set[int] = field(default_factory=set)  # flaps that are the other piece's allowance, pressed over to this one
    opened: set[str] = field(default_factory=set)
    parts: dict[str, dict[Side, tuple[float, float]]] = field(default_factory=dict)
    shift: Motion = field(default_factory=Motion.identity)
    slid: Motion = field(default_factory=Motion.identity)
    base: PlacedLayer | None = None
    folds: tuple[ShutFold, ...] = ()
    gathers: tuple[Gathered, ...] = ()
    bend: Warp | None = None
    follow: Warp | None = None
    followed: Reach | None = None
    seen_up: Face = "right"
    seen: tuple[Point, Vector, float, float] | None = None

    @property
    def inside(self) -> float:
        """+1 when the piece lies to the left of its edges as they run in the draft."""
        return 1.0 if self.piece.outline.area > 0 else -1.0

    def inner(self, path: Path) -> tuple[Point, Vector]:
        """The middle of a path in the draft, and the unit vector from there into the piece."""
        middle, step = path.at(path.length / 2), path.normal_at(path.length / 2)
        return middle, step if self.piece.outline.contains(middle + step * 2.0) else step * -1.0

    def inward(self, path: Path, side: Side | None = None) -> Vector:
        """Into the piece, square to the middle of `path` (draft coordinates, run as named), in the picture."""
        middle, step = self.inner(path)
        if self.bend is None and self.follow is None and not self.folds and not self.gathers:
            return half_motion(self, side).vector(step)
        way = self.point(middle + step * 2.0, side) - self.point(middle, side)
        return way.unit() if way.length > 1e-6 else half_motion(self, side).vector(step)

    def point(self, p: Point, side: Side | None = None) -> Point:
        """Where a point of the draft lies in the picture, on the layer's own half or the other."""
        if self.bend is not None:
            return self.bend(p)
        p = all_of(self.folds)(p) if self.folds else p
        there = half_motion(self, side)(drawn_in(self.gathers)(p) if self.gathers else p)
        return self.follow(there) if self.follow is not None else there

    def lay(self, path: Path, side: Side | None = None) -> Path:
        """Where a line of the draft lies in the picture."""
        if self.bend is not None:
            return warped(path, self.bend)
        if self.folds:
            path = warped(path, all_of(self.folds), reach_of(self.folds))
        if self.gathers:
            path = warped(path, drawn_in(self.gathers), step=GATHERED)
        path = path.moved(half_motion(self, side))
        return warped(path, self.follow, self.followed) if self.follow is not None else path

    def shown(self, path: Path) -> Path:
        """The part of a line of the draft where the layer is seen: a band is seen no farther than its garment."""
        if self.seen is None or path.length < 1.0:
            return path
        first, way, low, high = self.seen
        places = [(path.at(path.length * i / 40) - first).dot(way) for i in range(41)]
        inside = [i for i, at in enumerate(places) if low - 0.5 <= at <= high + 0.5]
        if len(inside) < 2 or len(inside) == 41:
            return path
        return path.between(path.length * inside[0] / 40, path.length * inside[-1] / 40)

    def shows(self, path: Path) -> bool:
        """Whether anything of a line of the draft is seen."""
        if self.seen is None:
            return True
        first, way, low, high = self.seen
        return any(low - 0.5 <= (path.at(path.length * i / 8) - first).dot(way) <= high + 0.5 for i in range(9))

    def moved(self, by: Motion) -> None:
        """Moves the layer as it lies."""
        self.shift, self.motion = self.shift.then(by), self.motion.then(by)
        if self.bend is not None:
            before = self.bend
            self.bend = lambda p: by(before(p))
        if self.follow is not None:
            follow, back = self.follow, by.inverse()
            self.follow = lambda p: by(follow(back(p)))
            self.followed = None
        self.outline = moved_curves(self.outline, by)
        self.bits = [replace(bit, curves=moved_curves(bit.curves, by)) for bit in self.bits]
        self.flaps = [moved_curves(flap, by) for flap in self.flaps]


def with_run(placed: list[PlacedLayer], run: Run) -> list[PlacedLayer]:
    """The layers of the run's piece; where it lies there twice, those laid by that run."""
    same = [p for p in placed if p.piece.name == run.piece and not p.layer.ring]
    same = same or [p for p in placed if p.piece.name == run.piece]  # the far side of a tube, where it lies there alone
    here = [p for p in same if set(p.layer.run.edges) & set(run.edges)]
    return here if here and len({p.layer.run.edges for p in same}) > 1 else same


def find(placed: list[PlacedLayer], run: Run, side: Side | None) -> PlacedLayer | None:
    """The topmost layer of the run's piece, on the run's own side or else on `side`."""
    wanted = run.side or side
    same = with_run(placed, run)
    return next((p for p in reversed(same) if p.side == wanted), same[-1] if same else None)


def half_motion(p: PlacedLayer, side: Side | None) -> Motion:
    """The motion of one half: the other half of a piece on the fold is its mirror image."""
    if p.piece.fold and side is not None and side != p.side:
        return fold_mirror(p.piece).then(p.motion)
    return p.motion


def box_of(curves: tuple[Curve, ...]) -> Box:
    boxes = [c.bounds() for c in curves]
    return (min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes))


def area_of(box: Box) -> float:
    return (box[2] - box[0]) * (box[3] - box[1])


def grown(box: Box, by: float) -> Box:
    return (box[0] - by, box[1] - by, box[2] + by, box[3] + by)
