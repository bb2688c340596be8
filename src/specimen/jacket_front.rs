//! The front of a tailored jacket: what lies between its layers, how the lapel turns, how its edge ends.

use super::chance::Chance;
use super::drawing::{Ink, Sheet};
use super::pen::{Area, FRAME, Pen, Row, Track};
use crate::say;

/// What lies between cloth and facing of the front: how far it reaches on the left, in section on the right.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FrontLayer {
    /// Glued to the cloth all over, thick and stiff.
    GluedStiff,
    /// Glued to the cloth all over, thin and soft.
    GluedSoft,
    /// A free layer in chest and lapel.
    FloatsInChest,
    /// A free layer from shoulder to hem.
    FloatsToHem,
}

/// Both lapels of a jacket, and how the left one turns, in section.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lapels {
    /// A hard crease; the tips curl outwards.
    Curled,
    /// A hard crease, lying flat.
    Flat,
    /// A soft roll that ends at the button, not quite alike on both sides.
    Rolled,
    /// A soft roll on both sides alike.
    RolledAlike,
}

/// The lower front edge: its run, and its plies in section.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FrontEdge {
    /// Thick and wavy.
    Bulky,
    /// Shiny along the edge from the iron, plies showing through.
    Shiny,
    /// Flat.
    Flat,
    /// Thin, with an even curve.
    Crisp,
}

/// Half a front: neck, shoulder, armhole, side, hem, front edge.
const PANEL: [(f64, f64); 10] = [
    (33.0, 5.0),
    (10.0, 11.0),
    (15.0, 26.0),
    (9.0, 33.0),
    (8.0, 75.0),
    (40.0, 76.0),
    (47.0, 68.0),
    (47.0, 42.0),
    (38.0, 20.0),
    (33.0, 5.0),
];
/// Its chest and lapel.
const CHEST: [(f64, f64); 7] = [(33.0, 5.0), (14.0, 10.0), (17.0, 26.0), (15.0, 34.0), (34.0, 46.0), (47.0, 42.0), (38.0, 20.0)];

impl FrontLayer {
    pub(super) fn words(self) -> String {
        String::from(match self {
            FrontLayer::GluedStiff => say!("a front in section, a thick stiff layer glued to the cloth all over"),
            FrontLayer::GluedSoft => say!("a front in section, a thin soft layer glued to the cloth all over"),
            FrontLayer::FloatsInChest => say!("a front in section, a third layer hanging free in chest and lapel"),
            FrontLayer::FloatsToHem => say!("a front in section, a third layer hanging free down to the hem"),
        })
    }

    const fn floats(self) -> bool {
        matches!(self, FrontLayer::FloatsInChest | FrontLayer::FloatsToHem)
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.area(Ink::Paper, FRAME);
        let panel = Pen::with(|pen| _ = pen.outline(&PANEL));
        sheet.fill(Ink::ClothLight, panel.clone());
        let reach: &[(f64, f64)] = if self == FrontLayer::FloatsInChest { &CHEST } else { &PANEL };
        sheet.fill(if self.floats() { Ink::Weft } else { Ink::ClothDark }, Pen::with(|pen| _ = pen.outline(reach)));
        if self.floats() {
            // The slanting stitches that hold a sewn layer.
            let low = if self == FrontLayer::FloatsToHem { 70.0 } else { 38.0 };
            let pad = Pen::with(|pen| {
                let mut y = 16.0;
                while y < low {
                    for x in [20.0, 27.0, 34.0] {
                        pen.line(x, y, x + 3.0, y + 3.4);
                    }
                    y += 7.0;
                }
            });
            sheet.stroke(Ink::Thread, 1.4, pad);
        }
        sheet.stroke(Ink::Edge, 1.5, panel);
        self.section(sheet);
    }

    /// Cloth above, facing below, the layer between them.
    fn section(self, sheet: &mut Sheet) {
        let stiff = self == FrontLayer::GluedStiff;
        let sag = if stiff { 0.0 } else { 5.0 };
        let bow = |y: f64, sag: f64| Pen::with(|pen| _ = pen.at(60.0, y).bend(90.0, y - sag * 2.0, 116.0, y));
        let cloth = 26.0;
        if self.floats() {
            let free = Pen::with(|pen| {
                pen.smooth(&[
                    (60.0, 42.0),
                    (70.0, 36.0),
                    (80.0, 44.0),
                    (90.0, 38.0),
                    (100.0, 45.0),
                    (108.0, 39.0),
                    (116.0, 42.0),
                ]);
            });
            sheet.ply(Ink::Weft, 4.4, free);
        } else {
            let thick = if stiff { 8.0 } else { 3.8 };
            sheet.ply(Ink::Weft, thick, bow(cloth + 4.0 + thick / 2.0, sag));
        }
        sheet.ply(Ink::Cloth, 8.0, bow(cloth, sag));
        sheet.ply(Ink::ClothLight, 7.0, bow(62.0, -sag));
        if self.floats() {
            let hold = Pen::with(|pen| {
                for x in [74.0, 102.0] {
                    pen.line(x, 25.0, x + 1.0, 42.0);
                }
            });
            sheet.stroke(Ink::Thread, 1.6, hold);
        } else {
            let glue = Pen::with(|pen| {
                for dot in 0..7 {
                    let share = f64::from(dot) / 6.0;
                    let lift = sag * 4.0 * share * (1.0 - share);
                    pen.circle(63.0 + 50.0 * share, cloth + 4.4 - lift, if stiff { 1.9 } else { 1.2 });
                }
            });
            sheet.fill(Ink::Stain, glue);
        }
    }
}

impl Lapels {
    pub(super) fn words(self) -> String {
        String::from(match self {
            Lapels::Curled => say!("two lapels with a hard crease, their tips curling outwards"),
            Lapels::Flat => say!("two lapels pressed flat along a hard crease"),
            Lapels::Rolled => say!("two lapels that roll softly down to the button, one a little higher"),
            Lapels::RolledAlike => say!("two lapels that roll softly down to the button, both alike"),
        })
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.area(Ink::Cloth, FRAME);
        sheet.fill(Ink::Paper, Pen::with(|pen| _ = pen.outline(&[(36.0, -6.0), (84.0, -6.0), (60.0, 66.0)])));
        let soft = matches!(self, Lapels::Rolled | Lapels::RolledAlike);
        for (side, up) in [(-1.0, 0.0), (1.0, if self == Lapels::Rolled { 5.0 } else { 0.0 })] {
            let x = |off: f64| 60.0 + side * off;
            let lapel = Pen::with(|pen| {
                pen.at(x(24.0), -6.0).to(x(42.0), 12.0 - up).to(x(36.0), 18.0 - up).to(x(48.0), 22.0 - up);
                pen.bend(x(38.0), 46.0, x(0.0), 66.0);
                if soft {
                    pen.bend(x(9.0), 40.0, x(20.0), 14.0).to(x(24.0), -6.0);
                } else {
                    pen.to(x(24.0), -6.0);
                }
                pen.close();
            });
            sheet.fill(Ink::ClothLight, lapel.clone());
            sheet.stroke(Ink::Edge, 1.4, lapel);
            if soft {
                for (far, ink) in [(3.0, Ink::ClothPale), (7.0, Ink::Weft)] {
                    let roll = Pen::with(|pen| {
                        pen.at(x(22.0 + far), 4.0).bend(x(13.0 + far), 38.0, x(2.0 + far * 0.4), 60.0);
                    });
                    sheet.stroke(ink, if far > 5.0 { 1.2 } else { 3.0 }, roll);
                }
            } else {
                sheet.stroke(Ink::Edge, 3.0, Pen::with(|pen| _ = pen.line(x(24.0), -6.0, x(0.0), 66.0)));
            }
            if self == Lapels::Curled {
                let tip = [(x(48.0), 22.0), (x(38.0), 18.5), (x(42.0), 36.0)];
                sheet.fill(Ink::ClothPale, Pen::with(|pen| _ = pen.outline(&tip)));
                sheet.stroke(Ink::Edge, 1.4, Pen::with(|pen| _ = pen.outline(&tip)));
            }
        }
        sheet.fill(Ink::Edge, Pen::with(|pen| _ = pen.circle(60.0, 71.0, 3.6)));
        self.section(sheet);
    }

    /// How the lapel turns: sharp or round.
    fn section(self, sheet: &mut Sheet) {
        sheet.area(Ink::Paper, Area { x: 86.0, y: 54.0, width: 40.0, height: 32.0 });
        let turn = Pen::with(|pen| {
            match self {
                Lapels::Curled => pen.at(114.0, 75.0).to(92.0, 70.0).to(108.0, 66.0).bend(114.0, 64.0, 116.0, 57.0),
                Lapels::Flat => pen.at(114.0, 75.0).to(92.0, 70.0).to(114.0, 67.0),
                Lapels::Rolled | Lapels::RolledAlike => {
                    pen.at(114.0, 76.0).bend(90.0, 76.0, 91.0, 67.0).bend(92.0, 58.0, 114.0, 63.0)
                }
            };
        });
        sheet.ply(Ink::Cloth, 4.4, turn);
    }
}

impl FrontEdge {
    pub(super) fn words(self) -> String {
        String::from(match self {
            FrontEdge::Bulky => say!("a front edge that is thick and wavy"),
            FrontEdge::Shiny => say!("a front edge shiny from the iron, its layers showing through"),
            FrontEdge::Flat => say!("a front edge that lies flat"),
            FrontEdge::Crisp => say!("a front edge that is thin, with an even curve"),
        })
    }

    /// The run of the edge, down the front and round to the hem.
    fn run(self) -> Vec<(f64, f64)> {
        let mut run: Vec<(f64, f64)> = vec![(74.0, -6.0), (74.0, 6.0), (74.0, 18.0), (74.0, 30.0)];
        let corner = (0..=8).map(|step| {
            let turn = f64::from(step) * std::f64::consts::FRAC_PI_2 / 8.0;
            (44.0 + 30.0 * turn.cos(), 38.0 + 30.0 * turn.sin())
        });
        run.extend(corner);
        run.extend([(32.0, 68.0), (20.0, 68.0), (8.0, 68.0), (-6.0, 68.0)]);
        if self == FrontEdge::Bulky {
            for (place, point) in run.iter_mut().enumerate() {
                let off = if place % 2 == 0 { 2.6 } else { -2.6 };
                *point = (point.0 + off, point.1 + off * 0.8);
            }
        }
        run
    }

    pub(super) fn draw(self, sheet: &mut Sheet, _chance: &mut Chance) {
        sheet.area(Ink::Paper, FRAME);
        let run = self.run();
        let body = Pen::with(|pen| {
            pen.smooth(&run).to(-6.0, -6.0).close();
        });
        sheet.fill(Ink::Cloth, body);
        let track = Track::through(&run);
        let beside = |side: f64| -> Vec<(f64, f64)> {
            (0..=24).map(|step| track.spot(track.length() * f64::from(step) / 24.0).beside(side, 0.0)).collect()
        };
        match self {
            FrontEdge::Bulky => {
                sheet.stroke(Ink::ClothDark, 3.4, Pen::with(|pen| _ = pen.smooth(&beside(9.0))));
                sheet.stroke(Ink::ClothLight, 2.4, Pen::with(|pen| _ = pen.smooth(&beside(5.0))));
            }
            FrontEdge::Shiny => {
                sheet.stroke(Ink::ClothPale, 6.0, Pen::with(|pen| _ = pen.smooth(&beside(5.0))));
                sheet.stroke(Ink::ClothDark, 1.6, Pen::with(|pen| _ = pen.smooth(&beside(11.0))));
            }
            FrontEdge::Flat => sheet.stroke(Ink::ClothLight, 1.4, Pen::with(|pen| _ = pen.smooth(&beside(4.0)))),
            FrontEdge::Crisp => {
                let mut prick = Pen::new();
                Row { stitch: 6.0, dip: 0.8 }.sew(&mut prick, &Track::through(&beside(3.4)), 0.0, 3.0, track.length() - 3.0);
                sheet.stroke(Ink::ClothPale, 1.4, prick);
            }
        }
        sheet.stroke(Ink::Edge, if self == FrontEdge::Bulky { 2.4 } else { 1.5 }, Pen::with(|pen| _ = pen.smooth(&run)));
        // In section: the turned plies, stacked as high as they are.
        let (plies, each) = match self {
            FrontEdge::Bulky => (4, 7.0),
            FrontEdge::Shiny => (4, 5.0),
            FrontEdge::Flat => (3, 4.6),
            FrontEdge::Crisp => (2, 4.0),
        };
        for ply in 0..plies {
            let y = 30.0 + f64::from(ply) * each;
            let short = if ply == 0 || ply == plies - 1 { 112.0 } else { 104.0 };
            let inks = [Ink::Cloth, Ink::Weft, Ink::ClothPale, Ink::ClothLight];
            sheet.ply(inks[ply as usize % 4], each, Pen::with(|pen| _ = pen.line(88.0, y, short, y)));
        }
    }
}
