"""What a reader of one edition of a lesson has in hand: its pieces, measures, notions, and what its steps tell.

A worked pattern is one (`edition_of`), and so is the file `pattern.json` that every build writes (`read_edition`), so
that an edition made long ago, by a notebook that has changed since, can be laid beside the one of today. Lines come
back from the file within 0.05 mm of the curves they were.
"""

from __future__ import annotations

import json
import math
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from pathlib import Path as FilePath
from typing import Any

from kit.cloth.lay import CLOTHS
from kit.diagnostic import message
from kit.errors import KitError
from kit.geometry import Line, Path, Point
from kit.lesson.pattern import ParameterValue, Pattern
from kit.paper.export import FORMAT, VERSION
from kit.paper.range_files import plain_size
from kit.piece.darts_and_pleats import Dart, Pleat
from kit.piece.piece import CutPlan, Edge, Grain, Mark, Notch, Piece, Strip, named
from kit.prose.told import ToldStep, told_steps
from kit.units import System
from kit.wording.lists import listed

FILE = "pattern.json"
RELEASE, FILES = "release.json", "files"
"""What tells of a release, and its folder of patterns (`kit.release`)."""
_LARGEST = 50_000_000


@dataclass(frozen=True)
class Edition:
    """One edition of a lesson, worked for one `size`. `body` and `finished` are (name, mm), `language` is that of its
    words; `steps` is empty for a file of before steps were written to it. `own_measures` says what the lesson's own
    measurements are called: (name, in words); a file has their names alone. `cloth` is what is bought, where it was
    reckoned: ("main 1400", mm), for each cloth and width (mm) that is wide enough."""

    title: str
    edition: str
    date: str
    units: System
    language: str
    size: str
    body: tuple[tuple[str, float], ...]
    values: tuple[ParameterValue, ...]
    pieces: tuple[Piece, ...]
    strips: tuple[Strip, ...]
    finished: tuple[tuple[str, float], ...]
    notions: tuple[str, ...] = ()
    steps: tuple[ToldStep, ...] = ()
    own_measures: tuple[tuple[str, str], ...] = ()
    cloth: tuple[tuple[str, float], ...] = ()

    def piece(self, name: str) -> Piece:
        """The piece of that name; `KitError` with the nearest name otherwise."""
        return named(self.pieces, name, "piece")


def edition_of(pattern: Pattern, language: str, used: Collection[str] | None = None) -> Edition:
    """What the pattern, told in the `language` spoken now, puts into its reader's hands; of the body only the
    measurements `used`, where these are known."""
    lesson = pattern.lesson
    return Edition(
        lesson.title,
        lesson.edition,
        lesson.date,
        lesson.units,
        language,
        pattern.body.name,
        tuple((m.name, m.value) for m in pattern.body.measures if used is None or m.name in used),
        pattern.values,
        pattern.pieces,
        pattern.strips,
        pattern.finished,
        tuple(lesson.notions),
        told_steps(pattern),
        tuple((each.name, each.said) for each in lesson.measurements),
    )


def read_edition(path: FilePath, size: str = "") -> Edition:
    """The edition in a file `pattern.json`, or in the folder of a build or of a release; of a release that `size`, or
    the one its booklet is drawn in. `KitError`, in a teacher's words, for a file that is missing, damaged, or of
    another kind, and a size that was not released."""
    path = _file_in(path, size) if path.is_dir() else path
    try:
        if path.stat().st_size > _LARGEST:
            raise _refused(path, "large")
        data = json.loads(path.read_text(encoding="utf-8"), parse_constant=_no_number)
    except FileNotFoundError:
        raise _refused(path, "missing") from None
    except OSError as error:
        raise _refused(path, "closed", reason=str(error.strerror)) from None
    except (ValueError, RecursionError):
        raise _refused(path, "damaged") from None
    if not isinstance(data, dict) or data.get("format") != FORMAT:
        raise _refused(path, "other")
    if data.get("version") != VERSION:
        raise _refused(path, "version", version=str(data.get("version"))[:20])
    try:
        return edition_from(data)
    except (KeyError, TypeError, ValueError, AttributeError, IndexError, OverflowError, KitError):
        raise _refused(path, "damaged") from None


def _file_in(folder: FilePath, size: str) -> FilePath:
    """Where the pattern lies in a folder."""
    release = folder / RELEASE
    if not release.is_file():
        return folder / FILE
    try:
        if release.stat().st_size > _LARGEST:
            raise _refused(release, "large")
        told = json.loads(release.read_text(encoding="utf-8"))
        drawn, sizes = str(told["drawn_in"]), [str(each) for each in told["sizes"]]
    except OSError as error:
        raise _refused(release, "closed", reason=str(error.strerror)) from None
    except (ValueError, RecursionError, KeyError, TypeError):
        raise _refused(release, "damaged") from None
    if size and size not in (*sizes, drawn):
        raise KitError(
            message("family.edition_size", size=size, file=folder.name),
            do=message("family.edition_size_do", sizes=listed(sizes or [drawn])),
        )
    own = folder / FILES / f"pattern-{plain_size(size or drawn)}.json"
    return own if own.is_file() else folder / FILES / FILE


def edition_from(data: Mapping[str, Any]) -> Edition:
    """The edition told by the data of `kit.paper.export.pattern_json`. Raises `KeyError`, `TypeError` or `ValueError`
    where they are not what they should be."""
    lesson = data["lesson"]
    if lesson["units"] not in ("cm", "inch"):
        raise ValueError("units")
    return Edition(
        str(lesson["title"]),
        str(lesson["edition"]),
        str(lesson["date"]),
        lesson["units"],
        str(lesson.get("language", "en")),
        str(data["size"]),
        tuple((str(each["name"]), _number(each["value"])) for each in data["body"]),
        tuple(_value(each) for each in data["values"]),
        tuple(_piece(each) for each in data["pieces"]),
        tuple(_strip(each) for each in data["strips"]),
        tuple((str(each["name"]), _number(each["value"])) for each in data["finished"]),
        tuple(str(each) for each in data.get("notions", ())),
        tuple(
            ToldStep(str(each["key"]), each["kind"], str(each["title"]), tuple(str(words) for words in each["words"]))
            for each in data.get("steps", ())
        ),
        cloth=tuple(
            (cloth_name(CLOTHS[CLOTHS.index(each["cloth"])], _number(each["width"])), _number(each["length"]))
            for each in data.get("cloth_to_buy", ())
            if each["length"] is not None
        ),
    )


def cloth_name(cloth: str, width: float) -> str:
    """What an edition calls a cloth of so many mm.

    >>> cloth_name("main", 1400.0)
    'main 1400'
    """
    return f"{cloth} {width:g}"


# ---- from the file ----------------------------------------------------------------------------------------


def _no_number(text: str) -> float:
    raise ValueError(f"{text} is no number")


def _number(value: object) -> float:
    if isinstance(value, bool) or not isinstance(value, int | float) or not math.isfinite(value):
        raise ValueError(f"{value!r} is no number")
    return float(value)


def _place(value: Sequence[float]) -> Point:
    x, y = value
    return Point(_number(x), _number(y))


def _line(places: Sequence[Point]) -> Path:
    return Path(tuple(Line(a, b) for a, b in pairwise(places)))


def _value(data: Mapping[str, Any]) -> ParameterValue:
    numbers = (_number(data[name]) for name in ("value", "default", "least", "most"))
    value, default, least, most = numbers
    return ParameterValue(str(data["name"]), value, data["kind"], default, least, most, str(data["why"]))


def _piece(data: Mapping[str, Any]) -> Piece:
    name = str(data["name"])
    return Piece(
        name,
        str(data["title"]),
        _edges(data),
        int(data["number"]),
        CutPlan(
            int(data["cut_count"]),
            bool(data["mirrored"]),
            str(data["fold"] or ""),
            data["cloth"],
            int(data["interfacing"]),
            bool(data["right_side_up"]),
            True,
        ),
        _grain(data),
        tuple(
            Notch(str(each["edge"]), _number(each["distance"]), each["kind"], str(each["name"]))
            for each in data["notches"]
        ),
        tuple(_mark(each) for each in data["marks"]),
        tuple((str(each["name"]), _place(each["at"])) for each in data["points"]),
        darts=tuple(_dart(each) for each in data["darts"]),
        pleats=tuple(_pleat(each) for each in data["pleats"]),
        role=data["role"] or "",
        worn=data["worn"] or "",
    )


def _edges(data: Mapping[str, Any]) -> tuple[Edge, ...]:
    """The closed stitch line parted at the ends of the edges, which are places of it: once round, edge after edge."""
    around = [_place(place) for place in data["stitch_line"]]
    edges, at = [], 0
    for each in data["edges"]:
        start, end = _place(each["start"]), _place(each["end"])
        if not around or around[at % len(around)] != start:
            raise ValueError(f"{each['name']} does not begin where the one before it ends")
        places = [start]
        while _number(each["length"]) > 0 and (len(places) == 1 or places[-1] != end):
            at += 1
            if at > len(around):
                raise ValueError(f"{each['name']} does not end on the stitch line")
            places.append(around[at % len(around)])
        path = _line(places) if len(places) > 1 else Path.line(start, end)
        allowance = None if each["allowance"] is None else _number(each["allowance"])
        edges.append(
            Edge(
                str(each["name"]),
                path,
                allowance,
                str(each["said"]),
                role=each["role"] or "",
                extra=_number(each["extra"]),
            )
        )
    return tuple(edges)


def _grain(data: Mapping[str, Any]) -> Grain | None:
    if not data["grain"]:
        return None
    start, end = (_place(place) for place in data["grain"])
    return Grain(start, end, data["grain_kind"], bool(data["grain_one_way"]))


def _mark(data: Mapping[str, Any]) -> Mark:
    path = _line([_place(place) for place in data["line"]]) if data["line"] else None
    point = _place(data["at"]) if data["at"] else None
    numbers = (_number(data["start"]), _number(data["end"]))
    return Mark(str(data["name"]), data["kind"], path, point, str(data["edge"] or ""), *numbers, str(data["said"]))


def _dart(data: Mapping[str, Any]) -> Dart:
    apex = _place(data["apex"])
    return Dart(
        str(data["name"]),
        str(data["edge"]),
        apex,
        _number(data["start"]),
        _number(data["end"]),
        data["pressed"],
        apex.distance(_place(data["point"])),
        str(data["said"]),
    )


def _pleat(data: Mapping[str, Any]) -> Pleat:
    one, two = (_line([_place(place) for place in line]) for line in data["lines"])
    return Pleat(
        str(data["name"]),
        str(data["edge"]),
        _number(data["start"]),
        _number(data["end"]),
        (one, two),
        data["kind"],
        _number(data["sewn"]),
        data["laid"],
        str(data["said"]),
    )


def _strip(data: Mapping[str, Any]) -> Strip:
    sizes = (_number(data["length"]), _number(data["width"]))
    return Strip(
        str(data["name"]),
        str(data["title"]),
        *sizes,
        int(data["cut_count"]),
        int(data["number"]),
        data["cloth"],
        _number(data["finished_length"]),
        _number(data["finished_width"]),
        data["fold"],
        data["grain"],
        int(data["joins"]),
    )


def _refused(path: FilePath, why: str, **more: str) -> KitError:
    key = f"family.edition_{why}"
    return KitError(message(key, file=path.name, **more), do=message(f"{key}_do", file=path.name))
