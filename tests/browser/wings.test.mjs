// What is loaded when: a first visit loads the rack alone, the code of other pages comes by itself after that, and a page opened before
// its code is there, or without a network to fetch it by, says so and loses nothing.

import assert from "node:assert/strict";
import { test } from "node:test";
import { settled, visit } from "./harness.mjs";
import { begin, go, until } from "./steps.mjs";

const WINGS = /\/wing-[\w-]+\.wasm$/;
const whole = (page) => page.locator("html[data-whole=yes]").waitFor({ state: "attached" });

test("a first visit loads no wing, and all of them once the rack is on the screen", async () => {
  const asked = [];
  let ready = false;
  const before = (context) => context.on("request", (request) => WINGS.test(request.url()) && asked.push({ name: request.url().split("/").pop(), ready }));
  await visit({ before, ready: false }, async ({ page }) => {
    await page.locator("html[data-ready=yes]").waitFor({ state: "attached" });
    ready = true;
    await whole(page);
    assert.deepEqual(asked.filter(({ ready }) => !ready), []);
    const names = asked.map(({ name }) => name.split("-")[1]);
    for (const wing of ["house", "judging", "price", "body", "study"]) assert.ok(names.includes(wing), `${wing} among ${names}`);
    assert.equal(new Set(names).size, names.length, "each once");
    assert.ok(names.length < 40, `${names.length} files are more than a slow line likes`);
  });
});

test("an address that leads into a wing opens its page", async () => {
  await visit({ path: "#/settings" }, async ({ page }) => {
    await page.getByRole("heading", { name: "Settings", level: 1 }).waitFor();
  });
});

test("while its code is on the way a page says so, and the keyboard is on its heading when it comes", async () => {
  const held = [];
  const before = (context) => context.route(WINGS, (route) => held.push(route));
  await visit({ before }, async ({ page }) => {
    await page.getByRole("link", { name: "Settings" }).focus();
    await page.keyboard.press("Enter");
    await page.getByText("Loading this part of the app.").waitFor();
    assert.equal(await page.evaluate(() => document.activeElement.textContent), "One moment");
    await until(() => held.length, Boolean, "a request");
    const free = setInterval(() => held.splice(0).forEach((route) => route.continue()), 50);
    try {
      await page.getByRole("heading", { name: "Settings", level: 1 }).waitFor();
      await until(() => page.evaluate(() => document.activeElement.textContent), (text) => text === "Settings", "the keyboard on the heading");
      await whole(page);
    } finally {
      clearInterval(free);
    }
  });
});

test("without a network a page that was never loaded says so; a second try opens it, and no note is lost", async () => {
  let gone = true;
  const before = (context) => context.route(WINGS, (route) => (gone ? route.abort() : route.continue()));
  await visit({ before }, async ({ page, problems }) => {
    await page.getByRole("link", { name: "Check a garment" }).first().click();
    await page.getByRole("alert").getByText("did not load").waitFor();
    await settled(page);
    gone = false;
    await page.getByRole("button", { name: "Try again" }).click();
    await page.getByRole("heading", { name: "Check a garment", level: 1 }).waitFor();
    problems.length = 0;
    await begin(page, { label: "Second try" });
    await go(page, "#/", "Rack");
    await page.getByText("Second try").waitFor();
  });
});

test("a page is not shown before what it looks like is there; without a network that is said, and a second try brings it", async () => {
  let gone = true;
  const before = (context) => context.route("**/wings.css", (route) => (gone ? route.abort() : route.continue()));
  await visit({ before }, async ({ page, problems }) => {
    await page.getByRole("link", { name: "Settings" }).click();
    await page.getByRole("alert").getByText("did not load").waitFor();
    assert.equal(await page.getByRole("heading", { name: "Settings", level: 1 }).count(), 0);
    await settled(page);
    gone = false;
    await page.getByRole("button", { name: "Try again" }).click();
    await page.getByRole("heading", { name: "Settings", level: 1 }).waitFor();
    problems.length = 0;
    assert.equal(await page.locator('link[href$="/wings.css"]').count(), 1);
  });
});

test("the house is entered once: no page builds it anew", async () => {
  await visit({}, async ({ page }) => {
    await whole(page);
    await page.evaluate(() => (document.getElementById("main").dataset.mark = "same"));
    await go(page, "#/settings", "Settings");
    await go(page, "#/", "Rack");
    await begin(page, {});
    assert.equal(await page.evaluate(() => document.getElementById("main").dataset.mark), "same");
  });
});

/** Holds back what is asked for under such an address until it is let go. */
function held(address) {
  const routes = [];
  let open = false;
  return {
    before: (context) => context.route(address, (route) => (open ? route.continue() : routes.push(route))),
    letGo() {
      open = true;
      for (const route of routes.splice(0)) route.continue();
    },
  };
}
// What only the house has.
const HOUSE = "main ~ p.kept";

test("a tap that is under way when the house takes the place of the entrance is heard", async () => {
  const wings = held(WINGS);
  await visit({ before: wings.before }, async ({ page }) => {
    const link = page.getByRole("link", { name: "Check a garment" }).first();
    const { x, y, width, height } = await link.boundingBox();
    await page.mouse.move(x + width / 2, y + height / 2);
    await page.mouse.down();
    wings.letGo();
    await page.waitForTimeout(1000);
    assert.equal(await page.locator(HOUSE).count(), 0, "the entrance waits for the finger");
    await page.mouse.up();
    await page.getByRole("heading", { name: "Check a garment", level: 1 }).waitFor();
  });
});

test("a button that is never heard to be let go keeps the house waiting for a moment only", async () => {
  await visit({ ready: false }, async ({ page }) => {
    await page.getByRole("heading", { level: 1 }).waitFor();
    await page.mouse.move(5, 5);
    await page.mouse.down();
    await page.locator(HOUSE).waitFor({ state: "attached" });
  });
});

test("an invented rack that was asked for at the entrance and comes after the house is taken in", async () => {
  const file = held(/invented-rack\.json$/);
  await visit({ before: file.before }, async ({ page }) => {
    await page.getByRole("button", { name: "Look round in an invented rack" }).click();
    await page.locator(HOUSE).waitFor({ state: "attached" });
    file.letGo();
    await page.locator(".rack-row").first().waitFor();
  });
});

test("where the browser is asked to save data, a wing comes only when it is entered", async () => {
  const asked = [];
  const before = async (context) => {
    context.on("request", (request) => WINGS.test(request.url()) && asked.push(request.url().split("/").pop().split("-")[1]));
    await context.addInitScript(() => Object.defineProperty(window.navigator, "connection", { value: { saveData: true } }));
  };
  await visit({ before }, async ({ page }) => {
    await page.waitForTimeout(4000);
    assert.ok(asked.includes("house") && !asked.includes("judging") && !asked.includes("price"), asked.join(" "));
    await go(page, "#/new", "Check a garment");
    assert.ok(asked.includes("judging"));
  });
});
