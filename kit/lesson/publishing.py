"""What a lesson brings to its booklet beside its steps: advice on cloth, licence and credits, photos and films.

Photos and films stand beside a step by the name of its function. They follow the rule of steps: a cell that is run
again replaces what it added before. A variation inherits those of the steps it keeps; a step it writes anew looks
different, so that step's photo and time mark are not inherited.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, fields, replace
from typing import Any, Generic, TypeVar, get_args
from urllib.parse import urlsplit

from kit.errors import KitError, near
from kit.lesson.pattern import Fit, LessonInfo, Nap, Pattern, Photo, SewRecord, StepRecord, Video
from kit.lesson.steps import Entry
from kit.placeholder import references
from kit.sewing.handling import KINDS
from kit.units import length, system_said

MOST_SHRINKAGE = 0.3
MOST_STRETCH = 2.0
NAPS: tuple[str, ...] = get_args(Nap)
FITS: tuple[str, ...] = get_args(Fit)
_TEXTS = (
    *("fibre", "weight", "drape", "avoid", "prewash", "care", "licence", "cover", "cover_alt"),
    *("title", "date", "author", "summary", "cloth", "level"),
)
OF_CLOTH = ("fibre", "weight", "drape", "avoid", "prewash", "care")
"""What a lesson says of the cloth it names; a variation in another cloth has to say it anew."""
_LISTS = ("credits", "notions", "cautions", "handling", "size_breaks", "no_paper")
# RFC 5646, section 2.1: language, script, region, variants, extensions, private use.
_TAG = re.compile(
    r"[a-z]{2,3}(-[a-z]{3}){0,3}(-[a-z]{4})?(-([a-z]{2}|\d{3}))?(-([a-z0-9]{5,8}|\d[a-z0-9]{3}))*"
    r"(-[0-9a-wy-z](-[a-z0-9]{2,8})+)*(-x(-[a-z0-9]{1,8})+)?",
    re.IGNORECASE,
)
_CLOCK = re.compile(r"(?:(\d+):)?(\d{1,2}):(\d{2}(?:\.\d+)?)")

Thing = TypeVar("Thing", bound=Photo | Video)


@dataclass(frozen=True)
class Added(Generic[Thing]):
    """A photo or film with the `cell` and `run` (execution count) that added it. `shows` are the functions of the steps
    it was inherited with: step name -> function; None for what the lesson added itself."""

    thing: Thing
    cell: str = ""
    run: int = 0
    shows: Mapping[str, Callable[..., Any]] | None = None


def is_language(tag: object) -> bool:
    """Whether `tag` looks like a language tag (BCP 47)."""
    return isinstance(tag, str) and bool(_TAG.fullmatch(tag))


def checked(info: LessonInfo) -> LessonInfo:
    """`info` with its lists as tuples. Raises `KitError` naming the keyword for a value that cannot be printed."""
    where = info.title
    units = system_said(info.units, where)
    if info.nap not in NAPS:
        raise KitError(
            f"nap is {', '.join(repr(word) for word in NAPS[:-1])} or {NAPS[-1]!r}, not {info.nap!r}.",
            where=where,
            do="Say one_way for cloth whose pile or print must run one way, print for a pattern to be matched too.",
        )
    if info.fit and info.fit not in FITS:
        raise KitError(f"fit is {info.fit!r}.", where=where, do='Say "close", "easy" or "loose", or leave it out.')
    for name in _TEXTS:
        if not isinstance(getattr(info, name), str):
            raise KitError(
                f"{name} is {getattr(info, name)!r}, not a text.", where=where, do=f'Write it in quotes: {name}="...".'
            )
    lists: dict[str, Any] = {}
    for name in _LISTS:
        given = getattr(info, name)
        if isinstance(given, str) or not _all_texts(given):
            raise KitError(
                f"{name} is {given!r}, not a list of texts.", where=where, do=f'Write {name}=["...", "..."].'
            )
        lists[name] = tuple(given)
    for name in lists["handling"]:
        if name not in KINDS:
            raise KitError(f"'{name}' is nothing that is told of handling cloth.", where=where, do=near(name, KINDS))
    if not is_language(info.language):
        raise KitError(
            f"{info.language!r} is not the code of a language.",
            where=where,
            do='Write a language tag (BCP 47) such as "en", "de" or "pt-BR".',
        )
    return replace(
        info,
        units=units,
        shrinkage=_shrinkage(info),
        stretch=_stretch(info),
        stretch_along=_stretch(info, "stretch_along"),
        variations=_variations(info),
        **lists,
    )


_NOT_WRITTEN = ("photos", "videos", "slug", "own", "alone")


def changed(info: LessonInfo, changes: Mapping[str, Any]) -> LessonInfo:
    """`info` with some of its fields changed and checked; `KitError` for a field there is not."""
    known = [field.name for field in fields(LessonInfo) if field.name not in _NOT_WRITTEN]
    for name in changes:
        if name not in known and name not in ("slug",):
            raise KitError(f"a lesson has no '{name}'.", where=info.title, do=near(name, known))
    if "cloth_widths" in changes:
        changes = {**changes, "cloth_widths": widths(changes["cloth_widths"], info.title)}
    return checked(replace(info, **changes))


def _all_texts(given: object) -> bool:
    return isinstance(given, Sequence) and all(isinstance(item, str) for item in given)


def widths(given: object, title: str) -> tuple[float, ...]:
    """Cloth widths as an author gives them, each with its unit, in mm. `KitError` for what is no list of lengths."""
    if isinstance(given, str) or not isinstance(given, Sequence):
        raise KitError(
            f"cloth_widths is {given!r}, not a list of widths.",
            where=title,
            do='Write cloth_widths=["140 cm", "112 cm"].',
        )
    return tuple(float(length(width, "cloth width")) for width in given)


def _shrinkage(info: LessonInfo) -> float:
    given = info.shrinkage
    if isinstance(given, bool) or not isinstance(given, int | float) or not 0.0 <= given <= MOST_SHRINKAGE:
        raise KitError(
            f"shrinkage is {given!r}; it lies between 0 and {MOST_SHRINKAGE:g}.",
            where=info.title,
            do="Write 0.05 for cloth that loses 5 % of its length in the first wash.",
        )
    return float(given)


def _stretch(info: LessonInfo, name: str = "stretch") -> float:
    given = getattr(info, name)
    if isinstance(given, bool) or not isinstance(given, int | float) or not 0.0 <= given <= MOST_STRETCH:
        raise KitError(
            f"{name} is {given!r}; it lies between 0 and {MOST_STRETCH:g}.",
            where=info.title,
            do="Write 0.4 for cloth of which 10 cm, folded across, can be stretched to 14 cm.",
        )
    return float(given)


def _variations(info: LessonInfo) -> tuple[tuple[str, str], ...]:
    given = info.variations
    if isinstance(given, str) or not isinstance(given, Sequence):
        given = (given,)
    for item in given:
        if isinstance(item, str) or not _all_texts(item) or len(item) != 2 or not item[0].strip():
            raise KitError(
                f"variations holds {item!r}, which is not a title and its words.",
                where=info.title,
                do='Write variations=[("Long sleeves", "Carry the overarm on to the wrist.")].',
            )
    return tuple((title, words) for title, words in given)


def check_cover(info: LessonInfo) -> None:
    """`KitError` for a cover picture that nobody who cannot see it is told of."""
    if info.cover and not info.cover_alt.strip():
        raise KitError(
            f"the cover picture '{info.cover}' has no words for those who cannot see it.",
            where=info.title,
            do='Add cover_alt="what the picture shows".',
        )
    if info.cover_alt and not info.cover:
        raise KitError("cover_alt is given without a cover.", where=info.title, do='Add cover="photos/name.jpg".')


def seconds(mark: object, where: str) -> float:
    """A time mark in seconds: "3:20", "1:02:10", or a number of seconds. `KitError` for anything else."""
    if isinstance(mark, int | float) and not isinstance(mark, bool) and 0 <= mark < float("inf"):
        return float(mark)
    text = str(mark).strip()
    found = _CLOCK.fullmatch(text)
    if found and float(found[3]) < 60 and (found[1] is None or int(found[2]) < 60):
        return int(found[1] or 0) * 3600 + int(found[2]) * 60 + float(found[3])
    long = re.fullmatch(r"(\d{3,}):(\d{2})", text)  # minutes of a film longer than an hour and a half
    if long and int(long[2]) < 60:
        return int(long[1]) * 60 + float(long[2])
    if isinstance(mark, str) and re.fullmatch(r"\d+", text):  # "3.20" may be meant as 3:20
        return float(text)
    raise KitError(
        f"{mark!r} is not a time in a film.",
        where=where,
        do='Write minutes and seconds "3:20", hours too "1:02:10", or seconds 200.',
    )


def photo_of(file: str, beside: str, alt: str, caption: str) -> Photo:
    """A photo as its author wrote it; `KitError` without words for those who cannot see it, or beside what is no name
    of a step."""
    where = f"Photo '{file}'"
    for name, given in (("file", file), ("beside", beside), ("alt", alt), ("caption", caption)):
        if not isinstance(given, str):
            raise KitError(f"{name} is {given!r}, not a text.", where=where, do="Write it in quotes.")
    if not file.strip():
        raise KitError("a photo needs the name of its file.", do='Write lesson.photo("photos/hem.jpg", ...).')
    if not beside.isidentifier():
        raise KitError(
            f"beside is {beside!r}, which is not the name of a step.",
            where=where,
            do="Write the name of the step's function, such as hem_it.",
        )
    if not alt.strip():
        raise KitError(
            "it has no words for those who cannot see it.", where=where, do='Add alt="what the photo shows".'
        )
    return Photo(file, beside, alt, caption)


def video_of(address: str, marks: Mapping[str, object]) -> Video:
    """A film as its author wrote it; `KitError` for what is no address on the web or no time."""
    where = f"Film '{address}'"
    try:
        parts = urlsplit(address)
        sound = parts.scheme in ("http", "https") and bool(parts.hostname)
    except (ValueError, AttributeError, TypeError):
        sound = False
    if not sound or re.search(r"[\s<>\"'\\{}|^`\x00-\x1f\x7f]", address):
        raise KitError(
            f"{address!r} is not an address on the web.",
            where="Film",
            do='Write one such as "https://example.org/film".',
        )
    return Video(address, tuple((name, seconds(mark, f"{where}, {name}")) for name, mark in marks.items()))


def published(
    info: LessonInfo,
    photos: Sequence[Added[Photo]],
    videos: Sequence[Added[Video]],
    entries: Sequence[Entry],
    recorded: Mapping[str, float],
) -> LessonInfo:
    """What a lesson of these `entries` says of itself, with its photos and films. `recorded` are the seconds kept
    beside the notebook, by step, for the film that names none. `KitError` when it cannot be told for which."""
    if not photos and not videos:
        return info
    steps = _steps(entries)
    shown = tuple(one.thing for one in photos if _still(one, one.thing.beside, steps))
    return replace(info, photos=shown, videos=tuple(_films(info, videos, steps, recorded)))


def _steps(entries: Sequence[Entry]) -> dict[str, Callable[..., Any]]:
    """What a photo or a time mark may stand beside: the steps' functions by name."""
    return {entry.name: entry.function for entry in entries if entry.kind != "finished"}


def _films(
    info: LessonInfo,
    videos: Sequence[Added[Video]],
    steps: Mapping[str, Callable[..., Any]],
    recorded: Mapping[str, float],
) -> list[Video]:
    found = {name: at for name, at in recorded.items() if name in steps}
    bare = [one for one in videos if not one.thing.marks and one.shows is None]
    if found and len(bare) > 1:
        raise KitError(
            f"{len(bare)} films have no time marks, and the recorded ones can belong to one only.",
            where=info.title,
            do=f"Give '{bare[0].thing.address}' its marks: lesson.video(address, {next(iter(found))}=\"0:00\").",
        )
    films = []
    for one in videos:
        marks = one.thing.marks or (tuple(found.items()) if one in bare else ())
        marks = tuple((name, at) for name, at in marks if _still(one, name, steps))
        if marks or not one.thing.marks:
            films.append(Video(one.thing.address, marks))
    return films


def inherited_photos(photos: Sequence[Added[Photo]], entries: Sequence[Entry]) -> tuple[Added[Photo], ...]:
    """A lesson's photos in a variation of it: they stay with those of its `entries` that stay."""
    steps = _steps(entries)
    return tuple(replace(one, cell="", shows=one.shows or steps) for one in photos)


def inherited_videos(
    videos: Sequence[Added[Video]], entries: Sequence[Entry], recorded: Mapping[str, float]
) -> tuple[Added[Video], ...]:
    """A lesson's films in a variation of it, with the time marks `recorded` for the parent."""
    steps = _steps(entries)
    marks = tuple((name, at) for name, at in recorded.items() if name in steps)
    return tuple(
        replace(one, cell="", shows=one.shows or steps, thing=Video(one.thing.address, one.thing.marks or marks))
        for one in videos
    )


def _still(one: Added[Any], name: str, kept: Mapping[str, Callable[..., Any]]) -> bool:
    """Whether a photo or mark beside the step `name` is shown: always what the lesson added itself, of what it
    inherited only that of steps left as they were."""
    return one.shows is None or (name in one.shows and kept.get(name) is one.shows[name])


def check_references(pattern: Pattern) -> None:
    """`KitError` for a photo, a time mark or a `{name:step}` or `{name:piece}` in a step's words that belongs to
    nothing the pattern has."""
    records: list[StepRecord | SewRecord] = [*pattern.steps, *pattern.sewing]
    steps = [record.key for record in records]
    pieces = [piece.name for piece in pattern.pieces]
    for photo in pattern.lesson.photos:
        if photo.beside not in steps:
            raise _no_step(f"Photo '{photo.file}'", photo.beside, steps)
    for video in pattern.lesson.videos:
        for name, _ in video.marks:
            if name not in steps:
                raise _no_step(f"Film '{video.address}'", name, steps)
    for record in records:
        for found in references(record.text):
            known = steps if found.format == "step" else pieces
            if found.name not in known:
                raise KitError(
                    f"the text names {{{found.name}:{found.format}}}, but there is no {found.format} '{found.name}'.",
                    where=f"Step '{record.title}'",
                    do=near(found.name, known),
                )


def _no_step(where: str, name: str, steps: Sequence[str]) -> KitError:
    return KitError(f"there is no step '{name}' to stand beside.", where=where, do=near(name, steps))
