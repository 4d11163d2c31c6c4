"""A class on a JupyterHub (https://jupyterhub.readthedocs.io): a teacher, a student and somebody else, a hub with its
own proxy and local servers, spoken to as browsers would.

Left out, and said, where the hub or its proxy is not installed: `make test` installs both where they can be had.
"""

from __future__ import annotations

import asyncio
import json
import re
import secrets
import shutil
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest
import requests
from tornado.httpclient import HTTPRequest
from tornado.websocket import websocket_connect

from kit import KitError
from kit.room.hub_config import publish

from ..open_room import make_class_copy, write_small_lesson

pytestmark = pytest.mark.slow

PATIENCE = 240
ROOT = Path(__file__).resolve().parents[2]
BASE = "/user/teacher/class-7b"
CONFIG = """
from kit.room.hub_config import publish

c.JupyterHub.bind_url = c.JupyterHub.public_url = "http://127.0.0.1:{port}/"
c.JupyterHub.hub_port = {hub}
c.ConfigurableHTTPProxy.command = ["{proxy}"]
c.ConfigurableHTTPProxy.api_url = "http://127.0.0.1:{api}"
c.JupyterHub.authenticator_class = "dummy"
c.DummyAuthenticator.password = "{password}"
c.Authenticator.allowed_users = {{"teacher", "ines", "stranger"}}
c.JupyterHub.spawner_class = "simple"
c.JupyterHub.services = [{{"name": "test", "api_token": "{token}"}}]
c.JupyterHub.load_roles = [{{"name": "test", "services": ["test"], "scopes": ["admin:servers"]}}]
publish(c, "teacher", "class-7b", "{copy}", students=["ines"], seats=5, room_alone=True, workers=1)
begin = c.Spawner.pre_spawn_hook


def begin_as_root(spawner):  # continuous integration is
    begin(spawner)
    spawner.args = ["--allow-root"]


c.Spawner.pre_spawn_hook = begin_as_root
"""


@dataclass(frozen=True)
class Hub:
    address: str
    password: str
    token: str
    log: Path

    def api(self, method: str, what: str) -> requests.Response:
        head = {"Authorization": f"token {self.token}"}
        return requests.request(method, f"{self.address}/hub/api/{what}", headers=head, timeout=PATIENCE)

    def log_in(self, name: str) -> requests.Session:
        browser = requests.Session()
        page = browser.get(f"{self.address}/hub/login", timeout=PATIENCE)
        told = {"username": name, "password": self.password, "_xsrf": hidden(page.text)}
        assert browser.post(f"{self.address}/hub/login?next=/hub/home", told, timeout=PATIENCE).status_code == 200
        return browser

    def visit(self, browser: requests.Session, path: str) -> requests.Response:
        """The page, also where the hub asks first whether the server may know who one is."""
        page = browser.get(f"{self.address}{path}", timeout=PATIENCE)
        if "/oauth2/authorize" in page.url and page.ok:
            scopes = re.findall(r'name="scopes"[^>]*value="([^"]+)"', page.text)
            page = browser.post(page.url, {"_xsrf": hidden(page.text), "scopes": scopes}, timeout=PATIENCE)
        return page


def hidden(page: str) -> str:
    found = re.search(r'name="_xsrf" value="([^"]+)"', page)
    assert found is not None, page[:500]
    return found[1]


def free_ports(count: int) -> list[int]:
    held = [socket.socket() for _ in range(count)]
    for each in held:
        each.bind(("127.0.0.1", 0))
    ports = [int(each.getsockname()[1]) for each in held]
    for each in held:
        each.close()
    return ports


@pytest.fixture(scope="module")
def hub(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Hub]:
    pytest.importorskip("jupyterhub", reason="JupyterHub is not installed: pip install 'pattern-lesson-kit[hub]'")
    ours = Path(sys.prefix) / "hub" / "node_modules" / ".bin" / "configurable-http-proxy"
    proxy = str(ours) if ours.is_file() else shutil.which("configurable-http-proxy")
    if proxy is None:
        pytest.skip("the hub's proxy is not installed: npm install configurable-http-proxy")
    base = tmp_path_factory.mktemp("hub")
    lesson = write_small_lesson(base / "class")
    copy = make_class_copy(lesson)
    port, inner, api = free_ports(3)
    made = Hub(f"http://127.0.0.1:{port}", secrets.token_hex(8), secrets.token_hex(16), base / "hub.log")
    told = CONFIG.format(
        port=port, hub=inner, api=api, proxy=proxy, password=made.password, token=made.token, copy=copy
    )
    (base / "jupyterhub_config.py").write_text(told)
    with made.log.open("wb") as log:
        running = subprocess.Popen(
            [sys.executable, "-m", "jupyterhub", "-f", str(base / "jupyterhub_config.py")],
            stdout=log,
            stderr=subprocess.STDOUT,
            cwd=base,
        )
        try:
            wait(made, lambda: made.api("GET", "").ok, running)
            assert made.api("POST", "users/teacher/servers/class-7b").status_code in (201, 202)
            wait(made, lambda: opened(made), running)
            yield made
        finally:
            running.terminate()
            try:
                running.wait(60)
            except subprocess.TimeoutExpired:
                running.kill()
                running.wait()


def opened(hub: Hub) -> bool:
    servers = hub.api("GET", "users/teacher").json()["servers"]
    assert "class-7b" in servers, hub.log.read_text()[-4000:]  # it is taken away where it could not be started
    return bool(servers["class-7b"]["ready"])


def wait(hub: Hub, true: Any, running: subprocess.Popen[bytes]) -> None:
    end = time.monotonic() + PATIENCE
    while True:
        try:
            if true():
                return
        except requests.ConnectionError:
            pass
        assert running.poll() is None and time.monotonic() < end, hub.log.read_text()[-4000:]
        time.sleep(0.2)


@pytest.fixture(scope="module")
def teacher(hub: Hub) -> requests.Session:
    return hub.log_in("teacher")


@pytest.fixture
def ines(hub: Hub) -> requests.Session:
    return hub.log_in("ines")


def test_a_student_comes_in_with_the_hubs_log_in(hub: Hub, ines: requests.Session) -> None:
    page = hub.visit(ines, f"{BASE}/room/")
    assert page.status_code == 200 and page.url == f"{hub.address}{BASE}/room/", page.url
    assert "data-room" in page.text and "Tideline wrap top" in page.text
    assert ines.get(f"{hub.address}{BASE}/room/room/student.js", timeout=PATIENCE).ok
    told = asyncio.run(welcomed(hub, ines))
    assert told["is"] == "welcome"


async def welcomed(hub: Hub, browser: requests.Session) -> dict[str, Any]:
    """What the room says first on the line that the page opens."""
    cookies = "; ".join(
        f"{each.name}={each.value}" for each in browser.cookies if each.name.startswith(("less", "jup"))
    )
    head = {"Cookie": cookies, "Origin": hub.address}
    address = f"{hub.address.replace('http', 'ws', 1)}{BASE}/room/line"
    line = await websocket_connect(HTTPRequest(address, headers=head))
    told: dict[str, Any] = json.loads(str(await line.read_message()))
    line.close()
    return told


def test_the_teacher_has_the_board_and_nobody_else(hub: Hub, teacher: requests.Session, ines: requests.Session) -> None:
    board = hub.visit(teacher, f"{BASE}/")
    assert board.status_code == 200 and board.url == f"{hub.address}{BASE}/room/board"
    assert teacher.get(f"{hub.address}{BASE}/room/board-files/board.js", timeout=PATIENCE).ok
    hub.visit(ines, f"{BASE}/room/")
    refused = hub.visit(ines, f"{BASE}/room/board")
    assert refused.status_code == 403
    assert ines.get(f"{hub.address}{BASE}/room/board-files/board.js", timeout=PATIENCE).status_code == 403


def test_whom_the_hub_does_not_let_in_and_who_has_not_logged_in_stay_outside(hub: Hub) -> None:
    stranger = hub.visit(hub.log_in("stranger"), f"{BASE}/room/")
    assert stranger.status_code == 403 and "data-room" not in stranger.text
    nobody = requests.get(f"{hub.address}{BASE}/room/", timeout=PATIENCE)
    assert "/hub/login" in nobody.url and "data-room" not in nobody.text
    coded = requests.get(f"{hub.address}{BASE}/room/?token=anything", timeout=PATIENCE)
    assert "/hub/login" in coded.url
    assert requests.get(f"{hub.address}{BASE}/room/page.webmanifest", timeout=PATIENCE).status_code == 403


@pytest.mark.parametrize("who", ["ines", "teacher"])
def test_nothing_but_the_class_is_served(hub: Hub, who: str) -> None:
    browser = hub.log_in(who)
    hub.visit(browser, f"{BASE}/room/")
    head = {"X-XSRFToken": browser.cookies.get("_xsrf", path=f"{BASE}/") or ""}
    for path in (
        "api/contents",
        "api/kernelspecs",
        "api/sessions",
        "api/terminals",
        "tree",
        "lab",
        "files/a",
        "api/me/x",
    ):
        got = browser.get(f"{hub.address}{BASE}/{path}", timeout=PATIENCE)
        assert got.status_code == 404, path
    for path in ("api/kernels", "api/shutdown", "api/terminals", "api/sessions"):
        got = browser.post(f"{hub.address}{BASE}/{path}", json={"name": "python3"}, headers=head, timeout=PATIENCE)
        assert got.status_code in (403, 404), path


def test_the_newest_browsers_of_a_person_count(hub: Hub) -> None:
    """Three at once: a telephone, a tablet and the room's computer."""
    browsers = [hub.log_in("ines") for _ in range(4)]
    assert all(hub.visit(each, f"{BASE}/room/").ok for each in browsers)
    inside = [each.get(f"{hub.address}{BASE}/room/page.webmanifest", timeout=PATIENCE).status_code for each in browsers]
    assert inside == [403, 200, 200, 200]


def test_who_logs_out_leaves_no_seat_for_the_next_one_at_that_browser(hub: Hub, ines: requests.Session) -> None:
    assert hub.visit(ines, f"{BASE}/room/").ok
    ines.get(f"{hub.address}/hub/logout", timeout=PATIENCE)
    after = ines.get(f"{hub.address}{BASE}/room/", timeout=PATIENCE)
    assert "/hub/login" in after.url and "data-room" not in after.text


class Config(dict[str, Any]):
    """As the configuration of a hub behaves: a part that is not there yet begins when it is named."""

    def __getattr__(self, name: str) -> Any:
        return self.setdefault(name, Config())

    def __setattr__(self, name: str, value: Any) -> None:
        self[name] = value


def test_several_classes_and_a_hook_of_the_hubs_own_go_together(tmp_path: Path) -> None:
    copy = tmp_path / "a_class.ipynb"
    copy.write_text("{}")
    c, seen = Config(), []
    c.JupyterHub.load_roles = [{"name": "mine"}]
    c.Spawner.pre_spawn_hook = lambda spawner: seen.append(spawner.name)
    publish(c, "brook", "class-7b", copy, students=["tom", "ines"])
    publish(c, "reed", "class-8a", copy, group="8a", seats=40)
    assert [role["name"] for role in c.JupyterHub.load_roles] == ["mine", "lessonkit-class-7b", "lessonkit-class-8a"]
    assert c.JupyterHub.load_roles[1]["users"] == ["ines", "tom"]
    assert c.JupyterHub.load_roles[2]["scopes"] == ["access:servers!server=reed/class-8a"]

    class Spawner:
        def __init__(self, user: str, name: str) -> None:
            self.user, self.name = type("User", (), {"name": user}), name
            self.cmd, self.args, self.start_timeout, self.http_timeout = ["usual"], ["a"], 60, 1000

    for user, name, ours in (("brook", "class-7b", True), ("reed", "class-8a", True), ("tom", "class-7b", False)):
        spawner = Spawner(user, name)
        c.Spawner.pre_spawn_hook(spawner)
        assert ("kit.room.hub" in spawner.cmd) == ours
        assert spawner.http_timeout == 1000
    assert seen == ["class-7b"]  # only a server that is no class is left to the hub's own hook


def test_what_cannot_be_published_is_refused(tmp_path: Path) -> None:
    copy = tmp_path / "a_class.ipynb"
    copy.write_text("{}")
    for name, notebook, options, why in (
        ("Class 7b", copy, {}, "no name for a class"),
        ("class-7b", tmp_path / "none.ipynb", {}, "no class copy"),
        ("class-7b", copy, {"code": "x"}, "no option 'code'"),
    ):
        with pytest.raises(KitError, match=why):
            publish(Config(), "brook", name, notebook, **options)
