//! By what means an instrument is used. Both programs ask; only one of them holds the pages for camera and pictures.

use garment_assay::measure::{
    Instrument, RUB_OFF_PHOTO, STITCH_COMB, STITCH_COMB_LIVE, STITCH_PHOTO, STITCH_TAPS, THREAD_COUNT_PHOTO, TWILL_PHOTO,
};

/// By what means an instrument is used.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Means {
    /// Its form is filled in.
    Form,
    /// It is read off the ruler on the screen.
    Ruler,
    /// It is laid on the camera's picture.
    Camera,
    /// It is read from a picture.
    Picture,
}

impl Means {
    /// That of an instrument.
    pub fn of(instrument: &'static Instrument) -> Means {
        let is = |others: &[&'static Instrument]| others.contains(&instrument);
        if is(&[&STITCH_COMB, &STITCH_TAPS]) {
            Means::Ruler
        } else if is(&[&STITCH_COMB_LIVE]) {
            Means::Camera
        } else if is(&[&STITCH_PHOTO, &THREAD_COUNT_PHOTO, &TWILL_PHOTO, &RUB_OFF_PHOTO]) {
            Means::Picture
        } else {
            Means::Form
        }
    }
}
