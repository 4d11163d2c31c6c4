"""Going on with an operation of several rows that was begun and left."""

from __future__ import annotations

from kit.sewing.portion import Portion, until
from kit.sewing.portion import begun as unfinished
from kit.sewing.reading import Runs
from kit.sewing.verb import verb
from kit.sewing.vocabulary import *

_WHERE = "finish"


@verb
def finish(reader: Reader, *begun: Operation | Runs | StripHandle, rows: str | None = None) -> Operation:
    """Go on with what was begun with `rows=`: what its verb gave, or in a later step its edges or its strip. `rows`: no
    further than that stage.

    Example::

        side = make.french_seam(front.side, back.side, first=9 * mm, second=6 * mm, rows="first")
        make.try_on(note="Pin the side seams where they are too wide.")
        make.finish(side)
    """
    found = _meant(reader, begun)
    return until(found.of, found.left[-1].name if rows is None else rows, found.end)


def _meant(reader: Reader, given: Iterable[object]) -> Portion:
    """The operation begun that is meant, by its value or by edges it lies on. Raises `KitError` where none is, or more
    than one."""
    row = tuple(given)
    values = [each for each in row if isinstance(each, Operation)]
    open_now = unfinished(reader.sewn)
    if not values and row and isinstance(row[0], StripHandle):
        on_it = [each for each in open_now if row[0].name in each.of.uses.strips]
        if len(on_it) != 1:
            made = [each.entire for each in reader.sewn if row[0].name in each.entire.uses.strips]
            raise _not_begun(reader, made, f"the {row[0].strip.title}")
        return on_it[0]
    if not values:
        return _on(reader, reader.runs(row, _WHERE), open_now)
    if len(row) > 1:
        raise KitError(
            "several things are named.", where=_WHERE, do="Finish one after another, each with its own call."
        )
    (value,) = values
    meant = [each for each in open_now if each.of == value.entire]
    if not meant:
        raise _not_begun(reader, [value.entire], _said(value))
    return meant[0]


def _on(reader: Reader, runs: tuple[Run, ...], open_now: list[Portion]) -> Portion:
    """The operation begun on those edges; of several the one that lies on all of them and on nothing else."""
    found = [each for each in open_now if _touch(reader, each, runs)]
    exact = [each for each in found if _covers(reader, runs, each.runs())]
    if len(found) > 1 and len(exact) == 1:
        found = exact
    if not found:
        on_them = [each.entire for each in reader.sewn if _touch(reader, each, runs)]
        raise _not_begun(reader, on_them, " and ".join(run.said for run in runs))
    if len(found) > 1:
        raise KitError(
            f"several operations are begun there: {'; '.join(map(_said, found))}.",
            where=_WHERE,
            do="Name all the edges of the one you mean, with its half: make.finish(front.right.side, back.right.side).",
        )
    return found[0]


def _not_begun(reader: Reader, meant: list[Operation], said: str) -> KitError:
    """Why what is meant cannot be gone on with: it is finished, was sewn whole, or was never begun."""
    for each in reader.sewn:
        if each.entire in meant and isinstance(each, Portion):
            return KitError(f"{_said(each)} is finished already.", where=_WHERE, do="Leave this call out.")
    for each in meant:
        if each in reader.sewn and len(each.staged()) > 1:
            name = each.staged()[0].name
            return KitError(
                f"{_said(each)} was sewn whole, so that nothing is left of it.",
                where=_WHERE,
                do=f'Write rows="{name}" where it is to be left after that stage.',
            )
    return KitError(
        f"nothing is begun on {said} by then.",
        where=_WHERE,
        do='Begin it first, in this step or an earlier one: side = make.french_seam(..., rows="first").',
    )


def _said(operation: Operation) -> str:
    """An operation in words: "the French seam of front right side and back right side"."""
    whole = operation.entire
    runs = operation.named() if isinstance(operation, Portion) else whole.runs()
    on = [run.said for run in runs] or [name.replace("_", " ") for name in whole.uses.strips]
    return f"the {(whole.called or whole.kind).replace('_', ' ')} of {' and '.join(on)}"


def _touch(reader: Reader, operation: Operation, runs: tuple[Run, ...]) -> bool:
    """Whether the operation lies on each of the runs."""
    theirs = [span for run in operation.runs() for span in spans(reader.cut, run)]
    return all(any(mine.overlap(span) > 0 for mine in spans(reader.cut, run) for span in theirs) for run in runs)


def _covers(reader: Reader, runs: tuple[Run, ...], others: tuple[Run, ...]) -> bool:
    """Whether the runs lie all along the others."""
    mine = [span for run in runs for span in spans(reader.cut, run)]
    wanted = [span for run in others for span in spans(reader.cut, run)]
    return all(sum(span.overlap(one) for one in mine) > span.length - 0.5 for span in wanted)
