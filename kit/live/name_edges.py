"""A small form that names the edges of a traced outline: corners are numbered in the picture, names typed beside it.

What it gives is a line of code to keep in the notebook, since a notebook must work again without anyone typing."""

from __future__ import annotations

from html import escape
from typing import Any

import ipywidgets as widgets

from kit.blocks.traced import Traced
from kit.blocks.traced_file import TracedFile
from kit.blocks.traced_outline import TracedOutline
from kit.errors import KitError
from kit.language import language, say, speaking
from kit.live import fragments
from kit.picture.corners import corners_drawing
from kit.units import Length, parse, show_metric

_USUAL = ("centre", "neck", "shoulder", "armhole", "side", "hip", "waist")
_WIDTH, _HEIGHT = 380.0, 460.0


def name_edges(drawn: TracedFile, title: str = "My top") -> NameEdges:
    """A form to name the edges of the outlines `read_traced` found. Raises `KitError` for something else."""
    if not isinstance(drawn, TracedFile):
        raise KitError(
            f"edges are named on a drawing that was read, not on {type(drawn).__name__}.",
            do="Write name_edges(read_traced('top.svg')).",
        )
    return NameEdges(drawn, title)


class NameEdges(widgets.VBox):
    """The form `name_edges` gives: `sheets`, one for each outline (each with `piece`, `waist` and `edges`); `code`,
    the line to keep; `message`; `top()`, the traced top as named so far."""

    def __init__(self, drawn: TracedFile, title: str) -> None:
        self.drawn, self.title = drawn, title
        self._language = language()
        self.sheets = tuple(OutlineNaming(outline, len(drawn.outlines)) for outline in drawn.outlines)
        self.message = widgets.HTML()
        self.code = widgets.Textarea(
            disabled=True, rows=9, layout={"width": "100%", "max_width": "760px"}, tooltip=say("panel.edges_copy_tip")
        )
        notes = widgets.HTML(fragments.notes(drawn.messages))
        super().__init__([notes, *self.sheets, self.message, self.code])
        for sheet in self.sheets:
            for field in (sheet.piece, sheet.waist, *sheet.edges):
                field.observe(self._changed, "value")
        self._changed()

    def top(self) -> Traced:
        """The traced top as named so far. Raises `KitError` for what is not yet right."""
        asked = [sheet for sheet in self.sheets if sheet.piece.value.strip()]
        if not asked:
            raise KitError("no piece has a name yet.", where=self.title, do="Name one, such as front.")
        names = [sheet.piece.value.strip() for sheet in asked]
        for name in names:
            if names.count(name) > 1:
                raise KitError(f"two pieces are called '{name}'.", where=self.title, do="Name each differently.")
        return self.drawn.top(
            self.title,
            {name: sheet.named() for name, sheet in zip(names, asked, strict=True)},
            waist={name: sheet.level() for name, sheet in zip(names, asked, strict=True)},
            outlines={name: sheet.outline.number for name, sheet in zip(names, asked, strict=True)},
        )

    def _changed(self, _: Any = None) -> None:
        with speaking(self._language):
            self._show()

    def _show(self) -> None:
        for sheet in self.sheets:
            sheet.draw()
        try:
            self.top()
        except KitError as error:
            self.message.value = fragments.message(str(error))
            self.code.value = ""
            return
        self.message.value = fragments.notes([say("panel.edges_done")])
        self.code.value = self._written()

    def _written(self) -> str:
        asked = [sheet for sheet in self.sheets if sheet.piece.value.strip()]
        lines = ["top = drawn.top(", f"    {self.title!r},", "    {"]
        for sheet in asked:
            edges = ", ".join(f"{name!r}: {pair}" for name, pair in sheet.named().items())
            lines.append(f"        {sheet.piece.value.strip()!r}: {{{edges}}},")
        waists = ", ".join(f"{s.piece.value.strip()!r}: {_code(s.level())}" for s in asked)
        outlines = ", ".join(f"{s.piece.value.strip()!r}: {s.outline.number}" for s in asked)
        return "\n".join([*lines, "    },", f"    waist={{{waists}}},", f"    outlines={{{outlines}}},", ")"])


class OutlineNaming(widgets.HBox):
    """One outline: its picture, and a field for each edge from corner to corner. An edge left without a name goes on
    with the one before it."""

    def __init__(self, outline: TracedOutline, of: int) -> None:
        self.outline = outline
        n = len(outline.corners)
        wide = {"description_width": "150px"}
        own = outline.names[0] if outline.names and outline.names[0].isidentifier() else ""
        self.piece = widgets.Text(
            value=own if of > 1 else own or "front",
            description=say("panel.edges_piece"),
            style=wide,
            tooltip=say("panel.edges_piece_tip"),
        )
        self.edges = []
        for i in range(n):
            after = (i + 1) % n
            run = (outline.corners[after] - outline.corners[i]) % outline.path.length or outline.path.length
            self.edges.append(
                widgets.Combobox(
                    options=_USUAL,
                    description=say("panel.edges_edge", {"from": i + 1, "to": after + 1, "length": show_metric(run)}),
                    style=wide,
                    tooltip=say("panel.edges_edge_tip", {"from": i + 1, "to": after + 1}),
                )
            )
        self.waist = widgets.Text(
            description=say("panel.edges_waist"),
            tooltip=say("panel.edges_waist_tip"),
            style=wide,
            placeholder=say("panel.edges_waist_hint"),
            layout={"width": "440px"},
        )
        self.picture = widgets.HTML()
        head = widgets.HTML(f"<b>{escape(say('panel.edges_outline', name=outline.said))}</b>")
        super().__init__([self.picture, widgets.VBox([head, self.piece, *self.edges, self.waist])])
        self.draw()

    def named(self) -> dict[str, tuple[int, int]]:
        """Each name with the corners its edge runs between. `KitError` when a name stands twice, or none does."""
        names = [field.value.strip() for field in self.edges]
        starts = [i for i, name in enumerate(names) if name]
        if not starts:
            raise KitError(
                "no edge has a name yet.", where=self._where, do="Name each edge; the picture shows the corners."
            )
        found: dict[str, tuple[int, int]] = {}
        for i, following in zip(starts, starts[1:] + starts[:1], strict=True):
            if names[i] in found:
                raise KitError(
                    f"two edges are called '{names[i]}'.",
                    where=self._where,
                    do="Leave the second one empty if they are one edge.",
                )
            found[names[i]] = (i + 1, following + 1)
        return found

    def level(self) -> int | str | Length | None:
        """Where the waistline is, as `TracedFile.top` takes it."""
        text = self.waist.value.strip()
        if not text:
            return None
        if text.isdigit():
            return int(text)
        if any(field.value.strip() == text for field in self.edges) or text == "drawn":
            return text
        return parse(text)

    def draw(self) -> None:
        """Paint the outline with the names typed so far."""
        names = {i + 1: field.value.strip() for i, field in enumerate(self.edges)}
        self.picture.value = fragments.picture(corners_drawing(self.outline, names), _WIDTH, _HEIGHT)

    @property
    def _where(self) -> str:
        return self.piece.value.strip() or f"outline {self.outline.number}"


def _code(level: int | str | Length | None) -> str:
    return repr(level)
