//! Colours and sizes.
//!
//! Over and under take two colours of the palette of Okabe and Ito that stay apart for every
//! kind of colour vision, and never stand for the difference alone.

use iced::theme::Palette;
use iced::widget::{button, container, progress_bar, text_input};
use iced::{Border, Color, Font, Theme, border, font};

/// The ground of every screen.
pub const GROUND: Color = Color::from_rgb8(0x10, 0x12, 0x14);
/// A raised part of it: fields, buttons.
pub const RAISED: Color = Color::from_rgb8(0x23, 0x28, 0x2D);
/// All that is read.
pub const INK: Color = Color::from_rgb8(0xF4, 0xF1, 0xEA);
/// What is read second: still at 7:1.
pub const QUIET: Color = Color::from_rgb8(0xB9, 0xC0, 0xC6);
/// Over: orange of Okabe and Ito.
pub const OVER: Color = Color::from_rgb8(0xE6, 0x9F, 0x00);
/// Under: sky blue of Okabe and Ito.
pub const UNDER: Color = Color::from_rgb8(0x56, 0xB4, 0xE9);
/// Something the tyer must know: yellow of Okabe and Ito.
pub const ALERT: Color = Color::from_rgb8(0xF0, 0xE4, 0x42);

/// Running text of the screens.
pub const BODY: f32 = 22.0;
/// Headings.
pub const HEADING: f32 = 34.0;
/// The least there is.
pub const SMALL: f32 = 19.0;

/// The face of all text, made to be read off an instrument at arm's length and more.
pub const FACE: Font = Font::with_name("B612");
/// The same, bold.
pub const BOLD: Font = Font {
    weight: font::Weight::Bold,
    ..FACE
};
/// The files of the face.
pub const FACES: [&[u8]; 2] = [
    include_bytes!("../../resources/fonts/B612-Regular.otf"),
    include_bytes!("../../resources/fonts/B612-Bold.otf"),
];

/// The theme of the whole app.
pub fn theme() -> Theme {
    Theme::custom(
        "Loft at night",
        Palette {
            background: GROUND,
            text: INK,
            primary: OVER,
            success: UNDER,
            warning: ALERT,
            danger: ALERT,
        },
    )
}

/// A crossing that goes over: a filled plate.
pub fn over_plate(_: &Theme) -> container::Style {
    container::Style {
        text_color: Some(GROUND),
        background: Some(OVER.into()),
        border: border::rounded(10),
        ..container::Style::default()
    }
}

/// A crossing that goes under: an outline.
pub fn under_plate(_: &Theme) -> container::Style {
    container::Style {
        text_color: Some(UNDER),
        background: None,
        border: Border {
            color: UNDER,
            width: 3.0,
            radius: 10.0.into(),
        },
        ..container::Style::default()
    }
}

/// A notice that must be seen.
pub fn notice(_: &Theme) -> container::Style {
    container::Style {
        text_color: Some(ALERT),
        border: Border {
            color: ALERT,
            width: 2.0,
            radius: 6.0.into(),
        },
        ..container::Style::default()
    }
}

/// The bar of progress.
pub fn progress(_: &Theme) -> progress_bar::Style {
    progress_bar::Style {
        background: RAISED.into(),
        bar: QUIET.into(),
        border: border::rounded(4),
    }
}

/// A button. `is_chosen` marks the one that a press of *next* works, or that is switched on.
pub fn pressable(is_chosen: bool) -> impl Fn(&Theme, button::Status) -> button::Style {
    move |_, status| {
        let edge = match status {
            button::Status::Hovered | button::Status::Pressed => INK,
            _ if is_chosen => OVER,
            _ => QUIET,
        };
        button::Style {
            background: Some(RAISED.into()),
            text_color: INK,
            border: Border {
                color: edge,
                width: if is_chosen { 3.0 } else { 1.0 },
                radius: 8.0.into(),
            },
            ..button::Style::default()
        }
    }
}

/// A field of a form.
pub fn field(_: &Theme, status: text_input::Status) -> text_input::Style {
    let is_focused = matches!(status, text_input::Status::Focused { .. });
    text_input::Style {
        background: RAISED.into(),
        border: Border {
            color: if is_focused { OVER } else { QUIET },
            width: if is_focused { 3.0 } else { 1.0 },
            radius: 6.0.into(),
        },
        icon: QUIET,
        placeholder: QUIET,
        value: INK,
        selection: Color { a: 0.4, ..UNDER },
    }
}
