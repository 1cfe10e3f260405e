// A scale bar in black and white bands, like the stick in the field, and an arrow to north. North is always up.
const steps = [20, 50, 100, 200, 500, 1000, 2000];
const feet = 0.3048, mile = 1609.344;

/** Meters of one pixel in the middle of the map, measured across it. */
function pixel(map) {
  const y = map.getContainer().clientHeight / 2;
  const a = map.unproject([0, y]), b = map.unproject([100, y]);
  return a.distanceTo(b) / 100;
}

/** Round lengths with their words, longest last. */
function lengths({ metric, words }) {
  if (metric) return [...steps.map(m => [m, `${m} ${words.meters}`]), [5000, `5 ${words.kilometers}`], [10000, `10 ${words.kilometers}`]];
  return [...steps.map(f => [f * feet, `${f} ${words.feet}`]), [mile / 2, `½ ${words.miles}`], [mile, `1 ${words.miles}`], [2 * mile, `2 ${words.miles}`], [5 * mile, `5 ${words.miles}`]];
}

/** Keeps the bar of a map as long as the words beside it say. */
export function scaleBar(map, element, options) {
  const bar = document.createElement("span"), text = document.createElement("span"), north = document.createElement("span");
  bar.className = "map-scale-bar";
  text.className = "map-scale-text";
  north.className = "map-north";
  north.textContent = options.words.north;
  element.append(north, bar, text);
  const all = lengths(options);
  const set = () => {
    const one = pixel(map);
    const most = Math.min(150, map.getContainer().clientWidth / 3);
    const [meters, words] = all.filter(([m]) => m / one <= most).at(-1) ?? all[0];
    bar.style.width = Math.round(meters / one) + "px";
    text.textContent = words;
  };
  map.on("move", set);
  map.on("resize", set);
  map.on("load", set);
  return element;
}
