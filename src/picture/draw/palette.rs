//! Colours for the roles of shapes.
//!
//! The hues are those of Okabe and Ito, *Color Universal Design* (2008), chosen to stay apart
//! for every kind of colour vision. Cords are told apart from what they lie on by 3 : 1 or more,
//! as WCAG 2.2, success criterion 1.4.11, asks of graphics.

use super::item::Role;

/// An sRGB colour with 8 bits a channel, and how opaque it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Colour {
    /// Red, 0 … 255.
    pub red: u8,
    /// Green, 0 … 255.
    pub green: u8,
    /// Blue, 0 … 255.
    pub blue: u8,
    /// 0 is left out, 255 covers.
    pub opacity: u8,
}

impl Colour {
    /// The opaque colour `0xRRGGBB`.
    pub const fn rgb(code: u32) -> Self {
        let [_, red, green, blue] = code.to_be_bytes();
        Self {
            red,
            green,
            blue,
            opacity: 255,
        }
    }

    /// A colour that leaves out what is painted in it.
    pub const CLEAR: Self = Self {
        opacity: 0,
        ..Self::rgb(0)
    };

    /// Relative luminance, 0 … 1 (WCAG 2.2, "relative luminance").
    pub fn luminance(self) -> f32 {
        let [red, green, blue] = [self.red, self.green, self.blue].map(linear);
        0.2126 * red + 0.7152 * green + 0.0722 * blue
    }

    /// Contrast ratio with `other`, 1 … 21 (WCAG 2.2, "contrast ratio").
    pub fn contrast(self, other: Self) -> f32 {
        let (one, two) = (self.luminance(), other.luminance());
        (one.max(two) + 0.05) / (one.min(two) + 0.05)
    }

    /// `share` of `other` (0 … 1) mixed in, channel by channel.
    fn mixed(self, other: Self, share: f32) -> Self {
        let mix = |one: u8, two: u8| {
            let value = f32::from(one) + (f32::from(two) - f32::from(one)) * share;
            #[expect(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "between two values of 8 bits"
            )]
            let value = value.round() as u8;
            value
        };
        Self {
            red: mix(self.red, other.red),
            green: mix(self.green, other.green),
            blue: mix(self.blue, other.blue),
            opacity: self.opacity,
        }
    }

    /// This hue, paled toward `ground` or strengthened toward `ink` until its contrast with
    /// `ground` is just over `ratio`.
    fn at_contrast(self, ground: Self, ink: Self, ratio: f32) -> Self {
        let strong = self.contrast(ground) >= ratio;
        let toward = if strong { ground } else { ink };
        let mut best = self;
        for step in 0..=100_u8 {
            let mixed = self.mixed(toward, f32::from(step) / 100.0);
            let enough = mixed.contrast(ground) >= ratio;
            if strong && !enough {
                break;
            }
            best = mixed;
            if !strong && enough {
                break;
            }
        }
        best
    }
}

/// One channel of sRGB, 0 … 255, as linear light, 0 … 1 (IEC 61966-2-1).
fn linear(channel: u8) -> f32 {
    let value = f32::from(channel) / 255.0;
    if value <= 0.04045 {
        value / 12.92
    } else {
        ((value + 0.055) / 1.055).powf(2.4)
    }
}

/// Turns roles into colours.
pub trait Palette {
    /// The colour for a role. Shapes whose colour has no opacity are left out.
    fn colour(&self, role: Role) -> Colour;
}

/// The colours of Okabe and Ito, *Color Universal Design* (2008): codes from their table.
pub mod okabe_ito {
    use super::Colour;

    /// The orange of the table, RGB 230, 159, 0.
    pub const ORANGE: Colour = Colour::rgb(0x00E6_9F00);
    /// The sky blue of the table, RGB 86, 180, 233.
    pub const SKY_BLUE: Colour = Colour::rgb(0x0056_B4E9);
    /// The bluish green of the table, RGB 0, 158, 115.
    pub const BLUISH_GREEN: Colour = Colour::rgb(0x0000_9E73);
    /// The yellow of the table, RGB 240, 228, 66.
    pub const YELLOW: Colour = Colour::rgb(0x00F0_E442);
    /// The blue of the table, RGB 0, 114, 178.
    pub const BLUE: Colour = Colour::rgb(0x0000_72B2);
    /// The vermilion of the table, RGB 213, 94, 0.
    pub const VERMILION: Colour = Colour::rgb(0x00D5_5E00);
    /// The reddish purple of the table, RGB 204, 121, 167.
    pub const REDDISH_PURPLE: Colour = Colour::rgb(0x00CC_79A7);
}

use okabe_ito::{BLUE, BLUISH_GREEN, ORANGE, REDDISH_PURPLE, SKY_BLUE, YELLOW};

/// Hues of the strands, the first first; a sixth strand begins again. Yellow and red are kept for the
/// cord in hand.
const STRANDS: [Colour; 5] = [SKY_BLUE, REDDISH_PURPLE, BLUISH_GREEN, ORANGE, BLUE];

/// The blue of the table darkened, as the plates of the words have it on a light ground.
const DARK_BLUE: Colour = Colour::rgb(0x0000_4770);

/// The cord in hand on a light ground, and the discs of its pins: the vermilion of the table, redder and
/// so dark that numbers in it are read, clear of the orange that means over.
const DEEP_RED: Colour = Colour::rgb(0x0098_1400);

/// Contrast with the tube of cord that is laid. Neighbouring strands differ in lightness as
/// well as in hue.
const QUIET: [f32; 2] = [3.3, 5.0];

/// Contrast with the tube of cord that should be noticed though it is not in hand.
const CLEAR: [f32; 2] = [5.2, 7.0];

/// The colours of the program, dark or light.
#[derive(Clone, Debug)]
pub struct DefaultPalette {
    dark: bool,
    ground: Colour,
    tube: Colour,
    ink: Colour,
    laid: [Colour; 5],
    beside: [Colour; 5],
    beyond: Colour,
    /// The next leg, and pins that are shown again: faint, but to be seen.
    to_come: Colour,
    /// The cord in hand with the numbers of its pins, and what of it is still to be laid.
    active: Colour,
    active_rest: Colour,
}

/// Contrast of graphics with their ground by WCAG 2.2, success criterion 1.4.11.
const GRAPHICS: f32 = 3.0;

impl DefaultPalette {
    /// Light cords on a dark ground.
    pub fn dark() -> Self {
        Self::new(
            true,
            Colour::rgb(0x0010_1214),
            Colour::rgb(0x0018_1D22),
            Colour::rgb(0x00F4_F1EA),
        )
    }

    /// Dark cords on the light ground of the window, for bright rooms.
    pub fn by_day() -> Self {
        Self::new(
            false,
            Colour::rgb(0x00FA_F8F3),
            Colour::rgb(0x00F1_EDE3),
            Colour::rgb(0x0014_181C),
        )
    }

    /// Dark cords on white paper.
    pub fn light() -> Self {
        Self::new(
            false,
            Colour::rgb(0x00FF_FFFF),
            Colour::rgb(0x00F5_F1E8),
            Colour::rgb(0x0014_181C),
        )
    }

    /// The same with all that is laid in the colour of one cord, as far as it stands out from the tube;
    /// neighbouring strands still differ in lightness.
    #[must_use]
    pub fn with_cord(self, cord: Colour) -> Self {
        let mut ratios = QUIET.into_iter().cycle();
        let laid = self.laid.map(|_| {
            ratios
                .next()
                .map_or(cord, |ratio| self.of_cord(cord, ratio))
        });
        Self { laid, ..self }
    }

    /// The same on another ground, such as that of a button.
    #[must_use]
    pub const fn on(self, ground: Colour) -> Self {
        Self { ground, ..self }
    }

    /// A cord's own colour where that stands out from the tube at least so much.
    fn of_cord(&self, cord: Colour, ratio: f32) -> Colour {
        if cord.contrast(self.tube) >= ratio {
            cord
        } else {
            cord.at_contrast(self.tube, self.ink, ratio)
        }
    }

    fn new(dark: bool, ground: Colour, tube: Colour, ink: Colour) -> Self {
        let tones = |ratios: [f32; 2]| {
            let mut nth = 0;
            STRANDS.map(|hue| {
                let ratio = ratios[nth % 2];
                nth += 1;
                hue.at_contrast(tube, ink, ratio)
            })
        };
        let active = if dark { YELLOW } else { DEEP_RED };
        Self {
            dark,
            to_come: tube.at_contrast(tube, ink, GRAPHICS),
            active,
            active_rest: active.at_contrast(tube, ink, if dark { 4.5 } else { 3.1 }),
            ground,
            tube,
            ink,
            laid: tones(QUIET),
            beside: tones(CLEAR),
            beyond: tube.mixed(ink, 0.22),
        }
    }

    /// Whether this is the dark palette.
    pub const fn is_dark(&self) -> bool {
        self.dark
    }

    fn strand(tones: &[Colour; 5], strand: u16) -> Colour {
        tones[usize::from(strand.max(1) - 1) % tones.len()]
    }
}

impl Palette for DefaultPalette {
    fn colour(&self, role: Role) -> Colour {
        let pick = |dark: Colour, light: Colour| if self.dark { dark } else { light };
        match role {
            Role::Tube | Role::FromDisc => self.tube,
            Role::Edge => self.tube.mixed(self.ink, 0.30),
            Role::ToCome => self.to_come,
            Role::Beyond(_) => self.beyond,
            Role::Laid(turn) => Self::strand(&self.laid, turn.strand),
            Role::Beside(turn) => Self::strand(&self.beside, turn.strand),
            Role::ActiveEdge => pick(self.tube, self.ink),
            Role::Active | Role::To | Role::From | Role::FromNumber => self.active,
            Role::ActiveRest => self.active_rest,
            Role::Pin | Role::PinNumber | Role::Label => self.ink,
            Role::Ground | Role::ToNumber => self.ground,
            // A filled square of orange is over and a ring of blue is under, as on the plates of the
            // words. The orange is light and the blue dark: no two hues of the table are far enough
            // apart for every eye.
            Role::Over => ORANGE,
            Role::OverEdge => pick(self.ground, self.ink),
            Role::Under => DARK_BLUE,
            Role::UnderEdge => pick(SKY_BLUE, self.ground),
        }
    }
}
