"""Moves that draw on the paper or mark it: construction lines, the far half, fullness, openings and notches."""

from __future__ import annotations

from kit.geometry import Path, Vector
from kit.language import say
from kit.live.outline_moves import Ways, squared
from kit.live.picked import DrawnMove, Picked, PickedPoint, no, piece_said, said, short, toward, words
from kit.live.tidy_source import Call, free, keyed
from kit.piece.piece import Edge


def square_line(picked: Picked) -> DrawnMove:
    """A construction line square to the end of an edge."""
    (edge,) = picked.edges(1)
    end, direction, at = squared(picked, edge)
    beside = picked.after(edge.name) if end == "end" else picked.before(edge.name)
    thing = picked.thing(f"{short(edge.name)}_square")
    measure = picked.measure(thing, "length")
    values = {"edge": said(edge), "beside": said(beside), "way": direction, "amount": f"{{{measure}}}"}
    values["thing"] = words(thing)
    drawn = DrawnMove(say("canvas_moves.line_title", values), [say("canvas_moves.line", values)], measure=measure)
    drawn.thing, drawn.least = thing, 1.0
    args = (measure, f'"{direction}"', *([at] if at else []))
    drawn.body.append(Call(picked.on("guide"), (keyed(thing, Call(f"{picked.on(edge.name)}.square", args)),)))
    return drawn


def side_ways(picked: Picked) -> Ways:
    return [(way, say(f"canvas_moves.{way}")) for way in ("inside", "outside")]


def parallel_line(picked: Picked) -> DrawnMove:
    """A construction line parallel to an edge, inside or outside."""
    (edge,) = picked.edges(1)
    way = picked.way or "inside"
    thing = picked.thing(f"{short(edge.name)}_parallel")
    measure = picked.measure(edge.name, "offset")
    values = {"edge": said(edge), "way": way, "amount": f"{{{measure}}}", "thing": words(thing)}
    drawn = DrawnMove(
        say("canvas_moves.parallel_title", values), [say("canvas_moves.parallel", values)], measure=measure
    )
    drawn.thing, drawn.least = thing, 1.0
    line = Call(f"{picked.on(edge.name)}.parallel", (measure, f'"{way}"'))
    drawn.body.append(Call(picked.on("guide"), (keyed(thing, line),)))
    return drawn


def line_ways(picked: Picked) -> Ways:
    return [(way, say(f"canvas_moves.between_{way}")) for way in ("straight", "square", "smooth")]


def draw_between(picked: Picked) -> DrawnMove:
    """A construction line from point to point: ruled, or a curve square to or running into the edges it meets."""
    one, two = picked.places(2)
    if one.at.distance(two.at) < 1.0:
        raise no("same_place")
    way = picked.way or "straight"
    thing = picked.thing(f"{short(one.source)}_{short(two.source)}_line")
    values = {"first": one.said, "second": two.said, "way": way, "thing": words(thing)}
    drawn = DrawnMove(say("canvas_moves.between_title", values), [], thing=thing)
    begin, end = picked.on(one.source), picked.on(two.source)
    if way == "straight":
        drawn.words.append(say("canvas_moves.between", values))
        line = Call(f"{begin}.to", (end,))
    else:
        chord = (two.at - one.at).unit()
        a, b = _edge_for(picked, one, chord, way), _edge_for(picked, two, chord, way)
        drawn.measure = picked.measure(thing, "fullness")
        drawn.kind, drawn.amount, drawn.least = "share", 1.0, 0.3
        values |= {"one": said(a), "other": said(b), "amount": f"{{{drawn.measure}}}"}
        drawn.words.append(say("canvas_moves.between_curve", values))
        leave, arrive = ("square_to", "end_square_to") if way == "square" else ("along", "end_along")
        args = (end, f"{leave}={picked.on(a.name)}", f"{arrive}={picked.on(b.name)}", f"fullness={drawn.measure}")
        line = Call(f"{begin}.curve_to", args)
    drawn.body.append(Call(picked.on("guide"), (keyed(thing, line),)))
    return drawn


def _edge_for(picked: Picked, place: PickedPoint, chord: Vector, way: str) -> Edge:
    """Of the edges at a point the one that a curve along the chord is more nearly square to, or runs along."""
    found = [edge for edge in picked.at_point(place.at) if edge is not None]
    if not found:
        raise no("no_edge_at", point=place.said)

    def slant(edge: Edge) -> float:
        tangent = edge.path.tangent_at(edge.path.nearest(place.at))
        return abs(tangent.dot(chord))

    return min(found, key=slant) if way == "square" else max(found, key=slant)


def mirror(picked: Picked) -> DrawnMove:
    """The far half traced as construction lines, the paper folded along a straight edge."""
    (edge,) = picked.edges(1)
    if not edge.path.is_straight:
        raise no("fold_curved", edge=said(edge))
    own = picked.on(edge.name)
    guides = {name for name, _ in picked.piece.guides}
    prefix = "far_"
    if any(f"{prefix}{e.name}" in guides for e in picked.piece.edges):
        prefix = f"{short(edge.name)}_far_"
    if any(name.startswith(prefix) for name in guides):
        raise no("mirrored_already", edge=said(edge))
    other = next(e for e in picked.piece.edges if e.name != edge.name)
    values = {"edge": said(edge), "example": words(f"{prefix}{other.name}")}
    drawn = DrawnMove(say("canvas_moves.mirror_title", values), [say("canvas_moves.mirror", values)])
    drawn.body.append(Call(picked.on("mirror"), (own,) if prefix == "far_" else (own, f'prefix="{prefix}"')))
    return drawn


def spread_ways(picked: Picked) -> Ways:
    return [(way, say(f"canvas_moves.spread_{way}")) for way in ("parallel", "hinged")]


def spread(picked: Picked) -> DrawnMove:
    """The paper slashed from the middle of one edge to the middle of another and spread."""
    one, two = picked.edges(2)
    way = picked.way or "parallel"
    measure = picked.measure(one.name, "spread")
    values = {"first": said(one), "second": said(two), "way": way, "amount": f"{{{measure}}}"}
    drawn = DrawnMove(say("canvas_moves.spread_title", values), [say("canvas_moves.spread", values)], measure=measure)
    drawn.amount, drawn.least = 30.0, 1.0
    places = tuple(f'("{edge.name}", {picked.on(edge.name)}.length / 2)' for edge in (one, two))
    hinged = ("hinged=True",) if way == "hinged" else ()
    drawn.body.append(Call(picked.on("spread"), (*places, measure, *hinged)))
    return drawn


def along_ways(picked: Picked) -> Ways:
    edge = picked.edges(1)[0]
    return [
        ("middle", say("canvas_moves.in_middle")),
        ("start", say("canvas_moves.from_edge", edge=said(picked.before(edge.name)))),
        ("end", say("canvas_moves.from_edge", edge=said(picked.after(edge.name)))),
    ]


def opening(picked: Picked) -> DrawnMove:
    """An opening left in an edge, in its middle or at one end."""
    (edge,) = picked.edges(1)
    way = picked.way or "middle"
    beside = picked.after(edge.name) if way == "end" else picked.before(edge.name)
    thing = picked.thing(f"{short(edge.name)}_opening")
    measure = picked.measure(thing, "size")
    values = {"edge": said(edge), "beside": said(beside), "way": way, "amount": f"{{{measure}}}"}
    drawn = DrawnMove(say("canvas_moves.opening_title", values), [say("canvas_moves.opening", values)], measure=measure)
    drawn.thing, drawn.amount, drawn.least = thing, min(40.0, edge.path.length / 2), 1.0
    drawn.within = edge
    own = picked.on(edge.name)
    at = {"middle": f"({own}.length - {measure}) / 2", "start": "0", "end": f"{own}.length - {measure}"}[way]
    drawn.body.append(Call(picked.on("leave_open"), (f'"{thing}"', f'"{edge.name}"', f"at={at}", f"size={measure}")))
    return drawn


def notch_ways(picked: Picked) -> Ways:
    if len(picked.names) == 2:
        return []
    return along_ways(picked)[1:]


def notch(picked: Picked) -> DrawnMove:
    """A notch on an edge; on two edges of two pieces a matched pair."""
    wanted = [one for one in picked.chosen if one.kind == "edge"]
    if len(wanted) == 2 and len(picked.names) == 2 and len(picked.chosen) == 2:
        return _pair(picked)
    (edge,) = picked.edges(1)
    way = "end" if picked.way == "end" else "start"
    beside = picked.after(edge.name) if way == "end" else picked.before(edge.name)
    measure = picked.measure(edge.name, "notch")
    values = {"edge": said(edge), "beside": said(beside), "amount": f"{{{measure}}}"}
    drawn = DrawnMove(say("canvas_moves.notch_title", values), [say("canvas_moves.notch", values)], measure=measure)
    drawn.amount, drawn.least, drawn.within = _third(edge.path), 1.0, edge
    own = picked.on(edge.name)
    at = measure if way == "start" else f"{own}.length - {measure}"
    drawn.body += [
        Call(f"place = {own}.at", (at,)),
        Call(picked.on("measure"), (f"{measure}=({own}.{way}, place)",)),
        Call(picked.on("notch"), (f'"{edge.name}"', at)),
    ]
    if way == "start":
        del drawn.body[1]
        drawn.body[0] = Call(picked.on("measure"), (f"{measure}=({own}.start, {own}.at({measure}))",))
    return drawn


def _pair(picked: Picked) -> DrawnMove:
    one, two = (one for one in picked.chosen if one.kind == "edge")
    first, second = picked.pieces[one.piece].edge(one.name), picked.pieces[two.piece].edge(two.name)
    measure = picked.measure(one.name, "notch")
    values = {
        "first": said(first),
        "second": said(second),
        "one": piece_said(picked.pieces[one.piece]),
        "other": piece_said(picked.pieces[two.piece]),
        "amount": f"{{{measure}}}",
    }
    drawn = DrawnMove(say("canvas_moves.pair_title", values), [say("canvas_moves.pair", values)], measure=measure)
    drawn.amount, drawn.least = min(_third(first.path), _third(second.path)), 1.0
    drawn.within = min(first, second, key=lambda edge: edge.path.length)
    args = (f"{one.piece}.{one.name}", f"{two.piece}.{two.name}", f"at={measure}")
    drawn.body.append(Call(f"{one.piece}.match", args))
    drawn.apart = True
    return drawn


def _third(path: Path) -> float:
    return max(round(path.length / 30) * 10.0, 5.0)


def cut_ways(picked: Picked) -> Ways:
    """Which part becomes the new piece: that with the edges after the first one chosen, or that with those before."""
    one, two = picked.edges(2)
    after, before = _parts(picked, one, two)
    found = [("after", after), ("before", before)]
    return [(way, say("canvas_moves.cut_part", edge=said(picked.piece.edge(part[0])))) for way, part in found if part]


def cut_apart(picked: Picked) -> DrawnMove:
    """A piece cut in two along a line that is squared across from one edge to another."""
    one, two = picked.edges(2)
    piece = picked.piece
    if len(picked.names) > 1:
        raise no("one_piece")
    if piece.notches or piece.marks or any(edge.allowance for edge in piece.edges):
        raise no("cut_earlier", piece=piece_said(piece))
    picked.kept_whole(one, two)
    after, before = _parts(picked, one, two)
    later = (picked.way != "before" and bool(after)) or not before
    taken, left = (after, before) if later else (before, after)
    thing = free(picked.wanted_thing or f"{picked.names[0]}_part", picked.taken)
    seam = picked.thing(f"{short(thing)}_seam", own=False)
    measure = picked.measure(thing, "depth")
    left_word, right_word = toward(one.path, one.path.length / 2)
    inward = left_word if picked.inside_left() else right_word
    values = {"piece": piece_said(piece), "first": said(one), "second": said(two), "thing": words(thing)}
    values |= {"beside": said(piece.edge((taken or left)[0])), "seam": words(seam), "amount": f"{{{measure}}}"}
    drawn = DrawnMove(say("canvas_moves.cut_title", values), [say("canvas_moves.cut", values)], measure=measure)
    drawn.thing, drawn.makes, drawn.least = thing, thing, 1.0
    drawn.amount, drawn.within = max(round(one.path.length / 20) * 5.0, 5.0), one
    # Both parts keep the seam as an edge of the same name. The new part is traced from the whole and loses what stays;
    # the old one loses what the new part took; each joins the seam to the two edges it was squared between.
    own, a, b = picked.subject, picked.on(one.name), picked.on(two.name)
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


def _parts(picked: Picked, one: Edge, two: Edge) -> tuple[list[str], list[str]]:
    """The edges from the first round to the second, and those from the second round to the first."""
    names = [edge.name for edge in picked.piece.edges]
    at = names.index(one.name)
    turned = [*names[at + 1 :], *names[:at]]
    middle = turned.index(two.name)
    return turned[:middle], turned[middle + 1 :]
