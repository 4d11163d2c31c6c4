"""Every verb of `make` as it is written in its own example: what it says, needs and changes, how long it takes, what
its pictures show; and then, for each word that an argument may be and each length that may be left out, what becomes
otherwise.

What stands in the folders `verbs_...` was made by the kit, and read in samples (common practice, no source); the
lengths are worked from the pieces of `tests/live/sampler.py`.
"""

from __future__ import annotations

import inspect
import re
from collections.abc import Iterator
from dataclasses import replace
from difflib import ndiff
from pathlib import Path
from typing import Any

import pytest

from kit.body.body import Body
from kit.errors import KitError
from kit.lesson.pattern import LessonInfo, Pattern, SewRecord
from kit.piece.piece import Piece
from kit.reference.sampler import BEFORE, PIECES, STRIPS
from kit.reference.verb_help import verbs_of
from kit.sewing.handle import PieceHandle, StripHandle
from kit.sewing.in_work import shown_scenes
from kit.sewing.make import Make
from kit.sewing.order import sew
from kit.sewing.verb import VERBS
from kit.units import cm, mm
from tests.sewing.telling import told_objection, told_operation, told_scene
from tests.told import Kept

ARGUMENT_WORDS = re.compile(r"^Literal\[([^]]+)\]( \| None)?$")
OTHER_LENGTH = 7 * mm
"""Written for a length that may be left out: none has it by itself."""
WAYS = ("open", "one side", "back", "front")
"""Written for a direction, which may be a piece as well."""


VERB = sorted(VERBS)
TOO_LONG, NOTHING = "refusal.too_wide", "refusal.zero"


def _held(folder: str, verb: str) -> Kept:
    """What is held of a verb, in a folder beside this file."""
    return Kept(Path(__file__).with_name(folder) / f"{verb}.txt")


class _Otherwise:
    """A `make` that writes one argument of one verb otherwise."""

    def __init__(self, make: Make, verb: str, argument: str, value: Any) -> None:
        self._make, self._verb, self._other = make, verb, {argument: value}

    def __getattr__(self, name: str) -> Any:
        written = getattr(self._make, name)
        if name != self._verb:
            return written
        return lambda *given, **named: written(*given, **named | self._other)


def _pattern(verb: str, argument: str = "", value: Any = None) -> tuple[Pattern, int]:
    """The sampler with the example of a verb sewn, and how many operations come before it. Raises `KitError`."""
    make = Make(PIECES, STRIPS)
    names: dict[str, Any] = {piece.name: PieceHandle(piece) for piece in PIECES} | {"cm": cm, "mm": mm}
    names |= {strip.name: StripHandle(strip) for strip in STRIPS} | {"make": make}
    exec("\n".join(BEFORE.get(verb, ())), names)
    before = len(make.operations)
    if argument:
        names["make"] = _Otherwise(make, verb, argument, value)
    exec(verbs_of("make")[verb].example, names)
    record = SewRecord("step", "Step", "", "", make.operations)
    return Pattern(LessonInfo("T", "t"), Body("W4", ()), (), PIECES, STRIPS, (), (record,)), before


def _worked(verb: str, argument: str = "", value: Any = None) -> list[str]:
    try:
        pattern, before = _pattern(verb, argument, value)
    except KitError as error:
        return [f"refused: {getattr(error.told.says, 'key', error.what)}"]
    lines: list[str] = []
    for operation in pattern.sewing[0].operations[before:]:
        lines += told_operation(operation, pattern)
        for number, scene in enumerate(operation.scenes(pattern), 1):
            lines += [f"picture {number}", *told_scene(scene)]
    return lines + [f"objection {each.code}" for each in sew(pattern)[1]]


def _in_work(verb: str) -> list[str]:
    pattern, before = _pattern(verb)
    lines: list[str] = []
    for operation in pattern.sewing[0].operations[before:]:
        for number, scene in enumerate(shown_scenes(pattern, operation), 1):
            lines += [f"picture {number}", *told_scene(scene)]
    return lines or ["none"]


def _others(verb: str) -> Iterator[tuple[str, Any]]:
    """(argument, another value) for each word, flag and length of a verb that may be left out."""
    for name, argument in inspect.signature(VERBS[verb]).parameters.items():
        if argument.default is argument.empty:
            continue
        kind = str(argument.annotation)
        words = ARGUMENT_WORDS.match(kind)
        if words:
            yield from ((name, each) for each in re.findall(r"'([^']*)'", words[1]) if each != argument.default)
        elif kind == "bool":
            yield name, not argument.default
        elif kind.startswith("Size"):
            yield name, OTHER_LENGTH
        elif kind == "int":
            yield name, argument.default + 1
        elif kind == "str | PieceHandle":
            yield from ((name, each) for each in WAYS if each != argument.default)


def _refused(verb: str, argument: str, mms: int) -> str:
    try:
        _pattern(verb, argument, mms * mm)
    except KitError as error:
        return getattr(error.told.says, "key", "refused")
    return ""


def _longest(verb: str, argument: str) -> str:
    """From what length on an argument is refused for being too long or none, to the mm; and under which it is refused
    for another reason."""

    def taken(mms: int) -> bool:
        return _refused(verb, argument, mms) != TOO_LONG

    least = f", not under {found}" if (found := _shortest(verb, argument)) > 1 else ""
    low, high = 1, 2000
    if taken(high):
        return f"any{least}"
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (middle, high) if taken(middle) else (low, middle)
    return f"{0 if _refused(verb, argument, 0) != NOTHING else 'more than 0'} to {low}{least}"


def _shortest(verb: str, argument: str) -> int:
    """The least length that is taken, mm; 0 where none is found."""
    high = next((mms for mms in (1, 2, 4, 8, 16, 32, 64, 128) if not _refused(verb, argument, mms)), 0)
    low = high // 2
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (low, middle) if not _refused(verb, argument, middle) else (middle, high)
    return high


@pytest.mark.parametrize("verb", VERB)
def test_what_it_does(verb):
    _held("verbs_told", verb).holds({verb: "\n".join(_worked(verb))})


@pytest.mark.parametrize("verb", VERB)
def test_what_its_pictures_show_as_the_cloth_lies_by_then(verb):
    _held("verbs_in_work", verb).holds({verb: "\n".join(_in_work(verb))})


@pytest.mark.parametrize("verb", VERB)
def test_what_becomes_otherwise(verb):
    usual = _worked(verb)
    found = {}
    for argument, value in _others(verb):
        other = _worked(verb, argument, value)
        refused = other[0].startswith("refused")
        lines = other if refused else [line for line in ndiff(usual, other) if line[0] in "+-"]
        found[f"{argument}={value}"] = "\n".join(lines) or "the same"
    _held("verbs_otherwise", verb).holds(found or {"nothing": "may be left out"})


@pytest.mark.parametrize("verb", VERB)
def test_what_speaks_against_it_out_of_its_order(verb):
    """Without each of the steps that come before it; twice; and on a piece whose allowances are 2 mm."""
    found = {"twice": _objections((*BEFORE.get(verb, ()), verbs_of("make")[verb].example), verb)}
    for number, line in enumerate(BEFORE.get(verb, ())):
        before = BEFORE[verb]
        found[f"without {line}".replace("\n", " ")] = _objections((*before[:number], *before[number + 1 :]), verb)
    narrow = tuple(
        replace(piece, edges=tuple(replace(edge, allowance=edge.allowance and 2.0) for edge in piece.edges))
        for piece in PIECES
    )
    found["of 2 mm"] = _objections(BEFORE.get(verb, ()), verb, narrow)
    _held("verbs_refused", verb).holds(found)


def _objections(before: tuple[str, ...], verb: str, pieces: tuple[Piece, ...] = PIECES) -> str:
    make = Make(pieces, STRIPS)
    names: dict[str, Any] = {piece.name: PieceHandle(piece) for piece in pieces} | {"cm": cm, "mm": mm}
    names |= {strip.name: StripHandle(strip) for strip in STRIPS} | {"make": make}
    try:
        exec("\n".join((*before, verbs_of("make")[verb].example)), names)
    except KitError as error:
        return f"refused: {getattr(error.told.says, 'key', error.what)}"
    record = SewRecord("step", "Step", "", "", make.operations)
    pattern = Pattern(LessonInfo("T", "t"), Body("W4", ()), (), pieces, STRIPS, (), (record,))
    return "\n".join(map(told_objection, sew(pattern)[1])) or "nothing"


@pytest.mark.parametrize("verb", VERB)
def test_how_long_its_lengths_may_be(verb):
    arguments = inspect.signature(VERBS[verb]).parameters.items()
    lengths = [name for name, argument in arguments if str(argument.annotation).startswith("Size")]
    found = [f"{name} {_longest(verb, name)}" for name in lengths]
    _held("verbs_lengths", verb).holds({verb: "\n".join(found) or "none"})
