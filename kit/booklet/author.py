"""What the author adds to the booklet: photos beside steps, the cover's picture, places in films.

Pictures are read from the lesson's folder alone. They are made no larger than print needs, stand upright whichever
way the camera was held, and lose what the camera wrote into them (place, time, owner).
"""

from __future__ import annotations

import base64
import io
import math
import warnings
from pathlib import Path
from urllib.parse import urldefrag

from PIL import Image, ImageOps

from kit.booklet.fetch import LessonFolder
from kit.booklet.model import FilmMark, ShownPhoto
from kit.errors import KitError
from kit.lesson.pattern import LessonInfo, Pattern

LARGEST_SIDE = 1600
"""Longest side of a photo in pixels: 200 to the inch over 20 cm."""
_MOST_PIXELS = 120_000_000


def photos_for(key: str, pattern: Pattern, folder: LessonFolder) -> tuple[ShownPhoto, ...]:
    """The photos beside the step `key`, in the order they were written. A photo that cannot be read is left out and
    noted in `folder.left_out`."""
    found = (_photo(p.file, p.alt, p.caption, folder) for p in pattern.lesson.photos if p.beside == key)
    return tuple(photo for photo in found if photo is not None)


def cover_picture(info: LessonInfo, folder: LessonFolder) -> ShownPhoto | None:
    """The author's picture for the cover, if there is one that can be read."""
    return _photo(info.cover, info.cover_alt, "", folder) if info.cover else None


def video_marks(key: str, pattern: Pattern) -> tuple[FilmMark, ...]:
    """Where films show the step `key`: a clock reading and the address that begins there (W3C Media Fragments URI 1.0,
    section 4.2.1: `#t=` and a time in seconds)."""
    return tuple(
        FilmMark(clock(at), starting(video.address, at))
        for video in pattern.lesson.videos
        for name, at in video.marks
        if name == key
    )


def clock(seconds: float) -> str:
    """Seconds as a clock shows them: 3:20, 1:02:10."""
    whole = math.floor(seconds)
    hours, minutes = whole // 3600, whole // 60 % 60
    return f"{hours}:{minutes:02d}:{whole % 60:02d}" if hours else f"{minutes}:{whole % 60:02d}"


def starting(address: str, seconds: float) -> str:
    """`address` with the film's start at `seconds`. Other parts of its media fragment stay."""
    page, fragment = urldefrag(address)
    kept = [part for part in fragment.split("&") if "=" in part and not part.startswith("t=")]
    return f"{page}#{'&'.join([*kept, f't={seconds:.3f}'.rstrip('0').rstrip('.')])}"


def picture_data(file: str, folder: LessonFolder) -> str:
    """The picture `file` of the lesson's folder as a data: address, ready for print. Raises `KitError` when it is not a
    picture inside the folder or cannot be read."""
    if ":" in file.split("/")[0]:
        raise KitError(
            f"'{file[:80]}' is an address outside the lesson.",
            do="Save the picture in the lesson's folder and name it from there.",
        )
    path = folder.file(file)
    if path.suffix.lower() == ".svg":
        return folder.data_uri(file)
    kind, data = _prepared(path, file)
    return f"data:image/{kind};base64,{base64.b64encode(data).decode('ascii')}"


def _photo(file: str, alt: str, caption: str, folder: LessonFolder) -> ShownPhoto | None:
    try:
        return ShownPhoto(picture_data(file, folder), alt, caption)
    except KitError as error:
        folder.left_out.append(str(error))
        return None


def _prepared(path: Path, name: str) -> tuple[str, bytes]:
    """(png or jpeg, bytes) of a picture file."""
    large = KitError(f"'{name}' has more than 120 million pixels.", do="Make a smaller copy of it.")
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore", Image.DecompressionBombWarning)
            opened = Image.open(path)
        with opened:
            if opened.width * opened.height > _MOST_PIXELS:
                raise large
            photographed = opened.format in ("JPEG", "MPO")
            profile = opened.info.get("icc_profile")
            picture = ImageOps.exif_transpose(opened)
            picture.load()
    except KitError:
        raise
    except Image.DecompressionBombError:
        raise large from None
    except (OSError, ValueError, SyntaxError):
        raise KitError(
            f"'{name}' cannot be read as a picture.",
            do="Open it in a picture program and save it again as JPEG or PNG.",
        ) from None
    see_through = picture.mode in ("RGBA", "LA", "PA") or "transparency" in picture.info
    if picture.mode not in ("RGB", "RGBA", "L", "LA"):
        if picture.mode not in ("P", "PA", "1"):
            profile = None  # of the mode it had
        picture = picture.convert("RGBA" if see_through else "L" if picture.mode == "1" else "RGB")
    picture.thumbnail((LARGEST_SIDE, LARGEST_SIDE), Image.Resampling.LANCZOS)
    clean = Image.frombytes(picture.mode, picture.size, picture.tobytes())  # pixels alone, none of the camera's notes
    out = io.BytesIO()
    if photographed:
        clean.save(out, "JPEG", quality=88, optimize=True, icc_profile=profile)
        return "jpeg", out.getvalue()
    clean.save(out, "PNG", optimize=True, icc_profile=profile)
    return "png", out.getvalue()
