// Every screen in a person's own few colours: whatever carries a meaning is still seen.

import assert from "node:assert/strict";
import { test } from "node:test";
import { colours } from "./colours.mjs";
import { onEveryScreen, onEveryScreenAlone } from "./every_screen.mjs";

/** What is not seen any more, or looks like what it is not. */
function look() {
  const found = [];
  const parts = (text) => (text.match(/[\d.]+/g) ?? []).map(Number);
  const { contrast } = window.colours;
  const seen = (text) => text !== "none" && !(parts(text).length === 4 && parts(text)[3] < 0.5) && parts(text).length >= 3;
  const canvas = parts(window.getComputedStyle(document.body).backgroundColor);

  // Shapes of charts and scales. Drawn cloth has its own colours, and marks on a picture have the picture under them.
  for (const svg of document.querySelectorAll("svg:not(.drawn, .over, .live-marks, .camera-guide)")) {
    if (!svg.checkVisibility({ opacityProperty: true }) || svg.closest(".lens, .skeleton, .drawn")) continue;
    const under = [];
    const isIn = (shape, x, y) => shape.isPointInFill(new window.DOMPoint(x, y).matrixTransform(shape.getScreenCTM().inverse()));
    // A row of strokes has a fill by name only.
    const hasArea = (shape, box) =>
      [0.1, 0.3, 0.5, 0.7, 0.9].some((across) => [0.1, 0.3, 0.5, 0.7, 0.9].some((down) => isIn(shape, box.left + across * box.width, box.top + down * box.height)));
    for (const shape of svg.querySelectorAll("path, rect, circle, line, text, polyline, polygon")) {
      const style = window.getComputedStyle(shape);
      const box = shape.getBoundingClientRect();
      if ((box.width < 0.5 && box.height < 0.5) || style.display === "none") continue;
      const filled = seen(style.fill) && (shape.localName === "text" || hasArea(shape, box));
      const [fill, stroke] = [filled ? parts(style.fill) : undefined, seen(style.stroke) && Number.parseFloat(style.strokeWidth) > 0 ? parts(style.stroke) : undefined];
      const [x, y] = [box.left + box.width / 2, box.top + box.height / 2];
      const ground = under.findLast(({ shape }) => isIn(shape, x, y))?.fill ?? canvas;
      // The bed of a line is there to be of the ground's colour, and the area under a curve is told by its line.
      // The end of a step stands out below its bar.
      if (!shape.matches(".fit-bed, .tape-area, .ticket-eye, .gap-edge") && (fill || stroke)) {
        const best = Math.max(fill ? contrast(fill, ground) : 0, stroke ? contrast(stroke, ground) : 0);
        if (best < 3 || Number(style.opacity) < 0.6) found.push(`not seen: ${shape.localName}.${shape.getAttribute("class") ?? ""} in svg.${svg.getAttribute("class") ?? ""} (${best.toFixed(1)})`);
      }
      if (fill && shape.localName !== "text") under.push({ shape, fill });
    }
  }

  // Words, on the plate that the browser lays behind them.
  const walker = document.createTreeWalker(document.body, window.NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const parent = node.parentElement;
    if (!node.data.trim() || parent.closest("svg, button, option, script, style, .unseen, .board") || !parent.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue;
    if (contrast(parts(window.getComputedStyle(parent).color), canvas) < 3) found.push(`words not seen: "${node.data.trim().slice(0, 30)}"`);
  }

  // What is chosen, open or here differs from its like by a line.
  const line = (element) => {
    const style = window.getComputedStyle(element);
    const field = element.querySelector("input");
    return [style.borderTopStyle, style.borderTopWidth, style.borderInlineStartStyle, style.borderInlineStartColor, style.borderTopColor, style.outlineStyle, style.outlineColor, field && window.getComputedStyle(field).opacity !== "0" ? field.checked : ""].join(" ");
  };
  const states = [
    ["data-chosen", "true"],
    ["aria-checked", "true"],
    ["aria-pressed", "true"],
    ["aria-current", "page"],
    ["data-at", "true"],
    ["data-set", "true"],
    ["data-active", "true"],
  ];
  for (const [key, on] of states) {
    for (const element of document.querySelectorAll(`[${key}="${on}"]`)) {
      if (!element.checkVisibility() || element.closest("svg")) continue;
      const off = element.cloneNode(true);
      // A copy without the state, in the same place for as long as it is looked at.
      off.setAttribute(key, "false");
      if (key === "aria-current") off.removeAttribute(key);
      for (const field of off.querySelectorAll("input")) {
        field.removeAttribute("name");
        field.checked = false;
      }
      element.after(off);
      if (line(off) === line(element)) found.push(`${key} is not seen: ${element.className || element.localName} "${element.textContent.trim().slice(0, 30)}"`);
      off.remove();
    }
  }

  // What lies over the page has an edge.
  for (const over of document.querySelectorAll(".toast, dialog[open], .card, .alert, .quiet-line")) {
    if (over.checkVisibility() && window.getComputedStyle(over).borderTopStyle === "none") found.push(`without an edge: ${over.className}`);
  }
  // A price that lies face down is not shown by them either.
  for (const field of document.querySelectorAll("[data-covered]")) {
    if (parts(window.getComputedStyle(field).color)[3] !== 0) found.push("a covered price is shown");
  }
  return [...new Set(found)];
}

/** Focus on some of what can have it. */
async function focus(page) {
  const found = [];
  for (let pressed = 0; pressed < 6; pressed += 1) {
    await page.keyboard.press("Tab");
    const fault = await page.evaluate(() => {
      const element = document.activeElement;
      if (!element || element === document.body) return "";
      const bearers = [element, element.labels?.[0], element.closest(".answer, .chip, .file")].filter(Boolean);
      const outlined = bearers.some((bearer) => window.getComputedStyle(bearer).outlineStyle !== "none" && Number.parseFloat(window.getComputedStyle(bearer).outlineWidth) >= 2);
      return outlined || element.querySelector(".reach") ? "" : `focus is not seen: ${element.localName} "${element.textContent.trim().slice(0, 30)}"`;
    });
    if (fault) found.push(fault);
  }
  return found;
}

const judge = async (page) => [...(await page.evaluate(colours).then(() => page.evaluate(look))), ...(await focus(page))];

test("in forced colours nothing that carries a meaning vanishes, on a dark ground", async () => {
  assert.deepEqual(await onEveryScreen({ scheme: "dark", context: { forcedColors: "active", reducedMotion: "reduce" } }, judge), []);
});

test("nor on a light one, on the screens that want a window of their own", async () => {
  assert.deepEqual(await onEveryScreenAlone({ context: { forcedColors: "active", reducedMotion: "reduce" } }, judge), []);
});
