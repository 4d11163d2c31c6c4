"""Real roots of quadratics and cubics in closed form."""

from __future__ import annotations

import math


def quadratic_roots(a: float, b: float, c: float) -> tuple[float, ...]:
    """Real roots of a t2 + b t + c, stable when `a` is small.

    >>> sorted(quadratic_roots(1.0, -3.0, 2.0))
    [1.0, 2.0]
    """
    if abs(a) < 1e-14 * max(abs(b), abs(c), 1e-300):
        return (-c / b,) if b else ()
    spread = b * b - 4 * a * c
    if spread < 0.0:
        return ()
    q = -(b + math.copysign(math.sqrt(spread), b)) / 2
    return (q / a, c / q) if q else (0.0,)


def cubic_roots(a: float, b: float, c: float, d: float) -> tuple[float, ...]:
    """Real roots of a t3 + b t2 + c t + d (trigonometric form for three, Cardano for one), polished.

    >>> [round(root, 9) for root in sorted(cubic_roots(1.0, -6.0, 11.0, -6.0))]
    [1.0, 2.0, 3.0]
    """
    size = max(abs(a), abs(b), abs(c), abs(d))
    if size < 1e-100:  # too small for products of three
        return ()
    # Scaled to 1, so that "nearly nothing" means the same for mm and for thousands of mm.
    a, b, c, d, size = a / size, b / size, c / size, d / size, 1.0
    if abs(a) < 1e-10 * size:
        roots: tuple[float, ...] = quadratic_roots(b, c, d)
    else:
        # With t = s - shift the term of second degree is gone: s3 + p s + q. `spread` tells one real root from three.
        shift = b / (3 * a)
        p = c / a - 3 * shift * shift
        q = 2 * shift**3 - shift * c / a + d / a
        spread = (q / 2) ** 2 + (p / 3) ** 3
        if spread > 0:
            root = math.sqrt(spread)
            big = -q / 2 - math.copysign(root, q)
            first = math.copysign(abs(big) ** (1 / 3), big)
            roots = (first - p / (3 * first) - shift,) if first else (-shift,)
            if spread < 1e-12 * (q / 2) ** 2:
                roots += (-first - shift,)  # a double root may have been lost to rounding; polishing decides
        elif (m := 2 * math.sqrt(max(0.0, -p / 3))) * p == 0.0:  # p may be too small for a product
            roots = (-shift,)
        else:
            angle = math.acos(max(-1.0, min(1.0, 3 * q / (p * m)))) / 3
            roots = tuple(m * math.cos(angle - 2 * math.pi * k / 3) - shift for k in range(3))
    # The closed form loses half its digits where roots lie close; a few steps of Newton's method bring them back. At
    # a double root the slope is nothing as well, and the root is left as it is.
    polished = []
    for t in roots:
        for _ in range(3):
            slope = (3 * a * t + 2 * b) * t + c
            if abs(slope) < 1e-12 * size:
                break
            t -= (((a * t + b) * t + c) * t + d) / slope
        polished.append(t)
    return tuple(polished)
