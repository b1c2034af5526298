//! Colours and sizes.
//!
//! Over and under take two colours of the palette of Okabe and Ito that stay apart for every
//! kind of colour vision, and never stand for the difference alone.

mod tones;

use iced::theme::Palette;
use iced::widget::{button, container, progress_bar, text, text_input};
use iced::{Border, Color, Font, Theme, border, font};

use crate::settings::ColourScheme;
pub use tones::{DARK, LIGHT, Tones};

/// Running text of the screens.
pub const BODY: f32 = 22.0;
/// The heading of a screen.
pub const HEADING: f32 = 34.0;
/// The smallest type on any screen.
pub const SMALL: f32 = 19.0;

/// The face of all text, made to be read off an instrument at arm's length and more.
pub const FACE: Font = Font::with_name("B612");
/// The bold cut of that face: for the line that matters, and for what must not be overlooked.
pub const BOLD: Font = Font {
    weight: font::Weight::Bold,
    ..FACE
};
/// The files of the face.
pub const FACES: [&[u8]; 2] = [
    include_bytes!("../../../resources/fonts/B612-Regular.otf"),
    include_bytes!("../../../resources/fonts/B612-Bold.otf"),
];

/// The theme the app has as it comes: light on dark.
pub fn theme() -> Theme {
    of(ColourScheme::Dark)
}

/// The theme of the whole app.
pub fn of(scheme: ColourScheme) -> Theme {
    let (name, tones) = match scheme {
        ColourScheme::Dark => ("Loft at night", &DARK),
        ColourScheme::Light => ("Loft by day", &LIGHT),
    };
    Theme::custom(
        name,
        Palette {
            background: tones.ground,
            text: tones.ink,
            primary: tones.chosen,
            success: tones.under,
            warning: tones.alert,
            danger: tones.alert,
        },
    )
}

/// The tones of a theme.
pub fn tones(theme: &Theme) -> &'static Tones {
    if theme.palette().background == LIGHT.ground {
        &LIGHT
    } else {
        &DARK
    }
}

/// Text that is read second.
pub fn quiet(theme: &Theme) -> text::Style {
    text::Style {
        color: Some(tones(theme).quiet),
    }
}

/// Text that the tyer must read.
pub fn alert(theme: &Theme) -> text::Style {
    text::Style {
        color: Some(tones(theme).alert),
    }
}

/// A frame round the screen that flashes.
pub fn flash(theme: &Theme) -> container::Style {
    container::Style {
        border: Border {
            color: tones(theme).ink,
            width: 16.0,
            radius: 0.0.into(),
        },
        ..container::Style::default()
    }
}

/// A crossing that goes over: a filled plate.
pub fn over_plate(theme: &Theme) -> container::Style {
    let tones = tones(theme);
    container::Style {
        text_color: Some(tones.on_over),
        background: Some(tones.over.into()),
        border: Border {
            color: tones.ink,
            width: if *tones == LIGHT { 3.0 } else { 0.0 },
            radius: 10.0.into(),
        },
        ..container::Style::default()
    }
}

/// A crossing that goes under: an outline.
pub fn under_plate(theme: &Theme) -> container::Style {
    let tones = tones(theme);
    container::Style {
        text_color: Some(tones.under),
        background: None,
        border: Border {
            color: tones.under,
            width: 3.0,
            radius: 10.0.into(),
        },
        ..container::Style::default()
    }
}

/// A notice that must be seen.
pub fn notice(theme: &Theme) -> container::Style {
    let tones = tones(theme);
    container::Style {
        text_color: Some(tones.alert),
        border: Border {
            color: tones.alert,
            width: 2.0,
            radius: 6.0.into(),
        },
        ..container::Style::default()
    }
}

/// The bar of progress.
pub fn progress(theme: &Theme) -> progress_bar::Style {
    let tones = tones(theme);
    progress_bar::Style {
        background: tones.raised.into(),
        bar: tones.quiet.into(),
        border: border::rounded(4),
    }
}

/// The bar of progress of the part in hand.
pub fn progress_now(theme: &Theme) -> progress_bar::Style {
    progress_bar::Style {
        bar: tones(theme).chosen.into(),
        ..progress(theme)
    }
}

/// What comes over a part of a screen in large type.
pub fn card(theme: &Theme) -> container::Style {
    let tones = tones(theme);
    container::Style {
        text_color: Some(tones.ink),
        background: Some(tones.raised.into()),
        border: Border {
            color: tones.chosen,
            width: 3.0,
            radius: 8.0.into(),
        },
        ..container::Style::default()
    }
}

/// A button. `is_chosen` marks the one that a press of *next* works, or that is switched on.
pub fn pressable(is_chosen: bool) -> impl Fn(&Theme, button::Status) -> button::Style {
    move |theme, status| {
        let tones = tones(theme);
        let is_pointed_at = matches!(status, button::Status::Hovered | button::Status::Pressed);
        // What is chosen stays so under the pointer.
        let edge = match (is_chosen, is_pointed_at) {
            (true, _) => tones.chosen,
            (false, true) => tones.ink,
            (false, false) => tones.quiet,
        };
        button::Style {
            background: Some(tones.raised.into()),
            text_color: tones.ink,
            border: Border {
                color: edge,
                width: match (is_chosen, is_pointed_at) {
                    (true, true) => 4.0,
                    (true, false) => 3.0,
                    (false, true) => 2.0,
                    (false, false) => 1.0,
                },
                radius: 8.0.into(),
            },
            ..button::Style::default()
        }
    }
}

/// A line that is told and not pressed. `is_here` marks the one that was said.
pub fn fact(is_here: bool) -> impl Fn(&Theme) -> container::Style {
    move |theme| {
        let tones = tones(theme);
        container::Style {
            text_color: Some(tones.ink),
            border: Border {
                color: tones.chosen,
                width: if is_here { 3.0 } else { 0.0 },
                radius: 8.0.into(),
            },
            ..container::Style::default()
        }
    }
}

/// A button that looks like a line of text.
pub fn bare(theme: &Theme, _: button::Status) -> button::Style {
    button::Style {
        background: None,
        text_color: tones(theme).ink,
        ..button::Style::default()
    }
}

/// A key of the keyboard, on a button that does the same.
pub fn keycap(theme: &Theme) -> container::Style {
    let tones = tones(theme);
    container::Style {
        text_color: Some(tones.ink),
        background: Some(tones.ground.into()),
        border: Border {
            color: tones.quiet,
            width: 1.0,
            radius: 5.0.into(),
        },
        ..container::Style::default()
    }
}

/// A sheet that lies over a whole screen.
pub fn sheet(theme: &Theme) -> container::Style {
    container::Style {
        background: Some(tones(theme).ground.into()),
        ..container::Style::default()
    }
}

/// A field of a form.
pub fn field(theme: &Theme, status: text_input::Status) -> text_input::Style {
    let tones = tones(theme);
    let is_focused = matches!(status, text_input::Status::Focused { .. });
    text_input::Style {
        background: tones.raised.into(),
        border: Border {
            color: if is_focused {
                tones.chosen
            } else {
                tones.quiet
            },
            width: if is_focused { 3.0 } else { 1.0 },
            radius: 6.0.into(),
        },
        icon: tones.quiet,
        placeholder: tones.quiet,
        value: tones.ink,
        // Light enough, or dark enough, for the ink on it.
        selection: Color {
            a: 0.2,
            ..tones.under
        },
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Relative luminance by WCAG 2.2, with 0.04045 as in its errata.
    fn luminance(color: Color) -> f32 {
        let linear = |c: f32| {
            if c <= 0.04045 {
                c / 12.92
            } else {
                ((c + 0.055) / 1.055).powf(2.4)
            }
        };
        0.2126 * linear(color.r) + 0.7152 * linear(color.g) + 0.0722 * linear(color.b)
    }

    /// Contrast ratio by WCAG 2.2.
    fn contrast(one: Color, other: Color) -> f32 {
        let (one, other) = (luminance(one), luminance(other));
        (one.max(other) + 0.05) / (one.min(other) + 0.05)
    }

    fn mixed(over: Color, ground: Color) -> Color {
        let mix = |over_part: f32, part: f32| over_part * over.a + part * (1.0 - over.a);
        Color::from_rgb(
            mix(over.r, ground.r),
            mix(over.g, ground.g),
            mix(over.b, ground.b),
        )
    }

    #[test]
    fn the_ratio_is_that_of_the_standard() {
        assert!((contrast(Color::BLACK, Color::WHITE) - 21.0).abs() < 1e-3);
        // Okabe and Ito on black.
        assert!((contrast(DARK.over, Color::BLACK) - 9.3).abs() < 0.05);
        assert!((contrast(DARK.under, Color::BLACK) - 9.1).abs() < 0.05);
    }

    #[test]
    fn all_text_stands_out_seven_to_one() {
        // WCAG 2.2, success criterion 1.4.6.
        for scheme in [ColourScheme::Dark, ColourScheme::Light] {
            let theme = of(scheme);
            let tones = tones(&theme);
            let selected = field(&theme, text_input::Status::Focused { is_hovered: false });
            let pairs = [
                ("ink on the ground", tones.ink, tones.ground),
                ("ink on raised", tones.ink, tones.raised),
                ("quiet on the ground", tones.quiet, tones.ground),
                ("quiet on raised", tones.quiet, tones.raised),
                ("under on the ground", tones.under, tones.ground),
                ("alert on the ground", tones.alert, tones.ground),
                ("over", tones.on_over, tones.over),
                (
                    "selected",
                    tones.ink,
                    mixed(selected.selection, tones.raised),
                ),
            ];
            for (name, text, ground) in pairs {
                let ratio = contrast(text, ground);
                assert!(ratio >= 7.0, "{scheme:?}: {name}: {ratio}");
            }
        }
    }

    #[test]
    fn edges_that_mean_something_stand_out_three_to_one() {
        // WCAG 2.2, success criterion 1.4.11.
        for tones in [DARK, LIGHT] {
            for edge in [
                tones.chosen,
                tones.under,
                tones.alert,
                tones.quiet,
                tones.ink,
            ] {
                assert!(contrast(edge, tones.ground) >= 3.0);
            }
        }
    }

    #[test]
    fn what_is_chosen_stays_so_under_the_pointer() {
        for scheme in [ColourScheme::Dark, ColourScheme::Light] {
            let theme = of(scheme);
            for status in [button::Status::Active, button::Status::Hovered] {
                let edge = pressable(true)(&theme, status).border.color;
                assert_eq!(edge, tones(&theme).chosen, "{scheme:?} {status:?}");
            }
        }
    }

    #[test]
    fn each_theme_has_its_tones() {
        assert_eq!(tones(&of(ColourScheme::Dark)), &DARK);
        assert_eq!(tones(&of(ColourScheme::Light)), &LIGHT);
        assert_eq!(over_plate(&theme()).text_color, Some(DARK.on_over));
    }
}
