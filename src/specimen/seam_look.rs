//! One stitching as a look finds it: what its back shows, and how many lines the face has.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, Pen, Row, Track, chain, fringe, overlock};
use super::stitching::ridge;
use super::words::Words;
use crate::{say, to_say};

/// Both sides of one stitching: the face above, and below the back, turned up.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SeamBack {
    /// What the back shows.
    pub look: BackLook,
}

/// What the back of a stitching shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BackLook {
    /// The same line as the face.
    SameLine,
    /// A thick rope of loops.
    Rope,
    /// A thin chain of the one thread.
    ThinChain,
    /// Threads that cross between two rows.
    Ladder,
    /// Threads round the raw edge, held by a line.
    Wrapped,
    /// A rope of loops, and apart from it threads round the raw edge.
    WrappedAndLine,
    /// A zigzag, on the face too.
    Zigzag,
    /// A zigzag, with nothing but pricks on the face.
    ZigzagInside,
    /// Threads that cross between two rows, on the face too.
    LadderBoth,
}

/// The lines of needle thread that one stitching has on the face.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NeedleLines {
    /// How many, 0 to 4.
    pub lines: u8,
}

/// Where the cloth is turned over in the picture: face above, back below.
const FOLD: f64 = 30.0;
/// Hole to hole.
const STITCH: f64 = 10.0;

/// Swings from side to side of a track.
fn zigzag(pen: &mut Pen, track: &Track, half: f64) {
    overlock(pen, track, -half, half, STITCH);
}

/// Threads that cross between two rows and hang on each by a loop.
fn ladder(pen: &mut Pen, track: &Track, half: f64) {
    for side in [-half, half] {
        let row = Track::through(&[track.spot(0.0).beside(side, 0.0), track.spot(track.length()).beside(side, 0.0)]);
        Row::of(STITCH).sew(pen, &row, 0.0, 0.0, row.length());
    }
    zigzag(pen, track, half - 1.6);
}

impl BackLook {
    /// The look in words.
    fn words(self) -> &'static str {
        match self {
            BackLook::SameLine => say!("the back shows the same line as the face"),
            BackLook::Rope => say!("the back shows a thick rope of loops"),
            BackLook::ThinChain => say!("the back shows a thin chain of one thread"),
            BackLook::Ladder => say!("the back shows threads that cross between two rows"),
            BackLook::Wrapped => say!("the back shows threads round the raw edge, held by a line"),
            BackLook::WrappedAndLine => say!("the back shows a rope of loops and, apart from it, threads round the raw edge"),
            BackLook::Zigzag => say!("a zigzag on both sides"),
            BackLook::ZigzagInside => say!("a zigzag on the back, tiny pricks on the face"),
            BackLook::LadderBoth => say!("threads cross between two rows on both sides"),
        }
    }

    /// The back of it along a level line, from edge to edge of the frame; the cloth is there already.
    pub(super) fn along(self, sheet: &mut Sheet, y: f64, chance: &mut Chance) {
        let track = Track::level(-4.0, 124.0, y);
        // A chain stops short of its track's end.
        let long = Track::level(-4.0, 136.0, y);
        let length = track.length();
        let (mut thread, mut width) = (Pen::new(), 1.9);
        match self {
            BackLook::SameLine => _ = Row::of(STITCH).sew(&mut thread, &track, 0.0, 0.0, length),
            BackLook::Rope => {
                chain(&mut thread, &long, STITCH, 5.4);
                width = 2.2;
            }
            BackLook::ThinChain => {
                chain(&mut thread, &long, STITCH, 3.4);
                width = 1.1;
            }
            BackLook::Ladder | BackLook::LadderBoth => ladder(&mut thread, &track, 9.0),
            BackLook::Zigzag | BackLook::ZigzagInside => zigzag(&mut thread, &track, 6.0),
            BackLook::Wrapped | BackLook::WrappedAndLine => {
                let apart = self == BackLook::WrappedAndLine;
                let edge = if apart { y + 12.0 } else { y + 8.0 };
                // Below the raw edge lies what is under it: the other piece's allowance is wrapped with it, so the table shows.
                sheet.area(Ink::Paper, Area { x: -5.0, y: edge, width: 130.0, height: 90.0 - edge });
                let cut = Track::level(-4.0, 124.0, edge);
                sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.line(-5.0, edge, 125.0, edge)));
                sheet.stroke(Ink::ClothLight, 0.9, Pen::with(|pen| fringe(pen, &cut, 0.0, 1.8, 4.0, chance)));
                overlock(&mut thread, &cut, 2.2, -10.0, 6.0);
                if apart {
                    chain(&mut thread, &Track::level(-4.0, 136.0, y - 10.0), STITCH, 4.4);
                } else {
                    Row::of(STITCH).sew(&mut thread, &cut, -11.4, 0.0, length);
                }
            }
        }
        sheet.stroke(Ink::Thread, width, thread);
    }

    /// The face of it.
    fn face(self, sheet: &mut Sheet, y: f64) {
        let track = Track::level(-4.0, 124.0, y);
        let mut thread = Pen::new();
        match self {
            BackLook::SameLine | BackLook::Rope | BackLook::ThinChain => {
                Row::of(STITCH).sew(&mut thread, &track, 0.0, 0.0, track.length());
            }
            BackLook::Ladder => {
                for side in [-6.0, 6.0] {
                    Row::of(STITCH).sew(&mut thread, &track, side, 0.0, track.length());
                }
            }
            BackLook::LadderBoth => ladder(&mut thread, &track, 7.0),
            BackLook::Zigzag => zigzag(&mut thread, &track, 6.0),
            BackLook::ZigzagInside => {
                for prick in 0..10 {
                    let x = 6.0 + f64::from(prick) * 12.0;
                    thread.line(x, y, x + 0.6, y);
                }
            }
            // Their stitches close the seam from inside: outside there is the seam alone.
            BackLook::Wrapped | BackLook::WrappedAndLine => ridge(sheet, &[(-5.0, y), (125.0, y)]),
        }
        sheet.stitches(1.9, thread);
    }
}

impl SeamBack {
    pub(super) fn words(self) -> String {
        let mut words = Words::new();
        words.and(say!("both sides of a stitching"));
        words.and(self.look.words());
        words.done()
    }

    pub(super) fn draw(self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.inside();
        self.look.along(sheet, 56.0, chance);
        let face = Area { x: 0.0, y: 0.0, width: 120.0, height: FOLD };
        sheet.area(Ink::Cloth, Area { x: -5.0, y: -5.0, width: 130.0, height: FOLD + 5.0 });
        sheet.twill(Ink::ClothDark, face, 3.9);
        self.look.face(sheet, 15.0);
        sheet.stroke(Ink::Edge, 1.6, Pen::with(|pen| _ = pen.line(-5.0, FOLD, 125.0, FOLD)));
    }
}

impl NeedleLines {
    pub(super) fn words(self) -> String {
        let mut words = Words::new();
        words.count(
            self.lines.min(4),
            to_say!("{count} line of needle thread on the face"),
            to_say!("{count} lines of needle thread on the face"),
        );
        words.done()
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.face();
        let lines = self.lines.min(4);
        ridge(sheet, &[(-5.0, 24.0), (125.0, 24.0)]);
        let mut thread = Pen::new();
        for line in 0..lines {
            let y = 48.0 + (f64::from(line) - f64::from(lines - 1) / 2.0) * 9.0;
            Row::of(STITCH).sew(&mut thread, &Track::level(-4.0, 124.0, y), 0.0, 0.0, 128.0);
        }
        sheet.stitches(2.2, thread);
    }
}
