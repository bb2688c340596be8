//! Counts the stitches on photographs whose truth is known, and says how well: `count_stitches FOLDER`, with `FOLDER/truth.csv` in the form of
//! `data/photos/drawn` (or of `data/photos/real`: seams without a scale, run as if at 6, 8.5 and 12 stitches per inch and scored by the ratio of
//! pixels per stitch). Two more ways to look: `--pitch` takes the scale from the truth, to judge the counting alone; `--aside MM` moves the marks
//! off the seam, where nothing may be answered. Exit 0 when the targets hold.

use std::{collections::HashMap, env, path::Path, process::ExitCode, time::Instant};

use photo::{Cause, Object, Point, Raster, Said, Scale, count, scale};

const INCH: f64 = 25.4;

/// One row of the truth.
struct Row(HashMap<String, String>);

impl Row {
    fn text(&self, column: &str) -> &str {
        self.0.get(column).map_or("", String::as_str)
    }

    fn number(&self, column: &str) -> f64 {
        self.text(column).trim().parse().unwrap_or(f64::NAN)
    }

    /// Every number in a column, whatever stands between.
    fn numbers(&self, column: &str) -> Vec<f64> {
        self.text(column).split(|sign: char| !"0123456789.-eE".contains(sign)).filter_map(|part| part.parse().ok()).collect()
    }

    fn points(&self, column: &str) -> Vec<Point> {
        self.numbers(column).chunks_exact(2).map(|pair| Point { x: pair[0], y: pair[1] }).collect()
    }

    /// Meant to be read: not hard, tilted by 15 degrees at most, 12 pixels a stitch or more, thread not of the colour of the cloth.
    fn usable(&self) -> bool {
        self.text("object") != "none"
            && self.text("level") != "hard"
            && self.number("tilt_deg") <= 15.0
            && self.number("px_per_stitch") >= 12.0
            && !["1", "true"].contains(&self.text("tonal"))
    }

    fn object(&self) -> Option<Object> {
        let corners = self.points("card_corners");
        if let Ok(corners) = <[Point; 4]>::try_from(corners) {
            return Some(Object::Card(corners));
        }
        let (a, b) = (*self.points("ruler_a").first()?, *self.points("ruler_b").first()?);
        let known = self.number("known_mm");
        Some(if self.text("object") == "marks" { Object::Marks(a, b, known) } else { Object::Ruler(a, b, known) })
    }
}

/// What came of one picture.
struct Outcome {
    usable: bool,
    must_refuse: bool,
    milliseconds: f64,
    truth: f64,
    /// Reading and its standard uncertainty, stitches per inch.
    read: Option<(f64, f64)>,
}

#[derive(Default)]
struct Options {
    pitch: bool,
    aside: f64,
    quiet: bool,
}

fn main() -> ExitCode {
    let mut options = Options::default();
    let mut folder = None;
    let mut words = env::args().skip(1);
    while let Some(word) = words.next() {
        match word.as_str() {
            "--pitch" => options.pitch = true,
            "--quiet" => options.quiet = true,
            "--aside" => options.aside = words.next().and_then(|mm| mm.parse().ok()).unwrap_or(9.0),
            _ => folder = Some(word),
        }
    }
    let Some(folder) = folder else {
        eprintln!("count_stitches FOLDER [--pitch] [--aside MM] [--quiet]");
        return ExitCode::FAILURE;
    };
    let folder = Path::new(&folder);
    let mut reader = csv::Reader::from_path(folder.join("truth.csv")).expect("truth.csv");
    let heads = reader.headers().expect("a first line").clone();
    let rows: Vec<Row> = reader
        .records()
        .map(|record| Row(heads.iter().map(str::to_owned).zip(record.expect("a row").iter().map(str::to_owned)).collect()))
        .collect();
    let mut outcomes = Vec::new();
    let mut real = Vec::new();
    for row in rows.iter().filter(|row| !row.text("seam_x1").is_empty()) {
        let decoded = image::open(folder.join(row.text("file"))).expect("a picture").into_rgba8();
        let picture = Raster::new(decoded.width() as usize, decoded.height() as usize, decoded.as_raw()).expect("a picture");
        if row.text("object") == "none" {
            // Nothing of known size lies in the picture: three scales are tried.
            real.push([6.0, 8.5, 12.0].map(|per_inch| {
                let scale = Scale::even(row.number("px_per_stitch") * per_inch / INCH);
                looked_at(row, &picture, per_inch, &options, || scale)
            }));
        } else {
            let truth = row.number("stitches_per_inch");
            outcomes.push(looked_at(row, &picture, truth, &options, || {
                if options.pitch {
                    // A picture without a seam has no pixels per stitch: any scale that is not absurd will do.
                    let px_per_mm = row.number("px_per_stitch") * truth / INCH;
                    let mut scale = Scale::even(if px_per_mm.is_finite() { px_per_mm } else { 12.0 });
                    let object: Vec<Point> =
                        ["ruler_a", "ruler_b", "card_corners"].iter().flat_map(|column| row.points(column)).collect();
                    scale.iter_mut().for_each(|scale| scale.object.clone_from(&object));
                    scale
                } else {
                    row.object().and_then(|object| scale(&picture, &object).ok())
                }
            }));
        }
    }
    let mut good = true;
    if !real.is_empty() {
        let off = |one: &Outcome| one.read.map(|(value, _)| value / one.truth - 1.0);
        let runs: Vec<f64> = real.iter().flatten().filter_map(off).collect();
        // What the scales agree on is the reading of a picture; where two differ by more than 3 % there is none.
        let pictures: Vec<f64> = real
            .iter()
            .filter_map(|tried| {
                let read: Vec<f64> = tried.iter().filter_map(off).collect();
                let (low, high) = (read.iter().copied().reduce(f64::min)?, read.iter().copied().reduce(f64::max)?);
                ((1.0 + high) / (1.0 + low) < 1.03).then_some((low + high) / 2.0)
            })
            .collect();
        for (what, answered, of) in [("runs", &runs, 3 * real.len()), ("pictures", &pictures, real.len())] {
            let within = answered.iter().filter(|off| off.abs() <= 0.03).count();
            let worst = answered.iter().map(|off| off.abs()).fold(0.0, f64::max);
            println!("real, {what}: answered {} of {of}, within 3 %: {within}, worst {:.1} %", answered.len(), 100.0 * worst);
            good &= within == answered.len();
        }
        good &= pictures.len() * 10 >= real.len() * 7;
    }
    if options.aside != 0.0 {
        let answered = outcomes.iter().filter(|one| one.read.is_some()).count();
        println!("off the seam: answered {answered} of {}", outcomes.len());
        return if answered == 0 { ExitCode::SUCCESS } else { ExitCode::FAILURE };
    }
    let refused: Vec<&Outcome> = outcomes.iter().filter(|one| one.must_refuse).collect();
    let wrongly = refused.iter().filter(|one| one.read.is_some()).count();
    if !refused.is_empty() {
        println!("to be refused: answered {wrongly} of {}", refused.len());
        good &= wrongly == 0;
    }
    let all: Vec<&Outcome> = outcomes.iter().filter(|one| !one.must_refuse).collect();
    let usable: Vec<&Outcome> = all.iter().copied().filter(|one| one.usable).collect();
    let mut times: Vec<f64> = outcomes.iter().chain(real.iter().flatten()).map(|one| one.milliseconds).collect();
    times.sort_by(f64::total_cmp);
    if let (Some(middle), Some(slow)) = (times.get(times.len() / 2), times.get(times.len() * 95 / 100)) {
        println!("milliseconds a picture: median {middle:.1}, 95 of 100 below {slow:.1}");
    }
    let whole = Summary::of(&all);
    println!("all: {whole:#}");
    let usable = Summary::of(&usable);
    println!("usable: {usable}");
    if good && (outcomes.is_empty() || usable.good()) { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}

fn looked_at(row: &Row, picture: &Raster, truth: f64, options: &Options, scale: impl FnOnce() -> Option<Scale>) -> Outcome {
    let mut from = Point { x: row.number("seam_x1"), y: row.number("seam_y1") };
    let mut to = Point { x: row.number("seam_x2"), y: row.number("seam_y2") };
    let began = Instant::now();
    let scale = scale();
    if options.aside != 0.0
        && let Some(scale) = &scale
    {
        let (a, b) = (scale.plane.on_cloth(from), scale.plane.on_cloth(to));
        let length = (b.x - a.x).hypot(b.y - a.y);
        let (mut x, mut y) = (-(b.y - a.y) / length * options.aside, (b.x - a.x) / length * options.aside);
        // Away from the ruler or card.
        let object = scale.object.first().map_or(a, |corner| scale.plane.on_cloth(*corner));
        if (object.x - a.x) * x + (object.y - a.y) * y > 0.0 {
            (x, y) = (-x, -y);
        }
        from = scale.plane.in_picture(Point { x: a.x + x, y: a.y + y });
        to = scale.plane.in_picture(Point { x: b.x + x, y: b.y + y });
    }
    let counted = scale.as_ref().map(|scale| count(picture, from, to, scale, Said::Nothing));
    let milliseconds = began.elapsed().as_secs_f64() * 1000.0;
    let read = match &counted {
        Some(Ok(seam)) if options.pitch || row.text("object") == "none" => {
            let share = seam.budget.iter().filter(|part| part.from == Cause::Counting).map(|part| part.share).sum::<f64>();
            let reading = truth * row.number("px_per_stitch") / seam.px_per_stitch;
            Some((reading, share * reading))
        }
        Some(Ok(seam)) => {
            let share = seam.budget.iter().map(|part| part.share * part.share).sum::<f64>().sqrt();
            let reading = INCH / seam.stitch_mm;
            Some((reading, share * reading))
        }
        _ => None,
    };
    if !options.quiet {
        let name = row.text("file").rsplit('/').next().unwrap_or_default();
        let kind = format!(
            "{} {} {} tilt {} {:.0} px",
            row.text("level"),
            row.text("cloth"),
            row.text("stitch"),
            row.text("tilt_deg"),
            row.number("px_per_stitch")
        );
        match (&read, &counted) {
            (Some((value, u)), Some(Ok(seam))) => {
                let mark = if (value / truth - 1.0).abs() > 0.02 { " !" } else { "" };
                println!(
                    "{name}: truth {truth:.2}, read {value:.2}, spread {:.2} ({:+.2} %), {} of {} stitches, cv {:.3} of {}{mark} [{kind}]",
                    2.0 * u,
                    100.0 * (value / truth - 1.0),
                    seam.stitches.len(),
                    row.text("stitches_between"),
                    seam.unevenness,
                    row.text("pitch_cv"),
                );
            }
            (_, Some(Err(refusal))) => println!("{name}: truth {truth:.2}, refused: {refusal:?} [{kind}]"),
            _ => println!("{name}: truth {truth:.2}, no scale [{kind}]"),
        }
    }
    let must_refuse = row.text("must_refuse") == "1" || !truth.is_finite();
    Outcome { usable: row.usable(), must_refuse, milliseconds, truth, read }
}

/// Counts over some pictures.
struct Summary {
    answered: usize,
    of: usize,
    quarter: usize,
    half: usize,
    far: usize,
    slips: usize,
    covered: usize,
    two_per_cent: usize,
}

impl Summary {
    fn of(outcomes: &[&Outcome]) -> Summary {
        let answers: Vec<(f64, f64, f64)> =
            outcomes.iter().filter_map(|one| one.read.map(|(value, u)| (value, u, one.truth))).collect();
        let number =
            |is: &dyn Fn(f64, f64, f64) -> bool| answers.iter().filter(|(value, u, truth)| is(*value, *u, *truth)).count();
        let slip = |ratio: f64| [2.0, 0.5, 3.0, 1.0 / 3.0].iter().any(|octave| (ratio / octave - 1.0).abs() < 0.08);
        Summary {
            answered: answers.len(),
            of: outcomes.len(),
            quarter: number(&|value, _, truth| (value - truth).abs() <= 0.25),
            half: number(&|value, _, truth| (value - truth).abs() <= 0.5),
            far: number(&|value, _, truth| (value / truth - 1.0).abs() > 0.15),
            slips: number(&|value, _, truth| slip(value / truth)),
            covered: number(&|value, u, truth| (value - truth).abs() <= 2.0 * u),
            two_per_cent: number(&|value, _, truth| (value / truth - 1.0).abs() <= 0.02),
        }
    }

    fn share(&self, part: usize) -> f64 {
        100.0 * part as f64 / self.answered.max(1) as f64
    }

    fn good(&self) -> bool {
        self.answered * 100 >= self.of * 92
            && self.share(self.quarter) >= 97.0
            && self.share(self.half) >= 99.5
            && self.far == 0
            && self.slips == 0
            && (92.0..=98.0).contains(&self.share(self.covered))
    }
}

impl std::fmt::Display for Summary {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        if f.alternate() {
            write!(f, "within 2 %: {:.1} %, ", self.share(self.two_per_cent))?;
        }
        write!(
            f,
            "answered {} of {}, within 0.25: {:.1} %, within 0.5: {:.1} %, off by >15 %: {}, octave slips: {}, coverage 2u: {:.1} %",
            self.answered,
            self.of,
            self.share(self.quarter),
            self.share(self.half),
            self.far,
            self.slips,
            self.share(self.covered)
        )
    }
}
