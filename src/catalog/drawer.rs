//! What the bench shows: its drawers, and the pictures beside what is measured, looked at and graded.

use crate::measure::{GradeScale, Instrument, Look};
use crate::specimen::Picture;

/// Instruments that lie together on the bench.
#[derive(Debug)]
pub struct Drawer {
    /// The heading.
    pub(crate) name: &'static str,
    /// What lies in it, in the order in which it is shown.
    pub tools: &'static [Tool],
}

crate::language::says!(Drawer { name });

/// An instrument on the bench.
#[derive(Debug)]
pub struct Tool {
    /// The instrument.
    pub instrument: &'static Instrument,
    /// What its use looks like; none where there is nothing to see but a label or a sheet.
    pub drawn: Option<Picture>,
}

/// A look at a seam with a picture for each thing that may be seen.
#[derive(Debug)]
pub struct DrawnLook {
    /// The look.
    pub look: &'static Look,
    /// Key of a choice and its picture, in the order of the choices.
    pub choices: &'static [(&'static str, Picture)],
}

/// A scale of grades with a drawn reference for each whole grade. They are our own, drawn by judgement: no lab's photographs.
#[derive(Debug)]
pub struct DrawnScale {
    /// The instrument that asks for a grade of this scale.
    pub instrument: &'static Instrument,
    /// The scale.
    pub scale: &'static GradeScale,
    /// Grade 1, the worst, to grade 5, in the order of the scale's steps.
    pub steps: [Picture; 5],
}
