//! A strip of cloth along a line, resampled to a grid of millimetres.

use crate::{Plane, Point, Raster};

/// A line on the cloth in millimetres, with places at even steps along it and the direction across at each.
#[derive(Clone, Debug, Default)]
pub(super) struct Path {
    /// Places along the line.
    pub(super) places: Vec<Point>,
    /// Unit vectors across it, at each place.
    pub(super) across: Vec<Point>,
}

impl Path {
    /// The straight line between two places, with a place every `step` millimetres.
    pub(super) fn straight(from: Point, to: Point, step: f64) -> Path {
        let (dx, dy) = (to.x - from.x, to.y - from.y);
        let length = dx.hypot(dy);
        let (dx, dy) = (dx / length, dy / length);
        let places = (0..=(length / step) as usize)
            .map(|n| n as f64 * step)
            .map(|along| Point { x: from.x + along * dx, y: from.y + along * dy })
            .collect::<Vec<_>>();
        let across = vec![Point { x: -dy, y: dx }; places.len()];
        Path { places, across }
    }

    /// This line moved across by an offset at each place, with places every `step` millimetres along the moved line.
    pub(super) fn moved(&self, offsets: &[f32], step: f64) -> Path {
        let corners: Vec<Point> = self
            .places
            .iter()
            .zip(&self.across)
            .zip(offsets)
            .map(|((at, across), by)| Point { x: at.x + f64::from(*by) * across.x, y: at.y + f64::from(*by) * across.y })
            .collect();
        let mut path = Path::default();
        let (mut walked, mut next) = (0.0, 0.0);
        for pair in corners.windows(2) {
            let (dx, dy) = (pair[1].x - pair[0].x, pair[1].y - pair[0].y);
            let length = dx.hypot(dy);
            while length > 0.0 && next <= walked + length {
                let share = (next - walked) / length;
                path.places.push(Point { x: pair[0].x + share * dx, y: pair[0].y + share * dy });
                path.across.push(Point { x: -dy / length, y: dx / length });
                next += step;
            }
            walked += length;
        }
        path
    }

    /// The place so many steps along (whole and part), moved across by so many millimetres.
    pub(super) fn at(&self, steps: f64, across: f64) -> Point {
        let last = self.places.len().saturating_sub(2);
        let n = (steps.max(0.0) as usize).min(last);
        let share = steps - n as f64;
        let (a, b, normal) = (self.places[n], self.places[(n + 1).min(self.places.len() - 1)], self.across[n]);
        Point { x: a.x + share * (b.x - a.x) + across * normal.x, y: a.y + share * (b.y - a.y) + across * normal.y }
    }
}

/// Colours (red, green, blue, 0 to 255) on a grid along and across a line. A row runs along the line, at one distance from it.
pub(super) struct Strip {
    /// Samples along the line.
    pub(super) columns: usize,
    /// Samples across it.
    pub(super) rows: usize,
    /// Millimetres from the line to the first row; rows lie `1 / per_mm` apart.
    pub(super) first: f32,
    /// Rows in a millimetre.
    pub(super) per_mm: f32,
    /// Row by row.
    pub(super) colours: Vec<[f32; 3]>,
}

impl Strip {
    /// Reads the strip between the distances `first` and `last` from the path. `finer` is how many pixels of the picture lie in a step: where
    /// they are many, each sample is the mean of a few of them.
    pub(super) fn read(picture: &Raster, plane: &Plane, path: &Path, first: f32, last: f32, per_mm: f32) -> Strip {
        let rows = ((last - first) * per_mm) as usize + 1;
        let columns = path.places.len();
        let mut colours = vec![[0.0; 3]; rows * columns];
        for column in 0..columns {
            let seen = |ahead: f64, across: f64| plane.in_picture(path.at(column as f64 + ahead, across));
            let (here, ahead, aside) = (seen(0.0, 0.0), seen(1.0, 0.0), seen(0.0, 1.0 / f64::from(per_mm)));
            let along = Point { x: ahead.x - here.x, y: ahead.y - here.y };
            let across = Point { x: aside.x - here.x, y: aside.y - here.y };
            let finer = along.x.hypot(along.y).min(across.x.hypot(across.y));
            let parts = (finer.round() as usize).clamp(1, 4);
            let (at, normal) = (path.places[column], path.across[column]);
            for row in 0..rows {
                let v = f64::from(first + row as f32 / per_mm);
                let centre = plane.in_picture(Point { x: at.x + v * normal.x, y: at.y + v * normal.y });
                colours[row * columns + column] =
                    if parts == 1 { picture.colour(centre) } else { mean(picture, centre, along, across, parts) };
            }
        }
        Strip { columns, rows, first, per_mm, colours }
    }

    /// This strip bent, so that what bows by `bow` mm in the middle lies level; a row beyond its border is its last.
    pub(super) fn bent(&self, bow: f32) -> Strip {
        let mut colours = vec![[0.0; 3]; self.rows * self.columns];
        for column in 0..self.columns {
            let by = (bowed(column, self.columns, bow) * self.per_mm).round() as isize;
            for row in 0..self.rows {
                let source = usize::try_from(row as isize + by).unwrap_or(0).min(self.rows - 1);
                colours[row * self.columns + column] = self.colours[source * self.columns + column];
            }
        }
        Strip { colours, ..*self }
    }

    /// The colours of one row.
    pub(super) fn row(&self, row: usize) -> &[[f32; 3]] {
        &self.colours[row * self.columns..(row + 1) * self.columns]
    }

    /// Rows whose distance from the line lies between two values.
    pub(super) fn rows_between(&self, from: f32, to: f32) -> std::ops::Range<usize> {
        let place = |v: f32| (((v - self.first) * self.per_mm).round().max(0.0) as usize).min(self.rows);
        place(from)..(place(to) + 1).min(self.rows)
    }

    /// Mean colour between two distances, for each column; empty when no row lies there.
    pub(super) fn band(&self, from: f32, to: f32) -> Vec<[f32; 3]> {
        let rows = self.rows_between(from, to);
        if rows.is_empty() {
            return Vec::new();
        }
        let share = 1.0 / rows.len() as f32;
        let mut mean = vec![[0.0; 3]; self.columns];
        for row in rows {
            for (sum, colour) in mean.iter_mut().zip(self.row(row)) {
                for (sum, value) in sum.iter_mut().zip(colour) {
                    *sum += value * share;
                }
            }
        }
        mean
    }
}

/// How far a line that bows by `bow` in the middle lies off the straight one at a column.
pub(super) fn bowed(column: usize, columns: usize, bow: f32) -> f32 {
    let q = column as f32 / columns.max(2) as f32;
    4.0 * q * (1.0 - q) * bow
}

/// Mean of a few pixels round a place, in a cell spanned by the two steps.
fn mean(picture: &Raster, centre: Point, along: Point, across: Point, parts: usize) -> [f32; 3] {
    let mut sum = [0.0; 3];
    for one in 0..parts {
        let u = (one as f64 + 0.5) / parts as f64 - 0.5;
        for other in 0..parts {
            let v = (other as f64 + 0.5) / parts as f64 - 0.5;
            let (x, y) = (centre.x + u * along.x + v * across.x, centre.y + u * along.y + v * across.y);
            let pixel = picture.pixel((x + 0.5).floor() as isize, (y + 0.5).floor() as isize);
            for (sum, value) in sum.iter_mut().zip(pixel) {
                *sum += f32::from(value);
            }
        }
    }
    sum.map(|sum| sum / (parts * parts) as f32)
}
