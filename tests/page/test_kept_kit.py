"""The kit of a page is kept, and made anew when anything of it is another."""

from __future__ import annotations

from pathlib import Path

import pytest

from kit.page import kept_kit


@pytest.fixture(autouse=True)
def made(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> list[tuple[str, ...]]:
    """What was made in earnest; the cache is the test's own."""
    monkeypatch.setenv("LESSONKIT_CACHE", str(tmp_path))
    asked: list[tuple[str, ...]] = []

    def files(languages: list[str], *, drawings: bool, booklet: bool, pages: bool) -> dict[str, bytes]:
        asked.append((*languages, str(drawings), str(booklet), str(pages)))
        return {"kit/a.py": f"A = {len(asked)}".encode(), "kit/data.csv": bytes(2000)}

    monkeypatch.setattr(kept_kit, "kit_files", files)
    return asked


def test_it_is_made_once(made: list[tuple[str, ...]]) -> None:
    first = kept_kit.kept_kit(["en"])
    assert kept_kit.kept_kit(["en"]) == first and len(made) == 1
    more = {"languages": ["en", "de"]}, {"languages": ["en"], "booklet": True}, {"languages": ["en"], "pages": True}
    for other in more:
        kept_kit.kept_kit(**other)  # type: ignore[arg-type]
    assert len(made) == 4


def test_another_source_or_package_is_made_anew(made: list[tuple[str, ...]], monkeypatch: pytest.MonkeyPatch) -> None:
    kept_kit.kept_kit(["en"])
    monkeypatch.setattr(kept_kit, "version", lambda name: "0.0.1")
    kept_kit.kept_kit(["en"])
    monkeypatch.setattr(kept_kit, "_KIT", kept_kit._KIT / "page")
    kept_kit.kept_kit(["en"])
    assert len(made) == 3


def test_what_is_damaged_is_made_anew(made: list[tuple[str, ...]], tmp_path: Path) -> None:
    first = kept_kit.kept_kit(["en"])
    (kept,) = tmp_path.iterdir()
    data = kept.read_bytes()
    at = data.index(b"kit/data.csv") + len("kit/data.csv") + 1
    turned = data[:at] + bytes([data[at] ^ 255]) + data[at + 1 :]
    for broken in (b"", data[: len(data) // 2], b"x" * len(data), turned):
        kept.write_bytes(broken)
        assert kept_kit.kept_kit(["en"])["kit/data.csv"] == first["kit/data.csv"]
    assert len(made) == 5
