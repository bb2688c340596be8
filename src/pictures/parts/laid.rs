//! Where marks and bars lie on a picture, and how the picture lies on the screen. Plain geometry: places are `[right, down]`.

/// A place on a picture in its pixels, or on the screen in CSS pixels from the picture's frame.
pub type Place = [f64; 2];

/// How a picture lies in its frame on the screen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct View {
    /// CSS pixels to a pixel of the picture.
    pub times: f64,
    /// Where the picture's upper left corner lies, in CSS pixels from that of the frame.
    pub corner: Place,
}

/// How often the picture can be made larger than when it fills the frame.
const CLOSEST: f64 = 8.0;

impl View {
    /// The picture's middle filling the frame.
    pub fn filling(frame: Place, picture: Place) -> View {
        let times = (frame[0] / picture[0]).max(frame[1] / picture[1]);
        View { times, corner: [0, 1].map(|side| (frame[side] - picture[side] * times) / 2.0) }
    }

    /// The same within reason: from the whole picture in the frame up to eight times what fills it, without leaving it bare.
    pub fn within(self, frame: Place, picture: Place) -> View {
        let fits = [frame[0] / picture[0], frame[1] / picture[1]];
        let times = self.times.clamp(fits[0].min(fits[1]), fits[0].max(fits[1]) * CLOSEST);
        let corner = [0, 1].map(|side| {
            let spare = frame[side] - picture[side] * times;
            if spare >= 0.0 { spare / 2.0 } else { self.corner[side].clamp(spare, 0.0) }
        });
        View { times, corner }
    }

    /// So many times as large, with the place of the screen that stays where it is.
    pub fn closer(self, by: f64, still: Place) -> View {
        View { times: self.times * by, corner: [0, 1].map(|side| still[side] - (still[side] - self.corner[side]) * by) }
    }

    /// Moved on the screen.
    pub fn moved(self, by: Place) -> View {
        View { corner: sum(self.corner, by), ..self }
    }

    /// Where a place of the picture is on the screen.
    pub fn shown(self, place: Place) -> Place {
        [0, 1].map(|side| place[side] * self.times + self.corner[side])
    }

    /// Which place of the picture is there on the screen.
    pub fn at(self, shown: Place) -> Place {
        [0, 1].map(|side| (shown[side] - self.corner[side]) / self.times)
    }
}

/// Two marks on a scale and a comb of bars on a seam beside it, in pixels of the picture.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Laid {
    /// The two marks.
    pub marks: [Place; 2],
    /// The middle of the first bar. The others follow it along the line from the first mark to the second.
    pub first: Place,
    /// From bar to bar.
    pub pitch: f64,
}

/// A comb never has more bars than this: beyond it none can be seen.
const MOST_BARS: f64 = 300.0;

impl Laid {
    /// Marks across the lower part of a frame and the comb above them, its pitch that share of their distance.
    pub fn begun(frame: Place, view: View, share: f64) -> Laid {
        let at = |right: f64, down: f64| view.at([frame[0] * right, frame[1] * down]);
        let marks = [at(0.2, 0.58), at(0.8, 0.58)];
        Laid { marks, first: at(0.2, 0.34), pitch: distance(marks[0], marks[1]) * share }
    }

    /// From mark to mark.
    pub fn length(&self) -> f64 {
        distance(self.marks[0], self.marks[1])
    }

    /// The way from the first mark to the second, of length 1.
    pub fn way(&self) -> Place {
        let length = self.length();
        if length > 0.0 { [0, 1].map(|side| (self.marks[1][side] - self.marks[0][side]) / length) } else { [1.0, 0.0] }
    }

    /// How far along that way a place is from the first bar.
    pub fn along(&self, place: Place) -> f64 {
        let way = self.way();
        (place[0] - self.first[0]) * way[0] + (place[1] - self.first[1]) * way[1]
    }

    /// How far beside the line of the comb a place is.
    pub fn beside(&self, place: Place) -> f64 {
        let way = self.way();
        (place[0] - self.first[0]) * -way[1] + (place[1] - self.first[1]) * way[0]
    }

    /// How many bars there are from the first to where the second mark is.
    pub fn bars(&self) -> f64 {
        ((self.along(self.marks[1]) / self.pitch + 1e-9).floor() + 1.0).clamp(1.0, MOST_BARS)
    }

    /// The pitch as a share of the distance of the marks.
    pub fn share(&self) -> f64 {
        self.pitch / self.length()
    }

    /// With a mark moved by so much.
    pub fn with_mark(self, mark: usize, by: Place) -> Laid {
        let mut marks = self.marks;
        if let Some(mark) = marks.get_mut(mark) {
            *mark = sum(*mark, by);
        }
        Laid { marks, ..self }
    }

    /// With the whole comb moved by so much.
    pub fn with_comb(self, by: Place) -> Laid {
        Laid { first: sum(self.first, by), ..self }
    }

    /// With that pitch, as a share of the distance of the marks, within the limits.
    pub fn with_share(self, share: f64, limits: [f64; 2]) -> Laid {
        Laid { pitch: self.length() * share.clamp(limits[0], limits[1]), ..self }
    }
}

/// Two steps, one after the other.
pub fn sum(one: Place, other: Place) -> Place {
    [one[0] + other[0], one[1] + other[1]]
}

/// The step from the first place to the second.
pub fn step(from: Place, to: Place) -> Place {
    [to[0] - from[0], to[1] - from[1]]
}

/// How far two places are apart.
pub fn distance(one: Place, other: Place) -> f64 {
    (one[0] - other[0]).hypot(one[1] - other[1])
}

#[cfg(test)]
mod tests {
    use super::*;

    const FRAME: Place = [360.0, 400.0];
    const PICTURE: Place = [1080.0, 1920.0];

    #[test]
    fn a_picture_that_fills_the_frame_leaves_no_bare_edge() {
        let view = View::filling(FRAME, PICTURE);
        assert!((view.times - 1.0 / 3.0).abs() < 1e-12);
        assert_eq!(view.corner, [0.0, -120.0]);
        assert_eq!(view.within(FRAME, PICTURE), view);
    }

    #[test]
    fn what_is_shown_somewhere_is_at_that_place() {
        let view = View::filling(FRAME, PICTURE).closer(2.5, [100.0, 50.0]);
        let there = view.at(view.shown([700.0, 300.0]));
        assert!(distance(there, [700.0, 300.0]) < 1e-9);
    }

    #[test]
    fn closer_keeps_the_place_under_the_fingers() {
        let before = View::filling(FRAME, PICTURE);
        let after = before.closer(3.0, [90.0, 220.0]);
        assert!(distance(before.at([90.0, 220.0]), after.at([90.0, 220.0])) < 1e-9);
    }

    #[test]
    fn the_view_ends_at_the_picture_and_at_eight_times() {
        let far = View { times: 0.001, corner: [900.0, 900.0] }.within(FRAME, PICTURE);
        assert!((far.times - 400.0 / 1920.0).abs() < 1e-12);
        assert!((far.corner[0] - 67.5).abs() < 1e-9 && far.corner[1].abs() < 1e-9);
        let near = View { times: 99.0, corner: [50.0, -1e9] }.within(FRAME, PICTURE);
        assert!((near.times - 8.0 / 3.0).abs() < 1e-12);
        assert_eq!(near.corner, [0.0, 400.0 - 1920.0 * 8.0 / 3.0]);
    }

    fn laid() -> Laid {
        Laid { marks: [[100.0, 500.0], [600.0, 500.0]], first: [110.0, 400.0], pitch: 35.0 }
    }

    /// From 110 to 600 there is room for 14 pitches of 35, so 15 bars, the last just there.
    #[test]
    fn bars_go_from_the_first_to_where_the_second_mark_is() {
        assert_eq!(laid().bars(), 15.0);
        assert_eq!(Laid { pitch: 35.01, ..laid() }.bars(), 14.0);
        assert!((laid().share() - 0.07).abs() < 1e-12);
    }

    #[test]
    fn a_comb_on_a_slant_counts_along_its_slant() {
        // A right angle of 300 and 400 has a long side of 500.
        let slant = Laid { marks: [[0.0, 0.0], [300.0, 400.0]], first: [0.0, 0.0], pitch: 50.0 };
        assert_eq!(slant.bars(), 11.0);
        assert!((slant.along([150.0, 200.0]) - 250.0).abs() < 1e-9 && slant.beside([150.0, 200.0]).abs() < 1e-9);
        assert!((slant.beside([-4.0, 3.0]) - 5.0).abs() < 1e-9);
    }

    #[test]
    fn moving_a_mark_leaves_the_bars_where_they_lie() {
        let moved = laid().with_mark(0, [20.0, 0.0]);
        assert_eq!((moved.first, moved.pitch), (laid().first, laid().pitch));
        assert_eq!(moved.length(), 480.0);
    }

    #[test]
    fn marks_on_one_place_do_no_harm() {
        let nowhere = Laid { marks: [[5.0, 5.0]; 2], first: [5.0, 5.0], pitch: 0.0 };
        assert_eq!(nowhere.way(), [1.0, 0.0]);
        assert!(nowhere.bars() >= 1.0 || nowhere.bars().is_nan());
    }
}
