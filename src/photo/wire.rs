//! Questions and answers as plain numbers, the form in which a page and its second thread exchange them.
//!
//! By hand and not by a general library: what that derives for these types would weigh on every first visit, while this is a few lines
//! and travels as one array. Both ends are always of one build.

use crate::{
    Answer, Ask, Cause, Found, Graduation, Object, Part, Patch, Point, Said, SeamCount, SeamRefusal, StainReading, Stitch,
    WeaveReading,
};

/// Why there is no reading, in words, with what a person may choose from.
#[derive(Clone, Debug, PartialEq)]
pub struct Refused {
    /// The reason and what to do.
    pub sentence: String,
    /// Two readings that fit about as well, in stitches per centimetre, the likelier first.
    pub rivals: Option<[f64; 2]>,
}

/// An answer as the page hears it: refusals are words already.
#[derive(Clone, Debug, PartialEq)]
pub enum Heard {
    /// There is no scale.
    NoScale(Refused),
    /// Stitches, or why not.
    Seam(Found, Result<SeamCount, Refused>),
    /// Yarns, or why not.
    Weave(Found, Result<WeaveReading, Refused>),
    /// The grade of a stain, or why not.
    Stain(Result<StainReading, Refused>),
}

/// A question as numbers.
pub fn asked(ask: &Ask) -> Vec<f64> {
    let mut to = Vec::new();
    match ask {
        Ask::Seam(from, end, object, said) => {
            to.push(0.0);
            from.put(&mut to);
            end.put(&mut to);
            object.put(&mut to);
            said.put(&mut to);
        }
        Ask::Weave(from, end, object) => {
            to.push(1.0);
            from.put(&mut to);
            end.put(&mut to);
            object.put(&mut to);
        }
        Ask::Stain(stain, white) => {
            to.push(2.0);
            stain.put(&mut to);
            white.put(&mut to);
        }
    }
    to
}

/// The question that those numbers are; none when they are no question.
pub fn ask_of(numbers: &[f64]) -> Option<Ask> {
    let mut from = Numbers(numbers);
    Some(match from.next()? as u8 {
        0 => Ask::Seam(Flat::take(&mut from)?, Flat::take(&mut from)?, Flat::take(&mut from)?, Flat::take(&mut from)?),
        1 => Ask::Weave(Flat::take(&mut from)?, Flat::take(&mut from)?, Flat::take(&mut from)?),
        2 => Ask::Stain(Flat::take(&mut from)?, Flat::take(&mut from)?),
        _ => return None,
    })
}

/// An answer as numbers and, for a refusal, its sentence.
pub fn told(answer: &Answer) -> (Vec<f64>, String) {
    let mut to = Vec::new();
    let sentence = match answer {
        Answer::NoScale(fault) => {
            to.extend([0.0, 0.0, f64::NAN, f64::NAN]);
            fault.to_string()
        }
        Answer::Seam(found, count) => {
            to.push(1.0);
            found.put(&mut to);
            let rivals = match count {
                Err(SeamRefusal::TwoReadings { likelier, other }) => [*likelier, *other],
                _ => [f64::NAN; 2],
            };
            either(count, rivals, &mut to)
        }
        Answer::Weave(found, reading) => {
            to.push(2.0);
            found.put(&mut to);
            either(reading, [f64::NAN; 2], &mut to)
        }
        Answer::Stain(reading) => {
            to.push(3.0);
            either(reading, [f64::NAN; 2], &mut to)
        }
    };
    (to, sentence)
}

/// The answer that those numbers and words are; none when they are no answer.
pub fn heard(numbers: &[f64], sentence: &str) -> Option<Heard> {
    let mut from = Numbers(numbers);
    Some(match from.next()? as u8 {
        0 => Heard::NoScale(one_of::<Part>(&mut from, sentence)?.err()?),
        1 => Heard::Seam(Flat::take(&mut from)?, one_of(&mut from, sentence)?),
        2 => Heard::Weave(Flat::take(&mut from)?, one_of(&mut from, sentence)?),
        3 => Heard::Stain(one_of(&mut from, sentence)?),
        _ => return None,
    })
}

fn either<T: Flat, E: ToString>(result: &Result<T, E>, rivals: [f64; 2], to: &mut Vec<f64>) -> String {
    match result {
        Ok(reading) => {
            to.push(1.0);
            reading.put(to);
            String::new()
        }
        Err(refusal) => {
            to.push(0.0);
            to.extend(rivals);
            refusal.to_string()
        }
    }
}

fn one_of<T: Flat>(from: &mut Numbers, sentence: &str) -> Option<Result<T, Refused>> {
    if from.next()? > 0.5 {
        return Some(Ok(T::take(from)?));
    }
    let rivals = [from.next()?, from.next()?];
    let rivals = rivals.iter().all(|rival| rival.is_finite()).then_some(rivals);
    Some(Err(Refused { sentence: sentence.to_owned(), rivals }))
}

/// Numbers that are taken one after the other.
struct Numbers<'a>(&'a [f64]);

impl Numbers<'_> {
    fn next(&mut self) -> Option<f64> {
        let (first, rest) = self.0.split_first()?;
        self.0 = rest;
        Some(*first)
    }
}

/// What can be laid out as numbers.
trait Flat: Sized {
    fn put(&self, to: &mut Vec<f64>);
    fn take(from: &mut Numbers) -> Option<Self>;
}

impl Flat for f64 {
    fn put(&self, to: &mut Vec<f64>) {
        to.push(*self);
    }

    fn take(from: &mut Numbers) -> Option<f64> {
        from.next()
    }
}

impl Flat for bool {
    fn put(&self, to: &mut Vec<f64>) {
        to.push(f64::from(u8::from(*self)));
    }

    fn take(from: &mut Numbers) -> Option<bool> {
        Some(from.next()? > 0.5)
    }
}

impl<T: Flat> Flat for Vec<T> {
    fn put(&self, to: &mut Vec<f64>) {
        to.push(self.len() as f64);
        self.iter().for_each(|one| one.put(to));
    }

    fn take(from: &mut Numbers) -> Option<Vec<T>> {
        let count = from.next()?;
        // Each takes a number at least, so that no count can ask for more than there are.
        if !(0.0..=from.0.len() as f64).contains(&count) {
            return None;
        }
        (0..count as usize).map(|_| T::take(from)).collect()
    }
}

impl<T: Flat> Flat for Option<T> {
    fn put(&self, to: &mut Vec<f64>) {
        self.is_some().put(to);
        self.iter().for_each(|one| one.put(to));
    }

    fn take(from: &mut Numbers) -> Option<Option<T>> {
        if bool::take(from)? { Some(Some(T::take(from)?)) } else { Some(None) }
    }
}

impl<T: Flat + Copy + Default, const N: usize> Flat for [T; N] {
    fn put(&self, to: &mut Vec<f64>) {
        self.iter().for_each(|one| one.put(to));
    }

    fn take(from: &mut Numbers) -> Option<[T; N]> {
        let mut all = [T::default(); N];
        for one in &mut all {
            *one = T::take(from)?;
        }
        Some(all)
    }
}

macro_rules! fields {
    ($name:ident { $($field:ident),* }) => {
        impl Flat for $name {
            fn put(&self, to: &mut Vec<f64>) {
                $(self.$field.put(to);)*
            }

            fn take(from: &mut Numbers) -> Option<$name> {
                Some($name { $($field: Flat::take(from)?),* })
            }
        }
    };
}

macro_rules! choices {
    ($name:ident: $($choice:ident),*) => {
        impl Flat for $name {
            fn put(&self, to: &mut Vec<f64>) {
                to.push(f64::from(*self as u8));
            }

            fn take(from: &mut Numbers) -> Option<$name> {
                let number = from.next()?;
                [$($name::$choice),*].into_iter().find(|choice| f64::from(*choice as u8) == number)
            }
        }
    };
}

fields!(Point { x, y });
fields!(Patch { from, to });
fields!(Part { from, share });
fields!(Stitch { from, to, skipped });
fields!(Found { graduation, places, tilt });
fields!(SeamCount { stitch_mm, budget, stitches, unevenness, px_per_stitch });
fields!(WeaveReading { along_marked, across_marked, budget, twill_degrees, twill_u, px_per_yarn, area, lines });
fields!(StainReading { grade, u });
choices!(Cause: Scale, Height, Tilt, Counting);
choices!(Graduation: Millimetre, Sixteenth);

impl Flat for Said {
    fn put(&self, to: &mut Vec<f64>) {
        to.extend(match self {
            Said::Nothing => [0.0, 0.0],
            Said::Twice => [1.0, 0.0],
            Said::Half => [2.0, 0.0],
            Said::About(per_cm) => [3.0, *per_cm],
        });
    }

    fn take(from: &mut Numbers) -> Option<Said> {
        let (kind, per_cm) = (from.next()?, from.next()?);
        [Said::Nothing, Said::Twice, Said::Half, Said::About(per_cm)].get(kind as usize).copied()
    }
}

impl Flat for Object {
    fn put(&self, to: &mut Vec<f64>) {
        let (kind, mm, places) = match self {
            Object::Card(corners) => (0.0, 0.0, corners.to_vec()),
            Object::Ruler(one, other, mm) => (1.0, *mm, vec![*one, *other]),
            Object::Coin(rim, mm) => (2.0, *mm, rim.clone()),
            Object::Marks(one, other, mm) => (3.0, *mm, vec![*one, *other]),
        };
        to.extend([kind, mm]);
        places.put(to);
    }

    fn take(from: &mut Numbers) -> Option<Object> {
        let (kind, mm) = (from.next()?, from.next()?);
        let places = Vec::<Point>::take(from)?;
        match (kind as u8, places.as_slice()) {
            (0, corners) => Some(Object::Card(corners.try_into().ok()?)),
            (1, [one, other]) => Some(Object::Ruler(*one, *other, mm)),
            (2, _) => Some(Object::Coin(places, mm)),
            (3, [one, other]) => Some(Object::Marks(*one, *other, mm)),
            _ => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::ScaleFault;

    fn p(x: f64, y: f64) -> Point {
        Point { x, y }
    }

    fn questions() -> Vec<Ask> {
        let (a, b, c, d) = (p(1.0, 2.0), p(3.5, 4.0), p(5.0, 6.0), p(7.0, 8.0));
        let objects = [
            Object::Card([a, b, c, d]),
            Object::Ruler(a, b, 50.0),
            Object::Coin(vec![a, b, c, d, a], 23.25),
            Object::Marks(c, d, 25.4),
        ];
        let seams = objects.iter().zip([Said::Nothing, Said::Twice, Said::Half, Said::About(4.1)]);
        let mut all: Vec<Ask> = seams.map(|(object, said)| Ask::Seam(a, d, object.clone(), said)).collect();
        all.extend(objects.iter().map(|object| Ask::Weave(b, c, object.clone())));
        all.push(Ask::Stain(Patch { from: a, to: b }, vec![Patch { from: c, to: d }]));
        all
    }

    fn found() -> Found {
        Found { graduation: Some(Graduation::Sixteenth), places: vec![p(9.0, 9.5)], tilt: Some(4.0) }
    }

    #[test]
    fn every_question_comes_out_as_it_went_in() {
        for ask in questions() {
            assert_eq!(ask_of(&asked(&ask)), Some(ask));
        }
    }

    #[test]
    fn every_reading_comes_out_as_it_went_in() {
        let stitch = Stitch { from: p(1.0, 1.0), to: p(2.0, 2.0), skipped: true };
        let budget = vec![Part { from: Cause::Scale, share: 0.01 }, Part { from: Cause::Counting, share: 0.02 }];
        let count = SeamCount {
            stitch_mm: 2.5,
            budget: budget.clone(),
            stitches: vec![stitch; 3],
            unevenness: 0.05,
            px_per_stitch: 30.0,
        };
        let (numbers, words) = told(&Answer::Seam(found(), Ok(count.clone())));
        assert_eq!(heard(&numbers, &words), Some(Heard::Seam(found(), Ok(count))));
        let bare = Found { graduation: None, places: Vec::new(), tilt: None };
        let stain = StainReading { grade: 3.5, u: 0.4 };
        let (numbers, words) = told(&Answer::Stain(Ok(stain.clone())));
        assert_eq!(heard(&numbers, &words), Some(Heard::Stain(Ok(stain))));
        let (numbers, words) = told(&Answer::Seam(bare.clone(), Err(SeamRefusal::NoSeam)));
        let refused = Refused { sentence: SeamRefusal::NoSeam.to_string(), rivals: None };
        assert_eq!(heard(&numbers, &words), Some(Heard::Seam(bare, Err(refused))));
    }

    #[test]
    fn a_refusal_arrives_in_words_and_two_readings_as_numbers_too() {
        let two = SeamRefusal::TwoReadings { likelier: 4.0, other: 8.0 };
        let (numbers, words) = told(&Answer::Seam(found(), Err(two)));
        let refused = Refused { sentence: two.to_string(), rivals: Some([4.0, 8.0]) };
        assert_eq!(heard(&numbers, &words), Some(Heard::Seam(found(), Err(refused))));
        let (numbers, words) = told(&Answer::NoScale(ScaleFault::Marks));
        let refused = Refused { sentence: ScaleFault::Marks.to_string(), rivals: None };
        assert_eq!(heard(&numbers, &words), Some(Heard::NoScale(refused)));
    }

    #[test]
    fn numbers_that_are_cut_off_or_nonsense_are_nothing() {
        for ask in questions() {
            let whole = asked(&ask);
            for length in 0..whole.len() {
                assert_eq!(ask_of(&whole[..length]), None);
            }
        }
        for numbers in [&[f64::NAN][..], &[9.0], &[1.0, 0.0, 1e18], &[2.0, -1.0], &[3.0, f64::INFINITY]] {
            let _ = (ask_of(numbers), heard(numbers, ""));
        }
    }
}
