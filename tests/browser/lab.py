"""A running JupyterLab."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path


@dataclass(frozen=True)
class Lab:
    """A running JupyterLab: its address, the token and the folder it shows."""

    address: str
    token: str
    folder: Path

    def page_of(self, notebook: str) -> str:
        return f"{self.address}/lab/tree/{notebook}?reset&token={self.token}"
