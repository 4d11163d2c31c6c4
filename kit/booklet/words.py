"""A teacher's markdown as HTML that is safe to put in a booklet.

HTML written in markdown is shown as text, never obeyed. Pictures become data: addresses when they lie in
the lesson's folder and are otherwise left out with a visible note. Links are kept for the web and mail only;
a link is printed, not followed.
"""

from __future__ import annotations

import base64
from collections.abc import Mapping
from typing import Any

import mistune
from markupsafe import Markup, escape
from mistune.renderers.html import HTMLRenderer

from kit.booklet.fetch import LessonFolder
from kit.errors import KitError

_LINKS = ("https://", "http://", "mailto:", "#")


class _Words(HTMLRenderer):
    def __init__(self, folder: LessonFolder, attachments: Mapping[str, Any], level: int) -> None:
        super().__init__(escape=True)
        self._folder = folder
        self._attachments = attachments
        self._level = level

    def heading(self, text: str, level: int, **attrs: Any) -> str:
        depth = min(6, level + self._level)
        return f"<h{depth}>{text}</h{depth}>\n"

    def link(self, text: str, url: str, title: str | None = None) -> str:
        if not url.lower().startswith(_LINKS):
            return text
        return f'<a href="{escape(url)}">{text}</a>'

    def image(self, text: str, url: str, title: str | None = None) -> str:
        alt = Markup(text).striptags()
        try:
            source = self._attached(url) or self._folder.data_uri(url)
        except KitError as error:
            self._folder.left_out.append(str(error))
            return f'<span class="left-out">[picture left out: {escape(str(error))}]</span>'
        caption = f"<span class='caption'>{escape(title)}</span>" if title else ""
        return f'<span class="teacher-picture"><img src="{escape(source)}" alt="{escape(alt)}">{caption}</span>'

    def _attached(self, url: str) -> str:
        if not url.startswith("attachment:"):
            return ""
        bundle = self._attachments.get(url.removeprefix("attachment:"), {})
        for kind, data in bundle.items():
            if kind in ("image/png", "image/jpeg", "image/gif", "image/webp"):
                text = "".join(data) if isinstance(data, list) else str(data)
                try:
                    raw = base64.b64decode(text, validate=False)
                except ValueError:
                    break
                return f"data:{kind};base64,{base64.b64encode(raw).decode('ascii')}"
        raise KitError(f"there is no attached picture '{url.removeprefix('attachment:')}'.", do="Paste it in again.")


def to_html(
    source: str, folder: LessonFolder, *, attachments: Mapping[str, Any] | None = None, level: int = 1
) -> Markup:
    """Markdown `source` as safe HTML. `level` is added to heading levels; `attachments` are the notebook
    cell's pasted pictures. What was refused is added to `folder.left_out`."""
    renderer = _Words(folder, attachments or {}, level)
    return Markup(mistune.create_markdown(renderer=renderer, plugins=["table", "strikethrough"])(source))
