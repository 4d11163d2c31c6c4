"""Cross-sections of darts, pleats, tucks and of edges drawn up: one ply, seen along its edge."""

from __future__ import annotations

from kit.sewing.scene import Ply, Section


def folded(sewn: bool = True) -> Section:
    """A dart or tuck sewn (or a pleat folded) and pressed to the right: three plies lie on each other there."""
    ply = ((10.0, 0.0), (0.0, 0.0), (0.0, 1.4), (5.0, 1.4), (5.0, 2.8), (-10.0, 2.8))
    return Section((Ply("main", ply),), ((0.6, 0.7, 3.5),) if sewn else ())


def folded_double() -> Section:
    """A dart or tuck folded for sewing: two plies, the fold at the right."""
    ply = ((-9.0, 0.0), (5.0, 0.0), (5.0, 1.4), (-9.0, 1.4))
    return Section((Ply("main", ply),), ((0.0, -0.8, 2.2),))


def drawn_up(rows: int = 2) -> Section:
    """One ply near its raw edge with rows of long stitches."""
    return Section(
        (Ply("main", ((-9.0, 0.0), (4.0, 0.0)), (False, True)),),
        tuple((2.4 - 2.6 * row, -0.8, 0.8) for row in range(rows)),
    )
