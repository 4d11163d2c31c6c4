"""What is measured begins its kernels as a reader's machine does."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from tests.forked_kernels import begun_anew


@pytest.fixture(scope="session", autouse=True)
def kernels_from_nothing() -> Iterator[None]:
    """Not forked from one that is ready, as those of the tests are."""
    with begun_anew():
        yield
