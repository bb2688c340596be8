//! How many CSS pixels a screen has to the millimetre: told once against a card or a coin, and void when the screen is another one.

use std::fmt;

use crate::quantity::{Estimate, Length, Number, PerLength, Unit};
use crate::say;

/// Something flat whose size is known, laid on the screen.
#[derive(Debug, PartialEq)]
pub struct Known {
    /// Name in storage; never renamed once released.
    pub key: &'static str,
    /// What people call it.
    pub(crate) name: &'static str,
    /// Its length or diameter in mm.
    pub long_mm: f64,
    /// Its other side in mm; none for a coin, whose outline is fitted as a whole.
    pub short_mm: Option<f64>,
    /// Whether the size was seen in the standard or the mint's list, or is from memory.
    pub confirmed: bool,
}

crate::language::says!(Known { name });

/// A bank or library card of the format ID-1.
///
/// # Source
/// ISO/IEC 7810: 85.60 by 53.98 mm.
pub static CARD: Known =
    Known { key: "card", name: "Bank, library or travel card", long_mm: 85.60, short_mm: Some(53.98), confirmed: true };

const fn coin(key: &'static str, name: &'static str, mm: f64, confirmed: bool) -> Known {
    Known { key, name, long_mm: mm, short_mm: None, confirmed }
}

/// Coins by country. Diameters by the mints' lists; those not confirmed there are from memory. Coins with corners are left out.
pub static COINS: [Known; 30] = [
    coin("us-1", "US penny", 19.05, true),
    coin("us-5", "US nickel", 21.21, true),
    coin("us-10", "US dime", 17.91, true),
    coin("us-25", "US quarter", 24.26, true),
    coin("us-50", "US half dollar", 30.61, true),
    coin("eu-1", "1 euro cent", 16.25, false),
    coin("eu-2", "2 euro cents", 18.75, false),
    coin("eu-5", "5 euro cents", 21.25, false),
    coin("eu-10", "10 euro cents", 19.75, false),
    coin("eu-50", "50 euro cents", 24.25, false),
    coin("eu-100", "1 euro", 23.25, false),
    coin("eu-200", "2 euros", 25.75, false),
    coin("gb-1", "UK 1 penny", 20.3, false),
    coin("gb-2", "UK 2 pence", 25.9, false),
    coin("gb-5", "UK 5 pence", 18.0, false),
    coin("gb-10", "UK 10 pence", 24.5, false),
    coin("gb-200", "UK 2 pounds", 28.4, false),
    coin("jp-1", "1 yen", 20.0, true),
    coin("jp-5", "5 yen", 22.0, true),
    coin("jp-10", "10 yen", 23.5, true),
    coin("jp-50", "50 yen", 21.0, true),
    coin("jp-100", "100 yen", 22.6, true),
    coin("jp-500", "500 yen", 26.5, true),
    coin("in-1", "1 rupee (from 2019)", 20.0, false),
    coin("in-2", "2 rupees (from 2019)", 23.0, false),
    coin("in-5", "5 rupees (from 2019)", 25.0, false),
    coin("in-10", "10 rupees", 27.0, false),
    coin("cn-1-1999", "1 yuan (from 1999)", 25.0, true),
    coin("cn-1-2019", "1 yuan (from 2019)", 22.25, false),
    coin("cn-01", "1 jiao", 19.0, true),
];

/// The known object of that key.
pub fn known(key: &str) -> Option<&'static Known> {
    std::iter::once(&CARD).chain(&COINS).find(|known| known.key == key)
}

/// How well an edge is laid on a line by eye, standard uncertainty in mm. Handbook, section 15: judgement.
const PLACING_MM: f64 = 0.3;
/// Largest difference between a card's two sides that placing explains. Handbook, section 15.
const SIDES_DIFFER: f64 = 0.01;
/// CSS pixels to the millimetre that a screen can have: a desk's large one at 1.5 to a phone's smallest text at 12. Judgement.
const BELIEVED: (f64, f64) = (1.5, 12.0);

/// A screen's scale.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ScreenScale {
    /// CSS pixels to the millimetre.
    pub px_per_mm: f64,
    /// Standard uncertainty of that, as a part of it.
    pub relative: f64,
}

/// Why a calibration is not taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ScaleFault {
    /// A size that is not a positive number.
    NotASize,
    /// The two sides give two scales: another card, or a case round it.
    SidesDiffer,
    /// No screen has such a scale.
    NoSuchScreen,
}

impl fmt::Display for ScaleFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            ScaleFault::NotASize => say!("Move the lines to the edges of the card first."),
            ScaleFault::SidesDiffer => {
                say!("The two sides do not agree. Is it a card of the usual size, out of its sleeve? Fit both lines again.")
            }
            ScaleFault::NoSuchScreen => say!("No screen is as fine or as coarse as that. Fit the lines to the edges again."),
        })
    }
}

impl ScreenScale {
    /// The scale from an object whose outline was fitted on the screen: `long_px`, and `short_px` where it has two sides.
    ///
    /// # Formula
    /// `px / mm` of each side, averaged with weights by the inverse square of their spreads (JCGM 100:2008, the weighted mean of
    /// two readings, as in its note to 4.2; 0.3 mm placing on each side).
    ///
    /// # Errors
    /// [`ScaleFault`]: not a size; two sides that differ by more than 1 %; no screen like it.
    ///
    /// # Source
    /// Handbook, section 15: 0.3 mm on 85.60 mm is 0.35 %, on a coin of 24.26 mm 1.24 %.
    ///
    /// # Example
    /// ```
    /// use garment_assay::measure::{CARD, ScreenScale};
    /// let scale = ScreenScale::fitted(&CARD, 513.6, Some(323.88)).unwrap();
    /// assert!((scale.px_per_mm - 6.0).abs() < 1e-9);
    /// ```
    pub fn fitted(object: &Known, long_px: f64, short_px: Option<f64>) -> Result<ScreenScale, ScaleFault> {
        let side = |px: f64, mm: f64| {
            let sound = px.is_finite() && px > 0.0;
            sound.then_some((px / mm, PLACING_MM / mm)).ok_or(ScaleFault::NotASize)
        };
        let (long, long_u) = side(long_px, object.long_mm)?;
        let (px_per_mm, relative) = match (object.short_mm, short_px) {
            (Some(mm), Some(px)) => {
                let (short, short_u) = side(px, mm)?;
                if (long / short - 1.0).abs() > SIDES_DIFFER {
                    return Err(ScaleFault::SidesDiffer);
                }
                let (one, other) = (long_u.powi(-2), short_u.powi(-2));
                ((one * long + other * short) / (one + other), (one + other).powf(-0.5))
            }
            (Some(_), None) => return Err(ScaleFault::NotASize),
            (None, _) => (long, long_u),
        };
        if !(BELIEVED.0..=BELIEVED.1).contains(&px_per_mm) {
            return Err(ScaleFault::NoSuchScreen);
        }
        Ok(ScreenScale { px_per_mm, relative })
    }

    /// A length on the screen, in CSS pixels, as an estimate whose spread comes from the input `screen`.
    pub fn length(&self, px: f64) -> Estimate<Length> {
        let mm = px / self.px_per_mm;
        Estimate::measured_in("screen", mm, mm.abs() * self.relative, Unit::Millimetre).unwrap_or_else(|_| Estimate::unknown())
    }

    /// So many to a pitch on the screen in CSS pixels: stitches per length from the pitch of a comb.
    pub fn density(&self, pitch_px: f64) -> Estimate<PerLength> {
        Estimate::<Number>::exact(1.0) / self.length(pitch_px)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_handbooks_rows_come_out() {
        // CL01: 1012.5 px over 85.60 mm is 11.828 px/mm. CL03: 0.3 mm on 85.60 mm is 0.3505 %, on 24.26 mm 1.237 %.
        let card = Known { short_mm: None, ..coin("card-long", "", 85.60, true) };
        let scale = ScreenScale::fitted(&card, 1012.5, None).unwrap();
        assert!((scale.px_per_mm - 11.828).abs() < 0.001);
        assert!((100.0 * scale.relative - 0.3505).abs() < 0.0001);
        let quarter = ScreenScale::fitted(known("us-25").unwrap(), 145.0, None).unwrap();
        assert!((100.0 * quarter.relative - 1.237).abs() < 0.001);
        // CL02: the sides of the card are as 1.58577 to 1.
        assert!((CARD.long_mm / CARD.short_mm.unwrap() - 1.58577).abs() < 0.00002);
    }

    #[test]
    fn another_card_is_noticed_by_its_sides() {
        let fitted = |long, short| ScreenScale::fitted(&CARD, long, Some(short));
        assert!(fitted(513.6, 323.88).is_ok());
        assert_eq!(fitted(513.6, 340.0), Err(ScaleFault::SidesDiffer));
        assert_eq!(ScreenScale::fitted(&CARD, 513.6, None), Err(ScaleFault::NotASize));
    }

    #[test]
    fn both_sides_together_are_surer_than_either() {
        let both = ScreenScale::fitted(&CARD, 513.6, Some(323.88)).unwrap().relative;
        assert!(both < 0.3 / 85.60 && both > 0.002);
    }

    #[test]
    fn nonsense_is_refused_in_words() {
        for px in [f64::NAN, f64::INFINITY, 0.0, -5.0] {
            assert_eq!(ScreenScale::fitted(&CARD, px, Some(320.0)), Err(ScaleFault::NotASize));
        }
        assert_eq!(ScreenScale::fitted(&CARD, 5136.0, Some(3238.8)), Err(ScaleFault::NoSuchScreen));
    }
}
