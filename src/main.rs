//! The program: opens the door to the app.

fn main() {}
