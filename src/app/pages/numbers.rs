//! Where the numbers come from: every source, and every number that is judgement.

use garment_assay::catalog::second_hand::CONDITIONS;
use garment_assay::catalog::{FAMILIES, SOURCES};
use garment_assay::check::Check;
use garment_assay::grading::Care;
use garment_assay::language::within;
use garment_assay::measure::{INSTRUMENTS, Input, InputKind};
use garment_assay::quantity::{Decimal, written, written_exactly};
use garment_assay::say;
use garment_assay::source::{Kind, Source};
use garment_assay::trade::Stage;
use yew::prelude::*;

use crate::app::parts::bar::Bar;
use crate::app::parts::laid::{Rest, use_laid};

fn kind(kind: Kind) -> &'static str {
    match kind {
        Kind::Standard => say!("Standards and law"),
        Kind::Document => say!("Books, studies, bulletins"),
        Kind::Computed => say!("Computed here"),
        Kind::CommonPractice => say!("Common practice"),
        Kind::Judgement => say!("Judgement"),
        Kind::Memory => say!("From memory, not confirmed"),
    }
}

/// A number that stands when nothing is given.
fn is_figure(input: &Input) -> bool {
    input.usual().is_some() && matches!(input.kind, InputKind::Measured | InputKind::WholeCount)
}

/// Sources of the checks, then those of the instruments that are not among them.
fn sources() -> Vec<&'static Source> {
    let mut sources: Vec<&'static Source> = SOURCES.to_vec();
    for source in INSTRUMENTS.iter().flat_map(|instrument| instrument.sources) {
        if sources.iter().all(|known| known.title() != source.title()) {
            sources.push(source);
        }
    }
    sources
}

const KINDS: [Kind; 6] = [Kind::Standard, Kind::Document, Kind::Computed, Kind::CommonPractice, Kind::Judgement, Kind::Memory];

/// The judged numbers of each check of a family, or of wear.
fn table(name: &'static str, checks: impl Iterator<Item = &'static Check>) -> Html {
    html! {
        <section class="card" key={name}>
            <h2>{ say!("{name}: each check", name) }</h2>
            <p class="hint">{ say!("“Slope” says how telling a check is, 0.3 little to 1.6 much. “Borders” say where one answer gives way to the next, in bands from the middle. Seconds, slope and borders are judgement.") }</p>
            <div class="scroll-x" tabindex="0" role="region" aria-label={say!("Numbers of each check, {name}", name)}>
                <table>
                    <thead><tr><th scope="col">{ say!("noun" | "Check") }</th><th scope="col">{ say!("Seconds") }</th><th scope="col">{ say!("Slope") }</th><th scope="col">{ say!("Borders") }</th><th scope="col">{ say!("Leans on") }</th></tr></thead>
                    <tbody>
                        { for checks.map(|check| {
                            let curve = check.speaks.curve().or(check.speaks.left());
                            html! {
                                <tr key={check.key}>
                                    <th scope="row">{ check.name() }</th>
                                    <td>{ check.seconds }</td>
                                    <td>{ curve.map_or_else(|| say!("cost only").to_owned(), |curve| written(curve.slope, 1, Decimal::spoken())) }</td>
                                    <td>{ curve.map_or(String::new(), |curve| curve.thresholds.iter().map(|border| written(*border, 1, Decimal::spoken())).collect::<Vec<_>>().join(" / ")) }</td>
                                    <td>{ check.sources.iter().map(|source| source.name()).collect::<Vec<_>>().join("; ") }</td>
                                </tr>
                            }
                        }) }
                    </tbody>
                </table>
            </div>
        </section>
    }
}

/// What usually stands where an instrument is given nothing.
fn instruments() -> Html {
    html! {
        <section class="card" key="instruments">
            <h2>{ say!("Instruments: what usually stands") }</h2>
            <p class="hint">{ say!("How far off a reading may be, and other figures that stand when you leave a field empty. Judgement, unless the instrument’s page names a source.") }</p>
            <dl class="numbers">
                { for INSTRUMENTS.iter().filter(|instrument| instrument.inputs.iter().any(is_figure)).map(|instrument| html! {
                    <div key={instrument.key}><dt>{ instrument.name() }</dt><dd>{
                        instrument.inputs.iter().filter(|input| is_figure(input)).filter_map(|input| {
                            let usual = written_exactly(input.usual()?, 3, Decimal::spoken());
                            Some(format!("{}: {usual} {}", within(input.name()), input.unit.symbol()))
                        }).collect::<Vec<_>>().join("; ")
                    }</dd></div>
                }) }
            </dl>
        </section>
    }
}

/// Every source, by its kind.
fn by_kind() -> Html {
    html! {
        <section class="card" key="sources">
            <h2>{ say!("Sources") }</h2>
            { for KINDS.into_iter().map(|of| {
                let sources: Vec<&Source> = sources().into_iter().filter(|source| source.kind == of).collect();
                html! {
                    <div key={kind(of)}>
                        if !sources.is_empty() {
                            <h3>{ kind(of) }</h3>
                            <dl class="numbers">
                                { for sources.into_iter().map(|source| html! { <div key={source.title()}><dt>{ source.name() }</dt><dd>{ source.title() }</dd></div> }) }
                            </dl>
                        }
                    </div>
                }
            }) }
        </section>
    }
}

/// Long parts of the page: a table for each family and one for wear, the instruments, the sources.
const PARTS: usize = FAMILIES.len() + 3;
/// As many of them as a phone shows before it is moved. The others follow one in a turn, so that no tap waits for them.
/// Judgement.
const AT_ONCE: usize = 1;

/// The long part of that place.
fn part(place: usize) -> Html {
    match place.checked_sub(FAMILIES.len()) {
        None => table(FAMILIES[place].name(), FAMILIES[place].checks.iter().copied()),
        Some(0) => table(say!("Second-hand"), CONDITIONS.iter().map(|condition| &condition.check)),
        Some(1) => instruments(),
        Some(_) => by_kind(),
    }
}

/// How an opinion is made, the judged numbers of each check, what the instruments take for granted, and every source.
#[component]
pub fn Numbers() -> Html {
    let laid = use_laid(AT_ONCE, PARTS);
    html! {
        <>
            <Bar title={say!("Where the numbers come from")} back="#/settings" back_name={say!("Back to settings")} />
            <section class="card">
                <h2>{ say!("How an opinion is made") }</h2>
                <p>{ say!("Each answer is likelier for a well-made garment than for a poor one, or the other way round. How much so is the check’s curve. All answers together give a probability for each band; none of them can decide alone.") }</p>
                <p>{ say!("Checks that look at the same thing share an error, so five looks at loose thread count little more than one. You, the light and this one piece share another. That is why the app is seldom very sure.") }</p>
                <p>{ say!("The method is a graded response model (Samejima 1969) with shared errors and slips. The method is published; its numbers are not measured. They are one expert’s judgement, marked so below.") }</p>
            </section>
            <section class="card">
                <h2>{ say!("Numbers that hold for every check") }</h2>
                <dl class="numbers">
                    <dt>{ say!("Bands") }</dt><dd>{ say!("Of 100 new garments of a kind, 7 Poor, 24 Basic, 38 Sound, 24 Fine, 7 Exceptional; of 100 second-hand ones as many from Worn out to As new. Judgement.") }</dd>
                    <dt>{ say!("careless errors" | "Slips") }</dt><dd>{ say!("{usual} of 100 answers say nothing; {unsure} when you say you are not sure. Judgement.", usual = (Care::Usual.lapse() * 100.0).round(), unsure = (Care::Unsure.lapse() * 100.0).round()) }</dd>
                    <dt>{ say!("Shared errors") }</dt><dd>{ say!("0.4 of a band for you and the light; 0.6 for checks of one kind, 1.0 for stitching. Judgement.") }</dd>
                    <dt>{ say!("Seconds") }</dt><dd>{ say!("{take} to take it down, {turn} to turn it inside out, {put_on} to put it on. Judgement.", take = Stage::InHand.seconds_to_reach().round(), turn = Stage::InsideOut.seconds_to_reach().round(), put_on = Stage::Worn.seconds_to_reach().round()) }</dd>
                    <dt>{ say!("the band" | "Settled") }</dt><dd>{ say!("Two neighbouring bands hold 80 %. Judgement.") }</dd>
                </dl>
            </section>
            // A list of their own: among the others, which have no keys, each turn would make the whole page anew.
            <>{ for (0..laid.min(PARTS)).map(part) }</>
            <Rest of={laid < PARTS} />
        </>
    }
}
