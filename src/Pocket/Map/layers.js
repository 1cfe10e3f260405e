// What is drawn, from the ground up: paper, the farm's own tile source if it has set one, fields by state, checks, edges, single
// things, and the edge that is being drawn. Only the colors change with the theme.
import { looks, token } from "./patterns.js";

const empty = { type: "FeatureCollection", features: [] };
const is = kind => ["==", ["get", "kind"], kind];
const isLine = ["==", ["geometry-type"], "LineString"];

/** The style of the map: no sprite, no glyphs, no address but what the farm has set itself. */
export function style(tiles) {
  const sources = {
    scene: { type: "geojson", data: empty },
    draft: { type: "geojson", data: empty },
  };
  const under = [{ id: "paper", type: "background", paint: {} }];
  if (tiles) {
    sources.tiles = { type: "raster", tiles: [tiles.url], tileSize: 256, maxzoom: tiles.most ?? 19 };
    under.push({ id: "tiles", type: "raster", source: "tiles" });
  }

  return { version: 8, sources, layers: [...under, ...ground(), ...things(), ...draft()] };
}

function ground() {
  const look = ["concat", "look-", ["get", "look"]];
  return [
    { id: "fields-wash", type: "fill", source: "scene", filter: is("field"), paint: {} },
    { id: "fields", type: "fill", source: "scene", filter: is("field"), paint: { "fill-pattern": look } },
    { id: "checks", type: "line", source: "scene", filter: is("check"), paint: { "line-width": 1 } },
    { id: "edges", type: "line", source: "scene", filter: ["all", is("field"), ["get", "drawn"]], paint: { "line-width": 2 } },
    { id: "edges-guessed", type: "line", source: "scene", filter: ["all", is("field"), ["!", ["get", "drawn"]]], paint: { "line-width": 2, "line-dasharray": [3, 2] } },
    { id: "chosen", type: "line", source: "scene", filter: ["all", is("field"), ["==", ["get", "code"], ""]], paint: { "line-width": 5 } },
  ];
}

function things() {
  const icon = image => ({ "icon-image": image, "icon-allow-overlap": true });
  return [
    { id: "hazard-around", type: "line", source: "scene", filter: is("around"), paint: { "line-width": 1.5, "line-dasharray": [3, 3] } },
    { id: "hazard-lines", type: "line", source: "scene", filter: ["all", is("hazard"), isLine], paint: { "line-width": 3, "line-dasharray": [1.5, 1.5] } },
    { id: "boxes", type: "symbol", source: "scene", minzoom: 14, filter: is("box"), layout: icon(["case", ["get", "leaks"], "mark-leak", "mark-box"]) },
    { id: "leaks", type: "symbol", source: "scene", maxzoom: 14, filter: ["all", is("box"), ["get", "leaks"]], layout: icon("mark-leak") },
    { id: "hazards", type: "symbol", source: "scene", filter: ["all", is("hazard"), ["!", isLine]], layout: icon("mark-hazard") },
    { id: "strips", type: "symbol", source: "scene", filter: is("strip"), layout: icon("mark-strip") },
  ];
}

function draft() {
  return [
    { id: "draft-land", type: "fill", source: "draft", filter: is("land"), paint: { "fill-opacity": 0.35 } },
    { id: "draft-edge", type: "line", source: "draft", filter: is("edge"), paint: { "line-width": 4 } },
    { id: "draft-corners", type: "circle", source: "draft", filter: is("corner"), paint: { "circle-radius": 8, "circle-stroke-width": 3 } },
  ];
}

/** Gives every layer the colors of the theme in force. */
export function paint(map) {
  const wash = { dry: "--paper", fill: "--paper", full: "--water-wash", sown: "--shoot-wash", unknown: "--paper-low" };
  const set = (layer, property, name) => map.setPaintProperty(layer, property, token(name));
  set("paper", "background-color", "--paper");
  map.setPaintProperty("fields-wash", "fill-color",
    ["match", ["get", "look"], ...looks.flatMap(look => [look, token(wash[look])]), token("--paper")]);
  // Over somebody's tiles the ground must stay to be seen.
  map.setPaintProperty("fields-wash", "fill-opacity", map.getSource("tiles") ? 0.55 : 1);
  for (const layer of ["edges", "edges-guessed", "checks", "chosen"]) set(layer, "line-color", "--ink");
  set("hazard-lines", "line-color", "--alarm");
  set("hazard-around", "line-color", "--alarm");
  set("draft-land", "fill-color", "--straw");
  set("draft-edge", "line-color", "--ink");
  set("draft-corners", "circle-color", "--paper");
  set("draft-corners", "circle-stroke-color", "--ink");
}

/** The corners of an edge that is being drawn: each as a point, the way round as a line, and the land inside from three on. */
export function draftOf(corners) {
  const at = corners.map(c => [c.lon, c.lat]);
  const feature = (kind, geometry) => ({ type: "Feature", properties: { kind }, geometry });
  const features = at.map(p => feature("corner", { type: "Point", coordinates: p }));
  if (at.length > 1) features.push(feature("edge", { type: "LineString", coordinates: at.length > 2 ? [...at, at[0]] : at }));
  if (at.length > 2) features.push(feature("land", { type: "Polygon", coordinates: [[...at, at[0]]] }));
  return { type: "FeatureCollection", features };
}
