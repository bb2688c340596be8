//! Marks on a picture and the view of it: what a finger or a key does to them. Nothing here is drawn.

use photo::Point;

/// Marks that are to be set, in order, one of them chosen. Places are pixels of the picture; whole numbers lie on the centres of pixels.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Marks {
    at: Vec<Option<Point>>,
    chosen: usize,
    before: Vec<(Vec<Option<Point>>, usize)>,
}

/// How many steps can be taken back.
const DEPTH: usize = 60;

impl Marks {
    /// So many marks, none set.
    pub fn new(count: usize) -> Marks {
        Marks { at: vec![None; count], ..Marks::default() }
    }

    /// Where each is.
    pub fn places(&self) -> &[Option<Point>] {
        &self.at
    }

    /// Which one the next tap or key moves.
    pub fn chosen(&self) -> usize {
        self.chosen
    }

    /// Where all of them are, once they are set.
    pub fn all(&self) -> Option<Vec<Point>> {
        self.at.iter().copied().collect()
    }

    /// Whether there is a step to take back.
    pub fn can_undo(&self) -> bool {
        !self.before.is_empty()
    }

    /// Another one chosen.
    pub fn choosing(&self, mark: usize) -> Marks {
        Marks { chosen: mark.min(self.at.len().saturating_sub(1)), ..self.clone() }
    }

    /// One set by tap or drag: the next that is not set is chosen then; when all are, it stays.
    pub fn set(&self, mark: usize, place: Point) -> Marks {
        let mut next = self.moved(mark, place);
        let after = (mark..next.at.len()).chain(0..mark).find(|other| next.at[*other].is_none());
        next.chosen = after.unwrap_or(mark);
        next
    }

    /// One moved by keys, and still chosen.
    pub fn moved(&self, mark: usize, place: Point) -> Marks {
        let mut next = self.clone();
        let Some(old) = next.at.get(mark).copied() else { return next };
        if old == Some(place) {
            return next;
        }
        next.remember();
        next.at[mark] = Some(place);
        next.chosen = mark;
        next
    }

    /// As before the last step.
    pub fn undone(&self) -> Marks {
        let mut next = self.clone();
        if let Some((at, chosen)) = next.before.pop() {
            (next.at, next.chosen) = (at, chosen);
        }
        next
    }

    /// Other marks at the front, so many and none set; the last `kept` stay as they are. What was done before cannot be taken back.
    pub fn with_front(&self, count: usize, kept: usize) -> Marks {
        let tail = self.at.len().saturating_sub(kept);
        let at = std::iter::repeat_n(None, count).chain(self.at[tail..].iter().copied()).collect();
        Marks { at, ..Marks::default() }
    }

    fn remember(&mut self) {
        self.before.push((self.at.clone(), self.chosen));
        if self.before.len() > DEPTH {
            self.before.remove(0);
        }
    }
}

/// The place on the picture that is nearest.
pub fn within(place: Point, size: [u32; 2]) -> Point {
    let [x, y] = [(place.x, size[0]), (place.y, size[1])].map(|(at, side)| at.clamp(0.0, f64::from(side.max(1) - 1)));
    Point { x, y }
}

/// Which part of the picture is seen: its left upper corner (pixels from the picture's edge) and CSS pixels to each pixel of the picture.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct View {
    left: f64,
    top: f64,
    times: f64,
}

/// Most CSS pixels to a pixel of the picture.
const NEAREST: f64 = 8.0;

impl View {
    /// The whole picture in a room of so many CSS pixels.
    pub fn whole(size: [u32; 2], room: [f64; 2]) -> View {
        let times = least(size, room);
        View { left: 0.0, top: 0.0, times }.bounded(size, room)
    }

    /// CSS pixels to a pixel.
    pub fn times(&self) -> f64 {
        self.times
    }

    /// Where a place of the picture is seen, in CSS pixels from the room's left upper corner.
    pub fn seen(&self, place: Point) -> [f64; 2] {
        [(place.x + 0.5 - self.left) * self.times, (place.y + 0.5 - self.top) * self.times]
    }

    /// The place of the picture that is seen there.
    pub fn place(&self, at: [f64; 2]) -> Point {
        Point { x: at[0] / self.times + self.left - 0.5, y: at[1] / self.times + self.top - 0.5 }
    }

    /// Where the picture's own corner is seen.
    pub fn corner(&self) -> [f64; 2] {
        [-self.left * self.times, -self.top * self.times]
    }

    /// So many times as near, with what is seen at `about` staying there.
    pub fn nearer(&self, by: f64, about: [f64; 2], size: [u32; 2], room: [f64; 2]) -> View {
        let times = (self.times * by).clamp(least(size, room), NEAREST);
        let [left, top] = [(self.left, about[0]), (self.top, about[1])].map(|(edge, at)| edge + at / self.times - at / times);
        View { left, top, times }.bounded(size, room)
    }

    /// The picture pushed by so many CSS pixels.
    pub fn pushed(&self, by: [f64; 2], size: [u32; 2], room: [f64; 2]) -> View {
        View { left: self.left - by[0] / self.times, top: self.top - by[1] / self.times, ..*self }.bounded(size, room)
    }

    /// Pushed so far that a place is well inside the room.
    pub fn showing(&self, place: Point, size: [u32; 2], room: [f64; 2]) -> View {
        let at = self.seen(place);
        let margin = 40.0_f64.min(room[0] / 3.0).min(room[1] / 3.0);
        let inside = (0..2).all(|n| (margin..=room[n] - margin).contains(&at[n]));
        if inside { *self } else { self.pushed([room[0] / 2.0 - at[0], room[1] / 2.0 - at[1]], size, room) }
    }

    /// No further out than the whole picture, and with no more empty room than must be: a picture that fits lies in the middle.
    fn bounded(self, size: [u32; 2], room: [f64; 2]) -> View {
        let edge = |edge: f64, side: u32, room: f64| {
            let (side, seen) = (f64::from(side), room / self.times);
            if seen >= side { (side - seen) / 2.0 } else { edge.clamp(0.0, side - seen) }
        };
        View { left: edge(self.left, size[0], room[0]), top: edge(self.top, size[1], room[1]), ..self }
    }
}

fn least(size: [u32; 2], room: [f64; 2]) -> f64 {
    let fit = (room[0] / f64::from(size[0].max(1))).min(room[1] / f64::from(size[1].max(1)));
    if fit.is_finite() && fit > 0.0 { fit.min(NEAREST) } else { 1.0 }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn p(x: f64, y: f64) -> Point {
        Point { x, y }
    }

    #[test]
    fn a_tap_sets_the_chosen_mark_and_chooses_the_next_that_is_not_set() {
        let marks = Marks::new(3).set(0, p(1.0, 1.0));
        assert_eq!(marks.chosen(), 1);
        let marks = marks.choosing(2).set(2, p(3.0, 3.0));
        assert_eq!((marks.chosen(), marks.all()), (1, None));
        let marks = marks.set(1, p(2.0, 2.0));
        assert_eq!(marks.all(), Some(vec![p(1.0, 1.0), p(2.0, 2.0), p(3.0, 3.0)]));
        assert_eq!(marks.chosen(), 1, "all set: it stays");
    }

    #[test]
    fn undo_goes_back_a_step_at_a_time_to_nothing_set() {
        let marks = Marks::new(2).set(0, p(1.0, 1.0)).set(1, p(2.0, 2.0)).moved(0, p(5.0, 5.0));
        let back = marks.undone();
        assert_eq!(back.all(), Some(vec![p(1.0, 1.0), p(2.0, 2.0)]));
        let none = back.undone().undone();
        assert!(!none.can_undo() && none.places() == [None, None] && none.chosen() == 0);
        assert_eq!(none.undone(), none);
    }

    #[test]
    fn a_mark_that_is_put_where_it_was_is_no_step() {
        let marks = Marks::new(1).set(0, p(1.0, 1.0));
        assert_eq!(marks.moved(0, p(1.0, 1.0)), marks);
    }

    #[test]
    fn another_object_asks_for_its_own_marks_and_leaves_those_of_the_seam() {
        let marks = Marks::new(4).set(2, p(7.0, 7.0)).set(3, p(8.0, 8.0)).with_front(5, 2);
        assert_eq!(marks.places()[5..], [Some(p(7.0, 7.0)), Some(p(8.0, 8.0))]);
        assert!(marks.places()[..5].iter().all(Option::is_none) && marks.chosen() == 0);
    }

    #[test]
    fn the_whole_picture_lies_in_the_middle_and_what_is_seen_leads_back_to_its_pixel() {
        let view = View::whole([4000, 3000], [360.0, 470.0]);
        assert!((view.times() - 0.09).abs() < 1e-12);
        let [left, top] = view.seen(p(-0.5, -0.5));
        assert!(left.abs() < 1e-9 && (top - 100.0).abs() < 1e-9);
        let place = view.place(view.seen(p(1234.0, 77.0)));
        assert!((place.x - 1234.0).abs() < 1e-9 && (place.y - 77.0).abs() < 1e-9);
    }

    #[test]
    fn what_lies_under_the_fingers_stays_there_when_they_part() {
        let (size, room) = ([4000, 3000], [360.0, 470.0]);
        let view = View::whole(size, room).nearer(4.0, [180.0, 235.0], size, room);
        let before = view.place([100.0, 200.0]);
        let after = view.nearer(1.5, [100.0, 200.0], size, room).place([100.0, 200.0]);
        assert!((before.x - after.x).abs() < 1e-6 && (before.y - after.y).abs() < 1e-6);
    }

    #[test]
    fn the_view_never_leaves_the_picture_nor_goes_further_out_than_all_of_it() {
        let (size, room) = ([4000, 3000], [360.0, 470.0]);
        let whole = View::whole(size, room);
        assert_eq!(whole.nearer(0.1, [3.0, 4.0], size, room), whole);
        let near = whole.nearer(40.0, [0.0, 100.0], size, room).pushed([9e9, 9e9], size, room);
        let corner = near.place([0.0, 0.0]);
        assert!((corner.x + 0.5).abs() < 1e-9 && (corner.y + 0.5).abs() < 1e-9);
        assert_eq!(whole.nearer(1e9, [0.0, 0.0], size, room).times(), NEAREST);
    }

    #[test]
    fn a_place_out_of_sight_is_brought_into_the_room() {
        let (size, room) = ([4000, 3000], [360.0, 470.0]);
        let near = View::whole(size, room).nearer(10.0, [0.0, 0.0], size, room);
        let [x, y] = near.showing(p(3900.0, 2900.0), size, room).seen(p(3900.0, 2900.0));
        assert!((0.0..=360.0).contains(&x) && (0.0..=470.0).contains(&y));
    }

    #[test]
    fn no_room_and_no_picture_are_no_trouble() {
        let view = View::whole([0, 0], [0.0, 0.0]).nearer(2.0, [0.0, 0.0], [0, 0], [0.0, 0.0]);
        assert!(view.seen(p(1.0, 1.0)).iter().all(|at| at.is_finite()));
        assert_eq!(within(p(-3.0, 99.0), [10, 10]), p(0.0, 9.0));
    }
}
