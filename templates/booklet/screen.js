// The booklet on a phone or tablet: steps that tick off and remember, pictures that enlarge, a list of contents.
// Without this script the page reads and prints as it is; nothing here asks the network for anything.
(() => {
  "use strict";
  const data = JSON.parse(document.getElementById("screen-data").textContent);
  const say = (key, places = {}) =>
    data.words[key].replace(/\{(\w+)\}/g, (whole, name) => (name in places ? String(places[name]) : whole));

  const make = (tag, properties = {}, ...inside) => {
    const element = document.createElement(tag);
    for (const [name, value] of Object.entries(properties)) {
      if (name.startsWith("on")) element.addEventListener(name.slice(2), value);
      else if (value !== false) element.setAttribute(name, value === true ? "" : value);
    }
    element.append(...inside);
    return element;
  };
  const button = (label, onclick, properties = {}) => make("button", { type: "button", onclick, ...properties }, label);

  // ---- ticks ----------------------------------------------------------------------------------------------

  const place = `lessonkit/${document.body.dataset.lesson}/${document.body.dataset.edition}`;
  const shelf = (() => {
    try {
      window.localStorage.setItem("lessonkit/try", "1");
      window.localStorage.removeItem("lessonkit/try");
      return window.localStorage;
    } catch {
      return null; // private windows, or a browser told to keep nothing
    }
  })();
  const read = () => {
    try {
      const kept = JSON.parse(shelf.getItem(place) || "[]");
      return new Set(Array.isArray(kept) ? kept.map(String) : []);
    } catch {
      return new Set();
    }
  };
  const keep = () => {
    try {
      shelf.setItem(place, JSON.stringify([...done]));
    } catch {
      /* full, or taken away meanwhile: the tick still holds until the page closes */
    }
  };
  let done = read();

  const heading = (element) => {
    const found = element.querySelector("h2, h3, h4");
    if (!found) return "";
    const copy = found.cloneNode(true);
    copy.querySelectorAll(".time, .kind").forEach((each) => each.remove());
    copy.querySelectorAll(".number").forEach((each) => each.append(" "));
    return copy.textContent.replace(/\s+/g, " ").trim();
  };

  const steps = [...document.querySelectorAll("article.step[id]")].map((article) => {
    const key = article.dataset.step || article.id;
    const title = heading(article);
    const box = make("input", {
      type: "checkbox",
      "aria-label": say("done_step", { step: title }),
      onchange: () => {
        if (box.checked) done.add(key);
        else done.delete(key);
        keep();
        show();
      },
    });
    article.append(make("label", { class: "tick" }, box, make("span", {}, say("done"))));
    return { article, key, title, box };
  });

  const line = make("span", { class: "progress-line", id: "progress-line", role: "status" });
  const gauge = make("progress", { max: Math.max(steps.length, 1), value: 0, "aria-labelledby": "progress-line" });
  const show = () => {
    let count = 0;
    for (const step of steps) {
      const ticked = done.has(step.key);
      step.box.checked = ticked;
      step.article.classList.toggle("is-done", ticked);
      count += ticked;
    }
    line.textContent = say("progress", { done: count, total: steps.length });
    gauge.value = count;
  };
  window.addEventListener("storage", (event) => {
    if (event.key === place) {
      done = read();
      show();
    }
  });

  // ---- a window over the page -----------------------------------------------------------------------------

  const dialog = (className, label, ...inside) => {
    const found = make("dialog", { class: className, "aria-label": label }, ...inside);
    found.addEventListener("click", (event) => {
      if (event.target === found) found.close(); // the dimmed page around it
    });
    document.body.append(found);
    return found;
  };
  let opener = null;
  const open = (which) => {
    opener = document.activeElement;
    which.showModal();
    document.documentElement.classList.add("is-covered");
  };
  const closed = () => {
    document.documentElement.classList.remove("is-covered");
    if (opener && opener.isConnected) opener.focus({ preventScroll: true });
    opener = null;
  };

  // ---- contents -------------------------------------------------------------------------------------------

  const list = make("ol", { class: "contents-list" });
  const again = make("div", { class: "again" });
  const contents = dialog(
    "contents-window",
    say("contents"),
    make(
      "div",
      { class: "window-head" },
      make("h2", {}, say("contents")),
      button("×", () => contents.close(), { class: "round", "aria-label": say("close") }),
    ),
    make("nav", { "aria-label": say("contents") }, list),
    again,
  );
  contents.addEventListener("close", closed);

  const arrive = (target) => {
    const head = target.querySelector("h1, h2, h3") || target;
    head.tabIndex = -1;
    target.scrollIntoView();
    head.focus({ preventScroll: true });
  };
  const go = (target) => (event) => {
    event.preventDefault();
    opener = null;
    contents.close();
    turnTo(target);
    arrive(target);
    try {
      window.history.replaceState(null, "", `#${target.id}`);
    } catch {
      /* some browsers forbid it for a page opened from a file */
    }
  };
  const entry = (target, title, ticked = false) =>
    make("li", ticked ? { class: "is-done" } : {}, make("a", { href: `#${target.id}`, onclick: go(target) }, title));
  const listed = () => {
    list.replaceChildren();
    for (const section of document.querySelectorAll("main section[id]")) {
      const title = heading(section);
      if (!title) continue;
      const item = entry(section, title);
      const inner = steps.filter((step) => section.contains(step.article));
      if (inner.length) {
        item.append(make("ol", {}, ...inner.map((step) => entry(step.article, step.title, done.has(step.key)))));
      }
      list.append(item);
    }
    asked(false);
  };
  const asked = (asking) => {
    again.replaceChildren();
    if (!steps.length) return;
    if (!asking && alone < 0) again.append(button(say("one"), () => begin(), { class: "plain" }));
    if (!shelf) again.append(make("p", {}, say("forgets")));
    if (!asking) {
      again.append(button(say("again"), () => asked(true), { class: "plain" }));
      return;
    }
    const no = button(say("again_no"), () => asked(false), { class: "plain" });
    const yes = button(say("again_yes"), () => {
      done.clear();
      keep();
      show();
      listed();
    });
    again.append(make("p", {}, say("again_ask")), yes, no);
    no.focus();
  };

  // ---- one step at a time ---------------------------------------------------------------------------------

  let alone = -1; // which step is shown by itself; none: the whole booklet
  const before = button("‹", () => stand(alone - 1), { class: "plain round", "aria-label": say("before") });
  const after = button(say("next"), () => stand(alone + 1));
  const turning = make(
    "nav",
    { class: "turning", "aria-label": say("one"), hidden: true },
    before,
    after,
    button(say("all"), () => leave(), { class: "plain" }),
  );
  // The cover with the booklet's title waits too; who hears the page is told the title all the same.
  const title = document.querySelector("h1") || document.querySelector("title");
  const name = make("h1", { class: "for-ears" }, title ? title.textContent.trim() : "");
  const only = (at) => {
    document.querySelectorAll(".is-shown").forEach((each) => each.classList.remove("is-shown"));
    alone = at;
    turning.hidden = at < 0;
    if (at < 0) name.remove();
    else bar.append(name);
    document.documentElement.classList.toggle("is-alone", at >= 0);
    if (at < 0) return;
    for (let each = steps[at].article; each && each.tagName !== "MAIN"; each = each.parentElement) {
      each.classList.add("is-shown");
    }
    before.disabled = at === 0;
    after.disabled = at === steps.length - 1;
    fit();
  };
  const stand = (at) => {
    only(at);
    arrive(steps[at].article);
  };
  // The step that is on the screen, else the first that is not done yet.
  const begin = () => {
    const near = steps.findIndex((step) => {
      const box = step.article.getBoundingClientRect();
      return box.top < window.innerHeight && box.bottom > 0;
    });
    const open = steps.findIndex((step) => !done.has(step.key));
    opener = null;
    contents.close();
    stand(near >= 0 ? near : Math.max(open, 0));
  };
  const leave = () => {
    const last = steps[alone].article;
    only(-1);
    arrive(last);
  };
  // A link leads to another step, or out of the steps.
  const turnTo = (target) => {
    if (alone < 0 || !target) return;
    only(steps.findIndex((step) => step.article.contains(target)));
  };
  window.addEventListener("hashchange", () => {
    if (alone < 0) return;
    const target = document.getElementById(decodeURIComponent(window.location.hash.slice(1)));
    turnTo(target);
    if (target) target.scrollIntoView();
  });

  // ---- a picture, large -----------------------------------------------------------------------------------

  const most = 8;
  let scale = 1;
  let shown = null; // { picture, gap }
  const sheet = make("div", { class: "sheet" });
  const view = make("div", { class: "view", tabindex: "0", role: "group", "aria-label": say("picture") }, sheet);
  const caption = make("p", { class: "window-caption" });
  const larger = button("+", () => zoom(scale * 1.5), { class: "round", "aria-label": say("larger") });
  const smaller = button("−", () => zoom(scale / 1.5), { class: "round", "aria-label": say("smaller") });
  const whole = button(say("whole"), () => zoom(1), { class: "plain" });
  const enlarged = dialog(
    "picture-window",
    say("picture"),
    make(
      "div",
      { class: "window-head" },
      smaller,
      larger,
      whole,
      button("×", () => enlarged.close(), { class: "round", "aria-label": say("close") }),
    ),
    view,
    caption,
  );

  const zoom = (wanted, x = view.clientWidth / 2, y = view.clientHeight / 2) => {
    const before = scale;
    scale = Math.min(most, Math.max(1, wanted));
    const left = (view.scrollLeft + x) / before;
    const top = (view.scrollTop + y) / before;
    sheet.style.width = `${scale * 100}%`;
    sheet.style.height = `${scale * 100}%`;
    view.scrollLeft = left * scale - x;
    view.scrollTop = top * scale - y;
    larger.disabled = scale >= most;
    smaller.disabled = scale <= 1;
    if (document.activeElement === document.body || document.activeElement.disabled) view.focus();
  };
  const enlarge = (picture, words) => {
    const gap = make("span", { class: "gap", "aria-hidden": "true" });
    const box = picture.getBoundingClientRect();
    gap.style.width = `${box.width}px`;
    gap.style.height = `${box.height}px`;
    picture.replaceWith(gap); // the picture itself is shown, so that no id is there twice
    sheet.append(picture);
    caption.textContent = words;
    caption.hidden = !words;
    shown = { picture, gap };
    open(enlarged);
    zoom(1);
    view.focus();
  };
  enlarged.addEventListener("close", () => {
    if (shown) shown.gap.replaceWith(shown.picture);
    shown = null;
    closed();
  });
  enlarged.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const next = { "+": scale * 1.5, "=": scale * 1.5, "-": scale / 1.5, 0: 1 }[event.key];
    if (next === undefined) return;
    event.preventDefault();
    zoom(next);
  });

  const at = (event) => {
    const box = view.getBoundingClientRect();
    return [event.clientX - box.left, event.clientY - box.top];
  };
  view.addEventListener(
    "wheel",
    (event) => {
      event.preventDefault();
      zoom(scale * Math.exp(-event.deltaY * (event.ctrlKey ? 0.01 : 0.002)), ...at(event));
    },
    { passive: false },
  );
  let grip = null; // the mouse: where it took hold
  view.addEventListener("pointerdown", (event) => {
    if (event.pointerType !== "mouse" || event.button !== 0) return;
    grip = { x: event.clientX + view.scrollLeft, y: event.clientY + view.scrollTop };
    view.setPointerCapture(event.pointerId);
  });
  view.addEventListener("pointermove", (event) => {
    if (!grip) return;
    view.scrollLeft = grip.x - event.clientX;
    view.scrollTop = grip.y - event.clientY;
  });
  for (const name of ["pointerup", "pointercancel"]) view.addEventListener(name, () => (grip = null));
  let pinch = null; // two fingers: how far apart they were, and the scale then
  const apart = (touches) => {
    const [a, b] = touches;
    return {
      clientX: (a.clientX + b.clientX) / 2,
      clientY: (a.clientY + b.clientY) / 2,
      far: Math.max(1, Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY)),
    };
  };
  view.addEventListener(
    "touchstart",
    (event) => {
      if (event.touches.length === 2) pinch = { far: apart(event.touches).far, scale };
    },
    { passive: true },
  );
  view.addEventListener(
    "touchmove",
    (event) => {
      if (!pinch || event.touches.length !== 2) return;
      event.preventDefault();
      const now = apart(event.touches);
      zoom((pinch.scale * now.far) / pinch.far, ...at(now));
    },
    { passive: false },
  );
  view.addEventListener("touchend", () => (pinch = null));

  /** The picture of a figure that this screen shows. */
  const seen = (holder) => [...holder.querySelectorAll(":scope > svg, :scope > img")].find((one) => one.getBoundingClientRect().width > 0);

  for (const picture of document.querySelectorAll("figure > svg, figure > img, .teacher-picture > img")) {
    const holder = picture.parentElement;
    const said = holder.querySelector("figcaption, .caption");
    const title = picture.querySelector("title");
    const alt = (title ? title.textContent : picture.getAttribute("alt")) || "";
    if (holder.classList.contains("can-enlarge")) continue; // of two pictures for two screens the first stands for both
    const show = () => enlarge(seen(holder) || picture, said ? said.textContent : "");
    const label = alt ? say("enlarge", { picture: alt }) : say("enlarge_plain");
    holder.classList.add("can-enlarge");
    holder.classList.toggle("told", Boolean(said));
    holder.append(button("⤢", show, { class: "enlarge", "aria-label": label }));
    holder.addEventListener("click", (event) => {
      const one = event.target.closest("svg, img");
      if (one && one.parentElement === holder && !shown) {
        holder.querySelector(".enlarge").focus({ preventScroll: true });
        show();
      }
    });
  }

  // ---- tables wider than the screen: scrolled sideways, by keyboard too --------------------------------------

  const boxes = [...document.querySelectorAll("table")].map((table) => {
    const box = make("div", { class: "sideways", role: "group" });
    const holder = table.closest(".scrolls") || table;
    const named = table.getAttribute("aria-label") || (table.caption && table.caption.textContent);
    box.setAttribute("aria-label", named || heading(table.closest("section") || document.body));
    holder.replaceWith(box);
    box.append(table);
    return box;
  });
  const fit = () => {
    for (const box of boxes) {
      if (box.scrollWidth > box.clientWidth) box.tabIndex = 0;
      else box.removeAttribute("tabindex");
    }
  };
  window.addEventListener("resize", fit);

  // ---- the bar --------------------------------------------------------------------------------------------

  const bar = make(
    "header",
    { class: "bar" },
    button(say("contents"), () => {
      listed();
      open(contents);
    }),
  );
  if (steps.length) bar.append(line, gauge);
  document.body.prepend(bar);
  (document.querySelector("main") || document.body).after(turning);
  document.documentElement.classList.add("is-live");
  show();
  fit();
})();
