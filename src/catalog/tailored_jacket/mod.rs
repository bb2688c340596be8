//! The tailored jacket: the checks of one, and what each answer says.

mod bill;
mod cloth;
mod details;
mod fit;
mod front;
mod inside;
mod points;
mod prices;
mod second_hand;
mod shape;

use super::{Family, cautions, shared};
use crate::lot::Defect;
use crate::specimen::{JacketFlat, Picture};

/// Jackets with lapels, a lining and a shaped front.
pub static TAILORED_JACKET: Family = Family {
    key: "tailored-jacket",
    name: "Tailored jacket",
    example: "Grey flannel, two buttons",
    drawn: Picture::JacketFlat(JacketFlat),
    covers: "A jacket with lapels and lining, alone or from a suit.",
    // By stage, so that nobody turns the piece twice; a check that opens another stands before it.
    checks: &[
        &cloth::PATTERNED,
        &cloth::CLOTH_CRUSH,
        &front::CANVAS,
        &front::LAPEL_ROLL,
        &shape::SLEEVE_HEAD,
        &shape::MATCH,
        &front::EDGES,
        &details::POCKETS,
        &details::STITCH_EVEN,
        &details::BUTTONHOLES,
        &details::BUTTONS,
        &details::CUFF,
        &inside::LINING,
        &inside::ALLOWANCE,
        &cloth::CLOTH,
        &shared::MADE_IN,
        &shape::COLLAR_SIT,
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
        cautions::SOLVENT,
        cautions::WOOL,
        cautions::CHILDREN,
    ],
};

static DEFECTS: [Defect; 2] = [
    Defect::major("lapels-unequal", "Lapels roll unequally, collar stands off"),
    Defect::major("lining-pulls", "Lining pulls the hem"),
];
