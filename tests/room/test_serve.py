"""The door of a room: what answers without the class code, and what a student can reach with it.

Spoken to over HTTP and websockets as a browser would, against the running command.
"""

from __future__ import annotations

import http.client
import json
import re
import socket
import ssl
import subprocess
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any
from urllib.parse import urlsplit

import pytest
import requests
from tornado.httpclient import HTTPRequest
from tornado.ioloop import IOLoop
from tornado.websocket import WebSocketClientConnection, websocket_connect

from kit import KitError
from kit.room import codes, said
from kit.room.addresses import local_address
from kit.room.server import Options, serve

from ..open_room import Room, running_room

PATIENCE = 180
"""Seconds within which a busy machine answers; what is asked is what, not how fast."""
INSIDE = (
    "/",
    "/index.html",
    "/line",
    "/room/student.js",
    "/room/words.json",
    "/edition-000000000000/app.js",
    "/page.webmanifest",
    "/sw.js",
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
    "/login",
)
TEACHERS = ("/board", "/board/line", "/board-files/board.js", "/board-files/qr.svg", "/board-files/words.json")
NEVER = (
    *TEACHERS,
    "/sw.js",
    "/index.html",
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
    "/files/picture.png",
    "/picture.png",
    "/lesson/lesson.ipynb",
    "/facts.json",
    "/mine/..%2f..%2fserve.log",
    "/mine/own-body.toml",
    "/room/..%2fboard.js",
    "/tideline_wrap_top_class.ipynb",
)


@pytest.fixture(scope="module")
def room(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Room]:
    options = ("--local-network", "--students", "3", "--per-device", "3", "--room-alone", "--workers", "1")
    with running_room(tmp_path_factory.mktemp("door"), *options, small=True) as running:
        (running.folder / "picture.png").write_bytes(b"picture")
        yield running


class Visitor:
    """A browser with the class code."""

    def __init__(self, room: Room) -> None:
        self.room = room
        self.session = requests.Session()
        self.entered = self.session.get(room.link, allow_redirects=False, timeout=PATIENCE)

    def get(self, path: str, **more: Any) -> requests.Response:
        return self.session.get(f"{self.room.address}{path}", timeout=PATIENCE, **more)

    @property
    def cookies(self) -> str:
        return "; ".join(f"{cookie.name}={cookie.value}" for cookie in self.session.cookies)

    def upgrade(self, origin: str | None = None, path: str = "/line") -> int:
        """The status of a request for a line: 101 when it is let in."""
        place = urlsplit(self.room.address)
        asked = http.client.HTTPConnection(place.hostname or "", place.port or 0, timeout=PATIENCE)
        head = {"Connection": "Upgrade", "Upgrade": "websocket", "Sec-WebSocket-Version": "13", "Cookie": self.cookies}
        head |= {
            "Sec-WebSocket-Key": "dGhlIHNhbXBsZSBub25jZQ==",
            "Origin": self.room.address if origin is None else origin,
        }
        asked.request("GET", path, headers={name: value for name, value in head.items() if value})
        status = asked.getresponse().status
        asked.close()
        return status

    async def line(self, path: str = "/line") -> WebSocketClientConnection:
        address = f"{self.room.address.replace('http', 'ws', 1)}{path}"
        head = {"Cookie": self.cookies, "Origin": self.room.address}
        return await websocket_connect(HTTPRequest(address, headers=head))


@pytest.fixture(scope="module")
def visitors(room: Room) -> tuple[Visitor, Visitor]:
    """Two students who are in."""
    return Visitor(room), Visitor(room)


async def heard(line: WebSocketClientConnection, kind: str) -> dict[str, Any]:
    """The next message of that kind; what comes before it is left."""
    while True:
        text = await line.read_message()
        assert isinstance(text, str), "the line was closed"
        told: dict[str, Any] = json.loads(text)
        if told["is"] == kind:
            return told


def test_it_is_bound_to_the_network_address_alone(room: Room) -> None:
    place = urlsplit(room.address)
    assert place.hostname == local_address() and place.hostname != "127.0.0.1"
    with socket.socket() as other:
        assert other.connect_ex(("127.0.0.1", place.port or 0)) != 0
    assert any("not encrypted" in line for line in room.said)


@pytest.mark.parametrize("path", INSIDE)
def test_nothing_answers_without_the_code(room: Room, path: str) -> None:
    for query in ("", "?token="):
        for method in ("GET", "POST", "HEAD", "DELETE", "OPTIONS"):
            answer = requests.request(method, f"{room.address}{path}{query}", allow_redirects=False, timeout=PATIENCE)
            assert answer.status_code == 403, (method, path, query)
            assert not answer.cookies
            assert path == "/" or not answer.content
    wrong = {"Cookie": f"lessonkit-class-{urlsplit(room.address).port}=wrong", "Authorization": "token wrong"}
    assert requests.get(f"{room.address}{path}", headers=wrong, timeout=PATIENCE).status_code == 403


@pytest.mark.parametrize("path", TEACHERS)
def test_the_class_code_does_not_open_the_board(room: Room, visitors: tuple[Visitor, Visitor], path: str) -> None:
    assert visitors[0].get(path).status_code == 403
    assert visitors[0].get(f"{path}?token={room.code}").status_code == 403
    assert visitors[0].upgrade(path="/board/line") == 403


def test_the_door_asks_for_the_code_as_written_on_the_board(room: Room) -> None:
    page = requests.get(room.address, timeout=PATIENCE)
    assert "Type the code your teacher" in page.text and "<script" not in page.text
    written = codes.written(room.code)
    assert any(written in line for line in room.said)
    typed = requests.get(f"{room.address}/?token={written.upper()}", allow_redirects=False, timeout=PATIENCE)
    assert typed.status_code == 302 and typed.headers["Location"] == "/"
    cookie = typed.headers["Set-Cookie"]
    assert "HttpOnly" in cookie and "SameSite=Lax" in cookie and room.code not in cookie
    assert "expires" not in cookie.lower()  # it goes with the browser, as its meaning does with the class


def test_the_page_asks_nothing_of_the_internet_and_holds_no_code(visitors: tuple[Visitor, Visitor], room: Room) -> None:
    answer = visitors[0].get("/")
    assert answer.status_code == 200 and room.code not in answer.text
    assert re.findall(r'(?:src|href)="https?://[^"]*"', answer.text) == []
    policy = answer.headers["Content-Security-Policy"]
    assert "default-src 'none'" in policy and "frame-ancestors 'none'" in policy
    assert re.findall(r"[a-z]+://[^\s;]+", policy) == [room.address.replace("http", "ws")]
    assert "cells" not in visitors[0].get("/room/student.js").text
    edition = re.search(r"edition-[0-9a-f]+", answer.text)
    assert edition is not None
    assert visitors[0].get(f"/{edition[0]}/app.js").status_code == 200
    assert visitors[0].get(f"/{edition[0]}/lesson.zip").status_code == 404  # the room works it: no code travels


def test_the_link_opened_again_leaves_no_code_in_the_address(visitors: tuple[Visitor, Visitor], room: Room) -> None:
    again = visitors[0].get(f"/?token={room.code}", allow_redirects=False)
    assert again.status_code == 302 and again.headers["Location"] == "/" and "Set-Cookie" not in again.headers


def test_a_cookie_of_any_letters_is_only_wrong(room: Room) -> None:
    place = urlsplit(room.address)
    asked = f"GET /board HTTP/1.1\nHost: {place.netloc}\nConnection: close\nCookie: lessonkit-board-{place.port}="
    assert raw(room, f"{asked}\u00e9\n\n").startswith(b"HTTP/1.1 403 ")


@pytest.mark.parametrize("path", NEVER)
def test_with_the_code_there_is_still_only_the_class(visitors: tuple[Visitor, Visitor], path: str) -> None:
    answer = visitors[1].get(path)
    assert answer.status_code in (403, 404), (path, answer.status_code)
    assert not answer.content or "<form" in answer.text


def test_a_file_is_packed_once_and_not_sent_again(visitors: tuple[Visitor, Visitor]) -> None:
    first = visitors[0].get("/room/student.js")
    assert first.headers["Content-Encoding"] == "gzip" and "class's part" in first.text
    again = visitors[0].get("/room/student.js", headers={"If-None-Match": first.headers["ETag"]})
    assert again.status_code == 304 and not again.content


def test_a_line_is_for_a_page_of_this_class_alone(visitors: tuple[Visitor, Visitor], room: Room) -> None:
    assert visitors[0].upgrade() == 101
    assert visitors[0].upgrade(origin="http://evil.example") == 403
    assert visitors[0].upgrade(origin="") == 403
    stranger = Visitor.__new__(Visitor)
    stranger.room, stranger.session = room, requests.Session()
    assert stranger.upgrade() == 403


def test_another_name_is_not_answered(visitors: tuple[Visitor, Visitor], room: Room) -> None:
    """A page of somebody else whose name was pointed at this machine (DNS rebinding)."""
    for host in ("evil.example", f"evil.example:{urlsplit(room.address).port}", "127.0.0.1", ""):
        assert visitors[0].get("/", headers={"Host": host}).status_code in (400, 421)


def raw(room: Room, head: str, body: bytes = b"", read: int = 1 << 16) -> bytes:
    """What comes back for bytes that are no browser's."""
    place = urlsplit(room.address)
    with socket.create_connection((place.hostname or "", place.port or 0), timeout=PATIENCE) as line:
        line.sendall(head.replace("\n", "\r\n").encode() + body)
        answer = b""
        try:
            while piece := line.recv(read):
                answer += piece
        except ConnectionResetError:
            pass
        return answer


@pytest.mark.parametrize("more", ["Content-Length: 1000000000", "Transfer-Encoding: chunked"])
@pytest.mark.parametrize("path", ["/", "/?token=CODE", "/line", "/board"])
def test_no_body_is_read(room: Room, path: str, more: str) -> None:
    """The answer comes, and the line is closed, although nothing of the body has been sent yet."""
    host = urlsplit(room.address).netloc
    path = path.replace("CODE", room.code)
    answer = raw(room, f"POST {path} HTTP/1.1\nHost: {host}\n{more}\n\n")
    assert answer.startswith(b"HTTP/1.1 403 ") and b"Set-Cookie" not in answer


def test_a_body_is_refused_with_the_code_too(room: Room, visitors: tuple[Visitor, Visitor]) -> None:
    host = urlsplit(room.address).netloc
    head = f"GET / HTTP/1.1\nHost: {host}\nCookie: {visitors[0].cookies}\nContent-Length: 70000\n\n"
    assert raw(room, head).startswith(b"HTTP/1.1 413 ")


def test_long_headers_are_refused(room: Room) -> None:
    host = urlsplit(room.address).netloc
    answer = raw(room, f"GET / HTTP/1.1\nHost: {host}\nX-Long: {'x' * 70_000}\n\n")
    assert not answer or answer.startswith(b"HTTP/1.1 4")


def test_a_message_has_64_kilobytes_at_most(room: Room, visitors: tuple[Visitor, Visitor]) -> None:
    async def spoken() -> tuple[bool, bool]:
        line = await visitors[0].line()
        await heard(line, "welcome")
        await line.write_message(json.dumps({"is": "hand", "up": True, "more": "x" * (said.MOST - 100)}))
        fits = (await heard(line, "hand"))["up"]
        await line.write_message(json.dumps({"is": "hand", "up": False, "more": "x" * said.MOST}))
        return fits, await line.read_message() is None

    assert IOLoop().run_sync(spoken, timeout=PATIENCE) == (True, True)


def test_a_page_works_the_lesson_by_the_room_and_runs_no_code(room: Room, visitors: tuple[Visitor, Visitor]) -> None:
    sign = room.sessions / "written-by-a-student"
    hostile = [
        {"do": f"open({str(sign)!r}, 'w').close()"},
        {"do": "draw", "values": {"hem_drop": f"__import__('os').system('touch {sign}')"}},
        {"do": "read", "name": f"../../{sign.name}", "text": "import os"},
        {"do": "draw", "body": {"name": "\ud800", "typed": {"bust_girth": "\ud800" * 50}}},
        {"do": "draw", "language": "\ud800", "step": {"kind": [], "key": {}, "picture": 1e300}, "room": [1e300, "x"]},
    ]

    async def spoken() -> list[dict[str, Any]]:
        line = await visitors[1].line()
        answers = []
        for number, asked in enumerate([*hostile, {"do": "draw"}]):
            await line.write_message(json.dumps({"is": "ask", "id": number, "text": json.dumps(asked)}))
            told = await heard(line, "answer")
            assert told["id"] == number
            answers.append(json.loads(told["text"]) if "text" in told else {"ok": None, **told})
        line.close()
        return answers

    answers = IOLoop().run_sync(spoken, timeout=PATIENCE)
    assert [each["ok"] for each in answers[:4]] == [False] * 4
    assert answers[-1]["ok"] is True and answers[-1]["svg"].startswith("<svg")
    assert not sign.exists()


def test_what_is_no_message_is_left_unheard(visitors: tuple[Visitor, Visitor]) -> None:
    strange = ["", "null", "[]", "{", '{"is": 3}', '{"is": "draft", "for": 1, "setting": {}}', "[" * 50_000]
    strange += ['{"is": "name", "name": 7}', '{"is": "send", "values": {}}', '{"is": "ask", "id": 1, "text": "[]"}']

    async def spoken() -> None:
        line = await visitors[0].line()
        for text in strange:
            await line.write_message(text)
        await line.write_message(json.dumps({"is": "hand", "up": False}))
        assert (await heard(line, "hand"))["up"] is False
        line.close()

    IOLoop().run_sync(spoken, timeout=PATIENCE)


def test_a_flood_costs_only_its_own_line(room: Room, visitors: tuple[Visitor, Visitor]) -> None:
    """One sends as fast as it can and is hung up on; the other is answered meanwhile."""

    async def spoken() -> tuple[bool, bool]:
        flood, calm = await visitors[0].line(), await visitors[1].line()
        draw = json.dumps({"do": "draw"})
        for number in range(400):
            try:
                await flood.write_message(json.dumps({"is": "ask", "id": number, "text": draw}))
            except Exception:
                break
        await calm.write_message(json.dumps({"is": "ask", "id": 1, "text": draw}))
        told = await heard(calm, "answer")
        while await flood.read_message() is not None:
            pass
        calm.close()
        return "text" in told, True

    assert IOLoop().run_sync(spoken, timeout=PATIENCE) == (True, True)


def test_wrong_codes_are_answered_ever_more_slowly(room: Room) -> None:
    seen = []
    for _ in range(14):
        seen.append(requests.get(f"{room.address}/?token=wrongwrong", timeout=PATIENCE).status_code)
    assert seen[0] == 403 and seen[-1] == 429 and set(seen) == {403, 429}
    right = requests.get(room.link, allow_redirects=False, timeout=PATIENCE)
    assert right.status_code in (429, 503)  # not even the right one tells anything now


def test_no_code_stands_in_a_log(room: Room, visitors: tuple[Visitor, Visitor]) -> None:
    visitors[0].get(f"/nowhere?token={room.code}")
    visitors[0].get(f"/mine/%00?token={room.code}")
    written = room.log.read_text("utf-8", "replace")
    assert room.code not in written and codes.written(room.code) not in written
    assert room.board.split("token=")[1] not in written


def test_own_files_are_the_students_alone(room: Room, visitors: tuple[Visitor, Visitor]) -> None:
    def number(visitor: Visitor) -> int:
        async def spoken() -> int:
            line = await visitor.line()
            told = await heard(line, "welcome")
            line.close()
            return int(told["number"])

        return IOLoop().run_sync(spoken, timeout=PATIENCE)

    one, two = (number(each) for each in visitors)
    assert one != two
    folder = room.sessions / f"student-{one}"
    folder.mkdir(mode=0o700, exist_ok=True)
    (folder / "booklet.pdf").write_bytes(b"%PDF-")
    (folder / "pages-a4.pdf").symlink_to(room.folder / "tideline_wrap_top.ipynb")
    assert visitors[0].get("/mine/booklet.pdf").content == b"%PDF-"
    assert visitors[0].get("/mine/pages-a4.pdf").status_code == 404
    assert visitors[1].get("/mine/booklet.pdf").status_code == 404
    copied = {path.name for path in room.folder.iterdir()}
    assert copied == {
        "picture.png",
        "tideline_wrap_top.ipynb",
        "tideline_wrap_top_class.ipynb",
        "tideline_wrap_top_class_lesson",
    }


@pytest.fixture(scope="module")
def encrypted(tmp_path_factory: pytest.TempPathFactory) -> Iterator[tuple[Room, Path]]:
    """A room with a certificate, and place for three."""
    base = tmp_path_factory.mktemp("encrypted")
    made = ["openssl", "req", "-x509", "-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:prime256v1", "-nodes"]
    made += ["-keyout", "key.pem", "-out", "cert.pem", "-days", "2", "-subj", "/CN=class.test"]
    made += ["-addext", "subjectAltName=IP:127.0.0.1,DNS:class.test"]
    subprocess.run(made, cwd=base, check=True, capture_output=True)
    options = ("--students", "3", "--certificate", str(base / "cert.pem"), "--key", str(base / "key.pem"))
    with running_room(base, *options, "--room-alone", "--workers", "1", small=True) as running:
        yield running, base / "cert.pem"


def test_a_certificate_makes_the_line_https(encrypted: tuple[Room, Path]) -> None:
    room, certificate = encrypted
    assert room.link.startswith("https://")
    answer = requests.get(room.address, verify=str(certificate), timeout=PATIENCE)
    assert answer.status_code == 403
    place = urlsplit(room.address)
    with pytest.raises(ssl.SSLError), socket.create_connection((place.hostname or "", place.port or 0)) as plain:
        old = ssl.SSLContext(ssl.PROTOCOL_TLS_CLIENT)
        old.check_hostname, old.verify_mode = False, ssl.CERT_NONE
        old.minimum_version = old.maximum_version = ssl.TLSVersion.TLSv1_1
        old.set_ciphers("ALL:@SECLEVEL=0")
        old.wrap_socket(plain)


def test_places_are_counted_before_they_are_given(encrypted: tuple[Room, Path]) -> None:
    """Sixteen ask at once where there is room for three."""
    room, certificate = encrypted

    def enter(_: int) -> requests.Response:
        return requests.get(room.link, verify=str(certificate), allow_redirects=False, timeout=PATIENCE)

    with ThreadPoolExecutor(16) as crowd:
        answers = list(crowd.map(enter, range(16)))
    assert sorted(answer.status_code for answer in answers) == [302] * 3 + [503] * 13
    assert len({answer.headers["Set-Cookie"] for answer in answers if answer.ok}) == 3
    assert all("Secure" in answer.headers["Set-Cookie"] for answer in answers if answer.status_code == 302)
    full = next(answer for answer in answers if answer.status_code == 503)
    assert "There is room for 3 students" in full.text and "Set-Cookie" not in full.headers


def test_a_cookie_opens_no_other_class(encrypted: tuple[Room, Path], room: Room) -> None:
    other = Visitor.__new__(Visitor)
    other.room, other.session = room, requests.Session()
    for name in ("class", "board"):
        other.session.cookies.set(f"lessonkit-{name}-{urlsplit(room.address).port}", "A" * 22)
    assert other.get("/").status_code == 403 and other.get("/board").status_code == 403


@pytest.mark.parametrize(
    ("options", "why"),
    [
        (Options(certificate=Path("none.pem")), "there is no file"),
        (Options(key=Path("key.pem")), "without its certificate"),
        (Options(certificate=Path(__file__)), "cannot be used"),
    ],
)
def test_a_certificate_that_cannot_be_used_is_refused(room: Room, options: Options, why: str) -> None:
    with pytest.raises(KitError, match=why):
        serve(room.folder / "tideline_wrap_top_class.ipynb", options)


def test_what_cannot_be_served_is_refused(root: Path, tmp_path: Path, room: Room) -> None:
    with pytest.raises(KitError, match="not a class copy"):
        serve(root / "example_notebooks" / "ferry_tote.ipynb")
    copy = tmp_path / "lonely.ipynb"
    copy.write_bytes((room.folder / "tideline_wrap_top_class.ipynb").read_bytes())
    with pytest.raises(KitError, match="is not beside it"):
        serve(copy)
