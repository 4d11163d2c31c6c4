"""The teacher's board with a full class, without a room: who is here is told in two lines each at every width and in
every language, nothing stands outside, and the picture is lettered for the back row.

The board's own page and script run; the line to the room is held by the test, which tells thirty students in all states
and notes what the board asks for.
"""

from __future__ import annotations

import json
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, Route, WebSocketRoute, expect

from kit.resources import templates
from kit.room.shown import _board, room_words

pytestmark = pytest.mark.browser

NAMES = ("Ines", "Marguerite-Alexandrine", "Tom", "Sükrü", "Olusegun Adebayo-Whitfield", "")
STEPS = [{"kind": "draft", "key": f"s{n}", "title": f"Sew the facing to the neck and wrap edges {n}"} for n in range(9)]
SVG = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><path d="M1 1L9 9" stroke="#000"/></svg>'
KINDS = {".js": "text/javascript", ".css": "text/css", ".svg": "image/svg+xml", ".json": "application/json"}


def student(number: int) -> dict[str, Any]:
    return {
        "number": number,
        "name": NAMES[number % len(NAMES)],
        "here": number % 10 != 9,
        "hand": number if number % 7 == 2 else 0,
        "may_look": number % 2 == 0,
        "at": number % 9 + 1,
        "steps": len(STEPS),
        "step": f"draft:s{number % 9}",
        "solved": ["a", "b"][: number % 3],
        "errors": (0, 2, -1, 11)[number % 4],
        "warnings": (1, 0, -1, 0)[number % 4],
        "engine": "room" if number % 5 == 1 else "own",
    }


def facts(language: str) -> dict[str, Any]:
    exercises = [{"key": key, "heading": key} for key in ("a", "b")]
    told = {"steps": STEPS, "exercises": exercises, "sliders": [], "presets": [], "students": 30}
    return {**told, "address": "192.168.100.120:8866", "code": "bfmw-ztn7-9s", "own": True, "language": language}


class Board:
    """The board in one language; `asked` is what it asked the room for."""

    def __init__(self, browser: Browser, language: str) -> None:
        self.language, self.asked = language, list[dict[str, Any]]()
        self.page: Page = browser.new_page(viewport={"width": 1280, "height": 800})
        self.troubles: list[str] = []
        self.page.on("pageerror", lambda error: self.troubles.append(str(error)))
        self.page.route("**/*", self._file)
        self.page.route_web_socket("**/line", self._line)
        self.page.goto("http://board.test/board")
        expect(self.page.locator("#picture svg")).to_be_visible()

    def _file(self, route: Route) -> None:
        name = route.request.url.rpartition("/")[2]
        suffix = "." + name.rpartition(".")[2]
        if suffix == ".json":
            body = json.dumps(room_words(self.language, "room_board", ()))
        elif suffix == ".svg":
            body = SVG
        elif suffix in KINDS:
            body = (templates() / "room" / name).read_text(encoding="utf-8")
        else:
            body = _board("Tideline wrap top", self.language)
        route.fulfill(body=body, content_type=KINDS.get(suffix, "text/html") + "; charset=utf-8")

    def _line(self, line: WebSocketRoute) -> None:
        def heard(text: str | bytes) -> None:
            told = json.loads(text)
            if told["is"] == "ask":
                self.asked.append(json.loads(told["text"]))
                step = {"kind": "draft", "key": "s0", "picture": 1, "pictures": 1}
                drawn = {
                    "ok": True,
                    "svg": SVG,
                    "label": "1",
                    "part": "",
                    "title": "Sew",
                    "words": ["Pin."],
                    "step": step,
                }
                line.send(json.dumps({"is": "answer", "id": told["id"], "text": json.dumps({**drawn, "sliders": []})}))

        line.on_message(heard)
        people = [student(number) for number in range(1, 31)]
        class_ = {"is": "class", "facts": facts(self.language), "people": people, "following": False, "at": None}
        line.send(json.dumps(class_))


@pytest.mark.parametrize("language", ["en", "de", "es", "fr"])
def test_thirty_are_seen_at_a_glance(browser: Browser, language: str) -> None:
    board = Board(browser, language)
    page = board.page
    expect(page.locator("#rows tr")).to_have_count(30)
    for wide, high in ((390, 844), (1280, 800), (1920, 1080)):
        page.set_viewport_size({"width": wide, "height": high})
        page.wait_for_function(
            "(wide) => document.querySelector('main').getBoundingClientRect().width <= wide", arg=wide
        )
        assert page.evaluate("() => document.documentElement.scrollWidth <= innerWidth"), wide
        beyond = "() => { const s = document.querySelector('.scrolls'); return s.scrollWidth - s.clientWidth }"
        assert page.evaluate(beyond) <= 8, f"rows reach outside at {wide}"
        rows = page.evaluate(
            "() => [...document.querySelectorAll('#rows tr')].map(r => r.getBoundingClientRect().height)"
        )
        rem = page.evaluate("() => parseFloat(getComputedStyle(document.documentElement).fontSize)")
        # a long name may take a line or two more; most rows have theirs under the button's 44 px
        assert sorted(rows)[15] < (7.0 if wide < 700 else 4.6) * rem, (wide, rows)
        covered = """() => [...document.querySelectorAll('#rows tr')].filter((row) => {
          const [found, acts] = ['.found', '.acts'].map((name) => row.querySelector(name).getBoundingClientRect());
          return found.width && found.right > acts.left + 1 && found.bottom > acts.top && found.top < acts.bottom - 1;
        }).length"""
        assert page.evaluate(covered) == 0, f"a finding lies under a button at {wide}"
    assert not board.troubles
    page.close()


def test_rows_stay_a_table_for_who_hears_the_board(browser: Browser) -> None:
    """Rows and cells keep their roles where they are laid out otherwise (WAI-ARIA 1.2, table structure roles)."""
    board = Board(browser, "en")
    board.page.set_viewport_size({"width": 390, "height": 844})
    expect(board.page.get_by_role("table")).to_be_visible()
    assert board.page.get_by_role("table").get_by_role("rowheader").count() == 30
    first = board.page.locator("#rows").get_by_role("row").first
    assert first.get_by_role("cell").count() == 5
    expect(board.page.get_by_role("row", name="Marguerite-Alexandrine").first).to_contain_text("Sew the facing")
    board.page.close()


def test_the_picture_is_lettered_for_the_back_row(browser: Browser) -> None:
    """The picture is asked for as on 1.4 times less room than it has on a large screen, so that its letters come out so
    much larger; on a telephone as on the room it has."""
    board = Board(browser, "en")
    page = board.page
    for wide, larger in ((1920, 1.4), (390, 1.0)):
        page.set_viewport_size({"width": wide, "height": 900})
        before = len(board.asked)
        page.wait_for_timeout(400)  # it is drawn anew when the size has settled
        page.wait_for_function("(n) => Number(document.documentElement.dataset.drawn) >= n", arg=before)
        box = page.locator("#picture").bounding_box()
        assert box is not None
        assert box["width"] / board.asked[-1]["room"][0] == pytest.approx(larger, abs=0.01)
    page.close()
