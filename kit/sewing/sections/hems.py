"""Cross-sections of hems: the garment comes from the left, the hem's fold is at the right, the wrong side up."""

from __future__ import annotations

from kit.sewing.scene import Ply, Section

_END = (False, True)


def blind(twice: bool) -> Section:
    """A hem sewn blind: the stitches catch the hem and only the face of the garment."""
    if twice:
        ply = ((-10.0, 0.0), (5.0, 0.0), (5.0, 2.8), (-4.0, 2.8), (-4.0, 1.4), (-2.0, 1.4))
        return Section((Ply("main", ply, _END),), ((-3.0, -0.2, 2.2),))
    once = ((-10.0, 0.0), (5.0, 0.0), (5.0, 1.4), (-4.0, 1.4))
    return Section((Ply("main", once, _END),), ((-2.6, -0.2, 2.2),))


def taped() -> Section:
    """A hem whose raw edge is covered by a tape: one row holds the tape to the hem, another to the garment, blind."""
    hem = Ply("main", ((-10.0, 0.0), (5.0, 0.0), (5.0, 1.4), (-3.0, 1.4)), _END, "hem")
    tape = Ply("binding", ((-6.0, 2.8), (0.0, 2.8)), (False, False), "tape")
    return Section((hem, tape), ((-1.0, 0.7, 3.6), (-5.2, -0.2, 3.6)))


def rolled() -> Section:
    """An edge rolled: turned twice, very narrow."""
    ply = ((-9.0, 0.0), (2.0, 0.0), (2.0, 2.8), (-1.0, 2.8), (-1.0, 1.4), (1.0, 1.4))
    return Section((Ply("main", ply, _END),), ((-0.6, -0.2, 3.6),))


def faced_down() -> Section:
    """A hem facing turned to the inside, its free edge turned under and stitched to the garment."""
    garment = Ply("main", ((-12.0, 0.0), (4.0, 0.0), (4.0, 1.4), (0.0, 1.4)), _END, "garment")
    facing = Ply(
        "facing", ((0.4, 2.8), (4.0, 2.8), (4.0, 4.2), (-8.0, 4.2), (-8.0, 2.8), (-5.5, 2.8)), (True, True), "facing"
    )
    return Section((garment, facing), ((2.0, 0.7, 3.5), (-7.0, -0.2, 5.0)))
