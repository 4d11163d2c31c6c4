"""The built wheel, installed alone in an empty environment, works as the checkout does.

The libraries the kit needs come from the running environment through a path file, so nothing is downloaded;
the kit itself comes from the wheel.
"""

from __future__ import annotations

import importlib.util
import json
import os
import re
import shutil
import subprocess
import sys
import sysconfig
import tarfile
import venv
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
pytestmark = pytest.mark.slow

needs_command = pytest.mark.skipif(importlib.util.find_spec("kit.cli") is None, reason="kit.cli is not written yet")


def run(*command: str | Path, cwd: Path) -> str:
    """What `command` printed; fails the test with its output when it exits non-zero."""
    quiet = {"PYTHONPATH", "PYTHONHOME", "VIRTUAL_ENV"}
    env = {name: value for name, value in os.environ.items() if name not in quiet}
    done = subprocess.run([str(c) for c in command], cwd=cwd, env=env, text=True, capture_output=True, timeout=300)
    assert done.returncode == 0, f"{command}\n{done.stdout}\n{done.stderr}"
    return done.stdout


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A wheel built from the source distribution, so that both are tried."""
    folder = tmp_path_factory.mktemp("dist")
    run(sys.executable, "-m", "build", "--no-isolation", "--outdir", folder, ROOT, cwd=folder)
    assert len(list(folder.glob("*.tar.gz"))) == 1
    (built,) = folder.glob("*.whl")
    return built


@pytest.fixture(scope="module")
def python(wheel: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The interpreter of a new environment that holds the wheel."""
    home = tmp_path_factory.mktemp("empty") / "venv"
    venv.create(home, with_pip=False, symlinks=os.name != "nt")
    python = home / ("Scripts" if os.name == "nt" else "bin") / "python"
    site = Path(run(python, "-c", "import sysconfig; print(sysconfig.get_path('purelib'))", cwd=home).strip())
    borrowed = {sysconfig.get_path("purelib"), sysconfig.get_path("platlib")}
    (site / "borrowed-libraries.pth").write_text("\n".join(sorted(borrowed)) + "\n")
    run(
        *(sys.executable, "-m", "pip", "--python", python, "install", "--quiet", "--no-deps", "--no-index"),
        *("--force-reinstall", wheel),
        cwd=home,
    )
    return python


def tell(python: Path, folder: Path, expression: str) -> object:
    """The value of `expression` in the new environment, run from `folder` with that folder off the path."""
    code = f"import json, pathlib, kit, kit.resources; print(json.dumps({expression}, default=str))"
    return json.loads(run(python, "-P", "-c", code, cwd=folder))


def of_readme_alone() -> set[str]:
    """Pictures in the folder of lessons that the README shows and no notebook does: they stay out of the wheel."""
    shown = set(re.findall(r"\(example_notebooks/([^)]+\.png)\)", (ROOT / "README.md").read_text("utf-8")))
    lessons = "".join(path.read_text("utf-8") for path in (ROOT / "example_notebooks").glob("*.ipynb"))
    return {name for name in shown if name not in lessons}


def files(folder: Path) -> set[str]:
    """Relative names of the files in `folder` that git would keep."""
    skipped = {"__pycache__", ".ipynb_checkpoints"}
    found = (path.relative_to(folder) for path in folder.rglob("*") if path.is_file() and ".lays." not in path.name)
    return {name.as_posix() for name in found if not skipped & set(name.parts)}


def test_the_wheel_carries_the_package_and_its_folders(wheel: Path) -> None:
    with zipfile.ZipFile(wheel) as archive:
        names = set(archive.namelist())
    assert {"kit/__init__.py", "kit/py.typed", "kit/units.py", "kit/resources.py"} <= names
    assert {f"kit/_templates/{name}" for name in files(ROOT / "templates")} <= names
    left = of_readme_alone()
    assert left == {"pictures/booklet.png"}
    assert {f"kit/_examples/{name}" for name in files(ROOT / "example_notebooks") - left} <= names
    assert not {f"kit/_examples/{name}" for name in left} & names
    roots = {name.split("/")[0] for name in names}
    assert roots == {"kit", "pattern_lesson_kit-0.1.0.dist-info"}


def test_the_source_carries_what_it_takes_to_build_and_to_check_and_nothing_that_was_made(wheel: Path) -> None:
    (packed,) = wheel.parent.glob("*.tar.gz")
    with tarfile.open(packed) as archive:
        names = {name.split("/", 1)[1] for name in archive.getnames() if "/" in name}
    roots = {name.split("/")[0] for name in names}
    kept = {"kit", "templates", "example_notebooks", "tests", ".ci", "Makefile", "LICENSE", "pyproject.toml"}
    assert roots == kept | {"README.md", "DEVELOPERS.md", "CHANGELOG.md", "PKG-INFO", ".gitignore"}
    assert {".ci/locked-run.txt", ".ci/locked-test.txt", "kit/py.typed", "templates/NOTICE.md"} <= names
    for folder in ("kit", "templates", "example_notebooks", "tests"):
        assert {f"{folder}/{name}" for name in files(ROOT / folder)} <= names
    made = ("__pycache__", ".ipynb_checkpoints", ".lays.", ".values.json", ".venv", ".hypothesis")
    assert not [name for name in names if any(part in name for part in made) and not name.startswith("tests/")]


def test_the_kit_comes_from_the_wheel(python: Path, tmp_path: Path) -> None:
    where = Path(str(tell(python, tmp_path, "kit.__file__")))
    assert where.is_relative_to(python.parent.parent)


@pytest.mark.parametrize(("which", "source"), [("templates", "templates"), ("examples", "example_notebooks")])
def test_its_folders_are_found_in_the_wheel(python: Path, tmp_path: Path, which: str, source: str) -> None:
    folder = Path(str(tell(python, tmp_path, f"kit.resources.{which}()")))
    assert folder.is_relative_to(python.parent.parent)
    left = of_readme_alone() if which == "examples" else set()
    assert files(folder) == files(ROOT / source) - left != set()
    for name in files(folder):
        assert (folder / name).read_bytes() == (ROOT / source / name).read_bytes(), name


def test_every_module_imports_from_the_wheel(python: Path, wheel: Path, tmp_path: Path) -> None:
    with zipfile.ZipFile(wheel) as archive:
        paths = [Path(n) for n in archive.namelist() if n.startswith("kit/") and n.endswith(".py")]
    modules = sorted(
        ".".join(p.with_suffix("").parts).removesuffix(".__init__")
        for p in paths
        if not {"_templates", "_examples", "__main__.py"} & set(p.parts)
    )
    assert {"kit.units", "kit.room.hub"} <= set(modules)
    if importlib.util.find_spec("jupyterhub") is None:  # the extra "hub", which is not to be had everywhere (.ci/hub)
        modules.remove("kit.room.hub")
    run(
        python,
        "-P",
        "-c",
        "import importlib, sys; [importlib.import_module(m) for m in sys.argv[1:]]",
        *modules,
        cwd=tmp_path,
    )


@needs_command
def test_a_new_lesson_starts_and_builds_from_the_wheel(python: Path, tmp_path: Path) -> None:
    command = python.parent / "lessonkit"
    run(command, "new", "demo", cwd=tmp_path)
    (notebook,) = tmp_path.rglob("*.ipynb")
    forms = ("--forms", "a4,html,epub")
    run(command, "build", notebook, "--size", "W4", "--units", "cm", *forms, "--out", tmp_path / "out", cwd=tmp_path)
    assert {"booklet-a4.pdf", "booklet.html", "booklet.epub", "pages-a4.pdf", "pattern.json"} <= files(tmp_path / "out")


@needs_command
def test_the_example_builds_from_the_wheel(python: Path, tmp_path: Path) -> None:
    examples = Path(str(tell(python, tmp_path, "kit.resources.examples()")))
    shutil.copytree(examples, tmp_path / "lessons")
    for laid in (ROOT / "example_notebooks").glob("tideline-wrap-top.lays.json"):
        shutil.copy2(laid, tmp_path / "lessons")  # what a build found in the checkout is not searched for again
    notebook = tmp_path / "lessons" / "tideline_wrap_top.ipynb"
    out = tmp_path / "out"
    command = (python.parent / "lessonkit", "build", notebook, "--forms", "a4", "--size", "W4", "--units", "cm")
    run(*command, "--out", out, cwd=tmp_path)
    assert (out / "booklet-a4.pdf").read_bytes().startswith(b"%PDF-")
    assert json.loads((out / "pattern.json").read_text("utf-8"))["pieces"]


@needs_command
def test_nbconvert_finds_the_booklet_exporter(python: Path, tmp_path: Path) -> None:
    code = "from nbconvert.exporters import get_exporter; print(get_exporter('booklet').__module__)"
    assert run(python, "-P", "-c", code, cwd=tmp_path).strip() == "kit.booklet.exporter"
