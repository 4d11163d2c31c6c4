"""When Python looks for lost circles of values: not while a slider moves, but when the page rests.

A draft leaves some hundreds of values that hold on to each other. Python looks for such every few hundred values made,
and now and then through all it has, the kit itself with it: a picture that falls on that one waits twice as long, and
so does a page that opens.
"""

from __future__ import annotations

import gc
from collections.abc import Callable

from kit.page.engine import Engine

SELDOM = (50_000, 10, 10)
"""So many values are made (and not yet let go) before Python looks by itself: some fifty drafts, where nobody rests."""
_FEW = 2_000


def answering(engine: Engine) -> Callable[[str], str]:
    """The engine's `answer`, after which lost circles are looked for when it rests. What is there at its first rest,
    the kit and the lesson, is not looked through again. For a Python that has nothing else to do: it is set for all of
    it."""
    gc.set_threshold(*SELDOM)
    gc.enable()
    opened = False

    def answer(text: str) -> str:
        nonlocal opened
        said = engine.answer(text)
        if engine.rests and (not opened or gc.get_count()[0] > _FEW):
            gc.collect()
            if not opened:
                gc.freeze()
            opened = True
        return said

    return answer
