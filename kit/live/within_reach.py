"""What a step may name at the cursor: its pieces as they lie before it, with their edges and points, its parameters and
measurements, and what the lines above the cursor drew or gave a name.

The pieces come from working the steps the lesson already has, as every slider does; of the cell that is being written
nothing is run, its lines are only read.
"""

from __future__ import annotations

import ast
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from weakref import WeakKeyDictionary

from kit.body.body import NOBODY
from kit.body.measures import MEASUREMENTS
from kit.errors import KitError
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern
from kit.lesson.steps import Entry
from kit.lesson.working import work
from kit.live.half_written import Cursor, WrittenStep
from kit.piece.piece import Piece
from kit.reference.verb_help import Kind, Verb, verbs_of
from kit.units import System, both

Sort = Kind | str


@dataclass(frozen=True)
class NamedThing:
    """Something with a name: its `kind` (what may be written after its dot), the `word` for it ("edge", "parameter"),
    what is `said` of it in a line, and the things `inside` it by name."""

    name: str
    kind: Sort
    word: str
    said: str = ""
    inside: dict[str, NamedThing] = field(default_factory=dict)

    @property
    def line(self) -> str:
        return f"{self.word}: {self.said}" if self.said else self.word


class Reach:
    """The things a step may name at the cursor, by name (`things`), and those it asks for in its arguments, if the
    cursor stands there (`offered`)."""

    def __init__(self, lesson: Lesson, cursor: Cursor) -> None:
        step = cursor.step
        self.offered = _offered(lesson, step, pattern_before(lesson, step))
        self.things = {name: self.offered[name] for name in step.uses if name in self.offered}
        self._moved: set[str] = set()
        for statement in cursor.statements:
            self._read(statement)
        if self._moved:
            self._as_last_left(lesson, step)

    def thing(self, expression: str) -> NamedThing | None:
        """What an expression as it is written stands for, as far as that can be seen."""
        try:
            return self._of(ast.parse(expression.strip(), mode="eval").body)
        except (SyntaxError, ValueError, RecursionError):
            return None

    def verb(self, expression: str, *, called: bool = True) -> tuple[NamedThing, Verb] | None:
        """The verb that is written as `front.draw`, and the thing it is a verb of. A line or point of that name goes
        before it unless it is `called`."""
        owner, dot, name = expression.rpartition(".")
        thing = self.thing(owner) if dot else None
        verb = verbs_of(thing.kind).get(name) if thing and (called or name not in thing.inside) else None
        return (thing, verb) if thing and verb else None

    # ---- reading what is written ------------------------------------------------------------------------

    def _of(self, node: ast.expr) -> NamedThing | None:
        if isinstance(node, ast.Name):
            return self.things.get(node.id)
        if isinstance(node, ast.Attribute):
            owner = self._of(node.value)
            if owner is None or node.attr in owner.inside:
                return owner and owner.inside[node.attr]
            verb = verbs_of(owner.kind).get(node.attr)
            if verb is None or not verb.quality or not verb.gives:
                return None
            inside = owner.inside if verb.gives == owner.kind == "cut piece" else {}
            return NamedThing(node.attr, verb.gives, _WORD.get(verb.gives, verb.gives), inside=inside)
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute):
            owner = self._of(node.func.value)
            verb = verbs_of(owner.kind).get(node.func.attr) if owner else None
            return NamedThing("", verb.gives, _WORD.get(verb.gives, verb.gives)) if verb and verb.gives else None
        if isinstance(node, ast.BinOp):
            left = self._of(node.left)
            return left if left and left.kind == "edges" and isinstance(node.op, ast.Add) else None
        if isinstance(node, ast.IfExp):
            return self._of(node.body) or self._of(node.orelse)
        return None

    def _read(self, statement: str) -> None:
        """Learn what a finished line draws or names."""
        for text in (statement, statement + " pass"):  # the head of a loop has its body below
            try:
                (node,) = ast.parse(text).body
                break
            except (SyntaxError, ValueError, RecursionError):
                continue
        else:
            return
        if isinstance(node, ast.Assign):
            for target in node.targets:
                self._name(target, node.value)
        elif isinstance(node, ast.AnnAssign) and node.value is not None:
            self._name(node.target, node.value)
        elif isinstance(node, ast.For) and isinstance(node.iter, ast.Tuple | ast.List) and node.iter.elts:
            self._name(node.target, node.iter.elts[0])
        elif isinstance(node, ast.Expr) and isinstance(node.value, ast.Call):
            self._drawn(node.value)

    def _name(self, target: ast.expr, value: ast.expr) -> None:
        if isinstance(target, ast.Name):
            thing = self._of(value)
            if thing is not None:
                self.things[target.id] = replace(thing, name=target.id)
            else:
                self.things[target.id] = NamedThing(target.id, "unknown", "name", "given in this step")
        elif isinstance(target, ast.Tuple | ast.List) and isinstance(value, ast.Tuple | ast.List):
            for one, other in zip(target.elts, value.elts, strict=False):
                self._name(one, other)

    def _drawn(self, call: ast.Call) -> None:
        """What `front.draw(...)`, `mark`, `guide` and `trace` leave on the piece."""
        if not isinstance(call.func, ast.Attribute):
            return
        piece = self._of(call.func.value)
        if piece is None or piece.kind != "piece":
            return
        verb = call.func.attr
        if verb == "trace" and call.args:
            other = self._of(call.args[0])
            piece.inside.update(other.inside if other else {})
        if verb not in ("draw", "mark", "guide"):
            self._moved.add(piece.name)
            return
        for keyword in call.keywords:
            if keyword.arg == "instead_of":
                for name in _edges_named(keyword.value):
                    piece.inside.pop(name, None)
        kind, word = {"draw": ("line", "edge"), "mark": ("point", "point"), "guide": ("line", "guide line")}[verb]
        for keyword in call.keywords:
            if keyword.arg and keyword.arg not in ("instead_of", "after"):
                piece.inside[keyword.arg] = NamedThing(keyword.arg, kind, word, "drawn in this step")

    def _as_last_left(self, lesson: Lesson, step: WrittenStep) -> None:
        """A block move draws names that cannot be read from its line: take those the step left when it was last run."""
        if step.way != "step" or step.name not in [entry.name for entry in lesson.entries if entry.kind == "step"]:
            return
        after = pattern_before(lesson, replace(step, name="", after=step.name))
        for piece in after.pieces if after else ():
            if piece.name in self._moved:
                for name, thing in on_the_bench(piece, lesson.units).inside.items():
                    self.things[piece.name].inside.setdefault(name, thing)


_WORD = {"edges": "edges", "cut piece": "one half"}


def _edges_named(value: ast.expr) -> Iterable[str]:
    for item in value.elts if isinstance(value, ast.Tuple) else [value]:
        if isinstance(item, ast.Constant) and isinstance(item.value, str):
            yield item.value
        elif isinstance(item, ast.Attribute):
            yield item.attr


# ---- from the lesson --------------------------------------------------------------------------------------


_worked: WeakKeyDictionary[Lesson, list[tuple[object, Pattern]]] = WeakKeyDictionary()
_KEPT = 8  # patterns kept for each lesson


def pattern_before(lesson: Lesson, step: WrittenStep) -> Pattern | None:
    """The pattern as a step finds it, for the body and values chosen; where an earlier step is refused, as far as the
    steps before that one. None where not even the block can be drawn."""
    entries = _before(lesson.definition.entries, step)
    body = lesson.body if lesson.measures else NOBODY
    key = (entries, body, tuple(lesson.values.items()), lesson.start, lesson.parameters)
    kept = _worked.setdefault(lesson, [])
    for known, pattern in kept:
        if known == key:
            return pattern
    found = _as_far_as_it_goes(lesson, entries)
    if found is not None:
        kept.insert(0, (key, found))
        del kept[_KEPT:]
    return found


def _before(entries: tuple[Entry, ...], step: WrittenStep) -> tuple[Entry, ...]:
    """The drafting steps that come before `step`: all of them for one that sews or measures, or is new."""
    drafting = tuple(entry for entry in entries if entry.kind == "step")
    if step.way != "step":
        return drafting
    names = [entry.name for entry in drafting]
    if step.name in names:
        return drafting[: names.index(step.name)]
    return drafting[: names.index(step.after) + 1] if step.after in names else drafting


def _as_far_as_it_goes(lesson: Lesson, entries: tuple[Entry, ...]) -> Pattern | None:
    body = lesson.body if lesson.measures else NOBODY
    good: Pattern | None = None
    most, least = len(entries), 0
    tried = most
    while least <= most:  # the first refusal is where it is however many steps follow
        try:
            good = work(replace(lesson.definition, entries=entries[:tried]), body, lesson.values, whole=False)
            least = tried + 1
        except KitError:
            most = tried - 1
        tried = (least + most) // 2
    return good


def _offered(lesson: Lesson, step: WrittenStep, pattern: Pattern | None) -> dict[str, NamedThing]:
    """Everything the arguments of a step may ask for, by name."""
    units = lesson.units
    bench = step.way != "sew"
    found: dict[str, NamedThing] = {}
    for piece in pattern.pieces if pattern else ():
        found[piece.name] = on_the_bench(piece, units) if bench else as_cut(piece, units)
    for name in step.makes:
        found.setdefault(name, NamedThing(name, "piece", "piece", "new in this step"))
    if step.way == "step":
        for name in step.strips:
            found[name] = NamedThing(name, "strip", "strip", "new in this step")
    elif step.way == "sew":
        for strip in pattern.strips if pattern else ():
            size = f"{both(strip.finished_length, units)} by {both(strip.finished_width, units)} when sewn"
            found[strip.name] = NamedThing(strip.name, "cut strip", "strip", size)
        found["make"] = NamedThing("make", "make", "make", "every sewing operation")
    values = lesson.values
    for parameter in lesson.parameters:
        kind = "length" if parameter.kind == "length" else "number"
        said = parameter.show(values[parameter.name], units)
        found.setdefault(
            parameter.name,
            NamedThing(parameter.name, kind, "parameter", f"{said}, {parameter.why}" if parameter.why else said),
        )
    for measure in lesson.body.measures:
        named = {one.name: one for one in lesson.sizes.own} | MEASUREMENTS
        what = named[measure.name].said if measure.name in named else measure.name.replace("_", " ")
        said = f"{both(lesson.body[measure.name], units)}, {what}"
        found.setdefault(measure.name, NamedThing(measure.name, "length", "measurement", said))
    if step.way == "step":
        found.setdefault("body", NamedThing("body", "body", "body", "all measurements: body.name"))
    return found


def on_the_bench(piece: Piece, units: System) -> NamedThing:
    """A piece as a drafting step has it."""
    inside = {e.name: NamedThing(e.name, "line", "edge", both(e.path.length, units)) for e in piece.edges}
    for name, path in piece.guides:
        inside.setdefault(name, NamedThing(name, "line", "guide line", both(path.length, units)))
    for name, _ in piece.points:
        inside.setdefault(name, NamedThing(name, "point", "point"))
    return NamedThing(piece.name, "piece", "piece", piece.title, inside)


def as_cut(piece: Piece, units: System) -> NamedThing:
    """A piece as a sewing step has it."""
    inside = {
        e.name: NamedThing(e.name, "edges", "edge", _with_allowance(both(e.path.length, units), e.allowance, units))
        for e in piece.edges
    }
    for mark in piece.marks:
        inside.setdefault(mark.name, NamedThing(mark.name, "mark", "mark", mark.label))
    for dart in piece.darts:
        inside.setdefault(dart.name, NamedThing(dart.name, "fold", "dart"))
    for pleat in piece.pleats:
        inside.setdefault(pleat.name, NamedThing(pleat.name, "fold", "pleat"))
    return NamedThing(piece.name, "cut piece", "piece", piece.title, inside)


def _with_allowance(said: str, allowance: float | None, units: System) -> str:
    return said if allowance is None else f"{said}, allowance {both(allowance, units)}"


def after_the_dot(thing: NamedThing) -> Mapping[str, NamedThing | Verb]:
    """What may be written after a thing's dot: what is inside it first, then its verbs."""
    found: dict[str, NamedThing | Verb] = dict(thing.inside)
    for name, verb in verbs_of(thing.kind).items():
        found.setdefault(name, verb)
    return found
