//! Jeans: the checks of a pair, and what each answer says.

use super::Family;

/// Jeans and other trousers of denim.
pub static JEANS: Family =
    Family { key: "jeans", name: "Jeans", covers: "Trousers of denim, rigid or stretch.", checks: &[], cautions: &[] };
