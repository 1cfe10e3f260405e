// Runs before the desk is awake: sets the paper, and shows the Morning page as it was last read, with its age.
// The page was written by script/device.js and is built again here from a short list of harmless tags; nothing in it runs.
(() => {
  'use strict';
  const root = document.documentElement;
  const look = read('watersown.look') ?? {};
  root.dataset.theme = theme(look);
  if (look.language) root.lang = look.language;

  const place = document.getElementById('desk');
  const kept = read('watersown.morning');
  if (place && kept && location.pathname === '/' && kept.page) {
    const lead = document.createElement('p');
    lead.className = 'bar bar-kept';
    lead.setAttribute('role', 'status');
    lead.textContent = said(kept);
    // A desk that takes long to wake, or does not, still says how old its page is.
    const growing = setInterval(() => { if (lead.isConnected) lead.textContent = said(kept); else clearInterval(growing); }, 20000);
    place.replaceChildren(lead, ...copied(kept.page));
    place.dataset.kept = kept.at;
    performance.mark('watersown-kept');
  }

  if ('serviceWorker' in navigator) navigator.serviceWorker.register('service-worker.js', { updateViaCache: 'none' }).catch(() => undefined);

  function read(name) {
    try { return JSON.parse(localStorage.getItem(name)); } catch { return null; }
  }

  function theme(look) {
    if (look.theme === 'day' || look.theme === 'night') return look.theme;
    const now = Date.now();
    for (const [dawn, dusk] of look.light ?? []) if (now >= dawn && now < dusk) return 'day';
    if (look.light?.some(([dawn, dusk]) => now >= dusk - 864e5 && now < dawn + 864e5)) return 'night';
    const hour = new Date().getHours();
    return hour < 6 || hour >= 20 ? 'night' : 'day';
  }

  function said(kept) {
    const minutes = Math.max(0, Math.round((Date.now() - kept.read) / 6e4));
    const words = kept.words ?? {};
    const age = minutes < 60 ? words.minutes?.replace('{n}', minutes)
      : minutes < 2880 ? words.hours?.replace('{h}', Math.floor(minutes / 60)).replace('{m}', minutes % 60)
      : words.days?.replace('{n}', Math.round(minutes / 1440));
    return (words.kept ?? '').replace('{age}', age ?? '');
  }

  function copied(page) {
    const tags = new Set(['H1', 'H2', 'H3', 'P', 'B', 'SPAN', 'DIV', 'SECTION', 'HEADER', 'TABLE', 'CAPTION', 'THEAD', 'TBODY', 'TR', 'TH', 'TD', 'UL', 'OL', 'LI', 'I', 'BR', 'SMALL',
      'SVG', 'G', 'PATH', 'RECT', 'TEXT', 'CIRCLE', 'LINE', 'DEFS', 'PATTERN', 'TIME', 'DL', 'DT', 'DD']);
    const facts = new Set(['class', 'scope', 'colspan', 'lang', 'role', 'aria-label', 'aria-hidden', 'viewBox', 'width', 'height', 'd', 'x', 'y', 'x1', 'x2', 'y1', 'y2', 'cx', 'cy', 'r', 'text-anchor', 'id', 'patternUnits', 'fill', 'style']);
    const from = new DOMParser().parseFromString(page, 'text/html').body;
    const copy = node => {
      if (node.nodeType === Node.TEXT_NODE) return document.createTextNode(node.data);
      if (node.nodeType !== Node.ELEMENT_NODE || !tags.has(node.tagName.toUpperCase())) return null;
      const made = document.createElementNS(node.namespaceURI, node.localName);
      for (const { name, value } of node.attributes) if (facts.has(name) && !/javascript:|https?:/i.test(value)) made.setAttribute(name, value);
      for (const child of node.childNodes) { const inner = copy(child); if (inner) made.append(inner); }
      return made;
    };
    return [...from.childNodes].map(copy).filter(Boolean);
  }
})();
