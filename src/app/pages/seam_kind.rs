//! Which stitch and which seam it is, from what an untrained eye can see.

use garment_assay::language::within;
use garment_assay::measure::{
    BACK, Choice, EDGE, Instrument, Look, ROWS, SEAM_STRENGTH, SEWING_TIME, SeamClass, StitchType, THREAD_USE,
    seams_that_look_so, stitches_that_look_so,
};
use garment_assay::quantity::{Decimal, written_exactly};
use garment_assay::say;
use garment_assay::specimen::Picture;
use yew::prelude::*;

use crate::app::parts::bar::Bar;
use crate::app::parts::drawn::Drawn;
use crate::app::route::Route;
use crate::app::words;

/// What was said to a look.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
enum Seen {
    /// Nothing yet.
    #[default]
    Nothing,
    /// Looked, and cannot tell.
    CannotTell,
    /// This, by its key.
    This(&'static str),
}

impl Seen {
    const fn key(self) -> Option<&'static str> {
        match self {
            Seen::Nothing | Seen::CannotTell => None,
            Seen::This(key) => Some(key),
        }
    }
}

/// Keys of the choices of a look and what each looks like.
type Pictures = &'static [(&'static str, Picture)];

#[derive(Properties, PartialEq)]
struct QuestionProps {
    /// Which question it is, for people.
    number: u8,
    /// Key of the look.
    name: &'static str,
    /// The question.
    ask: &'static str,
    /// What may be seen.
    choices: &'static [Choice],
    /// What each looks like, where it is drawn.
    pictures: Pictures,
    /// What was said.
    seen: Seen,
    /// Called with what is said.
    say: Callback<Seen>,
}

/// One look, as native radio buttons.
#[component]
fn Question(props: &QuestionProps) -> Html {
    let QuestionProps { number, name, ask, choices, pictures, seen, say } = props;
    let option = |this: Seen, key: &'static str, title: &'static str, line: &'static str| {
        let chosen = *seen == this;
        let picture = pictures.iter().find(|(known, _)| *known == key).map(|(_, picture)| *picture);
        html! {
            <label {key} class="answer" data-chosen={chosen.to_string()}>
                <input type="radio" name={*name} value={key} checked={chosen} onchange={say.reform(move |_: Event| this)} />
                if let Some(picture) = picture {
                    <Drawn {picture} />
                }
                <span class="answer-words"><b>{ title }</b><small>{ line }</small></span>
            </label>
        }
    };
    html! {
        <section class="card">
            <fieldset class="answers look">
                <legend>{ format!("{number}. {ask}") }</legend>
                { for choices.iter().map(|choice| option(Seen::This(choice.key), choice.key, choice.name(), choice.line())) }
                { option(Seen::CannotTell, "cannot-tell", say!("Can’t tell"), say!("Then everything it could be stays open.")) }
            </fieldset>
        </section>
    }
}

fn question(number: u8, look: &'static Look, pictures: Pictures, seen: &UseStateHandle<Seen>) -> Html {
    let say = {
        let seen = seen.clone();
        Callback::from(move |now| seen.set(now))
    };
    html! { <Question {number} name={look.key} ask={look.ask()} choices={look.choices} {pictures} seen={**seen} {say} /> }
}

/// What one thing implies, in three rows.
fn implied(strength: &str, thread: &str, cost: &str) -> Html {
    html! {
        <dl class="implied">
            <div><dt>{ say!("Strength") }</dt><dd>{ strength }</dd></div>
            <div><dt>{ say!("Thread") }</dt><dd>{ thread }</dd></div>
            <div><dt>{ say!("Cost") }</dt><dd>{ cost }</dd></div>
        </dl>
    }
}

fn thread(stitch: &StitchType) -> String {
    match stitch.ratio {
        Some(ratio) => say!("About {length} cm on each cm of seam.", length = written_exactly(ratio, 1, Decimal::spoken())),
        None => say!("No figure is at hand.").to_owned(),
    }
}

/// From so many on, each is folded: the names are what one compares then.
const FOLDED: usize = 4;

/// A thing that it may be, folded where there are many.
fn found(key: &'static str, name: Html, body: Html, folded: bool) -> Html {
    html! {
        <li {key}>
            if folded {
                <details><summary>{ name }</summary>{ body }</details>
            } else {
                <h3>{ name }</h3>
                { body }
            }
        </li>
    }
}

fn stitch(stitch: &'static StitchType, folded: bool) -> Html {
    let name = html! { <><b class="number">{ stitch.number }</b>{ format!(" {}", stitch.name()) }</> };
    let body = html! {
        <>
            <p>{ stitch.implies() }</p>
            <p class="hint">{ say!("Met in: {places}", places = within(stitch.met())) }</p>
            { implied(stitch.strength(), &thread(stitch), stitch.cost()) }
        </>
    };
    found(stitch.number, name, body, folded)
}

fn seam(seam: &'static SeamClass, folded: bool) -> Html {
    let name = html! { <><b class="number">{ seam.letters() }</b>{ format!(" {}", seam.name()) }</> };
    let body = html! {
        <>
            <p>{ seam.implies() }</p>
            <p class="hint">{ say!("ISO 4916 class {class}.", class = seam.class()) }</p>
            <p>{ seam.costs() }</p>
        </>
    };
    found(seam.key, name, body, folded)
}

/// "Lockstitch (301)", or how many it may be.
fn stitch_verdict(names: &[String], of: usize) -> String {
    match names {
        [] => say!("No stitch that we know looks so. Look again, or choose “Can’t tell”.").to_owned(),
        few if few.len() < FOLDED => say!("The stitch: {names}.", names = either(few)),
        many if many.len() == of => say!("The stitch can be any of the {count} that we know.", count = of),
        many => say!("The stitch can be any of {count}.", count = many.len()),
    }
}

/// The same of the seam.
fn seam_verdict(names: &[String], of: usize) -> String {
    match names {
        [] => say!("No seam that we know looks so. Look again, or choose “Can’t tell”.").to_owned(),
        few if few.len() < FOLDED => say!("The seam: {names}.", names = either(few)),
        many if many.len() == of => say!("The seam can be any of the {count} that we know.", count = of),
        many => say!("The seam can be any of {count}.", count = many.len()),
    }
}

fn either(names: &[String]) -> String {
    words::joined(&names.iter().map(String::as_str).collect::<Vec<_>>())
}

fn link(instrument: &'static Instrument) -> Html {
    html! {
        <li key={instrument.key}><a href={Route::Instrument(instrument.key.to_owned()).href()}><b>{ instrument.name() }</b><small>{ instrument.says() }</small></a></li>
    }
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// What the back may show, drawn, by the keys of its choices.
    #[prop_or_default]
    pub backs: &'static [(&'static str, Picture)],
    /// How many rows the face may show, drawn.
    #[prop_or_default]
    pub rows: &'static [(&'static str, Picture)],
    /// What may have become of the edges, drawn.
    #[prop_or_default]
    pub edges: &'static [(&'static str, Picture)],
}

/// Three looks, and what they leave open.
#[component]
pub fn SeamKind(props: &Props) -> Html {
    let (back, rows, edge) = (use_state_eq(Seen::default), use_state_eq(Seen::default), use_state_eq(Seen::default));
    let stitches: Vec<&StitchType> = stitches_that_look_so(back.key(), rows.key()).collect();
    let seams: Vec<&SeamClass> = seams_that_look_so(edge.key()).collect();
    let looked_at_stitch = *back != Seen::Nothing || *rows != Seen::Nothing;
    let looked_at_edge = *edge != Seen::Nothing;
    let all = stitches_that_look_so(None, None).count();
    let stitch_said = stitch_verdict(
        &stitches.iter().map(|stitch| format!("{} ({})", within(stitch.name()), stitch.number)).collect::<Vec<_>>(),
        all,
    );
    let seam_said = seam_verdict(
        &seams.iter().map(|seam| format!("{} ({})", within(seam.name()), seam.letters())).collect::<Vec<_>>(),
        seams_that_look_so(None).count(),
    );
    html! {
        <>
            <Bar title={say!("Which stitch, which seam")} under={say!("Three looks; no thread is pulled")} back={Route::Bench.href()} back_name={say!("Back to the bench")} />
            { question(1, &BACK, props.backs, &back) }
            { question(2, &ROWS, props.rows, &rows) }
            { question(3, &EDGE, props.edges, &edge) }
            <section class="card seam-answer" aria-labelledby="seam-answer">
                <h2 id="seam-answer">{ say!("What it is") }</h2>
                if !looked_at_stitch && !looked_at_edge {
                    <p>{ say!("Answer one of the questions, and what it can be appears here.") }</p>
                }
                if looked_at_stitch && !stitches.is_empty() {
                    <ul class="found" aria-label={say!("Stitch types")}>{ for stitches.iter().map(|kind| stitch(kind, stitches.len() >= FOLDED)) }</ul>
                }
                if looked_at_edge {
                    <ul class="found" aria-label={say!("Seam classes")}>{ for seams.iter().map(|kind| seam(kind, seams.len() >= FOLDED)) }</ul>
                }
                <p class="hint">{ say!("Numbers of stitches: ISO 4915, and the same in ASTM D6193. Letters of seams: ASTM D6193. Looks from stitch guides, some of it from memory; what is said of strength and cost is partly judgement.") }</p>
            </section>
            <section class="card">
                <h2>{ say!("Work it out") }</h2>
                <ul class="further">{ for [&SEAM_STRENGTH, &THREAD_USE, &SEWING_TIME].into_iter().map(link) }</ul>
            </section>
            // In view while the questions are: on a phone the rest of the answer lies far below them.
            <div class="seam-said" role="status">
                if looked_at_stitch {
                    <p>{ &stitch_said }</p>
                }
                if looked_at_edge {
                    <p>{ &seam_said }</p>
                }
            </div>
        </>
    }
}
