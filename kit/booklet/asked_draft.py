"""Which draft of a lesson is built: its values, and whether as first cut or as corrected by its try-ons."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any, Literal

from kit.errors import KitError, near
from kit.lesson.parameter import Parameter, Setting, in_units
from kit.lesson.pattern import Pattern
from kit.lesson.tried import corrected, first_cut, last_corrected
from kit.units import System, length

Draft = Literal["present", "first", "corrected"]
_NEXT = re.compile(r"[,;]\s*(?=[A-Za-z_][\w-]*\s*=)")


@dataclass(frozen=True)
class AskedDraft:
    """What is asked for: the title of a `preset`, `values` as typed, (parameter, text), which go before those of the
    preset, and the `draft`: "present" as the values stand, "first" as the cloth was cut before any try-on, "corrected"
    as it is after the last."""

    preset: str = ""
    values: tuple[tuple[str, str], ...] = ()
    draft: Draft = "corrected"


def read_values(typed: Sequence[str]) -> tuple[tuple[str, str], ...]:
    """`--values sleeve_length=45cm` and `--values "sleeve_length=45 cm, tucks=3"` as (name, text). `KitError` for what
    is no value with its name."""
    found: list[tuple[str, str]] = []
    for part in (part for text in typed for part in _NEXT.split(text)):
        name, sign, value = (piece.strip() for piece in part.partition("="))
        if not sign or not name or not value:
            raise KitError(f"'{part.strip()}' is no value with its name.", where="--values", do=_EXAMPLE)
        found.append((name.replace("-", "_"), value))
    return tuple(found)


_EXAMPLE = "Write, say, --values sleeve_length=45cm."


def set_values(lesson: Any, asked: AskedDraft) -> None:
    """Set what is asked for on the lesson; nothing is kept beside the notebook. `KitError` for a preset or a parameter
    there is not, and for a value it cannot have."""
    if asked.preset:
        titles = [preset.title for preset in lesson.presets]
        alike = [title for title in titles if title.casefold() == asked.preset.casefold()]
        if not titles:
            raise KitError("the lesson offers no presets.", where="--preset", do="Leave it out, or give --values.")
        if not alike:
            raise KitError(f"there is no preset '{asked.preset}'.", where="--preset", do=near(asked.preset, titles))
        lesson.use_preset(alike[0])
    known: Mapping[str, Parameter] = {each.name: each for each in lesson.parameters} if asked.values else {}
    if any(name not in known for name, _ in asked.values):
        known = {each.name: each for each in lesson.fit_changes} | dict(known)
    for name, text in asked.values:
        if name not in known:
            raise KitError(f"there is no parameter '{name}'.", where="--values", do=near(name, known))
        try:
            lesson.change(**{name: _setting(known[name], text)})
        except KitError as error:
            raise error.at(f"--values {name}") from None


def _setting(parameter: Parameter, text: str) -> Setting:
    """A value as it is typed: "45cm", "17 3/4 in", "70%", "3"."""
    if parameter.kind == "length":
        return length(text, parameter.label)
    number, in_hundredths = text.replace(",", "."), False
    if parameter.kind == "share" and number.endswith("%"):
        number, in_hundredths = number[:-1].strip(), True
    try:
        value = float(number)
    except ValueError:
        example = "70%" if parameter.kind == "share" else "3"
        raise KitError(f"'{text}' is not a number.", do=f"Write {parameter.name}={example}.") from None
    if parameter.kind == "count" and value % 1:
        raise KitError(f"'{text}' is not a whole number.", do=f"Write {parameter.name}=3.")
    return value / 100 if in_hundredths else value


def stand_at(lesson: Any, story: Pattern, draft: Draft) -> None:
    """Set the values of that draft, where the try-ons of `story`, the lesson as it stands, change any."""
    if not story.tries or draft == "present":
        return
    values = first_cut(story) if draft == "first" else last_corrected(story)
    lesson.change(**in_units(lesson.parameters, values))


def as_asked(pattern: Pattern, draft: Draft) -> Pattern:
    """The pattern told as that draft: the corrected one needs no correction any more."""
    return corrected(pattern) if draft == "corrected" else pattern


def in_system(pattern: Pattern, units: System) -> Pattern:
    """The pattern with `units` read first; the system its author thinks in is kept."""
    if pattern.lesson.units == units:
        return pattern
    own = pattern.lesson.own or pattern.lesson.units
    return replace(pattern, lesson=replace(pattern.lesson, units=units, own=own))
