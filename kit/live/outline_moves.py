"""Moves that change the outline: points and edges moved, lines carried on, squared off, rounded and curved."""

from __future__ import annotations

from kit.language import say
from kit.live.hand import Drawn, Hand, no, said, short, toward, vector, words
from kit.live.tidy_source import Call, keyed
from kit.piece.piece import Edge

Ways = list[tuple[str, str]]
_WORD = {"up": "lift", "down": "drop", "out": "out", "in": "in"}
_VERB = {"up": "up", "down": "down", "out": "out", "in": "into"}


def direction_ways(hand: Hand) -> Ways:
    return [(way, say(f"canvas_moves.way_{way}")) for way in _WORD]


def move_point(hand: Hand) -> Drawn:
    """A point up, down, out or in; the edges that meet there are drawn again to it."""
    (point,) = hand.places(1)
    way = hand.way or "up"
    ending, starting = hand.at_point(point.at)
    measure = hand.measure(point.source, _WORD[way])
    values = {"point": point.said, "way": way, "amount": f"{{{measure}}}"}
    drawn = Drawn(say("canvas_moves.point_title", values), [say("canvas_moves.point", values)], measure=measure)
    moved = Call(f"{hand.on(point.source)}.{_VERB[way]}", (measure,))
    if point.named:
        new = hand.on(point.source)
    else:
        new = {"up": "raised", "down": "lowered"}.get(way, "moved")
    drawn.body.append(Call(f"{new} = {moved.head}", moved.args))
    for edge, end in ((ending, "end"), (starting, "start")):
        if edge is not None:
            statement, sentence = hand.redrawn(edge, end, new, vector(way))
            drawn.body.append(statement)
            drawn.words.append(sentence)
    return drawn


def end_ways(hand: Hand) -> Ways:
    (edge,) = hand.edges(1)
    return [
        ("end", say("canvas_moves.at_edge", edge=said(hand.after(edge.name)))),
        ("start", say("canvas_moves.at_edge", edge=said(hand.before(edge.name)))),
    ]


def extend(hand: Hand) -> Drawn:
    """An edge carried on straight at one end; its neighbour is drawn again from there."""
    (edge,) = hand.edges(1)
    hand.kept_whole(edge)
    end = hand.way or "end"
    own, beside = hand.on(edge.name), hand.after(edge.name) if end == "end" else hand.before(edge.name)
    measure = hand.measure(edge.name, "extension")
    values = {"edge": said(edge), "beside": said(beside), "amount": f"{{{measure}}}"}
    drawn = Drawn(say("canvas_moves.extend_title", values), [say("canvas_moves.extend", values)], measure=measure)
    at = edge.path.end if end == "end" else edge.path.start
    outward = edge.path.end_tangent if end == "end" else edge.path.start_tangent * -1.0
    if edge.path.is_straight and end == "end":
        drawn.body.append(Call(f"{own} = {own}.start.through", (f"{own}.end", f"beyond={measure}")))
    else:
        drawn.least = 1.0
        args = (measure,) if end == "end" else (measure, 'end="start"')
        drawn.body += [
            f"old = {own}.{end}",
            Call(f"{own} = {own}.extended", args),
            Call(hand.on("measure"), (f"{measure}=(old, {own}.{end})",)),
        ]
    drawn.body += hand.carried(at, f"{own}.{end}")
    statement, sentence = hand.redrawn(beside, "start" if end == "end" else "end", f"{own}.{end}", outward)
    drawn.body.append(statement)
    drawn.words.append(sentence)
    return drawn


def square_ways(hand: Hand) -> Ways:
    """Either end, to either side."""
    (edge,) = hand.edges(1)
    found = []
    for end, beside in (("end", hand.after(edge.name)), ("start", hand.before(edge.name))):
        for way in toward(edge.path, edge.path.length if end == "end" else 0.0):
            label = say("canvas_moves.square_way", edge=said(beside), way=say(f"canvas_moves.way_{way}"))
            found.append((f"{end} {way}", label))
    return found


def squared(hand: Hand, edge: Edge) -> tuple[str, str, str]:
    """(end, direction, what is written for it) of the way chosen."""
    ways = [key for key, _ in square_ways(hand)]
    way = hand.way if hand.way in ways else ways[0]
    end, direction = way.split()
    return end, direction, "" if end == "end" else 'at="start"'


def square_edge(hand: Hand) -> Drawn:
    """A new edge square to the end of another; the neighbour is drawn again from its tip."""
    (edge,) = hand.edges(1)
    end, direction, at = squared(hand, edge)
    own, beside = hand.on(edge.name), hand.after(edge.name) if end == "end" else hand.before(edge.name)
    thing, measure = hand.thing(f"{short(edge.name)}_square"), ""
    measure = hand.measure(thing, "length")
    values = {"edge": said(edge), "beside": said(beside), "way": direction, "amount": f"{{{measure}}}"}
    values["thing"] = words(thing)
    drawn = Drawn(say("canvas_moves.square_title", values), [say("canvas_moves.square", values)], measure=measure)
    drawn.thing, drawn.least = thing, 1.0
    line = Call(f"{own}.square", (measure, f'"{direction}"', *([at] if at else [])))
    if end == "end":
        drawn.body.append(Call(hand.on("draw"), (keyed(thing, line), f"after={own}")))
        statement, sentence = hand.redrawn(beside, "start", hand.on(f"{thing}.end"), vector(direction))
        drawn.body.append(statement)
    else:  # the neighbour first, so that it is clear which way the new edge runs
        statement, sentence = hand.redrawn(beside, "end", "line.end", vector(direction))
        drawn.body += [Call(f"line = {line.head}", line.args), statement]
        drawn.body.append(Call(hand.on("draw"), (f"{thing}=line", f"after={hand.on(beside.name)}")))
    drawn.words.append(sentence)
    more, told = hand.allowed(thing, edge)
    drawn.body += more
    drawn.words += told
    return drawn


def corner_of(hand: Hand) -> tuple[Edge, Edge]:
    """The two edges that meet at the chosen corner, in order: the corner itself, or both edges, was chosen."""
    if any(one.kind == "point" for one in hand.chosen):
        (point,) = hand.places(1)
        ending, starting = hand.at_point(point.at)
        if ending is None or starting is None:
            raise no("no_corner", point=point.said)
        return ending, starting
    one, two = hand.edges(2)
    if hand.after(one.name).name == two.name:
        return one, two
    if hand.after(two.name).name == one.name:
        return two, one
    raise no("not_neighbours", first=said(one), second=said(two))


def round_corner(hand: Hand) -> Drawn:
    """A corner rounded off by a curve that runs into both edges."""
    one, two = corner_of(hand)
    hand.kept_whole(one, two)
    if abs(one.path.end_tangent.cross(two.path.start_tangent)) < 0.05:
        raise no("no_corner_there", first=said(one), second=said(two))
    thing = hand.thing(f"{short(one.name)}_round")
    measure = hand.measure(thing, "reach")
    values = {"first": said(one), "second": said(two), "amount": f"{{{measure}}}"}
    drawn = Drawn(say("canvas_moves.round_title", values), [say("canvas_moves.round", values)], measure=measure)
    a, b = hand.on(one.name), hand.on(two.name)
    drawn.thing, drawn.least = thing, 1.0
    drawn.within = min(one, two, key=lambda edge: edge.path.length)
    curve = Call("begin.curve_to", ("end", f"along={a}", f"end_along={b}"))
    drawn.body += [
        Call(f"begin = {a}.at", (f"{a}.length - {measure}",)),
        Call(f"end = {b}.at", (measure,)),
        Call(hand.on("draw"), (keyed(thing, curve), f"after={a}")),
        Call(hand.on("join"), (a, hand.on(thing))),
        Call(hand.on("join"), (hand.on(thing), b)),
    ]
    more, told = hand.allowed(thing, one)
    drawn.body += more
    drawn.words += told
    return drawn


def curve_ways(hand: Hand) -> Ways:
    return [(way, say(f"canvas_moves.curve_{way}")) for way in ("square", "smooth", "square_smooth", "smooth_square")]


def curve_edge(hand: Hand) -> Drawn:
    """An edge drawn again as one curve, at each end square to its neighbour or running into it."""
    (edge,) = hand.edges(1)
    hand.kept_whole(edge)
    if any(hand.pieces[name].fold == edge.name for name in hand.names):
        raise no("fold_straight", edge=said(edge))
    way = hand.way or "square"
    first, last = {"square": ("square", "square"), "smooth": ("smooth", "smooth")}.get(way) or way.split("_")
    before, after = hand.before(edge.name), hand.after(edge.name)
    measure = hand.measure(edge.name, "fullness")
    values = {"edge": said(edge), "before": said(before), "after": said(after), "amount": f"{{{measure}}}", "way": way}
    drawn = Drawn(say("canvas_moves.curve_title", values), [say("canvas_moves.curve", values)], measure=measure)
    drawn.kind, drawn.amount, drawn.least = "share", 1.0, 0.3
    own = hand.on(edge.name)
    begin = f"{'square_to' if first == 'square' else 'along'}={hand.on(before.name)}"
    finish = f"{'end_square_to' if last == 'square' else 'end_along'}={hand.on(after.name)}"
    drawn.body.append(Call(f"{own} = {own}.start.curve_to", (f"{own}.end", begin, finish, f"fullness={measure}")))
    return drawn


def into_ways(hand: Hand) -> Ways:
    return [(way, say(f"canvas_moves.into_{way}")) for way in ("smooth", "square")]


def curve_into(hand: Hand) -> Drawn:
    """The edge between two others drawn as a curve: square to the first, joining the second part of the way along."""
    one, two = hand.edges(2)
    way = hand.way or "smooth"
    forward = hand.after(hand.after(one.name).name).name == two.name
    if not forward and hand.before(hand.before(one.name).name).name != two.name:
        raise no("not_one_between", first=said(one), second=said(two))
    between = hand.after(one.name) if forward else hand.before(one.name)
    hand.kept_whole(between, two)
    if any(hand.pieces[name].fold == between.name for name in hand.names):
        raise no("fold_straight", edge=said(between))
    measure = hand.measure(between.name, "reach")
    values = {"edge": said(between), "first": said(one), "second": said(two), "way": way, "amount": f"{{{measure}}}"}
    drawn = Drawn(say("canvas_moves.into_title", values), [say("canvas_moves.into", values)], measure=measure)
    drawn.amount, drawn.within = min(60.0, two.path.length / 3), two
    a, b, c = hand.on(one.name), hand.on(between.name), hand.on(two.name)
    if forward:
        verb = "curve_into" if way == "smooth" else "curve_square_to"
        drawn.body += [Call(f"{b} = {a}.{verb}", (c, f"at={measure}")), Call(hand.on("join"), (b, c))]
        if way == "square":
            drawn.least = 1.0
            at = Call(f"{c}.at", (measure,)).flat()
            drawn.body.insert(0, Call(hand.on("measure"), (f"{measure}=({c}.start, {at})",)))
        return drawn
    arrive = f"{'along' if way == 'smooth' else 'square_to'}={c}"
    drawn.least = 1.0
    drawn.body += [
        Call(f"meet = {c}.at", (f"{c}.length - {measure}",)),
        Call(hand.on("measure"), (f"{measure}=({c}.end, meet)",)),
        Call(f"{b} = meet.curve_to", (f"{a}.start", arrive, f"end_square_to={a}")),
        Call(hand.on("join"), (c, b)),
    ]
    return drawn


def edge_ways(hand: Hand) -> Ways:
    """The two sides of an edge, outward first."""
    (edge,) = hand.edges(1)
    left, right = toward(edge.path, edge.path.length / 2)
    outward, inward = (right, left) if hand.inside_left() else (left, right)
    return [(way, say(f"canvas_moves.way_{way}")) for way in (outward, inward)]


def move_edge(hand: Hand) -> Drawn:
    """An edge moved to a parallel; the edges beside it are trimmed or carried on to meet it."""
    (edge,) = hand.edges(1)
    before, after = hand.before(edge.name), hand.after(edge.name)
    hand.kept_whole(edge)
    if any(hand.pieces[name].fold == edge.name for name in hand.names):
        raise no("fold_moved", edge=said(edge))
    (outward, _), (inward, _) = edge_ways(hand)
    way = hand.way if hand.way in (outward, inward) else outward
    measure = hand.measure(edge.name, _WORD[way])
    values = {"edge": said(edge), "before": said(before), "after": said(after), "way": way, "amount": f"{{{measure}}}"}
    drawn = Drawn(say("canvas_moves.edge_title", values), [say("canvas_moves.edge", values)], measure=measure)
    own = hand.on(edge.name)
    if way == outward and hand.closed():
        drawn.body.append(Call(hand.on("extend_hem"), (own, measure)))
        return drawn
    drawn.body += [
        Call(f"{own} = {own}.parallel", (measure, f'"{way}"')),
        Call(hand.on("join"), (hand.on(before.name), own)),
        Call(hand.on("join"), (own, hand.on(after.name))),
        *hand.carried(edge.path.start, f"{own}.start"),
        *hand.carried(edge.path.end, f"{own}.end"),
    ]
    return drawn
