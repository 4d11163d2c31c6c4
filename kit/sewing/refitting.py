"""Working out a `Refit`: what lies on lines that a try-on moves, from everything sewn before it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from typing import Any, Literal, Protocol

from kit.errors import KitError
from kit.piece.recut import TOLD, EdgeChange, PieceChange, piece_change
from kit.sewing.cut import Cut
from kit.sewing.operation import Operation
from kit.sewing.outcome import How
from kit.sewing.refit import Refit, StripChange, Turn
from kit.sewing.run import Run
from kit.sewing.spans import Span
from kit.sewing.state import State

SHUT_IN = 3.0
"""mm of allowance that count as left where it is shut in (common practice, no source)."""


class RefitStep(Protocol):
    """One sewing step, as far as it is asked for here."""

    @property
    def title(self) -> str: ...

    @property
    def operations(self) -> tuple[Operation, ...]: ...


class SewnDraft(Cut, Protocol):
    """A draft with what is sewn on it."""

    @property
    def sewing(self) -> Sequence[RefitStep]: ...


def refit(was: SewnDraft, now: SewnDraft, at: tuple[int, int], turns: tuple[Turn, ...]) -> Refit:
    """What the operation `at` (index of the sewing step, of the operation in it) changes between the drafts `was` and
    `now`."""
    done = list(_until(was, at))
    state = _state(was, done)
    cut_back = tuple(_cut_back(was, done, state))
    ones = {piece.name: piece for piece in was.pieces}
    twos = {piece.name: piece for piece in now.pieces}
    changes: list[PieceChange] = []
    for name, piece in twos.items():
        if name in ones and ones[name] != piece:
            left: dict[str, float] = {}
            for other, edge, mm in cut_back:
                if other == name:
                    left[edge] = min(mm, left.get(edge, mm))
            change = piece_change(ones[name], piece, left)
            if change is not None:
                changes.append(change)
    rows, basted = _rows(was, done)
    moved = [(change, edge) for change in changes for edge in change.moved]
    unpicked = tuple(Run(c.now.name, (e.edge,)) for c, e in moved if (c.now.name, e.was) in rows)
    loose = tuple(
        Run(c.now.name, (e.edge,))
        for c, e in moved
        if (c.now.name, e.was) in basted and (c.now.name, e.was) not in rows
    )
    return Refit(
        turns,
        tuple(changes),
        tuple(piece for name, piece in twos.items() if name not in ones),
        tuple(piece for name, piece in ones.items() if name not in twos),
        tuple(_strips(was, now)),
        unpicked,
        loose,
        tuple(_beside(moved, unpicked, state)),
        tuple(
            (change.now.name, fold)
            for change in changes
            for fold in change.folds
            if any(fact[1] == change.now.name and fact[-1] == fold for fact in state.facts if len(fact) > 2)
        ),
        tuple(_seams(now)),
        cut_back,
        tuple(_shifted(was, now, at)),
    )


def _until(pattern: SewnDraft, at: tuple[int, int]) -> Iterator[tuple[str, Operation]]:
    """Everything sewn before the operation at that place, with the title of its step."""
    for index, record in enumerate(pattern.sewing):
        for number, operation in enumerate(record.operations):
            if (index, number) >= at:
                return
            yield record.title, operation


def _state(pattern: Cut, done: Iterable[tuple[str, Operation]]) -> State:
    state = State()
    for title, operation in done:
        try:
            state = state.after(operation.outcome(pattern), pattern, title)
        except KitError:
            continue  # told by the sewing order
    return state


def _rows(pattern: Cut, done: Iterable[tuple[str, Operation]]) -> tuple[set[tuple[str, str]], set[tuple[str, str]]]:
    """(piece, edge) of the edges that a row of stitching lies along, and of those that are basted: what a picture of
    the operation draws as new stitching. Basting taken out is gone."""
    rows: set[tuple[str, str]] = set()
    basted: set[tuple[str, str]] = set()
    for _, operation in done:
        try:
            drawn = {row.style for scene in operation.scenes(pattern) for row in scene.rows if row.ink == "new"}
        except KitError:
            continue
        edges = {(run.piece, edge) for run in operation.runs() for edge in run.edges}
        if operation.kind == "remove_basting":
            basted -= edges
        elif drawn == {"baste"}:
            basted |= edges
        elif drawn:
            rows |= edges
    return rows, basted


def _cut_back(pattern: Cut, done: Iterable[tuple[str, Operation]], state: State) -> Iterator[tuple[str, str, float]]:
    """What scissors took off allowances before, and what a seam shut in. Trimming a seam trims both its edges."""
    for _, operation in done:
        to = getattr(operation, "to", None)
        if operation.kind in ("trim", "grade") and isinstance(to, float):
            for run in operation.runs():
                for edge in run.edges:
                    yield run.piece, edge, to
                    for seam in state.seams:
                        if any((piece, name) == (run.piece, edge) for piece, _, name in seam):
                            wider = max(to, getattr(operation, "wider", to))
                            yield from ((p, e, wider) for p, _, e in sorted(seam) if (p, e) != (run.piece, edge))
        elif operation.kind == "french_seam" and not getattr(operation, "left", ()):
            whole: Any = operation.entire  # its first allowances are trimmed before the second row
            left = whole.second + min(whole.first, whole.trim or whole.second)
            yield from ((run.piece, edge, left) for run in operation.runs() for edge in run.edges)
        elif operation.kind == "trim_to_fit":
            for run in operation.runs():
                for edge in run.edges:
                    yield run.piece, edge, pattern.piece(run.piece).edge(edge).allowance or 0.0
    for fact in sorted(state.facts):
        if fact[0] == "shut_in" and len(fact) >= 4 and pattern.piece(fact[1]).has_edge(fact[3]):
            yield fact[1], fact[3], SHUT_IN


def _beside(moved: Iterable[tuple[PieceChange, EdgeChange]], unpicked: Iterable[Run], state: State) -> Iterator[Run]:
    """Edges closed already that meet the moved end of a row which is unpicked: they must be opened there."""
    known = {(run.piece, run.edges[0]) for run in unpicked}
    told: set[tuple[str, str]] = set()
    for change, edge in moved:
        if (change.now.name, edge.edge) not in known:
            continue
        for at, name in ((edge.start, edge.before), (edge.end, edge.after)):
            key = (change.now.name, name)
            if abs(at.off) <= TOLD or key in known or key in told or name == change.now.fold:
                continue
            if any((done.span.piece, done.span.edge) == key for done in state.closed):
                told.add(key)
                yield Run(change.now.name, (name,))


def _shifted(was: SewnDraft, now: SewnDraft, at: tuple[int, int]) -> Iterator[tuple[Literal["opening", "row"], Span]]:
    """Openings, and the ends of rows within an edge, that were sewn before the operation `at` and lie elsewhere on the
    new draft because the mark they hang on does: of an opening its new stretch, of a row its new end. Halves that are
    alike are told once."""
    told: set[tuple[str, str, int, int]] = set()
    for index, record in enumerate(was.sewing):
        for number, done in enumerate(record.operations):
            if (index, number) >= at:
                return
            try:
                again = now.sewing[index].operations[number]
                is_open = bool(done.opens(was))
                pairs = list(zip(_stretches(was, done), _stretches(now, again), strict=True))
                moved = [span for old, new in pairs for span in _moved(was, now, old, new, is_open)]
            except (KitError, IndexError, ValueError):
                continue  # told by the sewing order, or written otherwise for the other values
            for span in moved:
                key = (span.piece, span.edge, round(span.start), round(span.end))
                if key not in told:
                    told.add(key)
                    yield "opening" if is_open else "row", span


def _stretches(pattern: Cut, done: Operation) -> list[Span]:
    """The openings that an operation leaves, else the stretches it stitches."""
    return list(done.opens(pattern)) or [c.span for c in done.closes(pattern) if _joins(c.how)]


def _moved(was: Cut, now: Cut, old: Span, new: Span, is_open: bool) -> Iterator[Span]:
    """The new stretch of an opening one of whose ends lies elsewhere along its edge; of a row the ends that do. The old
    place is looked up on the new line; where the edge itself ends nothing hangs on a mark."""
    if (old.piece, old.side, old.edge) != (new.piece, new.side, new.edge):
        return
    one, two = was.piece(old.piece).edge(old.edge).path, now.piece(new.piece).edge(new.edge).path
    ends = []
    for a, b in ((old.start, new.start), (old.end, new.end)):
        at_end = (a < TOLD and b < TOLD) or (a > one.length - TOLD and b > two.length - TOLD)
        if not at_end and abs(two.nearest(one.at(a)) - b) > TOLD:
            ends.append(replace(new, start=b, end=b))
    yield from (new,) if is_open and ends else ends


def _seams(pattern: SewnDraft) -> Iterator[tuple[str, str, str]]:
    for record in pattern.sewing:
        for operation in record.operations:
            try:
                closed = operation.closes(pattern)
            except KitError:
                continue
            yield from dict.fromkeys((c.span.piece, c.span.edge, operation.kind) for c in closed if _joins(c.how))


def _joins(how: How) -> bool:
    return how in ("sewn", "faced", "hemmed")


def _strips(was: Cut, now: Cut) -> Iterator[StripChange]:
    known = {strip.name: strip for strip in was.strips}
    for strip in now.strips:
        if strip.name in known:
            old = known[strip.name]
            longer, wider = strip.cut_length - old.cut_length, strip.width - old.width
            if abs(longer) > TOLD or abs(wider) > TOLD:
                yield StripChange(strip, longer, wider)
