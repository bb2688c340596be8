// A host whose files can be changed under the app, and a visit that keeps its copy for use without a network.

import { execFile } from "node:child_process";
import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { serve } from "../../scripts/serve.mjs";
import { DIST, visit } from "./harness.mjs";

const PRECACHE = fileURLToPath(new URL("../../scripts/precache.sh", import.meta.url));

/**
 * Serves a copy of the built app under a path of a host. `change(name, text => text)` changes a file as it lies there, `release()` lists
 * the files anew as a build does, `close()` stops the server for good.
 * @param {(host: {home: string, folder: string, change: Function, release: Function, close: Function}) => Promise<void>} body
 */
export async function hosted(body, { base = "/some/where/", answered } = {}) {
  const folder = await mkdtemp(join(tmpdir(), "garment-assay-host-"));
  let server;
  try {
    await cp(DIST, folder, { recursive: true });
    server = await serve({ dir: folder, base, answered });
    await body({
      home: server.url,
      folder,
      change: async (name, how) => writeFile(join(folder, name), how(await readFile(join(folder, name), "utf8"))),
      release: () => promisify(execFile)("sh", [PRECACHE, folder]),
      close: async () => {
        await server?.close();
        server = undefined;
      },
    });
  } finally {
    await server?.close();
    await rm(folder, { recursive: true });
  }
}

/** Visits such a host with copies allowed. */
export const keeping = (host, options, body) => visit({ ...options, home: host.home, copies: true }, body);

/** Waits until the app has heard that its copy stands so. */
export const copyIs = (page, word) => page.locator(`html[data-flight="${word}"]`).waitFor({ state: "attached" });

/** Has the browser look for a newer version, and waits until that is fetched or given up. Returns whether one waits. */
export const lookForNewer = (page) =>
  page.evaluate(async () => {
    const registration = await window.navigator.serviceWorker.getRegistration();
    await registration.update().catch(() => {});
    const worker = registration.installing;
    if (worker) await new Promise((done) => worker.addEventListener("statechange", done, { once: true }));
    return registration.waiting !== null;
  });

/** The names of the copies on this origin. */
export const copies = (page) => page.evaluate(async () => (await window.caches.keys()).sort());

/** What the page gets for a file of its own. */
export const gets = (page, name) => page.evaluate(async (name) => (await fetch(name)).text(), name);

/** Takes away what must be noted when there is no network, and is nobody's fault: the search for a newer version, the tab's icon. */
export function withoutNetwork(problems) {
  const own = problems.filter((line) => /\/(sw\.js|icon\.svg|app\.webmanifest)$/.test(line));
  const told = problems.filter((line) => /^console error: Failed to load resource: net::ERR_(CONNECTION_REFUSED|INTERNET_DISCONNECTED)$/.test(line)).slice(0, own.length);
  const left = problems.filter((line) => !own.includes(line) && !told.includes(line));
  problems.length = 0;
  return left;
}
