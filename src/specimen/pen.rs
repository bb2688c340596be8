//! A pen that writes short SVG path data, and the tracks it follows.

use super::chance::Chance;
use super::drawing::Drawing;

/// How far a path may run past the frame, so that strokes do not end visibly at its edge.
pub(super) const BLEED: f64 = 6.0;

/// Knobs are handed in by content and by practice: none may be out of range or not a number.
pub(super) fn clamp(value: f64, low: f64, high: f64) -> f64 {
    if value.is_nan() { low } else { value.clamp(low, high) }
}

/// Writes path data: each piece starts at an absolute place and goes on by steps, in tenths of a unit so that steps add up exactly.
/// Coordinates are held within the frame and its bleed.
#[derive(Clone, Default)]
pub(super) struct Pen {
    text: String,
    /// The command that a further number would repeat.
    command: char,
    /// Whether the number before had a decimal point, so that one without a whole part may follow it directly.
    pointed: bool,
    /// Whether a command letter stands last.
    bare: bool,
    here: (i32, i32),
}

impl Pen {
    /// An empty sheet of path.
    pub(super) fn new() -> Pen {
        Pen::default()
    }

    /// A path written in one go.
    pub(super) fn with(write: impl FnOnce(&mut Pen)) -> Pen {
        let mut pen = Pen::default();
        write(&mut pen);
        pen
    }

    /// The path written.
    pub(super) fn finish(self) -> String {
        self.text
    }

    fn command(&mut self, letter: char) {
        if self.command != letter || letter == 'M' {
            self.text.push(letter);
            self.command = letter;
            self.bare = true;
        }
    }

    fn tenths(&mut self, tenths: i32) {
        let pointed = tenths % 10 != 0;
        let joins = self.bare || tenths < 0 || (self.pointed && pointed && tenths < 10);
        if !joins {
            self.text.push(' ');
        }
        (self.bare, self.pointed) = (false, pointed);
        write_tenths(&mut self.text, tenths);
    }

    fn steps(&mut self, to: (i32, i32)) {
        self.tenths(to.0 - self.here.0);
        self.tenths(to.1 - self.here.1);
    }

    /// Lifts the pen and sets it down here.
    pub(super) fn at(&mut self, x: f64, y: f64) -> &mut Pen {
        self.command('M');
        self.here = place(x, y);
        self.tenths(self.here.0);
        self.tenths(self.here.1);
        self
    }

    /// A straight line to here.
    pub(super) fn to(&mut self, x: f64, y: f64) -> &mut Pen {
        let to = place(x, y);
        if to.1 == self.here.1 {
            self.command('h');
            self.tenths(to.0 - self.here.0);
        } else if to.0 == self.here.0 {
            self.command('v');
            self.tenths(to.1 - self.here.1);
        } else {
            self.command('l');
            self.steps(to);
        }
        self.here = to;
        self
    }

    /// A bend to `x`, `y`, drawn towards `cx`, `cy`.
    pub(super) fn bend(&mut self, cx: f64, cy: f64, x: f64, y: f64) -> &mut Pen {
        let to = place(x, y);
        self.command('q');
        self.steps(place(cx, cy));
        self.steps(to);
        self.here = to;
        self
    }

    /// Closes the outline.
    pub(super) fn close(&mut self) -> &mut Pen {
        self.text.push('z');
        self.command = 'z';
        self
    }

    /// One straight piece.
    pub(super) fn line(&mut self, x: f64, y: f64, to_x: f64, to_y: f64) -> &mut Pen {
        self.at(x, y).to(to_x, to_y)
    }

    /// A closed outline through points.
    pub(super) fn outline(&mut self, points: &[(f64, f64)]) -> &mut Pen {
        self.points(points).close()
    }

    /// A line through points.
    pub(super) fn points(&mut self, points: &[(f64, f64)]) -> &mut Pen {
        for (index, &(x, y)) in points.iter().enumerate() {
            if index == 0 {
                self.at(x, y);
            } else {
                self.to(x, y);
            }
        }
        self
    }

    /// A smooth line through the middles between points.
    pub(super) fn smooth(&mut self, points: &[(f64, f64)]) -> &mut Pen {
        let Some(&(x, y)) = points.first() else { return self };
        self.at(x, y);
        for pair in points.windows(2).skip(1) {
            let ((ax, ay), (bx, by)) = (pair[0], pair[1]);
            self.bend(ax, ay, (ax + bx) / 2.0, (ay + by) / 2.0);
        }
        if let Some(&(x, y)) = points.last() {
            self.to(x, y);
        }
        self
    }

    /// An upright box.
    pub(super) fn rect(&mut self, x: f64, y: f64, width: f64, height: f64) -> &mut Pen {
        self.outline(&[(x, y), (x + width, y), (x + width, y + height), (x, y + height)])
    }

    /// An ellipse that lies straight.
    pub(super) fn oval(&mut self, x: f64, y: f64, rx: f64, ry: f64) -> &mut Pen {
        // Eight bends through a regular octagon's corners: within 0.5 % of the true ellipse.
        let corner = std::f64::consts::FRAC_PI_4;
        self.at(x + rx, y);
        for step in 1..=8 {
            let (middle, end) = ((f64::from(step) - 0.5) * corner, f64::from(step) * corner);
            let reach = 1.0 / (corner / 2.0).cos();
            let (mx, my) = (middle.cos() * reach, middle.sin() * reach);
            self.bend(x + rx * mx, y + ry * my, x + rx * end.cos(), y + ry * end.sin());
        }
        self.close()
    }

    /// A circle.
    pub(super) fn circle(&mut self, x: f64, y: f64, radius: f64) -> &mut Pen {
        self.oval(x, y, radius, radius)
    }

    /// Slanting lines that fill a box, `pitch` apart and rising to the right by `run` across the whole height.
    pub(super) fn hatch(&mut self, area: Area, pitch: f64, run: f64) -> &mut Pen {
        let Area { x, y, width, height } = area;
        let mut foot = x - run.max(0.0) + pitch / 2.0;
        while foot < x + width - run.min(0.0) {
            let from =
                clamp(if run == 0.0 { 0.0 } else { (if run > 0.0 { x - foot } else { x + width - foot }) / run }, 0.0, 1.0);
            let to = clamp(if run == 0.0 { 1.0 } else { (if run > 0.0 { x + width - foot } else { x - foot }) / run }, 0.0, 1.0);
            if to > from {
                self.line(foot + run * from, y + height * (1.0 - from), foot + run * to, y + height * (1.0 - to));
            }
            foot += pitch;
        }
        self
    }

    /// Upright and level lines that fill a box, `pitch` apart, as the threads of plain-woven cloth cross.
    pub(super) fn grid(&mut self, area: Area, pitch: f64) -> &mut Pen {
        let mut y = area.y + pitch / 2.0;
        while y < area.y + area.height {
            self.line(area.x, y, area.x + area.width, y);
            y += pitch;
        }
        self.hatch(area, pitch, 0.0)
    }
}

/// A place in tenths of a unit, held within the frame and its bleed.
fn place(x: f64, y: f64) -> (i32, i32) {
    let held = |value: f64, top: f64| (clamp(value, -BLEED, top + BLEED) * 10.0).round() as i32;
    (held(x, Drawing::WIDTH), held(y, Drawing::HEIGHT))
}

/// An upright box of the frame.
#[derive(Clone, Copy)]
pub(super) struct Area {
    pub x: f64,
    pub y: f64,
    pub width: f64,
    pub height: f64,
}

/// The whole frame.
pub(super) const FRAME: Area = Area { x: 0.0, y: 0.0, width: Drawing::WIDTH, height: Drawing::HEIGHT };

/// Tenths as a decimal without needless characters: 12, 12.5, -.5.
pub(super) fn write_tenths(text: &mut String, tenths: i32) {
    if tenths < 0 {
        text.push('-');
    }
    let (whole, tenth) = (tenths.unsigned_abs() / 10, tenths.unsigned_abs() % 10);
    if whole > 0 || tenth == 0 {
        write_whole(text, whole);
    }
    if tenth > 0 {
        text.push('.');
        write_whole(text, tenth);
    }
}

fn write_whole(text: &mut String, value: u32) {
    if value > 9 {
        write_whole(text, value / 10);
    }
    text.push(char::from(b'0' + (value % 10) as u8));
}

/// A line that stitches follow, known by the distance along it.
#[derive(Clone)]
pub(super) struct Track {
    /// The points it runs through.
    pub(super) points: Vec<(f64, f64)>,
    /// Distance from the start at each point.
    pub(super) along: Vec<f64>,
}

/// A place on a track: where it is and which way the track runs there.
#[derive(Clone, Copy)]
pub(super) struct Spot {
    pub x: f64,
    pub y: f64,
    pub dx: f64,
    pub dy: f64,
}

impl Spot {
    /// A point to the right of the run by `side` (below, where the track runs from left to right) and on by `ahead`.
    pub(super) fn beside(self, side: f64, ahead: f64) -> (f64, f64) {
        (self.x - self.dy * side + self.dx * ahead, self.y + self.dx * side + self.dy * ahead)
    }
}

impl Track {
    /// A track through points.
    pub(super) fn through(points: &[(f64, f64)]) -> Track {
        let mut total = 0.0;
        let mut along = Vec::with_capacity(points.len());
        for (index, point) in points.iter().enumerate() {
            if index > 0 {
                total += (point.0 - points[index - 1].0).hypot(point.1 - points[index - 1].1);
            }
            along.push(total);
        }
        Track { points: points.to_vec(), along }
    }

    /// A level track.
    pub(super) fn level(x: f64, to_x: f64, y: f64) -> Track {
        Track::through(&[(x, y), (to_x, y)])
    }

    /// Its length.
    pub(super) fn length(&self) -> f64 {
        self.along.last().copied().unwrap_or(0.0)
    }

    /// The place at that distance from its start.
    pub(super) fn spot(&self, distance: f64) -> Spot {
        let last = self.points.len().saturating_sub(1);
        let next = self.along.iter().position(|&along| along > distance).unwrap_or(last).max(1).min(last);
        let before = next.saturating_sub(1);
        let ((ax, ay), (bx, by)) = (self.points[before], self.points[next]);
        let span = (self.along[next] - self.along[before]).max(1e-9);
        let (dx, dy) = ((bx - ax) / span, (by - ay) / span);
        let on = distance - self.along[before];
        Spot { x: ax + dx * on, y: ay + dy * on, dx, dy }
    }
}

/// Stitches along a track.
#[derive(Clone, Copy)]
pub(super) struct Row {
    /// Hole to hole.
    pub stitch: f64,
    /// Share of a stitch that is not drawn: where the thread dips into the cloth, and the caps of the stroke.
    pub dip: f64,
}

impl Row {
    /// A row whose stitches are this long.
    pub(super) fn of(stitch: f64) -> Row {
        // Round caps take half a thread's width at either end; what is left open must still be seen at 84 px.
        let open = (0.14 * stitch + 2.3).min(stitch - 0.3);
        Row { stitch, dip: open / stitch }
    }

    /// Draws the row between two distances, beside the track by `side`; returns how many stitches were drawn.
    pub(super) fn sew(self, pen: &mut Pen, track: &Track, side: f64, from: f64, to: f64) -> usize {
        let mut count = 0;
        let mut start = from;
        while start + self.stitch * 0.6 < to && count < 400 {
            let end = (start + self.stitch * (1.0 - self.dip)).min(to);
            self.one(pen, track, side, start, end);
            start += self.stitch;
            count += 1;
        }
        count
    }

    /// Draws one stitch.
    pub(super) fn one(self, pen: &mut Pen, track: &Track, side: f64, from: f64, to: f64) {
        let (a, b) = (track.spot(from).beside(side, 0.0), track.spot(to).beside(side, 0.0));
        pen.line(a.0, a.1, b.0, b.1);
    }
}

/// The zigzag of an overlock along an edge: from `edge` to `inner` beside the track, one wrap each `pitch`.
pub(super) fn overlock(pen: &mut Pen, track: &Track, edge: f64, inner: f64, pitch: f64) {
    let wraps = (track.length() / pitch.max(1.0)) as usize;
    for wrap in 0..=wraps {
        let start = wrap as f64 * pitch;
        let (a, b) = (track.spot(start).beside(edge, 0.0), track.spot(start + pitch * 0.5).beside(inner, 0.0));
        if wrap == 0 {
            pen.at(a.0, a.1);
        } else {
            pen.to(a.0, a.1);
        }
        pen.to(b.0, b.1);
    }
}

/// Yarns that stick out of a cut edge along a track.
pub(super) fn fringe(pen: &mut Pen, track: &Track, side: f64, reach: f64, pitch: f64, chance: &mut Chance) {
    let mut at = pitch * 0.5;
    while at < track.length() {
        let spot = track.spot(at);
        let (a, b) = (spot.beside(side, 0.0), spot.beside(side + reach * chance.between(0.35, 1.0), chance.about(reach * 0.5)));
        pen.line(a.0, a.1, b.0, b.1);
        at += pitch * chance.between(0.7, 1.3);
    }
}

/// A chain of loops along a track, as the back of a chainstitch shows.
pub(super) fn chain(pen: &mut Pen, track: &Track, pitch: f64, half: f64) {
    for link in 0..(track.length() / pitch.max(1.0)) as usize {
        let start = link as f64 * pitch;
        let (a, b) = (track.spot(start).beside(0.0, 0.0), track.spot(start + pitch * 1.25).beside(0.0, 0.0));
        let middle = track.spot(start + pitch * 0.7);
        let (over, under) = (middle.beside(-half, 0.0), middle.beside(half, 0.0));
        pen.at(a.0, a.1).bend(over.0, over.1, b.0, b.1).bend(under.0, under.1, a.0, a.1);
    }
}

/// Strokes along the warp that fill an ellipse raggedly, as faded denim does.
pub(super) fn feather(pen: &mut Pen, centre: (f64, f64), radii: (f64, f64), pitch: f64, ragged: f64, chance: &mut Chance) {
    let mut x = -radii.0 + pitch / 2.0;
    while x < radii.0 {
        let half = radii.1 * (1.0 - (x / radii.0).powi(2)).max(0.0).sqrt();
        let (up, down) = (half * (1.0 + chance.about(ragged)), half * (1.0 + chance.about(ragged)));
        pen.line(centre.0 + x, centre.1 - up, centre.0 + x, centre.1 + down);
        x += pitch;
    }
}

/// A leaf from point to point, as wide as `width` where it is fullest.
pub(super) fn leaf(pen: &mut Pen, (ax, ay): (f64, f64), (bx, by): (f64, f64), width: f64) {
    let length = (bx - ax).hypot(by - ay).max(1e-9);
    let (nx, ny) = ((ay - by) / length * width, (bx - ax) / length * width);
    let (mx, my) = ((ax + bx) / 2.0, (ay + by) / 2.0);
    pen.at(ax, ay).bend(mx + nx, my + ny, bx, by).bend(mx - nx, my - ny, ax, ay).close();
}
