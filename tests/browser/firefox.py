"""Firefox, driven by WebDriver BiDi (https://www.w3.org/TR/webdriver-bidi/), which it speaks by itself: no driver
beside it is needed. What of the protocol a smoke test needs, over one websocket.

It is looked for as `firefox-esr` or `firefox`, or at what FIREFOX names. As Debian has it, without being root:
`apt-get download firefox-esr libvpx7`, `dpkg -x` both into a folder, and a script that sets LD_LIBRARY_PATH to that
folder's library folders and starts the `firefox-esr` in it.
"""

from __future__ import annotations

import base64
import json
import os
import shutil
import subprocess
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import websocket
from lab import PATIENCE, free_port

FIREFOX = os.environ.get("FIREFOX") or shutil.which("firefox-esr") or shutil.which("firefox")
_QUIET = {
    "app.update.auto": False,
    "app.normandy.enabled": False,
    "browser.shell.checkDefaultBrowser": False,
    "browser.aboutwelcome.enabled": False,
    "datareporting.policy.dataSubmissionEnabled": False,
    "toolkit.telemetry.enabled": False,
    "network.captive-portal-service.enabled": False,
    "network.connectivity-service.enabled": False,
    "services.settings.server": "data:,nowhere",
    # What is not on the loopback cannot be reached.
    "network.proxy.type": 1,
    "network.proxy.http": "127.0.0.1",
    "network.proxy.http_port": 9,
    "network.proxy.ssl": "127.0.0.1",
    "network.proxy.ssl_port": 9,
    "network.proxy.allow_hijacking_localhost": False,
}


class Firefox:
    """One page in a running Firefox. `errors` are what its console said as errors or warnings."""

    def __init__(self, address: str) -> None:
        self.errors: list[str] = []
        self._number = 0
        self._line = websocket.create_connection(address, timeout=PATIENCE, suppress_origin=True)
        self.ask("session.new", capabilities={})
        self.ask("session.subscribe", events=["log.entryAdded"])
        self._page = self.ask("browsingContext.getTree")["contexts"][0]["context"]

    def ask(self, method: str, **params: Any) -> dict[str, Any]:
        """Send a command and wait for its answer; what is logged meanwhile is kept."""
        self._number += 1
        self._line.send(json.dumps({"id": self._number, "method": method, "params": params}))
        while True:
            heard = json.loads(self._line.recv())
            if heard.get("method") == "log.entryAdded" and heard["params"]["level"] in ("error", "warn"):
                self.errors.append(str(heard["params"].get("text")))
            if heard.get("id") == self._number:
                if heard["type"] != "success":
                    raise RuntimeError(f"{method}: {heard.get('error')}: {heard.get('message')}")
                answer: dict[str, Any] = heard["result"]
                return answer

    def size(self, wide: int, high: int) -> None:
        self.ask("browsingContext.setViewport", context=self._page, viewport={"width": wide, "height": high})

    def go(self, address: str) -> None:
        self.ask("browsingContext.navigate", context=self._page, url=address, wait="complete")

    def say(self, expression: str) -> Any:
        """What a JavaScript expression comes to, as JSON carries it."""
        text = f"Promise.resolve({expression}).then((made) => JSON.stringify(made ?? null))"
        made = self.ask("script.evaluate", expression=text, target={"context": self._page}, awaitPromise=True)
        if made["type"] != "success":
            raise RuntimeError(made["exceptionDetails"]["text"])
        return json.loads(made["result"]["value"])

    def until(self, expression: str) -> bool:
        """Whether an expression becomes true, asked again and again until a busy machine must have done it."""
        end = time.monotonic() + PATIENCE
        while not self.say(expression):
            if time.monotonic() > end:
                return False
            time.sleep(0.1)
        return True

    def press(self, key: str) -> None:
        """A key by its code point, as WebDriver names keys: "\\ue014" is the arrow to the right."""
        acts = [{"type": "keyDown", "value": key}, {"type": "keyUp", "value": key}]
        actions = [{"type": "key", "id": "keys", "actions": acts}]
        self.ask("input.performActions", context=self._page, actions=actions)

    def picture(self, path: Path) -> None:
        path.write_bytes(base64.b64decode(self.ask("browsingContext.captureScreenshot", context=self._page)["data"]))


@contextmanager
def running_firefox() -> Iterator[Firefox]:
    """A headless Firefox with a profile of its own that ends with the block."""
    assert FIREFOX is not None
    port = free_port()
    with tempfile.TemporaryDirectory(prefix="firefox-", ignore_cleanup_errors=True) as scratch:
        told = "".join(f"user_pref({json.dumps(name)}, {json.dumps(value)});\n" for name, value in _QUIET.items())
        (Path(scratch) / "user.js").write_text(told)
        command = [FIREFOX, "--headless", "--no-remote", "--profile", scratch, f"--remote-debugging-port={port}"]
        log = Path(scratch) / "log"
        with log.open("wb") as out:
            process = subprocess.Popen([*command, "about:blank"], stdout=out, stderr=subprocess.STDOUT)
        try:
            end = time.monotonic() + PATIENCE
            while b"BiDi listening" not in log.read_bytes():
                if process.poll() is not None or time.monotonic() > end:
                    raise RuntimeError(f"Firefox did not start:\n{log.read_text(errors='replace')[-2000:]}")
                time.sleep(0.1)
            yield Firefox(f"ws://127.0.0.1:{port}/session")
        finally:
            process.terminate()
            process.wait(PATIENCE)
