//! Every subject that can be drawn, and what is known to be true of each.

use super::cloth::{ClothFace, Fold, PocketCloth, Weave};
use super::cloth_trial::{Give, Growth, RubOff};
use super::finish::{Fade, Wash, Wear, Whiskers};
use super::seam::{BagSeam, Hem, JoinedSeam, OutseamEdge};
use super::seam_place::{BeltLoop, Crotch, SeatYoke};
use super::shape::{BackPockets, Bagging, LegTwist, Matching, Symmetry};
use super::stitching::{Pucker, RowEnd, ThreadTails, Topstitch};
use super::trims::{BarTack, Button, Buttonhole, Fly, Label, Rivet, StressPoints};

/// What a specimen shows, and how much of it. Plain data: it stands in `static` content beside the answer it draws.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Picture {
    /// One or two rows of topstitching: density, evenness, restarts, loose ends, wandering rows, corners, thick joins.
    Topstitch(Topstitch),
    /// Where rows of stitching end.
    RowEnd(RowEnd),
    /// A seam in slanting light: gathered, or wavy where stretch cloth was pulled.
    Pucker(Pucker),
    /// Thread ends left hanging under a belt loop and along a seam.
    ThreadTails(ThreadTails),
    /// A long seam: its section above, its inside below.
    JoinedSeam(JoinedSeam),
    /// Where seat seam and yoke cross, from inside.
    SeatYoke(SeatYoke),
    /// The outer leg seam pressed open, from inside.
    OutseamEdge(OutseamEdge),
    /// The bottom of a pocket bag and how it is closed.
    BagSeam(BagSeam),
    /// The hem of a leg.
    Hem(Hem),
    /// Where four seams meet at the crotch.
    Crotch(Crotch),
    /// A belt loop on the waistband.
    BeltLoop(BeltLoop),
    /// Cloth so close that its yarns can be counted.
    Weave(Weave),
    /// The face of the cloth at arm's length, with flaws or without.
    ClothFace(ClothFace),
    /// A fold of the cloth in section: how thick, how springy.
    Fold(Fold),
    /// Pocket cloth held before something dark.
    PocketCloth(PocketCloth),
    /// Ten centimetres of cloth at rest and pulled.
    Give(Give),
    /// Ten centimetres of cloth after it was pulled and let go, against a tape.
    Growth(Growth),
    /// A white tissue after rubbing.
    RubOff(RubOff),
    /// State of the cloth after washing, across a seam.
    Wash(Wash),
    /// Whiskers on both thighs, side by side.
    Whiskers(Whiskers),
    /// A faded thigh: how the fade ends.
    Fade(Fade),
    /// What finishing has done to edges and faded places.
    Wear(Wear),
    /// One bar tack, close.
    BarTack(BarTack),
    /// Ten stress points on the front of a pair of jeans.
    StressPoints(StressPoints),
    /// A shank button in section.
    Button(Button),
    /// A rivet in section.
    Rivet(Rivet),
    /// The waist buttonhole.
    Buttonhole(Buttonhole),
    /// The fly: zip or buttons.
    Fly(Fly),
    /// A sewn-in label; its lines are neutral strokes.
    Label(Label),
    /// The lower leg lying flat: how far the side seam has walked.
    LegTwist(LegTwist),
    /// Back pockets and yoke ends about the centre seam.
    BackPockets(BackPockets),
    /// Knee, seat and waistband after sitting.
    Bagging(Bagging),
    /// A pattern running across a seam, or a piece made up of two.
    Matching(Matching),
    /// Both legs laid on the centre line.
    Symmetry(Symmetry),
}

/// Something that is true of a picture because it was drawn so.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Known {
    /// Stitches per inch of a row.
    StitchesPerInch(f64),
    /// Places where a row was begun again.
    Restarts(u8),
    /// Thread ends left long.
    LooseEnds(u8),
    /// Stitches that did not catch.
    Skips(u8),
    /// How far something is off, strays or has walked, in mm.
    OffMm(f64),
    /// Height of seam ripples in mm.
    RippleMm(f64),
    /// Warp and weft yarns per cm.
    YarnsPerCm(f64, f64),
    /// Give over 10 cm, in cm.
    GiveCm(f64),
    /// Growth in percent.
    GrowthPercent(f64),
    /// Stress points that are secured, of ten.
    Secured(u8),
    /// How whiskers were made.
    Whiskers(super::finish::WhiskerWork),
}

/// What is known to be true of a picture, where that means something.
pub fn truth(_picture: &Picture) -> Vec<Known> {
    Vec::new()
}
