//! Jeans, the fit: how a pair is fitted. Lines and alterations stand in `fit_lines`, moves and signs in `fit_mirror`.

use crate::catalog::FitTable;
use crate::fit::LabelSystem;
use crate::measure::CLOTHS_BEFORE_WASH;

use super::cloth::{GROWTH, STRETCH};
use super::fit_lines::{ALONG_LEG, AT_HIP, AT_THIGH, AT_WAIST, HEM, INNER_SEAM, REGULAR, RELAXED, SEAT_SEAM, SLIM};
use super::fit_mirror::{MOVES, SIGNS};

pub(super) static FIT: FitTable = FitTable {
    cuts: &[&REGULAR, &SLIM, &RELAXED],
    lines: &[&AT_WAIST, &AT_HIP, &AT_THIGH, &ALONG_LEG],
    // Washed jeans are most of what hangs in shops.
    cloths: &[&CLOTHS_BEFORE_WASH[3], &CLOTHS_BEFORE_WASH[2], &CLOTHS_BEFORE_WASH[1], &CLOTHS_BEFORE_WASH[0]],
    give: Some(&STRETCH),
    // Most jeans on sale give a little. Judgement.
    usual_give: (12.0, 8.0),
    growth: Some(&GROWTH),
    allowances: &[&SEAT_SEAM, &INNER_SEAM, &HEM],
    moves: &MOVES,
    signs: &SIGNS,
    labels: &[LabelSystem::WaistInches],
};
