#![no_main]

#[path = "../doors.rs"]
#[allow(dead_code, reason = "each target opens one of them")]
mod doors;

libfuzzer_sys::fuzz_target!(|data: &[u8]| doors::shelf(data));
