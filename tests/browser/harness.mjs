// What the browser tests and the pictures share: the built app on a port of its own, a Chromium to see it with, and a watch
// that nothing goes wrong unnoticed.

import assert from "node:assert/strict";
import { spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync, readFileSync } from "node:fs";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { serve } from "../../scripts/serve.mjs";

export const DIST = fileURLToPath(new URL("../../dist", import.meta.url));

/** Screens that the app is seen on: a small phone, a common one, a desk. */
export const SIZES = {
  small: { viewport: { width: 360, height: 740 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true },
  phone: { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true },
  desk: { viewport: { width: 1280, height: 800 }, deviceScaleFactor: 1, isMobile: false, hasTouch: false },
};

// Without these Chromium looks for its maker's hosts at every start, and its sandbox refuses root.
const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--disable-dev-shm-usage",
];

const executablePath = process.env.CHROMIUM ?? "/usr/bin/chromium";
const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

// --- the server and the browser, one of each for a test file -----------------------------------------------------------------

let server;
/** What that server was asked for, by whomever: pages, second threads, the browser itself. */
export const heard = [];
const browsers = new Map();

/** The address of the built app. */
export async function address() {
  if (!existsSync(join(DIST, "index.html"))) throw new Error("dist/ is empty: run 'make build' first");
  server ??= serve({ dir: DIST, heard: ({ method, url }) => heard.push({ method, url }) });
  return (await server).url;
}

async function browserWith(args) {
  const key = args.join(" ");
  if (!browsers.has(key)) browsers.set(key, chromium.launch({ executablePath, args: [...FLAGS, ...args] }));
  return browsers.get(key);
}

/** Ends what `address` and `visit` started; a test file need not call it. */
export async function closeAll() {
  for (const browser of browsers.values()) await (await browser).close();
  browsers.clear();
  if (server) await (await server).close();
  server = undefined;
}
// Only for a test file: in any other program Node would report on the tests that it does not have.
if (process.argv[1].endsWith(".test.mjs")) (await import("node:test")).after(closeAll);

// --- what most tests do without ------------------------------------------------------------------------------------------------

/**
 * Keeps a context from making a copy of the app for use without a network, and lets the browser have promised to keep what is noted: each
 * would cost every test its time, or put a line at the head of its screens. What is tested of them is in offline.test.mjs.
 */
export async function withoutCopies(context) {
  await context.addInitScript(() => {
    if (window.ServiceWorkerContainer) window.ServiceWorkerContainer.prototype.register = () => new Promise(() => {});
    if (window.StorageManager) window.StorageManager.prototype.persisted = async () => true;
  });
}

// --- the watch ---------------------------------------------------------------------------------------------------------------

/**
 * Notes everything in a context that a person would never see but that is wrong: errors and warnings in the console, uncaught
 * errors, requests that fail, and any request to another place than the app's own.
 * @returns {string[]} the list that the notes are put on
 */
export function watch(context, home) {
  const problems = [];
  const origin = new URL(home).origin;
  const own = (url) => url.startsWith("data:") || url.startsWith("blob:") || new URL(url).origin === origin;
  context.on("request", (request) => {
    if (!own(request.url())) problems.push(`request to another place: ${request.url()}`);
  });
  context.on("requestfailed", (request) => {
    const why = request.failure()?.errorText ?? "unknown";
    if (why !== "net::ERR_ABORTED") problems.push(`request failed (${why}): ${request.url()}`);
  });
  // The browser looks for it by itself where a page names no icon: a picture that is opened to have the address without the app.
  const isOurs = (url) => !url.endsWith("/favicon.ico");
  context.on("response", (response) => {
    if (response.status() >= 400 && isOurs(response.url())) problems.push(`answer ${response.status()}: ${response.url()}`);
  });
  context.on("console", (message) => {
    if (["error", "warning"].includes(message.type()) && isOurs(message.location().url)) problems.push(`console ${message.type()}: ${message.text()}`);
  });
  context.on("weberror", (error) => problems.push(`uncaught: ${error.error()?.stack ?? error.error()}`));
  return problems;
}

/**
 * Opens the app as somebody's first visit, hands it to `body`, and fails afterwards if the watch noted anything.
 *
 * `body` gets `page`, `context`, `home` (the app's address), `problems` (empty it if the test provokes some), `reopen()` for a
 * second tab.
 * @param {{path?: string, size?: keyof typeof SIZES, scheme?: "light" | "dark", throttle?: number, args?: string[],
 *   context?: object, home?: string, copies?: boolean, ready?: boolean, before?: (context: object) => Promise<void>}} options `path` is what follows the address, such as `#/rack`; `throttle`
 *   slows the processor that many times; `args` are further flags of Chromium; `context` further options of Playwright's
 *   context; `home` another address than the built app's; `copies` lets the app make its copy for use without a network; `ready: false` does not wait until the app has started; `before` prepares the context.
 * @param {(visit: object) => Promise<void>} body
 */
export async function visit(options, body) {
  const { path = "", size = "phone", scheme = "light", throttle = 1, args = [], ready = true } = options;
  const home = options.home ?? (await address());
  const browser = await browserWith(args);
  const context = await browser.newContext({ ...SIZES[size], colorScheme: scheme, locale: "en-GB", ...options.context });
  context.setDefaultTimeout(15_000 * Math.max(1, throttle / 2));
  const problems = watch(context, home);
  const open = async () => {
    const page = await context.newPage();
    if (throttle > 1) await slow(page, throttle);
    await page.goto(home + path);
    if (ready) await started(page);
    return page;
  };
  try {
    if (!options.copies) await withoutCopies(context);
    await options.before?.(context);
    const page = await open();
    await body({ page, context, home, problems, reopen: open });
    assert.deepEqual(problems, [], "something went wrong out of sight");
  } catch (error) {
    if (problems.length > 0 && error.code !== "ERR_ASSERTION") error.message += `\nnoted meanwhile:\n${problems.join("\n")}`;
    throw error;
  } finally {
    await context.close();
  }
}

/** Waits until the program has taken the place of the frame in index.html and has a heading, and nothing is on its way any more. */
export async function started(page) {
  await page.locator("#app:not(:has(.skeleton)) h1").first().waitFor();
  await settled(page);
}

/** Waits until no part of the screen is on its way any more, as a page of the second program is at first. */
export const settled = (page) => page.locator("main [aria-busy=true]").first().waitFor({ state: "detached" });

/** Makes the page's processor `times` slower, as a cheap phone's. */
export async function slow(page, times) {
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: times });
}

// --- judging a page ----------------------------------------------------------------------------------------------------------

/**
 * What axe finds wrong with the page as it stands: WCAG 2.2 A and AA, and its best practices.
 * @returns {Promise<string[]>} one line for each finding
 */
export async function violations(page) {
  // The page refuses foreign script elements, and should; the browser's own channel is not the page's.
  await page.evaluate(axeSource);
  return page.evaluate(async () => {
    const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
    const { violations: found } = await window.axe.run(document, { runOnly: tags });
    return found.flatMap((rule) => rule.nodes.map((node) => `${rule.id}: ${node.target.join(" ")}: ${rule.help}`));
  });
}

/** Whether the page can be moved sideways, which on a phone means that something is too wide. */
export async function isTooWide(page) {
  // Not clientWidth: a phone widens that to what it has to show.
  return (await page.evaluate(() => document.documentElement.scrollWidth)) > page.viewportSize().width;
}

/**
 * Links, buttons and fields that are smaller than a finger needs, for what is on view.
 * @returns {Promise<string[]>} one line for each, with its size in CSS pixels
 */
export async function smallTargets(page, least = 44) {
  return page.evaluate((least) => {
    const found = [];
    for (const element of document.querySelectorAll("a[href], button, input, select, textarea, summary, [role=button]")) {
      // A radio or a box is pressed by its label.
      const target = element.labels?.[0] && ["radio", "checkbox", "file"].includes(element.type) ? element.labels[0] : element;
      const box = target.getBoundingClientRect();
      const inText = window.getComputedStyle(target).display === "inline" && target.closest("p, li, dd");
      if (box.width === 0 || inText || (box.width >= least && box.height >= least)) continue;
      const name = (element.getAttribute("aria-label") ?? target.textContent).trim().slice(0, 40);
      found.push(`${element.localName} "${name}": ${Math.round(box.width)} by ${Math.round(box.height)}`);
    }
    return found;
  }, least);
}

// --- a browser that can be killed ----------------------------------------------------------------------------------------------

/**
 * A browser with a profile that outlives it, to see what is still there after a crash.
 *
 *     const profile = await newProfile();
 *     let { page } = await profile.start();
 *     ...
 *     await profile.kill(); // as the system would: no warning, no farewell
 *     ({ page } = await profile.start());
 *     ...
 *     await profile.remove();
 */
export async function newProfile({ size = "phone", path = "" } = {}) {
  const folder = await mkdtemp(join(tmpdir(), "garment-assay-profile-"));
  const home = await address();
  let child;

  async function kill() {
    if (!child) return;
    const gone = once(child, "exit");
    process.kill(-child.pid, "SIGKILL"); // the group that was made for it: the browser and its own helpers
    await gone;
    child = undefined;
  }

  async function start() {
    await rm(join(folder, "DevToolsActivePort"), { force: true });
    child = spawn(
      executablePath,
      [...FLAGS, "--headless=new", "--remote-debugging-port=0", `--user-data-dir=${folder}`, "about:blank"],
      { detached: true, stdio: "ignore" },
    );
    const port = await debuggingPort(folder, child);
    const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
    const context = browser.contexts()[0];
    context.setDefaultTimeout(15_000);
    await withoutCopies(context);
    const problems = watch(context, home);
    const page = context.pages()[0] ?? (await context.newPage());
    await page.setViewportSize(SIZES[size].viewport);
    await page.goto(home + path);
    await started(page);
    return { page, context, problems, home };
  }

  async function remove() {
    await kill();
    await rm(folder, { recursive: true, force: true, maxRetries: 5 });
  }

  return { folder, start, kill, remove };
}

/** Chromium writes the port it chose into its profile as soon as it listens. */
async function debuggingPort(folder, child) {
  const deadline = Date.now() + 20_000;
  while (Date.now() < deadline) {
    const text = await readFile(join(folder, "DevToolsActivePort"), "utf8").catch(() => "");
    if (text.includes("\n")) return Number(text.split("\n")[0]);
    if (child.exitCode !== null) throw new Error(`Chromium ended at once, with exit code ${child.exitCode}`);
    await new Promise((done) => setTimeout(done, 50));
  }
  throw new Error("Chromium did not start within 20 seconds");
}
