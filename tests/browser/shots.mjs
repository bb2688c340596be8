// Pictures every screen in three sizes, light and dark: shots/NAME-SIZE-SCHEME.png.
//   node tests/browser/shots.mjs [NAME...]   only the named screens
// SIZES="small desk" and SCHEMES="dark" keep to some; DIR=rtl lays them out from right to left, FORCED=1 takes the colours away.

import { mkdir } from "node:fs/promises";
import { address, closeAll, SIZES, visit } from "./harness.mjs";
import { page as pageOf, RACK, stored } from "./rack.mjs";
import { SCREENS } from "./screens.mjs";

const wanted = process.argv.slice(2);
const { SIZES: sizes, SCHEMES: schemes, DIR: dir, FORCED: forced } = process.env;
const kind = `${dir ? `-${dir}` : ""}${forced ? "-forced" : ""}`;
await mkdir("shots", { recursive: true });
try {
  for (const screen of SCREENS.filter(({ name }) => wanted.length === 0 || wanted.includes(name))) {
    for (const size of sizes?.split(" ") ?? Object.keys(SIZES)) {
      for (const scheme of schemes?.split(" ") ?? ["light", "dark"]) {
        const pages = [...((screen.filled ?? true) ? RACK.map((garment) => pageOf(garment)) : []), ...(screen.pages ?? [])];
        const context = { reducedMotion: "reduce", ...(forced ? { forcedColors: "active" } : {}), ...stored(await address(), pages) };
        await visit({ path: screen.path, size, scheme, context, args: screen.args, before: screen.before }, async ({ page }) => {
          await screen.act?.(page);
          await page.evaluate(() => document.fonts.ready);
          if (dir) await page.evaluate((dir) => (document.documentElement.dir = dir), dir);
          if (screen.whole) {
            // A window as tall as the page, so that what is pinned stands where it belongs and not across the middle.
            const { width } = page.viewportSize();
            await page.setViewportSize({ width, height: await page.evaluate(() => document.documentElement.scrollHeight) });
          }
          const file = `shots/${screen.name}-${size}-${scheme}${kind}.png`;
          await page.screenshot({ path: file, animations: "disabled" });
          console.log(file);
        });
      }
    }
  }
} finally {
  await closeAll();
}
