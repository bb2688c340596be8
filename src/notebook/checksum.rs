//! CRC-32 of stored text, to notice a page that was damaged.

use crate::archive::crc32;

/// The [`crc32`] of the parts in one, as eight hexadecimal digits.
pub(super) fn checksum(parts: &[&str]) -> String {
    format!("{:08x}", crc32(parts.iter().flat_map(|part| part.bytes())))
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
