"""What a reader has set: language, units, body and values, read from the page's own JSON and checked.

Whoever writes to the engine may write anything: a page of another edition, a file somebody changed by hand. What
cannot be is refused in the reader's words, with what to do.
"""

from __future__ import annotations

import tempfile
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any, cast

from kit.body.body import Body
from kit.body.chart import SizeChart
from kit.body.file import load_body, save_body, units_of
from kit.body.make import make_body
from kit.body.measures import MEASUREMENTS, Measurement
from kit.diagnostic import Told, as_value, list_of, message
from kit.errors import KitError, known_near
from kit.language import SOURCE, languages, say
from kit.lesson.parameter import Parameter, in_units
from kit.units import System, length, parse

_LONGEST = 120
"""Characters of a name or a length that is typed."""
_FARTHEST = 1e6
"""No value of a lesson is as large as this, in mm."""


@dataclass(frozen=True)
class Typed:
    """A body as somebody types it: a `name`, and each measurement's text by its name in code."""

    name: str
    texts: tuple[tuple[str, str], ...]


@dataclass(frozen=True)
class Setting:
    """What the engine works for: `language` and `units`, a `size` of the chart ("" for the one the lesson opens in) or
    a body as `typed`, and the `values` that were moved (parameter, mm, share or count)."""

    language: str = SOURCE
    units: System = "cm"
    size: str = ""
    typed: Typed | None = None
    values: tuple[tuple[str, float], ...] = ()


def read_language(asked: Mapping[str, Any], known: tuple[str, ...]) -> str:
    """The language a message asks for, the first of `known` where it asks for none there is."""
    code = asked.get("language")
    return code if isinstance(code, str) and code in known and code in languages() else known[0]


def read_setting(asked: Mapping[str, Any], known: tuple[str, ...], chart: SizeChart) -> Setting:
    """What a message says is set. Raises `KitError`."""
    units = asked.get("units", "cm")
    if units not in ("cm", "inch"):
        raise KitError(message("page.no_units", units=_short(units)), do=message("page.again_do"))
    values = asked.get("values", {})
    if not isinstance(values, dict):
        raise KitError(message("page.no_values"), do=message("page.again_do"))
    body = asked.get("body", {})
    if not isinstance(body, dict):
        raise KitError(message("page.no_body"), do=message("page.again_do"))
    size = body.get("size", "")
    typed = None if body.get("typed") is None else _typed(body)
    if typed is None and size not in ("", *chart.names):
        raise KitError(message("body.no_such_size", size=_short(size)), do=known_near(str(size), chart.names))
    moved = tuple((str(name), _number(name, value)) for name, value in values.items())
    return Setting(read_language(asked, known), cast(System, units), "" if typed else str(size), typed, moved)


def _typed(body: Mapping[str, Any]) -> Typed:
    texts, name = body["typed"], body.get("name", "")
    if not isinstance(texts, dict) or not isinstance(name, str):
        raise KitError(message("page.no_body"), do=message("page.again_do"))
    for text in texts.values():
        if not isinstance(text, str) or len(text) > _LONGEST:
            raise KitError(message("refusal.not_a_length", text=_short(text)), do=message("page.length_do"))
    return Typed(name[:_LONGEST], tuple((str(key), text) for key, text in texts.items() if text.strip()))


def _number(name: object, value: object) -> float:
    if isinstance(value, bool) or not isinstance(value, int | float) or not -_FARTHEST < value < _FARTHEST:
        raise KitError(message("page.no_number", name=_short(name), value=_short(value)), do=message("page.again_do"))
    return float(value)


def _short(value: object) -> str:
    text = value if isinstance(value, str) else repr(value)
    return text if len(text) <= 40 else text[:39] + "…"


def checked_values(values: Mapping[str, float], parameters: tuple[Parameter, ...]) -> dict[str, Any]:
    """Values with their units, as `lesson.change` takes them. Raises `KitError` for a parameter there is not, and for
    a value outside its range."""
    known = {parameter.name: parameter for parameter in parameters}
    for name, value in values.items():
        if name not in known:
            raise KitError(message("page.no_slider", name=_short(name)), do=message("page.again_do"))
        known[name].checked(value)
        if known[name].kind == "count" and value != round(value):
            raise KitError(message("page.no_number", name=known[name].label, value=f"{value:g}"))
    return in_units(parameters, values)


# ---- a body ---------------------------------------------------------------------------------------------------


@dataclass(frozen=True)
class ReadBody:
    """What came of a body as typed: the `body` (None while no girth is known), what is `wrong` with single texts (by
    measurement), and the `trouble` with all of it."""

    body: Body | None
    wrong: dict[str, str]
    trouble: str = ""


def known_measures(chart: SizeChart) -> dict[str, Measurement]:
    """The kit's measurements and the lesson's own, by name."""
    return {**MEASUREMENTS, **{one.name: one for one in chart.own}}


def read_body(typed: Typed, chart: SizeChart, units: System) -> ReadBody:
    """The body somebody types; each slip is told beside its own measurement and the others go on."""
    known = known_measures(chart)
    good: dict[str, str] = {}
    wrong: dict[str, str] = {}
    for name, text in typed.texts:
        try:
            if name not in known:
                raise KitError(message("page.no_measure", name=_short(name)), do=known_near(name, known))
            mm = parse(text, units)
            known[name].plausible(float(mm))
            good[name] = _with_unit(text, units)
        except KitError as error:
            wrong[name] = f"{error.what} {error.do}".strip()
    label = typed.name.strip() or say("panel.body_mine")
    try:
        return ReadBody(make_body(good, chart, label), wrong)
    except KitError as error:
        return ReadBody(None, wrong, str(error) if good else "")


def _with_unit(text: str, units: System) -> str:
    """A bare number gets its unit, so that another choice of units later does not change what was typed."""
    try:
        length(text)
        return text
    except KitError:
        return f"{text.strip()} {'in' if units == 'inch' else 'cm'}"


def body_of(typed: Typed, chart: SizeChart, units: System) -> Body:
    """The body somebody typed, to draft for. Raises `KitError` when a measurement cannot be used, no girth is known, or
    its name is that of a size."""
    found = read_body(typed, chart, units)
    known = known_measures(chart)
    if found.wrong:
        names: list[Told] = [known[name].told if name in known else name for name in found.wrong]  # type: ignore[misc]
        raise KitError(
            message("body.box_unusable", measures=list_of([as_value(name) for name in names], "string")),
            do=message("body.box_unusable_do"),
        )
    if found.body is None:
        raise KitError(found.trouble or message("body.no_girth_yet"), do=message("body.no_girth_do"))
    if found.body.name in chart.names:
        raise KitError(
            message("body.name_of_size", name=found.body.name),
            where=message("body.where_name"),
            do=message("body.name_of_size_do"),
        )
    return found.body


def read_file(name: str, text: str, chart: SizeChart) -> tuple[Typed, System]:
    """A body file's text, as it would be typed, and its units. Raises `KitError` as `kit.body.file` does."""
    with tempfile.TemporaryDirectory() as folder:
        kept = "".join(c for c in name if c.isalnum() or c in " ._-").strip(" .")[:_LONGEST]
        path = Path(folder) / (kept or "body.toml")
        path.write_bytes(text.encode("utf-8", "replace"))
        body, units = load_body(path, chart), units_of(path)
    known = known_measures(chart)
    texts = {m.name: m.typed or f"{m.value / 10:.12g} cm" for m in body.measures if not m.estimated}
    return Typed(body.name, tuple((key, text) for key, text in texts.items() if key in known)), units


def written_file(body: Body, units: System) -> str:
    """The text of a body file. Raises `KitError` when nothing was measured."""
    with tempfile.TemporaryDirectory() as folder:
        return save_body(Path(folder) / "body.toml", body, units).read_text("utf-8")
