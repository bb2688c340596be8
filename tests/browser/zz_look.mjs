import { visit, closeAll } from "./harness.mjs";
import { visitWith } from "./steps.mjs";
import { RACK } from "./rack.mjs";
const [tag, size, scheme, ...paths] = process.argv.slice(2);
for (const p of paths) {
  const [name, path] = p.split("=");
  const body = async ({ page }) => { await page.waitForTimeout(400); await page.screenshot({ path: `/tmp/look/${tag}-${size}-${scheme}-${name}.png`, fullPage: size!=="desk" ? false : false }); };
  const where = path.replace(/@(\d)/, (w, n) => RACK[Number(n)].id);
  const ctx = size === "tiny" ? { locale: tag, viewport: { width: 320, height: 640 } } : { locale: tag };
  if (name.startsWith("empty")) await visit({ size: size==="tiny"?"small":size, scheme, context: ctx, path: where }, body).catch(e=>console.log(name,e.message.slice(0,200)));
  else await visitWith(RACK, { size: size==="tiny"?"small":size, scheme, context: ctx, path: where }, body).catch(e=>console.log(name,e.message.slice(0,200)));
}
await closeAll();
