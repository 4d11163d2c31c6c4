"""Handles and straps: one strip fixed at both its ends."""

from __future__ import annotations

from collections.abc import Callable

from kit.sewing.operations.strips import ATTACHED, OnRun, fixed_by
from kit.sewing.spans import along
from kit.sewing.vocabulary import *

_NOTCHED = 1.0  # mm from a place within which a notch marks it


def _read_run(given: Any, asked: Asked, name: str) -> Run:
    return asked.reader.spot(given, "start", asked.where)[0]


def _read_places(given: Any, asked: Asked, name: str) -> tuple[float, float]:
    """Both places along the run, in order."""
    where = asked.where
    if not isinstance(given, tuple | list) or len(given) != 2:
        raise KitError(f"at is {given!r}.", where=where, do="Give both places along the run: at=(8 * cm, 28 * cm).")
    first, second = sorted(asked.reader.spot(asked.given["to"], each, where)[1] for each in given)
    if second - first < 1.0:
        raise KitError(
            "both ends are placed at the same spot.",
            where=where,
            do="Give two places along the run. On a piece that is cut on "
            "the fold they are counted on each half: a strap from one half to the other needs the piece drawn whole.",
        )
    return first, second


def _reaches(handle: AttachHandle, state: State, pattern: Cut) -> Iterable[Case]:
    """The run is long enough for both ends."""
    size, at = run_length(pattern, handle.to), handle.at[1]
    yield off_by(handle.to, at - size, at=at, size=size)


def _at_notches(handle: AttachHandle, pattern: Cut) -> tuple[Sentence, ...]:
    """That the places need no measuring, where both were notched when the piece was drafted."""
    notches = [notch for notch in pattern.piece(handle.to.piece).notches if notch.edge in handle.to.edges]
    found = [along(pattern, handle.to, notch.edge, notch.distance) for notch in notches]
    notched = all(any(abs(each - at) < _NOTCHED for each in found) for at in handle.at)
    return (Sentence("attach_handle.notches", {}),) if notched else ()


def _ends(holds: Callable[[State, Cut, Run], bool]) -> Each:
    """The condition that something holds of both stretches that its ends cover."""
    return Each("to", lambda handle, state, pattern, _: all(holds(state, pattern, end) for end in handle.ends(pattern)))


@operation
class AttachHandle(OnRun):
    """Fix both ends of a made strip to a run, at two lengths along it.

    Example::

        make.fold_strip(handle, ends=0)
        make.attach_handle(handle, tote.top, at=(8 * cm, 27 * cm), method="in_hem")
    """

    # "caught" bastes the ends to the raw edge on the right side for the next seam or facing, "in_hem" on the wrong
    # side, so that the hem turned over them catches them; "stitched_on" lays them `lap` mm over the finished edge
    kind = "attach_handle"
    cautions = ("needle", "pins")
    says = ("{method}_place", _at_notches, "twist", "{method}_sew")
    work = Work(0.0, each=8.0)
    changes = (Brings("facts", lambda handle, pattern: handle.facts(pattern)),)
    also = (Also("spots", lambda handle, pattern: (handle.to, *handle.at), "spots"),)
    rules = (
        *ATTACHED,
        Rule(Asking(_reaches), "place_outside_run", says="end_outside_run", ends="all"),
        Rule(
            Each("to", lambda handle, state, pattern, _: state.facts.isdisjoint(handle.facts(pattern))),
            "handle_twice",
            do="do_take_one_operation_out",
        ),
        Rule(
            _ends(State.is_closed),
            "edge_still_raw",
            says="handle_edge_raw",
            when=lambda handle: handle.method == "stitched_on",
        ),
        Rule(
            _ends(State.is_raw),
            "edge_closed_already",
            says="handle_edge_closed",
            when=lambda handle: handle.method != "stitched_on",
        ),
    )

    to: Run = read_by(_read_run, "Run", way="place", fills={"run": "place"})
    at: tuple[float, float] = read_by(_read_places, "tuple[Size, Size]")
    method: str = fixed_by("caught", "in_hem", "stitched_on")
    lap: float = width(default=25 * mm)

    def facts(self, pattern: Cut) -> tuple[Fact, ...]:
        """(handle, piece, side, edge, mm along it) of each end on each half."""
        return tuple(
            ("handle", self.to.piece, side, self.to.edges[0], f"{at:.1f}")
            for side in sides_of(pattern, self.to)
            for at in self.at
        )

    def ends(self, pattern: Cut, run: Run | None = None) -> tuple[Run, ...]:
        """The stretches of the run that its ends cover."""
        return tuple(around(pattern, run or self.to, at, self.across(pattern)) for at in self.at)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.to)
        on_top = self.method == "stitched_on"
        rows = (
            Row(end, inset=self.lap / 2, style="box") if on_top else Row(end, inset=-2.0, style="baste")
            for end in self.ends(pattern, run)
        )
        return (
            laid(
                run,
                *rows,
                up="right" if self.method == "caught" else "wrong",
                strip=self.name,
                focus=self._between(pattern, run),
            ),
        )

    def _between(self, pattern: Cut, run: Run) -> Run:
        """The part of the run from the one end of the handle to the other."""
        ends = self.ends(pattern, run)
        return replace(ends[0], start=min(end.start or 0.0 for end in ends), end=max(end.end or 0.0 for end in ends))
