// The built app as the engines get it: from a port of its own for each journey, so that nothing is left of the one before, and with one
// script put before it that notes what a driver does not tell.

import { execFile } from "node:child_process";
import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { serve } from "../../scripts/serve.mjs";

const DIST = fileURLToPath(new URL("../../dist", import.meta.url));
const PRECACHE = fileURLToPath(new URL("../../scripts/precache.sh", import.meta.url));

/** Runs in the page before the app: what goes wrong is put in the session's own store, which a reload leaves alone. */
function watch() {
  const note = (line) => window.sessionStorage.setItem("watch", JSON.stringify([...JSON.parse(window.sessionStorage.getItem("watch") ?? "[]"), line]));
  for (const kind of ["error", "warn"]) {
    const own = console[kind];
    console[kind] = (...words) => {
      note(`console ${kind}: ${words.map(String).join(" ")}`);
      own.apply(console, words);
    };
  }
  window.addEventListener("error", (event) => note(event.message ? `uncaught: ${event.message}` : `not loaded: ${event.target.src ?? event.target.href}`), true);
  window.addEventListener("unhandledrejection", (event) => note(`uncaught: ${event.reason?.stack ?? event.reason}`));
  window.addEventListener("securitypolicyviolation", (event) => note(`policy: ${event.violatedDirective} ${event.blockedURI}`));
  new window.PerformanceObserver((list) => {
    for (const { name, responseStatus } of list.getEntries()) {
      if (/^https?:/.test(name) && new URL(name).origin !== location.origin) note(`request to another place: ${name}`);
      if (responseStatus >= 400) note(`answer ${responseStatus}: ${name}`);
    }
  }).observe({ type: "resource", buffered: true });
}

/** As most browser tests: no copy for use without a network, and the browser has promised to keep what is noted. */
function withoutCopies() {
  if (window.ServiceWorkerContainer) window.ServiceWorkerContainer.prototype.register = () => new Promise(() => {});
  if (window.StorageManager) window.StorageManager.prototype.persisted = async () => true;
}

/**
 * A host of two folders, one where copies are made and one where not. `serve(copies)` opens a port; `close()` removes all.
 */
export async function host() {
  const folder = await mkdtemp(join(tmpdir(), "garment-assay-engines-"));
  const servers = [];
  for (const [name, scripts] of [["copies", [watch]], ["plain", [watch, withoutCopies]]]) {
    const here = join(folder, name);
    await cp(DIST, here, { recursive: true });
    await writeFile(join(here, "watch.js"), scripts.map((script) => `(${script})();\n`).join(""));
    const page = await readFile(join(here, "index.html"), "utf8");
    const head = '<meta name="viewport"';
    if (page.split(head).length !== 2) throw new Error("index.html has no place to put the watch before");
    await writeFile(join(here, "index.html"), page.replace(head, `<script src="./watch.js"></script>\n  ${head}`));
    await promisify(execFile)("sh", [PRECACHE, here]);
  }
  return {
    folder,
    async serve(copies = false) {
      const server = await serve({ dir: join(folder, copies ? "copies" : "plain") });
      servers.push(server);
      return server;
    },
    async close() {
      for (const server of servers) await server.close().catch(() => {});
      await rm(folder, { recursive: true, force: true });
    },
  };
}
