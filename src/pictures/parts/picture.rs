//! A picture on which marks are set: by a tap under a magnifier, by a drag, or by keys; nearer and further by two fingers or buttons.

use std::rc::Rc;

use garment_assay::say;
use photo::Point;
use yew::prelude::*;

use super::marking::{Marks, View, within};
use crate::browser::hand;
use crate::browser::pictures::{self, Picture};
use crate::shared::icon::{Icon, Shape};
use crate::shared::screen;

/// How marks that belong together are joined.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Join {
    /// A line from each to the next.
    Line,
    /// A line round all of them.
    Ring,
    /// An upright rectangle between two.
    Box,
}

/// What was found, to be shown on the picture.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Found {
    /// Stitches, from where to where, and whether one seems to be skipped inside.
    pub stitches: Vec<(Point, Point, bool)>,
    /// Places, such as graduations.
    pub places: Vec<Point>,
    /// A part of the picture.
    pub area: Vec<Point>,
    /// Lines, from where to where, such as every tenth yarn.
    pub lines: Vec<[Point; 2]>,
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The picture.
    pub picture: Picture,
    /// Names of the marks, in order.
    pub names: Rc<Vec<String>>,
    /// The marks.
    pub marks: Marks,
    /// Which of them are joined, by first and last.
    pub joins: Rc<Vec<(Join, usize, usize)>>,
    /// What was found.
    pub found: Rc<Found>,
    /// What to do next; nothing when empty.
    pub how: AttrValue,
    /// Told of the marks after each tap, drag, key or button.
    pub on: Callback<Marks>,
}

/// A finger or pen on the picture.
#[derive(Clone, Copy)]
struct Finger {
    id: i32,
    at: [f64; 2],
}

/// What the fingers do.
#[derive(Clone, Copy, PartialEq)]
enum Doing {
    Nothing,
    /// A mark is under the finger, which holds it this far off.
    Holding(usize, [f64; 2]),
    Pushing,
    Pinching,
}

/// All that changes while fingers move; the page hears of it when they are lifted.
struct Hand {
    view: Option<View>,
    room: [f64; 2],
    fingers: Vec<Finger>,
    doing: Doing,
    /// Where the held mark is now.
    at: Point,
}

/// How near to a mark a finger takes hold of it, in CSS pixels.
const REACH: f64 = 26.0;
/// Side of the magnifier, in CSS pixels, as in the styles.
const LENS: f64 = 128.0;
/// How far above the finger its middle is.
const LENS_ABOVE: f64 = 104.0;
/// How much a button or key brings the picture nearer.
const STEP: f64 = 1.6;

/// What the button of a mark is called.
fn chip(number: usize, mark: String, set: bool) -> String {
    if set { say!("{number}: {mark}, set", number, mark) } else { say!("{number}: {mark}, not set", number, mark) }
}

fn distance(one: [f64; 2], other: [f64; 2]) -> f64 {
    (one[0] - other[0]).hypot(one[1] - other[1])
}

/// Where the magnifier lies: above the finger, or beside it where there is no room.
fn lens_at(finger: [f64; 2], room: [f64; 2]) -> [f64; 2] {
    let half = LENS / 2.0;
    let x = finger[0].clamp(half.min(room[0] / 2.0), (room[0] - half).max(room[0] / 2.0));
    if finger[1] - LENS_ABOVE >= half {
        return [x, finger[1] - LENS_ABOVE];
    }
    let beside = if finger[0] > room[0] / 2.0 { finger[0] - LENS_ABOVE } else { finger[0] + LENS_ABOVE };
    [beside, finger[1].max(half)]
}

fn path(points: &[[f64; 2]], closed: bool) -> String {
    let line = points
        .iter()
        .enumerate()
        .fold(String::new(), |path, (n, [x, y])| format!("{path}{}{x:.1} {y:.1}", if n == 0 { "M" } else { "L" }));
    if closed && !line.is_empty() { line + "Z" } else { line }
}

/// The lines as one path.
fn lines_shown(found: &Found, view: &View) -> String {
    found
        .lines
        .iter()
        .map(|line| line.map(|end| view.seen(end)))
        .fold(String::new(), |path, [[x, y], [to_x, to_y]]| format!("{path}M{x:.1} {y:.1}L{to_x:.1} {to_y:.1}"))
}

/// Stitches as lines between their holes, every other one in the other colour, and a bar across each hole.
fn stitches_shown(found: &Found, view: &View) -> Html {
    let (mut even, mut odd, mut long, mut holes) = (String::new(), String::new(), String::new(), String::new());
    for (n, (from, to, skipped)) in found.stitches.iter().enumerate() {
        let (a, b) = (view.seen(*from), view.seen(*to));
        let length = distance(a, b).max(1e-6);
        let along = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
        // Short of the holes, so that neighbours are told apart without colour too.
        let gap = (length * 0.12).min(2.5);
        let (from, to) = ([a[0] + along[0] * gap, a[1] + along[1] * gap], [b[0] - along[0] * gap, b[1] - along[1] * gap]);
        let line = path(&[from, to], false);
        match (skipped, n % 2) {
            (true, _) => long += &line,
            (false, 0) => even += &line,
            (false, _) => odd += &line,
        }
        for hole in if n == 0 { vec![a, b] } else { vec![b] } {
            let across = [-along[1] * 6.0, along[0] * 6.0];
            holes += &path(&[[hole[0] - across[0], hole[1] - across[1]], [hole[0] + across[0], hole[1] + across[1]]], false);
        }
    }
    html! {
        <g class="seen-stitches">
            <path class="seen-halo" d={format!("{even}{odd}{long}")} />
            <path class="seen-hole-halo" d={holes.clone()} />
            <path class="seen-hole" d={holes} />
            <path class="seen-even" d={even} />
            <path class="seen-odd" d={odd} />
            <path class="seen-long" d={long} />
        </g>
    }
}

/// The marks and what joins them.
fn marks_shown(props: &Props, places: &[Option<Point>], view: &View) -> Html {
    let at = |mark: usize| places.get(mark).copied().flatten().map(|place| view.seen(place));
    let joins = props.joins.iter().map(|(join, first, last)| {
        let points: Vec<[f64; 2]> = (*first..=*last).filter_map(at).collect();
        match join {
            Join::Line => path(&points, false),
            Join::Ring => path(&points, points.len() > 2),
            Join::Box => match points.as_slice() {
                [a, b] => path(&[*a, [b[0], a[1]], *b, [a[0], b[1]]], true),
                _ => String::new(),
            },
        }
    });
    let joined: String = joins.collect();
    html! {
        <g class="set-marks">
            <path class="join-halo" d={joined.clone()} />
            <path class="join" d={joined} />
            { for (0..places.len()).filter_map(|mark| Some((mark, at(mark)?))).map(|(mark, [x, y])| html! {
                <g key={mark} class="set-mark" data-chosen={(mark == props.marks.chosen()).to_string()} transform={format!("translate({x:.1} {y:.1})")}>
                    <circle class="mark-halo" r="11" />
                    <circle class="mark-ring" r="11" />
                    <path class="mark-halo" d="M-5 0h10M0 -5v10" />
                    <path class="mark-cross" d="M-5 0h10M0 -5v10" />
                    <text x="15" y="-9">{ mark + 1 }</text>
                </g>
            }) }
        </g>
    }
}

/// A picture with marks, their list, and the buttons below.
#[component]
pub fn PictureBoard(props: &Props) -> Html {
    let Props { picture, names, marks, found, on, .. } = props;
    let size = picture.size();
    let again = use_force_update();
    let (board, image, lens, lens_image) = (use_node_ref(), use_node_ref(), use_node_ref(), use_node_ref());
    let pushing = use_state_eq(|| false);
    let hand =
        use_mut_ref(|| Hand { view: None, room: [0.0, 0.0], fingers: Vec::new(), doing: Doing::Nothing, at: Point::default() });
    {
        // Another room, another view: the page may have been turned, or the panel below have grown.
        let (hand, board, again) = (hand.clone(), board.clone(), again.clone());
        let fit = move || {
            let Some([.., width, height]) = hand::frame(&board) else { return };
            let mut hand = hand.borrow_mut();
            if hand.room == [width, height] {
                return;
            }
            let room = [width, height];
            // What was in the middle stays there, unless all of the picture was seen.
            hand.view = Some(match hand.view {
                Some(view) if view.times() > View::whole(size, hand.room).times() * 1.001 => {
                    let middle = view.place([hand.room[0] / 2.0, hand.room[1] / 2.0]);
                    let times = view.times();
                    let whole = View::whole(size, room);
                    let near = whole.nearer(times / whole.times(), [0.0, 0.0], size, room);
                    let at = near.seen(middle);
                    near.pushed([room[0] / 2.0 - at[0], room[1] / 2.0 - at[1]], size, room)
                }
                _ => View::whole(size, room),
            });
            hand.room = room;
            drop(hand);
            again.force_update();
        };
        let on_resize = fit.clone();
        use_effect(fit);
        use_effect_with((), move |()| {
            let listening = screen::on_change(on_resize);
            move || drop(listening)
        });
    }
    {
        let (hand, image, lens, lens_image) = (hand.clone(), image.clone(), lens.clone(), lens_image.clone());
        use_effect(move || {
            let hand = hand.borrow();
            let Some(view) = hand.view else { return };
            let corner = view.corner();
            hand::place(&image, [corner[0], corner[1], view.times()]);
            if let Doing::Holding(..) = hand.doing {
                let [x, y] = lens_at(view.seen(hand.at), hand.room);
                hand::place(&lens, [x - LENS / 2.0, y - LENS / 2.0, 1.0]);
                let times = (view.times() * 3.0).clamp(0.75, 10.0);
                pictures::lay(&lens_image, [hand.at.x + 0.5, hand.at.y + 0.5], [LENS / 2.0, LENS / 2.0], times);
            }
        });
    }
    let local = {
        let board = board.clone();
        move |event: &PointerEvent| {
            let [left, top, ..] = hand::frame(&board).unwrap_or_default();
            [f64::from(event.client_x()) - left, f64::from(event.client_y()) - top]
        }
    };
    let onpointerdown = {
        let (hand, board, marks, local, again, on, pushing) =
            (hand.clone(), board.clone(), marks.clone(), local.clone(), again.clone(), on.clone(), *pushing);
        Callback::from(move |event: PointerEvent| {
            if event.button() > 0 {
                return;
            }
            hand::hold_pointer(&board, event.pointer_id());
            let at = local(&event);
            let mut hand = hand.borrow_mut();
            let Some(view) = hand.view else { return };
            hand.fingers.retain(|finger| finger.id != event.pointer_id());
            hand.fingers.push(Finger { id: event.pointer_id(), at });
            hand.doing = match hand.fingers.len() {
                1 => {
                    let near = |place: &Option<Point>| place.map(|place| distance(view.seen(place), at));
                    let nearest = marks
                        .places()
                        .iter()
                        .enumerate()
                        .filter_map(|(mark, place)| Some((mark, near(place)?)))
                        .filter(|(_, away)| *away <= REACH)
                        // Of two as near, the chosen one.
                        .min_by(|one, other| {
                            (one.1 - f64::from(u8::from(one.0 == marks.chosen())) * REACH)
                                .total_cmp(&(other.1 - f64::from(u8::from(other.0 == marks.chosen())) * REACH))
                        });
                    match nearest {
                        Some((mark, _)) => {
                            hand.at = marks.places()[mark].unwrap_or_default();
                            let seen = view.seen(hand.at);
                            Doing::Holding(mark, [seen[0] - at[0], seen[1] - at[1]])
                        }
                        None if !pushing && marks.places().get(marks.chosen()).is_some_and(Option::is_none) => {
                            hand.at = within(view.place(at), size);
                            Doing::Holding(marks.chosen(), [0.0, 0.0])
                        }
                        None => Doing::Pushing,
                    }
                }
                _ => Doing::Pinching,
            };
            let held = match hand.doing {
                Doing::Holding(mark, _) if mark != marks.chosen() => Some(mark),
                _ => None,
            };
            drop(hand);
            if let Some(mark) = held {
                on.emit(marks.choosing(mark));
            }
            again.force_update();
        })
    };
    let onpointermove = {
        let (hand, local, again) = (hand.clone(), local.clone(), again.clone());
        Callback::from(move |event: PointerEvent| {
            let at = local(&event);
            let mut hand = hand.borrow_mut();
            let (room, Some(view)) = (hand.room, hand.view) else { return };
            let Some(place) = hand.fingers.iter().position(|finger| finger.id == event.pointer_id()) else { return };
            let before = hand.fingers[place].at;
            let other = hand.fingers.iter().find(|finger| finger.id != event.pointer_id()).map(|finger| finger.at);
            hand.fingers[place].at = at;
            match (hand.doing, other) {
                (Doing::Holding(_, off), _) => hand.at = within(view.place([at[0] + off[0], at[1] + off[1]]), size),
                (Doing::Pushing, _) => hand.view = Some(view.pushed([at[0] - before[0], at[1] - before[1]], size, room)),
                (Doing::Pinching, Some(other)) => {
                    let middle = [(at[0] + other[0]) / 2.0, (at[1] + other[1]) / 2.0];
                    let by = distance(at, other).max(1.0) / distance(before, other).max(1.0);
                    let moved = [(at[0] - before[0]) / 2.0, (at[1] - before[1]) / 2.0];
                    hand.view = Some(view.pushed(moved, size, room).nearer(by, middle, size, room));
                }
                _ => return,
            }
            drop(hand);
            again.force_update();
        })
    };
    let lifted = |sets: bool| {
        let (hand, marks, again, on) = (hand.clone(), marks.clone(), again.clone(), on.clone());
        Callback::from(move |event: PointerEvent| {
            let mut hand = hand.borrow_mut();
            hand.fingers.retain(|finger| finger.id != event.pointer_id());
            let (doing, at) = (hand.doing, hand.at);
            // After two fingers, the one that is left does nothing.
            if hand.fingers.is_empty() || matches!(doing, Doing::Holding(..)) {
                hand.doing = Doing::Nothing;
            }
            drop(hand);
            if let Doing::Holding(mark, _) = doing
                && sets
            {
                on.emit(marks.set(mark, at));
            }
            again.force_update();
        })
    };
    let (onpointerup, onpointercancel) = (lifted(true), lifted(false));
    let zoom = {
        let (hand, again, marks) = (hand.clone(), again.clone(), marks.clone());
        move |by: f64| {
            let mut hand = hand.borrow_mut();
            let (room, Some(view)) = (hand.room, hand.view) else { return };
            // Nearer to the chosen mark, where it is set and in sight.
            let mark = marks.places().get(marks.chosen()).copied().flatten().map(|place| view.seen(place));
            let inside = mark.filter(|at| (0..2).all(|n| (0.0..=room[n]).contains(&at[n])));
            hand.view = Some(view.nearer(by, inside.unwrap_or([room[0] / 2.0, room[1] / 2.0]), size, room));
            drop(hand);
            again.force_update();
        }
    };
    let onkeydown = {
        let (hand, marks, on, again, zoom) = (hand.clone(), marks.clone(), on.clone(), again.clone(), zoom.clone());
        Callback::from(move |event: KeyboardEvent| {
            if event.ctrl_key() || event.meta_key() || event.alt_key() {
                return;
            }
            let step = if event.shift_key() { 10.0 } else { 1.0 };
            let by = match event.key().as_str() {
                "ArrowLeft" => [-step, 0.0],
                "ArrowRight" => [step, 0.0],
                "ArrowUp" => [0.0, -step],
                "ArrowDown" => [0.0, step],
                "+" | "=" => {
                    event.prevent_default();
                    return zoom(STEP);
                }
                "-" => {
                    event.prevent_default();
                    return zoom(1.0 / STEP);
                }
                "Enter" | " " => {
                    event.prevent_default();
                    let next = (marks.chosen() + 1) % marks.places().len().max(1);
                    return on.emit(marks.choosing(next));
                }
                _ => return,
            };
            event.prevent_default();
            let mut hand = hand.borrow_mut();
            let (room, Some(view)) = (hand.room, hand.view) else { return };
            let old = marks.places().get(marks.chosen()).copied().flatten();
            // A mark that is not set begins in the middle of what is seen.
            let place = match old {
                Some(old) => Point { x: old.x + by[0], y: old.y + by[1] },
                None => {
                    let middle = view.place([room[0] / 2.0, room[1] / 2.0]);
                    Point { x: middle.x.round(), y: middle.y.round() }
                }
            };
            let place = within(place, size);
            hand.view = Some(view.showing(place, size, room));
            drop(hand);
            on.emit(marks.moved(marks.chosen(), place));
            again.force_update();
        })
    };
    let choose = |mark: usize| {
        let (hand, marks, on, again) = (hand.clone(), marks.clone(), on.clone(), again.clone());
        Callback::from(move |_: MouseEvent| {
            let mut hand = hand.borrow_mut();
            if let (Some(view), Some(Some(place))) = (hand.view, marks.places().get(mark)) {
                hand.view = Some(view.showing(*place, size, hand.room));
            }
            drop(hand);
            on.emit(marks.choosing(mark));
            again.force_update();
        })
    };
    let press = |by: f64| {
        let zoom = zoom.clone();
        Callback::from(move |_: MouseEvent| zoom(by))
    };
    let undo = {
        let (marks, on) = (marks.clone(), on.clone());
        Callback::from(move |_: MouseEvent| on.emit(marks.undone()))
    };
    let push = {
        let pushing = pushing.clone();
        Callback::from(move |_: MouseEvent| pushing.set(!*pushing))
    };
    let (view, room, doing, held_at) = {
        let hand = hand.borrow();
        (hand.view, hand.room, hand.doing, hand.at)
    };
    let mut places = marks.places().to_vec();
    let holding = if let Doing::Holding(mark, _) = doing {
        places[mark] = Some(held_at);
        true
    } else {
        false
    };
    let name = |mark: usize| names.get(mark).cloned().unwrap_or_default();
    let said = |mark: usize| match marks.places().get(mark).copied().flatten() {
        Some(place) => {
            let [across, down] = [place.x, place.y].map(|at| format!("{at:.0}"));
            say!("{mark}: {across} across, {down} down", mark = name(mark), across, down)
        }
        None => say!("{mark}: not set", mark = name(mark)),
    };
    html! {
        <div class="picture">
            <div class="board" ref={board} tabindex="0" role="application" aria-label={say!("Picture. Arrow keys move the chosen mark, with shift by ten. Plus and minus bring it nearer and further. Enter chooses the next mark.")}
                data-pushing={(*pushing || marks.all().is_some()).to_string()}
                {onpointerdown} {onpointermove} {onpointerup} {onpointercancel} {onkeydown}>
                <img ref={image} decoding="async" src={picture.url()} width={size[0].to_string()} height={size[1].to_string()} alt="" draggable="false" />
                if let Some(view) = view {
                    <svg class="over" width={room[0].to_string()} height={room[1].to_string()} aria-hidden="true">
                        <path class="seen-area" d={path(&found.area.iter().map(|place| view.seen(*place)).collect::<Vec<_>>(), true)} />
                        <path class="seen-line-halo" d={lines_shown(found, &view)} />
                        <path class="seen-line" d={lines_shown(found, &view)} />
                        <path class="seen-place-halo" d={found.places.iter().map(|place| view.seen(*place)).fold(String::new(), |path, [x, y]| format!("{path}M{x:.1} {y:.1}h.01"))} />
                        <path class="seen-place" d={found.places.iter().map(|place| view.seen(*place)).fold(String::new(), |path, [x, y]| format!("{path}M{x:.1} {y:.1}h.01"))} />
                        { stitches_shown(found, &view) }
                        { marks_shown(props, &places, &view) }
                    </svg>
                }
                <div class="lens" ref={lens} hidden={!holding} aria-hidden="true">
                    <img ref={lens_image} decoding="async" src={picture.url()} width={size[0].to_string()} height={size[1].to_string()} alt="" draggable="false" />
                    <svg viewBox="0 0 128 128" width="128" height="128"><path class="mark-halo" d="M64 20v36M64 72v36M20 64h36M72 64h36" /><path class="mark-cross" d="M64 20v36M64 72v36M20 64h36M72 64h36" /></svg>
                </div>
            </div>
            if !props.how.is_empty() {
                <p class="picture-how">{ &props.how }</p>
            }
            <div class="mark-list" role="group" aria-label={say!("Marks")}>
                { for (0..marks.places().len()).map(|mark| html! {
                    <button key={mark} type="button" class="mark-chip" aria-pressed={(mark == marks.chosen()).to_string()} data-set={marks.places()[mark].is_some().to_string()}
                        aria-label={chip(mark + 1, name(mark), marks.places()[mark].is_some())} onclick={choose(mark)}>{ mark + 1 }</button>
                }) }
            </div>
            <div class="picture-tools" role="group" aria-label={say!("Picture")}>
                <button type="button" class="second" aria-label={say!("Further")} onclick={press(1.0 / STEP)}>{ "−" }</button>
                <button type="button" class="second" aria-label={say!("Nearer")} onclick={press(STEP)}>{ "+" }</button>
                <button type="button" class="second" aria-pressed={pushing.to_string()} onclick={push}>{ say!("Move picture") }</button>
                <button type="button" class="second" aria-label={say!("Undo the last mark")} disabled={!marks.can_undo()} onclick={undo}><Icon shape={Shape::Undo} /></button>
            </div>
            <p class="unseen" role="status">{ said(marks.chosen()) }</p>
        </div>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_magnifier_is_never_under_the_finger_nor_off_the_picture() {
        let room = [360.0, 470.0];
        for finger in [[2.0, 2.0], [358.0, 2.0], [180.0, 40.0], [180.0, 300.0], [2.0, 468.0], [358.0, 468.0], [180.0, 170.0]] {
            let at = lens_at(finger, room);
            assert!(distance(at, finger) > LENS / 2.0 + 10.0, "{finger:?}: {at:?}");
            assert!((0.0..=room[0]).contains(&at[0]) && (LENS / 2.0..=room[1]).contains(&at[1]), "{finger:?}: {at:?}");
        }
    }
}
