// Keeps the handbook on this device. It asks nothing of any other host, and nothing outside the handbook's folder.
// `handbook`, above, is the edition that came with this file: its revision, and a fingerprint of every file.
(function () {
  "use strict";

  const HANDS = 6;
  const scope = new URL(self.registration.scope);
  const PREFIX = "faultwright " + scope.pathname + " ";
  const OWN = PREFIX + handbook.name;

  const at = (path) => new URL(path.split("/").map(encodeURIComponent).join("/"), scope).href;
  const has = (list, key) => Object.prototype.hasOwnProperty.call(list, key);
  const NOTE = at("worker.js");

  /* What is noted beside the files of an edition, last: an edition without a note is not whole. */
  async function noteOf(cache) {
    const kept = await cache.match(NOTE);
    return kept ? kept.json() : null;
  }

  const note = (cache, what) => cache.put(NOTE, new Response(JSON.stringify(what)));

  /* Other whole editions of this handbook on this device. */
  async function others() {
    const found = [];
    for (const name of await caches.keys()) {
      if (!name.startsWith(PREFIX) || name === OWN) continue;
      const cache = await caches.open(name);
      const said = await noteOf(cache);
      if (said) found.push({ cache, said });
    }
    return found;
  }

  /* Installing: every file, or the edition does not exist. What is here already is not fetched again. */
  async function install() {
    const cache = await caches.open(OWN);
    const older = await others();
    await inTurns(Object.keys(handbook.files), (path) => keep(cache, older, path));
    for (const path of Object.keys(handbook.extras)) await keepOpened(cache, older, path);
    await note(cache, { handbook, changes: since(older), inUse: false });
  }

  async function inTurns(paths, work) {
    const left = paths.slice();
    const hand = async () => {
      try {
        while (left.length) await work(left.shift());
      } catch (trouble) {
        left.length = 0;
        throw trouble;
      }
    };
    await Promise.all(Array.from({ length: HANDS }, hand));
  }

  async function keep(cache, older, path) {
    if (await cache.match(at(path))) return;
    const same = await unchanged(older, "files", path);
    await cache.put(at(path), same || await fetched(path, handbook.files[path]));
  }

  async function keepOpened(cache, older, path) {
    const same = await unchanged(older, "extras", path);
    if (same) await cache.put(at(path), same);
  }

  async function unchanged(older, kind, path) {
    for (const one of older) {
      const list = one.said.handbook[kind];
      const kept = has(list, path) && list[path] === handbook[kind][path] && await one.cache.match(at(path));
      if (kept) return kept;
    }
    return undefined;
  }

  /* A file from the host, exactly as it was published; anything else is refused. */
  async function fetched(path, fingerprint) {
    const answer = await request(path);
    if (!answer.ok) throw new Error(path + ": " + answer.status);
    const bytes = await answer.arrayBuffer();
    if (await fingerprintOf(bytes) !== fingerprint) throw new Error(path + " is not of this edition");
    return new Response(bytes, { headers: { "Content-Type": answer.headers.get("Content-Type") || "application/octet-stream" } });
  }

  /* Some hosts lead from x.html to x, and from index.html to its folder. A way to another host is never followed. */
  async function request(path) {
    const answer = await fetch(at(path), { cache: "no-cache", redirect: "manual" });
    if (answer.type !== "opaqueredirect") return answer;
    const short = at(path).replace(/(^|\/)index\.html$/, "$1").replace(/\.html$/, "");
    return fetch(short, { cache: "no-cache", redirect: "error" });
  }

  async function fingerprintOf(bytes) {
    const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
    return Array.from(digest.subarray(0, 8), (byte) => byte.toString(16).padStart(2, "0")).join("");
  }

  /* What changed since the edition that is in use: titles of symptoms, and lines of the summary. */
  function since(older) {
    const used = older.find((one) => one.said.inUse);
    if (!used) return null;
    const old = used.said.handbook;
    const now = Object.keys(handbook.symptoms);
    return {
      revision: old.revision,
      changed: now.filter((path) => has(old.symptoms, path) && old.files[path] !== handbook.files[path]).map((path) => handbook.symptoms[path]),
      added: now.filter((path) => !has(old.symptoms, path)).map((path) => handbook.symptoms[path]),
      gone: Object.keys(old.symptoms).filter((path) => !has(handbook.symptoms, path)).map((path) => old.symptoms[path]),
      summary: handbook.summary,
    };
  }

  /* Once in use: older editions of this handbook go, those of other handbooks stay. */
  async function activate() {
    const cache = await caches.open(OWN);
    const said = await noteOf(cache);
    await note(cache, { handbook, changes: since(await others()) || (said && said.changes) || null, inUse: true });
    const old = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== OWN);
    await Promise.all(old.map((name) => caches.delete(name)));
    await self.clients.claim();
  }

  async function edition() {
    const said = await noteOf(await caches.open(OWN));
    const changes = since(await others()) || (said && said.changes) || null;
    return { name: handbook.name, title: handbook.title, revision: handbook.revision, date: handbook.date, changes };
  }

  /* The file that an address of this handbook means; null for all else. */
  function pathOf(asked) {
    const url = new URL(asked.url);
    if (asked.method !== "GET" || url.origin !== scope.origin || !url.pathname.startsWith(scope.pathname)) return null;
    const path = decoded(url.pathname.slice(scope.pathname.length));
    const ways = [path, path + "index.html", path + "/index.html", path + ".html"];
    return ways.find((way) => has(handbook.files, way) || has(handbook.extras, way)) || path;
  }

  function decoded(path) {
    try {
      return decodeURIComponent(path);
    } catch (broken) {
      return path;
    }
  }

  async function answer(asked, path) {
    const kept = await caches.match(at(path), { cacheName: OWN });
    if (kept) return kept;
    try {
      return await fromHost(asked, path);
    } catch (noSignal) {
      return missing(asked);
    }
  }

  async function fromHost(asked, path) {
    const fingerprint = handbook.files[path] || handbook.extras[path];
    if (!fingerprint) return fetch(asked);
    try {
      const fresh = await fetched(path, fingerprint);
      await (await caches.open(OWN)).put(at(path), fresh.clone());
      return fresh;
    } catch (otherEdition) {
      return missing(asked);
    }
  }

  const say = (text) => (has(handbook.words, text) ? handbook.words[text] : text);

  const escaped = (text) => text.replace(/[&<>"']/g, (sign) => "&#" + sign.charCodeAt(0) + ";");

  function missing(asked) {
    if (asked.mode !== "navigate") return new Response("", { status: 504 });
    const html = "<!DOCTYPE html>\n<html lang=\"" + escaped(handbook.language) + "\" dir=\"" + escaped(handbook.direction) + "\"><head><meta charset=\"utf-8\">"
      + "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'self'; font-src 'self'\">"
      + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"><title>" + escaped(handbook.title) + "</title>"
      + "<link rel=\"stylesheet\" href=\"" + escaped(at("style.css")) + "\"></head><body><main><h1>" + escaped(say("Not on this device")) + "</h1><p>"
      + escaped(say("There is no signal, and this part was not kept. Open it once with a signal; then it stays.")) + "</p><ul class=\"jumps\"><li><a href=\""
      + escaped(at("index.html")) + "\">" + escaped(say("Start page")) + "</a></li></ul></main></body></html>\n";
    return new Response(html, { status: 503, headers: { "Content-Type": "text/html; charset=utf-8" } });
  }

  self.addEventListener("install", (event) => event.waitUntil(install()));

  self.addEventListener("activate", (event) => event.waitUntil(activate()));

  self.addEventListener("fetch", (event) => {
    const path = pathOf(event.request);
    if (path !== null) event.respondWith(answer(event.request, path));
  });

  /* A page says when this edition may take over; else it waits until no page is open. */
  self.addEventListener("message", (event) => {
    if (event.data && event.data.use === true) self.skipWaiting();
    if (event.data && event.data.ask === "edition" && event.ports[0]) {
      event.waitUntil(edition().then((said) => event.ports[0].postMessage(said)));
    }
  });
})();
