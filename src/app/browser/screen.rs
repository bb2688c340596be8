//! Which screen the page is on, as far as a browser tells, and whether it is magnified by two fingers.

use gloo::events::EventListener;
use gloo::timers::callback::Timeout;
use web_sys::{Window, window};

/// Names the screen as far as a browser tells: its size in CSS pixels and the device pixels to each. Page zoom, a change of the system's
/// scaling and a monitor of other figures change the name. Two monitors with the same figures and another size of glass do not: nothing
/// that a page may ask tells them apart.
pub fn name() -> Option<String> {
    let window = window()?;
    let screen = window.screen().ok()?;
    let (one, other) = (screen.width().ok()?, screen.height().ok()?);
    // A phone that is turned is the same screen.
    let (long, short) = (one.max(other), one.min(other));
    Some(format!("{long}x{short}@{:.4}", window.device_pixel_ratio()))
}

/// Whether two fingers have magnified the page: then nothing on it has its size.
pub fn is_magnified() -> bool {
    window().as_ref().and_then(Window::visual_viewport).is_some_and(|view| (view.scale() - 1.0).abs() > 0.001)
}

/// Height that a page can fill, in CSS pixels.
pub fn height() -> f64 {
    window().and_then(|window| window.inner_height().ok()?.as_f64()).unwrap_or(600.0)
}

/// Width of the page, in CSS pixels.
pub fn width() -> f64 {
    window().and_then(|window| window.inner_width().ok()?.as_f64()).unwrap_or(600.0)
}

/// Calls back when the page's size or zoom changes, until the listener is dropped.
pub fn on_change(call: impl Fn() + 'static) -> Option<EventListener> {
    window().map(|window| EventListener::new(&window, "resize", move |_| call()))
}

/// Calls back when two fingers magnify the page or the part of it in view changes its size, until the listener is dropped.
pub fn on_view_change(call: impl Fn() + 'static) -> Option<EventListener> {
    let view = window()?.visual_viewport()?;
    Some(EventListener::new(&view, "resize", move |_| call()))
}

/// Calls back once the screen was painted and taps were heard, unless what is returned is dropped before.
pub fn soon(call: impl FnOnce() + 'static) -> Timeout {
    Timeout::new(0, call)
}
