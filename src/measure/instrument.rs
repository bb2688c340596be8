//! What every instrument is.

/// An instrument: readings in, estimate out.
#[derive(Debug)]
pub struct Instrument {
    /// Name in storage; never renamed once released.
    pub key: &'static str,
}
