"""Arguments of `make` written wrongly: for each kind of argument what is said of a bare number, a word, a whole piece,
a mark, a half, a strip, an edge where none fits, lengths too short and too long.

What stands in `misread` was read as a teacher who has mistyped a step.
"""

from __future__ import annotations

import inspect
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from kit.errors import KitError
from kit.reference.sampler import BEFORE, PIECES, STRIPS
from kit.reference.verb_help import verbs_of
from kit.sewing.handle import PieceHandle, StripHandle
from kit.sewing.make import Make
from kit.sewing.verb import VERBS
from kit.units import cm, mm
from tests.exact import refusal
from tests.told import Kept

NAMES: dict[str, Any] = {piece.name: PieceHandle(piece) for piece in PIECES} | {"cm": cm, "mm": mm}
NAMES |= {strip.name: StripHandle(strip) for strip in STRIPS}
WRONG = (
    "7",
    "'sideways'",
    "None",
    "True",
    "[]",
    "front",
    "front.pocket_place",
    "front.left.side",
    "front.hem",
    "front.side.after(5 * cm)",
    "skirt_back.zip_opening",
    "skirt_back.zip_opening.start",
    "tie",
    "0 * mm",
    "-3 * mm",
    "3000 * mm",
    "(2 * cm, 5 * cm)",
    "[front.hem, 'x']",
)


def _kinds() -> Iterator[tuple[str, str]]:
    """(verb, argument): the first of each kind of argument, by its type, its way of being written and whether it may be
    left out."""
    seen = set()
    for verb in sorted(VERBS):
        for name, argument in inspect.signature(VERBS[verb]).parameters.items():
            if name == "reader" or argument.kind is argument.VAR_KEYWORD:
                continue
            words = str(argument.annotation).startswith("Literal")  # one of a few words: all are read alike
            kind = ("words" if words else str(argument.annotation), argument.kind, argument.default is argument.empty)
            if kind not in seen or argument.annotation == "int":  # each says itself what it counts
                seen.add(kind)
                yield verb, name


class _Misread:
    """A `make` that gives one verb something else for one of its arguments."""

    def __init__(self, make: Make, verb: str, argument: str, value: Any) -> None:
        self._make, self._verb, self._argument, self._value = make, verb, argument, value

    def __getattr__(self, name: str) -> Any:
        written = getattr(self._make, name)
        if name != self._verb:
            return written
        signature = inspect.signature(written)

        def call(*given: Any, **named: Any) -> Any:
            bound = signature.bind(*given, **named)
            rest = signature.parameters[self._argument].kind is inspect.Parameter.VAR_POSITIONAL
            bound.arguments[self._argument] = (self._value,) if rest else self._value
            return written(*bound.args, **bound.kwargs)

        return call


def _said(verb: str, argument: str, value: str) -> str:
    make = Make(PIECES, STRIPS)
    names = NAMES | {"make": make}
    exec("\n".join(BEFORE.get(verb, ())), names)
    names["make"] = _Misread(make, verb, argument, eval(value, NAMES))
    before = len(make.operations)
    try:
        exec(verbs_of("make")[verb].example, names)
    except KitError as error:
        return f"refused: {refusal(error)}"
    except (TypeError, AttributeError, ValueError) as error:
        pytest.fail(f"make.{verb}({argument}={value}): {error!r} is no message for a teacher")
    return f"taken, {len(make.operations) - before} made"


@pytest.mark.parametrize(("verb", "argument"), list(_kinds()))
def test_what_is_said_of_each_kind_of_argument(verb, argument):
    found = "\n".join(f"{value}: {_said(verb, argument, value)}" for value in WRONG)
    Kept(Path(__file__).with_name("misread") / f"{verb}_{argument}.txt").holds({f"{verb}, {argument}": found})
