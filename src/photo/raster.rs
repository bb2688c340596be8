//! A picture as the browser decodes it.

use crate::Point;

/// Pixels of a picture, four bytes each (red, green, blue, opacity; sRGB, not premultiplied), row by row from the top. Borrowed, never copied whole.
#[derive(Clone, Copy, Debug)]
pub struct Raster<'a> {
    width: usize,
    height: usize,
    rgba: &'a [u8],
}

impl<'a> Raster<'a> {
    /// None when the bytes are not `width * height * 4`, or either side is 0.
    pub fn new(width: usize, height: usize, rgba: &'a [u8]) -> Option<Raster<'a>> {
        let bytes = width.checked_mul(height)?.checked_mul(4)?;
        (bytes > 0 && bytes == rgba.len()).then_some(Raster { width, height, rgba })
    }

    /// Width in pixels.
    pub fn width(&self) -> usize {
        self.width
    }

    /// Height in pixels.
    pub fn height(&self) -> usize {
        self.height
    }

    /// Red, green and blue (0 to 255) of the pixel at column `x`, row `y`; the nearest pixel of the picture when outside it.
    pub fn pixel(&self, x: isize, y: isize) -> [u8; 3] {
        let clamped = |at: isize, size: usize| usize::try_from(at).unwrap_or(0).min(size - 1);
        let at = 4 * (clamped(y, self.height) * self.width + clamped(x, self.width));
        [self.rgba[at], self.rgba[at + 1], self.rgba[at + 2]]
    }

    /// Red, green and blue (0 to 255) at a place between the centres of pixels, bilinear; a place that is not finite counts as the corner.
    pub fn colour(&self, at: Point) -> [f32; 3] {
        let (column, row) = (at.x.floor(), at.y.floor());
        let (right, down) = ((at.x - column) as f32, (at.y - row) as f32);
        let (x, y) = (column as isize, row as isize);
        let [a, b, c, d] =
            [(x, y), (x.saturating_add(1), y), (x, y.saturating_add(1)), (x.saturating_add(1), y.saturating_add(1))]
                .map(|(x, y)| self.pixel(x, y).map(f32::from));
        if !(right + down).is_finite() {
            return a;
        }
        std::array::from_fn(|n| {
            (a[n] * (1.0 - right) + b[n] * right) * (1.0 - down) + (c[n] * (1.0 - right) + d[n] * right) * down
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bytes_that_do_not_fit_the_size_are_no_picture() {
        assert!(Raster::new(2, 2, &[0; 16]).is_some());
        assert!(Raster::new(2, 2, &[0; 15]).is_none());
        assert!(Raster::new(0, 2, &[]).is_none());
        assert!(Raster::new(usize::MAX, 2, &[0; 16]).is_none());
    }

    #[test]
    fn outside_the_picture_its_border_goes_on() {
        let bytes: Vec<u8> = (0..16).collect();
        let raster = Raster::new(2, 2, &bytes).expect("a picture");
        assert_eq!(raster.pixel(-5, -5), [0, 1, 2]);
        assert_eq!(raster.pixel(9, 9), [12, 13, 14]);
        assert_eq!(raster.colour(Point { x: 0.5, y: 0.5 }), [6.0, 7.0, 8.0]);
        assert_eq!(
            raster.colour(Point { x: f64::NAN, y: f64::INFINITY }),
            raster.colour(Point { x: f64::NAN, y: f64::INFINITY })
        );
    }
}
