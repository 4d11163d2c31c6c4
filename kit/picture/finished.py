"""The finished measurements of a lesson on the garment laid flat: each on the line it measures, named as in the table.

A lesson says how large it is made, as numbers. A line of the flat garment whose length is that number, once, twice
(round both layers) or as the whole of a seam or hem, may be the line it measures: it is where the number was worked out
from that edge, or from one at the same level, or from measures that the draft shows running the same way. Two lines
may be as long, and one of them the wrong one. A number that no such line has is not drawn.
Lines lie on or beside the garment. Where the picture is wide, their names stand in columns outside it, level, each led
to its line; where it is narrow, as on a phone, they find their places with all other texts of the picture, and become
numbers of a list where there is none.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from kit.geometry import Line, Point, Vector
from kit.lesson.pattern import MeasuredOn, Pattern
from kit.picture.assembled import Assembled, Flat, of_kind
from kit.picture.chains import Chain, at, beside, drawn, inside, length
from kit.picture.drawing import Item, Label, Stroke
from kit.picture.lettering import Box, text_width
from kit.picture.place_on_band import band_width
from kit.piece.dart import sewn_length
from kit.sewing.run import Run
from kit.sewing.spans import run_length, sides_of
from kit.units import System, both

_SAME = 0.6  # mm between a number and the line it is of
ROOM = (640.0, 300.0)
"""CSS px that the picture may take where nothing else is said."""
_ALONG = 0.7  # the cosine of what two ways may differ by
_LEVEL = 3.0  # mm by which two places of one level may differ in height
_EM = 11.0
_WIDE = 12.0  # ems that a name may be wide before it is broken
_LEADING = 1.25
_OFF = 13.0  # px from an edge to the line that measures it
_GAP = 12.0  # px of white on both sides of a column of names
_SHARE = 0.6  # of a narrow picture about so much of the width is left for the garment beside its texts
_NARROW = 420.0  # px of width below which two columns of names would leave no garment between them


@dataclass(frozen=True)
class _Seen:
    """A line of the garment that a number may be of: `chain` is where it lies, `lengths` what it may be said to
    measure, in mm; `owner` the piece whose edge it is (None: straight across the garment, or from its top to its foot),
    `edges` the (piece, edge) it is or is sewn to."""

    chain: Chain
    lengths: tuple[float, ...]
    owner: Flat | None = None
    edges: frozenset[tuple[str, str]] = frozenset()

    @property
    def upright(self) -> bool:
        """Whether it is a height of the whole garment."""
        return self.owner is None and abs(self.chain[0].y - self.chain[-1].y) > 1.0


Rows = list[tuple[str, float, _Seen]]
Said = list[tuple[str, str]]


def measured(
    garment: Assembled, system: System, around: Box, room: tuple[float, float] = ROOM, letters: float = 1.0
) -> tuple[list[Item], tuple[tuple[str, str], ...]]:
    """What is drawn of the finished measurements, and the (name, value) of each that is. `around` is the box of all
    that is drawn of the garment, `letters` how many times as large as usual its letters are."""
    rows = _matched(garment)
    if not rows:
        return [], ()
    said = [(title, both(value, system, "finished")) for title, value, _ in rows]
    make = _in_columns if room[0] >= _NARROW * letters else _in_place
    return make(rows, said, around, room, letters), tuple(said)


def _in_columns(rows: Rows, said: Said, around: Box, room: tuple[float, float], letters: float) -> list[Item]:
    lines_of = [[*_broken(title), size] for title, size in said]
    em_px = _EM * letters
    x0, y0, x1, y1 = around
    columns = _columns(rows, (x0 + x1) / 2)
    wide = [
        max((text_width(text, em_px) for i in column for text in lines_of[i]), default=0.0) + _OFF + 2 * _GAP
        for column in columns
    ]
    px = max((x1 - x0) / max(room[0] - sum(wide), 80.0), (y1 - y0) / (room[1] - 4 * _OFF), 0.1)
    em = em_px * px
    items: list[Item] = []
    for side, column in zip((-1.0, 1.0), columns, strict=True):
        x = x0 - (_OFF + _GAP) * px if side < 0 else x1 + (_OFF + _GAP) * px
        lines = {i: _line(rows[i][2], around, _OFF * px) for i in column}
        order = sorted(column, key=lambda i: -_end(lines[i], side).y)
        heights = _spread(
            [_end(lines[i], side).y for i in order], [(len(lines_of[i]) + 0.4) * em * _LEADING for i in order]
        )
        for i, y in zip(order, heights, strict=True):
            line, title = lines[i], said[i][0]
            items.append(Stroke(drawn(line), "leader", arrow="both", name=title))
            items += _legs(rows[i][2], line)
            tip = Point(x - side * 2.0 * px, y)
            items.append(Stroke((Line(tip, _end(line, side)),), "leader", name=title))
            anchor: Literal["start", "end"] = "end" if side < 0 else "start"
            for number, text in enumerate(lines_of[i]):
                spot = Point(x, y + ((len(lines_of[i]) - 1) / 2 - number) * em * _LEADING)
                items.append(Label(text, spot, "small", size=em, anchor=anchor))
    return items


def _in_place(rows: Rows, said: Said, around: Box, room: tuple[float, float], letters: float) -> list[Item]:
    x0, y0, x1, y1 = around
    px = max((x1 - x0) / (room[0] / letters * _SHARE), (y1 - y0) / (room[1] - 4 * _OFF), 0.1)
    items: list[Item] = []
    names: list[Item] = []
    for (title, size), (_, _, seen) in zip(said, rows, strict=True):
        line = _line(seen, around, _OFF * px)
        items.append(Stroke(drawn(line), "leader", arrow="both", name=title))
        items += _legs(seen, line)
        spot, side = _told_at(line, (x0 + x1) / 2)
        names.append(Label("\n".join((*_broken(title), size)), spot + Vector(side, 0.0), "name", of=spot))
    return items + names


# ---- which line it is --------------------------------------------------------------------------------------


def _matched(garment: Assembled) -> list[tuple[str, float, _Seen]]:
    """(name, value, line) of the finished measurements that a line of the garment has, no line twice."""
    lines = list(_lines(garment))
    found: list[tuple[str, float, _Seen]] = []
    told = garment.pattern.measured_on
    for number, (title, value) in enumerate(garment.pattern.finished):
        on = told[number] if number < len(told) else MeasuredOn()
        close = [
            (abs(one - value), i)
            for i, line in enumerate(lines)
            for one in line.lengths
            if abs(one - value) < _SAME and _may_be(line, on, garment)
        ]
        if close:
            found.append((title, value, lines.pop(min(close)[1])))
    return found


def _may_be(seen: _Seen, on: MeasuredOn, garment: Assembled) -> bool:
    """Whether a line can be what a number was worked out from."""
    if not on.edges:
        ways = _ways_drafted(on.numbers, garment.pattern)
        return all(abs(way.dot(_way(seen))) > _ALONG for way in ways)
    if seen.edges:
        return not seen.edges.isdisjoint(on.edges)
    heights = [
        p.y for name, edge in on.edges for flat in garment.of(name) for p in (flat.edge(edge)[0], flat.edge(edge)[-1])
    ]
    ends = {seen.chain[0].y, seen.chain[-1].y}
    return all(any(abs(y - height) < _LEVEL for height in heights) for y in ends)


def _ways_drafted(names: tuple[str, ...], pattern: Pattern) -> list[Vector]:
    """Which way the measures of these names run in the steps that dimension them."""
    spots = [spot for step in pattern.steps for spot in step.spots if spot.name in names and spot.along is None]
    return [(spot.end - spot.start).unit() for spot in spots if spot.start.distance(spot.end) > 1.0]


def _way(seen: _Seen) -> Vector:
    """Which way a line runs in its draft."""
    a, b = seen.chain[0], seen.chain[-1]
    if seen.owner is not None:
        piece = seen.owner.piece
        own = sorted(edge for name, edge in seen.edges if name == piece.name)
        if own:
            a, b = piece.edge(own[0]).path.start, piece.edge(own[0]).path.end
    return (b - a).unit() if a.distance(b) > 1.0 else Vector(1.0, 0.0)


def _lines(garment: Assembled) -> Iterator[_Seen]:
    """Lines a number may be of, those whose length is surest first."""
    pattern = garment.pattern
    for op in of_kind(pattern, "hem", "narrow_hem"):
        yield from _rounds(garment, list(op.runs()), 0.0, ())
    for op in of_kind(pattern, "set_band"):
        whole = sum(run_length(pattern, run) for run in op.a)
        halves = max(len(sides_of(pattern, run)) for run in op.a)
        band = frozenset((run.piece, edge.name) for run in op.a for edge in pattern.piece(run.piece).edges)
        yield from _rounds(garment, list(op.b), band_width(op.a[0].piece, pattern), (whole, whole * halves), band)
    for flat in garment.near:
        for edge in flat.piece.edges:
            chain = flat.edge(edge.name, flat.sides[-1] if flat.piece.fold else flat.side)
            own = frozenset({(flat.piece.name, edge.name)})
            yield _Seen(chain, (sewn_length(flat.piece, edge.name),), flat, own)
    yield from _levels(garment)
    yield from _whole_height(garment)


def _rounds(
    garment: Assembled,
    runs: list[Run],
    wide: float,
    known: tuple[float, ...],
    band: frozenset[tuple[str, str]] = frozenset(),
) -> Iterator[_Seen]:
    """One edge that goes round, `wide` mm outside the seam where a band is set to it: all halves of it, one half of it
    where each is a ring of its own, and twice what lies uppermost. `band` are the edges of what is set to it."""
    pattern = garment.pattern
    edges = band | {(run.piece, name) for run in runs for name in run.edges}
    runs = [run for run in runs if garment.of(run.piece)]
    half = sum(_sewn(garment, run) for run in runs)
    every = sum(_sewn(garment, run) * len(sides_of(pattern, run)) for run in runs)
    for run in runs:
        for flat in garment.of(run.piece):
            chains = flat.run(pattern, run) if flat.near else []
            if not chains:
                continue
            chain = chains[-1]
            folded = len(sides_of(pattern, run)) if flat.piece.fold and len(chains) == 1 else 1
            line = chain
            if wide:
                here, way = at(chain, length(chain) / 2)
                left = inside(here + way.left() * 1.5, flat.ring)
                line = beside(chain, -wide if left else wide)
            yield _Seen(line, known or (every, half, 2 * _sewn(garment, run) * folded), flat, edges)


def _sewn(garment: Assembled, run: Run) -> float:
    """mm of a run on one half, its darts and pleats shut."""
    piece = garment.pattern.piece(run.piece)
    if run.start is not None or run.end is not None:
        return run_length(garment.pattern, run)
    return sum(sewn_length(piece, name) for name in run.edges)


def _levels(garment: Assembled) -> Iterator[_Seen]:
    """Straight across the garment, at each height where an edge ends: as wide as it lies, and all round."""
    heights: list[float] = []
    for flat in garment.near:
        for p in (chain[i] for edge in flat.piece.edges for chain in (flat.edge(edge.name),) for i in (0, -1)):
            if all(abs(p.y - y) > 0.5 for y in heights):
                heights.append(p.y)
    for y in heights:
        for step in (0.0, 0.2, -0.2):
            reach = garment.widest(y + step, 0.0)
            if reach is not None:
                wide = reach[1] - reach[0]
                yield _Seen([Point(reach[0], y), Point(reach[1], y)], (2 * wide, wide))


def _whole_height(garment: Assembled) -> Iterator[_Seen]:
    """From the highest edge to the lowest of what lies uppermost, at its right."""
    ends = [
        chain[i]
        for flat in garment.near
        for edge in flat.piece.edges
        for chain in (flat.edge(edge.name),)
        for i in (0, -1)
    ]
    if ends:
        top = max(ends, key=lambda p: (round(p.y, 1), p.x))
        foot = min(ends, key=lambda p: (round(p.y, 1), -p.x))
        yield _Seen([top, foot], (top.y - foot.y,))


# ---- where it is drawn -------------------------------------------------------------------------------------


def _line(seen: _Seen, around: Box, off: float) -> Chain:
    """The measuring line: outside the edge it measures, at the level where it goes across."""
    x0, y0, x1, _ = around
    chain = seen.chain
    a, b = chain[0], chain[-1]
    if seen.upright:
        return [Point(x1 + off, a.y), Point(x1 + off, b.y)]
    if seen.owner is None:
        if abs(a.y - y0) < 2.0:
            return [Point(a.x, y0 - off), Point(b.x, y0 - off)]
        return [a, b]
    if abs(a.x - b.x) < 0.08 * a.distance(b) and x0 + off < a.x < x1 - off:  # upright, inside: beside the garment
        x = x1 + off
        return [Point(x, a.y), Point(x, b.y)]
    here, way = at(chain, length(chain) / 2)
    left = inside(here + way.left() * 1.5, seen.owner.ring)
    return beside(_plain(chain), -off if left else off)


def _plain(chain: Chain) -> Chain:
    """Fewer points, so that a line beside it is smooth."""
    return [chain[0], *chain[1:-1:3], chain[-1]]


def _legs(seen: _Seen, line: Chain) -> Iterator[Item]:
    """Thin lines from the ends of what is measured to the ends of the measuring line."""
    for p, q in ((seen.chain[0], line[0]), (seen.chain[-1], line[-1])):
        if p.distance(q) > 1.0:
            yield Stroke((Line(p, q),), "leader")


def _end(line: Chain, side: float) -> Point:
    """The place of a line that its name is led to: the outermost on that side, the middle of an upright one."""
    a, b = line[0], line[-1]
    if abs(a.x - b.x) < 0.3 * abs(a.y - b.y):
        return at(line, length(line) / 2)[0]
    return max((a, b), key=lambda p: side * p.x)


def _columns(rows: list[tuple[str, float, _Seen]], middle: float) -> tuple[list[int], list[int]]:
    """Which names stand at the left and which at the right: those of lines that lie on one side there, the others where
    fewer stand."""
    left: list[int] = []
    right: list[int] = []
    free: list[int] = []
    for i, (_, _, seen) in enumerate(rows):
        a, b = seen.chain[0], seen.chain[-1]
        if max(a.x, b.x) < middle - 5.0:
            left.append(i)
        elif seen.upright or min(a.x, b.x) > middle + 5.0 or abs(a.x - b.x) < 0.08 * a.distance(b):
            right.append(i)
        else:
            free.append(i)
    for i in free:
        (left if len(left) < len(right) else right).append(i)
    return left, right


def _told_at(line: Chain, middle: float) -> tuple[Point, float]:
    """The place of a line that its name is led to, and on which side (-1, 1) of it the name is looked for: the end that
    is farther out, the middle of an upright line."""
    a, b = line[0], line[-1]
    if abs(a.x - b.x) < 0.3 * abs(a.y - b.y):
        spot = at(line, length(line) / 2)[0]
    else:
        spot = max((b, a), key=lambda p: abs(p.x - middle))
    return spot, -1.0 if spot.x < middle - 0.5 else 1.0


def _broken(title: str) -> list[str]:
    """A name in one line, or in two or more where it is long."""
    found = [""]
    for word in title.split(" "):
        longer = f"{found[-1]} {word}".strip()
        if found[-1] and text_width(longer, 1.0) > _WIDE:
            found.append(word)
        else:
            found[-1] = longer
    return found


def _spread(wanted: list[float], high: list[float]) -> list[float]:
    """Middles from the top down, as near as may be to `wanted`, of boxes so `high` that do not meet."""
    blocks: list[list[int]] = []

    def top(block: list[int]) -> float:
        """Where a block of boxes begins when it lies as near as may be to what its boxes want."""
        offs, down = [], 0.0
        for i in block:
            offs.append(wanted[i] + down + high[i] / 2)
            down += high[i]
        return sum(offs) / len(offs)

    for i in range(len(wanted)):
        blocks.append([i])
        while len(blocks) > 1 and top(blocks[-2]) - sum(high[k] for k in blocks[-2]) < top(blocks[-1]):
            last = blocks.pop()
            blocks[-1] += last
    found: list[float] = []
    for block in blocks:
        y = top(block)
        for i in block:
            found.append(y - high[i] / 2)
            y -= high[i]
    return found
