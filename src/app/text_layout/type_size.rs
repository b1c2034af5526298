//! Sizes of type by the angle under which they are seen.
//!
//! All screens are laid out for a [`theme::BODY`](crate::app::theme::BODY) of 22 logical pixels and
//! drawn larger by a factor, chosen so that this size shows capitals of 22 minutes of arc at the
//! tyer's distance. Then a logical pixel of type is a minute of arc: the least size on any
//! screen, 19, stands above the 16′ of ISO 9241-3, and the one line that matters starts at 42,
//! the 0.7° of EN 301 549 5.1.4.

use iced::Size;

use crate::settings::ScreenGeometry;

/// Height of the capitals in sizes of the type: `sCapHeight / unitsPerEm` of B612, bold and
/// regular alike.
pub const CAPITALS: f32 = 0.75;
/// Millimetres of a pixel on a screen of which nothing is known: 96 to the inch, the *reference
/// pixel* of CSS.
pub const USUAL_PIXEL: f32 = 25.4 / 96.0;
/// Running text, in minutes of arc: what ISO 9241-3 recommends, 20′ to 22′.
pub const COMFORTABLE: f32 = 22.0;
/// The screens are laid out for at least this many logical pixels.
const LAID_OUT_FOR: Size = Size::new(900.0, 620.0);
/// In so many logical pixels every screen has the room it wants; what is beyond that is not spent on room
/// alone.
const AMPLE: Size = Size::new(1366.0, 768.0);
/// The most that a large window makes of type: running text of 22′ stays within the 31′ of ISO 9241-3.
const MOST_GROWTH: f32 = 1.4;

/// The height, in millimetres, that is seen under an angle from a distance in millimetres.
pub fn height(minutes: f32, distance: f32) -> f32 {
    distance * (minutes / 60.0).to_radians().tan()
}

/// How much larger than 1 everything should be drawn. `monitor_width` is in pixels.
pub fn scale(screen: ScreenGeometry, monitor_width: Option<f32>) -> f32 {
    let pixel = match (screen.width, monitor_width) {
        (Some(width), Some(pixels)) if pixels > 0.0 => f32::from(width) / pixels,
        _ => USUAL_PIXEL,
    };
    let capitals = height(COMFORTABLE, screen.distance.into());
    let body = capitals / CAPITALS / pixel;
    body / crate::app::theme::BODY
}

/// The part of it that a window, in pixels, has room for; 1 where there is no room at all. In a window with
/// more room than the screens want it is more: what is looked up would be lost beside a line that takes
/// what room there is. Half of what is beyond goes to the type, half to the room around it.
pub fn within(scale: f32, window: Size) -> f32 {
    let fits = |size: Size| (window.width / size.width).min(window.height / size.height);
    let scale = scale.min(fits(LAID_OUT_FOR)).max(1.0);
    let beyond = (fits(AMPLE) / scale).max(1.0);
    scale * beyond.sqrt().min(MOST_GROWTH)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::theme;

    #[test]
    fn heights_at_two_metres_are_those_of_the_standards() {
        // ISO 9241-3: at least 16′, 20′ to 22′ recommended, 31′ the upper bound for running
        // text; EN 301 549 5.1.4: 0.7°. The heights follow from the angles.
        for (minutes, millimetres) in [(16.0, 9.3), (22.0, 12.8), (31.0, 18.0), (42.0, 24.4)] {
            assert!(
                (height(minutes, 2000.0) - millimetres).abs() < 0.05,
                "{minutes}′"
            );
        }
    }

    #[test]
    fn at_the_scale_a_pixel_of_type_is_a_minute_of_arc() {
        for distance in [500, 1000, 2000, 3000] {
            for (width, pixels) in [(531, 1920.0_f32), (344, 1366.0), (1210, 3840.0)] {
                let screen = ScreenGeometry {
                    distance,
                    width: Some(width),
                };
                let factor = scale(screen, Some(pixels));
                let seen = |size: f32| {
                    let height = size * factor * CAPITALS * f32::from(width) / pixels;
                    (height / f32::from(distance)).atan().to_degrees() * 60.0
                };
                assert!((seen(theme::BODY) - 22.0).abs() < 0.05);
                assert!(seen(theme::SMALL) >= 16.0 && seen(theme::HEADING) <= 36.0);
                assert!(seen(42.0) >= 41.9);
            }
        }
    }

    #[test]
    fn the_capitals_are_as_high_as_the_face_says() {
        for face in theme::FACES {
            let table = |tag: &[u8]| {
                // The directory of an OpenType file: records of 16 bytes from byte 12 on.
                let record = face[12..]
                    .chunks(16)
                    .find(|record| &record[..4] == tag)
                    .unwrap();
                let at = u32::from_be_bytes(record[8..12].try_into().unwrap());
                &face[usize::try_from(at).unwrap()..]
            };
            let number = |bytes: &[u8]| f32::from(u16::from_be_bytes(bytes.try_into().unwrap()));
            let em = number(&table(b"head")[18..20]);
            let capitals = number(&table(b"OS/2")[88..90]);
            assert!((capitals / em - CAPITALS).abs() < 0.02, "{}", capitals / em);
        }
    }

    #[test]
    fn a_small_window_is_drawn_no_larger_than_it_has_room_for() {
        assert!((within(3.0, Size::new(800.0, 480.0)) - 1.0).abs() < f32::EPSILON);
        assert!((within(3.0, Size::new(1800.0, 2000.0)) - 2.0).abs() < f32::EPSILON);
        assert!((within(0.5, Size::new(1366.0, 2000.0)) - 1.0).abs() < f32::EPSILON);
    }

    #[test]
    fn a_large_window_is_drawn_larger_and_has_more_room_too() {
        let mut before = 1.0;
        for width in [1366.0_f32, 1600.0, 1920.0, 2560.0, 3840.0] {
            let window = Size::new(width, width * 9.0 / 16.0);
            let scale = within(1.0, window);
            assert!(scale >= before && scale <= MOST_GROWTH, "{width}: {scale}");
            // No less is laid out in a larger window.
            assert!(width / scale >= 1365.0, "{width}: {scale}");
            before = scale;
        }
        assert!(before > 1.3, "{before}");
        // Whoever sits far away has what that takes, as far as there is room, and the screens stay as
        // large as they were laid out for.
        for wanted in [1.0, 1.5, 2.0, 3.0] {
            for window in [Size::new(1920.0, 1080.0), Size::new(3840.0, 2160.0)] {
                let scale = within(wanted, window);
                assert!(scale >= wanted.min(window.height / LAID_OUT_FOR.height) - 1e-4);
                assert!(window.height / scale >= LAID_OUT_FOR.height - 0.1);
            }
        }
    }
}
