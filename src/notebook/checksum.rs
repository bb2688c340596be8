//! CRC-32 of stored text, to notice a page that was damaged.

/// CRC-32 (ISO/IEC 3309, reflected polynomial 0xEDB88320) of the parts in one, as eight hexadecimal digits. Bitwise, without a table: pages are a few
/// kilobytes and the table would be a kilobyte of download.
///
/// # Source
/// The check value of the nine digits `123456789` is `cbf43926` (catalogues of CRC parameters).
pub(super) fn checksum(parts: &[&str]) -> String {
    let mut crc = u32::MAX;
    for byte in parts.iter().flat_map(|part| part.bytes()) {
        crc ^= u32::from(byte);
        for _ in 0..8 {
            crc = if crc & 1 == 1 { (crc >> 1) ^ 0xEDB8_8320 } else { crc >> 1 };
        }
    }
    format!("{:08x}", !crc)
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
