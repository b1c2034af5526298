//! Points and lengths of the sheet: the surface of the tube, unrolled.

/// A point of the sheet in pixels: to the right, and upwards from the bottom rim line.
pub type SheetPoint = (f32, f32);

/// A count of half pitches or rows as a length in them.
#[expect(
    clippy::cast_precision_loss,
    reason = "a few thousand at most, exact in an f32"
)]
pub const fn real(count: i32) -> f32 {
    count as f32
}

/// The whole number at or below `length`.
#[expect(
    clippy::cast_possible_truncation,
    reason = "a cast saturates, and pictures are small"
)]
pub fn whole(length: f32) -> i32 {
    length.floor() as i32
}
