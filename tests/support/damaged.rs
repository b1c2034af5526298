//! Documents with one thing wrong.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

/// A document with one bit of one byte the other way.
pub fn flipped(whole: &[u8], at: usize) -> Vec<u8> {
    let mut damaged = whole.to_vec();
    damaged[at] ^= 1 << (at % 8);
    damaged
}

/// A document flipped at a byte, and one cut before it.
pub fn flipped_and_cut(whole: &[u8], at: usize) -> [Vec<u8>; 2] {
    [flipped(whole, at), whole[..at].to_vec()]
}
