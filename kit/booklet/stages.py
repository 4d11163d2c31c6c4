"""How long each stage of a build takes."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from time import perf_counter


class Stages:
    """Keeps how long each stage takes, in seconds."""

    def __init__(self, timings: dict[str, float]) -> None:
        self.timings = timings

    @contextmanager
    def __call__(self, name: str) -> Iterator[None]:
        began = perf_counter()
        yield
        self.timings[name] = self.timings.get(name, 0.0) + perf_counter() - began
