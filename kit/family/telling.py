"""A comparison in words: tables and sentences, for a terminal, a page or a cell."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from kit.body.measures import said as measure_said
from kit.cloth.lay import EIGHTH, TENTH, price
from kit.family.compared import STYLES, Comparison, Difference, Of, PieceDifference, StepDifference, reads
from kit.family.edition import Edition
from kit.language import say
from kit.lesson.moved import moved_pieces
from kit.picture.drawing import Drawing
from kit.picture.fitting import fitting_drawing
from kit.piece.piece import Piece, Strip
from kit.prose.fitting import piece_words
from kit.rulers import reading
from kit.units import System, both, marked
from kit.wording.dates import date_said
from kit.wording.names import edge_said


@dataclass(frozen=True)
class Rows:
    """A table: its `head`, and `rows` of as many texts."""

    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


@dataclass(frozen=True)
class PieceTold:
    """A piece: its `title`, sentences on how its lines moved, its measures, and the picture that lays one on the other
    where a line moved."""

    title: str
    words: tuple[str, ...]
    rows: Rows | None
    drawing: Drawing | None


@dataclass(frozen=True)
class StepTold:
    """A step that reads otherwise: its title, the sentences that were and those that are."""

    title: str
    was: tuple[str, ...]
    now: tuple[str, ...]


@dataclass(frozen=True)
class ToldComparison:
    """A comparison as it is read: `lead` stands under the title; `measures` and `notions` are None where none differ;
    `drafting` and `sewing` are the steps."""

    title: str
    lead: str
    measures: Rows | None
    notions: StepTold | None
    pieces: tuple[PieceTold, ...]
    drafting: tuple[StepTold, ...]
    sewing: tuple[StepTold, ...]


def told(found: Comparison, names: tuple[str, str], system: System, *, errata: bool = False) -> ToldComparison:
    """The comparison in the language spoken now; `names` say what is compared, lengths read in `system` first.
    `errata`: for buyers of the earlier edition, who know nothing of the lesson's parameters."""
    before, after = names
    lead = say("family.nothing") if found.nothing else ""
    title = say("family.title", title=found.after.title, before=before, after=after)
    measures = [each for each in found.measures if not (errata and each.of in ("value", "body"))]
    if errata:
        edition = {"title": found.after.title, "before": found.before.edition, "after": found.after.edition}
        title = say("family.errata", edition)
        lead = lead or say("family.errata_lead", edition)
    if found.before.steps and found.before.language != found.after.language:
        lead = f"{lead} {say('family.other_language')}".strip()
    notions = StepTold("", *found.notions) if any(found.notions) else None
    return ToldComparison(
        title,
        lead,
        _rows(found, measures, names, system),
        notions,
        tuple(_piece(found, each, names, system) for each in found.pieces),
        tuple(_step(each) for each in found.steps if each.kind == "draft"),
        tuple(_step(each) for each in found.steps if each.kind == "sew"),
    )


def called(before: Edition, after: Edition) -> tuple[str, str]:
    """What two editions are called beside each other: by their titles where these differ, else by edition and date,
    else the first and the second."""
    if before.title != after.title:
        return before.title, after.title

    def name(edition: Edition) -> str:
        if edition.date:
            return say("family.edition_dated", edition=edition.edition, date=date_said(edition.date))
        return say("family.edition", edition=edition.edition)

    names = name(before), name(after)
    return (say("family.first"), say("family.second")) if names[0] == names[1] else names


def lines(page: ToldComparison) -> Iterator[str]:
    """The page as lines of text, for a terminal."""
    yield page.title
    if page.lead:
        yield page.lead
    if page.measures:
        yield from ("", say("family.measures"), *_columns(page.measures))
    if page.notions:
        yield from ("", say("family.notions"), *_both(page.notions))
    if page.pieces:
        yield from ("", say("family.pieces"))
    for piece in page.pieces:
        yield from (f"  {piece.title}", *(f"    {words}" for words in piece.words))
        if piece.rows:
            yield from (f"  {line}" for line in _columns(piece.rows))
    for heading, steps in (("family.drafting", page.drafting), ("family.sewing", page.sewing)):
        if steps:
            yield from ("", say(heading))
        for step in steps:
            yield from (f"  {step.title}", *_both(step))


def _columns(table: Rows) -> Iterator[str]:
    wide = [max(map(len, column)) for column in zip(table.head, *table.rows, strict=True)]
    for row in (table.head, *table.rows):
        yield "  " + "  ".join(text.ljust(width) for text, width in zip(row, wide, strict=True)).rstrip()


def _both(step: StepTold) -> Iterator[str]:
    for heading, words in (("family.was", step.was), ("family.now", step.now)):
        if words:
            yield f"    {say(heading)} {' '.join(words)}"


# ---- parts ------------------------------------------------------------------------------------------------


def _rows(found: Comparison, differences: Sequence[Difference], names: tuple[str, str], system: System) -> Rows | None:
    if not differences:
        return None
    rows = tuple(
        (_called(found, each), *(_value(value, each, system) for value in (each.before, each.after)), _by(each, system))
        for each in differences
    )
    return Rows((say("family.measure"), *names, say("family.difference")), rows)


def _called(found: Comparison, difference: Difference) -> str:
    """What a measure is called; the later edition's word counts."""
    return measure_called(difference.of, difference.name, difference.piece, (found.after, found.before))


def measure_called(of: Of, name: str, piece: str, editions: Sequence[Edition]) -> str:
    """What the measure of `name` is called, by the first of `editions` that has it; the piece it is on is not named."""
    if of == "body":
        own = next((said for edition in editions for own, said in edition.own_measures if own == name), "")
        return capital(own or measure_said(name))
    if of == "cloth":
        cloth, _, width = name.partition(" ")
        system = editions[0].units if editions else "cm"
        wide = both(float(width), system, "finished")
        return say("family.of_cloth", cloth=say(f"booklet.cloth_{cloth}"), width=wide)
    said = next((said for edition in editions if (said := _said(edition, of, name, piece))), name)
    return capital(said) if of in ("value", "finished") else say(f"family.of_{of}", name=capital(said))


def _said(edition: Edition, of: Of, name: str, piece: str) -> str:
    """What one edition calls it; empty where it has it not."""
    if piece:
        on = next((each for each in edition.pieces if each.name == piece), None)
        if on is None:
            return ""
        if of == "dart":
            return next((dart.label for dart in on.darts if dart.name == name), "")
        return next((edge_said(edge) for edge in on.edges if edge.name == name), "")
    if of == "value":
        return next((value.label for value in edition.values if value.name == name), "")
    titled: tuple[Strip | Piece, ...] = (*edition.strips, *edition.pieces) if of != "finished" else ()
    return next((each.title for each in titled if each.name == name), "")


def _value(value: float | None, found: Difference, system: System) -> str:
    return reads(value, found.kind, system, found.of) or "–"


def _by(found: Difference, system: System) -> str:
    """How much more or less it is, with its sign, in the system read first: what the two readings differ by, so that
    the row adds up. Nothing where one edition has none."""
    if found.before is None or found.after is None:
        return ""
    sign = "+" if found.after > found.before else "−"
    if found.kind != "length":
        return sign + reads(abs(found.after - found.before), found.kind, system)
    if found.of == "cloth":
        return _more_cloth(found.before, found.after, system)
    style = STYLES.get(found.of, "draft")
    one, two = (reading(value, system, style)[system] for value in (found.before, found.after))
    return sign + marked(abs(two - one), system)


def _more_cloth(before: float, after: float, system: System) -> str:
    """The tenths of a metre, or the eighths of a yard, that are bought more or less."""
    at = 0 if system == "cm" else 1
    more = price(after)[at] - price(before)[at]
    if not more:
        return ""
    text = both(abs(more) * (TENTH, EIGHTH)[at], system, "shop").partition(" (")[0]
    return ("+" if more > 0 else "−") + text


def _piece(found: Comparison, piece: PieceDifference, names: tuple[str, str], system: System) -> PieceTold:
    words = piece_words(found.before, found.after, piece.name, system)
    # The sentences name the piece, and stand under its title here; a language may put a blank before the colon.
    heading = re.compile(rf"{re.escape(piece.title)}\s*:\s*")
    words = tuple(capital(heading.sub("", text, count=1)) if heading.match(text) else text for text in words)
    rows = _rows(found, piece.differences, names, system)
    return PieceTold(piece.title, words, rows, laid_over(found, piece.name, names, system))


def laid_over(found: Comparison, piece: str, names: tuple[str, str], system: System) -> Drawing | None:
    """The piece of both editions over each other, what differs measured; None where no line differs or one edition
    lacks it."""
    if piece not in moved_pieces(found.before, found.after):
        return None
    if any(all(each.name != piece for each in edition.pieces) for edition in (found.before, found.after)):
        return None
    drawing = fitting_drawing(found.before, found.after, piece, system)
    said = {"piece": found.after.piece(piece).title, "before": names[0], "after": names[1]}
    words = " ".join(piece_words(found.before, found.after, piece, system))
    return replace(drawing, title=say("family.picture", said), alt=say("family.picture_alt", {**said, "words": words}))


def capital(text: str) -> str:
    """The text with a capital letter at its beginning."""
    return text[:1].upper() + text[1:]


def _step(step: StepDifference) -> StepTold:
    title = step.title if step.state == "changed" else say(f"family.step_{step.state}", title=step.title)
    return StepTold(title, step.before, step.after)
