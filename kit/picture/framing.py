"""What a sewing picture shows of the cloth: the place where the work is, and the whole it belongs to."""

from __future__ import annotations

from kit.lesson.pattern import Pattern
from kit.picture.laid import along_line, opened_at, straightest
from kit.picture.place import widths_of
from kit.picture.placed import Box, PlacedLayer, area_of, box_of, find, grown
from kit.sewing.run import Run
from kit.sewing.scene import Scene, Thing
from kit.sewing.spans import path_of

_END = 45.0  # mm from the window within which a band's end is taken into it
_WHOLE, _PART, _THING, _STRIP = 25.0, 20.0, 10.0, 30.0
"""mm of cloth shown round the work: along a whole run, a part of one, at a small thing sewn on, with a strip."""
_SPOTS = ("button", "buttonhole", "eyelet", "snap", "socket", "hook", "eye", "bar")
_GOING_ON = ("elastic", "cord")
_ALONG = ("caught", "binding")  # the seam is the work there
_OFF = 30.0  # mm


def _stands_off(thing: Thing, pattern: Pattern) -> bool:
    """Whether what is sewn on reaches far into the piece, as the strip along a slit does."""
    path = path_of(pattern, thing.run)
    return max(path.distance_to(end) for end in (thing.line.start, thing.line.end)) > _OFF


def _work_box(scene: Scene, placed: list[PlacedLayer], pattern: Pattern) -> Box | None:
    """What the lines of the work itself take up, where it follows lines of the draft and not a run."""
    lines = [(row.run, row.line) for row in scene.rows if row.line is not None and row.ink == "new"]
    things = [
        thing
        for thing in scene.things
        if thing.ink == "new"
        and thing.kind != "tie"
        and (thing.kind not in _ALONG or (thing.kind == "binding" and _stands_off(thing, pattern)))
    ]
    for thing in things:  # what goes on through a seam or over a fold is looked at where it begins
        begins = next((each for each in things if each.kind == thing.kind), thing)
        if thing.kind in _GOING_ON and thing.run != begins.run:
            continue
        lines.append((thing.run, thing.line))
    boxes = []
    for run, line in lines:
        p = find(placed, run, None)
        if p is not None:
            boxes.append(p.lay(line, run.side).bounds())
    for p in placed[-1:]:
        boxes += [p.lay(fold.seam, p.side).bounds() for fold in p.folds if fold.name in scene.folds]
    return _around_all(boxes) if boxes else None


def _goes_on(thing: Thing, focus: Run, pattern: Pattern) -> bool:
    """Whether what is sewn on goes on beyond a part of its own edge that is looked at."""
    part = focus.start is not None or focus.end is not None
    same = (thing.run.piece, thing.run.edges) == (focus.piece, focus.edges)
    return part and same and thing.line.length > 1.3 * path_of(pattern, focus).length


def _outside(p: PlacedLayer, lines: tuple[Run, ...], pattern: Pattern) -> list[Box]:
    """Where the cut edge lies outside a few lines, their allowance away."""
    found = []
    for run in lines:
        path = path_of(pattern, run)
        out = p.inward(path, run.side) * -max(widths_of(p.piece)[edge] for edge in run.edges)
        x0, y0, x1, y1 = p.lay(path, run.side).bounds()
        found.append((x0 + out.x, y0 + out.y, x1 + out.x, y1 + out.y))
    return found


def _with_rows(box: Box, scene: Scene, p: PlacedLayer, lines: tuple[Run, ...], pattern: Pattern) -> Box:
    """The window, large enough for the rows far inside the edge that it shows."""
    deep = [
        row.inset
        for row in scene.rows
        if row.line is None and row.ink == "new" and any(row.run.piece == run.piece for run in lines)
    ]
    reach = max(deep, default=0.0) + _THING
    if reach <= _WHOLE:
        return box
    boxes = [box]
    for run in lines:
        path = path_of(pattern, run)
        x0, y0, x1, y1 = p.lay(path, run.side).bounds()
        far = p.inward(path, run.side) * reach
        boxes.append((x0 + far.x, y0 + far.y, x1 + far.x, y1 + far.y))
    return _around_all(boxes)


def _with_band(box: Box, band: PlacedLayer, pattern: Pattern) -> Box:
    """The window, large enough for the whole depth of a band that hangs from the edge it shows."""
    on, base, along = band.layer.on, band.base, band.layer.along
    if on is None or base is None or along is None:
        return box
    out = base.inward(path_of(pattern, on), on.side) * -(along.depth[1] + 6.0)
    inner = grown(box, -_THING)
    ends = [q for bit in band.bits if bit.edge in ("start", "end") for c in bit.curves for q in (c.start, c.end)]
    wide = grown(box, _END)
    near = [q for q in ends if wide[0] <= q.x <= wide[2] and wide[1] <= q.y <= wide[3]]
    if near:
        reach = [(q.x - 8.0, q.y - 8.0, q.x + 8.0, q.y + 8.0) for q in near]
        box = _around_all([box, *reach])
    return (
        min(box[0], inner[0] + out.x),
        min(box[1], inner[1] + out.y),
        max(box[2], inner[2] + out.x),
        max(box[3], inner[3] + out.y),
    )


def _around_all(boxes: list[Box]) -> Box:
    return (min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes))


def windows(scene: Scene, pattern: Pattern, placed: list[PlacedLayer]) -> tuple[Box, Box]:
    """What the picture shows, and the whole of the cloth."""
    if not placed:
        return (0.0, 0.0, 100.0, 60.0), (0.0, 0.0, 100.0, 60.0)
    whole = box_of(tuple(c for p in placed for part in (p.outline, *p.flaps) for c in part))
    size = max(whole[2] - whole[0], whole[3] - whole[1])
    whole = grown(whole, size * 0.05)
    if scene.focus is None:
        return whole, whole
    p = find(placed, scene.focus, None)
    if p is None:
        return whole, whole
    on = next((q for q in placed if q.layer.place is not None), None)
    if on is not None:
        box = box_of(on.outline)
        box = grown(box, 0.2 * max(box[2] - box[0], box[3] - box[1]))
        return (whole if area_of(box) > 0.7 * area_of(whole) else box), whole
    opening = not scene.rows and scene.focus.start is not None  # all of what is folded back, and nothing is sewn
    focus = straightest(scene.focus, pattern) if opened_at(scene, scene.focus) and not opening else scene.focus
    lines = along_line(focus, pattern)
    boxes = [p.lay(path_of(pattern, run), run.side).bounds() for run in lines]
    banded = any(layer.along is not None and layer.along.outward for layer in scene.layers)
    work = _work_box(scene, placed, pattern) if len(lines) == 1 and not banded else None
    if work is not None and any(_goes_on(thing, scene.focus, pattern) for thing in scene.things):
        work = None  # a part of it is looked at
    if work and scene.things and all(thing.kind in _SPOTS for thing in scene.things):
        work = _around_all([work, *boxes, *_outside(p, lines, pattern)])  # with the edge that it is measured from
    box = work or _around_all(boxes)
    long = max(box[2] - box[0], box[3] - box[1])
    part = scene.focus.start is not None or scene.focus.end is not None
    least = _STRIP if scene.strip else _THING if scene.things and part else _PART if part or banded else _WHOLE
    box = _with_rows(grown(box, max(long * 0.2, least)), scene, p, lines, pattern)
    for band in (p for p in placed if p.layer.along is not None and p.layer.along.outward):
        box = _with_band(box, band, pattern)
    wide, high = box[2] - box[0], box[3] - box[1]
    # A long narrow window would be shown small on a page; it is grown to a shape that a picture's frame takes well. One
    # that comes to most of the cloth shows all of it: a crop that hides a corner only puzzles.
    if wide < high * 0.8:
        box = (box[0] - (high * 0.8 - wide) / 2, box[1], box[2] + (high * 0.8 - wide) / 2, box[3])
    elif high < wide * 0.55:
        box = (box[0], box[1] - (wide * 0.55 - high) / 2, box[2], box[3] + (wide * 0.55 - high) / 2)
    if area_of(box) > 0.7 * area_of(whole):
        return whole, whole
    return box, whole
