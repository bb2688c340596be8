//! Outerwear: padded and down jackets, parkas, rain and wool coats: the checks of one, and what each answer says.

mod bill;
mod cloth;
mod fill;
mod fit;
mod fit_mirror;
mod parts;
mod points;
mod prices;
mod seams;
mod second_hand;
mod shape;

use super::{Family, cautions, shared};
use crate::lot::Defect;
use crate::specimen::{Outer, OuterCut, OuterFlat, Picture};

/// Jackets and coats for outside.
pub static OUTERWEAR: Family = Family {
    key: "outerwear",
    name: "Outerwear",
    example: "Green parka with hood",
    drawn: Picture::Outer(Outer::Flat(OuterFlat { cut: OuterCut::Padded, point: None })),
    covers: "Padded and down jackets, parkas, rain jackets, wool coats.",
    // By stage, so that nobody turns one twice; a check that opens others stands before them.
    checks: &[
        &parts::ZIP,
        &cloth::CLOTH_HAND,
        &fill::FILLED,
        &fill::FILL_EVEN,
        &fill::FILL_LEAK,
        &seams::QUILT,
        &seams::TACKS,
        &parts::BUTTONS,
        &shape::EDGES,
        &shape::HOOD_CUFF,
        &cloth::RAIN,
        &cloth::BEAD,
        &seams::THREAD_ENDS,
        &parts::HARDWARE,
        &cloth::SHELL_WEIGHT,
        &seams::SEAMS,
        &parts::LINING,
        &cloth::SHELL,
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
        cautions::WOOL,
        cautions::SOLVENT,
        cautions::CHILDREN,
    ],
};

static DEFECTS: [Defect; 2] =
    [Defect::major("fill-comes-out", "Filling comes out"), Defect::major("seam-lets-water", "Seam that should be taped is not")];
