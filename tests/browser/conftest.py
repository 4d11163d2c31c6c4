"""A real JupyterLab with a copy of an example lesson, and a headless Chromium that looks at it."""

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
from pathlib import Path

import pytest
from playwright.sync_api import Browser, sync_playwright

sys.path.insert(0, str(Path(__file__).parent))
from lab import Lab

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


def free_port() -> int:
    with socket.socket() as s:
        s.bind(("127.0.0.1", 0))
        return int(s.getsockname()[1])


@pytest.fixture(scope="module")
def lab(tmp_path_factory: pytest.TempPathFactory, root: Path) -> Iterator[Lab]:
    """JupyterLab showing a folder of its own with a copy of the example lessons; nothing of the user's settings."""
    base = tmp_path_factory.mktemp("lab")
    folder = base / "lessons"
    shutil.copytree(root / "example_notebooks", folder, ignore=shutil.ignore_patterns("*.values.json", ".*"))
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
    log = (base / "lab.log").open("wb")
    command = [sys.executable, "-m", "jupyterlab", "--no-browser", "--allow-root", f"--port={port}"]
    command += [f"--ServerApp.token={token}", "--ServerApp.port_retries=0", f"--ServerApp.root_dir={folder}"]
    command += ["--LabApp.check_for_updates_class=jupyterlab.NeverCheckForUpdate"]
    server = subprocess.Popen(command, stdout=log, stderr=subprocess.STDOUT, env=environment, cwd=folder)
    found = Lab(f"http://127.0.0.1:{port}", token, folder)
    try:
        deadline = time.monotonic() + 45
        while True:
            try:
                with urllib.request.urlopen(f"{found.address}/api/status?token={token}", timeout=2):
                    break
            except (urllib.error.URLError, OSError):
                if server.poll() is not None or time.monotonic() > deadline:
                    pytest.fail(f"JupyterLab did not start:\n{(base / 'lab.log').read_text()[-3000:]}")
                time.sleep(0.2)
        yield found
    finally:
        server.terminate()
        try:
            server.wait(10)
        except subprocess.TimeoutExpired:
            server.kill()
            server.wait()
        log.close()


@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    with sync_playwright() as playwright:
        running = playwright.chromium.launch(executable_path=CHROMIUM, args=list(FLAGS))
        yield running
        running.close()
