"""The bar that a long command prints while it works."""

from __future__ import annotations

import sys
from collections.abc import Callable


def bar(of: str) -> Callable[[int, int], None]:
    """What is told how many are done of how many, `of` in words: one line that grows where somebody looks on, else a
    line each time."""
    live = sys.stdout.isatty()

    def done(count: int, total: int) -> None:
        line = f"  [{'#' * (30 * count // max(total, 1)):<30}] {count} of {total} {of}"
        print(f"\r{line}" if live else line, end="" if live and count < total else "\n", flush=True)

    return done
