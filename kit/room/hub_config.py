"""Classes in the configuration of a JupyterHub.

    # jupyterhub_config.py
    from kit.room.hub_config import publish

    c.JupyterHub.public_url = "https://hub.school.example/"
    publish(c, "Ms Brook's name there", "class-7b", "/srv/classes/apron_class.ipynb", students=["ines", "tom"])

The teacher starts the server of that name from the hub's own page; its address is the class's. Students come in with
the hub's log-in, everybody else is refused.
"""

from __future__ import annotations

import re
import sys
from collections.abc import Callable, Iterable
from pathlib import Path
from typing import Any

from kit.errors import KitError

_NAME = re.compile(r"[a-z0-9][a-z0-9-]{0,40}\Z")
_OPENING = 300  # seconds a class may take to open: its page is built the first time
_KNOWN = frozenset(("students", "keep", "room_alone", "workers", "address"))


def publish(
    c: Any, teacher: str, name: str, notebook: str | Path, students: Iterable[str] = (), group: str = "", **options: Any
) -> None:
    """Let `teacher` open the class copy `notebook` as their server `name`, to the users `students` or all of the
    hub's `group`. `c` is the hub's configuration; `options` are those of `kit.room.extension.ClassRoom` ("seats" for
    how many may come at once, "keep", "room_alone", "workers", "address"). Raises `KitError` for a name that is none,
    a class copy that is not there and options nobody knows."""
    if not _NAME.match(name):
        raise KitError(f"'{name}' is no name for a class.", do="Use small letters, digits and hyphens: class-7b.")
    copy = Path(notebook)
    if not copy.is_file():
        raise KitError(f"there is no class copy '{copy}'.", do="Make it with lessonkit class-copy.")
    options = {("students" if key == "seats" else key): value for key, value in options.items()}
    unknown = sorted(set(options) - _KNOWN)
    if unknown:
        raise KitError(f"a class has no option '{unknown[0]}'.")
    told = {"notebook": str(copy.resolve()), **options}
    scope = f"access:servers!server={teacher}/{name}"
    role: dict[str, Any] = {"name": f"lessonkit-{name}", "scopes": [scope], "users": sorted(students)}
    if group:
        role["groups"] = [group]
    _add(c.JupyterHub, "load_roles", role)
    c.JupyterHub.allow_named_servers = True
    command = [sys.executable, "-m", "kit.room.hub", *(f"--ClassRoom.{key}={value}" for key, value in told.items())]
    c.Spawner.pre_spawn_hook = _hook(teacher, name, command, c.Spawner.get("pre_spawn_hook"))


def _add(section: Any, key: str, value: Any) -> None:
    found = section.get(key)
    section[key] = [*(found if isinstance(found, list) else []), value]


def _hook(teacher: str, name: str, command: list[str], before: Any) -> Callable[[Any], Any]:
    """What the hub does before it starts a server: that one is a class; others are what they were."""

    def begin(spawner: Any) -> Any:
        if (spawner.user.name, spawner.name) == (teacher, name):
            spawner.cmd, spawner.args = command, []
            spawner.start_timeout = max(spawner.start_timeout, _OPENING)
            spawner.http_timeout = max(spawner.http_timeout, _OPENING)
            return None
        return before(spawner) if callable(before) else None

    return begin
