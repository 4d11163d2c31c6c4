"""A class as an extension of a Jupyter server opens only where nobody can run code."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path


def test_a_server_with_kernels_is_refused_a_class(tmp_path: Path) -> None:
    """Who may log in there could run code as the teacher, whatever the class itself allows."""
    command = [sys.executable, "-m", "jupyter_server", "--no-browser", "--allow-root", "--port=0"]
    command += ["--ServerApp.jpserver_extensions={'kit.room.extension': True}", "--ServerApp.token=abc"]
    environment = {
        **os.environ,
        **{f"JUPYTER_{name}_DIR": str(tmp_path / name) for name in ("CONFIG", "RUNTIME", "DATA")},
    }
    done = subprocess.run(command, cwd=tmp_path, env=environment, capture_output=True, text=True, timeout=240)
    assert done.returncode != 0
    assert "students could run code in it" in done.stderr and "kernels" in done.stderr
    assert "Traceback" not in done.stderr
