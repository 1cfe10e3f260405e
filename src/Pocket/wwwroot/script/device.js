// What the desk keeps on this device, and what it asks of the browser. No arithmetic and no words: it keeps and tells.
'use strict';

const shelf = 'watersown';
let opening;

function open() {
  opening ??= new Promise((done, fail) => {
    const ask = indexedDB.open(shelf, 2);
    ask.onupgradeneeded = () => {
      for (const room of ['papers', 'marks', 'photos']) if (!ask.result.objectStoreNames.contains(room)) ask.result.createObjectStore(room);
      const marks = ask.transaction.objectStore('marks');
      if (!marks.indexNames.contains('turn')) marks.createIndex('turn', 'turn');
    };
    ask.onsuccess = () => { ask.result.onversionchange = () => { ask.result.close(); opening = undefined; }; done(ask.result); };
    ask.onerror = () => fail(ask.error);
  });
  opening.catch(() => { opening = undefined; });
  return opening;
}

// Done means written: the promise is kept only when the browser says that the transaction is on disk.
async function change(rooms, work) {
  const db = await open();
  return new Promise((done, fail) => {
    const step = db.transaction(rooms, 'readwrite', { durability: 'strict' });
    step.oncomplete = () => done();
    step.onabort = step.onerror = () => fail(step.error ?? new Error('not kept'));
    work(step);
  });
}

async function look(room, ask) {
  const db = await open();
  return new Promise((done, fail) => {
    const request = ask(db.transaction(room, 'readonly').objectStore(room));
    request.onsuccess = () => done(request.result);
    request.onerror = () => fail(request.error);
  });
}

/** Opens the shelf; true where what is kept outlives the page. */
export async function ready() {
  await open();
  navigator.storage?.persist?.().catch(() => false);
  return true;
}

export const paper = async name => (await look('papers', s => s.get(name))) ?? null;

export const keepPapers = papers => change(['papers'], step => {
  const room = step.objectStore('papers');
  for (const [name, text] of Object.entries(JSON.parse(papers))) text === null ? room.delete(name) : room.put(text, name);
});

// Every keeping of marks has a number, its turn, so that a page reads only what was kept since it last read.
export async function marks(since) {
  const db = await open();
  return new Promise((done, fail) => {
    const step = db.transaction(['papers', 'marks'], 'readonly');
    const room = step.objectStore('marks');
    const turn = step.objectStore('papers').get('turn');
    const list = since < 0 ? room.getAll() : room.index('turn').getAll(IDBKeyRange.lowerBound(since, true));
    step.oncomplete = () => done(JSON.stringify({ turn: turn.result ?? 0, marks: list.result }));
    step.onabort = step.onerror = () => fail(step.error ?? new Error('not read'));
  });
}

export const keepMarks = list => change(['papers', 'marks'], step => {
  const papers = step.objectStore('papers');
  const room = step.objectStore('marks');
  const last = papers.get('turn');
  last.onsuccess = () => {
    const turn = (last.result ?? 0) + 1;
    papers.put(turn, 'turn');
    for (const mark of JSON.parse(list)) room.put({ ...mark, turn }, mark.id);
  };
});

export const photos = async () => JSON.stringify((await look('photos', s => s.getAll())).map(p => ({ id: p.id, state: p.state, size: p.blob.size })));

export async function photo(id) {
  const kept = await look('photos', s => s.get(id));
  return kept ? new Uint8Array(await kept.blob.arrayBuffer()) : null;
}

export async function settlePhoto(id, state) {
  const kept = await look('photos', s => s.get(id));
  if (kept) await change(['photos'], step => step.objectStore('photos').put({ ...kept, state }, id));
}

/** Takes the picture out of a file field, makes it small enough to send over one bar of signal, and keeps it. */
export async function keepPhoto(field, id) {
  const file = field.files?.[0];
  if (!file) return 0;
  const drawn = await createImageBitmap(file, { imageOrientation: 'from-image' });
  const scale = Math.min(1, 1600 / Math.max(drawn.width, drawn.height));
  const canvas = new OffscreenCanvas(Math.max(1, Math.round(drawn.width * scale)), Math.max(1, Math.round(drawn.height * scale)));
  canvas.getContext('2d').drawImage(drawn, 0, 0, canvas.width, canvas.height);
  const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.72 });
  await change(['photos'], step => step.objectStore('photos').put({ id, blob, state: 'unsent' }, id));
  field.value = '';
  return blob.size;
}

/** Sends the file of a field as it is: a large one never passes through the page's memory. Gives the host's words. */
export async function sendFile(field, path, token, language) {
  const file = field.files?.[0];
  if (!file) return null;
  const headers = { 'X-Watersown': '1', 'Content-Type': 'application/zip', 'Accept': 'application/json', 'Accept-Language': language };
  if (token) headers['X-Watersown-Token'] = token;
  try {
    const answer = await fetch(path, { method: 'POST', headers, body: file });
    field.value = '';
    return await answer.text();
  } catch {
    return null;
  }
}

export async function photoAddress(id) {
  const kept = await look('photos', s => s.get(id));
  return kept ? URL.createObjectURL(kept.blob) : null;
}

// One tab sends at a time; the browser lets go of the lock when a tab dies.
const held = new Map();

export const hold = name => new Promise(done => {
  if (!navigator.locks) { done(true); return; }
  navigator.locks.request('watersown-' + name, { ifAvailable: true }, lock => {
    done(lock !== null);
    return lock === null ? undefined : new Promise(free => held.set(name, free));
  });
});

export function release(name) {
  held.get(name)?.();
  held.delete(name);
}

let channel;

/** Tells the desk what other tabs say, when the network or the page comes back, and when a newer version waits. */
export function listen(desk) {
  const tell = word => desk.invokeMethodAsync('Heard', word).catch(() => undefined);
  if ('BroadcastChannel' in globalThis) {
    channel = new BroadcastChannel('watersown');
    channel.onmessage = e => tell(String(e.data));
  }
  addEventListener('online', () => tell('online'));
  addEventListener('offline', () => tell('offline'));
  document.addEventListener('visibilitychange', () => { if (document.visibilityState === 'visible') tell('visible'); });
  navigator.serviceWorker?.ready.then(own => {
    if (own.waiting) tell('newer');
    own.addEventListener('updatefound', () => {
      const coming = own.installing;
      coming?.addEventListener('statechange', () => { if (coming.state === 'installed' && navigator.serviceWorker.controller) tell('newer'); });
    });
  });
}

export const tellTabs = word => channel?.postMessage(word);
export const online = () => navigator.onLine;
export const language = () => navigator.language ?? 'en';

/** Lets the waiting version take over, and opens it. Everything marked is on the device already. */
export async function useNewer() {
  const own = await navigator.serviceWorker?.getRegistration();
  if (!own?.waiting) { location.reload(); return; }
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  own.waiting.postMessage('take-over');
}

export function dress(theme, tongue, kept) {
  document.documentElement.dataset.theme = theme;
  document.documentElement.lang = tongue;
  document.querySelector('meta[name=theme-color]')?.setAttribute('content', getComputedStyle(document.documentElement).getPropertyValue('--paper').trim());
  localStorage.setItem('watersown.look', kept);
}

/** Keeps the page as it stands, to be shown at once next time: without anything to press, fill in or open. */
export function keepMorning(words) {
  const page = document.querySelector('[data-morning]');
  if (!page) return 0;
  const copy = page.cloneNode(true);
  for (const gone of copy.querySelectorAll('button, input, select, textarea, script, form, a.press, details:not(.decide), .turn, [data-not-kept]')) gone.remove();
  // What could be opened is kept as the line that it was.
  for (const closed of copy.querySelectorAll('details')) {
    const line = document.createElement('div');
    line.className = 'decide decide-kept';
    line.append(...closed.querySelector('summary')?.childNodes ?? []);
    closed.replaceWith(line);
  }
  for (const link of copy.querySelectorAll('a')) {
    const plain = document.createElement('span');
    plain.className = link.className;
    plain.append(...link.childNodes);
    link.replaceWith(plain);
  }
  const mast = document.querySelector('.mast')?.cloneNode(true);
  for (const gone of mast?.querySelectorAll('button, a, .mast-sent') ?? []) gone.remove();
  const text = JSON.stringify({ at: new Date().toISOString(), read: Date.now(), words: JSON.parse(words), page: (mast?.outerHTML ?? '') + '<div class="kept-page">' + copy.outerHTML + '</div>' });
  try { localStorage.setItem('watersown.morning', text); } catch { localStorage.removeItem('watersown.morning'); return 0; }
  return text.length;
}

/** A short buzz and a short tone: it was taken. */
export function feel(sound) {
  navigator.vibrate?.(35);
  if (!sound) return;
  try {
    const air = new AudioContext();
    const tone = air.createOscillator();
    const loud = air.createGain();
    loud.gain.value = 0.08;
    tone.frequency.value = 880;
    tone.connect(loud).connect(air.destination);
    tone.start();
    tone.stop(air.currentTime + 0.07);
    tone.onended = () => air.close();
  } catch { /* A page may be silent. */ }
}

/** Three long buzzes and a low double tone: nobody goes on by habit. */
export function halt(sound) {
  navigator.vibrate?.([400, 150, 400, 150, 400]);
  if (!sound) return;
  try {
    const air = new AudioContext();
    for (const at of [0, 0.45]) {
      const tone = air.createOscillator();
      const loud = air.createGain();
      loud.gain.value = 0.12;
      tone.frequency.value = 196;
      tone.connect(loud).connect(air.destination);
      tone.start(air.currentTime + at);
      tone.stop(air.currentTime + at + 0.3);
      if (at > 0) tone.onended = () => air.close();
    }
  } catch { /* A page may be silent. */ }
}

/** Where this device is: latitude, longitude, and meters it may be off; nothing where it is not told. Asked once, for a tap. */
export const here = () => new Promise(done => {
  if (!navigator.geolocation) { done(null); return; }
  navigator.geolocation.getCurrentPosition(p => done(p.coords.latitude + ' ' + p.coords.longitude + ' ' + p.coords.accuracy), () => done(null), { enableHighAccuracy: true, timeout: 20000, maximumAge: 5000 });
});

export async function copy(text) {
  try { await navigator.clipboard.writeText(text); return true; } catch { return false; }
}

export const focus = selector => document.querySelector(selector)?.focus();

/** A screen too narrow for a board of hours. */
export const narrow = () => matchMedia('(max-width: 56rem)').matches;

/** Lets a step of the board be moved by hand: the pointer stays with it, and the keys that move it move nothing else. */
export function steer(frame) {
  const moves = new Set(['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'PageUp', 'PageDown', 'Enter', 'Escape', ' ']);
  frame.addEventListener('pointerdown', e => {
    const step = e.target.closest?.('[data-step]');
    if (step && e.button === 0 && (e.pointerType === 'mouse' || step.dataset.held === 'true')) frame.setPointerCapture(e.pointerId);
  });
  // What is said of a step never lies over it: the panel goes to the other half of the window.
  const half = e => {
    const step = e.target.closest?.('[data-step]');
    if (step) frame.dataset.hand = step.getBoundingClientRect().top > innerHeight / 2 ? 'low' : 'high';
  };
  frame.addEventListener('pointerdown', half);
  frame.addEventListener('focusin', half);
  frame.addEventListener('keydown', e => {
    const step = e.target.closest?.('[data-step]');
    if (step && moves.has(e.key) && (step.dataset.held === 'true' || e.key === ' ')) e.preventDefault();
  });
}
