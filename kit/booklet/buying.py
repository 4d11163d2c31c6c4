"""What cloth to buy, for every width and size, and how the pieces are laid on it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from kit.booklet.forms import PHONE, PX, Form, PictureRoom
from kit.booklet.handover import Handover
from kit.booklet.model import Table
from kit.booklet.pictures import Inks, Picture, picture
from kit.cloth.kept_lays import Kept
from kit.cloth.lay import Lay
from kit.cloth.range_lay import range_lays
from kit.cloth.yardage import Amount, Yardage, amounts, falls, notes
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Drawing
from kit.picture.lay import lay_drawing, shared_scale
from kit.picture.theme import THEME
from kit.units import System, both, stacked

FOLDED = " *"
"""Beside a length that suffices on folded cloth too."""
_LEAST, _SCREEN_LEAST = 9.4, 10.5
"""The smaller of the two sizes of text in a layout, in CSS px: on paper a little over 7 pt, on a screen 11 px once
letters are enlarged for the form."""


@dataclass(frozen=True)
class Shopping:
    """The `lays` of the reader's size and the `amounts` of every size: worked out once for all forms of a booklet.
    `sizes` are those of the chart, smallest first."""

    lays: tuple[Lay, ...]
    amounts: tuple[Yardage, ...]
    sizes: tuple[str, ...] = ()


def shopping(given: Handover, kept: Kept | None = None) -> Shopping:
    """Lays and lengths for a worked lesson; what is `kept` is not laid again. `KitError` when a piece has no allowances
    yet."""
    pattern = given.pattern
    mine, sizes = pattern.body.name, given.sizes or (pattern,)
    others = () if any(size.body.name == mine for size in sizes) else (pattern,)
    laid = range_lays(sizes, others, kept)
    shown = tuple(lay for each in laid if each.size == mine for lay in each.lays)
    return Shopping(shown, amounts(laid, (*sizes, *others)), tuple(size.body.name for size in sizes))


def lengths(pattern: Pattern, bought: Shopping) -> Table | None:
    """The length of each cloth to buy in each width, in the reader's size."""
    system, mine = pattern.lesson.units, pattern.body.name
    rows: list[tuple[str, ...]] = []
    for entry in bought.amounts:
        amount = entry.of(mine)
        laid = _laid(amount) or amount.trouble
        length = amount.shown(system) or say("booklet.too_narrow")
        rows.append((say(f"booklet.cloth_{entry.cloth}"), both(entry.width, system, "finished"), length, laid))
    if not rows:
        return None
    head = tuple(say(f"booklet.{key}") for key in ("cloth", "width", "to_buy", "laid"))
    return Table(say("booklet.cloth_to_buy"), head, tuple(rows), note=" ".join(notes(pattern)))


def lengths_by_size(pattern: Pattern, bought: Shopping) -> Table | None:
    """The same for every size of the lesson, marked where it may also be folded; None when there is only one."""
    system = pattern.lesson.units
    sizes = [amount.size for amount in bought.amounts[0].amounts] if bought.amounts else []
    if len(sizes) < 2:
        return None
    rows = tuple(
        (
            say(
                "booklet.cloth_wide",
                cloth=say(f"booklet.cloth_{entry.cloth}"),
                width=both(entry.width, system, "finished"),
            ),
            *(_in_size(amount, system) for amount in entry.amounts),
        )
        for entry in bought.amounts
    )
    mine = pattern.body.name
    marked = sizes.index(mine) if mine in sizes else -1
    note = " ".join(_size_notes(bought))
    return Table(say("booklet.lengths_by_size"), (say("booklet.size"), *sizes), rows, marked, note, kind="chart")


def _laid(amount: Amount) -> str:
    """How it may be laid, in words."""
    ways = [say(f"booklet.laid_{fold}") for fold in amount.folds]
    return say("booklet.laid_either", folded=ways[0], flat=ways[1]) if len(ways) == 2 else "".join(ways)


def _in_size(amount: Amount, system: System) -> str:
    if amount.trouble:
        return "–"
    return stacked(amount.length, system, "shop") + (FOLDED if _folded(amount) else "")


def _folded(amount: Amount) -> bool:
    return any(fold != "flat" for fold in amount.folds)


def _size_notes(bought: Shopping) -> Iterator[str]:
    if any(_folded(amount) for entry in bought.amounts for amount in entry.amounts):
        yield say("lay.may_fold", sign=FOLDED.strip())
    for smaller, larger in dict.fromkeys(pair for entry in bought.amounts for pair in falls(entry, bought.sizes)):
        yield say("lay.falls", smaller=smaller, larger=larger)


def lay_pictures(pattern: Pattern, bought: Shopping, form: Form, inks: Inks) -> tuple[Picture, ...]:
    """A picture of each cutting layout, all at one scale and upright."""
    if not bought.lays:
        return ()
    room = PictureRoom((form.measure - 1) * PX, (form.depth - 24) * PX)
    wide = _drawn(pattern, bought, room, inks)
    narrow = _drawn(pattern, bought, PHONE, inks) if inks.phone else [None] * len(wide)
    high = PictureRoom(room.width, 4 * room.height)
    return tuple(
        picture(drawing, f"lay-{i}", high, inks, narrow=small, phone=PHONE.times(4))
        for i, (drawing, small) in enumerate(zip(wide, narrow, strict=True))
    )


def _drawn(pattern: Pattern, bought: Shopping, room: PictureRoom, inks: Inks) -> list[Drawing]:
    """The layouts at one scale, for a picture as wide as `room` with the letters that all pictures have there."""
    letters = inks.theme.texts["small"].size / THEME.texts["small"].size
    given = PictureRoom(room.width / letters, room.height / letters)
    scale = shared_scale(bought.lays, given)
    least = _SCREEN_LEAST if inks.phone else _LEAST
    return [lay_drawing(lay, pattern, room=given, scale=scale, least=least) for lay in bought.lays]
