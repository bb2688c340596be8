//! A pinhole camera above the plane of the cloth: perspective there and back.

/// A pinhole camera. The cloth is the plane z = 0 in millimetres, x to the right, y down the picture, z towards the camera.
pub(super) struct Camera {
    /// Focal length in pixels.
    focal: f64,
    /// Distance from the point looked at, mm.
    distance: f64,
    turn: [[f64; 3]; 3],
    look: [f64; 2],
    middle: [f64; 2],
}

impl Camera {
    /// A camera `distance` mm from the point `look`, leaning by `tilt` about the axis at `axis` in the plane, turned by `roll` (radians).
    pub(super) fn new(focal: f64, distance: f64, tilt: f64, axis: f64, roll: f64, look: [f64; 2], middle: [f64; 2]) -> Camera {
        // Rodrigues' rotation about an axis in the plane, then about the line of sight.
        let (ax, ay, c, s) = (axis.cos(), axis.sin(), tilt.cos(), tilt.sin());
        let lean = [
            [c + ax * ax * (1.0 - c), ax * ay * (1.0 - c), ay * s],
            [ax * ay * (1.0 - c), c + ay * ay * (1.0 - c), -ax * s],
            [-ay * s, ax * s, c],
        ];
        let (c, s) = (roll.cos(), roll.sin());
        let turn = [0, 1, 2].map(|row: usize| {
            [0, 1, 2].map(|column: usize| match row {
                0 => c * lean[0][column] - s * lean[1][column],
                1 => s * lean[0][column] + c * lean[1][column],
                _ => lean[2][column],
            })
        });
        Camera { focal, distance, turn, look, middle }
    }

    /// The pixel at which a point of space is seen.
    pub(super) fn sees(&self, x: f64, y: f64, z: f64) -> [f64; 2] {
        let p = [x - self.look[0], y - self.look[1], z];
        let q = self.turn.map(|row| row[0] * p[0] + row[1] * p[1] + row[2] * p[2]);
        let reach = self.focal / (self.distance - q[2]).max(1.0);
        [self.middle[0] + q[0] * reach, self.middle[1] + q[1] * reach]
    }

    /// The point of the plane at height `z` seen at a pixel, and its depth before the camera in mm.
    pub(super) fn on_plane(&self, u: f64, v: f64, z: f64) -> ([f64; 2], f64) {
        let ray = [(u - self.middle[0]) / self.focal, (v - self.middle[1]) / self.focal, -1.0];
        // The transpose of a rotation is its inverse.
        let back = |v: [f64; 3], k: usize| self.turn[0][k] * v[0] + self.turn[1][k] * v[1] + self.turn[2][k] * v[2];
        let eye = [0.0, 0.0, self.distance];
        let depth = (z - back(eye, 2)) / back(ray, 2);
        let at = |k: usize| back(eye, k) + depth * back(ray, k) + self.look[k];
        ([at(0), at(1)], depth)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_point_seen_is_found_again_on_its_plane() {
        let camera = Camera::new(1900.0, 140.0, 0.3, 0.8, -0.2, [3.0, 4.0], [640.0, 480.0]);
        for (x, y, z) in [(0.0, 0.0, 0.0), (30.0, -20.0, 0.0), (-25.0, 18.0, 2.5)] {
            let [u, v] = camera.sees(x, y, z);
            let ([px, py], depth) = camera.on_plane(u, v, z);
            assert!((px - x).abs() < 1e-9 && (py - y).abs() < 1e-9 && depth > 0.0);
        }
    }

    #[test]
    fn a_camera_held_flat_shows_one_scale_everywhere_and_a_nearer_plane_larger() {
        let camera = Camera::new(1500.0, 150.0, 0.0, 0.0, 0.0, [0.0, 0.0], [640.0, 480.0]);
        let wide = |z: f64, y: f64| camera.sees(10.0, y, z)[0] - camera.sees(0.0, y, z)[0];
        assert!((wide(0.0, -20.0) - 100.0).abs() < 1e-9 && (wide(0.0, 20.0) - 100.0).abs() < 1e-9);
        assert!((wide(2.0, 0.0) - 100.0 * 150.0 / 148.0).abs() < 1e-9);
    }
}
