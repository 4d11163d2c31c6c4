"""The scenes that most operations show, each as a pure function of the runs it is seen at.

One piece lying flat (`laid`), with interfacing on it (`lined`) or folded over along a line (`folded_over`), an edge
turned up (`turned_up`), two pieces sewn together (`together`) or opened out along their seam (`opened`). The rows of
stitching are given after the runs; what else a scene has (arrows, section, pins, things sewn on) by name. A picture is
centred where its first row is stitched, without rows on the run it is about, unless `focus` says otherwise.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace
from typing import Literal, NamedTuple, TypedDict, Unpack

from kit.geometry import Path
from kit.sewing.run import Run
from kit.sewing.scene import Face, Layer, Row, Scene, Section, StripShape, Stuff, Thing


class Seen(NamedTuple):
    """The pictures of an operation, each a function of the operation and of the first run of each of its fields `of`,
    on the half that is shown."""

    of: tuple[str, ...] = ()
    shown: tuple[Callable[..., Scene], ...] = ()


def seen(*parts: str | Callable[..., Scene]) -> Seen:
    """The names of the fields, then the pictures: `seen("along", lambda row, run: laid(run, Row(run)))`."""
    return Seen(tuple(p for p in parts if isinstance(p, str)), tuple(p for p in parts if not isinstance(p, str)))


class Shows(TypedDict, total=False):
    """What a scene may show besides its layers and rows."""

    focus: Run | None
    arrows: tuple[tuple[Run, Literal["in", "out"]], ...]
    section: Section | None
    strip: str
    pins: tuple[Run, ...]
    things: tuple[Thing, ...]
    stage: str
    folds: tuple[str, ...]
    inside: bool
    beside: bool
    once: bool


_OTHER: dict[Face, Face] = {"right": "wrong", "wrong": "right"}


def _scene(layers: tuple[Layer, ...], rows: tuple[Row, ...], at: Run, more: Shows) -> Scene:
    shows: Shows = {"focus": rows[0].run if rows else at, **more}
    return Scene(layers, rows, **shows)


def laid(run: Run, *rows: Row, up: Face = "right", stuff: Stuff = "main", **more: Unpack[Shows]) -> Scene:
    """One piece lying flat, its face `up` to the viewer."""
    return _scene((Layer(run, up=up, stuff=stuff),), rows, run, more)


def lone(strip: str, shape: StripShape, section: Section | None = None, stage: str = "") -> Scene:
    """A strip by itself."""
    return Scene((), section=section, strip=strip, shape=shape, stage=stage)


def lined(run: Run, *rows: Row, up: Face = "right", stuff: Stuff = "main", **more: Unpack[Shows]) -> Scene:
    """One piece with interfacing laid on that face of it which is `up`."""
    layers = (Layer(run, up=up, stuff=stuff), Layer(run, up=_OTHER[up], stuff="interfacing", on=run))
    return _scene(layers, rows, run, more)


def folded_over(run: Run, fold: Path, *rows: Row, up: Face = "wrong", **more: Unpack[Shows]) -> Scene:
    """One piece, what lies right of the line `fold` across it folded over to the viewer."""
    return _scene((Layer(run, up=up, fold=fold),), rows, run, more)


def together(
    lower: Run, upper: Run, *rows: Row, facing: Face = "right", stuff: Stuff = "main", **more: Unpack[Shows]
) -> Scene:
    """Two pieces laid edge on edge, their faces `facing` each other; the `upper` one of `stuff`."""
    layers = (Layer(lower, up=facing), Layer(upper, up=_OTHER[facing], stuff=stuff, on=lower, how="together"))
    return _scene(layers, rows, lower, more)


def opened(lower: Run, upper: Run, *rows: Row, up: Face = "wrong", **more: Unpack[Shows]) -> Scene:
    """Two pieces opened out on either side of their seam, the same face `up`."""
    return _scene((Layer(lower, up=up), Layer(upper, up=up, on=lower, how="open")), rows, upper, more)


def over_to_one_side(scene: Scene, first: Run, press: str, deep: float) -> Scene:
    """A seam opened out whose allowances lie over one of its pieces, the one named by `press`, else that of the run
    `first`; `deep` mm are seen there."""
    to = press if press in {layer.run.piece for layer in scene.layers} else first.piece
    chosen = next((n for n, layer in reversed(list(enumerate(scene.layers))) if layer.run.piece == to), 0)
    lain = (deep if number == chosen else 0.0 for number in range(len(scene.layers)))
    layers = tuple(replace(layer, lain=mm) for layer, mm in zip(scene.layers, lain, strict=True))
    return replace(scene, layers=layers)


def pressed_over(lower: Run, upper: Run, press: str, deep: float, *rows: Row, **more: Unpack[Shows]) -> Scene:
    """A seam whose rows are sewn, opened out and pressed to one side; `deep` mm of it are seen."""
    to = lower if press == lower.piece and press != upper.piece else upper
    shows: Shows = {"arrows": ((to, "in"),), **more}
    return over_to_one_side(opened(lower, upper, *rows, **shows), to, press, deep)


def sewn_shut(run: Run, names: Iterable[str], *rows: Row, up: Face = "right", **more: Unpack[Shows]) -> Scene:
    """One piece lying flat, its darts or pleats of those names sewn in this step and shut."""
    shut = tuple(names)
    shows: Shows = {"folds": shut, **more}
    return _scene((Layer(run, up=up, shut=shut),), rows, run, shows)


def turned_up(
    run: Run, depth: float, *rows: Row, up: Face = "wrong", stuff: Stuff = "main", **more: Unpack[Shows]
) -> Scene:
    """A piece whose edges along the run are turned over to the viewer, `depth` mm, which an arrow shows."""
    turn = tuple((edge, depth) for edge in run.edges)
    shows: Shows = {"arrows": ((run, "in"),), **more}
    return _scene((Layer(run, up=up, stuff=stuff, turn=turn),), rows, run, shows)
