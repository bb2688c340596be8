//! Numerals as strokes: each digit a few straight lines in a box six wide and ten high.

type Stroke = &'static [(f32, f32)];

const DIGITS: [&[Stroke]; 10] = [
    &[&[(1.3, 0.0), (4.7, 0.0), (6.0, 2.2), (6.0, 7.8), (4.7, 10.0), (1.3, 10.0), (0.0, 7.8), (0.0, 2.2), (1.3, 0.0)]],
    &[&[(1.0, 2.2), (3.4, 0.0), (3.4, 10.0)]],
    &[&[(0.0, 2.2), (1.2, 0.2), (3.0, 0.0), (5.0, 0.4), (6.0, 2.2), (5.6, 4.0), (0.0, 10.0), (6.0, 10.0)]],
    &[
        &[(0.0, 1.2), (1.5, 0.0), (4.4, 0.0), (5.8, 1.4), (5.8, 3.4), (4.4, 4.8), (2.4, 4.8)],
        &[(4.4, 4.8), (6.0, 6.2), (6.0, 8.4), (4.5, 10.0), (1.5, 10.0), (0.0, 8.8)],
    ],
    &[&[(4.6, 10.0), (4.6, 0.0), (0.0, 6.9), (6.0, 6.9)]],
    &[&[(5.6, 0.0), (0.9, 0.0), (0.5, 4.6), (3.4, 3.9), (5.4, 4.8), (6.0, 7.0), (5.0, 9.3), (3.0, 10.0), (0.9, 9.7), (0.0, 8.9)]],
    &[&[
        (5.2, 0.2),
        (2.5, 1.3),
        (0.7, 4.0),
        (0.0, 7.0),
        (1.0, 9.4),
        (3.0, 10.0),
        (5.0, 9.4),
        (6.0, 7.2),
        (5.0, 5.0),
        (3.0, 4.4),
        (1.0, 5.1),
        (0.1, 7.0),
    ]],
    &[&[(0.0, 0.0), (6.0, 0.0), (2.2, 10.0)]],
    &[
        &[(3.0, 4.7), (1.0, 3.8), (0.5, 2.0), (1.5, 0.3), (3.0, 0.0), (4.5, 0.3), (5.5, 2.0), (5.0, 3.8), (3.0, 4.7)],
        &[(3.0, 4.7), (0.8, 5.8), (0.0, 7.6), (1.0, 9.5), (3.0, 10.0), (5.0, 9.5), (6.0, 7.6), (5.2, 5.8), (3.0, 4.7)],
    ],
    &[&[
        (0.8, 9.8),
        (3.5, 8.7),
        (5.3, 6.0),
        (6.0, 3.0),
        (5.0, 0.6),
        (3.0, 0.0),
        (1.0, 0.6),
        (0.0, 2.8),
        (1.0, 5.0),
        (3.0, 5.6),
        (5.0, 4.9),
        (5.9, 3.0),
    ]],
];

/// Whether a place lies on the strokes of a number that is `high` mm tall with strokes `bold` wide (as a share of the height). The number
/// is centred on x = 0 and stands from y = 0 down to `high`.
pub(super) fn inked(number: i32, x: f32, y: f32, high: f32, bold: f32) -> bool {
    let scale = high / 10.0;
    let (x, y, half) = (x / scale, y / scale, bold * 5.0);
    if !(-half..=10.0 + half).contains(&y) || number < 0 {
        return false;
    }
    let text = number.to_string();
    let wide = text.len() as f32 * 8.0 - 2.0;
    if x.abs() > wide / 2.0 + half {
        return false;
    }
    text.bytes().enumerate().any(|(place, sign)| {
        let left = place as f32 * 8.0 - wide / 2.0;
        let strokes = DIGITS.get(usize::from(sign.wrapping_sub(b'0'))).copied().unwrap_or_default();
        strokes.iter().any(|stroke| {
            stroke.windows(2).any(|ends| {
                let ([(ax, ay), (bx, by)], px) = ([ends[0], ends[1]], x - left);
                let (dx, dy) = (bx - ax, by - ay);
                let t = (((px - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)).clamp(0.0, 1.0);
                (px - ax - t * dx).powi(2) + (y - ay - t * dy).powi(2) <= half * half
            })
        })
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_one_has_a_stem_and_a_nought_a_hole() {
        assert!(inked(1, 0.05, 2.5, 5.0, 0.12));
        assert!(!inked(0, 0.0, 2.5, 5.0, 0.12));
        assert!(inked(0, -1.5, 2.5, 5.0, 0.12));
        assert!(!inked(-3, 0.0, 2.5, 5.0, 0.12));
    }
}
