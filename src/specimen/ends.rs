//! Where rows of stitching end, and the thread left hanging there.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Pen, Row, Track};
use super::stitching::ridge;
use super::words::Words;
use crate::{say, to_say};

/// Where rows of stitching end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct RowEnd {
    /// What was done at the end.
    pub ending: Ending,
}

/// What was done at the end of a row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ending {
    /// Cut off and left: nothing holds it.
    Loose,
    /// An overlap or knot that can be seen at arm's length.
    Untidy,
    /// Sewn back over itself.
    BackTacked,
    /// Sewn back over itself under another piece, out of sight.
    Hidden,
}

/// Thread ends left hanging.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ThreadTails {
    /// Ends longer than 3 mm, 0 to 14.
    pub ends: u8,
}

impl RowEnd {
    pub(super) fn words(&self) -> String {
        String::from(match self.ending {
            Ending::Loose => say!("a row of stitching that ends loose, its last stitches coming undone"),
            Ending::Untidy => say!("a row of stitching that ends in an overlap and a knot"),
            Ending::BackTacked => say!("a row of stitching that ends sewn back over itself"),
            Ending::Hidden => say!("a row of stitching that ends out of sight under another piece"),
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.face();
        let hidden = self.ending == Ending::Hidden;
        let end = if hidden { 70.0 } else { 84.0 };
        if !hidden {
            sheet.fill(Ink::ClothDark, Pen::with(|pen| _ = pen.rect(98.0, -5.0, 30.0, 90.0)));
            ridge(sheet, &[(98.0, -5.0), (98.0, 85.0)]);
        }
        let (mut thread, mut tail) = (Pen::new(), Pen::new());
        let form = Row::of(8.4);
        for (index, y) in [28.0, 50.0].into_iter().enumerate() {
            let track = Track::level(0.0, end, y);
            match self.ending {
                Ending::Loose => {
                    form.sew(&mut thread, &track, 0.0, 0.0, end - 30.0);
                    // The last stitches have lost their hold: loops stand up, the end hangs.
                    let x = end - 28.0;
                    tail.at(x - 2.0, y).bend(x + 4.0, y - 11.0, x + 10.0, y).bend(x + 16.0, y - 14.0, x + 22.0, y - 1.0);
                    let (dx, dy) = (chance.between(8.0, 14.0), chance.between(8.0, 14.0));
                    tail.bend(x + 30.0, y + 4.0, x + 22.0 + dx, y + dy).bend(x + 30.0, y + dy + 8.0, x + 40.0 + dx, y + dy + 5.0);
                }
                Ending::Untidy => {
                    form.sew(&mut thread, &track, 0.0, 0.0, end);
                    Row::of(7.0).sew(&mut thread, &track, 3.6, end - 34.0 + 6.0 * index as f64, end - 4.0);
                    for _ in 0..7 {
                        let (x, y) = (end - 5.0 + chance.about(6.0), y + 2.0 + chance.about(5.0));
                        thread.at(x, y).bend(
                            x + chance.about(9.0),
                            y + chance.about(9.0),
                            x + chance.about(6.0),
                            y + chance.about(5.0),
                        );
                    }
                    tail.at(end, y).bend(end + 10.0, y - 8.0, end + 8.0, y + 10.0);
                }
                Ending::BackTacked => {
                    form.sew(&mut thread, &track, 0.0, 0.0, end);
                    // Sewn back: the second pass fills the dips of the first.
                    form.sew(&mut thread, &track, 0.0, end - 25.2 - 4.2, end - 4.0);
                    form.sew(&mut thread, &track, 1.3, end - 25.2, end);
                }
                Ending::Hidden => {
                    form.sew(&mut thread, &track, 0.0, 0.0, end + 6.0);
                }
            }
        }
        sheet.stitches(2.8, thread);
        sheet.stitches(1.6, tail);
        if hidden {
            sheet.fill(Ink::Cloth, Pen::with(|pen| _ = pen.rect(70.0, -5.0, 60.0, 90.0)));
            let over = super::pen::Area { x: 70.0, y: 0.0, width: 50.0, height: 80.0 };
            sheet.twill(Ink::ClothDark, over, 3.6);
            ridge(sheet, &[(70.0, -5.0), (70.0, 85.0)]);
            let down = Track::through(&[(79.0, 0.0), (79.0, 80.0)]);
            sheet.stitches(2.8, Pen::with(|pen| _ = form.sew(pen, &down, 0.0, 0.0, 80.0)));
        }
    }
}

impl ThreadTails {
    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(say!("a seam under a belt loop"));
        match self.ends.min(14) {
            0 => words.and(say!("no loose thread ends")),
            ends => words.count(ends, to_say!("{count} thread end left hanging"), to_say!("{count} thread ends left hanging")),
        }
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.face();
        ridge(sheet, &[(-5.0, 30.0), (125.0, 30.0)]);
        let mut thread = Pen::new();
        for y in [10.0, 24.0] {
            Row::of(8.0).sew(&mut thread, &Track::level(0.0, 120.0, y), 0.0, chance.about(3.0), 120.0);
        }
        sheet.stitches(2.2, thread);
        let mut tails = Pen::new();
        let ends = self.ends.min(14);
        for end in 0..ends {
            let x = 7.0 + 106.0 * (f64::from(end) + 0.5 + chance.about(0.3)) / f64::from(ends);
            let (swing, fall) = (chance.about(9.0), chance.between(20.0, 40.0));
            let y = 32.0;
            tails.at(x, y - 8.0).bend(x + swing, y + fall * 0.3, x + swing * 0.4, y + fall * 0.7).bend(
                x - swing,
                y + fall,
                x + swing,
                y + fall + 5.0,
            );
        }
        // The loop lies over the seam; ends hang from under it.
        sheet.stitches(1.7, tails);
        sheet.fill(Ink::Cloth, Pen::with(|pen| _ = pen.rect(50.0, -5.0, 20.0, 47.0)));
        sheet.stroke(Ink::Shade, 1.6, Pen::with(|pen| _ = pen.points(&[(50.0, -5.0), (50.0, 42.0), (70.0, 42.0), (70.0, -5.0)])));
        let mut loop_thread = Pen::new();
        for x in [54.0, 66.0] {
            Row::of(7.0).sew(&mut loop_thread, &Track::through(&[(x, 0.0), (x, 35.0)]), 0.0, 0.0, 35.0);
        }
        let bar = Track::level(52.0, 68.0, 37.0);
        super::pen::overlock(&mut loop_thread, &bar, -2.5, 2.5, 2.4);
        sheet.stitches(1.8, loop_thread);
    }
}
