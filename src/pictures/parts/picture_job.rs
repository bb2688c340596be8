//! What is read from a picture: how it is taken and marked, what is asked, and the readings that follow from the answer.

use garment_assay::garment::{Given, Readings};
use garment_assay::measure::{
    Instrument, MarkedYarn, PhotoSpread, RUB_OFF_PHOTO, STITCH_PHOTO, THREAD_COUNT_PHOTO, TWILL_PHOTO, rub_off_photo_readings,
    stitch_photo_readings, thread_count_photo_readings, twill_photo_readings,
};
use garment_assay::{say, to_say};
use photo::{Answer, Ask, Cause, Object, Part, Patch, Point, Said};

use super::picture::Join;

/// One kind of reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Job {
    /// Stitches along a seam.
    Stitches,
    /// Yarns of woven cloth.
    Yarns,
    /// The line of a twill.
    Twill,
    /// A stain on white tissue.
    Stain,
}

impl Job {
    const ALL: [Job; 4] = [Job::Stitches, Job::Yarns, Job::Twill, Job::Stain];

    /// The instrument that takes its readings.
    pub fn instrument(self) -> &'static Instrument {
        match self {
            Job::Stitches => &STITCH_PHOTO,
            Job::Yarns => &THREAD_COUNT_PHOTO,
            Job::Twill => &TWILL_PHOTO,
            Job::Stain => &RUB_OFF_PHOTO,
        }
    }

    /// That of an instrument; none for one that is used otherwise.
    pub fn of(instrument: &'static Instrument) -> Option<Job> {
        Job::ALL.into_iter().find(|job| job.instrument() == instrument)
    }

    /// Whether something of known size must lie in the picture.
    pub const fn needs_size(self) -> bool {
        !matches!(self, Job::Stain)
    }

    /// How the picture is taken; to be said.
    pub const fn how(self) -> &'static [&'static str] {
        match self {
            Job::Stitches => &[
                to_say!(
                    "Lay the seam flat. Lay a ruler so that it touches the seam along the whole stretch, or a bank card or coin close beside it."
                ),
                to_say!("Hold the phone flat above it, near enough that single stitches are seen. Let light fall from the side."),
                to_say!("Take in ten stitches or more. Cover the numbers of a bank card."),
            ],
            Job::Yarns | Job::Twill => &[
                to_say!("Lay the cloth flat, with a ruler, a coin or a bank card on it."),
                to_say!(
                    "Hold the phone flat above it, as near as it still focuses, so that you see each yarn. Let light fall from the side."
                ),
                to_say!("Take in a finger’s width of free cloth beside the ruler. Cover the numbers of a bank card."),
            ],
            Job::Stain => &[
                to_say!(
                    "Rub a white tissue on the cloth, ten times to and fro. Lay it on more white tissue by a window, out of the sun."
                ),
                to_say!("Hold the phone flat above it, without flash, your own shadow beside it."),
                to_say!("Leave clean tissue on two sides of the stain."),
            ],
        }
    }

    /// Its own marks, after those of what is of known size: names, and what to do for each; to be said.
    pub const fn marks(self) -> &'static [(&'static str, &'static str)] {
        match self {
            Job::Stitches => &[
                (to_say!("First stitch"), to_say!("Tap the seam where the first stitch begins, on the thread itself.")),
                (to_say!("Last stitch"), to_say!("Tap the same row of stitches where the last stitch ends.")),
            ],
            Job::Yarns | Job::Twill => &[
                (to_say!("One yarn, here"), to_say!("Go near, and tap a yarn that you can follow.")),
                (to_say!("The same yarn, there"), to_say!("Follow that yarn as far as you can, and tap it again.")),
            ],
            Job::Stain => &[
                (to_say!("Stain, one corner"), to_say!("Tap two opposite corners of a box inside the stain.")),
                (to_say!("Stain, other corner"), to_say!("Tap the opposite corner, still inside the stain.")),
                (to_say!("White, one corner"), to_say!("Tap a corner of a box on clean tissue beside the stain.")),
                (to_say!("White, other corner"), to_say!("Tap the opposite corner of that box.")),
                (
                    to_say!("White beyond, one corner"),
                    to_say!("Tap a corner of a second clean box, on the other side of the stain."),
                ),
                (to_say!("White beyond, other corner"), to_say!("Tap the opposite corner of it.")),
            ],
        }
    }

    /// How its own marks are joined, each by first and last among them.
    pub const fn joins(self) -> &'static [(Join, usize, usize)] {
        match self {
            Job::Stitches | Job::Yarns | Job::Twill => &[(Join::Line, 0, 1)],
            Job::Stain => &[(Join::Box, 0, 1), (Join::Box, 2, 3), (Join::Box, 4, 5)],
        }
    }

    /// What is said over the camera's picture while it is aimed.
    pub fn aim(self) -> &'static str {
        match self {
            Job::Stitches => say!("Lay the seam along the line, a ruler beside it."),
            Job::Yarns | Job::Twill => say!("Near and flat, the ruler in the picture."),
            Job::Stain => say!("The stain on the line, clean tissue on both sides."),
        }
    }

    /// The word on the button that asks.
    pub fn verb(self) -> &'static str {
        match self {
            Job::Stitches => say!("Count the stitches"),
            Job::Yarns => say!("Count the yarns"),
            Job::Twill => say!("Find the twill"),
            Job::Stain => say!("Compare with white"),
        }
    }

    /// The question; none when there are too few marks.
    pub fn ask(self, object: Option<Object>, own: &[Point], said: Said) -> Option<Ask> {
        let patch = |pair: &[Point]| Some(Patch { from: *pair.first()?, to: *pair.get(1)? });
        match (self, own) {
            (Job::Stitches, [from, to]) => Some(Ask::Seam(*from, *to, object?, said)),
            (Job::Yarns | Job::Twill, [from, to]) => Some(Ask::Weave(*from, *to, object?)),
            (Job::Stain, [stain @ .., _, _, _, _]) => {
                Some(Ask::Stain(patch(stain)?, own[2..].chunks(2).filter_map(patch).collect()))
            }
            _ => None,
        }
    }

    /// What the answer comes to as readings of the instrument; none for a refusal.
    pub fn readings(self, heard: &Answer, yarn: MarkedYarn) -> Option<Readings> {
        let amounts: Vec<Option<f64>> = match (self, heard) {
            (Job::Stitches, Answer::Seam(_, Ok(count))) => {
                let stitches = u16::try_from(count.stitches.len()).unwrap_or(u16::MAX);
                stitch_photo_readings(count.stitch_mm, stitches, spread(&count.budget)).map(Some).into()
            }
            (Job::Yarns, Answer::Weave(_, Ok(cloth))) => {
                thread_count_photo_readings(cloth.along_marked, cloth.across_marked, yarn, spread(&cloth.budget)).into()
            }
            (Job::Twill, Answer::Weave(_, Ok(cloth))) => {
                twill_photo_readings(cloth.twill_degrees?, cloth.twill_u, yarn).map(Some).into()
            }
            (Job::Stain, Answer::Stain(Ok(stain))) => rub_off_photo_readings(stain.grade, stain.u).map(Some).into(),
            _ => return None,
        };
        let instrument = self.instrument();
        let given = instrument.inputs.iter().zip(amounts);
        Some(Readings {
            instrument,
            given: given
                .filter_map(|(input, amount)| Some(Given { input: input.key, amount: amount?, unit: input.unit }))
                .collect(),
        })
    }
}

/// The parts of a budget by what they come from: those of one cause together, as independent ones.
fn spread(budget: &[Part]) -> PhotoSpread {
    let of = |cause: Cause| budget.iter().filter(|part| part.from == cause).map(|part| part.share.powi(2)).sum::<f64>().sqrt();
    PhotoSpread { scale: of(Cause::Scale), height: of(Cause::Height), tilt: of(Cause::Tilt), counting: of(Cause::Counting) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::shared::means::Means;
    use garment_assay::measure::INSTRUMENTS;
    use photo::{Found, SeamCount, Stitch};

    fn p(x: f64, y: f64) -> Point {
        Point { x, y }
    }

    #[test]
    fn parts_of_one_cause_are_added_as_independent_ones() {
        let part = |from, share| Part { from, share };
        let spread = spread(&[part(Cause::Scale, 0.03), part(Cause::Tilt, 0.01), part(Cause::Scale, 0.04)]);
        assert_eq!(spread, PhotoSpread { scale: 0.05, tilt: 0.01, ..PhotoSpread::default() });
    }

    #[test]
    fn a_count_becomes_readings_that_the_instrument_takes() {
        let budget = vec![Part { from: Cause::Scale, share: 0.006 }, Part { from: Cause::Counting, share: 0.008 }];
        let stitches = vec![Stitch { from: p(0.0, 0.0), to: p(1.0, 0.0), skipped: false }; 12];
        let count = SeamCount { stitch_mm: 2.54, budget, stitches, unevenness: 0.04, px_per_stitch: 30.0 };
        let found = Found { graduation: None, places: Vec::new(), tilt: None };
        let heard = Answer::Seam(found, Ok(count));
        let outcome = Job::Stitches.readings(&heard, MarkedYarn::End).expect("readings").outcome().expect("an outcome");
        assert!((outcome.value - 10.0).abs() < 1e-9 && outcome.uncertainty > 0.099, "{outcome:?}");
        assert_eq!(Job::Stain.readings(&heard, MarkedYarn::End), None, "an answer to another question");
    }

    #[test]
    fn a_stain_and_two_whites_are_asked_as_boxes() {
        let own: Vec<Point> = (0..6).map(|n| p(f64::from(n), 0.0)).collect();
        let Some(Ask::Stain(stain, white)) = Job::Stain.ask(None, &own, Said::Nothing) else { panic!("a question") };
        assert_eq!((stain.from, stain.to), (own[0], own[1]));
        assert_eq!(white.iter().map(|patch| (patch.from, patch.to)).collect::<Vec<_>>(), [(own[2], own[3]), (own[4], own[5])]);
        assert_eq!(Job::Stain.ask(None, &own[..4], Said::Nothing), None);
        assert_eq!(Job::Stitches.ask(None, &own[..2], Said::Nothing), None, "no size");
    }

    #[test]
    fn every_job_names_its_marks_and_joins_those_it_has() {
        for job in Job::ALL {
            assert!(job.joins().iter().all(|(_, first, last)| first < last && *last < job.marks().len()), "{job:?}");
            assert_eq!(Job::of(job.instrument()), Some(job));
        }
    }

    /// The main program leads here by means alone.
    #[test]
    fn every_instrument_that_is_read_from_a_picture_has_a_job_and_no_other() {
        for instrument in INSTRUMENTS.iter().copied() {
            assert_eq!(Job::of(instrument).is_some(), Means::of(instrument) == Means::Picture, "{}", instrument.key);
        }
    }
}
