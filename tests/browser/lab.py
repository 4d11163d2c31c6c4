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

from playwright.sync_api import Browser, sync_playwright

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


@dataclass(frozen=True)
class Lab:
    """A running JupyterLab: its address, the token and the folder it shows."""

    address: str
    token: str
    folder: Path

    def page_of(self, notebook: str) -> str:
        return f"{self.address}/lab/tree/{notebook}?reset&token={self.token}"


def free_port() -> int:
    with socket.socket() as s:
        s.bind(("127.0.0.1", 0))
        return int(s.getsockname()[1])


@contextmanager
def running_lab(base: Path, folder: Path) -> Iterator[Lab]:
    """JupyterLab showing `folder`, its settings and log in `base`; nothing of the user's settings."""
    settings = base / "settings" / "@jupyterlab" / "apputils-extension"
    settings.mkdir(parents=True)
    (settings / "notification.jupyterlab-settings").write_text(
        json.dumps({"fetchNews": "false", "checkForUpdates": False})
    )
    token, port = secrets.token_hex(12), free_port()
    environment = {k: v for k, v in os.environ.items() if not k.startswith(("JUPYTER", "LESSONKIT", "JPY_"))}
    environment |= {
        "JUPYTER_CONFIG_DIR": str(base / "config"),
        "JUPYTER_RUNTIME_DIR": str(base / "runtime"),
        "JUPYTERLAB_SETTINGS_DIR": str(base / "settings"),
        "JUPYTERLAB_WORKSPACES_DIR": str(base / "workspaces"),
        "IPYTHONDIR": str(base / "ipython"),
    }
    command = [sys.executable, "-m", "jupyterlab", "--no-browser", "--allow-root", f"--port={port}"]
    command += [f"--ServerApp.token={token}", "--ServerApp.port_retries=0", f"--ServerApp.root_dir={folder}"]
    command += ["--LabApp.check_for_updates_class=jupyterlab.NeverCheckForUpdate"]
    with (base / "lab.log").open("wb") as log:
        server = subprocess.Popen(command, stdout=log, stderr=subprocess.STDOUT, env=environment, cwd=folder)
        found = Lab(f"http://127.0.0.1:{port}", token, folder)
        try:
            deadline = time.monotonic() + 45
            while not _answers(found):
                if server.poll() is not None or time.monotonic() > deadline:
                    raise RuntimeError(f"JupyterLab did not start:\n{(base / 'lab.log').read_text()[-3000:]}")
                time.sleep(0.2)
            yield found
        finally:
            server.terminate()
            try:
                server.wait(10)
            except subprocess.TimeoutExpired:
                server.kill()
                server.wait()


def _answers(lab: Lab) -> bool:
    try:
        with urllib.request.urlopen(f"{lab.address}/api/status?token={lab.token}", timeout=2):
            return True
    except (urllib.error.URLError, OSError):
        return False


@contextmanager
def running_chromium() -> Iterator[Browser]:
    with sync_playwright() as playwright:
        running = playwright.chromium.launch(executable_path=CHROMIUM, args=list(FLAGS))
        try:
            yield running
        finally:
            running.close()
