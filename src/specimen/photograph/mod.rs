//! Photographs of seams with exactly known truth, drawn from a seed: what readers of photographs are fitted and judged on.

mod camera;
mod card;
mod close;
mod cloth;
mod colour;
mod digits;
mod lens;
mod marks;
mod noise;
mod object;
mod objects;
mod path;
mod render;
mod ruler;
mod scene;
mod shot;
mod thread;
mod truth;
mod wardrobe;

#[cfg(test)]
mod tests;

/// Width of a photograph in pixels.
const WIDE: usize = 1280;
/// Height of a photograph in pixels.
const HIGH: usize = 960;

pub use close::{ClothPhotograph, RubPhotograph, cloth_photograph, rub_photograph};
pub use cloth::ClothKind;
pub use ruler::Graduation;
pub use shot::{Photograph, photograph};
pub use thread::Sewn;
pub use truth::{Level, Pixel, Scale, SeamTruth};
