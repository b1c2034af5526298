//! The icon of the program: a finished knot round a tube, drawn as every other picture is.

use kurbo::{TranslateScale, Vec2};

use super::error::ExportError;
use super::svg::svg;
use crate::knot::{Hand, Knot, KnotError, Laying, LayingOrder, PassLeg, Side, Weave};
use crate::picture::draw::{Colour, DisplayList, Palette, Role, okabe_ito};
use crate::picture::raster::Painter;
use crate::picture::scene::{Moment, Scene, View, Viewport};

/// Sizes of icons in pixels (freedesktop.org, *Icon Theme Specification*: those that desktops
/// ask for).
pub const ICON_SIZES: [u16; 6] = [32, 48, 64, 128, 256, 512];

/// Cord on a dark tube with one leg bright, as on the screen: four colours and nothing else, for
/// a picture of a thumbnail's size.
struct IconPalette;

impl Palette for IconPalette {
    fn colour(&self, role: Role) -> Colour {
        match role {
            Role::Ground => Colour::rgb(0x000C_0F12),
            Role::Tube | Role::ActiveEdge => Colour::rgb(0x0026_2E36),
            Role::Laid(_) | Role::Beside(_) => okabe_ito::SKY_BLUE,
            Role::Active | Role::ActiveRest => okabe_ito::YELLOW,
            _ => Colour::CLEAR,
        }
    }
}

/// Pixels of the icon's scene, each way.
const SIDE: f32 = 512.0;
/// What of the picture is cut out: its left and upper edge, and its side.
const CUT: [f64; 3] = [66.0, 26.0, 380.0];

/// The icon as shapes.
fn drawing() -> Result<DisplayList, KnotError> {
    let knot = Knot::new(3, 5, Weave::default())?;
    let laying = Laying::new(knot, 1, LayingOrder::PassByPass)?;
    // With this leg in front the loose ends are on the far side of the tube.
    let bright = PassLeg {
        pass: 1,
        strand: 1,
        leg: 6,
    };
    let whole = Scene::build(
        View::RoundTheTube,
        &laying,
        Side::Right,
        Hand::Right,
        &Moment::Fairing(bright),
        Viewport::new(SIDE, SIDE),
    );
    let [left, top, side] = CUT;
    let scale = f64::from(SIDE) / side;
    let by = TranslateScale::new(Vec2::new(-left, -top) * scale, scale);
    let whole = DisplayList::of(&whole);
    let items = whole.items().iter().map(|item| item.moved(by));
    Ok(DisplayList::new(whole.viewport(), items.collect()))
}

/// The icon as the text of an SVG file.
///
/// # Errors
/// [`KnotError`] when its knot could not be built.
pub fn icon_svg() -> Result<String, KnotError> {
    Ok(svg(&drawing()?, &IconPalette))
}

/// The icon as the bytes of a PNG file of so many pixels each way.
///
/// # Errors
/// [`ExportError`] when its knot could not be built, or the picture not encoded.
pub fn icon_png(pixels: u16) -> Result<Vec<u8>, ExportError> {
    let scale = f32::from(pixels) / SIDE;
    let mut painter = Painter::new();
    painter.paint_at(&drawing()?, &IconPalette, scale).png(72)
}
