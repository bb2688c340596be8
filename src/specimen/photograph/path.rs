//! The line a seam follows: straight, or an arc of a circle; places along and across it.

/// A seam's middle line through the origin of the plane, along x there.
#[derive(Clone, Copy)]
pub(super) struct Path {
    /// Radius in mm, positive where the ends bend towards positive y.
    pub radius: Option<f64>,
}

impl Path {
    /// The point of the plane `s` mm along the middle line and `v` mm across it.
    pub(super) fn point(self, s: f64, v: f64) -> [f64; 2] {
        match self.radius {
            None => [s, v],
            Some(radius) => {
                let turn = s / radius.abs();
                [radius.signum() * (radius - v) * turn.sin(), radius - (radius - v) * turn.cos()]
            }
        }
    }

    /// The way back of [`Path::point`].
    pub(super) fn place(self, x: f64, y: f64) -> [f64; 2] {
        match self.radius {
            None => [x, y],
            Some(radius) => {
                let sign = radius.signum();
                [radius.abs() * x.atan2(sign * (radius - y)), radius - sign * x.hypot(radius - y)]
            }
        }
    }

    /// Direction of the seam at a place, as cosine and sine against x.
    pub(super) fn heading(self, s: f64) -> [f32; 2] {
        match self.radius {
            None => [1.0, 0.0],
            Some(radius) => [(s / radius.abs()).cos() as f32, (radius.signum() * (s / radius.abs()).sin()) as f32],
        }
    }

    /// How many mm a row at `v` runs for each mm of the middle line.
    pub(super) fn stretch(self, v: f64) -> f64 {
        self.radius.map_or(1.0, |radius| ((radius - v) / radius).abs())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_place_on_a_line_or_an_arc_is_found_again() {
        for radius in [None, Some(90.0), Some(-120.0)] {
            let path = Path { radius };
            for (s, v) in [(0.0, 0.0), (30.0, 4.0), (-45.0, -6.0)] {
                let [x, y] = path.point(s, v);
                let [s2, v2] = path.place(x, y);
                assert!((s - s2).abs() < 1e-9 && (v - v2).abs() < 1e-9, "{radius:?} {s} {v}: {s2} {v2}");
            }
        }
    }

    #[test]
    fn steps_along_a_row_are_as_long_as_the_stretch_says() {
        let path = Path { radius: Some(80.0) };
        let (a, b) = (path.point(10.0, 5.0), path.point(10.01, 5.0));
        assert!(((b[0] - a[0]).hypot(b[1] - a[1]) / 0.01 - path.stretch(5.0)).abs() < 1e-6);
    }
}
