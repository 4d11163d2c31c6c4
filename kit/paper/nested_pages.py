"""Pages that hold several sizes: layers, a key on every page, and a page that says which pages a size needs.

Viewers that know layers show one size at a time; for the many that do not, every line carries its size's name and
look, and the key, which comes before the pages of the pattern, lists the pages of each size beside a small plan of
them, so that nobody prints more than needed.
"""

from __future__ import annotations

import math
from io import BytesIO

import pikepdf
from reportlab.pdfgen.canvas import Canvas

from kit.diagnostic import message
from kit.errors import KitError
from kit.geometry import Line, Point
from kit.language import say
from kit.lesson.no_paper import no_paper
from kit.paper.head import edition_line
from kit.paper.layers import Shelf, declared_in, size_ink, size_layers, size_look, stitch_layer
from kit.paper.nested import Nest, said_sizes, size_areas
from kit.paper.pages import plan, tile
from kit.paper.papers import Paper
from kit.paper.pdf_pen import MM, PLAIN, Ink, Look, draw, fitted, new_canvas, rule, text_width, wrap, write
from kit.paper.plan import PagePlan, plan_on
from kit.paper.request import PageRequest
from kit.paper.shared_lines import SharedPart
from kit.paper.sheet import Sheet, finish
from kit.paper.whole_words import nest_whole
from kit.paper.without_paper import name_with_fold
from kit.picture.drawing import Stroke
from kit.piece.rectangle import rectangle
from kit.units import both
from kit.wording.lists import strung

_ROW = 2.15
_SAMPLE = 17.0
_SQUARE = 6.0  # mm: the most that a page is high in a small plan
_NEEDED = 0.85  # its grey there, if it is needed
_NOTES = ("sizes_count", "sizes_shared", "sizes_bunch", "sizes_layers", "sizes_allowances", "sizes_print")


def nest_content(made: Nest, laid: Sheet) -> bytes:
    """A PDF of one page, exactly the sheet, with the nests alone, each size on its layer; what sizes share shows
    while any of them does."""
    target = BytesIO()
    title = say("paper.document", title=made.pattern.lesson.title, edition=edition_line(made.pattern))
    canvas = new_canvas(target, laid.width, laid.height, title)
    shelf = Shelf(size_layers(made.sizes) if made.several else ())
    looks = {thin: [size_look(place, thin=thin) for place in made.places] for thin in (False, True)}
    for each, placement in zip(made.pieces, laid.placements, strict=True):
        canvas.saveState()
        a, b, d, e, x, y = placement.matrix
        canvas.transform(a, d, b, e, x * MM, y * MM)
        for stitches, parts in ((True, each.stitches), (False, each.parts), (False, each.names), (False, each.orders)):
            for part in parts:
                with shelf.on(canvas, _layers(made, part, stitches)):
                    draw(canvas, part.items, _look(part, looks[each.thin], made.several))
        draw(canvas, each.text)
        canvas.restoreState()
    canvas.showPage()
    canvas.save()
    return shelf.placed(target.getvalue())


def nested_pages(made: Nest, laid: Sheet, paper: Paper, request: PageRequest | None = None) -> bytes:
    """Pages of `paper` with all sizes of `made`, which lies on the sheet as `laid`; the key, after the front pages,
    says which pages each size needs. Raises `KitError` for several sizes at a class scale."""
    asked = request or PageRequest((paper,))
    if made.several and not asked.full_size:
        raise KitError(
            message("paper.no_class_scale"),
            where="--scale",
            do=message("paper.no_class_scale_do"),
        )
    pages = plan(laid, paper, asked)
    made, laid = nest_whole(made, laid, pages, asked)
    pdf = tile(nest_content(made, laid), laid, made.pattern, paper, asked, int(made.several))
    if not made.several:
        return pdf
    with pikepdf.open(BytesIO(pdf)) as document:
        before = len(document.pages) - len(pages.tiles)
        held, enlarged = pages.paper, asked.enlarged(pages.paper)
        target = BytesIO()
        title = str(document.docinfo.get("/Title", ""))
        canvas = new_canvas(target, held.width * enlarged[0], held.height * enlarged[1], title)
        canvas.scale(*enlarged)
        key(canvas, made, held, before + 1)
        canvas.showPage()
        canvas.scale(*enlarged)
        _sizes_page(canvas, made, laid, pages, before + 1)
        canvas.showPage()
        canvas.save()
        with pikepdf.open(BytesIO(target.getvalue())) as own:
            form = document.copy_foreign(own.pages[0].as_form_xobject())
            for page in document.pages:
                page.add_resource(form, pikepdf.Name.XObject, pikepdf.Name.Sizes)
                page.contents_add(b"\nq /Sizes Do Q\n")
            document.pages.insert(before, own.pages[1])
            declared_in(document, size_layers(made.sizes))
            return finish(document, tray=not paper.common)


def pages_of_sizes(made: Nest, laid: Sheet, pages: PagePlan, before: int) -> dict[str, tuple[int, ...]]:
    """For each size the numbers of the pages that hold paper of it; `before` pages stand in front."""
    numbers = {(each.row, each.column): number for number, each in enumerate(pages.tiles, before + 1)}
    found = {}
    for place, name in enumerate(made.sizes):
        own = plan_on(size_areas(made, laid, place), laid.width, laid.height, pages.paper)
        at = [numbers[each.row, each.column] for each in own.tiles if (each.row, each.column) in numbers]
        found[name] = tuple(sorted(at))
    return found


def key(canvas: Canvas, made: Nest, held: Paper, page: int) -> None:
    """The look of every size in the margin at the right of a page, read from the side, in one or two rows; the whole
    key is on that `page`."""
    long = held.height - 2 * held.margin_y
    count = len(made.sizes)
    name = max(text_width(size, 1.5, bold=True) for size in made.sizes) + 1.5
    across = max(1, min(count, int(long // (name + _SAMPLE + 2.5))))
    step = long / across
    canvas.saveState()
    canvas.translate((held.width - held.margin_x) * MM, held.margin_y * MM)
    canvas.rotate(90)
    for i, (size, place) in enumerate(zip(made.sizes, made.places, strict=True)):
        row, column = divmod(i, across)
        x, y = column * step, -2.5 - _ROW * row
        write(canvas, size, x, y, 1.5, bold=True)
        rule(canvas, x + name, y + 0.75, x + step - 2.5, y + 0.75, size_ink(place))
    hint = say("paper.sizes_hint", page=page)
    low = -2.5 - _ROW * math.ceil(count / across)
    write(canvas, hint, long / 2, low, fitted(hint, 1.5, long), grey=0.25, anchor="middle")
    canvas.restoreState()


def ranges(numbers: tuple[int, ...]) -> str:
    """Page numbers as a printing dialogue takes them: "1-3, 7"."""
    runs: list[list[int]] = []
    for number in numbers:
        if runs and number == runs[-1][-1] + 1:
            runs[-1].append(number)
        else:
            runs.append([number])
    return ", ".join(str(run[0]) if len(run) == 1 else f"{run[0]}-{run[-1]}" for run in runs)


# ---- drawing -----------------------------------------------------------------------------------------------


def _layers(made: Nest, part: SharedPart, stitches: bool) -> tuple[str, ...]:
    """The layers a part belongs to; none when it is everybody's and always shown."""
    if not made.several or (len(part.sizes) == len(made.sizes) and not stitches):
        return ()
    names = [made.sizes[size] for size in part.sizes]
    return tuple(stitch_layer(name) if stitches else name for name in names)


def _look(part: SharedPart, looks: list[Look], several: bool) -> Look:
    return looks[part.sizes[0]] if several and len(part.sizes) == 1 else PLAIN


def _sizes_page(canvas: Canvas, made: Nest, laid: Sheet, pages: PagePlan, before: int) -> None:
    """The key: how to find one's size, every size's line, its pages, a small plan of them, and the strips. It is the
    last of the pages `before` those of the pattern."""
    paper = pages.paper
    left, right, y = paper.margin_x, paper.width - paper.margin_x, paper.height - paper.margin_y - 6
    write(canvas, say("paper.sizes_find"), left, y, 4.5, bold=True)
    y -= 7
    notes = (
        say("paper.sizes_hold", sizes=made.said, title=made.pattern.lesson.title),
        *(say(f"paper.{key}") for key in _NOTES),
    )
    for note in notes:
        for line in wrap(note, 2.2, right - left):
            write(canvas, line, left, y, 2.2)
            y -= 4.1
        y -= 0.8
    y -= 2
    needed = pages_of_sizes(made, laid, pages, before)
    middle, far = left + 18, left + 18 + max(50.0, (right - left) * 0.42)
    ends = middle - 3, far, right
    for x, end, heading in zip((left, middle, far + 5), ends, ("size", "line", "pages"), strict=True):
        said = say(f"paper.sizes_head_{heading}")
        write(canvas, said, x, y, fitted(said, 2.2, end - x, bold=True), bold=True)
    y -= 2
    rule(canvas, left, y, right, y, Ink(0.25))
    # The rows leave room for the small plans below, if they can.
    alike = len(set(needed.values()))
    in_row = max(1, int((right - left) // (pages.columns * 0.75 * _SQUARE + 8.0)))
    below = 18 + math.ceil(alike / in_row) * (pages.rows * 0.5 * _SQUARE + 8.0)
    strips = {strip.name for pattern in made.patterns for strip in pattern.strips}
    below += 5.0 + 3.8 * len(strips) if strips else 0.0
    high = min(9.0, max(5.2, (y - paper.margin_y - below) / (len(made.sizes) + 1)))
    for size, place in zip(made.sizes, made.places, strict=True):
        y -= high
        write(canvas, size, left, y, 3.0, bold=True)
        rule(canvas, middle, y + 1.3, far, y + 1.3, size_ink(place))
        numbers = (*range(1, before + 1), *needed[size])
        for line in wrap(ranges(numbers), 2.3, right - far - 5)[:2]:
            write(canvas, line, far + 5, y, 2.3)
    y -= high
    every = say("paper.sizes_all")
    write(canvas, every, left, y, fitted(every, 3.0, middle - 3 - left, bold=True), bold=True)
    draw(canvas, [Stroke((Line(Point(middle, y + 1.3), Point(far, y + 1.3)),), "cut")])
    write(canvas, say("paper.sizes_all_line"), far + 5, y, 2.3)
    y = _strips(canvas, made, left, right, y - 9, paper.margin_y)
    _plans(canvas, made, pages, needed, before, y - 4)


def _plans(
    canvas: Canvas, made: Nest, pages: PagePlan, needed: dict[str, tuple[int, ...]], before: int, top: float
) -> float:
    """A small plan of the pages for each size, those it needs grey and numbered; sizes that need the same share one.
    Gives where they end; nothing is drawn where the page has no room for them."""
    paper = pages.paper
    left, right = paper.margin_x, paper.width - paper.margin_x
    alike: dict[tuple[int, ...], list[int]] = {}
    for at, name in enumerate(made.sizes):
        alike.setdefault(needed[name], []).append(at)
    runs = [([made.sizes[at] for at in those], [made.places[at] for at in those]) for those in alike.values()]
    names = [say("paper.sizes_plan", sizes=said_sizes(*run)) for run in runs]
    for side in (_SQUARE, 0.75 * _SQUARE, 0.5 * _SQUARE):
        across = side * min(paper.width / paper.height, 1.5)
        wide = max(pages.columns * across, *(text_width(name, 2.4, bold=True) for name in names)) + 6.0
        in_row = max(1, int((right - left) // wide))
        high = pages.rows * side + 8.0
        deep = math.ceil(len(names) / in_row) * high
        if top - deep >= paper.margin_y:
            break
    else:
        return top
    canvas.saveState()
    canvas.setLineWidth(0.15 * MM)
    for at, (name, numbers) in enumerate(zip(names, alike, strict=True)):
        x, y = left + at % in_row * wide, top - at // in_row * high
        write(canvas, name, x, y - 2.4, 2.4, bold=True)
        for number, each in enumerate(pages.tiles, before + 1):
            corner = (x + each.column * across, y - 4.5 - (each.row + 1) * side)
            canvas.setFillGray(_NEEDED if number in numbers else 1.0)
            canvas.rect(corner[0] * MM, corner[1] * MM, across * MM, side * MM, stroke=1, fill=1)
            if number in numbers:
                size = min(2.0, 0.4 * across)
                write(canvas, str(number), corner[0] + across / 2, corner[1] + (side - size) / 2, size, anchor="middle")
    canvas.restoreState()
    return top - deep


def _strips(canvas: Canvas, made: Nest, left: float, right: float, y: float, bottom: float) -> float:
    """Strips and pieces cut without paper: once where all sizes have the same, else by size. Gives where they end."""
    lines = []
    laid = {nested.piece.name for nested in made.pieces}
    things: dict[str, tuple[str, dict[tuple[str, str], list[str]]]] = {}
    for pattern in made.patterns:
        own = [(strip.name, strip.title, strip.length, strip.width) for strip in pattern.strips]
        for piece in no_paper(pattern):
            if piece.name not in laid and (found := rectangle(piece)):
                own.append((piece.name, name_with_fold(piece), found.length, found.width))
        for name, title, length, width in own:
            cut = things.setdefault(name, (title, {}))[1]
            cut.setdefault((both(length), both(width)), []).append(pattern.body.name)
    for title, cut in things.values():
        if len(cut) == 1:
            ((one, other),) = cut
            lines.append(say("paper.strip_every", strip=title, length=one, width=other))
        else:
            by_size = [
                say("paper.strip_size", sizes=strung(names), length=one, width=other)
                for (one, other), names in cut.items()
            ]
            lines.append(say("paper.strip_sizes", strip=title, sizes=strung(by_size, "parted")))
    if not lines:
        return y
    write(canvas, say("paper.strips"), left, y, 2.4, bold=True)
    y -= 4.5
    for told in lines:
        for line in wrap(told, 2.0, right - left):
            if y < bottom:
                return y
            write(canvas, line, left, y, 2.0)
            y -= 3.8
    return y
