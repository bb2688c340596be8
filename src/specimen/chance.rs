//! A small deterministic generator.
