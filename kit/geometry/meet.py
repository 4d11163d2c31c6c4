"""Where curves meet. Lines and arcs are solved exactly, a line and a cubic through the roots of a cubic
equation, other pairs by boxes that are halved until single chords are left, then Newton's method.

A meeting counts when it lies on both curves, ends included, to within `END` mm.
"""

from __future__ import annotations

import math

from kit.geometry.arc import Arc
from kit.geometry.cubic import Cubic
from kit.geometry.curve import Bounds, Curve
from kit.geometry.line import Line
from kit.geometry.point import Point, Vector
from kit.geometry.roots import cubic_roots

Meeting = tuple[Point, float, float]
"""The point, its parameter on the first curve, its parameter on the second."""

END = 1e-4
"""How far past its end, in mm, a curve still counts as reaching a meeting (rounding error only)."""

_APART = 1e-3  # sine of the angle by which curves from a shared end must leave the line between them
_CHORD = 0.2  # mm; chords of the search are this close to their curve


def meet(a: Curve, b: Curve) -> list[Meeting]:
    """Every meeting of `a` and `b` as (point, t on a, t on b), in the order along `a`. Ends count; a place
    found twice is given once. Lines that lie on each other meet at both ends of the shared stretch.

    >>> meet(Line(Point(0, 0), Point(10, 0)), Line(Point(5, -5), Point(5, 5)))
    [(Point(x=5.0, y=0.0), 0.5, 0.5)]
    """
    # Ends are looked at by themselves, whatever the solver of the pair finds: edges of a draft meet at their ends far
    # more often than anywhere else, and there a solver may land a rounding error beyond the curve and find nothing.
    box, around = a.bounds(), b.bounds()
    if apart(box, around, END):
        return []
    found = _ends(a, b, box, around)
    if isinstance(a, Line):
        if isinstance(b, Line):
            found += _line_line(a, b)
        elif isinstance(b, Arc):
            found += _line_arc(a, b)
        else:
            found += _line_cubic(a, b)
    elif isinstance(b, Line):
        found += [(p, ta, tb) for p, tb, ta in (_line_arc(b, a) if isinstance(a, Arc) else _line_cubic(b, a))]
    elif isinstance(a, Arc) and isinstance(b, Arc):
        found += _arc_arc(a, b)
    else:
        found += _search(a, b)
    return _merged(found)


def meet_lines(p: Point, direction: Vector, q: Point, other: Vector) -> Point | None:
    """Where the endless lines through `p` along `direction` and through `q` along `other` meet; None when
    they are parallel.

    >>> meet_lines(Point(0, 0), Vector(1, 0), Point(5, 5), Vector(0, 1))
    Point(x=5.0, y=0.0)
    """
    cross = direction.cross(other)
    if abs(cross) <= 1e-12 * direction.length * other.length:
        return None
    return p + direction * ((q - p).cross(other) / cross)


def apart(a: Bounds, b: Bounds, slack: float = 0.0) -> bool:
    """Whether two boxes stand more than `slack` mm apart."""
    return a[2] + slack < b[0] or b[2] + slack < a[0] or a[3] + slack < b[1] or b[3] + slack < a[1]


def only_meet_at(hub: Point, a: Curve, b: Curve) -> bool:
    """Whether `a` and `b`, which share the end `hub`, surely meet nowhere else. False says nothing.

    A line or a cubic lies within its control points. Where a line through the shared end has those of `a` on one side
    and those of `b` on the other, well apart (3 minutes of arc, and their far ends by ten times `END`), so are the
    curves. That holds at nearly every corner of a draft and costs a tenth of a search.

    >>> only_meet_at(Point(0, 0), Line(Point(5, 5), Point(0, 0)), Line(Point(0, 0), Point(9, 0)))
    True
    """
    hx, hy = hub.x, hub.y
    rays: list[list[tuple[float, float]]] = []
    wx = wy = 0.0
    for sign, curve in ((1.0, a), (-1.0, b)):
        if isinstance(curve, Line):
            points: tuple[Point, ...] = (curve.start, curve.end)
        elif isinstance(curve, Cubic):
            points = (curve.start, curve.c1, curve.c2, curve.end)
        else:
            return False
        if (points[0].x, points[0].y) == (hx, hy):
            points = points[1:]
        elif (points[-1].x, points[-1].y) == (hx, hy):
            points = points[-2::-1]
        else:
            return False
        leaving = [(p.x - hx, p.y - hy) for p in points]  # the last is the far end
        for x, y in leaving:
            size = math.hypot(x, y)
            if size > 0.0:
                wx, wy = wx + sign * x / size, wy + sign * y / size
        rays.append(leaving)
    size = math.hypot(wx, wy)
    if size < 1e-6:
        return False
    wx, wy = wx / size, wy / size
    for sign, leaving in ((1.0, rays[0]), (-1.0, rays[1])):
        for x, y in leaving:
            if (x or y) and sign * (x * wx + y * wy) < _APART * math.hypot(x, y):
                return False
        x, y = leaving[-1]
        if sign * (x * wx + y * wy) < 10 * END:
            return False
    return True


def _merged(found: list[Meeting]) -> list[Meeting]:
    if len(found) < 2:
        return found
    kept: list[Meeting] = []
    for one in sorted(found, key=lambda m: m[1]):
        if not any(
            one[0].close_to(other[0], 10 * END) and abs(one[1] - other[1]) < 0.01 and abs(one[2] - other[2]) < 0.01
            for other in kept
        ):
            kept.append(one)
    return kept


def _ends(a: Curve, b: Curve, box: Bounds, around: Bounds) -> list[Meeting]:
    """Ends on ends, and ends of one on the other where that is a line or an arc: a smooth joint is a double
    root, which the solvers may miss by a rounding error. `box` and `around` are the bounds of `a` and of `b`."""
    found: list[Meeting] = []
    for t in (0.0, 1.0):
        p = a.end if t else a.start
        if _at(p, around):
            for u in (0.0, 1.0):
                if p.close_to(b.end if u else b.start, END):
                    found.append((p, t, u))
            if not isinstance(b, Cubic) and b.point(u := b.nearest(p)).close_to(p, END):
                found.append((p, t, u))
        q = b.end if t else b.start
        if not isinstance(a, Cubic) and _at(q, box) and a.point(u := a.nearest(q)).close_to(q, END):
            found.append((q, u, t))
    return found


def _at(p: Point, box: Bounds) -> bool:
    """Whether a place lies in a box or so near to it that what the box holds may lie there."""
    x, y = p.x, p.y
    return box[0] - 2 * END <= x <= box[2] + 2 * END and box[1] - 2 * END <= y <= box[3] + 2 * END


def _held(t: float, length: float) -> float | None:
    """`t` held to 0..1, None when it is off by more than END mm."""
    if 0.0 <= t <= 1.0:
        return t
    slack = END / length if length > END else 1.0
    if t < 0.0:
        return 0.0 if t >= -slack else None
    return 1.0 if t <= 1.0 + slack else None


def _line_line(a: Line, b: Line) -> list[Meeting]:
    u, v, w = a.end - a.start, b.end - b.start, b.start - a.start
    cross = u.cross(v)
    if abs(cross) <= 1e-12 * u.length * v.length:
        return []  # parallel: a shared stretch is found by its ends
    t, s = _held(w.cross(v) / cross, u.length), _held(w.cross(u) / cross, v.length)
    if t is None or s is None:
        return []
    return [(a.point(t), t, s)]


def _line_arc(a: Line, b: Arc) -> list[Meeting]:
    length = a.length
    if length < 1e-12:
        return []
    along = a.tangent(0.0)
    # `foot` is where the centre stands over the line, `off` how far beside it: half the chord is the other side of a
    # right triangle under the radius. A line that only touches may come out a hair below zero, and still touches.
    foot = (b.centre - a.start).dot(along)
    off = along.cross(b.centre - a.start)
    square = b.radius * b.radius - off * off
    if square < -2 * b.radius * 1e-9:
        return []
    reach = math.sqrt(max(0.0, square))
    found: list[Meeting] = []
    for d in (foot - reach, foot + reach):
        t = _held(d / length, length)
        if t is not None:
            p = a.point(t)
            s = b.t_toward(p, END)
            if s is not None:
                found.append((p, t, s))
    return found


def _arc_arc(a: Arc, b: Arc) -> list[Meeting]:
    between = b.centre - a.centre
    d = between.length
    if d < 1e-9 or d > a.radius + b.radius + 1e-9 or d < abs(a.radius - b.radius) - 1e-9:
        return []
    along = (d * d + a.radius**2 - b.radius**2) / (2 * d)
    aside = math.sqrt(max(0.0, a.radius**2 - along * along))
    way = between / d
    found: list[Meeting] = []
    for side in (aside, -aside):
        p = a.centre + way * along + way.left() * side
        t, s = a.t_toward(p, END), b.t_toward(p, END)
        if t is not None and s is not None:
            found.append((p, t, s))
    return found


def _line_cubic(a: Line, b: Curve) -> list[Meeting]:
    assert isinstance(b, Cubic)
    length = a.length
    if length < 1e-12:
        return []
    along = a.tangent(0.0)
    # The heights of a cubic's control points over the line are the control values of its height, a cubic in s: its
    # roots are the crossings. Where all are nothing, the curve lies on the line and its ends are asked instead.
    nx, ny = -along.y, along.x
    off = nx * a.start.x + ny * a.start.y
    p0, p1 = nx * b.start.x + ny * b.start.y - off, nx * b.c1.x + ny * b.c1.y - off
    p2, p3 = nx * b.c2.x + ny * b.c2.y - off, nx * b.end.x + ny * b.end.y - off
    if max(abs(p0), abs(p1), abs(p2), abs(p3)) < END:
        return [*_straight(a, b), *((p, t, s) for p, s, t in _straight(b, a))]
    found: list[Meeting] = []
    for root in cubic_roots(p3 - p0 + 3 * (p1 - p2), 3 * (p0 - 2 * p1 + p2), 3 * (p1 - p0), p0):
        s = _held(root, b.length) if -0.5 < root < 1.5 else None
        if s is None:
            continue
        p = b.point(s)
        if abs(along.cross(p - a.start)) > END:
            continue
        t = _held((p - a.start).dot(along) / length, length)
        if t is not None:
            found.append((p, t, s))
    return found


def _straight(a: Curve, b: Curve) -> list[Meeting]:
    """Ends of `a` that lie on `b`, for curves that lie on one straight line."""
    found: list[Meeting] = []
    for t in (0.0, 1.0):
        p = a.end if t else a.start
        s = b.nearest(p)
        if b.point(s).close_to(p, END):
            found.append((p, t, s))
    return found


def _search(a: Curve, b: Curve) -> list[Meeting]:
    """Meetings of two curves that have no closed solution.

    Both are cut into chords, and pairs of runs of chords whose boxes stand apart are put aside, halving the longer run
    each time. Boxes are held to be larger by the chords' error, so that no meeting is lost; what is left are pairs of
    single chords, each a guess for Newton's method, which also throws out the false ones. Two curves that run along
    each other give many guesses that end in one place; `_merged` keeps one of them.
    """
    na, nb = _chords(a), _chords(b)
    pa = [a.point(i / na) for i in range(na + 1)]
    pb = [b.point(i / nb) for i in range(nb + 1)]
    slack = 2 * _CHORD
    starts: list[tuple[float, float]] = []

    def halve(i0: int, i1: int, j0: int, j1: int) -> None:
        if apart(_box(pa, i0, i1), _box(pb, j0, j1), slack):
            return
        if i1 - i0 <= 1 and j1 - j0 <= 1:
            starts.extend(_guesses(pa, i0, na, pb, j0, nb))
        elif i1 - i0 >= j1 - j0:
            mid = (i0 + i1) // 2
            halve(i0, mid, j0, j1)
            halve(mid, i1, j0, j1)
        else:
            mid = (j0 + j1) // 2
            halve(i0, i1, j0, mid)
            halve(i0, i1, mid, j1)

    halve(0, na, 0, nb)
    found: list[Meeting] = []
    for t, s in starts:
        if any(abs(t - m[1]) < 1e-7 and abs(s - m[2]) < 1e-7 for m in found):
            continue
        hit = _newton(a, b, t, s)
        if hit is not None:
            found.append(hit)
    return found


def _chords(curve: Curve) -> int:
    assert isinstance(curve, Arc | Cubic)
    return max(2, curve.segments(_CHORD))


def _box(points: list[Point], i: int, j: int) -> Bounds:
    part = points[i : j + 1]
    xs, ys = [p.x for p in part], [p.y for p in part]
    return min(xs), min(ys), max(xs), max(ys)


def _guesses(pa: list[Point], i: int, na: int, pb: list[Point], j: int, nb: int) -> list[tuple[float, float]]:
    a, b = Line(pa[i], pa[i + 1]), Line(pb[j], pb[j + 1])
    u, v, w = a.end - a.start, b.end - b.start, b.start - a.start
    cross = u.cross(v)
    if abs(cross) > 0.05 * u.length * v.length:  # crossing steeply: one meeting at most
        t, s = w.cross(v) / cross, w.cross(u) / cross
        if not (-1.0 < t < 2.0 and -1.0 < s < 2.0):
            return []
        return [((i + min(1.0, max(0.0, t))) / na, (j + min(1.0, max(0.0, s))) / nb)]
    return [(i / na, (j + b.nearest(a.start)) / nb), ((i + 1) / na, (j + b.nearest(a.end)) / nb)]


def _newton(a: Curve, b: Curve, t: float, s: float) -> Meeting | None:
    """Gauss-Newton from a guess, held to both curves; None when they stay more than 1e-6 mm apart there."""
    for _ in range(50):
        p, q = a.point(t), b.point(s)
        gx, gy = p.x - q.x, p.y - q.y
        u, v = a.derivative(t), b.derivative(s)
        cross = u.x * v.y - u.y * v.x
        if abs(cross) > 1e-9 * (u.x * u.x + u.y * u.y + v.x * v.x + v.y * v.y):
            dt = (v.x * gy - v.y * gx) / cross
            ds = (u.x * gy - u.y * gx) / cross
        else:  # side by side: slide to the nearest point of the other
            dt = -(gx * u.x + gy * u.y) / (u.x * u.x + u.y * u.y + 1e-300)
            ds = 0.0
        nt, ns = min(1.0, max(0.0, t + dt)), min(1.0, max(0.0, s + ds))
        moved = abs(nt - t) + abs(ns - s)
        t, s = nt, ns
        if moved < 1e-14:
            break
    p, q = a.point(t), b.point(s)
    if p.distance(q) > 1e-6:
        # Where curves only touch, the last steps creep; a touch within END is one.
        s = b.nearest(p)
        t = a.nearest(b.point(s))
        p = a.point(t)
        if p.distance(b.point(s)) > END / 10:
            return None
    return p, t, s
