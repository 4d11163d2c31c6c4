"""A real JupyterLab with a folder of its own, and a headless Chromium that looks at it."""

from __future__ import annotations

import json
import os
import secrets
import shutil
import socket
import subprocess
import sys
import time
import urllib.error
import urllib.request
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from playwright.sync_api import Browser, expect, sync_playwright

CHROMIUM = shutil.which("chromium") or "/usr/bin/chromium"
FLAGS = (
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
)
SETTINGS: dict[str, dict[str, object]] = {
    "apputils-extension/notification": {"fetchNews": "false", "checkForUpdates": False},
    # A completion that comes after a second is left out, and a busy machine takes longer.
    "completer-extension/manager": {"providerTimeout": 60_000},
}
FORKED = Path(__file__).resolve().parents[1] / "forked_kernels.py"
PATIENCE = 120.0
"""Seconds within which a busy machine does anything that is waited for; a test waits for states, never for a time."""


@dataclass(frozen=True)
class Lab:
    """A running JupyterLab: its address, the token, and the folder at `place` (relative to what it shows)."""

    address: str
    token: str
    folder: Path
    place: str = ""

    def within(self, name: str) -> Lab:
        """The folder `name` in this one."""
        return Lab(self.address, self.token, self.folder / name, f"{self.place}{name}/")

    def page_of(self, notebook: str) -> str:
        return f"{self.address}/lab/tree/{self.place}{notebook}?reset&token={self.token}"

    def end_kernels(self) -> None:
        """End the kernels of the notebooks in this folder."""
        for session in json.loads(self._ask("GET", "sessions")):
            if session["path"].startswith(self.place):
                self._ask("DELETE", f"sessions/{session['id']}")

    def _ask(self, method: str, what: str) -> bytes:
        asked = urllib.request.Request(f"{self.address}/api/{what}?token={self.token}", method=method)
        with urllib.request.urlopen(asked, timeout=PATIENCE) as answer:
            return bytes(answer.read())


def free_port() -> int:
    with socket.socket() as s:
        s.bind(("127.0.0.1", 0))
        return int(s.getsockname()[1])


@contextmanager
def running_lab(base: Path, folder: Path) -> Iterator[Lab]:
    """JupyterLab showing `folder`, its settings and log in `base`; nothing of the user's settings."""
    for name, chosen in SETTINGS.items():
        path = base / "settings" / "@jupyterlab" / f"{name}.jupyterlab-settings"
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(json.dumps(chosen))
    token, port = secrets.token_hex(12), free_port()
    environment = {k: v for k, v in os.environ.items() if not k.startswith(("JUPYTER", "LESSONKIT", "JPY_"))}
    environment |= {
        "JUPYTER_CONFIG_DIR": str(base / "config"),
        "JUPYTER_RUNTIME_DIR": str(base / "runtime"),
        "JUPYTERLAB_SETTINGS_DIR": str(base / "settings"),
        "JUPYTERLAB_WORKSPACES_DIR": str(base / "workspaces"),
        "IPYTHONDIR": str(base / "ipython"),
    }
    command = [sys.executable, str(FORKED), "jupyterlab", "--no-browser", "--allow-root", f"--port={port}"]
    command += [f"--ServerApp.token={token}", "--ServerApp.port_retries=0", f"--ServerApp.root_dir={folder}"]
    command += ["--LabApp.expose_app_in_browser=True"]  # so that a test can ask it what its cells do
    command += ["--LabApp.check_for_updates_class=jupyterlab.NeverCheckForUpdate"]
    with (base / "lab.log").open("wb") as log:
        server = subprocess.Popen(command, stdout=log, stderr=subprocess.STDOUT, env=environment, cwd=folder)
        found = Lab(f"http://127.0.0.1:{port}", token, folder)
        try:
            deadline = time.monotonic() + PATIENCE
            while not _answers(found):
                if server.poll() is not None or time.monotonic() > deadline:
                    raise RuntimeError(f"JupyterLab did not start:\n{(base / 'lab.log').read_text()[-3000:]}")
                time.sleep(0.2)
            yield found
        finally:
            server.terminate()
            try:
                server.wait(PATIENCE)
            except subprocess.TimeoutExpired:
                server.kill()
                server.wait()


def _answers(lab: Lab) -> bool:
    try:
        with urllib.request.urlopen(f"{lab.address}/api/status?token={lab.token}", timeout=PATIENCE):
            return True
    except (urllib.error.URLError, OSError):
        return False


@contextmanager
def running_chromium() -> Iterator[Browser]:
    expect.set_options(timeout=PATIENCE * 1000)
    with sync_playwright() as playwright:
        running = playwright.chromium.launch(executable_path=CHROMIUM, args=list(FLAGS), timeout=PATIENCE * 1000)
        try:
            yield running
        finally:
            running.close()
