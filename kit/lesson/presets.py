"""Presets: named sets of values to choose from, such as "Long sleeve".

A preset gives every parameter a value: those it names, and the lesson's own for all others, so that whoever chooses it
gets the same garment. It changes nothing until it is chosen.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import cast

from kit.errors import KitError, near
from kit.lesson.cells import running_cell
from kit.lesson.parameter import Parameter, Setting
from kit.lesson.sidecar import Saved, within
from kit.units import Length, Size, length


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


class Presets:
    """The part of a lesson that holds presets. The lesson gives its parameters and can change their values."""

    presets: tuple[Preset, ...] = ()
    parameters: tuple[Parameter, ...]
    saved: Saved
    _opened: Saved | None = None

    def change(self, **values: Setting) -> None:
        raise NotImplementedError

    def preset(self, title: str, /, **values: Setting) -> Preset:
        """Offer a named set of values on the panel: `lesson.preset("Long sleeve", sleeve_length=45 * cm)`. What it does
        not name stands at the lesson's own value. A cell run again replaces what it wrote, as does the same title
        elsewhere. Raises `KitError` without a title or values, for an unknown parameter and for a value that is no
        length or out of its range."""
        if not isinstance(title, str) or not title.strip():
            raise KitError("a preset needs a title.", where="Preset", do='Write lesson.preset("Long sleeve", ...).')
        where = f"Preset '{title.strip()}'"
        if not values:
            raise KitError("it names no value.", where=where, do="Write, say, sleeve_length=45 * cm.")
        known = {parameter.name: parameter for parameter in self.parameters}
        named = []
        for name, value in values.items():
            if name not in known:
                raise KitError(f"there is no parameter '{name}'.", where=where, do=near(name, known))
            try:
                named.append((name, known[name].checked(_number(known[name], value))))
            except KitError as error:
                raise error.at(where) from None
        new = Preset(title.strip(), tuple(named), *running_cell())
        same = [
            p.title == new.title or bool(new.cell and p.cell == new.cell and p.run != new.run) for p in self.presets
        ]
        at = same.index(True) if True in same else len(same)
        kept = [preset for preset, gone in zip(self.presets, same, strict=True) if not gone]
        self.presets = (*kept[:at], new, *kept[at:])
        self._offered()
        return new

    def preset_values(self, title: str) -> dict[str, float]:
        """Every parameter's value in that preset. `KitError` with the near title for one that is not offered, and for
        one that names a value the parameter cannot take any more."""
        preset = next((one for one in self.presets if one.title == title), None)
        if preset is None:
            raise KitError(f"there is no preset '{title}'.", do=near(title, [one.title for one in self.presets]))
        found = self.default_values
        for name, value in preset.named:
            parameter = next((p for p in self.parameters if p.name == name), None)
            if parameter is not None:
                try:
                    found[name] = parameter.checked(value)
                except KitError as error:
                    raise error.at(f"Preset '{title}'") from None
        return found

    def use_preset(self, title: str) -> None:
        """Set every parameter as that preset says. Raises `KitError` as `preset_values` does."""
        self.set_values(self.preset_values(title))

    @property
    def default_values(self) -> dict[str, float]:
        """Every parameter at the lesson's own value."""
        return {parameter.name: parameter.default for parameter in self.parameters}

    @property
    def opened_values(self) -> dict[str, float]:
        """Every parameter as the sidecar file had it when the lesson was opened."""
        return {parameter.name: within(parameter, self._opened or Saved()) for parameter in self.parameters}

    def set_values(self, values: dict[str, float]) -> None:
        """Set parameters from plain numbers (mm, share, count). `KitError` outside their range; then none is set."""
        known = {parameter.name: parameter for parameter in self.parameters}
        checked: dict[str, Setting] = {}
        for name, value in values.items():
            if name in known:
                number = known[name].checked(value)
                checked[name] = Length(number) if known[name].kind == "length" else number
        if checked:
            self.change(**checked)

    def _offered(self) -> None:
        """For the live lesson: show what is offered now."""

    def _presets_of(self, former: Presets, cell: str) -> None:
        """Take over what other cells offered on the lesson this one replaces in the notebook."""
        self.presets = tuple(preset for preset in former.presets if preset.cell != cell)
        self._opened = former._opened


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
