//! T-shirts and jersey tops: the checks of one, and what each answer says.

mod bill;
mod cloth;
mod fit;
mod points;
mod prices;
mod seams;
mod second_hand;
mod shape;
mod stitching;

use super::{Family, cautions, shared};
use crate::lot::Defect;
use crate::specimen::{Picture, TopCut, TopFlat};

/// T-shirts and jersey tops.
pub static T_SHIRT: Family = Family {
    key: "t-shirt",
    name: "T-shirt or jersey top",
    example: "Heavy white T-shirt",
    drawn: Picture::TopFlat(TopFlat { cut: TopCut::Tee, point: None }),
    covers: "T-shirts, vests and tops of light knitted cloth, plain or printed.",
    // By stage, so that nobody turns one twice; a check that opens others stands before them.
    checks: &[
        &shape::NECK_RIB,
        &shape::TWIST,
        &cloth::DENSITY,
        &cloth::RETURN,
        &cloth::WEIGHT,
        &cloth::PILL_RUB,
        &cloth::PRINTED,
        &cloth::PRINT,
        &seams::HEM,
        &stitching::STITCH_EVEN,
        &stitching::PUCKER,
        &stitching::THREAD_ENDS,
        &seams::SEAM_TYPE,
        &seams::SHOULDER,
        &seams::NECK_TAPE,
        &seams::BODY,
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

static DEFECTS: [Defect; 2] =
    [Defect::major("body-turns", "Body twists by more than 5 %"), Defect::major("neck-baggy", "Neck rib twisted or baggy")];
