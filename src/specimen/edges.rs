//! Edges that are finished by themselves: the outseam's allowance, the pocket bag, the hem.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track, chain, clamp, fringe, leaf, overlock};
use super::stitching::ridge;
use crate::say;

/// The outer leg seam pressed open, from inside.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OutseamEdge {
    /// What the edge of the allowance is.
    pub edge: Edge,
    /// Whether it is so along the whole leg; if not, only in the turn-up and overlocked above.
    pub whole_leg: bool,
}

/// The edge of a seam allowance.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Edge {
    /// Cut and left; yarns come out.
    Raw,
    /// Three-thread overlock, wide apart.
    LooseOverlock,
    /// Five-thread overlock, dense.
    DenseOverlock,
    /// The cloth's own woven edge.
    SelfEdge,
    /// A tape sewn on that looks like a self-edge.
    SewnTape,
    /// Wrapped in tape.
    Bound,
}

/// The bottom of a pocket bag.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BagSeam {
    /// How the bag is closed.
    pub closing: BagClosing,
}

/// How a pocket bag is closed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BagClosing {
    /// One overlock row.
    Overlock,
    /// Overlock and a line of stitching inside it.
    SafetyRow,
    /// Turned and sewn again, edges shut in.
    Turned,
    /// Wrapped in tape.
    Bound,
}

/// The hem of a leg.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hem {
    /// How it is sewn.
    pub stitch: HemStitch,
    /// Diagonal ridges that washing brings out, 0 (none) to 1 (strong).
    pub roping: f64,
}

/// How a hem is sewn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HemStitch {
    /// Turned once, the raw edge wrapped in thread, a line on both faces.
    Wrapped,
    /// A line on both faces.
    Lock,
    /// A line on the face, a rope of loops behind.
    Chain,
}
impl OutseamEdge {
    pub(super) fn words(&self) -> String {
        let seam = match self.edge {
            Edge::Raw => say!("a seam pressed open inside, its edges raw and fraying"),
            Edge::LooseOverlock => say!("a seam pressed open inside, its edges overlocked loosely"),
            Edge::DenseOverlock => say!("a seam pressed open inside, its edges overlocked densely"),
            Edge::SelfEdge => say!("a seam pressed open inside, its edges the cloth's own woven edge"),
            Edge::SewnTape => {
                say!("a seam pressed open inside, its edges covered by a sewn-on tape that looks like a woven edge")
            }
            Edge::Bound => say!("a seam pressed open inside, its edges bound in tape"),
        };
        if self.whole_leg { seam.to_owned() } else { say!("{seam} in the turn-up only", seam) }
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.inside();
        let turned = 44.0;
        if self.whole_leg {
            self.allowance(sheet, self.edge, -4.0, 84.0, chance);
        } else {
            self.allowance(sheet, Edge::DenseOverlock, -4.0, turned, chance);
            let cuff = Area { x: 0.0, y: turned, width: 120.0, height: 36.0 };
            sheet.area(Ink::ClothPale, cuff);
            sheet.twill(Ink::ClothLight, cuff, 3.6);
            self.allowance(sheet, self.edge, turned, 84.0, chance);
            ridge(sheet, &[(-5.0, turned), (125.0, turned)]);
            sheet.stroke(Ink::Edge, 1.2, Pen::with(|pen| _ = pen.line(-5.0, turned, 125.0, turned)));
        }
    }

    /// Both allowances between two heights.
    fn allowance(&self, sheet: &mut Sheet, edge: Edge, top: f64, bottom: f64, chance: &mut Chance) {
        let (left, right) = (26.0, 94.0);
        let (mut under, mut thread, mut tape, mut line, mut bold) = (Pen::new(), Pen::new(), Pen::new(), Pen::new(), Pen::new());
        sheet.fill(Ink::Weft, Pen::with(|pen| _ = pen.rect(left, top, right - left, bottom - top)));
        // Each track runs so that the side away from the seam is negative.
        for (x, way) in [(left, 1.0), (right, -1.0)] {
            let (from, to) = if way > 0.0 { (bottom, top) } else { (top, bottom) };
            let track = Track::through(&[(x, from), (x, to)]);
            match edge {
                Edge::Raw => fringe(&mut under, &track, 1.0, -13.0, 2.2, chance),
                Edge::LooseOverlock => {
                    fringe(&mut under, &track, 1.0, -7.0, 4.5, chance);
                    overlock(&mut thread, &track, -1.5, 12.0, 12.0);
                }
                Edge::DenseOverlock => {
                    overlock(&mut thread, &track, -1.5, 9.0, 4.2);
                    Row::of(6.0).sew(&mut thread, &track, 15.0, 0.0, track.length());
                }
                Edge::SelfEdge | Edge::SewnTape => {
                    let sewn = edge == Edge::SewnTape;
                    let out = if sewn { -4.0 } else { 0.0 };
                    let (a, b) = (x + way * out, x + way * (out + 12.0));
                    tape.outline(&[(a, top), (b, top), (b, bottom), (a, bottom)]);
                    bold.line(x + way * (out + 5.0), top, x + way * (out + 5.0), bottom);
                    if sewn {
                        // The tape is a strip of its own: raw yarns stick out behind it, a zigzag holds it down.
                        fringe(&mut under, &track, 3.0, -11.0, 3.2, chance);
                        line.line(a, top, a, bottom).line(b, top, b, bottom);
                        overlock(&mut thread, &track, 5.0, 11.0, 7.0);
                    } else {
                        let mut y = top + 2.0;
                        while y < bottom {
                            line.line(a, y, a + way * 3.0, y);
                            y += 3.2;
                        }
                        line.line(a, top, a, bottom);
                    }
                }
                Edge::Bound => {
                    let (a, b) = (x - way * 2.0, x + way * 12.0);
                    tape.outline(&[(a, top), (b, top), (b, bottom), (a, bottom)]);
                    line.line(a, top, a, bottom).line(b, top, b, bottom);
                    Row::of(7.0).sew(&mut thread, &track, 8.5, 0.0, track.length());
                }
            }
        }
        sheet.stroke(Ink::Weft, 1.3, under);
        let plain = matches!(edge, Edge::Raw | Edge::LooseOverlock | Edge::DenseOverlock);
        if plain {
            line.line(left, top, left, bottom).line(right, top, right, bottom);
        }
        sheet.fill(if edge == Edge::Bound { Ink::Tape } else { Ink::Paper }, tape);
        sheet.stroke(Ink::Shade, 1.0, line);
        sheet.stroke(Ink::Thread, 2.4, bold);
        sheet.stroke(Ink::Thread, 1.8, thread);
        sheet.stroke(Ink::Edge, 1.8, Pen::with(|pen| _ = pen.line(60.0, top, 60.0, bottom)));
    }
}

impl BagSeam {
    pub(super) fn words(&self) -> String {
        String::from(match self.closing {
            BagClosing::Overlock => say!("a pocket bag closed by one overlock row"),
            BagClosing::SafetyRow => say!("a pocket bag closed by an overlock row and a line of stitching"),
            BagClosing::Turned => say!("a pocket bag closed by turning it and sewing it again, edges shut in"),
            BagClosing::Bound => say!("a pocket bag closed by a tape round its edge"),
        })
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        sheet.inside();
        // Round the bag against the clock, so that outside is positive.
        let mut rim = vec![(22.0, -6.0)];
        rim.extend((0..=24).map(|i| {
            let turn = std::f64::consts::PI * (1.0 - f64::from(i) / 24.0);
            (60.0 + 38.0 * turn.cos(), 34.0 + 34.0 * turn.sin().max(0.0).powf(0.7))
        }));
        rim.push((98.0, -6.0));
        let track = Track::through(&rim);
        sheet.fill(Ink::Paper, Pen::with(|pen| _ = pen.outline(&rim)));
        let row = Row::of(6.4);
        let mut thread = Pen::new();
        match self.closing {
            BagClosing::Overlock | BagClosing::SafetyRow => {
                let inner = if self.closing == BagClosing::Overlock { -9.0 } else { -7.0 };
                sheet.stroke(Ink::Paper, 1.2, Pen::with(|pen| fringe(pen, &track, 0.0, 6.0, 3.6, chance)));
                overlock(&mut thread, &track, 0.5, inner, 5.4);
                if self.closing == BagClosing::SafetyRow {
                    row.sew(&mut thread, &track, -12.5, 0.0, track.length());
                }
            }
            BagClosing::Turned => {
                let fold: Vec<(f64, f64)> =
                    (0..=40).map(|i| track.spot(track.length() * f64::from(i) / 40.0).beside(-11.0, 0.0)).collect();
                sheet.stroke(Ink::Shade, 1.0, Pen::with(|pen| _ = pen.points(&fold)));
                row.sew(&mut thread, &track, -3.6, 0.0, track.length());
                row.sew(&mut thread, &track, -8.0, 0.0, track.length());
            }
            BagClosing::Bound => {
                sheet.stroke(Ink::Edge, 10.0, Pen::with(|pen| _ = pen.points(&rim)));
                sheet.stroke(Ink::Tape, 8.6, Pen::with(|pen| _ = pen.points(&rim)));
                row.sew(&mut thread, &track, -2.0, 0.0, track.length());
            }
        }
        if self.closing != BagClosing::Bound {
            sheet.stroke(Ink::Edge, 1.1, Pen::with(|pen| _ = pen.points(&rim)));
        }
        sheet.stroke(Ink::Thread, 1.9, thread);
    }
}

impl Hem {
    pub(super) fn words(&self) -> String {
        let mut words = String::from(match self.stitch {
            HemStitch::Wrapped => say!("a hem turned once, its edge wrapped in thread"),
            HemStitch::Lock => say!("a hem sewn with the same line on face and back"),
            HemStitch::Chain => say!("a hem sewn with a line on the face and a chain of loops behind"),
        });
        if clamp(self.roping, 0.0, 1.0) > 0.2 {
            words.push_str(", ");
            words.push_str(say!("diagonal ridges along it"));
        }
        words
    }

    pub(super) fn draw(&self, sheet: &mut Sheet, chance: &mut Chance) {
        let (fold, row_at, split) = (73.0, 44.0, 72.0);
        sheet.area(Ink::Paper, FRAME);
        let above = |x: f64, width: f64| Area { x, y: 0.0, width, height: fold };
        sheet.area(Ink::Cloth, above(0.0, split));
        sheet.twill(Ink::ClothDark, above(0.0, split), 3.6);
        sheet.area(Ink::ClothPale, above(split, 48.0));
        sheet.twill(Ink::ClothLight, Area { height: row_at - 9.0, ..above(split, 48.0) }, 3.6);
        let turned = Area { x: split, y: row_at - 9.0, width: 48.0, height: fold - row_at + 9.0 };
        sheet.area(Ink::Cloth, turned);
        sheet.twill(Ink::ClothDark, turned, 3.6);
        let roping = clamp(self.roping, 0.0, 1.0);
        if roping > 0.0 {
            let (mut high, mut low) = (Pen::new(), Pen::new());
            let mut x = 1.0;
            while x < split - 11.0 {
                let (top, foot) = ((x + 9.0, row_at + 3.0), (x - 4.0, fold - 1.5));
                leaf(&mut high, top, foot, 4.6 * roping);
                leaf(&mut low, (top.0 + 4.6, top.1), (foot.0 + 4.6, foot.1), 2.4 * roping);
                x += 9.6 + chance.about(1.0);
            }
            sheet.fill(Ink::Shade, low);
            sheet.fill(Ink::ClothPale, high);
        }
        let mut face = Pen::new();
        Row::of(8.2).sew(&mut face, &Track::level(0.0, split - 1.0, row_at), 0.0, 0.0, split - 1.0);
        sheet.stitches(2.6, face);
        // The back, to the right: the turned edge, and what the row looks like there.
        sheet.stroke(Ink::Shade, 1.2, Pen::with(|pen| _ = pen.line(split, row_at - 9.0, 125.0, row_at - 9.0)));
        let back = Track::level(split + 3.0, 120.0, row_at);
        let mut thread = Pen::new();
        match self.stitch {
            HemStitch::Wrapped => {
                Row::of(8.2).sew(&mut thread, &back, 0.0, 0.0, back.length());
                overlock(&mut thread, &back, -10.5, -3.5, 4.6);
            }
            HemStitch::Lock => _ = Row::of(8.2).sew(&mut thread, &back, 0.0, 0.0, back.length()),
            HemStitch::Chain => chain(&mut thread, &back, 8.2, 6.4),
        }
        sheet.stitches(2.2, thread);
        sheet.stroke(Ink::Edge, 1.4, Pen::with(|pen| _ = pen.line(-5.0, fold, 125.0, fold).line(split, -5.0, split, fold)));
    }
}
