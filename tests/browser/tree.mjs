// What a screen reader is told of a page: the browser's own accessibility tree, put into lines of plain text.

/** Roles that only hold others together, and are spoken by nobody; words before and after a block are not one sentence. */
const INLINE = new Set(["emphasis", "strong", "Abbr", "mark", "none", "ListMarker", "superscript"]);
const SILENT = new Set([...INLINE, "generic", "presentation", "RootWebArea", "sectionheader", "sectionfooter", "LayoutTable", "MenuListPopup", "LayoutTableRow", "LayoutTableCell", "Figcaption", "FigureCaption", "SvgRoot", "DescriptionListDetail", "rowgroup", "paragraph", "Section"]);
/** Roles whose own words say all: what is within is not read again. */
const WHOLE = new Set(["image", "Date", "img", "textbox", "searchbox", "spinbutton", "slider", "option", "caption", "LineBreak"]);

/** States worth a word, in this order; anything else a browser tells (focusable, editable) follows from the role. */
const STATES = ["level", "checked", "pressed", "expanded", "selected", "disabled", "invalid", "required", "readonly", "multiline", "live", "atomic", "busy", "modal"];
const UNSAID = new Set([false, "false", "none", undefined, ""]);
/** What these say of themselves without being told. */
const IMPLIED = { status: ["live", "atomic"], alert: ["live", "atomic"], option: ["selected", "checked"] };

const tidy = (text) => text.replace(/\s+/g, " ").trim();
/** Words that stand in elements of their own, as a sentence. */
const joined = (parts) => tidy(parts.join(" ").replace(/ (?=[.,;:)](?:\s|$))/g, ""));

/**
 * Asks the browser for the tree of a page.
 * @returns {Promise<{role: string, name: string, description: string, value: string, states: object, url: string, kids: object[]}>}
 */
export async function tree(page) {
  // Rows that are not on view are drawn late; a reader is told of them all the same.
  await page.evaluate(() => {
    const sheet = new window.CSSStyleSheet();
    sheet.replaceSync(".rack-row { content-visibility: visible !important; }");
    document.adoptedStyleSheets = [sheet];
  });
  const session = await page.context().newCDPSession(page);
  try {
    const { nodes } = await session.send("Accessibility.getFullAXTree");
    const byId = new Map(nodes.map((node) => [node.nodeId, node]));
    const made = (node) => {
      const properties = Object.fromEntries((node.properties ?? []).map(({ name, value }) => [name, value.value]));
      const role = node.ignored ? "none" : (node.role?.value ?? "none");
      const said = Object.fromEntries(STATES.filter((key) => !UNSAID.has(properties[key])).map((key) => [key, properties[key]]));
      for (const key of IMPLIED[role] ?? []) delete said[key];
      if (!["heading", "row"].includes(role)) delete said.level;
      return {
        role,
        name: tidy(String(node.name?.value ?? "")),
        description: tidy(String(node.description?.value ?? "")),
        value: tidy(String(properties.valuetext || (node.value?.value ?? ""))).replace(/^(\d+\.\d)\d+$/, "$1"),
        states: said,
        url: properties.url ?? "",
        // Of words only the words, not the lines that they stand in.
        kids: role === "StaticText" ? [] : (node.childIds ?? []).map((id) => byId.get(id)).filter(Boolean).map(made),
      };
    };
    return made(nodes[0]);
  } finally {
    await session.detach();
  }
}

/** All that is spoken below a node, in order. */
export function* spoken(node, way = []) {
  for (const kid of node.kids) {
    if (SILENT.has(kid.role)) yield* spoken(kid, way);
    else {
      yield { ...kid, way };
      if (!WHOLE.has(kid.role)) yield* spoken(kid, [...way, kid]);
    }
  }
}

/** The whole text below a node. */
const textOf = (node) => node.role === "StaticText" ? node.name : joined(node.kids.map(textOf));

const squeezed = (text) => text.replace(/\s/g, "");

/** A tree as lines, each indented under what it is in. */
export function lines(node, depth = 0) {
  const out = [];
  let run = [];
  const put = (text) => out.push(`${"  ".repeat(depth)}${text}`);
  const flush = () => {
    if (run.length > 0) put(JSON.stringify(joined(run)));
    run = [];
  };
  const one = (kid) => {
    const own = [kid.role];
    if (kid.name) own.push(JSON.stringify(kid.name));
    for (const [key, value] of Object.entries(kid.states)) own.push(value === true || value === "true" ? `[${key}]` : `[${key}=${value}]`);
    if (kid.value && kid.value !== kid.name) own.push(`value=${JSON.stringify(kid.value)}`);
    if (kid.description && kid.description !== kid.name) own.push(`(${kid.description})`);
    put(own.join(" "));
    if (WHOLE.has(kid.role)) return;
    const within = [...spoken(kid)];
    if (kid.role === "combobox") {
      const options = within.filter(({ role }) => role === "option").map(({ name }) => name);
      if (options.length > 0) put(`  ${options.join(" | ")}`);
      return;
    }
    // Words that are the name already are not written twice.
    if (within.every(({ role }) => role === "StaticText") && squeezed(textOf(kid)) === squeezed(kid.name)) return;
    out.push(...lines(kid, depth + 1));
  };
  const go = (kids, label = false) => {
    for (const kid of kids) {
      if (kid.role === "StaticText") {
        if (kid.name && !label) run.push(kid.name);
      } else if (INLINE.has(kid.role)) go(kid.kids, label);
      else if (["caption", "LineBreak"].includes(kid.role)) flush();
      else if (["LabelText", "Legend"].includes(kid.role)) {
        // A field's label is read with the field.
        flush();
        go(kid.kids, true);
      } else if (SILENT.has(kid.role)) {
        flush();
        go(kid.kids, label);
        flush();
      } else {
        flush();
        one(kid);
      }
    }
  };
  go(node.kids);
  flush();
  return out;
}

/**
 * What breaks the rules that hold for every screen.
 * @returns {string[]} one line for each
 */
export function broken(root) {
  const found = [];
  const all = [...spoken(root)];
  const said = (node) => `${node.role} "${node.name || textOf(node).slice(0, 40)}"`;
  const dialog = all.find(({ role, states }) => /dialog$/.test(role) && states.modal);
  const count = (role) => all.filter((node) => node.role === role).length;
  if (!dialog && count("main") !== 1) found.push(`${count("main")} main landmarks`);

  const headings = all.filter(({ role }) => role === "heading");
  const first = headings.filter(({ states }) => states.level === 1);
  if (!dialog && first.length !== 1) found.push(`${first.length} headings of the first level`);
  // Each landmark beside the main one is read by itself.
  const place = (node) => node.way.findLast(({ role }) => ["main", "complementary", "dialog", "alertdialog"].includes(role))?.role ?? "page";
  for (const where of new Set(headings.map(place))) {
    let before;
    for (const heading of headings.filter((one) => place(one) === where)) {
      const level = heading.states.level;
      if (before === undefined ? where === "main" && level !== 1 : level > before + 1) found.push(`level ${level} after ${before ?? "nothing"}: ${said(heading)}`);
      before = level;
      if (!heading.name) found.push("a heading without words");
    }
  }

  const named = ["button", "link", "textbox", "searchbox", "checkbox", "radio", "combobox", "slider", "spinbutton", "switch", "image", "img", "progressbar", "dialog", "alertdialog", "region", "DisclosureTriangle", "radiogroup", "navigation", "complementary"];
  for (const node of all) {
    if (named.includes(node.role) && !node.name) found.push(`without a name: ${node.role} in ${node.way.findLast(({ name }) => name)?.name?.slice(0, 50) ?? "the page"}`);
    if (["navigation", "region", "list", "search"].includes(node.role) && node.kids.length === 0) found.push(`nothing in it: ${said(node)}`);
    if (node.role === "table" && !node.name && !node.way.some(({ role, name }) => role === "region" && name)) found.push(`a table without a name: ${textOf(node).slice(0, 40)}`);
    if (node.description && node.name === node.description) found.push(`described by its own name: ${said(node)}`);
    const words = node.name.split(" ");
    if (words.length > 2 && words.length % 2 === 0 && words.slice(0, words.length / 2).join(" ") === words.slice(words.length / 2).join(" ")) found.push(`said twice: ${said(node)}`);
  }

  const landmark = (node) => node.way.findLast(({ role }) => ["main", "complementary", "navigation", "region", "dialog", "banner", "contentinfo", "form", "search"].includes(role));
  const links = new Map();
  for (const node of all.filter(({ role }) => role === "link")) {
    const where = landmark(node);
    const key = `${where?.role} ${where?.name} ${node.name} ${node.description}`;
    if (links.has(key) && links.get(key) !== node.url) found.push(`two places by one name: ${said(node)}: ${links.get(key).split("#")[1]} and ${node.url.split("#")[1]}`);
    links.set(key, node.url);
  }
  return found;
}
