"""A class on a JupyterHub: what the hub starts instead of a Jupyter server for its teacher.

    python -m kit.room.hub --ClassRoom.notebook=CLASS_COPY

The hub's configuration names it as the command of a server; people come in by the hub's address and log-in, those of
them whom the hub lets come to that server (scope `access:servers!server=TEACHER/NAME`). It is a Jupyter server that
offers nothing but the class, so none of them can run code in it.
"""

from __future__ import annotations

import os
from typing import Any

from jupyter_server.serverapp import ServerApp
from jupyterhub.singleuser.extension import JupyterHubSingleUser

from kit.room.extension import HARMLESS, ClassRoom


class ClassServer(ServerApp):
    """A Jupyter server without kernels, files and terminals."""

    default_services = tuple(sorted(HARMLESS))  # type: ignore[assignment]


class ClassHub(JupyterHubSingleUser):
    """The hub's side of it: its log-in, its addresses."""

    serverapp_class = ClassServer
    load_other_extensions = False

    @classmethod
    def get_extension_package(cls) -> str:
        """Where Jupyter server finds what is to be loaded: this file alone."""
        return "kit.room.hub"


def _jupyter_server_extension_points() -> list[dict[str, Any]]:
    """The hub's side, and the class."""
    return [{"module": "kit.room.hub", "app": ClassHub}, {"module": "kit.room.extension", "app": ClassRoom}]


def main() -> None:
    """Serve until the hub ends it."""
    os.environ["JUPYTERHUB_DEFAULT_URL"] = "/room-in"
    ClassHub.launch_instance()


if __name__ == "__main__":
    from kit.room import hub  # Jupyter server imports this file by its name, and its classes must be the same

    hub.main()
