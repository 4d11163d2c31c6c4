"""What must be in order before a lesson is released, and what may be waived.

All reasons are gathered before anything is refused, so that an author mends them in one go. Each has the name by which
it can be waived (`--allow`); what is waived is written down in the release's summary.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from html import unescape
from pathlib import Path

from kit.booklet.handover import Handover
from kit.booklet.own_language import spoken
from kit.booklet.ranged import Ranges
from kit.booklet.run_notebook import Ran
from kit.errors import KitError, known_near
from kit.language import SOURCE, languages
from kit.proof import prove

NAMES = ("proof", "notions", "sizes", "words", "pictures", "ranges")
"""What can be waived."""
_IMAGE = re.compile(r"<img\b[^>]*>", re.IGNORECASE)
_DRAWN = re.compile(r"<svg\b[^>]*>(?:\s*<title\b[^>]*>([^<]*)</title>)?", re.IGNORECASE)
_ALT = re.compile(r"""\balt\s*=\s*(?:"([^"]*)"|'([^']*)')""", re.IGNORECASE)
_SOURCE = re.compile(r"""\bsrc\s*=\s*["']([^"']{0,60})""", re.IGNORECASE)
_QUIET = re.compile(r"""\b(?:aria-hidden\s*=\s*["']true|role\s*=\s*["'](?:presentation|none))""", re.IGNORECASE)
_NOTIONS = ("notion_missing", "notion_count", "notion_length")
_MOST = 6  # reasons of one kind that are told


@dataclass(frozen=True)
class Reason:
    """Why a lesson is not fit for release: what is wrong and what to do about it; `name` waives it."""

    name: str
    what: str
    do: str

    def __str__(self) -> str:
        return f"{self.what} {self.do}".strip()


class NotReady(KitError):
    """A lesson that is not fit for release, with every `reasons`."""

    reasons: tuple[Reason, ...] = ()

    @classmethod
    def of(cls, title: str, reasons: Sequence[Reason]) -> NotReady:
        lines = "".join(f"\n  {reason.name}: {reason}" for reason in reasons)
        names = ",".join(dict.fromkeys(reason.name for reason in reasons))
        error = cls(
            f"it is not ready to be released:{lines}\n",
            where=title,
            do=f"Mend these, or waive them with --allow {names}: the summary then says so. Nothing was written.",
        )
        error.reasons = tuple(reasons)
        return error


def read_allowed(text: str) -> tuple[str, ...]:
    """ "proof,ranges" as names of what is waived. Raises `KitError` for one that there is not."""
    names = tuple(dict.fromkeys(part.strip().lower() for part in text.split(",") if part.strip()))
    for name in names:
        if name not in NAMES:
            raise KitError(
                f"nothing is called '{name}' that could be waived.", where="--allow", do=known_near(name, NAMES)
            )
    return names


def read_languages(text: str, own: str) -> tuple[str, ...]:
    """ "en,de" as languages; the lesson's `own`, or English where the kit does not speak that, when nothing is said.
    Raises `KitError` for a language the kit does not speak."""
    known = languages()
    asked = tuple(dict.fromkeys(part.strip().lower() for part in text.split(",") if part.strip()))
    for code in known if asked == ("all",) else asked:
        if code not in known:
            raise KitError(f"the kit does not speak '{code}'.", where="--languages", do=known_near(code, known))
    return tuple(known) if asked == ("all",) else asked or (own if own in known else SOURCE,)


def _few(name: str, found: Iterable[tuple[str, str]]) -> Iterator[Reason]:
    reasons = list(dict.fromkeys(found))
    for what, do in reasons[:_MOST]:
        yield Reason(name, what, do)
    if len(reasons) > _MOST:
        yield Reason(name, f"And {len(reasons) - _MOST} more like these.", "")


def proof_reasons(given: Handover) -> Iterator[Reason]:
    """Errors of the proof, in the size that is drawn and in every other; and notions that the list does not have, or
    has too few or too short: whoever buys by it stands at the machine without a button."""
    every = {pattern.body.name: pattern for pattern in (given.pattern, *given.sizes)}
    found: dict[str, dict[tuple[str, str], list[str]]] = {"proof": {}, "notions": {}}
    for size, pattern in every.items():
        for finding in prove(pattern):
            name = "notions" if finding.code in _NOTIONS else "proof" if finding.level == "error" else ""
            if name:
                where = f"{finding.where}: " if finding.where else ""
                found[name].setdefault((f"{where}{finding.what}", finding.do), []).append(size)
    for name, told in found.items():
        yield from _few(name, ((f"In {_sizes(at, len(every))}: {what}", do) for (what, do), at in told.items()))


def _sizes(names: Sequence[str], of: int) -> str:
    return "every size" if len(names) == of and of > 1 else ", ".join(names)


def size_reasons(given: Handover) -> Iterator[Reason]:
    """Sizes of the chart that cannot be drafted."""
    do = "Mend the draft for that size, or leave the size out of the chart."
    yield from _few(
        "sizes", ((f"Size {row.name} cannot be drafted: {row.trouble}", do) for row in given.chart if row.trouble)
    )


def word_reasons(ran: Ran, notebook: Path, asked: Iterable[str]) -> Iterator[Reason]:
    """Texts of the lesson that are not translated into a language that is asked for."""
    for code in asked:
        *_, notes = spoken(ran.handover, ran.notebook, notebook, code)
        for note in notes:
            yield Reason("words", note, f"Write them with lessonkit words {notebook.name} --language {code}.")


def picture_reasons(html: str, unsaid: Iterable[str] = ()) -> Iterator[Reason]:
    """Pictures in a booklet's page that say nothing to those who cannot see them; `unsaid` are those of the lesson's
    own words that go by the name of their file for want of others."""
    do = "Say in the words between its brackets, or in alt=, what it shows."
    yield from _few(
        "pictures", ((f"The picture {name} has no alternative text.", do) for name in (*unsaid, *silent(html)))
    )


def silent(html: str) -> Iterator[str]:
    """Pictures without an alternative text, each by what names it. What is marked as mere ornament is let be.

    >>> list(silent('<img src="a.png" alt="A hem."><img src="b.png" alt=" "><svg></svg><svg aria-hidden="true"></svg>'))
    ['b.png', 'number 1 of those drawn']
    """
    for tag in _IMAGE.findall(html):
        alt = _ALT.search(tag)
        if not _QUIET.search(tag) and not (alt and unescape(alt[1] or alt[2] or "").strip()):
            source = _SOURCE.search(tag)
            yield "within the text" if source is None or source[1].startswith("data:") else source[1]
    for number, found in enumerate(_DRAWN.finditer(html), 1):
        if not _QUIET.search(found[0]) and not (found[1] or "").strip() and "aria-label=" not in found[0]:
            yield f"number {number} of those drawn"


def range_reasons(found: Ranges) -> Iterator[Reason]:
    """Sliders that do not hold over their range, and too few sound settings of all of them."""
    if found.hold:
        return
    do = "lessonkit check --ranges says the bounds that would hold."
    told = [
        (f"{reaches[0].parameter.label.capitalize()} fails in {', '.join(reach.size for reach in reaches)}.", do)
        for reaches in found.failing.values()
    ]
    count = len(found.mixtures)
    if found.sound < count:
        lost = f"; nothing mends {len(found.lost)} of the others" if found.lost else ""
        told.append((f"Of {count} settings drawn at random {found.sound} are sound{lost}.", do))
    yield from _few("ranges", told)
