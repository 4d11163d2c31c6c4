// The lesson's engine in a Python that has begun: kit and lesson are unpacked, and what answers messages is given back.
export function engineIn(pyodide, kit, lesson, options) {
  pyodide.unpackArchive(kit, "zip", { extractDir: "/kit" });
  pyodide.unpackArchive(lesson, "zip", { extractDir: "/lesson" });
  const make = pyodide.runPython(`
import gc, os, sys
gc.disable()
sys.path.insert(0, "/kit")
os.chdir("/lesson")
sys.dont_write_bytecode = True
def make(options):
    import json
    from pathlib import Path
    from kit.page.at_rest import answering
    from kit.page.engine import Engine
    from kit.page.opened import without_notebook
    without_notebook()
    told = json.loads(options)
    engine = Engine(Path("lesson.ipynb"), offered=told["languages"], sliders=told["sliders"], cloth=told["cloth"], inks=told.get("inks", ()))
    return answering(engine)
make
`);
  return make(options);
}
