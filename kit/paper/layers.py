"""Sizes as layers: how each size's line looks, and optional content of a PDF (ISO 32000-1, 8.11).

A size's line counts itself: between two long dashes stand as many marks as the size's place in the chart, a short
dash for five and a dot for one, so W7 is a short dash and two dots. Odd sizes are thin and even ones heavy. So
sizes are told apart without colour, on a grey printer, and where only a stretch of the line is on the page. Plain
unbroken lines are shared by sizes.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from io import BytesIO
from typing import Any

import pikepdf

from kit.language import say
from kit.paper.pdf_pen import INKS, Ink, Look
from kit.paper.sheet import finish
from kit.picture.drawing import StrokeRole

_LONG, _FIVE, _ONE, _GAP = 8.0, 3.0, 0.7, 1.3
_WIDTHS = (0.42, 0.72)
_FINE = 0.5  # of its width, where lines bunch


@dataclass(frozen=True)
class SwitchedLayer:
    """A layer people can switch: `name` as the reader's program shows it, `on` at first, `under` another layer."""

    name: str
    on: bool = True
    under: str = ""


def size_ink(place: int) -> Ink:
    """The cut line of the size that stands at `place` in its chart, 1 for the first."""
    fives, ones = divmod(max(place, 1), 5)
    dash = [_LONG, _GAP]
    for length in (*[_FIVE] * fives, *[_ONE] * ones):
        dash += [length, _GAP]
    return Ink(_WIDTHS[(place + 1) % 2], 0.0, tuple(dash))


def size_look(place: int, *, thin: bool = False) -> Look:
    """The look of what belongs to that size alone; `thin` on a piece whose lines bunch."""
    ink = size_ink(place)
    cut = Ink(ink.width * _FINE, ink.grey, ink.dash) if thin else ink
    inks: Mapping[StrokeRole, Ink] = {**INKS, "cut": cut}
    return Look(inks)


def size_layers(sizes: Sequence[str]) -> tuple[SwitchedLayer, ...]:
    """A layer for each size, all on, and under each the layer of its stitch line, off until somebody wants it."""
    return tuple(
        layer
        for size in sizes
        for layer in (SwitchedLayer(size), SwitchedLayer(stitch_layer(size), on=False, under=size))
    )


def stitch_layer(size: str) -> str:
    """The name of the layer that holds the stitch line of a size."""
    return say("paper.layer_stitch", size=size)


class Shelf:
    """The layers of one page being drawn: `on(...)` wraps what belongs to some of them, `placed` writes them into
    the finished page."""

    def __init__(self, layers: Sequence[SwitchedLayer]) -> None:
        self.layers = tuple(layers)
        self._keys: dict[tuple[str, ...], str] = {}

    @contextmanager
    def on(self, canvas: Any, names: Sequence[str]) -> Iterator[None]:
        """What is drawn inside shows while any of the layers `names` does; always, when `names` is empty."""
        if not names:
            yield
            return
        key = self._keys.setdefault(tuple(names), f"L{len(self._keys)}")
        canvas.addLiteral(f"/OC /{key} BDC")
        yield
        canvas.addLiteral("EMC")

    def placed(self, pdf: bytes) -> bytes:
        """The one-page document `pdf` with its layers named in its resources and its catalogue."""
        with pikepdf.open(BytesIO(pdf)) as document:
            groups = {
                layer.name: document.make_indirect(
                    pikepdf.Dictionary(Type=pikepdf.Name.OCG, Name=pikepdf.String(layer.name))
                )
                for layer in self.layers
            }
            properties = pikepdf.Dictionary()
            for names, key in self._keys.items():
                if len(names) == 1:
                    properties[f"/{key}"] = groups[names[0]]
                else:
                    properties[f"/{key}"] = pikepdf.Dictionary(
                        Type=pikepdf.Name.OCMD,
                        OCGs=pikepdf.Array([groups[name] for name in names]),
                        P=pikepdf.Name.AnyOn,
                    )
            document.pages[0].obj.Resources.Properties = properties
            _catalogue(document, groups, self.layers)
            return finish(document)


def declared_in(document: pikepdf.Pdf, layers: Sequence[SwitchedLayer]) -> None:
    """Name `layers` in the catalogue of `document`, whose pages place a page that was drawn with them."""
    groups: dict[str, Any] = {}
    for page in document.pages:
        for form in _held(page.obj.Resources, "/XObject"):
            for value in _held(form.get("/Resources", pikepdf.Dictionary()), "/Properties"):
                for group in value.OCGs if value.Type == pikepdf.Name.OCMD else [value]:
                    groups.setdefault(str(group.Name), group)
    found = tuple(layer for layer in layers if layer.name in groups)
    if found:
        _catalogue(document, groups, found)


def _held(of: Any, name: str) -> list[Any]:
    """What a dictionary of a PDF holds under `name`. Its `values` are not in every pikepdf that is allowed."""
    return [value for _, value in of.get(name, pikepdf.Dictionary()).items()]


def _catalogue(document: pikepdf.Pdf, groups: Mapping[str, Any], layers: Sequence[SwitchedLayer]) -> None:
    order = pikepdf.Array()
    for layer in layers:
        if layer.under:
            continue
        order.append(groups[layer.name])
        below = [groups[other.name] for other in layers if other.under == layer.name]
        if below:
            order.append(pikepdf.Array(below))
    settings = pikepdf.Dictionary(
        Name=pikepdf.String(say("paper.layers")),
        BaseState=pikepdf.Name.ON,
        Order=order,
        OFF=pikepdf.Array([groups[layer.name] for layer in layers if not layer.on]),
        ListMode=pikepdf.Name.AllPages,
    )
    document.Root.OCProperties = pikepdf.Dictionary(
        OCGs=pikepdf.Array([groups[layer.name] for layer in layers]), D=settings
    )
    document.Root.PageMode = pikepdf.Name.UseOC
