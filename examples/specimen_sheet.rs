//! Writes one HTML page with every specimen at 84 and at 320 CSS px, so that they can be looked at:
//! `cargo run --example specimen_sheet --no-default-features -- sheet.html [dark] [small]`.

use std::fmt::Write as _;

use garment_assay::catalog::{FAMILIES, bench};
use garment_assay::specimen::*;

/// The palette of styles/tokens.css, by role.
const PALETTE: &str = ".cloth-dark{--i:#22324f}.cloth{--i:#33496f}.cloth-light{--i:#5f7ba6}.cloth-pale{--i:#a9bcd6}.weft{--i:#e9e2d2}\
.thread{--i:#a8561c}.thread-light{--i:#e8ac68}.shade{--i:#16223a}.edge{--i:#1c2740}.metal{--i:#a9a596}.paper{--i:#f7f2e6}.stain{--i:#6f8fc2}.tape{--i:#f2d675}\
.fill{fill:var(--i)}.line{fill:none;stroke:var(--i);stroke-linecap:round;stroke-linejoin:round}";

fn class(ink: Ink) -> &'static str {
    match ink {
        Ink::ClothDark => "cloth-dark",
        Ink::Cloth => "cloth",
        Ink::ClothLight => "cloth-light",
        Ink::ClothPale => "cloth-pale",
        Ink::Weft => "weft",
        Ink::Thread => "thread",
        Ink::ThreadLight => "thread-light",
        Ink::Shade => "shade",
        Ink::Edge => "edge",
        Ink::Metal => "metal",
        Ink::Paper => "paper",
        Ink::Stain => "stain",
        Ink::Tape => "tape",
    }
}

fn svg(drawing: &Drawing, width: u32, words: &str) -> String {
    let mut out = format!("<svg role=img aria-label='{words}' width={width} viewBox='0 0 {} {}'>", drawing.width, drawing.height);
    for mark in &drawing.marks {
        let ink = class(mark.ink);
        let _ = match mark.paint {
            Paint::Fill => write!(out, "<path class='fill {ink}' d='{}'/>", mark.path),
            Paint::Stroke(width) => write!(out, "<path class='line {ink}' stroke-width='{width:.2}' d='{}'/>", mark.path),
            Paint::Dashed(width, dash, gap) => {
                write!(
                    out,
                    "<path class='line {ink}' stroke-width='{width:.2}' stroke-dasharray='{dash:.2} {gap:.2}' d='{}'/>",
                    mark.path
                )
            }
        };
    }
    out.push_str("</svg>");
    out
}

/// Every set of pictures: those of the checks, then those of the bench.
fn sets() -> Vec<(String, Vec<Picture>)> {
    let mut sets: Vec<(String, Vec<Picture>)> = FAMILIES
        .iter()
        .flat_map(|family| family.checks.iter().map(move |check| (family, check)))
        .map(|(family, check)| {
            (format!("{}/{}", family.key, check.key), check.levels.iter().filter_map(|level| level.drawn).collect())
        })
        .collect();
    for drawer in bench::DRAWERS {
        let pictures = drawer.tools.iter().filter_map(|tool| tool.drawn).collect();
        sets.push((format!("bench: {}", drawer.name()), pictures));
    }
    for family in FAMILIES {
        sets.push((format!("points of measure: {}", family.key), family.drawn_points.iter().map(|point| point.1).collect()));
    }
    sets.push(("families".to_owned(), FAMILIES.iter().map(|family| family.drawn).collect()));
    sets.push(("bench stitches".to_owned(), bench::STITCHES.iter().map(|stitch| stitch.1).collect()));
    let close = |kind, ends_per_cm| Picture::WeaveFace(WeaveFace { kind, ends_per_cm, picks_per_cm: 13.0 });
    sets.push(("practice weaves".to_owned(), WeaveKind::ALL.map(|kind| close(kind, 15.0)).to_vec()));
    sets.push(("practice twills".to_owned(), [13.0, 18.6, 25.5, 35.7].map(|ends| close(WeaveKind::TwillRight, ends)).to_vec()));
    let coloured =
        [(ColourWork::WarpFaced, 0.0), (ColourWork::Printed, 0.0), (ColourWork::Printed, 0.5), (ColourWork::Printed, 1.0)];
    let coloured = coloured.map(|(work, through)| Picture::Colouring(Colouring { work, through }));
    sets.push(("practice colour".to_owned(), coloured.to_vec()));
    for look in bench::LOOKS {
        sets.push((format!("bench look: {}", look.look.key), look.choices.iter().map(|choice| choice.1).collect()));
    }
    for grades in bench::GRADES {
        sets.push((format!("bench grades: {}", grades.scale.name()), grades.steps.to_vec()));
    }
    sets.push(("fitting tape".to_owned(), OnBody::ALL.map(Picture::OnBody).to_vec()));
    sets.push(("fitting lines".to_owned(), Drag::ALL.map(Picture::Drag).to_vec()));
    sets.push(("fitting moves".to_owned(), Pose::ALL.map(Picture::Pose).to_vec()));
    sets.push(("fitting inside".to_owned(), LeftInside::ALL.map(Picture::LeftInside).to_vec()));
    sets
}

fn main() -> std::io::Result<()> {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let path = arguments.first().map_or("sheet.html", String::as_str);
    let has = |word: &str| arguments.iter().any(|argument| argument == word);
    let (ground, ink) = if has("dark") { ("#141c2e", "#f2ead9") } else { ("#f6f1e7", "#1c2740") };
    let wanted: Vec<&String> = arguments.iter().skip(1).filter(|word| !["dark", "small"].contains(&word.as_str())).collect();
    let mut page = format!(
        "<!doctype html><meta charset=utf-8><style>{PALETTE}body{{margin:8px;font:13px system-ui;background:{ground};color:{ink}}}\
         section{{display:flex;gap:10px;flex-wrap:wrap;align-items:end;margin:3px 0}}h2{{font-size:13px;margin:0;width:110px}}figure{{margin:0}}svg{{display:block;border-radius:4px;margin-bottom:3px}}</style>"
    );
    let (mut most, mut longest) = (0, 0);
    for (name, pictures) in sets() {
        if !wanted.is_empty() && !wanted.iter().any(|word| name.contains(word.as_str())) {
            continue;
        }
        let _ = write!(page, "<section><h2>{name}</h2>");
        for (index, picture) in pictures.iter().enumerate() {
            let drawing = drawing(picture, 7 + index as u64);
            let words = picture.words();
            let text: usize = drawing.marks.iter().map(|mark| mark.path.len()).sum();
            (most, longest) = (most.max(drawing.marks.len()), longest.max(text));
            if text > 3000 || drawing.marks.len() > 40 {
                println!("{name} {index}: {} marks, {text} bytes", drawing.marks.len());
            }
            let large = if has("small") { String::new() } else { svg(&drawing, 320, &words) };
            let _ = write!(page, "<figure title='{words}'>{}{large}</figure>", svg(&drawing, 84, &words));
        }
        page.push_str("</section>");
    }
    println!("at most {most} marks and {longest} bytes of path in one drawing");
    std::fs::write(path, page)
}
