"""A drawing written so that it can be made before people's eyes: every item by itself, with its turn.

Text finds its place once, for the finished picture, and the frame is that of the finished picture, so nothing jumps
while lines are added. `Stage.svg` carries the turns for whoever moves the picture along (`data-from`, `data-to`);
`Stage.at` is the picture at one moment.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from kit.picture.drawing import Dimension, Dot, Drawing, Fill, Label, Stroke
from kit.picture.lettered import lettered
from kit.picture.reveal import RevealTurn, part_of, turns
from kit.picture.svg_pen import Pen
from kit.picture.theme import THEME, Theme


@dataclass(frozen=True)
class _Written:
    """What the pen wrote for the item of that `index`, among lines and cloth or among the texts."""

    index: int
    text: bool
    markup: str


class StagedDrawing:
    """`drawing` fitted into `width` x `height` CSS px. Without `ground` the picture has no paper of its own."""

    def __init__(
        self, drawing: Drawing, width: float, height: float, theme: Theme = THEME, *, ground: bool = True
    ) -> None:
        self.drawing = drawing
        self.turns: tuple[RevealTurn, ...] = turns(drawing)
        self._pen = _Staging(drawing, width, height, theme, ground)
        self._pen.element(real=False)

    def svg(self) -> str:
        """The whole picture. What is made in it stands in groups with `data-from` and `data-to` (shares 0..1) and
        `data-kind` "line" or "show": a line grows along its length, the rest appears."""

        def staged(one: _Written) -> str:
            turn, item = self.turns[one.index], self.drawing.items[one.index]
            if turn.stands:
                return one.markup
            kind = "line" if isinstance(item, Stroke) else "show"
            return f'<g data-from="{turn.start:.4f}" data-to="{turn.end:.4f}" data-kind="{kind}">{one.markup}</g>'

        return self._pen.framed((one.text, staged(one)) for one in self._pen.written)

    def at(self, share: float) -> str:
        """The picture when `share` (0..1) of it is made: lines cut at their length, the rest fading in."""
        return self._pen.framed(self._parts(share))

    def _parts(self, share: float) -> Iterator[tuple[bool, str]]:
        for one in self._pen.written:
            done = self.turns[one.index].done(share)
            if done >= 1.0:
                yield one.text, one.markup
                continue
            item = self.drawing.items[one.index]
            if done <= 0.0:
                continue
            if isinstance(item, Stroke):
                part = part_of(item, done)
                if isinstance(part, Stroke):
                    yield one.text, self._pen.stroke(part)
            else:
                yield one.text, f'<g opacity="{done:.2f}">{one.markup}</g>'


class _Staging(Pen):
    """The SVG pen, keeping apart what it writes for each item."""

    def __init__(self, drawing: Drawing, width: float, height: float, theme: Theme, ground: bool) -> None:
        super().__init__(lettered(drawing, width, height, theme), theme)
        self.written: list[_Written] = []
        self._paper = ground

    def framed(self, parts: Iterator[tuple[bool, str]]) -> str:
        """A picture of these (whether text, markup), in the frame and with the cloth patterns of the whole."""
        found = list(parts)  # writing one may use the pen itself
        self.body = [markup for text, markup in found if not text]
        self.text = [markup for text, markup in found if text]
        return self._wrap(real=False)

    def stroke(self, item: Stroke) -> str:
        """The markup of one line."""
        self.body = []
        super()._stroke(item)
        self._close()
        return "".join(self.body)

    def _ground(self) -> str:
        return super()._ground() if self._paper else ""

    def _noted(self, index: int, write: Callable[[], None]) -> None:
        self.body, self.text = [], []
        write()
        self._close()
        if self.body:
            self.written.append(_Written(index, False, "".join(self.body)))
        if self.text:
            self.written.append(_Written(index, True, "".join(self.text)))

    def _drawn(self, index: int, item: Stroke | Fill | Dot) -> None:
        self._noted(index, lambda: super(_Staging, self)._drawn(index, item))

    def _told(self, index: int, item: Label | Dimension) -> None:
        self._noted(index, lambda: super(_Staging, self)._told(index, item))
