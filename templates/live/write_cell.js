// Writing a cell into the notebook the way a person would, through the page: the canvas needs nothing installed.
//
// The cell that is to be followed is clicked, the notebook's own "insert a cell below" is pressed, the text is pasted
// into the new cell's editor and read back; only when it stands there word for word is it run. Whatever does not go as
// in JupyterLab or Notebook gives "", and the reader is shown the text to copy.

const PATIENCE = 3000; // ms

/** What `found` gives as soon as it gives something, or null. */
async function until(found, patience = PATIENCE) {
  const end = performance.now() + patience;
  for (;;) {
    const got = found();
    if (got || performance.now() > end) return got || null;
    await new Promise((resolve) => setTimeout(resolve, 30));
  }
}

const editorOf = (cell) => cell.querySelector(".cm-content");

/** The editor's own object, where the page lets it be found. */
const viewOf = (content) => content?.cmTile?.root?.view ?? content?.cmTile?.view ?? null;

/** What stands in a cell. */
function textIn(cell) {
  const content = editorOf(cell);
  if (!content) return "";
  const view = viewOf(content);
  if (view?.state?.doc) return view.state.doc.toString();
  return [...content.querySelectorAll(".cm-line")].map((line) => line.textContent).join("\n");
}

/** Put `text` into an empty cell by one way after another, until it stands there word for word. */
async function fill(cell, text) {
  const content = await until(() => editorOf(cell));
  if (!content) return false;
  const ways = [
    () => {
      const data = new DataTransfer();
      data.setData("text/plain", text);
      content.dispatchEvent(new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }));
    },
    () => viewOf(content)?.dispatch({ changes: { from: 0, to: viewOf(content).state.doc.length, insert: text } }),
    () => {
      document.execCommand("selectAll");
      document.execCommand("insertText", false, text);
    },
  ];
  for (const way of ways) {
    content.focus({ preventScroll: true });
    try {
      way();
    } catch {} // the next way may do
    if (await until(() => textIn(cell) === text, 300)) return true;
  }
  return false;
}

/** What a person's click on something is made of. */
function click(on) {
  for (const kind of ["mousedown", "mouseup", "click"]) {
    on.dispatchEvent(new MouseEvent(kind, { bubbles: true, cancelable: true, button: 0, view: window }));
  }
}

/** Press one of the notebook's own buttons, or its key where the button is not shown. */
function press(book, command, key) {
  const panel = book.closest(".jp-NotebookPanel, .jp-MainAreaWidget, body") ?? document;
  const button = panel.querySelector(`.jp-Toolbar [data-command="${command}"]`) ?? panel.querySelector(`[data-command="${command}"]`);
  if (button) {
    click(button);
    return;
  }
  const code = key.key.length === 1 ? key.key.toUpperCase().charCodeAt(0) : 13;
  const active = book.querySelector(".jp-Cell.jp-mod-active") ?? book;
  active.dispatchEvent(new KeyboardEvent("keydown", { ...key, keyCode: code, bubbles: true, cancelable: true }));
}

/** Make `cell` the active one. */
async function activate(cell) {
  click(cell.querySelector(".jp-InputPrompt") ?? cell);
  return until(() => cell.classList.contains("jp-mod-active"), 500);
}

/** The cell that holds the step `name`; the last one when it stands in several. */
function cellOf(cells, name) {
  const line = new RegExp(`^def ${name}\\(`, "m");
  return cells.filter((cell) => cell.classList.contains("jp-CodeCell") && line.test(textIn(cell))).at(-1) ?? null;
}

/** Write `text` in a new cell below that of the step `follows` ("": below the cell `host` is shown in) and run it.
 * Gives "ran"; "written" when it stands there but did not run; "" when the page does not allow it. */
async function writeCell(host, text, follows) {
  const book = host.closest(".jp-Notebook");
  const own = host.closest(".jp-Cell");
  if (!book || !own) return "";
  const all = () => [...book.querySelectorAll(".jp-Cell")];
  const before = all();
  const target = follows ? cellOf(before, follows) : own;
  if (!target || !(await activate(target))) return "";
  press(book, "notebook:insert-cell-below", { key: "b", code: "KeyB" });
  const fresh = await until(() => {
    const cells = all();
    const next = cells[cells.indexOf(target) + 1];
    return next && !before.includes(next) && next.classList.contains("jp-CodeCell") ? next : null;
  });
  if (!fresh) return "";
  if (textIn(fresh).trim() || !(await fill(fresh, text))) {
    const bin = (await activate(fresh)) && fresh.querySelector('[data-command="cell-toolbar:delete"]');
    if (bin) click(bin);
    return "";
  }
  if (!(await activate(fresh))) return "written";
  press(book, "notebook:run-cell-and-select-next", { key: "Enter", code: "Enter", shiftKey: true });
  const started = await until(() => /\[(\*|\d+)\]/.test(fresh.querySelector(".jp-InputPrompt")?.textContent ?? ""));
  return started ? "ran" : "written";
}
