"""What a comparison is asked of: one notebook twice (two sizes, other values, as cut), or two notebooks or editions."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from pathlib import Path

from kit.body.between import SIGN
from kit.booklet.asked_draft import AskedDraft
from kit.booklet.buying import shopping
from kit.booklet.own_language import spoken
from kit.booklet.run_notebook import Ran, read_notebook, run_notebook
from kit.cloth.kept_lays import Kept
from kit.diagnostic import message, reading
from kit.errors import KitError
from kit.family.compared import Comparison, compared
from kit.family.edition import Edition, cloth_name, edition_of, read_edition
from kit.family.telling import ToldComparison, called, told
from kit.language import SOURCE, say, speaking, spoken_for
from kit.lesson.pattern import Pattern
from kit.prose.readings import ruling_of
from kit.rulers import Ruling, ruled
from kit.units import System

Progress = Callable[[str], None]
_PLAIN = AskedDraft()


@dataclass(frozen=True)
class AskedComparison:
    """What is compared: `first` and, where there are two, `second`, each a notebook, the file of an edition or its
    folder. One notebook is compared with itself in two `sizes`, or as it stands with the values of `draft`, or, with
    `as_cut`, as first cut with the corrected one. `at` is the place the pieces are laid on."""

    first: Path
    second: Path | None = None
    sizes: tuple[str, ...] = ()
    size: str | None = None
    draft: AskedDraft = _PLAIN
    as_cut: bool = False
    at: str = ""
    units: System | None = None
    language: str = ""
    timeout: int = 120


@dataclass(frozen=True)
class Answer:
    """The comparison, and how it reads in `language`, lengths with `system` first."""

    found: Comparison
    page: ToldComparison
    system: System
    language: str


@dataclass(frozen=True)
class _Side:
    """One of the two: its edition, what it is called, and how its lengths are read (None: nobody worked it now)."""

    edition: Edition
    called: str = ""
    rule: Ruling | None = None


def compare(asked: AskedComparison, progress: Progress = lambda line: None) -> Answer:
    """Both worked, laid on each other and told. `KitError` for what is asked of too much or too little, a notebook that
    cannot be run, a size that is not there, a file that is no edition."""
    _sound(asked)
    with speaking(asked.language or SOURCE):
        pass  # refuses a language without a catalogue before a notebook runs
    before, after = _twice(asked, progress) if asked.second is None else _two(asked, progress)
    edition = after.edition
    system = asked.units or edition.units
    rule = after.rule or before.rule or Ruling(edition.units)
    language = asked.language or spoken_for(edition.language)
    with speaking(language), reading(system), ruled(rule):
        found = compared(before.edition, after.edition, asked.at, system)
        errata = asked.second is not None and before.edition.edition != edition.edition
        by_edition = called(before.edition, edition)
        names = (before.called or by_edition[0], after.called or by_edition[1])
        return Answer(found, told(found, names, system, errata=errata), system, language)


def is_notebook(path: Path) -> bool:
    """Whether it is named as a notebook; else it is taken for the file of an edition, or its folder."""
    return path.suffix.lower() == ".ipynb"


def _sound(asked: AskedComparison) -> None:
    values = bool(asked.draft.preset or asked.draft.values)
    ways = sum((bool(asked.sizes), values, asked.as_cut))
    if asked.second is None:
        if not is_notebook(asked.first):
            raise KitError(message("family.one_edition"), where="compare", do=message("family.one_edition_do"))
        if ways != 1 and not (asked.sizes and values):
            raise KitError(message("family.one_notebook"), where="compare", do=message("family.one_notebook_do"))
        if asked.sizes and len(asked.sizes) != 2:
            count = len(asked.sizes)
            raise KitError(message("family.two_sizes", count=count), where="--sizes", do=message("family.two_sizes_do"))
    elif asked.sizes or asked.as_cut:
        raise KitError(message("family.two_given"), where="compare", do=message("family.two_given_do"))
    elif (values or asked.size) and not is_notebook(asked.first) and not is_notebook(asked.second):
        raise KitError(message("family.two_editions"), where="compare", do=message("family.two_editions_do"))


# ---- one notebook, twice ----------------------------------------------------------------------------------


def _twice(asked: AskedComparison, progress: Progress) -> tuple[_Side, _Side]:
    if asked.sizes:
        ran = _ran(asked.first, asked, asked.draft, progress, sizes=asked.sizes)
        by_name = {pattern.body.name: pattern for pattern in ran.handover.sizes}
        if len(by_name) < 2:
            raise KitError(message("family.one_size"), where="--sizes", do=message("family.one_size_do"))
        wanted = [SIGN.join(part.strip() for part in size.split(SIGN)) for size in asked.sizes]
        if len(by_name) > 2 or not all(size in by_name for size in wanted):  # "all" is more than two
            count = len(by_name)
            raise KitError(message("family.two_sizes", count=count), where="--sizes", do=message("family.two_sizes_do"))
        one, two = (_side(by_name[size], asked, ran, by_name[size].body.said) for size in wanted)
        return one, two
    if asked.as_cut:
        drafts = [replace(asked.draft, draft="first"), replace(asked.draft, draft="corrected")]
        names = ("family.as_cut", "family.corrected")
    else:
        drafts = [AskedDraft(draft="present"), replace(asked.draft, draft="present")]
        names = ("family.as_it_stands", "")
    rans = [_ran(asked.first, asked, draft, progress) for draft in drafts]
    said = [say(name) if name else say("family.with", values=_values(asked.draft)) for name in names]
    one, two = (_side(ran.handover.pattern, asked, ran, name) for ran, name in zip(rans, said, strict=True))
    return one, two


def _values(draft: AskedDraft) -> str:
    texts = [f"{name.replace('_', ' ')} {value}" for name, value in draft.values]
    return ", ".join([draft.preset, *texts] if draft.preset else texts)


# ---- two ---------------------------------------------------------------------------------------------------


def _two(asked: AskedComparison, progress: Progress) -> tuple[_Side, _Side]:
    """Both sides; a notebook beside an edition is worked in the edition's size and language where none is asked for."""
    assert asked.second is not None
    paths = (asked.first, asked.second)
    editions = [None if is_notebook(path) else read_edition(path, asked.size or "") for path in paths]
    known = next((edition for edition in editions if edition is not None), None)
    size = asked.size or (known.size if known and known.body else None)
    language = asked.language or (known.language if known else "")
    sides = []
    for path, edition in zip(paths, editions, strict=True):
        if edition is not None:
            sides.append(_Side(edition))
            continue
        here = replace(asked, size=size)
        bought = bool(known and known.cloth)
        ran = _with_sizes(path, here, progress) if bought else _ran(path, here, asked.draft, progress)
        side = _side(ran.handover.pattern, replace(asked, language=language, first=path), ran)
        cloth = _cloth(ran, path) if bought else ()
        sides.append(replace(side, edition=replace(side.edition, cloth=cloth)))
    return sides[0], sides[1]


def _with_sizes(path: Path, asked: AskedComparison, progress: Progress) -> Ran:
    """With every size of its chart, since what one takes hangs on the others; without, where they cannot be had."""
    try:
        return _ran(path, asked, asked.draft, progress, sizes=("all",))
    except KitError:
        return _ran(path, asked, asked.draft, progress)


def _cloth(ran: Ran, path: Path) -> tuple[tuple[str, float], ...]:
    """What is bought for the pattern, as the booklet says it."""
    pattern = ran.handover.pattern
    try:
        bought = shopping(ran.handover, Kept.beside(path.resolve().parent, pattern.lesson.slug))
    except KitError:  # no allowances yet
        return ()
    size = pattern.body.name
    return tuple(
        (cloth_name(entry.cloth, entry.width), entry.of(size).length)
        for entry in bought.amounts
        if not entry.of(size).trouble
    )


# ---- a notebook worked -------------------------------------------------------------------------------------


def _ran(path: Path, asked: AskedComparison, draft: AskedDraft, progress: Progress, sizes: tuple[str, ...] = ()) -> Ran:
    progress(f"Running {path.name} from the top")
    return run_notebook(
        read_notebook(path),
        path.resolve().parent,
        name=path.name,
        size=asked.size,
        units=asked.units,
        sizes=sizes,
        draft=draft,
        timeout=asked.timeout,
    )


def _side(pattern: Pattern, asked: AskedComparison, ran: Ran, called: str = "") -> _Side:
    own = pattern.lesson.language
    language = asked.language or spoken_for(own)
    with _in_words_of(pattern, language):
        given = replace(ran.handover, pattern=pattern, sizes=(), fittings=())
        pattern = spoken(given, ran.notebook, asked.first, language)[0].pattern
        used = {name for row in ran.handover.chart for name, _ in row.measures}
        return _Side(edition_of(pattern, language, used), called, ruling_of(pattern))


@contextmanager
def _in_words_of(pattern: Pattern, language: str) -> Iterator[None]:
    with speaking(language), reading(pattern.lesson.units), ruled(ruling_of(pattern)):
        yield
