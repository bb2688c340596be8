// How much of local storage a killed browser loses, which is why each page goes to IndexedDB too: `node tests/browser/measure_lag.mjs`.

import { closeAll, newProfile } from "./harness.mjs";

const RUNS = Number(process.env.RUNS ?? 6);
const lost = [];
for (let run = 0; run < RUNS; run += 1) {
  const profile = await newProfile();
  try {
    const { page } = await profile.start();
    await page.evaluate(() => {
      window.localStorage.setItem("lag", Date.now());
      window.setInterval(() => window.localStorage.setItem("lag", Date.now()), 20);
    });
    await page.waitForTimeout(4000 + 1700 * run);
    const last = await page.evaluate(() => Number(window.localStorage.getItem("lag")));
    await profile.kill();
    const again = await profile.start();
    const there = await again.page.evaluate(() => Number(window.localStorage.getItem("lag")));
    lost.push(there === 0 ? `all of ${4000 + 1700 * run} ms` : `${last - there} ms`);
  } finally {
    await profile.remove();
  }
}
console.log(JSON.stringify(lost));
await closeAll();
