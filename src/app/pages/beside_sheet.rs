//! Two to four garments on one printed page: how well made each is and how sure that is, what it costs, what moved it, where they differ, what
//! was not looked at, and what of it is judgement.

use std::rc::Rc;

use garment_assay::cost::Rates;
use garment_assay::garment::{Appraisal, Garment, NotLanded, landed_smallest};
use garment_assay::language::one;
use garment_assay::quantity::{Decimal, System, written_with_spread};
use garment_assay::rack::{Beside, Difference, ReadingDifference};
use garment_assay::say;
use garment_assay::trade::{Band, Day, Question};
use yew::prelude::*;

use crate::app::appraisals::Appraisals;
use crate::app::browser::{clock, document};
use crate::app::money::{exact, share};
use crate::app::pages::beside::{ALIKE, LETTERS, better, too_few};
use crate::app::parts::bar::Bar;
use crate::app::parts::tape::Tape;
use crate::app::route::Route;
use crate::app::words::{self, headline};
use crate::app::worth;

/// Answers named that moved each result most, and checks named that nobody looked at.
const NAMED: usize = 3;
/// Readings that differ and get a row, at the most: the rest of the room is for answers.
const READINGS: usize = 6;
/// Longest name, place or supplier that a column has room for, in characters; what is over is cut, and says so.
const LONGEST: usize = 40;

/// The page as it must be reckoned with: as narrow as A4 and as low as Letter within margins of 12 mm, in millimetres. What does not fit is
/// left out before it is printed, and said to be; lines are counted by characters, and generously.
struct Room {
    left: f64,
    /// Characters to a line of a cell.
    cell: usize,
}

impl Room {
    const HEIGHT: f64 = 255.0;
    const LINE: f64 = 3.3;
    /// Between two rows.
    const GAP: f64 = 1.2;
    /// Title, tape, headings between rows, the foot and a reserve.
    const REST: f64 = 60.0;
    /// Characters to a line of the first column, and of the whole page.
    const TITLE: usize = 17;
    const WIDE: usize = 118;

    fn new(garments: usize) -> Room {
        let cell = match garments {
            2 => 46,
            3 => 29,
            _ => 21,
        };
        Room { left: Room::HEIGHT - Room::REST, cell }
    }

    fn lines(text: &str, width: usize) -> f64 {
        text.chars().count().div_ceil(width).max(1) as f64
    }

    /// Takes room for a row; false, and none taken, when there is not enough.
    fn takes(&mut self, row: &Row) -> bool {
        let cells = row.cells.iter().map(|cell| Room::lines(cell, self.cell));
        let height = cells.fold(Room::lines(&row.title, Room::TITLE), f64::max) * Room::LINE + Room::GAP;
        let fits = height <= self.left;
        if fits {
            self.left -= height;
        }
        fits
    }

    fn take_paragraph(&mut self, text: &str) {
        self.left -= Room::lines(text, Room::WIDE) * Room::LINE + Room::GAP;
    }
}

/// A row of the table: what it is about, and a text for each garment.
struct Row {
    title: String,
    cells: Vec<String>,
}

impl Row {
    fn new(title: impl Into<String>, cells: impl Iterator<Item = String>) -> Row {
        Row { title: title.into(), cells: cells.collect() }
    }

    fn shown(&self) -> Html {
        html! {
            <tr><th scope="row">{ &self.title }</th>{ for self.cells.iter().map(|cell| html! { <td>{ cell }</td> }) }</tr>
        }
    }
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garments, in the order of the address.
    pub garments: Vec<Rc<Garment>>,
    /// All garments noted.
    pub rack: Vec<Rc<Garment>>,
    /// Appraisals.
    pub appraisals: Appraisals,
    /// The market, and what was changed of its rates.
    pub rates: Rates,
    /// Today.
    pub today: Day,
    /// Metric or imperial.
    pub system: System,
}

/// The page.
#[component]
pub fn BesideSheetPage(props: &Props) -> Html {
    let Props { garments, rack, appraisals, rates, today, system } = props;
    let known: Vec<Rc<Appraisal>> = garments.iter().map(|garment| appraisals.of(garment)).collect();
    let pairs: Vec<(&Garment, &Appraisal)> = garments.iter().map(Rc::as_ref).zip(known.iter().map(Rc::as_ref)).collect();
    let ids: Vec<_> = garments.iter().map(|garment| garment.id().clone()).collect();
    let back = if garments.len() < 2 { "#/".to_owned() } else { Route::Beside(ids).href() };
    let bar = html! { <Bar title={say!("Comparison sheet")} under={if garments.len() < 2 { String::new() } else { say!("{count} garments", count = garments.len()) }} back={back.clone()} back_name={say!("Back")} /> };
    let beside = match Beside::of(&pairs) {
        Ok(beside) => beside,
        Err(why) => return html! { <>{ bar }{ too_few(garments, rack, &why) }</> },
    };
    let places = worth::places(rack, rates, appraisals);
    let value = |garment: &Rc<Garment>| places.get(garment.id()).map_or(String::new(), |place| place.alone());

    let mut room = Room::new(garments.len());
    let heads = Row::new("", garments.iter().map(|garment| format!("A {} {}", short(garment.called()), facts(garment))));
    let mut made = bands(&known);
    made.extend(left(garments, appraisals));
    made.extend(moved(garments, &known, appraisals, *system));
    made.extend(not_looked_at(garments, &known, appraisals));
    let mut paid = paid(garments, rates);
    paid.push(Row::new(say!("Value for quality"), garments.iter().map(value)));
    for row in [&heads].into_iter().chain(&made).chain(&paid) {
        // These stand whatever room they take: they are as long as the words of the app, which are known.
        room.takes(row);
    }
    let sentences = better(&beside).join(" ");
    room.take_paragraph(&sentences);
    let kinds = garments.windows(2).any(|two| two[0].family() != two[1].family());
    let kinds = kinds.then(|| say!("These are of different kinds. Each is judged among new pieces of its own kind."));
    kinds.iter().for_each(|text| room.take_paragraph(text));
    let (differ, more) = differences(garments, &beside, *system, &mut room);
    let columns = (garments.len() + 1).to_string();
    let print = Callback::from(|_: MouseEvent| document::print());
    let group = |title: &'static str, rows: Html| {
        html! { <tbody><tr class="bs-group"><th scope="rowgroup" colspan={columns.clone()}>{ title }</th></tr>{ rows }</tbody> }
    };
    html! {
        <>
            { bar }
            <p class="hint lonely no-print">{ say!("One page, A4 or Letter, in black ink. Choose “Save as PDF” in the browser’s dialogue for a file.") }</p>
            <article class="sheet card bs-sheet" data-count={garments.len().to_string()}>
                <h2>{ say!("Side by side") }</h2>
                <div class="scroll-x" tabindex="0" role="region" aria-label={say!("The garments side by side")}>
                    <table class="bs-table">
                        <thead><tr><td></td>{ for garments.iter().enumerate().map(|(place, garment)| html! {
                            <th scope="col" key={place}><b>{ format!("{} {}", LETTERS[place], short(garment.called())) }</b>{ " " }<small>{ facts(garment) }</small></th>
                        }) }</tr></thead>
                        { group(say!("How well made"), html! { <>
                            <tr aria-hidden="true"><th scope="row">{ say!("Where it may stand") }</th>{ for known.iter().enumerate().map(|(place, appraisal)| html! { <td key={place}><Tape appraisal={appraisal.clone()} bare=true /></td> }) }</tr>
                            { for made.iter().map(Row::shown) }
                        </> }) }
                        { group(say!("What it costs"), html! { <>{ for paid.iter().map(Row::shown) }</> }) }
                        { group(say!("Where they differ, the furthest apart first"), html! { <>
                            if differ.is_empty() {
                                <tr><td colspan={columns.clone()}>{ say!("Nothing that was answered or measured for two of them differs.") }</td></tr>
                            }
                            { for differ.iter().map(Row::shown) }
                        </> }) }
                    </table>
                </div>
                if more > 0 {
                    <p>{ say!("{count} more that differ did not fit here; the app shows them.", count = more) }</p>
                }
                <p>{ sentences }</p>
                if let Some(kinds) = kinds {
                    <p>{ kinds }</p>
                }
                <p class="sheet-foot">{ say!("What is judgement: bands, how far each answer counts, and so which is better made and the value for quality. A band is a belief with a chance, not a grade by a laboratory, and no price moved it. Landed costs take averages of freight, duty and fees. A dash: not answered, or not measured. Garment Assay, {day}.", day = clock::written_day(*today)) }</p>
            </article>
            <div class="foot">
                <button type="button" class="prime" onclick={print}>{ say!("to do" | "Print") }</button>
                <a class="second" href={back}>{ say!("Back to side by side") }</a>
            </div>
        </>
    }
}

fn short(text: &str) -> String {
    if text.chars().count() <= LONGEST { text.to_owned() } else { text.chars().take(LONGEST).collect::<String>() + " …" }
}

fn facts(garment: &Garment) -> String {
    let terms = garment.terms();
    let facts = [
        Some(garment.family().name().to_owned()).filter(|name| name != garment.called()),
        garment.is_second_hand().then(|| say!("second-hand").to_owned()),
        Some(short(garment.place())).filter(|place| !place.is_empty()),
        Some(short(terms.supplier())).filter(|supplier| !supplier.is_empty()),
        Some(short(terms.style())).filter(|style| !style.is_empty()).map(|style| say!("style {style}", style)),
        terms.shortlisted().then(|| say!("on the short list").to_owned()),
    ];
    facts.into_iter().flatten().collect::<Vec<_>>().join(" · ")
}

fn bands(known: &[Rc<Appraisal>]) -> Vec<Row> {
    let said = |appraisal: &Rc<Appraisal>| {
        let said = headline(appraisal);
        format!("{}, {}", said.lead, said.rest)
    };
    let chances = |appraisal: &Rc<Appraisal>| {
        if appraisal.evidence() == 0 {
            return "–".to_owned();
        }
        let bands = appraisal.bands();
        Band::ALL
            .into_iter()
            .map(|band| format!("{} {}", band.name(), words::percent(bands[band.index()])))
            .collect::<Vec<_>>()
            .join(", ")
    };
    vec![Row::new(say!("Band"), known.iter().map(said)), Row::new(say!("Chance of each"), known.iter().map(chances))]
}

fn left(garments: &[Rc<Garment>], appraisals: &Appraisals) -> Option<Row> {
    let known: Vec<Option<Rc<Appraisal>>> = garments.iter().map(|garment| appraisals.left(garment)).collect();
    let said = |left: &Option<Rc<Appraisal>>| match left {
        Some(left) => headline(left).aloud(),
        None => say!("not second-hand" | "new").to_owned(),
    };
    known.iter().any(Option::is_some).then(|| Row::new(Question::Left.name(), known.iter().map(said)))
}

fn moved(garments: &[Rc<Garment>], known: &[Rc<Appraisal>], appraisals: &Appraisals, system: System) -> Option<Row> {
    let said = |(garment, appraisal): (&Rc<Garment>, &Rc<Appraisal>)| {
        let moved = appraisals.appraiser().moved(appraisal);
        let said = moved.iter().take(NAMED).map(|moved| {
            say!(
                "{check}: {answer} ({strength})",
                check = moved.check.name(),
                answer = words::answer(garment, moved.check, system),
                strength = words::strength(moved.by)
            )
        });
        let said = said.collect::<Vec<_>>().join("; ");
        if said.is_empty() { "–".to_owned() } else { said }
    };
    Some(Row::new(say!("What moved it most"), garments.iter().zip(known).map(said)))
}

fn not_looked_at(garments: &[Rc<Garment>], known: &[Rc<Appraisal>], appraisals: &Appraisals) -> Option<Row> {
    let said = |(garment, appraisal): (&Rc<Garment>, &Rc<Appraisal>)| {
        let open = appraisals.appraiser().most_telling(garment, appraisal);
        let count = garment.answered();
        let answered = if one(count) { say!("{count} check answered.", count) } else { say!("{count} checks answered.", count) };
        let names: Vec<&str> = open.iter().take(NAMED).map(|proposal| proposal.check.name()).collect();
        let checks = names.join(", ");
        let open = match open.len() {
            0 => say!("Nothing left would move the band much.").to_owned(),
            count if count <= NAMED => say!("Not: {checks}.", checks),
            count => say!("Not: {checks}, and {more} more that would tell.", checks, more = count - NAMED),
        };
        format!("{answered} {open}")
    };
    Some(Row::new(say!("Not looked at"), garments.iter().zip(known).map(said)))
}

fn paid(garments: &[Rc<Garment>], rates: &Rates) -> Vec<Row> {
    let ticket = |garment: &Rc<Garment>| match garment.ticket() {
        Some(ticket) if ticket.face_down => say!("lies face down").to_owned(),
        Some(ticket) => words::ticket(ticket),
        None => say!("none noted").to_owned(),
    };
    let offer = |garment: &Rc<Garment>| match landed_smallest(garment, rates) {
        Err(NotLanded::NoPrice) => say!("no offer").to_owned(),
        Err(why) => why.to_string(),
        Ok(landed) => {
            let cost = exact(landed.currency, landed.view.landed);
            let (pieces, margin) = (landed.pieces, share(landed.view.margin));
            let price = exact(landed.currency, landed.ticket);
            if landed.targeted {
                say!("{cost} landed, {pieces} pieces; margin {margin} at {price} (your target)", cost, pieces, margin, price)
            } else {
                say!(
                    "{cost} landed, {pieces} pieces; margin {margin} at {price} (middle of what is likely)",
                    cost,
                    pieces,
                    margin,
                    price
                )
            }
        }
    };
    let mut rows = vec![Row::new(say!("Ticket"), garments.iter().map(ticket))];
    if garments.iter().any(|garment| !garment.terms().prices().is_empty()) {
        rows.push(Row::new(say!("Smallest order"), garments.iter().map(offer)));
    }
    rows
}

/// Rows of what differs as far as there is room, and how many more there are.
fn differences(garments: &[Rc<Garment>], beside: &Beside, system: System, room: &mut Room) -> (Vec<Row>, usize) {
    let dash = |text: String| if text.is_empty() { "–".to_owned() } else { text };
    let answer = |row: &Difference| {
        Row::new(row.check.name(), garments.iter().map(|garment| dash(words::answer(garment, row.check, system))))
    };
    let reading = |row: &ReadingDifference| {
        let own = row.unit.in_system(system);
        let said = |value: &Option<(f64, f64)>| {
            let said = value.and_then(|(value, spread)| Some((row.unit.convert(value, own)?, row.unit.convert(spread, own)?)));
            dash(said.map_or(String::new(), |(value, spread)| written_with_spread(value, spread, own, Decimal::spoken())))
        };
        Row::new(row.name(), row.values.iter().map(said))
    };
    let answers: Vec<Row> = beside.checks.iter().filter(|row| row.apart > ALIKE).map(answer).collect();
    // A check that was measured has its row among the answers already.
    let measured = |row: &&ReadingDifference| row.differs && !beside.checks.iter().any(|check| check.check.name() == row.name());
    let readings: Vec<Row> = beside.readings.iter().filter(measured).map(reading).collect();
    let all = answers.len() + readings.len();
    let readings: Vec<Row> = readings.into_iter().take(READINGS).take_while(|row| room.takes(row)).collect();
    let mut shown: Vec<Row> = answers.into_iter().take_while(|row| room.takes(row)).collect();
    shown.extend(readings);
    let more = all - shown.len();
    (shown, more)
}
