// A jacket for outside from the start page to its result, its ticket and its tape sheet.

import assert from "node:assert/strict";
import { test } from "node:test";
import { answer, answered, answers, begin, garmentId, go, headline, kept, moved, next, openCheck, openResult, question, reload, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");

test("a padded jacket is begun, checked, read, priced and measured", async () => {
  await visitWith([], {}, async ({ page }) => {
    await begin(page, { kind: "Outerwear", label: "Green parka", place: "Ground floor", price: "140" });
    const id = garmentId(page);
    const seen = [];
    for (let made = 0; made < 6; made += 1) {
      const put = await question(page);
      assert.ok(!seen.includes(put), `asked twice: ${put}`);
      seen.push(put);
      assert.equal(await main(page).locator("label:has(input[type=radio]) svg").count(), await answers(page).count());
      await answer(page, 1);
      await next(page);
    }

    // The filling is judged where there is some, the drop where rain is spoken of.
    await openCheck(page, /Filled or not/);
    await answer(page, 2);
    await openCheck(page, /How even the filling is/);
    await answer(page, 2);
    await openCheck(page, /What it says of rain/);
    await answer(page, 1);
    await openCheck(page, /A drop of water/);
    await answer(page, 2);
    await kept(page);
    assert.ok((await answered(page)).length >= 8);

    await openResult(page);
    const said = await headline(page);
    assert.ok((await moved(page)).length >= 5);
    await reload(page);
    await openResult(page);
    assert.equal(await headline(page), said);

    await go(page, `#/garment/${id}/ticket`, "Behind the ticket");
    await main(page).getByText("Filling", { exact: true }).first().waitFor();
    assert.equal(await main(page).getByText("Dry work").count(), 0);

    await go(page, `#/garment/${id}/tape`, "Tape sheet");
    const chest = main(page).locator("section").filter({ has: page.getByRole("heading", { name: "Chest", exact: true }) });
    assert.equal(await chest.locator("svg.drawn").count(), 1);
    await chest.getByRole("textbox").fill("60");
    await chest.getByRole("textbox").blur();
    await chest.getByText(/120\.0 ± 0\.6 cm/).waitFor();
    await kept(page);
  });
});
