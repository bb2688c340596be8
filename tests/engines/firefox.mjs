// Firefox, driven by what it has built in of WebDriver BiDi (W3C draft): no driver beside it is needed, and what goes wrong out of sight
// is told by the browser itself.

import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import WebSocket from "ws";

/** Kept small and quiet: nothing is saved elsewhere than in `folder`, and no question is asked before it. */
const preferences = (downloads) => ({
  "browser.download.dir": downloads,
  "browser.download.folderList": 2,
  "browser.download.useDownloadDir": true,
  "browser.download.always_ask_before_handling_new_types": false,
  "browser.shell.checkDefaultBrowser": false,
  "datareporting.policy.dataSubmissionEnabled": false,
  "intl.accept_languages": "en-GB, en",
});

/**
 * Starts Firefox with a profile in that folder.
 * @returns {Promise<object>} the driver; hand.mjs says what all drivers can do
 */
export async function firefox(binary, folder) {
  const downloads = join(folder, "downloads");
  await mkdir(downloads, { recursive: true });
  const lines = Object.entries(preferences(downloads)).map(([key, value]) => `user_pref(${JSON.stringify(key)}, ${JSON.stringify(value)});`);
  await writeFile(join(folder, "user.js"), `${lines.join("\n")}\n`);
  const child = spawn(binary, ["--headless", "--no-remote", "--profile", folder, "--remote-debugging-port=0"], {
    stdio: ["ignore", "ignore", "pipe"],
    env: { ...process.env, HOME: folder, MOZ_CRASHREPORTER_DISABLE: "1" },
  });
  const socket = new WebSocket(`${await addressOf(child)}/session`, { maxPayload: 2 ** 28 });
  await once(socket, "open");

  const problems = [];
  const waiting = new Map();
  let asked = 0;
  let origin = "";
  socket.on("message", (text) => {
    const message = JSON.parse(text);
    if (message.type !== "event") {
      waiting.get(message.id)?.(message);
      waiting.delete(message.id);
    } else note(message);
  });
  // What was asked of a browser that ends is never answered.
  socket.on("close", () => {
    for (const answer of waiting.values()) answer({ error: "no answer", message: "the browser ended" });
    waiting.clear();
  });
  async function ask(method, params = {}) {
    if (socket.readyState !== WebSocket.OPEN) throw new Error(`${method}: the browser has ended`);
    const id = (asked += 1);
    const answer = new Promise((done) => waiting.set(id, done));
    socket.send(JSON.stringify({ id, method, params }));
    const { result, error, message } = await answer;
    if (error) throw new Error(`${method}: ${error}: ${message}`);
    return result;
  }
  function note({ method, params }) {
    if (method === "log.entryAdded") {
      if (["error", "warn"].includes(params.level)) problems.push(`console ${params.level}: ${params.text}`);
      return;
    }
    const { url } = params.request;
    if (/^https?:/.test(url) && new URL(url).origin !== origin) problems.push(`request to another place: ${url}`);
    // NS_BINDING_ABORTED is what a page that is left says of what was on its way.
    if (method === "network.fetchError" && !/ABORTED/.test(params.errorText)) problems.push(`request failed (${params.errorText}): ${url}`);
    if (method === "network.responseCompleted" && params.response.status >= 400) problems.push(`answer ${params.response.status}: ${url}`);
  }

  const { capabilities } = await ask("session.new", { capabilities: {} });
  const { contexts } = await ask("browsingContext.getTree");
  let { context } = contexts[0];
  await ask("session.subscribe", { events: ["log.entryAdded", "network.beforeRequestSent", "network.fetchError", "network.responseCompleted"] });

  async function call(source, args, plain) {
    const answer = await ask("script.callFunction", {
      functionDeclaration: plain ? source : `async (args) => JSON.stringify(await (${source})(...JSON.parse(args)))`,
      arguments: [{ type: "string", value: JSON.stringify(args) }],
      awaitPromise: true,
      target: { context },
    });
    if (answer.type === "exception") throw new Error(`in the page: ${answer.exceptionDetails.text}`);
    return answer.result;
  }
  const perform = (type, actions, parameters) => ask("input.performActions", { context, actions: [{ type, id: type, actions, ...(parameters && { parameters }) }] });

  return {
    version: `Firefox ${capabilities.browserVersion}`,
    problems,
    downloads,
    /** Whether the browser still answers. */
    alive: () => ask("session.status").then(() => true, () => false),
    /** A new tab has the keyboard; one that stays when its page changes may lose it, and then fields there are never left. */
    async fresh() {
      const before = context;
      ({ context } = await ask("browsingContext.create", { type: "tab" }));
      await ask("browsingContext.close", { context: before });
    },
    async open(url) {
      origin = new URL(url).origin;
      await ask("browsingContext.navigate", { context, url, wait: "complete" });
    },
    reload: () => ask("browsingContext.reload", { context, wait: "complete" }),
    async run(source, ...args) {
      const { value } = await call(source, args);
      return value === undefined ? undefined : JSON.parse(value);
    },
    press: (x, y) =>
      perform("pointer", [{ type: "pointerMove", x, y }, { type: "pointerDown", button: 0 }, { type: "pointerUp", button: 0 }], { pointerType: "mouse" }),
    keys: (keys) => perform("key", keys.flatMap((value) => [{ type: "keyDown", value }, { type: "keyUp", value }])),
    async setFiles(source, args, files) {
      const { sharedId } = await call(`(args) => (${source})(...JSON.parse(args))`, args, true);
      await ask("input.setFiles", { context, element: { sharedId }, files });
    },
    async picture() {
      const { data } = await ask("browsingContext.captureScreenshot", { context, origin: "viewport" });
      return Buffer.from(data, "base64");
    },
    /** The page as it would be printed on A4, in centimetres as the protocol has it. */
    async printed() {
      const { data } = await ask("browsingContext.print", { context, page: { width: 21, height: 29.7 }, margin: { top: 1, bottom: 1, left: 1, right: 1 } });
      return Buffer.from(data, "base64");
    },
    size: (width, height) => ask("browsingContext.setViewport", { context, viewport: { width, height }, devicePixelRatio: 2 }),
    async close() {
      if (child.exitCode !== null || child.signalCode !== null) return;
      const gone = once(child, "exit");
      await ask("browser.close").catch(() => child.kill());
      await gone;
    },
  };
}

/** Firefox says on its error stream where it listens. */
async function addressOf(child) {
  return new Promise((done, failed) => {
    let said = "";
    child.stderr.on("data", (text) => {
      said += text;
      const found = /BiDi listening on (ws:\S+)/.exec(said);
      if (found) done(found[1]);
    });
    child.once("error", failed);
    child.once("exit", (code) => failed(new Error(`Firefox ended at once, with exit code ${code}: ${said}`)));
    setTimeout(() => failed(new Error(`Firefox did not start within a minute: ${said}`)), 60_000).unref();
  });
}
