"""Moves that change the outline: points and edges moved, lines carried on, squared off, rounded and curved."""

from __future__ import annotations

from kit.language import say
from kit.live.picked import DrawnMove, Picked, no, said, short, toward, vector, words
from kit.live.tidy_source import Call, keyed
from kit.piece.piece import Edge

Ways = list[tuple[str, str]]
_WORD = {"up": "lift", "down": "drop", "out": "out", "in": "in"}
_VERB = {"up": "up", "down": "down", "out": "out", "in": "into"}


def direction_ways(picked: Picked) -> Ways:
    return [(way, say(f"canvas_moves.way_{way}")) for way in _WORD]


def move_point(picked: Picked) -> DrawnMove:
    """A point up, down, out or in; the edges that meet there are drawn again to it."""
    (point,) = picked.places(1)
    way = picked.way or "up"
    ending, starting = picked.at_point(point.at)
    measure = picked.measure(point.source, _WORD[way])
    values = {"point": point.said, "way": way, "amount": f"{{{measure}}}"}
    drawn = DrawnMove(say("canvas_moves.point_title", values), [say("canvas_moves.point", values)], measure=measure)
    moved = Call(f"{picked.on(point.source)}.{_VERB[way]}", (measure,))
    if point.named:
        new = picked.on(point.source)
    else:
        new = {"up": "raised", "down": "lowered"}.get(way, "moved")
    drawn.body.append(Call(f"{new} = {moved.head}", moved.args))
    for edge, end in ((ending, "end"), (starting, "start")):
        if edge is not None:
            statement, sentence = picked.redrawn(edge, end, new, vector(way))
            drawn.body.append(statement)
            drawn.words.append(sentence)
    return drawn


def end_ways(picked: Picked) -> Ways:
    (edge,) = picked.edges(1)
    return [
        ("end", say("canvas_moves.at_edge", edge=said(picked.after(edge.name)))),
        ("start", say("canvas_moves.at_edge", edge=said(picked.before(edge.name)))),
    ]


def extend(picked: Picked) -> DrawnMove:
    """An edge carried on straight at one end; its neighbour is drawn again from there."""
    (edge,) = picked.edges(1)
    picked.kept_whole(edge)
    end = picked.way or "end"
    own, beside = picked.on(edge.name), picked.after(edge.name) if end == "end" else picked.before(edge.name)
    measure = picked.measure(edge.name, "extension")
    values = {"edge": said(edge), "beside": said(beside), "amount": f"{{{measure}}}"}
    drawn = DrawnMove(say("canvas_moves.extend_title", values), [say("canvas_moves.extend", values)], measure=measure)
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
            Call(picked.on("measure"), (f"{measure}=(old, {own}.{end})",)),
        ]
    drawn.body += picked.carried(at, f"{own}.{end}")
    statement, sentence = picked.redrawn(beside, "start" if end == "end" else "end", f"{own}.{end}", outward)
    drawn.body.append(statement)
    drawn.words.append(sentence)
    return drawn


def square_ways(picked: Picked) -> Ways:
    """Either end, to either side."""
    (edge,) = picked.edges(1)
    found = []
    for end, beside in (("end", picked.after(edge.name)), ("start", picked.before(edge.name))):
        for way in toward(edge.path, edge.path.length if end == "end" else 0.0):
            label = say("canvas_moves.square_way", edge=said(beside), way=say(f"canvas_moves.way_{way}"))
            found.append((f"{end} {way}", label))
    return found


def squared(picked: Picked, edge: Edge) -> tuple[str, str, str]:
    """(end, direction, what is written for it) of the way chosen."""
    ways = [key for key, _ in square_ways(picked)]
    way = picked.way if picked.way in ways else ways[0]
    end, direction = way.split()
    return end, direction, "" if end == "end" else 'at="start"'


def square_edge(picked: Picked) -> DrawnMove:
    """A new edge square to the end of another; the neighbour is drawn again from its tip."""
    (edge,) = picked.edges(1)
    end, direction, at = squared(picked, edge)
    own, beside = picked.on(edge.name), picked.after(edge.name) if end == "end" else picked.before(edge.name)
    thing, measure = picked.thing(f"{short(edge.name)}_square"), ""
    measure = picked.measure(thing, "length")
    values = {"edge": said(edge), "beside": said(beside), "way": direction, "amount": f"{{{measure}}}"}
    values["thing"] = words(thing)
    drawn = DrawnMove(say("canvas_moves.square_title", values), [say("canvas_moves.square", values)], measure=measure)
    drawn.thing, drawn.least = thing, 1.0
    line = Call(f"{own}.square", (measure, f'"{direction}"', *([at] if at else [])))
    if end == "end":
        drawn.body.append(Call(picked.on("draw"), (keyed(thing, line), f"after={own}")))
        statement, sentence = picked.redrawn(beside, "start", picked.on(f"{thing}.end"), vector(direction))
        drawn.body.append(statement)
    else:  # the neighbour first, so that it is clear which way the new edge runs
        statement, sentence = picked.redrawn(beside, "end", "line.end", vector(direction))
        drawn.body += [Call(f"line = {line.head}", line.args), statement]
        drawn.body.append(Call(picked.on("draw"), (f"{thing}=line", f"after={picked.on(beside.name)}")))
    drawn.words.append(sentence)
    more, told = picked.allowed(thing, edge)
    drawn.body += more
    drawn.words += told
    return drawn


def corner_of(picked: Picked) -> tuple[Edge, Edge]:
    """The two edges that meet at the chosen corner, in order: the corner itself, or both edges, was chosen."""
    if any(one.kind == "point" for one in picked.chosen):
        (point,) = picked.places(1)
        ending, starting = picked.at_point(point.at)
        if ending is None or starting is None:
            raise no("no_corner", point=point.said)
        return ending, starting
    one, two = picked.edges(2)
    if picked.after(one.name).name == two.name:
        return one, two
    if picked.after(two.name).name == one.name:
        return two, one
    raise no("not_neighbours", first=said(one), second=said(two))


def round_corner(picked: Picked) -> DrawnMove:
    """A corner rounded off by a curve that runs into both edges."""
    one, two = corner_of(picked)
    picked.kept_whole(one, two)
    if abs(one.path.end_tangent.cross(two.path.start_tangent)) < 0.05:
        raise no("no_corner_there", first=said(one), second=said(two))
    thing = picked.thing(f"{short(one.name)}_round")
    measure = picked.measure(thing, "reach")
    values = {"first": said(one), "second": said(two), "amount": f"{{{measure}}}"}
    drawn = DrawnMove(say("canvas_moves.round_title", values), [say("canvas_moves.round", values)], measure=measure)
    a, b = picked.on(one.name), picked.on(two.name)
    drawn.thing, drawn.least = thing, 1.0
    drawn.within = min(one, two, key=lambda edge: edge.path.length)
    curve = Call("begin.curve_to", ("end", f"along={a}", f"end_along={b}"))
    drawn.body += [
        Call(f"begin = {a}.at", (f"{a}.length - {measure}",)),
        Call(f"end = {b}.at", (measure,)),
        Call(picked.on("draw"), (keyed(thing, curve), f"after={a}")),
        Call(picked.on("join"), (a, picked.on(thing))),
        Call(picked.on("join"), (picked.on(thing), b)),
    ]
    more, told = picked.allowed(thing, one)
    drawn.body += more
    drawn.words += told
    return drawn


def curve_ways(picked: Picked) -> Ways:
    return [(way, say(f"canvas_moves.curve_{way}")) for way in ("square", "smooth", "square_smooth", "smooth_square")]


def curve_edge(picked: Picked) -> DrawnMove:
    """An edge drawn again as one curve, at each end square to its neighbour or running into it."""
    (edge,) = picked.edges(1)
    picked.kept_whole(edge)
    if any(picked.pieces[name].fold == edge.name for name in picked.names):
        raise no("fold_straight", edge=said(edge))
    way = picked.way or "square"
    first, last = {"square": ("square", "square"), "smooth": ("smooth", "smooth")}.get(way) or way.split("_")
    before, after = picked.before(edge.name), picked.after(edge.name)
    measure = picked.measure(edge.name, "fullness")
    values = {"edge": said(edge), "before": said(before), "after": said(after), "amount": f"{{{measure}}}", "way": way}
    drawn = DrawnMove(say("canvas_moves.curve_title", values), [say("canvas_moves.curve", values)], measure=measure)
    drawn.kind, drawn.amount, drawn.least = "share", 1.0, 0.3
    own = picked.on(edge.name)
    begin = f"{'square_to' if first == 'square' else 'along'}={picked.on(before.name)}"
    finish = f"{'end_square_to' if last == 'square' else 'end_along'}={picked.on(after.name)}"
    drawn.body.append(Call(f"{own} = {own}.start.curve_to", (f"{own}.end", begin, finish, f"fullness={measure}")))
    return drawn


def into_ways(picked: Picked) -> Ways:
    return [(way, say(f"canvas_moves.into_{way}")) for way in ("smooth", "square")]


def curve_into(picked: Picked) -> DrawnMove:
    """The edge between two others drawn as a curve: square to the first, joining the second part of the way along."""
    one, two = picked.edges(2)
    way = picked.way or "smooth"
    forward = picked.after(picked.after(one.name).name).name == two.name
    if not forward and picked.before(picked.before(one.name).name).name != two.name:
        raise no("not_one_between", first=said(one), second=said(two))
    between = picked.after(one.name) if forward else picked.before(one.name)
    picked.kept_whole(between, two)
    if any(picked.pieces[name].fold == between.name for name in picked.names):
        raise no("fold_straight", edge=said(between))
    measure = picked.measure(between.name, "reach")
    values = {"edge": said(between), "first": said(one), "second": said(two), "way": way, "amount": f"{{{measure}}}"}
    drawn = DrawnMove(say("canvas_moves.into_title", values), [say("canvas_moves.into", values)], measure=measure)
    drawn.amount, drawn.within = min(60.0, two.path.length / 3), two
    a, b, c = picked.on(one.name), picked.on(between.name), picked.on(two.name)
    if forward:
        verb = "curve_into" if way == "smooth" else "curve_square_to"
        drawn.body += [Call(f"{b} = {a}.{verb}", (c, f"at={measure}")), Call(picked.on("join"), (b, c))]
        if way == "square":
            drawn.least = 1.0
            at = Call(f"{c}.at", (measure,)).flat()
            drawn.body.insert(0, Call(picked.on("measure"), (f"{measure}=({c}.start, {at})",)))
        return drawn
    arrive = f"{'along' if way == 'smooth' else 'square_to'}={c}"
    drawn.least = 1.0
    drawn.body += [
        Call(f"meet = {c}.at", (f"{c}.length - {measure}",)),
        Call(picked.on("measure"), (f"{measure}=({c}.end, meet)",)),
        Call(f"{b} = meet.curve_to", (f"{a}.start", arrive, f"end_square_to={a}")),
        Call(picked.on("join"), (c, b)),
    ]
    return drawn


def edge_ways(picked: Picked) -> Ways:
    """The two sides of an edge, outward first."""
    (edge,) = picked.edges(1)
    left, right = toward(edge.path, edge.path.length / 2)
    outward, inward = (right, left) if picked.inside_left() else (left, right)
    return [(way, say(f"canvas_moves.way_{way}")) for way in (outward, inward)]


def move_edge(picked: Picked) -> DrawnMove:
    """An edge moved to a parallel; the edges beside it are trimmed or carried on to meet it."""
    (edge,) = picked.edges(1)
    before, after = picked.before(edge.name), picked.after(edge.name)
    picked.kept_whole(edge)
    if any(picked.pieces[name].fold == edge.name for name in picked.names):
        raise no("fold_moved", edge=said(edge))
    (outward, _), (inward, _) = edge_ways(picked)
    way = picked.way if picked.way in (outward, inward) else outward
    measure = picked.measure(edge.name, _WORD[way])
    values = {"edge": said(edge), "before": said(before), "after": said(after), "way": way, "amount": f"{{{measure}}}"}
    drawn = DrawnMove(say("canvas_moves.edge_title", values), [say("canvas_moves.edge", values)], measure=measure)
    own = picked.on(edge.name)
    if way == outward and picked.closed():
        drawn.body.append(Call(picked.on("extend_hem"), (own, measure)))
        return drawn
    drawn.body += [
        Call(f"{own} = {own}.parallel", (measure, f'"{way}"')),
        Call(picked.on("join"), (picked.on(before.name), own)),
        Call(picked.on("join"), (own, picked.on(after.name))),
        *picked.carried(edge.path.start, f"{own}.start"),
        *picked.carried(edge.path.end, f"{own}.end"),
    ]
    return drawn
