"""Cross-sections of pockets."""

from __future__ import annotations

from kit.sewing.scene import Ply, Section

_END = (False, True)


def patch_edge() -> Section:
    """The edge of a patch pocket: its allowance turned under, stitched near the fold onto the garment."""
    garment = Ply("main", ((-10.0, 0.0), (10.0, 0.0)), name="garment")
    pocket = Ply("facing", ((10.0, 2.8), (-2.0, 2.8), (-2.0, 1.4), (3.0, 1.4)), _END, "pocket")
    return Section((garment, pocket), ((-1.0, -0.8, 3.6),))


def pocket_edge_folded() -> Section:
    """An edge of the pocket pressed under, before it is sewn on."""
    return Section((Ply("facing", ((10.0, 1.4), (-2.0, 1.4), (-2.0, 0.0), (3.0, 0.0)), _END, "pocket"),))


def bag_sewn() -> Section:
    """A bag sewn to the garment at the mouth and turned out beside it, both allowances lying on the bag."""
    garment = Ply("main", ((-10.0, 0.0), (0.0, 0.0), (0.0, 1.4), (4.0, 1.4)), _END, "garment")
    bag = Ply("lining", ((10.0, 0.0), (0.6, 0.0), (0.6, 0.4), (0.3, 0.4), (0.3, 2.8), (4.0, 2.8)), _END, "bag")
    return Section((garment, bag))


def bags_together() -> Section:
    """Both bags stitched to each other around the pocket."""
    front = Ply("lining", ((-9.0, 0.0), (4.0, 0.0)), _END, "front bag")
    back = Ply("lining", ((-9.0, 1.4), (4.0, 1.4)), _END, "back bag")
    return Section((front, back), ((0.0, -0.8, 2.2),))
