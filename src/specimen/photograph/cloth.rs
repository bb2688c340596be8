//! The face of a cloth: colour, slope and shade at a place, from a weave counted in yarns.

use std::f32::consts::PI;

use super::colour::{Rgb, mix, times};
use super::noise::{along, both, cell, over, step, unit};

/// What the seam is sewn in.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum ClothKind {
    /// Warp-faced twill over three under one, dark warp and pale weft.
    Denim,
    /// Warp-faced twill over two under one.
    Twill21,
    /// Plain weave of one colour.
    Plain,
    /// Plain weave, coloured warp and white weft.
    Chambray,
    /// Single jersey, knitted.
    Jersey,
    /// Grained leather.
    Leather,
}

/// A cloth as laid under the camera; lengths in millimetres.
pub(super) struct Cloth {
    pub kind: ClothKind,
    pub warp: Rgb,
    pub weft: Rgb,
    /// Yarns a millimetre across the warp (wales of a knit, grains of leather).
    pub ends: f32,
    /// Yarns a millimetre along the warp (courses of a knit).
    pub picks: f32,
    /// Sine and cosine of the turn of the warp against the vertical.
    pub turn: [f32; 2],
    /// 1 for a twill rising to the right, -1 to the left.
    pub hand: i32,
    /// How far yarns stray from straight lines, mm.
    pub bow: f32,
    /// How uneven the yarns are, 0 to 1.
    pub slub: f32,
    /// How worn and mottled the colour is, 0 to 1.
    pub wash: f32,
    /// How deep the relief is, about 1.
    pub relief: f32,
    pub salt: u32,
}

/// What a surface does with light at a place.
#[derive(Clone, Copy)]
pub(super) struct Skin {
    pub colour: Rgb,
    /// Slope of the height along x and y.
    pub slope: [f32; 2],
    /// Share of ambient light that reaches the place.
    pub open: f32,
    pub gloss: f32,
}

impl Cloth {
    /// The mean colour of the face.
    pub(super) fn mean(&self) -> Rgb {
        let n = self.repeat() as f32;
        match self.kind {
            ClothKind::Jersey | ClothKind::Leather => self.warp,
            _ => mix(self.warp, self.weft, 1.0 / n),
        }
    }

    fn repeat(&self) -> i32 {
        match self.kind {
            ClothKind::Denim => 4,
            ClothKind::Twill21 => 3,
            _ => 2,
        }
    }

    /// The face at a place in mm.
    pub(super) fn at(&self, x: f32, y: f32) -> Skin {
        let [s, c] = self.turn;
        // Yarns never run dead straight.
        let p = c * x
            + s * y
            + self.bow * over(x * 0.07, y * 0.07, self.salt)
            + 0.15 * self.bow * over(x * 0.6, y * 0.25, self.salt ^ 1);
        let q = c * y - s * x + self.bow * over(x * 0.06, y * 0.06, self.salt ^ 2);
        let mut skin = match self.kind {
            ClothKind::Jersey => self.knitted(p, q),
            ClothKind::Leather => self.grained(p, q),
            _ => self.woven(p, q),
        };
        let [a, b] = skin.slope;
        skin.slope = [c * a - s * b, s * a + c * b];
        let patch = over(x * 0.05, y * 0.08, self.salt ^ 3) + 0.5 * over(x * 0.21, y * 0.17, self.salt ^ 4);
        skin.colour = times(skin.colour, 1.0 + 0.16 * self.wash * patch);
        skin
    }

    fn woven(&self, p: f32, q: f32) -> Skin {
        let n = self.repeat();
        let (a, b) = (p * self.ends, q * self.picks);
        let (i, j) = (cell(a), cell(b));
        let (fa, fb) = (a - i as f32, b - j as f32);
        let k = j.wrapping_add(self.hand.wrapping_mul(i)).rem_euclid(n);
        let up = k != n - 1;
        // On top: a yarn across (-1..1 over its width), how far along its float, which yarn, and where along it.
        let (u, t, float, yarn, run) = if up {
            (2.0 * fa - 1.0, (k as f32 + fb) / (n - 1) as f32, (n - 1) as f32, i, b)
        } else {
            (2.0 * fb - 1.0, fa, 1.0, j.wrapping_add(70_000), a)
        };
        let thick =
            1.0 + 0.22 * self.slub * (both(yarn, 1, self.salt) + along(run * 0.045 + (yarn as f32) * 17.31, self.salt ^ 5));
        let across = (1.0 - (u / thick.max(0.6)).powi(2)).max(0.0);
        let arch = (PI * t).sin();
        let height = across * (0.45 + 0.55 * arch);
        let deep = 0.34 * self.relief;
        let (du, dt) = (-4.0 * u * (0.45 + 0.55 * arch) * deep, across * 0.55 * PI * (PI * t).cos() / float * deep);
        // Units of the relief: a yarn's own width, so slopes come out free of the count.
        let twist = 0.05 * (2.0 * PI * (1.7 * run + 0.55 * u + unit(yarn, 3, self.salt))).sin();
        let streak = 0.20 * self.slub * (both(yarn, 2, self.salt) + 0.8 * along(run * 0.02 + (yarn as f32) * 5.7, self.salt ^ 6));
        let mut colour = if up { self.warp } else { self.weft };
        if up && self.kind != ClothKind::Plain {
            // Indigo sits on the outside of a yarn and is rubbed off where it stands highest.
            let worn = self.wash * 0.35 * height * step(-0.6, 0.9, along(run * 0.11 + yarn as f32 * 3.3, self.salt ^ 7));
            colour = mix(colour, self.weft, worn);
        }
        Skin {
            colour: times(colour, (1.0 + streak + twist).max(0.1)),
            slope: if up { [du, dt] } else { [dt, du] },
            open: 0.42 + 0.58 * height.sqrt(),
            gloss: 0.03,
        }
    }

    fn knitted(&self, p: f32, q: f32) -> Skin {
        let (a, b) = (p * self.ends, q * self.picks);
        let i = cell(a);
        let side = 2.0 * (a - i as f32) - 1.0;
        let m = side.abs();
        // Each wale is a column of V's: two legs that lean apart as they rise, the next V standing in the mouth of the last.
        let shift = 0.25 * both(i, 5, self.salt) * self.slub;
        let mut best = (0.0_f32, 0.0_f32, 0);
        for back in 0..2 {
            let t = (b + shift).rem_euclid(1.0) + back as f32;
            let centre = 0.12 + 0.42 * t.min(1.45);
            let width = 0.40;
            let u = (m - centre) / width;
            let h = (1.0 - u * u).max(0.0) * (1.0 - 0.35 * back as f32);
            if h > best.0 {
                best = (h, u, back);
            }
        }
        let (height, u, _) = best;
        let lean = -2.0 * u / 0.40 * 0.13 * self.relief;
        let row = cell(b + shift);
        let streak = 0.10 * self.slub * (both(i, 2, self.salt) + along(b * 0.03 + i as f32 * 9.1, self.salt ^ 8))
            + 0.05 * both(i, row, self.salt ^ 9);
        Skin {
            colour: times(self.warp, (1.0 + streak).max(0.1)),
            slope: [lean * side.signum() * 2.0, -lean * 0.84],
            open: 0.40 + 0.60 * height.sqrt(),
            gloss: 0.02,
        }
    }

    fn grained(&self, p: f32, q: f32) -> Skin {
        let (a, b) = (p * self.ends + 0.25 * over(p * 1.1, q * 1.1, self.salt ^ 11), q * self.picks);
        let (ia, ib) = (cell(a), cell(b));
        // Grain: the nearest of points strewn one a cell, and how much nearer it is than the second.
        let (mut first, mut second, mut away) = (9.0_f32, 9.0_f32, [0.0_f32; 2]);
        for di in -1..=1 {
            for dj in -1..=1 {
                let (ci, cj) = (ia.wrapping_add(di), ib.wrapping_add(dj));
                let (dx, dy) = (a - ci as f32 - unit(ci, cj, self.salt), b - cj as f32 - unit(ci, cj, self.salt ^ 12));
                let d = dx * dx + dy * dy;
                if d < first {
                    (second, first, away) = (first, d, [dx, dy]);
                } else if d < second {
                    second = d;
                }
            }
        }
        let crease = step(0.02, 0.30, second.sqrt() - first.sqrt());
        let bend = 0.55 * self.relief;
        let fine = over(p * 9.0, q * 9.0, self.salt ^ 13);
        Skin {
            colour: times(
                self.warp,
                (0.94 + 0.06 * crease + 0.05 * fine) * (1.0 + 0.08 * self.slub * over(p * 0.3, q * 0.3, self.salt ^ 14)),
            ),
            slope: [-away[0] * bend + 0.05 * fine, -away[1] * bend - 0.05 * fine],
            open: 0.62 + 0.38 * crease,
            gloss: 0.16,
        }
    }
}
