//! Learning: every check of every family, and of second-hand pieces, has a whole lesson, its text is as long as two minutes allow and says all it must, and how
//! telling it is holds against scipy and the model's own vectors.

use std::collections::BTreeSet;
use std::fs;
use std::path::PathBuf;

use garment_assay::catalog::FAMILIES;
use garment_assay::grading::Tables;
use garment_assay::learn::{Course, FIRST, Lesson, Marks, Section, Subject, Texts};
use garment_assay::practice::Topic;
use garment_assay::trade::{Band, Stage};

/// Checks whose text is not written yet, with the reason: subject, check (none for the whole of it), why. Whoever adds a family or a check
/// may put it here, and takes it out again with its text; an entry that is no longer needed fails.
const WITHOUT_TEXT: &[(&str, Option<&str>, &str)] = &[];

/// What is written once for all families; `scripts/assets.sh` puts it behind each family's own.
const EVERY: &str = "every-family";

/// Words of one text. With what the catalog says and what is worked out, a lesson then has what the next constant says.
const WORDS: std::ops::RangeInclusive<usize> = 85..=170;
/// Words of a whole lesson: two minutes at 200 words a minute would be 400 with no look at a picture.
const WORDS_OF_LESSON: std::ops::RangeInclusive<usize> = 200..=420;
/// Longest lesson in seconds, the looks at pictures in it.
const LONGEST: f64 = 150.0;

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("learn")
}

/// A file of texts as it stands in the repository.
fn file(name: &str) -> Option<Texts> {
    let text = fs::read_to_string(folder().join(format!("{name}.txt"))).ok()?;
    Some(Texts::read(&text).unwrap_or_else(|fault| panic!("learn/{name}.txt: {fault}")))
}

/// The texts of a subject, as they are served: a family's own and those of every family.
fn served(subject: Subject) -> Texts {
    let read = |name: &str| fs::read_to_string(folder().join(format!("{name}.txt"))).unwrap_or_else(|_| "lessons 1\n".to_owned());
    let every = read(EVERY);
    let shared = match subject {
        Subject::Make(_) => every.split_once('\n').expect("more than one line").1,
        Subject::SecondHand => "",
    };
    let both = format!("{}{shared}", read(subject.key()));
    Texts::read(&both).unwrap_or_else(|fault| panic!("{}: {fault}", subject.key()))
}

fn courses() -> Vec<Course> {
    let tables = Tables::default();
    Subject::all().map(|subject| Course::of(subject, &tables)).collect()
}

fn excused(subject: Subject, check: &str) -> bool {
    WITHOUT_TEXT.iter().any(|(of, key, _)| *of == subject.key() && key.is_none_or(|key| key == check))
}

#[test]
fn every_check_of_every_family_has_a_text_and_no_text_is_without_its_check() {
    for subject in Subject::all() {
        let (texts, of) = (served(subject), subject.key());
        for check in subject.checks() {
            match texts.of(check.key) {
                Some(_) => assert!(!excused(subject, check.key), "{of}/{} has its text: take it out of WITHOUT_TEXT", check.key),
                None => assert!(excused(subject, check.key), "learn/{of}.txt lacks “# {}”", check.key),
            }
        }
        for key in file(of).iter().flat_map(Texts::checks) {
            assert!(subject.check(key).is_some(), "learn/{of}.txt has a text for {key}, which is no check of it");
        }
    }
    let every = file(EVERY).expect("the texts of every family");
    for key in every.checks() {
        assert!(FAMILIES.iter().all(|family| family.checks.iter().any(|check| check.key == key)), "{key} is not in every family");
    }
    for (subject, check, why) in WITHOUT_TEXT {
        let subject = Subject::of(subject).unwrap_or_else(|| panic!("there is no course {subject}"));
        assert!(check.is_none_or(|check| subject.check(check).is_some()) && !why.is_empty());
    }
    // Files of no course.
    for entry in fs::read_dir(folder()).expect("the folder of texts") {
        let entry = entry.expect("a file");
        let name = entry.file_name().into_string().expect("a plain name");
        // What is written in other languages, which tests/languages.rs looks at.
        if entry.path().is_dir() {
            continue;
        }
        let of = name.strip_suffix(".txt").unwrap_or_else(|| panic!("{name} is no text"));
        assert!(of == EVERY || Subject::of(of).is_some(), "learn/{name} belongs to no course");
    }
}

#[test]
fn a_text_says_all_it_must_in_words_of_the_house() {
    let mut seen = BTreeSet::new();
    for subject in Subject::all() {
        let texts = served(subject);
        for key in texts.checks() {
            let text = texts.of(key).expect("its text");
            let name = format!("{}/{key}", subject.key());
            assert!(WORDS.contains(&text.words()), "{name} has {} words", text.words());
            for section in Section::ALL {
                let words = text.section(section);
                assert!(words.ends_with('.'), "{name}, {}: no full stop", section.key());
                for sign in ['!', '<', '>', '*', '_', '`', '"', '\''] {
                    assert!(!words.contains(sign), "{name}, {}: {sign}", section.key());
                }
                assert!(!words.contains("  "), "{name}, {}: two spaces", section.key());
                for sentence in words.split(['.', '?', ':', ';']) {
                    let count = sentence.split_whitespace().count();
                    assert!(count <= 30, "{name}, {}: a sentence of {count} words", section.key());
                }
            }
            // The same sentence may serve where families share a check in the same words, and nowhere else.
            if file(EVERY).is_some_and(|every| every.of(key).is_none()) {
                for section in [Section::Wear, Section::Silent, Section::Fooled, Section::Faked] {
                    assert!(seen.insert(text.section(section).to_owned()), "{name}, {} was said before", section.key());
                }
            }
            // Where nothing is said of what it leans on, one of these words is missing.
            let basis = text.section(Section::Basis).to_lowercase();
            let owned = ["judgement", "common practice", "published", "by iso", "of iso", "bulletin", "estimate", "price list"];
            assert!(owned.iter().any(|word| basis.contains(word)), "{name}: {basis}");
        }
    }
}

#[test]
fn a_lesson_is_read_in_about_two_minutes() {
    let mut words = Vec::new();
    for course in courses() {
        let texts = served(course.subject);
        for lesson in course.lessons() {
            let text = texts.of(lesson.check.key);
            let (count, seconds) = (lesson.words(text), lesson.seconds(text));
            let name = format!("{}/{}", course.subject.key(), lesson.check.key);
            assert!(WORDS_OF_LESSON.contains(&count), "{name}: {count} words");
            assert!(seconds <= LONGEST, "{name}: {seconds:.0} s");
            words.push(count);
        }
        assert!(course.seconds(Some(&texts)) > course.lessons().count() as f64 * 60.0);
    }
    words.sort_unstable();
    println!("words of a lesson: least {}, middle {}, most {}", words[0], words[words.len() / 2], words[words.len() - 1]);
    assert!((250..=350).contains(&words[words.len() / 2]), "the middle lesson has {} words", words[words.len() / 2]);
}

#[test]
fn how_telling_an_answer_is_holds_against_scipy() {
    // learn.py: quadrature with scipy on the curves of the model's checks.json, no code of the project's.
    let rows = include_str!("vectors/learn.csv").lines().filter(|line| !line.starts_with('#'));
    let (courses, mut met) = (courses(), 0);
    for row in rows {
        let cells: Vec<&str> = row.split(',').collect();
        let (level, better, bits): (usize, f64, f64) =
            (cells[2].parse().expect("a level"), cells[3].parse().expect("a chance"), cells[4].parse().expect("bits"));
        let course = courses.iter().find(|course| course.subject.key() == cells[0]).expect("a family");
        let telling = course.lesson(cells[1]).and_then(|(_, lesson)| lesson.telling.as_ref()).expect("a telling check");
        // The house reckons on a grid; screens show whole per cents.
        assert!((telling.alone[level].better() - better).abs() < 1e-3, "{row}: {}", telling.alone[level].better());
        assert!((telling.bits - bits).abs() < 1e-3, "{row}: {}", telling.bits);
        met += 1;
    }
    assert!(met >= 30, "{met} rows");
}

#[test]
fn how_telling_it_is_holds_against_the_models_vectors() {
    // vectors.json of the model, POST-01, POST-02 (scipy, nested integrate.quad) and NEXT-01 (scikit-learn, mutual_info_score).
    let course = Course::of(Subject::Make(FAMILIES[0]), &Tables::default());
    let (_, inseam) = course.lesson("inseam").expect("a check of jeans");
    let telling = inseam.telling.as_ref().expect("it speaks of quality");
    assert!((telling.better_before() - (0.241_730_337 + 0.066_807_201)).abs() < 1e-6);
    let felled = telling.alone[2].bands;
    for (band, expected) in Band::ALL.into_iter().zip([0.011_987_490, 0.120_226_235, 0.401_239_659, 0.370_730_947, 0.095_815_669])
    {
        assert!((felled.probability(band) - expected).abs() < 1e-6, "{band:?}");
    }
    assert!((telling.bits - 0.209_903_747).abs() < 1e-6);
    assert_eq!(
        inseam.telling_words()[0],
        "Of new pieces that nobody has looked at, 31 % are Fine or Exceptional. The best answer alone makes that 68 %, the worst 8 %."
    );
}

#[test]
fn how_telling_a_check_of_wear_is_holds_against_scipy() {
    // second_hand.py: nested quadrature with scipy on the same curves, no code of the project's; its first sheet is one answer alone.
    let file: serde_json::Value =
        serde_json::from_str(include_str!("vectors/second_hand.json")).expect("second_hand.json is JSON");
    let sheet = &file["beliefs"][0];
    let answers = sheet["answers"].as_array().expect("answers");
    assert_eq!(answers.len(), 1);
    let course = Course::of(Subject::SecondHand, &Tables::default());
    let (_, lesson) = course.lesson(answers[0]["check"].as_str().expect("a key")).expect("a check of wear");
    let telling = lesson.telling.as_ref().expect("it speaks of what is left");
    let alone = telling.alone[answers[0]["level"].as_u64().expect("a level") as usize].bands;
    for (band, theirs) in Band::ALL.into_iter().zip(sheet["bands"].as_array().expect("bands")) {
        assert!((alone.probability(band) - theirs.as_f64().expect("a chance")).abs() < 1e-6, "{band:?}");
    }
    // In the words of its own question, and never in those of the make.
    let words = lesson.telling_words();
    assert!(
        words[0].starts_with("Of second-hand pieces that nobody has looked at, 31 % count as Much left or As new."),
        "{words:?}"
    );
    assert!(words[1].ends_with("of the 12 checks that speak of what is left here."), "{words:?}");
}

#[test]
fn each_check_leads_to_the_course_in_which_it_has_its_lesson() {
    for family in FAMILIES {
        let worn = family.second_hand.iter().map(|look| &look.condition.check);
        for check in family.checks.iter().copied().chain(worn) {
            let subject = Subject::with(family, check);
            assert_eq!(subject.check(check.key), Some(check), "{}/{}", family.key, check.key);
            assert_eq!(Subject::of(subject.key()), Some(subject));
        }
    }
    let keys: BTreeSet<&str> = Subject::all().map(Subject::key).collect();
    assert_eq!(keys.len(), FAMILIES.len() + 1, "a course shares its key with another");
}

#[test]
fn a_course_holds_every_check_once_the_most_telling_first() {
    for course in courses() {
        let keys: Vec<&str> = course.lessons().map(|lesson| lesson.check.key).collect();
        let all: BTreeSet<&str> = course.subject.checks().iter().map(|check| check.key).collect();
        assert_eq!(keys.len(), all.len());
        assert_eq!(keys.iter().copied().collect::<BTreeSet<_>>(), all);
        assert_eq!(course.parts[0].lessons.len(), FIRST);
        let worth = |lesson: &Lesson| lesson.telling.as_ref().map_or(-1.0, |telling| telling.bits_per_second);
        let least = course.parts[0].lessons.iter().map(worth).fold(f64::INFINITY, f64::min);
        let stages: Vec<Option<Stage>> = course.parts.iter().map(|part| part.stage).collect();
        assert!(stages[0].is_none() && stages.windows(2).all(|pair| pair[0] < pair[1]), "{stages:?}");
        for part in &course.parts {
            assert!(part.lessons.windows(2).all(|pair| worth(&pair[0]) >= worth(&pair[1])));
            for lesson in part.lessons.iter().filter(|_| part.stage.is_some()) {
                assert_eq!(Some(lesson.check.stage), part.stage);
                assert!(worth(lesson) <= least);
            }
        }
        // Ranks are the order by worth, and only what speaks of quality has one.
        let mut ranked: Vec<&Lesson> = course.lessons().filter(|lesson| lesson.rank.is_some()).collect();
        ranked.sort_by_key(|lesson| lesson.rank);
        assert!(ranked.windows(2).all(|pair| worth(pair[0]) >= worth(pair[1])));
        assert!(ranked.iter().enumerate().all(|(place, lesson)| lesson.rank == Some((place + 1, ranked.len()))));
        for (place, lesson) in course.lessons().enumerate() {
            assert_eq!(lesson.rank.is_some(), lesson.check.speaks.about(course.subject.question()).is_some());
            assert_eq!(course.lesson(lesson.check.key).map(|(place, _)| place), Some(place));
            assert_eq!(course.at(place), Some(lesson));
        }
        assert_eq!(course.at(keys.len()), None);
    }
}

#[test]
fn a_better_answer_never_makes_better_pieces_less_likely() {
    for course in courses() {
        for lesson in course.lessons() {
            let Some(telling) = &lesson.telling else { continue };
            assert_eq!(telling.alone.len(), lesson.check.levels.len());
            let better: Vec<f64> = telling.alone.iter().map(|alone| alone.better()).collect();
            let (first, last) = (better[0], better[better.len() - 1]);
            assert!(better.windows(2).all(|pair| pair[0] < pair[1]), "{}: {better:?}", lesson.check.key);
            assert!(first < telling.better_before() && telling.better_before() < last, "{}", lesson.check.key);
        }
    }
}

#[test]
fn what_can_be_practised_is_told_from_pictures_and_instruments() {
    let mut met = BTreeSet::new();
    for course in courses() {
        for lesson in course.lessons() {
            let topic = lesson.topic();
            met.extend(topic);
            let expected = match lesson.check.key {
                "pucker" => Some(Topic::Pucker),
                "spi" => Some(Topic::Count),
                "inseam" | "seat-yoke" => Some(Topic::Felled),
                "dry-work" => Some(Topic::Whiskers),
                "restarts" => Some(Topic::Faults),
                "made-in" | "canvas" | "neck-rib" | "cloth-hand" => None,
                _ => continue,
            };
            assert_eq!(topic, expected, "{}/{}", course.subject.key(), lesson.check.key);
        }
    }
    assert!(met.len() >= 5);
}

#[test]
fn a_lesson_read_counts_once_and_can_be_taken_back() {
    let courses = courses();
    let (first, other) = (courses[0].at(0).expect("a lesson"), courses[1].at(0).expect("a lesson"));
    let marks = Marks::default().with(first, true).with(first, true).with(other, true);
    assert!(marks.has(first) && marks.count(courses[0].subject) == 1 && marks.count(courses[1].subject) == 1);
    let marks = marks.with(first, false);
    assert!(!marks.has(first) && marks.has(other) && marks.count(courses[0].subject) == 0);
    let again = Marks::of(marks.each().map(str::to_owned));
    assert_eq!(again, marks);
}
