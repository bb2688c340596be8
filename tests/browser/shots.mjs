// Pictures every screen in three sizes, light and dark: shots/NAME-SIZE-SCHEME.png.
//   node tests/browser/shots.mjs [NAME...]   only the named screens

import { mkdir } from "node:fs/promises";
import { closeAll, SIZES, visit } from "./harness.mjs";

/**
 * The screens: what follows the address, and what to do there before the picture is taken.
 * @type {{name: string, path?: string, act?: (page: import("playwright-core").Page) => Promise<void>, whole?: boolean}[]}
 */
const SCREENS = [{ name: "first" }];

const wanted = process.argv.slice(2);
await mkdir("shots", { recursive: true });
try {
  for (const screen of SCREENS.filter(({ name }) => wanted.length === 0 || wanted.includes(name))) {
    for (const size of Object.keys(SIZES)) {
      for (const scheme of ["light", "dark"]) {
        await visit({ path: screen.path, size, scheme, context: { reducedMotion: "reduce" } }, async ({ page }) => {
          await screen.act?.(page);
          await page.evaluate(() => document.fonts.ready);
          const file = `shots/${screen.name}-${size}-${scheme}.png`;
          await page.screenshot({ path: file, fullPage: screen.whole ?? false, animations: "disabled" });
          console.log(file);
        });
      }
    }
  }
} finally {
  await closeAll();
}
