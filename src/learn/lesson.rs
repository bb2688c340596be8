//! One lesson: a check with all that is to be read about it.

use crate::check::Check;
use crate::grading::Tables;
use crate::measure::STITCH_DENSITY;
use crate::practice::Topic;
use crate::source::Kind;
use crate::specimen::{Known, Picture, truth};

use super::subject::Subject;
use super::telling::Telling;
use super::text::Text;
use super::words;

/// Words that a person reads in a minute without haste. Silent reading of plain English is published at about 240 (Brysbaert 2019, from
/// memory); here one stops at terms, so less: judgement.
const WORDS_A_MINUTE: f64 = 200.0;
/// Seconds for a look at one picture. Judgement.
const SECONDS_A_PICTURE: f64 = 3.0;
/// Words that a text which is not here yet is taken to have. The middle one of the repository has 129.
const USUAL_TEXT: usize = 130;

/// What is to be read about one check.
#[derive(Clone, Debug, PartialEq)]
pub struct Lesson {
    /// What the course is about in which it stands.
    pub subject: Subject,
    /// The check.
    pub check: &'static Check,
    /// How telling it is; none when it speaks of cost only.
    pub telling: Option<Telling>,
    /// Its place among the checks of the subject that are no matter of cost alone, by bits per second, and how many they are; none with `telling`.
    pub rank: Option<(usize, usize)>,
}

impl Lesson {
    /// The lesson of a check, its rank left open.
    pub(super) fn unranked(subject: Subject, check: &'static Check, tables: &Tables) -> Lesson {
        Lesson { subject, check, telling: Telling::of(subject.question(), check, tables), rank: None }
    }

    /// What can be practised of it on drawn specimens; none where nothing can. Told from what its instruments and pictures show, so that
    /// no check need be named.
    pub fn topic(&self) -> Option<Topic> {
        if self.check.instruments.iter().any(|instrument| instrument.key == STITCH_DENSITY.key) {
            return Some(Topic::Count);
        }
        let pictures = || self.check.levels.iter().filter_map(|level| level.drawn);
        let whiskers = |picture: Picture| matches!(picture, Picture::Whiskers(_));
        if pictures().any(whiskers) {
            return Some(Topic::Whiskers);
        }
        let known: Vec<Known> = pictures().flat_map(|picture| truth(&picture)).collect();
        let shows = |look: fn(&Known) -> bool| known.iter().any(look);
        if shows(|known| matches!(known, Known::RippleMm(_))) {
            Some(Topic::Pucker)
        } else if shows(|known| matches!(known, Known::Join(_))) {
            Some(Topic::Felled)
        } else if shows(|known| matches!(known, Known::Skips(count) | Known::Restarts(count) if *count > 0)) {
            Some(Topic::Faults)
        } else {
            None
        }
    }

    /// Whether something published stands behind its wording, and not practice, judgement or memory alone. How telling it is, is judgement
    /// in any case.
    pub fn leans_on_something_published(&self) -> bool {
        self.check.sources.iter().any(|source| matches!(source.kind, Kind::Standard | Kind::Document | Kind::Computed))
    }

    /// How telling it is, in sentences.
    pub fn telling_words(&self) -> Vec<String> {
        words::telling(self)
    }

    /// What the better pieces are called, whose share stands with each answer.
    pub fn better_words(&self) -> String {
        words::better(self.subject.question())
    }

    /// How sure that is, in sentences.
    pub fn sure_words(&self) -> &'static str {
        words::sure(self)
    }

    /// Words to be read, with the longer text where it is here.
    pub fn words(&self, text: Option<&Text>) -> usize {
        let count = |text: &str| text.split_whitespace().count();
        let check = self.check;
        let levels: usize = check.levels.iter().map(|level| count(level.name()) + count(level.line())).sum();
        let composed: usize = self.telling_words().iter().map(|sentence| count(sentence)).sum();
        count(check.question())
            + count(check.how())
            + levels
            + count(check.meaning())
            + check.speaks.cost().map_or(0, count)
            + check.caution().map_or(0, count)
            + composed
            + count(self.sure_words())
            + text.map_or(USUAL_TEXT, Text::words)
    }

    /// About how long it takes to read, in seconds.
    pub fn seconds(&self, text: Option<&Text>) -> f64 {
        let pictures = self.check.levels.iter().filter(|level| level.drawn.is_some()).count();
        self.words(text) as f64 * 60.0 / WORDS_A_MINUTE + pictures as f64 * SECONDS_A_PICTURE
    }
}
