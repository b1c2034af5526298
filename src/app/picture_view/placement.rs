//! Where a picture goes on a screen, and how much of it.

use iced::Size;

/// How wide a room must be for its height, to have the picture beside the words and not below them:
/// there both are larger so.
const WIDE: f32 = 1.35;

/// How high a room must be for its width, to leave the picture below the words more than half of it.
const HIGH: f32 = 1.3;

/// A room of a smaller area than this belongs to the words alone, unless the tyer asks for the picture;
/// and so does one that is shorter or narrower than this.
const ROOM: f32 = 400_000.0;
const LEAST_SIDE: f32 = 420.0;

/// Between words and picture.
pub(super) const GAP: f32 = 12.0;

/// How much of the screen the picture takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum PictureSize {
    /// As much as there is room for beside large type.
    ByRoom,
    Off,
    Small,
    Middle,
    Large,
}

impl PictureSize {
    /// The next in order, when the tyer asks for another.
    pub(super) const fn next(self) -> Self {
        match self {
            Self::ByRoom | Self::Middle => Self::Large,
            Self::Large => Self::Off,
            Self::Off => Self::Small,
            Self::Small => Self::Middle,
        }
    }

    /// Where a picture of this size goes in this much room, if anywhere: beside the words where it is
    /// wide, below them where it is tall. A board is as wide as it is tall: beside the words it has more of
    /// the width.
    pub(super) fn place(
        self,
        prominence: Prominence,
        is_board: bool,
        room: Size,
    ) -> Option<Placement> {
        let is_wide = room.width > WIDE * room.height;
        let twentieths = match self {
            Self::Off => return None,
            Self::ByRoom if prominence == Prominence::Hidden => return None,
            Self::ByRoom if is_wide && is_board => 10,
            // Beside it the line has the width that it needs for one row.
            Self::ByRoom if is_wide => 8,
            // Where it is high the words are as large in less of it, and the picture has the rest.
            Self::ByRoom if room.height > HIGH * room.width => 12,
            Self::ByRoom | Self::Middle => 9,
            Self::Small => 6,
            Self::Large => 13,
        };
        let is_roomy =
            room.width * room.height >= ROOM && room.width.min(room.height) >= LEAST_SIDE;
        let claim = match (self, prominence) {
            (Self::ByRoom, Prominence::Taught) => Claim::Taught { is_roomy },
            (Self::ByRoom, _) if is_roomy => Claim::ByRoom,
            (Self::ByRoom, _) => return None,
            _ => Claim::AskedFor,
        };
        Some(Placement {
            is_wide,
            twentieths,
            claim,
        })
    }
}

/// How much a screen makes of its picture as long as the tyer has not chosen a size.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Prominence {
    /// There is none.
    Hidden,
    /// It stands where there is room for it beside large type.
    #[default]
    ByRoom,
    /// It stands there unless the words would not fit: it is part of what is taught.
    Taught,
}

/// Why a picture stands on a screen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Claim {
    /// The tyer chose its size.
    AskedFor,
    /// It is part of what is taught; whether there is room for it besides.
    Taught {
        /// As much as a picture has that nobody asked for.
        is_roomy: bool,
    },
    /// There is room for it.
    ByRoom,
}

/// Where a picture goes on a screen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Placement {
    pub(super) is_wide: bool,
    /// Twentieths of the room that are the picture's.
    pub(super) twentieths: u16,
    /// Why it stands there.
    pub claim: Claim,
}

impl Placement {
    /// What is left of a room for the words.
    pub fn left_of(self, room: Size) -> Size {
        let share = 1.0 - f32::from(self.twentieths) / 20.0;
        if self.is_wide {
            Size::new(((room.width - GAP) * share).max(0.0), room.height)
        } else {
            Size::new(room.width, ((room.height - GAP) * share).max(0.0))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_high_room_leaves_its_picture_more_than_half_and_a_wide_one_less() {
        let words = |width: f32, height: f32| {
            let room = Size::new(width, height);
            let place = PictureSize::ByRoom.place(Prominence::ByRoom, false, room);
            let left = place.expect("there is room").left_of(room);
            left.width * left.height / (width * height)
        };
        assert!(words(768.0, 1260.0) < 0.45);
        assert!(words(1068.0, 680.0) > 0.55);
        assert!(words(1000.0, 900.0) > 0.5);
    }
}
