import assert from "node:assert/strict";
import { test } from "node:test";
import { RACK } from "../browser/rack.mjs";
import { despiteAnEnd, journeys, missing, start, visit } from "./engines.mjs";
import { host as newHost } from "./host.mjs";

journeys("webkit");

// What such a browser gives as its language is no language, and a question about its figures with it ended the program once.
test("on a machine without a language the page of tables opens, with a decimal point", { skip: missing("webkit"), timeout: 240_000 }, async () => {
  const host = await newHost();
  let driver;
  const renew = async () => {
    await driver?.close().catch(() => {});
    driver = await start("webkit", "C.UTF-8");
  };
  const made = async () => {
    const { hand } = await visit(driver, host, { rack: RACK });
    assert.equal(await hand.read(() => window.navigator.language), "C");
    await hand.go("#/hand-on", "Hand on");
    assert.equal(await hand.read(() => document.getElementById("crash").hidden), true);
    assert.ok(await hand.checked({ radio: /^Figures with a point/ }));
  };
  try {
    await renew();
    await despiteAnEnd(made, { alive: () => driver.alive(), renew, say: (why) => console.log(`engine: webkit ended by itself (${why}); once more`) });
  } finally {
    await driver?.close();
    await host.close();
  }
});
