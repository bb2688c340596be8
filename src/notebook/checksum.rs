//! CRC-32 of stored text, to notice a page that was damaged.

use crate::archive::Crc32;

/// The [`crc32`] of the parts in one, as eight hexadecimal digits.
pub(super) fn checksum(parts: &[&str]) -> String {
    let mut sum = Checksum::default();
    parts.iter().for_each(|part| sum.add(part));
    sum.end()
}

/// The same of text that comes one part after the other.
#[derive(Default)]
pub(super) struct Checksum(Crc32);

impl Checksum {
    /// Adds the next part.
    pub(super) fn add(&mut self, part: &str) {
        self.0.add(part.as_bytes());
    }

    /// As eight hexadecimal digits.
    pub(super) fn end(self) -> String {
        format!("{:08x}", self.0.value())
    }
}

#[cfg(test)]
mod tests {
    use super::checksum;

    #[test]
    fn the_catalogued_check_value_comes_out() {
        assert_eq!(checksum(&["123456789"]), "cbf43926");
        assert_eq!(checksum(&["1234", "", "56789"]), "cbf43926");
        assert_eq!(checksum(&[]), "00000000");
    }
}
