// What is done with a picture on its page, and the picture that it is done with.

import { fileURLToPath } from "node:url";
import { until } from "./steps.mjs";

/** Our own drawn seam; what is known of it stands in tests/images/README.md. */
export const FILE = fileURLToPath(new URL("../images/seam-ruler.jpg", import.meta.url));
export const TRUTH = {
  perInch: 10.501,
  size: [1120, 840],
  /** Two graduations 50 mm apart, then the ends of the seam. */
  marks: [
    [201.13, 554.54],
    [1082.83, 645.13],
    [163.39, 282.97],
    [1057.15, 354.0],
  ],
};

/** Our own drawn stain, as told there. */
export const RUB = {
  file: fileURLToPath(new URL("../images/rub.jpg", import.meta.url)),
  grade: 3.56,
  marks: [[195, 195], [285, 285], [14, 195], [58, 285], [422, 195], [466, 285]],
};

const main = (page) => page.getByRole("main");
export const board = (page) => main(page).getByRole("application");

/** Where the picture lies on the screen. */
export const imageBox = (page) => board(page).locator(":scope > img").boundingBox();

/** Where a pixel of the picture is seen. */
export async function placeOnScreen(page, [x, y]) {
  await board(page).scrollIntoViewIfNeeded();
  const box = await imageBox(page);
  const width = Number(await board(page).locator(":scope > img").getAttribute("width"));
  const times = box.width / width;
  return [box.x + (x + 0.5) * times, box.y + (y + 0.5) * times];
}

/** Taps the marks one after the other. */
export async function setMarks(page, marks = TRUTH.marks) {
  const set = main(page).locator(".set-mark");
  const before = await set.count();
  for (const [done, mark] of marks.entries()) {
    await page.mouse.click(...(await placeOnScreen(page, mark)));
    await until(() => set.count(), (count) => count === before + done + 1, `mark ${done + 1}`);
  }
}

/** Fingers on the screen: `touch(kind, [[x, y], ...])`. */
export async function finger(page) {
  const session = await page.context().newCDPSession(page);
  return (type, points) =>
    session.send("Input.dispatchTouchEvent", { type, touchPoints: points.map(([x, y], id) => ({ x, y, id })) });
}
