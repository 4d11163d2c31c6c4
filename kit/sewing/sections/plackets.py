"""Cross-sections of plackets."""

from __future__ import annotations

from kit.sewing.scene import Ply, Section

_END = (False, True)
_BOTH = (True, True)


def placket_bound() -> Section:
    """One side of a slit bound with a strip: sewn to the wrong side (below) first, folded over the cut edge, its own
    edge turned under and stitched down on the right side (above)."""
    garment = Ply("main", ((-10.0, 2.8), (0.0, 2.8)), _END, "garment")
    strip = ((0.0, 1.4), (-3.4, 1.4), (-3.4, 0.0), (4.0, 0.0), (4.0, 5.6), (-3.8, 5.6), (-3.8, 4.2), (-0.4, 4.2))
    return Section((Ply("strip", strip, _BOTH, "strip"), garment), ((-2.6, 0.7, 3.5), (-3.6, 2.1, 6.3)))
