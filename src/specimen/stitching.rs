//! Rows of topstitching and what goes wrong with them.

use super::chance::Chance;
use super::drawing::{Drawing, Ink, Sheet};
use super::pen::{Area, Pen, Row, Track, clamp};
use super::picture::Known;
use super::words::Words;
use crate::{say, to_say};

/// Rows of topstitching on the face of the cloth. The frame shows [`super::Drawing::MM_WIDE`] mm of cloth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Topstitch {
    /// Stitches per inch, 2 to 20.
    pub stitches_per_inch: f64,
    /// Stitches per inch of every row but the first, where that differs; 0 where it does not.
    pub other_rows_per_inch: f64,
    /// Rows side by side, 1 to 3.
    pub rows: u8,
    /// Distance from row to row in mm, 1.5 to 10.
    pub gap_mm: f64,
    /// Spread of stitch length as a share of the mean, 0 (even) to 0.6.
    pub unevenness: f64,
    /// Stitches that did not catch, 0 to 6.
    pub skips: u8,
    /// Places where sewing stopped and began again over the old row, 0 to 6.
    pub restarts: u8,
    /// How each restart was picked up: 0 in line, 0.4 out of line beside the old row, 1 a nest of thread.
    pub bunching: f64,
    /// Thread ends left long, 0 to 6.
    pub loose_ends: u8,
    /// How far the gap between rows changes along the way in mm, 0 to 4.
    pub wander_mm: f64,
    /// How much shorter stitches are over a thick join, 0 (as long) to 0.6; only where the course has one.
    pub short_over_join: f64,
    /// How the row runs.
    pub course: Course,
    /// Whether a piece of tape one inch long lies below the rows to count against.
    pub inch: bool,
}

/// How a row of topstitching runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Course {
    /// Straight across.
    Straight,
    /// Round a curve and over the thick place where another seam crosses.
    CurveOverJoin,
    /// Round a pocket corner that turns on one needle hole.
    CrispCorner,
    /// Round a pocket corner that is cut short or overshot.
    BluntCorner,
}

/// Drawing units per mm of cloth where stitches are real.
pub(super) const MM: f64 = Drawing::WIDTH / Drawing::MM_WIDE;

impl Topstitch {
    /// A clean run: two even parallel rows at 8 stitches per inch. Change what the answer changes.
    pub const CLEAN: Topstitch = Topstitch {
        stitches_per_inch: 8.0,
        other_rows_per_inch: 0.0,
        rows: 2,
        gap_mm: 6.0,
        unevenness: 0.0,
        skips: 0,
        restarts: 0,
        bunching: 0.0,
        loose_ends: 0,
        wander_mm: 0.0,
        short_over_join: 0.0,
        course: Course::Straight,
        inch: false,
    };

    /// Stitches per inch of a row.
    fn per_inch(&self, row: u8) -> f64 {
        let differs = row > 0 && self.other_rows_per_inch > 0.0;
        clamp(if differs { self.other_rows_per_inch } else { self.stitches_per_inch }, 2.0, 20.0)
    }

    /// Hole to hole in drawing units.
    fn stitch(&self, row: u8) -> f64 {
        25.4 / self.per_inch(row) * MM
    }

    /// Skipped stitches of a row: its share, or as many as find room at this stitch length.
    fn skips_in(&self, row: u8) -> u8 {
        let rows = self.rows.clamp(1, 3);
        let share = (self.skips.min(6) + rows - 1 - row) / rows;
        let room = Drawing::WIDTH / self.stitch(row);
        (0..=share).rev().find(|&skips| f64::from(skips) * (f64::from(skips) + 2.0) <= room).unwrap_or(0)
    }

    pub(super) fn truth(&self) -> Vec<Known> {
        vec![
            Known::StitchesPerInch(self.per_inch(0)),
            Known::Restarts(self.restarts.min(6)),
            Known::LooseEnds(self.loose_ends.min(6)),
            Known::Skips((0..self.rows.clamp(1, 3)).map(|row| self.skips_in(row)).sum()),
            Known::OffMm(clamp(self.wander_mm, 0.0, 4.0)),
        ]
    }

    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.count(self.rows.clamp(1, 3), to_say!("{count} row of topstitching"), to_say!("{count} rows of topstitching"));
        words.number(clamp(self.stitches_per_inch, 2.0, 20.0), to_say!("{number} stitches per inch"));
        if self.other_rows_per_inch > 0.0 {
            words.number(self.per_inch(1), to_say!("{number} in the other row"));
        }
        words.and_if(self.short_over_join > 0.15, say!("shorter over the thick join"));
        words.and_if(self.unevenness > 0.15, say!("stitches uneven in length"));
        words.and_count(self.skips.min(6), to_say!("{count} skipped stitch"), to_say!("{count} skipped stitches"));
        words.and_count(self.restarts.min(6), to_say!("{count} restart"), to_say!("{count} restarts"));
        words.and_if(self.restarts > 0 && self.bunching > 0.5, say!("thread bunched there"));
        words.and_if(self.restarts > 0 && (0.2..=0.5).contains(&self.bunching), say!("out of line there"));
        words.and_count(self.loose_ends.min(6), to_say!("{count} loose end"), to_say!("{count} loose ends"));
        words.and_if(self.wander_mm > 0.3, if self.wander_mm > 1.5 { say!("rows wander") } else { say!("rows wander slightly") });
        words.and_if(self.rows > 1 && self.wander_mm <= 0.3, say!("rows parallel"));
        match self.course {
            Course::Straight => {}
            Course::CurveOverJoin => words.and(say!("round a curve and over a thick join")),
            Course::CrispCorner => words.and(say!("corner turned crisply")),
            Course::BluntCorner => words.and(say!("corner blunt")),
        }
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        let gap = clamp(self.gap_mm, 1.5, 10.0) * MM;
        let rows = self.rows.clamp(1, 3);
        let ahead = gap * f64::from(rows - 1) / 2.0;
        sheet.face();
        let corner = matches!(self.course, Course::CrispCorner | Course::BluntCorner);
        let track = match self.course {
            Course::Straight => {
                ridge(sheet, &[(-5.0, 40.0 - ahead - 9.0), (125.0, 40.0 - ahead - 9.0)]);
                Track::level(0.0, Drawing::WIDTH, 40.0)
            }
            Course::CurveOverJoin => {
                let bow = |lift: f64| -> Vec<(f64, f64)> {
                    (0..=30).map(|i| (f64::from(i) * 4.0, 18.0 + lift + 40.0 * (f64::from(i) / 30.0).powi(2))).collect()
                };
                let mut pen = Pen::new();
                pen.rect(70.0, -5.0, 20.0, 90.0);
                sheet.fill(Ink::ClothLight, pen);
                sheet.twill(Ink::Cloth, Area { x: 70.0, y: 0.0, width: 20.0, height: 80.0 }, 3.6);
                ridge(sheet, &[(90.0, -5.0), (90.0, 85.0)]);
                ridge(sheet, &bow(-9.0));
                Track::through(&bow(ahead))
            }
            Course::CrispCorner | Course::BluntCorner => {
                let edge = [(22.0, -5.0), (22.0, 44.0), (66.0, 70.0), (125.0, 36.0)];
                let mut pen = Pen::new();
                pen.outline(&[edge[0], edge[1], edge[2], edge[3], (125.0, -5.0)]);
                sheet.fill(Ink::Cloth, pen);
                ridge(sheet, &edge);
                Track::through(&[(22.0, 0.0), (22.0, 44.0), (66.0, 70.0), (120.0, 39.0)])
            }
        };
        let mut thread = Pen::new();
        let mut tails = Tails { left: self.loose_ends.min(6), pen: Pen::new() };
        let restarts = self.restarts.min(6);
        for row in 0..rows {
            let side = gap * f64::from(row) - ahead;
            // A corner's rows lie inside the pocket: to the left of the run, which is up.
            let line = if corner { self.inset(&track, 6.0 + gap * f64::from(row), row) } else { track.clone() };
            let side = if corner { 0.0 } else { side };
            self.sew(&mut thread, &line, side, row, chance);
            for place in 0..restarts {
                if place % rows == row {
                    let room = line.length() / (f64::from(restarts) + 0.4);
                    let at = room * (f64::from(place) + 0.7 + chance.about(0.1));
                    self.restart(&mut thread, &line, side, (at, room), chance, &mut tails);
                }
            }
            if row + 1 == rows {
                while tails.left > 0 {
                    let at = line.length() * chance.between(0.15, 0.85);
                    tails.hang(line.spot(at).beside(side, 0.0), chance);
                }
            }
        }
        sheet.stitches(2.6, thread);
        sheet.stitches(1.3, tails.pen);
        if self.inch {
            let (from, inch) = (28.0, 25.4 * MM);
            sheet.area(Ink::Tape, Area { x: from, y: 62.0, width: inch, height: 13.0 });
            let ticks = Pen::with(|pen| {
                for eighth in 0..=8 {
                    let x = from + inch * f64::from(eighth) / 8.0;
                    pen.line(x, 62.0, x, if eighth % 4 == 0 { 70.0 } else { 66.0 });
                }
            });
            sheet.stroke(Ink::Edge, 1.0, ticks);
            sheet.stroke(
                Ink::Tape,
                1.2,
                Pen::with(|pen| _ = pen.line(from, 24.0, from, 62.0).line(from + inch, 24.0, from + inch, 62.0)),
            );
        }
    }

    /// The track of a row inside a corner, `inset` from the pocket's edge.
    fn inset(&self, track: &Track, inset: f64, row: u8) -> Track {
        let [a, b, c, d] = [track.points[0], track.points[1], track.points[2], track.points[3]];
        // Sides move in by `inset`; corners meet on the half angle.
        let lean = |x: f64| x * 0.53;
        let (b2, c2) = ((b.0 + inset, b.1 - lean(inset)), (c.0, c.1 - inset * 1.16));
        let (a2, d2) = ((a.0 + inset, a.1), (d.0, d.1 - inset * 1.16));
        match (self.course, row) {
            (Course::CrispCorner, _) => Track::through(&[a2, b2, c2, d2]),
            (_, 0) => Track::through(&[
                a2,
                (b2.0, b2.1 - 9.0),
                (b2.0 + 9.0, b2.1 + 4.0),
                (c2.0 - 12.0, c2.1 - 5.0),
                (c2.0 + 10.0, c2.1 - 6.0),
                d2,
            ]),
            _ => Track::through(&[a2, (b2.0 - 1.0, b2.1 + 5.0), (c2.0 - 9.0, c2.1 - 4.0), (c2.0 + 4.0, c2.1 + 1.5), d2]),
        }
    }

    /// How far a row strays at a distance along it, in units: neighbours stray opposite ways, a little over half each.
    fn stray(&self, distance: f64, row: u8, phase: f64) -> f64 {
        let way = if row.is_multiple_of(2) { 1.0 } else { -0.8 };
        clamp(self.wander_mm, 0.0, 4.0) * 0.6 * MM * way * (distance * 0.062 + phase).sin()
    }

    fn sew(&self, pen: &mut Pen, line: &Track, side: f64, row: u8, chance: &mut Chance) {
        let (stitch, length) = (self.stitch(row), line.length());
        let (spread, phase) = (clamp(self.unevenness, 0.0, 0.6), chance.between(0.0, 2.0));
        let skips = self.skips_in(row);
        let form = Row::of(stitch);
        // Rows do not start on the same needle hole.
        let mut start = -stitch * chance.between(0.0, if self.course == Course::Straight { 0.9 } else { 0.0 });
        let mut index = 0_u8;
        let every = (length / stitch / (f64::from(skips) + 1.0)).max(2.0) as u8;
        let mut left = skips;
        while start < length && index < 250 {
            let mut one = stitch * (1.0 + chance.about(spread) * 1.4).max(0.3);
            if self.course == Course::CurveOverJoin && (66.0..90.0).contains(&line.spot(start).x) {
                one *= 1.0 - clamp(self.short_over_join, 0.0, 0.6);
            }
            // A skipped stitch is a long float that hangs loose over two holes.
            let skipped = left > 0 && index % every == every - 1;
            let end = start + one * if skipped { 2.0 } else { 1.0 } - stitch * form.dip;
            let (from, to) = (start.max(0.0), end.min(length));
            if to > from + 0.4 {
                let (a, b) = (
                    line.spot(from).beside(side + self.stray(from, row, phase), 0.0),
                    line.spot(to).beside(side + self.stray(to, row, phase), 0.0),
                );
                let tilt = chance.about(spread * 1.6);
                if skipped {
                    let middle = line.spot((from + to) / 2.0).beside(side + 6.0, 0.0);
                    pen.at(a.0, a.1).bend(middle.0, middle.1, b.0, b.1);
                    left -= 1;
                } else {
                    pen.line(a.0, a.1 + tilt, b.0, b.1 - tilt);
                }
            }
            start = end + stitch * form.dip;
            index += 1;
        }
    }

    /// A second run over the first, a little beside it; a nest of thread when bunched.
    fn restart(&self, pen: &mut Pen, line: &Track, side: f64, (at, room): (f64, f64), chance: &mut Chance, tails: &mut Tails) {
        let (stitch, bunching) = (self.stitch(0), clamp(self.bunching, 0.0, 1.0));
        let half = (stitch * 1.6).min(room * 0.36);
        let beside = side + 1.6 + 5.6 * bunching.min(0.4);
        Row::of(stitch * 0.8).sew(pen, line, beside, at - half, at + half);
        for _ in 0..((bunching - 0.4) * 13.0).max(0.0) as u8 {
            let spot = line.spot(at + chance.about(stitch * 1.3));
            let (a, b, c) = (
                spot.beside(side + chance.about(4.0), chance.about(4.0)),
                spot.beside(side + chance.about(9.0), chance.about(6.0)),
                spot.beside(side + chance.about(4.0), chance.about(5.0)),
            );
            pen.at(a.0, a.1).bend(b.0, b.1, c.0, c.1);
        }
        if tails.left > 0 {
            tails.hang(line.spot(at).beside(side, stitch), chance);
        }
    }
}

/// Thread ends still to be drawn.
struct Tails {
    left: u8,
    pen: Pen,
}

impl Tails {
    fn hang(&mut self, (x, y): (f64, f64), chance: &mut Chance) {
        let way = if self.left.is_multiple_of(2) { 1.0 } else { -1.0 };
        let (dx, dy) = (chance.between(5.0, 14.0) * way, chance.between(14.0, 22.0) * if y > 40.0 { 1.0 } else { -1.0 });
        self.pen.at(x, y).bend(x + dx * 1.5, y + dy * 0.3, x + dx, y + dy * 0.7).bend(
            x + dx * 0.7,
            y + dy,
            x + dx * 1.4,
            y + dy * 1.1,
        );
        self.left -= 1;
    }
}

/// The fold or edge of an upper piece: it throws a shadow and catches light.
pub(super) fn ridge(sheet: &mut Sheet, points: &[(f64, f64)]) {
    let (mut low, mut high) = (Pen::new(), Pen::new());
    low.points(points);
    let lifted: Vec<(f64, f64)> = points.iter().map(|&(x, y)| (x - 0.6, y - 1.6)).collect();
    high.points(&lifted);
    sheet.stroke(Ink::Shade, 2.6, low);
    sheet.stroke(Ink::ClothLight, 1.0, high);
}
