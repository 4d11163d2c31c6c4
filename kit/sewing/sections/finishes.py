"""Cross-sections of trimmed seams and tacked edges."""

from __future__ import annotations

from kit.sewing.scene import Ply, Section

_END = (False, True)


def graded(stuff: str = "main") -> Section:
    """A seam whose two allowances end at different widths, the upper one narrower."""
    return Section(
        (
            Ply(stuff, ((-9.0, 0.0), (4.0, 0.0)), _END, "wider"),
            Ply(stuff, ((-9.0, 1.4), (2.2, 1.4)), _END, "narrower"),
        ),
        ((0.0, -0.8, 2.2),),
    )


def tacked() -> Section:
    """A facing's edge held to an allowance, not to the garment below it."""
    garment = Ply("main", ((-10.0, 0.0), (0.0, 0.0), (0.0, 1.4), (-5.0, 1.4)), _END, "garment")
    other = Ply("main", ((10.0, 0.0), (0.3, 0.0), (0.3, 1.4), (5.0, 1.4)), _END, "other")
    facing = Ply("facing", ((-9.0, 2.8), (3.0, 2.8)), (False, False), "facing")
    return Section((garment, other, facing), ((2.4, 0.7, 3.5),))
