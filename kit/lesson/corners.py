"""How edges follow one another around a piece: turning new ones the right way, and making corners meet."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import pairwise, product

from kit.diagnostic import message, named_edge
from kit.errors import KitError
from kit.geometry import Path
from kit.lesson.headings import FAR

ON_LINE = 0.02


def in_order(lines: list[tuple[str, Path]], before: Path | None, after: Path | None) -> list[tuple[str, Path]]:
    """New edges, in their order around the piece, each turned so that the gaps between them and to the edges
    `before` and `after` are smallest."""

    def gaps(paths: Iterable[Path]) -> float:
        run = [*([before] if before else []), *paths, *([after] if after else [])]
        return sum(a.end.distance(b.start) for a, b in pairwise(run))

    choices = product(*((path, path.reversed()) for _, path in lines))
    return list(zip((name for name, _ in lines), min(choices, key=gaps), strict=True))


def meeting(one: Path, two: Path, names: tuple[str, str], where: str) -> tuple[Path, Path]:
    """Two neighbouring paths trimmed or carried on so that the first ends where the second starts."""
    if one.end.distance(two.start) <= 1e-6:
        return one, two
    if two.distance_to(one.end) < ON_LINE:
        return one, two.between(two.nearest(one.end), two.length)
    if one.distance_to(two.start) < ON_LINE:
        return one.between(0.0, one.nearest(two.start)), two
    try:
        long_one = one if one.crossings(two) else one.extended(FAR, end="end")
        two = two.to(long_one, end="start")
        return one.to(two, end="end"), two
    except KitError:
        raise KitError(
            message("refusal.edges_miss", one=named_edge(names[0]), other=named_edge(names[1])),
            where=where,
            do=message("refusal.edges_miss_do"),
        ) from None
