// Names on the map as plain text over it: no font files and no glyph service are needed, and a name is never shortened. Where a
// field is too small on the screen for its name its code stands there; where even that would lie on another label, nothing does.
// The same names are in the table under the map, so that the whole layer is left out for those who listen.

const gap = 2;

export class Labels {
  /** @param map the drawing library's map
   *  @param layer the element that the labels are laid in */
  constructor(map, layer) {
    this.map = map;
    this.layer = layer;
    this.labels = [];
    this.place = this.place.bind(this);
    map.on("move", this.place);
    map.on("resize", this.place);
  }

  /** Takes the fields and what else has a name; the largest field is set first. */
  show(features) {
    this.layer.replaceChildren();
    this.labels = features
      .map(feature => this.make(feature))
      .filter(label => label !== null)
      .sort((a, b) => b.weight - a.weight);
    this.place();
  }

  make(feature) {
    const { kind, code, name, word } = feature.properties;
    const box = bounds(feature.geometry);
    if (kind === "field") {
      const element = this.element("map-label map-label-field");
      return { element, box, weight: 1 + size(box), texts: [[name, word], [name], [code]], at: middle(box) };
    }

    if (kind === "hazard" || kind === "strip") {
      const element = this.element("map-label map-label-" + kind);
      return { element, box, weight: kind === "hazard" ? 0.5 : 0.4, texts: [[name]], at: middle(box), free: true };
    }

    return null;
  }

  element(classes) {
    const element = document.createElement("div");
    element.className = classes;
    this.layer.append(element);
    return element;
  }

  /** Lays every label anew: the richest text that fits into its field, else a shorter one, else none. */
  place() {
    const taken = [];
    const { clientWidth: width, clientHeight: height } = this.layer;
    for (const label of this.labels) {
      const at = this.map.project(label.at);
      const fits = at.x > -20 && at.y > -20 && at.x < width + 20 && at.y < height + 20 && this.fit(label, at, taken);
      label.element.hidden = !fits;
    }
  }

  fit(label, at, taken) {
    const room = label.free ? null : this.room(label.box);
    for (const lines of label.texts) {
      write(label.element, lines);
      label.element.hidden = false;
      const w = label.element.offsetWidth, h = label.element.offsetHeight;
      // The code, shorter than which nothing is, may stand over the edge of a small field.
      if (room && lines !== label.texts.at(-1) && (w > room.width - gap || h > room.height - gap)) continue;
      const left = at.x - w / 2, top = label.free ? at.y + 12 : at.y - h / 2;
      const rect = { left, top, right: left + w, bottom: top + h };
      if (taken.some(t => t.left < rect.right && rect.left < t.right && t.top < rect.bottom && rect.top < t.bottom)) continue;
      label.element.style.transform = `translate(${Math.round(left)}px, ${Math.round(top)}px)`;
      taken.push(rect);
      return true;
    }

    return false;
  }

  /** How large a field is on the screen. */
  room([west, south, east, north]) {
    const a = this.map.project([west, north]), b = this.map.project([east, south]);
    return { width: Math.abs(b.x - a.x), height: Math.abs(b.y - a.y) };
  }
}

/** One line of text for each part, written as text and never as markup: names are what people type. */
function write(element, lines) {
  if (element.dataset.lines === lines.join("\n")) return;
  element.dataset.lines = lines.join("\n");
  element.replaceChildren(...lines.map((line, index) => {
    const part = document.createElement(index === 0 ? "b" : "span");
    part.textContent = line;
    return part;
  }));
}

/** West, south, east and north of a geometry. */
export function bounds(geometry) {
  const box = [Infinity, Infinity, -Infinity, -Infinity];
  const visit = coordinates => {
    if (typeof coordinates[0] === "number") {
      box[0] = Math.min(box[0], coordinates[0]);
      box[1] = Math.min(box[1], coordinates[1]);
      box[2] = Math.max(box[2], coordinates[0]);
      box[3] = Math.max(box[3], coordinates[1]);
    } else {
      coordinates.forEach(visit);
    }
  };
  visit(geometry.coordinates);
  return box;
}

/** The box around several. */
export function around(boxes) {
  return boxes.reduce((all, box) => [Math.min(all[0], box[0]), Math.min(all[1], box[1]), Math.max(all[2], box[2]), Math.max(all[3], box[3])]);
}

function middle([west, south, east, north]) {
  return [(west + east) / 2, (south + north) / 2];
}

function size([west, south, east, north]) {
  return (east - west) * (north - south);
}
