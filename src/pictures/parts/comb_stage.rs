//! A picture, live or still, with two marks and a comb on it that fingers and keys move.

use garment_assay::say;
use yew::prelude::*;

use super::laid::{Laid, Place, View, distance, step, sum};
use crate::browser::hand;

/// What of the marks and bars was moved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Moved {
    /// A mark on the scale.
    Mark,
    /// The comb, or its pitch.
    Comb,
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The camera's picture, while it is open.
    pub video: NodeRef,
    /// The still picture.
    pub canvas: NodeRef,
    /// Whether the camera is open.
    pub open: bool,
    /// Whether the still picture is shown.
    pub frozen: bool,
    /// Width and height of the picture in its pixels; none while there is none.
    pub picture: Option<Place>,
    /// Width and height of the frame, as told by `on_frame`.
    pub frame: Place,
    /// How the picture lies in it.
    pub view: View,
    /// Marks and bars.
    pub laid: Option<Laid>,
    /// Smallest and largest pitch, as shares of the distance of the marks.
    pub limits: [f64; 2],
    /// Where the marks are, to say aloud: so many mm or inches.
    pub between: AttrValue,
    /// Called with the frame's width and height when they change.
    pub on_frame: Callback<Place>,
    /// Called when the picture is moved or made larger.
    pub on_view: Callback<View>,
    /// Called when marks or bars are moved.
    pub on_laid: Callback<(Laid, Moved)>,
    /// Called when the picture is tapped.
    pub on_tap: Callback<()>,
    /// What stands over the picture.
    #[prop_or_default]
    pub children: Html,
}

/// How far outside a mark or the first bar its knob stands, so that the finger hides neither, in CSS pixels.
const KNOB: f64 = 34.0;
/// How near a finger must come, in CSS pixels.
const NEAR: f64 = 30.0;
/// Half the length of a bar, in CSS pixels.
const HALF_BAR: f64 = 26.0;
/// A finger on the picture that moves less than this taps, in CSS pixels.
const STILL: f64 = 6.0;

/// What a finger holds.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Grip {
    Mark(usize),
    Comb,
    /// The bar of that number, from the first: it follows the finger and stretches the comb.
    Bar(f64),
    Picture,
}

/// Fingers on the picture, and what was there when they came.
#[derive(Default)]
struct Hands {
    fingers: Vec<(i32, Place)>,
    start: Option<(Vec<Place>, Grip, Laid, View)>,
    moved: bool,
}

/// What lies under a place of the screen.
fn grip(laid: &Laid, view: View, shown: Place) -> Grip {
    let way = laid.way();
    let knob = |place: Place, out: f64| sum(view.shown(place), [way[0] * out, way[1] * out]);
    for (mark, out) in [(0, -KNOB), (1, KNOB)] {
        let place = laid.marks[mark];
        if distance(knob(place, out), shown) <= NEAR || distance(view.shown(place), shown) <= NEAR * 0.7 {
            return Grip::Mark(mark);
        }
    }
    if distance(knob(laid.first, -KNOB), shown) <= NEAR {
        return Grip::Comb;
    }
    let place = view.at(shown);
    let (along, beside) = (laid.along(place), laid.beside(place) * view.times);
    let end = (laid.bars() - 1.0) * laid.pitch;
    if beside.abs() > HALF_BAR + 8.0 || along < 0.0 || along > end + NEAR / view.times {
        return Grip::Picture;
    }
    let bar = (along / laid.pitch).round().min(laid.bars() - 1.0);
    if bar < 1.0 { Grip::Comb } else { Grip::Bar(bar) }
}

/// Marks and bars after a finger that holds something has moved by so much of the picture.
fn dragged(laid: Laid, grip: Grip, by: Place, limits: [f64; 2]) -> Option<(Laid, Moved)> {
    match grip {
        Grip::Mark(mark) => Some((laid.with_mark(mark, by), Moved::Mark)),
        Grip::Comb => Some((laid.with_comb(by), Moved::Comb)),
        Grip::Bar(bar) => {
            let way = laid.way();
            let pitch = laid.pitch + (by[0] * way[0] + by[1] * way[1]) / bar;
            Some((laid.with_share(pitch / laid.length(), limits), Moved::Comb))
        }
        Grip::Picture => None,
    }
}

/// Two fingers: where their middle is and how far they are apart.
fn pair(fingers: &[Place]) -> Option<(Place, f64)> {
    let [one, other] = *fingers.first_chunk::<2>()?;
    Some(([0, 1].map(|side| (one[side] + other[side]) / 2.0), distance(one, other).max(1.0)))
}

/// The step of an arrow key in CSS pixels; ten times as far with Shift.
fn arrow(event: &KeyboardEvent) -> Option<Place> {
    let far = if event.shift_key() { 10.0 } else { 1.0 };
    let step = match event.key().as_str() {
        "ArrowLeft" => [-far, 0.0],
        "ArrowRight" => [far, 0.0],
        "ArrowUp" => [0.0, -far],
        "ArrowDown" => [0.0, far],
        _ => return None,
    };
    event.prevent_default();
    Some(step)
}

/// The picture with what lies on it.
#[component]
pub fn CombStage(props: &Props) -> Html {
    let Props {
        video,
        canvas,
        open,
        frozen,
        picture,
        frame,
        view,
        laid,
        limits,
        between,
        on_frame,
        on_view,
        on_laid,
        on_tap,
        children,
    } = props;
    let stage = use_node_ref();
    let hands = use_mut_ref(Hands::default);
    {
        // What stands above and below decides how much room there is.
        let (stage, on_frame, frame) = (stage.clone(), on_frame.clone(), *frame);
        use_effect(move || {
            if let Some([_, _, width, height]) = hand::frame(&stage)
                && distance([width, height], frame) > 0.5
            {
                on_frame.emit([width, height]);
            }
        });
    }
    {
        let (video, canvas) = (video.clone(), canvas.clone());
        use_effect_with((*view, *open, *frozen), move |(view, ..)| {
            for part in [&video, &canvas] {
                hand::place(part, [view.corner[0], view.corner[1], view.times]);
            }
        });
    }
    let at = {
        let stage = stage.clone();
        move |event: &PointerEvent| {
            let [left, top, ..] = hand::frame(&stage).unwrap_or_default();
            [f64::from(event.client_x()) - left, f64::from(event.client_y()) - top]
        }
    };
    let onpointerdown = {
        let (hands, stage, at, laid, view) = (hands.clone(), stage.clone(), at.clone(), *laid, *view);
        Callback::from(move |event: PointerEvent| {
            let Some(laid) = laid else { return };
            hand::hold_pointer(&stage, event.pointer_id());
            let (mut hands, place) = (hands.borrow_mut(), at(&event));
            if hands.fingers.is_empty() {
                hands.moved = false;
            }
            hands.fingers.push((event.pointer_id(), place));
            let fingers: Vec<Place> = hands.fingers.iter().map(|finger| finger.1).collect();
            let held = if fingers.len() == 1 { grip(&laid, view, place) } else { Grip::Picture };
            hands.moved |= fingers.len() > 1;
            hands.start = Some((fingers, held, laid, view));
        })
    };
    let onpointermove = {
        let (hands, at, on_laid, on_view) = (hands.clone(), at, on_laid.clone(), on_view.clone());
        let (picture, frame, limits) = (*picture, *frame, *limits);
        Callback::from(move |event: PointerEvent| {
            let mut hands = hands.borrow_mut();
            let place = at(&event);
            let Some(finger) = hands.fingers.iter_mut().find(|finger| finger.0 == event.pointer_id()) else { return };
            finger.1 = place;
            let now: Vec<Place> = hands.fingers.iter().map(|finger| finger.1).collect();
            let Some((before, held, laid, view)) = hands.start.clone() else { return };
            let Some(picture) = picture else { return };
            if let (Some((middle, apart)), Some((to, wide))) = (pair(&before), pair(&now)) {
                on_view.emit(view.closer(wide / apart, middle).moved(step(middle, to)).within(frame, picture));
                return;
            }
            let (Some(from), Some(to)) = (before.first(), now.first()) else { return };
            let by = step(*from, *to);
            if held == Grip::Picture && !hands.moved && by[0].hypot(by[1]) < STILL {
                return;
            }
            hands.moved = true;
            match dragged(laid, held, [by[0] / view.times, by[1] / view.times], limits) {
                Some(now) => on_laid.emit(now),
                None => on_view.emit(view.moved(by).within(frame, picture)),
            }
        })
    };
    let lifted = |taps: bool| {
        let (hands, on_tap) = (hands.clone(), on_tap.clone());
        Callback::from(move |event: PointerEvent| {
            let mut hands = hands.borrow_mut();
            hands.fingers.retain(|finger| finger.0 != event.pointer_id());
            // A tap on a mark or a bar is a drag that went nowhere.
            let on_picture = hands.start.as_ref().is_some_and(|(_, held, ..)| *held == Grip::Picture);
            let tap = taps && !hands.moved && hands.fingers.is_empty() && on_picture;
            hands.start = None;
            drop(hands);
            if tap {
                on_tap.emit(());
            }
        })
    };
    let (onpointerup, onpointercancel) = (lifted(true), lifted(false));
    let [width, height] = *frame;
    let nearer = |by: f64| {
        let (on_view, view, frame, picture) = (on_view.clone(), *view, *frame, *picture);
        Callback::from(move |_: MouseEvent| {
            if let Some(picture) = picture {
                on_view.emit(view.closer(by, [frame[0] / 2.0, frame[1] / 2.0]).within(frame, picture));
            }
        })
    };
    html! {
        <div class="live-stage">
            <div class="live-picture" ref={stage} {onpointerdown} {onpointermove} {onpointerup} {onpointercancel}>
                if *open {
                    <video ref={video.clone()} playsinline=true muted=true autoplay=true aria-hidden="true" tabindex="-1"></video>
                }
                <canvas ref={canvas.clone()} hidden={!*frozen} aria-hidden="true"></canvas>
                if let Some(laid) = laid {
                    <svg class="live-marks" viewBox={format!("0 0 {width:.1} {height:.1}")}>
                        { overlay(laid, *view, *limits, between, on_laid) }
                    </svg>
                }
            </div>
            if laid.is_some() {
                <div class="live-zoom">
                    <button type="button" class="second" aria-label={say!("Picture larger")} onclick={nearer(1.5)}>{ "+" }</button>
                    <button type="button" class="second" aria-label={say!("Picture smaller")} onclick={nearer(1.0 / 1.5)}>{ "−" }</button>
                </div>
            }
            <div class="live-over">{ children.clone() }</div>
        </div>
    }
}

/// The scale with its two marks, and the comb.
fn overlay(laid: &Laid, view: View, limits: [f64; 2], between: &AttrValue, on_laid: &Callback<(Laid, Moved)>) -> Html {
    let laid = *laid;
    let way = laid.way();
    let out = |place: Place, along: f64, across: f64| {
        let [x, y] = view.shown(place);
        [x + way[0] * along - way[1] * across, y + way[1] * along + way[0] * across]
    };
    let line = |from: Place, to: Place| format!("M{:.1} {:.1}L{:.1} {:.1}", from[0], from[1], to[0], to[1]);
    let keys = |held: Grip| {
        let on_laid = on_laid.clone();
        Callback::from(move |event: KeyboardEvent| {
            if let Some(by) = arrow(&event)
                && let Some(now) = dragged(laid, held, [by[0] / view.times, by[1] / view.times], limits)
            {
                on_laid.emit(now);
            }
        })
    };
    let [from, to] = laid.marks;
    let scale = format!(
        "{}{}{}",
        line(view.shown(from), view.shown(to)),
        line(out(from, 0.0, -11.0), out(from, 0.0, 11.0)),
        line(out(to, 0.0, -11.0), out(to, 0.0, 11.0))
    );
    let bar = |bar: f64, half: f64| {
        let along = bar * laid.pitch * view.times;
        line(out(laid.first, along, -half), out(laid.first, along, half))
    };
    let bars = (1..laid.bars() as u32).fold(String::new(), |path, place| path + &bar(f64::from(place), HALF_BAR));
    let first = bar(0.0, HALF_BAR + 4.0);
    let knob = |class: &'static str, place: Place, along: f64| {
        let ([x, y], [near_x, near_y]) = (out(place, along, 0.0), out(place, along.signum() * 3.0, 0.0));
        html! {
            <>
                <path class={classes!("stem", class)} d={line([near_x, near_y], [x, y])} />
                <circle class={classes!("knob", class)} cx={format!("{x:.1}")} cy={format!("{y:.1}")} r="13" />
                <circle class="reach" cx={format!("{x:.1}")} cy={format!("{y:.1}")} r="24" />
            </>
        }
    };
    html! {
        <>
            <path class="halo" d={scale.clone()} /><path class="scale" d={scale} />
            <path class="halo" d={format!("{bars}{first}")} /><path class="bars" d={bars} /><path class="first" d={first} />
            <g tabindex="0" role="button" aria-label={say!("First mark on the scale, {distance} from the second; arrow keys move it", distance = between)} onkeydown={keys(Grip::Mark(0))}>{ knob("scale", from, -KNOB) }</g>
            <g tabindex="0" role="button" aria-label={say!("Second mark on the scale; arrow keys move it")} onkeydown={keys(Grip::Mark(1))}>{ knob("scale", to, KNOB) }</g>
            <g tabindex="0" role="button" aria-label={say!("First bar of the comb; arrow keys move it")} onkeydown={keys(Grip::Comb)}>{ knob("first", laid.first, -KNOB) }</g>
        </>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const VIEW: View = View { times: 0.5, corner: [0.0, 0.0] };

    fn laid() -> Laid {
        Laid { marks: [[200.0, 600.0], [600.0, 600.0]], first: [200.0, 300.0], pitch: 40.0 }
    }

    #[test]
    fn a_finger_takes_what_lies_under_it() {
        assert_eq!(grip(&laid(), VIEW, [70.0, 300.0]), Grip::Mark(0));
        assert_eq!(grip(&laid(), VIEW, [300.0, 300.0]), Grip::Mark(1));
        assert_eq!(grip(&laid(), VIEW, [66.0, 150.0]), Grip::Comb);
        assert_eq!(grip(&laid(), VIEW, [102.0, 160.0]), Grip::Comb);
        assert_eq!(grip(&laid(), VIEW, [201.0, 140.0]), Grip::Bar(5.0));
        assert_eq!(grip(&laid(), VIEW, [200.0, 40.0]), Grip::Picture);
    }

    #[test]
    fn a_bar_follows_the_finger_and_the_first_stays() {
        let (after, moved) = dragged(laid(), Grip::Bar(5.0), [10.0, 99.0], [0.01, 0.5]).expect("moved");
        assert_eq!((after.first, after.pitch, moved), (laid().first, 42.0, Moved::Comb));
        let (after, _) = dragged(laid(), Grip::Bar(5.0), [-1e6, 0.0], [0.01, 0.5]).expect("moved");
        assert_eq!(after.pitch, 4.0);
    }
}
