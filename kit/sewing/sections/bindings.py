"""Cross-sections of bound edges and casings."""

from __future__ import annotations

from kit.sewing.scene import Ply, Section

_BOTH = (True, True)
_END = (False, True)


def bound_first(double: bool = False) -> Section:
    """The binding sewn to the right side of an edge, raw edges together."""
    garment = Ply("main", ((-10.0, 0.0), (0.0, 0.0)), _END, "garment")
    strip: tuple[tuple[float, float], ...]
    if double:
        strip = ((0.0, 1.4), (-6.0, 1.4), (-6.0, 2.8), (0.0, 2.8))
    else:
        strip = ((0.0, 1.4), (-9.0, 1.4))
    return Section((garment, Ply("binding", strip, _BOTH, "binding")), ((-3.0, -0.8, 3.6 if double else 2.2),))


def bound() -> Section:
    """A single binding turned over the edge: every raw edge lies inside."""
    garment = Ply("main", ((-10.0, 2.8), (0.0, 2.8)), _END, "garment")
    strip = (
        (-0.2, 4.2),
        (-3.0, 4.2),
        (-3.0, 5.6),
        (0.8, 5.6),
        (0.8, 0.0),
        (-3.4, 0.0),
        (-3.4, 1.4),
        (-0.2, 1.4),
    )
    return Section((garment, Ply("binding", strip, _BOTH, "binding")), ((-2.8, 2.1, 4.9), (-3.2, -0.8, 3.6)))


def bound_double() -> Section:
    """A binding folded in two first: a fold, not a raw edge, is stitched down on the wrong side."""
    garment = Ply("main", ((-10.0, 2.8), (0.0, 2.8)), _END, "garment")
    strip = (
        (-0.2, 4.2),
        (-3.0, 4.2),
        (-3.0, 8.4),
        (1.4, 8.4),
        (1.4, 0.0),
        (-3.4, 0.0),
        (-3.4, 1.4),
        (0.8, 1.4),
        (0.8, 7.0),
        (-2.4, 7.0),
        (-2.4, 5.6),
        (-0.2, 5.6),
    )
    return Section((garment, Ply("binding", strip, _BOTH, "binding")), ((-2.0, 2.1, 6.3), (-3.2, -0.8, 3.6)))


def bias_faced() -> Section:
    """A bias strip turned wholly to the inside, its free edge turned under."""
    garment = Ply("main", ((-10.0, 4.2), (0.0, 4.2), (0.0, 2.8), (-5.0, 2.8)), _END, "garment")
    strip = ((-4.0, 1.4), (0.0, 1.4), (0.0, 0.0), (-8.0, 0.0), (-8.0, 1.4), (-6.0, 1.4))
    return Section((garment, Ply("binding", strip, _BOTH, "strip")), ((-7.0, -0.8, 4.9),))


def casing(threaded: str = "") -> Section:
    """An edge folded over twice and stitched near the inner fold; `threaded` is what lies in the tunnel."""
    garment = Ply(
        "main", ((-10.0, 0.0), (5.0, 0.0), (5.0, 4.2), (-5.0, 4.2), (-5.0, 2.8), (-2.6, 2.8)), _END, "garment", -1
    )
    plies: tuple[Ply, ...] = (garment,)
    if threaded:
        plies += (Ply(threaded, ((-2.0, 2.1), (4.4, 2.1)), name=threaded),)
    return Section(plies, ((-4.0, -0.8, 5.0),))


def channel(threaded: str = "", hemmed: bool = False) -> Section:
    """Two rows through an edge and what lies under it, a lining or the edge's own deep hem; `threaded` is what lies
    between them."""
    plies: tuple[Ply, ...]
    if hemmed:
        turned = ((-16.0, 4.2), (0.0, 4.2), (0.0, 0.0), (-15.0, 0.0), (-15.0, 1.4), (-13.0, 1.4))
        plies = (Ply("main", turned, _END, "garment"),)
    else:
        garment = Ply("main", ((-16.0, 4.2), (0.0, 4.2), (0.0, 2.8), (-5.0, 2.8)), _END, "outer")
        plies = (Ply("facing", ((-16.0, 0.0), (0.0, 0.0), (0.0, 1.4), (-4.0, 1.4)), _END, "inner"), garment)
    if threaded:
        plies += (Ply(threaded, ((-11.0, 2.1), (-7.4, 2.1)), name=threaded),)
    return Section(plies, ((-6.6, -0.8, 5.0), (-11.8, -0.8, 5.0)))
