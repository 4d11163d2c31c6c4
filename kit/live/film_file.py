"""Pixels as files: PNG, animated GIF, and MP4 by way of ffmpeg."""

from __future__ import annotations

import io
import tempfile
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path
from typing import TYPE_CHECKING

import numpy as np

from kit.errors import KitError
from kit.language import say
from kit.picture.raster import Pixels

if TYPE_CHECKING:
    from PIL.Image import Image

GIF_RATE = 12.5
"""Frames a second of an animated GIF, whose clock counts hundredths of a second."""
_COLOURS = 128
_INSTALL = '%pip install "pattern-lesson-kit[film]"'  # in a cell: it is then put where the lesson runs
# What players expect of a film of this kind: colours as in ITU-R BT.709, the index before the pictures.
_OUT = ["-vf", "scale=out_color_matrix=bt709:out_range=tv,setparams=color_primaries=bt709:color_trc=bt709"]
_OUT += ["-color_range", "tv", "-crf", "18", "-preset", "veryfast", "-movflags", "+faststart"]


def png(pixels: Pixels) -> bytes:
    """A PNG file with its alpha."""
    out = io.BytesIO()
    _image(pixels).save(out, "PNG")
    return out.getvalue()


def gif(frames: Iterator[Pixels]) -> bytes:
    """An animated GIF of `frames`, which plays once; frames alike become one that is shown longer."""
    from PIL import Image

    found: list[Image.Image] = []
    times: list[int] = []
    before: Pixels | None = None
    each = round(1000 / GIF_RATE)
    for pixels in frames:
        if before is not None and np.array_equal(before, pixels):
            times[-1] += each
            continue
        before = pixels
        # Kept small at once: a clip of full frames would not fit into memory.
        found.append(_image(pixels).convert("RGB").quantize(_COLOURS, dither=Image.Dither.NONE))
        times.append(each)
    out = io.BytesIO()
    found[0].save(out, "GIF", save_all=True, append_images=found[1:], duration=times, optimize=False)
    return out.getvalue()


def mp4(frames: Iterator[Pixels], size: tuple[int, int], rate: int) -> bytes:
    """A film of `frames`: H.264, 4:2:0, without sound. `KitError` when the extra `film` is not installed, when ffmpeg
    cannot be run or gives up."""
    try:
        import imageio_ffmpeg  # type: ignore[import-untyped]
    except ImportError as error:
        raise KitError(say("player.film_missing"), do=say("player.film_install", command=_INSTALL)) from error
    try:
        imageio_ffmpeg.get_ffmpeg_exe()
    except (RuntimeError, OSError) as error:
        raise _no_ffmpeg("it was not found") from error
    with tempfile.TemporaryDirectory(prefix="lessonkit-film-") as folder:
        path = Path(folder) / "film.mp4"
        try:
            writing = imageio_ffmpeg.write_frames(
                str(path),
                size,
                fps=rate,
                codec="libx264",
                quality=None,
                macro_block_size=2,
                ffmpeg_log_level="error",
                output_params=_OUT,
            )
            with closing(writing):
                writing.send(None)
                for pixels in frames:
                    writing.send(np.ascontiguousarray(pixels[:, :, :3]))
        except OSError as error:
            raise _no_ffmpeg(_reason(error)) from error
        try:
            data = path.read_bytes()
        except OSError:
            data = b""
    if not data:
        raise _no_ffmpeg("it wrote nothing")
    return data


def _reason(error: OSError) -> str:
    if error.strerror:
        return error.strerror.lower()
    said = [line.strip() for line in str(error).partition("FFMPEG STDERR OUTPUT:")[2].splitlines() if line.strip()]
    return said[-1].rstrip(".") if said else "it stopped at once"


def _no_ffmpeg(reason: str) -> KitError:
    return KitError(
        f"the film cannot be written because the program ffmpeg cannot be run: {reason}.",
        where="clips",
        do="Choose GIF or pictures instead, or install it again with: pip install --force-reinstall imageio-ffmpeg",
    )


def _image(pixels: Pixels) -> Image:
    from PIL import Image

    return Image.fromarray(pixels)
