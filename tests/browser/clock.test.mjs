// A clock that is moved back between two visits: what was noted "later" than now is there, can be gone on with, and is not written over.

import assert from "node:assert/strict";
import { test } from "node:test";
import { visit } from "./harness.mjs";
import { answer, answered, begin, garmentId, go, kept, mirror, next, openResult, reload, storage, until } from "./steps.mjs";

const main = (page) => page.getByRole("main");

test("a garment noted before the clock was moved back four years is as it was, and takes the next answer", async () => {
  await visit({}, async ({ page }) => {
    await page.clock.setFixedTime(new Date("2030-06-01T10:00:00Z"));
    await reload(page);
    await begin(page, { label: "From later", price: "89.90" });
    const id = garmentId(page);
    await answer(page, 0);
    await next(page);
    await answer(page, 1);
    const list = await answered(page);
    const key = `garment-assay/page/${id}`;
    const before = (await storage(page))[key];

    await page.clock.setFixedTime(new Date("2026-02-01T10:00:00Z"));
    await reload(page);
    await kept(page);
    assert.equal((await storage(page))[key], before, "nothing was written only because the clock was moved");
    await main(page).getByRole("heading").first().waitFor();
    await go(page, "#/", "Rack");
    await main(page).getByText("From later").waitFor();
    await begin(page, { label: "From now" });
    await answer(page, 0);
    await go(page, `#/garment/${id}/check/inseam`, /./);
    await main(page).getByRole("radio").first().waitFor();
    await answer(page, 0);
    const wanted = list.length + ((await answered(page)).length > list.length ? 1 : 0);
    assert.equal(wanted, list.length + 1, "the answer is among the others");
    await reload(page);
    await kept(page);
    const pages = await storage(page);
    assert.equal(Object.keys(pages).length, 2, "no conflict with itself");
    await until(() => mirror(page), (there) => there[key] === pages[key], "the mirror to have the later page");
    assert.equal(JSON.parse(pages[key].split("\n")[1]).noted, "2030-06-01");
    assert.equal(JSON.parse(pages[key].split("\n")[1]).answers.length, 3);
    await go(page, `#/garment/${id}/result`, "What this does not say");
    await openResult(page);
    assert.equal(await main(page).locator(".set-aside").count(), 0);
  });
});
