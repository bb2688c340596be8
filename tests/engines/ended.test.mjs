// A browser that ends by itself costs a journey one more try and nothing else does. No browser is needed for this.

import assert from "node:assert/strict";
import { test } from "node:test";
import { despiteAnEnd } from "./engines.mjs";

/** Makes a journey that goes as `ends` says, one word a try, and notes what is done. */
async function tried(...ends) {
  const done = [];
  let alive = true;
  const made = async () => {
    const end = ends.shift();
    done.push(end);
    alive = end !== "ended";
    if (end !== "passed") throw new Error(`${end}\nnoted meanwhile:`);
  };
  const outcome = await despiteAnEnd(made, { alive: async () => alive, renew: async () => done.push("new"), say: (why) => done.push(`said ${why}`) }).then(
    () => "passes",
    (error) => `fails: ${error.message.split("\n")[0]}`,
  );
  return [...done, outcome];
}

test("a browser that ends by itself is replaced once, and it is said; what a living one fails is not tried again", async () => {
  assert.deepEqual(await tried("passed"), ["passed", "passes"]);
  assert.deepEqual(await tried("ended", "passed"), ["ended", "said ended", "new", "passed", "passes"]);
  assert.deepEqual(await tried("failed", "passed"), ["failed", "fails: failed"]);
  assert.deepEqual(await tried("ended", "ended", "passed"), ["ended", "said ended", "new", "ended", "fails: ended"]);
  assert.deepEqual(await tried("ended", "failed", "passed"), ["ended", "said ended", "new", "failed", "fails: failed"]);
});
