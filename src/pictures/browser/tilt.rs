//! How flat the phone is held, where it tells.

use gloo::events::EventListener;
use js_sys::{Function, Reflect};
use wasm_bindgen::JsCast;
use web_sys::DeviceOrientationEvent;

/// How a phone leans away from lying flat, its screen up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tilt {
    /// Degrees from flat, 0 to 180.
    pub degrees: f64,
    /// Towards its right edge, -1 to 1.
    pub right: f64,
    /// Towards its lower edge, -1 to 1.
    pub down: f64,
}

impl Tilt {
    /// From the two angles a browser tells, in degrees: `beta` about the axis from left to right, `gamma` about the one from bottom to top.
    ///
    /// # Formula
    /// The screen's normal leans from the vertical by `acos(cos beta * cos gamma)`, for the turns about z, x', y'' in that order.
    ///
    /// # Source
    /// W3C, Device Orientation and Motion, the rotation matrix of its appendix: element (3, 3). From memory; worked out again here.
    pub fn of(beta: f64, gamma: f64) -> Tilt {
        let (beta, gamma) = (beta.to_radians(), gamma.to_radians());
        let upright = (beta.cos() * gamma.cos()).clamp(-1.0, 1.0);
        Tilt { degrees: upright.acos().to_degrees(), right: gamma.sin(), down: beta.sin() }
    }
}

/// Asks for permission where a browser wants to be asked, which it allows from a tap only. What comes of it shows in [`on_change`].
pub fn ask() {
    let Some(window) = web_sys::window() else { return };
    let ask = Reflect::get(&window, &"DeviceOrientationEvent".into())
        .and_then(|event| Ok((Reflect::get(&event, &"requestPermission".into())?, event)));
    if let Ok((ask, event)) = ask
        && let Ok(ask) = ask.dyn_into::<Function>()
        && let Ok(promise) = ask.call0(&event)
        && let Ok(promise) = promise.dyn_into::<js_sys::Promise>()
    {
        wasm_bindgen_futures::spawn_local(async move { drop(wasm_bindgen_futures::JsFuture::from(promise).await) });
    }
}

/// Calls back with each change, until the listener is dropped; never where the device does not tell.
pub fn on_change(call: impl Fn(Tilt) + 'static) -> Option<EventListener> {
    let window = web_sys::window()?;
    Some(EventListener::new(&window, "deviceorientation", move |event| {
        if let Some(event) = event.dyn_ref::<DeviceOrientationEvent>()
            && let (Some(beta), Some(gamma)) = (event.beta(), event.gamma())
        {
            call(Tilt::of(beta, gamma));
        }
    }))
}

#[cfg(test)]
mod tests {
    use super::Tilt;

    #[test]
    fn a_phone_on_a_table_is_flat_and_one_on_edge_stands() {
        assert!(Tilt::of(0.0, 0.0).degrees.abs() < 1e-9);
        assert!((Tilt::of(8.0, 0.0).degrees - 8.0).abs() < 1e-9);
        assert!((Tilt::of(0.0, -12.0).degrees - 12.0).abs() < 1e-9);
        assert!((Tilt::of(90.0, 0.0).degrees - 90.0).abs() < 1e-9);
        assert!((Tilt::of(180.0, 0.0).degrees - 180.0).abs() < 1e-9);
    }

    /// Two small tilts across each other add as the sides of a right angle do.
    #[test]
    fn small_tilts_add_as_sides_of_a_right_angle() {
        assert!((Tilt::of(3.0, 4.0).degrees - 5.0).abs() < 0.01);
    }
}
