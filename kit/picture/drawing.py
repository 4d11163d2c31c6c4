"""The display list. A `Drawing` is strokes, fills, labels and dimensions with *roles*; a pen turns roles into
ink. No module but a pen knows a colour, a width or a dash. Coordinates are millimetres, y up, real size."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from kit.geometry import Curve, Point

StrokeRole = Literal[
    "cut",  # cut line
    "row_ground",  # under a new row, so that it is parted from a fold beside it
    "stitch",  # stitch line on paper
    "fold",
    "grain",
    "notch",
    "mark",
    "symbol",  # small signs drawn whole: drill marks, buttonholes, pleat arrows
    "lengthen",  # where a piece is made longer or shorter, two lines
    "placement",  # where another piece is laid on
    "pleat",  # the lines of a pleat or tuck that meet when it is folded
    "leader",  # from a text outside the piece to its place
    "guide",  # construction line
    "new",  # what this step adds, accent ink
    "kept",  # what stands from before, thin and grey
    "traced",  # what this step takes over from another piece, neither old nor newly shaped
    "aid",  # what the hand rules or squares on the way to a point
    "sign",  # square corner, running through without a corner
    "check",  # what must be equal, laid out to be seen
    "lens",  # round an enlarged corner and its place
    "removed",  # dashed ghost
    "edge",  # cut edge of a cloth layer in a sewing picture
    "crease",  # its outline where the cloth is folded back: a hem, a seam, a band
    "row_sign",  # direction and end of a row
    "hidden",  # outline of a layer that lies underneath
    "row",  # a row of stitching, accent ink
    "baste",  # long stitches that come out again, or are drawn up
    "hand",  # hand stitches
    "old_row",  # stitching done in an earlier step
    "press",  # pressing or folding arrow
    "pin",
    "trim",  # where a page is cut
    "page",
    "ply_face",  # its right side there
    "ply_main",  # one layer of cloth in a cross-section
    "ply_facing",
    "ply_interfacing",
    "ply_strip",
    "ply_lining",
    "needle",  # stitches in a cross-section
]
FillRole = Literal["right_side", "wrong_side", "interfacing", "facing", "paper", "strip", "lining", "frame"]
LabelRole = Literal["name", "small", "measure", "number", "title", "ghost", "new", "order"]


@dataclass(frozen=True)
class Stroke:
    """A line made of joined curves. `arrow` draws heads at the "start", "end" or "both". `thickness` (mm) makes
    it an outlined band, as a layer of cloth seen from its edge; 0 is a line of the pen's own width."""

    curves: tuple[Curve, ...]
    role: StrokeRole
    closed: bool = False
    arrow: Literal["", "start", "end", "both"] = ""
    name: str = ""
    thickness: float = 0.0


@dataclass(frozen=True)
class Fill:
    """A closed area of cloth or paper."""

    curves: tuple[Curve, ...]
    role: FillRole
    name: str = ""


@dataclass(frozen=True)
class Area:
    """What an outline encloses, as what a text names: it stands inside where there is room, else a leader goes from it
    to the place `at`, or to the middle; round a window to that of the places `sides` which is meant for a leader from
    the left, below, the right or above, each with how much of the window the leader crosses that is something else."""

    curves: tuple[Curve, ...]
    at: Point | None = None
    sides: tuple[tuple[Point, float], ...] = ()


@dataclass(frozen=True)
class Label:
    """Text centred at `at`, turned by `angle` (radians ccw). `size` is the type size (em) in mm of paper when
    the drawing is shown at real size, and then the text stays where it is; 0 gives it the picture's size and the
    place that suits the whole picture best (kit/picture/lettered.py). For that it says what it is the name `of`: a
    point, a line (its curves) or an area; without, it stays near `at`, or just there where its `anchor` says that it
    starts or ends at it. A line break parts its lines."""

    text: str
    at: Point
    role: LabelRole = "name"
    angle: float = 0.0
    size: float = 0.0
    anchor: Literal["start", "middle", "end"] = "middle"
    of: Point | tuple[Curve, ...] | Area | None = None


@dataclass(frozen=True)
class Dimension:
    """A measured distance from `start` to `end` with its text; drawn `offset` mm to the left of travel.
    `along` follows a curved line instead of the straight one."""

    start: Point
    end: Point
    text: str
    offset: float = 0.0
    along: tuple[Curve, ...] = ()
    name: str = ""


@dataclass(frozen=True)
class Dot:
    """A point of the draft, shown at the pen's own size."""

    at: Point
    role: Literal["new", "kept", "mark"] = "kept"
    name: str = ""


Item = Stroke | Fill | Label | Dimension | Dot


@dataclass(frozen=True)
class Drawing:
    """Items in painting order. `alt` is the alternative text, `bounds` (xmin, ymin, xmax, ymax) in mm or None
    to fit the items. A `window` (xmin, ymin, xmax, ymax) is the part of the cloth that is shown: what is drawn beyond
    lies under paper, names stand round it, and the bounds grow by what they need."""

    items: tuple[Item, ...]
    alt: str = ""
    title: str = ""
    bounds: tuple[float, float, float, float] | None = None
    window: tuple[float, float, float, float] | None = None

    def __add__(self, other: Drawing) -> Drawing:
        return Drawing(self.items + other.items, self.alt or other.alt, self.title or other.title, None)
