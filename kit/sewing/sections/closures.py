"""Cross-sections of zips and of what is worked through finished layers."""

from __future__ import annotations

from kit.sewing.scene import Ply, Section

_END = (False, True)
_BOTH = (True, True)
_ZIP = Ply("zip", ((-5.0, 1.4), (5.0, 1.4)), name="zip")


def zip_lapped() -> Section:
    """A lapped zip: the overlap (left) covers the teeth and the fold of the underlap."""
    under = Ply("main", ((10.0, 4.2), (0.8, 4.2), (0.8, 2.8), (4.5, 2.8)), _END, "under")
    over = Ply("main", ((-10.0, 7.0), (2.0, 7.0), (2.0, 5.6), (-4.0, 5.6)), _END, "over")
    return Section((_ZIP, under, over), ((1.5, 0.7, 4.9), (-3.0, 0.7, 7.7)))


def zip_centred() -> Section:
    """A centred zip: both folds meet over the teeth."""
    left = Ply("main", ((-10.0, 4.2), (-0.2, 4.2), (-0.2, 2.8), (-4.0, 2.8)), _END, "left")
    right = Ply("main", ((10.0, 4.2), (0.2, 4.2), (0.2, 2.8), (4.0, 2.8)), _END, "right")
    return Section((_ZIP, left, right), ((-2.5, 0.7, 4.9), (2.5, 0.7, 4.9)))


def zip_invisible_first() -> Section:
    """An invisible zip laid face down on the right side: one row holds its tape to the single cloth, beside the
    teeth."""
    return Section((Ply("main", ((-10.0, 0.0), (4.0, 0.0)), _END, "cloth"), _ZIP), ((0.5, -0.8, 2.2),))


def zip_invisible() -> Section:
    """An invisible zip set in: each allowance is sewn to its tape, no row goes through what is seen outside."""
    left = Ply("main", ((-10.0, 4.2), (-0.2, 4.2), (-0.2, 2.8), (-4.0, 2.8)), _END, "left")
    right = Ply("main", ((10.0, 4.2), (0.2, 4.2), (0.2, 2.8), (4.0, 2.8)), _END, "right")
    return Section((_ZIP, left, right), ((-0.6, 0.7, 3.5), (0.6, 0.7, 3.5)))


def zip_fly(shield: bool = False) -> Section:
    """A fly, seen from below with the lap at the left: the faced lap covers the teeth; one tape hangs on the facing,
    the other on the fold of the under side, with the shield behind it; the curve holds lap and facing alone."""
    over = Ply("main", ((-13.0, 9.8), (3.0, 9.8), (3.0, 8.4), (-1.0, 8.4)), _END, "over")
    facing = Ply("facing", ((-9.0, 5.6), (2.8, 5.6), (2.8, 7.0), (-0.5, 7.0)), _BOTH, "facing")
    under = Ply("main", ((12.0, 4.2), (0.0, 4.2), (0.0, 2.8), (5.0, 2.8)), _END, "under")
    tape = Ply("zip", ((-6.0, 1.4), (5.0, 1.4)), name="zip")
    behind = Ply("main", ((6.0, 0.0), (-8.0, 0.0), (-8.0, -1.4), (6.0, -1.4)), _BOTH, "shield")
    rows = ((1.0, -2.1 if shield else 0.7, 4.9), (-4.0, 0.7, 6.3), (-7.0, 4.9, 10.5))
    return Section((*((behind,) if shield else ()), tape, under, facing, over), rows)


def buttonholed() -> Section:
    """A buttonhole through two layers with interfacing between: cut open between its two rows."""
    plies = tuple(
        Ply(stuff, ((way * 10.0, y), (way * 0.4, y)), _END, name)
        for stuff, y, name in (("facing", 0.0, "inner"), ("interfacing", 1.4, "interfacing"), ("main", 2.8, "outer"))
        for way in (-1.0, 1.0)
    )
    return Section(plies, ((-1.2, -0.8, 3.6), (1.2, -0.8, 3.6)))
