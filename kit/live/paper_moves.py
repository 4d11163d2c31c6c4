"""Moves that draw on the paper or mark it: construction lines, the far half, fullness, openings and notches."""

from __future__ import annotations

from kit.geometry import Path, Vector
from kit.language import say
from kit.live.hand import Drawn, Hand, Place, no, piece_said, said, short, toward, words
from kit.live.outline_moves import Ways, squared
from kit.live.tidy_source import Call, free, keyed
from kit.piece.piece import Edge


def square_line(hand: Hand) -> Drawn:
    """A construction line square to the end of an edge."""
    (edge,) = hand.edges(1)
    end, direction, at = squared(hand, edge)
    beside = hand.after(edge.name) if end == "end" else hand.before(edge.name)
    thing = hand.thing(f"{short(edge.name)}_square")
    measure = hand.measure(thing, "length")
    values = {"edge": said(edge), "beside": said(beside), "way": direction, "amount": f"{{{measure}}}"}
    values["thing"] = words(thing)
    drawn = Drawn(say("canvas_moves.line_title", values), [say("canvas_moves.line", values)], measure=measure)
    drawn.thing, drawn.least = thing, 1.0
    args = (measure, f'"{direction}"', *([at] if at else []))
    drawn.body.append(Call(hand.on("guide"), (keyed(thing, Call(f"{hand.on(edge.name)}.square", args)),)))
    return drawn


def side_ways(hand: Hand) -> Ways:
    return [(way, say(f"canvas_moves.{way}")) for way in ("inside", "outside")]


def parallel_line(hand: Hand) -> Drawn:
    """A construction line parallel to an edge, inside or outside."""
    (edge,) = hand.edges(1)
    way = hand.way or "inside"
    thing = hand.thing(f"{short(edge.name)}_parallel")
    measure = hand.measure(edge.name, "offset")
    values = {"edge": said(edge), "way": way, "amount": f"{{{measure}}}", "thing": words(thing)}
    drawn = Drawn(say("canvas_moves.parallel_title", values), [say("canvas_moves.parallel", values)], measure=measure)
    drawn.thing, drawn.least = thing, 1.0
    line = Call(f"{hand.on(edge.name)}.parallel", (measure, f'"{way}"'))
    drawn.body.append(Call(hand.on("guide"), (keyed(thing, line),)))
    return drawn


def line_ways(hand: Hand) -> Ways:
    return [(way, say(f"canvas_moves.between_{way}")) for way in ("straight", "square", "smooth")]


def draw_between(hand: Hand) -> Drawn:
    """A construction line from point to point: ruled, or a curve square to or running into the edges it meets."""
    one, two = hand.places(2)
    if one.at.distance(two.at) < 1.0:
        raise no("same_place")
    way = hand.way or "straight"
    thing = hand.thing(f"{short(one.source)}_{short(two.source)}_line")
    values = {"first": one.said, "second": two.said, "way": way, "thing": words(thing)}
    drawn = Drawn(say("canvas_moves.between_title", values), [], thing=thing)
    begin, end = hand.on(one.source), hand.on(two.source)
    if way == "straight":
        drawn.words.append(say("canvas_moves.between", values))
        line = Call(f"{begin}.to", (end,))
    else:
        chord = (two.at - one.at).unit()
        a, b = _edge_for(hand, one, chord, way), _edge_for(hand, two, chord, way)
        drawn.measure = hand.measure(thing, "fullness")
        drawn.kind, drawn.amount, drawn.least = "share", 1.0, 0.3
        values |= {"one": said(a), "other": said(b), "amount": f"{{{drawn.measure}}}"}
        drawn.words.append(say("canvas_moves.between_curve", values))
        leave, arrive = ("square_to", "end_square_to") if way == "square" else ("along", "end_along")
        args = (end, f"{leave}={hand.on(a.name)}", f"{arrive}={hand.on(b.name)}", f"fullness={drawn.measure}")
        line = Call(f"{begin}.curve_to", args)
    drawn.body.append(Call(hand.on("guide"), (keyed(thing, line),)))
    return drawn


def _edge_for(hand: Hand, place: Place, chord: Vector, way: str) -> Edge:
    """Of the edges at a point the one that a curve along the chord is more nearly square to, or runs along."""
    found = [edge for edge in hand.at_point(place.at) if edge is not None]
    if not found:
        raise no("no_edge_at", point=place.said)

    def slant(edge: Edge) -> float:
        tangent = edge.path.tangent_at(edge.path.nearest(place.at))
        return abs(tangent.dot(chord))

    return min(found, key=slant) if way == "square" else max(found, key=slant)


def mirror(hand: Hand) -> Drawn:
    """The far half traced as construction lines, the paper folded along a straight edge."""
    (edge,) = hand.edges(1)
    if not edge.path.is_straight:
        raise no("fold_curved", edge=said(edge))
    own = hand.on(edge.name)
    guides = {name for name, _ in hand.piece.guides}
    prefix = "far_"
    if any(f"{prefix}{e.name}" in guides for e in hand.piece.edges):
        prefix = f"{short(edge.name)}_far_"
    if any(name.startswith(prefix) for name in guides):
        raise no("mirrored_already", edge=said(edge))
    other = next(e for e in hand.piece.edges if e.name != edge.name)
    values = {"edge": said(edge), "example": words(f"{prefix}{other.name}")}
    drawn = Drawn(say("canvas_moves.mirror_title", values), [say("canvas_moves.mirror", values)])
    drawn.body.append(Call(hand.on("mirror"), (own,) if prefix == "far_" else (own, f'prefix="{prefix}"')))
    return drawn


def spread_ways(hand: Hand) -> Ways:
    return [(way, say(f"canvas_moves.spread_{way}")) for way in ("parallel", "hinged")]


def spread(hand: Hand) -> Drawn:
    """The paper slashed from the middle of one edge to the middle of another and spread."""
    one, two = hand.edges(2)
    way = hand.way or "parallel"
    measure = hand.measure(one.name, "spread")
    values = {"first": said(one), "second": said(two), "way": way, "amount": f"{{{measure}}}"}
    drawn = Drawn(say("canvas_moves.spread_title", values), [say("canvas_moves.spread", values)], measure=measure)
    drawn.amount, drawn.least = 30.0, 1.0
    places = tuple(f'("{edge.name}", {hand.on(edge.name)}.length / 2)' for edge in (one, two))
    hinged = ("hinged=True",) if way == "hinged" else ()
    drawn.body.append(Call(hand.on("spread"), (*places, measure, *hinged)))
    return drawn


def along_ways(hand: Hand) -> Ways:
    edge = hand.edges(1)[0]
    return [
        ("middle", say("canvas_moves.in_middle")),
        ("start", say("canvas_moves.from_edge", edge=said(hand.before(edge.name)))),
        ("end", say("canvas_moves.from_edge", edge=said(hand.after(edge.name)))),
    ]


def opening(hand: Hand) -> Drawn:
    """An opening left in an edge, in its middle or at one end."""
    (edge,) = hand.edges(1)
    way = hand.way or "middle"
    beside = hand.after(edge.name) if way == "end" else hand.before(edge.name)
    thing = hand.thing(f"{short(edge.name)}_opening")
    measure = hand.measure(thing, "size")
    values = {"edge": said(edge), "beside": said(beside), "way": way, "amount": f"{{{measure}}}"}
    drawn = Drawn(say("canvas_moves.opening_title", values), [say("canvas_moves.opening", values)], measure=measure)
    drawn.thing, drawn.amount, drawn.least = thing, min(40.0, edge.path.length / 2), 1.0
    drawn.within = edge
    own = hand.on(edge.name)
    at = {"middle": f"({own}.length - {measure}) / 2", "start": "0", "end": f"{own}.length - {measure}"}[way]
    drawn.body.append(Call(hand.on("leave_open"), (f'"{thing}"', f'"{edge.name}"', f"at={at}", f"size={measure}")))
    return drawn


def notch_ways(hand: Hand) -> Ways:
    if len(hand.names) == 2:
        return []
    return along_ways(hand)[1:]


def notch(hand: Hand) -> Drawn:
    """A notch on an edge; on two edges of two pieces a matched pair."""
    wanted = [one for one in hand.chosen if one.kind == "edge"]
    if len(wanted) == 2 and len(hand.names) == 2 and len(hand.chosen) == 2:
        return _pair(hand)
    (edge,) = hand.edges(1)
    way = "end" if hand.way == "end" else "start"
    beside = hand.after(edge.name) if way == "end" else hand.before(edge.name)
    measure = hand.measure(edge.name, "notch")
    values = {"edge": said(edge), "beside": said(beside), "amount": f"{{{measure}}}"}
    drawn = Drawn(say("canvas_moves.notch_title", values), [say("canvas_moves.notch", values)], measure=measure)
    drawn.amount, drawn.least, drawn.within = _third(edge.path), 1.0, edge
    own = hand.on(edge.name)
    at = measure if way == "start" else f"{own}.length - {measure}"
    drawn.body += [
        Call(f"place = {own}.at", (at,)),
        Call(hand.on("measure"), (f"{measure}=({own}.{way}, place)",)),
        Call(hand.on("notch"), (f'"{edge.name}"', at)),
    ]
    if way == "start":
        del drawn.body[1]
        drawn.body[0] = Call(hand.on("measure"), (f"{measure}=({own}.start, {own}.at({measure}))",))
    return drawn


def _pair(hand: Hand) -> Drawn:
    one, two = (one for one in hand.chosen if one.kind == "edge")
    first, second = hand.pieces[one.piece].edge(one.name), hand.pieces[two.piece].edge(two.name)
    measure = hand.measure(one.name, "notch")
    values = {
        "first": said(first),
        "second": said(second),
        "one": piece_said(hand.pieces[one.piece]),
        "other": piece_said(hand.pieces[two.piece]),
        "amount": f"{{{measure}}}",
    }
    drawn = Drawn(say("canvas_moves.pair_title", values), [say("canvas_moves.pair", values)], measure=measure)
    drawn.amount, drawn.least = min(_third(first.path), _third(second.path)), 1.0
    drawn.within = min(first, second, key=lambda edge: edge.path.length)
    args = (f"{one.piece}.{one.name}", f"{two.piece}.{two.name}", f"at={measure}")
    drawn.body.append(Call(f"{one.piece}.match", args))
    drawn.apart = True
    return drawn


def _third(path: Path) -> float:
    return max(round(path.length / 30) * 10.0, 5.0)


def cut_ways(hand: Hand) -> Ways:
    """Which part becomes the new piece: that with the edges after the first one chosen, or that with those before."""
    one, two = hand.edges(2)
    after, before = _parts(hand, one, two)
    found = [("after", after), ("before", before)]
    return [(way, say("canvas_moves.cut_part", edge=said(hand.piece.edge(part[0])))) for way, part in found if part]


def cut_apart(hand: Hand) -> Drawn:
    """A piece cut in two along a line that is squared across from one edge to another."""
    one, two = hand.edges(2)
    piece = hand.piece
    if len(hand.names) > 1:
        raise no("one_piece")
    if piece.notches or piece.marks or any(edge.allowance for edge in piece.edges):
        raise no("cut_earlier", piece=piece_said(piece))
    hand.kept_whole(one, two)
    after, before = _parts(hand, one, two)
    later = (hand.way != "before" and bool(after)) or not before
    taken, left = (after, before) if later else (before, after)
    thing = free(hand.wanted_thing or f"{hand.names[0]}_part", hand.taken)
    seam = hand.thing(f"{short(thing)}_seam", own=False)
    measure = hand.measure(thing, "depth")
    left_word, right_word = toward(one.path, one.path.length / 2)
    inward = left_word if hand.inside_left() else right_word
    values = {"piece": piece_said(piece), "first": said(one), "second": said(two), "thing": words(thing)}
    values |= {"beside": said(piece.edge((taken or left)[0])), "seam": words(seam), "amount": f"{{{measure}}}"}
    drawn = Drawn(say("canvas_moves.cut_title", values), [say("canvas_moves.cut", values)], measure=measure)
    drawn.thing, drawn.makes, drawn.least = thing, thing, 1.0
    drawn.amount, drawn.within = max(round(one.path.length / 20) * 5.0, 5.0), one
    own, a, b = hand.subject, hand.on(one.name), hand.on(two.name)
    at = f"{a}.length - {measure}" if later else measure
    drawn.body += [
        Call(f"{thing}.trace", (own,)),
        Call(f"place = {a}.at", (at,)),
        *([Call(f"{own}.measure", (f"{measure}=({a}.end, place)",))] if later else []),
        Call("cut = place.to", (Call("place.across", (b, f'"{inward}"')),)),
    ]
    for name, gone, order in ((thing, left, (two, one)), (own, taken, (one, two))):
        first, last = order if later else order[::-1]
        old = ", ".join(f'"{edge}"' for edge in gone)
        instead = f"instead_of=({old})" if gone[1:] else f"instead_of={old}" if gone else f'after="{first.name}"'
        drawn.body += [
            Call(f"{name}.draw", (f"{seam}=cut", instead)),
            Call(f"{name}.join", (f'"{first.name}"', f'"{seam}"')),
            Call(f"{name}.join", (f'"{seam}"', f'"{last.name}"')),
        ]
    if piece.fold in taken:
        drawn.body.append(Call(f"{own}.cut", ("2", "mirrored=True")))
    if piece.fold in (*taken, one.name, two.name):
        drawn.body.append(Call(f"{thing}.cut", ("1", f'fold="{piece.fold}"')))
    return drawn


def _parts(hand: Hand, one: Edge, two: Edge) -> tuple[list[str], list[str]]:
    """The edges from the first round to the second, and those from the second round to the first."""
    names = [edge.name for edge in hand.piece.edges]
    at = names.index(one.name)
    turned = [*names[at + 1 :], *names[:at]]
    middle = turned.index(two.name)
    return turned[:middle], turned[middle + 1 :]
