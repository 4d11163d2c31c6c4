"""What a booklet says, as a value: made from a pattern and the notebook's cells, before any page exists."""

from __future__ import annotations

from dataclasses import dataclass, field

from markupsafe import Markup

from kit.booklet.pictures import Picture


@dataclass(frozen=True)
class Cover:
    """The first page. `facts` are (label, text) pairs; `troubles` are error findings in words, shown under a
    "Proof failed" banner."""

    title: str
    summary: str
    author: str
    front: Picture | None
    back: Picture | None
    facts: tuple[tuple[str, str], ...]
    troubles: tuple[str, ...] = ()


@dataclass(frozen=True)
class Table:
    """A table of texts: `head`, `rows` (the first cell names the row), the index of the `marked` column or
    row, and a `note` under it."""

    title: str
    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    marked: int = -1
    note: str = ""


@dataclass(frozen=True)
class Tape:
    """One measurement the lesson uses: its `number` in the figure, its name, how it is taken, and the reader's
    own `value` (empty for a size of the chart), `estimated` when nobody measured it."""

    number: int
    name: str
    note: str
    value: str = ""
    estimated: bool = False


@dataclass(frozen=True)
class Measuring:
    """The page that tells how to measure: the figure from both sides, where it shows something, and the tapes."""

    front: Picture | None
    back: Picture | None
    tapes: tuple[Tape, ...]


@dataclass(frozen=True)
class PieceCard:
    """One pattern piece among the thumbnails: `cuts` are sentences such as "Cut 1 on the fold"."""

    number: int
    title: str
    cuts: tuple[str, ...]
    picture: Picture


@dataclass(frozen=True)
class Words:
    """A teacher's markdown, as safe HTML."""

    html: Markup


@dataclass(frozen=True)
class DraftStep:
    """A numbered drafting step: its text with live numbers, its `numbers` (label, text), its picture, which
    goes `across` the page when it is wide."""

    number: int
    key: str
    title: str
    text: Markup
    numbers: tuple[tuple[str, str], ...]
    picture: Picture
    across: bool = False


@dataclass(frozen=True)
class Operation:
    """One operation of a sewing step: its sentences, and a picture of each stage worth showing."""

    text: str
    pictures: tuple[Picture, ...]
    why: str = ""


@dataclass(frozen=True)
class SewStep:
    """A numbered sewing step: the teacher's own words, then its operations in order."""

    number: int
    key: str
    title: str
    text: Markup
    operations: tuple[Operation, ...]
    time: str = ""
    words: str = "before"


Block = Words | DraftStep | SewStep


@dataclass(frozen=True)
class Part:
    """A run of blocks under one heading."""

    title: str
    blocks: tuple[Block, ...]


@dataclass(frozen=True)
class Cloth:
    """Cloth and notions. `lengths` is the shopping table; `words` the lesson's own advice on cloth."""

    words: str
    lengths: Table | None
    notions: tuple[str, ...]
    tools: tuple[str, ...] = ()
    note: str = ""


@dataclass(frozen=True)
class Booklet:
    """A whole booklet, in the order it is printed."""

    title: str
    language: str
    edition: str
    cover: Cover
    opening: tuple[Words, ...]
    cautions: tuple[tuple[str, str], ...]
    terms: tuple[tuple[str, str], ...]
    reading: tuple[str, ...]
    size_table: Table | None
    body_table: Table | None
    measuring: Measuring | None
    finished_table: Table | None
    finished_picture: Picture | None
    choices: Table | None
    cloth: Cloth
    cut_table: Table
    strip_table: Table | None
    cards: tuple[PieceCard, ...]
    legend: Picture | None
    drafting: Part
    sewing: Part
    closing: Part
    printing: tuple[str, ...]
    left_out: tuple[str, ...] = field(default=())
