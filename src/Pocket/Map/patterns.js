// The patterns of the states, drawn on canvases from the same shapes that the pages use, in the colors of the theme in force.
// A state is told by its pattern first; the color only helps.

/** One tile of a pattern: its size in CSS pixels, the token of its line, the token of its wash, and how it is drawn. */
const tiles = {
  dry: {
    width: 10, height: 10, line: "--straw", wash: null,
    draw(pen) {
      pen.dot(2.5, 2.5, 1.2);
      pen.dot(7.5, 7.5, 1.2);
    },
  },
  fill: {
    width: 18, height: 10, line: "--water", wash: null,
    draw(pen) { pen.stroke("M1 3h9M10 8h7", 1.7); },
  },
  full: {
    width: 12, height: 6, line: "--water", wash: "--water-wash",
    draw(pen) { pen.stroke("M-6 3q3-3 6 0t6 0t6 0t6 0", 1.6); },
  },
  sown: {
    width: 13, height: 13, line: "--shoot", wash: "--shoot-wash",
    draw(pen) { pen.stroke("M6.5 12V6M6.5 8Q3 7 2.5 2.5M6.5 7Q10 6 10.5 2", 1.5); },
  },
  unknown: {
    width: 16, height: 16, line: "--ink-soft", wash: null,
    draw(pen) { pen.stroke("M5 6q0-3 3-3t3 2.6q0 2-3 3.4v1.5M8 12.6v1.2", 1.3); },
  },
};

/** Marks of single things: a box, a leaking box, a hazard, the strip. */
const marks = {
  box: { size: 14, line: "--ink", draw(pen) { pen.fill("M3 3h8v8H3z", "--paper"); pen.stroke("M3 3h8v8H3z", 1.6); } },
  leak: { size: 18, line: "--alarm", draw(pen) { pen.fill("M3 3h12v12H3z", "--paper"); pen.stroke("M3 3h12v12H3zM3 3l12 12M15 3L3 15", 1.8); } },
  hazard: { size: 22, line: "--alarm", draw(pen) { pen.fill("M11 2L20 19H2z", "--paper"); pen.stroke("M11 2L20 19H2zM11 8v5M11 15.4v1.2", 1.9); } },
  strip: { size: 26, line: "--ink", draw(pen) { pen.fill("M2 9h22v8H2z", "--paper"); pen.stroke("M2 9h22v8H2zM5 13h4M11 13h4M17 13h4", 1.7); } },
};

export const looks = Object.keys(tiles);

/** The value of a token of the theme in force. */
export function token(name) {
  return getComputedStyle(document.documentElement).getPropertyValue(name).trim() || "#000";
}

/** A canvas of so many CSS pixels at the density of the screen, and the few strokes that a pattern needs. */
function canvas(width, height, line) {
  const ratio = Math.max(2, Math.ceil(window.devicePixelRatio || 1));
  const sheet = document.createElement("canvas");
  sheet.width = width * ratio;
  sheet.height = height * ratio;
  const ink = sheet.getContext("2d", { willReadFrequently: true });
  ink.scale(ratio, ratio);
  ink.strokeStyle = ink.fillStyle = token(line);
  const pen = {
    wash(name) {
      ink.fillStyle = token(name);
      ink.fillRect(0, 0, width, height);
      ink.fillStyle = token(line);
    },
    dot(x, y, radius) {
      ink.beginPath();
      ink.arc(x, y, radius, 0, 2 * Math.PI);
      ink.fill();
    },
    stroke(path, thick) {
      ink.lineWidth = thick;
      ink.stroke(new Path2D(path));
    },
    fill(path, name) {
      ink.fillStyle = token(name);
      ink.fill(new Path2D(path));
      ink.fillStyle = token(line);
    },
  };
  return { pen, ratio, read: () => ink.getImageData(0, 0, sheet.width, sheet.height) };
}

/** Puts every pattern and mark into the map, or redraws them after the theme changed. */
export function addImages(map) {
  for (const [name, tile] of Object.entries(tiles)) {
    const { pen, ratio, read } = canvas(tile.width, tile.height, tile.line);
    if (tile.wash) pen.wash(tile.wash);
    tile.draw(pen);
    put(map, "look-" + name, read(), ratio);
  }

  for (const [name, mark] of Object.entries(marks)) {
    const { pen, ratio, read } = canvas(mark.size, mark.size, mark.line);
    mark.draw(pen);
    put(map, "mark-" + name, read(), ratio);
  }
}

function put(map, name, image, pixelRatio) {
  if (map.hasImage(name)) map.updateImage(name, image);
  else map.addImage(name, image, { pixelRatio });
}
