//! Sweaters and cardigans: the checks of one, and what each answer says.

mod bill;
mod cloth;
mod fit;
mod joins;
mod points;
mod prices;
mod second_hand;
mod shape;

use super::{Family, cautions, shared};
use crate::lot::Defect;
use crate::specimen::{Picture, TopCut, TopFlat};

/// Sweaters and cardigans.
pub static SWEATER: Family = Family {
    key: "sweater",
    name: "Sweater or cardigan",
    example: "Grey crew neck",
    drawn: Picture::TopFlat(TopFlat { cut: TopCut::Sweater, point: None }),
    covers: "Pullovers, cardigans and vests whose loops you can see, of wool, cotton, acrylic or cashmere.",
    // By stage, so that nobody turns one twice; a check that opens others stands before them.
    checks: &[
        &joins::SHAPING,
        &shape::RIB_RETURN,
        &cloth::TIGHTNESS,
        &cloth::EVEN_KNIT,
        &shape::NECK,
        &shape::SEAM_LINE,
        &cloth::PILL_RUB,
        &shape::CARDIGAN,
        &shape::BAND,
        &cloth::GAUGE,
        &joins::JOINS,
        &joins::SHOULDER,
        &joins::ENDS,
        &joins::STITCH_EVEN,
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
        cautions::WOOL,
        cautions::NO_FLAME,
        cautions::CHILDREN,
    ],
};

static DEFECTS: [Defect; 2] = [
    Defect::major("dropped-loop", "Dropped stitch or ladder"),
    Defect::major("loops-open-at-neck", "Loops not linked at the neck"),
];
