// A dress from the start page to its result, its ticket and its tape sheet.

import assert from "node:assert/strict";
import { test } from "node:test";
import { answer, answered, answers, begin, garmentId, go, headline, kept, moved, next, openCheck, openResult, question, reload, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");

test("a dress is begun, checked, read, priced and measured", async () => {
  await visitWith([], {}, async ({ page }) => {
    await begin(page, { kind: "Dress or skirt", label: "Green pleats", place: "First floor", price: "70" });
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

    // The lining is asked after only where there is one.
    await openCheck(page, /With a lining/);
    await answer(page, 1);
    await openCheck(page, /How the lining moves/);
    await answer(page, 2);
    await kept(page);
    assert.ok((await answered(page)).length >= 6);

    await openResult(page);
    const said = await headline(page);
    assert.ok((await moved(page)).length >= 4);
    await reload(page);
    await openResult(page);
    assert.equal(await headline(page), said);

    await go(page, `#/garment/${id}/ticket`, "Behind the ticket");
    await main(page).getByText("Lining", { exact: true }).first().waitFor();
    assert.equal(await main(page).getByText("Dry work").count(), 0);

    await go(page, `#/garment/${id}/tape`, "Tape sheet");
    const hip = main(page).locator("section").filter({ has: page.getByRole("heading", { name: "Hip", exact: true }) });
    assert.equal(await hip.locator("svg.drawn").count(), 1);
    await hip.getByRole("textbox").fill("50");
    await hip.getByRole("textbox").blur();
    await hip.getByText(/100\.0 ± 0\.6 cm/).waitFor();
    await kept(page);
  });
});
