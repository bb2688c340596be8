//! Reads the vector files: comma-separated, `#` for a comment, the first line of names left out.

/// The fields of each row, quotes taken off.
pub fn fields(text: &str) -> Vec<Vec<String>> {
    let split = |line: &str| {
        let (mut fields, mut quoted) = (vec![String::new()], false);
        for c in line.chars() {
            match c {
                '"' => quoted = !quoted,
                ',' if !quoted => fields.push(String::new()),
                c => fields.last_mut().unwrap().push(c),
            }
        }
        fields
    };
    text.lines().filter(|line| !line.starts_with('#')).skip(1).map(split).collect()
}
