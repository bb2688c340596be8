// Which engines are on this machine, and the journeys run in one of them: one browser, one journey after the other.

import assert from "node:assert/strict";
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { setTimeout as pause } from "node:timers/promises";
import { page as pageOf } from "../browser/rack.mjs";
import { firefox } from "./firefox.mjs";
import { hand as handOf } from "./hand.mjs";
import { host as newHost } from "./host.mjs";
import { JOURNEYS } from "./journeys.mjs";
import { webkit } from "./webkit.mjs";

/** How each engine is started; what it needs is named by `scripts/tools.sh engines` in the environment. */
const ENGINES = {
  firefox: { needs: ["FIREFOX"], start: (folder) => firefox(process.env.FIREFOX, folder) },
  webkit: {
    needs: ["WEBKIT_DRIVER", "WEBKIT_BROWSER"],
    start: (folder, language) => webkit({ driver: process.env.WEBKIT_DRIVER, browser: process.env.WEBKIT_BROWSER, language }, folder),
  },
};
/**
 * What Firefox and WebKit have a page say of code that was still on its way when the page was loaded again. In Firefox a request that failed
 * otherwise is told besides; in WebKit one that never had an answer is not, so of those this takes the last word away.
 */
const BROKEN_OFF = /AbortError: The operation was aborted|NetworkError when attempting to fetch|TypeError: Load failed/;
const PHONE = [390, 844];

/** Why the journeys cannot be made in that engine here, in a sentence; nothing where they can. */
export function missing(name) {
  const absent = ENGINES[name].needs.filter((need) => !process.env[need]);
  if (absent.length === 0) return undefined;
  return process.env.ENGINES_MISSING || `run it by 'scripts/tools.sh engines', which sets ${absent.join(" and ")}`;
}

/** Starts that engine with a folder of its own, on a machine of that language where it can be told. Returns the driver; its `close` removes the folder. */
export async function start(name, language) {
  const folder = await mkdtemp(join(tmpdir(), `garment-assay-${name}-`));
  const driver = await ENGINES[name].start(folder, language);
  const { close } = driver;
  driver.close = async () => {
    await close();
    await rm(folder, { recursive: true, force: true, maxRetries: 5 });
  };
  return driver;
}

/** Opens the app at a host's fresh port, with these garments noted already. */
export async function visit(driver, host, { rack = [], size = PHONE, copies = false } = {}) {
  const server = await host.serve(copies);
  const hand = handOf(driver);
  await driver.fresh();
  await driver.size(...size);
  if (rack.length > 0) {
    // Any page of the origin will do to lay them on the shelf; this one starts nothing.
    await driver.open(`${server.url}learn/jeans.txt`);
    await hand.read((pages) => pages.forEach(([key, text]) => window.localStorage.setItem(key, text)), rack.map((garment) => pageOf(garment)));
  }
  driver.problems.length = 0; // what the page before still had on its way, and the icon that this one looked for
  await hand.open(server.url);
  return { hand, driver, server, home: server.url };
}

/** Declares the journeys as tests in that engine. */
export function journeys(name) {
  const why = missing(name);
  if (why) return test(`the journeys in ${name}`, { skip: why });
  let driver, host;
  before(async () => {
    host = await newHost();
    driver = await start(name);
    console.log(`engine: ${driver.version}`);
  });
  after(async () => {
    await driver?.close();
    await host?.close();
  });
  for (const [title, journey, options = {}] of JOURNEYS) {
    const made = async () => {
      const visited = { problems: {} };
      try {
        Object.assign(visited, await visit(driver, host, options));
        await journey(visited);
      } catch (error) {
        throw await told(error, name, title, visited);
      }
      const noted = [...driver.problems, ...(await seen(visited.hand))];
      // Once the server is gone the browser may well say so.
      const left = noted.filter((line) => !visited.problems.expected?.test(line) && !BROKEN_OFF.test(line) && !(options.offline && /request failed|not loaded|sw\.js/.test(line)));
      assert.deepEqual(left, [], "something went wrong out of sight");
    };
    const renew = async () => {
      await driver.close().catch(() => {});
      driver = await start(name);
    };
    const say = (why) => console.log(`engine: ${name} ended by itself (${why}); a new session makes this journey once more: ${title}`);
    test(title, { timeout: 240_000 }, () => despiteAnEnd(made, { alive: () => answers(driver), renew, say }));
  }
}

/**
 * Does it; where it fails because the browser has ended by itself, once more with a new one. What fails in a browser that is alive, or a second
 * time, fails.
 */
export async function despiteAnEnd(made, { alive, renew, say }) {
  try {
    return await made();
  } catch (error) {
    if (await alive()) throw error;
    say(error.message.split("\n")[0]);
  }
  await renew();
  return made();
}

/** Whether the browser answers within ten seconds. */
async function answers(driver) {
  const patience = new globalThis.AbortController();
  const answer = await Promise.race([driver.alive(), pause(10_000, false, { signal: patience.signal })]);
  patience.abort();
  return answer;
}

/** What the script before the app noted. */
const seen = (hand) => hand.read(() => JSON.parse(window.sessionStorage.getItem("watch") ?? "[]"));

/** The error, with what was noted meanwhile; a picture of it too, where that was asked for. */
async function told(error, name, title, { hand }) {
  if (process.env.ENGINES_PICTURES && hand) {
    await mkdir(process.env.ENGINES_PICTURES, { recursive: true });
    const picture = await hand.driver.picture().catch(() => undefined);
    if (picture) await writeFile(join(process.env.ENGINES_PICTURES, `failed-${name}-${title.slice(0, 20).replace(/\W/g, "-")}.png`), picture);
  }
  const noted = [...(hand?.driver.problems ?? []), ...(hand ? await seen(hand).catch(() => []) : [])];
  error.message += `\nnoted meanwhile:\n${noted.join("\n")}`;
  return error;
}
