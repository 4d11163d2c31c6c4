"""What WeasyPrint may read for a booklet. Beside `kit.booklet.fetch`, so that a command that sets nothing in type need
not wait for WeasyPrint."""

from __future__ import annotations

from pathlib import Path
from typing import Any
from urllib.request import DataHandler, Request

from weasyprint.urls import URLFetcher, URLFetcherResponse

from kit.booklet.fetch import FONT_SCHEME, PICTURES, LessonFolder, shorter
from kit.errors import KitError


class Fetcher(URLFetcher):
    """WeasyPrint's reader for one booklet: data: addresses, the lesson's folder, the kit's own fonts and
    drawings."""

    def __init__(self, lesson: LessonFolder, fonts: dict[str, Path] | None = None) -> None:
        super().__init__(allowed_protocols=(), allow_redirects=False)  # all is read here, nothing by WeasyPrint
        self._lesson = lesson
        self._fonts = fonts or {}
        self.drawings: dict[str, bytes] = {}
        """Drawings of the page that is set, by the address they have in it."""

    def fetch(self, url: str, headers: dict[str, str] | None = None) -> URLFetcherResponse:
        """The resource at `url`. Raises `KitError` for everything that may not be read; WeasyPrint then
        leaves it out."""
        scheme, _, rest = (url or "").partition(":")  # WeasyPrint asks for None where a drawing names no picture
        if scheme.lower() == "data":
            return _within(url)
        if scheme.lower() == FONT_SCHEME and rest in self._fonts:
            return URLFetcherResponse(url, self._fonts[rest].read_bytes(), {"Content-Type": "font/ttf"})
        if url in self.drawings:
            return URLFetcherResponse(url, self.drawings[url], {"Content-Type": "image/svg+xml"})
        try:
            if scheme.lower() != "file":
                raise KitError(f"'{shorter(url or '')}' is an address outside the lesson.")
            path = self._lesson.file(url)
            data = self._lesson.read(path)
        except KitError as error:
            self._lesson.left_out.append(str(error))
            raise
        return URLFetcherResponse(url, data, {"Content-Type": PICTURES[path.suffix.lower()]})

    def __call__(self, url: str, *args: Any, **kwargs: Any) -> URLFetcherResponse:
        return self.fetch(url)


def _within(url: str) -> URLFetcherResponse:
    """What a data: address holds. WeasyPrint 68.0 reads none once it is told what it may read."""
    with DataHandler().data_open(Request(url)) as held:
        return URLFetcherResponse(url, held.read(), {"Content-Type": held.headers["Content-Type"]})
