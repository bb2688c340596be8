//! What lies on the cloth to give the scale: its place, its outline and what is painted on it.

use super::card::CardFace;
use super::colour::Rgb;
use super::noise::step;
use super::ruler::RulerFace;

/// A flat thing with square or rounded corners that lies on the cloth. `along` runs from its left end, `across` from the edge next to the
/// seam; both in mm.
pub(super) struct Object {
    pub face: Face,
    /// The corner where both coordinates are nought, on the plane.
    pub origin: [f64; 2],
    /// Sine and cosine of the turn against the x axis.
    pub turn: [f64; 2],
    pub long: f64,
    pub wide: f64,
    /// Radius of the corners.
    pub corner: f64,
    /// Height of the face above the plane of the cloth.
    pub height: f64,
}

/// The two kinds.
pub(super) enum Face {
    Ruler(RulerFace),
    Card(CardFace),
}

/// Paint at a place: colour, how much of what lies below it hides, gloss.
#[derive(Clone, Copy)]
pub(super) struct Paint {
    pub colour: Rgb,
    pub cover: f32,
    pub gloss: f32,
}

impl Object {
    /// Coordinates of a point of the plane on the object.
    pub(super) fn local(&self, x: f64, y: f64) -> [f64; 2] {
        let [s, c] = self.turn;
        let (dx, dy) = (x - self.origin[0], y - self.origin[1]);
        [c * dx + s * dy, c * dy - s * dx]
    }

    /// The point of the plane under a place of the object.
    pub(super) fn world(&self, along: f64, across: f64) -> [f64; 2] {
        let [s, c] = self.turn;
        [self.origin[0] + c * along - s * across, self.origin[1] + s * along + c * across]
    }

    /// Distance from the outline in mm, negative inside.
    pub(super) fn outside(&self, [along, across]: [f64; 2]) -> f64 {
        let dx = (along - self.long / 2.0).abs() - self.long / 2.0 + self.corner;
        let dy = (across - self.wide / 2.0).abs() - self.wide / 2.0 + self.corner;
        dx.max(dy).min(0.0) + dx.max(0.0).hypot(dy.max(0.0)) - self.corner
    }

    /// Share of lamp light that the object leaves at a point of the cloth; `toward` is how far light moves sideways per mm of height.
    pub(super) fn lets_through(&self, x: f64, y: f64, toward: [f64; 2]) -> f32 {
        let lifted = self.local(x + toward[0] * self.height, y + toward[1] * self.height);
        let soft = 0.25 + 0.7 * self.height;
        let dense = match &self.face {
            Face::Ruler(ruler) if ruler.clear => 0.25,
            _ => 0.85,
        };
        1.0 - dense * (1.0 - step(-0.5 * soft as f32, soft as f32, self.outside(lifted) as f32))
    }

    /// The paint at a place.
    pub(super) fn paint(&self, [along, across]: [f64; 2]) -> Paint {
        match &self.face {
            Face::Ruler(ruler) => ruler.paint(along as f32, across as f32, self.wide as f32),
            Face::Card(card) => card.paint(along as f32, across as f32),
        }
    }
}
