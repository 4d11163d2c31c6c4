"""Roots of cubics and quadratics, against polynomials multiplied out by exact fractions and against numpy."""

from __future__ import annotations

from fractions import Fraction

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from kit.geometry.roots import cubic_roots, quadratic_roots


def multiplied_out(*roots: float) -> list[float]:
    """Coefficients of the product of (t - root), highest power first, exact up to their last rounding."""
    found = [Fraction(1)]
    for root in roots:
        found = [a - Fraction(root) * b for a, b in zip([*found, 0], [0, *found], strict=True)]
    return [float(part) for part in found]


@pytest.mark.parametrize(
    "roots",
    [
        (-1.0, 0.5, 2.0),
        (0.25, 0.5, 0.75),
        (-3.0, -2.0, 7.0),
        (2.0**-20, 1.0, 1024.0),  # the closed form alone loses the least of them to rounding
        (2.0**-17, 0.25, -4096.0),
        (0.0, 0.0, 5.0),
        (1.0, 1.0, 3.0),
        (-2.0, 1.0, 1.0),
        (4.0, 4.0, 4.0),
    ],
)
@pytest.mark.parametrize("scale", [1.0, -40.0, 1e-6])
def test_the_roots_it_was_multiplied_out_from(roots: tuple[float, ...], scale: float) -> None:
    found = cubic_roots(*(scale * part for part in multiplied_out(*roots)))
    close = 1e-4 if len(set(roots)) == 1 else 1e-7 if len(set(roots)) == 2 else 0.0
    for root in roots:
        near = min(found, key=lambda t: abs(t - root))
        assert near == pytest.approx(root, rel=1e-9, abs=close)
    for t in found:
        assert min(abs(t - root) for root in roots) <= max(close, 1e-9 * abs(t))


@given(st.lists(st.floats(-50, 50), min_size=4, max_size=4))
def test_as_many_real_roots_as_numpy(parts: list[float]) -> None:
    """Reference: numpy.roots, the eigenvalues of the companion matrix. Only plainly single ones are compared."""
    a, b, c, d = parts
    if abs(a) < 0.1:
        return
    theirs = np.roots(parts)
    apart = min(abs(one - other) for i, one in enumerate(theirs) for other in theirs[:i])
    if apart < 1e-3:
        return
    real = sorted(float(t.real) for t in theirs if abs(t.imag) < 1e-9)
    assert sorted(cubic_roots(a, b, c, d)) == pytest.approx(real, rel=1e-7, abs=1e-7)


def test_one_real_root_by_hand() -> None:
    assert cubic_roots(1, 0, 0, -8) == pytest.approx((2.0,))
    assert cubic_roots(1, 0, 0, 27) == pytest.approx((-3.0,))
    assert cubic_roots(2, 0, 2, -20) == pytest.approx((2.0,))  # 2 (t - 2) (t2 + 2 t + 5)
    assert sorted(cubic_roots(0, 1, -3, 2)) == pytest.approx([1.0, 2.0])
    assert cubic_roots(0, 0, 2, -3) == pytest.approx((1.5,))
    assert cubic_roots(0, 0, 0, 0) == () == cubic_roots(0, 0, 0, 4)


def test_quadratics_by_hand() -> None:
    assert sorted(quadratic_roots(1, -3, 2)) == pytest.approx([1.0, 2.0])
    assert sorted(quadratic_roots(2, 3, -2)) == pytest.approx([-2.0, 0.5])
    assert quadratic_roots(1, 0, 1) == () == quadratic_roots(0, 0, 3)
    assert quadratic_roots(0, 4, -2) == pytest.approx((0.5,))
    assert set(quadratic_roots(1, 0, 0)) == {0.0}
    # the small one of two far apart keeps all its digits: 1e-9 and 1e9 multiply to 1
    assert sorted(quadratic_roots(1, -(1e9 + 1e-9), 1)) == pytest.approx([1e-9, 1e9], rel=1e-12)
