"""How long rows of runs are as they are sewn, and by how much two that are joined differ."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from kit.piece.dart import mouths_length
from kit.sewing.cut import Cut
from kit.sewing.run import Run
from kit.sewing.seam_walk import as_sewn
from kit.sewing.spans import sides_of, spans


def gaps_of(
    pattern: Cut, a: tuple[Run, ...], b: tuple[Run, ...]
) -> tuple[tuple[tuple[Run, ...], tuple[Run, ...], float], ...]:
    """(runs of a, runs of b, a longer than b in mm) for each pair that must agree, on one half. Rows with the same
    number of runs are compared run by run."""
    found = []
    for x, y in pairs(a, b):
        halves = (
            2 if all(len({span.side for run in side for span in spans(pattern, run)}) == 2 for side in (x, y)) else 1
        )
        found.append((x, y, (stitch_length(pattern, x) - stitch_length(pattern, y)) / halves))
    return tuple(found)


def pairs(a: tuple[Run, ...], b: tuple[Run, ...]) -> list[tuple[tuple[Run, ...], tuple[Run, ...]]]:
    """The rows that must agree in length: run by run where both have as many, else the whole rows."""
    if len(a) == len(b):
        return [((x,), (y,)) for x, y in zip(a, b, strict=True)]
    return [(a, b)]


def stitch_length(pattern: Cut, runs: tuple[Run, ...]) -> float:
    """mm along the stitch line of a row of runs as it is sewn, darts and pleats shut, all halves together."""
    return sum(
        span.length - mouths_length(pattern.piece(span.piece), span.edge, span.start, span.end)
        for run in runs
        for span in spans(pattern, run)
    )


def sewn_length(pattern: Cut, runs: Iterable[Run]) -> float:
    """mm of the runs along the stitch line, darts and pleats shut, all halves together."""
    return sum(
        as_sewn(pattern.piece(run.piece), replace(run, side=None)).length * len(sides_of(pattern, run)) for run in runs
    )
