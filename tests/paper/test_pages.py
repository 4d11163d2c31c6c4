"""Pattern pages measured in what a printer would get: the PDFs rendered by poppler, cut and taped in software."""

from __future__ import annotations

import re
import subprocess
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import lru_cache
from io import BytesIO
from pathlib import Path as FilePath

import numpy as np
import pikepdf
import pytest
import shapely

from kit.geometry import Point
from kit.paper.first_page import front
from kit.paper.gauge import BAR, gauge_place, square_sides
from kit.paper.head import head_squares
from kit.paper.page_place import PLACE, find_places
from kit.paper.pages import RING, joints, page_origin, pages_pdf, plan
from kit.paper.papers import A4, LETTER, paper
from kit.paper.pdf_pen import MM
from kit.paper.plan import PagePlan, Tile, all_tiles
from kit.paper.printing import laid_for, print_files
from kit.paper.request import PageRequest
from kit.paper.sheet import Sheet, sheet_content, sheet_pdf

from .conftest import make_garment

Render = Callable[..., list[np.ndarray]]


@dataclass(frozen=True)
class Made:
    """A request with one paper, and all that came of it."""

    request: PageRequest
    laid: Sheet
    content: bytes
    pdf: bytes
    pages: PagePlan

    @property
    def dots(self) -> int:
        """Dots a millimetre to render it with."""
        return 10 if self.request.papers[0].kind == "page" else 5

    @property
    def printed(self) -> tuple[float, float]:
        across, down = self.request.enlarged(self.pages.paper)
        return 1 / across, 1 / down


@lru_cache(maxsize=32)
def make(request: PageRequest) -> Made:
    garment, paper = make_garment(), request.papers[0]
    laid = laid_for(garment, paper, request)
    content = sheet_content(laid, garment)
    return Made(request, laid, content, pages_pdf(laid, garment, paper, request), plan(laid, paper, request))


CASES = {
    "a4": PageRequest((A4,)),
    "letter butt": PageRequest((LETTER,), joining="butt"),
    "a4 or letter, printer 97 and 98.5 %": PageRequest((paper("a4-or-letter"),), printer_scale=(0.97, 0.985)),
    "a3 upright, narrow margins": PageRequest((paper("a3"),), orientation="upright", margins=(6.0, 6.0)),
    "tabloid butt, printer 103 %": PageRequest((paper("tabloid"),), joining="butt", printer_scale=(1.03, 1.03)),
    "300x500mm whole": PageRequest((paper("300x500mm"),), whole=True),
    "letter half": PageRequest((LETTER,), class_scale=0.5),
    "135x175mm quarter": PageRequest((paper("135x175mm"),), class_scale=0.25),
    "a0": PageRequest((paper("a0"),)),
    "roll-36in": PageRequest((paper("roll-36in"),)),
    "roll-914mm, printer 97 %": PageRequest((paper("roll-914mm"),), printer_scale=(0.97, 0.97)),
}
EVERY = pytest.mark.parametrize("case", CASES)
SOME = pytest.mark.parametrize("case", ["a4", "letter butt"])


# ---- scale -------------------------------------------------------------------------------------------------


def lines_across(profile: np.ndarray) -> list[float]:
    """Centres of the dark lines in a profile of darkness, in pixels, by centre of gravity."""
    dark = np.flatnonzero(profile > 0.05)
    runs = np.split(dark, np.flatnonzero(np.diff(dark) > 1) + 1)
    return [float(np.average(run + 0.5, weights=profile[run])) for run in runs if len(run)]


def squares(made: Made) -> list[tuple[int, float, float, float]]:
    """Page (from 1), left and top in mm from the page's upper left, and side of both test squares."""
    held = made.pages.paper
    sides = [side for side, _, _ in square_sides(made.request)]
    if made.laid.head is None:
        room = front(held, made.request)
        spots = [(spot.page + 1, spot.x, spot.y + spot.height) for spot in (room.metric, room.inch)]
    else:
        page = next(
            number
            for number, each in enumerate(made.pages.tiles, 1)
            if each.left <= made.laid.head[0] < each.right and each.bottom <= made.laid.head[1] < each.top
        )
        x, y = page_origin(made.pages.tiles[page - 1], held)
        corner = (made.laid.head[0] + x, made.laid.head[1] + y)
        spots = [(page, *at) for at in head_squares(corner, made.request.enlarged(held))]
    return [(page, x, held.height - top, side) for (page, x, top), side in zip(spots, sides, strict=True)]


@EVERY
def test_squares_measure_true(case: str, render: Render) -> None:
    # 300 dots per inch of 25.4 mm exactly (1959). The aim is 0.1 mm over a page.
    made = make(CASES[case])
    dot = 25.4 / 300
    for page, left, top, side in squares(made):
        crop = (left - 1, top - 1, side + 2, side + 2)
        image = render(made.pdf, 300, page, page, printed=made.printed, crop=crop)[0]
        # A band between two ticks, read just over both sides, where no text stands.
        tick = side / (10 if side % 5 == 0 else 8)
        rows = slice(round((side + 1 - 0.75 * tick) / dot), round((side + 1 - 0.6 * tick) / dot))
        columns = slice(round((1 + 0.6 * tick) / dot), round((1 + 0.75 * tick) / dot))
        for profile in (image[rows].mean(axis=0), image[:, columns].mean(axis=1)):
            found = lines_across(profile)
            assert found[-1] * dot - found[0] * dot == pytest.approx(side, abs=0.1)


@pytest.mark.parametrize("printed", [1.0, 0.97])
@pytest.mark.parametrize("case", ["a4", "a4 or letter, printer 97 and 98.5 %"])
def test_the_gauge_reads_what_the_printer_does(case: str, printed: float, render: Render) -> None:
    # A printer that prints at 97 % puts the line named 97 at a ruler's 100 mm.
    made = make(CASES[case])
    spot = front(made.pages.paper, made.request).across
    across, _ = made.request.enlarged(made.pages.paper)
    # From the page as asked of the printer to what this printer makes of it.
    left, top = (spot.x + 2) * across * printed, made.pages.paper.height - spot.y - 6.5
    whole = render(made.pdf, 300, 1, 1, printed=(printed, 1 / made.request.enlarged(made.pages.paper)[1]))[0]
    dot = 25.4 / 300
    band = whole[round((top - 1.4) / dot) : round((top - 0.9) / dot), round((left - 1) / dot) :].mean(axis=0)
    lines = [at * dot for at in lines_across(band) if at * dot > 80]
    start = lines_across(band)[0] * dot
    ruler = [at - start for at in lines]
    assert min(abs(at - 100) for at in ruler) < 0.1
    nearest = min(range(94, 107), key=lambda share: abs(gauge_place(share) * printed - 100))
    assert nearest == round(printed * 100)
    assert gauge_place(100) == BAR


@EVERY
def test_every_box_is_the_paper(case: str) -> None:
    # ISO 32000-1:2008, 14.11.2: MediaBox, CropBox and TrimBox, here all the sheet of paper as it is bought.
    made = make(CASES[case])
    bought = made.request.papers[0]
    with pikepdf.open(BytesIO(made.pdf)) as document:
        for page in document.pages:
            width, height = (float(value) for value in list(page.mediabox)[2:])
            if bought.kind == "roll":
                assert width == pytest.approx(bought.width * MM, abs=1e-3)
                assert height == pytest.approx(made.pages.paper.height * made.request.enlarged(A4)[1] * MM, abs=1e-3)
            else:
                assert sorted((width, height)) == pytest.approx([bought.width * MM, bought.height * MM], abs=1e-3)
                assert (width > height) == made.pages.paper.landscape
            assert list(page.cropbox) == list(page.trimbox) == list(page.mediabox)


def test_sheet_page_is_the_sheet_at_full_size() -> None:
    made = make(CASES["a4"])
    with pikepdf.open(BytesIO(made.content)) as document:
        assert [float(v) for v in document.pages[0].mediabox] == pytest.approx(
            [0, 0, made.laid.width * MM, made.laid.height * MM], abs=1e-3
        )


# ---- put together again ------------------------------------------------------------------------------------


def grown(dark: np.ndarray, by: int = 1) -> np.ndarray:
    out = dark.copy()
    for _ in range(by):
        out[1:] |= out[:-1].copy()
        out[:-1] |= out[1:].copy()
        out[:, 1:] |= out[:, :-1].copy()
        out[:, :-1] |= out[:, 1:].copy()
    return out


def taped(made: Made, render: Render) -> tuple[np.ndarray, np.ndarray]:
    """The printed pages cut at their trim lines and laid together on a table, `made.dots` to the millimetre, the upper
    left of the sheet in its own; and where a page's own marks may lie."""
    held, laid, planned, dots = made.pages.paper, made.laid, made.pages, made.dots
    with pikepdf.open(BytesIO(made.pdf)) as document:
        before = len(document.pages) - len(planned.tiles)
    printed = render(made.pdf, made.dots * 25.4, before + 1, printed=made.printed)
    assert len(printed) == len(planned.tiles)
    right, bottom = max(each.right for each in planned.tiles), min(each.bottom for each in planned.tiles)
    table = np.zeros((round((laid.height - bottom) * dots) + 20, round(right * dots) + 20), dtype=np.float32)
    own = np.zeros(table.shape, dtype=bool)

    def box(x0: float, y0: float, x1: float, y1: float) -> tuple[slice, slice]:
        rows = max(0, round((laid.height - y1) * dots)), max(0, round((laid.height - y0) * dots))
        columns = max(0, round(x0 * dots)), max(0, round(x1 * dots))
        return slice(*rows), slice(*columns)

    for each, image in zip(planned.tiles, printed, strict=True):
        rows, columns = box(each.left, each.bottom, each.right, each.top)
        across, down = (round(value) for value in sheet_on(made, each))
        part = image[rows.start + down : rows.stop + down, columns.start + across : columns.stop + across]
        table[rows.start : rows.start + part.shape[0], columns.start : columns.start + part.shape[1]] = part
        for x in (each.left, each.right):
            own[box(x - 0.5, each.bottom, x + 0.5, each.top)] = True
        for y in (each.bottom, each.top):
            own[box(each.left, y - 0.5, each.right, y + 0.5)] = True
        if held.margin_y < 9:  # the caption stands inside
            own[box(each.left, each.bottom, each.right, each.bottom + 4.5)] = True
        # scissors beside a trim line
        x, y = (each.left + each.right) / 2, (each.bottom + each.top) / 2
        for at in ((each.left, y), (each.right, y), (x, each.top), (x, each.bottom)):
            own[box(at[0] - 12, at[1] - 12, at[0] + 12, at[1] + 12)] = True
    for at in find_places(laid, planned, marks_of(made)).values():
        own[box(at[0] - 1, at[1] - 1, at[0] + PLACE[0] + 1, at[1] + PLACE[1] + 1)] = True
    for link in joints(laid, planned):
        for x, y in link.marks:
            reach = RING + 5.5
            own[box(x - reach, y - reach, x + reach, y + reach)] = True
    if laid.head:
        x, y = laid.head
        own[box(x - 1, y - 1, x + laid.head_size[0] + 1, y + laid.head_size[1] + 1)] = True
    return table, own


def sheet_on(made: Made, each: Tile) -> tuple[float, float]:
    """Where the sheet's upper left lies on the page's picture, in dots from its upper left."""
    x, y = page_origin(each, made.pages.paper)
    return x * made.dots, (made.pages.paper.height - y - made.laid.height) * made.dots


def marks_of(made: Made):  # type: ignore[no-untyped-def]
    return [(link.after, mark) for link in joints(made.laid, made.pages) for mark in link.marks]


TAPED = ["a4", "letter butt", "a4 or letter, printer 97 and 98.5 %", "tabloid butt, printer 103 %", "letter half"]


@pytest.mark.parametrize("case", [*TAPED, "a3 upright, narrow margins", "a0", "roll-914mm, printer 97 %"])
def test_pages_cut_and_put_together_equal_the_sheet(case: str, render: Render) -> None:
    made = make(CASES[case])
    table, own = taped(made, render)
    whole = render(made.content, made.dots * 25.4)[0]
    high, wide = min(whole.shape[0], table.shape[0]), min(whole.shape[1], table.shape[1])
    assert (whole[high:] > 0.4).sum() == 0 and (whole[:, wide:] > 0.4).sum() == 0
    assert (table[high:] > 0.4)[~own[high:]].sum() == 0 and (table[:, wide:] > 0.4)[~own[:, wide:]].sum() == 0
    whole, table, own = whole[:high, :wide], table[:high, :wide], own[:high, :wide]
    drawn = whole > 0.4
    assert drawn.sum() > 10_000
    missing = drawn & ~grown(table > 0.15)
    assert missing.sum() == 0
    extra = (table > 0.4) & ~grown(whole > 0.15) & ~own
    assert extra.sum() == 0

    # Every stitch line within 0.1 mm of where the draft has it.
    offsets = stitch_offsets(made, table, made.pages.tiles)
    assert len(offsets) > 150
    assert np.abs(offsets).max() < 0.1


def stitch_offsets(made: Made, table: np.ndarray, tiles: Sequence[Tile] = ()) -> np.ndarray:
    """How far the printed stitch lines lie from the draft's, in mm of paper, measured square to them wherever a dash is
    printed and no other line is near. `tiles` are pages that were laid on the table to the nearest dot; what that took
    off is given back. Within 1 mm of a trim line, itself a line, only the comparison with the sheet counts."""
    rests = [tuple(value - round(value) for value in sheet_on(made, each)) for each in tiles]
    places, ways, dots = [], [], made.dots
    for placement in made.laid.placements:
        for edge in placement.piece.edges:
            if edge.name == placement.piece.fold:
                continue
            for distance in np.arange(4.0, edge.path.length - 4.0, 3.0):
                at, along = edge.path.at(distance), edge.path.tangent_at(distance)
                here = placement.motion(Point(at.x * placement.scale, at.y * placement.scale))
                way = placement.motion.vector(along)
                rest = next((rest for each, rest in zip(tiles, rests, strict=True) if on(each, here)), None)
                if rest is None and tiles:
                    continue
                rest = rest or (0.0, 0.0)
                places.append((here.x * dots + rest[0], (made.laid.height - here.y) * dots + rest[1]))
                ways.append((way.y, way.x))  # square to the line, y down
    steps = np.arange(-1.2, 1.201, 0.025) * dots
    x = np.array(places)[:, :1] + np.array(ways)[:, :1] * steps - 0.5
    y = np.array(places)[:, 1:] + np.array(ways)[:, 1:] * steps - 0.5
    x, y = x.clip(0, table.shape[1] - 2), y.clip(0, table.shape[0] - 2)
    column, row = x.astype(int), y.astype(int)
    u, v = x - column, y - row
    profile = (
        table[row, column] * (1 - u) * (1 - v)
        + table[row, column + 1] * u * (1 - v)
        + table[row + 1, column] * (1 - u) * v
        + table[row + 1, column + 1] * u * v
    )
    near = np.abs(steps) <= 0.4 * dots + (dots < 10)
    alone = (profile[:, ~near].max(axis=1) < 0.02) & (profile[:, near].max(axis=1) > 0.7)
    return (profile[alone] @ steps) / profile[alone].sum(axis=1) / dots


def on(each: Tile, place: Point) -> bool:
    return each.left + 1 < place.x < each.right - 1 and each.bottom + 1 < place.y < each.top - 1


def test_the_comparison_sees_a_page_a_fifth_of_a_millimetre_off(render: Render) -> None:
    made = make(CASES["a4"])
    whole = render(made.content, made.dots * 25.4)[0]
    dark = whole > 0.4
    assert (np.roll(dark, 3, axis=1) & ~grown(whole > 0.15)).sum() > 1000
    assert np.abs(stitch_offsets(made, np.roll(whole, 2, axis=1))).max() > 0.15


@EVERY
def test_both_pages_of_a_joint_carry_its_marks_at_the_same_place(case: str) -> None:
    made = make(CASES[case])
    found = joints(made.laid, made.pages)
    assert [link.number for link in found] == list(range(1, len(found) + 1))
    for link in found:
        assert len(link.marks) == 2
        for x, y in link.marks:
            for each in (link.before, link.after):
                assert each.left - 1e-9 <= x <= each.right + 1e-9
                assert each.bottom - 1e-9 <= y <= each.top + 1e-9


@SOME
def test_a_joining_mark_pulled_apart_or_pushed_along_does_not_close(case: str, render: Render) -> None:
    """The halves two pages bring make the ring when the pages lie right, and not when one is half a millimetre off in
    either direction."""
    made = make(CASES[case])
    link = next(link for link in joints(made.laid, made.pages) if link.upright)
    images = {}
    with pikepdf.open(BytesIO(made.pdf)) as document:
        before = len(document.pages) - len(made.pages.tiles)
    for each in (link.before, link.after):
        number = made.pages.tiles.index(each) + before + 1
        x, y = page_origin(each, made.pages.paper)
        at = link.marks[0][0] + x, made.pages.paper.height - (link.marks[0][1] + y)
        images[each.name] = render(made.pdf, 508, number, number, crop=(at[0] - 5, at[1] - 5, 10, 10))[0]
    first, second = images[link.before.name], images[link.after.name]
    middle = first.shape[1] // 2

    def met(along: int, apart: int) -> float:
        """How much of the diagonals and the ring meets across the cut."""
        left = first[:, middle - 8 - apart] > 0.4
        right = np.roll(second, along, axis=0)[:, middle + 8] > 0.4
        return float((left & grown(right[:, None], 1)[:, 0]).sum() / max(1, left.sum()))

    # Diagonals are mirror images about the centre: both sides agree when the pages lie right.
    assert met(0, 0) > 0.6
    assert met(10, 0) < 0.5 * met(0, 0)
    assert met(0, 10) < 0.5 * met(0, 0)


# ---- the file ----------------------------------------------------------------------------------------------


@SOME
def test_the_sheet_is_in_the_file_once(case: str) -> None:
    with pikepdf.open(BytesIO(make(CASES[case]).pdf)) as document:
        forms = {page.Resources.XObject["/FormXob.Sheet"].objgen for page in list(document.pages)[1:]}
        assert len(forms) == 1 and (0, 0) not in forms
        assert "/FormXob.Sheet" not in document.pages[0].Resources.get("/XObject", {})


@EVERY
def test_printing_is_asked_to_be_unscaled(case: str) -> None:
    # ISO 32000-1:2008, 12.2, table 150: PrintScaling None; PickTrayByPDFSize only where a tray may hold that size.
    made = make(CASES[case])
    with pikepdf.open(BytesIO(made.pdf)) as document:
        assert document.Root.ViewerPreferences.PrintScaling == "/None"
        assert bool(document.Root.ViewerPreferences.PickTrayByPDFSize) == (not made.request.papers[0].common)
        assert str(document.Root.Lang) == "en"
        assert "Tideline wrap top" in str(document.docinfo["/Title"])
        assert (
            len({(float(page.mediabox[2]), float(page.mediabox[3]), page.get("/Rotate")) for page in document.pages})
            == 1
        )


def test_files_are_sound(tmp_path: FilePath) -> None:
    made = make(CASES["a4"])
    files = {case: make(request).pdf for case, request in CASES.items()}
    files |= {"content": made.content, "sheet": sheet_pdf(made.content, made.laid, make_garment())}
    for name, data in files.items():
        path = tmp_path / f"{re.sub(r'[^a-z0-9]+', '-', name)}.pdf"
        path.write_bytes(data)
        said = subprocess.run(["qpdf", "--check", str(path)], capture_output=True, text=True)
        assert said.returncode == 0, said.stdout + said.stderr


@SOME
def test_fonts_are_embedded(case: str, tmp_path: FilePath) -> None:
    path = tmp_path / "pages.pdf"
    path.write_bytes(make(CASES[case]).pdf)
    lines = subprocess.run(["pdffonts", str(path)], capture_output=True, text=True, check=True).stdout.splitlines()[2:]
    assert lines
    for line in lines:
        assert re.search(r"\byes yes\b", line), f"not embedded: {line}"


@EVERY
def test_blank_pages_are_left_out_and_the_plan_says_so(case: str) -> None:
    made = make(CASES[case])
    things = shapely.union_all(made.laid.everything)
    touched = [
        each
        for each in all_tiles(made.laid.width, made.laid.height, made.pages.paper)
        if things.distance(shapely.box(each.left, each.bottom, each.right, each.top)) < 0.5
    ]
    assert list(made.pages.tiles) == touched


def test_blank_pages_are_told(tmp_path: FilePath) -> None:
    # Two small pieces far apart cannot share a page; what lies between is not printed.
    made = make(CASES["135x175mm quarter"])
    for case, one in ((case, make(request)) for case, request in CASES.items()):
        blank = one.pages.rows * one.pages.columns - len(one.pages.tiles)
        if blank and one.laid.head is None:
            assert f"{blank} blank" in text_of(one.pdf, tmp_path), case
    assert made.pages.tiles


def text_of(pdf: bytes, folder: FilePath, page: int = 0) -> str:
    path = folder / "text.pdf"
    path.write_bytes(pdf)
    span = ["-f", str(page), "-l", str(page)] if page else []
    return subprocess.run(
        ["pdftotext", "-raw", *span, str(path), "-"], capture_output=True, text=True, check=True
    ).stdout.replace("\n", " ")


def test_the_same_pattern_gives_the_same_bytes() -> None:
    garment, request = make_garment(), CASES["a4"]
    made = make(request)
    assert print_files(garment, request) == {"pages-a4.pdf": made.pdf}


@EVERY
def test_every_page_says_what_and_where_it_is(case: str, tmp_path: FilePath) -> None:
    made = make(CASES[case])
    with pikepdf.open(BytesIO(made.pdf)) as document:
        total = len(document.pages)
    before = total - len(made.pages.tiles)
    word = "sheet" if made.laid.head else "page"
    for number, each in enumerate(made.pages.tiles, before + 1):
        text = text_of(made.pdf, tmp_path, number)
        said = [f"{word} {number} of {total}", "Tideline wrap top", "size W4", "edition 2", "2026-11", "50 mm"]
        for part in [*said, f"row {each.row + 1}, column {each.column_letters}", *([each.name] if total > 1 else [])]:
            assert part in text, part


@pytest.mark.parametrize(("case", "name"), [("letter half", "half"), ("135x175mm quarter", "quarter")])
def test_class_scales_say_so_on_every_page(case: str, name: str, tmp_path: FilePath) -> None:
    made = make(CASES[case])
    with pikepdf.open(BytesIO(made.pdf)) as document:
        total = len(document.pages)
    room = front(made.pages.paper, made.request)
    for number in range(1, total + 1):
        assert f"{name} scale: not for cutting cloth" in text_of(made.pdf, tmp_path, number).lower(), number
    metric = 50 if name == "half" else 25
    said = " ".join(text_of(made.pdf, tmp_path, room.metric.page + 1).split())
    assert f"{metric} mm" in said and "100 mm" in said


@pytest.mark.parametrize("case", ["letter half", "135x175mm quarter"])
def test_class_pages_keep_their_text_readable(case: str) -> None:
    # Type of 6 points is the least that reading tests count as comfortable for adults (common practice, no source).
    made = make(CASES[case])
    sizes = [
        item.size * placement.scale
        for placement in made.laid.placements
        for item in placement.items
        if hasattr(item, "text")
    ]
    assert sizes and min(sizes) * 72 / 25.4 > 5.5


def test_a_printer_that_prints_small_gets_fewer_mm_a_page() -> None:
    plain, small = PageRequest((A4,)), PageRequest((A4,), printer_scale=(0.97, 0.97))
    for one, other in zip(plain.ways(A4), small.ways(A4), strict=True):
        assert other.step[0] < one.step[0] and other.step[1] < one.step[1]
        across, down = small.enlarged(other)
        assert (other.width * across, other.height * down) == pytest.approx((one.width, one.height))


def test_whole_pieces_are_as_large_as_two_halves() -> None:
    half, whole = make(CASES["a4"]).laid, make(CASES["300x500mm whole"]).laid
    for one, two in zip(half.placements, whole.placements, strict=True):
        area = [shapely.Polygon([(p.x, p.y) for p in each.outline]).area for each in (one, two)]
        assert area[1] == pytest.approx(area[0] * (2 if one.piece.fold else 1), rel=1e-3)
    assert not any("place on fold" in getattr(item, "text", "") for each in whole.placements for item in each.items)
