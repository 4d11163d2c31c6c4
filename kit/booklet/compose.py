"""From a worked lesson and its notebook to the booklet's model. Pure: no page, no file is written here."""

from __future__ import annotations

from collections.abc import Iterable

from nbformat import NotebookNode

from kit.booklet.fetch import LessonFolder
from kit.booklet.flow import flow
from kit.booklet.handover import Handover
from kit.booklet.measuring import measuring
from kit.booklet.model import Booklet, Cover, DraftStep, Part, PieceCard, SewStep, Words
from kit.booklet.pictures import COVER, Picture, picture
from kit.booklet.tables import (
    body_table,
    choice_table,
    cloth,
    cut_sentence,
    cut_table,
    finished_table,
    size_table,
    strip_table,
)
from kit.cloth.cut_list import cut_list
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Dimension
from kit.picture.flat import laid_flat
from kit.picture.legend import legend
from kit.picture.piece_sheet import piece_drawing
from kit.proof import Finding
from kit.prose import cautions, terms

READING = (
    "Heavy lines in the accent ink are new in that step; thin grey lines stand from before; dashed pale lines are "
    "taken away.",
    "Lengths come in both systems. Work in one of them from beginning to end; each is rounded on its own.",
    "Cloth is drawn with a tint and a pattern, as in the key below.",
)
PRINTING = (
    "Print the first pattern page alone, at 100 % or “actual size”. Switch off “fit to page” and “shrink”.",
    "Measure its test squares: one is 100 mm (10 cm), the other 4 in along each side. If either is off, find the "
    "scaling setting of your printer before you print on.",
    "Print the rest. The plan on the first page shows where each page goes: by row and column.",
    "Cut each page along its trim line on two sides only, lay it over its neighbour so that the joining marks "
    "meet, and tape it.",
    "Check one long measure on the taped sheet against this booklet before you cut into cloth.",
)

_MOST = 6  # findings that fit on the cover


def compose(given: Handover, notebook: NotebookNode, folder: LessonFolder, findings: Iterable[Finding] = ()) -> Booklet:
    """The booklet of a worked lesson. `folder` is where its pictures may be read; `findings` are the proof's.
    Raises `KitError` when a piece cannot be drawn with its allowances."""
    pattern = given.pattern
    order = flow(pattern, notebook, folder)
    texts = _texts(pattern, (order.drafting, order.sewing, order.closing), order.opening)
    info = pattern.lesson
    return Booklet(
        title=f"{info.title} – instruction booklet",
        language="en",
        edition=info.edition,
        cover=_cover(pattern, findings),
        opening=order.opening,
        cautions=tuple((caution.title, caution.text) for caution in cautions(pattern)),
        terms=tuple((term.term, term.meaning) for term in terms(texts)),
        reading=READING,
        size_table=size_table(given),
        body_table=body_table(given),
        measuring=measuring(given),
        finished_table=finished_table(given),
        finished_picture=_finished_picture(pattern),
        choices=choice_table(pattern),
        cloth=cloth(pattern),
        cut_table=cut_table(pattern),
        strip_table=strip_table(pattern),
        cards=_cards(pattern),
        legend=picture(legend(), "legend", 620, 260, alt="Key to the cloth patterns used in the pictures."),
        drafting=order.drafting,
        sewing=order.sewing,
        closing=order.closing,
        printing=PRINTING,
        left_out=(*given.notes, *dict.fromkeys(folder.left_out)),
    )


def _cover(pattern: Pattern, findings: Iterable[Finding]) -> Cover:
    info = pattern.lesson
    first = "centimetres, then inches" if info.units == "cm" else "inches, then centimetres"
    facts = [("Drafted for", pattern.body.said if _is_size(pattern) else pattern.body.name)]
    facts += [("Lengths in", first), ("Edition", " · ".join(filter(None, (info.edition, info.date))))]
    if info.level:
        facts.append(("For whom", info.level))
    troubles = [_finding(finding) for finding in findings if finding.level == "error"]
    if len(troubles) > _MOST:
        rest = len(troubles) - _MOST + 1
        troubles = [*troubles[: _MOST - 1], f"And {rest} more: run `lessonkit check`, or see findings.json."]
    return Cover(
        title=info.title,
        summary=info.summary,
        author=info.author,
        front=picture(laid_flat(pattern, "front"), "cover-front", 600, 440, paper=COVER),
        back=picture(laid_flat(pattern, "back"), "cover-back", 230, 190, "Back", paper=COVER),
        facts=tuple(facts),
        troubles=tuple(troubles),
    )


def _finished_picture(pattern: Pattern) -> Picture | None:
    """The garment laid flat with its width and length, where fronts and backs make a garment of it."""
    drawing = laid_flat(pattern, "back", pattern.lesson.units)
    if not any(isinstance(item, Dimension) for item in drawing.items):
        return None
    return picture(drawing, "finished", 300, 220, "Laid flat, seen from the back")


def _is_size(pattern: Pattern) -> bool:
    return len(pattern.body.name) <= 4 and " " not in pattern.body.name


def _finding(finding: Finding) -> str:
    where = f"{finding.where}: " if finding.where else ""
    return f"{where}{finding.what} {finding.do}".strip()


def _cards(pattern: Pattern) -> tuple[PieceCard, ...]:
    cuts = cut_list(pattern)
    return tuple(
        PieceCard(
            piece.number,
            piece.title,
            tuple(cut_sentence(cut) for cut in cuts if cut.number == piece.number and cut.how != "strip"),
            picture(piece_drawing(piece, pattern, pattern.lesson.units), f"piece-{piece.number}", 178, 150),
        )
        for piece in sorted(pattern.pieces, key=lambda piece: piece.number)
    )


def _texts(pattern: Pattern, parts: Iterable[Part], words: Iterable[Words]) -> list[str]:
    """Every text a reader meets, to look for words that want explaining."""
    found = [str(block.html) for block in words]
    for part in parts:
        for block in part.blocks:
            if isinstance(block, Words):
                found.append(str(block.html))
            elif isinstance(block, DraftStep):
                found += [block.title, str(block.text)]
            elif isinstance(block, SewStep):
                found += [block.title, str(block.text), *(operation.text for operation in block.operations)]
    found += [cut_sentence(cut) for cut in cut_list(pattern)]
    return found
