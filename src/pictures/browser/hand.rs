//! Parts that are pushed, pulled and held by fingers: where they lie, and where they are put.

use web_sys::HtmlElement;
use yew::NodeRef;

/// Where a part lies in the window: left, top, width and height, in CSS pixels.
pub fn frame(part: &NodeRef) -> Option<[f64; 4]> {
    let frame = part.cast::<web_sys::Element>()?.get_bounding_client_rect();
    Some([frame.left(), frame.top(), frame.width(), frame.height()])
}

/// Lets a part hear of a finger until it is lifted, wherever it goes.
pub fn hold_pointer(part: &NodeRef, pointer: i32) {
    if let Some(part) = part.cast::<web_sys::Element>() {
        let _ = part.set_pointer_capture(pointer);
    }
}

/// Moves a part's upper left corner by so many CSS pixels and makes it so many times as large. Set from here, since the page's policy
/// refuses style attributes.
pub fn place(part: &NodeRef, [right, down, times]: [f64; 3]) {
    if let Some(part) = part.cast::<HtmlElement>() {
        let _ = part.style().set_property("transform", &format!("translate({right:.2}px,{down:.2}px) scale({times:.6})"));
    }
}
