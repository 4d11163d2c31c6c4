// What the lesson says beside its picture. Texts are set as text; only the engine's own pictures are markup, read as
// SVG, and nothing in them can run.
export const $ = (id) => document.getElementById(id);

export function made(kind, text = "", name = "") {
  const element = document.createElement(kind);
  if (text) element.textContent = text;
  if (name) element.className = name;
  return element;
}

export function drawn(svg) {
  const read = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
  if (read.nodeName !== "svg") return null;
  for (const each of read.querySelectorAll("script, foreignObject, a")) each.remove();
  read.setAttribute("preserveAspectRatio", "xMidYMid meet");
  return document.importNode(read, true);
}

export function showFindings(told, words) {
  const place = $("found");
  const list = made("ul", "", "found");
  for (const each of told.findings) {
    const line = made("li");
    line.append(made("span", `${each.word}. `, each.level), each.said);
    list.append(line);
  }
  place.replaceChildren(...(told.passed ? [made("p", `✓ ${told.passed}`, "met")] : []), ...(told.findings.length ? [list] : []));
  table("finished", told.finished.map((row) => [row.name, row.size, row.ease]));
  table("cloth", told.cloth.rows.map((row) => [row.cloth, row.width, row.length]));
  $("cloth").hidden = !told.cloth.rows.length;
  $("cloth").querySelector("p").textContent = told.cloth.note;
}

function table(id, rows) {
  $(id).hidden = !rows.length;
  $(id).querySelector(".scrolls").setAttribute("aria-label", $(id).querySelector("h2").textContent);
  $(id).querySelector("tbody").replaceChildren(
    ...rows.map((row) => {
      const line = made("tr");
      const head = made("th", row[0]);
      head.scope = "row";
      line.append(head, ...row.slice(1).map((text, at) => made("td", text, at ? "quiet" : "")));
      return line;
    }),
  );
}

export function showExercises(tasks, words, startAgain) {
  $("exercises").hidden = !tasks.length;
  const place = $("exercises").querySelector("div");
  place.replaceChildren(
    ...tasks.map((task) => {
      const box = made("section");
      box.id = `exercise-${task.key}`;
      box.append(made("h3", task.heading), made("p", task.task), made("ul", "", "goals"), made("p", "", "met"));
      const start = made("button", words.start);
      start.type = "button";
      start.addEventListener("click", startAgain);
      box.append(start);
      if (task.hints.length) {
        const hint = made("button", words.hint);
        const hints = made("ul");
        hint.type = "button";
        let shown = 0;
        hint.addEventListener("click", () => {
          if (shown < task.hints.length) hints.append(made("li", task.hints[shown++]));
          if (shown === task.hints.length) {
            hint.textContent = words.no_hint;
            hint.disabled = true;
          }
        });
        box.append(" ", hint, hints);
      }
      return box;
    }),
  );
}

export function showResults(results, tasks) {
  for (const each of results) {
    const box = $(`exercise-${each.key}`);
    if (!box) continue;
    box.querySelector(".goals").replaceChildren(
      ...each.goals.map((goal) => {
        const line = made("li");
        line.append(made("span", `${goal.met ? "✓" : "○"} ${goal.state} `, goal.met ? "met" : "open"), goal.said);
        return line;
      }),
    );
    const task = tasks.find((one) => one.key === each.key);
    box.querySelector("p.met").textContent = each.solved && task ? task.done : "";
  }
}
