//! The second thread: decodes a picture, keeps its pixels, and answers questions about it.
//!
//! Messages come as `{ id, picture: Blob, width, height }` or `{ id, ask: NUMBERS }`, and each is answered by `{ id }` with one of
//! `loaded: true`, `answer: NUMBERS`, or `fault: WORD`. The first message out, `{ ready: true }`, says that messages are listened for. Pixels are decoded on
//! this side and stay here: nothing is copied from thread to thread.

use std::cell::RefCell;
use std::rc::Rc;

use js_sys::{Float64Array, Object, Reflect};
use photo::{Raster, answer, ask_of, told};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{
    Blob, DedicatedWorkerGlobalScope, ImageBitmap, ImageBitmapOptions, ImageOrientation, MessageEvent, OffscreenCanvas,
    OffscreenCanvasRenderingContext2d, ResizeQuality,
};

/// The pixels of the picture that is being read.
#[derive(Default)]
struct Pixels {
    width: usize,
    height: usize,
    rgba: Vec<u8>,
}

/// Rows that are read at a time: a whole picture at once would need its size twice.
const ROWS: u32 = 256;

fn main() {
    let Ok(scope) = js_sys::global().dyn_into::<DedicatedWorkerGlobalScope>() else { return };
    // What panics here ends a promise that nobody sees.
    std::panic::set_hook(Box::new(|_| {
        if let Ok(scope) = js_sys::global().dyn_into::<DedicatedWorkerGlobalScope>() {
            let _ = scope.post_message(&object(&[("fault", "stopped".into())]));
        }
    }));
    let pixels = Rc::new(RefCell::new(Pixels::default()));
    let listening = {
        let scope = scope.clone();
        Closure::<dyn Fn(MessageEvent)>::new(move |event: MessageEvent| {
            let (scope, pixels, message) = (scope.clone(), pixels.clone(), event.data());
            spawn_local(async move {
                let mut reply = reply(&scope, &pixels, &message).await;
                reply.push(("id", field(&message, "id")));
                let _ = scope.post_message(&object(&reply));
            });
        })
    };
    scope.set_onmessage(Some(listening.as_ref().unchecked_ref()));
    listening.forget();
    let _ = scope.post_message(&object(&[("ready", JsValue::TRUE)]));
}

fn field(message: &JsValue, name: &str) -> JsValue {
    Reflect::get(message, &name.into()).unwrap_or(JsValue::UNDEFINED)
}

fn object(fields: &[(&str, JsValue)]) -> JsValue {
    let message = Object::new();
    for (name, value) in fields {
        let _ = Reflect::set(&message, &(*name).into(), value);
    }
    message.into()
}

/// What is answered to one message.
async fn reply(scope: &DedicatedWorkerGlobalScope, pixels: &RefCell<Pixels>, message: &JsValue) -> Vec<(&'static str, JsValue)> {
    if let Ok(picture) = field(message, "picture").dyn_into::<Blob>() {
        let side = |name| field(message, name).as_f64().map_or(0, |side| side as u32);
        return match decoded(scope, &picture, side("width"), side("height")).await {
            Ok(decoded) => {
                *pixels.borrow_mut() = decoded;
                vec![("loaded", JsValue::TRUE)]
            }
            Err(word) => vec![("fault", word.into())],
        };
    }
    let asked = field(message, "ask").dyn_into::<Float64Array>().ok().and_then(|numbers| ask_of(&numbers.to_vec()));
    let pixels = pixels.borrow();
    let (Some(ask), Some(raster)) = (asked, Raster::new(pixels.width, pixels.height, &pixels.rgba)) else {
        return vec![("fault", "question".into())];
    };
    vec![("answer", Float64Array::from(told(&answer(&raster, &ask)).as_slice()).into())]
}

/// The pixels of a picture, turned the right way up and brought to that size; or the word for why there are none.
async fn decoded(scope: &DedicatedWorkerGlobalScope, picture: &Blob, width: u32, height: u32) -> Result<Pixels, &'static str> {
    if !Reflect::has(&js_sys::global(), &"OffscreenCanvas".into()).unwrap_or(false) {
        return Err("canvas");
    }
    let options = ImageBitmapOptions::new();
    options.set_image_orientation(ImageOrientation::FromImage);
    options.set_resize_width(width);
    options.set_resize_height(height);
    options.set_resize_quality(ResizeQuality::High);
    let promise = scope.create_image_bitmap_with_blob_and_image_bitmap_options(picture, &options).map_err(|_| "canvas")?;
    let bitmap: ImageBitmap = JsFuture::from(promise).await.map_err(|_| "picture")?.unchecked_into();
    let (width, height) = (bitmap.width(), bitmap.height());
    let rgba = bytes(&bitmap, width, height).ok_or("memory");
    bitmap.close();
    Ok(Pixels { width: width as usize, height: height as usize, rgba: rgba? })
}

/// The bytes of a decoded picture, a band of rows at a time.
fn bytes(bitmap: &ImageBitmap, width: u32, height: u32) -> Option<Vec<u8>> {
    let canvas = OffscreenCanvas::new(width, ROWS.min(height)).ok()?;
    let settings = object(&[("willReadFrequently", JsValue::TRUE)]);
    let context = canvas.get_context_with_context_options("2d", &settings).ok()??;
    let context: OffscreenCanvasRenderingContext2d = context.unchecked_into();
    let mut rgba = Vec::new();
    rgba.try_reserve_exact(4 * width as usize * height as usize).ok()?;
    for top in (0..height).step_by(ROWS as usize) {
        let rows = ROWS.min(height - top);
        context.clear_rect(0.0, 0.0, f64::from(width), f64::from(ROWS));
        context.draw_image_with_image_bitmap(bitmap, 0.0, -f64::from(top)).ok()?;
        let band = context.get_image_data(0.0, 0.0, f64::from(width), f64::from(rows)).ok()?;
        rgba.extend_from_slice(&band.data());
    }
    Some(rgba)
}
