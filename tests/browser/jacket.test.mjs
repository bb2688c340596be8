// A tailored jacket from the start page to its result, its ticket, its tape sheet, and beside a pair of jeans.

import assert from "node:assert/strict";
import { test } from "node:test";
import { RACK } from "./rack.mjs";
import { answer, answered, answers, begin, garmentId, go, headline, kept, moved, next, openCheck, openResult, question, reload, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");

test("a jacket is begun, checked, read, priced, measured and set beside jeans", async () => {
  await visitWith([RACK[0]], {}, async ({ page }) => {
    await go(page, "#/new", "Check a garment");
    const kinds = main(page).locator(".families label");
    const offered = await kinds.count();
    assert.ok(offered >= 2);
    // Each kind is drawn, and the hint in the empty field is about the kind that is chosen.
    assert.equal(await kinds.locator("svg").count(), offered);
    const hint = () => page.getByLabel("A name for it").getAttribute("placeholder");
    const before = await hint();
    await kinds.filter({ hasText: "Tailored jacket" }).click();
    await until(hint, (now) => now !== before, "another hint");

    await begin(page, { kind: "Tailored jacket", label: "Grey flannel", place: "Second floor", price: "329" });
    const id = garmentId(page);
    const seen = [];
    for (let made = 0; made < 6; made += 1) {
      const put = await question(page);
      assert.ok(!seen.includes(put), `asked twice: ${put}`);
      seen.push(put);
      // Every answer of these is drawn.
      assert.equal(await main(page).locator("label:has(input[type=radio]) svg").count(), await answers(page).count());
      await answer(page, made % 2);
      await next(page);
    }

    // The pattern is asked after only where there is one.
    await openCheck(page, /Plain or patterned/);
    await answer(page, 0);
    await openCheck(page, /Meeting of the pattern/);
    await answer(page, 1);

    // Cloth to spare can be measured: 15 mm lie between 10 and 20.
    await openCheck(page, /Cloth to spare/);
    await main(page).getByRole("button", { name: /Measure it/ }).click();
    await main(page).getByRole("textbox", { name: "Cloth beyond the stitching" }).fill("15");
    await main(page).getByRole("button", { name: "Use this reading" }).click();
    await main(page).getByRole("button", { name: "Used" }).waitFor();
    await kept(page);
    assert.ok((await answered(page)).length >= 9);

    await openResult(page);
    const said = await headline(page);
    assert.ok((await moved(page)).length >= 7);
    await reload(page);
    await openResult(page);
    assert.equal(await headline(page), said);

    // Behind the ticket: lines of a jacket, none of jeans.
    await go(page, `#/garment/${id}/ticket`, "Behind the ticket");
    await main(page).getByText("Lining and inner layers").first().waitFor();
    assert.equal(await main(page).getByText("Dry work").count(), 0);

    // The tape sheet: 53 cm flat are 106 round.
    await go(page, `#/garment/${id}/tape`, "Tape sheet");
    const chest = main(page).locator("section").filter({ has: page.getByRole("heading", { name: "Chest", exact: true }) });
    assert.equal(await chest.locator("svg.drawn").count(), 1);
    await chest.getByRole("textbox").fill("53");
    await chest.getByRole("textbox").blur();
    await chest.getByText(/106\.0 ± 0\.6 cm/).waitFor();
    await kept(page);

    // On the rack and beside a pair of jeans.
    await go(page, "#/", "Rack");
    await main(page).getByRole("link", { name: /Grey flannel/ }).waitFor();
    await go(page, `#/beside/${id}/${RACK[0].id}`, "Side by side");
    await main(page).getByText("Grey flannel").first().waitFor();
  });
});
