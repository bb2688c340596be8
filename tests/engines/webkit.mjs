// WebKitGTK, driven by its own WebDriver (W3C, classic) over plain requests, in a window on a screen that nobody sees. This driver tells
// nothing of console or requests: what it cannot see, the script that host.mjs puts before the app notes.

import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdir, writeFile } from "node:fs/promises";
import { createServer } from "node:net";
import { join } from "node:path";

/** The key under which the protocol hands elements over. */
const ELEMENT = "element-6066-11e4-a52e-4f735466cecf";

/**
 * Starts a screen, the driver and the browser in the machine's language named, all that they keep in that folder.
 * @returns {Promise<object>} the driver; hand.mjs says what all drivers can do
 */
export async function webkit({ driver, browser, language = "en_GB.UTF-8" }, folder) {
  // The browser's bar would not let the window be as narrow as a phone.
  await mkdir(join(folder, "config/gtk-3.0"), { recursive: true });
  await writeFile(join(folder, "config/gtk-3.0/gtk.css"), "* { min-width: 0; min-height: 0; padding: 0; margin: 0; border-width: 0; font-size: 1px; }\n");
  const started = [];
  const start = (name, args, options) => {
    const child = spawn(name, args, options);
    started.unshift(child);
    return child;
  };
  const screen = start("Xvfb", ["-displayfd", "3", "-screen", "0", "1400x1100x24", "-nolisten", "tcp"], { stdio: ["ignore", "ignore", "ignore", "pipe"] });
  const [display] = await Promise.race([once(screen.stdio[3], "data"), failing(screen, "Xvfb")]);
  const port = await freePort();
  const server = start(driver, [`--port=${port}`], {
    stdio: "ignore",
    env: {
      ...process.env,
      DISPLAY: `:${String(display).trim()}`,
      HOME: folder,
      XDG_CONFIG_HOME: join(folder, "config"),
      XDG_CACHE_HOME: join(folder, "cache"),
      XDG_DATA_HOME: join(folder, "data"),
      LANG: language,
      NO_AT_BRIDGE: "1",
      // Its sandbox needs rights that a container does not give.
      WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: "1",
      // Without a graphics processor frames go by shared memory. Compositing must stay on: told to do without it
      // (WEBKIT_DISABLE_COMPOSITING_MODE), 2.50.6 ended at the first view transition, in each of three settings tried, and took seven times as
      // long for a picture.
      WEBKIT_DMABUF_RENDERER_FORCE_SHM: "1",
    },
  });

  async function ask(method, path, body) {
    // Without compositing a picture of a page was at times never answered (seen on the settings).
    const signal = globalThis.AbortSignal.timeout(45_000);
    const answer = await fetch(`http://127.0.0.1:${port}${path}`, { method, signal, ...(method === "POST" && { body: JSON.stringify(body ?? {}) }) });
    const { value } = await answer.json();
    if (value?.error) throw new Error(`${path.split("/").slice(3).join("/")}: ${value.error}: ${value.message}`);
    return value;
  }
  for (let tried = 0; ; tried += 1) {
    try {
      await Promise.race([ask("GET", "/status"), failing(server, "the driver of WebKit")]);
      break;
    } catch (error) {
      if (tried === 100 || server.exitCode !== null) throw error;
      await new Promise((done) => setTimeout(done, 50));
    }
  }
  const { sessionId, capabilities } = await ask("POST", "/session", {
    capabilities: { alwaysMatch: { "webkitgtk:browserOptions": { binary: browser, args: ["--automation"] } } },
  });
  const session = `/session/${sessionId}`;
  const run = async (source, args) => {
    // The protocol's own way back leaves nothing out for what throws: it is caught here and told.
    const script = `const [args, done] = arguments; (async () => (${source})(...JSON.parse(args)))().then((value) => done(JSON.stringify({ value })), (error) => done(JSON.stringify({ error: String(error.stack ?? error) })));`;
    const { value, error } = JSON.parse(await ask("POST", `${session}/execute/async`, { script, args: [JSON.stringify(args)] }));
    if (error !== undefined) throw new Error(`in the page: ${error}`);
    return value;
  };
  const perform = (type, actions, parameters) => ask("POST", `${session}/actions`, { actions: [{ type, id: type, actions, ...(parameters && { parameters }) }] });

  return {
    version: `WebKitGTK ${capabilities.browserVersion}`,
    problems: [],
    /** Whether the browser still answers. */
    alive: () => run("() => true", []).catch(() => false),
    /** Windows under this driver are private ones, always. */
    private: true,
    downloads: folder,
    fresh: () => ask("POST", `${session}/url`, { url: "about:blank" }),
    open: (url) => ask("POST", `${session}/url`, { url }),
    reload: () => ask("POST", `${session}/refresh`),
    run: (source, ...args) => run(source, args),
    press: (x, y) =>
      perform("pointer", [{ type: "pointerMove", duration: 0, x, y }, { type: "pointerDown", button: 0 }, { type: "pointerUp", button: 0 }], { pointerType: "mouse" }),
    keys: (keys) => perform("key", keys.flatMap((value) => [{ type: "keyDown", value }, { type: "keyUp", value }])),
    async setFiles(source, args, files) {
      const element = await ask("POST", `${session}/execute/sync`, { script: `return (${source})(...JSON.parse(arguments[0]))`, args: [JSON.stringify(args)] });
      await ask("POST", `${session}/element/${element[ELEMENT]}/value`, { text: files.join("\n") });
    },
    picture: async () => Buffer.from(await ask("GET", `${session}/screenshot`), "base64"),
    /** The window is made larger by its own bar, whose height is seen only then. */
    async size(width, height) {
      let [wide, high] = [width, height];
      for (let tried = 0; tried < 5; tried += 1) {
        await ask("POST", `${session}/window/rect`, { x: 0, y: 0, width: wide, height: high });
        const [seenWide, seenHigh] = await run("() => [window.innerWidth, window.innerHeight]", []);
        if (seenWide === width && seenHigh === height) return;
        [wide, high] = [wide + width - seenWide, high + height - seenHigh];
      }
    },
    async close() {
      await ask("DELETE", session).catch(() => {});
      for (const child of started) {
        if (child.exitCode !== null) continue;
        const gone = once(child, "exit");
        child.kill();
        await gone;
      }
    },
  };
}

async function failing(child, name) {
  const [code] = await once(child, "exit");
  throw new Error(`${name} ended at once, with exit code ${code}`);
}

async function freePort() {
  const server = createServer().listen(0, "127.0.0.1");
  await once(server, "listening");
  const { port } = server.address();
  server.close();
  return port;
}
