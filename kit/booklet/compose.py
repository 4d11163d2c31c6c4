"""From a worked lesson and its notebook to the booklet's model. Pure: no page, no file is written here."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import fields, is_dataclass, replace

from markupsafe import Markup
from nbformat import NotebookNode

from kit.body.body import NOBODY
from kit.booklet.audience import Audience, cells_for, for_buyers
from kit.booklet.author import cover_picture, photos_for, video_marks
from kit.booklet.buying import Shopping, lay_pictures, lengths, lengths_by_size, shopping
from kit.booklet.care import care
from kit.booklet.choosing import choosing
from kit.booklet.fetch import LessonFolder
from kit.booklet.fit_notes import fit_notes
from kit.booklet.fitting_notes import fitting_links, fitting_notes
from kit.booklet.flow import flow, numbers
from kit.booklet.forms import PX, SCREEN, Form, PictureRoom
from kit.booklet.garment_shown import ON_BODY_SHARES, cover_views, finished_picture, for_whom, on_body
from kit.booklet.handover import Handover
from kit.booklet.html import contents
from kit.booklet.live_at import live_at
from kit.booklet.live_values import fill_title, live
from kit.booklet.marking import marking
from kit.booklet.measuring import measuring, said
from kit.booklet.model import (
    Booklet,
    BookletPart,
    Cover,
    DraftStep,
    IndexEntry,
    PieceCard,
    SewStep,
    ShownPhoto,
    Table,
    Words,
)
from kit.booklet.pictures import Inks, Picture, picture
from kit.booklet.setting import Setter
from kit.booklet.tables import (
    body_table,
    choice_table,
    cloth,
    cut_sentence,
    cut_table,
    ease_table,
    finished_table,
    measured_table,
    size_table,
    steady,
    strip_size,
    strip_table,
)
from kit.booklet.theme_file import BookTheme, picture_theme
from kit.booklet.words import fill_markdown, fill_text
from kit.booklet.worksheets import worksheets
from kit.cloth.cut_list import cut_list
from kit.grammar import knowing
from kit.language import alphabetical, language_tag, naming, say
from kit.lesson.pattern import Pattern
from kit.picture.legend import HIGH, WIDE, legend
from kit.picture.stretch_gauge import stretch_gauge
from kit.picture.thumbnails import thumbnails
from kit.proof import Finding
from kit.prose import about_minutes, cautions, terms
from kit.prose.readings import ruling_of
from kit.rulers import ruled
from kit.wording.dates import date_said

_MOST = 6  # findings that fit on the cover
_PRINTING = ("alone", "squares", "rest", "join", "check")
_READING = ("inks", "cloths", "ticks")


def compose(
    given: Handover,
    notebook: NotebookNode,
    folder: LessonFolder,
    findings: Iterable[Finding] = (),
    form: Form = SCREEN,
    look: BookTheme | None = None,
    bought: Shopping | None = None,
    audience: Audience = "class",
    address: str = "",
    marked: bool = False,
) -> Booklet:
    """The booklet of a worked lesson in one `form` and the author's `look`. `folder` is where its pictures may be read;
    `findings` are the proof's; `bought` its lays and lengths, when they are known already. What only a class wants is
    left out for "buyers" (kit/booklet/audience.py); `address` is where the lesson lives on the web ("": nowhere).
    `marked`: live numbers in words tell what they are (kit/booklet/live_values.py).
    Raises `KitError` when a piece cannot be drawn with its allowances."""
    cells = cells_for(notebook, audience)
    with naming(dict(given.names)), knowing(dict(given.genders)), ruled(ruling_of(given.pattern)):
        bought = bought or shopping(given)
        return _composed(given, cells, folder, findings, form, look or BookTheme(), bought, audience, address, marked)


def _composed(
    given: Handover,
    notebook: NotebookNode,
    folder: LessonFolder,
    findings: Iterable[Finding],
    form: Form,
    look: BookTheme,
    bought: Shopping,
    audience: Audience,
    address: str,
    marked: bool,
) -> Booklet:
    pattern = given.pattern
    info = pattern.lesson
    inks = Inks.of(picture_theme(look), form)
    setter = _setter(given, notebook, folder, form, inks, marked)
    order = flow(pattern, notebook, setter)
    cards = _cards(pattern, form, inks)
    texts = _texts((order.drafting, order.sewing, order.closing), order.opening, cards)
    book = Booklet(
        title=say("booklet.title", title=info.title),
        language=language_tag(),
        edition=info.edition,
        slug=info.slug,
        cover=_cover(pattern, findings, form, inks, cover_picture(info, folder), look.logo),
        worn=pattern.body != NOBODY,
        time=_time(pattern),
        on_body=None,
        rights_first=True,
        opening=order.opening,
        films=tuple(video.address for video in info.videos),
        cautions=tuple((caution.title, caution.text) for caution in cautions(pattern)),
        reading=_reading(pattern, form),
        legend=(),
        measuring=measuring(given, form, inks),
        choosing=choosing(given),
        size_tables=_split(size_table(given), form),
        body_table=body_table(given),
        finished_tables=_split(finished_table(given), form),
        finished_picture=finished_picture(pattern, form, inks),
        ease_table=ease_table(pattern, steady(given)),
        choices=choice_table(pattern),
        cloth=replace(
            cloth(pattern, lengths(pattern, bought), _split(lengths_by_size(pattern, bought), form)),
            gauge=_gauge(pattern, form, inks),
        ),
        lays=lay_pictures(pattern, bought, form, inks),
        cut_table=cut_table(pattern),
        marking=marking(pattern),
        measured_table=measured_table(pattern),
        strip_table=strip_table(pattern),
        cards=cards,
        printing=tuple(say(f"booklet.printing_{key}") for key in _PRINTING),
        drafting=order.drafting,
        worksheet=worksheets(pattern, numbers(pattern, notebook), form, inks),
        sewing=order.sewing,
        fittings=fitting_notes(given, form, inks, numbers(pattern, notebook)),
        fit_changes=fit_notes(pattern, form, inks),
        care=care(pattern),
        variations=info.variations,
        closing=order.closing,
        terms=tuple((term.term, term.meaning) for term in terms(texts)),
        index=_index(pattern, numbers(pattern, notebook)),
        licence=info.licence,
        credits=info.credits,
        left_out=(*given.notes, *dict.fromkeys(folder.left_out)),
        live_at=live_at(address, given) if address else None,
    )
    if audience == "buyers":
        book = for_buyers(book)
    left, rights = _room_left(book, setter), _rights_height(book, setter)
    first = form.screen or left - rights >= form.depth * ON_BODY_SHARES[0]
    shown = on_body(pattern, form, inks, left - rights if first else left)
    book = replace(book, on_body=shown, rights_first=first)
    return replace(book, legend=_legend(book, inks))


def _time(pattern: Pattern) -> str:
    """How long all the sewing takes, roughly; nothing where there is none."""
    minutes = sum(operation.minutes(pattern) for record in pattern.sewing for operation in record.operations)
    return about_minutes(minutes) if minutes else ""


def _room_left(book: Booklet, setter: Setter) -> float:
    """mm of height that the words about the design and the contents leave of their page."""
    form = setter.form
    words = sum(setter.text_height(str(each.html.striptags()), 140.0) + 9.0 for each in book.opening)
    count = len(contents(book))
    lines = setter.text_height("x", form.measure, 1.2) + count * setter.content_height(count)
    return form.depth - setter.part_head("x") - words - lines - 18.0


def _rights_height(book: Booklet, setter: Setter) -> float:
    """mm that rights and thanks take, with the space above them."""
    texts = (book.licence, " ".join(book.credits), say("booklet.made_with"))
    return 8.0 + sum(setter.text_height(text, setter.form.measure) for text in texts if text)


def _legend(book: Booklet, inks: Inks) -> tuple[Picture, ...]:
    """An example of each sign in the pictures that do not explain their own, its words as its caption."""
    shown = (
        book.cover,
        book.on_body,
        book.finished_picture,
        book.cards,
        book.drafting,
        book.worksheet,
        book.sewing,
        book.fittings,
        book.fit_changes,
    )
    used = frozenset[str]().union(*(each.signs for each in _pictures(shown)))
    room = PictureRoom(WIDE * PX, HIGH * PX)
    return tuple(picture(each.drawing, f"legend-{each.sign}", room, inks, each.said) for each in legend(used))


def _pictures(part: object) -> Iterator[Picture]:
    """Every picture in a part of the booklet."""
    if isinstance(part, Picture):
        yield part
    elif isinstance(part, tuple):
        for each in part:
            yield from _pictures(each)
    elif is_dataclass(part) and not isinstance(part, type):
        for field in fields(part):
            yield from _pictures(getattr(part, field.name))


def _reading(pattern: Pattern, form: Form) -> tuple[str, ...]:
    """How to read the booklet; once, that its lengths are converted where they were thought in the other system."""
    info = pattern.lesson
    first, *rest = (say(f"booklet.reading_{key}") for key in _READING if key != "ticks" or form.screen)
    units = [] if info.alone else [say("booklet.reading_units")]
    if info.own and info.own != info.units:
        units.append(say(f"booklet.reading_own_{info.own}"))
    return (first, *([" ".join(units)] if units else []), *rest)


def _split(table: Table | None, form: Form) -> tuple[Table, ...]:
    return table.split(form.columns) if table else ()


def _setter(
    given: Handover, notebook: NotebookNode, folder: LessonFolder, form: Form, inks: Inks, marked: bool
) -> Setter:
    pattern = given.pattern
    links = fitting_links(given)
    known = replace(live(pattern, numbers(pattern, notebook)), marked=marked)

    def fill(text: str, values: Sequence[tuple[str, float, str]], where: str) -> Markup:
        return fill_text(text, values, known, folder, where)

    def markdown(source: str, attachments: dict[str, object]) -> Markup:
        return fill_markdown(source, known, folder, attachments=attachments, level=1)

    def title(text: str) -> str:
        return fill_title(text, known)

    return Setter(
        pattern,
        form,
        inks,
        fill,
        markdown,
        title,
        lambda key: photos_for(key, pattern, folder),
        lambda key: video_marks(key, pattern),
        lambda key, number: links.get((key, number), ""),
    )


def _cover(
    pattern: Pattern, findings: Iterable[Finding], form: Form, inks: Inks, photo: ShownPhoto | None, logo: str
) -> Cover:
    info = pattern.lesson
    facts = [(say("booklet.drafted_for"), for_whom(pattern))]
    facts += [(say("booklet.lengths_in"), say(f"booklet.{info.units}_{'only' if info.alone else 'first'}"))]
    facts += [(say("booklet.edition"), " · ".join(filter(None, (info.edition, date_said(info.date)))))]
    if info.level:
        facts.append((say("booklet.for_whom"), info.level))
    troubles = [_finding(finding) for finding in findings if finding.level == "error"]
    if len(troubles) > _MOST:
        rest = len(troubles) - _MOST + 1
        troubles = [*troubles[: _MOST - 1], say("booklet.more_findings", count=rest)]
    views = cover_views(pattern, form, inks, small=photo is not None, troubled=bool(troubles))
    return Cover(
        title=info.title,
        summary=info.summary,
        author=info.author,
        views=views,
        facts=tuple(facts),
        troubles=tuple(troubles),
        photo=photo,
        logo=logo,
    )


def _finding(finding: Finding) -> str:
    where = f"{finding.where}: " if finding.where else ""
    return f"{where}{finding.what} {finding.do}".strip()


def _cards(pattern: Pattern, form: Form, inks: Inks) -> tuple[PieceCard, ...]:
    """Every cut part with its picture, all at one scale, and how it is cut; a strip with its size."""
    cuts = cut_list(pattern)
    sizes = {strip.name: strip_size(strip, pattern.lesson.units) for strip in pattern.strips}
    across = form.cards_across(len(pattern.pieces) + len(pattern.strips))
    width = (form.measure - 5 * (across - 1)) / across - 1.0
    room = PictureRoom(width * PX, min(52.0, form.depth * 0.26) * PX * form.letters)
    return tuple(
        PieceCard(
            small.number,
            small.name,
            small.title,
            (
                *(
                    cut_sentence(cut, pattern.lesson.units)
                    for cut in cuts
                    if cut.number == small.number and cut.title == small.title
                ),
                *([sizes[small.name]] if small.name in sizes else []),
            ),
            picture(
                small.drawing, f"piece-{small.number}-{small.name}", PictureRoom(room.width, 2 * room.height), inks
            ),
        )
        for small in thumbnails(pattern, room, form.letters)
    )


def _gauge(pattern: Pattern, form: Form, inks: Inks) -> Picture | None:
    """What the stretch of the cloth is measured on; None for woven cloth."""
    if not pattern.lesson.stretch:
        return None
    drawing = stretch_gauge(pattern.lesson.stretch, pattern.lesson.units)
    room = PictureRoom(form.measure * PX, 34.0 * PX)
    return picture(drawing, "stretch-gauge", room, inks, say("booklet.stretch_gauge_note"))


def _index(pattern: Pattern, at: dict[str, int]) -> tuple[IndexEntry, ...]:
    """Every parameter and body measurement with the steps that use it, by name."""
    labels = {one.name: one.said for one in pattern.lesson.measurements}
    labels |= {value.name: value.label for value in pattern.values}
    found: dict[str, list[tuple[int, str]]] = {}
    for step in pattern.steps:
        for name in dict.fromkeys((*step.uses, *(name for name, _, _ in step.values))):
            if name in labels or name in pattern.body:
                found.setdefault(said(labels.get(name, name)), []).append((at[step.key], step.key))
    for record in pattern.sewing:
        for name, _, _ in record.values:
            if name in labels:
                found.setdefault(said(labels[name]), []).append((at[record.key], record.key))
    return tuple(
        IndexEntry(name, tuple(dict.fromkeys(steps)))
        for name, steps in sorted(found.items(), key=lambda item: alphabetical(item[0]))
    )


def _texts(parts: Iterable[BookletPart], words: Iterable[Words], cards: Iterable[PieceCard]) -> list[str]:
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
    found += [cut for card in cards for cut in card.cuts]
    return found
