// How long photographs take: adding them, and a thousand garments with two hundred of them out and in again. Prints what it measures and
// asserts nothing but that nothing is lost.
//   node tests/browser/measure_photographs.mjs

import { closeAll } from "./harness.mjs";
import { file, jpeg, kept } from "./photographs.mjs";
import { garment } from "./rack.mjs";
import { go, plan, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const COUNT = 200;
const EACH = 20;
const rack = Array.from({ length: 1000 }, (_, place) => garment(`m${place}`, { label: `Garment ${place}`, answers: 6 }));
const took = async (what, act) => {
  const start = performance.now();
  const result = await act();
  console.log(`${what}: ${Math.round(performance.now() - start)} ms`);
  return result;
};

try {
  await visitWith(rack, { path: "#/garment/m0/photographs" }, async ({ page }) => {
    page.context().setDefaultTimeout(300_000);
    // As large as a telephone's, and full of detail: a drawn one of two colours would be far too easy.
    await page.evaluate(() => {
      const draw = window.CanvasRenderingContext2D.prototype.fillRect;
      window.noisy = (canvas, seed) => {
        const context = canvas.getContext("2d");
        for (let place = 0; place < 4000; place += 1) {
          const at = Math.sin(place * 12.9898 + seed) * 43758.5453;
          context.fillStyle = `hsl(${(at * 360) % 360} 40% ${30 + ((place * 7) % 50)}%)`;
          draw.call(context, Math.abs((at * 7919) % canvas.width), Math.abs((at * 104729) % canvas.height), 90, 60);
        }
      };
    });
    const large = async (seed) => {
      const bytes = await page.evaluate(async (seed) => {
        const canvas = document.createElement("canvas");
        [canvas.width, canvas.height] = [4000, 3000];
        window.noisy(canvas, seed);
        const blob = await new Promise((made) => canvas.toBlob(made, "image/jpeg", 0.9));
        const bytes = new Uint8Array(await blob.arrayBuffer());
        let text = "";
        for (let at = 0; at < bytes.length; at += 0x8000) text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
        return window.btoa(text);
      }, seed);
      return Buffer.from(bytes, "base64");
    };
    const one = await large(1);
    console.log(`a picture of 12 million pixels, ${Math.round(one.length / 1000)} KB`);
    await took("to add it", async () => {
      await main(page).getByLabel("Choose photographs").setInputFiles(file(one));
      await main(page).locator(".photograph img").first().waitFor();
    });
    const some = [];
    for (let place = 0; place < COUNT; place += 1) some.push(file(await jpeg(page, { width: 800, height: 600, orientation: 1, stripes: 1 + (place % 40), left: `hsl(${place} 50% 40%)` }), `${place}.jpg`));
    await took(`to add ${COUNT} of 800 by 600, ${EACH} to a garment`, async () => {
      for (let from = 0; from < COUNT; from += EACH) {
        await go(page, `#/garment/m${1 + from / EACH}/photographs`, "Photographs");
        await main(page).getByLabel("Choose photographs").setInputFiles(some.slice(from, from + EACH));
        await main(page).getByText(`${EACH} photographs added.`).waitFor();
      }
    });
    const before = await kept(page);
    const bytes = Object.values(before).reduce((sum, { size }) => sum + size, 0);
    console.log(`${Object.keys(before).length} kept, ${(bytes / 1e6).toFixed(1)} MB`);
    await go(page, "#/settings", "Settings");
    const zip = await took("to pack and save all", async () => {
      const [download] = await Promise.all([page.waitForEvent("download"), main(page).getByRole("button", { name: "Export with photographs (zip)" }).click()]);
      return download.path();
    });
    await main(page).getByRole("button", { name: "Erase everything" }).click();
    await page.getByRole("dialog").getByRole("button", { name: "Erase", exact: true }).click();
    await page.getByRole("dialog").getByRole("button", { name: "Yes, erase all" }).click();
    await until(async () => Object.keys(await kept(page)).length, (count) => count === 0, "the pictures to go");
    // An empty rack is what opens after that.
    await go(page, "#/settings", "Settings");
    await took("to read the zip and show what it would change", async () => {
      await page.getByLabel("Choose a file to import").setInputFiles(zip);
      await plan(page).getByText(/come with it/).waitFor();
    });
    await took("to take it in", async () => {
      await plan(page).getByRole("button", { name: "Merge", exact: true }).click();
      await page.getByText(/^Imported: /).waitFor();
    });
    const after = await kept(page);
    if (JSON.stringify(after) !== JSON.stringify(before)) throw new Error("something was lost");
    console.log("every byte came back");
  });
} finally {
  await closeAll();
}
