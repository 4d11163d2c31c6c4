"""What is needed before and after a film of a lesson, written in each of its languages.

A shot list is to have by hand while the film is made; chapters and captions, once the player's clock has times, are for
whoever plays it.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from contextlib import ExitStack
from pathlib import Path
from typing import TYPE_CHECKING

from kit.atomic import write_atomically
from kit.errors import KitError, near
from kit.language import catalogue_of, languages, naming, speaking
from kit.lesson.own_words import Translator
from kit.lesson.pattern import Pattern
from kit.lesson.where import here
from kit.lesson.word_file import path_of, read_words
from kit.live.captions import caption_cues, chapter_cues, spans
from kit.live.chapter_list import ChapterList
from kit.live.film import Showing
from kit.live.shot_list import shot_list
from kit.live.speech import spoken_by
from kit.live.webvtt import webvtt
from kit.prose.told import told_steps
from kit.units import set_fractions

if TYPE_CHECKING:
    from kit.lesson.lesson import Lesson


def film_notes(
    lesson: Lesson,
    folder: str | Path | None = None,
    spoken: Sequence[str] = (),
    *,
    progress: Callable[[float, str], None] | None = None,
    cancelled: Callable[[], bool] | None = None,
) -> tuple[Path, ...]:
    """Write, for each language, the shot list of `lesson`, and with times from the player's clock its chapters and
    captions as WebVTT; give the files: `shots.de.html`, `chapters.de.vtt`, `captions.de.vtt`.

    `folder` is "<lesson>-film" beside the notebook when left out; `spoken` are codes such as "de" (the lesson's own
    language and those whose words stand beside the notebook when left out). `progress` is called with the share done
    (0..1) and the name of a file, `cancelled` is asked between files. A build, which runs the notebook again, writes
    none. Raises `KitError` for a language without a catalogue, broken words and a folder that cannot be written in.

    Example::

        film_notes(lesson)
    """
    if here().building:
        return ()
    times = ChapterList(lesson)
    codes = _languages(lesson, spoken)
    found = spans(times.times, times.shown, times.least)
    place = Path(folder) if folder is not None else times.folder
    pattern = lesson.work()
    kinds = ("shots.{}.html", *(("chapters.{}.vtt", "captions.{}.vtt") if times.times else ()))
    made: list[Path] = []
    for code in codes:
        for kind in kinds:
            name = kind.format(code)
            if cancelled is not None and cancelled():
                return tuple(made)
            if progress is not None:
                progress(len(made) / (len(codes) * len(kinds)), name)
            with ExitStack() as speech:
                speech.enter_context(speaking(code if catalogue_of(code) else spoken_by(lesson)))
                said, names = _translated(lesson, pattern, code)
                speech.enter_context(naming(names))
                text = _written(kind, said, code, lesson, times.times, found)
            made.append(write_atomically(place / name, text))
    return tuple(made)


def _written(
    kind: str, pattern: Pattern, code: str, lesson: Lesson, times: Mapping[str, float], found: Sequence[Showing]
) -> str:
    if kind.startswith("shots"):
        return shot_list(pattern, lesson.units, code, times, found)
    told = told_steps(pattern, lesson.units)
    if kind.startswith("captions"):
        return webvtt(caption_cues(found, {s.key: [set_fractions(text) for text in s.words] for s in told}))
    end = max((one.end for one in found if one.end < float("inf")), default=0.0)
    return webvtt(chapter_cues(times, {step.key: step.title for step in told}, pattern.lesson.title, end))


def _languages(lesson: Lesson, spoken: Sequence[str]) -> tuple[str, ...]:
    own, known = lesson.info.language, languages()
    wanted = (spoken,) if isinstance(spoken, str) else tuple(spoken)
    for code in wanted:
        if code != own and code not in known:
            raise KitError(f"there is no language '{code}'.", where="film_notes", do=near(code, (own, *known)))
    if wanted:
        return tuple(dict.fromkeys(wanted))
    book = _book(lesson)
    beside = [code for code in known if code != own and book is not None and path_of(book, code).is_file()]
    return (own, *beside)


def _translated(lesson: Lesson, pattern: Pattern, code: str) -> tuple[Pattern, dict[str, str]]:
    """The pattern with the lesson's own words in a language, and what its points are called there. A text without a
    translation stands as it is, with a mark."""
    if code == pattern.lesson.language:
        return pattern, {}
    book = _book(lesson)
    file = path_of(book, code) if book is not None else None
    translator = Translator(read_words(file, code) if file else None, code, pattern, file.name if file else "")
    return translator.of(pattern), translator.names(pattern)


def _book(lesson: Lesson) -> Path | None:
    """The notebook the lesson stands in, where that is known."""
    sitting = lesson.sitting
    return sitting.sidecar.with_name(sitting.book) if sitting.book else None
