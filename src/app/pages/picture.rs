//! Stitches counted on a picture: take it, mark the ruler and the seam, look at the stitches found, use the reading.

use std::rc::Rc;

use garment_assay::check::Check;
use garment_assay::garment::{Act, Answer, Given, Id, Readings};
use garment_assay::measure::{Instrument, PhotoSpread, STITCH_PHOTO, stitch_photo_readings};
use garment_assay::quantity::{Decimal, System, written};
use photo::{Ask, Cause, Graduation, Heard, Part, Said, SeamCount};
use yew::prelude::*;

use crate::app::browser::pictures::Picture;
use crate::app::model::Message;
use crate::app::parts::bar::Bar;
use crate::app::parts::known_size::{KnownSize, KnownSizeForm};
use crate::app::parts::marking::Marks;
use crate::app::parts::picture::{Found, Join, PictureBoard};
use crate::app::parts::reading_of_picture::{Asking, ReadingProgress, use_reader};
use crate::app::parts::take::Take;
use crate::app::route::Route;
use crate::app::words;

/// How the picture is taken.
const HOW: &[&str] = &[
    "Lay the seam flat. Lay a ruler so that it touches the seam along the whole stretch, or a bank card or coin close beside it.",
    "Hold the phone flat above it, near enough that single stitches are seen. Let light fall from the side.",
    "Take in ten stitches or more. Cover the numbers of a bank card.",
];
/// Marks along the seam.
const SEAM: usize = 2;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Metric or imperial.
    pub system: System,
    /// The garment and the check that the reading is for; none on the bench.
    pub target: Option<(Id, &'static Check)>,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// The parts of a budget by what they come from: those of one cause together, as independent ones.
pub fn spread(budget: &[Part]) -> PhotoSpread {
    let of = |cause: Cause| budget.iter().filter(|part| part.from == cause).map(|part| part.share.powi(2)).sum::<f64>().sqrt();
    PhotoSpread { scale: of(Cause::Scale), height: of(Cause::Height), tilt: of(Cause::Tilt), counting: of(Cause::Counting) }
}

/// Amounts in the order of an instrument's inputs, each in its first unit, as readings.
pub fn readings(instrument: &'static Instrument, amounts: &[f64]) -> Readings {
    let given = instrument.inputs.iter().zip(amounts);
    Readings {
        instrument,
        given: given.map(|(input, amount)| Given { input: input.key, amount: *amount, unit: input.unit }).collect(),
    }
}

fn readings_of(count: &SeamCount) -> Readings {
    let stitches = u16::try_from(count.stitches.len()).unwrap_or(u16::MAX);
    readings(&STITCH_PHOTO, &stitch_photo_readings(count.stitch_mm, stitches, spread(&count.budget)))
}

/// How even the stitches are, in words. Where the words change is judgement; a picture tells evenness to a hundredth or two.
fn evenness(unevenness: f64) -> String {
    let word = match unevenness {
        share if share < 0.06 => "Even",
        share if share < 0.12 => "A little uneven",
        _ => "Uneven",
    };
    format!("{word}: the length of stitches varies by {} % (standard deviation, as a share of the mean).", written(unevenness * 100.0, 0, Decimal::Point))
}

fn long_stitches(count: &SeamCount) -> Option<String> {
    let long = count.stitches.iter().filter(|stitch| stitch.skipped).count();
    let line = match long {
        0 => return None,
        1 => "One long stitch, dotted on the picture, may be a skipped one.".to_owned(),
        long => format!("{long} long stitches, dotted on the picture, may be skipped ones."),
    };
    Some(format!("{line} Look at the cloth: a picture misses most skipped stitches and takes some others for them."))
}

/// What the object told.
fn about_scale(found: &photo::Found) -> Option<String> {
    let ruler = found.graduation.map(|graduation| {
        let step = match graduation {
            Graduation::Millimetre => "millimetres",
            Graduation::Sixteenth => "sixteenths of an inch",
        };
        format!("The ruler shows {step}.")
    });
    let tilt = found.tilt.filter(|tilt| *tilt >= 3.0).map(|tilt| {
        format!("The phone was tilted by about {}°.", written(tilt, 0, Decimal::Point))
    });
    let both: Vec<String> = [ruler, tilt].into_iter().flatten().collect();
    (!both.is_empty()).then(|| both.join(" "))
}

#[derive(Properties, PartialEq)]
struct CountProps {
    found: photo::Found,
    count: SeamCount,
    said: Said,
    say: Callback<Said>,
}

/// The reading, what it consists of, and whether it is the right one of two.
#[component]
fn Counted(props: &CountProps) -> Html {
    let CountProps { found, count, said, say } = props;
    let says = |what: Said| {
        let say = say.clone();
        Callback::from(move |_: MouseEvent| say.emit(what))
    };
    let over: f64 = count.stitch_mm * count.stitches.len() as f64;
    let outcome = readings_of(count).outcome();
    html! {
        <section class="card">
            <output class="marks-figure" aria-live="polite">
                if let Ok(outcome) = &outcome {
                    <b>{ words::value(outcome.value, outcome.uncertainty) }</b>
                    <span>{ "stitches per inch" }</span>
                    <span>{ words::spread_and_per_cm(outcome.value, outcome.uncertainty) }</span>
                } else if let Err(fault) = &outcome {
                    <span class="fault">{ fault.sentence(System::Metric, Decimal::Point) }</span>
                }
            </output>
            <p>{ format!("{} stitches found over {} mm. Do the bars lie on the needle holes?", count.stitches.len(), written(over, 0, Decimal::Point)) }</p>
            <div class="row">
                if *said == Said::Nothing {
                    <button type="button" class="second" onclick={says(Said::Twice)}>{ "Twice as many" }</button>
                    <button type="button" class="second" onclick={says(Said::Half)}>{ "Half as many" }</button>
                } else {
                    <button type="button" class="second" onclick={says(Said::Nothing)}>{ "As first found" }</button>
                }
            </div>
            <p class="hint">{ evenness(count.unevenness) }</p>
            if let Some(long) = long_stitches(count) {
                <p class="hint">{ long }</p>
            }
            if let Ok(outcome) = &outcome {
                <p class="hint">{ words::budget(outcome, &STITCH_PHOTO) }</p>
            }
            if let Some(scale) = about_scale(found) {
                <p class="hint">{ scale }</p>
            }
        </section>
    }
}

/// What is shown on the picture.
fn shown(told: &Option<Heard>) -> Found {
    match told {
        Some(Heard::Seam(found, count)) => Found {
            places: found.places.clone(),
            stitches: count.iter().flat_map(|count| &count.stitches).map(|one| (one.from, one.to, one.skipped)).collect(),
            ..Found::default()
        },
        _ => Found::default(),
    }
}

/// Why there is no reading, and the choice where two fit.
fn refusal_shown(told: &Heard, say: &Callback<Said>) -> Html {
    match told {
        Heard::NoScale(refused) => html! { <p class="fault" role="alert">{ &refused.sentence }</p> },
        Heard::Seam(_, Err(refused)) => html! {
            <>
                <p class="fault" role="alert">{ &refused.sentence }</p>
                if let Some(rivals) = refused.rivals {
                    <div class="row">
                        { for rivals.into_iter().map(|per_cm| {
                            let say = say.clone();
                            let onclick = Callback::from(move |_: MouseEvent| say.emit(Said::About(per_cm)));
                            html! { <button key={per_cm.to_bits().to_string()} type="button" class="second" {onclick}>{ format!("{} per cm · {} per inch", written(per_cm, 1, Decimal::Point), written(per_cm * 2.54, 1, Decimal::Point)) }</button> }
                        }) }
                    </div>
                }
            </>
        },
        _ => Html::default(),
    }
}

/// The page.
#[component]
pub fn StitchPicture(props: &Props) -> Html {
    let Props { system, target, send } = props;
    let picture = use_state(|| None::<Picture>);
    let known = use_state(|| KnownSize::usual(*system));
    let marks = use_state(|| Marks::new(known.kind.marks() + SEAM));
    let said = use_state_eq(|| Said::Nothing);
    let kept = use_state_eq(|| false);
    let reader = use_reader();
    let back = target.as_ref().map_or(Route::Bench, |(id, check)| Route::Check(id.clone(), check.key.to_owned())).href();
    let Some(taken) = (*picture).clone() else {
        let taken = {
            let (picture, reader) = (picture.clone(), reader.clone());
            Callback::from(move |taken: Picture| {
                reader.open(&taken);
                picture.set(Some(taken));
            })
        };
        return html! {
            <>
                <Bar title={STITCH_PHOTO.name} under="Counts the stitches between two marks" {back} back_name="Back" />
                <Take how={HOW} {taken} />
            </>
        };
    };
    let ask = {
        let (reader, known, system, kept) = (reader.clone(), known.clone(), *system, kept.clone());
        move |marks: &Marks, said: Said| {
            let Some(all) = marks.all() else { return };
            let (object, seam) = all.split_at(all.len() - SEAM);
            if let Ok(object) = known.object(object, system) {
                kept.set(false);
                reader.ask(Ask::Seam(seam[0], seam[1], object, said));
            }
        }
    };
    let on_marks = {
        let (marks, said, reader, ask) = (marks.clone(), said.clone(), reader.clone(), ask.clone());
        Callback::from(move |next: Marks| {
            let moved = next.places() != marks.places();
            if moved {
                said.set(Said::Nothing);
                // Once there was an answer, a mark that is moved asks again.
                if reader.was_asked() && next.all().is_some() { ask(&next, Said::Nothing) } else { reader.forget() }
            }
            marks.set(next);
        })
    };
    let on_known = {
        let (known, marks, said, reader) = (known.clone(), marks.clone(), said.clone(), reader.clone());
        Callback::from(move |next: KnownSize| {
            if next.kind != known.kind {
                marks.set(marks.with_front(next.kind.marks(), SEAM));
            }
            said.set(Said::Nothing);
            reader.forget();
            known.set(next);
        })
    };
    let say = {
        let (said, marks, ask) = (said.clone(), marks.clone(), ask.clone());
        Callback::from(move |what: Said| {
            said.set(what);
            ask(&marks, what);
        })
    };
    let count = {
        let (marks, said, ask) = (marks.clone(), said.clone(), ask.clone());
        Callback::from(move |_: MouseEvent| ask(&marks, *said))
    };
    let another = {
        let (picture, marks, known, said, reader) = (picture.clone(), marks.clone(), known.clone(), said.clone(), reader.clone());
        Callback::from(move |_: MouseEvent| {
            reader.close();
            said.set(Said::Nothing);
            marks.set(Marks::new(known.kind.marks() + SEAM));
            picture.set(None);
        })
    };
    let object_marks = known.kind.marks();
    let names = (0..object_marks).map(|mark| known.kind.mark(mark)).chain(["First stitch".to_owned(), "Last stitch".to_owned()]);
    let how = match marks.chosen() {
        mark if mark < object_marks => known.kind.how(mark),
        mark if mark == object_marks => "Tap the seam where the first stitch begins, on the thread itself.",
        _ => "Tap the same row of stitches where the last stitch ends.",
    };
    let size_fault = marks.all().and_then(|all| known.object(&all[..object_marks], *system).err());
    let told = reader.answer();
    let counted = match &told {
        Some(Heard::Seam(found, Ok(count))) => Some((found.clone(), count.clone())),
        _ => None,
    };
    let use_it = counted.as_ref().map(|(_, count)| readings_of(count)).filter(|readings| readings.outcome().is_ok());
    let onuse = {
        let (send, target, use_it, kept) = (send.clone(), target.clone(), use_it.clone(), kept.clone());
        Callback::from(move |_: MouseEvent| {
            let Some(readings) = use_it.clone() else { return };
            match &target {
                Some((id, check)) => send.emit(Message::Done(id.clone(), Act::Answer(check, Answer::Measured(readings)))),
                None => {
                    kept.set(true);
                    send.emit(Message::Tried(readings));
                }
            }
        })
    };
    let all_set = marks.all().is_some();
    html! {
        <div class="picture-screen" data-told={told.is_some().to_string()}>
            <Bar title={STITCH_PHOTO.name} {back} back_name="Back" />
            <PictureBoard picture={taken.clone()} names={Rc::new(names.collect::<Vec<_>>())} marks={(*marks).clone()}
                joins={Rc::new(vec![(known.kind.join(), 0, object_marks - 1), (Join::Line, object_marks, object_marks + 1)])}
                found={Rc::new(shown(&told))} how={if told.is_some() { "" } else if all_set { "See that each mark is right: drag it, or move it by arrow keys." } else { how }} on={on_marks} />
            <ReadingProgress reader={reader.clone()} />
            if let Some(told) = &told {
                { refusal_shown(told, &say) }
            }
            if let Some((found, count)) = &counted {
                <Counted found={found.clone()} count={count.clone()} said={*said} {say} />
            }
            <KnownSizeForm known={(*known).clone()} system={*system} on={on_known} />
            if let Some([width, height]) = taken.reduced_from() {
                <p class="why">{ format!("The picture has {width} × {height} pixels. It is read at {} × {}, which is enough and spares memory.", taken.size()[0], taken.size()[1]) }</p>
            }
            <div class="foot">
                <button type="button" class="second" onclick={another}>{ "Other picture" }</button>
                if let Some(readings) = &use_it {
                    <button type="button" class="prime" onclick={onuse} disabled={*kept}>
                        { match (readings.outcome(), target.is_some(), *kept) {
                            (_, false, true) => "Kept".to_owned(),
                            (Ok(outcome), true, _) => format!("Use {}", words::value(outcome.value, outcome.uncertainty)),
                            _ => "Keep this reading".to_owned(),
                        } }
                    </button>
                } else {
                    <button type="button" class="prime" onclick={count} disabled={!all_set || size_fault.is_some() || reader.state() == Asking::Open}>{ "Count the stitches" }</button>
                }
            </div>
        </div>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn parts_of_one_cause_are_added_as_independent_ones() {
        let part = |from, share| Part { from, share };
        let spread = spread(&[part(Cause::Scale, 0.03), part(Cause::Tilt, 0.01), part(Cause::Scale, 0.04)]);
        assert_eq!(spread, PhotoSpread { scale: 0.05, tilt: 0.01, ..PhotoSpread::default() });
    }

    #[test]
    fn a_count_becomes_readings_that_the_instrument_takes() {
        let budget = vec![Part { from: Cause::Scale, share: 0.006 }, Part { from: Cause::Counting, share: 0.008 }];
        let stitches = vec![photo::Stitch { from: Default::default(), to: Default::default(), skipped: false }; 12];
        let count = SeamCount { stitch_mm: 2.54, budget, stitches, unevenness: 0.04, px_per_stitch: 30.0 };
        let outcome = readings_of(&count).outcome().expect("an outcome");
        assert!((outcome.value - 10.0).abs() < 1e-9 && outcome.uncertainty > 0.099, "{outcome:?}");
        assert!(evenness(count.unevenness).starts_with("Even: the length of stitches varies by 4 %"));
    }
}
