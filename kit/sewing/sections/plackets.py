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


def placket_tower() -> Section:
    """A shirt sleeve's placket across its slit: at the right the under side, bound with its strip; at the left the
    tower, sewn to the wrong side, brought through the slit, folded over the strip and stitched down on the right
    side."""
    left = Ply("main", ((-12.0, 2.8), (-2.0, 2.8)), _END, "left")
    tower = ((-2.0, 1.4), (-4.6, 1.4), (-4.6, 0.0), (-0.5, 0.0), (-0.5, 7.0), (5.0, 7.0), (5.0, 8.4), (-6.0, 8.4)) + (
        (-6.0, 7.0),
        (-3.0, 7.0),
    )
    right = Ply("main", ((14.0, 2.8), (7.0, 2.8)), _END, "right")
    strip = ((7.0, 1.4), (9.4, 1.4), (9.4, 0.0), (0.5, 0.0), (0.5, 5.6), (9.8, 5.6), (9.8, 4.2), (7.4, 4.2))
    plies = (Ply("facing", tower, _BOTH, "tower"), Ply("strip", strip, _BOTH, "strip"), left, right)
    return Section(plies, ((-3.6, 0.7, 3.5), (-5.4, 2.1, 9.1), (8.2, 0.7, 3.5), (9.6, 2.1, 6.3)))
