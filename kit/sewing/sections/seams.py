"""Cross-sections of the seams of `kit.sewing.operations.seams`, `felled` and `enclosed`; `a` is left, `b` right."""

from __future__ import annotations

from kit.sewing.scene import Ply, Section

_END = (False, True)


def pressed_one_side() -> Section:
    """A plain seam opened out, both allowances lying to the left."""
    left = Ply("main", ((-10.0, 0.0), (0.0, 0.0), (0.0, 1.4), (-5.0, 1.4)), _END, "left")
    right = Ply("main", ((10.0, 2.8), (-4.6, 2.8)), _END, "right")
    return Section((left, right), ((-0.6, 0.7, 3.5),))


def bound_open() -> Section:
    """A plain seam pressed open, each allowance bound; the binding's own edges are folded in already."""
    plies = []
    for name, way in (("left", -1.0), ("right", 1.0)):
        cloth = ((10.0, 2.8), (0.3, 2.8), (0.3, 0.0), (5.0, 0.0))
        binding = ((3.0, 1.4), (5.6, 1.4), (5.6, -1.4), (3.0, -1.4))
        plies.append(Ply("main", tuple((way * x, y) for x, y in cloth), _END, name))
        plies.append(Ply("binding", tuple((way * x, y) for x, y in binding), (False, False), "binding"))
    return Section(tuple(plies), ((-3.6, -2.1, 2.1), (3.6, -2.1, 2.1)))


def french_trimmed() -> Section:
    """After the first row of a French seam: both allowances cut back close to it."""
    plies = tuple(Ply("main", ((-9.0, y), (1.2, y)), _END, name) for y, name in ((0.0, "lower"), (1.4, "upper")))
    return Section(plies, ((0.0, -0.8, 2.2),))


def felled_trimmed() -> Section:
    """After the first row of a felled seam: the lower allowance cut back to half of the upper one."""
    lower = Ply("main", ((-9.0, 0.0), (2.2, 0.0)), _END, "lower")
    upper = Ply("main", ((-9.0, 1.4), (5.0, 1.4)), _END, "upper")
    return Section((lower, upper), ((0.0, -0.8, 2.2),))


def enclosed_pressed() -> Section:
    """A seam that shuts in its raw edges, opened out and pressed to the left."""
    left = Ply("main", ((-12.0, 0.0), (0.0, 0.0), (0.0, 1.4), (-7.0, 1.4), (-7.0, 2.8), (-2.6, 2.8)), _END, "left", -1)
    right = Ply("main", ((10.0, 5.6), (-7.6, 5.6), (-7.6, 4.2), (-2.6, 4.2)), _END, "right", 1)
    return Section((left, right), ((-0.9, 0.7, 6.3), (-6.0, 2.1, 4.9)))


def mock_french() -> Section:
    """Both allowances turned in towards each other and stitched together along their folds."""
    lower = Ply("main", ((-8.0, 0.0), (8.0, 0.0), (8.0, 1.4), (4.0, 1.4)), _END, "lower")
    upper = Ply("main", ((-8.0, 4.2), (8.0, 4.2), (8.0, 2.8), (4.0, 2.8)), _END, "upper")
    return Section((lower, upper), ((7.0, -0.8, 5.0), (1.5, -0.8, 5.0)))


def felled() -> Section:
    """A felled seam opened out: the wide allowance is folded around the trimmed one and stitched down."""
    under = Ply("main", ((10.0, 0.0), (0.0, 0.0), (0.0, 2.8), (3.2, 2.8)), _END, "under")
    lapping = Ply("main", ((-10.0, 4.2), (5.0, 4.2), (5.0, 1.4), (1.6, 1.4)), _END, "lapping")
    return Section((under, lapping), ((0.7, 2.1, 4.9), (4.2, -0.8, 5.0)))


def lapped() -> Section:
    """One edge turned under, laid over the other and stitched near its fold."""
    under = Ply("main", ((10.0, 0.0), (-4.0, 0.0)), _END, "under")
    lapping = Ply("main", ((-10.0, 2.8), (3.0, 2.8), (3.0, 1.4), (-3.0, 1.4)), _END, "lapping")
    return Section((under, lapping), ((2.0, -0.8, 3.6),))


def lapped_raw() -> Section:
    """One raw edge laid over the other: for cloth that does not fray."""
    under = Ply("main", ((10.0, 0.0), (-4.0, 0.0)), _END, "under")
    lapping = Ply("main", ((-10.0, 1.4), (4.0, 1.4)), _END, "lapping")
    return Section((under, lapping), ((2.6, -0.8, 2.2), (-2.6, -0.8, 2.2)))


def opening() -> Section:
    """At an opening: each allowance lies back on its own side, its raw edge turned under and stitched down."""
    plies = []
    for name, way in (("left", -1.0), ("right", 1.0)):
        path = ((10.0, 2.8), (0.5, 2.8), (0.5, 0.0), (5.0, 0.0), (5.0, 1.4), (2.0, 1.4))
        plies.append(Ply("main", tuple((way * x, y) for x, y in path), _END, name))
    return Section(tuple(plies), ((-3.8, -0.8, 3.6), (3.8, -0.8, 3.6)))
