"""What a booklet says, as a value: made from a pattern and the notebook's cells, before any page exists."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from markupsafe import Markup

from kit.booklet.paging import Way
from kit.booklet.pictures import Picture


@dataclass(frozen=True)
class ShownPhoto:
    """A photo of the author's: a data: address, what it shows, and a caption."""

    address: str
    alt: str
    caption: str = ""


@dataclass(frozen=True)
class Cover:
    """The first page. `facts` are (label, text) pairs; `troubles` are error findings in words, shown under a
    "Proof failed" banner; `views` is the garment from the front and the back, which makes room for a `photo` of the
    author's where there is one."""

    title: str
    summary: str
    author: str
    views: Picture
    facts: tuple[tuple[str, str], ...]
    troubles: tuple[str, ...] = ()
    photo: ShownPhoto | None = None
    logo: str = ""


@dataclass(frozen=True)
class Table:
    """A table of texts: `head`, `rows` (the first cell names the row), the index of the `marked` column or
    row, and a `note` under it. `kind` is a style: "chart" sets a column for each size."""

    title: str
    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    marked: int = -1
    note: str = ""
    kind: str = "plain"

    def split(self, columns: int) -> tuple[Table, ...]:
        """The table as several with at most so many columns beside the first; the note stands under the last."""
        rest = len(self.head) - 1
        if rest <= columns:
            return (self,)
        parts = []
        for start in range(0, rest, columns):
            cut = slice(start + 1, start + 1 + columns)
            parts.append(
                replace(
                    self,
                    head=(self.head[0], *self.head[cut]),
                    rows=tuple((row[0], *row[cut]) for row in self.rows),
                    marked=self.marked - start if start <= self.marked < start + columns else -1,
                    note="" if start + columns < rest else self.note,
                )
            )
        return tuple(parts)

    def evenly(self, columns: int) -> tuple[Table, ...]:
        """The same in as few parts, none much wider than another.

        >>> wide = Table("", ("along", *"1234567"), (("off", *"abcdefg"),))
        >>> [part.head for part in wide.evenly(6)]
        [('along', '1', '2', '3', '4'), ('along', '5', '6', '7')]
        """
        rest = max(len(self.head) - 1, 1)
        return self.split(-(-rest // -(-rest // columns)))


@dataclass(frozen=True)
class Tape:
    """One measurement the lesson uses: its `number` in the figure, its name, how it is taken, and the reader's
    own `value` (empty for a size of the chart), `estimated` when nobody measured it; `key` is its name in code. One of
    the lesson's own is not `drawn` in the figure, where there is one."""

    number: int
    name: str
    note: str
    value: str = ""
    estimated: bool = False
    key: str = ""
    drawn: bool = True


@dataclass(frozen=True)
class Measuring:
    """The page that tells how to measure: the figure from both sides, where it shows something, and the tapes.
    `waist`: some begin or end at a tape tied round the waist."""

    front: Picture | None
    back: Picture | None
    tapes: tuple[Tape, ...]
    waist: bool = False


@dataclass(frozen=True)
class Marking:
    """Cutting out and marking: the `allowances` in one line, the `steps` in order, what is marked on which piece."""

    allowances: str
    steps: tuple[str, ...]
    table: Table | None


@dataclass(frozen=True)
class PieceCard:
    """One pattern piece among the thumbnails: `cuts` are sentences such as "Cut 1 on the fold"."""

    number: int
    name: str
    title: str
    cuts: tuple[str, ...]
    picture: Picture


@dataclass(frozen=True)
class Words:
    """A teacher's markdown, as safe HTML."""

    html: Markup
    breaks: bool = False


@dataclass(frozen=True)
class FilmMark:
    """Where a film shows a step: a clock reading and the address that begins there."""

    clock: str
    address: str


@dataclass(frozen=True)
class DraftStep:
    """A numbered drafting step: its text with live numbers, its `numbers` (label, text), its picture, which
    goes `across` the page when it is wide. `breaks`: it begins a new page."""

    number: int
    key: str
    title: str
    text: Markup
    numbers: tuple[tuple[str, str], ...]
    picture: Picture
    across: bool = False
    photos: tuple[ShownPhoto, ...] = ()
    marks: tuple[FilmMark, ...] = ()
    breaks: bool = False


@dataclass(frozen=True)
class ToldOperation:
    """One operation of a sewing step: its sentences, and a picture of each stage worth showing. `breaks`: it begins a
    new page. `fitting` is what a try-on refers to: the key of its note, or of the chapter. `way` is how its pictures
    stand (`kit.booklet.paging`); `parted`: some of them stand on the next page."""

    text: str
    pictures: tuple[Picture, ...]
    why: str = ""
    breaks: bool = False
    fitting: str = ""
    way: Way = ""
    parted: bool = False


@dataclass(frozen=True)
class SewStep:
    """A numbered sewing step: the teacher's own words, then its operations in order."""

    number: int
    key: str
    title: str
    text: Markup
    operations: tuple[ToldOperation, ...]
    time: str = ""
    words: str = "before"
    photos: tuple[ShownPhoto, ...] = ()
    marks: tuple[FilmMark, ...] = ()
    breaks: bool = False


Block = Words | DraftStep | SewStep


@dataclass(frozen=True)
class BookletPart:
    """A run of blocks under one heading."""

    title: str
    blocks: tuple[Block, ...]


@dataclass(frozen=True)
class ClothAdvice:
    """Cloth and notions. `advice` are (label, text) pairs: fibre, weight, drape, what to avoid, washing first; `gauge`
    is what its stretch is measured on."""

    words: str
    advice: tuple[tuple[str, str], ...]
    lengths: Table | None
    by_size: tuple[Table, ...]
    notions: tuple[str, ...]
    tools: tuple[str, ...] = ()
    gauge: Picture | None = None


@dataclass(frozen=True)
class SheetPiece:
    """What one step of the worksheet asks of one piece, or of `several` that are alike: sentences `first`, the new
    `points` to mark (letter, the rest of its sentence), the `lines` to draw, the distances of each curve, sentences
    `last`, and the piece with its letters."""

    title: str
    first: tuple[str, ...]
    points: tuple[tuple[str, str], ...]
    lines: tuple[str, ...]
    curves: tuple[Table, ...]
    last: tuple[str, ...]
    picture: Picture | None
    several: bool = False


@dataclass(frozen=True)
class SheetStep:
    """One step of the hand-drafting worksheet, piece by piece; `key` is empty for the starting block."""

    number: int
    key: str
    title: str
    pieces: tuple[SheetPiece, ...]
    strips: tuple[str, ...] = ()


@dataclass(frozen=True)
class FittingNote:
    """What a try-on changed: the sentences, and each changed piece before and after. `key` is what a reference finds it
    by, `step` the sewing step in which it is tried on: (number, key)."""

    title: str
    date: str
    why: str
    lines: tuple[str, ...]
    pictures: tuple[Picture, ...]
    key: str = ""
    step: tuple[int, str] | None = None


@dataclass(frozen=True)
class FitNote:
    """A fit change made by hand: what it is called, how it is done, and its picture."""

    key: str
    title: str
    text: str
    picture: Picture


@dataclass(frozen=True)
class LiveAt:
    """Where the lesson lives on the web: the `address` that opens it, how it is `shown` on paper, a sentence on what it
    is for, and its `code` for a phone's camera."""

    address: str
    shown: str
    said: str
    code: Picture


@dataclass(frozen=True)
class IndexEntry:
    """A measure and the steps that use it: (step number, key)."""

    name: str
    steps: tuple[tuple[int, str], ...]


@dataclass(frozen=True)
class Booklet:
    """A whole booklet, in the order it is printed; `apart` is a worksheet that is a file of its own."""

    title: str
    language: str
    edition: str
    slug: str
    cover: Cover
    worn: bool
    time: str
    on_body: Picture | None
    rights_first: bool
    opening: tuple[Words, ...]
    films: tuple[str, ...]
    cautions: tuple[tuple[str, str], ...]
    reading: tuple[str, ...]
    legend: tuple[Picture, ...]
    measuring: Measuring | None
    choosing: tuple[str, ...]
    size_tables: tuple[Table, ...]
    body_table: Table | None
    finished_tables: tuple[Table, ...]
    finished_picture: Picture | None
    ease_table: Table | None
    choices: Table | None
    cloth: ClothAdvice
    lays: tuple[Picture, ...]
    cut_table: Table
    marking: Marking
    measured_table: Table | None
    strip_table: Table | None
    cards: tuple[PieceCard, ...]
    printing: tuple[str, ...]
    drafting: BookletPart
    worksheet: tuple[SheetStep, ...]
    sewing: BookletPart
    fittings: tuple[FittingNote, ...]
    fit_changes: tuple[FitNote, ...]
    care: tuple[str, ...]
    variations: tuple[tuple[str, str], ...]
    closing: BookletPart
    terms: tuple[tuple[str, str], ...]
    index: tuple[IndexEntry, ...]
    licence: str
    credits: tuple[str, ...]
    left_out: tuple[str, ...] = field(default=())
    apart: tuple[SheetStep, ...] = field(default=())
    live_at: LiveAt | None = None
