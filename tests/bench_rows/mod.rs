//! Rows of the bench's vector files, quotes taken off.
#![allow(dead_code)]

/// Fields of each row; lines of origin and the heading are left out.
pub fn rows(text: &str) -> Vec<Vec<String>> {
    text.lines()
        .filter(|line| !line.starts_with('#') && !line.starts_with("id,") && !line.is_empty())
        .map(|line| {
            let (mut fields, mut quoted) = (vec![String::new()], false);
            for c in line.chars() {
                match c {
                    '"' => quoted = !quoted,
                    ',' if !quoted => fields.push(String::new()),
                    c => fields.last_mut().unwrap().push(c),
                }
            }
            fields
        })
        .collect()
}

/// Every number in a text, in order: "A=250; B=310 mm" is 250 and 310. A sign counts where no digit stands before it.
pub fn numbers(text: &str) -> Vec<f64> {
    let (mut found, mut word, mut before) = (Vec::new(), String::new(), ' ');
    for c in text.chars().chain([' ']) {
        if c.is_ascii_digit() || (c == '.' && !word.is_empty()) || (c == '-' && word.is_empty() && !before.is_alphanumeric()) {
            word.push(c);
        } else {
            found.extend(word.parse::<f64>());
            word.clear();
        }
        before = c;
    }
    found
}

/// Inputs, value and spread of every row of that name in `bench_b.csv`.
pub fn carried(name: &str) -> Vec<(Vec<f64>, f64, f64)> {
    let found: Vec<_> = rows(include_str!("../vectors/bench_b.csv"))
        .into_iter()
        .filter(|row| row[0] == "spread" && row[1] == name)
        .map(|row| {
            let inputs = row[2].split(' ').map(|number| number.parse().unwrap()).collect();
            (inputs, row[3].parse().unwrap(), row[4].parse().unwrap())
        })
        .collect();
    assert!(!found.is_empty(), "no rows of {name}");
    found
}

#[track_caller]
pub fn near(found: f64, expected: f64, tolerance: f64) {
    assert!((found - expected).abs() <= tolerance, "{found} is not {expected}");
}
