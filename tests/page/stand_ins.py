"""Stand-ins for the compiled packages of Pyodide's distribution: wheels that load, and refuse to be imported."""

from __future__ import annotations

import hashlib
import json
from pathlib import Path
from typing import Any

from kit.page.bundle import zipped
from kit.page.core import LOCK
from kit.page.packages import LIST, NEEDED

IMPORTED = {"pillow": "PIL"}


def stand_ins(folder: Path, **changed: Any) -> dict[str, Any]:
    """A folder as Pyodide's distribution has it (its list's form from memory); shapely stands on another library, and
    scipy is not needed. `changed` are facts of the list's head. Returns the list."""
    entries: dict[str, Any] = {}
    for name in (*NEEDED, "libgeos", "scipy"):
        file, module = f"{name}-1.0-py3-none-any.whl", IMPORTED.get(name, name)
        wheel = zipped(
            {
                f"{module}/__init__.py": b'raise ImportError("a stand-in")\n',
                f"{name}-1.0.dist-info/METADATA": f"Metadata-Version: 2.1\nName: {name}\nVersion: 1.0\n".encode(),
                f"{name}-1.0.dist-info/WHEEL": b"Wheel-Version: 1.0\nRoot-Is-Purelib: true\nTag: py3-none-any\n",
                f"{name}-1.0.dist-info/RECORD": b"",
            }
        )
        (folder / file).write_bytes(wheel)
        entries[name] = {
            "name": name,
            "version": "1.0",
            "file_name": file,
            "install_dir": "site",
            "sha256": hashlib.sha256(wheel).hexdigest(),
            "package_type": "package",
            "imports": [module],
            "depends": {"shapely": ["numpy", "libgeos"], "scipy": ["numpy"]}.get(name, []),
            "unvendored_tests": False,
        }
    listed = {"info": json.loads(LOCK)["info"] | changed, "packages": entries}
    (folder / LIST).write_text(json.dumps(listed))
    return listed
