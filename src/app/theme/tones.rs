//! The colours, by what they are for.

use iced::Color;

/// The colours of a theme by what they are for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tones {
    /// The ground of every screen.
    pub ground: Color,
    /// A raised part of it: fields, buttons.
    pub raised: Color,
    /// All that is read.
    pub ink: Color,
    /// What is read second: still at 7:1.
    pub quiet: Color,
    /// Over: the plate. On the light ground it has an edge of ink.
    pub over: Color,
    /// What is read on that plate.
    pub on_over: Color,
    /// Under: outline and word.
    pub under: Color,
    /// What has the focus or comes next: its edge.
    pub chosen: Color,
    /// Something the tyer must know.
    pub alert: Color,
}

/// Light on dark: orange, sky blue and yellow of Okabe and Ito.
pub const DARK: Tones = Tones {
    ground: Color::from_rgb8(0x10, 0x12, 0x14),
    raised: Color::from_rgb8(0x23, 0x28, 0x2D),
    ink: Color::from_rgb8(0xF4, 0xF1, 0xEA),
    quiet: Color::from_rgb8(0xB9, 0xC0, 0xC6),
    over: Color::from_rgb8(0xE6, 0x9F, 0x00),
    on_over: Color::from_rgb8(0x10, 0x12, 0x14),
    under: Color::from_rgb8(0x56, 0xB4, 0xE9),
    chosen: Color::from_rgb8(0xE6, 0x9F, 0x00),
    alert: Color::from_rgb8(0xF0, 0xE4, 0x42),
};

/// Dark on light: the same orange as a plate; their blue and vermilion, darkened to be read.
pub const LIGHT: Tones = Tones {
    ground: Color::from_rgb8(0xFA, 0xF8, 0xF3),
    raised: Color::from_rgb8(0xED, 0xEA, 0xE2),
    ink: Color::from_rgb8(0x14, 0x17, 0x1A),
    quiet: Color::from_rgb8(0x3F, 0x46, 0x4C),
    over: Color::from_rgb8(0xE6, 0x9F, 0x00),
    on_over: Color::from_rgb8(0x10, 0x12, 0x14),
    under: Color::from_rgb8(0x00, 0x47, 0x70),
    chosen: Color::from_rgb8(0x8A, 0x4B, 0x00),
    alert: Color::from_rgb8(0x84, 0x24, 0x00),
};
