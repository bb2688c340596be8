//! Woven shirts and blouses: the checks of one, and what each answer says.

mod bill;
mod cloth;
mod fit;
mod fit_mirror;
mod points;
mod prices;
mod seams;
mod second_hand;
mod shape;
mod stitching;
mod trims;

use super::{Family, cautions, shared};
use crate::lot::Defect;
use crate::specimen::{Picture, TopCut, TopFlat};

/// Woven shirts and blouses.
pub static WOVEN_SHIRT: Family = Family {
    key: "woven-shirt",
    name: "Shirt or blouse",
    example: "White poplin, soft collar",
    drawn: Picture::TopFlat(TopFlat { cut: TopCut::Shirt, point: None }),
    covers: "Shirts and blouses of woven cloth, with a collar or buttons.",
    // By stage, so that nobody turns a shirt twice; a check that opens others stands before them.
    checks: &[
        &shape::COLLAR,
        &shape::PATTERNED,
        &shape::MATCH,
        &cloth::CLOTH_HAND,
        &cloth::CLOTH_WEIGHT,
        &stitching::STITCH_DENSITY,
        &stitching::PUCKER,
        &stitching::PLACKET_TRUE,
        &stitching::THREAD_ENDS,
        &trims::CUFF,
        &trims::BUTTONS,
        &trims::BUTTONHOLES,
        &trims::DETAILS,
        &seams::SIDE_SEAM,
        &seams::ARMHOLE,
        &seams::YOKE_HEM,
        &cloth::FIBRE,
        &shared::MADE_IN,
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
        cautions::CHILDREN,
    ],
};

static DEFECTS: [Defect; 3] = [
    Defect::major("collar-points", "Collar points differ by more than 3 mm"),
    Defect::major("pattern-off", "Check or stripe off at placket or pocket"),
    Defect::major("lining-bubbles", "Interlining bubbles"),
];
