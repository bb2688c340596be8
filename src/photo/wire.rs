//! Questions and answers as plain numbers, the form in which a page and its second thread exchange them.
//!
//! By hand and not by a general library: what that derives for these types would weigh on every first visit, while this is a few lines
//! and travels as one array. Both ends are always of one build.

use crate::{
    Answer, Ask, Cause, Found, Graduation, Object, Part, Patch, Point, Said, ScaleFault, SeamCount, SeamRefusal, StainReading,
    StainRefusal, Stitch, WeaveReading, WeaveRefusal,
};

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

/// An answer as numbers.
pub fn told(answer: &Answer) -> Vec<f64> {
    let mut to = Vec::new();
    match answer {
        Answer::NoScale(fault) => {
            to.push(0.0);
            fault.put(&mut to);
        }
        Answer::Seam(found, count) => {
            to.push(1.0);
            found.put(&mut to);
            count.put(&mut to);
        }
        Answer::Weave(found, reading) => {
            to.push(2.0);
            found.put(&mut to);
            reading.put(&mut to);
        }
        Answer::Stain(reading) => {
            to.push(3.0);
            reading.put(&mut to);
        }
    }
    to
}

/// The answer that those numbers are; none when they are no answer.
pub fn heard(numbers: &[f64]) -> Option<Answer> {
    let mut from = Numbers(numbers);
    Some(match from.next()? as u8 {
        0 => Answer::NoScale(Flat::take(&mut from)?),
        1 => Answer::Seam(Flat::take(&mut from)?, Flat::take(&mut from)?),
        2 => Answer::Weave(Flat::take(&mut from)?, Flat::take(&mut from)?),
        3 => Answer::Stain(Flat::take(&mut from)?),
        _ => return None,
    })
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

impl<T: Flat, E: Flat> Flat for Result<T, E> {
    fn put(&self, to: &mut Vec<f64>) {
        self.is_ok().put(to);
        match self {
            Ok(reading) => reading.put(to),
            Err(refusal) => refusal.put(to),
        }
    }

    fn take(from: &mut Numbers) -> Option<Result<T, E>> {
        if bool::take(from)? { Some(Ok(T::take(from)?)) } else { Some(Err(E::take(from)?)) }
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
choices!(ScaleFault: Marks, Size, NotACard, FewOnRim, NotACoin);
choices!(WeaveRefusal: Marks, Covered, NoYarns, TooFar, TooFew, NoWeave, Doubtful, Astray);
choices!(StainRefusal: Marks, NoWhiteNear, TooBright, TooDark, WhiteUneven, StainUneven, Reversed);

impl Flat for SeamRefusal {
    fn put(&self, to: &mut Vec<f64>) {
        to.extend(match self {
            SeamRefusal::Marks => [0.0, 0.0, 0.0],
            SeamRefusal::NoSeam => [1.0, 0.0, 0.0],
            SeamRefusal::TooFew { stitches } => [2.0, *stitches as f64, 0.0],
            SeamRefusal::TooSmall { px_per_stitch } => [3.0, *px_per_stitch, 0.0],
            SeamRefusal::Faint => [4.0, 0.0, 0.0],
            SeamRefusal::TwoReadings { likelier, other } => [5.0, *likelier, *other],
            SeamRefusal::Bends => [6.0, 0.0, 0.0],
            SeamRefusal::Unsteady => [7.0, 0.0, 0.0],
            SeamRefusal::Uneven => [8.0, 0.0, 0.0],
        });
    }

    fn take(from: &mut Numbers) -> Option<SeamRefusal> {
        let (kind, one, other) = (from.next()?, from.next()?, from.next()?);
        [
            SeamRefusal::Marks,
            SeamRefusal::NoSeam,
            SeamRefusal::TooFew { stitches: one as usize },
            SeamRefusal::TooSmall { px_per_stitch: one },
            SeamRefusal::Faint,
            SeamRefusal::TwoReadings { likelier: one, other },
            SeamRefusal::Bends,
            SeamRefusal::Unsteady,
            SeamRefusal::Uneven,
        ]
        .get(kind as usize)
        .copied()
    }
}

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
        let area = [p(1.0, 1.0), p(9.0, 1.0), p(9.0, 9.0), p(1.0, 9.0)];
        let cloth = WeaveReading {
            along_marked: 18.0,
            across_marked: 17.0,
            budget,
            twill_degrees: Some(63.0),
            twill_u: 1.5,
            px_per_yarn: 11.0,
            area,
            lines: vec![[area[0], area[2]]],
        };
        let bare = Found { graduation: None, places: Vec::new(), tilt: None };
        let stain = StainReading { grade: 3.5, u: 0.4 };
        for answer in [Answer::Seam(found(), Ok(count)), Answer::Weave(bare, Ok(cloth)), Answer::Stain(Ok(stain))] {
            assert_eq!(heard(&told(&answer)), Some(answer));
        }
    }

    #[test]
    fn every_refusal_comes_out_as_it_went_in() {
        let scales = [ScaleFault::Marks, ScaleFault::Size, ScaleFault::NotACard, ScaleFault::FewOnRim, ScaleFault::NotACoin]
            .map(Answer::NoScale);
        let seams = [
            SeamRefusal::Marks,
            SeamRefusal::NoSeam,
            SeamRefusal::TooFew { stitches: 3 },
            SeamRefusal::TooSmall { px_per_stitch: 5.2 },
            SeamRefusal::Faint,
            SeamRefusal::TwoReadings { likelier: 4.0, other: 8.0 },
            SeamRefusal::Bends,
            SeamRefusal::Unsteady,
            SeamRefusal::Uneven,
        ]
        .map(|refusal| Answer::Seam(found(), Err(refusal)));
        let weaves = [
            WeaveRefusal::Marks,
            WeaveRefusal::Covered,
            WeaveRefusal::NoYarns,
            WeaveRefusal::TooFar,
            WeaveRefusal::TooFew,
            WeaveRefusal::NoWeave,
            WeaveRefusal::Doubtful,
            WeaveRefusal::Astray,
        ]
        .map(|refusal| Answer::Weave(found(), Err(refusal)));
        let stains = [
            StainRefusal::Marks,
            StainRefusal::NoWhiteNear,
            StainRefusal::TooBright,
            StainRefusal::TooDark,
            StainRefusal::WhiteUneven,
            StainRefusal::StainUneven,
            StainRefusal::Reversed,
        ]
        .map(|refusal| Answer::Stain(Err(refusal)));
        for answer in scales.into_iter().chain(seams).chain(weaves).chain(stains) {
            assert_eq!(heard(&told(&answer)), Some(answer));
        }
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
            let _ = (ask_of(numbers), heard(numbers));
        }
    }
}
