"""A body kept in a small file that people can read and change: TOML, one measurement a line.

    # A body for pattern lessons ...
    name = "Edda"
    units = "cm"

    [measured]
    bust_girth = "96 cm"
    waist_girth = "31 1/2 in"

Each length keeps the unit it was typed in; a bare number is in the file's `units`. Only what was measured is
kept: the rest is estimated again when the file is loaded. Measurements of a lesson's own stand under `[own]`; whoever
works that lesson knows what they are.
"""

from __future__ import annotations

import json
import re
import tomllib
from dataclasses import replace
from pathlib import Path
from typing import Any, cast

from kit.atomic import write_atomically
from kit.body.body import Body, Measure
from kit.body.chart import SizeChart
from kit.body.make import make_body
from kit.body.measures import MEASUREMENTS, measurement
from kit.diagnostic import measure, message
from kit.errors import KitError, known_near
from kit.units import Length, System, length, parse

_HEAD = """\
# A body for pattern lessons. Every length keeps its unit ("96 cm", "37 3/4 in"); measurements that are
# left out are estimated from the size chart and said to be estimated.
"""
_KEYS = ("name", "units", "measured", "own")
_LARGEST = 1_000_000  # bytes; a body is about one thousand


def save_body(path: str | Path, body: Body, units: System = "cm") -> Path:
    """Write the measured lengths of `body` to `path` in one step and give the path back. A length is written as
    the person typed it; one that came as a number is written in `units`. Raises `KitError` when nothing was
    measured or the file cannot be written; an earlier file then stays as it was.

    >>> import tempfile
    >>> from kit import cm, make_body
    >>> with tempfile.TemporaryDirectory() as folder:
    ...     file = save_body(f"{folder}/ines.toml", make_body({"bust_girth": 94 * cm}, name="Ines"))
    ...     print(load_body(file).name, load_body(file)["bust_girth"])
    Ines 940.0
    """
    path = Path(path)
    taken = [measure for measure in body.measures if not measure.estimated]
    if not taken:
        raise KitError(message("body.nothing_to_save"), where=body.name, do=message("body.nothing_to_save_do"))
    lines = [_HEAD, f"name = {_string(body.name)}", f'units = "{units}"', "", "[measured]"]
    own = [measure for measure in taken if measure.name not in MEASUREMENTS]
    lines += [_line(measure, units) for measure in taken if measure not in own]
    if own:
        lines += ["", "[own]", *(_line(measure, units) for measure in own)]
    return write_atomically(path, "\n".join(lines) + "\n")


def load_body(path: str | Path, chart: SizeChart | None = None) -> Body:
    """The body in a file; what it leaves out is estimated from `chart` (the workshop's own by default). Raises
    `KitError` in plain words for a file that is missing, broken, or holds something else.

    >>> try:
    ...     load_body("nobody.toml")
    ... except ValueError as error:
    ...     print(error)
    nobody.toml: there is no such file. Check its name and folder.
    """
    path = Path(path)
    where = path.name
    data = _table(path)
    for key in data:
        if key not in _KEYS:
            known = "body.file_key_measure" if key in MEASUREMENTS else "body.file_key"
            raise KitError(message(known, name=key), where=where, do=known_near(key, _KEYS))
    units = data.get("units", "cm")
    if units not in ("cm", "inch"):
        raise KitError(
            message("body.file_units", units=str(units)), where=where, do=message("body.write_do", line='units = "cm"')
        )
    name = data.get("name", path.stem)
    if not isinstance(name, str):
        raise KitError(
            message("body.file_name", name=repr(name)), where=where, do=message("body.write_do", line='name = "Edda"')
        )
    own = data.get("own", {})
    measured = data.get("measured", {} if own else None)
    if not isinstance(measured, dict) or not isinstance(own, dict) or not {**measured, **own}:
        raise KitError(
            message("body.file_empty"), where=where, do=message("body.write_do", line='[measured] bust_girth = "96 cm"')
        )
    try:
        for key in measured:
            if key not in own:
                (measurement if chart is None else chart.measurement)(key)
        lengths = {key: _read(key, value, units) for key, value in {**measured, **own}.items()}
        given = {key: text for key, text in lengths.items() if key in measured or (chart and key in chart.table)}
        body = make_body(given, chart, name)
        more = [Measure(key, float(length(text)), typed=str(text)) for key, text in lengths.items() if key not in given]
        return replace(body, measures=(*body.measures, *more)) if more else body
    except KitError as error:
        raise error.at(where) from None


def units_of(path: str | Path) -> System:
    """The units a body file says it is read in first; cm when it does not say."""
    found = _table(Path(path)).get("units")
    return "inch" if found == "inch" else "cm"


def _table(path: Path) -> dict[str, Any]:
    where = path.name or str(path)
    try:
        if path.stat().st_size > _LARGEST:
            raise KitError(message("body.file_large"), where=where, do=message("body.file_own_do"))
        return tomllib.loads(path.read_text("utf-8-sig"))
    except FileNotFoundError:
        raise KitError(message("body.file_missing"), where=str(path), do=message("body.file_missing_do")) from None
    except IsADirectoryError:
        raise KitError(message("body.file_folder"), where=str(path), do=message("body.file_folder_do")) from None
    except UnicodeDecodeError:
        raise KitError(message("body.file_not_text"), where=where, do=message("body.file_not_text_do")) from None
    except OSError:
        raise KitError(message("body.file_unread"), where=str(path), do=message("body.file_unread_do")) from None
    except tomllib.TOMLDecodeError as error:
        line = re.search(r"line (\d+)", str(error))
        place = message("body.file_broken_line", line=line[1]) if line else message("body.file_broken")
        raise KitError(place, where=where, do=message("body.write_do", line='bust_girth = "96 cm"')) from None
    except (RecursionError, ValueError):  # ValueError: a whole number of more than 4300 digits
        raise KitError(message("body.file_broken"), where=where, do=message("body.file_own_do")) from None


def _read(name: str, value: object, units: str) -> Length | str:
    example = message("body.write_do", line=f'{name} = "{"37 3/4 in" if units == "inch" else "96 cm"}"')
    if isinstance(value, bool) or not isinstance(value, str | int | float):
        raise KitError(
            message("refusal.not_a_length", text=repr(value)),
            where=message("refusal.here", place=measure(name)),
            do=example,
        )
    try:
        text = value.strip() if isinstance(value, str) else f"{value:.10g}"
    except OverflowError:
        text = "1e400"  # a whole number beyond all floats: refused below as any other that is no length
    try:
        parse(text, cast(System, units))
    except KitError:
        what = message("refusal.not_a_length", text=text[:60])
        raise KitError(what, where=message("refusal.here", place=measure(name)), do=example) from None
    return f"{text} {'in' if units == 'inch' else 'cm'}" if text[-1].isdigit() or text[-1] in "½¼¾⅛⅜⅝⅞" else text


def _line(measure: Measure, units: System) -> str:
    # A bare key is ASCII alone (TOML 1.0.0, "Keys"); a lesson's own measurement may be called otherwise.
    key = measure.name if measure.name.isascii() else _string(measure.name)
    return f"{key} = {_string(_written(measure, units))}"


def _written(measure: Measure, units: System) -> str:
    if measure.typed:
        return measure.typed
    per, unit = (25.4, "in") if units == "inch" else (10.0, "cm")
    return f"{round(measure.value / per, 5):.12g} {unit}"


def _string(text: str) -> str:
    """`text` as a TOML basic string (TOML 1.0.0, "String")."""
    clean = text.encode("utf-8", "replace").decode("utf-8")
    return json.dumps(clean, ensure_ascii=False).replace("\x7f", "\\u007f")
