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
    !bytes.into_iter().fold(u32::MAX, after)
}

fn after(crc: u32, byte: u8) -> u32 {
    let crc = crc ^ u32::from(byte);
    let crc = (crc >> 4) ^ TABLE[(crc & 15) as usize];
    (crc >> 4) ^ TABLE[(crc & 15) as usize]
}

/// The [`crc32`] of bytes that come one part after the other.
#[derive(Clone, Copy, Debug)]
pub struct Crc32(u32);

impl Default for Crc32 {
    fn default() -> Crc32 {
        Crc32(u32::MAX)
    }
}

impl Crc32 {
    /// Takes the next part.
    pub fn add(&mut self, bytes: &[u8]) {
        self.0 = bytes.iter().copied().fold(self.0, after);
    }

    /// That of all parts so far.
    pub fn value(&self) -> u32 {
        !self.0
    }
}

#[cfg(test)]
mod tests {
    use super::{Crc32, crc32};

    #[test]
    fn the_catalogued_check_value_comes_out() {
        assert_eq!(crc32(*b"123456789"), 0xCBF4_3926);
        assert_eq!(crc32([]), 0);
    }

    #[test]
    fn parts_come_to_what_the_whole_comes_to() {
        let mut parts = Crc32::default();
        assert_eq!(parts.value(), 0);
        for part in ["1234", "", "56789"] {
            parts.add(part.as_bytes());
        }
        assert_eq!(parts.value(), 0xCBF4_3926);
    }
}
