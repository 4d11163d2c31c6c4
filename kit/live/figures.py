"""How much cloth and how many pages the pattern takes, beside the draft.

Each figure is that of a layout which is really worked out, the same that the booklet and the pages are built with, so
it takes seconds. It is done in a thread when the sliders have come to rest and stopped at the next move; until then
the last figures stand by, dimmed, and say what they were.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass
from functools import partial
from typing import TYPE_CHECKING

import ipywidgets as widgets

from kit.errors import KitError
from kit.language import say
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern
from kit.live import fragments
from kit.live.pace import Aside, Show
from kit.live.speech import in_words_of, spoken
from kit.pausing import pause_here
from kit.units import System, both

if TYPE_CHECKING:  # laying loads what only it needs
    from kit.cloth.kept_lays import Kept

_AFTER = 0.7  # seconds of rest
_PAPERS = ("a4", "letter")


@dataclass(frozen=True)
class Figure:
    """What one cloth at one width (mm), or one paper, takes: `amount` in mm to buy or in pages; `trouble` says why it
    is not known, `narrow` that the cloth is too narrow for a piece."""

    kind: str
    name: str
    width: float = 0.0
    amount: float = 0.0
    trouble: str = ""
    narrow: bool = False

    def label(self, system: System) -> str:
        """What the figure is of, in words."""
        if self.kind == "cloth":
            return say(f"panel.cloth_{self.name}", width=both(self.width, system, "finished"))
        from kit.paper.papers import paper

        return say("panel.pages_on", paper=paper(self.name).said)

    def said(self, system: System) -> str:
        """The figure in words."""
        if self.trouble:
            return say("panel.figure_narrow" if self.narrow else "panel.figure_none")
        if self.kind == "cloth":
            return both(self.amount, system, "shop")
        return say("panel.pages", count=int(self.amount))


def cloth_figures(pattern: Pattern, sizes: Sequence[Pattern] = (), kept: Kept | None = None) -> tuple[Figure, ...]:
    """The cloth to buy, for every cloth and width: with the same lesson in all its `sizes` as the booklet has it, and
    without them, which is sooner done, that of a layout of this size alone."""
    from kit.cloth.yardage import yardage

    mine = pattern.body.name
    others = () if not sizes or any(size.body.name == mine for size in sizes) else (pattern,)
    try:
        found = yardage(sizes or (pattern,), others, kept)
    except Exception as error:  # a figure that fails must not take the panel down
        return (Figure("cloth", "main", _width(pattern), trouble=fragments.plain(error)),)
    return tuple(
        Figure("cloth", each.cloth, each.width, amount.length, amount.trouble, bool(amount.trouble))
        for each in found
        for amount in [each.of(mine)]
    )


def all_sizes(lesson: Lesson) -> Iterator[Pattern]:
    """The lesson in every size it can be drafted in, one after the other."""
    for name in lesson.sizes.names:
        pause_here()
        with suppress(KitError):
            yield lesson.work(body=lesson.sizes[name])


def page_figure(pattern: Pattern, name: str) -> Figure:
    """The pages of the paper of that name, as the pattern pages are printed unless something else is asked for."""
    from kit.paper.pages import plan
    from kit.paper.papers import paper
    from kit.paper.printing import laid_for
    from kit.paper.request import PageRequest

    asked = PageRequest((paper(name),))
    try:
        pages = plan(laid_for(pattern, paper(name), asked), paper(name), asked)
    except Exception as error:  # a figure that fails must not take the panel down
        return Figure("pages", name, trouble=fragments.plain(error))
    return Figure("pages", name, amount=len(pages.tiles))


def _width(pattern: Pattern) -> float:
    return pattern.lesson.cloth_widths[0]


class Figures:
    """The part of the panel with cloth and pages: `widget`, with the switch `switch` and the table `shown`."""

    def __init__(self, lesson: Lesson) -> None:
        self.lesson = lesson
        self.found: dict[str, tuple[Figure, ...]] = {}
        self._fresh: set[str] = set()
        self._pattern: Pattern | None = None
        self._kept: Kept | None = None
        self._working = Aside(self._work, _AFTER, patient=True)
        self.switch = widgets.Checkbox(
            value=True,
            indent=False,
            description=say("panel.figures"),
            tooltip=say("panel.figures_tip"),
            layout={"width": "auto", "height": "22px", "margin": "4px 0 0 0"},
        )
        self.switch.style.font_weight = "600"
        self.shown = widgets.HTML()
        self.widget = widgets.VBox([self.switch, self.shown], layout={"min_width": "270px", "margin": "0 40px 0 0"})
        self.widget.add_class("lessonkit-figures")
        self.switch.observe(self._switched, "value")

    @property
    def pending(self) -> bool:
        """Whether a figure is still being worked out."""
        return self._working.pending

    def follow(self, pattern: Pattern | None) -> None:
        """The pattern is another one now; None while it cannot be drafted."""
        self._pattern = pattern
        self._working.drop()
        old, self._fresh = self._fresh, set()
        if self.switch.value:
            if old or not self.shown.value:
                self.say()
            if pattern is not None:
                self._working.ask()

    @property
    def stopped(self) -> bool:
        """Whether the work was cut short before it was finished."""
        return self._working.stopped

    def drop(self) -> None:
        """Stop working: a move has arrived."""
        self._working.drop()

    def now(self) -> None:
        """Work everything out at once."""
        self._working.now()

    def close(self) -> None:
        self._working.drop()

    def say(self) -> None:
        """The figures in the lesson's units; what is not worked out yet as it was."""
        system = self.lesson.units
        rows = {**self._expected(), **self.found}
        lines = []
        for part, figures in rows.items():
            for figure in figures:
                known = part in self.found
                text = figure.said(system) if known else say("panel.figure_waiting")
                if known and part not in self._fresh:
                    text = say("panel.figure_was", figure=text)
                lines.append((figure.label(system), text, part not in self._fresh, figure.trouble))
        html = fragments.figures(lines) if self.switch.value else ""
        if self.shown.value != html:
            self.shown.value = html

    def _expected(self) -> dict[str, tuple[Figure, ...]]:
        """Rows for what is still to be found, so that the table keeps its height."""
        cloth = tuple(Figure("cloth", "main", width) for width in self.lesson.info.cloth_widths)
        return {"cloth": cloth, **{name: (Figure("pages", name),) for name in _PAPERS}}

    @spoken
    def _switched(self, _: object) -> None:
        self.follow(self._pattern)
        if not self.switch.value:
            self.shown.value = ""

    def _work(self) -> Iterator[Show]:
        pattern = self._pattern
        if pattern is None:
            return
        with in_words_of(self.lesson):
            yield partial(self._found, "cloth", cloth_figures(pattern))
            for name in _PAPERS:
                yield partial(self._found, name, (page_figure(pattern, name),))
            # What other sizes teach makes it a little shorter; then it is what the booklet says.
            from kit.cloth.kept_lays import Kept

            self._kept = self._kept or Kept()
            yield partial(self._found, "cloth", cloth_figures(pattern, tuple(all_sizes(self.lesson)), self._kept))

    @spoken
    def _found(self, part: str, figures: tuple[Figure, ...]) -> None:
        self.found[part] = figures
        self._fresh.add(part)
        self.say()
