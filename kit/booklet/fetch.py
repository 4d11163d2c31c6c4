"""What a booklet may read: files inside the lesson's folder, and the kit's own fonts. Nothing else.

Words in a notebook may come from anywhere (a colleague, a class, a download). Whatever their markup asks
for, rendering opens no address and no file outside the lesson's folder, links and `..` followed to their
end. There are two fences: `LessonFolder.data_uri` for pictures in markdown, and `Fetcher` (kit/booklet/fetcher.py),
which WeasyPrint asks for every resource of the page, its style sheets and its SVGs.
"""

from __future__ import annotations

import base64
import re
from pathlib import Path
from urllib.parse import unquote, urlsplit

from kit.booklet.clean_svg import clean_svg
from kit.errors import KitError

PICTURES = {
    ".png": "image/png",
    ".jpg": "image/jpeg",
    ".jpeg": "image/jpeg",
    ".gif": "image/gif",
    ".webp": "image/webp",
    ".svg": "image/svg+xml",
}
_DATA_PICTURE = re.compile(r"data:image/(png|jpeg|gif|webp);base64,[A-Za-z0-9+/=\s]+\Z")
_LARGEST = 25_000_000
THEME_FILE = "theme.toml"
FONT_SCHEME = "kitfont"


class LessonFolder:
    """The folder a lesson lives in, and the only one its markup may read. `unsaid` names
    the pictures in its words that say nothing of what they show; `left_out` collects, in plain
    words, what was refused."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder.resolve()
        self.left_out: list[str] = []
        self.unsaid: list[str] = []

    def file(self, address: str) -> Path:
        """The picture file `address` (relative, or a file: address) stands for. Raises `KitError` when it is
        not a picture inside the folder."""
        parts = urlsplit(address)
        if parts.scheme not in ("", "file") or parts.netloc not in ("", "localhost"):
            raise KitError(
                f"'{shorter(address)}' is an address outside the lesson.",
                do="Save the picture in the lesson's folder and name it from there.",
            )
        inside = unquote(parts.path)
        if "\0" in inside:
            raise KitError(
                f"'{shorter(address)}' is not the name of a file.", do="Name a picture in the lesson's folder."
            )
        try:
            path = (self.folder / inside).resolve()
            exists = path.is_relative_to(self.folder) and path.is_file()
        except (OSError, RuntimeError, ValueError):
            path, exists = self.folder, False
        if not path.is_relative_to(self.folder):
            raise KitError(
                f"'{shorter(address)}' lies outside the lesson's folder.",
                do="Copy the picture into the lesson's folder and name it from there.",
            )
        if not exists:
            raise KitError(f"there is no picture '{shorter(address)}'.", do="Check its name; capital letters count.")
        if path.suffix.lower() not in PICTURES:
            raise KitError(f"'{shorter(address)}' is not a picture.", do="Use a PNG, JPEG, GIF, WebP or SVG file.")
        if path.stat().st_size > _LARGEST:
            raise KitError(f"'{shorter(address)}' is larger than 25 MB.", do="Make a smaller copy of it.")
        return path

    def data_uri(self, address: str) -> str:
        """The picture as a data: address, so that the page stands alone. Raises `KitError` as `file` does."""
        if address.startswith("data:"):
            if not _DATA_PICTURE.match(address):
                raise KitError("a data: address that is not a picture was left out.", do="Use a PNG or JPEG file.")
            return address
        path = self.file(address)
        return f"data:{PICTURES[path.suffix.lower()]};base64,{base64.b64encode(self.read(path)).decode('ascii')}"

    def read(self, path: Path) -> bytes:
        """What is in the picture file `path`, of a drawing only what neither runs nor reaches outside it. Raises
        `KitError` when it cannot be read."""
        try:
            data = path.read_bytes()
        except OSError as error:
            raise KitError(f"'{path.name}' cannot be read ({error.strerror}).", do="Check its permissions.") from None
        return clean_svg(data, path.name) if path.suffix.lower() == ".svg" else data


def shorter(address: str) -> str:
    """`address` on one line, cut to 80 signs, for a message."""
    line = " ".join(address.split())
    return line if len(line) <= 80 else line[:79] + "…"
