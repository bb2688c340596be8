//! Linear colour.

/// Red, green and blue of linear light, 0 to 1 between black and a white sheet.
pub(super) type Rgb = [f32; 3];

/// Linear light from a display value of 0 to 255 (the transfer curve of IEC 61966-2-1).
pub(super) fn display(red: u8, green: u8, blue: u8) -> Rgb {
    [red, green, blue].map(|value| {
        let v = f32::from(value) / 255.0;
        if v <= 0.040_45 { v / 12.92 } else { ((v + 0.055) / 1.055).powf(2.4) }
    })
}

/// The display value of 0 to 1 of linear light; the way back of [`display`].
pub(super) fn shown(linear: f32) -> f32 {
    let v = linear.clamp(0.0, 1.0);
    if v <= 0.003_130_8 { 12.92 * v } else { 1.055 * v.powf(1.0 / 2.4) - 0.055 }
}

/// `share` of the way from one colour to another.
pub(super) fn mix(one: Rgb, other: Rgb, share: f32) -> Rgb {
    [0, 1, 2].map(|k| one[k] + (other[k] - one[k]) * share)
}

/// A colour, brighter or darker.
pub(super) fn times(colour: Rgb, by: f32) -> Rgb {
    colour.map(|v| v * by)
}

/// How far apart two colours look: distance of the display values, 0 to about 1.7.
pub(super) fn apart(one: Rgb, other: Rgb) -> f32 {
    (0..3).map(|k| (shown(one[k]) - shown(other[k])).powi(2)).sum::<f32>().sqrt()
}
