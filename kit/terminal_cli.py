"""What a command prints where the terminal has few signs, and how it ends when it is stopped or met by what nobody
foresaw: in one line, and never in the words of the machine."""

from __future__ import annotations

import codecs
import os
import signal
import sys
import traceback
import unicodedata
from collections.abc import Callable, Iterator
from contextlib import contextmanager

from kit.errors import KitError

DONE, FOUND, REFUSED, FAULT, STOPPED = 0, 1, 2, 3, 130
TRACEBACK = "LESSONKIT_TRACEBACK"
"""Set in the environment, it has a fault of the kit itself shown whole."""

_PLAIN = {"…": "...", "–": "-", "—": "-", "−": "-", "“": '"', "”": '"', "×": "x", "⁄": "/", "•": "*", "ß": "ss"}
_PLAIN |= dict.fromkeys("‘’", "'") | dict.fromkeys("„«»", '"')


def ended(run: Callable[[], int]) -> int:
    """Run a command to its end and give its exit status: 0 done, 1 the proof found errors, 2 refused, 3 a fault of the
    kit, 130 stopped. Whatever it ends in is said in a line on standard error."""
    with _plain_signs(), _stopped_by_signals():
        try:
            return run()
        except KitError as error:
            return _say(str(error), REFUSED)
        except KeyboardInterrupt:
            return _say("stopped. The earlier output is untouched.", STOPPED)
        except BrokenPipeError:  # whoever read the output, `head` say, has read enough
            os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
            return DONE
        except MemoryError:
            return _say("the memory is used up. Close other programs, or make less at once; nothing is lost.", REFUSED)
        except OSError as error:
            place = f"{error.filename}: " if error.filename else ""
            reason = (error.strerror or str(error)).lower()
            return _say(f"{place}the computer refused it ({reason}). What was there before is untouched.", REFUSED)
        except Exception as error:
            if os.environ.get(TRACEBACK):
                traceback.print_exc()
            what = " ".join(f"{type(error).__name__}: {error}".split())[:300]
            more = f"{TRACEBACK}=1 in the environment shows where."
            return _say(f"the kit itself failed ({what}). What was there before is untouched. {more}", FAULT)


def _say(text: str, status: int) -> int:
    print(f"lessonkit: {text}", file=sys.stderr)
    return status


# ---- signs --------------------------------------------------------------------------------------------------


def plainly(text: str) -> str:
    """`text` in ASCII, as near as it comes: a terminal that has no more signs than that shows this.

    >>> plainly("½ in … “é” 3 × 4")
    '1/2 in ... "e" 3 x 4'
    """
    found = []
    for sign in text:
        parts = _PLAIN.get(sign) or unicodedata.normalize("NFKD", sign)
        plain = "".join(_PLAIN.get(part, part) for part in parts if not unicodedata.combining(part))
        found.append(plain if plain.isascii() else "?")
    return "".join(found)


def _as_plain(error: UnicodeError) -> tuple[str, int]:
    if not isinstance(error, UnicodeEncodeError):
        raise error
    return plainly(error.object[error.start : error.end]), error.end


codecs.register_error("lessonkit", _as_plain)


@contextmanager
def _plain_signs() -> Iterator[None]:
    """Inside the block a sign that the terminal lacks is written as near as it comes."""
    before = []
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure") and stream.errors in ("strict", "backslashreplace"):
            before.append((stream, stream.errors))
            stream.reconfigure(errors="lessonkit")
    try:
        yield
    finally:
        for stream, errors in before:
            stream.reconfigure(errors=errors)


# ---- signals ------------------------------------------------------------------------------------------------


@contextmanager
def _stopped_by_signals() -> Iterator[None]:
    """Inside the block a request to end (the machine goes down, the terminal is closed) stops the work as Ctrl-C does,
    so that nothing is left lying about and every process begun is ended. What the caller has ignored (nohup does so
    with the closing of the terminal) stays ignored."""

    def stop(number: int, frame: object) -> None:
        raise KeyboardInterrupt  # not SIGINT, which a job in the background of a script ignores

    before = []
    for name in ("SIGTERM", "SIGHUP"):
        try:
            number = getattr(signal, name)
            if signal.getsignal(number) not in (signal.SIG_IGN, None):  # None: set by something other than Python
                before.append((number, signal.signal(number, stop)))
        except (AttributeError, ValueError):  # no such signal here; not the main thread
            pass
    try:
        yield
    finally:
        for number, handler in before:
            signal.signal(number, handler)
