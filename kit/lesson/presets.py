"""Presets: named sets of values to choose from, such as "Long sleeve".

A preset gives every parameter a value: those it names, and the lesson's own for all others, so that whoever chooses it
gets the same garment. It changes nothing until it is chosen.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import cast

from kit.errors import KitError, near
from kit.lesson.parameter import Parameter, Setting
from kit.units import Size, length


@dataclass(frozen=True)
class Preset:
    """A `title` and the values it names (parameter, mm for a length, 0..1 for a share, whole for a count), and the
    `cell` and `run` (execution count) that wrote it."""

    title: str
    named: tuple[tuple[str, float], ...]
    cell: str = ""
    run: int = 0

    def _ipython_display_(self) -> None:
        """Nothing: a cell that ends with a preset prints no output."""


def preset_of(
    title: object, values: Mapping[str, Setting], parameters: Sequence[Parameter], cell: str = "", run: int = 0
) -> Preset:
    """A preset as its author wrote it. `KitError` without a title or values, for an unknown parameter and for a value
    that is no length or out of its range."""
    if not isinstance(title, str) or not title.strip():
        raise KitError("a preset needs a title.", where="Preset", do='Write lesson.preset("Long sleeve", ...).')
    where = f"Preset '{title.strip()}'"
    if not values:
        raise KitError("it names no value.", where=where, do="Write, say, sleeve_length=45 * cm.")
    known = {parameter.name: parameter for parameter in parameters}
    named = []
    for name, value in values.items():
        if name not in known:
            raise KitError(f"there is no parameter '{name}'.", where=where, do=near(name, known))
        try:
            named.append((name, known[name].checked(_number(known[name], value))))
        except KitError as error:
            raise error.at(where) from None
    return Preset(title.strip(), tuple(named), cell, run)


def preset_values(title: str, presets: Sequence[Preset], parameters: Sequence[Parameter]) -> dict[str, float]:
    """Every parameter's value in the preset of that title. `KitError` with the near title for one that is not offered,
    and for one that names a value the parameter cannot take any more."""
    preset = next((one for one in presets if one.title == title), None)
    if preset is None:
        raise KitError(f"there is no preset '{title}'.", do=near(title, [one.title for one in presets]))
    named = dict(preset.named)
    try:
        return {p.name: p.checked(named[p.name]) if p.name in named else p.default for p in parameters}
    except KitError as error:
        raise error.at(f"Preset '{title}'") from None


def _number(parameter: Parameter, value: Setting) -> float:
    if parameter.kind == "length":
        return float(length(cast("Size", value), parameter.label))
    whole = parameter.kind == "count"
    if isinstance(value, bool) or not isinstance(value, int | float) or (whole and value % 1 != 0):
        example = "2" if whole else "0.7"
        kind = "a whole number" if whole else "a number"
        raise KitError(f"{parameter.label} is {value!r}, not {kind}.", do=f"Write, say, {example}.")
    return float(value)


def same_values(one: dict[str, float], other: dict[str, float], names: Sequence[str]) -> bool:
    """Whether two sets of values agree on those names, to a thousandth."""
    return all(abs(one[name] - other[name]) < 1e-3 for name in names if name in one and name in other)
