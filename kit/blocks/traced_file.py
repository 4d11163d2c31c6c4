"""A block or traced top of one's own, from an SVG or DXF file of a general drawing program.

`read_traced` reads the file and numbers each outline's corners; `TracedFile.top` names the edges between them, lays
centre line and waistline on the axes, and gives a `Traced`, where a lesson may start.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path as FilePath
from typing import Any

from kit.blocks.joining import JoinedStrokes, join, loop_from_corner
from kit.blocks.strokes import UNITS, Sketch, SketchStroke
from kit.blocks.traced import Traced
from kit.blocks.traced_outline import EdgeEnd, TracedOutline, laid, named_edges
from kit.errors import KitError, near
from kit.geometry import Path
from kit.piece.role import edge_role
from kit.units import Length, length, show_metric

_TINY = 20.0
_LARGEST = 3000.0
_SHARE = 0.005
_LEAST = 0.5
_BIGGEST_FILE = 50_000_000


@dataclass(frozen=True, repr=False)
class TracedFile:
    """The outlines of a drawing, corners numbered; print it to see them. `messages` tell what was assumed, cleaned
    or left out while reading."""

    file: str
    outlines: tuple[TracedOutline, ...]
    messages: tuple[str, ...] = ()
    open: tuple[str, ...] = field(default=(), repr=False)

    def __repr__(self) -> str:
        lines = [self.file]
        for outline in self.outlines:
            lines.append(f"  outline {outline.said}")
            n = len(outline.corners)
            for i in range(n):
                p = outline.corner(i + 1)
                run = (outline.corners[(i + 1) % n] - outline.corners[i]) % outline.path.length or outline.path.length
                lines.append(
                    f"    corner {i + 1}: x {show_metric(p.x)}, y {show_metric(p.y)}; "
                    f"{show_metric(run)} to corner {(i + 1) % n + 1}"
                )
        return "\n".join([*lines, *(f"  {message}" for message in self.messages)])

    def outline(self, which: int | str) -> TracedOutline:
        """The outline of that number or name. `KitError` for none, or for a name that several share."""
        found = [o for o in self.outlines if o.number == which or which in o.names[:1]]
        found = found or [o for o in self.outlines if which in o.names]
        if len(found) == 1:
            return found[0]
        what = f"{len(found)} outlines are called '{which}'" if found else f"no closed outline is called {which!r}"
        raise KitError(
            f"{what}; the file has {', '.join(o.said for o in self.outlines)}.{' ' if self.open else ''}"
            f"{' '.join(self.open)}",
            where=self.file,
            do="Say which outline is which piece by number: outlines={'front': 1}.",
        )

    def top(
        self,
        title: str,
        pieces: Mapping[str, Mapping[str, tuple[EdgeEnd, EdgeEnd]]],
        *,
        waist: Any = None,
        centre: Any = None,
        outlines: Mapping[str, int | str] | None = None,
        points: Mapping[str, Mapping[str, EdgeEnd]] | None = None,
        lines: Mapping[str, Mapping[str, tuple[EdgeEnd, EdgeEnd]]] | None = None,
        size: str = "",
        roles: Mapping[str, str] | None = None,
    ) -> Traced:
        """The named top. `pieces` gives for each piece its edges, each by the two corners (or places) it runs
        between; they must follow each other once around the outline. `outlines` says which outline is which piece,
        by number or by name in the file, where the piece's own name does not.

        `centre` lies at x = 0: the name of a straight edge, which is turned upright with the piece to its right; two
        corners, lower and upper, whose line is; one corner; or "drawn" to keep the drawing's x. Where nothing is said
        it is the edge that is the centre, by its name or by `roles`, which are given as `Traced` takes them. `waist`
        lies at y = 0: a corner, an edge's name (its end nearest the centre line), how far above the lowest point it
        is, or "drawn". Both may be given by piece, {"front": 3, "back": 2}. `points` and `lines` are further ones by
        piece, a line from one corner or place to another; the waistline, the bust line and the points of a block are
        found from what the edges are.

        Raises `KitError` for corners that are not there, edges that leave part of the outline out or overlap, and
        everything `Traced` refuses.
        """
        if not isinstance(pieces, Mapping) or not all(isinstance(edges, Mapping) for edges in pieces.values()):
            raise KitError(
                "the pieces and their edges are not given as they should be.",
                where=title,
                do="Write {'front': {'centre': (1, 2), 'neck': (2, 3), ...}}.",
            )
        made: dict[str, list[tuple[str, Path]]] = {}
        named: dict[str, dict[str, Sequence[float]]] = {}
        ruled: dict[str, dict[str, Path]] = {}
        messages = list(self.messages)
        taken: dict[int, str] = {}
        for name, edges in pieces.items():
            where = f"{title}, {name}"
            outline = self._for(name, pieces, outlines or {})
            if outline.number in taken:
                raise KitError(
                    f"outline {outline.number} is '{taken[outline.number]}' already.",
                    where=where,
                    do="Give each piece an outline of its own: outlines={'front': 1, 'back': 2}.",
                )
            taken[outline.number] = name
            try:
                paths = named_edges(outline, edges)
                at = _centre(list(edges), roles or {}) if centre is None else _of(centre, name)
                motion, told = laid(outline, paths, at, _of(waist, name))
                spots = {
                    key: motion(outline.path.at(outline.along(spot)))
                    for key, spot in (points or {}).get(name, {}).items()
                }
                ruled[name] = {
                    key: Path.line(*(motion(outline.path.at(outline.along(spot))) for spot in pair))
                    for key, pair in (lines or {}).get(name, {}).items()
                }
            except KitError as error:
                raise error.at(where) from None
            messages += [f"{name.capitalize()}: {one}" for one in told]
            placed = [(edge, path.moved(motion)) for edge, path in paths]
            if motion.flips:
                placed = [(edge, path.reversed()) for edge, path in reversed(placed)]
            made[name] = placed
            named[name] = {key: (Length(p.x), Length(p.y)) for key, p in spots.items()}
        for name in (*(points or {}), *(lines or {})):
            if name not in pieces:
                raise KitError(f"there is no piece '{name}'.", where=title, do=near(name, pieces))
        return Traced(
            title,
            pieces=made,
            size=size,
            points=named,
            lines=ruled,
            messages=tuple(messages),
            roles=roles or {},
        )

    def _for(self, name: str, pieces: Mapping[str, Any], outlines: Mapping[str, int | str]) -> TracedOutline:
        if name in outlines:
            return self.outline(outlines[name])
        if len(self.outlines) == 1 and len(pieces) == 1:
            return self.outlines[0]
        return self.outline(name)


def read_traced(
    path: str | FilePath,
    *,
    unit: str = "",
    dpi: float = 96.0,
    layer: str = "",
    check: tuple[Any, Length] | None = None,
    gap: Length | None = None,
    corner: float = 10.0,
    scale: float = 1.0,
) -> TracedFile:
    """The closed outlines drawn in an SVG or DXF file, true to size, with numbered corners.

    `unit` ("mm", "cm", "inch", "m") is what one drawing unit is where the file does not say; `dpi` the pixels to
    an inch of an SVG without a real size. `layer` reads one layer, group or object alone. `check` is a known line:
    its name in the file, or two corners, and how long it is: ("test line", 10*cm), ((1, 2), 38*cm) on a single
    outline, (("front", 1, 2), 38*cm). It must be right within half a percent (at least 0.5 mm). Ends up to `gap`
    (1 mm) apart are joined, with a message. A joint that turns more than `corner` degrees is a corner. `scale`
    enlarges the whole drawing.

    Raises `KitError` for a file that is no drawing, has no closed outline (it says where it gapes), names no unit,
    refers to other files (nothing is fetched), or whose known line is wrong.

    >>> import tempfile
    >>> size = 'width="10cm" height="8cm" viewBox="0 0 100 80"'
    >>> drawing = f'<svg xmlns="http://www.w3.org/2000/svg" {size}><path d="M 10 10 H 90 V 70 H 10 Z"/></svg>'
    >>> with tempfile.TemporaryDirectory() as folder:
    ...     file = FilePath(folder, "patch.svg")
    ...     _ = file.write_text(drawing)
    ...     [round(corner) for corner in read_traced(file).outlines[0].corners]  # mm along it
    [0, 60, 140, 200]
    """
    file = FilePath(path)
    if unit and unit not in UNITS:
        raise KitError(
            f"the unit '{unit}' is not known.", where=file.name, do=f"Write unit= one of {', '.join(map(repr, UNITS))}."
        )
    for name, value in (("dpi", dpi), ("scale", scale), ("corner", corner)):
        if not (isinstance(value, int | float) and math.isfinite(value) and value > 0):
            raise KitError(f"{name}={value!r} is not usable.", where=file.name, do="Give a number above zero.")
    reach = 1.0 if gap is None else float(length(gap, where="gap"))
    if not 0 < reach <= 5:
        raise KitError(
            f"a gap of {reach:g} mm is not usable.",
            where=file.name,
            do="Give one up to 5 mm; close larger gaps in the drawing program.",
        )
    sketch = _scaled(_read(file, unit, float(dpi), reach), float(scale))
    strokes = _on(sketch, layer)
    known = _known(sketch.strokes, check, sketch.file)
    strokes = tuple(s for s in strokes if s is not known)
    joined = join(Sketch(sketch.file, strokes, (), sketch.down), reach)
    outlines, told = _outlines(sketch, joined, float(corner))
    found = TracedFile(
        sketch.file,
        outlines,
        (*sketch.messages, *joined.messages, *told),
        tuple(_gapes(sketch, run) for run in joined.open),
    )
    if check is not None:
        _check(found, check, known)
    return found


def _read(file: FilePath, unit: str, dpi: float, gap: float) -> Sketch:
    from kit.blocks.read_dxf import read_dxf
    from kit.blocks.read_svg import read_svg

    if not file.is_file():
        raise KitError("there is no such file.", where=str(file), do="Check the name and the folder.")
    if file.stat().st_size > _BIGGEST_FILE:
        raise KitError("the file is larger than 50 MB.", where=file.name, do="Save the outlines alone.")
    kind = file.suffix.lower()
    try:
        if kind == ".svg":
            return read_svg(file, unit=unit, dpi=dpi, gap=gap)
        if kind == ".dxf":
            return read_dxf(file, unit=unit)
    except KitError as error:
        raise error if file.name in error.where else error.at(file.name) from None
    raise KitError(
        f"a file ending in '{kind or 'nothing'}' cannot be read.",
        where=file.name,
        do="Save the drawing as plain SVG or as DXF.",
    )


def _scaled(sketch: Sketch, scale: float) -> Sketch:
    if scale == 1.0:
        return sketch
    from kit.blocks.strokes import enlarged

    strokes = tuple(SketchStroke(s.names, enlarged(s.path, scale)) for s in sketch.strokes)
    return Sketch(sketch.file, strokes, (*sketch.messages, f"Enlarged {scale:g} times."), sketch.down)


def _on(sketch: Sketch, layer: str) -> tuple[SketchStroke, ...]:
    if not layer:
        return sketch.strokes
    found = tuple(s for s in sketch.strokes if layer in s.names)
    if not found:
        raise KitError(
            f"nothing is drawn on '{layer}'.",
            where=sketch.file,
            do=near(layer, {name for s in sketch.strokes for name in s.names}),
        )
    return found


def _known(strokes: tuple[SketchStroke, ...], check: Any, file: str) -> SketchStroke | None:
    """The stroke a named known line is."""
    if check is None:
        return None
    try:
        line, _ = check
    except (TypeError, ValueError):
        raise KitError(
            f"check={check!r} is not a known line and its length.", where=file, do="Write check=('test line', 10*cm)."
        ) from None
    if not isinstance(line, str):
        return None
    found = [s for s in strokes if line in s.names[:1]] or [s for s in strokes if line in s.names]
    if len(found) != 1:
        raise KitError(
            f"{len(found) or 'no'} lines are called '{line}'.",
            where=file,
            do="Give the known line a name or a layer of its own."
            if found
            else near(line, {name for s in strokes for name in s.names}),
        )
    return found[0]


def _outlines(sketch: Sketch, joined: JoinedStrokes, turn: float) -> tuple[tuple[TracedOutline, ...], list[str]]:
    found: list[TracedOutline] = []
    told: list[str] = []
    small: list[float] = []
    for loop in joined.loops:
        x0, y0, x1, y1 = loop.path.bounds()
        large = max(x1 - x0, y1 - y0)
        if large < _TINY:
            small.append(large)
            continue
        if large > _LARGEST:
            raise KitError(
                f"an outline is {show_metric(large)} across.",
                where=sketch.file,
                do="Check the unit: give unit= or dpi= if the file is in another one than it says.",
            )
        path, corners = loop_from_corner(loop.path, turn)
        found.append(TracedOutline(len(found) + 1, loop.names, path, corners))
    if found:
        if small:
            told.append(f"{len(small)} closed shapes smaller than 2 cm are left out.")
        told += [f"Left out: {_gapes(sketch, run)}" for run in joined.open]
        return tuple(found), told
    if small:
        raise KitError(
            f"the largest closed outline is only {max(small):.1f} mm across.",
            where=sketch.file,
            do="Check the unit: give unit= or dpi= if the file is in another one than it says.",
        )
    if joined.open:
        run = max(joined.open, key=lambda s: s.path.length)
        raise KitError(
            f"no outline is closed. {_gapes(sketch, run)}",
            where=sketch.file,
            do="Join the ends in the drawing program.",
        )
    raise KitError(
        "no line is drawn in this file.",
        where=sketch.file,
        do="Text, pictures and hidden layers are not read; draw or convert the outline to paths.",
    )


def _gapes(sketch: Sketch, run: SketchStroke) -> str:
    called = f"'{run.names[0]}'" if run.names else "a line"
    a, b = run.path.start, run.path.end
    return (
        f"{called[:1].upper()}{called[1:]} is open: its ends lie {a.distance(b):.1f} mm apart, at {sketch.place(a)} "
        f"and at {sketch.place(b)}."
    )


def _check(found: TracedFile, check: tuple[Any, Any], stroke: SketchStroke | None) -> None:
    line, said = check
    wanted = float(length(said, where="the known line's length"))
    if stroke is not None:
        x0, _, x1, _ = stroke.path.bounds()
        measured = x1 - x0 if stroke.path.is_closed else stroke.path.start.distance(stroke.path.end)
        called = f"'{line}'"
    else:
        spots = tuple(line)
        if len(spots) == 3:
            outline, spots = found.outline(spots[0]), spots[1:]
        elif len(found.outlines) == 1:
            outline = found.outlines[0]
        else:
            raise KitError(
                "the known line does not say which outline it lies on.",
                where=found.file,
                do="Write check=(('front', 1, 2), 38*cm).",
            )
        try:
            a, b = (outline.path.at(outline.along(spot)) for spot in spots)
        except KitError as error:
            raise error.at(f"{found.file}, the known line") from None
        measured, called = a.distance(b), f"from corner {spots[0]} to corner {spots[1]}"
    if not wanted > 0:
        raise KitError("a known line needs a length above zero.", where=found.file, do="Measure it on the paper.")
    if abs(measured - wanted) <= max(_LEAST, _SHARE * wanted):
        return
    # A drawing that is off is off by a factor that gives its cause away: units taken for others, or pixels at another
    # density. The one that fits within a hundredth is named; the exact scale is offered in any case.
    ratio = measured / wanted
    reasons = (
        (25.4, "One drawing unit seems to be a millimetre: give unit='mm'."),
        (1 / 25.4, "One drawing unit seems to be an inch: give unit='inch'."),
        (0.1, "One drawing unit seems to be a centimetre: give unit='cm'."),
        (96 / 72, "The drawing seems to be at 96 pixels to the inch: give dpi=96."),
        (72 / 96, "The drawing seems to be at 72 pixels to the inch: give dpi=72."),
        (90 / 96, "The drawing seems to be at 90 pixels to the inch: give dpi=90."),
    )
    asks = "unit=" if found.file.lower().endswith(".dxf") else "dpi="
    do = next((words for factor, words in reasons if abs(ratio / factor - 1) < 0.01 and asks in words), "")
    raise KitError(
        f"the known line {called} measures {show_metric(measured)} in the drawing and should be {show_metric(wanted)}.",
        where=found.file,
        do=f"{do or 'Save the drawing at true size, or set the size right'} "
        f"{'Otherwise give' if do else 'with'} scale={1 / ratio:.5g}.",
    )


def _centre(edges: Sequence[str], roles: Mapping[str, str]) -> str:
    """The edge that is the centre; of several the one that is called so."""
    found = [name for name in edges if roles.get(name, edge_role(name)) == "centre"]
    return found[0] if len(found) == 1 else "centre"


def _of(choice: Any, piece: str) -> Any:
    return choice.get(piece) if isinstance(choice, Mapping) else choice
