// A shirt from the start page to its result, its ticket and its tape sheet.

import assert from "node:assert/strict";
import { test } from "node:test";
import { answer, answered, answers, begin, garmentId, go, headline, kept, moved, next, openCheck, openResult, question, reload, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");

test("a shirt is begun, checked, read, priced and measured", async () => {
  await visitWith([], {}, async ({ page }) => {
    await begin(page, { kind: "Shirt or blouse", label: "White poplin", place: "Ground floor", price: "49" });
    const id = garmentId(page);
    const seen = [];
    for (let made = 0; made < 6; made += 1) {
      const put = await question(page);
      assert.ok(!seen.includes(put), `asked twice: ${put}`);
      seen.push(put);
      assert.equal(await main(page).locator("label:has(input[type=radio]) svg").count(), await answers(page).count());
      await answer(page, made % 2 ? 2 : 1);
      await next(page);
    }

    // Stitches can be typed: 45 over 76 mm are 15 an inch.
    await openCheck(page, /Stitch density/);
    await main(page).getByRole("button", { name: /Measure it/ }).click();
    await main(page).getByRole("textbox", { name: /[Ss]titches/ }).first().fill("45");
    await main(page).getByRole("textbox", { name: /[Ll]ength/ }).first().fill("76.2");
    await main(page).getByRole("button", { name: "Use this reading" }).click();
    await main(page).getByRole("button", { name: "Used" }).waitFor();
    await kept(page);
    assert.ok((await answered(page)).length >= 6);

    await openResult(page);
    const said = await headline(page);
    assert.ok((await moved(page)).length >= 4);
    await reload(page);
    await openResult(page);
    assert.equal(await headline(page), said);

    // Behind the ticket: lines of a shirt, none of jeans.
    await go(page, `#/garment/${id}/ticket`, "Behind the ticket");
    await main(page).getByText("Press and tests").first().waitFor();
    assert.equal(await main(page).getByText("Dry work").count(), 0);

    // The tape sheet: 53 cm flat are 106 round.
    await go(page, `#/garment/${id}/tape`, "Tape sheet");
    const chest = main(page).locator("section").filter({ has: page.getByRole("heading", { name: "Chest", exact: true }) });
    assert.equal(await chest.locator("svg.drawn").count(), 1);
    await chest.getByRole("textbox").fill("53");
    await chest.getByRole("textbox").blur();
    await chest.getByText(/106\.0 ± 0\.6 cm/).waitFor();
    await kept(page);
  });
});
