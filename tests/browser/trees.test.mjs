// What a screen reader is told of every screen: kept as text in trees/, and held to rules. `TREES=write` writes the texts anew.

import assert from "node:assert/strict";
import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { onEachScreen, onEveryScreen, steady, STEADY_CONTEXT } from "./every_screen.mjs";
import { SCREENS } from "./screens.mjs";
import { broken, lines, tree } from "./tree.mjs";

const FOLDER = fileURLToPath(new URL("trees/", import.meta.url));
const writing = process.env.TREES === "write";

/** The first line in which two texts differ, with its number. */
function difference(kept, now) {
  const [before, after] = [kept.split("\n"), now.split("\n")];
  const place = after.findIndex((line, place) => line !== before[place]);
  const at = place < 0 ? after.length : place;
  return `line ${at + 1}: kept ${JSON.stringify(before[at]?.trim())}, now ${JSON.stringify(after[at]?.trim())}`;
}

test("what is read aloud of every screen is what was read by somebody and kept, and keeps the rules", async () => {
  await mkdir(FOLDER, { recursive: true });
  const found = [];
  await onEachScreen({ context: { ...STEADY_CONTEXT, reducedMotion: "reduce" }, before: steady }, async (page, name) => {
    const root = await tree(page);
    for (const line of broken(root)) found.push(`${name}: ${line}`);
    const now = `${lines(root).join("\n")}\n`;
    const file = `${FOLDER}${name}.txt`;
    if (writing) return writeFile(file, now);
    const kept = await readFile(file, "utf8").catch(() => "");
    if (kept !== now) found.push(`${name}: ${difference(kept, now)}`);
  });
  assert.deepEqual(found, [], "if the new words are right when read from the top, renew the texts: TREES=write");
});

test("on a desk, with the rack beside them, all screens keep the rules too", async () => {
  assert.deepEqual(await onEveryScreen({ size: "desk", context: { reducedMotion: "reduce" } }, async (page) => broken(await tree(page))), []);
});

test("no text is kept of a screen that is gone", async () => {
  const names = new Set(SCREENS.map(({ name }) => `${name}.txt`));
  assert.deepEqual((await readdir(FOLDER)).filter((file) => !names.has(file)), []);
});
