//! Marks that a person would set, and the truth between them.

use super::super::chance::Chance;
use super::camera::Camera;
use super::cloth::ClothKind;
use super::object::{Face, Object};
use super::path::Path;
use super::scene::{normal, whether};
use super::thread::{Row, Sewn};
use super::truth::{Level, Pixel, Scale, SeamTruth};
use super::{HIGH, WIDE};

/// What is seen, and from where.
pub(super) struct Sight<'a> {
    pub camera: &'a Camera,
    pub path: Path,
    pub rows: &'a [Row],
    /// The row that the marks are set on.
    pub marked: usize,
    pub object: &'a Object,
    /// Pixels a mm in the middle of the picture.
    pub scale: f64,
}

/// What the truth says of the scene as it was meant.
#[derive(Clone, Copy)]
pub(super) struct Given {
    pub level: Level,
    pub cloth: ClothKind,
    pub sewn: Sewn,
    pub tonal: bool,
    pub curved: bool,
    pub tilt_deg: f64,
}

impl Sight<'_> {
    fn within(&self, [u, v]: Pixel, margin: f64) -> bool {
        (margin..WIDE as f64 - margin).contains(&u) && (margin..HIGH as f64 - margin).contains(&v)
    }

    fn hole(&self, row: &Row, s: f64) -> Pixel {
        let [x, y] = self.path.point(s, row.line(s));
        self.camera.sees(x, y, 0.0)
    }

    /// Whether a place of the row is in the picture and not under ruler or card.
    fn shows(&self, row: &Row, s: f64) -> bool {
        let at = self.hole(row, s);
        let (over, _) = self.camera.on_plane(at[0], at[1], self.object.height);
        self.within(at, 26.0) && self.object.outside(self.object.local(over[0], over[1])) > 0.9
    }

    fn erring(&self, chance: &mut Chance, at: Pixel) -> Pixel {
        let spread = (0.22 * self.scale).max(2.0);
        [at[0] + spread * normal(chance), at[1] + spread * normal(chance)]
    }

    /// The longest stretch of the row that shows, mm of the path.
    fn stretch(&self, row: &Row) -> Option<[f64; 2]> {
        let (first, last) = (*row.holes.first()?, *row.holes.last()?);
        let (mut best, mut from): ([f64; 2], Option<f64>) = ([0.0, 0.0], None);
        let mut s = first + 0.4;
        while s <= last - 0.4 {
            if self.shows(row, s) {
                let start = *from.get_or_insert(s);
                if s - start > best[1] - best[0] {
                    best = [start, s];
                }
            } else {
                from = None;
            }
            s += 0.25;
        }
        (best[1] > best[0]).then_some(best)
    }
}

/// Sets the marks and works out what lies between them. Nothing if too little shows.
pub(super) fn truth(chance: &mut Chance, sight: &Sight<'_>, given: Given) -> Option<SeamTruth> {
    let row = sight.rows.get(sight.marked)?;
    let [low, high] = sight.stretch(row)?;
    let long = high - low;
    let short = whether(chance, 0.15);
    let trim = |chance: &mut Chance| long * if short { chance.between(0.15, 0.32) } else { chance.between(0.01, 0.16) };
    let places = [low + trim(chance), high - trim(chance)];
    let seam = places.map(|s| sight.erring(chance, sight.hole(row, s)));
    // Where the marks lie along the row, error and all.
    let [one, two] = seam.map(|mark| {
        let ([x, y], _) = sight.camera.on_plane(mark[0], mark[1], 0.0);
        sight.path.place(x, y)[0]
    });
    // Out to the hole at or before the first mark, and at or after the second.
    let first = row.holes.partition_point(|hole| *hole <= one).checked_sub(1)?;
    let last = row.holes.partition_point(|hole| *hole < two);
    if last >= row.holes.len() || last < first + 7 {
        return None;
    }
    let skipped = row.skipped.filter(|hole| (first + 1..last).contains(hole)).map_or(0, |_| 1);
    let inside = &row.holes[first..=last];
    let stretch = sight.path.stretch(row.across);
    let pitches: Vec<f64> = inside.windows(2).map(|pair| (pair[1] - pair[0]) * stretch).collect();
    let count = pitches.len() as f64;
    let mean = pitches.iter().sum::<f64>() / count;
    let spread = (pitches.iter().map(|pitch| (pitch - mean).powi(2)).sum::<f64>() / count).sqrt();
    let holes: Vec<Pixel> = inside.iter().map(|s| sight.hole(row, *s)).collect();
    let run: f64 = holes.windows(2).map(|pair| (pair[1][0] - pair[0][0]).hypot(pair[1][1] - pair[0][1])).sum();
    let near = inside.iter().map(|s| {
        let [x, y] = sight.path.point(*s, row.line(*s));
        sight.object.outside(sight.object.local(x, y))
    });
    Some(SeamTruth {
        seam,
        scale: scale(chance, sight)?,
        stitches_per_inch: 25.4 / mean,
        stitches_between: pitches.len() - skipped,
        skipped,
        pitch_cv: spread / mean,
        level: given.level,
        cloth: given.cloth,
        sewn: given.sewn,
        tonal: given.tonal,
        curved: given.curved,
        tilt_deg: given.tilt_deg,
        px_per_stitch: run / count,
        rows: sight.rows.len(),
        gap_mm: near.fold(f64::MAX, f64::min),
        holes,
    })
}

fn scale(chance: &mut Chance, sight: &Sight<'_>) -> Option<Scale> {
    let object = sight.object;
    let seen = |along: f64, across: f64| {
        let [x, y] = object.world(along, across);
        sight.camera.sees(x, y, object.height)
    };
    match &object.face {
        Face::Card(_) => {
            let corners =
                [[0.0, 0.0], [object.long, 0.0], [object.long, object.wide], [0.0, object.wide]].map(|[a, b]| seen(a, b));
            corners
                .iter()
                .all(|corner| sight.within(*corner, 6.0))
                .then(|| Scale::Card { corners: corners.map(|c| sight.erring(chance, c)) })
        }
        Face::Ruler(face) => {
            let span = face.divided.numeral_mm();
            let across = f64::from(face.inset + face.reach) * chance.between(0.1, 0.9);
            let place = |number: usize| seen(f64::from(face.nought) + number as f64 * span, across);
            let most = ((object.long - f64::from(face.nought)) / span) as usize;
            let shown: Vec<usize> = (0..=most).filter(|number| sight.within(place(*number), 14.0)).collect();
            let (mut first, mut last) = (*shown.first()?, *shown.last()?);
            // People do not always take all that shows.
            let spare = ((last - first) as f64 * span - 50.0).max(0.0) / span;
            if whether(chance, 0.4) {
                first += (chance.share() * 0.35 * spare) as usize;
                last -= (chance.share() * 0.35 * spare) as usize;
            }
            let known_mm = (last - first) as f64 * span;
            (known_mm > 19.0).then(|| Scale::Ruler {
                divided: face.divided,
                marks: [first, last].map(|number| sight.erring(chance, place(number))),
                known_mm,
            })
        }
    }
}
