//! A finished photograph.

use super::scene::Scene;
use super::truth::SeamTruth;
use super::{HIGH, WIDE};

/// A photograph and its truth.
#[derive(Clone, PartialEq, Debug)]
pub struct Photograph {
    /// Width in pixels.
    pub width: usize,
    /// Height in pixels.
    pub height: usize,
    /// Four bytes a pixel, row by row from the top: red, green, blue, 255.
    pub rgba: Vec<u8>,
    /// JPEG quality (1 to 100) at which the file should be kept.
    pub quality: u8,
    /// What is known of it.
    pub truth: SeamTruth,
}

/// The photograph of a seed: the same seed gives the same bytes and the same truth.
pub fn photograph(seed: u64) -> Photograph {
    let scene = Scene::drawn(seed);
    Photograph { width: WIDE, height: HIGH, rgba: scene.pixels(), quality: scene.quality, truth: scene.truth }
}
