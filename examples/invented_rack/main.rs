//! Writes `web/invented-rack.json`, the invented rack that the app adds with one tap: `cargo run --example invented_rack --no-default-features`.

mod scene;

use garment_assay::garment::Garment;
use garment_assay::notebook::{Settings, export_all};

fn main() -> std::io::Result<()> {
    let (garments, people) = (scene::garments(), scene::people());
    let garments: Vec<&Garment> = garments.iter().collect();
    let people: Vec<_> = people.iter().collect();
    std::fs::write("web/invented-rack.json", export_all(&garments, Some(&people), &Settings::default(), scene::day()))
}
