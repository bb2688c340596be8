//! A small deterministic generator: the same seed gives the same drawing on every machine. Not for secrets.

/// A permuted congruential generator of 64 bits of state (the XSH-RR 64/32 member of that family).
pub struct Chance(u64);

impl Chance {
    /// A generator from a seed handed in.
    pub fn new(seed: u64) -> Chance {
        let mut chance = Chance(seed.wrapping_add(0x9e37_79b9_7f4a_7c15));
        chance.draw();
        chance
    }

    fn draw(&mut self) -> u32 {
        let old = self.0;
        self.0 = old.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        permute(old)
    }

    /// A number from 0 up to 1.
    pub fn share(&mut self) -> f64 {
        f64::from(self.draw()) / 4_294_967_296.0
    }

    /// A number from `-half` to `half`.
    pub fn about(&mut self, half: f64) -> f64 {
        (2.0 * self.share() - 1.0) * half
    }

    /// A whole number from 0 up to, and without, `many`; 0 where that is 0.
    pub fn below(&mut self, many: usize) -> usize {
        ((self.share() * many as f64) as usize).min(many.saturating_sub(1))
    }

    /// A number from `low` to `high`.
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.share()
    }
}

/// The output of a state: xorshift high bits, random rotation.
pub(super) fn permute(state: u64) -> u32 {
    ((((state >> 18) ^ state) >> 27) as u32).rotate_right((state >> 59) as u32)
}
