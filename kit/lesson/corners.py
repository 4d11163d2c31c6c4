"""How edges follow one another around a piece: turning new ones the right way, and making corners meet."""

from __future__ import annotations

from kit.errors import KitError
from kit.geometry import Path
from kit.lesson.pencil import FAR

JOIN = 0.05
ON_LINE = 0.02


def in_order(lines: list[tuple[str, Path]], before: Path | None) -> list[tuple[str, Path]]:
    """New edges turned so that each begins nearest to where the one before ends."""
    turned: list[tuple[str, Path]] = []
    for position, (name, path) in enumerate(lines):
        if before is not None:
            flip = before.end.distance(path.end) < before.end.distance(path.start) - JOIN
        elif position + 1 < len(lines):
            other = lines[position + 1][1]
            reach = min(path.end.distance(other.start), path.end.distance(other.end))
            flip = min(path.start.distance(other.start), path.start.distance(other.end)) < reach
        else:
            flip = False
        before = path.reversed() if flip else path
        turned.append((name, before))
    return turned


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
        a, b = (name.replace("_", " ") for name in names)
        raise KitError(
            f"'{a}' and '{b}' do not meet, even carried on straight.",
            where=where,
            do="Check the lines before them, or draw the corner by hand.",
        ) from None
