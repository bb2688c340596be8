//! The money scale: a strip of tape in logarithms, what is likely as a hill over it and a line under it, the ticket as a tag, the guess as a
//! stitched line.

use garment_assay::cost::Range;
use garment_assay::say;
use garment_assay::trade::Currency;
use yew::prelude::*;

use crate::app::money::{about, between, known, known_between};

const WIDTH: f64 = 340.0;
const FOOT: f64 = 50.0;
const STRIP: f64 = 24.0;
/// Free room at either side, as a factor of the outermost price.
const ROOM: f64 = 1.3;
const POINTS: usize = 61;

/// A range on the scale.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span {
    /// Lower end.
    pub low: f64,
    /// The middle, where one is named.
    pub middle: Option<f64>,
    /// Upper end.
    pub high: f64,
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The currency of all amounts.
    pub currency: Currency,
    /// The 80 % range that was worked out, and its middle.
    pub likely: Range,
    /// What it is called.
    pub called: AttrValue,
    /// The ticket, where it is in view.
    #[prop_or_default]
    pub ticket: Option<f64>,
    /// What the person guessed.
    #[prop_or_default]
    pub guess: Option<Span>,
    /// How dense the belief is at a natural logarithm of an amount; drawn as a hill.
    pub hill: Callback<f64, f64>,
}

/// Where prices lie along the drawing.
struct Scale {
    low: f64,
    high: f64,
}

impl Scale {
    fn holding(amounts: impl IntoIterator<Item = f64>) -> Scale {
        let (mut low, mut high) = (f64::INFINITY, 0.0_f64);
        for amount in amounts.into_iter().filter(|amount| amount.is_finite() && *amount > 0.0) {
            (low, high) = (low.min(amount), high.max(amount));
        }
        if low > high {
            (low, high) = (1.0, 10.0);
        }
        Scale { low: (low / ROOM).ln(), high: (high * ROOM).ln() }
    }

    fn along(&self, amount: f64) -> f64 {
        let share = (amount.max(f64::MIN_POSITIVE).ln() - self.low) / (self.high - self.low);
        (share.clamp(0.0, 1.0) * WIDTH * 10.0).round() / 10.0
    }

    /// Prices that get a tick, and whether they get a number: 1, 2 and 5 of each ten do, while there is room.
    fn ticks(&self) -> Vec<(f64, bool)> {
        let tens = ((self.high - self.low) / std::f64::consts::LN_10).max(0.1);
        let numbered = move |digit: i32| match tens {
            tens if tens < 1.8 => matches!(digit, 1 | 2 | 3 | 5 | 7) || tens < 0.8,
            tens if tens < 3.2 => matches!(digit, 1 | 2 | 5),
            _ => digit == 1,
        };
        let first = (self.low / std::f64::consts::LN_10).floor() as i32;
        let last = (self.high / std::f64::consts::LN_10).ceil() as i32;
        let all = (first..=last.min(first + 12)).flat_map(|ten| (1..10).map(move |digit| (ten, digit)));
        all.map(|(ten, digit)| (f64::from(digit) * 10_f64.powi(ten), numbered(digit)))
            .filter(|(price, _)| (self.low..=self.high).contains(&price.ln()))
            .collect()
    }
}

fn said(price: f64) -> String {
    if price >= 1.0 { format!("{price:.0}") } else { about(price) }
}

/// Prices on one scale.
#[component]
pub fn MoneyScale(props: &Props) -> Html {
    let Props { currency, likely, called, ticket, guess, hill } = props;
    let guessed = guess.iter().flat_map(|guess| [guess.low, guess.high]);
    let scale = Scale::holding([likely.low, likely.high].into_iter().chain(*ticket).chain(guessed));
    let ticks = scale.ticks();
    let mut heights: Vec<(f64, f64)> = (0..POINTS)
        .map(|point| {
            let log = scale.low + (scale.high - scale.low) * point as f64 / (POINTS - 1) as f64;
            (point as f64 * WIDTH / (POINTS - 1) as f64, hill.emit(log).max(0.0))
        })
        .collect();
    let highest = heights.iter().map(|(_, height)| *height).fold(1e-9, f64::max);
    heights.iter_mut().for_each(|(_, height)| *height *= 32.0 / highest);
    let line = heights.iter().fold(String::new(), |path, (x, height)| {
        format!("{path}{}{x:.1} {:.1}", if path.is_empty() { 'M' } else { 'L' }, FOOT - height)
    });
    let area = format!("{line}L{WIDTH} {FOOT}L0 {FOOT}Z");
    let code = currency.code();
    let scale_said = say!("Money scale in {currency}.", currency = code);
    let likely_said = say!(
        "{name} {range}, middle {amount}.",
        name = called,
        range = between(likely.low, likely.high),
        amount = about(likely.usual)
    );
    let guess_said = guess.map(|guess| say!("Your guess {range}.", range = known_between(guess.low, guess.high)));
    let ticket_said = ticket.map(|ticket| say!("Ticket {price}.", price = known(ticket)));
    let label =
        [Some(scale_said), Some(likely_said), guess_said, ticket_said].into_iter().flatten().collect::<Vec<_>>().join(" ");
    let (range_y, guess_y) = (FOOT + STRIP + 11.0, FOOT + STRIP + 25.0);
    let height = if guess.is_some() { 110 } else { 94 };
    html! {
        <svg class="money-scale" viewBox={format!("0 0 340 {height}")} role="img" aria-label={label} focusable="false">
            <path class="tape-area" d={area} />
            <path class="tape-line" d={line} />
            <rect class="tape-strip" x="0" y={FOOT.to_string()} width="340" height={STRIP.to_string()} />
            <path class="tape-ticks" d={ticks.iter().map(|(price, numbered)| {
                format!("M{} {FOOT}v{}", scale.along(*price), if *numbered { 7 } else { 4 })
            }).collect::<String>()} />
            { for ticks.iter().filter(|(price, numbered)| *numbered && (8.0..=332.0).contains(&scale.along(*price))).map(|(price, _)| html! {
                <text key={said(*price)} class="tape-band" x={scale.along(*price).to_string()} y={(FOOT + 19.0).to_string()}>{ said(*price) }</text>
            }) }
            <path class="likely-line" d={format!("M{} {range_y}H{}", scale.along(likely.low), scale.along(likely.high))} />
            <circle class="likely-middle" cx={scale.along(likely.usual).to_string()} cy={range_y.to_string()} r="5" />
            if let Some(guess) = guess {
                <g>
                    <path class="tape-range" d={format!("M{} {guess_y}H{}", scale.along(guess.low), scale.along(guess.high))} />
                    if let Some(middle) = guess.middle {
                        <circle class="tape-middle" cx={scale.along(middle).to_string()} cy={guess_y.to_string()} r="4.500" />
                    }
                </g>
            }
            if let Some(ticket) = ticket {
                <g class="ticket-mark">
                    <path class="ticket-line" d={format!("M{} 14V{}", scale.along(*ticket), FOOT + 8.0)} />
                    // A swing tag with its eyelet, hung on the price.
                    <path class="ticket-tag" d={format!("M{} 16l-6-5v-9h12v9z", scale.along(*ticket).clamp(7.0, 333.0))} />
                    <circle class="ticket-eye" cx={scale.along(*ticket).clamp(7.0, 333.0).to_string()} cy="10.500" r="1.500" />
                </g>
            }
        </svg>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_scale_holds_all_it_is_given_with_room_and_bears_nonsense() {
        let scale = Scale::holding([40.0, f64::NAN, 160.0, -1.0, 0.0]);
        assert!(scale.along(40.0) > 0.0 && scale.along(160.0) < WIDTH && scale.along(80.0) == WIDTH / 2.0);
        let empty = Scale::holding([]);
        assert!(empty.along(0.0) == 0.0 && empty.ticks().len() > 5);
    }

    #[test]
    fn numbers_thin_out_as_the_scale_grows() {
        let numbered = |low, high| Scale::holding([low, high]).ticks().iter().filter(|(_, numbered)| *numbered).count();
        for (low, high) in [(50.0, 90.0), (40.0, 400.0), (10.0, 2000.0), (1.0, 1e6)] {
            assert!((3..=9).contains(&numbered(low, high)), "{low} to {high}: {}", numbered(low, high));
        }
    }
}
