//! Practice: what a question holds to be true is what was drawn; runs by code are the same for everyone; skill holds against scipy.

use garment_assay::cost::{Market, Rates};
use garment_assay::garment::Appraiser;
use garment_assay::practice::{Given, Level, Next, Plan, Question, Run, SHARED_QUESTIONS, Takes, Topic, Topics, Trial, skill};
use garment_assay::specimen::{Join, Known, Picture, truth};

fn rates() -> Rates {
    Rates::of(Market::default())
}

/// Every answer that a question takes.
fn every_answer(question: &Question) -> Vec<Given> {
    match &question.takes {
        Takes::OneOf(choices) => (0..choices.len()).map(Given::OneOf).collect(),
        Takes::Count(least, most) => (*least..=*most).map(Given::Count).collect(),
        Takes::BandAndTicket => (0..5).map(|band| Given::BandAndTicket(band, None)).collect(),
    }
}

/// The only right one.
fn right_answer(question: &Question) -> Given {
    let mut right: Vec<Given> =
        every_answer(question).into_iter().filter(|given| question.judged(given).expect("its own kind").right).collect();
    assert_eq!(right.len(), 1, "{question:?}");
    right.remove(0)
}

/// Questions of one topic over many seeds and all levels.
fn questions(topic: Topic) -> Vec<Question> {
    let (rates, appraiser) = (rates(), Appraiser::default());
    let mut all = Vec::new();
    for level in Level::ALL {
        for seed in 0..60 {
            let run = Run::shared(Plan::new(seed * 7919, Topics::of(&[topic]).expect("one"), level));
            all.push(run.next(&[], &rates, &appraiser).expect("a question").question);
        }
    }
    all
}

#[test]
fn what_a_question_holds_true_is_what_was_drawn() {
    for topic in Topic::ALL {
        let mut answers = Vec::new();
        for question in questions(topic) {
            assert_eq!(question.topic, topic);
            let right = right_answer(&question);
            let known: Vec<Vec<Known>> = question.shown.iter().map(|shown| truth(&shown.picture)).collect();
            match (topic, &right) {
                (Topic::Count, Given::Count(count)) => assert!(known[0].contains(&Known::StitchesPerInch(f64::from(*count)))),
                (Topic::More, Given::OneOf(place)) => {
                    let per_inch = |known: &[Known]| {
                        known
                            .iter()
                            .find_map(|known| if let Known::StitchesPerInch(count) = known { Some(*count) } else { None })
                            .unwrap()
                    };
                    let (first, second) = (per_inch(&known[0]), per_inch(&known[1]));
                    assert_eq!(*place == 0, first > second);
                    // Even the hardest pair differs by more than a twentieth.
                    assert!((first / second).ln().abs() > 0.05);
                }
                (Topic::Pucker, Given::OneOf(place)) => {
                    // The grade that the drawing's own words name.
                    let words = question.shown[0].picture.words();
                    let named = ["flat", "faint", "plain", "strong", "gathered"].iter().position(|word| words.contains(word));
                    assert_eq!(named, Some(*place), "{words}");
                }
                (Topic::Faults, Given::Count(count)) => {
                    let skips = question.asks().contains("did not catch");
                    let said = if skips { Known::Skips(*count) } else { Known::Restarts(*count) };
                    assert!(known[0].contains(&said), "{:?} {said:?}", known[0]);
                }
                (Topic::Felled, Given::OneOf(place)) => {
                    let join = [Join::Felled, Join::MockFelled, Join::Overlock, Join::FelledRunOff][*place];
                    assert!(known[0].contains(&Known::Join(join)));
                }
                (Topic::Whiskers, Given::OneOf(place)) => {
                    let words = question.shown[0].picture.words();
                    assert!(words.contains(["soft", "crisp", "hard"][*place]), "{words}");
                }
                (Topic::Weave, Given::OneOf(place)) => {
                    let Picture::WeaveFace(face) = question.shown[0].picture else { panic!("a weave") };
                    let Takes::OneOf(names) = &question.takes else { panic!("choices") };
                    assert_eq!(names[*place], face.kind.name());
                }
                (Topic::Twill, Given::OneOf(place)) => {
                    let degrees = known[0]
                        .iter()
                        .find_map(|known| if let Known::TwillDegrees(angle) = known { Some(*angle) } else { None });
                    assert!((degrees.unwrap() - [45.0, 55.0, 63.0, 70.0][*place]).abs() <= 3.01);
                }
                (Topic::Colour, Given::OneOf(_)) => assert_eq!(known[0].len(), 1),
                (Topic::Whole, Given::BandAndTicket(band, _)) => {
                    assert_eq!(*band, question.described().expect("a garment").band().index());
                }
                other => panic!("{other:?}"),
            }
            answers.push(format!("{right:?}"));
        }
        answers.sort();
        answers.dedup();
        assert!(answers.len() > 1, "{topic:?} has always the same answer");
    }
}

#[test]
fn a_run_by_its_code_is_the_same_for_everyone_whatever_they_answer() {
    let (rates, appraiser) = (rates(), Appraiser::default());
    let code = Plan::new(20_261, Topics::ALL, Level::Middling).code();
    let walk = |wrong: bool, before: &[Trial]| {
        let mut run = Run::shared(Plan::of_code(&code).expect("its own code"));
        while !run.is_over(0.0) {
            let Next { question, again } = run.next(before, &rates, &appraiser).expect("a question");
            assert!(!again);
            let given = every_answer(&question)
                .into_iter()
                .find(|given| question.judged(given).expect("its own kind").right != wrong)
                .expect("an answer");
            run = run.after(question, given).expect("taken").0;
        }
        run
    };
    let before = [Trial { topic: Topic::Count, difficulty: 0.0, blind: 0.1, right: true }; 9];
    let (right, wrong) = (walk(false, &[]), walk(true, &before));
    assert_eq!(right.answered().len(), SHARED_QUESTIONS);
    assert_eq!((right.right(), wrong.right()), (SHARED_QUESTIONS, 0));
    let asked = |run: &Run| run.answered().iter().map(|answered| answered.question.clone()).collect::<Vec<_>>();
    assert_eq!(asked(&right), asked(&wrong));
    // Every topic once, before one comes again.
    let topics: std::collections::BTreeSet<Topic> =
        asked(&right).iter().take(Topic::ALL.len()).map(|question| question.topic).collect();
    assert_eq!(topics.len(), Topic::ALL.len());
}

#[test]
fn in_a_run_of_ones_own_a_mistake_comes_back_once_and_topics_change() {
    let (rates, appraiser) = (rates(), Appraiser::default());
    let mut run = Run::own(Plan::new(5, Topics::ALL, Level::Middling));
    let (mut returns, mut missed) = (0, None);
    for place in 0..24 {
        let Next { question, again } = run.next(&[], &rates, &appraiser).expect("a question");
        let last = run.answered().last().map(|answered| answered.question.topic);
        if again {
            returns += 1;
            assert_eq!((Some(question.topic), place), (missed, 6));
        } else {
            assert_ne!(Some(question.topic), last);
        }
        let right = right_answer(&question);
        let given = if place == 2 {
            missed = Some(question.topic);
            every_answer(&question).into_iter().find(|given| *given != right).expect("a wrong one")
        } else {
            right
        };
        run = run.after(question, given).expect("taken").0;
    }
    assert_eq!(returns, 1);
    assert!(!run.is_over(119.0) && run.is_over(120.0));
    // Whoever knows everything is asked harder things.
    let hard = run.answered().last().map(|answered| answered.question.difficulty);
    assert!(hard > run.answered().first().map(|answered| answered.question.difficulty));
}

#[test]
fn an_answer_to_another_kind_of_question_is_not_taken() {
    let question = questions(Topic::Count).remove(0);
    assert_eq!(question.judged(&Given::OneOf(0)), None);
    assert_eq!(questions(Topic::More).remove(0).judged(&Given::OneOf(2)), None);
}

/// Expected values: scipy 1.17.1, `scipy.integrate.quad` over the same prior and model; see tests/vectors/practice.py.
#[test]
fn skill_is_that_of_quadrature() {
    let text = include_str!("vectors/practice.csv");
    let mut rows = 0;
    for row in text.lines().filter(|row| !row.starts_with('#')).skip(1) {
        let cells: Vec<&str> = row.split(',').collect();
        let [answers, mean, sd, low, high] = cells.as_slice() else { panic!("{row}") };
        let trials: Vec<Trial> = answers
            .split(' ')
            .filter(|answer| !answer.is_empty())
            .map(|answer| {
                let parts: Vec<f64> = answer.split(':').map(|part| part.parse().expect("a number")).collect();
                Trial { topic: Topic::Weave, difficulty: parts[0], blind: parts[1], right: parts[2] > 0.5 }
            })
            .collect();
        let found = skill(&trials, Topic::Weave);
        for (found, expected) in [(found.mean, mean), (found.sd, sd), (found.low, low), (found.high, high)] {
            let expected: f64 = expected.parse().expect("a number");
            assert!((found - expected).abs() < 5e-3, "{row}: {found}");
        }
        rows += 1;
    }
    assert!(rows >= 5);
}
