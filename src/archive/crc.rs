//! CRC-32 of bytes, as zips carry it for each file and pages of the notebook in their head.

/// What four bits add, worked out when the program is compiled. Sixteen entries: pictures are some hundred kilobytes, and a larger table
/// would be more download than it saves in time.
const TABLE: [u32; 16] = {
    let mut table = [0; 16];
    let mut place = 0;
    while place < 16 {
        let (mut crc, mut bit) = (place as u32, 0);
        while bit < 4 {
            crc = if crc & 1 == 1 { (crc >> 1) ^ 0xEDB8_8320 } else { crc >> 1 };
            bit += 1;
        }
        table[place] = crc;
        place += 1;
    }
    table
};

/// CRC-32 (ISO/IEC 3309, reflected polynomial 0xEDB88320) of bytes.
///
/// # Source
/// The check value of the nine digits `123456789` is `cbf43926` (catalogues of CRC parameters); Python's zipfile refuses a file with
/// another one (`tests/photographs.rs`).
pub fn crc32(bytes: impl IntoIterator<Item = u8>) -> u32 {
    !bytes.into_iter().fold(u32::MAX, |crc, byte| {
        let crc = crc ^ u32::from(byte);
        let crc = (crc >> 4) ^ TABLE[(crc & 15) as usize];
        (crc >> 4) ^ TABLE[(crc & 15) as usize]
    })
}

#[cfg(test)]
mod tests {
    use super::crc32;

    #[test]
    fn the_catalogued_check_value_comes_out() {
        assert_eq!(crc32(*b"123456789"), 0xCBF4_3926);
        assert_eq!(crc32([]), 0);
    }
}
