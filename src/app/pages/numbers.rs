//! Where the numbers come from: every source, and every number that is judgement.

use garment_assay::catalog::second_hand::CONDITIONS;
use garment_assay::catalog::{FAMILIES, SOURCES};
use garment_assay::check::Check;
use garment_assay::grading::Care;
use garment_assay::measure::{INSTRUMENTS, Input, InputKind};
use garment_assay::quantity::{Decimal, written_exactly};
use garment_assay::source::{Kind, Source};
use garment_assay::trade::Stage;
use yew::prelude::*;

use crate::app::parts::bar::Bar;

fn kind(kind: Kind) -> &'static str {
    match kind {
        Kind::Standard => "Standards and law",
        Kind::Document => "Books, studies, bulletins",
        Kind::Computed => "Computed here",
        Kind::CommonPractice => "Common practice",
        Kind::Judgement => "Judgement",
        Kind::Memory => "From memory, not confirmed",
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
        if sources.iter().all(|known| known.title != source.title) {
            sources.push(source);
        }
    }
    sources
}

const KINDS: [Kind; 6] = [Kind::Standard, Kind::Document, Kind::Computed, Kind::CommonPractice, Kind::Judgement, Kind::Memory];

/// The judged numbers of each check of a family, or of wear.
fn table(name: &'static str, checks: impl Iterator<Item = &'static Check>) -> Html {
    html! {
        <section class="card numbers-table" key={name}>
            <h2>{ format!("{name}: each check") }</h2>
            <p class="hint">{ "“Slope” says how telling a check is, 0.3 little to 1.6 much. “Borders” say where one answer gives way to the next, in bands from the middle. Seconds, slope and borders are judgement." }</p>
            <div class="scroll-x" tabindex="0" role="region" aria-label={format!("Numbers of each check, {name}")}>
                <table>
                    <thead><tr><th scope="col">{ "Check" }</th><th scope="col">{ "Seconds" }</th><th scope="col">{ "Slope" }</th><th scope="col">{ "Borders" }</th><th scope="col">{ "Leans on" }</th></tr></thead>
                    <tbody>
                        { for checks.map(|check| {
                            let curve = check.speaks.curve().or(check.speaks.left());
                            html! {
                                <tr key={check.key}>
                                    <th scope="row">{ check.name }</th>
                                    <td>{ check.seconds }</td>
                                    <td>{ curve.map_or("cost only".to_owned(), |curve| format!("{:.1}", curve.slope)) }</td>
                                    <td>{ curve.map_or(String::new(), |curve| curve.thresholds.iter().map(|border| format!("{border:.1}")).collect::<Vec<_>>().join(" / ").replace('-', "−")) }</td>
                                    <td>{ check.sources.iter().map(|source| source.name).collect::<Vec<_>>().join("; ") }</td>
                                </tr>
                            }
                        }) }
                    </tbody>
                </table>
            </div>
        </section>
    }
}

/// Sources by kind, then the judged numbers of each check.
#[component]
pub fn Numbers() -> Html {
    html! {
        <>
            <Bar title="Where the numbers come from" back="#/settings" back_name="Back to settings" />
            <section class="card">
                <h2>{ "How an opinion is made" }</h2>
                <p>{ "Each answer is likelier for a well-made garment than for a poor one, or the other way round. How much so is the check’s curve. All answers together give a probability for each band; none of them can decide alone." }</p>
                <p>{ "Checks that look at the same thing share an error, so five looks at loose thread count little more than one. You, the light and this one piece share another. That is why the app is seldom very sure." }</p>
                <p>{ "The method is a graded response model (Samejima 1969) with shared errors and slips. The method is published; its numbers are not measured. They are one expert’s judgement, marked so below." }</p>
            </section>
            <section class="card">
                <h2>{ "Numbers that hold for every check" }</h2>
                <dl class="numbers">
                    <dt>{ "Bands" }</dt><dd>{ "Of 100 new garments of a kind, 7 Poor, 24 Basic, 38 Sound, 24 Fine, 7 Exceptional; of 100 second-hand ones as many from Worn out to As new. Judgement." }</dd>
                    <dt>{ "Slips" }</dt><dd>{ format!("{:.0} of 100 answers say nothing; {:.0} when you say you are not sure. Judgement.", Care::Usual.lapse() * 100.0, Care::Unsure.lapse() * 100.0) }</dd>
                    <dt>{ "Shared errors" }</dt><dd>{ "0.4 of a band for you and the light; 0.6 for checks of one kind, 1.0 for stitching. Judgement." }</dd>
                    <dt>{ "Seconds" }</dt><dd>{ format!("{:.0} to take it down, {:.0} to turn it inside out, {:.0} to put it on. Judgement.", Stage::InHand.seconds_to_reach(), Stage::InsideOut.seconds_to_reach(), Stage::Worn.seconds_to_reach()) }</dd>
                    <dt>{ "Settled" }</dt><dd>{ "Two neighbouring bands hold 80 %. Judgement." }</dd>
                </dl>
            </section>
            { for FAMILIES.iter().map(|family| table(family.name, family.checks.iter().copied())) }
            { table("Second-hand", CONDITIONS.iter().map(|condition| &condition.check)) }
            <section class="card">
                <h2>{ "Instruments: what usually stands" }</h2>
                <p class="hint">{ "How far off a reading may be, and other figures that stand when you leave a field empty. Judgement, unless the instrument’s page names a source." }</p>
                <dl class="numbers">
                    { for INSTRUMENTS.iter().filter(|instrument| instrument.inputs.iter().any(is_figure)).map(|instrument| html! {
                        <div key={instrument.key}><dt>{ instrument.name }</dt><dd>{
                            instrument.inputs.iter().filter(|input| is_figure(input)).filter_map(|input| {
                                let usual = written_exactly(input.usual()?, 3, Decimal::Point);
                                Some(format!("{}: {usual} {}", input.name.to_lowercase(), input.unit.symbol()))
                            }).collect::<Vec<_>>().join("; ")
                        }</dd></div>
                    }) }
                </dl>
            </section>
            <section class="card">
                <h2>{ "Sources" }</h2>
                { for KINDS.into_iter().map(|of| {
                    let sources: Vec<&Source> = sources().into_iter().filter(|source| source.kind == of).collect();
                    html! {
                        <div key={kind(of)}>
                            if !sources.is_empty() {
                                <h3>{ kind(of) }</h3>
                                <dl class="numbers">
                                    { for sources.into_iter().map(|source| html! { <div key={source.title}><dt>{ source.name }</dt><dd>{ source.title }</dd></div> }) }
                                </dl>
                            }
                        </div>
                    }
                }) }
            </section>
        </>
    }
}
