//! Every subject that can be drawn, and what is known to be true of each.

use super::chance::Chance;
use super::closing::{Buttonhole, Fly, Label};
use super::cloth::{ClothFace, Fold, PocketCloth, Weave};
use super::cloth_trial::{Give, Growth, LightThrough, RubOff};
use super::colouring::Colouring;
use super::drag::Drag;
use super::drawing::{Ground, Sheet};
use super::dress::Dress;
use super::edges::{BagSeam, Edge, Hem, OutseamEdge};
use super::ends::{RowEnd, ThreadTails};
use super::figure::OnBody;
use super::figure_inside::LeftInside;
use super::finish::{Fade, Wash};
use super::graded::{ColourPair, Pilling};
use super::handling::{Fingertips, HolesMarked, Hung, Rubbing, RulerOnSeam, SideLight, WashMarks, Window};
use super::jacket_details::{Crushed, CuffVent, JetPocket, PurledHole, SewnButton};
use super::jacket_front::{FrontEdge, FrontLayer, Lapels};
use super::jacket_inside::{LiningHem, SpareCloth};
use super::jacket_match::Matched;
use super::jacket_points::{JacketFlat, JacketMeasure};
use super::jacket_shape::{CollarSit, SleeveHead};
use super::light_cloth::{Layers, LightHand};
use super::moves::Pose;
use super::outer::Outer;
use super::pen::clamp;
use super::points::{JeansFlat, Measure};
use super::pucker::Pucker;
use super::raw_edge::RawEdge;
use super::seam::{Join, JoinedSeam};
use super::seam_look::{NeedleLines, SeamBack};
use super::seam_place::{BeltLoop, Crotch, SeatYoke};
use super::second_hand::SecondHand;
use super::shape::{BackPockets, Bagging, LegTwist, Matching, Symmetry};
use super::shirt_button::ShirtButton;
use super::shirt_collar::{Collar, Cuffs};
use super::shirt_front::{FineStitches, ShirtFront, ShirtPattern};
use super::shirt_inside::{SeamWidth, ShirtTail};
use super::stitch_run::StitchRun;
use super::stitching::Topstitch;
use super::sweater::Sweater;
use super::tee_knit::{BodyTwist, NeckRib, Print};
use super::tee_seams::{KnitHem, KnitSeam, Taped};
use super::top_flat::{ShirtDetails, TopFlat};
use super::trims::{BarTack, Button, Rivet, StressPoints};
use super::waves::SeamWaves;
use super::wear::{Tear, Wear};
use super::weave_kind::WeaveFace;
use super::whiskers::Whiskers;
use super::whole::{Details, Waistband};
use crate::say;

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
    /// One layer of cloth held before a light.
    LightThrough(LightThrough),
    /// An edge of stretch cloth: wavy, or as long as the cloth beside it.
    SeamWaves(SeamWaves),
    /// The waistband where it closes.
    Waistband(Waistband),
    /// A hole that was meant to be there, and how it is secured.
    Tear(Tear),
    /// The back of a pair with special details on it.
    Details(Details),
    /// A pair of jeans laid flat, with one point of measure on it.
    Measure(Measure),
    /// A pair of jeans laid flat.
    JeansFlat(JeansFlat),
    /// A tailored jacket laid flat.
    JacketFlat(JacketFlat),
    /// A tailored jacket laid flat, with one point of measure on it.
    JacketMeasure(JacketMeasure),
    /// What lies between cloth and facing of a jacket front.
    FrontLayer(FrontLayer),
    /// Both lapels of a jacket.
    Lapels(Lapels),
    /// The lower front edge of a jacket.
    FrontEdge(FrontEdge),
    /// A jacket collar on the neck.
    CollarSit(CollarSit),
    /// A sleeve set into the shoulder.
    SleeveHead(SleeveHead),
    /// A jacket of patterned cloth.
    Matched(Matched),
    /// A lining where it meets the hem.
    LiningHem(LiningHem),
    /// A seam from inside with the cloth left beside it.
    SpareCloth(SpareCloth),
    /// A pocket with narrow lips and a flap.
    JetPocket(JetPocket),
    /// A buttonhole with a raised knotted edge.
    PurledHole(PurledHole),
    /// A sewn button in section.
    SewnButton(SewnButton),
    /// The end of a sleeve with its buttons.
    CuffVent(CuffVent),
    /// Cloth after a handful was crushed.
    Crushed(Crushed),
    /// A ruler along a row of stitches.
    RulerOnSeam(RulerOnSeam),
    /// Needle holes marked on a screen beside the row.
    HolesMarked(HolesMarked),
    /// A pair hung on a luggage scale.
    Hung(Hung),
    /// A counting window on a weave.
    Window(Window),
    /// Two fingertips on cloth, ten centimetres apart at rest.
    Fingertips(Fingertips),
    /// Two marks on cloth before and after a wash.
    WashMarks(WashMarks),
    /// A seam under a lamp that shines along the cloth.
    SideLight(SideLight),
    /// A fingertip in a tissue that rubs the cloth.
    Rubbing(Rubbing),
    /// Fuzz and small balls on the face of cloth.
    Pilling(Pilling),
    /// Cloth as it was and cloth as it is now, edge to edge.
    ColourPair(ColourPair),
    /// How the threads of a stitch run: in section, and from behind.
    StitchRun(StitchRun),
    /// Both sides of one stitching: the face above, the back below.
    SeamBack(SeamBack),
    /// The lines of needle thread that one stitching has on the face.
    NeedleLines(NeedleLines),
    /// What became of the raw edges of a seam or hem: in section, and from inside.
    RawEdge(RawEdge),
    /// Cloth so close that one sees how its yarns cross.
    WeaveFace(WeaveFace),
    /// Cloth with a corner turned over: where its colour is.
    Colouring(Colouring),
    /// A shirt collar from the front.
    Collar(Collar),
    /// Both cuffs of a shirt.
    Cuffs(Cuffs),
    /// Fine stitches along the edge of a front.
    FineStitches(FineStitches),
    /// The edge of a shirt that buttons.
    ShirtFront(ShirtFront),
    /// A checked shirt front.
    ShirtPattern(ShirtPattern),
    /// A seam from inside beside a ruler.
    SeamWidth(SeamWidth),
    /// The tail of a shirt from inside.
    ShirtTail(ShirtTail),
    /// Cloth held before a hand, and crushed.
    LightHand(LightHand),
    /// Ten layers of cloth.
    Layers(Layers),
    /// A button with holes, in section.
    ShirtButton(ShirtButton),
    /// A shirt or T-shirt laid flat.
    TopFlat(TopFlat),
    /// The back of a shirt with special details on it.
    ShirtDetails(ShirtDetails),
    /// The neck of a T-shirt after a stretch.
    NeckRib(NeckRib),
    /// The body of a T-shirt laid flat: how far its side seam has walked.
    BodyTwist(BodyTwist),
    /// A print while the cloth is stretched.
    Print(Print),
    /// A seam of knitted cloth from inside.
    KnitSeam(KnitSeam),
    /// The hem of a T-shirt while it is stretched.
    KnitHem(KnitHem),
    /// A seam at shoulder or neck from inside, and what covers it.
    Taped(Taped),
    /// Where the tape goes on a body.
    OnBody(OnBody),
    /// Lines on a garment while it is worn.
    Drag(Drag),
    /// A move to make in a garment.
    Pose(Pose),
    /// Cloth left inside for a tailor, with a ruler on it.
    LeftInside(LeftInside),
    /// A look at a sweater.
    Sweater(Sweater),
    /// A look at a dress or skirt.
    Dress(Dress),
    /// A look at a jacket or coat for outside.
    Outer(Outer),
    /// Another picture, of plain-woven cloth instead of denim.
    Plain(&'static Picture),
    /// Another picture, of knitted cloth instead of denim.
    Knit(&'static Picture),
    /// A look at a second-hand piece.
    SecondHand(SecondHand),
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
    /// How a seam is joined.
    Join(Join),
    /// What the edge of an allowance is.
    Edge(Edge),
    /// How whiskers were made.
    Whiskers(super::whiskers::WhiskerWork),
    /// How much shorter cloth became, in percent.
    ShorterPercent(f64),
    /// Balls of fibre on the face.
    Balls(u8),
    /// The grade of a change of colour, 5 (none) to 1.
    ColourGrade(u8),
    /// Lines of needle thread on the face.
    NeedleLines(u8),
    /// How yarns cross.
    Weave(super::weave_kind::WeaveKind),
    /// Angle of a twill line from the weft, in degrees.
    TwillDegrees(f64),
    /// Where colour is.
    Colour(super::colouring::ColourWork),
    /// Cloth beside a seam, in mm.
    SpareMm(f64),
    /// Columns of loops per inch across.
    LoopsPerInch(f64),
}

/// What is known to be true of a picture, where that means something; empty where it does not.
pub fn truth(picture: &Picture) -> Vec<Known> {
    match picture {
        Picture::Topstitch(it) => it.truth(),
        Picture::Pucker(it) => vec![Known::RippleMm(clamp(it.height_mm, 0.0, 3.0))],
        Picture::ThreadTails(it) => vec![Known::LooseEnds(it.ends.min(14))],
        Picture::JoinedSeam(it) => vec![Known::Join(it.join)],
        Picture::OutseamEdge(it) => vec![Known::Edge(it.edge)],
        Picture::SeatYoke(it) => vec![Known::Join(it.join), Known::OffMm(clamp(it.miss_mm, 0.0, 12.0))],
        Picture::Crotch(it) => vec![Known::OffMm(clamp(it.miss_mm, 0.0, 12.0))],
        Picture::Weave(it) => vec![Known::YarnsPerCm(clamp(it.ends_per_cm, 5.0, 40.0), clamp(it.picks_per_cm, 5.0, 30.0))],
        Picture::Give(it) => vec![Known::GiveCm(clamp(it.give_cm, 0.0, 5.0))],
        Picture::Growth(it) => vec![Known::GrowthPercent(clamp(it.percent, 0.0, 10.0))],
        Picture::StressPoints(it) => vec![Known::Secured(it.secured.min(10))],
        Picture::Whiskers(it) => vec![Known::Whiskers(it.work)],
        Picture::LegTwist(it) => vec![Known::OffMm(clamp(it.twist_mm, 0.0, 60.0))],
        Picture::BackPockets(it) => vec![Known::OffMm(it.worst())],
        Picture::Matching(it) => vec![Known::OffMm(clamp(it.miss_mm, 0.0, 12.0))],
        Picture::RulerOnSeam(it) => vec![Known::StitchesPerInch(it.per_inch())],
        Picture::Window(it) => vec![Known::YarnsPerCm(it.counts().0, it.counts().1)],
        Picture::Fingertips(it) => vec![Known::GiveCm(it.give())],
        Picture::WashMarks(it) => vec![Known::ShorterPercent(it.shorter())],
        Picture::SideLight(it) => vec![Known::RippleMm(clamp(it.height_mm, 0.0, 3.0))],
        Picture::Pilling(it) => vec![Known::Balls(it.balls())],
        Picture::ColourPair(it) => vec![Known::ColourGrade(it.held())],
        Picture::NeedleLines(it) => vec![Known::NeedleLines(it.lines.min(4))],
        Picture::WeaveFace(it) => std::iter::once(Known::Weave(it.kind)).chain(it.angle().map(Known::TwillDegrees)).collect(),
        Picture::Colouring(it) => vec![Known::Colour(it.work)],
        Picture::SpareCloth(it) => vec![Known::SpareMm(it.width())],
        Picture::FineStitches(it) => vec![Known::StitchesPerInch(FineStitches::told(it.per_inch))],
        Picture::Collar(it) => vec![Known::OffMm(clamp(it.off_mm, 0.0, 12.0))],
        Picture::ShirtFront(it) => vec![Known::LooseEnds(it.tails.min(14)), Known::OffMm(clamp(it.ends_off_mm, 0.0, 12.0))],
        Picture::ShirtPattern(it) => vec![Known::OffMm(it.worst())],
        Picture::KnitHem(it) => vec![Known::LooseEnds(it.tails.min(14))],
        Picture::SeamWidth(it) => vec![Known::Join(it.join)],
        Picture::Dress(Dress::Tails(it)) => vec![Known::LooseEnds(it.told())],
        Picture::Plain(of) | Picture::Knit(of) => truth(of),
        Picture::Outer(Outer::Tails(it)) => vec![Known::LooseEnds(it.told())],
        Picture::Sweater(Sweater::Gauge(it)) => vec![Known::LoopsPerInch(it.told())],
        _ => Vec::new(),
    }
}

impl Picture {
    /// The picture in words, for those who hear the screen and for print.
    pub fn words(&self) -> String {
        match self {
            Picture::Topstitch(it) => it.words(),
            Picture::RowEnd(it) => it.words(),
            Picture::Pucker(it) => it.words(),
            Picture::ThreadTails(it) => it.words(),
            Picture::JoinedSeam(it) => it.words(),
            Picture::SeatYoke(it) => it.words(),
            Picture::OutseamEdge(it) => it.words(),
            Picture::BagSeam(it) => it.words(),
            Picture::Hem(it) => it.words(),
            Picture::Crotch(it) => it.words(),
            Picture::BeltLoop(it) => it.words(),
            Picture::Weave(it) => it.words(),
            Picture::ClothFace(it) => it.words(),
            Picture::Fold(it) => it.words(),
            Picture::PocketCloth(it) => it.words(),
            Picture::Give(it) => it.words(),
            Picture::Growth(it) => it.words(),
            Picture::RubOff(it) => it.words(),
            Picture::Wash(it) => it.words(),
            Picture::Whiskers(it) => it.words(),
            Picture::Fade(it) => it.words(),
            Picture::Wear(it) => it.words(),
            Picture::BarTack(it) => it.words(),
            Picture::StressPoints(it) => it.words(),
            Picture::Button(it) => it.words(),
            Picture::Rivet(it) => it.words(),
            Picture::Buttonhole(it) => it.words(),
            Picture::Fly(it) => it.words(),
            Picture::Label(it) => it.words(),
            Picture::LegTwist(it) => it.words(),
            Picture::BackPockets(it) => it.words(),
            Picture::Bagging(it) => it.words(),
            Picture::Matching(it) => it.words(),
            Picture::Symmetry(it) => it.words(),
            Picture::LightThrough(it) => it.words(),
            Picture::SeamWaves(it) => it.words(),
            Picture::Waistband(it) => it.words(),
            Picture::Tear(it) => it.words(),
            Picture::Details(it) => it.words(),
            Picture::Measure(it) => it.words(),
            Picture::JeansFlat(it) => it.words(),
            Picture::JacketFlat(it) => it.words(),
            Picture::JacketMeasure(it) => it.words(),
            Picture::FrontLayer(it) => it.words(),
            Picture::Lapels(it) => it.words(),
            Picture::FrontEdge(it) => it.words(),
            Picture::CollarSit(it) => it.words(),
            Picture::SleeveHead(it) => it.words(),
            Picture::Matched(it) => it.words(),
            Picture::LiningHem(it) => it.words(),
            Picture::SpareCloth(it) => it.words(),
            Picture::JetPocket(it) => it.words(),
            Picture::PurledHole(it) => it.words(),
            Picture::SewnButton(it) => it.words(),
            Picture::CuffVent(it) => it.words(),
            Picture::Crushed(it) => it.words(),
            Picture::RulerOnSeam(it) => it.words(),
            Picture::HolesMarked(it) => it.words(),
            Picture::Hung(it) => it.words(),
            Picture::Window(it) => it.words(),
            Picture::Fingertips(it) => it.words(),
            Picture::WashMarks(it) => it.words(),
            Picture::SideLight(it) => it.words(),
            Picture::Rubbing(it) => it.words(),
            Picture::Pilling(it) => it.words(),
            Picture::ColourPair(it) => it.words(),
            Picture::StitchRun(it) => it.words(),
            Picture::SeamBack(it) => it.words(),
            Picture::NeedleLines(it) => it.words(),
            Picture::RawEdge(it) => it.words(),
            Picture::WeaveFace(it) => it.words(),
            Picture::Colouring(it) => it.words(),
            Picture::Collar(it) => it.words(),
            Picture::Cuffs(it) => it.words(),
            Picture::FineStitches(it) => it.words(),
            Picture::ShirtFront(it) => it.words(),
            Picture::ShirtPattern(it) => it.words(),
            Picture::SeamWidth(it) => it.words(),
            Picture::ShirtTail(it) => it.words(),
            Picture::LightHand(it) => it.words(),
            Picture::Layers(it) => it.words(),
            Picture::ShirtButton(it) => it.words(),
            Picture::TopFlat(it) => it.words(),
            Picture::ShirtDetails(it) => it.words(),
            Picture::NeckRib(it) => it.words(),
            Picture::BodyTwist(it) => it.words(),
            Picture::Print(it) => it.words(),
            Picture::KnitSeam(it) => it.words(),
            Picture::KnitHem(it) => it.words(),
            Picture::Taped(it) => it.words(),
            Picture::OnBody(it) => it.words(),
            Picture::Drag(it) => it.words(),
            Picture::Pose(it) => it.words(),
            Picture::LeftInside(it) => it.words(),
            Picture::Sweater(it) => it.words(),
            Picture::Dress(it) => it.words(),
            Picture::Outer(it) => it.words(),
            Picture::Plain(of) => say!("{picture}, on plain-woven cloth", picture = of.words()),
            Picture::Knit(of) => say!("{picture}, on knitted cloth", picture = of.words()),
            Picture::SecondHand(it) => it.words(),
        }
    }

    /// Draws it.
    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        match self {
            Picture::Topstitch(it) => it.draw(sheet, chance),
            Picture::RowEnd(it) => it.draw(sheet, chance),
            Picture::Pucker(it) => it.draw(sheet, chance),
            Picture::ThreadTails(it) => it.draw(sheet, chance),
            Picture::JoinedSeam(it) => it.draw(sheet, chance),
            Picture::SeatYoke(it) => it.draw(sheet, chance),
            Picture::OutseamEdge(it) => it.draw(sheet, chance),
            Picture::BagSeam(it) => it.draw(sheet, chance),
            Picture::Hem(it) => it.draw(sheet, chance),
            Picture::Crotch(it) => it.draw(sheet, chance),
            Picture::BeltLoop(it) => it.draw(sheet, chance),
            Picture::Weave(it) => it.draw(sheet, chance),
            Picture::ClothFace(it) => it.draw(sheet, chance),
            Picture::Fold(it) => it.draw(sheet, chance),
            Picture::PocketCloth(it) => it.draw(sheet, chance),
            Picture::Give(it) => it.draw(sheet, chance),
            Picture::Growth(it) => it.draw(sheet, chance),
            Picture::RubOff(it) => it.draw(sheet, chance),
            Picture::Wash(it) => it.draw(sheet, chance),
            Picture::Whiskers(it) => it.draw(sheet, chance),
            Picture::Fade(it) => it.draw(sheet, chance),
            Picture::Wear(it) => it.draw(sheet, chance),
            Picture::BarTack(it) => it.draw(sheet, chance),
            Picture::StressPoints(it) => it.draw(sheet, chance),
            Picture::Button(it) => it.draw(sheet, chance),
            Picture::Rivet(it) => it.draw(sheet, chance),
            Picture::Buttonhole(it) => it.draw(sheet, chance),
            Picture::Fly(it) => it.draw(sheet, chance),
            Picture::Label(it) => it.draw(sheet, chance),
            Picture::LegTwist(it) => it.draw(sheet, chance),
            Picture::BackPockets(it) => it.draw(sheet, chance),
            Picture::Bagging(it) => it.draw(sheet, chance),
            Picture::Matching(it) => it.draw(sheet, chance),
            Picture::Symmetry(it) => it.draw(sheet, chance),
            Picture::LightThrough(it) => it.draw(sheet, chance),
            Picture::SeamWaves(it) => it.draw(sheet, chance),
            Picture::Waistband(it) => it.draw(sheet, chance),
            Picture::Tear(it) => it.draw(sheet, chance),
            Picture::Details(it) => it.draw(sheet, chance),
            Picture::Measure(it) => it.draw(sheet, chance),
            Picture::JeansFlat(it) => it.draw(sheet, chance),
            Picture::JacketFlat(it) => it.draw(sheet, chance),
            Picture::JacketMeasure(it) => it.draw(sheet, chance),
            Picture::FrontLayer(it) => it.draw(sheet, chance),
            Picture::Lapels(it) => it.draw(sheet, chance),
            Picture::FrontEdge(it) => it.draw(sheet, chance),
            Picture::CollarSit(it) => it.draw(sheet, chance),
            Picture::SleeveHead(it) => it.draw(sheet, chance),
            Picture::Matched(it) => it.draw(sheet, chance),
            Picture::LiningHem(it) => it.draw(sheet, chance),
            Picture::SpareCloth(it) => it.draw(sheet, chance),
            Picture::JetPocket(it) => it.draw(sheet, chance),
            Picture::PurledHole(it) => it.draw(sheet, chance),
            Picture::SewnButton(it) => it.draw(sheet, chance),
            Picture::CuffVent(it) => it.draw(sheet, chance),
            Picture::Crushed(it) => it.draw(sheet, chance),
            Picture::RulerOnSeam(it) => it.draw(sheet, chance),
            Picture::HolesMarked(it) => it.draw(sheet, chance),
            Picture::Hung(it) => it.draw(sheet, chance),
            Picture::Window(it) => it.draw(sheet, chance),
            Picture::Fingertips(it) => it.draw(sheet, chance),
            Picture::WashMarks(it) => it.draw(sheet, chance),
            Picture::SideLight(it) => it.draw(sheet, chance),
            Picture::Rubbing(it) => it.draw(sheet, chance),
            Picture::Pilling(it) => it.draw(sheet, chance),
            Picture::ColourPair(it) => it.draw(sheet, chance),
            Picture::StitchRun(it) => it.draw(sheet, chance),
            Picture::SeamBack(it) => it.draw(sheet, chance),
            Picture::NeedleLines(it) => it.draw(sheet, chance),
            Picture::RawEdge(it) => it.draw(sheet, chance),
            Picture::WeaveFace(it) => it.draw(sheet, chance),
            Picture::Colouring(it) => it.draw(sheet, chance),
            Picture::Collar(it) => it.draw(sheet, chance),
            Picture::Cuffs(it) => it.draw(sheet, chance),
            Picture::FineStitches(it) => it.draw(sheet, chance),
            Picture::ShirtFront(it) => it.draw(sheet, chance),
            Picture::ShirtPattern(it) => it.draw(sheet, chance),
            Picture::SeamWidth(it) => it.draw(sheet, chance),
            Picture::ShirtTail(it) => it.draw(sheet, chance),
            Picture::LightHand(it) => it.draw(sheet, chance),
            Picture::Layers(it) => it.draw(sheet, chance),
            Picture::ShirtButton(it) => it.draw(sheet, chance),
            Picture::TopFlat(it) => it.draw(sheet, chance),
            Picture::ShirtDetails(it) => it.draw(sheet, chance),
            Picture::NeckRib(it) => it.draw(sheet, chance),
            Picture::BodyTwist(it) => it.draw(sheet, chance),
            Picture::Print(it) => it.draw(sheet, chance),
            Picture::KnitSeam(it) => it.draw(sheet, chance),
            Picture::KnitHem(it) => it.draw(sheet, chance),
            Picture::Taped(it) => it.draw(sheet, chance),
            Picture::OnBody(it) => it.draw(sheet, chance),
            Picture::Drag(it) => it.draw(sheet, chance),
            Picture::Pose(it) => it.draw(sheet, chance),
            Picture::LeftInside(it) => it.draw(sheet, chance),
            Picture::Sweater(it) => it.draw(sheet, chance),
            Picture::Dress(it) => it.draw(sheet, chance),
            Picture::Outer(it) => it.draw(sheet, chance),
            Picture::Plain(of) => {
                sheet.ground = Ground::Plain;
                of.draw(sheet, chance);
            }
            Picture::Knit(of) => {
                sheet.ground = Ground::Knit;
                of.draw(sheet, chance);
            }
            Picture::SecondHand(it) => it.draw(sheet, chance),
        }
    }
}
