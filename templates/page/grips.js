// A measure taken hold of in the picture: its end is dragged along its direction, and its slider goes with it. Sliders
// and keys do the same; the grips are for a hand.
const SVG = "http://www.w3.org/2000/svg";
const HELD = 22, SEEN = 7; // CSS px: a target of 44, and the ring in it

export class Grips {
  constructor(picture, moved) {
    this.picture = picture; // the place of the picture, which stays while pictures come and go
    this.moved = moved; // (name, step of the slider)
    this.held = null;
    picture.addEventListener("pointermove", (event) => this.drag(event));
    for (const end of ["pointerup", "pointercancel", "lostpointercapture"]) picture.addEventListener(end, (event) => this.drop(event));
  }

  show(svg, grips, sliders) {
    const matrix = svg.getScreenCTM();
    if (!matrix) return;
    for (const grip of grips) {
      const slider = sliders.find((each) => each.name === grip.name);
      if (!slider || slider.first >= slider.last) continue;
      const place = document.createElementNS(SVG, "g");
      place.setAttribute("class", this.held?.grip.name === grip.name ? "grip held" : "grip");
      place.dataset.grip = grip.name;
      for (const [kind, size] of [["reach", HELD], ["ring", SEEN]]) {
        const round = document.createElementNS(SVG, "circle");
        round.setAttribute("class", kind);
        round.setAttribute("cx", grip.at[0]);
        round.setAttribute("cy", grip.at[1]);
        round.setAttribute("r", size / matrix.a);
        place.append(round);
      }
      place.addEventListener("pointerdown", (event) => this.take(event, grip, slider, svg));
      svg.append(place);
    }
  }

  take(event, grip, slider, svg) {
    if (event.button !== 0) return;
    event.preventDefault();
    // The picture is fitted anew as it grows; the hand goes on in the measure it began with.
    const back = svg.getScreenCTM().inverse();
    this.held = { id: event.pointerId, grip, slider, back, from: this.place(event, back), at: slider.at };
    this.picture.setPointerCapture(event.pointerId);
    this.picture.classList.add("dragged");
  }

  place(event, back) {
    const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(back);
    return [point.x, point.y];
  }

  drag(event) {
    const held = this.held;
    if (!held || event.pointerId !== held.id) return;
    const [x, y] = this.place(event, held.back);
    const { way, rate } = held.grip, { value, size, first, last } = held.slider;
    const wanted = value + ((x - held.from[0]) * way[0] + (y - held.from[1]) * way[1]) / rate;
    const at = Math.min(Math.max(Math.round(wanted / size), first), last);
    if (at === held.at) return;
    held.at = at;
    this.moved(held.grip.name, at);
  }

  drop(event) {
    if (!this.held || event.pointerId !== this.held.id) return;
    this.held = null;
    this.picture.classList.remove("dragged");
    this.picture.querySelector(".grip.held")?.classList.remove("held");
  }
}
