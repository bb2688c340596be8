//! Dresses and skirts: the checks of one, and what each answer says.

mod bill;
mod cloth;
mod fit;
mod fit_mirror;
mod points;
mod prices;
mod seams;
mod second_hand;
mod shape;
mod trims;

use super::{Family, cautions, shared};
use crate::lot::Defect;
use crate::specimen::{Dress, DressFlat, Picture};

/// Dresses and skirts.
pub static DRESS_SKIRT: Family = Family {
    key: "dress-skirt",
    name: "Dress or skirt",
    example: "Green pleated skirt",
    drawn: Picture::Dress(Dress::Flat(DressFlat { skirt: false, point: None })),
    covers: "Dresses and skirts, lined or not, of woven cloth or of jersey.",
    // By stage, so that nobody turns one twice; a check that opens others stands before them.
    checks: &[
        &shape::HANG,
        &trims::ZIP,
        &seams::HEM,
        &seams::SLIP,
        &cloth::OPACITY,
        &cloth::CRUSH,
        &seams::STITCH_EVEN,
        &seams::PUCKER,
        &shape::FULLNESS,
        &trims::FASTENING,
        &shape::PIECE,
        &cloth::VOLUME,
        &cloth::STRETCH,
        &seams::SEAM_FINISH,
        &cloth::LINED,
        &cloth::LINING,
        &seams::THREAD_ENDS,
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
        cautions::NICKEL,
        cautions::CHILDREN,
    ],
};

static DEFECTS: [Defect; 1] = [Defect::major("zip-ripples", "Zip ripples")];
