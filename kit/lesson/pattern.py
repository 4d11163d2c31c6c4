"""What working a lesson gives: an immutable `Pattern`. Pure data, no functions: it can be pickled, compared
and handed to any view (pictures, booklet, pattern pages, proof)."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import Any, Literal

from kit.body.body import Body
from kit.body.measures import Measurement
from kit.diagnostic import Message
from kit.errors import KitError, near
from kit.geometry import Path, Point
from kit.lesson.hand import HandMove
from kit.piece.piece import Mark, Notch, Piece, Strip, named
from kit.sewing.handling import handling
from kit.sewing.operation import Operation, Sentence
from kit.sewing.refit import Turn
from kit.units import System

Nap = Literal["none", "one_way", "print"]
Words = Literal["before", "after", "instead"]


@dataclass(frozen=True)
class Photo:
    """A photo in the lesson's folder, printed beside the step or sewing step of the key `beside`; `alt` tells what it
    shows."""

    file: str
    beside: str
    alt: str
    caption: str = ""


@dataclass(frozen=True)
class Video:
    """A film at `address` and where in it each step is shown: (step key, seconds from its start)."""

    address: str
    marks: tuple[tuple[str, float], ...] = ()


Fit = Literal["close", "easy", "loose"]
"""How a garment means to fit: with how much wearing ease."""


@dataclass(frozen=True)
class LessonInfo:
    """What a lesson says of itself. `edition` and `date` are printed on every piece and page; `start_notes` are what
    must be known of the block or traced top it starts from, the kit's own said when they are shown. `nap`: one_way for
    cloth whose pile or print must run the same way in every piece, print for a pattern to be matched as well.
    `language` is that of its own words (BCP 47). `fibre`, `weight`, `drape` and `avoid` advise on cloth, `prewash` on
    washing it, `care` on keeping what was made of it. `shrinkage` (0..1) is how much it loses in length, `stretch` by
    which part it is longer across when stretched: (stretched - relaxed) / relaxed, `stretch_along` the same along the
    grain. `cover` is a picture in the lesson's folder, told in `cover_alt`.
    `variations` are (title, words), `measurements` the lesson's own. `fit` says how
    much wearing ease it means to have; nothing where it does not say. `handling` is what is told of the handling of the
    cloth, of `kit.sewing.handling.KINDS`.
    `no_paper` names the pieces that are cut by their measures, or is ("rectangles",) for all that can be.
    `size_breaks` are the sizes from which the steps between sizes are meant to be others.
    `units` is the system read first; `own` the one its author thinks in where a reader asked for the other, and `alone`
    that nothing stands in brackets beside it."""

    title: str
    slug: str
    units: System = "cm"
    edition: str = "1"
    date: str = ""
    author: str = ""
    summary: str = ""
    cloth: str = ""
    cloth_widths: tuple[float, ...] = (1400.0,)
    notions: tuple[str, ...] = ()
    level: str = ""
    cautions: tuple[str, ...] = ()
    start_notes: tuple[str | Message, ...] = ()
    nap: Nap = "none"
    whys: bool = False
    handling: tuple[str, ...] = ("stretch", "curve", "cloth")
    language: str = "en"
    fibre: str = ""
    weight: str = ""
    drape: str = ""
    avoid: str = ""
    prewash: str = ""
    care: str = ""
    shrinkage: float = 0.0
    stretch: float = 0.0
    stretch_along: float = 0.0
    fit: Fit | Literal[""] = ""
    licence: str = ""
    credits: tuple[str, ...] = ()
    cover: str = ""
    cover_alt: str = ""
    variations: tuple[tuple[str, str], ...] = ()
    measurements: tuple[Measurement, ...] = ()
    photos: tuple[Photo, ...] = ()
    videos: tuple[Video, ...] = ()
    own: System | Literal[""] = ""
    alone: bool = False
    size_breaks: tuple[str, ...] = ()
    no_paper: tuple[str, ...] = ()


@dataclass(frozen=True)
class ParameterValue:
    """One parameter's value for this pattern. `kind` length is in mm; share is 0..1; count is whole. `follows` says
    what of the body it follows from; nothing once it was moved."""

    name: str
    value: float
    kind: Literal["length", "share", "count"]
    default: float
    least: float
    most: float
    why: str = ""
    said: str = ""
    follows: Message | None = None

    @property
    def label(self) -> str:
        return self.said or self.name.replace("_", " ")


@dataclass(frozen=True)
class StepMeasure:
    """A measure shown in a step's picture: `name` and `value` in mm, dimensioned on `piece` between `start`
    and `end`; `along` is the line it runs along when it is not straight. `edge` is the edge whose allowance it is,
    where the lesson gave it no name of its own. `allowance` says that it is one: the picture draws both its lines;
    `extra` that it is cloth to fit with outside that."""

    name: str
    value: float
    piece: str
    start: Point
    end: Point
    along: Path | None = None
    kind: Literal["length", "share", "count"] = "length"
    label: str = ""
    edge: str = ""
    allowance: bool = False
    extra: bool = False


@dataclass(frozen=True)
class StepRecord:
    """One worked drafting step. `text` is the teacher's words with placeholders; `values` the numbers they
    stand for (name, value, kind). `pieces` are the touched pieces after the step; `new` and `removed` list
    (piece name, edge or guide name, path); `spots` the measures to dimension, `limits` the names of those that a line
    keeps within (the least radius of a curve) and none is drawn as long as. `new_notches` and `new_marks` are
    what was marked, and `allowed` names the pieces that were given allowances, `grained` a
    grainline. `moves` is what the hand did, in order."""

    key: str
    title: str
    text: str
    cell: str
    uses: tuple[str, ...]
    values: tuple[tuple[str, float, str], ...]
    pieces: tuple[Piece, ...]
    new: tuple[tuple[str, str, Path], ...]
    removed: tuple[tuple[str, str, Path], ...]
    new_points: tuple[tuple[str, str, Point], ...]
    spots: tuple[StepMeasure, ...]
    strips: tuple[Strip, ...] = ()
    new_notches: tuple[tuple[str, Notch], ...] = ()
    new_marks: tuple[tuple[str, Mark], ...] = ()
    allowed: tuple[str, ...] = ()
    grained: tuple[str, ...] = ()
    moves: tuple[HandMove, ...] = ()
    limits: tuple[str, ...] = ()


@dataclass(frozen=True)
class SewRecord:
    """One sewing step: its `operations` (kit.sewing values) in order, the teacher's own words `text`, and whether they
    stand "before" or "after" the operations' sentences or "instead" of them."""

    key: str
    title: str
    text: str
    cell: str
    operations: tuple[Any, ...]
    values: tuple[tuple[str, float, str], ...] = ()
    words: Words = "before"


@dataclass(frozen=True)
class Tried:
    """A try-on that changes values: the key of its sewing `step` and which `operation` of it, from 0; the values that
    `turns` change; the lesson drafted `before` and `after` it. `trouble` says why one of them cannot be drafted; it is
    None then."""

    step: str
    operation: int
    turns: tuple[Turn, ...]
    before: Pattern | None
    after: Pattern | None
    trouble: str = ""


@dataclass(frozen=True)
class MeasuredOn:
    """What a finished measurement was worked out from: (piece, edge) of the edges that were asked for, and the names of
    parameters and measurements."""

    edges: tuple[tuple[str, str], ...] = ()
    numbers: tuple[str, ...] = ()


@dataclass(frozen=True)
class Pattern:
    """A lesson worked for one body and one set of values. `finished` measurements are (title, mm), `over` says which
    body measurement one of them goes over: (title, measurement), so that its ease can be told. `start` are the pieces
    of the block it began with; `tries` the try-ons that change values, with the drafts before and after; `measured_on`
    tells of each finished measurement, in their order, what it was worked out from."""

    lesson: LessonInfo
    body: Body
    values: tuple[ParameterValue, ...]
    pieces: tuple[Piece, ...]
    strips: tuple[Strip, ...]
    steps: tuple[StepRecord, ...]
    sewing: tuple[SewRecord, ...]
    finished: tuple[tuple[str, float], ...] = ()
    over: tuple[tuple[str, str], ...] = ()
    start: tuple[Piece, ...] = ()
    tries: tuple[Tried, ...] = ()
    measured_on: tuple[MeasuredOn, ...] = ()

    def piece(self, name: str) -> Piece:
        """The piece of that name; `KitError` with the nearest name otherwise."""
        return named(self.pieces, name, "piece")

    def strip(self, name: str) -> Strip:
        return named(self.strips, name, "strip")

    @cached_property
    def _handling(self) -> Mapping[tuple[str, int], list[Sentence]]:
        return handling(self.sewing, self, self.lesson.handling)

    def hints(self, operation: Operation) -> list[Sentence]:
        """How the cloth is handled in this operation of its sewing, where the draft itself tells."""
        if not self.lesson.handling:
            return []
        for record in self.sewing:
            for number, each in enumerate(record.operations):
                if each is operation:
                    return self._handling.get((record.key, number), [])
        return []

    def value(self, name: str) -> float:
        """A parameter's value (mm for lengths)."""
        for value in self.values:
            if value.name == name:
                return value.value
        raise KitError(f"there is no parameter '{name}'.", do=near(name, [value.name for value in self.values]))
