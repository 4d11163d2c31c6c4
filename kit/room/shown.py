"""What the class gives out: the lesson's page with the class's part put in, the board, and their words."""

from __future__ import annotations

import json
import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from html import escape
from pathlib import Path
from typing import Any

from kit.language import keys, say, speaking
from kit.resources import templates
from kit.room.files import Given, given, read_files
from kit.room.gate import STRICT
from kit.room.making import PAPERS

_POLICY = re.compile(r'<meta http-equiv="Content-Security-Policy" content="([^"]+)">\n?')
_SCRIPT = re.compile(r'(<script type="module" src="[^"]*app\.js"></script>)')
_PLACES = ("name", "number", "count", "step", "title", "who", "when", "why", "value", "place", "paper", "address")
_MADE = ("print_mine", "print_tooltip", "paper", "booklet_too", "cancel", "print_run", "print_prove", "print_booklet")
_MADE_TOO = ("print_pages", "print_cancelled", "print_failed", "print_kept", "print_lost", "print_done")
_CLASS = (*_MADE, *_MADE_TOO, "print_unsound", "print", "file_booklet", "file_pages")


@dataclass(frozen=True)
class ShownClass:
    """The student's `page` with its `policy`, the `files` of the page, those of the class's part (`room`), the `board`
    page and its own files (`board_files`)."""

    page: Given
    policy: str
    files: Mapping[str, Given]
    room: Mapping[str, Given]
    board: Given
    board_files: Mapping[str, Given]


def shown(folder: Path, facts: Mapping[str, Any], *, own: bool, language: str) -> ShownClass:
    """What is given out of the prepared `folder`. `own`: the page has its own engine; `language` is the board's."""
    left_out = ("index.html", "sw.js", *(() if own else (f"{facts['edition']}/lesson.zip",)))
    files = read_files(folder / "page", left_out)
    page, policy = _with_class((folder / "page" / "index.html").read_text("utf-8"), own)
    spoken = [each["code"] for each in facts["languages"]]
    ours = templates() / "room"
    room = {name: given((ours / name).read_bytes(), Path(name).suffix) for name in ("student.js", "student.css")}
    words = {code: room_words(code, "room_page", _CLASS) for code in spoken}
    for code in spoken:
        words[code]["papers"] = _papers(code)
    room["words.json"] = given(_json(words), ".json")
    board = {name: given((ours / name).read_bytes(), Path(name).suffix) for name in ("board.js", "board.css")}
    board["words.json"] = given(_json(room_words(language, "room_board", ())), ".json")
    return ShownClass(
        given(page.encode("utf-8"), ".html"),
        policy,
        files,
        room,
        given(_board(str(facts["title"]), language).encode("utf-8"), ".html"),
        board,
    )


def _with_class(index: str, own: bool) -> tuple[str, str]:
    """The page with the class's script and style, and its policy, which is sent as a header: it names the line."""
    found = _POLICY.search(index)
    policy = found[1] if found else STRICT
    policy = policy.replace("connect-src 'self'", "connect-src 'self' {lines}")
    index = _POLICY.sub("", index)
    index = index.replace("<html ", f'<html data-room data-own="{"yes" if own else "no"}" ', 1)
    more = '<link rel="stylesheet" href="room/student.css">\n<script type="module" src="room/student.js"></script>\n'
    return _SCRIPT.sub(lambda app: more + app[1], index, count=1), f"{policy}; frame-ancestors 'none'"


def room_words(code: str, family: str, others: Sequence[str]) -> dict[str, Any]:
    """The words of a catalogue's `family` and `others` of a class copy's in a language; what the page puts in stands in
    braces."""
    places = {name: f"{{{name}}}" for name in _PLACES}
    with speaking(code):
        words: dict[str, Any] = {key: say(f"{family}.{key}", places) for key in keys(family)}
        words |= {key: say(f"class_copy.{key}", places) for key in others}
    return words


def _papers(code: str) -> list[list[str]]:
    from kit.paper.papers import paper

    with speaking(code):
        return [[name, paper(name).said] for name in PAPERS]


def _board(title: str, language: str) -> str:
    with speaking(language):
        name, scripts = escape(f"{title} – {say('room_board.board')}"), escape(say("page.needs_scripts"))
    return (
        f'<!doctype html>\n<html lang="{language}">\n<head>\n<meta charset="utf-8">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n<link rel="icon" href="data:,">\n'
        f'<title>{name}</title>\n<link rel="stylesheet" href="board-files/board.css">\n'
        '<script type="module" src="board-files/board.js"></script>\n</head>\n<body>\n'
        f"<h1>{name}</h1>\n<main></main>\n<noscript><p>{scripts}</p></noscript>\n</body>\n</html>\n"
    )


def _json(value: Any) -> bytes:
    return json.dumps(value, ensure_ascii=False, separators=(",", ":")).encode("utf-8")
