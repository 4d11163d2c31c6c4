"""Every operation is given a part of an edge where its example names a whole one, and sews it or says why not.

What each should do is labelled in `parts_of_edges.toml` with a reason, from before it was tried.
"""

from __future__ import annotations

import tomllib
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from kit.body.body import Body
from kit.errors import KitError
from kit.lesson.pattern import LessonInfo, Pattern, SewRecord
from kit.prose import edges_said, places_said, sentences
from kit.reference.sampler import BEFORE, PIECES, STRIPS
from kit.reference.verb_help import verbs_of
from kit.sewing.handle import PieceHandle, StripHandle
from kit.sewing.make import Make
from kit.sewing.operation import Operation
from kit.sewing.order import sew
from kit.sewing.run import Run
from kit.sewing.spans import reach
from kit.units import Length, cm, inch, mm

LABELS = tomllib.loads((Path(__file__).parent / "parts_of_edges.toml").read_text("utf-8"))
UNITS = {"cm": cm, "mm": mm, "inch": inch}
SHARE = 0.95
"""How much of the shortest edge the part takes, about the middle of each."""


class Parting:
    """`make`, but the verb `name` is given parts: of a row of edges the middle of the first alone. A gap
    is a part already and stays as it is."""

    def __init__(self, make: Make, name: str) -> None:
        self.make, self.name = make, name
        self.parts: list[Run] = []

    def __getattr__(self, verb: str) -> Callable[..., Any]:
        written = getattr(self.make, verb)
        if verb != self.name:
            return written

        def write(*given: Any, **named: Any) -> Any:
            rest = len(given) > 1 and all(isinstance(each, Run) for each in given) and verb not in PAIRS
            found = given[:1] if rest else given
            runs = [
                run
                for each in (*found, *(each for word, each in named.items() if word not in ("bags", "gap")))
                for run in first(each)
            ]
            size = SHARE * min((float(run.length) for run in runs), default=0.0)
            return written(
                *(self.part(each, size) for each in found),
                **{
                    word: each if word in ("at", "bags", "gap") else self.part(each, size)
                    for word, each in named.items()
                },
            )

        return write

    def part(self, given: Any, size: float) -> Any:
        if isinstance(given, list | tuple) and first(given):
            return [self.part(given[0], size)]
        if not isinstance(given, Run):
            return given
        middle = float(given.length) / 2
        self.parts.append(given.between(Length(middle - size / 2), Length(middle + size / 2)))
        return self.parts[-1]


PAIRS = frozenset(
    {"plain_seam", "french_seam", "mock_french_seam", "flat_felled_seam", "lapped_seam", "seam_to_turn", "slip_stitch"}
    | {"band_ends", "seam_band", "set_band", "close_band", "pocket_bag", "pocket_seam", "faced_hem"}
)


def first(given: Any) -> list[Run]:
    """The runs of an argument that are given as parts."""
    if isinstance(given, Run):
        return [given]
    return first(given[0]) if isinstance(given, list | tuple) and given else []


def made(name: str, parted: bool) -> tuple[Pattern, list[Operation], list[str], list[Run]]:
    """The sampler with the example of a verb: its pattern, the operations of the example, what speaks against them, and
    the parts it was given."""
    make = Make(PIECES, STRIPS)
    names: dict[str, Any] = {piece.name: PieceHandle(piece) for piece in PIECES} | {"make": make} | UNITS
    names |= {strip.name: StripHandle(strip) for strip in STRIPS}
    exec("\n".join(BEFORE.get(name, ())), names)
    before = len(make.operations)
    parting = Parting(make, name)
    exec(verbs_of("make")[name].example, names | {"make": parting if parted else make})
    pattern = Pattern(
        LessonInfo("Sampler", "sampler"),
        Body("W4", ()),
        (),
        PIECES,
        STRIPS,
        (),
        (SewRecord("s", "S", "", "", make.operations),),
    )
    told = [found.code for found in sew(pattern)[1]]
    return pattern, list(make.operations[before:]), told, parting.parts


def test_every_operation_is_labelled_once_with_a_reason() -> None:
    words = [word for table in LABELS.values() for word in table]
    assert sorted(words) == sorted(verbs_of("make")), "label the new verb, with its reason, in parts_of_edges.toml"
    assert all(reason for table in LABELS.values() for reason in table.values())


@pytest.mark.parametrize("name", LABELS["none"])
def test_what_takes_no_edge_is_given_none(name: str) -> None:
    assert name.endswith("_zip") or made(name, True)[3] == []


@pytest.mark.parametrize("name", LABELS["sews"])
def test_a_part_is_sewn_told_and_drawn_as_a_part(name: str) -> None:
    pattern, whole, told, _ = made(name, False)
    assert told == []
    pattern, operations, told, parts = made(name, True)
    assert parts, "no edge was given to it"
    assert told == []
    operation = operations[-1]
    said = " ".join(sentences(pattern, operation))
    named = " ".join(sentences(pattern, whole[-1]))
    told_of = [run for run in whole[-1].runs() if edges_said(pattern, (run,)) in named]
    if told_of:  # its words name an edge, and now name the part of it
        assert any(edges_said(pattern, (part,)) in said or places_said(pattern, (part,)) in said for part in parts), (
            said
        )
    inside = {(part.piece, part.edges): reach(pattern, part) for part in parts}
    for scene in operation.scenes(pattern):
        shown = [row.run for row in scene.rows if row.line is None and row.ink == "new"]
        shown += [*scene.pins, *(run for run, _ in scene.arrows), *([scene.focus] if scene.focus else [])]
        shown += [layer.run for layer in scene.layers if layer.turn]
        for run in shown:
            if (run.piece, run.edges) in inside:
                low, high = inside[run.piece, run.edges]
                start, end = reach(pattern, run)
                assert low - 1 <= start < end <= high + 1


@pytest.mark.parametrize("name", LABELS["whole"])
def test_what_is_sewn_whole_refuses_a_part_and_says_so(name: str) -> None:
    try:
        _, _, told, parts = made(name, True)
    except KitError as error:
        assert "part" in str(error)
        return
    assert parts
    assert "part_of_edge" in told
