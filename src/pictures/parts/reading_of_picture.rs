//! Asking about a picture from a page: what is answered, what it waits for, and stopping it.

use garment_assay::say;
use photo::{Answer, Ask};
use yew::prelude::*;

use crate::browser::pictures::Picture;
use crate::browser::reader::{ReadFault, Reader, Told};

/// Where a question stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Asking {
    /// Nothing is asked.
    Nothing,
    /// It is open.
    Open,
    /// It is open, and takes longer than a second.
    Slow,
    /// It was stopped.
    Stopped,
    /// It is answered.
    Answered,
    /// It cannot be answered.
    Failed(ReadFault),
}

#[derive(Clone, Debug, PartialEq)]
struct State {
    asking: Asking,
    answer: Option<Answer>,
}

/// The reader of a page's picture, and what it answered last.
#[derive(Clone, PartialEq)]
pub struct PictureReader {
    reader: Reader,
    state: UseStateHandle<State>,
}

/// A reader that ends with the page.
#[hook]
pub fn use_reader() -> PictureReader {
    let reader = (*use_memo((), |()| Reader::default())).clone();
    let state = use_state(|| State { asking: Asking::Nothing, answer: None });
    PictureReader { reader, state }
}

impl PictureReader {
    /// Takes up a picture.
    pub fn open(&self, picture: &Picture) {
        self.reader.open(picture);
        self.forget();
    }

    /// Lets go of the picture and ends the second thread.
    pub fn close(&self) {
        self.reader.stop();
        self.forget();
    }

    /// Asks about it. The last answer stays on view until there is another.
    pub fn ask(&self, ask: Ask) {
        let state = self.state.clone();
        let last = self.state.answer.clone();
        self.state.set(State { asking: Asking::Open, answer: last.clone() });
        self.reader.ask(&ask, move |told| {
            let next = match told {
                Told::Slow => State { asking: Asking::Slow, answer: last.clone() },
                Told::Answered(answer) => State { asking: Asking::Answered, answer: Some(*answer) },
                Told::Failed(fault) => State { asking: Asking::Failed(fault), answer: None },
            };
            state.set(next);
        });
    }

    /// Stops the open question; the next one starts a new thread.
    pub fn stop(&self) {
        self.reader.stop();
        self.state.set(State { asking: Asking::Stopped, answer: None });
    }

    /// What was answered no longer holds.
    pub fn forget(&self) {
        self.reader.drop_question();
        self.state.set(State { asking: Asking::Nothing, answer: None });
    }

    /// Whether a question was asked that was not forgotten since.
    pub fn was_asked(&self) -> bool {
        matches!(self.state.asking, Asking::Open | Asking::Slow | Asking::Answered)
    }

    /// Where the question stands.
    pub fn state(&self) -> Asking {
        self.state.asking
    }

    /// What was answered last.
    pub fn answer(&self) -> Option<Answer> {
        self.state.answer.clone()
    }
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The reader.
    pub reader: PictureReader,
}

/// That it takes a while, with a way out; or that it failed.
#[component]
pub fn ReadingProgress(props: &Props) -> Html {
    let onclick = {
        let reader = props.reader.clone();
        Callback::from(move |_: MouseEvent| reader.stop())
    };
    match props.reader.state() {
        Asking::Slow => html! {
            <div class="picture-wait" role="status">
                <label for="picture-progress">{ say!("Reading the picture") }</label>
                <progress id="picture-progress"></progress>
                <button type="button" class="second" {onclick}>{ say!("Stop") }</button>
            </div>
        },
        Asking::Stopped => html! { <p class="why" role="status">{ say!("Stopped. Your marks are kept.") }</p> },
        Asking::Failed(fault) => html! { <p class="fault lonely" role="alert">{ fault.sentence() }</p> },
        Asking::Nothing | Asking::Open | Asking::Answered => Html::default(),
    }
}
