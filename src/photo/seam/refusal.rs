//! When a reading is not to be trusted: what speaks against it.

use serde::{Deserialize, Serialize};

/// Why the stitches were not counted. Numbers are for the words, which the page has, and for the page.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub enum SeamRefusal {
    /// The marks are no places in the picture, or lie on one place.
    Marks,
    /// Nothing that looks like a row of stitches lies between the marks.
    NoSeam,
    /// So few whole stitches lie between the marks that one more or less would matter.
    TooFew {
        /// Stitches found, about.
        stitches: usize,
    },
    /// The picture has too few pixels for a stitch.
    TooSmall {
        /// Pixels in a stitch, about.
        px_per_stitch: f64,
    },
    /// Something repeats, too faintly to be followed: blurred, dark, or thread on cloth of its own colour.
    Faint,
    /// Two numbers of stitches fit about as well.
    TwoReadings {
        /// Stitches in a centimetre, the likelier reading.
        likelier: f64,
        /// Stitches in a centimetre, the other.
        other: f64,
    },
    /// The seam bends more than can be followed.
    Bends,
    /// What was found does not hold together from one end to the other.
    Unsteady,
    /// The stitches are so unlike in length that one may be lost or counted twice.
    Uneven,
}

/// How far a seam may lie off the straight line between the marks, as a share of it: beyond, it is not followed.
const MOST_BOW: f32 = 0.135;

/// Least share of the way between the marks that the stitches placed must fill: what fills less is another seam that runs across, or a piece of this one
/// (judgement: of 838 usable drawings answered none filled less than 0.78; lines reached from marks beside a seam filled 0.58 to 0.66).
const LEAST_FILLED: f32 = 0.7;

/// What speaks for and against a reading.
#[derive(Clone, Copy, Debug)]
pub(super) struct Signs {
    /// Whole stitches placed.
    pub(super) stitches: usize,
    /// Pixels of the picture in a stitch.
    pub(super) px_per_stitch: f32,
    /// The strongest line of the spectrum, in spreads of the floor.
    pub(super) line: f32,
    /// Share of variance that the mean stitch explains.
    pub(super) likeness: f32,
    /// Strongest line that is no multiple or part of this one, as a share of it.
    pub(super) rival: f32,
    /// The same within 15 % of it, where an uneven seam splits its own line.
    pub(super) near: f32,
    /// How alike neighbouring stitches are.
    pub(super) neighbours: f32,
    /// Stitches by which phase and placing differ.
    pub(super) drift: f32,
    /// How clearly the seam stands out from the cloth.
    pub(super) strength: f32,
    /// By how much the pitch of the three thirds differs, as a share; a steady change counts less.
    pub(super) thirds: f32,
    /// The cloth's part of what is seen at the frequency of the stitches, 0 to 1.
    pub(super) shared: f32,
    /// By how much stitches differ in how strongly they show, as a share.
    pub(super) patchy: f32,
    /// How usual stitches of this length are, 0 to 1.
    pub(super) usual: f32,
    /// How far the seam lies off the straight line between the marks, as a share of it.
    pub(super) bow: f32,
    /// Mean length of a stitch, mm on the cloth.
    pub(super) length: f32,
    /// Share of the way between the marks that the stitches fill.
    pub(super) filled: f32,
}

/// Stitches longer than this (mm) show so much thread that their line is stronger than this; a weak one so long is rather that of puckers
/// (judgement: of 97 drawings that needed more than one look, the three read as stitches twice to four times too long had one, and four others).
const LONG: f32 = 3.0;
const WEAK: f32 = 20.0;

/// How much stitches may differ in how strongly they show for one or three looks to be enough. Where some hardly show beside the others, cloth may
/// stand for them or two be taken for one, and smoothly enough to be believed (judgement: of 685 usable drawings answered 47 were beyond,
/// among them three of the five off by more than half a stitch per inch; 0.15 to 0.25 refuse nearly the same).
const MOST_PATCHY: f32 = 0.2;

impl Signs {
    /// How surely the reading is right: logarithm of the odds. Logistic; weights fitted, none against its sense, on the even seeds of 100000 to
    /// 100599 of our own drawing, with marks on the seam and 9 mm off it, and on the open sets; judged on the odd seeds and on 200000 to 200399.
    pub(super) fn trust(&self) -> f32 {
        let likeness = self.likeness.clamp(0.01, 0.995);
        let alike = 1.0 - (1.0 - self.neighbours) * (self.stitches as f32 / 16.0).min(1.0);
        -1.98 + 0.06 * (likeness / (1.0 - likeness)).ln() - 1.91 * self.rival.min(1.5) - 3.39 * self.near.min(1.0) + 1.35 * alike
            - 3.08 * self.drift.min(2.0)
            + 2.08 * self.strength.max(0.1).ln()
            + 0.6 * self.line.max(0.1).ln().min(3.5)
            + 0.93 * (self.stitches as f32 / 12.0).ln().min(0.0)
            - 2.42 * self.shared
            + 13.7 * self.usual.max(0.1).ln()
            - 2.0 * self.puckers()
    }

    /// How much the line looks like that of puckers: the longer than a usual stitch and the weaker, the more; 0 for most seams.
    fn puckers(&self) -> f32 {
        (self.length / LONG).max(1.0).ln() * (WEAK / self.line.max(0.1)).max(1.0).ln()
    }

    /// Whether the stitches show about as strongly one as the other.
    pub(super) fn is_clear(&self) -> bool {
        self.patchy < MOST_PATCHY
    }

    /// What alone forbids an answer.
    pub(super) fn forbids(&self) -> Option<SeamRefusal> {
        if self.stitches < 6 {
            Some(SeamRefusal::TooFew { stitches: self.stitches })
        } else if self.px_per_stitch < 7.0 {
            Some(SeamRefusal::TooSmall { px_per_stitch: f64::from(self.px_per_stitch) })
        } else if self.bow > MOST_BOW {
            Some(SeamRefusal::Bends)
        } else if self.line < 0.5 || self.strength < 0.2 {
            Some(SeamRefusal::NoSeam)
        } else if self.likeness < 0.5 {
            Some(SeamRefusal::Faint)
        } else if self.filled < LEAST_FILLED {
            Some(SeamRefusal::Unsteady)
        } else {
            None
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn clear() -> Signs {
        Signs {
            stitches: 30,
            px_per_stitch: 25.0,
            line: 30.0,
            likeness: 0.95,
            rival: 0.05,
            near: 0.0,
            neighbours: 1.0,
            drift: 0.05,
            strength: 4.0,
            thirds: 0.02,
            shared: 0.05,
            patchy: 0.05,
            usual: 1.0,
            bow: 0.01,
            length: 2.5,
            filled: 1.0,
        }
    }

    #[test]
    fn whatever_speaks_against_a_reading_lowers_trust_in_it() {
        let trust = clear().trust();
        assert!(trust > 3.0, "{trust}");
        let worse = [
            Signs { rival: 0.8, ..clear() },
            Signs { near: 0.5, ..clear() },
            Signs { drift: 1.0, ..clear() },
            Signs { strength: 1.0, ..clear() },
            Signs { shared: 0.5, ..clear() },
            Signs { usual: 0.8, ..clear() },
            Signs { line: 1.0, ..clear() },
            Signs { neighbours: 0.0, ..clear() },
        ];
        for signs in worse {
            assert!(signs.trust() < trust - 0.5, "{signs:?}");
        }
    }

    #[test]
    fn a_long_weak_line_may_be_puckers_and_a_long_strong_one_may_not() {
        let of = |length, line| Signs { length, line, ..clear() }.puckers();
        assert_eq!(of(2.5, 2.0), 0.0);
        assert_eq!(of(6.0, 40.0), 0.0);
        assert!(of(6.0, 2.0) > of(6.0, 8.0) && of(6.0, 2.0) > of(4.0, 2.0) && of(4.0, 8.0) > 0.0);
    }

    #[test]
    fn a_row_that_shows_in_patches_is_not_clear() {
        assert!(clear().is_clear());
        assert!(!Signs { patchy: 0.3, ..clear() }.is_clear());
    }

    #[test]
    fn too_little_to_count_is_forbidden_whatever_else_speaks_for_it() {
        assert_eq!(clear().forbids(), None);
        assert_eq!(Signs { stitches: 5, ..clear() }.forbids(), Some(SeamRefusal::TooFew { stitches: 5 }));
        assert_eq!(Signs { px_per_stitch: 6.5, ..clear() }.forbids(), Some(SeamRefusal::TooSmall { px_per_stitch: 6.5 }));
        assert_eq!(Signs { bow: 0.2, ..clear() }.forbids(), Some(SeamRefusal::Bends));
        assert_eq!(Signs { likeness: 0.4, ..clear() }.forbids(), Some(SeamRefusal::Faint));
        assert_eq!(Signs { filled: 0.6, ..clear() }.forbids(), Some(SeamRefusal::Unsteady));
        assert_eq!(Signs { line: 0.4, ..clear() }.forbids(), Some(SeamRefusal::NoSeam));
    }
}
