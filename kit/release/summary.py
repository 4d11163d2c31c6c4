"""The release's summary for programs, `release.json`, and the checksums of its files.

`release.schema.json` beside this file says its shape as a JSON Schema (draft 2020-12); it travels with every release.
Lengths are in mm.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from kit.cloth.yardage import Yardage
from kit.lesson.pattern import Pattern
from kit.release.gate import Reason

FORMAT = "pattern-lesson-kit release"
VERSION = 1
SUMMARY, SCHEMA, SUMS = "release.json", "release.schema.json", "SHA256SUMS"


@dataclass(frozen=True)
class FileMade:
    """One file of a release: its `data`; what `kind` it is; the `language` of its words and the `size` it is of ("" for
    none, or all); `pages` of a PDF, and of a picture what it shows (`alt`)."""

    data: bytes
    kind: str
    language: str = ""
    size: str = ""
    pages: int = 0
    alt: str = ""


def schema_text() -> str:
    """The JSON Schema of release.json."""
    return (Path(__file__).parent / SCHEMA).read_text(encoding="utf-8")


def summary_json(
    pattern: Pattern,
    sizes: Sequence[str],
    files: Mapping[str, FileMade],
    checks: Mapping[str, str],
    waived: Sequence[Reason],
    cloth: Iterable[Yardage],
    moment: str,
) -> dict[str, Any]:
    """What release.json holds. `checks` says of each whether it "passed", was "waived" or "skipped"."""
    info = pattern.lesson
    names = dict.fromkeys(reason.name for reason in waived)
    return {
        "format": FORMAT,
        "version": VERSION,
        "unit": "mm",
        "lesson": {
            "title": info.title,
            "slug": info.slug,
            "edition": info.edition,
            "date": info.date,
            "author": info.author,
            "licence": info.licence,
            "language": info.language,
        },
        "moment": moment,
        "drawn_in": pattern.body.name,
        "sizes": list(sizes),
        "languages": list(dict.fromkeys(made.language for made in files.values() if made.language)),
        "checks": dict(checks),
        "waived": [
            {"name": name, "reasons": [str(reason) for reason in waived if reason.name == name]} for name in names
        ],
        "cloth_to_buy": [
            {
                "cloth": entry.cloth,
                "width": round(entry.width, 3),
                "sizes": [
                    {
                        "size": amount.size,
                        "laid": None if amount.trouble else round(amount.laid, 3),
                        "length": None if amount.trouble else round(amount.length, 3),
                        "folds": list(amount.folds),
                    }
                    for amount in entry.amounts
                ],
            }
            for entry in cloth
        ],
        "files": [
            {
                "path": path,
                "kind": made.kind,
                "language": made.language or None,
                "size": made.size or None,
                "pages": made.pages or None,
                "alt": made.alt or None,
                "bytes": len(made.data),
                "sha256": hashlib.sha256(made.data).hexdigest(),
            }
            for path, made in sorted(files.items())
        ],
    }


def summary_text(data: dict[str, Any]) -> str:
    return json.dumps(data, ensure_ascii=False, indent=1, allow_nan=False) + "\n"


def sums_text(files: Mapping[str, bytes]) -> str:
    """A line for each file as the command sha256sum of GNU coreutils writes and checks it."""
    return "".join(f"{hashlib.sha256(data).hexdigest()}  {path}\n" for path, data in sorted(files.items()))
