//! Light on cloth, thread and ruler, gathered into pixels.

use std::ops::Range;

use super::cloth::Skin;
use super::colour::{Rgb, mix, times};
use super::lens::Planes;
use super::noise::{along, over, step};
use super::scene::{Light, Scene};
use super::{HIGH, WIDE};

/// Where a pixel is looked at: four places, no two in one row or column.
pub(super) const PLACES: [(f64, f64); 4] = [(0.125, 0.625), (0.375, 0.125), (0.625, 0.875), (0.875, 0.375)];

impl Light {
    /// Share of light that a slope sends back, 1 for flat cloth lying open.
    pub(super) fn shade(&self, slope: [f32; 2], open: f32) -> f32 {
        let lamp = self.lamp;
        let size = (1.0 + slope[0] * slope[0] + slope[1] * slope[1]).sqrt();
        let faced = ((lamp[2] - slope[0] * lamp[0] - slope[1] * lamp[1]) / size).max(0.0) / lamp[2].max(0.35);
        self.ambient * open + (1.0 - self.ambient) * faced.min(1.9)
    }

    /// Light mirrored by a glossy slope towards a camera straight above.
    pub(super) fn mirrored(&self, slope: [f32; 2], gloss: f32) -> f32 {
        let lamp = self.lamp;
        // Half way between lamp and a camera straight above.
        let half = [lamp[0], lamp[1], lamp[2] + 1.0];
        let size = (half[0] * half[0] + half[1] * half[1] + half[2] * half[2]).sqrt();
        let normal = (1.0 + slope[0] * slope[0] + slope[1] * slope[1]).sqrt();
        let along = ((half[2] - slope[0] * half[0] - slope[1] * half[1]) / (size * normal)).max(0.0);
        0.55 * gloss * (1.0 - self.ambient) * along.powi(16)
    }
}

impl Scene {
    /// The photograph's RGBA bytes.
    pub(super) fn pixels(&self) -> Vec<u8> {
        self.part(0..HIGH)
    }

    /// The RGBA bytes of some rows, as a picture of their own.
    pub(super) fn part(&self, rows: Range<usize>) -> Vec<u8> {
        let top = rows.start;
        let mut planes = Planes::new(WIDE, rows.len());
        for y in rows {
            for x in 0..WIDE {
                let mut sum = [0.0_f32; 3];
                for (dx, dy) in PLACES {
                    let seen = self.light_at(x as f64 + dx, y as f64 + dy);
                    (0..3).for_each(|k| sum[k] += seen[k]);
                }
                (0..3).for_each(|k| planes.plane[k][(y - top) * WIDE + x] = 0.25 * sum[k]);
            }
        }
        let deepest = (0.5 * self.width_mm * self.truth.tilt_deg.to_radians().sin()).max(1.0);
        self.lens.develop(planes, |x, y| {
            let (_, depth) = self.camera.on_plane(x as f64, (y + top) as f64, 0.0);
            ((depth - self.distance).abs() / deepest).min(1.0) as f32
        })
    }

    /// Linear light at a place of the picture, before the lens.
    pub(super) fn light_at(&self, u: f64, v: f64) -> Rgb {
        let object = &self.object;
        let (top, _) = self.camera.on_plane(u, v, object.height);
        let place = object.local(top[0], top[1]);
        let outside = object.outside(place);
        let below = || {
            let (ground, _) = self.camera.on_plane(u, v, 0.0);
            self.cloth_light(ground)
        };
        let lit = if outside <= 0.0 {
            let paint = object.paint(place);
            // A flat thing mirrors lamp or window as a broad streak.
            let streak = (1.0
                - ((place[0] as f32 * 0.9 + place[1] as f32 * 0.3) / self.width_mm as f32 * 2.2 - 1.0 - self.light.slope[0])
                    .abs())
            .max(0.0);
            let face =
                times(paint.colour, self.light.shade([0.0, 0.0], 1.0)).map(|value| value + 0.5 * paint.gloss * streak * streak);
            let face = times(face, self.fall(top[0] as f32, top[1] as f32));
            if paint.cover < 1.0 { mix(below(), face, paint.cover) } else { face }
        } else if outside < 2.5 && object.height > 0.15 && self.side(u, v) {
            let edge = object.paint([place[0].clamp(0.0, object.long), place[1].clamp(0.05, object.wide - 0.05)]);
            times(mix(edge.colour, below(), 1.0 - edge.cover), 0.55 * self.fall(top[0] as f32, top[1] as f32))
        } else {
            below()
        };
        let (dx, dy) = ((u / WIDE as f64 - 0.5) as f32, (v / HIGH as f64 - 0.5) as f32);
        times(lit, 1.0 - self.light.vignette * 2.0 * (dx * dx + dy * dy))
    }

    /// Whether the wall of ruler or card is seen at a pixel.
    fn side(&self, u: f64, v: f64) -> bool {
        [0.0, 0.33, 0.67].iter().any(|share| {
            let (at, _) = self.camera.on_plane(u, v, share * self.object.height);
            self.object.outside(self.object.local(at[0], at[1])) < 0.0
        })
    }

    /// Brightness of the light that falls on a place: its slope over the picture and the hand's shadow.
    fn fall(&self, x: f32, y: f32) -> f32 {
        let light = &self.light;
        let wide = self.width_mm as f32;
        let mut bright = (1.0 + (light.slope[0] * x + light.slope[1] * y) / wide).max(0.2);
        if let Some([way, place, soft, deep]) = light.hand {
            let (s, c) = way.sin_cos();
            let bulge = 0.06 * wide * along((c * y - s * x) / wide * 5.0, self.salt);
            bright *= 1.0 - deep * (1.0 - step(-soft, soft, c * x + s * y - place + bulge));
        }
        bright
    }

    fn cloth_light(&self, [x, y]: [f64; 2]) -> Rgb {
        let [s, v] = self.path.place(x, y);
        let (sf, vf) = (s as f32, v as f32);
        let heading = self.path.heading(s);
        // A slope along and across the seam, turned to the plane.
        let turned = |[a, b]: [f32; 2]| [heading[0] * a - heading[1] * b, heading[1] * a + heading[0] * b];
        let mut skin = self.ground(x as f32, y as f32, sf, vf, &turned);
        let (mut shadow, mut bead) = (1.0, None);
        let (lowest, highest) =
            self.rows.iter().fold((f64::MAX, f64::MIN), |(low, high), row| (low.min(row.across), high.max(row.across)));
        if v > lowest - 2.5 && v < highest + 2.5 {
            // The thread's shadow: is there thread towards the lamp, a little way off?
            let lift = 0.42 * self.thread.wide / self.light.lamp[2].max(0.4);
            let toward = [
                heading[0] * self.light.lamp[0] + heading[1] * self.light.lamp[1],
                heading[0] * self.light.lamp[1] - heading[1] * self.light.lamp[0],
            ];
            for row in &self.rows {
                let hit = row.at(sf, vf, &self.thread);
                if let Some(found) = hit {
                    bead = Some(found);
                    break;
                }
                let off = vf - row.across as f32;
                if off.abs() < 2.0 {
                    for share in [0.5, 1.0] {
                        if row
                            .at(sf + lift * share * toward[0], vf + lift * share * toward[1], &self.thread)
                            .is_some_and(|b| b.gloss > 0.0)
                        {
                            shadow *= 1.0 - 0.28 * (1.0 - self.light.ambient * 0.6);
                        }
                    }
                }
            }
        }
        let mut lit = times(skin.colour, self.light.shade(skin.slope, skin.open) * shadow);
        lit = lit.map(|value| value + self.light.mirrored(skin.slope, skin.gloss));
        if let Some(bead) = bead {
            let slope = turned(bead.slope);
            if bead.cover < 0.999 {
                // A hole: the cloth dips towards it.
                skin.slope = [skin.slope[0] + slope[0], skin.slope[1] + slope[1]];
                let dipped = times(skin.colour, self.light.shade(skin.slope, skin.open * bead.open));
                lit = mix(dipped, bead.colour, bead.cover);
            } else {
                let bright = self.light.mirrored(slope, bead.gloss);
                lit = times(bead.colour, self.light.shade(slope, bead.open)).map(|value| value + bright);
            }
        }
        let lamp = self.light.lamp;
        let toward = [f64::from(lamp[0] / lamp[2].max(0.3)), f64::from(lamp[1] / lamp[2].max(0.3))];
        let under = 1.0 - (1.0 - self.light.ambient * 0.5) * (1.0 - self.object.lets_through(x, y, toward));
        times(lit, self.fall(x as f32, y as f32) * under)
    }

    /// The cloth with folds, ripples and puckers.
    fn ground(&self, x: f32, y: f32, s: f32, v: f32, turned: &impl Fn([f32; 2]) -> [f32; 2]) -> Skin {
        let mut slope = [0.0_f32, 0.0];
        let mut open = 1.0;
        let mut skin = match &self.fold {
            Some(fold) => {
                let wave = 0.12 * along(s * 0.11, self.salt ^ 21);
                // Positive on the lower layer.
                let beyond = fold.side * (v - fold.across) - wave;
                if beyond > 0.0 {
                    open *= 0.62 + 0.38 * step(0.0, 1.3, beyond);
                    // The upper layer's edge keeps the lamp off.
                    let lamp_side =
                        -fold.side * (turned([0.0, 1.0])[0] * self.light.lamp[0] + turned([0.0, 1.0])[1] * self.light.lamp[1]);
                    let dark = 0.55 * lamp_side.max(0.0) * (1.0 - step(0.0, 0.9, beyond));
                    let mut lower = fold.lower.at(x, y);
                    lower.colour = times(lower.colour, 1.0 - dark);
                    lower
                } else {
                    let near = (-beyond / 0.7).min(1.0);
                    slope[1] -= fold.side * 0.9 * (1.0 - near).powi(2);
                    let mut upper = self.cloth.at(x, y);
                    if fold.roping > 0.0 {
                        let reach = step(-4.5, -1.0, beyond);
                        let wave = (std::f32::consts::TAU
                            * ((s + 0.7 * v) / fold.ripple + 0.35 * along(s * 0.12, self.salt ^ 22)))
                        .sin();
                        slope[0] += fold.roping * reach * wave;
                        upper.colour = times(upper.colour, 1.0 + 0.5 * fold.roping * reach * wave);
                    }
                    upper
                }
            }
            None => self.cloth.at(x, y),
        };
        if self.pucker > 0.01 || self.pull > 0.01 {
            for row in &self.rows {
                let off = v - row.across as f32;
                if off.abs() < 14.0 {
                    let near = (-off.abs() / 4.5).exp();
                    slope[0] += self.pucker * near * over(s * 0.33, v * 0.10, self.salt ^ 23);
                    // Tension draws the cloth down along the row.
                    let pulled = off / 0.8;
                    slope[1] += self.pull * pulled * (-0.5 * pulled * pulled).exp();
                }
            }
        }
        // Cloth never lies flat.
        slope[0] += 0.05 * over(x * 0.045, y * 0.06, self.salt ^ 24);
        let extra = turned(slope);
        skin.slope = [skin.slope[0] + extra[0], skin.slope[1] + extra[1]];
        skin.open *= open;
        skin
    }
}
