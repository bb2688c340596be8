// What stands behind a ticket, worked out anew: after a change of the kind of shop, and when the page is opened, with 200 garments on the
// rack that teach. Not a test: `make bench`.
//   node tests/browser/measure_ticket.mjs [GARMENTS] [SLOWDOWN]

import { address, closeAll, visit } from "./harness.mjs";
import { manyGarments, page as pageOf, stored } from "./rack.mjs";
import { go } from "./steps.mjs";

const [count = 200, slowdown = 4] = process.argv.slice(2).map(Number);
const main = (page) => page.getByRole("main");
const sorted = (numbers) => [...numbers].sort((a, b) => a - b);
const said = (what, times) => console.log(`${what}: median ${sorted(times)[Math.floor(times.length / 2)].toFixed(0)} ms, worst of ${times.length} ${Math.max(...times).toFixed(0)} ms`);

const one = manyGarments(1)[0];
const garments = Array.from({ length: count + 1 }, (_, place) => ({
  ...manyGarments(count + 1)[place],
  ticket: { ...one.ticket, minor: 3000 + ((place * 733) % 20000) },
}));

try {
  const context = stored(await address(), garments.map((garment) => pageOf(garment)));
  await visit({ context, throttle: slowdown }, async ({ page }) => {
    await page.evaluate(() => {
      /** Runs `act`, and tells the milliseconds to the first task after the frame that shows what came of it. */
      window.taken = async (act) => {
        const start = performance.now();
        const changed = new Promise((done) => {
          const observer = new window.MutationObserver(() => {
            observer.disconnect();
            done();
          });
          observer.observe(document.querySelector("main"), { subtree: true, childList: true, attributes: true, characterData: true });
        });
        act();
        await changed;
        const update = performance.now() - start;
        await new Promise((done) => window.requestAnimationFrame(() => {
          const channel = new window.MessageChannel();
          channel.port1.onmessage = done;
          channel.port2.postMessage("");
        }));
        return { update, paint: performance.now() - start };
      };
    });
    const path = `#/garment/${garments[0].id}/ticket`;
    await go(page, path, "Behind the ticket");
    const taught = await main(page).getByText(/other tickets on your rack/).innerText();
    console.log(`${count} garments, processor ${slowdown} times slower; ${taught}`);
    const shop = main(page).getByLabel("Kind of shop");
    const kinds = await shop.locator("option").evaluateAll((options) => options.map(({ value }) => value));
    const changes = [];
    for (let turn = 0; turn < 20; turn += 1) {
      changes.push(
        await shop.evaluate((select, value) => window.taken(() => {
          select.value = value;
          select.dispatchEvent(new window.Event("change", { bubbles: true }));
        }), kinds[1 + (turn % (kinds.length - 1))]),
      );
    }
    said("a change of the kind of shop until the page has changed", changes.map(({ update }) => update));
    said("the same to the repainted page", changes.map(({ paint }) => paint));
  });
} finally {
  await closeAll();
}
