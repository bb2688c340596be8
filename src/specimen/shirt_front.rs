//! The front of a shirt: its stitches, the edge that buttons, what hangs from it, and how a pattern runs over it.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track, clamp};
use super::words::Words;
use crate::{say, to_say};

/// Rows of fine stitches along the edge of a front; the frame shows 24 mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FineStitches {
    /// Stitches per inch, 4 to 32.
    pub per_inch: f64,
    /// Stitches per inch of a second piece below, where too few and too many are one answer; 0 where there is none.
    pub or_per_inch: f64,
}

/// The edge that buttons, lying across: collar to the left, hem to the right.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShirtFront {
    /// How far the edge waves, in mm, 0 to 6.
    pub wave_mm: f64,
    /// How far the two fronts differ at the hem, in mm, 0 to 12.
    pub ends_off_mm: f64,
    /// Thread ends left hanging, 0 to 14.
    pub tails: u8,
}

/// A checked front: how far the pattern misses where pieces meet, in mm, 0 to 12 each.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShirtPattern {
    /// At the edge that buttons.
    pub front_off_mm: f64,
    /// At the pocket.
    pub pocket_off_mm: f64,
    /// At the yoke.
    pub yoke_off_mm: f64,
}

impl FineStitches {
    /// Drawing units per mm.
    pub(super) const MM: f64 = 5.0;

    pub(super) fn told(per_inch: f64) -> f64 {
        clamp(per_inch, 4.0, 32.0)
    }

    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(say!("the edge of a shirt front beside half an inch of tape"));
        words.number(FineStitches::told(self.per_inch), to_say!("{number} stitches per inch"));
        if self.or_per_inch > 0.0 {
            words.number(FineStitches::told(self.or_per_inch), to_say!("{number} on another shirt"));
        }
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.area(Ink::ClothPale, FRAME);
        let both = self.or_per_inch > 0.0;
        let tape = Area { x: 28.0, y: 34.0, width: 12.7 * FineStitches::MM, height: 12.0 };
        for (edge, row, per_inch) in
            [(6.0, 20.0, self.per_inch), (74.0, 60.0, if both { self.or_per_inch } else { self.per_inch })]
        {
            let stitch = 25.4 / FineStitches::told(per_inch) * FineStitches::MM;
            let far = if edge < 40.0 { -6.0 } else { 86.0 };
            sheet.fill(Ink::Paper, Pen::with(|pen| _ = pen.outline(&[(-5.0, far), (125.0, far), (125.0, edge), (-5.0, edge)])));
            sheet.stroke(Ink::Edge, 1.4, Pen::with(|pen| _ = pen.line(-5.0, edge, 125.0, edge)));
            let track = Track::level((tape.x + 5.0) % stitch - 5.0, 124.0, row);
            let form = Row { stitch, dip: 2.6_f64.min(stitch * 0.62) / stitch };
            sheet.stroke(Ink::Thread, 1.5, Pen::with(|pen| _ = form.sew(pen, &track, 0.0, 0.0, track.length())));
        }
        sheet.area(Ink::Tape, tape);
        let ends = Pen::with(|pen| {
            for x in [tape.x, tape.x + tape.width] {
                pen.line(x, 13.0, x, 67.0);
            }
        });
        sheet.dash(Ink::Edge, 1.0, 2.0, 2.0, ends);
    }
}

impl ShirtFront {
    /// Nothing wrong with it.
    pub const CLEAN: ShirtFront = ShirtFront { wave_mm: 0.0, ends_off_mm: 0.0, tails: 0 };

    pub(super) fn words(&self) -> String {
        let (wave, off) = (clamp(self.wave_mm, 0.0, 6.0), clamp(self.ends_off_mm, 0.0, 12.0));
        let mut words = Words::new();
        words.and(say!("the buttoned edge of a shirt"));
        words.and(if wave > 2.0 {
            say!("wavy")
        } else if wave > 0.3 {
            say!("nearly straight")
        } else {
            say!("straight")
        });
        if off > 0.0 {
            words.number(off, to_say!("{number} millimetres between its ends at the hem"));
        } else {
            words.and(say!("ends level at the hem"));
        }
        words.and_count(
            self.tails.min(14),
            to_say!("{count} thread end left hanging"),
            to_say!("{count} thread ends left hanging"),
        );
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        // Half the scale of the stitch pictures, and twice that for what is off.
        let (wave, off) = (clamp(self.wave_mm, 0.0, 6.0) * 1.1, clamp(self.ends_off_mm, 0.0, 12.0) * 1.6);
        let hem = 108.0;
        sheet.area(Ink::Paper, FRAME);
        sheet.area(Ink::ClothLight, Area { x: -5.0, y: -5.0, width: hem + 5.0 - off, height: 60.0 });
        let line = |y: f64, share: f64| -> Vec<(f64, f64)> {
            let bow = |x: f64| wave * share * (x / 19.0).sin();
            (0..=28).map(|i| -5.0 + (hem + 5.0) * f64::from(i) / 28.0).map(|x| (x, y + bow(x))).collect()
        };
        let front = Pen::with(|pen| _ = pen.smooth(&line(24.0, 1.0)).to(hem, 86.0).to(-5.0, 86.0).close());
        sheet.fill(Ink::ClothPale, front.clone());
        sheet.stroke(Ink::Edge, 1.5, front);
        sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.line(hem - off, -5.0, hem - off, 23.0)));
        let mut thread = Pen::new();
        for (y, share) in [(28.5, 0.9), (55.0, 0.6)] {
            let track = Track::through(&line(y, share));
            Row::of(4.6).sew(&mut thread, &track, 0.0, 0.0, track.length());
        }
        let seam = Pen::with(|pen| _ = pen.smooth(&line(58.5, 0.55)));
        sheet.stroke(Ink::Cloth, 0.9, seam);
        sheet.stroke(Ink::Thread, 1.2, thread);
        let (mut holes, mut buttons) = (Pen::new(), Pen::new());
        for x in [26.0, 58.0, 90.0] {
            holes.line(x - 7.0, 42.0, x + 7.0, 42.0);
            buttons.circle(x + 3.0, 42.0, 4.6);
        }
        sheet.stroke(Ink::Cloth, 2.6, holes);
        sheet.fill(Ink::Weft, buttons.clone());
        sheet.stroke(Ink::Edge, 1.0, buttons);
        // The band of the collar ends the edge on the left, a seam on the hem on the right.
        let band = Pen::with(|pen| _ = pen.outline(&[(-5.0, 18.0), (9.0, 21.0), (9.0, 86.0), (-5.0, 86.0)]));
        sheet.fill(Ink::ClothLight, band.clone());
        sheet.stroke(Ink::Edge, 1.2, band);
        let mut tails = Pen::new();
        let ends = self.tails.min(14);
        for end in 0..ends {
            let x = 14.0 + 90.0 * (f64::from(end) + 0.5 + chance.about(0.3)) / f64::from(ends);
            let (y, swing, fall) = (if end % 2 == 0 { 55.0 } else { 42.0 }, chance.about(8.0), chance.between(12.0, 22.0));
            tails.at(x, y).bend(x + swing, y + fall * 0.4, x + swing * 0.3, y + fall * 0.7).bend(
                x - swing,
                y + fall,
                x,
                y + fall,
            );
        }
        sheet.stroke(Ink::Edge, 1.3, tails);
    }
}

impl ShirtPattern {
    /// Drawing units per mm.
    const MM: f64 = 1.5;
    const REPEAT: f64 = 20.0;

    /// The worst of the three, in mm.
    pub(super) fn worst(&self) -> f64 {
        [self.front_off_mm, self.pocket_off_mm, self.yoke_off_mm]
            .into_iter()
            .fold(0.0, |worst, mm| worst.max(clamp(mm, 0.0, 12.0)))
    }

    pub(super) fn words(&self) -> String {
        let mut words = Words::new();
        words.and(say!("a checked shirt front"));
        for (mm, meets, near, off) in [
            (
                self.front_off_mm,
                say!("checks meet at the buttons"),
                say!("checks nearly meet at the buttons"),
                say!("checks miss at the buttons"),
            ),
            (self.pocket_off_mm, say!("meet at the pocket"), say!("nearly meet at the pocket"), say!("miss at the pocket")),
            (self.yoke_off_mm, say!("meet at the yoke"), say!("nearly meet at the yoke"), say!("miss at the yoke")),
        ] {
            words.and(match clamp(mm, 0.0, 12.0) {
                mm if mm < 0.5 => meets,
                mm if mm < 3.0 => near,
                _ => off,
            });
        }
        words.done()
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, _chance: &mut Chance) {
        let off = |mm: f64| clamp(mm, 0.0, 12.0) * ShirtPattern::MM;
        let body = Area { x: 34.0, y: 18.0, width: 91.0, height: 67.0 };
        let pocket = Area { x: 66.0, y: 36.0, width: 42.0, height: 49.0 };
        let pieces = [
            (body, 0.0, 0.0),
            (Area { x: -5.0, width: 39.0, ..body }, 0.0, off(self.front_off_mm)),
            (Area { x: -5.0, y: -5.0, width: 130.0, height: 23.0 }, off(self.yoke_off_mm), 0.0),
            (pocket, off(self.pocket_off_mm) * 0.7, off(self.pocket_off_mm)),
        ];
        sheet.area(Ink::ClothPale, FRAME);
        for (index, (area, right, down)) in pieces.into_iter().enumerate() {
            let (mut across, mut along) = (Pen::new(), Pen::new());
            let first = |from: f64, shift: f64| from + (8.0 + shift - from).rem_euclid(ShirtPattern::REPEAT);
            let (mut x, mut y) = (first(area.x, right), first(area.y, down));
            while x < area.x + area.width {
                along.line(x, area.y, x, area.y + area.height);
                x += ShirtPattern::REPEAT;
            }
            while y < area.y + area.height {
                across.line(area.x, y, area.x + area.width, y);
                y += ShirtPattern::REPEAT;
            }
            if index == 3 {
                sheet.area(Ink::ClothPale, area);
            }
            sheet.stroke(Ink::Cloth, 3.4, across);
            sheet.stroke(Ink::Thread, 1.6, along);
        }
        let seams = Pen::with(|pen| {
            pen.line(-5.0, 18.0, 125.0, 18.0).line(34.0, 18.0, 34.0, 86.0).rect(66.0, 36.0, 42.0, 55.0);
        });
        sheet.stroke(Ink::Paper, 3.0, seams.clone());
        sheet.stroke(Ink::Edge, 1.4, seams);
        let buttons = Pen::with(|pen| _ = pen.circle(40.0, 32.0, 3.6).circle(40.0, 64.0, 3.6));
        sheet.fill(Ink::Weft, buttons.clone());
        sheet.stroke(Ink::Edge, 1.0, buttons);
    }
}
