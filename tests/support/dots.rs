//! The dots to a metre that a PNG file names, read from its bytes.

/// Dots to a metre across and down, as the chunk `pHYs` names them (W3C, *Portable Network
/// Graphics*, 5.3 and 11.3.5.3). It must be whole, and stand before the pixels.
pub fn per_metre(file: &[u8]) -> (u32, u32) {
    let number = |bytes: &[u8]| u32::from_be_bytes(bytes.try_into().unwrap());
    let mut rest = &file[8..];
    loop {
        let length = number(&rest[..4]) as usize;
        let (chunk, after) = rest[4..].split_at(4 + length);
        assert_eq!(crc32fast::hash(chunk), number(&after[..4]));
        let (name, data) = chunk.split_at(4);
        assert_ne!(name, b"IDAT", "no dots are named before the pixels");
        if name == b"pHYs" {
            assert_eq!(data[8..], [1], "its unit is the metre");
            return (number(&data[..4]), number(&data[4..8]));
        }
        rest = &after[4..];
    }
}
