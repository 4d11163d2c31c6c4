"""What `lessonkit check --ranges` prints: whether every slider holds over its range, alone and mixed."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from kit.bar_cli import bar
from kit.diagnostic import reading

if TYPE_CHECKING:
    from kit.booklet.ranged import Ranges
    from kit.lesson.parameter import Parameter
    from kit.proof.ranges import RangeTried
    from kit.units import System

_TROUBLES = 8  # kinds of trouble of mixtures that are printed


def add_ranges(command: argparse.ArgumentParser) -> None:
    """The option of `check` that tries the sliders."""
    command.add_argument(
        "--ranges",
        action="store_true",
        help="try every slider over its whole range in every size, and 500 settings drawn at random (some minutes): "
        "where they fail, the bounds that would hold, and whether what is refused can be mended",
    )


def check_ranges(options: argparse.Namespace) -> int:
    """Prints the report; 0 when the ranges hold, 1 when they do not. `KitError` for a notebook that cannot be run."""
    from kit.booklet.ranged import ranges_of

    found = ranges_of(
        options.notebook, timeout=options.timeout, progress=lambda line: print(line, flush=True), done=bar("portions")
    )
    with reading(found.system):
        for line in report(found):
            print(line)
    return 0 if found.hold else 1


def report(found: Ranges) -> list[str]:
    """The lines of the report."""
    lines = []
    if found.stuck:
        first, many = found.reaches[0], len(found.sizes) > 1
        where = "in every size" if many else "as it stands"
        lines.append(f"The lesson fails {where}, each value where the lesson puts it; mend that first.")
        lines.append(f"  {f'In {first.size}: ' if many else ''}{first.failing[0][1]}")
    for reaches in () if found.stuck else found.failing.values():
        lines += _of_one(reaches, found.system, len(found.sizes))
    if not found.failing:
        lines.append(f"Every slider holds over its range, alone, in {_count(len(found.sizes), 'size')}.")
    count, sound = len(found.mixtures), found.sound
    lines.append(f"Of {count} settings drawn at random {sound} are sound ({_share(sound, count)}).")
    if sound < count and any(mixture.mended is not None for mixture in found.mixtures):
        mended = sum(bool(mixture.mended) for mixture in found.mixtures)
        lines.append(f"For {mended} of the other {count - sound} a change of values mends it, and is told with it.")
    for mixture in found.lost[:_TROUBLES]:
        by_name = {reach.parameter.name: reach.parameter for reach in found.reaches}
        values = [
            f"{by_name[name].label} {_show(by_name[name], value, found.system)}"
            for name, value in mixture.values
            if name in by_name
        ]
        lines.append(f"  Nothing mends this one in {mixture.size}: {', '.join(values)}. {mixture.trouble}")
    for trouble, times in found.troubles[:_TROUBLES]:
        lines.append(f"  {times} like this: {trouble}")
    if len(found.troubles) > _TROUBLES:
        lines.append(f"  And {len(found.troubles) - _TROUBLES} kinds more.")
    lines.append(f"{found.title}: the ranges {'hold' if found.hold else 'do not hold'}.")
    return lines


def _of_one(reaches: list[RangeTried], system: System, sizes: int) -> list[str]:
    parameter = reaches[0].parameter
    names = ", ".join(reach.size for reach in reaches)
    where = "" if sizes == 1 else f" in {names}" if len(reaches) < sizes else " in every size"
    low, high = _show(parameter, parameter.least, system), _show(parameter, parameter.most, system)
    lines = [f"{parameter.label.capitalize()}, from {low} to {high}, fails{where}."]
    kept = [reach for reach in reaches if reach.least is not None and reach.most is not None]
    if len(kept) == len(reaches):
        least = max(reach.least for reach in kept if reach.least is not None)
        most = min(reach.most for reach in kept if reach.most is not None)
        lines.append(f"  It would hold from {_show(parameter, least, system)} to {_show(parameter, most, system)}.")
    else:
        lines.append("  The lesson fails as it stands there; mend that first.")
    value, why = reaches[0].failing[0]
    lines.append(f"  At {_show(parameter, value, system)} in {reaches[0].size}: {why}" if sizes > 1 else f"  {why}")
    return lines


def _show(parameter: Parameter, value: float, system: System) -> str:
    return parameter.show(value, system)


def _share(part: int, whole: int) -> str:
    return f"{100 * part / max(whole, 1):.0f} %"


def _count(number: int, name: str) -> str:
    return f"{number} {name}{'' if number == 1 else 's'}"
