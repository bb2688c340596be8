//! The camera: its picture on a video, a frame of it kept, its lamp; and a picture out of a file where there is none.
//!
//! The tracks run only while somebody looks: they end when the camera is let go or the page is hidden, and begin anew when it is seen again.

use std::cell::{Cell, RefCell};
use std::rc::{Rc, Weak};

use garment_assay::say;
use gloo::events::EventListener;
use js_sys::{Function, JSON, Reflect};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{
    Blob, CanvasRenderingContext2d, DomException, HtmlCanvasElement, HtmlInputElement, HtmlVideoElement, ImageBitmap,
    MediaStream, MediaStreamConstraints, MediaStreamTrack, VisibilityState,
};
use yew::NodeRef;

/// Why there is no picture from a camera.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CameraFault {
    /// The person or the browser refused.
    Refused,
    /// The device has none.
    Missing,
    /// Another app holds it, or it did not start.
    Busy,
    /// The page did not come over a safe connection, so that the browser lends none.
    Insecure,
    /// The browser lends none to any page.
    Unsupported,
}

impl CameraFault {
    /// What the person is told, and what to do.
    pub fn sentence(self) -> &'static str {
        match self {
            CameraFault::Refused => {
                say!(
                    "The browser does not let this page use the camera. Allow it beside the address of the page, or in the site settings of \
                 the browser, then try again."
                )
            }
            CameraFault::Missing => say!("No camera was found on this device."),
            CameraFault::Busy => {
                say!("The camera did not start. Another app or tab may be using it: close that, then try again.")
            }
            CameraFault::Insecure => {
                say!("A browser lends the camera only to a page that came over https. Open the app that way.")
            }
            CameraFault::Unsupported => say!("This browser lends no camera to pages."),
        }
    }

    /// Whether trying again can help.
    pub const fn can_pass(self) -> bool {
        matches!(self, CameraFault::Refused | CameraFault::Busy)
    }
}

/// What the camera shows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Seen {
    /// Nothing yet.
    Starting,
    /// Its picture, so many pixels wide and high, and whether there is a lamp to light.
    Live {
        /// Pixels from left to right.
        width: u32,
        /// Pixels from top to bottom.
        height: u32,
        /// It has a lamp.
        lamp: bool,
    },
    /// Nothing, for this reason.
    Failed(CameraFault),
}

/// A picture that was taken or chosen, compressed as it came.
#[derive(Clone, Debug, PartialEq)]
pub struct Taken {
    blob: Blob,
}

impl Taken {
    /// The file chosen in a file input, if any.
    pub fn chosen(input: &HtmlInputElement) -> Option<Taken> {
        Some(Taken { blob: input.files()?.get(0)?.into() })
    }

    /// The picture as the browser holds it.
    pub fn blob(&self) -> &Blob {
        &self.blob
    }
}

/// The back camera if there is a choice, sharp enough for 30 pixels to a stitch over 20 cm; more would only cost heat.
const WISH: &str =
    r#"{"audio":false,"video":{"facingMode":{"ideal":"environment"},"width":{"ideal":2560},"height":{"ideal":1440}}}"#;
/// Quality of a kept frame: artefacts of JPEG stay well below the noise of a phone's camera. Judgement.
const QUALITY: f64 = 0.95;
/// Long side to which a file is brought, in pixels: phones end a page that holds too many.
const LONGEST: f64 = 2560.0;

struct Inner {
    video: NodeRef,
    told: Box<dyn Fn(Seen)>,
    stream: RefCell<Option<MediaStream>>,
    listeners: RefCell<Vec<EventListener>>,
    /// Counts starts and stops: what was asked for before the last of them comes too late.
    turn: Cell<u32>,
}

/// A camera in use; it ends when this is dropped.
pub struct Camera(Rc<Inner>);

impl Camera {
    /// Starts the camera on a video of the page, and tells what it shows. Call it from a tap.
    pub fn open(video: &NodeRef, told: impl Fn(Seen) + 'static) -> Camera {
        let inner = Rc::new(Inner {
            video: video.clone(),
            told: Box::new(told),
            stream: RefCell::default(),
            listeners: RefCell::default(),
            turn: Cell::default(),
        });
        inner.listen();
        inner.start();
        Camera(inner)
    }

    /// Lights or puts out the lamp.
    pub fn light(&self, on: bool) {
        let Some(track) = self.0.track() else { return };
        let wish = JSON::parse(if on { r#"{"advanced":[{"torch":true}]}"# } else { r#"{"advanced":[{"torch":false}]}"# });
        let apply = Reflect::get(&track, &"applyConstraints".into()).ok().and_then(|apply| apply.dyn_into::<Function>().ok());
        if let (Ok(wish), Some(apply)) = (wish, apply)
            && let Ok(promise) = apply.call1(&track, &wish)
            && let Ok(promise) = promise.dyn_into::<js_sys::Promise>()
        {
            spawn_local(async move { drop(JsFuture::from(promise).await) });
        }
    }

    /// Lays the frame that is shown on a canvas. Its size in pixels; none when there is no frame yet.
    pub fn freeze(&self, canvas: &NodeRef) -> Option<(u32, u32)> {
        frame(&self.0.video.cast()?, &canvas.cast()?)
    }

    /// Hands over the frame that is shown, in the video's full size; nothing when there is none or it cannot be compressed.
    pub fn take(&self, then: impl FnOnce(Option<Taken>) + 'static) {
        let canvas = web_sys::window()
            .and_then(|window| window.document()?.create_element("canvas").ok()?.dyn_into::<HtmlCanvasElement>().ok());
        let drawn = canvas.zip(self.0.video.cast::<HtmlVideoElement>()).and_then(|(canvas, video)| {
            frame(&video, &canvas)?;
            Some(canvas)
        });
        let Some(canvas) = drawn else { return then(None) };
        let done = Closure::once_into_js(move |blob: JsValue| then(blob.dyn_into().ok().map(|blob| Taken { blob })));
        let _ = canvas.to_blob_with_type_and_encoder_options(done.unchecked_ref(), "image/jpeg", &QUALITY.into());
    }
}

impl Drop for Camera {
    fn drop(&mut self) {
        self.0.listeners.borrow_mut().clear();
        self.0.stop();
    }
}

impl Inner {
    /// Follows the page out of sight and back, and the phone that is turned.
    fn listen(self: &Rc<Inner>) {
        let Some(window) = web_sys::window() else { return };
        let mut listeners = Vec::new();
        if let Some(document) = window.document() {
            let inner = Rc::downgrade(self);
            listeners.push(EventListener::new(&document, "visibilitychange", move |_| {
                with(&inner, |inner| if is_hidden() { inner.stop() } else { inner.start() });
            }));
        }
        let inner = Rc::downgrade(self);
        listeners.push(EventListener::new(&window, "pagehide", move |_| with(&inner, |inner| inner.stop())));
        if let Some(video) = self.video.cast::<HtmlVideoElement>() {
            let inner = Rc::downgrade(self);
            listeners.push(EventListener::new(&video, "resize", move |_| with(&inner, |inner| inner.tell())));
        }
        self.listeners.replace(listeners);
    }

    fn start(self: &Rc<Inner>) {
        self.stop();
        let turn = self.turn.get();
        (self.told)(Seen::Starting);
        let inner = Rc::downgrade(self);
        spawn_local(async move {
            let asked = ask().await;
            let Some(inner) = inner.upgrade().filter(|inner| inner.turn.get() == turn) else {
                // Nobody waits for it any more.
                if let Ok(stream) = asked {
                    end(&stream);
                }
                return;
            };
            match asked {
                Ok(stream) => inner.show(stream).await,
                Err(fault) => (inner.told)(Seen::Failed(fault)),
            }
        });
    }

    async fn show(self: Rc<Inner>, stream: MediaStream) {
        let turn = self.turn.get();
        let Some(video) = self.video.cast::<HtmlVideoElement>() else { return end(&stream) };
        if let Some(track) = track_of(&stream) {
            // The plug was pulled, or the permission taken back.
            let inner = Rc::downgrade(&self);
            let ended = EventListener::once(&track, "ended", move |_| {
                with(&inner, |inner| {
                    inner.stop();
                    (inner.told)(Seen::Failed(CameraFault::Busy));
                });
            });
            self.listeners.borrow_mut().push(ended);
        }
        // The attribute counts only on a video that came with the page; a phone plays unasked only what is mute.
        video.set_muted(true);
        video.set_src_object(Some(&stream));
        self.stream.replace(Some(stream));
        // Only a video that plays has a size.
        if let Ok(playing) = video.play() {
            let _ = JsFuture::from(playing).await;
        }
        if self.turn.get() == turn {
            self.tell();
        }
    }

    fn tell(&self) {
        let (Some(video), Some(track)) = (self.video.cast::<HtmlVideoElement>(), self.track()) else { return };
        let (width, height) = (video.video_width(), video.video_height());
        if width > 0 && height > 0 {
            (self.told)(Seen::Live { width, height, lamp: has_lamp(&track) });
        }
    }

    fn track(&self) -> Option<MediaStreamTrack> {
        track_of(self.stream.borrow().as_ref()?)
    }

    fn stop(&self) {
        self.turn.set(self.turn.get().wrapping_add(1));
        if let Some(stream) = self.stream.borrow_mut().take() {
            end(&stream);
            if let Some(video) = self.video.cast::<HtmlVideoElement>() {
                video.set_src_object(None);
            }
        }
    }
}

fn with(inner: &Weak<Inner>, act: impl FnOnce(&Rc<Inner>)) {
    if let Some(inner) = inner.upgrade() {
        act(&inner);
    }
}

fn is_hidden() -> bool {
    let document = web_sys::window().and_then(|window| window.document());
    document.is_some_and(|document| document.visibility_state() == VisibilityState::Hidden)
}

fn track_of(stream: &MediaStream) -> Option<MediaStreamTrack> {
    stream.get_video_tracks().get(0).dyn_into().ok()
}

fn end(stream: &MediaStream) {
    for track in stream.get_tracks().iter() {
        if let Ok(track) = track.dyn_into::<MediaStreamTrack>() {
            track.stop();
        }
    }
}

/// Not every browser tells what a track can do.
fn has_lamp(track: &MediaStreamTrack) -> bool {
    let ask = Reflect::get(track, &"getCapabilities".into()).ok().and_then(|ask| ask.dyn_into::<Function>().ok());
    let can = ask.and_then(|ask| ask.call0(track).ok());
    can.and_then(|can| Reflect::get(&can, &"torch".into()).ok()).is_some_and(|lamp| lamp.is_truthy())
}

/// Whether the browser lends cameras to this page at all; whether there is one, only asking for it tells.
pub fn is_lent() -> bool {
    // Where there is none the name is missing, and calling it would throw.
    let navigator = web_sys::window().map(|window| window.navigator());
    navigator
        .and_then(|navigator| Reflect::get(&navigator, &"mediaDevices".into()).ok())
        .is_some_and(|devices| devices.is_object())
}

async fn ask() -> Result<MediaStream, CameraFault> {
    let window = web_sys::window().ok_or(CameraFault::Unsupported)?;
    if !is_lent() {
        return Err(if window.is_secure_context() { CameraFault::Unsupported } else { CameraFault::Insecure });
    }
    let devices = window.navigator().media_devices().map_err(fault)?;
    let wish: MediaStreamConstraints = JSON::parse(WISH).map_err(fault)?.unchecked_into();
    let promise = devices.get_user_media_with_constraints(&wish).map_err(fault)?;
    JsFuture::from(promise).await.map_err(fault)?.dyn_into().map_err(fault)
}

fn fault(error: JsValue) -> CameraFault {
    match error.dyn_ref::<DomException>().map(DomException::name).as_deref() {
        Some("NotAllowedError" | "SecurityError") => CameraFault::Refused,
        Some("NotFoundError" | "OverconstrainedError") => CameraFault::Missing,
        _ => CameraFault::Busy,
    }
}

fn pen(canvas: &HtmlCanvasElement) -> Option<CanvasRenderingContext2d> {
    canvas.get_context("2d").ok()??.dyn_into().ok()
}

fn frame(video: &HtmlVideoElement, canvas: &HtmlCanvasElement) -> Option<(u32, u32)> {
    let size @ (width, height) = (video.video_width(), video.video_height());
    if width == 0 || height == 0 {
        return None;
    }
    canvas.set_width(width);
    canvas.set_height(height);
    pen(canvas)?.draw_image_with_html_video_element(video, 0.0, 0.0).ok()?;
    Some(size)
}

/// Lays a picture from a file on a canvas, turned as its camera was held. Then its size in pixels; none when it cannot be read.
pub fn lay(taken: Taken, canvas: NodeRef, then: impl FnOnce(Option<(u32, u32)>) + 'static) {
    spawn_local(async move { then(laid(&taken, &canvas).await) });
}

async fn laid(taken: &Taken, canvas: &NodeRef) -> Option<(u32, u32)> {
    let promise = web_sys::window()?.create_image_bitmap_with_blob(taken.blob()).ok()?;
    let bitmap: ImageBitmap = JsFuture::from(promise).await.ok()?.dyn_into().ok()?;
    let (width, height) = (f64::from(bitmap.width()), f64::from(bitmap.height()));
    let less = (LONGEST / width.max(height)).min(1.0);
    let (width, height) = ((width * less).round().max(1.0), (height * less).round().max(1.0));
    let canvas: HtmlCanvasElement = canvas.cast()?;
    canvas.set_width(width as u32);
    canvas.set_height(height as u32);
    let drawn = pen(&canvas)?.draw_image_with_image_bitmap_and_dw_and_dh(&bitmap, 0.0, 0.0, width, height);
    bitmap.close();
    drawn.ok()?;
    Some((width as u32, height as u32))
}
