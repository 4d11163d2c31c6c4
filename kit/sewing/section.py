"""Cross-sections of seams and hems, in units of cloth thickness: x across the seam, y up.

Drawn in the manner of the seam diagrams in ISO 4916: each ply a line, needle lines upright. What a section claims
can be asked of it (`Section.at`, `through`, `raw_edges`, `enclosed`), and the tests do.
"""

from __future__ import annotations

from kit.sewing.scene import Ply, Section

STEP = 1.4
"""From one level of cloth to the next."""
_END = (False, True)
_BOTH = (True, True)


def superimposed(lower: str = "main", upper: str = "main") -> Section:
    """Two plies on one another, one row near their edges."""
    return Section(
        (Ply(lower, ((-9.0, 0.0), (4.0, 0.0)), _END, "lower"), Ply(upper, ((-9.0, 1.4), (4.0, 1.4)), _END, "upper")),
        ((0.0, -0.8, 2.2),),
    )


def caught(lower: str = "main", upper: str = "main") -> Section:
    """Two plies with the end of a strip between them, one row through all three near their edges."""
    return Section(
        (
            Ply(lower, ((-9.0, 0.0), (4.0, 0.0)), _END, "lower"),
            Ply("strip", ((-7.0, 1.4), (4.0, 1.4)), _END),
            Ply(upper, ((-9.0, 2.8), (4.0, 2.8)), _END, "upper"),
        ),
        ((0.0, -0.8, 3.6),),
    )


def pressed_open() -> Section:
    """A plain seam opened out, each allowance lying on its own side."""
    left = Ply("main", ((-10.0, 1.4), (-0.3, 1.4), (-0.3, 0.0), (-5.0, 0.0)), _END, "left")
    right = Ply("main", ((10.0, 1.4), (0.3, 1.4), (0.3, 0.0), (5.0, 0.0)), _END, "right")
    return Section((left, right))


def french_first() -> Section:
    """The first row of a French seam: near the edge, wrong sides together."""
    return Section(
        (
            Ply("main", ((-9.0, 0.0), (2.0, 0.0)), _END, "lower"),
            Ply("main", ((-9.0, 1.4), (2.0, 1.4)), _END, "upper"),
        ),
        ((0.0, -0.8, 2.2),),
    )


def french_second() -> Section:
    """A finished French seam: the raw edges lie between the plies, the second row shuts them in."""
    top = Ply("main", ((-8.0, 4.2), (8.0, 4.2), (8.0, 2.8), (4.0, 2.8)), _END, "upper")
    bottom = Ply("main", ((-8.0, 0.0), (8.0, 0.0), (8.0, 1.4), (4.0, 1.4)), _END, "lower")
    return Section((bottom, top), ((7.0, 1.0, 3.2), (1.5, -0.8, 5.0)))


def faced(facing: str = "facing", understitched: bool = False) -> Section:
    """An enclosed seam, turned: both allowances lie between garment and facing."""
    garment = Ply("main", ((-10.0, 4.2), (0.0, 4.2), (0.0, 2.8), (-5.0, 2.8)), _END, "garment", 1)
    inside = Ply(facing, ((-10.0, 0.0), (0.0, 0.0), (0.0, 1.4), (-4.0, 1.4)), _END, "facing", -1)
    return Section((inside, garment), ((-2.0, -0.8, 3.4),) if understitched else ())


def hem_once() -> Section:
    """Turned once and stitched."""
    return Section((Ply("main", ((-10.0, 0.0), (4.0, 0.0), (4.0, 1.4), (-4.0, 1.4)), _END),), ((-3.0, -0.8, 2.2),))


def hem_twice(first: float, second: float) -> Section:
    """Turned twice and stitched near the inner fold. The turns keep the proportion of `first` to `second`."""
    deep = 7.0
    inner = max(1.5, min(deep, deep * first / second)) if second > 0 else deep
    ply = ((-10.0, 0.0), (4.0, 0.0), (4.0, 2.8), (4.0 - deep, 2.8), (4.0 - deep, 1.4), (4.0 - deep + inner, 1.4))
    return Section((Ply("main", ply, _END),), ((4.0 - deep + 0.8, -0.8, 3.6),))


def folded_in_four(both: bool = True) -> Section:
    """A strip whose long edges meet in the middle and are shut in by folding it again, stitched along `both` sides or
    along the open one alone."""
    ply = ((3.5, 1.4), (-4.0, 1.4), (-4.0, 0.0), (4.0, 0.0), (4.0, 4.2), (-4.0, 4.2), (-4.0, 2.8), (3.5, 2.8))
    rows = ((-3.2, -0.8, 5.0), (3.2, -0.8, 5.0))
    return Section((Ply("strip", ply, _BOTH, right=-1),), rows if both else rows[:1])


def folding_in_four(both: bool = True) -> Section:
    """A strip on its way to `folded_in_four`, from left to right: folded in two to crease its middle; opened, its long
    edges folded in to the crease; folded again and stitched."""
    made = folded_in_four(both)
    creased = ((-26.0, 1.4), (-34.0, 1.4), (-34.0, 0.0), (-26.0, 0.0))
    inward = ((-14.4, 1.4), (-22.0, 1.4), (-22.0, 0.0), (-6.0, 0.0), (-6.0, 1.4), (-13.6, 1.4))
    before = (Ply("strip", creased, _BOTH, "in two", -1), Ply("strip", inward, _BOTH, "edges in", -1))
    return Section((*before, *made.plies), made.stitches)


def tube() -> Section:
    """A strip folded in two, right sides together, and seamed along its raw edges."""
    ply = ((4.0, 1.4), (-4.0, 1.4), (-4.0, 0.0), (4.0, 0.0))
    return Section((Ply("strip", ply, _BOTH, right=1),), ((1.5, -0.8, 2.2),))


def hemmed_both() -> Section:
    """A single layer with a narrow hem of two turns along both its edges, the wrong side up."""
    left = ((-8.5, 1.4), (-4.5, 1.4), (-4.5, 2.8), (-9.0, 2.8), (-9.0, 0.0))
    right = tuple((-x, y) for x, y in reversed(left))
    return Section((Ply("strip", (*left, *right), _BOTH),), ((-5.3, -0.8, 3.6), (5.3, -0.8, 3.6)))


def turned_tube(rows: int = 0) -> Section:
    """A strip seamed along one side and turned right side out: the allowances lie inside. `rows` of edgestitching: 1
    along the seam, 2 along both sides."""
    ply = ((0.5, 1.4), (4.0, 1.4), (4.0, 0.0), (-4.0, 0.0), (-4.0, 4.2), (4.0, 4.2), (4.0, 2.8), (0.5, 2.8))
    stitched = ((2.4, -0.8, 5.0), (-3.2, -0.8, 5.0))[:rows]
    return Section((Ply("strip", ply, _BOTH, right=1),), ((3.2, 1.0, 3.2), *stitched))


def fused() -> Section:
    """Interfacing fused to the wrong side."""
    return Section(
        (Ply("main", ((-8.0, 0.0), (8.0, 0.0)), _BOTH, right=-1), Ply("interfacing", ((-8.0, 1.2), (8.0, 1.2)), _BOTH))
    )


def one_ply(stuff: str = "main") -> Section:
    """A single ply with a row near its edge."""
    return Section((Ply(stuff, ((-9.0, 0.0), (4.0, 0.0)), _END),), ((1.5, -0.8, 0.8),))
