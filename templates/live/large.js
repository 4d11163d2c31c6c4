// A lesson shown large: one picture, its sentence, a few sliders. The kernel draws; the page asks for one move at a time
// and shows the number under the finger at once only where the kernel has answered it.

const make = (tag, name, text = "") => {
  const made = document.createElement(tag);
  if (name) made.className = `lessonkit-large-${name}`;
  if (text) made.textContent = text;
  return made;
};

const NEXT = ["PageDown", "ArrowRight", " ", "Enter"];
const BACK = ["PageUp", "ArrowLeft", "Backspace"];

export default {
  render({ model, el }) {
    const words = model.get("words");
    const root = make("div", "root");
    root.tabIndex = 0;
    root.setAttribute("role", "group");
    root.setAttribute("aria-label", words.title);
    const open = make("button", "open", words.open);
    const scene = make("div", "scene");
    const told = make("div", "told");
    const label = make("div", "label");
    const title = make("h2", "title");
    const sentence = make("div", "words");
    const message = make("div", "message");
    message.setAttribute("role", "status");
    const picture = make("div", "picture");
    const rail = make("div", "sliders");
    const bar = make("div", "bar");
    told.append(label, title, sentence, message);
    scene.append(told, picture, rail);
    const button = (key, act) => {
      const made = make("button", "", words[key]);
      made.addEventListener("click", act);
      return made;
    };
    const back = button("back", () => go(-1));
    const next = button("next", () => go(1));
    const place = make("span", "place");
    const look = make("select", "");
    look.setAttribute("aria-label", words.look);
    for (const [name, text] of model.get("looks")) {
      const option = make("option", "", text);
      option.value = name;
      look.append(option);
    }
    look.addEventListener("change", () => wear(look.value));
    const hide = button("sliders", () => root.classList.toggle("lessonkit-large-bare"));
    const leave = button("leave", () => show(false));
    bar.append(back, place, next, look, hide, leave, make("span", "help", words.help));
    root.append(open, scene, bar);
    el.append(root);

    // ---- going, and how it looks

    const go = (by) => {
      const count = model.get("shown").count ?? 0;
      const to = Math.min(Math.max(model.get("index") + by, 0), count);
      if (to === model.get("index")) return;
      model.set("index", to);
      model.save_changes();
    };
    const wear = (name) => {
      model.set("look", name);
      model.save_changes();
    };
    const show = (large) => {
      const stage = root.closest(".lessonkit-stage"); // on a stage it is the stage that fills the window
      if (stage) return stage.dispatchEvent(new CustomEvent("lessonkit-fill", { detail: large }));
      root.classList.toggle("lessonkit-large-full", large);
      if (large) {
        root.requestFullscreen?.().catch(() => {}); // where it is not allowed the window itself is filled
        root.focus({ preventScroll: true });
      } else if (document.fullscreenElement === root) document.exitFullscreen();
    };
    const left = () => {
      if (!document.fullscreenElement && !root.closest(".lessonkit-stage")) root.classList.remove("lessonkit-large-full");
    };
    open.addEventListener("click", () => show(true));
    document.addEventListener("fullscreenchange", left);
    root.addEventListener("keydown", (event) => {
      const slider = event.target.tagName === "INPUT";
      const pressed = event.target.tagName === "BUTTON" || event.target.tagName === "SELECT";
      const page = event.key === "PageDown" || event.key === "PageUp"; // a clicker's keys go on wherever one stands
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      if ((slider || pressed) && !page && event.key !== "Escape") return event.stopPropagation();
      if (NEXT.includes(event.key)) go(1);
      else if (BACK.includes(event.key)) go(-1);
      else if (event.key === "Home") go(-1e6);
      else if (event.key === "End") go(1e6);
      else if (event.key === "Escape") show(false);
      else if (event.key === "b" || event.key === ".") {
        const names = model.get("looks").map(([name]) => name);
        wear(names[(names.indexOf(model.get("look")) + 1) % names.length]);
      } else if (event.key === "h") root.classList.toggle("lessonkit-large-bare");
      else if (event.key === "f") show(!root.classList.contains("lessonkit-large-full"));
      else return;
      event.preventDefault();
      event.stopPropagation(); // the notebook has keys of its own
    });

    // ---- sliders: one question at a time, the last one wins

    let turn = 0;
    let asked = false;
    let wanted = null;
    let held = "";
    const ask = () => {
      if (asked || !wanted) return;
      asked = true;
      turn += 1;
      model.send({ do: "move", turn, ...wanted });
      wanted = null;
    };
    const rows = new Map();
    const furnish = () => {
      const sliders = model.get("sliders");
      if ([...rows.keys()].join() !== sliders.map((one) => one.name).join()) {
        rows.clear();
        rail.replaceChildren();
        for (const one of sliders) {
          const row = make("label", "row");
          const input = make("input", "");
          input.type = "range";
          const value = make("output", "value");
          row.append(make("span", "name", one.label), value, input);
          input.addEventListener("input", () => {
            held = one.name;
            wanted = { name: one.name, number: Number(input.value) };
            ask();
          });
          input.addEventListener("change", () => {
            held = "";
            model.send({ do: "rest" });
          });
          rows.set(one.name, { input, value });
          rail.append(row);
        }
      }
      for (const one of sliders) {
        const { input, value } = rows.get(one.name);
        Object.assign(input, { min: one.least, max: one.most, step: one.step });
        if (held !== one.name) input.value = one.number;
        value.textContent = one.text;
        input.setAttribute("aria-valuetext", one.text);
      }
    };

    // ---- what the kernel drew

    let drawn = null;
    const draw = () => {
      const shown = model.get("shown");
      if (shown.turn === turn) {
        asked = false;
        ask();
      }
      root.classList.toggle("lessonkit-large-stale", !!shown.stale);
      label.textContent = [shown.label, shown.part].filter(Boolean).join(" · ");
      title.textContent = shown.title ?? "";
      sentence.replaceChildren(...(shown.words ?? []).map((text) => make("p", "", text)));
      if (drawn !== shown.svg) {
        drawn = shown.svg;
        picture.innerHTML = shown.svg ?? ""; // written by the kit's own pen, which escapes what a lesson says
      }
      place.textContent = `${shown.index ?? 0} / ${shown.count ?? 0}`;
      back.disabled = !(shown.index > 0);
      next.disabled = !(shown.index < shown.count);
      fit();
    };
    /** The sentence in the largest type that leaves it whole; never under 28 px of a screen 1080 high. */
    const fit = () => {
      for (const size of [1, 0.9, 0.8, 0.72]) {
        told.style.setProperty("--lessonkit-large-fit", size);
        if (told.scrollHeight <= told.clientHeight + 1) return;
      }
    };
    const dress = () => {
      const name = model.get("look");
      look.value = name;
      root.dataset.look = name;
      const ground = model.get("looks").find(([each]) => each === name)?.[2];
      root.style.setProperty("--lessonkit-large-ground", ground || "#14191d");
    };
    const say = () => {
      message.textContent = model.get("message");
    };
    const size = new ResizeObserver(fit);
    size.observe(scene);
    const hears = { "change:shown": draw, "change:sliders": furnish, "change:look": dress, "change:message": say };
    for (const [what, act] of Object.entries(hears)) model.on(what, act);
    dress();
    furnish();
    draw();
    say();
    return () => {
      for (const [what, act] of Object.entries(hears)) model.off(what, act);
      document.removeEventListener("fullscreenchange", left);
      size.disconnect();
    };
  },
};
