"""Findings: a garment smaller than the body, or with less ease than woven cloth wants; a hem too narrow to step in; a
hat; elastic and bands.

Least wearing ease of woven clothes for women: bodice bust 1 1/2 in, dress waist 3/4 in, skirt or trouser waist 1/2 in,
hip 2 in (Central Washington University, costume construction text, chapter 16). Teachers differ, so that less than half
of it is told, unless the lesson calls itself close, easy or loose: then it must have what that wants.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from kit.diagnostic import Diagnostic, Value, measure, measured, message, per_cent
from kit.lesson.pattern import Fit
from kit.piece.piece import Edge, Piece
from kit.piece.role import Landmark
from kit.sewing.operations.drawn_in import JOIN, ThreadElastic
from kit.sewing.order import operations
from kit.wear.girth import Worn
from kit.wear.levels import GIRTHS, Level
from kit.wear.needs import taken
from kit.wear.passage import at_waist, has_neck, is_top, opens_all_the_way, waist_edge
from kit.wear.told import told

INCH = 25.4
LEAST_EASE: Mapping[Level, float] = {"bust": 1.5 * INCH, "waist": 0.75 * INCH, "hip": 2 * INCH}
SKIRT_WAIST = 0.5 * INCH
TOLD_BELOW = 0.5
STYLES: Mapping[Fit, Mapping[Level, float]] = {
    "close": LEAST_EASE,
    "easy": {"bust": 3 * INCH, "waist": 1 * INCH, "hip": 2.75 * INCH},
    "loose": {"bust": 5 * INCH, "waist": 2 * INCH, "hip": 4 * INCH},
}
"""Least ease by style. Easy: 3 to 4 in at the bust (W. Hamilton, New Mexico State University, Extension Guide C-228),
at waist and hip the most of the text named above. Loose: 20 to 30 % more than 4 in at the bust (raglan and dolman
sleeves, Anthropometry, Apparel Sizing and Design, pp. 226-228); waist and hip common practice, no source."""
SPENT = 0.5
"""The part of the stretch across that a garment may spend on the body standing still; the rest is for breath and
movement (common practice, no source)."""
_LOW_ARMHOLE = 80.0  # mm that an armhole ends below the bust and is still measured for it
_CLOSE = 4.0  # mm by which a girth may miss the body's
STRIDE = 0.88
"""The least hem at the knee, as a part of the hip, with which a step can be taken (common practice, no source)."""
HAT_LOOSE = 60.0
"""mm more than the head at which a hat comes down over the eyes (common practice, no source)."""
ELASTIC_TIGHT = 0.65
"""The part of the waist at which elastic cuts in (common practice, no source)."""


def levels_worn(worn: Worn) -> Iterator[tuple[Level, float]]:
    """The girth of the finished garment, closed as it is worn, at each level of the body that it goes round: bust,
    under the bust, waist, hip."""
    waist = waist_edge(worn)
    low, high = worn.span
    for level, height in worn.heights.items():
        if level == "waist" and waist is not None:
            yield level, waist
        elif level == "waist" and not has_neck(worn) and opens_all_the_way(worn):
            continue  # of a wrap that hangs from its ties: as wide as it is tied
        elif level == "bust" and 0.0 < height - worn.underarm < _LOW_ARMHOLE:
            at = worn.round(worn.underarm - 3.0)  # the armhole is deeper: the tape is laid right below it
            if at is not None and at.closed:
                yield level, at.girth
        elif level in ("bust", "under_bust", "waist", "hip") and low <= height <= high:
            at = worn.round(height)
            if at is not None and at.closed:
                yield level, at.girth


def sizes(worn: Worn) -> list[Diagnostic]:
    """Levels at which the garment is smaller than the body, or has hardly any ease."""
    found = []
    drawn = any(isinstance(operation, ThreadElastic) for _, operation in operations(worn.pattern))
    hangs = not has_neck(worn)
    piece, edge = worn.side
    for level, girth in levels_worn(worn):
        name = GIRTHS[level]
        if name not in worn.body or level not in LEAST_EASE or (drawn and level == "waist"):
            continue
        body = worn.body[name]
        least = SKIRT_WAIST if level == "waist" and hangs else LEAST_EASE[level]
        style = worn.pattern.lesson.fit
        called = STYLES[style][level] if style and not (level == "waist" and hangs) else 0.0
        if girth * worn.gives < body - _CLOSE:
            says = message("wear.too_small", part=measure(name), need=measured(body), has=measured(girth))
            can = message("wear.too_small_do", amount=measured(body - girth), ease=measured(least))
            missing = body - girth
            found.append(
                told("too_small", "error", says, can, amount=missing, piece=piece, edge=edge, measures=(name,))
            )
        elif worn.gives > 1.0 and body / girth - 1.0 > SPENT * (worn.gives - 1.0) + 0.002:
            spent, stretch = per_cent(body / girth - 1.0), per_cent(worn.gives - 1.0)
            least_girth = body / (1.0 + SPENT * (worn.gives - 1.0))
            says = message("wear.stretch_spent", part=measure(name), spent=spent, stretch=stretch)
            can = message("wear.ease_small_do", amount=measured(least_girth - girth))
            missing = least_girth - girth
            found.append(
                told("stretch_spent", "warning", says, can, amount=missing, piece=piece, edge=edge, measures=(name,))
            )
        elif worn.gives == 1.0 and girth < body + called - _CLOSE:
            ease = measured(max(girth - body, 0.0))
            says = message(
                "wear.ease_style", part=measure(name), ease=ease, least=measured(called), style=Value(style, "word")
            )
            can = message("wear.ease_small_do", amount=measured(body + called - girth))
            missing = body + called - girth
            found.append(
                told("ease_style", "warning", says, can, amount=missing, piece=piece, edge=edge, measures=(name,))
            )
        elif worn.gives == 1.0 and girth < body + TOLD_BELOW * least - _CLOSE:
            ease = measured(max(girth - body, 0.0))
            says = message("wear.ease_small", part=measure(name), ease=ease, least=measured(least))
            can = message("wear.ease_small_do", amount=measured(body + least - girth))
            missing = body + least - girth
            found.append(
                told("ease_small", "warning", says, can, amount=missing, piece=piece, edge=edge, measures=(name,))
            )
    return found


def elastic(worn: Worn) -> list[Diagnostic]:
    """Elastic at the waist that is longer than the waist, or cuts in."""
    waist = taken(worn.body, "waist_girth")
    found = []
    for record, operation in operations(worn.pattern):
        if waist is None or not worn.torso or not isinstance(operation, ThreadElastic) or not at_waist(worn, operation):
            continue
        long = operation.length - (JOIN if operation.ring else 0.0)
        if long > waist + _CLOSE:
            says = message("wear.elastic_long", has=measured(long), waist=measured(waist))
            found.append(told("elastic_long", "warning", says, message("wear.elastic_long_do"), step=record.key))
        elif long < ELASTIC_TIGHT * waist:
            says = message("wear.elastic_short", has=measured(long), waist=measured(waist))
            found.append(told("elastic_short", "warning", says, message("wear.elastic_short_do"), step=record.key))
    return found


def stride(worn: Worn) -> list[Diagnostic]:
    """A hem about the knee or lower that is too narrow to step in, closed and without a slit."""
    hip = taken(worn.body, "hip_girth")
    if hip is None or worn.legs or "knee" not in worn.heights or not worn.torso or opens_all_the_way(worn):
        return []
    low, _ = worn.span
    hems = [loop for loop in worn.edges.open if "hem" in loop.roles and not loop.arm and not is_top(worn, loop)]
    if low > worn.heights["knee"] + 80.0 or len(hems) != 1:
        return []
    has, need = hems[0].length * worn.gives, STRIDE * hip
    if has >= need - _CLOSE or any(stretch.slit or stretch.roles - {"hem"} for stretch in hems[0].stretches):
        return []
    says = message("wear.stride", has=measured(has), need=measured(need))
    can = message("wear.stride_do", amount=measured(need - has))
    first = hems[0].stretches[0]
    return [told("stride", "warning", says, can, amount=need - has, piece=first.piece, edge=first.edge)]


_HEAD: Landmark = "head_line"


def hat(worn: Worn) -> list[Diagnostic]:
    """What is worn round the head, against the head."""
    head = taken(worn.body, "head_girth")
    pieces = [piece for piece in worn.edges.worn if piece.guide_of(_HEAD) is not None]
    if head is None or not pieces:
        return []
    names = {piece.name for piece in pieces}
    loop = max((loop for loop in worn.edges.shut if loop.pieces & names), key=lambda loop: loop.length, default=None)
    if loop is not None:
        place, has = (loop.stretches[0].piece, loop.stretches[0].edge), loop.length
    else:  # a brim or band is sewn to it: the edge that the line for the head begins at
        edges = [(piece, edge) for piece in pieces if (edge := _head_edge(piece)) is not None]
        if not edges:
            return []
        place = (edges[0][0].name, edges[0][1].name)
        has = sum(edge.path.length * len(piece.sides) for piece, edge in edges)
    if has * worn.gives < head - _CLOSE:
        says = message("wear.head_small", has=measured(has), head=measured(head))
        can = message("wear.head_small_do", amount=measured(head - has))
        more = head - has
        return [
            told("head_small", "error", says, can, amount=more, piece=place[0], edge=place[1], measures=("head_girth",))
        ]
    if has > head + HAT_LOOSE:
        says = message("wear.head_large", has=measured(has), head=measured(head))
        can = message("wear.head_large_do")
        return [told("head_large", "warning", says, can, amount=has - head, piece=place[0], edge=place[1])]
    return []


def _head_edge(piece: Piece) -> Edge | None:
    """The edge, no fold, that runs off most nearly along the piece's line for the head from where that begins."""
    line = piece.guide_of(_HEAD)
    if line is None:
        return None
    near = [
        (abs(tangent.cross(line.start_tangent)), edge)
        for edge in piece.edges
        if edge.name != piece.fold
        for end, tangent in ((edge.path.start, edge.path.start_tangent), (edge.path.end, edge.path.end_tangent))
        if end.distance(line.start) < 1.0
    ]
    return min(near, key=lambda each: each[0], default=(0.0, None))[1]
