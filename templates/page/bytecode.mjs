// Run by Node.js when a page is built: the page's own Python compiles the page's own modules. Arguments: the folder of
// Pyodide's core, a ZIP archive of sources, the file to write (an archive with what each module became), and the core's
// list of packages.
import { readFileSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";

const [core, sources, target] = process.argv.slice(2, 5).map((path) => resolve(path));
const { loadPyodide } = await import(pathToFileURL(resolve(core, "pyodide.mjs")).href);
const pyodide = await loadPyodide({
  indexURL: core,
  lockFileContents: process.argv[5],
  env: { PYTHONHASHSEED: "0", HOME: "/home/pyodide" },
});
pyodide.FS.writeFile("/sources.zip", new Uint8Array(readFileSync(sources)));
pyodide.runPython(`
import importlib.util, marshal, types, zipfile
# Beside its source nothing is compared: whoever has this file has no other (PEP 552, unchecked).
head = importlib.util.MAGIC_NUMBER + (1).to_bytes(4, "little") + bytes(8)
# The tables of lines serve tracebacks, which no reader is shown, and are a third of what must travel: in their place
# stands "no line" (CPython's InternalDocs/code_objects.md, code 15) for each eight units of code, the last ones fewer.
def bare(code):
    parts = tuple(bare(each) if isinstance(each, types.CodeType) else each for each in code.co_consts)
    eights, rest = divmod(len(code.co_code) // 2, 8)
    return code.replace(co_linetable=b"\\xff" * eights + bytes([0xF7 + rest] if rest else []), co_consts=parts)
with zipfile.ZipFile("/sources.zip") as found, zipfile.ZipFile("/compiled.zip", "w") as made:
    for name in sorted(found.namelist()):
        code = compile(found.read(name), name.partition("/")[2], "exec", dont_inherit=True, optimize=0)
        made.writestr(name + "c", head + marshal.dumps(bare(code)))
`);
writeFileSync(target, pyodide.FS.readFile("/compiled.zip"));
process.exit(0);
