"""The booklet as one file for a phone or tablet: the page of `to_html` with its script, its words and a policy.

Steps tick off and are remembered by lesson, edition and step; pictures open large; a list of contents is at hand
(`templates/booklet/screen.js`). The page asks the network for nothing, and its Content-Security-Policy (W3C) forbids
it: only this page's own style and script run, known by their SHA-256, and pictures are data inside it.
"""

from __future__ import annotations

import base64
import hashlib
import json
import re
from html import escape

from kit.errors import KitError
from kit.language import keys, say
from kit.resources import templates

_STYLE = re.compile(r"<style[^>]*>(.*?)</style>", re.DOTALL)
_HEAD = re.compile(r"<head[^>]*>\s*(<meta charset=[^>]*>)?")
_PLACES = ("picture", "step", "done", "total")


def screen(html: str, tail: str = "", *, own: bool = False) -> str:
    """The page `html` made ready for a screen. Ticks are kept by the page's `data-lesson` and `data-edition` and each
    step's `data-step`, its key in the lesson, so that a tick stays with its step when others are put in before it.
    `tail` is put in at the end; `own`: scripts, styles and data of the page's own place may be loaded besides, and
    WebAssembly be run. Raises `KitError` for a page without head or body."""
    folder = templates() / "booklet"
    script = (folder / "screen.js").read_text(encoding="utf-8")
    style = (folder / "reader.css").read_text(encoding="utf-8")
    words = {key: say(f"screen.{key}", {place: f"{{{place}}}" for place in _PLACES}) for key in keys("screen")}
    data = json.dumps({"words": words}, ensure_ascii=False).replace("<", "\\u003c")
    head = _HEAD.search(html)
    if head is None or "</head>" not in html or "</body>" not in html:
        raise KitError("the page has no head or no body.", where="templates/booklet")
    styles = [*_STYLE.findall(html), style]
    here, runs = (" 'self'", " 'self' 'wasm-unsafe-eval'") if own else ("", "")
    policy = "; ".join(
        (
            "default-src 'none'",
            f"img-src data:{here}",
            "font-src data:",
            f"style-src {' '.join(_hash(text) for text in dict.fromkeys(styles))}{here}",
            f"script-src {_hash(script)}{runs}",
            *(("connect-src 'self'", "worker-src 'self'", "manifest-src 'self'") if own else ()),
            "base-uri 'none'",
            "form-action 'none'",
        )
    )
    meta = f'\n<meta http-equiv="Content-Security-Policy" content="{escape(policy)}">'
    html = html[: head.end()] + meta + html[head.end() :]
    before, end, after = html.partition("</head>")
    html = f"{before}<style>{style}</style>\n{end}{after}"
    before, end, after = html.rpartition("</body>")
    said = f'<script type="application/json" id="screen-data">{data}</script>'
    return f"{before}{said}\n<script>{script}</script>\n{tail}{end}{after}"


def _hash(text: str) -> str:
    """A source of the policy that stands for this very text (CSP Level 3, hash-source)."""
    return f"'sha256-{base64.b64encode(hashlib.sha256(text.encode('utf-8')).digest()).decode('ascii')}'"
