//! Pictures taken or chosen: shown by an address of their own and measured. They stay in memory, and are forgotten with the page.

use std::cell::Cell;
use std::rc::Rc;

use gloo::events::EventListener;
use wasm_bindgen::JsCast;
use web_sys::{Blob, HtmlImageElement, HtmlInputElement, Url};
use yew::{Event, NodeRef};

use super::hand;

/// Most pixels that are read of a picture: all of a usual phone's 12 million. Of a larger one a smaller copy is made.
const MOST: f64 = 13e6;
/// Longest side in pixels that a canvas may have everywhere.
const LONGEST: f64 = 8192.0;

/// A picture: cheap to hand on. The browser forgets its address with the last copy.
#[derive(Clone, Debug)]
pub struct Picture(Rc<Held>);

#[derive(Debug)]
struct Held {
    blob: Blob,
    url: String,
    size: [u32; 2],
    reduced_from: Option<[u32; 2]>,
}

impl Drop for Held {
    fn drop(&mut self) {
        let _ = Url::revoke_object_url(&self.url);
    }
}

impl PartialEq for Picture {
    fn eq(&self, other: &Picture) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }
}

impl Picture {
    /// The file or camera picture itself.
    pub(super) fn blob(&self) -> &Blob {
        &self.0.blob
    }

    /// Where the browser shows it from.
    pub fn url(&self) -> String {
        self.0.url.clone()
    }

    /// Width and height in the pixels that are read, the right way up.
    pub fn size(&self) -> [u32; 2] {
        self.0.size
    }

    /// Its own width and height, when a smaller copy is read.
    pub fn reduced_from(&self) -> Option<[u32; 2]> {
        self.0.reduced_from
    }
}

/// The size in which a picture is read.
fn read_size([width, height]: [u32; 2]) -> [u32; 2] {
    let (wide, high) = (f64::from(width), f64::from(height));
    let share = (MOST / (wide * high)).sqrt().min(LONGEST / wide.max(high)).min(1.0);
    [wide, high].map(|side| (side * share).round().max(1.0) as u32)
}

/// Opens what was taken or chosen, whoever took it; hands over none when the browser finds no picture in it.
pub fn open(blob: &Blob, then: impl FnOnce(Option<Picture>) + 'static) {
    let (Ok(url), Ok(image)) = (Url::create_object_url_with_blob(blob), HtmlImageElement::new()) else { return then(None) };
    let waiting = Rc::new(Cell::new(Some((then, blob.clone(), url.clone()))));
    // Both listeners go with the image, which stays until one of them was called.
    let settle = {
        let (waiting, image) = (waiting.clone(), image.clone());
        move || {
            let Some((then, blob, url)) = waiting.take() else { return };
            let own = [image.natural_width(), image.natural_height()];
            if own.contains(&0) {
                let _ = Url::revoke_object_url(&url);
                return then(None);
            }
            let size = read_size(own);
            let reduced_from = (size != own).then_some(own);
            then(Some(Picture(Rc::new(Held { blob, url, size, reduced_from }))));
        }
    };
    let failed = settle.clone();
    EventListener::once(&image, "load", move |_| settle()).forget();
    EventListener::once(&image, "error", move |_| failed()).forget();
    image.set_src(&url);
}

/// Opens the file chosen in a file input, and empties the input, so that the same file can be chosen again. Nothing happens without one.
pub fn open_chosen(event: &Event, then: impl FnOnce(Option<Picture>) + 'static) {
    let Some(field) = event.target().and_then(|target| target.dyn_into::<HtmlInputElement>().ok()) else { return };
    let file = field.files().and_then(|files| files.get(0));
    field.set_value("");
    if let Some(file) = file {
        open(&file, then);
    }
}

/// Lays a part that shows a picture so that its pixel at `x`, `y` comes to lie at `at`, `times` as large.
pub fn lay(part: &NodeRef, [x, y]: [f64; 2], at: [f64; 2], times: f64) {
    hand::place(part, [at[0] - x * times, at[1] - y * times, times]);
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_picture_of_twelve_million_pixels_is_read_whole_and_a_larger_one_smaller_in_the_same_shape() {
        assert_eq!(read_size([4032, 3024]), [4032, 3024]);
        let [width, height] = read_size([8064, 6048]);
        assert!(width * height <= 13_010_000 && width > 4100);
        assert!((f64::from(width) / f64::from(height) - 4.0 / 3.0).abs() < 0.001);
        assert_eq!(read_size([20_000, 10]), [8192, 4]);
    }
}
