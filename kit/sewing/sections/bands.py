"""Cross-sections of bands, collars, cuffs and waistbands where they are set on."""

from __future__ import annotations

from kit.sewing.scene import Ply, Section

_END = (False, True)


def band_set(caught: bool = False) -> Section:
    """The outer band sewn to the garment, both allowances pressed into the band (to the right); with a facing `caught`
    on the garment's wrong side."""
    garment = Ply("main", ((-10.0, 2.8), (4.0, 2.8)), _END, "garment")
    outer = Ply("facing", ((10.0, 5.6), (0.0, 5.6), (0.0, 4.2), (4.0, 4.2)), _END, "outer band")
    if caught:
        facing = Ply("facing", ((-10.0, 1.4), (4.0, 1.4)), _END, "facing")
        return Section((facing, garment, outer), ((0.4, 0.7, 4.9),))
    return Section((garment, outer), ((0.4, 2.1, 4.9),))


def band_laid_on_facing() -> Section:
    """The outer band laid on the garment, a facing caught under it, not pressed yet."""
    facing = Ply("facing", ((-9.0, 0.0), (4.0, 0.0)), _END, "facing")
    garment = Ply("main", ((-9.0, 1.4), (4.0, 1.4)), _END, "garment")
    outer = Ply("facing", ((-9.0, 2.8), (4.0, 2.8)), _END, "outer band")
    return Section((facing, garment, outer), ((0.0, -0.8, 3.6),))


def band_closed(stitched: bool = True) -> Section:
    """The inner band's edge turned under and laid over the seam: three raw edges lie inside the band. `stitched`
    from the right side through all layers, else by hand to the seam only."""
    garment = Ply("main", ((-10.0, 2.8), (4.0, 2.8)), _END, "garment")
    outer = Ply("facing", ((10.0, 5.6), (0.0, 5.6), (0.0, 4.2), (4.0, 4.2)), _END, "outer band")
    inner = Ply("facing", ((10.0, 0.0), (-1.0, 0.0), (-1.0, 1.4), (3.5, 1.4)), _END, "inner band")
    last = (1.2, -0.8, 6.4) if stitched else (-0.4, -0.8, 3.5)
    return Section((inner, garment, outer), ((0.4, 2.1, 4.9), last))


def turned_out() -> Section:
    """Two pieces seamed and turned: both allowances lie between them."""
    upper = Ply("main", ((-10.0, 4.2), (0.0, 4.2), (0.0, 2.8), (-5.0, 2.8)), _END, "outer", 1)
    under = Ply("facing", ((-10.0, 0.0), (0.0, 0.0), (0.0, 1.4), (-4.0, 1.4)), _END, "inner", -1)
    return Section((under, upper))


def rolled_out() -> Section:
    """Two pieces seamed, turned and pressed: the seam lies in the very edge, both allowances between the pieces."""
    return Section(turned_out().plies, ((-0.5, 0.7, 3.5),))


def band_end() -> Section:
    """A band folded lengthwise, wrong side out, its end stitched across: two layers of one piece."""
    ply = ((4.0, 0.0), (-6.0, 0.0), (-6.0, 1.4), (4.0, 1.4))
    return Section((Ply("main", ply, (True, True), "band", -1),), ((2.0, -0.8, 2.2),))


def gap_closed() -> Section:
    """A gap whose edges are turned in, closed by hand through the two folds."""
    return Section(turned_out().plies, ((-0.3, 0.7, 3.5),))


def sleeve_set(pressed: str = "") -> Section:
    """A sleeve sewn into the armhole, both allowances lying towards the sleeve (to the right), or pressed "_open", or
    towards the "_garment" (to the left)."""
    if pressed == "_open":
        left = Ply("main", ((-10.0, 1.4), (-0.3, 1.4), (-0.3, 0.0), (-5.0, 0.0)), _END, "body")
        right = Ply("main", ((10.0, 1.4), (0.3, 1.4), (0.3, 0.0), (5.0, 0.0)), _END, "sleeve")
        return Section((left, right))
    if pressed == "_garment":
        flat = Ply("main", ((10.0, 0.0), (-5.0, 0.0)), _END, "sleeve")
        turned = Ply("main", ((-10.0, 2.8), (0.0, 2.8), (0.0, 1.4), (-5.0, 1.4)), _END, "body")
        return Section((flat, turned), ((-0.5, -0.8, 2.1),))
    body = Ply("main", ((-10.0, 0.0), (5.0, 0.0)), _END, "body")
    sleeve = Ply("main", ((10.0, 2.8), (0.0, 2.8), (0.0, 1.4), (5.0, 1.4)), _END, "sleeve")
    return Section((body, sleeve), ((0.5, -0.8, 2.1),))
