//! Jeans: the checks of a pair, and what each answer says.

mod bill;
mod cloth;
mod finish;
mod fit;
mod fit_lines;
mod fit_mirror;
mod points;
mod prices;
mod seams;
mod second_hand;
mod shape;
mod stitching;
mod strength;
mod trims;

use super::{Family, cautions, shared};
use crate::lot::Defect;
use crate::specimen::{JeansFlat, Picture};

/// Jeans and other trousers of denim.
pub static JEANS: Family = Family {
    key: "jeans",
    name: "Jeans",
    example: "Mid-blue straight leg",
    drawn: Picture::JeansFlat(JeansFlat),
    covers: "Trousers of denim, rigid or stretch, raw or washed.",
    // By stage, so that nobody turns a pair twice; a check that opens others stands before them.
    checks: &[
        &shape::HANG,
        &seams::CUTTING,
        &cloth::CLOTH_HAND,
        &cloth::CLOTH_EVEN,
        &cloth::LIGHT_THROUGH,
        &cloth::CLOTH_WEIGHT,
        &cloth::STRETCH,
        &cloth::GROWTH,
        &finish::WASH_LEVEL,
        &finish::WASH_DEPTH,
        &finish::DRY_WORK,
        &strength::REPAIRS,
        &finish::FINISH_CRAFT,
        &finish::FINISH_HARM,
        &cloth::RUB_OFF,
        &stitching::ROWS_TRUE,
        &stitching::STITCH_EVEN,
        &stitching::STITCH_DENSITY,
        &stitching::STARTS_STOPS,
        &stitching::RESTARTS,
        &stitching::THREAD_ENDS,
        &stitching::PUCKER,
        &stitching::SEAM_WAVES,
        &strength::TACKS,
        &seams::WAISTBAND,
        &seams::HEM_STITCH,
        &trims::CLOSURE,
        &trims::FLY_TYPE,
        &trims::METAL,
        &trims::BUTTONHOLE,
        &trims::DETAILS,
        &shape::PAIR_MATCH,
        &shape::LEG_TWIST,
        &seams::INSEAM,
        &seams::SEAT_YOKE,
        &strength::CROTCH,
        &seams::OUTSEAM_EDGE,
        &cloth::SELVEDGE,
        &seams::BAG_SEAM,
        &trims::POCKETING,
        &cloth::FIBRE_LABEL,
        &trims::CARE_LABEL,
        &shared::MADE_IN,
        &shape::SIT_TEST,
    ],
    points: &points::POINTS,
    drawn_points: &points::DRAWN,
    bill: Some(&bill::BILL),
    defects: &DEFECTS,
    fit: Some(&fit::FIT),
    second_hand: &second_hand::LOOKS,
    cautions: &[
        cautions::LOCAL_RULES,
        cautions::ASK_FIRST,
        cautions::NEEDLES,
        cautions::NO_PULLING,
        cautions::NO_FLAME,
        cautions::NICKEL,
        cautions::INDIGO,
        cautions::CHILDREN,
    ],
};

static DEFECTS: [Defect; 10] = [
    Defect::major("leg-turns", "Leg twist over 25 mm, knee to hem"),
    Defect::major("legs-unequal", "Legs differ by more than 10 mm"),
    Defect::major("tack-missing", "Rivet or bar tack missing"),
    Defect::major("shade-range", "Wash outside the agreed shades"),
    Defect::major("fly-shows-zip", "Fly shows the zip"),
    Defect::major("fell-runs-off", "Raw edge out of a felled inseam"),
    Defect::minor("pockets-uneven", "Pockets uneven by more than 6 mm"),
    Defect::minor("loops-uneven", "Belt loops unequally spaced"),
    Defect::minor("finish-sides", "Finish differs left and right by over 10 mm"),
    Defect::minor("pocket-gapes", "Pocket mouth gapes"),
];
