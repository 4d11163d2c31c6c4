"""Tab and Shift-Tab in a notebook: the kit's answers put before IPython's, once in a kernel, and taken out again.

Tab has a supported place for more answers, the completer's `custom_matchers`. Shift-Tab has none that sees the cell:
IPython is asked about a name alone, and `front` in a step is no name of the notebook. So the kernel's `do_inspect`
is given a first try of ours, on this one kernel; whatever we do not know goes on to IPython.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import Any

from kit.live.completing import Offers, offers
from kit.live.help_at_cursor import help_at

_NAME = "kit.lesson_step"
_LONGEST = 72  # characters beside a name
_HELPER = "_lesson_help"


def help_while_typing(shell: Any) -> None:
    """Let Tab and Shift-Tab know the steps of lessons in the kernel of `shell`. Done once however often it is asked."""
    completer = getattr(shell, "Completer", None)
    if completer is None or any(_ours(matcher) for matcher in completer.custom_matchers):
        return
    completer.custom_matchers.insert(0, _matcher(shell))
    kernel = getattr(shell, "kernel", None)
    if kernel is not None and hasattr(kernel, "do_inspect"):
        kernel.do_inspect = _inspector(shell, kernel.do_inspect)


def no_help_while_typing(shell: Any) -> None:
    """Leave Tab and Shift-Tab to IPython again."""
    completer = getattr(shell, "Completer", None)
    if completer is not None:
        completer.custom_matchers[:] = [m for m in completer.custom_matchers if not _ours(m)]
    kernel = getattr(shell, "kernel", None)
    if kernel is not None and getattr(kernel.__dict__.get("do_inspect"), _HELPER, False):
        del kernel.do_inspect


def _ours(matcher: Any) -> bool:
    return getattr(matcher, "matcher_identifier", "") == _NAME


def _matcher(shell: Any) -> Callable[[Any], Any]:
    from IPython.core.completer import SimpleCompletion, context_matcher

    @context_matcher(identifier=_NAME, priority=100)
    def match(context: Any) -> dict[str, Any]:
        try:
            lines = context.full_text.split("\n")[: context.cursor_line]
            cursor = sum(len(line) + 1 for line in lines) + context.cursor_position
            with _unheard():
                found = offers(context.full_text, cursor, shell.user_ns)
        except Exception:
            found = Offers("")
        return {
            "completions": [SimpleCompletion(offer.text, type=_in_one_line(offer.line)) for offer in found.offers],
            "matched_fragment": found.word,
            "suppress": True,  # only where there are completions
            "ordered": True,
        }

    return match


def _in_one_line(line: str) -> str:
    """What stands beside a name, so that JupyterLab shows it: its list gives that column the width of the longest word
    and lays what wraps over the next row, so the words hang together, and a long line is cut."""
    if len(line) > _LONGEST:
        line = line[:_LONGEST].rpartition(" ")[0].rstrip(",;:") + " ..."
    return line.replace(" ", "\N{NO-BREAK SPACE}")


def _inspector(shell: Any, former: Callable[..., Any]) -> Callable[..., Any]:
    def do_inspect(code: str, cursor_pos: int, *given: Any, **named: Any) -> Any:
        try:
            with _unheard():
                text = help_at(code, cursor_pos, shell.user_ns)
        except Exception:
            text = ""
        if not text:
            return former(code, cursor_pos, *given, **named)
        return {"status": "ok", "found": True, "data": {"text/plain": text}, "metadata": {}}

    setattr(do_inspect, _HELPER, True)
    return do_inspect


@contextmanager
def _unheard() -> Iterator[None]:
    """What a step prints while it is worked goes nowhere: nobody ran a cell."""
    from IPython.utils.capture import capture_output

    with capture_output():
        yield
