//! Renders the app's icon, `web/icon.svg`, into the sizes that an installed app needs; what it writes into `web/` is committed.
//!
//!     cargo run --example app_icons --no-default-features

use resvg::tiny_skia::{Pixmap, Transform};
use resvg::usvg::{Options, Tree};

/// Name, width and height in pixels, and whether the ground goes on into the corners. A system may cut a maskable icon down to a circle of
/// 0.8 of its width (W3C, Web Application Manifest, "Icon masks and safe zone"): of this drawing that takes the ends of tape and thread, which run on.
/// Apple's systems round the corners themselves and show what is left through as black.
const SIZES: [(&str, u32, bool); 4] =
    [("icon-180", 180, true), ("icon-192", 192, false), ("icon-512", 512, false), ("icon-512-maskable", 512, true)];

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let text = std::fs::read_to_string("web/icon.svg")?;
    // Without rounded corners: the same ground to the very edge.
    let square = text.replace(" rx=\"104\"", "");
    assert_ne!(text, square, "the ground of web/icon.svg is not what it was");
    for (name, size, to_the_edge) in SIZES {
        let tree = Tree::from_str(if to_the_edge { &square } else { &text }, &Options::default())?;
        let mut pixels = Pixmap::new(size, size).ok_or("no picture of that size")?;
        let scale = size as f32 / tree.size().width();
        resvg::render(&tree, Transform::from_scale(scale, scale), &mut pixels.as_mut());
        std::fs::write(format!("web/{name}.png"), pixels.encode_png()?)?;
    }
    Ok(())
}
