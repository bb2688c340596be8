//! Taking a picture with the camera: a line to lay the seam along, a level, a lamp, a button under the thumb; or a file instead.

use std::cell::RefCell;
use std::rc::Rc;

use garment_assay::say;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::level::Level;
use crate::browser::camera::{Camera, CameraFault, Seen, Taken};
use crate::{browser::tilt, shared::document};

/// A camera that a component uses.
#[derive(Clone)]
pub struct UseCamera {
    /// What it shows.
    pub seen: Seen,
    /// The camera, while it is open.
    pub camera: Rc<RefCell<Option<Camera>>>,
    /// Starts it again.
    pub again: Callback<()>,
}

/// Opens the camera on a video while `open`, and lets it go afterwards.
#[hook]
pub fn use_camera(video: &NodeRef, open: bool) -> UseCamera {
    let seen = use_state_eq(|| Seen::Starting);
    let camera = use_mut_ref(|| None::<Camera>);
    let turn = use_state(|| 0_u32);
    {
        let (camera, seen, video) = (camera.clone(), seen.clone(), video.clone());
        use_effect_with((open, *turn), move |(open, _)| {
            if *open {
                let told = seen.clone();
                let opened = Camera::open(&video, move |now| told.set(now));
                camera.replace(Some(opened));
            }
            move || drop(camera.take())
        });
    }
    let again = {
        let (seen, turn) = (seen.clone(), turn.clone());
        Callback::from(move |()| {
            seen.set(Seen::Starting);
            turn.set(*turn + 1);
        })
    };
    UseCamera { seen: *seen, camera, again }
}

#[derive(Properties, PartialEq)]
pub struct FileProps {
    /// The words on the button.
    pub words: AttrValue,
    /// Called with the picture chosen.
    pub on_file: Callback<Taken>,
}

/// A button that takes a picture from a file.
#[component]
pub fn PictureFile(props: &FileProps) -> Html {
    let input = use_node_ref();
    let onchange = {
        let (on_file, input) = (props.on_file.clone(), input.clone());
        Callback::from(move |event: Event| {
            let chosen = event.target_dyn_into::<HtmlInputElement>().and_then(|field| Taken::chosen(&field));
            document::clear_input(&input);
            if let Some(chosen) = chosen {
                on_file.emit(chosen);
            }
        })
    };
    html! {
        <label class="second file">
            <span>{ &props.words }</span>
            <input ref={input} type="file" accept="image/*" {onchange} />
        </label>
    }
}

#[derive(Properties, PartialEq)]
pub struct FaultProps {
    /// Why there is no picture.
    pub fault: CameraFault,
    /// Called to try again.
    pub again: Callback<()>,
    /// Called with a file chosen instead.
    pub on_file: Callback<Taken>,
}

/// Why the camera shows nothing, and what can be done.
#[component]
pub fn NoCamera(props: &FaultProps) -> Html {
    let again = props.again.reform(|_: MouseEvent| ());
    html! {
        <section class="card">
            <p class="fault" role="alert">{ props.fault.sentence() }</p>
            <p>{ say!("A picture from a file does as well.") }</p>
            <div class="foot-buttons">
                if props.fault.can_pass() {
                    <button type="button" class="second" onclick={again}>{ say!("Try again") }</button>
                }
                <PictureFile words={say!("Choose a picture")} on_file={props.on_file.clone()} />
            </div>
        </section>
    }
}

#[derive(Properties, PartialEq)]
pub struct LampProps {
    /// The camera whose lamp it is.
    pub camera: Callback<bool>,
}

/// Lights the lamp beside the camera.
#[component]
pub fn Lamp(props: &LampProps) -> Html {
    let lit = use_state_eq(|| false);
    let onclick = {
        let (lit, camera) = (lit.clone(), props.camera.clone());
        Callback::from(move |_: MouseEvent| {
            camera.emit(!*lit);
            lit.set(!*lit);
        })
    };
    html! { <button type="button" class="second" aria-pressed={lit.to_string()} {onclick}>{ say!("lamp of the camera" | "Light") }</button> }
}

/// Lights or puts out the lamp of that camera.
pub fn lamp_of(camera: &Rc<RefCell<Option<Camera>>>) -> Callback<bool> {
    let camera = camera.clone();
    Callback::from(move |on: bool| {
        if let Some(camera) = camera.borrow().as_ref() {
            camera.light(on);
        }
    })
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// What is said while the camera is aimed.
    #[prop_or(AttrValue::Static(say!("Lay the seam along the line, a ruler beside it.")))]
    pub aim: AttrValue,
    /// Called with the picture taken.
    pub on_taken: Callback<Taken>,
    /// Called with a picture from a file, where the camera shows nothing.
    pub on_file_instead: Callback<Taken>,
    /// Called when nothing is to be taken.
    pub on_close: Callback<()>,
}

/// The camera as a part of a screen. Put it on the page from a tap: some browsers ask for permission only then.
#[component]
pub fn Viewfinder(props: &Props) -> Html {
    let video = use_node_ref();
    let UseCamera { seen, camera, again } = use_camera(&video, true);
    let failed = use_state_eq(|| false);
    use_effect_with((), |()| tilt::ask());
    let close = props.on_close.reform(|_: MouseEvent| ());
    if let Seen::Failed(fault) = seen {
        return html! {
            <div class="camera">
                <NoCamera {fault} {again} on_file={props.on_file_instead.clone()} />
                <div class="foot"><button type="button" class="second" onclick={close}>{ say!("Cancel") }</button></div>
            </div>
        };
    }
    let shoot = {
        let (camera, failed, on_taken) = (camera.clone(), failed.clone(), props.on_taken.clone());
        Callback::from(move |_: MouseEvent| {
            let (failed, on_taken) = (failed.clone(), on_taken.clone());
            if let Some(camera) = camera.borrow().as_ref() {
                camera.take(move |taken| match taken {
                    Some(taken) => on_taken.emit(taken),
                    None => failed.set(true),
                });
            }
        })
    };
    let live = matches!(seen, Seen::Live { .. });
    html! {
        <div class="camera">
            <div class="camera-stage" data-live={live.to_string()}>
                <video ref={video} playsinline=true muted=true autoplay=true aria-label={say!("What the camera sees")}></video>
                <svg class="camera-guide" viewBox="0 0 300 100" preserveAspectRatio="none" aria-hidden="true" focusable="false">
                    <path class="guide-under" d="M12 50h276" /><path class="guide-line" d="M12 50h276" />
                </svg>
                <p class="camera-words">{ if live { props.aim.clone() } else { AttrValue::Static(say!("The camera is starting.")) } }</p>
                <Level />
            </div>
            <p class="unseen" role="status">{ if live { say!("The camera is on.") } else { say!("The camera is starting.") } }</p>
            if *failed {
                <p class="fault lonely" role="alert">{ say!("That frame could not be kept. Take it once more.") }</p>
            }
            <div class="foot camera-foot">
                <button type="button" class="second" onclick={close}>{ say!("Cancel") }</button>
                <button type="button" class="shutter" aria-label={say!("Take the picture")} disabled={!live} onclick={shoot}></button>
                if let Seen::Live { lamp: true, .. } = seen {
                    <Lamp camera={lamp_of(&camera)} />
                } else {
                    <span></span>
                }
            </div>
        </div>
    }
}
