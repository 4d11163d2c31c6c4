"""A teacher's markdown as HTML that is safe to put in a booklet.

HTML written in markdown is shown as text, never obeyed. Pictures become data: addresses when they lie in
the lesson's folder and are otherwise left out with a visible note. Links are kept for the web and mail only;
a link is printed, not followed. Live values stand between braces (`kit.booklet.live_values`), outside code, links'
addresses and HTML.
"""

from __future__ import annotations

import base64
import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from pathlib import PurePosixPath
from typing import Any

import mistune
from markupsafe import Markup, escape
from mistune.renderers.html import HTMLRenderer

from kit.booklet.fetch import LessonFolder
from kit.booklet.live_values import Live, first_words, of_step
from kit.errors import KitError
from kit.language import say
from kit.placeholder import Placeholder, split

_BRACES = r"\{\{|\}\}|\{[^{}\n]*\}|\{|\}"
_REFERENCE = re.compile(r'<a class="ref" [^>]*>(.*?)</a>')
_LINKS = ("https://", "http://", "mailto:", "#")


class _Words(HTMLRenderer):
    def __init__(self, folder: LessonFolder, attachments: Mapping[str, Any], level: int) -> None:
        super().__init__(escape=True)
        self._folder = folder
        self._attachments = attachments
        self._level = level
        self._depth = level + 1  # of the heading before: the part's own, to begin with

    def heading(self, text: str, level: int, **attrs: Any) -> str:
        # No level is left out on the way down (Matterhorn Protocol 14-003), whatever the teacher began with.
        depth = self._depth = min(6, level + self._level, self._depth + 1)
        return f"<h{depth}>{text}</h{depth}>\n"

    def link(self, text: str, url: str, title: str | None = None) -> str:
        if not url.lower().startswith(_LINKS):
            return text
        inside = _REFERENCE.sub(r"\1", text)  # no link inside a link
        return f'<a href="{escape(url)}">{inside}</a>'

    def image(self, text: str, url: str, title: str | None = None) -> str:
        alt = Markup(text).striptags() or title or ""
        if not alt.strip():
            self._folder.unsaid.append(_named(url))
            alt = _named(url)
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


def _named(url: str) -> str:
    """Words for a picture that has none of the teacher's own: its file's name."""
    name = url.removeprefix("attachment:")
    if name.startswith("data:"):
        return say("screen.picture")
    return PurePosixPath(name).stem.replace("_", " ").replace("-", " ")


def to_html(
    source: str,
    folder: LessonFolder,
    *,
    attachments: Mapping[str, Any] | None = None,
    level: int = 1,
    known: Live | None = None,
) -> Markup:
    """Markdown `source` as safe HTML. `level` is added to heading levels; `attachments` are the notebook
    cell's pasted pictures. What was refused is added to `folder.left_out`. With `known`, what stands between braces is
    filled in; `KitError` for a name it does not know. Without it, braces are text."""
    renderer = _Words(folder, attachments or {}, level)
    markdown = mistune.create_markdown(renderer=renderer, plugins=["table", "strikethrough"])
    if known is not None:
        _with_values(markdown, known)
    return Markup(markdown(source))


def fill_markdown(
    source: str,
    known: Live,
    folder: LessonFolder,
    *,
    attachments: Mapping[str, Any] | None = None,
    level: int = 1,
) -> Markup:
    """A markdown cell as safe HTML with its live values. Raises `KitError` naming the cell's first words."""
    known = replace(known, where=f"Words “{first_words(source)}”")
    return to_html(source, folder, attachments=attachments, level=level, known=known)


def fill_text(
    text: str, values: Sequence[tuple[str, float, str]], known: Live, folder: LessonFolder, where: str = ""
) -> Markup:
    """The words of a step as safe HTML, with the step's own `values` and references to steps and pieces."""
    return to_html(text, folder, known=of_step(values, known, where))


def _with_values(markdown: mistune.Markdown, known: Live) -> None:
    """Teach `markdown` what stands between braces. Code is read before braces are, so they stay as they are there."""

    def braces(inline: Any, match: Any, state: Any) -> int:
        try:
            (found,) = split(match[0])
        except KitError as error:
            do = error.do if "{{" in error.do else f"{error.do} Write {{{{ and }}}} for braces meant literally."
            what = error.what
            if match[0] in "{}":
                what = f"a brace stands alone near '{state.src[max(0, match.start() - 15) : match.end() + 15]}'."
            raise KitError(what, where=known.where, do=do) from None
        if isinstance(found, Placeholder):
            html = known.html(found)
        else:
            html = escape(found)
        state.append_token({"type": "live", "raw": str(html)})
        return int(match.end())

    markdown.inline.register("live", _BRACES, braces, before="link")
    assert markdown.renderer is not None
    markdown.renderer.register("live", lambda _, html: html)
