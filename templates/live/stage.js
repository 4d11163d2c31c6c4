// The buttons over a stage: which view is on show, and whether it fills the window. The views are drawn by their own
// scripts; shown large, each is given the class it wears when it fills the window by itself.

const OF_VIEW = { panel: "lessonkit-large-root", canvas: "lessonkit-canvas", player: "lessonkit-player" };
const FULL = { "lessonkit-large-root": "lessonkit-large-full", "lessonkit-player": "lessonkit-player-full" };
FULL["lessonkit-canvas"] = "lessonkit-canvas-full";

export default {
  render({ model, el }) {
    const words = model.get("words");
    const bar = document.createElement("div");
    bar.className = "lessonkit-stage-bar";
    bar.setAttribute("role", "group");
    bar.setAttribute("aria-label", words.title);
    const group = document.createElement("div");
    group.className = "lessonkit-stage-views";
    group.setAttribute("role", "group");
    group.setAttribute("aria-label", words.views);
    const buttons = new Map();
    const button = (text, parent, act) => {
      const made = document.createElement("button");
      made.type = "button";
      made.textContent = text;
      made.addEventListener("click", act);
      parent.append(made);
      return made;
    };
    const turn = (name) => {
      model.set("view", name);
      model.save_changes();
      if (model.get("large")) hold();
      dress();
    };
    for (const [name, text] of model.get("views")) buttons.set(name, button(text, group, () => turn(name)));
    const told = document.createElement("span");
    told.className = "lessonkit-stage-told";
    told.setAttribute("role", "status");
    bar.append(group, told);
    const wide = button(words.large, bar, () => fill(!model.get("large")));
    wide.className = "lessonkit-stage-large";
    const help = document.createElement("span");
    help.className = "lessonkit-stage-help";
    help.textContent = words.help;
    bar.append(help);
    el.append(bar);

    // ---- the whole window

    const root = () => bar.closest(".lessonkit-stage");
    const onShow = () => [...(root()?.querySelectorAll(Object.keys(FULL).map((name) => `.${name}`).join()) ?? [])];
    const shownView = () =>
      onShow().find((each) => each.classList.contains(OF_VIEW[model.get("view")]) && each.getClientRects().length);
    /** In a full window the keyboard is the view's, so that a clicker goes on in it, also where the page has taken it. */
    const keep = () => {
      const view = shownView();
      const free = !document.activeElement || document.activeElement.contains(root());
      if (!view || !model.get("large") || !free) return;
      (view.tabIndex >= 0 ? view : view.querySelector('[tabindex="0"]'))?.focus({ preventScroll: true });
      view.dispatchEvent(new PointerEvent("pointermove", { bubbles: true })); // buttons of a player rest after a while
    };
    let keeping = 0;
    /** Every view wears what it wears in a full window, or nothing of it; a view that comes later is dressed too. */
    const dress = () => {
      for (const view of onShow()) {
        for (const [name, full] of Object.entries(FULL)) {
          if (view.classList.contains(name)) view.classList.toggle(full, model.get("large"));
        }
      }
      keep();
    };
    const watch = new MutationObserver(dress);
    /** Until the view is there the stage itself has the keyboard: what is hidden hears nothing. */
    const hold = () => {
      const stage = root();
      if (!stage) return;
      stage.tabIndex = -1;
      stage.focus({ preventScroll: true });
    };
    const fill = (large) => {
      const stage = root();
      model.set("large", large);
      model.save_changes();
      if (!stage) return;
      stage.classList.toggle("lessonkit-stage-full", large);
      clearInterval(keeping);
      if (large) {
        hold();
        keeping = setInterval(keep, 200);
        watch.observe(stage, { childList: true, subtree: true, attributes: true, attributeFilter: ["style"] });
        stage.requestFullscreen?.().catch(() => {}); // where it is not allowed the window itself is filled
      } else {
        watch.disconnect();
        wide.focus({ preventScroll: true });
        if (document.fullscreenElement === stage) document.exitFullscreen();
      }
      dress();
    };
    const left = () => {
      if (!document.fullscreenElement && model.get("large")) fill(false);
    };
    const keys = (event) => {
      if (!model.get("large") || event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented) return;
      if (event.target.matches("input:not([type=range]):not([type=checkbox]), select, textarea")) return;
      const name = [...buttons.keys()][Number(event.key) - 1];
      if (event.key === "Escape") fill(false);
      else if (name) turn(name);
      else if (event.target === root() && event.key !== "Tab") {
        shownView()?.dispatchEvent(new KeyboardEvent("keydown", { key: event.key, cancelable: true }));
      } else return;
      event.preventDefault();
      event.stopPropagation();
    };
    const asked = (event) => fill(event.detail ?? !model.get("large"));
    let heard = null;
    /** The stage itself is there only once the page has put the buttons into it. */
    const settle = () => {
      const stage = root();
      if (!stage || heard === stage) return;
      heard = stage;
      stage.dataset.lmSuppressShortcuts = "true"; // the notebook's own keys would move cells
      stage.addEventListener("keydown", keys);
      stage.addEventListener("lessonkit-fill", asked);
    };
    requestAnimationFrame(settle);
    bar.addEventListener("pointerenter", settle);
    bar.addEventListener("focusin", settle);
    document.addEventListener("fullscreenchange", left);

    const draw = () => {
      for (const [name, each] of buttons) each.setAttribute("aria-pressed", String(name === model.get("view")));
      told.textContent = model.get("told");
      wide.textContent = model.get("large") ? words.leave : words.large;
    };
    model.on("change:view change:told change:large", draw);
    if (model.get("large")) fill(false); // a page loaded anew begins in its place
    draw();
    return () => {
      model.off("change:view change:told change:large", draw);
      watch.disconnect();
      clearInterval(keeping);
      document.removeEventListener("fullscreenchange", left);
      heard?.removeEventListener("keydown", keys);
      heard?.removeEventListener("lessonkit-fill", asked);
    };
  },
};
