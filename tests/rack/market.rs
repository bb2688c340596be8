//! Markets drawn from the model's own prior by a seed: garments with build-ups, kin and names, and the tickets that the prior gives them.

use std::collections::BTreeMap;
use std::f64::consts::PI;

use garment_assay::rack::{Explained, Name, Spreads, Traits};

/// Numbers by a seed: Steele, Lea and Flood (2014), `splitmix64` (from memory); any even generator would do.
pub struct Draw(pub u64);

impl Draw {
    pub fn even(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// Box and Muller (1958).
    pub fn normal(&mut self) -> f64 {
        (-2.0 * (1.0 - self.even()).ln()).sqrt() * (2.0 * PI * self.even()).cos()
    }

    pub fn one_of(&mut self, many: usize) -> usize {
        ((self.even() * many as f64) as usize).min(many - 1)
    }

    fn name(&mut self) -> Name {
        let mut left = self.even();
        for name in Name::ALL {
            left -= name.share();
            if left < 0.0 {
                return name;
            }
        }
        Name::Designer
    }
}

/// Garments of one market with their log tickets.
pub fn market(draw: &mut Draw, garments: usize) -> Vec<(Traits, f64)> {
    let spreads = Spreads::USUAL;
    // Eight degrees of freedom: chi-square as the sum of eight squares.
    let degrees = spreads.degrees as usize;
    let square: f64 = (0..degrees).map(|_| draw.normal().powi(2)).sum();
    let stretch = (spreads.degrees / square).sqrt();
    let (level, slope) = (draw.normal(), draw.normal());
    let mut kept: BTreeMap<String, f64> = BTreeMap::new();
    let mut out = Vec::new();
    for _ in 0..garments {
        let mut shared = |draw: &mut Draw, what: String| *kept.entry(what).or_insert_with(|| draw.normal());
        let (mu, sigma) = (Spreads::MIDDLING.ln() + 0.6 * draw.normal(), 0.25 + 0.3 * draw.even());
        let of_shop = sigma * 0.8 * draw.even();
        let family = ["jeans", "shirt"][draw.one_of(2)].to_owned();
        let pick = |draw: &mut Draw, many: usize| (draw.even() < 0.75).then(|| draw.one_of(many).to_string());
        let (shop, maker) = (pick(draw, 6), pick(draw, 25));
        let name = draw.name();
        let (premium, spread) = name.premium();
        // What is like between build-ups: the squared exponential as a sum of products, exp(-(x - y)^2 / 2) = sum f_k(x) f_k(y) with
        // f_k(x) = exp(-x^2/2) x^k / sqrt(k!); forty terms leave nothing for |x| below 3.
        let x = (mu - Spreads::MIDDLING.ln()) / spreads.reach;
        let (mut like, mut term) = (0.0, (-0.5 * x * x).exp());
        for k in 0..40 {
            like += term * shared(draw, format!("like {family} {k}"));
            term *= x / f64::from(k + 1).sqrt();
        }
        // A shop or maker that is not known is like nobody's.
        let at =
            |draw: &mut Draw, shared: &mut dyn FnMut(&mut Draw, String) -> f64, what: &str, known: &Option<String>| match known {
                Some(known) => shared(draw, format!("{what} {known}")),
                None => draw.normal(),
            };
        let in_shop = at(draw, &mut shared, "shop", &shop);
        let multiple = at(draw, &mut shared, "multiple", &shop);
        let by_maker = at(draw, &mut shared, "maker", &maker);
        let own = (spreads.own.powi(2) + sigma * sigma - of_shop * of_shop + spread * spread).sqrt();
        let moved = spreads.level * level
            + spreads.slope * slope * (mu - Spreads::MIDDLING.ln())
            + spreads.family * shared(draw, format!("family {family}"))
            + spreads.like * like
            + spreads.shop * in_shop
            + of_shop * multiple
            + spreads.maker * by_maker
            + own * draw.normal();
        let explained = Explained::new(mu, sigma).and_then(|explained| explained.with_shop_part(of_shop)).expect("a build-up");
        let told = (draw.even() < 0.8).then_some(name);
        out.push((Traits { explained, family, shop, maker, name: told }, mu + premium + stretch * moved));
    }
    out
}
