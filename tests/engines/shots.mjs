// Pictures of some screens at a phone's width in each engine, into shots/engines/, to be looked at.
//   sh scripts/tools.sh engines node tests/engines/shots.mjs

import { mkdir, writeFile } from "node:fs/promises";
import { RACK } from "../browser/rack.mjs";
import { missing, start, visit } from "./engines.mjs";
import { host as newHost } from "./host.mjs";

const of = (screen) => `#/garment/${RACK[0].id}/${screen}`;
const SCREENS = { rack: "#/", new: "#/new", check: of("check/spi"), result: of("result"), ticket: of("ticket"), fit: of("fit"), sheet: of("sheet"), settings: "#/settings", lesson: "#/learn/jeans/inseam", ruler: "#/ruler" };

const host = await newHost();
await mkdir("shots/engines", { recursive: true });
for (const name of ["firefox", "webkit"]) {
  if (missing(name)) {
    console.log(`${name}: ${missing(name)}`);
    continue;
  }
  const driver = await start(name);
  const { hand } = await visit(driver, host, { rack: RACK });
  for (const [screen, hash] of Object.entries(SCREENS)) {
    await hand.go(hash);
    await new Promise((done) => setTimeout(done, 400)); // until what moves has come to rest
    await writeFile(`shots/engines/${name}-${screen}.png`, await driver.picture());
  }
  await driver.close();
}
await host.close();
