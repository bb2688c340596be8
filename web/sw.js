// The copy of the app that is kept for use without a network. The build writes three constants before this: VERSION, FILES (name ->
// SHA-256 and bytes) and FIRST (the names that a first visit loads). Nothing here touches what a person has noted.
/* global VERSION, FILES, FIRST */

const SCOPE = self.registration.scope;
// Several apps may live on one host, and this one in several folders of it: a space cannot stand in an address, so no name begins another.
const OURS = `garment-assay ${SCOPE} `;
const COPY = OURS + VERSION;
// Which version each open page was made of, so that a page goes on with its own files when a newer version takes over beside it.
const PAGES = OURS + "pages";
const PAGE = "index.html";
const AT_ONCE = 4;

// --- gathering a version, whole or not at all ----------------------------------------------------------------------------------

const address = (name) => new URL(name === PAGE ? "./" : name, SCOPE).href;
const hex = (bytes) => [...new Uint8Array(bytes)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
const integrity = (hash) => "sha256-" + btoa(String.fromCharCode(...hash.match(/../g).map((pair) => parseInt(pair, 16))));

// A host may have led elsewhere (to the folder from its index.html, say); an answer that remembers that may not answer for a page. Length
// and coding are those of the way here, not of what is kept.
function plain(answer) {
  const headers = new Headers(answer.headers);
  for (const name of ["content-encoding", "content-length"]) headers.delete(name);
  return new Response(answer.body, { headers });
}

// Asks the host whether what the browser has is still right: most of a first visit is answered by "yes" and weighs nothing. Bytes that do
// not have the hash are refused by the browser; they are asked for once more past anything that is kept on the way.
async function fetched(name) {
  const ask = (cache) => fetch(address(name), { cache, integrity: integrity(FILES[name][0]), credentials: "same-origin" });
  const answer = await ask("no-cache").catch(() => ask("reload"));
  if (!answer.ok) throw new Error(`${name}: answer ${answer.status}`);
  return plain(answer);
}

// The same bytes in the version before, so that an update fetches only what has changed.
async function carriedOver(name, others) {
  for (const other of others) {
    const kept = await other.match(address(name));
    if (kept && hex(await crypto.subtle.digest("SHA-256", await kept.clone().arrayBuffer())) === FILES[name][0]) return kept;
  }
}

async function gather(names) {
  const copy = await caches.open(COPY);
  const others = await Promise.all((await caches.keys()).filter((key) => key.startsWith(OURS) && ![COPY, PAGES].includes(key)).map((key) => caches.open(key)));
  const left = [...names];
  const work = async () => {
    for (let name = left.shift(); name !== undefined; name = left.shift()) {
      // What an attempt that broke off has brought was checked, and stays.
      if (await copy.match(address(name))) continue;
      await copy.put(address(name), (await carriedOver(name, others)) ?? (await fetched(name)));
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
}

// Whoever asks to save data gets what this visit has loaded anyway; the rest is kept when it is used, or when it is asked for.
const sparing = () => self.navigator.connection?.saveData === true;

self.addEventListener("install", (event) => event.waitUntil(gather(sparing() ? FIRST : Object.keys(FILES))));

// --- which page belongs to which version ---------------------------------------------------------------------------------------

let pages;
const pageKey = (id) => SCOPE + "?page=" + id;

async function known() {
  pages ??= caches.open(PAGES).then(async (kept) => {
    const found = new Map();
    for (const request of await kept.keys()) {
      const answer = await kept.match(request);
      if (answer) found.set(new URL(request.url).searchParams.get("page"), await answer.text());
    }
    return found;
  });
  return pages;
}

async function belongs(id) {
  if (!id) return;
  const map = await known();
  map.set(id, VERSION);
  await (await caches.open(PAGES)).put(pageKey(id), new Response(VERSION));
}

// Forgets versions that no open page is made of. Never while a newer one is on its way: that one's files are not ours to judge.
async function tidy(coming) {
  const keys = await caches.keys();
  const open = new Set((await self.clients.matchAll({ includeUncontrolled: true })).map((client) => client.id).concat(coming ?? []));
  if (self.registration.installing || self.registration.waiting) return;
  const [map, kept] = [await known(), await caches.open(PAGES)];
  for (const id of [...map.keys()].filter((id) => !open.has(id))) {
    map.delete(id);
    await kept.delete(pageKey(id));
  }
  const needed = new Set([COPY, PAGES, ...[...map.values()].map((version) => OURS + version)]);
  await Promise.all(keys.filter((key) => key.startsWith(OURS) && !needed.has(key)).map((key) => caches.delete(key)));
}

self.addEventListener("activate", (event) => event.waitUntil(tidy()));

// --- answering -------------------------------------------------------------------------------------------------------------------

// A thread has an id of its own, and the browser does not say whose it is: it belongs where its first file was sent.
let lastThread;

// Firefox tells of a thread only once it runs, as the standard has it, and a thread does not run before its files are answered: one that
// nothing is told of for a moment is such a thread.
const MOMENT = 100;
async function isThread(id) {
  const client = await Promise.race([self.clients.get(id), new Promise((done) => self.setTimeout(done, MOMENT, { type: "worker" }))]);
  return client?.type === "worker";
}

async function versionFor(id, map) {
  if (map.has(id)) return map.get(id);
  // Nobody need be asked where it comes to the same.
  if (map.size === 0 || lastThread === undefined || lastThread === VERSION) return VERSION;
  return (await isThread(id)) ? lastThread : VERSION;
}

async function answerFor(name, request, id) {
  const map = await known();
  const version = await versionFor(id, map);
  if (request.destination === "worker") lastThread = version;
  const kept = await (await caches.open(OURS + version)).match(address(name));
  if (kept) return kept;
  // The host has this version's file by now; a page of an older one must not get it.
  if (version !== VERSION) return Response.error();
  if (!map.has(id)) return fetch(request);
  const answer = await fetched(name);
  await (await caches.open(COPY)).put(address(name), answer.clone());
  return answer;
}

// A page that comes from here may have its typeface at once. On a first visit it is not asked for before the first words are painted, so the page says
// nothing of it, and one page does for both.
const AHEAD = FIRST.filter((name) => name.endsWith(".woff2"))
  .map((name) => `<${address(name)}>; rel=preload; crossorigin; as=font`)
  .join(", ");

async function openPage(request, id, meanwhile) {
  const kept = await (await caches.open(COPY)).match(address(PAGE));
  if (!kept) return fetch(request); // the browser threw the copy away
  // The page need not wait until it is written down whose it is.
  meanwhile(belongs(id));
  const answer = plain(kept);
  answer.headers.set("Link", AHEAD);
  return answer;
}

// A name that is none of this version's may be one of a page's own, older version; the host has it no more.
async function fromOlder(request, id) {
  const version = await versionFor(id, await known());
  const kept = version === VERSION ? undefined : await caches.match(request.url, { cacheName: OURS + version });
  return kept ?? fetch(request);
}

// The name of the file that is asked for, if it is one of this version's; whatever follows "?" names no other file.
function nameOf(url) {
  if (!url.startsWith(SCOPE)) return undefined;
  const name = new URL(url).pathname.slice(new URL(SCOPE).pathname.length) || PAGE;
  return Object.hasOwn(FILES, name) ? name : undefined;
}

self.addEventListener("fetch", (event) => {
  const { request, clientId, resultingClientId } = event;
  const name = request.method === "GET" ? nameOf(request.url) : undefined;
  if (name === undefined) {
    if (request.method === "GET" && clientId && request.url.startsWith(SCOPE)) event.respondWith(fromOlder(request, clientId));
    return;
  }
  if (request.mode === "navigate" && name === PAGE) {
    event.respondWith(openPage(request, resultingClientId, (work) => event.waitUntil(work)));
    event.waitUntil(tidy(resultingClientId));
  } else {
    event.respondWith(answerFor(name, request, clientId));
  }
});

// --- what a page may ask ---------------------------------------------------------------------------------------------------------

async function missing() {
  const copy = await caches.open(COPY);
  const names = [];
  for (const name of Object.keys(FILES)) if (!(await copy.match(address(name)))) names.push(name);
  return { names, bytes: names.reduce((sum, name) => sum + FILES[name][1], 0) };
}

const ASKED = {
  // A page that came from the network, as on a first visit, is taken on if it is made of this version's files.
  async mine({ names }, id) {
    if ((await known()).has(id) || !names.every((name) => Object.hasOwn(FILES, name))) return;
    await belongs(id);
    await self.clients.claim();
  },
  // And whether the page that asks is made of an older version.
  async missing(_, id) {
    const { names, bytes } = await missing();
    const version = (await known()).get(id);
    return { count: names.length, bytes, older: version !== undefined && version !== VERSION };
  },
  async rest() {
    await gather((await missing()).names);
  },
  // Only ever said by a person's tap on "Use it now".
  async take() {
    await self.skipWaiting();
  },
};

self.addEventListener("message", (event) => {
  const { data, source, ports } = event;
  if (!Object.hasOwn(ASKED, data?.ask ?? "")) return;
  event.waitUntil(
    ASKED[data.ask](data, source.id).then(
      (answer) => ports[0]?.postMessage({ answer }),
      (why) => ports[0]?.postMessage({ failed: String(why) }),
    ),
  );
});
