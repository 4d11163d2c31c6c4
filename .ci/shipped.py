"""What a reader's machine gets: every library of .ci/locked-run.txt that is installed here, with its licence and size.

    .venv/bin/python .ci/shipped.py

The licence is what the library says of itself (PEP 639, or the classifiers before it), the size what its files take on
the disk. Known faults of libraries (an audit) are not looked for: that asks a service for each of them.
"""

from __future__ import annotations

import re
import sys
from collections import defaultdict
from importlib import metadata
from pathlib import Path
from typing import NamedTuple

from packaging.requirements import Requirement

LOCK = Path(__file__).with_name("locked-run.txt")


class Library(NamedTuple):
    name: str
    version: str
    licence: str
    size: int  # bytes


def locked() -> dict[str, str]:
    """{name: version} of what the lock has for this Python and this system."""
    found: dict[str, str] = {}
    for line in re.findall(r"(?m)^([\w.-]+==.*?) \\$", LOCK.read_text("utf-8")):
        need = Requirement(line)
        if need.marker is None or need.marker.evaluate():
            found[need.name] = next(iter(need.specifier)).version
    return found


def licence(of: metadata.Distribution) -> str:
    """What a library says of its licence, in one line; "" where it says nothing."""
    told = of.metadata
    if expression := told.get("License-Expression"):
        return str(expression)
    classified = [c.rpartition(" :: ")[2] for c in told.get_all("Classifier") or () if c.startswith("License :: ")]
    classified = [c for c in classified if c != "OSI Approved"]
    return " or ".join(classified) or str(told.get("License") or "").strip().partition("\n")[0]


def shipped() -> list[Library]:
    """The libraries that are locked for this system and installed, by name, each in the version that is here."""
    found = []
    for name in sorted(locked()):
        try:
            there = metadata.distribution(name)
        except metadata.PackageNotFoundError:
            continue
        files = (Path(str(there.locate_file(file))) for file in there.files or ())
        size = sum(file.stat().st_size for file in files if file.suffix != ".pyc" and file.is_file())
        found.append(Library(name, there.version, licence(there), size))
    return found


def main() -> int:
    """Prints; 1 where a library is missing or not the one that was locked."""
    libraries, versions = shipped(), locked()
    groups: dict[str, list[str]] = defaultdict(list)
    for each in libraries:
        groups[each.licence or "says none"].append(each.name)
    for said, names in sorted(groups.items(), key=lambda group: (-len(group[1]), group[0])):
        print(f"{len(names):4} {said}: {', '.join(names)}")
    size = sum(each.size for each in libraries) / 1e6
    large = sorted(libraries, key=lambda each: -each.size)[:5]
    print(f"{len(libraries)} libraries, {size:.0f} MB without compiled code, of which", end=" ")
    print(", ".join(f"{each.name} {each.size / 1e6:.0f}" for each in large))
    other = [each for each in libraries if each.version != versions[each.name]]
    for each in other:
        print(f"{each.name} is {each.version} here, and locked as {versions[each.name]}")
    if missing := sorted(versions.keys() - {each.name for each in libraries}):
        print("not installed:", ", ".join(missing))
    return 1 if other or missing else 0


if __name__ == "__main__":
    sys.exit(main())
