"""Corners of the cut line, each told point by point: every rule at corners of every kind, walked round either way; and
how far a corner may lean, a width grow or an edge shrink before another shape is drawn.

What stands in `corners_told.txt` was made by the kit. Read beside it: the oblong, whose corners follow from the widths
alone, and the limits, which are the constants of `kit.piece.offset` and `kit.piece.turned_end` (common practice, no
source).
"""

from __future__ import annotations

import math
from collections.abc import Callable
from pathlib import Path as File

import pytest

from kit.errors import KitError
from kit.geometry import Arc, Cubic, Curve, Line, Path, Point
from kit.piece.corner import Corner
from kit.piece.offset import CutLine, offset_line
from kit.piece.piece import Edge, Piece
from tests.exact import exact, refusal, turns
from tests.told import Kept

TOLD = File(__file__).with_name("corners_told")
WIDTHS = (30.0, 10.0, 15.0, 20.0)
Way = Callable[[Point, Point], Curve]


def bowed(by: float) -> Way:
    """A line from point to point that bows out by about `by` mm to the right."""

    def curve(a: Point, b: Point) -> Curve:
        step = b - a
        aside = step.left().unit() * (-by * 4 / 3)
        return Cubic(a, a + step * (1 / 3) + aside, a + step * (2 / 3) + aside, b)

    return curve


def round_about(x: float, y: float) -> Way:
    """An arc about a place, turning left."""

    def curve(a: Point, b: Point) -> Curve:
        centre = Point(x, y)
        one, two = (a - centre).angle, (b - centre).angle
        return Arc(centre, a.distance(centre), one, (two - one) % (2 * math.pi))

    return curve


def sheet(lean: float = 0.0, wide: float = 100.0, high: float = 60.0, **ways: Way) -> Piece:
    """Hem e0, right side e1 leaning out by `lean` mm over its height, top e2, left side e3; `ways` draws an edge
    otherwise than straight."""
    corners = [Point(0, 0), Point(wide, 0), Point(wide + lean, high), Point(0, high)]
    edges = []
    for number, (a, b) in enumerate(zip(corners, [*corners[1:], corners[0]], strict=True)):
        draw = ways.get(f"e{number}", Line)
        edges.append(Edge(f"e{number}", Path((draw(a, b),))))
    return Piece("sheet", "Sheet", tuple(edges))


def walked_back(piece: Piece) -> Piece:
    """The same outline with the piece to the right of its edges."""
    edges = (Edge(edge.name, edge.path.reversed()) for edge in reversed(piece.edges))
    return Piece(piece.name, piece.title, tuple(edges))


SHEETS = {
    "oblong": sheet(),
    "leaning out": sheet(20.0),
    "leaning in": sheet(-20.0),
    "flat": sheet(80.0),
    "sharp": sheet(-70.0, 150.0),
    "side bowed out": sheet(e1=bowed(6.0)),
    "side bowed in": sheet(10.0, e1=bowed(-5.0)),
    "hem bowed out": sheet(-10.0, e0=bowed(4.0)),
    "hem bowed in": sheet(10.0, e0=bowed(-4.0)),
    "both bowed": sheet(5.0, e0=bowed(3.0), e1=bowed(5.0)),
    "round side": sheet(e1=round_about(40.0, 30.0)),
}
RULES = {
    "mitre": Corner("e0", "e1"),
    "squared": Corner("e0", "e1", "squared", turned="e0"),
    "squared, the side": Corner("e0", "e1", "squared", turned="e1"),
    "turned": Corner("e0", "e1", "turned", turned="e0"),
    "turned twice": Corner("e1", "e0", "turned", turned="e0", folds=(10.0, 20.0)),
    "turned thrice": Corner("e0", "e1", "turned", turned="e0", folds=(0.0, 10.0, 20.0)),
    "turned, the side": Corner("e0", "e1", "turned", turned="e1", folds=(0.0, 5.0)),
    "clipped": Corner("e0", "e1", "clipped"),
    "clipped, 31": Corner("e0", "e1", "clipped", size=31.0),
    "rounded": Corner("e0", "e1", "rounded"),
}


def line_of(piece: Piece, rule: Corner | None, widths: tuple[float, ...] = WIDTHS) -> CutLine:
    names = sorted(edge.name for edge in piece.edges)
    made = Piece(piece.name, piece.title, piece.edges, corners=(rule,) if rule else ())
    return offset_line(made, dict(zip(names, widths, strict=True)))


def corner_of(line: CutLine) -> str:
    """Both edges' own parts, and what joins them, in the order walked."""
    before, after, joined = next(each for each in line.joins if {each[0], each[1]} == {"e0", "e1"})
    return f"{exact(line.edge(before))} | {exact(joined)} | {exact(line.edge(after))}"


def drawn(piece: Piece, rule: Corner | None, widths: tuple[float, ...] = WIDTHS) -> str:
    try:
        return corner_of(line_of(piece, rule, widths))
    except KitError as error:
        return f"refused: {refusal(error)}"


@pytest.mark.parametrize("way", ["round to the left", "round to the right"])
@pytest.mark.parametrize("name", SHEETS)
def test_what_is_drawn_at_the_corner(name: str, way: str) -> None:
    piece = SHEETS[name] if way.endswith("left") else walked_back(SHEETS[name])
    found = {}
    for even, widths in (("", WIDTHS), (", widths alike", (12.0, 12.0, 12.0, 12.0))):
        lines = [f"{rule}: {drawn(piece, corner, widths)}" for rule, corner in RULES.items()]
        mitre = lines[0].split(": ", 1)[1]
        found[f"{name}, {way}{even}"] = "\n".join(
            [
                lines[0],
                *(line if not line.endswith(f": {mitre}") else f"{line.split(':')[0]}: mitred" for line in lines[1:]),
            ]
        )
    Kept(TOLD / f"{name}, {way}.txt".replace(" ", "_").replace(",", "")).holds(found)


@pytest.mark.parametrize("name", SHEETS)
def test_the_whole_line_is_told_in_the_order_walked(name: str) -> None:
    found = {}
    for rule in ("mitre", "turned thrice", "rounded"):
        line = line_of(SHEETS[name], RULES[rule])
        found[rule] = "\n".join(map(exact, line.curves)) + f"\n{exact(line.length)} long in {exact(line.bounds())}"
    Kept(TOLD / f"whole_{name.replace(' ', '_')}.txt").holds(found)


# ---- how far ----------------------------------------------------------------------------------------------------


def shaped(piece: Piece, rule: str, widths: tuple[float, ...] = WIDTHS) -> bool:
    """Whether a rule draws something else than the mitre there."""
    return drawn(piece, RULES[rule], widths) != drawn(piece, None, widths)


DEEP, LEAN = (30.0, 20.0, 10.0, 10.0), (30.0, 5.0, 10.0, 10.0)
LIMITS: dict[str, Callable[[str], str]] = {
    "leaning out": lambda rule: turns(lambda by: shaped(sheet(by), rule), 5.0, 400.0),
    "leaning in": lambda rule: turns(lambda by: shaped(sheet(-by, 400.0), rule), 5.0, 350.0),
    "side bowed out, leaning out": lambda rule: turns(lambda by: shaped(sheet(by, e1=bowed(3.0)), rule), 5.0, 300.0),
    "hem short": lambda rule: turns(lambda wide: shaped(sheet(-36.0, wide, 20.0), rule, LEAN), 45.0, 200.0),
    "hem short, bowed": lambda rule: turns(
        lambda wide: shaped(sheet(-36.0, wide, 20.0, e0=bowed(2.0)), rule, LEAN), 45.0, 200.0
    ),
    "side short": lambda rule: turns(lambda high: shaped(sheet(high, high=high), rule, DEEP), 12.0, 100.0),
    "side short, leaning in": lambda rule: turns(lambda high: shaped(sheet(-high, high=high), rule, DEEP), 12.0, 95.0),
    "side short, bowed": lambda rule: turns(
        lambda high: shaped(sheet(high / 2, high=high, e1=bowed(1.0)), rule, DEEP), 8.0, 100.0
    ),
    "hem allowance": lambda rule: turns(lambda width: shaped(sheet(9.0), rule, (width, 10.0, 10.0, 10.0)), 4.0, 80.0),
    "hem allowance, leaning in": lambda rule: turns(
        lambda width: shaped(sheet(-80.0, 110.0), rule, (width, 10.0, 10.0, 10.0)), 9.0, 120.0
    ),
    "side allowance": lambda rule: turns(lambda width: shaped(sheet(9.0), rule, (20.0, width, 10.0, 10.0)), 4.0, 120.0),
    "a corner so blunt": lambda rule: turns(
        lambda degrees: shaped(sheet(60 * math.tan(math.radians(degrees))), rule, (10.0, 10.0, 10.0, 10.0)), 5.0, 88.0
    ),
}


@pytest.mark.parametrize("what", LIMITS)
def test_how_far_a_shape_is_drawn(what: str) -> None:
    found = {what: "\n".join(f"{rule}: {LIMITS[what](rule)}" for rule in RULES if rule != "mitre")}
    Kept(TOLD / f"limit_{what}.txt".replace(" ", "_").replace(",", "")).holds(found)


def nearly_level(degrees: float, one: float, two: float) -> str:
    """What joins two edges that follow one another below the piece with a small turn, convex above zero."""
    up = 100.0 * math.tan(math.radians(degrees))
    corners = [Point(0, 0), Point(100, 0), Point(200, up), Point(200, 100), Point(0, 100)]
    ends = [*corners[1:], corners[0]]
    edges = tuple(Edge(f"e{i}", Path.line(a, b)) for i, (a, b) in enumerate(zip(corners, ends, strict=True)))
    try:
        return corner_of(
            offset_line(Piece("p", "P", edges), {"e0": one, "e1": two, "e2": 10.0, "e3": 10.0, "e4": 10.0})
        )
    except KitError as error:
        return f"refused: {refusal(error)}"


def test_a_line_that_runs_on_is_stepped_knit_or_cut_by_how_much_it_turns() -> None:
    found = {}
    for one, two in ((10.0, 10.0), (10.0, 10.5), (10.0, 20.0), (20.0, 10.0), (0.0, 10.0), (10.0, 60.0)):
        told = [f"{turn}: {nearly_level(turn, one, two)}" for turn in (-40, -26, -24, -4, -2, 0, 2, 4, 24, 26, 40)]
        found[f"{exact(one)} and {exact(two)}"] = "\n".join(told)
    Kept(TOLD / "hardly_turning.txt").holds(found)
