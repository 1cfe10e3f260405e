// The map island of the Land page. The page is whole without it: it draws the same fields itself and lists them in a table. This
// adds moving, zooming and drawing by taps where the browser can. It asks no address of the world: library, worker, patterns
// and letters all come from the desk. Only a tile source that the farm has set itself is fetched from elsewhere.
import { addImages } from "./patterns.js";
import { around, bounds, Labels } from "./labels.js";
import { draftOf, paint, style } from "./layers.js";
import { scaleBar } from "./scale.js";

const here = name => new URL(name, import.meta.url).href;
let library = null;

/** Loads the drawing library once; nothing where it is not on this desk. */
async function load() {
  if (library) return library;
  try {
    library = await import(here("./maplibre-gl.js"));
  } catch {
    return null;
  }

  library.setWorkerUrl(here("./maplibre-gl-worker.js"));
  if (!document.querySelector("link[data-map]")) {
    const sheet = Object.assign(document.createElement("link"), { rel: "stylesheet", href: here("./maplibre-gl.css") });
    sheet.dataset.map = "";
    await new Promise(done => {
      sheet.onload = sheet.onerror = done;
      document.head.append(sheet);
    });
  }

  return library;
}

/** Whether this browser can draw it. */
function canDraw() {
  try {
    const sheet = document.createElement("canvas");
    const gl = sheet.getContext("webgl2");
    gl?.getExtension("WEBGL_lose_context")?.loseContext();
    return gl !== null;
  } catch {
    return false;
  }
}

/**
 * Opens the map in an element.
 * @param host the element; its data-state says how far it has come: loading, ready, or plain where the page must do without
 * @param page what is told of taps: Chose(code), CornerPlaced(lat, lon)
 * @param scene the fields and what is round them, GeoJSON as text
 * @param options words, units and the farm's own tile source, as text
 */
export async function open(host, page, scene, options) {
  host.dataset.state = "loading";
  const drawing = canDraw() ? await load() : null;
  if (!drawing || !host.isConnected) {
    host.dataset.state = "plain";
    return null;
  }

  return new LandMap(drawing, host, page, JSON.parse(scene), JSON.parse(options));
}

class LandMap {
  constructor(drawing, host, page, scene, options) {
    Object.assign(this, { host, page, scene, options, drawing: false, corners: [], chosen: "" });
    this.ground = add(host, "map-ground");
    this.overlay = add(host, "map-labels");
    this.overlay.setAttribute("aria-hidden", "true");
    this.map = new drawing.Map({
      container: this.ground,
      style: style(options.tiles),
      bounds: this.extent(),
      fitBoundsOptions: { padding: 28, animate: false },
      attributionControl: false,
      // One finger scrolls the page, two move the map; the wheel scrolls the page. The buttons do all of it, too.
      cooperativeGestures: true,
      scrollZoom: false,
      dragRotate: false,
      pitchWithRotate: false,
      touchPitch: false,
      maxPitch: 0,
      fadeDuration: 0,
      locale: {
        "Map.Title": options.words.title,
        "CooperativeGesturesHandler.WindowsHelpText": options.words.twoFingers,
        "CooperativeGesturesHandler.MacHelpText": options.words.twoFingers,
        "CooperativeGesturesHandler.MobileHelpText": options.words.twoFingers,
      },
    });
    this.map.touchZoomRotate.disableRotation();
    this.map.keyboard.disableRotation();
    this.labels = new Labels(this.map, this.overlay);
    this.scale = scaleBar(this.map, add(host, "map-scale"), options);
    this.map.on("load", () => this.ready());
    this.map.on("click", event => this.tapped(event));
    this.map.on("error", () => { host.dataset.trouble = "yes"; });
    this.map.getCanvas().addEventListener("webglcontextlost", () => {
      host.dataset.state = "plain";
      this.tell("Lost");
    });
    this.watch = new MutationObserver(() => this.repaint());
    this.watch.observe(document.documentElement, { attributes: true, attributeFilter: ["data-theme"] });
    this.night = window.matchMedia("(prefers-color-scheme: dark)");
    this.repaint = this.repaint.bind(this);
    this.night.addEventListener("change", this.repaint);
  }

  /** Tells the page; one that is being left meanwhile needs no word. */
  tell(...what) {
    this.page.invokeMethodAsync(...what).catch(() => undefined);
  }

  ready() {
    addImages(this.map);
    paint(this.map);
    this.loaded = true;
    this.apply();
    this.host.dataset.state = "ready";
    this.tell("Ready");
  }

  /** New facts: the same view, other states. */
  show(scene) {
    this.scene = JSON.parse(scene);
    if (this.loaded) this.apply();
  }

  apply() {
    this.map.getSource("scene").setData(this.scene);
    this.labels.show(this.scene.features);
    this.drawCorners();
    this.mark();
    const fields = this.scene.features.filter(f => f.properties.kind === "field");
    this.host.dataset.fields = String(fields.length);
    this.host.dataset.looks = fields.map(f => f.properties.code + ":" + f.properties.look).join(" ");
  }

  repaint() {
    if (!this.loaded) return;
    addImages(this.map);
    paint(this.map);
  }

  /** Puts a heavy edge around one field; with "look" it is also brought into view. */
  choose(code, look) {
    this.chosen = code ?? "";
    if (this.loaded) this.mark();
    const field = this.scene.features.find(f => f.properties.kind === "field" && f.properties.code === code);
    if (field && look) this.map.fitBounds(bounds(field.geometry), { padding: 60, animate: false });
  }

  mark() {
    this.map.setFilter("chosen", ["all", ["==", ["get", "kind"], "field"], ["==", ["get", "code"], this.chosen]]);
    this.host.dataset.chosen = this.chosen;
  }

  extent() {
    const features = this.scene.features;
    const fields = features.filter(f => f.properties.kind === "field");
    const shown = fields.length > 0 ? [...fields, ...features.filter(f => f.properties.kind === "strip")] : features;
    return shown.length > 0 ? around(shown.map(f => bounds(f.geometry))) : this.options.middle;
  }

  /** The whole farm. */
  fit() {
    this.map.fitBounds(this.extent(), { padding: 28, animate: false });
  }

  zoom(step) {
    this.map.zoomTo(this.map.getZoom() + step, { animate: false });
  }

  /** A third of the view to the east and south. */
  pan(east, south) {
    this.map.panBy([(east * this.host.clientWidth) / 3, (south * this.host.clientHeight) / 3], { animate: false });
  }

  /** To a place, such as where the device is. */
  go(lat, lon) {
    this.map.jumpTo({ center: [lon, lat], zoom: Math.max(this.map.getZoom(), 15) });
  }

  /** The middle of the view, latitude first: a corner can be put there by keyboard. */
  middle() {
    const { lat, lng } = this.map.getCenter();
    return lat + " " + lng;
  }

  /** Begins or goes on with drawing an edge; with null it ends. Every tap is then a corner. */
  draft(corners) {
    this.drafting = corners !== null;
    this.corners = corners === null ? [] : JSON.parse(corners);
    this.host.dataset.drafting = this.drafting ? "yes" : "no";
    this.map.getCanvas().style.cursor = this.drafting ? "crosshair" : "";
    if (this.loaded) this.drawCorners();
  }

  drawCorners() {
    this.map.getSource("draft").setData(draftOf(this.corners));
    this.host.dataset.corners = String(this.corners.length);
  }

  tapped(event) {
    if (this.drafting) {
      this.tell("CornerPlaced", event.lngLat.lat, event.lngLat.lng);
      return;
    }

    if (!this.loaded) return;
    const [field] = this.map.queryRenderedFeatures(event.point, { layers: ["fields-wash"] });
    if (field) this.tell("Chose", field.properties.code);
  }

  close() {
    this.watch.disconnect();
    this.night.removeEventListener("change", this.repaint);
    this.map.remove();
    this.ground.remove();
    this.overlay.remove();
    this.scale.remove();
  }
}

function add(host, name) {
  const element = document.createElement("div");
  element.className = name;
  host.append(element);
  return element;
}
