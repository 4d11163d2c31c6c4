"""Pictures and clips of a lesson's steps, for the cutting of a film.

A clip shows a picture being made, line by line, and holds it a while; the pixels come from the kit's own pen, the film
from ffmpeg (H.264, 4:2:0, BT.709), an animated picture from Pillow. A file takes its place whole or not at all.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Literal, get_args

import numpy as np

from kit.atomic import write_atomically
from kit.errors import KitError, near
from kit.lesson.pattern import Pattern
from kit.live.captions import lasting
from kit.live.film_file import GIF_RATE, gif, mp4, png
from kit.live.lower_third import Bar, bars, with_bar
from kit.picture.filming import filming
from kit.picture.raster import Pixels, Raster, raster
from kit.picture.staged import StagedDrawing
from kit.picture.step_pictures import ROOM, PlayerPicture, player_pictures, told_once
from kit.units import System

if TYPE_CHECKING:
    from kit.lesson.lesson import Lesson
from kit.lesson.where import here

Kind = Literal["mp4", "gif", "png", "svg"]
KINDS: tuple[Kind, ...] = get_args(Kind)
_DRAWN = 0.72  # of a clip's time, the rest it stands still
_LEAD = 0.05
_MARGIN = 0.035  # of the shorter side, around a picture
_LARGEST = 4096
_LEAST = 4.0  # seconds of a picture whose words are read sooner
_OTHER_LETTERS = 1.2  # times the width of the kit's own: a viewer of an SVG may have only wide ones


class Cancelled(Exception):
    """The making of clips was called off."""


def lesson_clips(
    lesson: Lesson | Pattern,
    folder: str | Path,
    steps: Sequence[str] | str | None = None,
    kind: Kind = "mp4",
    size: tuple[int, int] = (1920, 1080),
    seconds: float | Literal["words"] = 4.0,
    *,
    rate: int = 30,
    ground: str = "",
    sentence: bool = False,
    system: System | None = None,
    progress: Callable[[float, str], None] | None = None,
    cancelled: Callable[[], bool] | None = None,
) -> tuple[Path, ...]:
    """Write the steps of `lesson` into `folder` and give the files: "mp4" and "gif" clips, in which each picture of a
    step takes `seconds` ("words": as long as it takes to read or say what stands under it first, and four at least);
    "png" with clear ground and "svg" of the finished pictures.

    `steps` are names of steps (all without them), `size` width and height in pixels, `rate` frames a second of an mp4
    (25 or 30), `ground` a flat colour "#rrggbb" (white for clips, none for pictures), `system` the units said first.
    With `sentence` the step's title and words stand in the lower third, the picture above them. `progress` is called
    with the share done (0..1) and the name of the file; `cancelled` is asked between frames, and what is finished by
    then stays. A build, which runs the notebook again, writes none. Raises `KitError` for an unknown step, kind, size,
    time or colour, and when ffmpeg cannot be run.
    """
    if here().building:
        return ()
    pattern = lesson if isinstance(lesson, Pattern) else lesson.work()
    system = system or (pattern.lesson.units if isinstance(lesson, Pattern) else lesson.units)
    _check(kind, size, seconds, rate, ground)
    groups = _chosen(player_pictures(pattern, system), steps)
    parts = sum(len(group) for group in groups)
    made: list[Path] = []
    done = 0
    for group in groups:
        files = [(name_of(group[0]), group)] if kind in ("mp4", "gif") else [(name_of(shot), [shot]) for shot in group]
        for name, pictures in files:
            path = Path(folder) / f"{name}.{kind}"

            def tell(share: float, before: int = done, count: int = len(pictures), path: Path = path) -> None:
                if cancelled is not None and cancelled():
                    raise Cancelled
                if progress is not None:
                    progress((before + share * count) / parts, path.name)

            try:
                tell(0.0)
                data = _file(pictures, kind, size, seconds, rate, ground, sentence, tell)
            except Cancelled:
                return tuple(made)
            made.append(write_atomically(path, data))
            done += len(pictures)
            if progress is not None:
                progress(done / parts, path.name)
    return tuple(made)


def name_of(shot: PlayerPicture) -> str:
    """The name of a shot's file: draft-03-overarm, sew-02-shoulders-1."""
    part = f"-{shot.picture}" if shot.pictures > 1 else ""
    return f"{shot.kind}-{shot.number:02d}-{shot.key}{part}"


def _chosen(found: Sequence[PlayerPicture], steps: Sequence[str] | str | None) -> list[list[PlayerPicture]]:
    wanted = [steps] if isinstance(steps, str) else steps
    keys = list(dict.fromkeys(shot.key for shot in found))
    for name in wanted or ():
        if name not in keys:
            raise KitError(f"there is no step '{name}'.", where="clips", do=near(name, keys))
    groups: dict[tuple[str, str], list[PlayerPicture]] = {}
    for shot in found:
        if shot.draw is not None and (wanted is None or shot.key in wanted):
            groups.setdefault((shot.kind, shot.key), []).append(shot)
    if not groups:
        raise KitError("there is no picture to be written.", where="clips", do="Name a step that has a picture.")
    return list(groups.values())


def _check(kind: str, size: tuple[int, int], seconds: float | str, rate: int, ground: str) -> None:
    where = "clips"
    if kind not in KINDS:
        raise KitError(f"there is no kind '{kind}'.", where=where, do=near(kind, KINDS))
    wide, high = size
    if not all(isinstance(side, int) and 16 <= side <= _LARGEST for side in size):
        raise KitError(
            f"a size of {wide} x {high} is not possible.",
            where=where,
            do=f"Give whole pixels between 16 and {_LARGEST}, such as size=(1920, 1080).",
        )
    if kind == "mp4" and (wide % 2 or high % 2):
        raise KitError(
            f"a film of {wide} x {high} pixels cannot be played everywhere, for its colours are stored by twos.",
            where=where,
            do=f"Use even numbers: size=({wide + wide % 2}, {high + high % 2}).",
        )
    if seconds != "words" and (not isinstance(seconds, int | float) or not 0.2 <= seconds <= 600):
        raise KitError(
            f"{seconds!r} seconds is no length for a clip.",
            where=where,
            do='Give 0.2 to 600 seconds, or "words" for as long as each picture\'s words take.',
        )
    if rate not in (25, 30):
        raise KitError(f"{rate!r} frames a second is not offered.", where=where, do="Use rate=25 or rate=30.")
    if ground and not _is_colour(ground):
        raise KitError(f"'{ground}' is not a colour.", where=where, do='Write it as "#00b140".')


def _is_colour(text: str) -> bool:
    return len(text) == 7 and text[0] == "#" and all(c in "0123456789abcdefABCDEF" for c in text[1:])


# ---- files ------------------------------------------------------------------------------------------------


def _file(
    pictures: Sequence[PlayerPicture],
    kind: Kind,
    size: tuple[int, int],
    seconds: float | Literal["words"],
    rate: int,
    ground: str,
    sentence: bool,
    tell: Callable[[float], None],
) -> bytes:
    still = kind in ("png", "svg")
    told = [(shot.title, shot.words) for shot in pictures] if sentence else []
    below: Sequence[Bar | None] = bars(told, size, still, _OTHER_LETTERS if kind == "svg" else 1.0) or [None] * len(
        pictures
    )
    room = (size[0], size[1] - below[0].size[1]) if below[0] else size
    if still:
        whole_picture = _stage(pictures[0], room, ground).at(1.0)
        if kind == "svg":
            return (with_bar(whole_picture, below[0], size) if below[0] else whole_picture).encode()
        pixels = raster(whole_picture, room, ground, min(size) * _MARGIN)
        return png(np.vstack([pixels, raster(below[0].svg(0), below[0].size)]) if below[0] else pixels)
    ground = ground or "#ffffff"
    speed = GIF_RATE if kind == "gif" else rate
    counts = [max(2, round(each * speed)) for each in _lasts(pictures, seconds)]
    whole = sum(counts)

    def frames() -> Iterator[Pixels]:
        number = 0
        for shot, bar, count in zip(pictures, below, counts, strict=True):
            words = [raster(bar.svg(part), bar.size) for part in range(len(bar.parts))] if bar else []
            for i, pixels in enumerate(_frames(shot, room, count, ground, min(size) * _MARGIN)):
                tell(number / whole)
                number += 1
                yield np.vstack([pixels, words[i * len(words) // count]]) if words else pixels

    return gif(frames()) if kind == "gif" else mp4(frames(), size, rate)


def _lasts(pictures: Sequence[PlayerPicture], seconds: float | Literal["words"]) -> list[float]:
    """Seconds of each picture of a step."""
    if seconds != "words":
        return [seconds] * len(pictures)
    return [max(_LEAST, lasting(words)) for words in told_once(pictures)]


def _stage(shot: PlayerPicture, size: tuple[int, int], ground: str) -> StagedDrawing:
    """The picture on as much room as it is drawn for, in the shape of `size`."""
    assert shot.draw is not None
    k = max(size[0] / ROOM[0], size[1] / ROOM[1])
    theme = filming(ground) if ground else filming()
    return StagedDrawing(shot.draw(), size[0] / k, size[1] / k, theme, ground=False)


def _frames(shot: PlayerPicture, size: tuple[int, int], count: int, ground: str, margin: float) -> Iterator[Pixels]:
    """The picture being made in `count` frames, standing still at the end."""
    stage, pen = _stage(shot, size, ground), Raster(size, ground, margin)
    last, pixels = -1.0, None
    for number in range(count):
        share = min(max((number / (count - 1) - _LEAD) / (_DRAWN - _LEAD), 0.0), 1.0)
        if share != last or pixels is None:
            last, pixels = share, pen.draw(stage.at(share))
        yield pixels
