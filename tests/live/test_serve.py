"""The door of a room: what answers without the class code, and what a student can reach with it.

Spoken to over HTTP and websockets as a browser would, against the running command.
"""

from __future__ import annotations

import http.client
import json
import re
import socket
from collections.abc import Iterator
from pathlib import Path
from urllib.parse import urlsplit

import pytest
import requests

from kit import KitError
from kit.live import serve as serving

from ..room import Room, running_room

PATIENCE = 180
"""Seconds within which a busy machine answers; what is asked is what, not how fast."""
INSIDE = (
    "/",
    "/voila/static/voila.js",
    "/voila/templates/lab/static/voila.js",
    "/voila/files/tideline_wrap_top_class.ipynb",
    "/mine/booklet.pdf",
    "/api",
    "/api/status",
    "/api/kernels",
    "/api/kernels/0c1d2e3f-0000-4000-8000-000000000000/channels",
    "/api/contents",
    "/api/contents/tideline_wrap_top_class.ipynb",
    "/api/sessions",
    "/api/terminals",
    "/terminals/1",
    "/files/tideline_wrap_top_class.ipynb",
    "/tree",
    "/lab",
    "/voila/tree",
    "/voila/render/tideline_wrap_top_class.ipynb",
    "/login",
)
NEVER = (
    "/api",
    "/api/status",
    "/api/kernels",
    "/api/contents",
    "/api/contents/tideline_wrap_top_class.ipynb",
    "/api/sessions",
    "/api/terminals",
    "/terminals/1",
    "/files/tideline_wrap_top_class.ipynb",
    "/tree",
    "/lab",
    "/voila/tree",
    "/voila/render/tideline_wrap_top_class.ipynb",
    "/voila/files/tideline_wrap_top_class.ipynb",
    "/voila/files/tideline_wrap_top_class_lesson/lesson.ipynb",
    "/voila/files/picture.png",
    "/mine/..%2f..%2fserve.log",
    "/mine/tideline-wrap-top.values.json",
    "/mine/own-body.toml",
    "/tideline_wrap_top_class.ipynb",
)


@pytest.fixture(scope="module")
def room(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Room]:
    with running_room(tmp_path_factory.mktemp("door"), "--local-network", "--students", "2", small=True) as running:
        (running.folder / "picture.png").write_bytes(b"picture")
        yield running


class Visitor:
    """A browser with the class code; `kernel` is that of its page once it has been opened."""

    def __init__(self, room: Room) -> None:
        self.room = room
        self.session = requests.Session()
        assert self.session.get(room.link, allow_redirects=False, timeout=PATIENCE).status_code == 302

    def open(self) -> requests.Response:
        return self.session.get(f"{self.room.address}/", timeout=PATIENCE)

    def upgrade(self, kernel: str, origin: str = "") -> int:
        """The status of a request to speak to `kernel`: 101 when it is let in."""
        place = urlsplit(self.room.address)
        asked = http.client.HTTPConnection(place.hostname or "", place.port or 0, timeout=PATIENCE)
        cookies = "; ".join(f"{cookie.name}={cookie.value}" for cookie in self.session.cookies)
        head = {"Connection": "Upgrade", "Upgrade": "websocket", "Sec-WebSocket-Version": "13", "Cookie": cookies}
        head |= {"Sec-WebSocket-Key": "dGhlIHNhbXBsZSBub25jZQ=="} | ({"Origin": origin} if origin else {})
        asked.request("GET", f"/api/kernels/{kernel}/channels?session_id=abc", headers=head)
        status = asked.getresponse().status
        asked.close()
        return status


def kernel_in(page: requests.Response) -> str:
    found = re.search(r'"kernelId": "([\w-]+)"', page.text)
    assert found is not None
    return found[1]


def test_it_is_bound_to_the_network_address_alone(room: Room) -> None:
    place = urlsplit(room.address)
    assert place.hostname == serving.local_address() and place.hostname != "127.0.0.1"
    with socket.socket() as other:
        assert other.connect_ex(("127.0.0.1", place.port or 0)) != 0
    assert any("not encrypted" in line for line in room.said)


@pytest.mark.parametrize("path", INSIDE)
def test_nothing_answers_without_the_code(room: Room, path: str) -> None:
    for query in ("", "?token=wrong", "?token="):
        for method in ("GET", "POST", "HEAD", "DELETE", "OPTIONS"):
            answer = requests.request(method, f"{room.address}{path}{query}", allow_redirects=False, timeout=PATIENCE)
            assert answer.status_code == 403, (method, path, query)
            assert "lessonkit-student" not in str(answer.cookies)
            assert path == "/" or not answer.content
    wrong = {"Cookie": f"lessonkit-class-{urlsplit(room.address).port}=wrong", "Authorization": "token wrong"}
    assert requests.get(f"{room.address}{path}", headers=wrong, timeout=PATIENCE).status_code == 403


def test_the_door_asks_for_the_code_as_written_on_the_board(room: Room) -> None:
    page = requests.get(room.address, timeout=PATIENCE)
    assert "Type the code your teacher" in page.text and "<script" not in page.text
    written = serving.written(room.code)
    assert any(written in line for line in room.said)
    typed = requests.get(f"{room.address}/?token={written.upper()}", allow_redirects=False, timeout=PATIENCE)
    assert typed.status_code == 302 and typed.headers["Location"] == "/"
    cookie = typed.headers["Set-Cookie"]
    assert "HttpOnly" in cookie and "SameSite=Lax" in cookie


@pytest.fixture(scope="module")
def visitors(room: Room) -> tuple[Visitor, Visitor, str, str]:
    """Two students with their pages open, and their kernels."""
    one, two = Visitor(room), Visitor(room)
    first, second = one.open(), two.open()
    assert first.status_code == second.status_code == 200
    return one, two, kernel_in(first), kernel_in(second)


def test_the_page_holds_no_code_and_asks_nothing_of_the_internet(
    visitors: tuple[Visitor, Visitor, str, str], room: Room
) -> None:
    page = visitors[0].open().text
    assert "class_lesson(" not in page and "print_mine(lesson)" not in page
    assert re.findall(r'(?:src|href)="https?://[^"]*"', page) == []
    assert room.code not in page
    changed = visitors[0].session.get(f"{room.address}/?template=reveal&theme=dark", timeout=PATIENCE).text
    assert "reveal.js" not in changed and "theme-light" in changed


@pytest.mark.parametrize("path", NEVER)
def test_with_the_code_there_is_still_only_the_class_copy(
    visitors: tuple[Visitor, Visitor, str, str], room: Room, path: str
) -> None:
    answer = visitors[1].session.get(f"{room.address}{path}", timeout=PATIENCE)
    assert answer.status_code in (403, 404), (path, answer.status_code)


def test_nobody_reaches_anothers_kernel(room: Room) -> None:
    """One's own is open to one's own page alone, and not to a page of another address."""
    one, two = Visitor(room), Visitor(room)
    one.session.cookies.update(_STUDENTS[0])
    two.session.cookies.update(_STUDENTS[1])
    kernel = kernel_in(one.open())
    assert one.upgrade(kernel) == 101
    assert two.upgrade(kernel) == 404
    assert Visitor(room).upgrade(kernel) == 404
    assert one.upgrade(kernel, origin="http://evil.example") == 403
    assert two.session.post(f"{room.address}/voila/api/shutdown/{kernel}", timeout=PATIENCE).status_code == 404
    assert two.session.delete(f"{room.address}/api/kernels/{kernel}", timeout=PATIENCE).status_code == 404
    assert one.session.get(f"{room.address}/api/kernels/{kernel}", timeout=PATIENCE).json()["id"] == kernel


_STUDENTS: list[dict[str, str]] = []


@pytest.fixture(autouse=True)
def _known(request: pytest.FixtureRequest) -> None:
    """Keep the two students' cookies, so that later visitors are the same two."""
    if "visitors" in request.fixturenames:
        pair = request.getfixturevalue("visitors")
        _STUDENTS[:] = [
            {c.name: c.value or "" for c in each.session.cookies if c.name.startswith("lessonkit-student")}
            for each in pair[:2]
        ]


def test_a_kernel_runs_no_code_that_a_page_sends(visitors: tuple[Visitor, Visitor, str, str], room: Room) -> None:
    """An execute request on the student's own socket is not passed on to the kernel."""
    from tornado.httpclient import HTTPRequest
    from tornado.ioloop import IOLoop
    from tornado.websocket import websocket_connect

    one = visitors[0]
    kernel = kernel_in(one.open())
    sign = room.sessions / "written-by-a-student"
    cookies = "; ".join(f"{cookie.name}={cookie.value}" for cookie in one.session.cookies)

    def message(kind: str, **content: object) -> str:
        header = {"msg_id": kind, "msg_type": kind, "username": "", "session": "abc", "version": "5.3", "date": ""}
        told = {"header": header, "parent_header": {}, "metadata": {}, "content": content, "channel": "shell"}
        return json.dumps({**told, "buffers": []})

    async def spoken() -> list[str]:
        address = f"{room.address.replace('http', 'ws')}/api/kernels/{kernel}/channels?session_id=abc"
        socket = await websocket_connect(HTTPRequest(address, headers={"Cookie": cookies}))
        code = f"open({str(sign)!r}, 'w').close()"
        await socket.write_message(message("execute_request", code=code, silent=False))
        await socket.write_message(message("kernel_info_request"))
        kinds: list[str] = []
        while "kernel_info_reply" not in kinds:
            said = await socket.read_message()
            assert isinstance(said, str)
            kinds.append(json.loads(said)["msg_type"])
        socket.close()
        return kinds

    assert "execute_reply" not in IOLoop().run_sync(spoken, timeout=PATIENCE)
    assert not sign.exists()


def test_a_full_room_says_so(visitors: tuple[Visitor, Visitor, str, str], room: Room) -> None:
    for student in visitors[:2]:
        assert student.open().status_code == 200
    answer = Visitor(room).open()
    assert answer.status_code == 503 and "There is room for 2 students" in answer.text


def test_students_have_folders_of_their_own(visitors: tuple[Visitor, Visitor, str, str], room: Room) -> None:
    folders = [path for path in room.sessions.iterdir() if path.name != "printing"]
    assert {path.name for path in folders} >= {next(iter(each.values())) for each in _STUDENTS}
    assert all(path.stat().st_mode & 0o077 == 0 for path in folders)
    copied = {path.name for path in room.folder.iterdir()}
    assert copied == {
        "picture.png",
        "tideline_wrap_top.ipynb",
        "tideline_wrap_top_class.ipynb",
        "tideline_wrap_top_class_lesson",
    }


def test_codes_are_long_enough_and_readable() -> None:
    codes = {serving.new_code() for _ in range(200)}
    assert len(codes) == 200
    assert all(re.fullmatch(r"[a-hjkmnp-z2-9]{10}", code) for code in codes)
    assert len(serving._LETTERS) ** 10 > 2**49
    assert serving.read_code(" K7QM-2xpd 9r\n") == "k7qm2xpd9r"


def test_too_little_memory_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(serving, "_free_megabytes", lambda: 1024)
    (line,) = serving.limits(30)
    assert "GB are free" in line and f"let in {1024 // serving.MEGABYTES} with --students" in line
    monkeypatch.setattr(serving, "_free_megabytes", lambda: 64_000)
    assert serving.limits(30) == []


def test_what_cannot_be_served_is_refused(root: Path, tmp_path: Path, room: Room) -> None:
    with pytest.raises(KitError, match="not a class copy"):
        serving.serve(root / "example_notebooks" / "ferry_tote.ipynb")
    copy = tmp_path / "lonely.ipynb"
    copy.write_bytes((room.folder / "tideline_wrap_top_class.ipynb").read_bytes())
    with pytest.raises(KitError, match="is not beside it"):
        serving.serve(copy)
