//! Drawings that are tables: what a fitting needs to see is many pictures of few things, so each is a list of pieces and one hand draws
//! them all. A table is a fraction of the code that would draw the same.

use super::drawing::{Drawing, Ink, Sheet};
use super::pen::{BLEED, FRAME, Pen, Track};

/// A place in a table: across from the middle of the frame, and down.
pub(super) type At = (i8, u8);

/// How a piece is drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum How {
    /// Filled and outlined.
    Filled(Ink),
    /// Filled, no outline.
    Bare(Ink),
    /// A line this many tenths of a unit wide.
    Line(Ink, u8),
    /// What the picture is about: a line in thread that stands out from cloth.
    Mark,
    /// How far one thing stands off another: as a mark, with a tick at either end.
    Span,
    /// A tape measure laid along.
    Tape,
    /// An arm, a leg or a trunk this many tenths of a unit thick, from joint to joint.
    Limb(Ink, u8),
    /// A disc about each place, as many tenths of a unit in radius.
    Disc(Ink, u8),
}

/// Which way a piece lies about the middle of the frame.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Sides {
    /// As it stands.
    One,
    /// As it stands, and once more in the mirror.
    Both,
    /// The right half of an outline that is the same on both sides.
    Half,
}

/// A piece: a curve drawn towards its places; where a place stands twice it is a corner.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Piece(pub How, pub Sides, pub &'static [At]);

/// How large a table is drawn, and where its top lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct View {
    /// Drawing units per unit of the table.
    pub scale: f64,
    /// Where the table's zero lies below the top of the frame.
    pub top: f64,
}

impl View {
    /// A table in drawing units.
    pub(super) const PLAIN: View = View { scale: 1.0, top: 0.0 };

    /// Where a place of the table lies in the frame.
    pub(super) fn place(self, (x, y): At) -> (f64, f64) {
        (Drawing::WIDTH / 2.0 + f64::from(x) * self.scale, self.top + f64::from(y) * self.scale)
    }
}

impl Piece {
    /// The lines of this piece in the frame.
    pub(super) fn lines(&self, view: View) -> Vec<Vec<(f64, f64)>> {
        let Piece(how, sides, table) = *self;
        let joints = matches!(how, How::Limb(..) | How::Disc(..));
        let closed = matches!(how, How::Filled(_) | How::Bare(_));
        let right: Vec<(f64, f64)> = table.iter().map(|&at| view.place(at)).collect();
        let mirrored: Vec<(f64, f64)> = right.iter().map(|&(x, y)| (Drawing::WIDTH - x, y)).collect();
        let drawn = |points: Vec<(f64, f64)>| within(&if joints { points } else { bent(&points, closed) }, closed);
        match sides {
            Sides::One => vec![drawn(right)],
            Sides::Both => vec![drawn(right), drawn(mirrored)],
            Sides::Half => vec![drawn(right.into_iter().chain(mirrored.into_iter().rev()).collect())],
        }
    }

    fn draw(&self, sheet: &mut Sheet, view: View) {
        let lines = self.lines(view);
        let along = Pen::with(|pen| {
            for line in &lines {
                pen.points(line);
            }
        });
        let round = Pen::with(|pen| {
            for line in &lines {
                pen.outline(line);
            }
        });
        let tenths = |width: u8| f64::from(width) / 10.0;
        match self.0 {
            How::Filled(ink) => {
                sheet.fill(ink, round.clone());
                sheet.stroke(Ink::Edge, 1.2, round);
            }
            How::Bare(ink) => sheet.fill(ink, round),
            How::Line(ink, width) => sheet.stroke(ink, tenths(width), along),
            How::Mark => sheet.marked(along),
            How::Span => {
                let ends = Pen::with(|pen| {
                    for line in &lines {
                        pen.points(line);
                        ticks(pen, line, 3.0);
                    }
                });
                sheet.marked(ends);
            }
            How::Tape => {
                sheet.stroke(Ink::Edge, 4.8, along.clone());
                sheet.stroke(Ink::Tape, 3.2, along.clone());
                sheet.dash(Ink::Edge, 0.9, 0.1, 2.6, along);
            }
            How::Limb(ink, width) => {
                sheet.stroke(Ink::Edge, tenths(width) + 2.0, along.clone());
                sheet.stroke(ink, tenths(width) - 0.2, along);
            }
            How::Disc(ink, radius) => {
                let discs = Pen::with(|pen| {
                    for (x, y) in lines.into_iter().flatten() {
                        pen.circle(x, y, tenths(radius));
                    }
                });
                sheet.fill(ink, discs.clone());
                sheet.stroke(Ink::Edge, 1.0, discs);
            }
        }
    }
}

impl Sheet {
    /// What a picture is about, on cloth or on paper.
    fn marked(&mut self, pen: Pen) {
        self.stroke(Ink::Paper, 3.6, pen.clone());
        self.stroke(Ink::Thread, 2.0, pen);
    }

    /// Pieces on paper, first to last.
    pub(super) fn pieces<'a>(&mut self, view: View, pieces: impl IntoIterator<Item = &'a Piece>) {
        self.area(Ink::Paper, FRAME);
        for piece in pieces {
            piece.draw(self, view);
        }
    }
}

/// A tick across either end of a line.
fn ticks(pen: &mut Pen, line: &[(f64, f64)], half: f64) {
    let track = Track::through(line);
    if line.len() > 1 {
        for along in [0.0, track.length()] {
            let spot = track.spot(along);
            let (a, b) = (spot.beside(-half, 0.0), spot.beside(half, 0.0));
            pen.line(a.0, a.1, b.0, b.1);
        }
    }
}

/// A curve drawn towards points, through the middles between them; a point that stands twice is a corner.
fn bent(points: &[(f64, f64)], closed: bool) -> Vec<(f64, f64)> {
    let middle = |a: (f64, f64), b: (f64, f64)| ((a.0 + b.0) / 2.0, (a.1 + b.1) / 2.0);
    let count = points.len();
    if count < 3 {
        return points.to_vec();
    }
    let mut curve = Vec::with_capacity(count * 3);
    for (index, &towards) in points.iter().enumerate() {
        let (before, after) = (points[(index + count - 1) % count], points[(index + 1) % count]);
        if !closed && (index == 0 || index + 1 == count) {
            // A line begins in its first place and has reached its last by the bend before.
            if index == 0 {
                curve.push(towards);
            }
            continue;
        }
        let from = if !closed && index == 1 { before } else { middle(before, towards) };
        let to = if !closed && index + 2 == count { after } else { middle(towards, after) };
        if from == towards || to == towards {
            curve.push(to);
            continue;
        }
        // As many straight steps as the eye needs: fewer where the bend is short.
        let reach = (towards.0 - from.0).hypot(towards.1 - from.1) + (to.0 - towards.0).hypot(to.1 - towards.1);
        let steps = (2.0 + reach / 6.0).min(8.0) as u8;
        for step in 1..=steps {
            let on = f64::from(step) / f64::from(steps);
            let mix = |a: f64, b: f64, c: f64| (1.0 - on) * ((1.0 - on) * a + 2.0 * on * b) + on * on * c;
            curve.push((mix(from.0, towards.0, to.0), mix(from.1, towards.1, to.1)));
        }
    }
    curve
}

/// What of a line or an outline lies between the top and the foot of the frame with its bleed: a pen would bend what lies beyond. Of a line
/// that leaves the frame and comes back the two pieces are joined; no table has one.
fn within(points: &[(f64, f64)], closed: bool) -> Vec<(f64, f64)> {
    let mut left = points.to_vec();
    for (border, way) in [(-BLEED, 1.0), (Drawing::HEIGHT + BLEED, -1.0)] {
        let inside = |point: (f64, f64)| (point.1 - border) * way >= 0.0;
        let mut kept = Vec::with_capacity(left.len() + 2);
        for (index, &here) in left.iter().enumerate() {
            let before = if index > 0 { left[index - 1] } else { left[left.len() - 1] };
            if (index > 0 || closed) && inside(before) != inside(here) {
                let share = (border - before.1) / (here.1 - before.1);
                kept.push((before.0 + (here.0 - before.0) * share, border));
            }
            if inside(here) {
                kept.push(here);
            }
        }
        left = kept;
    }
    left
}
