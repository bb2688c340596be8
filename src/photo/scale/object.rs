//! What is asked and answered about the scale.

use serde::{Deserialize, Serialize};

use super::{card, coin, marks, ruler};
use crate::{Cause, Part, Plane, Point, Raster};

/// What of known size lies in the picture, and where the person says it lies (pixels).
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub enum Object {
    /// A card of the format ID-1 (ISO/IEC 7810: 85.60 by 53.98 mm), by its four corners in any order. The corners are where the straight sides
    /// would meet.
    Card([Point; 4]),
    /// A ruler by two of its graduations and the millimetres between them; whether it is graduated in millimetres or sixteenths is found out.
    Ruler(Point, Point, f64),
    /// A coin by places on its rim, five or more, and its diameter in millimetres.
    Coin(Vec<Point>, f64),
    /// Two marks and the millimetres between them.
    Marks(Point, Point, f64),
}

/// What a ruler is graduated in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Graduation {
    /// Millimetres.
    Millimetre,
    /// Sixteenths of an inch, 1.5875 mm.
    Sixteenth,
}

impl Graduation {
    /// From graduation to graduation, mm (an inch is 25.4 mm exactly: international yard and pound agreement, 1959).
    pub fn mm(self) -> f64 {
        match self {
            Graduation::Millimetre => 1.0,
            Graduation::Sixteenth => 25.4 / 16.0,
        }
    }
}

/// How the scale becomes less certain with the distance from the object, because what is known of the tilt is known at the object.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Drift {
    /// A place of the picture where the scale is best known.
    pub from: Point,
    /// The way (of length 1, pixels) in which it stays known; 0 when there is none.
    pub along: Point,
    /// Standard uncertainty, as a share of the scale, for every pixel away from that line or place.
    pub share: f64,
}

/// What was found out about the scale.
#[derive(Clone, Debug, PartialEq)]
pub struct Scale {
    /// Where the cloth lies.
    pub plane: Plane,
    /// What makes the scale uncertain beside the object, as shares (0.01 is one per cent), standard uncertainty. See `spread_at`.
    pub spread: Vec<Part>,
    /// What the ruler is graduated in, when its graduations were found.
    pub graduation: Option<Graduation>,
    /// Places in the picture where graduations, corners or the rim were found, to be shown.
    pub found: Vec<Point>,
    /// A line or outline of the picture within which the object lies, so that the strip of the seam stops short of it.
    pub object: Vec<Point>,
    /// How far the phone was tilted, in degrees, as far as the object tells.
    pub tilt: Option<f64>,
    /// What the distance from the object adds.
    pub drift: Drift,
}

impl Scale {
    /// What makes the scale uncertain at a place of the picture, as shares, standard uncertainty: `spread`, and the tilt that grows with the
    /// distance from the object. Finite for every place.
    pub fn spread_at(&self, at: Point) -> Vec<Part> {
        let way = self.drift.from.way_to(at);
        let Point { x, y } = self.drift.along;
        let away = if x == 0.0 && y == 0.0 { way.x.hypot(way.y) } else { (way.x * y - way.y * x).abs() };
        let share = self.drift.share * away;
        let mut parts = self.spread.clone();
        if share.is_finite() && share > 0.0 {
            parts.push(Part { from: Cause::Tilt, share: share.min(1.0) });
        }
        parts
    }
}

/// Why there is no scale.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub enum ScaleFault {
    /// Marks or size are no numbers, lie on one place, or outside the picture.
    Marks,
    /// The size typed is no length above 0.
    Size,
    /// Four places that cannot be the corners of a card.
    NotACard,
    /// Fewer than five places on the rim of a coin.
    FewOnRim,
    /// Places on the rim that do not lie on a circle seen from above, not even a tilted one.
    NotACoin,
}

/// What lies on cloth lies nearer to the phone than the cloth: spread of that height, mm (judgement: rulers from paper to a thick bevel, cards that
/// lie on the edge of a fold, seams that stand up themselves. With it twice the whole spread held 95 of 100 truths of 853 usable drawings).
const HEIGHT_MM: f64 = 0.75;

/// What the height of the object over the cloth makes uncertain: height over distance to the phone.
pub(super) fn height(picture: &Raster, px_mm: f64) -> Part {
    Part { from: Cause::Height, share: (HEIGHT_MM * px_mm / focal(picture)).clamp(0.0, 1.0) }
}

/// Spread of tilts among pictures that people take when asked to hold the phone flat, degrees (judgement).
const TILTS: f64 = 9.0;
/// Focal length as a share of the picture's longer side. 0.75 is a phone's main camera (27 mm over 36 mm equivalent), 1.5 its magnified half;
/// small things are often taken magnified or cut out (judgement).
const FOCAL: f64 = 1.1;

/// Standard deviation of the change of scale per pixel across a picture, as a share, when nothing is known about the tilt.
pub(super) fn unknown_tilt(picture: &Raster) -> f64 {
    TILTS.to_radians().tan() / focal(picture)
}

/// The focal length in pixels that a whole picture of a phone has, roughly.
pub(super) fn focal(picture: &Raster) -> f64 {
    FOCAL * picture.width().max(picture.height()) as f64
}

/// Whether a mark lies in the picture, or so little outside that a finger may have slipped.
pub(super) fn within(picture: &Raster, at: Point) -> bool {
    let slack = 0.05 * picture.width().max(picture.height()) as f64;
    let fits = |value: f64, size: usize| value >= -slack && value <= size as f64 + slack;
    at.is_finite() && fits(at.x, picture.width()) && fits(at.y, picture.height())
}

/// Whether a length typed can be one, mm.
pub(super) fn is_length(mm: f64) -> bool {
    mm.is_finite() && mm > 0.1 && mm < 1e5
}

/// Finds the scale of the cloth near the object.
///
/// # Method
/// The face of the object stands nearer to the phone than the seam ([`STANDS_MM`]), so that it looks larger: the plane of the cloth is that of
/// the face ([`face`]), a millimetre taking up fewer pixels by that height over the distance to the phone. Two marks may as well lie on the
/// cloth and are taken as they are.
///
/// # Errors
/// As [`face`].
pub fn scale(picture: &Raster, object: &Object) -> Result<Scale, ScaleFault> {
    let face = face(picture, object)?;
    Ok(if matches!(object, Object::Marks(..)) { face } else { face.lowered(picture) })
}

/// Finds the scale of the object's own face.
///
/// # Errors
/// Marks or lengths that make no sense. A ruler whose graduations are not found is no error: its two marks give the scale, less surely.
pub fn face(picture: &Raster, object: &Object) -> Result<Scale, ScaleFault> {
    match object {
        Object::Card(corners) => card::scale(picture, *corners),
        Object::Ruler(from, to, mm) => ruler::scale(picture, *from, *to, *mm),
        Object::Coin(rim, mm) => coin::scale(picture, rim, *mm),
        Object::Marks(from, to, mm) => marks::scale(picture, *from, *to, *mm),
    }
}

/// How far the face of a ruler, card or coin stands over a seam, mm. A card is 0.76 mm thick (ISO/IEC 7810), rulers and coins 0.5 to 2; a seam of
/// three or four layers stands up itself. Judgement.
const STANDS_MM: f64 = 0.5;

impl Scale {
    /// A scale that is the same everywhere and known exactly: so many pixels to the millimetre. None where that is no plane.
    pub fn even(px_per_mm: f64) -> Option<Scale> {
        let plane = Plane::new([1.0 / px_per_mm, 0.0, 0.0, 0.0, 1.0 / px_per_mm, 0.0, 0.0, 0.0, 1.0])?;
        Some(Scale {
            plane,
            spread: Vec::new(),
            graduation: None,
            found: Vec::new(),
            object: Vec::new(),
            tilt: None,
            drift: Drift::default(),
        })
    }

    /// The plane of the cloth, where that of the object's face was found.
    fn lowered(self, picture: &Raster) -> Scale {
        let Some(&at) = self.found.first().or(self.object.first()) else { return self };
        let px_mm = self.plane.px_per_mm(at, Point { x: at.x + 1.0, y: at.y });
        let plane = self.plane.stretched(1.0 + (STANDS_MM * px_mm / focal(picture)).clamp(0.0, 0.05));
        Scale { plane: plane.unwrap_or(self.plane), ..self }
    }
}
