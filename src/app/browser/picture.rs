//! A picture taken or chosen, brought to the size in which it is kept: turned the right way up, with nothing in it but its pixels.

use garment_assay::garment::PhotographId;
use js_sys::{ArrayBuffer, Reflect, Uint8Array};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, CanvasRenderingContext2d, HtmlCanvasElement, ImageBitmap, ImageBitmapOptions, ImageOrientation, Url};

use super::turns;

/// Longest side in pixels that is kept. Judgement: on it a hand's breadth of seam still shows its single stitches.
pub const LONGEST_SIDE: f64 = 1600.0;
/// How closely the JPEG keeps to the picture, of 1. Judgement: beyond it the file grows fast and the eye sees little more.
const QUALITY: f64 = 0.8;
/// Pixels of the camera in a strip that is drawn at once. Judgement: it took 8 ms where it was measured, of 74 for 12 megapixels.
const STRIP: f64 = 1.5e6;
/// Each strip has a cost of its own. Judgement.
const MOST_STRIPS: f64 = 32.0;
/// Largest file that is opened, in bytes. Judgement: five times what today's telephones make.
const LARGEST: f64 = 60e6;

/// Why a file is not kept as a photograph.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoPicture {
    /// The browser finds no picture in it.
    Unreadable,
    /// It is too large to be opened here.
    TooLarge,
}

/// A picture as it is kept.
pub struct Shrunk {
    /// Named by its bytes.
    pub id: PhotographId,
    /// A JPEG.
    pub blob: Blob,
    /// Pixels.
    pub width: u32,
    /// Pixels.
    pub height: u32,
}

/// Brings a file to the size in which it is kept. What the camera wrote beside the pixels, as time and place, is not carried over: only
/// pixels go through the canvas.
pub async fn shrunk(file: &Blob) -> Result<Shrunk, NoPicture> {
    if file.size() > LARGEST {
        return Err(NoPicture::TooLarge);
    }
    let bitmap = decoded(file).await.ok_or(NoPicture::Unreadable)?;
    let (wide, high) = (f64::from(bitmap.width()), f64::from(bitmap.height()));
    let share = (LONGEST_SIDE / wide.max(high)).min(1.0);
    let [width, height] = [wide, high].map(|side| (side * share).round().max(1.0) as u32);
    let blob = drawn(&bitmap, width, height).await;
    bitmap.close();
    let blob = blob.ok_or(NoPicture::TooLarge)?;
    let bytes = bytes(&blob).await.ok_or(NoPicture::TooLarge)?;
    Ok(Shrunk { id: PhotographId::of(&bytes), blob, width, height })
}

async fn decoded(file: &Blob) -> Option<ImageBitmap> {
    let options = ImageBitmapOptions::new();
    options.set_image_orientation(ImageOrientation::FromImage);
    let window = web_sys::window()?;
    let promise = window.create_image_bitmap_with_blob_and_image_bitmap_options(file, &options).ok()?;
    JsFuture::from(promise).await.ok()?.dyn_into().ok()
}

/// In how many strips it is drawn.
fn strips(bitmap: &ImageBitmap) -> u32 {
    let pixels = f64::from(bitmap.width()) * f64::from(bitmap.height());
    (pixels / STRIP).ceil().clamp(1.0, MOST_STRIPS) as u32
}

async fn drawn(bitmap: &ImageBitmap, width: u32, height: u32) -> Option<Blob> {
    let document = web_sys::window()?.document()?;
    let canvas: HtmlCanvasElement = document.create_element("canvas").ok()?.dyn_into().ok()?;
    canvas.set_width(width);
    canvas.set_height(height);
    let context: CanvasRenderingContext2d = canvas.get_context("2d").ok()??.dyn_into().ok()?;
    // A JPEG knows no clear parts; on black, a drawing on clear ground would not be seen.
    context.set_fill_style_str("#fff");
    let (wide, high) = (f64::from(width), f64::from(height));
    context.fill_rect(0.0, 0.0, wide, high);
    let _ = Reflect::set(&context, &"imageSmoothingQuality".into(), &"high".into());
    // In strips, of each of which the browser works out no more than is seen through it: the pixels are those of the whole drawn at once, to the
    // last one, and no strip keeps the page from a hand for long. The first is a single row, for it has to bear what is made ready for all.
    let (strips, mut top) = (strips(bitmap), 0.0);
    for strip in 0..=strips {
        let bottom = (high * f64::from(strip) / f64::from(strips)).round().max(1.0);
        turns::breath().await;
        context.save();
        context.begin_path();
        context.rect(0.0, top, wide, bottom - top);
        context.clip();
        context.draw_image_with_image_bitmap_and_dw_and_dh(bitmap, 0.0, 0.0, wide, high).ok()?;
        context.restore();
        top = bottom;
    }
    turns::breath().await;
    let promise = js_sys::Promise::new(&mut |resolve, reject| {
        let made = Closure::once_into_js(move |blob: JsValue| {
            let _ = resolve.call1(&JsValue::NULL, &blob);
        });
        if canvas.to_blob_with_type_and_encoder_options(made.unchecked_ref(), "image/jpeg", &QUALITY.into()).is_err() {
            let _ = reject.call0(&JsValue::NULL);
        }
    });
    let blob = JsFuture::from(promise).await.ok();
    // Some browsers count a canvas's pixels until it is collected, and refuse the next.
    canvas.set_width(0);
    blob?.dyn_into().ok()
}

/// The bytes of a blob; none where it cannot be read or there is no room for them.
pub async fn bytes(blob: &Blob) -> Option<Vec<u8>> {
    let buffer: ArrayBuffer = JsFuture::from(blob.array_buffer()).await.ok()?.dyn_into().ok()?;
    let array = Uint8Array::new(&buffer);
    let length = array.length() as usize;
    let mut bytes = Vec::new();
    // A program that finds no room for a vector ends; here it is to be said.
    bytes.try_reserve_exact(length).ok()?;
    bytes.resize(length, 0);
    array.copy_to(&mut bytes);
    Some(bytes)
}

/// An address from which the browser shows a picture; it is given back when this is dropped.
#[derive(Debug, PartialEq)]
pub struct Address {
    url: String,
    bytes: f64,
}

impl Address {
    /// For a picture; none where the browser gives it no address.
    pub fn of(blob: &Blob) -> Option<Address> {
        let url = Url::create_object_url_with_blob(blob).ok()?;
        Some(Address { url, bytes: blob.size() })
    }

    /// The address.
    pub fn url(&self) -> String {
        self.url.clone()
    }

    /// How many bytes it leads to.
    pub fn bytes(&self) -> f64 {
        self.bytes
    }
}

impl Drop for Address {
    fn drop(&mut self) {
        let _ = Url::revoke_object_url(&self.url);
    }
}
