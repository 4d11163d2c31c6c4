"""All that can be asked for beside the booklet: pages of one size, of several or nested, a projector's sheet, and files
for other programs. Everything is made before anything is written."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from kit.cloth.yardage import Yardage
from kit.diagnostic import message
from kit.errors import KitError, known_near
from kit.language import say
from kit.lesson.lengthen_lines import with_lengthen_lines
from kit.lesson.no_paper import no_paper
from kit.lesson.pattern import Pattern
from kit.paper.dxf_file import dxf_text
from kit.paper.export import pattern_text
from kit.paper.head import head_room
from kit.paper.nested import Nest, lay_nest, nest
from kit.paper.nested_pages import nested_pages
from kit.paper.papers import A0, Paper
from kit.paper.printing import file_name, print_files
from kit.paper.projector import projector_pdf, projector_sheet
from kit.paper.request import PageRequest
from kit.paper.sheet import GAP, Sheet
from kit.paper.svg_file import svg_text
from kit.piece.unfold import unfolded
from kit.units import length

FILES = ("svg", "dxf", "json")
_SIZE = re.compile(r"^\s*([\d.]+)\s*(mm|cm|m|in)?\s*[x\N{MULTIPLICATION SIGN}]\s*([\d.]+)\s*(mm|cm|m|in)\s*$")

Progress = Callable[[str], None]


@dataclass(frozen=True)
class RangeRequest:
    """What is wanted of the sizes: `pages` as the printer's request says; `nested` lays all sizes over one another,
    `each` writes every size by itself as well; `projector` adds a sheet for a projector, of `projector_size` (mm) or
    fitted; `files` are kinds among "svg", "dxf", "json"."""

    pages: PageRequest
    nested: bool = False
    each: bool = False
    projector: bool = False
    projector_size: tuple[float, float] | None = None
    files: tuple[str, ...] = ()


def read_files(text: str) -> tuple[str, ...]:
    """ "svg,dxf" as kinds of file. Raises `KitError` for one that is not known."""
    kinds = tuple(dict.fromkeys(part.strip().lower() for part in text.split(",") if part.strip()))
    for kind in kinds:
        if kind not in FILES:
            raise KitError(message("paper.no_file_kind", kind=kind), where="--files", do=known_near(kind, FILES))
    return kinds


def read_sizes(text: str) -> tuple[str, ...]:
    """ "W1,W4" or "all" as names of sizes."""
    return tuple(dict.fromkeys(part.strip() for part in text.split(",") if part.strip()))


def read_sheet(text: str) -> tuple[float, float] | None:
    """ "1500x900mm" or "60x40in" as width and height in mm, None for "fitted". Raises `KitError`."""
    if text.strip().lower() in ("", "fitted"):
        return None
    found = _SIZE.match(text.lower())
    if found is None:
        raise KitError(message("paper.not_a_sheet", text=text), where="--projector", do=message("paper.not_a_sheet_do"))
    unit = found[4]
    return float(length(f"{found[1]} {found[2] or unit}", "--projector")), float(
        length(f"{found[3]} {unit}", "--projector")
    )


def range_files(
    patterns: Sequence[Pattern],
    chart: Sequence[str],
    asked: RangeRequest,
    progress: Progress | None = None,
    bought: Sequence[Yardage] = (),
) -> dict[str, bytes]:
    """The files by name. `patterns` are one for each size, small to large; `chart` names all sizes of the lesson.
    With several sizes names end in the size ("pages-a4-w4.pdf") or in "sizes" where they are nested. `bought` is the
    cloth to buy in each of the sizes, where it is known. Raises `KitError` for what cannot be made."""
    tell = progress or (lambda text: None)
    made: dict[str, bytes] = {}
    several = len(patterns) > 1
    without = _without(patterns)
    nested = asked.nested and several and any(p.name not in without for each in patterns for p in each.pieces)
    if nested:
        made.update(_nested(patterns, chart, asked, tell))
    for pattern in patterns:
        tail = f"-{plain_size(pattern.body.name)}" if several else ""
        if several:
            tell(say("paper.doing_size", size=pattern.body.name))
        if not nested or asked.each:
            for name, data in print_files(pattern, asked.pages, tell).items():
                made[_with(name, tail)] = data
            made.update(_drawings(_whole([pattern], asked.pages), chart, asked, tail))
        if "json" in asked.files:
            made[f"pattern{tail}.json"] = pattern_text(pattern, bought).encode("utf-8")
        if asked.projector:
            tell(say("paper.doing_projector"))
            whole = _whole([pattern], asked.pages)[0]
            laid = projector_sheet(whole, asked.projector_size)
            made[f"projector{tail}-light.pdf"] = projector_pdf(laid, whole)
            made[f"projector{tail}-dark.pdf"] = projector_pdf(laid, whole, dark=True)
    return made


def laid_nest(made: Nest, paper: Paper, request: PageRequest) -> Sheet:
    """The nests laid for fewest pages of `paper`; on sheets and rolls with room for a title block."""
    ways = request.ways(paper)
    if paper.kind == "page":
        limit = max(A0.width, 3 * max(way.step[0] for way in ways))
        return lay_nest(made, (paper,), GAP, limit, request)
    rooms = [head_room(request.enlarged(way)) for way in ways]
    head = max(room[0] for room in rooms), max(room[1] for room in rooms)
    return lay_nest(made, (paper,), GAP, max(way.area[0] for way in ways), request, head)


def _nested(patterns: Sequence[Pattern], chart: Sequence[str], asked: RangeRequest, tell: Progress) -> dict[str, bytes]:
    whole = _whole(patterns, asked.pages)
    made = nest(whole, chart, _without(patterns))
    out: dict[str, bytes] = {}
    for paper in asked.pages.papers:
        tell(say("paper.doing_nested", paper=paper.said, sizes=made.said))
        laid = laid_nest(made, paper, asked.pages)
        out[_with(file_name(paper, asked.pages), "-sizes")] = nested_pages(made, laid, paper, asked.pages)
    out.update(_drawings(whole, chart, asked, "-sizes"))
    return out


def _without(patterns: Sequence[Pattern]) -> frozenset[str]:
    """Names of pieces that have no paper in any size."""
    bare = [{piece.name for piece in no_paper(pattern)} for pattern in patterns]
    has_paper = {
        piece.name
        for pattern, names in zip(patterns, bare, strict=True)
        for piece in pattern.pieces
        if piece.name not in names
    }
    return frozenset(set().union(*bare) - has_paper)


def _drawings(patterns: Sequence[Pattern], chart: Sequence[str], asked: RangeRequest, tail: str) -> dict[str, bytes]:
    """SVG and DXF of one sheet, at full scale."""
    kinds = {"svg": svg_text, "dxf": dxf_text}
    wanted = [kind for kind in asked.files if kind in kinds]
    if not wanted:
        return {}
    made = nest(patterns, chart)
    laid = lay_nest(made, (A0,))
    return {f"pattern{tail}.{kind}": kinds[kind](made, laid).encode("utf-8") for kind in wanted}


def _whole(patterns: Sequence[Pattern], pages: PageRequest) -> list[Pattern]:
    if not pages.whole:
        return list(patterns)
    lined = [with_lengthen_lines(pattern) for pattern in patterns]
    return [replace(pattern, pieces=tuple(unfolded(piece) for piece in pattern.pieces)) for pattern in lined]


def _with(name: str, tail: str) -> str:
    stem, dot, kind = name.rpartition(".")
    return f"{stem}{tail}{dot}{kind}"


def plain_size(name: str) -> str:
    """A size as it ends the names of its files: "38/40" is "38-40"."""
    return re.sub(r"[^a-z0-9]+", "-", name.lower()).strip("-") or "size"
