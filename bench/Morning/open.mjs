// Warm open to a readable Morning page, measured in a real browser: node --experimental-websocket bench/Morning/open.mjs http://127.0.0.1:5080 [rounds] [slowdown]
// Speaks the browser's own debugging protocol; needs a Chromium (CHROMIUM=/path) and nothing else.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const [address = 'http://127.0.0.1:5080', rounds = '7', slowdown = '1'] = process.argv.slice(2);
const profile = mkdtempSync(join(tmpdir(), 'watersown-open-'));
const browser = spawn(process.env.CHROMIUM ?? '/usr/bin/chromium', [
  '--headless=new', '--no-sandbox', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync',
  '--remote-debugging-port=0', '--user-data-dir=' + profile, 'about:blank'], { stdio: ['ignore', 'ignore', 'pipe'] });
const line = await new Promise(done => { let text = ''; browser.stderr.on('data', d => { text += d; const at = text.match(/ws:\/\/\S+/); if (at) done(at[0]); }); });

const socket = new WebSocket(line);
await new Promise(done => { socket.onopen = done; });
let last = 0;
const waiting = new Map();
socket.onmessage = e => { const said = JSON.parse(e.data); if (said.id) { waiting.get(said.id)?.(said); waiting.delete(said.id); } };
const ask = (method, params = {}, sessionId) => new Promise((done, fail) => {
  const id = ++last;
  waiting.set(id, said => said.error ? fail(new Error(method + ': ' + said.error.message)) : done(said.result));
  socket.send(JSON.stringify({ id, method, params, sessionId }));
});

async function page() {
  const { targetId } = await ask('Target.createTarget', { url: 'about:blank' });
  const { sessionId } = await ask('Target.attachToTarget', { targetId, flatten: true });
  const here = (method, params) => ask(method, params, sessionId);
  await here('Page.enable');
  await here('Network.enable');
  await here('Emulation.setDeviceMetricsOverride', { width: 390, height: 844, deviceScaleFactor: 2, mobile: true });
  await here('Emulation.setCPUThrottlingRate', { rate: Number(slowdown) });
  const read = async script => (await here('Runtime.evaluate', { expression: script, returnByValue: true, awaitPromise: true })).result.value;
  return { here, read, close: () => ask('Target.closeTarget', { targetId }) };
}

const awake = `new Promise(done => { const look = () => document.querySelector('#desk .sheet [data-morning]') ? done(performance.now()) : setTimeout(look, 5); look(); })`;
const times = `JSON.stringify({ paint: performance.getEntriesByName('first-contentful-paint')[0]?.startTime, kept: performance.getEntriesByName('watersown-kept')[0]?.startTime })`;

async function open(offline) {
  const one = await page();
  await one.here('Network.emulateNetworkConditions', { offline, latency: 0, downloadThroughput: -1, uploadThroughput: -1 });
  await one.here('Page.navigate', { url: address + '/' });
  let live = await one.read(awake);
  while (live === undefined) live = await one.read(awake);
  const seen = JSON.parse(await one.read(times));
  await one.close();
  return { ...seen, live };
}

// The first visit fetches everything; the desk is kept once its worker is active, and its page once it was drawn.
const first = await page();
await first.here('Page.navigate', { url: address + '/' });
await first.read('navigator.serviceWorker.ready.then(() => true)');
await first.read(awake);
await first.read(`new Promise(done => { const look = () => localStorage.getItem('watersown.morning') ? done(true) : setTimeout(look, 50); look(); })`);
await first.close();

const middle = list => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)];
console.log(`| warm open, ${rounds} rounds, processor slowed ${slowdown} times | first paint | readable (page as last read, with its age) | live |`);
console.log('|---|---|---|---|');
for (const offline of [false, true]) {
  const rows = [];
  for (let i = 0; i < Number(rounds); i++) rows.push(await open(offline));
  const said = key => { const all = rows.map(r => r[key]).filter(v => v !== undefined); return all.length ? `${Math.round(middle(all))} ms (worst ${Math.round(Math.max(...all))})` : 'none'; };
  console.log(`| ${offline ? 'no network' : 'host there'} | ${said('paint')} | ${said('kept')} | ${said('live')} |`);
}

socket.close();
browser.kill();
browser.once('exit', () => rmSync(profile, { recursive: true, force: true }));
