//! The page around the app: its title, look, focus and width.

use garment_assay::say;
use gloo::events::EventListener;
use wasm_bindgen::JsCast;
use web_sys::{Document, Element, HtmlDialogElement, HtmlElement, HtmlInputElement, MediaQueryList, Node};
use yew::NodeRef;

fn document() -> Option<Document> {
    web_sys::window()?.document()
}

/// Opens the browser’s dialogue for printing.
pub fn print() {
    if let Some(window) = web_sys::window() {
        // Where the browser has no dialogue for it there is nothing to be done.
        let _ = window.print();
    }
}

/// Names the window.
pub fn set_title(title: &str) {
    if let Some(document) = document() {
        document.set_title(title);
    }
}

/// Sets `data-…` on the root element, for styles to follow.
pub fn set_root(name: &str, value: &str) {
    if let Some(root) = document().and_then(|document| document.document_element()) {
        let _ = root.set_attribute(&format!("data-{name}"), value);
    }
}

/// Moves focus to the heading of a screen that was just opened, and the view to its top.
pub fn focus_heading() {
    let Some(window) = web_sys::window() else { return };
    window.scroll_to_with_x_and_y(0.0, 0.0);
    // A screen may say that something else than its first heading is what was opened. Two queries: one for both would find whichever
    // stands first.
    let find = |selector| document().and_then(|document| document.query_selector(selector).ok().flatten());
    // Not in a part that is kept out of sight.
    let opens = find("main [data-opens]:not([hidden] *)").or_else(|| find("main h1:not([hidden] *)"));
    if let Some(heading) = opens {
        focus(&heading);
    }
}

/// Moves focus to a part.
pub fn focus_part(part: &NodeRef) {
    if let Some(node) = part.get() {
        focus(&node);
    }
}

/// Whether the keyboard is somewhere in a part.
pub fn holds_focus(part: &NodeRef) -> bool {
    let active = document().and_then(|document| document.active_element());
    part.get().zip(active).is_some_and(|(part, active)| part.contains(Some(&active)))
}

/// Whether the keyboard is somewhere in a part that a selector finds.
pub fn focus_is_in(selector: &str) -> bool {
    let active = document().and_then(|document| document.active_element());
    active.is_some_and(|active| active.closest(selector).is_ok_and(|part| part.is_some()))
}

/// Where the link leads that the keyboard is on.
pub fn focused_link() -> Option<String> {
    document()?.active_element()?.closest("main a[href]").ok()??.get_attribute("href")
}

/// Moves focus to the first link that leads there.
pub fn focus_link(href: Option<&str>) {
    let Some(document) = document().filter(|_| href.is_some()) else { return };
    let Ok(links) = document.query_selector_all("main a[href]") else { return };
    let leads = |link: &Node| link.dyn_ref::<Element>().and_then(|link| link.get_attribute("href")).as_deref() == href;
    if let Some(link) = (0..links.length()).filter_map(|at| links.item(at)).find(leads) {
        focus(&link);
    }
}

fn focus(node: &Node) {
    if let Some(element) = node.dyn_ref::<HtmlElement>() {
        let _ = element.focus();
    }
}

/// Moves focus to the first element within a part that a selector finds; whether there was one.
pub fn focus_within(part: &NodeRef, selector: &str) -> bool {
    let found = part.cast::<web_sys::Element>().and_then(|part| part.query_selector(selector).ok().flatten());
    if let Some(element) = &found {
        focus(element);
    }
    found.is_some()
}

/// Whether an event came from an element that a selector finds, or from within one.
pub fn is_within(event: &web_sys::Event, selector: &str) -> bool {
    let element = event.target().and_then(|target| target.dyn_into::<web_sys::Element>().ok());
    element.is_some_and(|element| element.closest(selector).ok().flatten().is_some())
}

/// Moves focus to a part, and the view so that it stands at the top.
pub fn bring_up(part: &NodeRef) {
    focus_part(part);
    if let Some(element) = part.cast::<web_sys::Element>() {
        element.scroll_into_view();
    }
}

/// Moves focus to a part.
pub fn focus_on(part: &NodeRef) {
    if let Some(node) = part.get() {
        focus(&node);
    }
}

/// Opens a dialog over the page.
pub fn open_dialog(dialog: &NodeRef) {
    if let Some(dialog) = dialog.cast::<HtmlDialogElement>()
        && !dialog.open()
    {
        let _ = dialog.show_modal();
    }
}

/// Closes a dialog, which gives focus back to where it was before; taking the element away does not.
pub fn close_dialog(dialog: &NodeRef) {
    if let Some(dialog) = dialog.cast::<HtmlDialogElement>() {
        dialog.close();
    }
}

/// Where the top edge of a part lies in the window, in CSS pixels.
pub fn top(part: &NodeRef) -> Option<f64> {
    Some(part.cast::<web_sys::Element>()?.get_bounding_client_rect().top())
}

/// Empties a file input, so that the same file can be chosen again.
pub fn clear_input(input: &NodeRef) {
    if let Some(input) = input.cast::<HtmlInputElement>() {
        input.set_value("");
    }
}

fn wide_query() -> Option<MediaQueryList> {
    web_sys::window()?.match_media("(min-width: 900px)").ok().flatten()
}

/// Whether rack, garment and detail fit beside each other.
pub fn is_wide() -> bool {
    wide_query().is_some_and(|query| query.matches())
}

/// Calls back when that changes, until the listener is dropped.
pub fn on_width_change(call: impl Fn() + 'static) -> Option<EventListener> {
    wide_query().map(|query| EventListener::new(&query, "change", move |_| call()))
}

/// Calls back when another window writes to local storage: key and new text, `None` for a key that was removed.
pub fn on_written_elsewhere(call: impl Fn(Option<String>, Option<String>) + 'static) -> Option<EventListener> {
    let window = web_sys::window()?;
    Some(EventListener::new(&window, "storage", move |event| {
        if let Some(event) = event.dyn_ref::<web_sys::StorageEvent>() {
            call(event.key(), event.new_value());
        }
    }))
}

/// Calls back when the page goes out of sight, which may be the last that it hears.
pub fn on_hidden(call: impl Fn() + 'static) -> Option<EventListener> {
    let page = document()?;
    let of = page.clone();
    Some(EventListener::new(&page, "visibilitychange", move |_| {
        if of.visibility_state() == web_sys::VisibilityState::Hidden {
            call();
        }
    }))
}

/// Whether the page is out of sight.
pub fn is_hidden() -> bool {
    document().is_some_and(|document| document.visibility_state() == web_sys::VisibilityState::Hidden)
}

/// The element that the app is mounted in.
pub fn mount() -> web_sys::Element {
    let document = document().expect("the app runs in a page");
    document.get_element_by_id("app").or_else(|| document.body().map(Into::into)).expect("a page has a body")
}

/// Says that the app is not all here.
pub fn say_not_loaded() {
    say(say!(
        "The app did not load. It needs the network once; after that it works without. Your notes are untouched. Load the page again where you have a network."
    ));
}

fn say(text: &str) {
    let Some(notice) = document().and_then(|document| document.get_element_by_id("crash")) else { return };
    notice.set_text_content(Some(text));
    let _ = notice.remove_attribute("hidden");
}

/// Shows the sentence for a crash, with what is known of it, and leaves word of what was being read. What can be done about it is offered by
/// `web/boot.js`, since nothing of this program runs any more.
pub fn say_crash(what: &str, reading: &str) {
    if let Some(notice) = document().and_then(|document| document.get_element_by_id("crash")) {
        let _ = notice.set_attribute("data-reading", reading);
    }
    say(&say!(
        "The app stopped at something it did not expect. What you answered before is kept. Load the page again to go on. ({what})",
        what
    ));
}
